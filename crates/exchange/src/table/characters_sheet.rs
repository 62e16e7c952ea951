//! The sheet `characters`: how to ask about a character, its states, where it can be seen.
//!
//! From the sheet to one description a row. What a row leaves out is left for the table to
//! show; nothing here looks at the table.

use std::collections::BTreeSet;

use spinney_model::{
    CharacterField, Difficulty, Instrument, Place, Season, SeenOn, Share, WrittenIn,
};

use super::answers::{is_no, is_yes};
use super::number::{Amount, amount};
use super::phrase::{alternatives, fold, list, states, unquote};
use super::read_right::{self, ReadRight};
use super::second_sheet::{Record, Records};
use super::{grid::Grid, report::Report};

/// The headings, in the order in which they are written, with what each describes; the first
/// name is the usual one.
pub(crate) const HEADINGS: [(CharacterField, &[&str]); 16] = [
    (CharacterField::Name, &["character", "characters", "name", "heading"]),
    (CharacterField::Question, &["question", "wording", "how to ask"]),
    (CharacterField::Values, &["values", "holds"]),
    (CharacterField::States, &["states", "state", "words"]),
    (CharacterField::Unit, &["unit", "units", "measured in"]),
    (CharacterField::Gap, &["gap", "safety gap", "safety margin"]),
    (CharacterField::SeenOn, &["seen on", "where seen", "where"]),
    (CharacterField::Difficulty, &["difficulty", "how hard", "hard to see"]),
    (
        CharacterField::ReadRight,
        &["read right", "reliability", "read right (per cent)", "read right (%)"],
    ),
    (CharacterField::ByTouch, &["by touch", "touch"]),
    (CharacterField::AppliesWhen, &["applies when", "applies if", "only when", "only if"]),
    (CharacterField::Season, &["season", "seasons", "when seen"]),
    (CharacterField::Instrument, &["instrument", "instruments", "tool", "seen with"]),
    (CharacterField::InOrder, &["in order", "ordered", "states in order"]),
    (CharacterField::WordsToKnow, &["words to know", "word to know", "terms", "vocabulary"]),
    (CharacterField::RatioOf, &["ratio of", "ratio", "proportion of"]),
];

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
    pub(super) place: Place,
    pub(super) question: Option<String>,
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
    pub(super) place: Place,
}

/// `form = feather or hand`
#[derive(Clone, Debug)]
pub(super) struct Applies {
    pub(super) character: String,
    pub(super) states: Vec<String>,
    pub(super) place: Place,
}

/// Reads the sheet.
pub(super) fn read(grid: &Grid, report: &mut Report) -> Vec<Described> {
    let Some(records) = Records::of(grid, &HEADINGS, report) else { return Vec::new() };
    let named = records.rows().filter(|record| !record.get(0).is_empty());
    named.map(|record| described(record, report)).collect()
}

type Row<'r> = Record<'r, 16>;

fn described(row: Row<'_>, report: &mut Report) -> Described {
    let (values, unit) = values(row, report);
    Described {
        name: row.get(0).to_owned(),
        place: row.place(0),
        question: row.text(1),
        values,
        states: states(row.get(3)),
        unit,
        gap: gap(row, report),
        seen_on: seen_on(row, report),
        difficulty: difficulty(row, report),
        read_right: read_right(row, report),
        by_touch: yes_or_no(row, 9, "Type yes if pupils have to touch it, else no.", report),
        applies: applies(row, report),
        seasons: seasons(row, report),
        instrument: instrument(row, report),
        in_order: yes_or_no(row, 13, "Type yes if its states have an order.", report)
            .unwrap_or(false),
        terms: terms(row.get(14)),
        ratio: ratio(row),
        typed: row.typed(&HEADINGS),
    }
}

fn values(row: Row<'_>, report: &mut Report) -> (Option<Values>, Option<WrittenIn>) {
    let says_ratio = |field: usize| {
        matches!(fold(row.get(field)).as_str(), "ratio" | "ratios" | "proportion")
    };
    if says_ratio(2) || says_ratio(4) || ratio(row).is_some() {
        let unit = fold(row.get(4));
        if !says_ratio(4) && !matches!(unit.as_str(), "" | "-" | "n/a" | "none" | "no unit") {
            let remedy = "Leave it empty: a length over a length has no unit.";
            row.odd(4, "unit of a ratio", remedy, report);
        }
        return (Some(Values::Measure), Some(WrittenIn::Ratio));
    }
    let typed = match fold(row.get(2)).as_str() {
        "" => None,
        "words" | "word" | "states" => Some(Values::Words),
        "counts" | "count" | "numbers" | "whole numbers" => Some(Values::Counts),
        "measure" | "measures" | "length" | "range" => Some(Values::Measure),
        _ => {
            row.odd(2, "sort of values", "Type words, counts or measure.", report);
            None
        }
    };
    let unit = row.get(4);
    match fold(unit).as_str() {
        "" | "-" | "n/a" => (typed, None),
        "count" | "counts" | "whole number" | "whole numbers" => {
            (typed.or(Some(Values::Counts)), None)
        }
        "none" | "no unit" => (typed.or(Some(Values::Measure)), None),
        _ => match WrittenIn::spelt(unit) {
            Some(unit) => (typed.or(Some(Values::Measure)), Some(unit)),
            None => {
                row.odd(4, "unit", "Type mm, cm, m, in, ft, °, g, ratio or count.", report);
                (typed, None)
            }
        },
    }
}

