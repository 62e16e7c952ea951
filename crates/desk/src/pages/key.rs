//! The key: its questions, what they cost, what to mend, and every change in its place.
//!
//! From a key as people fixed it, or as the machine finished it, to numbered questions or a
//! tree. One question at a time is open to be changed. The margin says what to mend in the key as
//! a whole, and each kind once of which nobody has said what the key asks: the second opinion
//! says it question by question, and a group that left one card in the middle would read the
//! same of it at every question that follows.

mod best;
pub(crate) mod deeds;
pub(crate) mod keyed;
mod open;
mod questions;
mod wishes;

use std::collections::BTreeSet;

use deeds::{BEGIN, KEEP_ALL, trying_out};
use keyed::{Keyed, address_of};
use maud::{Markup, html};
use spinney_collection::guesses::{Missing, Unsaid};
use spinney_collection::keys::letters;
use spinney_collection::pinned::NotAsked;
use spinney_model::{Finding, Place, Severity, TaxonIx};
use spinney_voice::Tongue;

use crate::asked::{Asked, Handler, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{hidden, post};
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::heaps::deeds::TAKE_OUT;
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
    post(&deeds::TRIED),
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
        margin: Some(margin(&key)),
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
                    (hidden(&[("key", &key.id.0), ("asks", &key.made.asks_all()), ("back", &key.address(None))]))
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

fn margin(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let numbers: BTreeSet<u32> = key.made.key.couplets.iter().map(|c| c.number).collect();
    let of_question =
        |found: &&Finding| matches!(found.place, Place::Couplet(n) if numbers.contains(&n));
    let (at, others): (Vec<&Finding>, Vec<&Finding>) =
        key.made.findings().iter().filter(|f| !key.made.of_a_kind(f)).partition(of_question);
    let others: Vec<Finding> = others.into_iter().cloned().collect();
    let left = key.from().not_asked();
    let unanswered = slips(key);
    let loud = |found: &&&Finding| found.severity != Severity::GoodToKnow;
    let places: BTreeSet<u32> = at
        .iter()
        .filter(loud)
        .filter_map(|found| match found.place {
            Place::Couplet(number) => Some(number),
            _ => None,
        })
        .collect();
    let together = key.together();
    let quiet = unanswered.is_none()
        && together.none()
        && places.is_empty()
        && left.is_empty()
        && others.iter().all(|found| found.severity == Severity::GoodToKnow);
    html! {
        h2 { (t.say("key-mend")) }
        @if quiet { p.quiet { (t.say("key-nothing-to-mend")) } }
        (together.slip())
        @if !places.is_empty() {
            p {
                (t.say("key-mend-at"))
                @for number in &places { " " a href={"#q" (number)} { (number) } }
            }
        }
        @if let Some(slips) = &unanswered { (slips) }
        @for left in &left { (wanted(key, left)) }
        (frame::findings(t, &others))
    }
}

fn wanted(key: &Keyed<'_>, NotAsked { at, words, why }: &NotAsked) -> Markup {
    let t = key.t;
    html! {
        div.finding.look {
            p.severity { (t.say("severity-look")) }
            p dir="auto" { (t.with("key-not-asked", &[("words", words)])) }
            p.remedy { (key.why_not(*why)) }
            form method="post" action=(TAKE_OUT.path) {
                (hidden(&[("key", &key.id.0), ("at", &letters(at)), ("back", &key.address(None))]))
                button id={"let-go-" (letters(at))} { (t.say("key-let-go")) }
            }
        }
    }
}

/// So many kinds are seen at once; the others are folded.
const SEEN_FIRST: usize = 6;

/// One slip for every kind; None: everything was said of everybody.
fn slips(key: &Keyed<'_>) -> Option<Markup> {
    // Only where the second opinion found something to say.
    let said = key.made.findings().iter().any(|found| key.made.of_a_kind(found));
    let all: Vec<_> = key.made.guesses.of_kinds.iter().filter(|_| said).collect();
    let (first, rest) = all.split_at(all.len().min(SEEN_FIRST));
    let slips = html! {
        @for (taxon, open) in first { (slip(key, **taxon, open)) }
        @if !rest.is_empty() {
            details {
                summary { (key.t.count("key-unanswered-more", rest.len())) }
                @for (taxon, open) in rest { (slip(key, **taxon, open)) }
            }
        }
    };
    (!all.is_empty()).then_some(slips)
}

fn slip(key: &Keyed<'_>, taxon: TaxonIx, open: &Unsaid) -> Markup {
    let t = key.t;
    let kind = key.made.layer.kinds[taxon.0];
    let name = key.collection.name_in(key.id, kind);
    let missing = open.questions.iter().map(|at| (*at, key.from().missing(*at, kind)));
    let (differ, unsaid): (Vec<_>, Vec<_>) = missing.partition(|(_, missing)| missing.differ);
    html! {
        div.finding.look {
            p.severity { (t.say("severity-look")) }
            @for (open, words, remedy, way) in [
                (&unsaid, "key-unanswered", "key-unanswered-remedy", "key-say-it"),
                (&differ, "key-not-agreed", "key-not-agreed-remedy", "key-decide-it"),
            ] {
                @if !open.is_empty() {
                    p dir="auto" {
                        (t.count_with(words, open.len(), &[("kind", &name)]))
                        @for (number, _) in open { " " a href={"#q" (number)} { (number) } }
                    }
                    p.remedy dir="auto" {
                        (t.with(remedy, &[("kind", &name)]))
                        @for (number, missing) in once_each(open) {
                            " " a href=(address_of(key.id, kind, missing)) { (t.with(way, &[("number", number)])) }
                        }
                    }
                }
            }
            @if open.lost { p dir="auto" { (t.with("key-unanswered-lost", &[("kind", &name)])) } }
        }
    }
}

/// One card that waits on the way is missing at every question below it.
fn once_each(open: &[(u32, Missing)]) -> Vec<&(u32, Missing)> {
    let mut ways = Vec::<&(u32, Missing)>::new();
    for one in open {
        if !ways.iter().any(|(_, known)| known.at == one.1.at) {
            ways.push(one);
        }
    }
    ways
}
