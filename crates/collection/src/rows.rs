//! A row a leaf: the single specimens of a collection, read as the table of finds that they are.
//!
//! From specimens to the table that `check` works out spreads and cuts of, and to what those of a
//! kind come to in its cells: each source is one voice there, and what it typed of the same cell
//! itself counts beside its specimens. The reader of tables reads them as it reads any table with
//! a row a find. What somebody says was measured wrongly is kept, and not read.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use spinney_exchange::table::{self, Row, RowsAre, Settings, TypedTable};
use spinney_model::{
    Cell, Character, CharacterId, CharacterIx, Judged, KindId, Matrix, Outlier, Quantity,
    Scale, SpecimenField, SpecimenId, Specimens, Spread, SpreadOf, Taxon, TaxonIx, Unit, Value,
};

use crate::laid::{Laid, Meaning, Meanings, described, folded};
use crate::{Collection, Specimen};

/// The specimens of a collection as a table.
#[derive(Clone, Debug)]
pub struct Rows {
    /// What they come to, a row a kind.
    pub kinds: Matrix,
    /// A row a specimen; the number of its row is its own.
    pub specimens: Specimens,
    /// Which specimen each row is.
    pub ids: Vec<SpecimenId>,
    /// Which kind each row of kinds is.
    pub of: Vec<KindId>,
    /// Which character each column is.
    pub characters: Vec<CharacterId>,
}

/// What stands above the columns that say which find a row is.
const OF_FINDS: [&str; 6] = ["kind", "find", "which plant", "where", "when", "which part"];

/// Where all lengths of a range are shorter, in thousandths of a mm, tenths of a millimetre are
/// written; else whole ones, as a ruler shows them.
const TENTHS_BELOW: i64 = 10_000;

impl Rows {
    /// None: there are none, or nothing was measured on them.
    pub fn of(collection: &Collection) -> Option<Self> {
        let lines: Vec<Line<'_>> = collection
            .specimens
            .iter()
            .filter(|(_, specimen)| collection.kinds.contains_key(&specimen.kind))
            .map(|(id, specimen)| Line::of_specimen(*id, specimen))
            .collect();
        let mut read = Self::read(collection, &lines)?;
        for (written, id) in read.specimens.written.iter_mut().zip(&read.ids) {
            written.at.row = id.0.saturating_sub(1);
        }
        Some(read)
    }

    /// How they spread, where to cut, and how many more to measure.
    pub fn spread(&self) -> Spread {
        spinney_check::spread(&self.kinds, &self.specimens)
    }

    /// The specimen of an outlier, and whether somebody has looked at it and says that it is right.
    pub fn outlier(
        &self,
        collection: &Collection,
        character: CharacterIx,
        one: &Outlier,
    ) -> (SpecimenId, bool) {
        let id = self.ids[one.find];
        let measured = collection
            .specimens
            .get(&id)
            .and_then(|specimen| specimen.measured.get(self.characters.get(character.0)?));
        (id, measured.is_some_and(|one| one.judged == Some(Judged::Right)))
    }

    /// The numbers of one kind (or of a part of it) in a character, each with its place among the
    /// finds, the smallest first.
    pub fn values(&self, one: &SpreadOf) -> Vec<(usize, Quantity)> {
        let part = one.part.as_deref().map(folded);
        let written = self.specimens.written.iter().enumerate();
        let of = written.filter(|(_, find)| {
            let of_part = part.as_ref().is_none_or(|part| *part == folded(&find.part));
            find.kind == one.taxon && of_part
        });
        let mut values: Vec<_> = of
            .filter_map(|(at, _)| {
                let cell = self.specimens.finds.cell(TaxonIx(at), one.character);
                Some((at, number(&cell.value)?))
            })
            .collect();
        values.sort_by_key(|(at, value)| (*value, *at));
        values
    }

    /// From the smallest to the largest of those that are not far from the others.
    pub fn others(&self, one: &SpreadOf) -> (Quantity, Quantity) {
        let is_far = |at: usize| one.outliers.iter().any(|outlier| outlier.find == at);
        let values = self.values(one).into_iter().filter(|(at, _)| !is_far(*at));
        let values: Vec<Quantity> = values.map(|(_, value)| value).collect();
        let ends = values.first().copied().zip(values.last().copied());
        ends.unwrap_or((one.least, one.most))
    }

