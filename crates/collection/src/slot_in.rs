//! Slotting a newcomer in: a kind that a key does not know gets a place in it, with as few
//! questions changed as the table allows.
//!
//! From a collection, one of its keys and what was seen of the newcomer to the edits that keep
//! the decision, and to what changes in the key (`spinney_build::revise`, `docs/KEY.md` 16).
//! Questions that would not be found again by themselves are fixed at their places. A difference
//! that somebody has just found is asked for, even where an older column would do as well: it
//! is what people see with the two in their hands.

mod heap;
mod pins;
mod place;

use spinney_model::{
    Ask, CharacterEdit, CharacterId, Destination, Edit, Fork, Key, KeyEdit, KeyId, KindEdit,
    KindId, Revision, Side,
};
use spinney_voice::Tongue;

use crate::Collection;
use crate::keys::Made;
use crate::laid::Laid;
use crate::layer::Layer;
use place::Place;

/// What was seen of a newcomer.
#[derive(Clone, Debug, Default)]
pub struct Newcomer {
    /// What it is called.
    pub name: String,
    /// What the table is to say: of the newcomer (None) or of a kind that lies beside it.
    pub cells: Vec<(Option<KindId>, CharacterId, String)>,
    /// What tells it from the kind it came out at.
    pub difference: Option<Difference>,
    /// Answers to questions that were sorted by hand.
    pub sides: Vec<(Fork, Side)>,
    /// The kinds that lie where it came out.
    pub beside: Vec<KindId>,
}

/// Something new to look at, in which the newcomer differs.
#[derive(Clone, Debug)]
pub struct Difference {
    /// What it is called.
    pub name: String,
    /// What the newcomer has.
    pub ours: String,
    /// What others have.
    pub theirs: Vec<(KindId, String)>,
}

/// A newcomer with its place.
pub struct Slotted {
    /// Everything to be kept.
    pub edits: Vec<Edit>,
    /// The newcomer.
    pub kind: KindId,
    /// What changes in the key; None: people are still making it, and the newcomer lies in
    /// the heap where it came out.
    pub change: Option<Change>,
    /// The new difference as that heap asks for it, in words.
    pub asks: Option<String>,
    /// The name of a new difference that the key does not ask for.
    pub not_asked: Option<String>,
}

/// What changes in a key.
pub struct Change {
    /// The key before, with the numbers that its questions had.
    pub before: Key,
    /// The key with it, and what changed.
    pub revision: Revision,
    /// Kinds that still come out together with the newcomer.
    pub alike: Vec<KindId>,
    /// Whether the key that comes of the edits is the very key that was found.
    pub exact: bool,
}

/// Gives a newcomer a place in a key, whose new questions are worded in the language of whoever
/// reads it; None: there is no such key.
pub fn slot_in(
    t: Tongue,
    collection: &Collection,
    key: KeyId,
    made: &Made,
    newcomer: &Newcomer,
) -> Option<Slotted> {
    let before = Laid::of(collection)?;
    let drawn = collection.keys.get(&key)?;
    let kind = collection.next_kind();
    let mut edits = written_down(collection, kind, newcomer);
    if let Some(kinds) = &drawn.kinds {
        let kinds = kinds.iter().copied().chain([kind]).collect();
        edits.push(Edit::Key(key, KeyEdit::ForKinds(Some(kinds))));
    }
    for (at, side) in &newcomer.sides {
        let (at, side) = (at.clone(), Some(*side));
        edits.push(Edit::Key(key, KeyEdit::Sort { at, kind, side }));
    }
    let mut after = collection.clone();
    edits.iter().for_each(|edit| after.apply(edit));
    let new = newcomer.difference.as_ref().map(|_| collection.next_character());
    let laid = Laid::of(&after)?;
    let layer = Layer::of(&after, &laid, &after.keys[&key])?;
    if !drawn.finished() && !whole(&made.key) {
        let asked =
            new.and_then(|new| heap::asking(t, &after, &laid, &layer, key, (kind, new)));
        let (edit, asks) = asked.unzip();
        edits.extend(edit);
        return Some(Slotted { edits, kind, change: None, asks, not_asked: None });
    }
    let old = carried_over(made, &before, &laid, &layer);
    let place = Place { t, after: &after, key, laid: &laid, layer: &layer, old: &old, kind };
    let ordinary = place.found(&layer.matrix)?;
    let found = match new.filter(|new| !ordinary.asks_for(&laid, *new)) {
        Some(new) => place
            .by_difference(new, &newcomer.beside)
            .filter(|found| found.asks_for(&laid, new) && found.right())
            .map(|found| found.measured_by(&ordinary))
            .unwrap_or(ordinary),
        None => ordinary,
    };
    let asked = new.is_none_or(|new| found.asks_for(&laid, new));
    let not_asked = newcomer.difference.as_ref().filter(|_| !asked).map(|d| d.name.clone());
    edits.extend(found.pins);
    let exact = same(&found.now.key, &found.revision.key);
    let change = Change {
        before: made.key.clone(),
        revision: found.revision,
        alike: found.alike,
        exact,
    };
    Some(Slotted { edits, kind, change: Some(change), asks: None, not_asked })
}

