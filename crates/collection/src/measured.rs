//! Measured leaves come in: which kinds they are, what range of each length they give the
//! table, and how they look.
//!
//! From leaves with the names that a person gave them to a plan that can be shown, and from the
//! plan to edits: each leaf is kept as a specimen, and ranges follow from all of them
//! ([`rows`]). Whatever was measured is one source of a cell beside others
//! ([`Sayings`]): leaves of another picture widen its range, what a person
//! typed decides and stays, unless the person says otherwise. On how many leaves a range rests
//! stands in the cell, as the reader of tables knows it: `52-61 mm (3 seen)`.

mod looks;

use std::collections::{BTreeMap, BTreeSet};

use spinney_exchange::table::{self, TypedColumn, TypedSheets};
use spinney_model::{
    CharacterEdit, CharacterField, CharacterId, Edit, KindEdit, KindId, Measurand, Quantity,
    Scale, SpecimenEdit, SpecimenField, SpecimenId, Value,
};

use spinney_voice::Tongue;
use spinney_voice::starters::{Look, SEEN};

use crate::intake::{self, OddUnit};
use crate::laid::{Laid, Meaning, Meanings, folded};
use crate::{Collection, Sayings, kinds, laid, reworded, rows};
use looks::Column;

pub use looks::Looked;

/// The lengths that become columns.
pub const LENGTHS: [Measurand; 3] =
    [Measurand::BladeLength, Measurand::BladeWidth, Measurand::StalkLength];
/// What they are measured in.
const UNIT: &str = "mm";
/// Longer than any leaf, in mm: what a form says wrongly does not become a number without end.
const LONGEST: f64 = 1e6;

/// A column that leaves can say something in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ColumnOf {
    /// One of [`LENGTHS`], by its place.
    Length(usize),
    /// A question of [`SEEN`], by its place.
    Look(usize),
}

/// A leaf with a name.
#[derive(Clone, Debug, PartialEq)]
pub struct Named {
    /// What kind it is.
    pub kind: String,
    /// [`LENGTHS`] in mm with how far each may be off, as far as they were measured.
    pub lengths: [Option<(f64, f64)>; LENGTHS.len()],
    /// What its outline answers of the questions of [`SEEN`].
    pub looks: [Option<Look>; SEEN.len()],
    /// What else is known of it.
    pub fields: Vec<(SpecimenField, String)>,
}

/// What columns and sources are called, in the words of a person.
pub struct Words {
    /// By what name each of [`LENGTHS`] may stand in the table; the first is that of a new
    /// column.
    pub columns: [Vec<String>; LENGTHS.len()],
    /// What is said of a new column.
    pub fields: [Vec<(CharacterField, String)>; LENGTHS.len()],
    /// The language in which new columns speak of how leaves look.
    pub tongue: Tongue,
    /// Who says what was measured; the first is taken where no other has said anything yet.
    pub sources: Vec<String>,
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
    fn of_one((mm, _): (f64, f64)) -> Self {
        let at = tenths(mm);
        Self { low: at, high: at, leaves: 1 }
    }

    fn with(self, other: Self) -> Self {
        let leaves = self.leaves.saturating_add(other.leaves);
        Self { low: self.low.min(other.low), high: self.high.max(other.high), leaves }
    }

    /// As it is typed, without how many leaves: `52-61`.
    pub fn text(self) -> String {
        let (low, high) = rows::as_a_ruler_shows(self.low, self.high);
        if low == high { low.to_string() } else { format!("{low}-{high}") }
    }
}

/// A length as it is kept: nobody measures a leaf more finely than to a tenth of a millimetre.
fn tenths(mm: f64) -> Quantity {
    Quantity::from_thousandths((mm.clamp(0.0, LONGEST) * 10.0).round() as i64 * 100)
}

