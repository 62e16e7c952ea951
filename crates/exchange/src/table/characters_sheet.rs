//! The sheet `characters`: how to ask about a character, its states, where it can be seen.
//!
//! From the sheet to one description a row. What a row leaves out is left for the table to
//! show; nothing here looks at the table.

use std::collections::BTreeSet;

use spinney_model::{
    CellAt, CharacterField, Difficulty, FieldIs, InSecond, Instrument, Season, SeenOn, Share,
    WrittenIn,
};

use super::answers::{is_no, is_yes};
use super::columns::{CHARACTERS, Reading, place_of};
use super::number::{Amount, amount};
use super::phrase::{alternatives, fold, list, states, unquote};
use super::read_right::{self, ReadRight};
use super::second_sheet::{Record, Records};
use super::{grid::Grid, report::Report};

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Values {
    Words,
    Counts,
    Measure,
}

/// What one row says of a character.
#[derive(Clone, Debug)]
pub(super) struct Described {
    pub(super) name: String,
    pub(super) place: CellAt,
    pub(super) question: Option<String>,
    pub(super) second_question: Option<String>,
    pub(super) second_states: Vec<InSecond>,
    pub(super) values: Option<Values>,
    pub(super) states: Vec<String>,
    pub(super) unit: Option<WrittenIn>,
    pub(super) gap: Option<Amount>,
    pub(super) seen_on: BTreeSet<SeenOn>,
    pub(super) difficulty: Difficulty,
    pub(super) read_right: ReadRight,
    pub(super) by_touch: Option<bool>,
    pub(super) applies: Option<Applies>,
    pub(super) seasons: BTreeSet<Season>,
    pub(super) instrument: Option<Instrument>,
    pub(super) in_order: bool,
    pub(super) terms: BTreeSet<String>,
    pub(super) ratio: Option<RatioOf>,
    /// The row as it was typed.
    pub(super) typed: Vec<(CharacterField, String)>,
}

/// `stalk length / blade length`; which columns these are is for the table to say.
#[derive(Clone, Debug)]
pub(super) struct RatioOf {
    pub(super) text: String,
    pub(super) place: CellAt,
}

/// `form = feather or hand`
#[derive(Clone, Debug)]
pub(super) struct Applies {
    pub(super) character: String,
    pub(super) states: Vec<String>,
    pub(super) place: CellAt,
}

/// Reads the sheet.
pub(super) fn read(grid: &Grid, report: &mut Report) -> Vec<Described> {
    let headings = CHARACTERS.each_ref().map(|column| column.headings);
    let Some(records) = Records::of(grid, &headings, report) else { return Vec::new() };
    let named = records.rows().filter(|record| !record.get(0).is_empty());
    named.map(|record| described(record, report)).collect()
}

fn described(row: Record<'_>, report: &mut Report) -> Described {
    let mut described = Described {
        name: String::new(),
        place: row.place(0),
        question: None,
        second_question: None,
        second_states: Vec::new(),
        values: None,
        states: Vec::new(),
        unit: None,
        gap: None,
        seen_on: BTreeSet::new(),
        difficulty: Difficulty::Easy,
        read_right: ReadRight::default(),
        by_touch: None,
        applies: None,
        seasons: BTreeSet::new(),
        instrument: None,
        in_order: false,
        terms: BTreeSet::new(),
        ratio: None,
        typed: row.typed(CHARACTERS.iter().map(|column| column.field)),
    };
    for column in &CHARACTERS {
        column.read(&mut described, row, report);
    }
    described
}

/// What a column holds, and in which unit.
pub(super) fn values(into: &mut Described, cell: &Reading<'_>, report: &mut Report) {
    (into.values, into.unit) = values_and_unit(cell, report);
}

fn values_and_unit(
    cell: &Reading<'_>,
    report: &mut Report,
) -> (Option<Values>, Option<WrittenIn>) {
    let (row, at_unit) = (cell.row, place_of(CharacterField::Unit));
    let says_ratio =
        |text: &str| matches!(fold(text).as_str(), "ratio" | "ratios" | "proportion");
    let unit = row.get(at_unit);
    if says_ratio(cell.get()) || says_ratio(unit) || ratio(row).is_some() {
        let folded = fold(unit);
        let none = matches!(folded.as_str(), "" | "-" | "n/a" | "none" | "no unit");
        if !says_ratio(unit) && !none {
            row.odd(at_unit, FieldIs::UnitOfRatio, &[], report);
        }
        return (Some(Values::Measure), Some(WrittenIn::Ratio));
    }
    let typed = match fold(cell.get()).as_str() {
        "" => None,
        "words" | "word" | "states" => Some(Values::Words),
        "counts" | "count" | "numbers" | "whole numbers" => Some(Values::Counts),
        "measure" | "measures" | "length" | "range" => Some(Values::Measure),
        _ => {
            cell.odd(FieldIs::Values, report);
            None
        }
    };
    match fold(unit).as_str() {
        "" | "-" | "n/a" => (typed, None),
        "count" | "counts" | "whole number" | "whole numbers" => {
            (typed.or(Some(Values::Counts)), None)
        }
        "none" | "no unit" => (typed.or(Some(Values::Measure)), None),
        _ => match WrittenIn::spelt(unit) {
            Some(unit) => (typed.or(Some(Values::Measure)), Some(unit)),
            None => {
                CHARACTERS[at_unit].odd(row, FieldIs::Unit, report);
                (typed, None)
            }
        },
    }
}

pub(super) fn states_listed(into: &mut Described, cell: &Reading<'_>, _: &mut Report) {
    into.states = states(cell.get());
}

