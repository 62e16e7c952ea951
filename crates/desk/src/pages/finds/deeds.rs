//! What can be done to a kind: describe it, add and order pictures, merge, split, take out.

use std::collections::BTreeSet;

use maud::Markup;
use spinney_collection::Collection;
use spinney_collection::laid::folded;
use spinney_model::{Edit, KeyEdit, KindEdit, KindField, KindId};

use super::add::{pictures_of, too_many};
use super::fields::{KIND_FIELDS, LONGEST_NAME, LONGEST_TEXT, MOST_KINDS, MOST_PICTURES};
use crate::asked::{Asked, Deed};
use crate::forms::{At, Fact, Form, hidden};
use crate::pictures;
use crate::reply::Refused;

/// The kind of a form.
fn kind_of(at: &At<'_>) -> Result<KindId, Refused> {
    let id = KindId(at.asked.id("kind"));
    if at.collection().kinds.contains_key(&id) { Ok(id) } else { Err(gone(at.asked)) }
}

/// The kind is not there any more.
pub(crate) fn gone(asked: &Asked<'_>) -> Refused {
    asked.refused("finds-gone", "finds-gone-remedy")
}

/// What a kind is called.
fn name_of(id: KindId) -> Fact<'static> {
    Fact::name(move |of| if of.kinds.contains_key(&id) { of.name(id) } else { String::new() })
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

/// Something about a kind is written down, or much.
pub(super) struct Describe {
    kind: KindId,
    texts: Vec<(KindField, String)>,
}

impl Describe {
    fn text(&self, (field, text): &(KindField, String)) -> Fact<'_> {
        let (id, field) = (self.kind, *field);
        let shown = move |of: &Collection| {
            of.kinds.get(&id).map_or(String::new(), |kind| kind.field(field).to_owned())
        };
        Fact::typed(shown, text)
    }
}

impl Form for Describe {
    const PATH: &'static str = "/do/describe-kind";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let kind = kind_of(at)?;
        let sent = |name: &str| at.asked.request.fields(name).next().is_some();
        let sent = KIND_FIELDS.into_iter().filter(|(_, name, ..)| sent(name));
        let texts = sent.map(|(field, name, ..)| {
            let longest = if field == KindField::Name { LONGEST_NAME } else { LONGEST_TEXT };
            Ok((field, at.asked.typed(name, longest)?))
        });
        Ok(Self { kind, texts: texts.collect::<Result<_, _>>()? })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        self.texts.iter().map(|text| self.text(text)).collect()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let id = self.kind;
        let mut edits = Vec::new();
        for typed in self.texts.iter().filter(|typed| at.changes(&self.text(typed))) {
            let (field, text) = (typed.0, typed.1.clone());
            if field == KindField::Name && !text.is_empty() {
                free(at.collection(), at.asked, &text, Some(id))?;
            }
            edits.push(Edit::Kind(id, KindEdit::Describe(field, text)));
        }
        Ok(Deed::edits(edits, at.asked.back(&format!("/finds/{}", id.0))))
    }
}

/// Pictures more.
pub(super) struct AddPictures(KindId);

impl Form for AddPictures {
    const PATH: &'static str = "/do/add-pictures";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        kind_of(at).map(Self)
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        Vec::new()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let (t, id) = (at.asked.tongue, self.0);
        let known = &at.collection().kinds[&id].pictures;
        let mut pictures = pictures_of(at.asked)?;
        pictures.retain(|picture| !known.contains(&pictures::name(picture)));
        if known.len() + pictures.len() > MOST_PICTURES {
            return Err(Refused {
                sentence: t.count("finds-many-pictures", MOST_PICTURES),
                remedy: t.say("finds-many-pictures-remedy"),
            });
        }
        let edit =
            |picture: &Vec<u8>| Edit::Kind(id, KindEdit::AddPicture(pictures::name(picture)));
        let edits = pictures.iter().map(edit).collect();
        let back = at.asked.back(&format!("/finds/{}", id.0));
        Ok(Deed { pictures, ..Deed::edits(edits, back) })
    }
}

/// A picture of a kind; one that another window took away is not there any more.
struct Print {
    kind: KindId,
    hash: Option<String>,
}

