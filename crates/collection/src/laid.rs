//! The collection laid out as a table: what was typed, read as a matrix.
//!
//! From the collection to the cells of four sheets and through the reader of tables to a matrix,
//! so that a cell means on the screen what it means in a spreadsheet. How groups sorted is one of
//! the sources of a cell ([`Sorted`]). Where sources contradict each other and nobody has
//! decided, the cell counts as unknown.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::OnceLock;

use spinney_exchange::table::{self, Places, Row, Settings, TypedTable};
use spinney_model::{
    Ask, AskOf, Asked, AskedOf, CharacterField, CharacterId, CharacterIx, Drawing, Finding,
    KeptDrawing, KindField, KindId, Matrix, Quantity, Scale, StateIx, TaxonIx, Value,
};

use crate::{Agreed, Collection, Sayings, Sorted};

mod meaning;
mod told;

pub(crate) use meaning::described;
pub use meaning::{Meaning, Meanings};
pub use told::OfCells;

/// The collection as a matrix, and which kind and character is which.
#[derive(Clone, Debug)]
pub struct Laid {
    /// The matrix.
    pub matrix: Matrix,
    /// What the reader of tables had to say.
    pub findings: Vec<Finding>,
    /// The names of its rows and columns, to say a cell in words.
    pub places: Places,
    /// Which kind each row is.
    pub kinds: Vec<KindId>,
    /// None: a column that the table made by itself (a ratio beside its two lengths).
    pub characters: Vec<Option<CharacterId>>,
    /// What hands say of the table.
    pub sorted: Sorted,
    /// Who says what of which kind: what was typed, and what hands say.
    pub said: Sayings,
    /// Whoever draws the kinds keeps the drawings here.
    drawings: OnceLock<Vec<Option<Drawing>>>,
    /// Drawings that somebody chose.
    chosen: BTreeMap<KindId, Drawing>,
}

/// Who says what of which kind; of what cannot be read as a table, what was typed.
pub fn said<'l>(collection: &Collection, laid: Option<&'l Laid>) -> Cow<'l, Sayings> {
    match laid {
        Some(laid) => Cow::Borrowed(&laid.said),
        None => Cow::Owned(Sayings::unread(collection)),
    }
}

impl Laid {
    /// None: there is no kind yet.
    pub fn of(collection: &Collection) -> Option<Self> {
        Self::read(collection, &Settings::default())
    }

    /// The same, read in another way than the screens do.
    pub fn read(collection: &Collection, settings: &Settings) -> Option<Self> {
        let typed = Self::with(collection, settings, Sorted::default(), None)?;
        // What a side says depends on the states there are; hands add none.
        let sorted = Sorted::of(collection, &typed);
        if sorted.is_empty() {
            return Some(typed);
        }
        Self::with(collection, settings, sorted, Some(&typed))
    }

    fn with(
        collection: &Collection,
        settings: &Settings,
        sorted: Sorted,
        typed: Option<&Self>,
    ) -> Option<Self> {
        let states = typed.map_or(BTreeMap::new(), |typed| states_known(typed, &sorted));
        let said = Sayings::of(collection, &sorted, &states);
        let sheets = sheets(collection, &said, &states);
        let read = table::read_typed(&sheets, settings).ok()?;
        let kinds = kinds_of(&read.matrix, collection);
        let by_name: BTreeMap<String, CharacterId> = collection
            .characters
            .keys()
            .map(|id| (folded(collection.character_name(*id)), *id))
            .collect();
        let characters = read.matrix.characters().iter();
        let characters = characters.map(|c| by_name.get(&folded(&c.name)).copied()).collect();
        let matrix = with_pictures(read.matrix, collection, &kinds);
        Some(Self {
            matrix,
            findings: read.findings,
            places: read.places,
            kinds,
            characters,
            sorted,
            said,
            drawings: OnceLock::new(),
            chosen: chosen(collection),
        })
    }

    /// The drawing of a kind: the one that somebody chose, else what its table says. All are drawn
    /// when the first is asked for, and once.
    pub fn drawing(
        &self,
        kind: KindId,
        draw: impl FnOnce(&Matrix) -> Vec<Option<Drawing>>,
    ) -> Option<&Drawing> {
        if let Some(chosen) = self.chosen.get(&kind) {
            return Some(chosen);
        }
        let drawings = self.drawings.get_or_init(|| draw(&self.matrix));
        drawings.get(self.taxon(kind)?.0)?.as_ref()
    }

    /// A question about a character, to show how it would be asked; None: nobody has said
    /// anything of it.
    pub fn example(&self, character: CharacterIx) -> Option<Ask> {
        let number = |taxon| match &self.matrix.cell(taxon, character).value {
            Value::Range { high, .. } => Some(*high),
            Value::Counts(counts) => {
                counts.last().map(|(n, _)| Quantity::from_whole(i64::from(*n)))
            }
            Value::States(_) | Value::Unknown | Value::DoesNotApply => None,
        };
        let yes = match &self.matrix.character(character).scale {
            Scale::Words { states } if states.is_empty() => return None,
            Scale::Words { .. } => Asked::States([StateIx(0)].into()),
            Scale::Counts | Scale::Measure { .. } => {
                Asked::AtLeast(self.matrix.taxon_indices().find_map(number)?)
            }
        };
        Some(Ask { character, yes })
    }

