//! The answer for the group: does every find come out of their key? At most three questions
//! back to them, in their own words.

use std::fmt::Display;

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_collection::asked_back::{Back, What, asked_back};
use spinney_collection::keys::letters;
use spinney_collection::laid::Laid;
use spinney_collection::layer::Layer;
use spinney_model::{Fork, KeyId, KindId};
use spinney_voice::Tongue;

use super::names;
use crate::asked::{Asked, Shown};
use crate::desk::Desk;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::heaps::card::answer_tab;
use crate::pages::heaps::place::on_the_way;
use crate::pages::key::keyed;

/// So many questions go back to the group; more would be a lesson.
const MOST_QUESTIONS: usize = 3;

pub(super) fn show(
    desk: &Desk,
    asked: &Asked<'_>,
    key: KeyId,
    layer: &Layer,
    laid: &Laid,
) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let questions = asked_back(&collection.keys[&key], layer, laid);
    let all = questions.len();
    let work = html! {
        h1 { (t.say("copy-answer")) " · " span dir="auto" { (desk.history.now.keys[&key].name) } }
        (frame::key_picker(t, &desk.history.now, Some(key), "/copy"))
        (verdict(desk, asked, key, layer))
        @if !questions.is_empty() { p { (t.count("copy-questions", all.min(MOST_QUESTIONS))) } }
        ol.back {
            @for question in questions.iter().take(MOST_QUESTIONS) {
                @let to = format!("/heaps?key={}&at={}", key.0, letters(&question.at));
                li { p dir="auto" { (sentence(t, collection, key, question)) } a.button href=(to) { (t.say("copy-mend")) } }
            }
        }
        @if all > MOST_QUESTIONS { p.quiet { (t.count("copy-later", all - MOST_QUESTIONS)) } }
        (walked(desk, asked, key, layer))
        (names::section(desk, asked, key, layer, laid))
        p.then {
            a.main href={"/print?key=" (key.0) "&sheet=chart"} { (t.say("copy-print")) } " "
            a.button href={"/heaps?key=" (key.0)} { (t.say("copy-heaps")) } " "
            a.button href={"/try?key=" (key.0)} { (t.say("nav-try")) }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Heaps, t.say("copy-answer"), work))
}

/// Whether every find comes out alone, and by name who does not.
fn verdict(desk: &Desk, asked: &Asked<'_>, key: KeyId, layer: &Layer) -> Markup {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let drawn = &collection.keys[&key];
    let lost = layer.stranded();
    let alike = layer.together();
    let words = |at: &Fork| drawn.questions.get(at).map_or("", |q| q.words.as_str());
    html! {
        @if lost.is_empty() && alike.is_empty() {
            p.empty { (t.say("copy-works")) }
        } @else {
            p.empty { (t.say("copy-not-yet")) }
            ul.verdict-names {
                @for (at, kind) in &lost {
                    li dir="auto" { strong { (collection.name_in(key, *kind)) } " " (t.with("copy-stranded", &[("words", &words(at))])) }
                }
                @for (_, kinds) in &alike {
                    li dir="auto" { strong { (joined(t, collection, key, kinds)) } " " (t.say("key-are-together")) "." }
                }
            }
        }
    }
}

/// The names of kinds as they are said one after another.
fn joined(t: Tongue, collection: &Collection, key: KeyId, kinds: &[KindId]) -> String {
    keyed::joined(t, kinds.iter().map(|kind| collection.name_in(key, *kind)).collect())
}

/// What is asked back, in words.
fn sentence(t: Tongue, collection: &Collection, key: KeyId, back: &Back<'_>) -> String {
    let question = collection.keys[&key].questions.get(&back.at);
    let words = question.map_or("", |question| question.words.as_str());
    let about = |message: &str, name: &str, text: &str| {
        t.with(message, &[(name, &text as &dyn Display), ("words", &words)])
    };
    match &back.what {
        What::Lost(kind) => about("copy-lost", "kind", &collection.name_in(key, *kind)),
        What::Vague(word) => about("copy-vague", "word", word),
        What::LookAgain(kind) => {
            about("copy-look-again", "kind", &collection.name_in(key, *kind))
        }
        What::Together(kinds) => {
            t.with("copy-together", &[("kinds", &joined(t, collection, key, kinds))])
        }
    }
}

/// Every card on its way through the group's own questions.
fn walked(desk: &Desk, asked: &Asked<'_>, key: KeyId, layer: &Layer) -> Markup {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let drawn = &collection.keys[&key];
    let ends =
        layer.forks.iter().filter(|(_, heap)| heap.ask.is_none() && !heap.kinds.is_empty());
    let elsewhere = |at: &Fork, kind: &KindId| {
        ends.clone().any(|(other, heap)| other != at && heap.kinds.contains(kind))
    };
    html! {
        h2 { (t.say("copy-walks")) }
        ul.walks {
            @for (at, heap) in ends.clone() {
                li {
                    strong dir="auto" { (joined(t, collection, key, &heap.kinds)) }
                    @if heap.kinds.len() > 1 { " " span.guess { (t.say("key-together")) } }
                    ": "
                    @for (words, yes) in on_the_way(drawn, at) {
                        span dir="auto" { (words) } " " (answer_tab(t, yes)) " "
                    }
                    @for kind in heap.kinds.iter().filter(|kind| elsewhere(at, kind)) {
                        span.guess dir="auto" { (t.with("copy-elsewhere", &[("kind", &collection.name_in(key, *kind))])) }
                    }
                }
            }
            @for (at, kind) in layer.stranded() {
                li.stranded {
                    strong dir="auto" { (collection.name_in(key, kind)) }
                    " " (t.with("copy-stranded", &[("words", &drawn.questions.get(&at).map_or("", |q| &q.words))]))
                }
            }
        }
    }
}