impl Print {
    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let kind = kind_of(at)?;
        let pictures = &at.collection().kinds[&kind].pictures;
        let hash = pictures.iter().find(|known| *known == at.asked.request.field("picture"));
        Ok(Self { kind, hash: hash.cloned() })
    }

    fn done(&self, at: &At<'_>, edits: Vec<Edit>) -> Deed {
        Deed::edits(edits, at.asked.back(&format!("/finds/{}", self.kind.0)))
    }
}

/// Whatever lies before a picture is laid behind all others.
pub(super) struct PictureFirst(Print);

impl Form for PictureFirst {
    const PATH: &'static str = "/do/picture-first";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        Print::read(at).map(Self)
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        Vec::new()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Print { kind: id, hash } = &self.0;
        let known = &at.collection().kinds[id].pictures;
        let before =
            known.iter().take_while(|other| hash.as_ref().is_some_and(|f| f != *other));
        let edits = before.flat_map(|other| {
            [
                Edit::Kind(*id, KindEdit::RemovePicture(other.clone())),
                Edit::Kind(*id, KindEdit::AddPicture(other.clone())),
            ]
        });
        Ok(self.0.done(at, edits.collect()))
    }
}

/// A picture is taken away.
pub(super) struct PictureAway(Print);

impl Form for PictureAway {
    const PATH: &'static str = "/do/picture-away";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        Print::read(at).map(Self)
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        Vec::new()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Print { kind, hash } = &self.0;
        let away =
            hash.iter().map(|hash| Edit::Kind(*kind, KindEdit::RemovePicture(hash.clone())));
        Ok(self.0.done(at, away.collect()))
    }
}

/// This kind turns out to be another one.
pub(super) struct Merge {
    gone: KindId,
    kept: KindId,
}

impl Merge {
    pub(super) fn fields(gone: KindId, kept: KindId) -> Markup {
        hidden(&[("kind", &gone.0), ("with", &kept.0)])
    }
}

impl Form for Merge {
    const PATH: &'static str = "/do/merge-kinds";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let (id, kept) = (kind_of(at)?, KindId(at.asked.id("with")));
        if kept == id || !at.collection().kinds.contains_key(&kept) {
            return Err(gone(at.asked));
        }
        Ok(Self { gone: id, kept })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        vec![name_of(self.gone), name_of(self.kept)]
    }

    fn act(self, _: &At<'_>) -> Result<Deed, Refused> {
        let Self { gone, kept } = self;
        Ok(Deed::edits(
            vec![Edit::Kind(kept, KindEdit::Merge(gone))],
            format!("/finds/{}", kept.0),
        ))
    }
}

/// This kind turns out to be two: the second begins with what is known of the first, but for
/// its names and for what was seen on one plant alone.
pub(super) struct Split {
    old: KindId,
    name: String,
    /// Pictures that go over to the second.
    moved: BTreeSet<String>,
}

impl Form for Split {
    const PATH: &'static str = "/do/split-kind";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let (old, name) = (kind_of(at)?, at.asked.typed("name", LONGEST_NAME)?);
        let moved = at.asked.request.fields("picture").map(str::to_owned).collect();
        Ok(Self { old, name, moved })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        vec![name_of(self.old)]
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Self { old, name, moved } = self;
        let collection = at.collection();
        let known = &collection.kinds[&old];
        if !name.is_empty() {
            free(collection, at.asked, &name, None)?;
        }
        if collection.kinds.len() >= MOST_KINDS {
            return Err(too_many(at.asked.tongue));
        }
        let new = collection.next_kind();
        let mut edits = vec![Edit::Kind(new, KindEdit::Add(name))];
        let copied =
            [KindField::Caution, KindField::HowOften, KindField::Where, KindField::When];
        for field in copied {
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
        Ok(Deed::edits(edits, format!("/finds/{}", new.0)))
    }
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

/// This kind is taken out.
pub(super) struct TakeOut(KindId);

impl Form for TakeOut {
    const PATH: &'static str = "/do/remove-kind";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        kind_of(at).map(Self)
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        vec![name_of(self.0)]
    }

    fn act(self, _: &At<'_>) -> Result<Deed, Refused> {
        Ok(Deed::edits(vec![Edit::Kind(self.0, KindEdit::Remove)], "/finds"))
    }
}
