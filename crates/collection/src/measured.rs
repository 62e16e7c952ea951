//! Measured leaves come in: which kinds they are, and what range of each length they give the
//! table.
//!
//! From leaves with the names that a person gave them to a plan that can be shown, and from the
//! plan to edits. Whatever was measured is one source of a cell beside others
//! ([`Sayings`](crate::Sayings)): leaves of another picture widen its range, what a person
//! typed decides and stays, unless the person says otherwise. On how many leaves a range rests
//! stands in the cell, as the reader of tables knows it: `52-61 (3 seen)`.

use std::collections::{BTreeMap, BTreeSet};

use spinney_exchange::table::{self, TypedColumn, TypedSheets};
use spinney_model::{
    CharacterField, CharacterId, Edit, KindEdit, KindId, Measurand, Quantity, Scale, Value,
};

use crate::intake::{self, OddUnit};
use crate::laid::{Laid, Meaning, Meanings, folded};
use crate::{Collection, kinds, reworded};

/// The lengths that become columns.
pub const LENGTHS: [Measurand; 3] =
    [Measurand::BladeLength, Measurand::BladeWidth, Measurand::StalkLength];
/// What they are measured in.
const UNIT: &str = "mm";
/// Longer than any leaf, in mm: what a form says wrongly does not become a number without end.
const LONGEST: f64 = 1e6;
/// Where all lengths of a range are shorter, in thousandths of a mm, tenths of a millimetre are
/// written; else whole ones, as a ruler shows them.
const TENTHS_BELOW: i64 = 10_000;

/// A leaf with a name.
#[derive(Clone, Debug, PartialEq)]
pub struct Named {
    /// What kind it is.
    pub kind: String,
    /// [`LENGTHS`] in mm, as far as they were measured.
    pub lengths: [Option<f64>; LENGTHS.len()],
}

/// What columns and sources are called, in the words of a person.
pub struct Words {
    /// By what name each of [`LENGTHS`] may stand in the table; the first is that of a new
    /// column.
    pub columns: [Vec<String>; LENGTHS.len()],
    /// What is said of a new column.
    pub fields: [Vec<(CharacterField, String)>; LENGTHS.len()],
    /// Who says what was measured; the first is taken where no other has said anything yet.
    pub sources: Vec<String>,
    /// On how many leaves it was seen, in the words of the table: `(3 seen)`.
    pub seen: fn(u32) -> String,
}

/// From the smallest to the largest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Range {
    /// The smallest, in mm.
    pub low: Quantity,
    /// The largest.
    pub high: Quantity,
    /// On how many leaves it rests.
    pub leaves: u32,
}

impl Range {
    fn of_one(mm: f64) -> Self {
        let mm = mm.clamp(0.0, LONGEST);
        let at = Quantity::from_thousandths((mm * 1000.0).round() as i64);
        Self { low: at, high: at, leaves: 1 }
    }

    fn with(self, other: Self) -> Self {
        let leaves = self.leaves.saturating_add(other.leaves);
        Self { low: self.low.min(other.low), high: self.high.max(other.high), leaves }
    }

    /// As it is typed, without how many leaves: `52-61`.
    pub fn text(self) -> String {
        let step = if self.high.thousandths() < TENTHS_BELOW { 100 } else { 1000 };
        let [low, high] = [self.low, self.high].map(|end| {
            let steps = (end.thousandths() + step / 2).div_euclid(step);
            Quantity::from_thousandths(steps * step)
        });
        if low == high { low.to_string() } else { format!("{low}-{high}") }
    }
}

/// What is to be taken in.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The kinds, in the order in which they were named.
    pub kinds: Vec<OfKind>,
    columns: [Option<CharacterId>; LENGTHS.len()],
    source: String,
}

/// What is to be taken in of a kind.
#[derive(Clone, Debug, PartialEq)]
pub struct OfKind {
    /// What it is called.
    pub name: String,
    /// None: it is not there yet.
    pub id: Option<KindId>,
    /// Its leaves, by their places.
    pub leaves: Vec<usize>,
    /// What was measured of it.
    pub ranges: Vec<Ranged>,
}