pub(super) fn gap(into: &mut Described, cell: &Reading<'_>, report: &mut Report) {
    if cell.get().is_empty() {
        return;
    }
    match amount(cell.get()) {
        Ok(gap) if gap.low == gap.high && gap.low >= Share::from_integer(0) => {
            into.gap = Some(gap);
        }
        _ => cell.odd(FieldIs::Margin, report),
    }
}

pub(super) fn seen_on(into: &mut Described, cell: &Reading<'_>, report: &mut Report) {
    for word in list(cell.get()).into_iter().flat_map(alternatives) {
        let folded = fold(word);
        let singular = folded.strip_suffix('s').unwrap_or(&folded);
        let form = SeenOn::ALL.into_iter().find(|form| match form {
            SeenOn::Leaf => matches!(folded.as_str(), "leaf" | "leaves"),
            SeenOn::Photograph => matches!(singular, "photograph" | "photo" | "picture"),
            form => form.word() == singular,
        });
        match form {
            Some(form) => _ = into.seen_on.insert(form),
            None if folded.is_empty() => {}
            None => cell.odd(FieldIs::SeenOn, report),
        }
    }
}

pub(super) fn difficulty(into: &mut Described, cell: &Reading<'_>, report: &mut Report) {
    match fold(cell.get()).as_str() {
        "" | "easy" => {}
        "fair" | "medium" | "middling" => into.difficulty = Difficulty::Fair,
        "hard" | "difficult" => into.difficulty = Difficulty::Hard,
        _ => cell.odd(FieldIs::Difficulty, report),
    }
}

pub(super) fn read_right(into: &mut Described, cell: &Reading<'_>, report: &mut Report) {
    match read_right::read(cell.get(), cell.row.place(cell.at)) {
        Some(read) => into.read_right = read,
        None => cell.odd(FieldIs::PerCent, report),
    }
}

pub(super) fn yes_or_no(cell: &Reading<'_>, is: FieldIs, report: &mut Report) -> Option<bool> {
    match cell.get() {
        "" => None,
        text if is_yes(text) => Some(true),
        text if is_no(text) => Some(false),
        _ => {
            cell.odd(is, report);
            None
        }
    }
}

pub(super) fn seasons(into: &mut Described, cell: &Reading<'_>, report: &mut Report) {
    for word in list(cell.get()).into_iter().flat_map(alternatives) {
        let folded = fold(word);
        match Season::ALL.into_iter().find(|season| season.word() == folded) {
            Some(season) => _ = into.seasons.insert(season),
            None => match folded.as_str() {
                "" => {}
                "fall" => _ = into.seasons.insert(Season::Autumn),
                "all year" | "always" | "any" => into.seasons.extend(Season::ALL),
                _ => cell.odd(FieldIs::Season, report),
            },
        }
    }
}

pub(super) fn instrument(into: &mut Described, cell: &Reading<'_>, report: &mut Report) {
    into.instrument = match fold(cell.get()).as_str() {
        "" => None,
        "eyes" | "eye" | "by eye" | "none" | "fingers" | "eyes and fingers" => {
            Some(Instrument::Eyes)
        }
        "lens" | "hand lens" | "magnifier" | "magnifying glass" => Some(Instrument::Lens),
        "ruler" | "rule" | "tape" | "measuring tape" => Some(Instrument::Ruler),
        _ => {
            cell.odd(FieldIs::Instrument, report);
            None
        }
    };
}

/// `margin, toothed`: what pupils must have been taught.
pub(super) fn terms(text: &str) -> BTreeSet<String> {
    let none = matches!(fold(text).as_str(), "-" | "?" | "none" | "n/a");
    let pieces = if none { Vec::new() } else { list(text) };
    pieces.into_iter().map(unquote).filter(|term| !term.is_empty()).collect()
}

pub(super) fn ratio(row: Record<'_>) -> Option<RatioOf> {
    let at = place_of(CharacterField::RatioOf);
    let text = row.text(at).filter(|text| !matches!(text.as_str(), "-" | "n/a" | "none"))?;
    Some(RatioOf { text, place: row.place(at) })
}

pub(super) fn applies(into: &mut Described, cell: &Reading<'_>, report: &mut Report) {
    let text = cell.get();
    if text.is_empty() || fold(text) == "always" {
        return;
    }
    let Some((character, rest)) = split_condition(text) else {
        cell.odd(FieldIs::Condition, report);
        return;
    };
    let place = cell.row.place(cell.at);
    into.applies = Some(Applies { character, states: states(rest), place });
}

/// `form = feather`, `form: feather`, `form is feather`.
fn split_condition(text: &str) -> Option<(String, &str)> {
    let after_name = |name: &str, rest| Some((unquote(name.trim()), rest));
    if text.starts_with('"') {
        // The closing mark is the first that is not doubled.
        let bytes = text.as_bytes();
        let mut at = 1;
        while at < bytes.len() {
            match (bytes[at], bytes.get(at + 1)) {
                (b'"', Some(b'"')) => at += 2,
                (b'"', _) => break,
                _ => at += 1,
            }
        }
        let (name, rest) = (text.get(..=at)?, text.get(at + 1..)?.trim_start());
        let rest = rest.strip_prefix(['=', ':']).or_else(|| rest.strip_prefix("is "))?;
        return after_name(name, rest);
    }
    if let Some((name, rest)) = text.split_once(['=', ':']) {
        return after_name(name, rest);
    }
    let (name, rest) = text.split_once(" is ")?;
    after_name(name, rest)
}