/// What is to be taken in.
#[derive(Clone, Debug)]
pub struct Plan {
    /// The kinds, in the order in which they were named.
    pub kinds: Vec<OfKind>,
    columns: [Option<CharacterId>; LENGTHS.len()],
    looks: [Column; SEEN.len()],
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
    /// How it looks.
    pub looks: Vec<Looked>,
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
        let source = source(collection, &words.sources);
        let said = laid::said(collection, laid.as_ref());
        let looks = looks::columns(collection, laid.as_ref(), words.tongue);
        let mut plan = Self { kinds: Vec::new(), columns, looks, source };
        let mut places = BTreeMap::new();
        for (at, leaf) in leaves.iter().enumerate() {
            let Some(leaf) = leaf else { continue };
            let place = *places.entry(folded(&leaf.kind)).or_insert_with(|| {
                let id = kinds::called(collection, &leaf.kind, None);
                let name = id.map_or_else(|| leaf.kind.clone(), |id| collection.name(id));
                let (leaves, ranges, looks) = (Vec::new(), Vec::new(), Vec::new());
                plan.kinds.push(OfKind { name, id, leaves, ranges, looks });
                plan.kinds.len() - 1
            });
            plan.kinds[place].leaves.push(at);
        }
        for at in 0..plan.kinds.len() {
            let ranges = (0..LENGTHS.len()).filter_map(|length| {
                plan.ranged((collection, laid.as_ref(), &said), leaves, at, length)
            });
            plan.kinds[at].ranges = ranges.collect();
            let kind = &plan.kinds[at];
            let looked =
                (0..SEEN.len()).filter_map(|look| plan.looked(&said, leaves, kind, look));
            plan.kinds[at].looks = looked.collect();
        }
        plan
    }

    /// Whether anything goes into the table.
    pub fn has_columns(&self) -> bool {
        !self.wanted().is_empty()
    }

    fn ranged(
        &self,
        (collection, laid, sayings): (&Collection, Option<&Laid>, &Sayings),
        leaves: &[Option<Named>],
        kind: usize,
        length: usize,
    ) -> Option<Ranged> {
        let kind = &self.kinds[kind];
        let of_leaf = |at: &usize| leaves[*at].as_ref()?.lengths[length].map(Range::of_one);
        let now = kind.leaves.iter().filter_map(of_leaf).reduce(Range::with)?;
        let column = self.columns[length];
        let said = |source: &str| match (kind.id, column) {
            (Some(kind), Some(at)) => sayings.said(kind, at, source).to_owned(),
            _ => String::new(),
        };
        let before = said(&self.source);
        let measured = column.and_then(|at| range(collection, at, &before));
        Some(Ranged {
            length,
            now,
            together: measured.map_or(now, |before| before.with(now)),
            before,
            typed: said(""),
            others: self.others(sayings, kind, column),
            fits: column.is_none_or(|at| takes_lengths(collection, laid, at)),
        })
    }

    /// What others say of a cell, each with who says it.
    fn others(
        &self,
        sayings: &Sayings,
        kind: &OfKind,
        column: Option<CharacterId>,
    ) -> Vec<(String, String)> {
        let others = match (kind.id, column) {
            (Some(kind), Some(at)) => sayings.sources(kind, at),
            _ => Vec::new(),
        };
        let others = others.into_iter().filter_map(|(who, said)| Some((who, said.text()?)));
        let others = others.filter(|(who, _)| !who.is_empty() && *who != self.source);
        others.map(|(who, text)| (who.to_owned(), text.to_owned())).collect()
    }

    /// What stands in the cells that it is about, and who is there: while this stays, the plan
    /// does.
    pub fn rests_on(&self) -> String {
        let kind = |kind: &OfKind| {
            let cells: Vec<_> = kind
                .ranges
                .iter()
                .map(|one| (&one.before, &one.typed, &one.others, one.fits))
                .chain(
                    kind.looks
                        .iter()
                        .map(|one| (&one.before, &one.typed, &one.others, one.fits)),
                )
                .collect();
            format!("{:?} {:?} {cells:?}", kind.id, kind.name)
        };
        let kinds: Vec<String> = self.kinds.iter().map(kind).collect();
        let said = self.kinds.iter().flat_map(|kind| &kind.looks);
        let columns: BTreeSet<_> = said
            .map(|one| {
                let column = &self.looks[one.look];
                (one.look, column.id, column.id.map(|_| column.t.tag()))
            })
            .collect();
        format!("{:?} {columns:?} {kinds:?}", self.columns)
    }

    /// The edits that take it in. `instead` says of which kinds (by their places) and columns
    /// what was measured goes before what is typed.
    ///
    /// **Errors**: a column that takes no lengths, which the plan says beforehand.
    pub fn edits(
        &self,
        collection: &Collection,
        words: &Words,
        (leaves, shown): (&[Option<Named>], &[Shown]),
        instead: &BTreeSet<(usize, ColumnOf)>,
    ) -> Result<Vec<Edit>, OddUnit> {
        let sheets = self.sheets(collection, words);
        let mut edits = intake::take_in(collection, &sheets, &self.source)?.edits;
        let columns = self.columns_after(&edits);
        let mut made = edits.iter().filter_map(|edit| match edit {
            Edit::Kind(id, KindEdit::Add(_)) => Some(*id),
            _ => None,
        });
        // Rows are taken in in their order, so that new kinds come in theirs.
        let ids: Vec<Option<KindId>> =
            self.kinds.iter().map(|kind| kind.id.or_else(|| made.next())).collect();
        let mut next = collection.next_specimen().0;
        for ((at, kind), id) in self.kinds.iter().enumerate().zip(ids) {
            let Some(id) = id else { continue };
            let of_kind = |leaf: &usize| shown.get(*leaf).and_then(|one| one.of_kind.clone());
            let first = kind.leaves.first().and_then(of_kind);
            edits.extend(first.map(|edit| Edit::Kind(id, edit)));
            for character in self.taken_back(at, instead) {
                let (source, text) = (String::new(), String::new());
                edits.push(Edit::Cell { kind: id, character, source, text });
            }
            for place in &kind.leaves {
                let Some(leaf) = &leaves[*place] else { continue };
                let picture = shown.get(*place).and_then(|one| one.alone.clone());
                let of = self.specimen(kind, id, leaf, picture, &columns);
                edits.extend(of.into_iter().map(|edit| Edit::Specimen(SpecimenId(next), edit)));
                next += 1;
            }
        }
        edits.extend(reworded::follow(collection, &edits));
        Ok(edits)
    }

    /// The columns in which what is typed of a kind goes, since what was measured is to count.
    fn taken_back(&self, at: usize, instead: &BTreeSet<(usize, ColumnOf)>) -> Vec<CharacterId> {
        let kind = &self.kinds[at];
        let lengths = kind.ranges.iter().map(|one| {
            (ColumnOf::Length(one.length), self.columns[one.length], one.fits, &one.typed)
        });
        let looks = kind.looks.iter().map(|one| {
            (ColumnOf::Look(one.look), self.looks[one.look].id, one.fits, &one.typed)
        });
        lengths
            .chain(looks)
            .filter(|(into, _, fits, typed)| {
                *fits && !typed.is_empty() && instead.contains(&(at, *into))
            })
            .filter_map(|(_, column, _, _)| column)
            .collect()
    }

    /// The columns that leaves say something in, in the order of the table; those that these edits
    /// make among them.
    fn columns_after(&self, edits: &[Edit]) -> BTreeMap<ColumnOf, CharacterId> {
        let mut made = edits.iter().filter_map(|edit| match edit {
            Edit::Character(id, CharacterEdit::Add(_)) => Some(*id),
            _ => None,
        });
        let wanted = self.wanted().into_iter();
        wanted
            .filter_map(|into| Some((into, self.column(into).or_else(|| made.next())?)))
            .collect()
    }

    fn column(&self, into: ColumnOf) -> Option<CharacterId> {
        match into {
            ColumnOf::Length(at) => self.columns[at],
            ColumnOf::Look(at) => self.looks[at].id,
        }
    }

    /// A leaf as it is kept.
    fn specimen(
        &self,
        kind: &OfKind,
        id: KindId,
        leaf: &Named,
        picture: Option<String>,
        columns: &BTreeMap<ColumnOf, CharacterId>,
    ) -> Vec<SpecimenEdit> {
        let source = (SpecimenField::Source, self.source.clone());
        let said = std::iter::once(&source).chain(&leaf.fields);
        let said = said.filter(|(_, text)| !text.is_empty());
        let said = said.map(|(field, text)| SpecimenEdit::Describe(*field, text.clone()));
        let measured = leaf.lengths.iter().enumerate().filter_map(|(at, length)| {
            let fits = kind.ranges.iter().any(|one| one.length == at && one.fits);
            let (mm, off) = (*length).filter(|_| fits)?;
            let character = *columns.get(&ColumnOf::Length(at))?;
            let text = format!("{} {UNIT}", tenths(mm));
            let plus_minus = tenths(off.max(0.1)).to_string();
            Some(SpecimenEdit::Measure { character, text, plus_minus })
        });
        let looks = leaf.looks.iter().enumerate().filter_map(|(at, look)| {
            let fits = kind.looks.iter().any(|one| one.look == at && one.fits);
            let text = self.looks[at].text((*look).filter(|_| fits)?)?;
            let (character, plus_minus) = (*columns.get(&ColumnOf::Look(at))?, String::new());
            Some(SpecimenEdit::Measure { character, text, plus_minus })
        });
        std::iter::once(SpecimenEdit::Add(id))
            .chain(said)
            .chain(picture.map(SpecimenEdit::Picture))
            .chain(looks)
            .chain(measured)
            .collect()
    }

    /// The columns that leaves say something in, and that are there or may be, in the order of the
    /// table: how a leaf looks, then how long it is.
    fn wanted(&self) -> Vec<ColumnOf> {
        let looks = (0..SEEN.len()).filter(|at| {
            let fits = |one: &Looked| one.look == *at && one.fits;
            self.kinds.iter().any(|kind| kind.looks.iter().any(fits))
        });
        let lengths = (0..LENGTHS.len()).filter(|at| {
            let fits = |one: &Ranged| one.length == *at && one.fits;
            self.kinds.iter().any(|kind| kind.ranges.iter().any(fits))
        });
        looks.map(ColumnOf::Look).chain(lengths.map(ColumnOf::Length)).collect()
    }

    /// The columns and kinds that leaves need, as a table without numbers that comes in.
    fn sheets(&self, collection: &Collection, words: &Words) -> TypedSheets {
        let wanted = self.wanted();
        let name = |into: ColumnOf| match (self.column(into), into) {
            (Some(id), _) => collection.character_name(id).to_owned(),
            (None, ColumnOf::Length(at)) => {
                words.columns[at].first().cloned().unwrap_or_default()
            }
            (None, ColumnOf::Look(at)) => self.looks[at].of.name(words.tongue),
        };
        let column = |into: &ColumnOf| {
            let name = name(*into);
            match into {
                ColumnOf::Length(_) => {
                    TypedColumn { heading: format!("{name} ({UNIT})"), name, unit: Some(UNIT) }
                }
                ColumnOf::Look(_) => TypedColumn { heading: name.clone(), name, unit: None },
            }
        };
        // A question that hangs on another says so where that one is in the table, too.
        let governed = |at: usize| {
            let governor = self.looks[at].of.governor().map(|governor| governor.id);
            self.looks.iter().enumerate().any(|(other, column)| match column.id {
                Some(_) => self.looks[at].is_governed_by(column, words.tongue),
                None => {
                    governor == Some(column.of.id) && wanted.contains(&ColumnOf::Look(other))
                }
            })
        };
        let fields = |into: ColumnOf| match into {
            ColumnOf::Length(at) => words.fields[at].clone(),
            ColumnOf::Look(at) => self.looks[at].of.fields(words.tongue, governed(at)),
        };
        let row = |kind: &OfKind| (kind.name.clone(), vec![String::new(); wanted.len()]);
        let fresh = wanted.iter().filter(|into| self.column(**into).is_none());
        TypedSheets {
            columns: wanted.iter().map(column).collect(),
            rows: self.kinds.iter().map(row).collect(),
            characters: fresh.map(|into| (name(*into), fields(*into))).collect(),
            ..TypedSheets::default()
        }
    }
}

/// What there is to be seen of a leaf.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shown {
    /// The name of its own picture.
    pub alone: Option<String>,
    /// What makes it the face of its kind: its picture, or its drawing.
    pub of_kind: Option<KindEdit>,
}

/// Who says what was measured: of some names the first that is known here already, else the first.
pub fn source(collection: &Collection, names: &[String]) -> String {
    let here = collection.who();
    let known = |who: &&String| here.contains(who.as_str());
    names.iter().find(known).or(names.first()).cloned().unwrap_or_default()
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
