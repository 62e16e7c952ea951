//! What can be written down about a kind and about the visit, and how much; what can be done to
//! a kind: describe it, add and order pictures, merge, split, take out.

use std::collections::BTreeSet;

use spinney_collection::{Collection, kinds};
use spinney_model::{AboutField, Edit, KindEdit, KindField, KindId};
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed};
use crate::forms::{At, Fact, Form, nothing};
use crate::pictures::{self, NoPicture};
use crate::reply::Refused;

/// The kind of a form.
fn kind_of(at: &At<'_>) -> Result<KindId, Refused> {
    let id = KindId(at.asked.id("kind"));
    if at.collection().kinds.contains_key(&id) { Ok(id) } else { Err(gone(at.asked)) }
}

/// The kind is not there any more.
pub(crate) fn gone(asked: &Asked<'_>) -> Refused {
    asked.refused("finds-gone")
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
    kinds::called(collection, name, but).map_or(Ok(()), |taken| {
        let name = collection.name(taken);
        Err(Refused::with(asked.tongue, "finds-name-taken", &[("name", &name)]))
    })
}

/// Something about a kind is written down, or much.
pub(super) static DESCRIBE: Form<Described> = Form {
    path: "/do/describe-kind",
    read: |at| {
        let kind = kind_of(at)?;
        let sent = KIND_FIELDS.into_iter().filter(|(_, name, ..)| at.asked.sent(name));
        let texts = sent.map(|(field, name, ..)| {
            let longest = if field == KindField::Name { LONGEST_NAME } else { LONGEST_TEXT };
            Ok((field, at.asked.typed(name, longest)?))
        });
        Ok(Described { kind, texts: texts.collect::<Result<_, _>>()? })
    },
    rests_on: |of| of.texts.iter().map(|text| of.text(text)).collect(),
    act: |of, at| {
        let id = of.kind;
        let mut edits = Vec::new();
        for typed in of.texts.iter().filter(|typed| at.changes(&of.text(typed))) {
            let (field, text) = (typed.0, typed.1.clone());
            if field == KindField::Name && !text.is_empty() {
                free(at.collection(), at.asked, &text, Some(id))?;
            }
            edits.push(Edit::Kind(id, KindEdit::Describe(field, text)));
        }
        Ok(Deed::edits(edits, own_page(at, id)))
    },
};

/// What is written down about a kind.
pub(super) struct Described {
    kind: KindId,
    texts: Vec<(KindField, String)>,
}

impl Described {
    fn text(&self, (field, text): &(KindField, String)) -> Fact<'_> {
        let (id, field) = (self.kind, *field);
        let shown = move |of: &Collection| {
            of.kinds.get(&id).map_or(String::new(), |kind| kind.field(field).to_owned())
        };
        Fact::typed(shown, text)
    }
}

/// Back to where the form came from: the kind's own page, unless it says otherwise.
fn own_page(at: &At<'_>, kind: KindId) -> String {
    at.asked.back(&format!("/finds/{}", kind.0))
}

/// Pictures more.
pub(super) static ADD_PICTURES: Form<KindId> = Form {
    path: "/do/add-pictures",
    read: kind_of,
    rests_on: nothing,
    act: |id, at| {
        let known = &at.collection().kinds[&id].pictures;
        let mut pictures = pictures_of(at.asked)?;
        pictures.retain(|picture| !known.contains(&pictures::name(picture)));
        if known.len() + pictures.len() > MOST_PICTURES {
            return Err(Refused::count(at.asked.tongue, "finds-many-pictures", MOST_PICTURES));
        }
        let name = |picture: &Vec<u8>| KindEdit::AddPicture(pictures::name(picture));
        let edits = pictures.iter().map(|picture| Edit::Kind(id, name(picture)));
        let deed = Deed::edits(edits, own_page(at, id));
        Ok(Deed { pictures, ..deed })
    },
};

/// It is drawn as its table says again.
pub(super) static DRAWING_AWAY: Form<KindId> = Form {
    path: "/do/drawing-away",
    read: kind_of,
    rests_on: |id| {
        let id = *id;
        let shows = move |state: crate::worked::State<'_>| {
            let kind = state.collection.kinds.get(&id);
            format!("{:?}", kind.and_then(|kind| kind.drawing.as_ref()))
        };
        vec![Fact::new(shows, |at| at.asked.refused("finds-drawing-moved"))]
    },
    act: |id, at| Ok(Deed::edits([Edit::Kind(id, KindEdit::Draw(None))], own_page(at, id))),
};

