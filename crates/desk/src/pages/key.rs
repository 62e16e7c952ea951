//! The key: its questions, what they cost, what to mend, and every change in its place.
//!
//! From a key as people fixed it, or as the machine finished it, to numbered questions or a
//! tree. One question at a time is open to be changed.

mod alternatives;
mod best;
mod compare;
mod deeds;
mod ends;
mod margin;
mod missing;
mod open;
mod pinned;
mod questions;
mod ranges;
mod together;
mod tree;
mod unanswered;
mod wishes;

use std::sync::Arc;

use maud::{Markup, html};
use spinney_model::{Couplet, Finding, Fork, Holds, KeyId, KindId, Place};
use spinney_press::Stamp;

use super::frame::{self, Parts, Screen};
use super::{Route, Shown, heaps, stood};
use spinney_collection::keys::letters;

use crate::asking::way;
use crate::routes::{Asked, Handler};
use crate::{Desk, Method};
use spinney_collection::keys::Made;
use spinney_collection::laid::Laid;
use spinney_collection::{Collection, Drawn};
use spinney_voice::Tongue;

pub(crate) use ends::{Ending, names};
pub(crate) use missing::{From, Missing};
pub(crate) use together::{Together, joined};

pub(super) const ROUTES: &[Route] = &[
    (Method::Get, "/key", Handler::Show(show)),
    (Method::Get, "/key/compare", Handler::Show(compare::show)),
    (Method::Get, "/key/looking", Handler::Show(best::looking)),
    (Method::Post, "/do/key-look-on", Handler::Answer(best::look_on)),
    (Method::Post, "/do/key-stop", Handler::Answer(best::stop)),
    (Method::Post, "/do/key-start", Handler::Do(deeds::start)),
    (Method::Post, "/do/key-describe", Handler::Do(wishes::describe)),
    (Method::Post, "/do/key-remove", Handler::Do(deeds::remove)),
    (Method::Post, "/do/key-finish", Handler::Do(heaps::deeds::finish)),
    (Method::Post, "/do/key-reword", Handler::Do(deeds::reword)),
    (Method::Post, "/do/key-swap", Handler::Do(deeds::swap)),
    (Method::Post, "/do/key-keep", Handler::Do(deeds::keep)),
    (Method::Post, "/do/key-keep-all", Handler::Do(deeds::keep_all)),
    (Method::Post, "/do/key-let-go", Handler::Do(deeds::let_go)),
    (Method::Post, "/do/key-replace", Handler::Do(deeds::replace)),
    (Method::Post, "/do/key-threshold", Handler::Do(deeds::threshold)),
    (Method::Post, "/do/key-tried", Handler::Do(deeds::tried)),
];

/// A key with everything that the parts of this screen look at.
pub(super) struct Keyed {
    pub(super) t: Tongue,
    pub(super) id: KeyId,
    pub(super) collection: Collection,
    pub(super) laid: Arc<Laid>,
    pub(super) made: Arc<Made>,
    /// The key as the machine would finish it, with what every other question would cost: where
    /// a question is open.
    pub(super) explained: Option<Arc<Made>>,
    /// The question that is open to be changed.
    pub(super) open: Option<Fork>,
    pub(super) as_tree: bool,
}

impl Keyed {
    /// The key that is asked for; None: none was begun, or it has no kinds.
    fn of(desk: &mut Desk, asked: &Asked<'_>) -> Option<Self> {
        let id = frame::key_asked(desk, asked)?;
        let laid = desk.worked.laid(&desk.history.now)?;
        let made = desk.worked.made(&desk.history.now, id)?;
        let request = asked.request;
        let opened = request.query.iter().any(|(name, _)| name == "open");
        let explained = opened.then(|| desk.worked.explained(&desk.history.now, id)).flatten();
        Some(Self {
            t: asked.tongue,
            id,
            collection: desk.history.now.clone(),
            laid,
            made,
            explained,
            open: opened.then(|| way(request.asked("open"))),
            as_tree: request.asked("as") == "tree",
        })
    }

    pub(super) fn drawn(&self) -> &Drawn {
        &self.collection.keys[&self.id]
    }

    /// What is missing of a kind at a question.
    pub(super) fn missing(&self, number: u32, kind: KindId) -> Missing {
        let (collection, laid, made) = (&self.collection, &self.laid, &self.made);
        Missing::of(From { collection, laid, made, key: self.id }, number, kind)
    }