    /// On which specimens something can be read, and where.
    fn read_of(&self) -> impl Iterator<Item = (SpecimenId, CharacterId)> {
        let columns = || self.characters.iter().enumerate();
        let all = self.ids.iter().enumerate().flat_map(move |(row, id)| {
            columns().map(move |(column, at)| (row, column, (*id, *at)))
        });
        let finds = &self.specimens.finds;
        let is_read =
            |row, column| finds.cell(TaxonIx(row), CharacterIx(column)).value != Value::Unknown;
        all.filter(move |(row, column, _)| is_read(*row, *column)).map(|(.., one)| one)
    }

    fn read(collection: &Collection, lines: &[Line<'_>]) -> Option<Self> {
        let mut names = BTreeMap::new();
        for id in lines.iter().flat_map(|line| line.cells.keys()) {
            let name = collection.character_name(*id);
            // A column of this name would say which find it is, and not how it is.
            if !name.trim().is_empty() && !table::is_of_finds(name) {
                names.insert(folded(name), *id);
            }
        }
        let columns: BTreeSet<CharacterId> = names.values().copied().collect();
        if columns.is_empty() {
            return None;
        }
        let heading = OF_FINDS.into_iter().map(Cow::Borrowed);
        let heading: Row<'_> = heading
            .chain(columns.iter().map(|id| Cow::Borrowed(collection.character_name(*id))))
            .collect();
        let rows = lines.iter().map(|line| line.row(&columns));
        let no_states = BTreeMap::new();
        let typed = TypedTable {
            table: std::iter::once(heading).chain(rows).collect(),
            characters: described(collection, &no_states),
            ..TypedTable::default()
        };
        let settings = Settings { rows: RowsAre::Finds, ..Settings::default() };
        let read = table::read_typed(&typed, &settings).ok()?;
        let specimens = read.specimens?;
        // Below the heading, line by line.
        let line = |row: u32| lines.get((row as usize).checked_sub(1)?);
        let of_finds: Vec<&Line<'_>> =
            specimens.written.iter().map(|one| line(one.at.row)).collect::<Option<_>>()?;
        let mut of = vec![KindId(0); read.matrix.taxa().len()];
        for (written, line) in specimens.written.iter().zip(&of_finds) {
            of[written.kind.0] = line.kind;
        }
        let characters = read.matrix.characters().iter();
        let characters = characters
            .map(|one| names.get(&folded(&one.name)).copied())
            .collect::<Option<_>>()?;
        let named = |kinds: &mut dyn Iterator<Item = KindId>| -> Vec<Taxon> {
            kinds.map(|kind| Taxon::named(collection.name(kind))).collect()
        };
        let finds = named(&mut of_finds.iter().map(|line| line.kind));
        let kinds = named(&mut of.iter().copied());
        let ids = of_finds.iter().map(|line| line.id.unwrap_or(SpecimenId(0))).collect();
        let same = "the same rows, by their names";
        Some(Self {
            kinds: read.matrix.with_taxa(kinds).expect(same),
            specimens: Specimens {
                finds: specimens.finds.with_taxa(finds).expect(same),
                written: specimens.written,
            },
            ids,
            of,
            characters,
        })
    }
}

/// What was measured on specimens, counts, and cannot be read any more, since its column was changed:
/// on which of them, and where.
pub fn unread(collection: &Collection, rows: Option<&Rows>) -> Vec<(SpecimenId, CharacterId)> {
    let read: BTreeSet<(SpecimenId, CharacterId)> =
        rows.into_iter().flat_map(Rows::read_of).collect();
    let there = collection.specimens.iter();
    let there = there.filter(|(_, one)| collection.kinds.contains_key(&one.kind));
    let all = there.flat_map(|(id, one)| {
        let counts = one.measured.iter().filter(|(_, what)| what.counts());
        counts.map(move |(at, _)| (*id, *at))
    });
    all.filter(|one| !read.contains(one)).collect()
}

/// Whether a text can be what was measured on a specimen: one number or state, which the column reads
/// as it reads what was measured on the others. A column that has states gets no other that way.
pub fn can_be_measured(
    collection: &Collection,
    (specimen, at): (SpecimenId, CharacterId),
    text: &str,
) -> bool {
    let others = collection.specimens.iter().filter(|(id, _)| **id != specimen);
    let before: Vec<String> =
        others.filter_map(|(_, one)| Some(one.measured.get(&at)?.text.clone())).collect();
    let meanings = |texts: Vec<String>| {
        Meanings::of(collection, &BTreeMap::new(), BTreeMap::from([(at, texts)]))
    };
    let was = meanings(before.clone());
    let is = meanings(before.iter().cloned().chain([text.to_owned()]).collect());
    let same = |one: &String| is.of_text(at, one) == was.of_text(at, one);
    let fits = match is.of_text(at, text) {
        Meaning::Unread(_) => false,
        Meaning::Other(value) => number(&value).is_some() || value == Value::DoesNotApply,
        Meaning::States(said) => {
            let known = states(collection, at);
            said.len() == 1
                && (known.is_empty() || said.keys().all(|state| known.contains(state)))
        }
    };
    fits && before.iter().all(same)
}

/// The states of a column, their names folded; none: it has no states yet.
fn states(collection: &Collection, at: CharacterId) -> BTreeSet<String> {
    let laid = Laid::of(collection);
    let scale = laid.as_ref().and_then(|laid| {
        let at = laid.character(at)?;
        Some(&laid.matrix.character(at).scale)
    });
    match scale {
        Some(Scale::Words { states }) => states.iter().map(|state| folded(state)).collect(),
        Some(Scale::Counts | Scale::Measure { .. }) | None => BTreeSet::new(),
    }
}

/// The one number of a find.
fn number(value: &Value) -> Option<Quantity> {
    match value {
        Value::Range { low, high } if low == high => Some(*low),
        Value::Counts(shares) => match shares.as_slice() {
            [(count, _)] => Some(Quantity::from_whole(i64::from(*count))),
            _ => None,
        },
        _ => None,
    }
}

/// A row of the table.
struct Line<'c> {
    kind: KindId,
    /// None: it is what somebody typed of the kind.
    id: Option<SpecimenId>,
    /// What is written of it, as in [`OF_FINDS`] behind the kind.
    written: [Cow<'c, str>; OF_FINDS.len() - 1],
    cells: BTreeMap<CharacterId, &'c str>,
}

impl<'c> Line<'c> {
    fn of_specimen(id: SpecimenId, specimen: &'c Specimen) -> Self {
        let field = |field| Cow::Borrowed(specimen.field(field));
        let counts = specimen.measured.iter().filter(|(_, one)| one.counts());
        Self {
            kind: specimen.kind,
            id: Some(id),
            written: [
                field(SpecimenField::Called),
                field(SpecimenField::WhichPlant),
                field(SpecimenField::Where),
                field(SpecimenField::When),
                field(SpecimenField::Part),
            ],
            cells: counts.map(|(at, one)| (*at, one.text.as_str())).collect(),
        }
    }