fn gap(row: Row<'_>, report: &mut Report) -> Option<Amount> {
    let text = row.get(5);
    if text.is_empty() {
        return None;
    }
    match amount(text) {
        Ok(gap) if gap.low == gap.high && gap.low >= Share::from_integer(0) => Some(gap),
        _ => {
            row.odd(5, "safety gap", "Type one number, such as 5 mm.", report);
            None
        }
    }
}

fn seen_on(row: Row<'_>, report: &mut Report) -> BTreeSet<SeenOn> {
    let mut forms = BTreeSet::new();
    for word in list(row.get(6)).into_iter().flat_map(alternatives) {
        let folded = fold(word);
        let singular = folded.strip_suffix('s').unwrap_or(&folded);
        let form = SeenOn::ALL.into_iter().find(|form| match form {
            SeenOn::Leaf => matches!(folded.as_str(), "leaf" | "leaves"),
            SeenOn::Photograph => matches!(singular, "photograph" | "photo" | "picture"),
            form => form.word() == singular,
        });
        match form {
            Some(form) => _ = forms.insert(form),
            None if folded.is_empty() => {}
            None => row.odd(
                6,
                "place to see it",
                "Type some of: tree, twig, leaf, rubbing, photograph, winter twig, tray.",
                report,
            ),
        }
    }
    forms
}

fn difficulty(row: Row<'_>, report: &mut Report) -> Difficulty {
    match fold(row.get(7)).as_str() {
        "" | "easy" => Difficulty::Easy,
        "fair" | "medium" | "middling" => Difficulty::Fair,
        "hard" | "difficult" => Difficulty::Hard,
        _ => {
            row.odd(7, "difficulty", "Type easy, fair or hard.", report);
            Difficulty::Easy
        }
    }
}

fn read_right(row: Row<'_>, report: &mut Report) -> ReadRight {
    read_right::read(row.get(8), row.place(8)).unwrap_or_else(|| {
        let remedy = "Type a number from 0 to 100, and after it kinds that differ: \
                      `90; holly 60`.";
        row.odd(8, "share in per cent", remedy, report);
        ReadRight::default()
    })
}

fn yes_or_no(row: Row<'_>, field: usize, remedy: &str, report: &mut Report) -> Option<bool> {
    match row.get(field) {
        "" => None,
        text if is_yes(text) => Some(true),
        text if is_no(text) => Some(false),
        _ => {
            row.odd(field, "yes or no", remedy, report);
            None
        }
    }
}

fn seasons(row: Row<'_>, report: &mut Report) -> BTreeSet<Season> {
    let mut seasons = BTreeSet::new();
    for word in list(row.get(11)).into_iter().flat_map(alternatives) {
        let folded = fold(word);
        match Season::ALL.into_iter().find(|season| season.word() == folded) {
            Some(season) => _ = seasons.insert(season),
            None => match folded.as_str() {
                "" => {}
                "fall" => _ = seasons.insert(Season::Autumn),
                "all year" | "always" | "any" => seasons.extend(Season::ALL),
                _ => {
                    let remedy = "Type some of: spring, summer, autumn, winter.";
                    row.odd(11, "season", remedy, report);
                }
            },
        }
    }
    seasons
}

fn instrument(row: Row<'_>, report: &mut Report) -> Option<Instrument> {
    let folded = fold(row.get(12));
    match folded.as_str() {
        "" => None,
        "eyes" | "eye" | "by eye" | "none" | "fingers" | "eyes and fingers" => {
            Some(Instrument::Eyes)
        }
        "lens" | "hand lens" | "magnifier" | "magnifying glass" => Some(Instrument::Lens),
        "ruler" | "rule" | "tape" | "measuring tape" => Some(Instrument::Ruler),
        _ => {
            row.odd(12, "instrument", "Type eyes, lens or ruler.", report);
            None
        }
    }
}

/// `margin, toothed`: what pupils must have been taught.
fn terms(text: &str) -> BTreeSet<String> {
    let none = matches!(fold(text).as_str(), "-" | "?" | "none" | "n/a");
    let pieces = if none { Vec::new() } else { list(text) };
    pieces.into_iter().map(unquote).filter(|term| !term.is_empty()).collect()
}

fn ratio(row: Row<'_>) -> Option<RatioOf> {
    let text = row.text(15).filter(|text| !matches!(text.as_str(), "-" | "n/a" | "none"))?;
    Some(RatioOf { text, place: row.place(15) })
}

fn applies(row: Row<'_>, report: &mut Report) -> Option<Applies> {
    let text = row.get(10);
    if text.is_empty() || fold(text) == "always" {
        return None;
    }
    let Some((character, rest)) = split_condition(text) else {
        row.odd(
            10,
            "condition",
            "Type another character and its states: `form = feather or hand`.",
            report,
        );
        return None;
    };
    Some(Applies { character, states: states(rest), place: row.place(10) })
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