    /// The kinds that the key leaves together.
    pub(super) fn together(&self) -> Together<'_> {
        let (t, collection, key, made) = (self.t, &self.collection, self.id, &*self.made);
        Together { t, collection, key, made }
    }

    pub(super) fn place(&self, couplet: &Couplet) -> &Fork {
        &self.made.places[&couplet.number]
    }

    /// Whether a question is open to be changed.
    pub(super) fn is_open(&self, couplet: &Couplet) -> bool {
        self.open.as_ref() == Some(self.place(couplet))
    }

    /// The address of this page, with a question open or none.
    pub(super) fn address(&self, open: Option<&Fork>) -> String {
        let mut address = format!("/key?key={}", self.id.0);
        if self.as_tree {
            address.push_str("&as=tree");
        }
        if let Some(at) = open {
            address.push_str(&format!("&open={}", letters(at)));
        }
        address
    }

    /// The hidden fields of a form that changes a question.
    pub(super) fn where_fields(&self, at: &Fork) -> Markup {
        html! {
            input type="hidden" name="key" value=(self.id.0);
            input type="hidden" name="at" value=(letters(at));
            input type="hidden" name="back" value=(self.address(Some(at)));
        }
    }

    /// What was found at one question; what nobody has said is gathered in the margin.
    pub(super) fn findings_at(&self, number: u32) -> Vec<Finding> {
        let here = Place::Couplet(number);
        let found = self.made.findings().iter();
        let found =
            found.filter(|found| found.place == here && !unanswered::said_here(self, found));
        found.cloned().collect()
    }
}

fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
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
            @if key.as_tree { (tree::tree(&key)) } @else { (questions::questions(&key)) }
        }
        (trying_out(t, key.id, &key.made, key.drawn(), &key.address(None)))
        (keep_all(&key))
        (wishes::form(&key))
    };
    let parts = Parts {
        margin: Some(margin::margin(&key)),
        script: Some("key.js"),
        ..Parts::new(Screen::Key, t.say("nav-key"), work)
    };
    frame::shown(desk, asked, &parts)
}

/// The token of the questions of a key, each with its place.
pub(super) fn asked_token(made: &Made) -> String {
    stood::token(made.key.couplets.iter().flat_map(|couplet| {
        [letters(&made.places[&couplet.number]), couplet.wording.first().to_owned()]
    }))
}

/// Whether the key is a trying-out copy, and the button by which people say that they tried it.
pub(crate) fn trying_out(
    t: Tongue,
    id: KeyId,
    made: &Made,
    drawn: &Drawn,
    back: &str,
) -> Markup {
    let standing = made.standing(drawn);
    let (told, button, wanted) = match (Stamp::of(standing), standing.tried) {
        _ if made.key.couplets.is_empty() => return html! {},
        (Stamp::Draft, _) | (Stamp::None, false) => return html! {},
        (Stamp::TryingOut, _) if standing.holds == Holds::ToMend => {
            return html! { p.quiet.trying-out { (t.say("tried-mend-first")) } };
        }
        (Stamp::TryingOut, _) => ("tried-not-yet", "tried-it", made.token()),
        (Stamp::None, true) => ("tried-already", "tried-not-after-all", String::new()),
    };
    html! {
        form.trying-out method="post" action="/do/key-tried" {
            input type="hidden" name="key" value=(id.0);
            input type="hidden" name="tried" value=(wanted);
            input type="hidden" name="back" value=(back);
            p.quiet { (t.say(told)) }
            button #tried { (t.say(button)) }
        }
    }
}

/// Against surprises: a key that was printed should not change with the table.
fn keep_all(key: &Keyed) -> Markup {
    let t = key.t;
    let questions = &key.drawn().questions;
    let open = key.made.places.values().any(|place| !questions.contains_key(place));
    html! {
        @if key.drawn().finished() && !key.made.places.is_empty() {
            @if open {
                form.keep-all method="post" action="/do/key-keep-all" {
                    (stood::field(stood::STOOD, &asked_token(&key.made)))
                    input type="hidden" name="key" value=(key.id.0);
                    input type="hidden" name="back" value=(key.address(None));
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
        form.start method="post" action="/do/key-start" {
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
fn whose(key: &Keyed) -> Markup {
    let t = key.t;
    let others: Vec<_> = key.collection.keys.iter().filter(|(id, _)| **id != key.id).collect();
    html! {
        div.whose {
            h1 { (t.say("key-title")) " · " span dir="auto" { (key.drawn().name) } }
            (frame::key_picker(t, &key.collection, Some(key.id), "/key"))
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
fn ways_to_look(key: &Keyed) -> Markup {
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
