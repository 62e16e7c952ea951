//! What can be done to a kind: describe it, add and order pictures, merge, split, take out.

use std::collections::BTreeSet;

use spinney_model::{Edit, KeyEdit, KindEdit, KindField, KindId};

use super::kind::FIELDS;
use super::{LONGEST_NAME, LONGEST_TEXT, MOST_KINDS, MOST_PICTURES, add};
use crate::Desk;
use crate::pictures;
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::laid::folded;
use spinney_collection::{Collection, Kind};

/// A text of a form on one line; refused where it is longer than it may be.
pub(crate) fn typed(asked: &Asked<'_>, field: &str, longest: usize) -> Result<String, Refused> {
    let text = asked.request.field(field).split_whitespace().collect::<Vec<_>>().join(" ");
    if text.chars().count() > longest {
        return Err(too_long(asked, &text, longest));
    }
    Ok(text)
}

/// A text is longer than it may be.
pub(super) fn too_long(asked: &Asked<'_>, text: &str, longest: usize) -> Refused {
    let start: String = text.chars().take(40).collect();
    let t = asked.tongue;
    Refused {
        sentence: t.count_with("finds-long-text", longest, &[("start", &start)]),
        remedy: t.say("finds-long-text-remedy"),
    }
}

/// The kind is not there any more.
pub(crate) fn gone(asked: &Asked<'_>) -> Refused {
    let t = asked.tongue;
    Refused { sentence: t.say("finds-gone"), remedy: t.say("finds-gone-remedy") }
}

fn kind<'d>(desk: &'d Desk, asked: &Asked<'_>) -> Result<(KindId, &'d Kind), Refused> {
    let id = KindId(asked.request.field("kind").parse().unwrap_or(0));
    let kind = desk.history.now.kinds.get(&id);
    kind.map(|kind| (id, kind)).ok_or_else(|| gone(asked))
}

/// Refused where another kind is called so already.
pub(crate) fn free(
    collection: &Collection,
    asked: &Asked<'_>,
    name: &str,
    but: Option<KindId>,
) -> Result<(), Refused> {
    let t = asked.tongue;
    let others = collection.kinds.keys().filter(|id| Some(**id) != but);
    let taken = others.map(|id| collection.name(*id)).find(|n| folded(n) == folded(name));
    match taken {
        Some(taken) => Err(Refused {
            sentence: t.with("finds-name-taken", &[("name", &taken)]),
            remedy: t.say("finds-name-taken-remedy"),
        }),
        None => Ok(()),
    }
}

/// Writes down whatever of the form is another text than before.
pub(super) fn describe(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (id, known) = kind(desk, asked)?;
    let mut edits = Vec::new();
    for (field, form_field, ..) in FIELDS {
        if !asked.request.form.iter().any(|(name, _)| name == form_field) {
            continue;
        }
        let longest = if field == KindField::Name { LONGEST_NAME } else { LONGEST_TEXT };
        let text = typed(asked, form_field, longest)?;
        if text == known.field(field) || !asked.touched(form_field, &text) {
            continue;
        }
        if field == KindField::Name && !text.is_empty() {
            free(&desk.history.now, asked, &text, Some(id))?;
        }
        edits.push(Edit::Kind(id, KindEdit::Describe(field, text)));
    }
    Ok(Deed::edits(edits, asked.back(&format!("/finds/{}", id.0))))
}

pub(super) fn add_pictures(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let (id, known) = kind(desk, asked)?;
    let mut pictures = add::pictures_of(asked)?;
    pictures.retain(|picture| !known.pictures.contains(&pictures::name(picture)));
    if known.pictures.len() + pictures.len() > MOST_PICTURES {
        return Err(Refused {
            sentence: t.count("finds-many-pictures", MOST_PICTURES),
            remedy: t.say("finds-many-pictures-remedy"),
        });
    }
    let edit =
        |picture: &Vec<u8>| Edit::Kind(id, KindEdit::AddPicture(pictures::name(picture)));
    let edits = pictures.iter().map(edit).collect();
    Ok(Deed { pictures, ..Deed::edits(edits, asked.back(&format!("/finds/{}", id.0))) })
}

/// The picture that the form names; None: another window took it away.
fn picture<'k>(kind: &'k Kind, asked: &Asked<'_>) -> Option<&'k String> {
    kind.pictures.iter().find(|known| *known == asked.request.field("picture"))
}

/// Whatever lies before it is laid behind all others.
pub(super) fn picture_first(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (id, known) = kind(desk, asked)?;
    let first = picture(known, asked);
    let before = known.pictures.iter().take_while(|other| first.is_some_and(|f| f != *other));
    let edits = before.flat_map(|other| {
        [
            Edit::Kind(id, KindEdit::RemovePicture(other.clone())),
            Edit::Kind(id, KindEdit::AddPicture(other.clone())),
        ]
    });
    Ok(Deed::edits(edits.collect(), asked.back(&format!("/finds/{}", id.0))))
}

pub(super) fn picture_away(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (id, known) = kind(desk, asked)?;
    let away =
        picture(known, asked).map(|hash| Edit::Kind(id, KindEdit::RemovePicture(hash.clone())));
    Ok(Deed::edits(away.into_iter().collect(), asked.back(&format!("/finds/{}", id.0))))
}

/// This kind turns out to be another one.
pub(super) fn merge(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (id, _) = kind(desk, asked)?;
    let kept = KindId(asked.request.field("with").parse().unwrap_or(0));
    if kept == id || !desk.history.now.kinds.contains_key(&kept) {
        return Err(gone(asked));
    }
    Ok(Deed::edits(vec![Edit::Kind(kept, KindEdit::Merge(id))], format!("/finds/{}", kept.0)))
}

/// This kind turns out to be two: the second begins with what is known of the first, but for
/// its names and for what was seen on one plant alone.
pub(super) fn split(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (old, known) = kind(desk, asked)?;
    let collection = &desk.history.now;
    let name = typed(asked, "name", LONGEST_NAME)?;
    if !name.is_empty() {
        free(collection, asked, &name, None)?;
    }
    if collection.kinds.len() >= MOST_KINDS {
        return Err(add::too_many(asked.tongue));
    }
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
    let moved: BTreeSet<&str> = asked.request.fields("picture").collect();
    for picture in known.pictures.iter().filter(|hash| moved.contains(hash.as_str())) {
        edits.push(Edit::Kind(old, KindEdit::RemovePicture(picture.clone())));
        edits.push(Edit::Kind(new, KindEdit::AddPicture(picture.clone())));
    }
    Ok(Deed::edits(edits, format!("/finds/{}", new.0)))
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

pub(super) fn take_out(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (id, _) = kind(desk, asked)?;
    Ok(Deed::edits(vec![Edit::Kind(id, KindEdit::Remove)], "/finds"))
}
