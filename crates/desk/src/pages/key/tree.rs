//! The key as a tree: nested lists, so that ears follow it as eyes do.

use maud::{Markup, html};
use spinney_model::{Couplet, Destination};

use super::Keyed;
use super::questions::{about, answered, change, heading, leads_to};
use crate::pages::heaps::answer_tab;

/// Deeper than this the tree says where it goes on among the numbered questions: 40 levels are
/// far more than a page shows side by side, and the outer limit of a key for children is ten.
const DEEPEST: usize = 40;

/// The whole key.
pub(super) fn tree(key: &Keyed) -> Markup {
    html! {
        div.tree role="group" aria-label=(key.t.say("key-as-tree")) {
            @if let Some(first) = key.made.key.couplets.first() { (knot(key, first, 0)) }
        }
    }
}

fn knot(key: &Keyed, couplet: &Couplet, depth: usize) -> Markup {
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

fn branch(key: &Keyed, couplet: &Couplet, yes: bool, depth: usize) -> Markup {
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
