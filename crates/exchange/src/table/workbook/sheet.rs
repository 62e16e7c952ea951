//! One worksheet, cell by cell.
//!
//! From the XML of a sheet to texts at places. A formula's last result is read and told; a
//! date, which is what a spreadsheet makes of `3-5`, and an error are told and left empty. A
//! value that is merged over several cells is read in each of them.

use quick_xml::events::BytesStart;
use spinney_model::{NamedCell, OfCell, OfSheet};

use super::attribute;
use super::parts::{Damage, Found, Xml};
use super::strings::append;
use crate::table::{caps, grid::Grid, report::Report};

/// How many merged areas are looked at.
const MOST_MERGED: usize = 2_000;

/// What the cells of every sheet refer to.
pub(super) struct Texts<'a> {
    /// The shared texts.
    pub(super) strings: &'a [String],
    /// For each style, whether it shows a date.
    pub(super) dates: &'a [bool],
}

/// A cell while it is read.
#[derive(Default)]
struct Open {
    at: (u32, u32),
    kind: String,
    date: bool,
    formula: bool,
    text: String,
}

/// Reads a sheet into a grid. What was read before a damage stays there.
pub(super) fn read(
    mut xml: Xml<'_>,
    texts: &Texts<'_>,
    grid: &mut Grid,
    report: &mut Report,
) -> Result<(), Damage> {
    let (mut row, mut column) = (0_u32, 0_u32);
    let (mut open, mut in_value, mut phonetic) = (Open::default(), false, false);
    let mut merged = Vec::new();
    loop {
        let found = match xml.next() {
            Ok(found) => found,
            Err(damage) => {
                damaged(damage, open.at, grid, report);
                return Err(damage);
            }
        };
        match found {
            Found::Start(element) => match element.local_name().as_ref() {
                "row" => row = row_of(&element).unwrap_or(row),
                "c" => {
                    let at = attribute(&element, "r").and_then(|name| place(&name));
                    open = Open::of(&element, at.unwrap_or((row, column)), texts);
                    column = open.at.1;
                }
                "v" | "t" => in_value = !phonetic,
                "f" => open.formula = true,
                "rPh" => phonetic = true,
                "mergeCell" if merged.len() < MOST_MERGED => {
                    merged.extend(attribute(&element, "ref").and_then(|area| rectangle(&area)));
                }
                _ => {}
            },
            Found::Text(piece) if in_value => append(&mut open.text, &piece),
            Found::Text(_) => {}
            Found::End(name) => match name.as_str() {
                "row" => (row, column) = (row.saturating_add(1), 0),
                "c" => {
                    open.close(texts, grid, report);
                    open = Open { at: open.at, ..Open::default() };
                    column = column.saturating_add(1);
                }
                "v" | "t" => in_value = false,
                "rPh" => phonetic = false,
                _ => {}
            },
            Found::Eof => break,
        }
        if grid.is_full() {
            break;
        }
    }
    spread(&merged, grid, report);
    Ok(())
}

fn damaged(damage: Damage, at: (u32, u32), grid: &Grid, report: &mut Report) {
    if damage == Damage::Broken && !grid.is_empty() {
        let damaged = OfSheet::Damaged { at: grid.at(at.0, at.1).into() };
        report.one(grid.place(at.0, at.1), damaged);
    }
}

impl Open {
    fn of(element: &BytesStart<'_>, at: (u32, u32), texts: &Texts<'_>) -> Self {
        let style = attribute(element, "s").and_then(|style| style.parse::<usize>().ok());
        let date = style.is_some_and(|style| texts.dates.get(style) == Some(&true));
        let kind = attribute(element, "t").unwrap_or_default();
        Self { at, kind, date, ..Self::default() }
    }

