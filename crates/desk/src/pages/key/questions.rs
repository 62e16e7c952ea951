//! The key as numbered questions, as it is printed.

use maud::{Markup, html};
use spinney_model::{Answer, Couplet, Destination, KindId, TaxonIx};
use spinney_voice::wording;

use super::{Ending, Keyed, names, open};
use crate::pages::frame;
use crate::pages::heaps::answer_tab;

/// All questions, one under the other.
pub(super) fn questions(key: &Keyed) -> Markup {
    html! {
        ol.questions {
            @for couplet in &key.made.key.couplets { (one(key, couplet)) }
        }
    }
}

fn one(key: &Keyed, couplet: &Couplet) -> Markup {
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
pub(super) fn heading(key: &Keyed, couplet: &Couplet) -> Markup {
    let t = key.t;
    html! {
        h2.words {
            span.number { span.unseen { (t.say("key-question")) " " } (couplet.number) }
            " " span dir="auto" { (couplet.wording.first()) }
            @if couplet.kept && key.drawn().finished() { " " span.kept { (t.say("key-kept")) } }
        }
    }
}

fn leads(key: &Keyed, couplet: &Couplet) -> Markup {
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
pub(super) fn leads_to(key: &Keyed, couplet: &Couplet, yes: bool) -> Markup {
    let t = key.t;
    html! {
        @match Ending::of(&key.made, answered(couplet, yes)) {
            Ending::On(number) => a href={"#q" (number)} { (t.with("key-go-to", &[("number", &number)])) },
            Ending::Out(kinds, strange) => {
                strong.out dir="auto" { (names(&key.collection, key.id, &kinds, strange).join(", ")) }
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
fn guess(key: &Keyed, couplet: &Couplet, yes: bool, kind: KindId) -> Markup {
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
pub(super) fn change(key: &Keyed, couplet: &Couplet) -> Markup {
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
pub(super) fn about(key: &Keyed, couplet: &Couplet) -> Markup {
    html! {
        (second_look(key, couplet))
        (frame::findings(key.t, &key.findings_at(couplet.number)))
        @if key.is_open(couplet) { (open::panel(key, couplet)) }
    }
}

/// Another question that must come to the same answer.
fn second_look(key: &Keyed, couplet: &Couplet) -> Markup {
    let t = key.t;
    let also = key.made.looks.get(&couplet.number).map_or(&[][..], Vec::as_slice);
    html! {
        @if let Some((ask, opposite)) = also.first() {
            p.second-look {
                strong { (t.say("key-second-look")) } " "
                @let (matrix, number) = (&key.made.layer.matrix, couplet.number);
                @let ask = wording::said_at(matrix, &key.made.key, number, ask);
                span dir="auto" { (wording::question(matrix, &ask)) } " "
                (t.say(if *opposite { "key-second-opposite" } else { "key-second-same" }))
            }
        }
    }
}
