//! Kinds that may be one, and one that turns out to be two.
//!
//! From names to the kinds that they may mean, and from a kind to the edits that make two of it.
//! Nothing is decided here: a name that sounds like another's is asked back to a person.

use std::collections::BTreeSet;

use spinney_model::{Edit, KeyEdit, KindEdit, KindField, KindId};

use crate::Collection;
use crate::laid::{Laid, folded};

/// The edits by which a kind becomes two: the second begins with what is known of the first, but
/// for its names and for what was seen on one plant alone. These pictures go over to it.
pub fn split(
    collection: &Collection,
    old: KindId,
    name: String,
    moved: &BTreeSet<String>,
) -> Vec<Edit> {
    let known = &collection.kinds[&old];
    let new = collection.next_kind();
    let mut edits = vec![Edit::Kind(new, KindEdit::Add(name))];
    for field in [KindField::Caution, KindField::HowOften, KindField::Where, KindField::When] {
        let text = known.field(field);
        if !text.is_empty() {
            edits.push(Edit::Kind(new, KindEdit::Describe(field, text.to_owned())));
        }
    }
    edits.extend(copied_cells(collection, old, new));
    edits.extend(copied_places(collection, old, new));
    for picture in known.pictures.iter().filter(|hash| moved.contains(*hash)) {
        edits.push(Edit::Kind(old, KindEdit::RemovePicture(picture.clone())));
        edits.push(Edit::Kind(new, KindEdit::AddPicture(picture.clone())));
    }
    edits
}

fn copied_cells(collection: &Collection, old: KindId, new: KindId) -> Vec<Edit> {
    let mut edits = Vec::new();
    for &character in collection.characters.keys() {
        for (source, text) in collection.cells.sources(old, character) {
            let (source, text) = (source.to_owned(), text.to_owned());
            edits.push(Edit::Cell { kind: new, character, source, text });
        }
    }
    edits
}

/// The second lies in every key where the first does.
fn copied_places(collection: &Collection, old: KindId, new: KindId) -> Vec<Edit> {
    let mut edits = Vec::new();
    for (&key, drawn) in &collection.keys {
        if let Some(kinds) = drawn.kinds.as_ref().filter(|kinds| kinds.contains(&old)) {
            let kinds = kinds.iter().copied().chain([new]).collect();
            edits.push(Edit::Key(key, KeyEdit::ForKinds(Some(kinds))));
        }
        for (at, question) in &drawn.questions {
            if let Some(side) = question.sorted.get(&old) {
                let (at, side) = (at.clone(), Some(*side));
                edits.push(Edit::Key(key, KeyEdit::Sort { at, kind: new, side }));
            }
        }
    }
    edits
}

/// The kind that goes by a name, whatever its capitals; but for one.
pub fn called(collection: &Collection, name: &str, but: Option<KindId>) -> Option<KindId> {
    let mut others = collection.kinds.keys().copied().filter(|id| Some(*id) != but);
    others.find(|id| folded(&collection.name(*id)) == folded(name))
}

/// Of some names those that no kind goes by yet, each once; and those that are here already.
pub fn new_names(collection: &Collection, names: Vec<String>) -> (Vec<String>, Vec<String>) {
    let mut known: BTreeSet<String> =
        collection.kinds.keys().map(|id| folded(&collection.name(*id))).collect();
    let named = names.into_iter().filter(|name| !name.is_empty());
    named.partition(|name| known.insert(folded(name)))
}

/// A name shorter than this, in letters, begins too many others.
const SHORTEST_BEGIN: usize = 3;

/// Kinds with a name, or another name, that begins as this does or the other way round; but for
/// one.
pub fn sounding_like(
    collection: &Collection,
    laid: &Laid,
    name: &str,
    but: Option<KindId>,
) -> Vec<KindId> {
    let name = folded(name);
    let begins = |one: &str, other: &str| {
        one == other || other.chars().count() >= SHORTEST_BEGIN && one.starts_with(other)
    };
    let alike = |known: &str| {
        let known = folded(known);
        !known.is_empty() && (begins(&known, &name) || begins(&name, &known))
    };
    let known = collection.kinds.iter().filter(|(id, _)| Some(**id) != but);
    let known = known.filter(|(id, kind)| {
        let taxon = laid.taxon(**id).map(|at| laid.matrix.taxon(at));
        let others = taxon.map_or(&[][..], |taxon| &taxon.other_names);
        alike(kind.field(KindField::Name)) || others.iter().any(|other| alike(&other.name))
    });
    known.map(|(id, _)| *id).collect()
}

/// The first find of a name, and each whose name only adds a number to it: `Ivy`, `ivy (2)`.
pub fn numbered(collection: &Collection) -> Vec<(KindId, KindId)> {
    let named: Vec<(KindId, String)> =
        collection.kinds.keys().map(|id| (*id, folded(&collection.name(*id)))).collect();
    let first = |of: &str| named.iter().find(|(_, name)| name == of).map(|(id, _)| *id);
    let pair = |(id, name): &(KindId, String)| {
        let (bare, number) = name.strip_suffix(')')?.rsplit_once(" (")?;
        number.parse::<u32>().ok()?;
        Some((first(bare)?, *id))
    };
    named.iter().filter_map(pair).collect()
}