    /// Puts the cell's text into the grid, and tells what is no plain value.
    fn close(&self, texts: &Texts<'_>, grid: &mut Grid, report: &mut Report) {
        let (row, column) = self.at;
        let value = self.text.trim();
        if self.formula {
            self.tell(grid, report, "formula", |at| OfCell::Formula { at });
        }
        let text = match self.kind.as_str() {
            "s" => match value.parse::<usize>().ok().and_then(|at| texts.strings.get(at)) {
                Some(text) => text,
                None if value.is_empty() => "",
                None => {
                    return self.tell(grid, report, "lost", |at| OfCell::TextLost { at });
                }
            },
            "b" if value == "1" || value.eq_ignore_ascii_case("true") => "yes",
            "b" if !value.is_empty() => "no",
            "e" => {
                let error = value.to_owned();
                return self.tell(grid, report, "error", |at| OfCell::ShowsError { error, at });
            }
            "d" => return self.tell_date(grid, report),
            "" | "n" if self.date && !value.is_empty() => return self.tell_date(grid, report),
            "" | "n" => return grid.put(row, column, &plain_number(value), report),
            _ => &self.text,
        };
        grid.put(row, column, text, report);
    }

    fn tell_date(&self, grid: &Grid, report: &mut Report) {
        self.tell(grid, report, "date", |at| OfCell::MadeADate { at });
    }

    fn tell(
        &self,
        grid: &Grid,
        report: &mut Report,
        group: &str,
        what: impl FnOnce(NamedCell) -> OfCell,
    ) {
        let (row, column) = self.at;
        let group = format!("{group} {}", grid.name);
        report.add(&group, grid.place(row, column), what(grid.at(row, column).into()));
    }
}

/// A number as the spreadsheet shows it: fifteen digits, so `0.1 + 0.2` is `0.3`.
fn plain_number(text: &str) -> String {
    match text.parse::<f64>() {
        Ok(number) if number.is_finite() => {
            let rounded = format!("{number:.14e}").parse::<f64>().unwrap_or(number);
            rounded.to_string()
        }
        _ => text.to_owned(),
    }
}

fn row_of(element: &BytesStart<'_>) -> Option<u32> {
    attribute(element, "r")?.parse::<u32>().ok()?.checked_sub(1)
}

/// `C7` → (6, 2).
fn place(name: &str) -> Option<(u32, u32)> {
    let digits = name.find(|sign: char| sign.is_ascii_digit())?;
    let column = name[..digits].bytes().try_fold(0_u32, |column, letter| {
        let value =
            letter.to_ascii_uppercase().checked_sub(b'A').filter(|value| *value < 26)?;
        column.checked_mul(26)?.checked_add(u32::from(value) + 1)
    })?;
    Some((name[digits..].parse::<u32>().ok()?.checked_sub(1)?, column.checked_sub(1)?))
}

type Rectangle = ((u32, u32), (u32, u32));

fn rectangle(area: &str) -> Option<Rectangle> {
    let (from, to) = area.split_once(':')?;
    Some((place(from)?, place(to)?))
}

/// Reads the value of a merged area in each of its cells, below the first row and right of
/// the first column: a merged heading or name is left for the reader of the table to tell.
fn spread(merged: &[Rectangle], grid: &mut Grid, report: &mut Report) {
    let Some(first_column) = grid.columns().first().copied() else { return };
    let rows: Vec<u32> = grid.rows().skip(1).map(|(row, _)| row).collect();
    let mut left = caps::MOST_CELLS;
    for (from, to) in merged {
        let text = grid.get(from.0, from.1).to_owned();
        if text.is_empty() || from.1 == first_column || !rows.contains(&from.0) {
            continue;
        }
        for row in rows.iter().copied().filter(|row| (from.0..=to.0).contains(row)) {
            for column in from.1..=to.1.min(caps::MOST_COLUMNS - 1) {
                let Some(rest) = left.checked_sub(1) else { return };
                left = rest;
                if grid.get(row, column).is_empty() {
                    grid.put(row, column, &text, report);
                }
            }
        }
        let [at, to] = [from, to].map(|(row, column)| grid.at(*row, *column).into());
        let group = format!("merged {}", grid.name);
        report.add(&group, grid.place(from.0, from.1), OfCell::Merged { text, at, to });
    }
}
