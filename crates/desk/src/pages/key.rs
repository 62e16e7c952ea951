//! The key: its questions, what they cost, what to mend, and every change in its place.
//!
//! From a key as people fixed it, or as the machine finished it, to numbered questions or a
//! tree. One question at a time is open to be changed.

mod best;
mod deeds;
pub(crate) mod keyed;
mod margin;
mod open;
mod pinned;
mod questions;
pub(crate) mod tried;
mod wishes;

use deeds::{BEGIN, KEEP_ALL};
use keyed::{Keyed, asks_all};
use maud::{Markup, html};
use spinney_voice::Tongue;
use tried::trying_out;

use super::frame::{self, Parts, Screen};
use crate::asked::{Asked, Handler, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{hidden, post};
use crate::request::Method;

pub(crate) const ROUTES: &[Route] = &[
    get("/key", show),
    get("/key/compare", best::compare),
    (Method::Get, "/key/looking", Handler::Work(best::looking)),
    (Method::Post, "/do/key-look-on", Handler::Work(best::look_on)),
    (Method::Post, "/do/key-stop", Handler::Work(best::stop)),
    post(&deeds::BEGIN),
    post(&wishes::DESCRIBE),
    post(&deeds::REMOVE),
    post(&deeds::REWORD),
    post(&deeds::SWAP),
    post(&deeds::KEEP),
    post(&deeds::KEEP_ALL),
    post(&deeds::REPLACE),
    post(&deeds::THRESHOLD),
    post(&tried::TRIED),
];

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let Some(key) = Keyed::of(desk, asked) else {
        let work = beginning(desk, t);
        return frame::shown(desk, asked, &Parts::new(Screen::Key, t.say("nav-key"), work));
    };
    let questions = key.made.key.couplets.len();
    let work = html! {
        (whose(&key))
        (best::standing(&key))
        @if questions == 0 {
            p.empty { (t.say("key-no-question")) }
            p { a.main href={"/heaps?key=" (key.id.0)} { (t.say("key-to-heaps")) } }
        } @else {
            (ways_to_look(&key))
            @if key.as_tree { (questions::tree(&key)) } @else { (questions::questions(&key)) }
        }
        (trying_out(t, key.id, &key.made, key.drawn(), &key.address(None)))
        (keep_all(&key))
        (wishes::form(&key))
    };
    let parts = Parts {
        margin: Some(margin::margin(&key)),
        hand: Some("key"),
        ..Parts::new(Screen::Key, t.say("nav-key"), work)
    };
    frame::shown(desk, asked, &parts)
}

/// Against surprises: a key that was printed should not change with the table.
fn keep_all(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let questions = &key.drawn().questions;
    let open = key.made.places.values().any(|place| !questions.contains_key(place));
    html! {
        @if key.drawn().finished() && !key.made.places.is_empty() {
            @if open {
                form.keep-all method="post" action=(KEEP_ALL.path) {
                    (hidden(&[("key", &key.id.0), ("asks", &asks_all(&key.made)), ("back", &key.address(None))]))
                    p.quiet { (t.say("key-may-change")) }
                    button #keep-all { (t.say("key-keep-all")) }
                }
            } @else { p.quiet { (t.say("key-all-kept")) } }
        }
    }
}

/// Where there is no key yet: begin one, or find something first.
fn beginning(desk: &Desk, t: Tongue) -> Markup {
    html! {
        h1 { (t.say("nav-key")) }
        @if desk.history.now.kinds.is_empty() {
            p.empty { (t.say("key-no-finds")) }
            p { a.main href="/finds" { (t.say("nav-finds")) } }
        } @else if desk.history.now.keys.is_empty() {
            p.empty { (t.say("key-none-yet")) }
            (start_form(t))
        } @else {
            p.empty { (t.say("key-no-kinds")) }
        }
    }
}

fn start_form(t: Tongue) -> Markup {
    html! {
        form.start method="post" action=(BEGIN.path) {
            (hidden(&[]))
            label for="new-name" { (t.say("key-name")) }
            input #new-name name="name" maxlength="120" placeholder=(t.say("key-name-example"));
            label for="new-group" { (t.say("key-group")) }
            input #new-group name="group" maxlength="120" placeholder=(t.say("key-group-example"));
            div.buttons {
                button.main #start-finished name="how" value="finish" { (t.say("key-start-finished")) }
                button #start-empty name="how" value="empty" { (t.say("key-start-empty")) }
            }
        }
    }
}

/// Whose key this is, and the ways to the others'.
fn whose(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let others: Vec<_> = key.collection.keys.iter().filter(|(id, _)| **id != key.id).collect();
    html! {
        div.whose {
            h1 { (t.say("key-title")) " · " span dir="auto" { (key.drawn().name) } }
            (frame::key_picker(t, key.collection, Some(key.id), "/key"))
            details {
                summary { (t.count("key-others", others.len())) }
                ul {
                    @for (id, other) in &others {
                        li {
                            a href={"/key/compare?one=" (key.id.0) "&other=" (id.0)} dir="auto" {
                                (t.with("key-compare-with", &[("name", &other.name)]))
                            }
                        }
                    }
                }
                h2 { (t.say("key-start")) }
                (start_form(t))
            }
        }
    }
}

/// As numbered questions, or as a tree; and where the key goes from here.
fn ways_to_look(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let id = key.id.0;
    html! {
        nav.looks aria-label=(t.say("key-looks")) {
            a href={"/key?key=" (id)} aria-current=[(!key.as_tree).then_some("true")] { (t.say("key-as-list")) }
            a href={"/key?key=" (id) "&as=tree"} aria-current=[key.as_tree.then_some("true")] { (t.say("key-as-tree")) }
            a href={"/try?key=" (id)} { (t.say("nav-try")) }
            a href={"/print?key=" (id)} { (t.say("nav-print")) }
        }
    }
}