/// The kind, its cells and its difference.
fn written_down(collection: &Collection, kind: KindId, newcomer: &Newcomer) -> Vec<Edit> {
    let source = String::new;
    let mut edits = vec![Edit::Kind(kind, KindEdit::Add(newcomer.name.clone()))];
    for (whose, character, text) in &newcomer.cells {
        let (kind, text) = (whose.unwrap_or(kind), text.clone());
        edits.push(Edit::Cell { kind, character: *character, source: source(), text });
    }
    if let Some(difference) = &newcomer.difference {
        let character = collection.next_character();
        edits.push(Edit::Character(character, CharacterEdit::Add(difference.name.clone())));
        let ours = std::iter::once((kind, difference.ours.clone()));
        for (kind, text) in ours.chain(difference.theirs.iter().cloned()) {
            edits.push(Edit::Cell { kind, character, source: source(), text });
        }
    }
    edits
}

/// What hands say of the table, with the newcomer in it, is written down as their group's where
/// its question goes when the key's new questions are fixed.
fn written_as_sorted(pinned: &mut Collection, with_newcomer: &Laid) -> Vec<Edit> {
    if with_newcomer.sorted.is_empty() {
        return Vec::new();
    }
    let Some(now) = Laid::of(pinned) else { return Vec::new() };
    let mut edits = Vec::new();
    for ((kind, character), source, text) in with_newcomer.said.texts() {
        if now.said.said(kind, character, source) != text {
            let (source, text) = (source.to_owned(), text.to_owned());
            edits.push(Edit::Cell { kind, character, source, text });
        }
    }
    edits.iter().for_each(|edit| pinned.apply(edit));
    edits
}

/// Whether every end of a key names one kind.
fn whole(key: &Key) -> bool {
    let mut to = key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]);
    !key.couplets.is_empty()
        && to.all(|to| match to {
            Destination::End(end) => end.taxa.len() < 2,
            Destination::Couplet(_) => true,
            Destination::Missing => false,
        })
}

/// The key as it was, asking of the table as it is now. Kinds keep their places, since a new
/// one comes last; characters may have moved.
fn carried_over(made: &Made, before: &Laid, now: &Laid, layer: &Layer) -> Key {
    let mut key = made.key.clone();
    for couplet in &mut key.couplets {
        let place = made.places.get(&couplet.number);
        couplet.ask = couplet.ask.take().and_then(|ask| {
            if ask.character.0 >= made.layer.sorted_from {
                return layer.forks.get(place?)?.ask.clone();
            }
            match before.ask_of(&ask) {
                Some(of) => now.ask(&of),
                None => by_name(made, layer, ask),
            }
        });
    }
    key
}

/// A column that the table made by itself has no number, but a name of its own.
fn by_name(made: &Made, layer: &Layer, ask: Ask) -> Option<Ask> {
    let name = &made.layer.matrix.character(ask.character).name;
    let mut all = layer.matrix.character_indices();
    let character = all.find(|at| layer.matrix.character(*at).name == *name)?;
    Some(Ask { character, ..ask })
}

/// Whether two keys ask the same and lead to the same ends.
fn same(one: &Key, other: &Key) -> bool {
    one.couplets.len() == other.couplets.len()
        && one.couplets.iter().zip(&other.couplets).all(|(one, other)| {
            (one.number, &one.ask, &one.yes, &one.no)
                == (other.number, &other.ask, &other.yes, &other.no)
        })
}

/// Who comes out at an end together with the newcomer.
fn alike(made: &Made, kind: KindId) -> Vec<KindId> {
    let at = made.layer.kinds.iter().position(|known| *known == kind);
    let mut alike = Vec::new();
    for to in made.key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]) {
        if let Destination::End(end) = to
            && end.taxa.iter().any(|taxon| Some(taxon.0) == at)
        {
            let kinds = end.taxa.iter().map(|taxon| made.layer.kinds[taxon.0]);
            alike.extend(kinds.filter(|other| *other != kind));
        }
    }
    alike.sort();
    alike.dedup();
    alike
}

#[cfg(test)]
mod tests;
