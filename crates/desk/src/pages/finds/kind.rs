//! How a kind looks on a card: its first picture, or a drawing of what the table says of it; and
//! its own page: its pictures, everything that is known of it, and what can become of it.
//!
//! Which leaf is drawn, and how, is the room `draw`; here it becomes part of a page.

use maud::{Markup, PreEscaped, html};
use spinney_collection::laid::{self, Laid};
use spinney_collection::{Collection, Kind, Sayings};
use spinney_model::{Drawing, KindField, KindId};
use spinney_voice::Tongue;

use crate::asked::{Asked, Shown};
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::cell;
use crate::pages::finds::deeds::{
    ADD_PICTURES, DESCRIBE, DRAWING_AWAY, KIND_FIELDS, LONGEST_NAME, LONGEST_TEXT, MERGE,
    MOST_PICTURES, PICTURE_AWAY, PICTURE_FIRST, SPLIT, TAKE_OUT,
};
use crate::pages::frame::{self, Parts, Screen};

/// What the parts of this page look at.
struct View<'a> {
    t: Tongue,
    desk: &'a Desk,
    id: KindId,
    kind: &'a Kind,
    /// Who says what of it.
    said: &'a Sayings,
    /// What the table says of it, drawn.
    drawing: Option<Markup>,
    name: String,
}

pub(super) fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let id = KindId(asked.number(0));
    let laid = desk.laid();
    let Some(kind) = desk.history.now.kinds.get(&id) else { return Shown::Nothing };
    let said = laid::said(&desk.history.now, laid.as_deref());
    let drawing = laid.as_ref().and_then(|laid| of_kind(laid, id));
    let view =
        View { t, desk, id, kind, said: &said, drawing, name: desk.history.now.name(id) };
    let work = html! {
        p { a href={"/finds#kind-" (id.0)} { (t.say("finds-all")) } }
        h1 dir="auto" { (view.name) }
        @if kind.field(KindField::Name).is_empty() { p.quiet { (t.say("finds-not-named")) } }
        (pictures(&view))
        (form(&view))
    };
    let parts = Parts {
        margin: Some(margin(&view)),
        hand: Some("finds"),
        ..Parts::new(Screen::Finds, view.name.clone(), work)
    };
    frame::shown(desk, asked, &parts)
}

/// The hidden fields that every form of this page has.
fn of_kind_fields(view: &View<'_>) -> Markup {
    hidden(&[("kind", &view.id.0), ("back", &format!("/finds/{}", view.id.0))])
}

fn pictures(view: &View<'_>) -> Markup {
    let t = view.t;
    let pictures = &view.kind.pictures;
    html! {
        @if let (true, Some(drawing)) = (pictures.is_empty(), &view.drawing) {
            div.from-table {
                (drawing)
                p.quiet { (t.say(if view.kind.drawing.is_some() { "finds-drawn-leaf" } else { "finds-drawn" })) }
            }
        }
        @if view.kind.drawing.is_some() {
            @if let (false, Some(drawing)) = (pictures.is_empty(), &view.drawing) {
                div.from-table { (drawing) p.quiet { (t.say("finds-drawn-beside")) } }
            }
            form method="post" action=(DRAWING_AWAY.path) {
                (of_kind_fields(view))
                button.quiet #drawing-away { (t.say("finds-drawing-away")) }
            }
        }
        @if !pictures.is_empty() {
            ul.prints {
                @for (at, hash) in pictures.iter().enumerate() {
                    @let words: [(&str, &dyn std::fmt::Display); 2] =
                        [("kind", &view.name), ("number", &(at + 1))];
                    @let words = t.with("finds-picture-of", &words);
                    li {
                        img src={"/picture/" (hash)} alt=(words) loading="lazy";
                        div.back-and-forth {
                            @if at > 0 { (picture_button(view, hash, at, true)) }
                            (picture_button(view, hash, at, false))
                        }
                        a href={"/forget/picture/" (view.id.0) "/" (hash)} { (t.say("finds-picture-forget")) }
                    }
                }
            }
        }
        @if pictures.len() < MOST_PICTURES {
            form.add #add method="post" action=(ADD_PICTURES.path) enctype="multipart/form-data" {
                (of_kind_fields(view))
                div.drop {
                    label for="pictures" { (t.say("finds-more-pictures")) }
                    input #pictures type="file" name="pictures" accept="image/jpeg,image/png" multiple
                        required data-dropped=(t.say("finds-dropped"));
                    p.quiet.drop-here hidden { (t.say("finds-drop-here")) }
                }
                button #add-pictures { (t.say("finds-add-pictures")) }
            }
        }
    }
}

fn picture_button(view: &View<'_>, hash: &str, at: usize, first: bool) -> Markup {
    let (action, what, words) = match first {
        true => (PICTURE_FIRST.path, "first", "finds-picture-first"),
        false => (PICTURE_AWAY.path, "away", "finds-picture-away"),
    };
    html! {
        form method="post" action=(action) {
            (of_kind_fields(view))
            input type="hidden" name="picture" value=(hash);
            button.quiet id={"picture-" (what) "-" (at)} { (view.t.say(words)) }
        }
    }
}

