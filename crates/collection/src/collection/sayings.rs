//! Who says what of which kind, what was typed and what hands say, and what it comes to.
//!
//! From cells as they were typed and cards on heaps to every cell with its voices. Two texts
//! are the same if the reader of tables reads the same in them; a card that leaves several
//! states open fills nothing, and contradicts whoever cannot be right beside it ([`constraint`]).
//! What the table itself says decides.
//!
//! [`constraint`]: super::constraint

use std::collections::BTreeMap;

use spinney_exchange::table;
use spinney_model::{CharacterId, Edit, KindId};

use super::constraint::{Constraint, States, satisfiable};
use super::{Cells, Collection, Sorted};
use crate::laid::{Meaning, Meanings, folded};
use crate::rows;

/// What one source says of a cell.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Saying {
    /// This, as it is typed.
    Text(String),
    /// One or several of these states, and no others: a yes.
    OneOf(Vec<String>),
    /// None of these states: a no.
    NoneOf(Vec<String>),
    /// Some of these states, and others too: it varies.
    Varies(Vec<String>),
}

impl Saying {
    /// What is typed; None: it leaves open what it is.
    pub fn text(&self) -> Option<&str> {
        match self {
            Self::Text(text) => Some(text),
            Self::OneOf(_) | Self::NoneOf(_) | Self::Varies(_) => None,
        }
    }

    /// What a card says that leaves several states open.
    fn constraint(&self) -> Option<Constraint> {
        let fold = |states: &[String]| states.iter().map(|state| folded(state)).collect();
        match self {
            Self::Text(_) => None,
            Self::OneOf(states) => Some(Constraint::Within(fold(states))),
            Self::NoneOf(states) => Some(Constraint::Outside(fold(states))),
            Self::Varies(states) => Some(Constraint::Across(fold(states))),
        }
    }
}

/// What a cell comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Agreed<'c> {
    /// Nobody has said anything.
    Blank,
    /// All who said something say this, or it was decided.
    Text(&'c str),
    /// They do not agree, and nobody has decided.
    Contradicted,
}

type Place = (KindId, CharacterId);

/// The voices of a cell, by who says it.
type Voices = BTreeMap<String, Saying>;

/// A cell with all who say something of it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
struct Cell {
    voices: Voices,
    /// What hands leave open, where nobody contradicts it; and the states that there are.
    open: Voices,
    known: States,
    /// Where people do not agree: whoever is the first to say each of the things that are said.
    first: Vec<String>,
    comes_to: ComesTo,
}

#[derive(Clone, Debug, Default, PartialEq, Eq)]
enum ComesTo {
    #[default]
    Blank,
    /// What this source says.
    Of(String),
    Contradicted,
}

/// Who says what of which kind in which character.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sayings(BTreeMap<Place, Cell>);

impl Sayings {
    /// What was typed, and what hands say beside it.
    pub fn of(
        collection: &Collection,
        sorted: &Sorted,
        states: &BTreeMap<CharacterId, String>,
    ) -> Self {
        let mut all = typed(collection);
        sorted.beside(&mut all);
        let meanings = Meanings::of(collection, states, unsettled(&all));
        let cells = all.into_iter().map(|(at, voices)| {
            (at, Cell::of(voices, sorted.known(at.1), |text| meanings.of_text(at.1, text)))
        });
        Self(cells.collect())
    }

    /// What was typed, of a collection that cannot be read as a table: texts are the same if
    /// they are the same letters.
    pub fn unread(collection: &Collection) -> Self {
        let all = typed(collection).into_iter();
        let meaning = |text: &str| Meaning::Unread(folded(text));
        Self(all.map(|(at, said)| (at, Cell::of(said, &States::new(), meaning))).collect())
    }

    /// What one source says, as it is typed.
    pub fn said(&self, kind: KindId, at: CharacterId, source: &str) -> &str {
        let saying = self.0.get(&(kind, at)).and_then(|cell| cell.voices.get(source));
        saying.and_then(Saying::text).unwrap_or_default()
    }

