//! The end of a walk: what came out, how sure that is, and how to make sure of it.
//!
//! One kind, several to compare, or nothing that is known. What came out only because somebody
//! could not tell, or because nobody has looked at the kind, says so.

use maud::{Markup, html};
use spinney_collection::keys::{Ending, KeyFrom};
use spinney_collection::walking::Walking;
use spinney_model::{Answer, KindField, KindId, TaxonIx};
use spinney_voice::{Tongue, wording};

use crate::pages::finds::kind::{drawn_line, face};
use crate::pages::heaps::card::answer_tab;
use crate::pages::key::keyed::address_of;
use crate::pages::try_it::screens::{Trying, back, explained, head, trail};

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
