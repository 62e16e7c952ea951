//! The headings of a table: one a character, each with a name of its own and perhaps a unit.
//!
//! From the heading row to columns. A heading that is missing or stands twice gets a name by
//! which people can find it.

use std::collections::BTreeSet;

use spinney_model::{CellAt, OfColumn, WrittenIn};

use super::characters_sheet::Described;
use super::phrase::fold;
use super::{caps, grid::Grid, report::Report};

/// One column of the table.
#[derive(Clone, Debug)]
pub(super) struct Heading<'d> {
    /// Where it is in the sheet.
    pub(super) column: u32,
    /// The heading as it was typed.
    pub(super) typed: String,
    /// The character's name.
    pub(super) name: String,
    /// A unit that stands in the heading: `stalk length (mm)`.
    pub(super) unit: Option<WrittenIn>,
    /// What the sheet `characters` says of it.
    pub(super) described: Option<&'d Described>,
}

/// The column of what stands beside the table only: a ratio that is worked out.
pub(super) const BESIDE: u32 = u32::MAX;

/// Words in a heading by which a number without unit is a length.
const LENGTH_WORDS: [&str; 14] = [
    "length",
    "long",
    "width",
    "wide",
    "height",
    "high",
    "tall",
    "size",
    "diameter",
    "thick",
    "thickness",
    "breadth",
    "depth",
    "deep",
];

/// Words in a heading by which a character is felt.
const TOUCH_WORDS: [&str; 9] =
    ["feel", "feels", "texture", "touch", "rough", "roughness", "hairy", "sticky", "hairiness"];

impl Heading<'_> {
    /// Whether the heading speaks of a length.
    pub(super) fn is_length(&self) -> bool {
        has_word(&self.name, &LENGTH_WORDS)
    }

    /// Whether the heading speaks of touching.
    pub(super) fn is_touch(&self) -> bool {
        has_word(&self.name, &TOUCH_WORDS)
    }
}

fn has_word(name: &str, words: &[&str]) -> bool {
    let folded = fold(name);
    folded.split(|sign: char| !sign.is_alphabetic()).any(|word| words.contains(&word))
}

/// The columns of the table right of the kinds' names.
pub(super) fn read<'d>(
    grid: &Grid,
    row: u32,
    columns: &BTreeSet<u32>,
    described: &'d [Described],
    report: &mut Report,
) -> Vec<Heading<'d>> {
    let mut taken = BTreeSet::new();
    let mut headings = Vec::new();
    for column in columns.iter().copied().filter(|column| *column < caps::MOST_COLUMNS) {
        let mut heading = named(grid, row, column, described, report);
        if !taken.insert(fold(&heading.name)) {
            let base = heading.name.clone();
            for count in 2.. {
                heading.name = format!("{base} ({count})");
                if taken.insert(fold(&heading.name)) {
                    break;
                }
            }
            let twice = OfColumn::HeadingTwice {
                heading: base,
                called: heading.name.clone(),
                at: grid.at(row, column).into(),
            };
            report.one(grid.place(row, column), twice);
        }
        headings.push(heading);
    }
    headings
}

fn named<'d>(
    grid: &Grid,
    row: u32,
    column: u32,
    described: &'d [Described],
    report: &mut Report,
) -> Heading<'d> {
    let text = grid.get(row, column);
    if text.is_empty() {
        let name = format!("column {}", CellAt::letters(column));
        let at = grid.at(row, column).into();
        let none = OfColumn::NoHeading { called: name.clone(), at };
        report.one(grid.place(row, column), none);
        return Heading { column, typed: String::new(), name, unit: None, described: None };
    }
    let find = |name: &str| described.iter().find(|row| fold(&row.name) == fold(name));
    // A name that the second sheet has, letter for letter, is the whole name.
    if let Some(row) = find(text) {
        let unit = split_unit(text).map(|(_, unit)| unit);
        let (typed, name) = (text.to_owned(), row.name.clone());
        return Heading { column, typed, name, unit, described: Some(row) };
    }
    let typed = text.to_owned();
    match split_unit(text) {
        Some((name, unit)) => {
            let described = find(&name);
            Heading { column, typed, name, unit: Some(unit), described }
        }
        None => Heading { column, name: typed.clone(), typed, unit: None, described: None },
    }
}

/// `stalk length (mm)`, `stalk length [mm]`, `stalk length in mm`, `stalk length mm`.
pub(super) fn split_unit(text: &str) -> Option<(String, WrittenIn)> {
    if let Some(inner) = text.strip_suffix([')', ']']) {
        let (name, unit) = inner.rsplit_once(['(', '['])?;
        let unit = WrittenIn::spelt(unit.trim().trim_start_matches("in "))?;
        let name = name.trim();
        return (!name.is_empty()).then(|| (name.to_owned(), unit));
    }
    let (name, unit) = text.rsplit_once([' ', ','])?;
    let unit = WrittenIn::spelt(unit)?;
    // `in` and `m` alone are words and letters before they are units.
    if matches!(unit, WrittenIn::Inches | WrittenIn::Metres | WrittenIn::Grams)
        && text.rsplit(' ').next().is_some_and(|word| word.len() <= 2)
    {
        return None;
    }
    let name = name.trim().trim_end_matches(',');
    let name = name.strip_suffix(" in").unwrap_or(name).trim();
    (!name.is_empty()).then(|| (name.to_owned(), unit))
}