    fn typed(kind: KindId, cells: BTreeMap<CharacterId, &'c str>) -> Self {
        let written = std::array::from_fn(|_| Cow::Borrowed(""));
        Self { kind, id: None, written, cells }
    }

    fn row(&self, columns: &BTreeSet<CharacterId>) -> Row<'c> {
        // Two kinds may have one name.
        let kind = Cow::Owned(format!("kind {}", self.kind.0));
        let cells = columns.iter().map(|at| Cow::Borrowed(*self.cells.get(at).unwrap_or(&"")));
        std::iter::once(kind).chain(self.written.iter().cloned()).chain(cells).collect()
    }
}

/// What specimens come to in the cells of their kinds: whose cell, by whom, in the words of a cell.
pub(crate) fn voices(
    collection: &Collection,
) -> BTreeMap<(KindId, CharacterId), BTreeMap<String, String>> {
    let mut all = BTreeMap::<_, BTreeMap<String, String>>::new();
    let sources: BTreeSet<&str> = collection.specimens.values().map(source).collect();
    for source in sources {
        for (place, text) in voice(collection, source) {
            all.entry(place).or_default().insert(source.to_owned(), text);
        }
    }
    all
}

fn source(specimen: &Specimen) -> &str {
    specimen.field(SpecimenField::Source)
}