/// A measured length of a kind.
#[derive(Clone, Debug, PartialEq)]
pub struct Ranged {
    /// Which of [`LENGTHS`].
    pub length: usize,
    /// What the leaves of this picture say.
    pub now: Range,
    /// What leaves said that were measured before, as it stands there.
    pub before: String,
    /// All leaves together.
    pub together: Range,
    /// What the table itself says, which decides; empty: nothing.
    pub typed: String,
    /// What others say, each with who says it.
    pub others: Vec<(String, String)>,
    /// Whether the column takes lengths; else nothing is written.
    pub fits: bool,
}

impl Plan {
    /// What named leaves come to. A leaf without a name is left out.
    pub fn of(collection: &Collection, words: &Words, leaves: &[Option<Named>]) -> Self {
        let laid = Laid::of(collection);
        let columns = words.columns.each_ref().map(|names| {
            let named = |id: &CharacterId| {
                let name = folded(collection.character_name(*id));
                names.iter().any(|known| folded(known) == name)
            };
            collection.characters.keys().copied().find(named)
        });
        let known =
            words.sources.iter().find(|who| collection.cells.who().contains(who.as_str()));
        let source = known.or(words.sources.first()).cloned().unwrap_or_default();
        let mut plan = Self { kinds: Vec::new(), columns, source };
        let mut places = BTreeMap::new();
        for (at, leaf) in leaves.iter().enumerate() {
            let Some(leaf) = leaf else { continue };
            let place = *places.entry(folded(&leaf.kind)).or_insert_with(|| {
                let id = kinds::called(collection, &leaf.kind, None);
                let name = id.map_or_else(|| leaf.kind.clone(), |id| collection.name(id));
                plan.kinds.push(OfKind { name, id, leaves: Vec::new(), ranges: Vec::new() });
                plan.kinds.len() - 1
            });
            plan.kinds[place].leaves.push(at);
        }
        for at in 0..plan.kinds.len() {
            let ranges = (0..LENGTHS.len()).filter_map(|length| {
                plan.ranged(collection, laid.as_ref(), leaves, at, length)
            });
            plan.kinds[at].ranges = ranges.collect();
        }
        plan
    }

    fn ranged(
        &self,
        collection: &Collection,
        laid: Option<&Laid>,
        leaves: &[Option<Named>],
        kind: usize,
        length: usize,
    ) -> Option<Ranged> {
        let kind = &self.kinds[kind];
        let of_leaf = |at: &usize| leaves[*at].as_ref()?.lengths[length].map(Range::of_one);
        let now = kind.leaves.iter().filter_map(of_leaf).reduce(Range::with)?;
        let column = self.columns[length];
        let said = |source: &str| match (kind.id, column) {
            (Some(kind), Some(at)) => collection.cells.said(kind, at, source).to_owned(),
            _ => String::new(),
        };
        let before = said(&self.source);
        let measured = column.and_then(|at| range(collection, at, &before));
        let others = match (kind.id, column) {
            (Some(kind), Some(at)) => collection.cells.sources(kind, at),
            _ => Vec::new(),
        };
        let others =
            others.into_iter().filter(|(who, _)| !who.is_empty() && *who != self.source);
        Some(Ranged {
            length,
            now,
            together: measured.map_or(now, |before| before.with(now)),
            before,
            typed: said(""),
            others: others.map(|(who, text)| (who.to_owned(), text.to_owned())).collect(),
            fits: column.is_none_or(|at| takes_lengths(collection, laid, at)),
        })
    }

    /// What stands in the cells that it is about, and who is there: while this stays, the plan
    /// does.
    pub fn rests_on(&self) -> String {
        let kind = |kind: &OfKind| {
            let cells: Vec<_> = kind
                .ranges
                .iter()
                .map(|one| (&one.before, &one.typed, &one.others, one.fits))
                .collect();
            format!("{:?} {:?} {cells:?}", kind.id, kind.name)
        };
        let kinds: Vec<String> = self.kinds.iter().map(kind).collect();
        format!("{:?} {kinds:?}", self.columns)
    }

