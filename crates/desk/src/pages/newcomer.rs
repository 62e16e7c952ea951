//! A newcomer: somebody brings a find that is not in the key.
//!
//! It walks the key as with pupils, one question a page (`walk`); where it comes out, its card
//! is laid beside the card that lies there, and what differs is written down (`beside`); where
//! something else stands in the table already, a person decides (`clash`); then it is slotted
//! in with as few questions changed as the table allows (`slot`).

mod beside;
mod clash;
mod seen;
mod slot;
mod walk;

use std::sync::Arc;

use maud::html;
use spinney_model::{Edit, KeyEdit, KeyId, WishField};

use super::finds::LONGEST_NAME;
use super::frame::{self, Parts, Screen};
use super::{Route, Shown};
use crate::routes::{Asked, Deed, Handler, Refused};
use crate::{Desk, Method};
use seen::Fields;
use spinney_collection::keys::Made;

pub(super) const ROUTES: &[Route] = &[
    (Method::Get, "/newcomer", Handler::Show(show)),
    // With everything that was typed, which is too much for an address.
    (Method::Post, "/newcomer", Handler::Show(show)),
    (Method::Post, "/newcomer/slot", Handler::Show(slot::preview)),
    (Method::Get, "/newcomer/done", Handler::Show(slot::done)),
    (Method::Post, "/do/newcomer-key", Handler::Do(begin_key)),
    (Method::Post, "/do/slot-in", Handler::Do(slot::keep)),
];

/// The key that is asked for, worked out; None: there is none, or nobody is in it.
fn key(desk: &mut Desk, asked: &Asked<'_>, wanted: &str) -> Option<(KeyId, Arc<Made>)> {
    let collection = &desk.history.now;
    let wanted = wanted.parse().ok().map(KeyId);
    let key = wanted.filter(|id| collection.keys.contains_key(id));
    let key = key.or_else(|| frame::key_asked(desk, asked))?;
    Some((key, desk.worked.made(&desk.history.now, key)?))
}

fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let fields = Fields::of(asked.request);
    let found = key(desk, asked, fields.get("key"));
    let Some((id, made)) = found.filter(|(_, made)| !made.key.couplets.is_empty()) else {
        return first_a_key(desk, asked);
    };
    let walking = walk::follow(&made.key, fields.get("walk"));
    if !fields.has("walk") {
        return start(desk, asked, id);
    }
    if !walk::still(&fields, &made.key, &walking) {
        let anew = walk::address(asked, id, &made.key, &[]);
        let moved = walk::moved(asked);
        return Shown::Page(frame::refused_from(desk, asked, &moved, &anew));
    }
    match walking.next {
        Some(number) => walk::ask(desk, asked, id, &made, &walking, number),
        None => beside::show(desk, asked, id, &made, &walking),
    }
    .unwrap_or_else(|| {
        let work = html! { h1 { (t.say("newcomer-title")) } p { (t.say("newcomer-nowhere")) } };
        frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work))
    })
}

/// Nothing can be walked yet.
fn first_a_key(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let keys = &desk.history.now.keys;
    let work = html! {
        h1 { (t.say("newcomer-title")) }
        @if desk.history.now.kinds.len() < 2 {
            p.empty { (t.say("newcomer-no-finds")) }
            p { a.main href="/finds" { (t.say("nav-finds")) } }
        } @else if keys.is_empty() {
            p.empty { (t.say("newcomer-no-key")) }
            form method="post" action="/do/newcomer-key" {
                button.main #newcomer-key { (t.say("newcomer-make-key")) }
            }
            p { a href="/heaps" { (t.say("newcomer-or-heaps")) } }
        } @else {
            p.empty { (t.say("newcomer-no-question")) }
            p { a.main href="/heaps" { (t.say("nav-heaps")) } }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work))
}

/// Which key, and what the newcomer is called, if somebody knows.
fn start(desk: &Desk, asked: &Asked<'_>, id: KeyId) -> Shown {
    let t = asked.tongue;
    let work = html! {
        h1 { (t.say("newcomer-title")) }
        div.first {
            (walk::leaf_and_question())
            p.empty { (t.say("newcomer-why")) }
        }
        form method="get" action="/newcomer" {
            label for="newcomer-name" { (t.say("newcomer-name")) }
            input #newcomer-name name="name" maxlength=(LONGEST_NAME) dir="auto";
            (frame::key_choice(t, &desk.history.now, Some(id)))
            input type="hidden" name="walk" value="";
            button.main #newcomer-walk { (t.say("newcomer-walk")) }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work))
}

/// A key that the machine finds, for a collection without one.
fn begin_key(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let key = desk.history.now.next_key();
    let edits = vec![
        Edit::Key(key, KeyEdit::Start(t.say("newcomer-key-name"))),
        Edit::Key(key, KeyEdit::Wish(WishField::Finish, "yes".to_owned())),
    ];
    Ok(Deed::edits(edits, "/newcomer"))
}
