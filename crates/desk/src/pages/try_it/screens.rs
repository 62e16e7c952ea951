//! The screens of a walk: the start, and a question.

use std::sync::Arc;

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_collection::keys::Made;
use spinney_collection::laid::Laid;
use spinney_collection::walking::{Walking, letter};
use spinney_model::{Couplet, KeyId, KindField, TaxonIx, Wording};
use spinney_voice::{Tongue, glossary};

use crate::pages::heaps::card::answer_tab;
use crate::pages::{frame, words};

/// A walk through a key, with everything that its screens look at.
pub(super) struct Trying<'a> {
    pub(super) t: Tongue,
    pub(super) id: KeyId,
    pub(super) collection: &'a Collection,
    pub(super) made: Arc<Made>,
    pub(super) laid: Option<Arc<Laid>>,
    pub(super) answers: String,
}

impl Trying<'_> {
    /// The address after some answers.
    pub(super) fn address(&self, answers: &str) -> String {
        format!("/try?key={}&at={answers}", self.id.0)
    }
}

/// Where there is no key to try.
pub(super) fn no_key(t: Tongue) -> Markup {
    html! {
        h1 { (t.say("nav-try")) }
        p.empty { (t.say("try-no-key")) }
        p { a.main href="/key" { (t.say("nav-key")) } }
    }
}

