//! Our finds: the kinds, with pictures, names, cautions, where and when they were found.

use maud::{Markup, html};
use spinney_model::{Edit, KindField, KindId};

use super::frame::{self, Parts, Screen};
use super::{Route, Shown};
use crate::collection::{Collection, Kind};
use crate::laid::folded;
use crate::language::Tongue;
use crate::pictures::{self, NoPicture};
use crate::routes::{Asked, Deed, Handler, Refused};
use crate::{Desk, Method};

pub(super) const ROUTES: &[Route] = &[
    (Method::Get, "/", Handler::Show(show)),
    (Method::Get, "/finds", Handler::Show(show)),
    (Method::Post, "/do/add-kinds", Handler::Do(add)),
];

/// The longest name of a kind, in letters.
pub(crate) const LONGEST_NAME: usize = 120;
/// The most kinds of a collection.
pub(crate) const MOST_KINDS: usize = 2_000;

fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let work = html! {
        h1 { (t.say("nav-finds")) }
        @if collection.kinds.is_empty() { p.empty { (t.say("finds-empty")) } }
        ul.slips {
            @for (id, kind) in &collection.kinds { (slip(t, collection, *id, kind)) }
        }
        (add_form(t))
    };
    let parts = Parts {
        script: Some("finds.js"),
        ..Parts::new(Screen::Finds, t.say("nav-finds"), work)
    };
    frame::shown(desk, asked, &parts)
}

/// A kind as a paper slip: the picture on top, the name under it.
fn slip(t: Tongue, collection: &Collection, id: KindId, kind: &Kind) -> Markup {
    html! {
        li.slip {
            a href={"/finds/" (id.0)} {
                (face(kind))
                span.name dir="auto" { (collection.name(id)) }
            }
            @if !collection.is_named(id) { p.quiet { (t.say("finds-not-named")) } }
            @let scientific = kind.field(KindField::ScientificName);
            @if !scientific.is_empty() { p.scientific lang="la" { (scientific) } }
            @let caution = kind.field(KindField::Caution);
            @if !caution.is_empty() { p.caution dir="auto" { strong { (t.say("caution")) " " } (caution) } }
        }
    }
}

/// The first picture of a kind, or an empty frame to stick a leaf in.
pub(crate) fn face(kind: &Kind) -> Markup {
    html! {
        @match kind.pictures.first() {
            Some(hash) => img src={"/picture/" (hash)} alt="" loading="lazy";,
            None => span.no-picture aria-hidden="true" {},
        }
    }
}

fn add_form(t: Tongue) -> Markup {
    html! {
        form.add method="post" action="/do/add-kinds" enctype="multipart/form-data" {
            h2 { (t.say("finds-add")) }
            label for="names" { (t.say("finds-names")) }
            textarea #names name="names" rows="4" {}
            label for="pictures" { (t.say("finds-pictures")) }
            input #pictures type="file" name="pictures" accept="image/jpeg,image/png" multiple;
            button.main { (t.say("finds-add-button")) }
        }
    }
}

/// Adds a kind for every line, and one for every picture.
fn add(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let mut next = collection.next_kind().0;
    let mut edits = Vec::new();
    let mut known: Vec<String> =
        collection.kinds.keys().map(|id| folded(&collection.name(*id))).collect();
    for line in asked.request.field("names").lines().map(str::trim) {
        let name: String = line.chars().take(LONGEST_NAME).collect();
        if name.is_empty() || known.contains(&folded(&name)) {
            continue;
        }
        known.push(folded(&name));
        edits.push(Edit::AddKind(KindId(next), name));
        next += 1;
    }
    let mut kept = Vec::new();
    for file in asked.request.files.iter().filter(|file| !file.bytes.is_empty()) {
        let picture = pictures::written_anew(&file.bytes)
            .map_err(|why| not_a_picture(t, &file.name, why))?;
        edits.push(Edit::AddKind(KindId(next), String::new()));
        edits.push(Edit::AddPicture(KindId(next), pictures::name(&picture)));
        kept.push(picture);
        next += 1;
    }
    if collection.kinds.len() + edits.len() > MOST_KINDS {
        return Err(Refused {
            sentence: t.count("finds-too-many", MOST_KINDS),
            remedy: t.say("finds-too-many-remedy"),
        });
    }
    Ok(Deed { pictures: kept, ..Deed::edits(edits, asked.back("/finds")) })
}

pub(crate) fn not_a_picture(t: Tongue, file: &str, why: NoPicture) -> Refused {
    let sentence = match why {
        NoPicture::NotRead => "picture-not-read",
        NoPicture::TooLarge => "picture-too-large",
    };
    Refused { sentence: t.with(sentence, &[("file", &file)]), remedy: t.say("picture-remedy") }
}
