//! The cells of a collection: who typed what of which kind.
//!
//! Every source keeps its own layer, so that one group never overwrites another or a
//! measurement. What it comes to, with what hands say, is worked out by [`Sayings`].
//!
//! [`Sayings`]: super::Sayings

use std::collections::BTreeMap;

use spinney_exchange::table;
use spinney_model::{CharacterId, KindId};

/// Who says what of which kind in which character; the source without a name decides.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Cells(BTreeMap<(KindId, CharacterId), BTreeMap<String, String>>);

impl Cells {
    pub(super) fn set(&mut self, kind: KindId, at: CharacterId, source: &str, text: &str) {
        let said = self.0.entry((kind, at)).or_default();
        super::write(said, source.to_owned(), text);
        if said.is_empty() {
            self.0.remove(&(kind, at));
        }
    }

    pub(super) fn remove_kind(&mut self, id: KindId) {
        self.0.retain(|(kind, _), _| *kind != id);
    }

    pub(super) fn remove_character(&mut self, id: CharacterId) {
        self.0.retain(|(_, character), _| *character != id);
    }

    pub(super) fn merge(&mut self, kept: KindId, gone: KindId) {
        let of_gone: Vec<_> = self
            .0
            .iter()
            .filter(|((kind, _), _)| *kind == gone)
            .map(|((_, character), said)| (*character, said.clone()))
            .collect();
        for (character, said) in of_gone {
            let mine = self.0.entry((kept, character)).or_default();
            for (source, text) in said {
                mine.entry(source).or_insert(text);
            }
        }
    }

    pub(super) fn rename_state(&mut self, character: CharacterId, from: &str, to: &str) {
        for ((_, at), said) in &mut self.0 {
            if *at == character {
                for text in said.values_mut() {
                    *text = table::renamed(text, from, to);
                }
            }
        }
    }

    /// What one source says.
    pub fn said(&self, kind: KindId, at: CharacterId, source: &str) -> &str {
        let said = self.0.get(&(kind, at)).and_then(|said| said.get(source));
        said.map_or("", String::as_str)
    }

    /// Everybody who says something, the table itself first.
    pub fn sources(&self, kind: KindId, at: CharacterId) -> Vec<(&str, &str)> {
        let said = self.0.get(&(kind, at)).into_iter().flatten();
        said.map(|(source, text)| (source.as_str(), text.as_str())).collect()
    }

    /// Every text, after who says it.
    pub fn texts(&self) -> impl Iterator<Item = (&str, &str)> {
        let said = self.0.values().flatten();
        said.map(|(source, text)| (source.as_str(), text.as_str()))
    }

    /// Every text, after its column.
    pub fn of_columns(&self) -> impl Iterator<Item = (CharacterId, &str)> {
        let cells = self.0.iter();
        cells.flat_map(|((_, at), said)| said.values().map(|text| (*at, text.as_str())))
    }

    /// Each cell of which somebody says something, with who says what.
    pub(super) fn each(
        &self,
    ) -> impl Iterator<Item = ((KindId, CharacterId), &BTreeMap<String, String>)> {
        self.0.iter().map(|(at, said)| (*at, said))
    }

    /// Everything that anybody says: whose cell it is, and who says it.
    pub fn all(&self) -> impl Iterator<Item = ((KindId, CharacterId), &str)> {
        let cells = self.0.iter();
        cells.flat_map(|(at, said)| said.keys().map(move |source| (*at, source.as_str())))
    }

    /// Lets go of all other cells.
    pub(super) fn keep(&mut self, stays: impl Fn(KindId, CharacterId) -> bool) {
        self.0.retain(|(kind, at), _| stays(*kind, *at));
    }

    /// Everybody who has a view of their own, in the order of the alphabet.
    pub fn who(&self) -> std::collections::BTreeSet<&str> {
        let named = self.0.values().flat_map(BTreeMap::keys);
        named.map(String::as_str).filter(|source| !source.is_empty()).collect()
    }
}
