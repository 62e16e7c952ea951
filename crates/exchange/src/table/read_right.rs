//! How often a character is read right, in per cent: of all kinds, and of kinds that differ.
//!
//! From `90; holly 60` to a number and one a kind, and from the kinds' names to their rows.

use std::collections::BTreeMap;

use num_traits::ToPrimitive;
use spinney_model::{CellAt, OfColumn, Place, Share, TaxonIx};

use super::number::amount;
use super::phrase::{fold, list, unquote};
use super::report::Report;

/// What one cell says.
#[derive(Clone, Debug, Default)]
pub(super) struct ReadRight {
    /// Of every kind that is not named.
    pub(super) usual: Option<u8>,
    /// Kinds as they were typed, and how often the character is read right of each.
    of: Vec<(String, u8)>,
    place: Option<CellAt>,
}

/// Reads a cell; None if some of it is not understood.
pub(super) fn read(text: &str, place: CellAt) -> Option<ReadRight> {
    let mut read = ReadRight { place: Some(place), ..ReadRight::default() };
    if text.is_empty() || text == "?" {
        return Some(read);
    }
    for piece in list(text).into_iter().filter(|piece| !piece.is_empty()) {
        match percent(piece) {
            Some(percent) if read.usual.is_none() => read.usual = Some(percent),
            Some(_) => return None,
            None => read.of.push(of_kind(piece)?),
        }
    }
    Some(read)
}

/// `holly 60`, `holly: 60 %`, `"group 1" = 60`.
fn of_kind(piece: &str) -> Option<(String, u8)> {
    let bare = piece.trim_end_matches('%').trim_end();
    let digits = |sign: char| sign.is_ascii_digit() || matches!(sign, '.' | ',');
    let start = bare.trim_end_matches(digits).len();
    let name = piece[..start].trim_end().trim_end_matches([':', '=']).trim();
    let percent = percent(&piece[start..])?;
    // `90-95` and `-5` name no kind.
    let named = name.starts_with('"') || name.chars().any(char::is_alphabetic);
    named.then(|| (unquote(name), percent))
}

/// A number from 0 to 100, with or without its sign.
fn percent(text: &str) -> Option<u8> {
    let number = amount(text.trim_end_matches('%').trim_end()).ok()?;
    if number.low != number.high || number.unit.is_some() {
        return None;
    }
    // A spreadsheet keeps `90 %` as 0.9.
    let fraction = number.low < Share::from_integer(1) && !text.ends_with('%');
    let percent = if fraction { number.low * Share::from_integer(100) } else { number.low };
    percent.round().to_integer().to_u8().filter(|percent| *percent <= 100)
}

impl ReadRight {
    /// The kinds that are named, by their rows; names that no kind has are told.
    pub(super) fn of_kinds(
        &self,
        character: &str,
        kinds: &[(u32, String)],
        report: &mut Report,
    ) -> BTreeMap<TaxonIx, u8> {
        let mut found = BTreeMap::new();
        let Some(place) = self.place.as_ref().filter(|_| !self.of.is_empty()) else {
            return found;
        };
        let mut rows = BTreeMap::new();
        for (row, (_, kind)) in kinds.iter().enumerate() {
            rows.entry(fold(kind)).or_insert(TaxonIx(row));
        }
        for (name, percent) in &self.of {
            let row = rows.get(&fold(name));
            if let Some(row) = row.filter(|row| !found.contains_key(*row)) {
                found.insert(*row, *percent);
                continue;
            }
            let read_right = OfColumn::ReadRight {
                about: character.to_owned(),
                name: name.clone(),
                twice: row.is_some(),
                at: place.clone().into(),
            };
            report.one(Place::Cell(place.clone()), read_right);
        }
        found
    }
}