    /// How many kinds have a state.
    pub fn having(&self, character: CharacterIx, state: StateIx) -> usize {
        let has = |taxon: &TaxonIx| match &self.matrix.cell(*taxon, character).value {
            Value::States(shares) => shares.iter().any(|(known, _)| *known == state),
            _ => false,
        };
        self.matrix.taxon_indices().filter(has).count()
    }

    /// What texts mean in a column, those that stand there and others.
    pub fn meanings(
        &self,
        collection: &Collection,
        at: CharacterId,
        others: &[&str],
    ) -> Meanings {
        let there = self.said.texts().filter(|((_, character), ..)| *character == at);
        let texts = there.map(|(_, _, text)| text).chain(others.iter().copied());
        let column = BTreeMap::from([(at, texts.map(str::to_owned).collect())]);
        Meanings::of(collection, &states_known(self, &self.sorted), column)
    }

    /// The row of a kind.
    pub fn taxon(&self, kind: KindId) -> Option<TaxonIx> {
        self.kinds.iter().position(|id| *id == kind).map(TaxonIx)
    }

    /// The column of a character.
    pub fn character(&self, id: CharacterId) -> Option<CharacterIx> {
        self.characters.iter().position(|at| *at == Some(id)).map(CharacterIx)
    }

    /// What a question means in this matrix; None: it has no such character or states, or the
    /// number is beyond anything that is measured.
    pub fn ask(&self, of: &AskOf) -> Option<Ask> {
        let character = self.character(of.character)?;
        let yes = match (&of.yes, &self.matrix.character(character).scale) {
            (AskedOf::States(words), Scale::Words { states }) => {
                let place = |word: &String| states.iter().position(|state| state == word);
                let places = words.iter().map(place);
                Asked::States(places.map(|at| at.map(StateIx)).collect::<Option<_>>()?)
            }
            (AskedOf::AtLeast(least), Scale::Counts | Scale::Measure { .. }) => {
                Asked::AtLeast(within_reach(*least)?)
            }
            (AskedOf::Below(least), Scale::Counts | Scale::Measure { .. }) => {
                Asked::Below(within_reach(*least)?)
            }
            _ => return None,
        };
        Some(Ask { character, yes })
    }

    /// As [`Laid::ask`], for a question that somebody wants to ask from now on: it can be
    /// answered with yes and with no, and what is counted is asked for in whole numbers.
    pub fn may_be_asked(&self, of: &AskOf) -> Option<Ask> {
        let ask = self.ask(of)?;
        let fits = match (&ask.yes, &self.matrix.character(ask.character).scale) {
            (Asked::States(asked), Scale::Words { states }) => {
                !asked.is_empty() && asked.len() < states.len()
            }
            (Asked::AtLeast(at) | Asked::Below(at), Scale::Counts) => {
                at.thousandths() % 1000 == 0
            }
            _ => true,
        };
        fits.then_some(ask)
    }

    /// A question of this matrix in words that outlast it; None: about a column that the table
    /// made by itself.
    pub fn ask_of(&self, ask: &Ask) -> Option<AskOf> {
        let character = self.characters.get(ask.character.0).copied().flatten()?;
        let yes = match (&ask.yes, &self.matrix.character(ask.character).scale) {
            (Asked::States(asked), Scale::Words { states }) => {
                AskedOf::States(asked.iter().map(|at| states[at.0].clone()).collect())
            }
            (Asked::AtLeast(least), _) => AskedOf::AtLeast(*least),
            (Asked::Below(least), _) => AskedOf::Below(*least),
            (Asked::States(_), _) => return None,
        };
        Some(AskOf { character, yes })
    }
}

/// The largest number that can be asked for, in thousandths: as large as a table may hold.
const LARGEST: i64 = 1_000_000_000_000;

fn within_reach(number: Quantity) -> Option<Quantity> {
    (number.thousandths().unsigned_abs() <= LARGEST.unsigned_abs()).then_some(number)
}

/// The number that a person typed for a threshold.
pub fn quantity(text: &str) -> Option<Quantity> {
    let number: f64 = text.trim().replace(',', ".").parse().ok()?;
    let thousandths = (number * 1000.0).round();
    let near = thousandths.abs() <= LARGEST as f64;
    near.then(|| Quantity::from_thousandths(thousandths as i64))
}

/// A name as names are compared: without capitals and spare spaces.
pub fn folded(name: &str) -> String {
    name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase()
}

/// Which kind stands in which row. Rows are in the order of the kinds; where the reader took two
/// kinds of one name for one, the first of that name stands there.
fn kinds_of(matrix: &Matrix, collection: &Collection) -> Vec<KindId> {
    let mut left: Vec<KindId> = collection.kinds.keys().copied().collect();
    if left.len() == matrix.taxa().len() {
        return left;
    }
    let rows = matrix.taxa().iter().filter_map(|taxon| {
        let same = |id: &KindId| folded(&collection.name(*id)) == folded(&taxon.name);
        let at = left.iter().position(same).or((!left.is_empty()).then_some(0))?;
        Some(left.remove(at))
    });
    rows.collect()
}