    /// What all sources together come to.
    pub fn agreed(&self, kind: KindId, at: CharacterId) -> Agreed<'_> {
        match self.0.get(&(kind, at)).map(|cell| &cell.comes_to) {
            None | Some(ComesTo::Blank) => Agreed::Blank,
            Some(ComesTo::Of(source)) => Agreed::Text(self.said(kind, at, source)),
            Some(ComesTo::Contradicted) => Agreed::Contradicted,
        }
    }

    /// Everybody who says something, the table itself first.
    pub fn sources(&self, kind: KindId, at: CharacterId) -> Vec<(&str, &Saying)> {
        let voices = self.0.get(&(kind, at)).into_iter().flat_map(|cell| &cell.voices);
        voices.map(|(who, saying)| (who.as_str(), saying)).collect()
    }

    /// Also who leaves open what it is, though nobody contradicts it.
    pub fn sources_and_open(&self, kind: KindId, at: CharacterId) -> Vec<(&str, &Saying)> {
        let open = self.0.get(&(kind, at)).into_iter().flat_map(|cell| &cell.open);
        let open = open.map(|(who, saying)| (who.as_str(), saying));
        self.sources(kind, at).into_iter().chain(open).collect()
    }

    /// Whether what hands leave open can be right beside something that was typed.
    pub fn leave_open(&self, kind: KindId, at: CharacterId, typed: &Meaning) -> bool {
        self.0.get(&(kind, at)).is_none_or(|cell| {
            let constraints = cell.open.values().filter_map(Saying::constraint);
            satisfiable(&constraints.chain(exactly(typed)).collect::<Vec<_>>(), &cell.known)
        })
    }

    /// Where people do not agree: what they say, each thing once.
    pub fn choices(&self, kind: KindId, at: CharacterId) -> Vec<&str> {
        let first = self.0.get(&(kind, at)).into_iter().flat_map(|cell| &cell.first);
        first.map(|who| self.said(kind, at, who)).collect()
    }

    /// Everything that anybody says as it is typed: whose cell, who, what.
    pub fn texts(&self) -> impl Iterator<Item = (Place, &str, &str)> {
        self.0.iter().flat_map(|(at, cell)| {
            let voices = cell.voices.iter();
            voices.filter_map(|(who, saying)| Some((*at, who.as_str(), saying.text()?)))
        })
    }

    /// What a cell shows for typing over: what it counts as, or what this group says.
    pub fn shown(&self, who: &str, kind: KindId, at: CharacterId) -> &str {
        if !who.is_empty() {
            return self.said(kind, at, who);
        }
        match self.agreed(kind, at) {
            Agreed::Text(text) => text,
            Agreed::Blank | Agreed::Contradicted => "",
        }
    }

    /// The text that somebody wants to take for right, if it is one that is said, or all of them.
    pub fn offered(&self, kind: KindId, at: CharacterId, wanted: &str) -> Option<String> {
        let texts = self.choices(kind, at);
        let both = table::either(&texts);
        let mut offered = texts.into_iter().map(str::to_owned).chain(both);
        // On its way through a page a text may lose how its lines were broken.
        offered.find(|text| text.split_whitespace().eq(wanted.split_whitespace()))
    }

    /// What is to be written so that the cell counts as this text. `typed` is what was typed of
    /// it by itself.
    pub fn written(
        &self,
        typed: &Cells,
        who: &str,
        (kind, character): (KindId, CharacterId),
        text: &str,
    ) -> Edit {
        let by_itself = typed.said(kind, character, who);
        // Emptied, though groups have said something, or how this one sorted does: nobody loses
        // a word, but it is open again.
        let still_said = match who {
            "" => self.agreed(kind, character) != Agreed::Blank,
            _ => !self.said(kind, character, who).is_empty(),
        };
        let open = text.is_empty() && by_itself.is_empty() && still_said;
        let text = if open { "?" } else { text }.to_owned();
        Edit::Cell { kind, character, source: who.to_owned(), text }
    }

    /// Cells whose sources do not agree.
    pub fn contradictions(&self) -> impl Iterator<Item = Place> {
        let differ = |cell: &Cell| matches!(cell.comes_to, ComesTo::Contradicted);
        self.0.iter().filter(move |(_, cell)| differ(cell)).map(|(at, _)| *at)
    }
}

