//! Our finds: the kinds, with pictures, names, cautions, where and when they were found.
//!
//! All kinds as paper slips, ways to add some, and beside them where people disagree. Each
//! kind has a page of its own (`kind`).

pub(crate) mod add;
pub(crate) mod deeds;
mod disagree;
pub(crate) mod face;
pub(crate) mod fields;
mod kind;
pub(crate) mod left;
mod next;
mod scene;

use maud::{Markup, html};
use spinney_collection::Kind;
use spinney_collection::laid::Laid;
use spinney_model::{KindField, KindId, OtherName};
use spinney_voice::Tongue;

use super::frame::{self, Parts, Screen};
use crate::asked::{Asked, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::post;

pub(crate) const ROUTES: &[Route] = &[
    get("/", show),
    get("/finds", show),
    get("/finds/{kind}", kind::show),
    post(&add::ADD_KINDS),
    post(&add::TAKE_TABLE),
    post(&scene::DESCRIBE),
    post(&disagree::DECIDE),
    post(&deeds::DESCRIBE),
    post(&deeds::ADD_PICTURES),
    post(&deeds::PICTURE_FIRST),
    post(&deeds::PICTURE_AWAY),
    post(&deeds::MERGE),
    post(&deeds::SPLIT),
    post(&deeds::TAKE_OUT),
];

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let laid = desk.laid();
    let collection = &desk.history.now;
    let empty = collection.kinds.is_empty();
    let work = html! {
        h1 { (t.say("nav-finds")) }
        (scene::head(t, collection))
        (left::list(asked, collection))
        (disagree::one_name(t, collection))
        @if empty {
            div.first {
                (face::hand_laying_leaves())
                p.empty { (t.say("finds-empty")) }
                p { a href="/saved" { (t.say("finds-open-copy")) } }
            }
        }
        ul.slips {
            @for (id, kind) in &collection.kinds {
                (slip(t, &collection.name(*id), *id, kind, laid.as_deref()))
            }
        }
        (face::drawn_line(t, collection, collection.kinds.keys(), laid.as_deref()))
        (add::forms(t))
    };
    let parts = Parts {
        margin: (!empty).then(|| margin(t, desk, asked, laid.as_deref())),
        hand: Some("finds"),
        ..Parts::new(Screen::Finds, t.say("nav-finds"), work)
    };
    frame::shown(desk, asked, &parts)
}

fn margin(t: Tongue, desk: &Desk, asked: &Asked<'_>, laid: Option<&Laid>) -> Markup {
    html! {
        (next::next(t, desk, asked, laid))
        (disagree::list(t, &desk.history.now, laid))
        p.for-good { a href="/forget" { (t.say("finds-forget")) } }
    }
}

/// A kind as a paper slip: the picture on top, the name under it.
fn slip(t: Tongue, name: &str, id: KindId, kind: &Kind, laid: Option<&Laid>) -> Markup {
    let field = |field| kind.field(field);
    let found = [KindField::Where, KindField::When, KindField::WhichPlant];
    let found: Vec<&str> =
        found.into_iter().map(field).filter(|text| !text.is_empty()).collect();
    html! {
        li.slip {
            a id={"kind-" (id.0)} href={"/finds/" (id.0)} {
                (face::face(id, kind, laid))
                span.name dir="auto" { (name) }
            }
            @if field(KindField::Name).is_empty() { p.quiet { (t.say("finds-not-named")) } }
            @let sure = field(KindField::HowSure);
            @if !sure.is_empty() { p.quiet dir="auto" { (sure) } }
            @let scientific = field(KindField::ScientificName);
            @if !scientific.is_empty() { p.scientific lang="la" { (scientific) } }
            (other_names(names_of(laid, id)))
            @let often = field(KindField::HowOften);
            @if !often.is_empty() { p.quiet dir="auto" { (t.with("finds-met", &[("often", &often)])) } }
            @if !found.is_empty() { p.quiet dir="auto" { (found.join(" · ")) } }
            @let caution = field(KindField::Caution);
            @if !caution.is_empty() { p.caution dir="auto" { strong { (t.say("caution")) " " } (caution) } }
        }
    }
}

/// Further names of a kind, as the table reads them.
fn names_of(laid: Option<&Laid>, id: KindId) -> &[OtherName] {
    let taxon = laid.and_then(|laid| Some(laid.matrix.taxon(laid.taxon(id)?)));
    taxon.map_or(&[], |taxon| &taxon.other_names)
}

fn other_names(names: &[OtherName]) -> Markup {
    html! {
        @if !names.is_empty() {
            p.other-names {
                @for name in names {
                    span lang=[name.language.as_deref()] dir="auto" {
                        (name.name)
                        @if let Some(language) = &name.language { " " small { "(" (language) ")" } }
                    }
                    " "
                }
            }
        }
    }
}
