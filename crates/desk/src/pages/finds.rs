//! Our finds: the kinds, with pictures, names, cautions, where and when they were found.
//!
//! All kinds as paper slips, ways to add some, and beside them where people disagree. Each
//! kind has a page of its own (`kind`).

mod add;
mod deeds;
mod disagree;
mod drawing;
mod kind;
pub(crate) mod left;
mod next;
mod one_name;
mod scene;
pub(crate) mod take_table;

use maud::{Markup, html};
use spinney_model::{KindField, KindId, OtherName};

use super::frame::{self, Parts, Screen};
use super::{Route, Shown};
use crate::drawing::of_kind;
use crate::routes::{Asked, Handler};
use crate::{Desk, Method};
use spinney_collection::laid::Laid;
use spinney_collection::{Collection, Kind};
use spinney_voice::Tongue;

pub(crate) use add::pictures_of;
pub(crate) use deeds::{free, gone, typed};

pub(super) const ROUTES: &[Route] = &[
    (Method::Get, "/", Handler::Show(show)),
    (Method::Get, "/finds", Handler::Show(show)),
    (Method::Get, "/finds/{kind}", Handler::Show(kind::show)),
    (Method::Post, "/do/add-kinds", Handler::Do(add::add)),
    (Method::Post, "/do/take-table", Handler::Do(take_table::take)),
    (Method::Post, "/do/describe-scene", Handler::Do(scene::describe)),
    (Method::Post, "/do/decide", Handler::Do(disagree::decide)),
    (Method::Post, "/do/describe-kind", Handler::Do(deeds::describe)),
    (Method::Post, "/do/add-pictures", Handler::Do(deeds::add_pictures)),
    (Method::Post, "/do/picture-first", Handler::Do(deeds::picture_first)),
    (Method::Post, "/do/picture-away", Handler::Do(deeds::picture_away)),
    (Method::Post, "/do/merge-kinds", Handler::Do(deeds::merge)),
    (Method::Post, "/do/split-kind", Handler::Do(deeds::split)),
    (Method::Post, "/do/remove-kind", Handler::Do(deeds::take_out)),
];

/// The longest name of a kind, in letters.
pub(crate) const LONGEST_NAME: usize = 120;
/// The longest of whatever else is written down about a kind, in letters: three sentences.
pub(crate) const LONGEST_TEXT: usize = 600;
/// The most kinds of a collection.
pub(crate) const MOST_KINDS: usize = spinney_model::limits::SCREENS_KINDS;
/// The most pictures of one kind: a sheet of contact prints.
pub(crate) const MOST_PICTURES: usize = 24;

fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let laid = desk.worked.laid(&desk.history.now);
    let collection = &desk.history.now;
    let empty = collection.kinds.is_empty();
    let work = html! {
        h1 { (t.say("nav-finds")) }
        (scene::head(t, collection))
        (left::list(asked, collection))
        (one_name::list(t, collection))
        @if empty {
            div.first {
                (drawing::hand_laying_leaves())
                p.empty { (t.say("finds-empty")) }
                p { a href="/saved" { (t.say("finds-open-copy")) } }
            }
        }
        ul.slips {
            @for (id, kind) in &collection.kinds {
                (slip(t, &collection.name(*id), *id, kind, laid.as_deref()))
            }
        }
        (drawn_line(t, collection, collection.kinds.keys(), laid.as_deref()))
        (add::forms(t))
    };
    let parts = Parts {
        margin: (!empty).then(|| margin(t, desk, asked, laid.as_deref())),
        script: Some("finds.js"),
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
                (face(id, kind, laid))
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

/// The first picture of a kind; else a drawing of what the table says of it; else nothing.
pub(crate) fn face(id: KindId, kind: &Kind, laid: Option<&Laid>) -> Markup {
    html! {
        @if let Some(hash) = kind.pictures.first() {
            img src={"/picture/" (hash)} alt="" loading="lazy";
        } @else if let Some(drawing) = laid.and_then(|laid| of_kind(laid, id)) { (drawing) }
    }
}

/// A line that says what the drawings are, where one of these finds is shown by a drawing.
pub(crate) fn drawn_line<'k>(
    t: Tongue,
    collection: &Collection,
    mut kinds: impl Iterator<Item = &'k KindId>,
    laid: Option<&Laid>,
) -> Markup {
    let bare = |id| collection.kinds.get(id).is_some_and(|kind| kind.pictures.is_empty());
    let drawn = |id: &KindId| laid.is_some_and(|laid| of_kind(laid, *id).is_some());
    let some = kinds.any(|id| bare(id) && drawn(id));
    html! { @if some { p.quiet { (t.say("finds-drawn")) } } }
}