impl Cell {
    fn of(said: Voices, known: &States, meaning: impl Fn(&str) -> Meaning) -> Self {
        let (voices, open): (Voices, Voices) =
            said.into_iter().partition(|(_, saying)| saying.text().is_some());
        // The table itself decides; and nobody contradicts who speaks alone.
        let alone = voices.keys().next().filter(|_| voices.len() == 1 && open.is_empty());
        let decides = voices.get_key_value("").map(|(who, _)| who).or(alone).cloned();
        if let Some(who) = decides {
            return Self { voices, comes_to: ComesTo::Of(who), ..Self::default() };
        }
        let known = if open.is_empty() { States::new() } else { known.clone() };
        let cell = Self { voices, open, known, ..Self::default() };
        let texts: Vec<(&String, Meaning)> = cell
            .voices
            .iter()
            .filter_map(|(who, saying)| Some((who, meaning(saying.text()?))))
            .collect();
        let same = texts.iter().all(|(_, text)| texts.iter().all(|(_, o)| text.same(o)));
        // Who counted says more than who saw the same and did not count.
        let counted = texts.iter().find(|(_, text)| text.counted()).or(texts.first());
        let comes_to = counted.map_or(ComesTo::Blank, |(who, _)| ComesTo::Of((*who).clone()));
        let constraints = cell.open.values().filter_map(Saying::constraint);
        let constraints: Vec<Constraint> =
            constraints.chain(counted.and_then(|(_, text)| exactly(text))).collect();
        if same && (cell.open.is_empty() || satisfiable(&constraints, &cell.known)) {
            return Self { comes_to, ..cell };
        }
        let first = each_once(&texts);
        let Self { mut voices, open, .. } = cell;
        voices.extend(open);
        Self { voices, first, comes_to: ComesTo::Contradicted, ..Self::default() }
    }
}

/// Whoever is the first to say each of the things that are said. Two who counted differently
/// may both mean the same as one who did not count, so those who counted come first, and
/// everybody is compared with those who are kept.
fn each_once(texts: &[(&String, Meaning)]) -> Vec<String> {
    let (counted, seen): (Vec<_>, Vec<_>) =
        texts.iter().enumerate().partition(|(_, (_, text))| text.counted());
    let mut kept = Vec::<(usize, &(&String, Meaning))>::new();
    for (at, said) in counted.into_iter().chain(seen) {
        if !kept.iter().any(|(_, (_, known))| known.same(&said.1)) {
            kept.push((at, said));
        }
    }
    kept.sort_by_key(|(at, _)| *at);
    kept.into_iter().map(|(_, (who, _))| (*who).clone()).collect()
}

fn exactly(text: &Meaning) -> Option<Constraint> {
    match text {
        Meaning::States(states) => Some(Constraint::Exactly(states.keys().cloned().collect())),
        Meaning::Other(_) | Meaning::Unread(_) => None,
    }
}

/// What was typed, and what single specimens come to.
fn typed(collection: &Collection) -> BTreeMap<Place, Voices> {
    let voices = |said: &BTreeMap<String, String>| {
        said.iter().map(|(who, text)| (who.clone(), Saying::Text(text.clone()))).collect()
    };
    let mut all: BTreeMap<Place, Voices> =
        collection.cells.each().map(|(at, said)| (at, voices(said))).collect();
    for (at, said) in rows::voices(collection) {
        let texts = said.into_iter().map(|(who, text)| (who, Saying::Text(text)));
        all.entry(at).or_default().extend(texts);
    }
    all
}

/// The texts of all columns in which some cell has to be compared with what others say of it,
/// and not letter by letter only.
fn unsettled(all: &BTreeMap<Place, Voices>) -> BTreeMap<CharacterId, Vec<String>> {
    let mut columns = BTreeMap::<CharacterId, Vec<String>>::new();
    for ((_, at), voices) in all.iter().filter(|(_, voices)| voices.len() > 1) {
        let mut said = voices.values().map(|saying| saying.text().map(folded));
        let first = said.next();
        let alike = said.all(|other| other.is_some() && Some(&other) == first.as_ref());
        if !alike && !voices.contains_key("") {
            columns.entry(*at).or_default();
        }
    }
    for ((_, at), voices) in all {
        if let Some(texts) = columns.get_mut(at) {
            texts.extend(voices.values().filter_map(Saying::text).map(str::to_owned));
        }
    }
    columns
}

#[cfg(test)]
mod tests;