/// Everything that is known of it, as one form. A name in a second language is asked for where
/// there is one.
fn form(view: &View<'_>) -> Markup {
    let t = view.t;
    let wanted = |(field, ..): &(KindField, &str, &str, &str, bool)| {
        *field != KindField::SecondName
            || view.desk.history.now.second_language().is_some()
            || !view.kind.field(*field).is_empty()
    };
    html! {
        form.about method="post" action=(DESCRIBE.path) {
            (of_kind_fields(view))
            @for (field, name, label, help, long) in KIND_FIELDS.into_iter().filter(wanted) {
                @let text = view.kind.field(field);
                @let longest = if field == KindField::Name { LONGEST_NAME } else { LONGEST_TEXT };
                div.field {
                    label for={"about-" (name)} { (t.say(label)) }
                    @if long {
                        textarea id={"about-" (name)} name=(name) rows="2" dir="auto"
                            maxlength=(longest) aria-describedby={"help-" (name)} { (text) }
                    } @else {
                        input id={"about-" (name)} name=(name) value=(text) dir="auto"
                            maxlength=(longest) aria-describedby={"help-" (name)};
                    }
                    p.quiet id={"help-" (name)} { (t.say(help)) }
                }
            }
            button.main #about-keep { (t.say("finds-keep")) }
        }
    }
}

fn margin(view: &View<'_>) -> Markup {
    html! {
        (table_says(view))
        (merge(view))
        (split(view))
        (away(view))
    }
}

/// Its row of the table, and who says what.
fn table_says(view: &View<'_>) -> Markup {
    let t = view.t;
    let collection = &view.desk.history.now;
    let said: Vec<_> = collection
        .characters
        .keys()
        .map(|at| (*at, view.said.sources(view.id, *at)))
        .filter(|(_, said)| !said.is_empty())
        .collect();
    html! {
        h2 { (t.say("finds-table-says")) }
        @if said.is_empty() { p.quiet { (t.say("finds-table-nothing")) } }
        @else {
            dl.row {
                @for (character, said) in said {
                    dt dir="auto" { (collection.character_name(character)) }
                    @for (source, saying) in said {
                        dd dir="auto" {
                            (cell::words(t, saying))
                            @if !source.is_empty() { span.quiet { " (" (source) ")" } }
                        }
                    }
                }
            }
        }
        p { a href="/table" { (t.say("finds-to-table")) } }
        @let leaves = collection.specimens_of(view.id);
        @if leaves > 0 {
            p { a href="/leaves" { (t.say("leaves-link")) } " (" (t.count("leaves-count", leaves)) ")" }
        }
    }
}

fn merge(view: &View<'_>) -> Markup {
    let t = view.t;
    let others: Vec<_> =
        view.desk.history.now.kinds.keys().filter(|other| **other != view.id).collect();
    html! {
        @if !others.is_empty() {
            details #merge {
                summary #merge-open { (t.say("finds-merge")) }
                form method="post" action=(MERGE.path) {
                    (of_kind_fields(view))
                    label for="merge-with" { (t.with("finds-merge-with", &[("kind", &view.name)])) }
                    select #merge-with name="with" {
                        @for other in others {
                            option value=(other.0) { (view.desk.history.now.name(*other)) }
                        }
                    }
                    p.quiet { (t.say("finds-merge-why")) }
                    button #merge-do { (t.say("finds-merge-do")) }
                }
            }
        }
    }
}

fn split(view: &View<'_>) -> Markup {
    let t = view.t;
    html! {
        details #split {
            summary #split-open { (t.say("finds-split")) }
            form method="post" action=(SPLIT.path) {
                (of_kind_fields(view))
                label for="split-name" { (t.say("finds-split-name")) }
                input #split-name name="name" maxlength=(LONGEST_NAME) dir="auto";
                @if !view.kind.pictures.is_empty() {
                    fieldset {
                        legend { (t.say("finds-split-pictures")) }
                        @for (at, hash) in view.kind.pictures.iter().enumerate() {
                            span.choice {
                                input type="checkbox" id={"goes-" (at)} name="picture" value=(hash);
                                label for={"goes-" (at)} {
                                    img src={"/picture/" (hash)} alt=(t.count("finds-picture-number", at + 1)) loading="lazy";
                                }
                            }
                        }
                    }
                }
                p.quiet { (t.say("finds-split-why")) }
                button #split-do { (t.say("finds-split-do")) }
            }
        }
    }
}

fn away(view: &View<'_>) -> Markup {
    let t = view.t;
    html! {
        details #away {
            summary #away-open { (t.say("finds-away")) }
            form method="post" action=(TAKE_OUT.path) {
                (of_kind_fields(view))
                p { (t.say("finds-away-why")) }
                button #away-do { (t.with("finds-away-do", &[("kind", &view.name)])) }
            }
            p { a href={"/forget/kind/" (view.id.0)} { (t.say("finds-forget-kind")) } }
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
    let bare = |id| {
        let kind = collection.kinds.get(id);
        kind.is_some_and(|kind| kind.pictures.is_empty() && kind.drawing.is_none())
    };
    let drawn = |id: &KindId| laid.is_some_and(|laid| of_kind(laid, *id).is_some());
    let some = kinds.any(|id| bare(id) && drawn(id));
    html! { @if some { p.quiet { (t.say("finds-drawn")) } } }
}

/// A hand that lays leaves in a row, on the edge of a table: one in one piece, one lobed, one like
/// a feather and still held by its stalk.
pub(crate) const HAND_LAYING_LEAVES: PreEscaped<&str> =
    PreEscaped(include_str!("../../../assets/drawn/hand.svg"));

/// The drawing of what the table says of a kind; None: it says nothing of a leaf, or not enough.
pub(crate) fn of_kind(laid: &Laid, kind: KindId) -> Option<Markup> {
    laid.drawing(kind, spinney_draw::of_kinds).map(|drawing| svg(drawing, "leaf drawn"))
}

/// A drawing on a page. Nothing that anybody typed is in it: it is made of numbers.
pub(crate) fn svg(drawing: &Drawing, class: &str) -> Markup {
    PreEscaped(spinney_press::lines::svg(drawing, class))
}
