//! A kind as a card between two heaps, with what a hand can do with it.

use maud::{Markup, html};
use spinney_check::Says;
use spinney_model::{KindId, Side};

use super::{Top, deeds, differ};
use crate::pages::finds::face;
use spinney_collection::layer::Placed;
use spinney_voice::Tongue;

/// Yes as a leaf-shaped tab, no as a square one; the word stands in both.
pub(crate) fn answer_tab(t: Tongue, yes: bool) -> Markup {
    let (class, word) = if yes { ("tab yes", "answer-yes") } else { ("tab no", "answer-no") };
    html! { span class=(class) { (t.say(word)) } }
}

/// A card that only lies there.
pub(super) fn plain(top: &Top<'_>, kind: KindId) -> Markup {
    html! { li.card id={"card-" (kind.0)} { (front(top, kind)) } }
}

/// A card with buttons to put it elsewhere.
pub(super) fn card(top: &Top<'_>, kind: KindId) -> Markup {
    let t = top.t;
    let placed = top.heap().sides[&kind];
    let name = top.desk.history.now.name_in(top.key, kind);
    let ways = [
        (Some(Side::Yes), "yes", "answer-yes"),
        (Some(Side::Both), "both", "answer-varies"),
        (Some(Side::No), "no", "answer-no"),
        (None, "middle", "answer-middle"),
    ];
    html! {
        li.card id={"card-" (kind.0)} data-kind=(kind.0) tabindex="-1"
            .contradicted[placed.contradicted()] {
            (front(top, kind))
            (standing(top, kind, placed))
            form.ways method="post" action="/do/sort" {
                (top.where_fields())
                input type="hidden" name="kind" value=(kind.0);
                // Each button keeps its place; where the card lies, its own rests.
                @for (side, value, word) in ways {
                    @if side.is_some() || placed.by_hand {
                        button class={"way " (value)} name="side" value=(value)
                            id={(value) "-" (kind.0)} disabled[side.is_some() && side == placed.side]
                            aria-label={(t.say(word)) ": " (name)} {
                            (t.say(word))
                        }
                    }
                }
            }
            @if placed.differ { (differ::differ(top, kind, placed)) }
            @else if placed.contradicted() { (decide(top, kind, placed)) }
        }
    }
}

fn front(top: &Top<'_>, kind: KindId) -> Markup {
    let collection = &top.desk.history.now;
    html! {
        div.front {
            @if let Some(found) = collection.kinds.get(&kind) {
                (face(kind, found, Some(top.laid)))
            }
            span.name dir="auto" { (collection.name_in(top.key, kind)) }
        }
    }
}

/// Why a card lies where it lies.
fn standing(top: &Top<'_>, kind: KindId, placed: Placed) -> Markup {
    let t = top.t;
    if let (Some(Side::Yes | Side::No), false, Some(who)) =
        (placed.side, placed.by_hand, who_says(top, kind))
    {
        let all = who.join(", ");
        return html! {
            p.why dir="auto" { (t.count_with("card-by-who", who.len(), &[("who", &all)])) }
        };
    }
    let why = match (placed.side, placed.by_hand) {
        // Eyes see where it lies.
        (None, _) => return html! { p.why.waits.unseen { (t.say("card-not-placed")) } },
        (Some(Side::Both), true) => "card-varies",
        (Some(Side::Both), false) => "card-table-varies",
        (Some(_), false) => "card-by-table",
        (Some(_), true) => return html! {},
    };
    html! { p.why { (t.say(why)) } }
}

/// Who says what the table says here; None: the table itself.
fn who_says<'t>(top: &'t Top<'_>, kind: KindId) -> Option<Vec<&'t str>> {
    let at = top.drawn.questions.get(&top.at)?.ask.as_ref()?.character;
    let who: Vec<&str> =
        top.laid.said.sources(kind, at).into_iter().map(|(who, _)| who).collect();
    (!who.is_empty() && !who.contains(&"")).then_some(who)
}

/// The hand and the table say different things: a person decides.
fn decide(top: &Top<'_>, kind: KindId, placed: Placed) -> Markup {
    let t = top.t;
    let says = match placed.table {
        Some(Says::Yes) => "card-table-yes",
        Some(Says::No) => "card-table-no",
        _ => "card-table-both",
    };
    html! {
        div.decide {
            p { strong { (t.say("severity-mend")) ": " } (t.say(says)) }
            form method="post" action="/do/sort-as-table" {
                (top.where_fields())
                input type="hidden" name="kind" value=(kind.0);
                button id={"as-table-" (kind.0)} { (t.say("card-take-table")) }
            }
            form method="post" action="/do/table-as-sorted" {
                (top.where_fields())
                input type="hidden" name="kind" value=(kind.0);
                (deeds::weighed_field(top, kind))
                button id={"as-sorted-" (kind.0)} { (t.say("card-mend-table")) }
            }
        }
    }
}
