//! The screens of a walk: the start, a question, and the end: what came out, how sure that is, and
//! how to make sure of it.
//!
//! One kind, several to compare, or nothing that is known. What came out only because somebody
//! could not tell, or because nobody has looked at the kind, says so.

use std::sync::Arc;

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_collection::keys::{Ending, KeyFrom, Made};
use spinney_collection::laid::Laid;
use spinney_collection::walking::{Walking, letter};
use spinney_model::{Answer, Couplet, KeyId, KindField, KindId, TaxonIx, Wording};
use spinney_voice::{Tongue, glossary, wording};

use crate::pages::finds::kind::{drawn_line, face};
use crate::pages::heaps::card::answer_tab;
use crate::pages::key::keyed::address_of;
use crate::pages::{frame, words};

/// What came out, in the order of the ways.
#[derive(Default)]
struct CameOut<'a> {
    /// Each kind; with a question on its way that nobody has answered for it, where it is a
    /// guess.
    kinds: Vec<(KindId, Option<u32>)>,
    /// Names that are none of the collection's.
    strange: Vec<&'a String>,
    /// Whether some way led to nothing.
    nothing: bool,
}

impl<'a> CameOut<'a> {
    fn of(trying: &'a Trying<'_>, walk: &'a Walking<'_>) -> Self {
        let mut out = Self { nothing: walk.reached.is_empty(), ..Self::default() };
        for way in &walk.reached {
            match trying.made.ending(way.to) {
                Ending::Out(kinds, names) => {
                    for kind in kinds {
                        out.add(kind, guessed(trying, way.from, kind));
                    }
                    out.strange.extend(names);
                }
                Ending::On(_) | Ending::Nothing => out.nothing = true,
            }
        }
        out
    }

    /// A kind that two ways lead to is as sure as the surer of them.
    fn add(&mut self, kind: KindId, open: Option<u32>) {
        match self.kinds.iter_mut().find(|(known, _)| *known == kind) {
            Some((_, known)) => *known = known.and(open),
            None => self.kinds.push((kind, open)),
        }
    }

    fn count(&self) -> usize {
        self.kinds.len() + self.strange.len()
    }
}

fn guessed(trying: &Trying<'_>, from: (u32, Answer), kind: KindId) -> Option<u32> {
    let taxon = trying.made.layer.kinds.iter().position(|known| *known == kind)?;
    trying.made.guesses.at(from, TaxonIx(taxon))
}

/// The last screen of a walk.
pub(super) fn ending(trying: &Trying<'_>, walk: &Walking<'_>) -> Markup {
    let t = trying.t;
    let out = CameOut::of(trying, walk);
    let unsure = walk.both_ways();
    html! {
        div.walk {
            (head(trying, Some(back(trying))))
            h1 {
                @match (out.count(), unsure.is_empty()) {
                    (0, _) => (t.say("try-nobody")),
                    (1, true) => (t.say("try-is-it")),
                    (1, false) => (t.say("try-may-be-it")),
                    (_, false) => (t.say("try-compare")),
                    (_, true) => (t.say("try-one-of")),
                }
            }
            @for couplet in &unsure {
                p.guess dir="auto" {
                    span.mark aria-hidden="true" { "?" } " "
                    (t.with("try-went-both-ways", &[("words", &couplet.wording.first())]))
                }
            }
            @if out.nothing { p { (t.say("try-newcomer")) " " a href={"/newcomer?key=" (trying.id.0)} { (t.say("try-newcomer-how")) } } }
            div.several[out.count() > 1] {
                @for (kind, open) in &out.kinds { (comes_out(trying, *kind, *open)) }
                @for name in &out.strange { div.ending { h2 dir="auto" { (name) } } }
            }
            (drawn_line(t, trying.collection, out.kinds.iter().map(|(kind, _)| kind), trying.laid.as_deref()))
            @if out.count() > 0 {
                @let looks = second_looks(trying, walk);
                (looks_listed(t, &looks))
                // Each word once, whoever says it.
                (explained(trying, &said_at(trying, &out, &looks)))
            }
            p.cannot-tell {
                a.button.main #again href=(trying.address("")) { (t.say("try-another")) }
                a.button #not-it href=(back(trying)) { (t.say("try-not-it")) }
            }
            (trail(trying, walk))
        }
    }
}