    /// The edits that take it in. `instead` says of which kinds and lengths (by their places)
    /// what was measured goes before what is typed. `picture` gives the name of the picture of
    /// a leaf, for a kind that has none.
    ///
    /// **Errors**: a column that takes no lengths, which the plan says beforehand.
    pub fn edits(
        &self,
        collection: &Collection,
        words: &Words,
        instead: &BTreeSet<(usize, usize)>,
        mut picture: impl FnMut(usize) -> Option<String>,
    ) -> Result<Vec<Edit>, OddUnit> {
        let sheets = self.sheets(collection, words);
        let mut edits = intake::take_in(collection, &sheets, &self.source)?.edits;
        let mut made = edits.iter().filter_map(|edit| match edit {
            Edit::Kind(id, KindEdit::Add(_)) => Some(*id),
            _ => None,
        });
        // Rows are taken in in their order, so that new kinds come in theirs.
        let ids: Vec<Option<KindId>> =
            self.kinds.iter().map(|kind| kind.id.or_else(|| made.next())).collect();
        for ((at, kind), id) in self.kinds.iter().enumerate().zip(ids) {
            let Some(id) = id else { continue };
            let bare = collection.kinds.get(&id).is_none_or(|kind| kind.pictures.is_empty());
            let first = kind.leaves.first().filter(|_| bare);
            if let Some(hash) = first.and_then(|leaf| picture(*leaf)) {
                edits.push(Edit::Kind(id, KindEdit::AddPicture(hash)));
            }
            for one in kind.ranges.iter().filter(|one| instead.contains(&(at, one.length))) {
                let typed =
                    self.columns[one.length].filter(|_| one.fits && !one.typed.is_empty());
                edits.extend(typed.map(|character| Edit::Cell {
                    kind: id,
                    character,
                    source: String::new(),
                    text: String::new(),
                }));
            }
        }
        edits.extend(reworded::follow(collection, &edits));
        Ok(edits)
    }

    /// What was measured as a table that comes in.
    fn sheets(&self, collection: &Collection, words: &Words) -> TypedSheets {
        let ranged = |kind: &OfKind, length: usize| {
            kind.ranges
                .iter()
                .find(|one| one.length == length && one.fits)
                .map(|one| one.together)
        };
        let wanted: Vec<usize> = (0..LENGTHS.len())
            .filter(|length| self.kinds.iter().any(|kind| ranged(kind, *length).is_some()))
            .collect();
        let name = |length: usize| match self.columns[length] {
            Some(id) => collection.character_name(id).to_owned(),
            None => words.columns[length].first().cloned().unwrap_or_default(),
        };
        let column = |length: &usize| {
            let name = name(*length);
            TypedColumn { heading: format!("{name} ({UNIT})"), name, unit: Some(UNIT) }
        };
        let text = |range: Range| format!("{} {}", range.text(), (words.seen)(range.leaves));
        let row = |kind: &OfKind| {
            let texts = wanted.iter().map(|at| ranged(kind, *at).map_or(String::new(), text));
            (kind.name.clone(), texts.collect())
        };
        let fresh = wanted.iter().filter(|length| self.columns[**length].is_none());
        TypedSheets {
            columns: wanted.iter().map(column).collect(),
            rows: self.kinds.iter().map(row).collect(),
            characters: fresh.map(|at| (name(*at), words.fields[*at].clone())).collect(),
            ..TypedSheets::default()
        }
    }
}

/// A range that stands in a cell; None: none can be read there.
fn range(collection: &Collection, at: CharacterId, text: &str) -> Option<Range> {
    if text.is_empty() {
        return None;
    }
    let column = BTreeMap::from([(at, vec![text.to_owned()])]);
    match Meanings::of(collection, &BTreeMap::new(), column).of_text(at, text) {
        Meaning::Other(Value::Range { low, high }) => {
            Some(Range { low, high, leaves: table::seen_on(text).unwrap_or(1) })
        }
        _ => None,
    }
}

/// Whether lengths can go into a column.
fn takes_lengths(collection: &Collection, laid: Option<&Laid>, id: CharacterId) -> bool {
    let scale = laid.and_then(|laid| Some(&laid.matrix.character(laid.character(id)?).scale));
    let words = match scale {
        Some(Scale::Words { states }) => !states.is_empty(),
        Some(Scale::Counts) => true,
        Some(Scale::Measure { .. }) | None => false,
    };
    !words && intake::takes(collection, id, UNIT)
}

#[cfg(test)]
mod tests;