/// What is needed, what may hurt, and the way in.
pub(super) fn start(trying: &Trying<'_>) -> Markup {
    let t = trying.t;
    let scene = trying.made.layer.matrix.scene();
    let all: Vec<TaxonIx> = trying.made.layer.matrix.taxon_indices().collect();
    html! {
        div.walk {
            (head(trying, None))
            h1 { (t.say("try-found")) }
            @if let Some(part) = &scene.part { p dir="auto" { (t.with("try-need", &[("part", part)])) } }
            p {
                (t.say("try-how"))
                @if all.iter().any(|taxon| written(trying, *taxon)) { " " (t.say("try-sentence")) }
            }
            @if let Some(caution) = &scene.caution {
                p.caution dir="auto" { strong { (t.say("caution")) " " } (caution) }
            }
            (cautions(trying, &all))
            @if trying.made.key.couplets.is_empty() {
                p.empty { (t.say("key-no-question")) }
            } @else {
                p { a.main #begin href=(trying.address("")) { (t.say("try-begin")) } }
            }
            (frame::key_picker(t, trying.collection, Some(trying.id), "/try"))
        }
    }
}

/// Whether somebody wrote a sentence to confirm a kind by.
fn written(trying: &Trying<'_>, taxon: TaxonIx) -> bool {
    let kind =
        trying.made.layer.kinds.get(taxon.0).and_then(|id| trying.collection.kinds.get(id));
    kind.is_some_and(|kind| !kind.field(KindField::ConfirmBy).is_empty())
}

/// Which key this is, a step back, and the way out.
pub(super) fn head(trying: &Trying<'_>, back: Option<String>) -> Markup {
    let t = trying.t;
    html! {
        nav.walk-head aria-label=(t.say("try-ways")) {
            @if let Some(back) = back { a.button #back href=(back) { (t.say("try-back")) } }
            span dir="auto" { (trying.collection.keys[&trying.id].name) }
            a #leave href={"/key?key=" (trying.id.0)} { (t.say("try-leave")) }
        }
    }
}

/// The address one answer ago.
pub(super) fn back(trying: &Trying<'_>) -> String {
    match trying.answers.char_indices().next_back() {
        Some((last, _)) => trying.address(&trying.answers[..last]),
        None => format!("/try?key={}", trying.id.0),
    }
}

/// One question with its two answers.
pub(super) fn question(trying: &Trying<'_>, walk: &Walking<'_>, couplet: &Couplet) -> Markup {
    let t = trying.t;
    let on = |given| trying.address(&format!("{}{}", trying.answers, letter(given)));
    let (words, yes, no) = match &couplet.wording {
        Wording::Question(words) => (words.clone(), t.say("answer-yes"), t.say("answer-no")),
        Wording::Leads { yes, no } => (t.say("try-which"), yes.clone(), no.clone()),
    };
    let ask = couplet.ask.as_ref();
    let touch = ask.is_some_and(|a| trying.made.layer.matrix.character(a.character).by_touch);
    let possible: Vec<TaxonIx> = walk.possible().into_iter().collect();
    html! {
        div.walk {
            (head(trying, Some(back(trying))))
            h1 #asking {
                span.step { (t.with("try-step", &[("number", &couplet.number)])) " " }
                span dir="auto" { (words) }
            }
            @if touch { (before_touching(trying, &possible)) }
            div.answers role="group" aria-labelledby="asking" {
                a.yes #yes href=(on(Some(true))) dir="auto" { (yes) }
                a.no #no href=(on(Some(false))) dir="auto" { (no) }
            }
            p.cannot-tell { a.button #cannot-tell href=(on(None)) { (t.say("try-cannot-tell")) } }
            (explained(trying, &[words.as_str(), yes.as_str(), no.as_str()]))
            (trail(trying, walk))
            details.so-far {
                summary #possible { (t.count("try-possible", possible.len())) }
                ul { @for kind in &possible { li dir="auto" { (name(trying, *kind)) } } }
            }
        }
    }
}

fn name(trying: &Trying<'_>, taxon: TaxonIx) -> String {
    trying.collection.name_in(trying.id, trying.made.layer.kinds[taxon.0])
}

/// Words of a question in plain words.
pub(super) fn explained(trying: &Trying<'_>, texts: &[&str]) -> Markup {
    let t = trying.t;
    let leaves = words::about_leaves(&trying.made);
    let words = glossary::words_in(t, leaves, texts.iter().copied());
    html! {
        @if !words.is_empty() {
            section.explained aria-label=(t.say("try-words")) {
                dl lang=(t.tag()) {
                    @for entry in &words {
                        dt { (entry.word) }
                        dd {
                            @if let Some(drawing) = words::drawn(t, entry.id, leaves) { (drawing) }
                            (entry.plain)
                            @if let Some(other) = &entry.not_to_be_confused {
                                " " span.quiet { (t.with("try-not-confused", &[("other", &other)])) }
                            }
                        }
                    }
                }
            }
        }
    }
}

/// The answers so far, each a way back to its question.
pub(super) fn trail(trying: &Trying<'_>, walk: &Walking<'_>) -> Markup {
    let t = trying.t;
    html! {
        @if !walk.steps.is_empty() {
            nav.so-far aria-label=(t.say("try-trail")) {
                h2 { (t.say("try-trail")) }
                ol {
                    @for (at, (couplet, given)) in walk.steps.iter().enumerate() {
                        li {
                            a href=(trying.address(&trying.answers[..at])) dir="auto" { (couplet.wording.first()) }
                            " "
                            @match given {
                                Some(yes) => (answer_tab(t, *yes)),
                                None => span.quiet { (t.say("try-could-not")) },
                            }
                        }
                    }
                }
            }
        }
    }
}

/// What may hurt among some kinds.
fn cautions(trying: &Trying<'_>, kinds: &[TaxonIx]) -> Markup {
    let warned = warned(trying, kinds);
    html! {
        @if !warned.is_empty() {
            div.caution {
                p { strong { (trying.t.say("try-care")) } }
                (list(&warned))
            }
        }
    }
}

/// The same before a question that is answered by touch: one line that opens, so that the answers
/// stay in sight.
fn before_touching(trying: &Trying<'_>, kinds: &[TaxonIx]) -> Markup {
    let warned = warned(trying, kinds);
    html! {
        @if !warned.is_empty() {
            details.caution #before-touching {
                summary { strong { (trying.t.say("try-before-touch")) } }
                p { (trying.t.say("try-may-be")) }
                (list(&warned))
            }
        }
    }
}

/// The kinds that may hurt, by name, and what is said of each.
fn warned<'c>(trying: &Trying<'c>, kinds: &[TaxonIx]) -> Vec<(String, &'c str)> {
    let warned = kinds.iter().filter_map(|taxon| {
        let kind = trying.made.layer.kinds.get(taxon.0)?;
        let caution = trying.collection.kinds.get(kind)?.field(KindField::Caution);
        (!caution.is_empty()).then(|| (trying.collection.name_in(trying.id, *kind), caution))
    });
    warned.collect()
}

fn list(warned: &[(String, &str)]) -> Markup {
    html! {
        ul { @for (name, caution) in warned { li dir="auto" { strong { (name) ": " } (caution) } } }
    }
}