/// A kind that comes out: its picture, its name, what to confirm it by, what may hurt.
fn comes_out(trying: &Trying<'_>, id: KindId, open: Option<u32>) -> Markup {
    let t = trying.t;
    let Some(kind) = trying.collection.kinds.get(&id) else { return html! {} };
    let (scientific, confirm, caution) = (
        kind.field(KindField::ScientificName),
        kind.field(KindField::ConfirmBy),
        kind.field(KindField::Caution),
    );
    let name = trying.collection.name_in(trying.id, id);
    html! {
        div.ending.guessed[open.is_some()] {
            (face(id, kind, trying.laid.as_deref()))
            h2 dir="auto" { (name) }
            @if !scientific.is_empty() { p.scientific lang="la" { (scientific) } }
            // Before anything that takes long to read.
            @if !caution.is_empty() { p.caution dir="auto" { strong { (t.say("caution")) " " } (caution) } }
            @if let Some(number) = open {
                p.guess dir="auto" {
                    span.mark aria-hidden="true" { "?" } " "
                    (guess(trying, id, &name, number))
                }
            }
            @if confirm.is_empty() { p.quiet { (t.say("try-no-sentence")) } } @else {
                p.confirm dir="auto" { strong { (t.say("try-confirm")) " " } (confirm) }
            }
        }
    }
}

/// Why a kind is only a guess, and where somebody says what is missing.
fn guess(trying: &Trying<'_>, id: KindId, name: &str, number: u32) -> Markup {
    let t = trying.t;
    let missing = trying.laid.as_deref().map(|laid| {
        let (collection, made) = (trying.collection, &*trying.made);
        KeyFrom { t, collection, laid, made, id: trying.id }.missing(number, id)
    });
    let differ = missing.as_ref().is_some_and(|missing| missing.differ);
    let (why, way) = match differ {
        true => ("key-guess-differ", "key-decide-it"),
        false => ("key-guess", "key-say-it"),
    };
    html! {
        (t.with(why, &[("kind", &name), ("number", &number)]))
        @if let Some(missing) = &missing {
            " " a href=(address_of(trying.id, id, missing)) { (t.with(way, &[("number", &number)])) }
        }
    }
}

/// What is read at an end: the sentences that confirm its kinds, and the second looks.
fn said_at<'a>(
    trying: &'a Trying<'_>,
    out: &CameOut<'_>,
    looks: &'a [(String, bool)],
) -> Vec<&'a str> {
    let kinds = out.kinds.iter().filter_map(|(kind, _)| trying.collection.kinds.get(kind));
    let confirming = kinds.map(|kind| kind.field(KindField::ConfirmBy));
    confirming.chain(looks.iter().map(|(words, _)| words.as_str())).collect()
}

/// Questions that were not asked on the way, and what they must come to if the answers were
/// right.
fn second_looks(trying: &Trying<'_>, walk: &Walking<'_>) -> Vec<(String, bool)> {
    let matrix = &trying.made.layer.matrix;
    let looks = walk.steps.iter().filter_map(|(couplet, given)| {
        let yes = (*given)?;
        let (ask, opposite) = trying.made.looks.get(&couplet.number)?.first()?;
        let ask = wording::said_at(matrix, &trying.made.key, couplet.number, ask);
        Some((wording::question(trying.t, matrix, &ask), yes != *opposite))
    });
    looks.collect()
}

fn looks_listed(t: Tongue, looks: &[(String, bool)]) -> Markup {
    html! {
        @if !looks.is_empty() {
            section.second-looks {
                h2 { (t.say("try-second-look")) }
                ul {
                    @for (words, yes) in looks {
                        li { span dir="auto" { (words) } " " (answer_tab(t, *yes)) }
                    }
                }
            }
        }
    }
}

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