fn voice(collection: &Collection, who: &str) -> Vec<((KindId, CharacterId), String)> {
    let there = |one: &Specimen| collection.kinds.contains_key(&one.kind);
    let own = || {
        let all = collection.specimens.iter();
        all.filter(|(_, one)| source(one) == who && there(one))
    };
    let mut lines: Vec<Line<'_>> = own().map(|(id, one)| Line::of_specimen(*id, one)).collect();
    // Whether how far it may be off is known of every number.
    let mut places: BTreeMap<(KindId, CharacterId), bool> = BTreeMap::new();
    for (_, specimen) in own() {
        for (at, one) in specimen.measured.iter().filter(|(_, one)| one.counts()) {
            *places.entry((specimen.kind, *at)).or_insert(true) &= !one.plus_minus.is_empty();
        }
    }
    for kind in places.keys().map(|(kind, _)| *kind).collect::<BTreeSet<_>>() {
        let of_kind = places.keys().filter(|(of, _)| *of == kind);
        let typed = of_kind.map(|(_, at)| (*at, collection.cells.said(kind, *at, who)));
        let typed: BTreeMap<_, _> = typed.filter(|(_, text)| !text.is_empty()).collect();
        if !typed.is_empty() {
            lines.push(Line::typed(kind, typed));
        }
    }
    let Some(read) = Rows::read(collection, &lines) else { return Vec::new() };
    let mut said = Vec::new();
    for (taxon, kind) in read.of.iter().enumerate() {
        for (at, id) in read.characters.iter().enumerate() {
            let place = (*kind, *id);
            let Some(by_machine) = places.get(&place) else { continue };
            let character = read.kinds.character(CharacterIx(at));
            let cell = read.kinds.cell(TaxonIx(taxon), CharacterIx(at));
            said.extend(text(cell, character, *by_machine).map(|text| (place, text)));
        }
    }
    said
}

/// A cell as it is typed; None: it says nothing.
fn text(cell: &Cell, character: &Character, by_machine: bool) -> Option<String> {
    let rounded = |value: &Value| match value {
        Value::Range { low, high } if by_machine => {
            let (low, high) = as_a_ruler_shows(*low, *high);
            Value::Range { low, high }
        }
        other => other.clone(),
    };
    let value = match (&cell.value, &character.scale) {
        (Value::Unknown, _) => return None,
        (value, Scale::Measure { unit: Unit::Millimetres, .. }) => rounded(value),
        (value, _) => value.clone(),
    };
    Some(table::cell_text(&Cell { value, seen: cell.seen }, &character.scale))
}

/// Both ends of a range, rounded as a person reads a ruler.
pub fn as_a_ruler_shows(low: Quantity, high: Quantity) -> (Quantity, Quantity) {
    let step = if high.thousandths() < TENTHS_BELOW { 100 } else { 1000 };
    let rounded = |end: Quantity| {
        let steps = (end.thousandths() + step / 2).div_euclid(step);
        Quantity::from_thousandths(steps * step)
    };
    (rounded(low), rounded(high))
}

/// The first and the last number of each kind and character, in the order of their size.
pub(crate) fn ends(collection: &Collection) -> BTreeMap<(KindId, CharacterId), [&str; 2]> {
    let number = |text: &str| {
        let number = text.split_whitespace().next().unwrap_or_default();
        number.parse::<f64>().unwrap_or_default()
    };
    let mut ends = BTreeMap::new();
    for specimen in collection.specimens.values() {
        for (at, one) in &specimen.measured {
            let text = one.text.as_str();
            let [least, most] = ends.entry((specimen.kind, *at)).or_insert([text, text]);
            if number(text) < number(least) {
                *least = text;
            }
            if number(text) > number(most) {
                *most = text;
            }
        }
    }
    ends
}

#[cfg(test)]
mod tests;
