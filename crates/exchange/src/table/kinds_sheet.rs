//! The sheet `kinds`: other names, how often a kind is met, what may hurt, how to be sure.
//!
//! From the sheet to one taxon a row, each with its place. It does not know which kinds the
//! table has.

use num_traits::Zero;
use spinney_model::{CellAt, FieldIs, KindField, OfSheet, OtherName, Place, Share, Taxon};

use super::columns::{KINDS, Reading};
use super::number::amount;
use super::phrase::{fold, quoted, semicolon_list, unquote};
use super::second_sheet::{Record, Records};
use super::{grid::Grid, report::Report};

/// How often a kind is met, in words; twice as often from one to the next.
const OFTEN: [(&str, i128); 3] = [("often", 4), ("sometimes", 2), ("rarely", 1)];

/// The largest number of times; more would leave no digits for exact arithmetic.
const MOST_OFTEN: i128 = 1_000_000;

/// One row.
#[derive(Clone, Debug)]
pub(super) struct Described {
    pub(super) taxon: Taxon,
    pub(super) place: CellAt,
    /// The row as it was typed.
    pub(super) typed: Vec<(Option<KindField>, String)>,
}

/// A kind, while its row is read.
pub(super) struct Weighed {
    pub(super) taxon: Taxon,
    /// How often a kind is met that says nothing of it.
    usual_weight: Share,
}

/// The whole sheet.
#[derive(Clone, Debug)]
pub(super) struct Kinds {
    pub(super) rows: Vec<Described>,
    /// How often a kind is met that has no row, or nothing in this column.
    pub(super) usual_weight: Share,
}

/// Reads the sheet.
pub(super) fn read(grid: &Grid, report: &mut Report) -> Kinds {
    let one = Share::from_integer(1);
    let Some(records) =
        Records::of(grid, &KINDS.each_ref().map(|column| column.headings), report)
    else {
        return Kinds { rows: Vec::new(), usual_weight: one };
    };
    let how_often = KINDS.iter().position(|of| of.field == Some(KindField::HowOften));
    let how_often = how_often.expect("every field of a kind has its column");
    let in_words = |record: Record<'_>| often(record.get(how_often)).is_some();
    let usual_weight = match records.has(how_often) && records.rows().any(in_words) {
        true => Share::from_integer(often("sometimes").expect("it is one of the words")),
        false => one,
    };
    if usual_weight != one {
        report.one(Place::Table, OfSheet::OftenInWords);
    }
    let named = records.rows().filter(|record| !record.get(0).is_empty());
    let rows = named.map(|record| described(record, usual_weight, report)).collect();
    Kinds { rows, usual_weight }
}

fn often(text: &str) -> Option<i128> {
    let folded = fold(text);
    OFTEN.iter().find(|(word, _)| *word == folded).map(|(_, weight)| *weight)
}

fn described(row: Record<'_>, usual_weight: Share, report: &mut Report) -> Described {
    let taxon = Taxon {
        name: String::new(),
        scientific_name: None,
        other_names: Vec::new(),
        second_name: None,
        weight: usual_weight,
        caution: None,
        picture: None,
        confirming: None,
    };
    let mut weighed = Weighed { taxon, usual_weight };
    for (at, column) in KINDS.iter().enumerate() {
        column.read(&mut weighed, (row, at), report);
    }
    let typed = row.typed(KINDS.iter().map(|column| column.field));
    Described { taxon: weighed.taxon, place: row.place(0), typed }
}

pub(super) fn weight(into: &mut Weighed, cell: &Reading<'_>, report: &mut Report) {
    into.taxon.weight = times_met(cell, into.usual_weight, report);
}

fn times_met(cell: &Reading<'_>, usual: Share, report: &mut Report) -> Share {
    let text = cell.get();
    if text.is_empty() || text == "?" {
        return usual;
    }
    if let Some(weight) = often(text) {
        return Share::from_integer(weight);
    }
    let number = match text.split_once('/') {
        None => amount(text).ok().filter(|number| number.low == number.high),
        Some(_) => None,
    };
    let number = number.filter(|number| number.unit.is_none()).map(|number| number.low);
    let number = number.or_else(|| fraction(text));
    match number {
        Some(weight) if weight > Share::zero() && *weight.ceil().numer() <= MOST_OFTEN => {
            weight
        }
        _ => {
            cell.odd(FieldIs::TimesMet, report);
            usual
        }
    }
}

/// `3/4`
fn fraction(text: &str) -> Option<Share> {
    let (part, whole) = text.split_once('/')?;
    let [part, whole] = [part, whole].map(|digits| digits.trim().parse::<u32>().ok());
    let (part, whole) = (part?, whole.filter(|whole| *whole > 0)?);
    Some(Share::new(part.into(), whole.into()))
}

/// `de: Hasel; cy: collen; cobnut`
pub(super) fn other_names(text: &str) -> Vec<OtherName> {
    let pieces = semicolon_list(text).into_iter().filter(|piece| !piece.is_empty());
    let name = |piece: &str| {
        if quoted(piece).is_some() {
            return OtherName { language: None, name: unquote(piece) };
        }
        match piece.split_once(':') {
            Some((tag, name)) if is_language(tag.trim()) && !name.trim().is_empty() => {
                let language = Some(tag.trim().to_owned());
                OtherName { language, name: unquote(name.trim()) }
            }
            _ => OtherName { language: None, name: unquote(piece) },
        }
    };
    pieces.map(name).collect()
}

/// Whether a text can be a language tag of BCP 47: `de`, `cy`, `pt-BR`.
pub(super) fn is_language(tag: &str) -> bool {
    let mut parts = tag.split('-');
    let first = parts.next().unwrap_or("");
    let letters = first.bytes().all(|byte| byte.is_ascii_alphabetic());
    letters
        && (2..=3).contains(&first.len())
        && parts.all(|part| {
            (1..=8).contains(&part.len())
                && part.bytes().all(|byte| byte.is_ascii_alphanumeric())
        })
}
