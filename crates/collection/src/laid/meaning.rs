//! What cells mean to the reader of tables, so that two can be compared.
//!
//! From texts of a column to what the reader makes of each: `smooth or toothed` and
//! `toothed, smooth` are the same two states, `2-4 cm` and `20-40` the same range of
//! millimetres. They are read as a column of their own under the column's description, by the
//! very reader that reads the table.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use spinney_exchange::table::{self, Row, Settings, TypedTable};
use spinney_model::{CharacterField, CharacterId, Matrix, Scale, Share, TaxonIx, Value};

use super::{character_rows, folded};
use crate::Collection;

/// What a cell means to the reader.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Meaning {
    /// States, their names folded, each with its share.
    States(BTreeMap<String, Share>),
    /// Numbers; or that the kind has no such thing.
    Other(Value),
    /// Nothing: `?`, or what the reader does not understand; folded.
    Unread(String),
}

impl Meaning {
    /// Whether two people mean the same. Who only saw that a kind varies does not contradict
    /// who counted; who counted something else does.
    pub fn same(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::States(one), Self::States(two)) if !(self.counted() && other.counted()) => {
                one.keys().eq(two.keys())
            }
            _ => self == other,
        }
    }

    /// Whether somebody counted, and not all came to the same number.
    pub fn counted(&self) -> bool {
        match self {
            Self::States(shares) => {
                shares.values().any(|share| Some(share) != shares.values().next())
            }
            Self::Other(_) | Self::Unread(_) => false,
        }
    }
}

/// What texts mean, column by column.
#[derive(Debug, Default)]
pub struct Meanings(BTreeMap<CharacterId, BTreeMap<String, Meaning>>);

impl Meanings {
    /// Reads texts of some columns. What a column holds (words, numbers, in which unit) may
    /// show in its texts alone, so all of a column are wanted. `states` are those that are
    /// known where nobody has listed them.
    pub fn of(
        collection: &Collection,
        states: &BTreeMap<CharacterId, String>,
        columns: BTreeMap<CharacterId, Vec<String>>,
    ) -> Self {
        if columns.is_empty() {
            return Self::default();
        }
        let unique = |texts: Vec<String>| {
            texts.into_iter().collect::<BTreeSet<_>>().into_iter().collect::<Vec<_>>()
        };
        let columns: BTreeMap<CharacterId, Vec<String>> =
            columns.into_iter().map(|(at, texts)| (at, unique(texts))).collect();
        let typed = TypedTable {
            table: rows(collection, &columns),
            characters: described(collection, states),
            ..TypedTable::default()
        };
        let Ok(read) = table::read_typed(&typed, &Settings::default()) else {
            return Self::default();
        };
        let meanings = columns.into_iter().map(|(id, texts)| {
            let name = folded(collection.character_name(id));
            let characters = read.matrix.characters();
            let at = characters.iter().position(|character| folded(&character.name) == name);
            let meant = |(row, text): (usize, String)| {
                let meaning = meaning(&read.matrix, row, at?, &text);
                Some((text, meaning))
            };
            (id, texts.into_iter().enumerate().filter_map(meant).collect())
        });
        Self(meanings.collect())
    }

    /// What one of the texts means.
    pub fn of_text(&self, at: CharacterId, text: &str) -> Meaning {
        let known = self.0.get(&at).and_then(|texts| texts.get(text));
        known.cloned().unwrap_or_else(|| Meaning::Unread(folded(text)))
    }
}

/// A row for every text of the longest column; the kinds are only numbers.
fn rows<'l>(
    collection: &'l Collection,
    columns: &'l BTreeMap<CharacterId, Vec<String>>,
) -> Vec<Row<'l>> {
    let names = columns.keys().map(|id| Cow::Borrowed(collection.character_name(*id)));
    let heading = std::iter::once(Cow::Borrowed("kind")).chain(names).collect();
    let longest = columns.values().map(Vec::len).max().unwrap_or(0);
    let row = |at: usize| {
        let text = |texts: &'l Vec<String>| texts.get(at).map_or("", String::as_str);
        let cells = columns.values().map(|texts| Cow::Borrowed(text(texts)));
        std::iter::once(Cow::Owned(format!("row {}", at + 1))).chain(cells).collect()
    };
    std::iter::once(heading).chain((0..longest).map(row)).collect()
}

/// The columns' descriptions without what depends on the kinds or on other columns.
pub(crate) fn described<'l>(
    collection: &'l Collection,
    states: &'l BTreeMap<CharacterId, String>,
) -> Vec<Row<'l>> {
    const READ: [CharacterField; 4] = [
        CharacterField::Name,
        CharacterField::Values,
        CharacterField::States,
        CharacterField::Unit,
    ];
    let mut rows = character_rows(collection, states);
    for row in rows.iter_mut().skip(1) {
        for (text, (field, _)) in row.iter_mut().zip(table::character_headings()) {
            if !READ.contains(&field) {
                *text = Cow::Borrowed("");
            }
        }
    }
    rows
}

fn meaning(matrix: &Matrix, row: usize, at: usize, text: &str) -> Meaning {
    let at = spinney_model::CharacterIx(at);
    match (&matrix.cell(TaxonIx(row), at).value, &matrix.character(at).scale) {
        (Value::States(shares), Scale::Words { states }) => {
            let share = |(state, share): &(spinney_model::StateIx, Share)| {
                (folded(&states[state.0]), *share)
            };
            Meaning::States(shares.iter().map(share).collect())
        }
        (Value::Unknown, _) => Meaning::Unread(folded(text)),
        (value, _) => Meaning::Other(value.clone()),
    }
}
