//! What could be asked instead, the cheapest first, each with its price.

use maud::{Markup, html};
use spinney_model::{Alternative, Couplet, Reasons};
use spinney_voice::wording;

use super::{Keyed, pinned};
use crate::amounts;
use crate::asking::fields;
use crate::pages::heaps::split;
use spinney_collection::keys::{self, Made};

/// So many are listed; the rest costs more than these.
const LISTED: usize = 24;

/// As people drew it, these are the prices that it would have if the machine were to finish it.
pub(super) fn alternatives(key: &Keyed, couplet: &Couplet) -> Markup {
    let found = key.explained.as_ref().and_then(|made| {
        let number = made.couplet(key.place(couplet))?.number;
        Some((made, made.reasons.iter().find(|reasons| reasons.couplet == number)?))
    });
    match found {
        Some((made, reasons)) => list(key, couplet, made, reasons),
        None => html! {
            @if !keys::can_be_weighed(&key.made.layer.matrix) {
                p.quiet { (key.t.say("heaps-too-many")) }
            }
        },
    }
}

fn list(key: &Keyed, couplet: &Couplet, made: &Made, reasons: &Reasons) -> Markup {
    let t = key.t;
    let known: Vec<&Alternative> = reasons
        .alternatives
        .iter()
        .filter(|other| pinned::of_the_table(key, &other.ask).is_some())
        .collect();
    html! {
        details {
            summary #instead { (t.count("key-instead", known.len())) }
            @if known.is_empty() { p.quiet { (t.say("key-instead-none")) } }
            ol.offers {
                @for (at, other) in known.iter().take(LISTED).enumerate() {
                    li { (offer(key, couplet, made, other, at)) }
                }
            }
            @if known.len() > LISTED { p.quiet { (t.count("key-instead-more", known.len() - LISTED)) } }
        }
    }
}

fn offer(
    key: &Keyed,
    couplet: &Couplet,
    made: &Made,
    other: &Alternative,
    at: usize,
) -> Markup {
    let t = key.t;
    let ask = wording::said_at(&made.layer.matrix, &key.made.key, couplet.number, &other.ask);
    let words = wording::question(&made.layer.matrix, &ask);
    let extra = amounts::a_find(&made.layer.matrix, other.extra);
    let (yes, no, both) = other.heaps;
    html! {
        form method="post" action="/do/key-replace" {
            (key.where_fields(key.place(couplet)))
            @if let Some(ask) = pinned::of_the_table(key, &ask) { (fields(&ask)) }
            input type="hidden" name="words" value=(words);
            button.offer id={"instead-" (at)} {
                span.words dir="auto" { (words) }
                span.split {
                    (split(t, yes, no))
                    @if both > 0 { " · " (t.count("heaps-split-both", both)) }
                    " · " (amounts::price(t, extra, other.exact))
                }
            }
        }
    }
}