/// More kinds than the screens hold.
pub(super) fn too_many(t: Tongue) -> Refused {
    Refused::count(t, "finds-too-many", MOST_KINDS)
}

/// The most pictures of one form.
const MOST_AT_ONCE: usize = 40;

/// The pictures of a form, written anew.
pub(crate) fn pictures_of(asked: &Asked<'_>) -> Result<Vec<Vec<u8>>, Refused> {
    let given: Vec<_> =
        asked.request.files.iter().filter(|file| !file.bytes.is_empty()).collect();
    // Counted before any is opened: a picture takes a tenth of a second, and all windows wait.
    if given.len() > MOST_AT_ONCE {
        let t = asked.tongue;
        return Err(Refused::count(t, "finds-many-at-once", MOST_AT_ONCE));
    }
    given
        .into_iter()
        .map(|file| {
            let picture = pictures::written_anew(&file.bytes);
            picture.map_err(|why| not_a_picture(asked.tongue, &file.name, why))
        })
        .collect()
}

fn not_a_picture(t: Tongue, file: &str, why: NoPicture) -> Refused {
    let sentence = match why {
        NoPicture::NotRead => "picture-not-read",
        NoPicture::TooLarge => "picture-too-large",
    };
    let file: String = file.chars().take(LONGEST_NAME).collect();
    Refused { sentence: t.with(sentence, &[("file", &file)]), remedy: t.say("picture-remedy") }
}

/// A picture of a kind; None: another window took it away.
fn print_of(at: &At<'_>) -> Result<(KindId, Option<String>), Refused> {
    let kind = kind_of(at)?;
    let mut pictures = at.collection().kinds[&kind].pictures.iter();
    let hash = pictures.find(|known| *known == at.asked.request.field("picture"));
    Ok((kind, hash.cloned()))
}

/// Whatever lies before a picture is laid behind all others.
pub(super) static PICTURE_FIRST: Form<(KindId, Option<String>)> = Form {
    path: "/do/picture-first",
    read: print_of,
    rests_on: nothing,
    act: |(id, hash), at| {
        let known = at.collection().kinds[&id].pictures.iter();
        let before = known.take_while(|other| hash.as_ref().is_some_and(|hash| hash != *other));
        let moved = before.flat_map(|other| {
            [KindEdit::RemovePicture(other.clone()), KindEdit::AddPicture(other.clone())]
        });
        Ok(Deed::edits(moved.map(|edit| Edit::Kind(id, edit)), own_page(at, id)))
    },
};

/// A picture is taken away.
pub(super) static PICTURE_AWAY: Form<(KindId, Option<String>)> = Form {
    path: "/do/picture-away",
    read: print_of,
    rests_on: nothing,
    act: |(id, hash), at| {
        let away = hash.map(|hash| Edit::Kind(id, KindEdit::RemovePicture(hash)));
        Ok(Deed::edits(away, own_page(at, id)))
    },
};

/// This kind turns out to be another one: `kind` goes, `with` stays.
pub(super) static MERGE: Form<(KindId, KindId)> = Form {
    path: "/do/merge-kinds",
    read: |at| {
        let (id, kept) = (kind_of(at)?, KindId(at.asked.id("with")));
        let there = kept != id && at.collection().kinds.contains_key(&kept);
        if there { Ok((id, kept)) } else { Err(gone(at.asked)) }
    },
    rests_on: |(gone, kept)| vec![name_of(*gone), name_of(*kept)],
    act: |(gone, kept), _| {
        let merge = Edit::Kind(kept, KindEdit::Merge(gone));
        Ok(Deed::edits([merge], format!("/finds/{}", kept.0)))
    },
};

