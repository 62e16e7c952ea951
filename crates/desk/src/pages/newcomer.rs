//! A newcomer: somebody brings a find that is not in the key.
//!
//! It walks the key as with pupils, one question a page (`walk`); where it comes out, its card
//! is laid beside the card that lies there, and what differs is written down (`beside`); where
//! something else stands in the table already, a person decides (`seen`); then it is slotted
//! in with as few questions changed as the table allows (`slot`).

mod beside;
mod seen;
mod slot;
mod walk;

use maud::html;
use spinney_collection::keys::KeyFrom;
use spinney_model::{Edit, KeyEdit, KeyId, WishField};
use walk::{Fields, key};

use crate::asked::{Asked, Deed, Handler, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{At, Form, hidden, nothing, post};
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::frame::{self, Parts, Screen};
use crate::request::Method;

pub(crate) const ROUTES: &[Route] = &[
    get("/newcomer", show),
    // With everything that was typed, which is too much for an address.
    (Method::Post, "/newcomer", Handler::Show(show)),
    (Method::Post, "/newcomer/slot", Handler::Show(slot::preview)),
    get("/newcomer/done", slot::done),
    post(&BEGIN_KEY),
    post(&slot::SLOT_IN),
];

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
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
    if let Err(moved) = At::now_shown(desk, asked).holds(&walk::fact(id, &fields)) {
        let anew = walk::address(asked, (id, &made), &[]);
        return Shown::Page(frame::refused_from(desk, asked, &moved, &anew));
    }
    match (walking.here(), desk.laid()) {
        (Some(couplet), _) => walk::ask(desk, asked, (id, &made), &walking, couplet),
        (None, Some(laid)) => {
            let (collection, laid, made) = (&desk.history.now, &*laid, &*made);
            beside::show(desk, asked, KeyFrom { t, collection, laid, made, id }, &walking)
        }
        (None, None) => {
            let work =
                html! { h1 { (t.say("newcomer-title")) } p { (t.say("newcomer-nowhere")) } };
            frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work))
        }
    }
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
            form method="post" action=(BEGIN_KEY.path) {
                (hidden(&[]))
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
            (walk::LEAF_AND_QUESTION)
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
static BEGIN_KEY: Form<()> = Form {
    path: "/do/newcomer-key",
    read: |_| Ok(()),
    rests_on: nothing,
    act: |(), at| {
        let key = at.collection().next_key();
        let edits = [
            KeyEdit::Start(at.asked.tongue.say("newcomer-key-name")),
            KeyEdit::Wish(WishField::Finish, "yes".to_owned()),
        ];
        Ok(Deed::edits(edits.map(|edit| Edit::Key(key, edit)), "/newcomer"))
    },
};
