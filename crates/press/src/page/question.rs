//! One question on the page: its words, the two answers, what to mind before touching.
//!
//! From a couplet to a section of the page that is complete without scripts. The script moves
//! the links' targets; it writes no question.

use maud::{Markup, html};
use spinney_model::{TaxonIx, Wording};
use spinney_voice::Tongue;

use crate::{Booklet, second_look};

use super::ending::ending_name;
use super::tree::{Tree, Way};
use super::typed::Typed;
use super::{Parts, mark};

/// The section of one question.
pub(super) fn section(booklet: &Booklet, tree: &Tree, parts: Parts<'_>, ix: usize) -> Markup {
    let Parts { words, shown, second } = parts;
    let question = &tree.questions[ix];
    let number = question.couplet.number;
    let t = booklet.tongue;
    let (asks, yes, no, texts) = match &question.couplet.wording {
        Wording::Question(text) => {
            (worded(t, text), t.say("phone-yes"), t.say("phone-no"), vec![text.as_str()])
        }
        Wording::Leads { yes, no } => {
            let texts = vec![yes.as_str(), no.as_str()];
            (t.say("try-which"), worded(t, yes), worded(t, no), texts)
        }
    };
    let leads = matches!(question.couplet.wording, Wording::Leads { .. });
    let in_second = |yes: bool| {
        let second = second.filter(|_| !leads);
        let second = second.and_then(|second| Some((second.tag, second.answer(yes)?)));
        html! {
            @if let Some((tag, word)) = second {
                " " span.second lang=(tag) dir="auto" { (Typed(word)) }
            }
        }
    };
    html! {
        section.screen.question id=(question.id) data-number=(number) {
            h2 tabindex="-1" { span.number { (t.with("try-step", &[("number", &number)])) } " " (Typed(&asks)) }
            (parts.in_second(second.and_then(|second| second.question(ix))))
            @if let Some(line) = second_look::line(booklet, question.couplet, 2) {
                p.also { (Typed(&line)) }
            }
            (before_touching(booklet, tree, parts, ix))
            div.answers.leads[leads] {
                (answer(booklet, tree, ("yes", &yes, in_second(true), shown.answer(ix, true)), question.yes))
                (answer(booklet, tree, ("no", &no, in_second(false), shown.answer(ix, false)), question.no))
            }
            p.cannot-row {
                a.cannot href="#cannot-tell" { (mark("fork")) span { (t.say("phone-cannot-tell")) } }
            }
            (words.explained(texts))
            (back(t, tree, &question.from))
        }
    }
}

/// A wording, or the note that there is none.
fn worded(t: Tongue, text: &str) -> String {
    match text.trim() {
        "" => t.say("phone-no-words"),
        text => text.to_owned(),
    }
}

/// One answer: a tab with its shape, its word, what it looks like and, on paper and without
/// scripts, its target.
fn answer(
    booklet: &Booklet,
    tree: &Tree,
    (side, word, second, looks): (&str, &str, Markup, Markup),
    to: Way,
) -> Markup {
    let goes = match to {
        Way::Question(ix) => {
            let number = tree.questions[ix].couplet.number;
            booklet.tongue.with("phone-go-to", &[("number", &number)])
        }
        Way::Ending(ix) => ending_name(booklet, &tree.endings[ix]),
    };
    html! {
        a.{ "answer " (side) } href=(tree.anchor(to)) {
            (mark(side))
            strong { (Typed(word)) } (second) " " (looks) span.goes { (Typed(&goes)) }
        }
    }
}

/// What may hurt among the kinds that may still be in the hand, where the question makes people
/// touch: one line that opens, so that the answers stay in sight. All such kinds are in the
/// page: who could not tell further up may hold one that does not come out below this question.
fn before_touching(booklet: &Booklet, tree: &Tree, parts: Parts<'_>, ix: usize) -> Markup {
    let asked = tree.questions[ix].couplet.ask.as_ref();
    if !asked.is_some_and(|ask| booklet.matrix.character(ask.character).by_touch) {
        return html! {};
    }
    let t = booklet.tongue;
    let below = tree.kinds_below(ix);
    let hurts = |taxon: TaxonIx| {
        let kind = booklet.matrix.taxon(taxon);
        Some((taxon, kind.name.as_str(), kind.caution.as_deref()?))
    };
    let kinds: Vec<_> = booklet.matrix.taxon_indices().filter_map(hurts).collect();
    let none = !kinds.iter().any(|(taxon, ..)| below.contains(taxon));
    html! {
        @if !kinds.is_empty() {
            details.caution.touch hidden[none] {
                summary { (mark("caution")) strong { (t.say("try-before-touch")) } }
                p { (t.say("try-may-be")) }
                ul {
                    @for (taxon, name, caution) in kinds {
                        li data-kind=(taxon.0) hidden[!below.contains(&taxon)] {
                            strong { (Typed(name)) } ": " (Typed(caution))
                            (parts.in_second(parts.second.and_then(|second| second.text(caution))))
                        }
                    }
                }
            }
        }
    }
}

/// The ways back, for readers without scripts.
pub(super) fn back(t: Tongue, tree: &Tree, from: &[usize]) -> Markup {
    html! {
        @if !from.is_empty() {
            p.back {
                (t.say("phone-back-to")) " "
                @for (at, ix) in from.iter().enumerate() {
                    @let question = &tree.questions[*ix];
                    @if at > 0 { " " (t.say("phone-or")) " " }
                    a href={"#" (question.id)} {
                        (t.with("phone-question", &[("number", &question.couplet.number)]))
                    }
                }
            }
        }
    }
}
