//! What stands around the questions: title, how to use the key, cautions, the trail.
//!
//! From a booklet to the parts of the page that are not a question or an end. The places that
//! only the script fills are hidden until it does.

use std::collections::BTreeMap;

use maud::{Markup, html};
use spinney_voice::Tongue;

use crate::{Booklet, fitting, safety};

use super::tree::{Tree, Way};
use super::typed::Typed;
use super::{Parts, mark, stamp_words};

/// The head of every screen: the stamp and the title.
pub(super) fn header(booklet: &Booklet, parts: Parts<'_>, title: &str) -> Markup {
    let scene = booklet.matrix.scene();
    let said: Vec<&str> =
        [&scene.place, &scene.season].into_iter().flatten().map(String::as_str).collect();
    html! {
        header {
            @if let Some(words) = stamp_words(booklet.tongue, booklet.stamp) {
                p.stamp { strong { (words) } }
            }
            h1 { (Typed(title)) }
            (parts.in_second(parts.second.and_then(|second| second.text(title))))
            @if !said.is_empty() { p.scene { (Typed(&said.join(", "))) } }
        }
    }
}

/// The first screen: what is needed, how it goes, what to mind, which pictures are elsewhere.
pub(super) fn start(
    booklet: &Booklet,
    tree: &Tree,
    parts: Parts<'_>,
    of_pictures: Markup,
) -> Markup {
    let t = booklet.tongue;
    html! {
        section.screen #start {
            svg.sprig aria-hidden="true" { use href="#sprig" {} }
            h2 tabindex="-1" { (t.say("try-found")) }
            @if let Some(part) = &booklet.matrix.scene().part {
                p { (t.say("phone-need")) " " strong { (Typed(part)) } "." }
            }
            ol.how {
                li { (t.say("phone-how-several")) }
                li { (t.say("phone-how-measure")) }
                li #cannot-tell { (t.say("phone-how-cannot-tell")) }
                @if fitting::anywhere(booklet.matrix) {
                    li { (t.say("phone-how-sentence")) }
                }
            }
            (cautions(booklet, parts))
            (of_pictures)
            @if tree.questions.is_empty() { p { (t.say("phone-no-question")) } }
            @else { p.begin { a href=(tree.anchor(Way::Question(0))) { (t.say("try-begin")) } } }
        }
    }
}

/// What everybody must know and what may hurt, before the first question; kinds with the same
/// caution together.
fn cautions(booklet: &Booklet, parts: Parts<'_>) -> Markup {
    let mut said: BTreeMap<&str, (usize, Vec<&str>)> = BTreeMap::new();
    for (ix, caution) in safety::of_kinds(booklet.matrix) {
        let first = said.entry(caution).or_insert((ix.0, Vec::new()));
        first.1.push(&booklet.matrix.taxon(ix).name);
    }
    let everybody = safety::for_everybody(booklet.matrix);
    let mut lines: Vec<_> = said.into_iter().collect();
    lines.sort_by_key(|(_, (first, _))| *first);
    let second =
        |text: &str| parts.in_second(parts.second.and_then(|second| second.text(text)));
    html! {
        @if !lines.is_empty() || everybody.is_some() {
            div.caution {
                h3 { (mark("caution")) (booklet.tongue.say("try-care")) }
                @if let Some(text) = everybody {
                    p { strong { (Typed(text)) } }
                    (second(text))
                }
                @if !lines.is_empty() {
                    ul {
                        @for (caution, (_, names)) in lines {
                            li { strong { (Typed(&names.join(", "))) } ": " (Typed(caution)) (second(caution)) }
                        }
                    }
                }
            }
        }
    }
}

/// What the script shows above a question: the way back, the button that reads aloud, and what
/// is supposed after somebody could not tell.
pub(super) fn while_walking(t: Tongue) -> Markup {
    html! {
        div #above {
            nav #steps aria-label=(t.say("phone-steps")) hidden {
                a #one-back href="#start" { (mark("back")) span { (t.say("try-back")) } }
            }
            button #aloud type="button" hidden { (mark("aloud")) span {} }
        }
        div #supposing hidden {}
    }
}

/// The list of kinds that may be it, which the script fills.
pub(super) fn short_list(t: Tongue) -> Markup {
    html! {
        section.screen #list hidden {
            h2 tabindex="-1" {}
            p.told {}
            div.kinds {}
            p.newcomer {}
            (again(t))
        }
        section #left aria-labelledby="left-head" hidden {
            h2 #left-head { (t.say("phone-still-be")) }
            ul {}
        }
    }
}

/// The trail of answers, which the script fills.
pub(super) fn trail(t: Tongue) -> Markup {
    html! {
        nav #trail aria-labelledby="trail-head" hidden {
            h2 #trail-head { (t.say("try-trail")) }
            ol {}
            (again(t))
        }
    }
}

/// The way back to the first screen.
pub(super) fn again(t: Tongue) -> Markup {
    html! { p.again { a href="#start" { (t.say("phone-again")) } } }
}

/// The foot: who decides; version and date, so that old copies are recognised.
pub(super) fn footer(booklet: &Booklet) -> Markup {
    let t = booklet.tongue;
    let version = booklet.matrix.scene().version.as_deref();
    let version = version.map(|version| t.with("phone-version", &[("version", &version)]));
    let said: Vec<_> = version.into_iter().chain(booklet.day()).collect();
    html! {
        footer {
            p { (safety::local_rules(t)) }
            @if !said.is_empty() { p { (Typed(&said.join(", "))) } }
        }
    }
}