/// The states that characters had before hands said anything of them. One that stands only in a
/// cell where a hand now says something else would be lost, with all questions about it.
fn states_known(typed: &Laid, sorted: &Sorted) -> BTreeMap<CharacterId, String> {
    let known = sorted.characters().into_iter().filter_map(|id| {
        let Scale::Words { states } = &typed.matrix.character(typed.character(id)?).scale
        else {
            return None;
        };
        let states: Vec<String> = states.iter().map(|state| table::as_typed(state)).collect();
        Some((id, states.join("; ")))
    });
    known.collect()
}

fn sheets<'l>(
    collection: &'l Collection,
    said: &'l Sayings,
    states: &'l BTreeMap<CharacterId, String>,
) -> TypedTable<'l> {
    let columns: Vec<CharacterId> = named(collection).collect();
    let names = columns.iter().map(|id| Cow::Borrowed(collection.character_name(*id)));
    let heading = std::iter::once(Cow::Borrowed("kind")).chain(names).collect();
    let rows = collection.kinds.keys().map(|kind| {
        let cells = columns.iter().map(|at| match said.agreed(*kind, *at) {
            Agreed::Text(text) => Cow::Borrowed(text),
            Agreed::Blank => Cow::Borrowed(""),
            Agreed::Contradicted => Cow::Borrowed("?"),
        });
        std::iter::once(Cow::Owned(collection.name(*kind))).chain(cells).collect()
    });
    TypedTable {
        table: std::iter::once(heading).chain(rows).collect(),
        characters: character_rows(collection, states),
        kinds: kind_rows(collection),
        about: about_rows(collection),
    }
}

/// Characters with a name: a column without a heading is none.
fn named(collection: &Collection) -> impl Iterator<Item = CharacterId> {
    let named = |id: &CharacterId| !collection.character_name(*id).trim().is_empty();
    collection.characters.keys().copied().filter(named)
}

fn character_rows<'l>(
    collection: &'l Collection,
    states: &'l BTreeMap<CharacterId, String>,
) -> Vec<Row<'l>> {
    let heading = table::character_headings().map(|(_, name)| Cow::Borrowed(name)).collect();
    let rows = named(collection).map(|id| {
        let typed = |field| collection.character_field(id, field);
        // An order is a person's to give.
        let ordered = !typed(CharacterField::InOrder).is_empty();
        let text = |field| match (field, typed(field), states.get(&id)) {
            (CharacterField::States, "", Some(states)) if !ordered => states.as_str(),
            (_, typed, _) => typed,
        };
        table::character_headings().map(|(field, _)| Cow::Borrowed(text(field))).collect()
    });
    std::iter::once(heading).chain(rows).collect()
}

fn kind_rows(collection: &Collection) -> Vec<Row<'_>> {
    let heading = table::kind_headings().map(|(_, name)| Cow::Borrowed(name)).collect();
    let rows = collection.kinds.iter().map(|(id, kind)| {
        let text = |field| match field {
            KindField::Name => Cow::Owned(collection.name(*id)),
            _ => Cow::Borrowed(kind.field(field)),
        };
        table::kind_headings().map(|(field, _)| text(field)).collect()
    });
    std::iter::once(heading).chain(rows).collect()
}

fn about_rows(collection: &Collection) -> Vec<Row<'_>> {
    let filled = table::about_headings().filter_map(|(field, word)| {
        let text = collection.about_field(field);
        (!text.is_empty()).then(|| vec![Cow::Borrowed(word), Cow::Borrowed(text)])
    });
    filled.collect()
}

/// The drawings that somebody chose.
fn chosen(collection: &Collection) -> BTreeMap<KindId, Drawing> {
    let kinds = collection.kinds.iter();
    kinds.filter_map(|(id, kind)| Some((*id, kind.drawing.as_ref()?.drawing()))).collect()
}

/// The drawings that somebody chose for these kinds, in their order.
pub fn chosen_of(collection: &Collection, kinds: &[KindId]) -> Vec<Option<Drawing>> {
    let chosen = |kind: &KindId| collection.kinds.get(kind)?.drawing.as_ref();
    kinds.iter().map(|kind| chosen(kind).map(KeptDrawing::drawing)).collect()
}

/// The first picture of each kind stands where a file name stands in a table.
fn with_pictures(matrix: Matrix, collection: &Collection, kinds: &[KindId]) -> Matrix {
    let mut taxa = matrix.taxa().to_vec();
    for (taxon, kind) in taxa.iter_mut().zip(kinds) {
        taxon.picture =
            collection.kinds.get(kind).and_then(|kind| kind.pictures.first().cloned());
    }
    matrix.with_taxa(taxa).expect("the same kinds, with pictures")
}

#[cfg(test)]
mod tests;
