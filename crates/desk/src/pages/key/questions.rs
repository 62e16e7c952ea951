//! The key as numbered questions, as it is printed, and as a tree: nested lists, so that ears
//! follow it as eyes do.

use maud::{Markup, html};
use spinney_collection::keys::Ending;
use spinney_model::{Answer, Couplet, Destination, KindId, TaxonIx};
use spinney_voice::wording;

use super::keyed::{Keyed, names};
use super::open;
use crate::pages::frame;
use crate::pages::heaps::card::answer_tab;

/// All questions, one under the other.
pub(super) fn questions(key: &Keyed<'_>) -> Markup {
    html! {
        ol.questions {
            @for couplet in &key.made.key.couplets { (one(key, couplet)) }
        }
    }
}

fn one(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    let number = couplet.number;
    html! {
        li.asked.open[key.is_open(couplet)] id={"q" (number)} {
            (heading(key, couplet))
            (change(key, couplet))
            (leads(key, couplet))
            (about(key, couplet))
        }
    }
}

/// The number and the words.
pub(super) fn heading(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    let t = key.t;
    html! {
        h2.words {
            span.number { span.unseen { (t.say("key-question")) " " } (couplet.number) }
            " " span dir="auto" { (couplet.wording.first()) }
            @if couplet.kept && key.drawn().finished() { " " span.kept { (t.say("key-kept")) } }
        }
    }
}

fn leads(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    html! {
        ul.leads {
            @for yes in [true, false] {
                li class=(if yes { "yes" } else { "no" }) {
                    (answer_tab(key.t, yes)) " " (leads_to(key, couplet, yes))
                }
            }
        }
    }
}

/// What stands behind an answer.
pub(super) fn leads_to(key: &Keyed<'_>, couplet: &Couplet, yes: bool) -> Markup {
    let t = key.t;
    html! {
        @match key.made.ending(answered(couplet, yes)) {
            Ending::On(number) => a href={"#q" (number)} { (t.with("key-go-to", &[("number", &number)])) },
            Ending::Out(kinds, strange) => {
                strong.out dir="auto" { (names(key.collection, key.id, &kinds, strange).join(", ")) }
                @if kinds.len() > 1 { " " span.quiet { (t.say("key-together")) } }
                @for kind in &kinds { (guess(key, couplet, yes, *kind)) }
            }
            Ending::Nothing => span.quiet { (t.say("key-nobody")) },
        }
    }
}

/// Where an answer leads.
pub(super) fn answered(couplet: &Couplet, yes: bool) -> &Destination {
    if yes { &couplet.yes } else { &couplet.no }
}

/// A kind that comes out here only because nobody knows better is no answer like the others.
fn guess(key: &Keyed<'_>, couplet: &Couplet, yes: bool, kind: KindId) -> Markup {
    let t = key.t;
    let answer = if yes { Answer::Yes } else { Answer::No };
    let taxon = key.made.layer.kinds.iter().position(|known| *known == kind).map(TaxonIx);
    let open = taxon.and_then(|at| key.made.guesses.at((couplet.number, answer), at));
    let name = key.collection.name_in(key.id, kind);
    html! {
        // Why it is one stands once in the margin, kind by kind.
        @if open.is_some() {
            span.guess dir="auto" {
                span.mark aria-hidden="true" { "?" } " "
                (t.with("key-guess-end", &[("kind", &name)]))
            }
        }
    }
}

/// The way to change a question.
pub(super) fn change(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    html! {
        @if !key.is_open(couplet) {
            p.change {
                a.button id={"change-" (couplet.number)}
                    href={(key.address(Some(key.place(couplet)))) "#q" (couplet.number)} {
                    (key.t.say("key-change"))
                    span.unseen { ": " (couplet.wording.first()) }
                }
            }
        }
    }
}

/// What can be said of a question; all that can be done to it, where it is open.
pub(super) fn about(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    html! {
        (second_look(key, couplet))
        (frame::findings(key.t, &key.made.findings_at(couplet.number)))
        @if key.is_open(couplet) { (open::panel(key, couplet)) }
    }
}

/// Another question that must come to the same answer.
fn second_look(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    let t = key.t;
    let also = key.made.looks.get(&couplet.number).map_or(&[][..], Vec::as_slice);
    html! {
        @if let Some((ask, opposite)) = also.first() {
            p.second-look {
                strong { (t.say("key-second-look")) } " "
                @let (matrix, number) = (&key.made.layer.matrix, couplet.number);
                @let ask = wording::said_at(matrix, &key.made.key, number, ask);
                span dir="auto" { (wording::question(key.t, matrix, &ask)) } " "
                (t.say(if *opposite { "key-second-opposite" } else { "key-second-same" }))
            }
        }
    }
}

/// Deeper than this the tree says where it goes on among the numbered questions: 40 levels are
/// far more than a page shows side by side, and the outer limit of a key for children is ten.
const DEEPEST: usize = 40;

/// The whole key.
pub(super) fn tree(key: &Keyed<'_>) -> Markup {
    html! {
        div.tree role="group" aria-label=(key.t.say("key-as-tree")) {
            @if let Some(first) = key.made.key.couplets.first() { (knot(key, first, 0)) }
        }
    }
}

fn knot(key: &Keyed<'_>, couplet: &Couplet, depth: usize) -> Markup {
    html! {
        div.knot.open[key.is_open(couplet)] id={"q" (couplet.number)} {
            (heading(key, couplet))
            (change(key, couplet))
            (about(key, couplet))
        }
        ul.branches {
            @for yes in [true, false] {
                li class=(if yes { "yes" } else { "no" }) {
                    (answer_tab(key.t, yes)) " "
                    (branch(key, couplet, yes, depth + 1))
                }
            }
        }
    }
}

fn branch(key: &Keyed<'_>, couplet: &Couplet, yes: bool, depth: usize) -> Markup {
    let to = answered(couplet, yes);
    let next = match to {
        Destination::Couplet(number) if depth < DEEPEST => {
            key.made.key.couplets.iter().find(|couplet| couplet.number == *number)
        }
        _ => None,
    };
    match (next, to) {
        (Some(next), _) => knot(key, next, depth),
        (None, Destination::Couplet(number)) => html! {
            a href={"/key?key=" (key.id.0) "#q" (number)} {
                (key.t.with("key-go-to", &[("number", number)]))
            }
        },
        (None, _) => leads_to(key, couplet, yes),
    }
}