/// This kind turns out to be two: the second has a name, and these pictures go over to it.
pub(super) static SPLIT: Form<(KindId, String, BTreeSet<String>)> = Form {
    path: "/do/split-kind",
    read: |at| {
        let moved = at.asked.request.fields("picture").map(str::to_owned).collect();
        Ok((kind_of(at)?, at.asked.typed("name", LONGEST_NAME)?, moved))
    },
    rests_on: |(old, ..)| vec![name_of(*old)],
    act: |(old, name, moved), at| {
        let collection = at.collection();
        if !name.is_empty() {
            free(collection, at.asked, &name, None)?;
        }
        if collection.kinds.len() >= MOST_KINDS {
            return Err(too_many(at.asked.tongue));
        }
        let new = collection.next_kind();
        Ok(Deed::edits(
            kinds::split(collection, old, name, &moved),
            format!("/finds/{}", new.0),
        ))
    },
};

/// This kind is taken out.
pub(super) static TAKE_OUT: Form<KindId> = Form {
    path: "/do/remove-kind",
    read: kind_of,
    rests_on: |kind| vec![name_of(*kind)],
    act: |kind, _| Ok(Deed::edits([Edit::Kind(kind, KindEdit::Remove)], "/finds")),
};

/// The longest name of a kind, in letters.
pub(crate) const LONGEST_NAME: usize = 120;
/// The longest of whatever else is written down about a kind, in letters: three sentences.
pub(crate) const LONGEST_TEXT: usize = 600;
/// The longest of what is said in lines: what the adults see to, questions in two languages.
pub(crate) const LONGEST_LIST: usize = 4000;
/// The most kinds of a collection.
pub(crate) const MOST_KINDS: usize = spinney_model::limits::SCREENS_KINDS;
/// The most pictures of one kind: a sheet of contact prints.
pub(crate) const MOST_PICTURES: usize = 24;

/// What can be written down about a kind: the field, its name in the form, its label, what
/// helps to fill it in, and whether a sentence or two belong there.
pub(super) const KIND_FIELDS: [(KindField, &str, &str, &str, bool); 11] = [
    (KindField::Name, "name", "finds-name", "finds-name-help", false),
    (KindField::HowSure, "how-sure", "finds-how-sure", "finds-how-sure-help", false),
    (
        KindField::ScientificName,
        "scientific",
        "finds-scientific",
        "finds-scientific-help",
        false,
    ),
    (
        KindField::OtherNames,
        "other-names",
        "finds-other-names",
        "finds-other-names-help",
        false,
    ),
    (
        KindField::SecondName,
        "second-name",
        "finds-second-name",
        "finds-second-name-help",
        false,
    ),
    (KindField::Caution, "caution", "finds-caution", "finds-caution-help", true),
    (KindField::ConfirmBy, "confirm", "finds-confirm", "finds-confirm-help", true),
    (KindField::HowOften, "how-often", "finds-how-often", "finds-how-often-help", false),
    (KindField::Where, "where", "finds-where", "finds-where-help", false),
    (KindField::When, "when", "finds-when", "finds-when-help", false),
    (KindField::WhichPlant, "which", "finds-which", "finds-which-help", false),
];

/// The label of a field.
pub(super) fn of_kind(field: KindField) -> &'static str {
    KIND_FIELDS.iter().find(|(known, ..)| *known == field).map_or("", |(_, _, label, ..)| label)
}

/// What can be said of the scene: the field, its name in the form, its label and an example.
pub(super) const SCENE_FIELDS: [(AboutField, &str, &str, &str); 6] = [
    (AboutField::Title, "title", "finds-title", "finds-title-example"),
    (AboutField::Place, "place", "finds-place", "finds-place-example"),
    (AboutField::Season, "season", "finds-season", "finds-season-example"),
    (AboutField::Part, "part", "finds-part", "finds-part-example"),
    (AboutField::Caution, "caution", "finds-scene-caution", "finds-scene-caution-example"),
    (
        AboutField::SecondLanguage,
        "second-language",
        "finds-second-language",
        "finds-second-language-example",
    ),
];

/// The label of a field.
pub(super) fn of_scene(field: AboutField) -> &'static str {
    match field {
        AboutField::BeforeYouGo => "finds-before",
        AboutField::Children => "print-children",
        AboutField::Groups => "print-groups",
        AboutField::SecondQuestions => "finds-second-questions",
        AboutField::Title
        | AboutField::Place
        | AboutField::Season
        | AboutField::Part
        | AboutField::Caution
        | AboutField::SecondLanguage => {
            let known = SCENE_FIELDS.iter().find(|(known, ..)| *known == field);
            known.map_or("", |(_, _, label, _)| label)
        }
    }
}
