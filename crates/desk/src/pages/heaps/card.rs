//! A kind as a card between two heaps, with what a hand can do with it; and where people do not
//! agree what the table is to say of it, who says what, and the ways to decide.
//!
//! Nothing is decided here by anybody but the people: until then the table counts as blank for
//! all keys, and a card that this group put somewhere stays there.

use maud::{Markup, html};
use spinney_check::Says;
use spinney_collection::Put;
use spinney_collection::laid::folded;
use spinney_collection::layer::Placed;
use spinney_model::{CharacterId, KindId, Side};
use spinney_voice::Tongue;

use crate::pages::finds::kind::face;
use crate::pages::heaps::deeds::{MIDDLE, SORT, TABLE_AS_SORTED};
use crate::pages::heaps::place::Top;

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
            form.ways method="post" action=(SORT.path) {
                (top.card_fields(kind))
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
            @if placed.differ { (differ(top, kind, placed)) }
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
            form method="post" action=(SORT.path) {
                (top.card_fields(kind))
                input type="hidden" name="side" value=(MIDDLE);
                button id={"as-table-" (kind.0)} { (t.say("card-take-table")) }
            }
            form method="post" action=(TABLE_AS_SORTED.path) {
                (top.card_fields(kind))
                button id={"as-sorted-" (kind.0)} { (t.say("card-mend-table")) }
            }
        }
    }
}

pub(super) fn differ(top: &Top<'_>, kind: KindId, placed: Placed) -> Markup {
    let t = top.t;
    let question = top.drawn.questions.get(&top.at);
    let Some(of) = question.and_then(|question| question.ask.as_ref()) else {
        return html! {};
    };
    let at = of.character;
    let writes = top.laid.sorted.text(top.key, &top.at, kind).is_some();
    let cell = format!("{}-{}", kind.0, at.0);
    html! {
        div.decide {
            p { strong { (t.say("severity-mend")) ": " } (t.say("card-differ")) }
            ul.who-says { @for sentence in sentences(top, kind, at) { li dir="auto" { (sentence) } } }
            @if placed.by_hand {
                form method="post" action=(SORT.path) {
                    (top.card_fields(kind))
                    input type="hidden" name="side" value=(MIDDLE);
                    button id={"take-back-" (kind.0)} { (t.say("card-take-back")) }
                }
                @if writes {
                    form method="post" action=(TABLE_AS_SORTED.path) {
                        (top.card_fields(kind))
                        button id={"as-sorted-" (kind.0)} { (t.say("card-we-are-right")) }
                    }
                }
            }
            p {
                a id={"decide-" (kind.0)} href={"/table?kind=" (kind.0) "&character=" (at.0) "#c-" (cell)} {
                    (t.say("card-decide"))
                }
            }
        }
    }
}

/// Who says what: this group's own hand first, then other groups' hands, then what was typed.
fn sentences(top: &Top<'_>, kind: KindId, at: CharacterId) -> Vec<String> {
    let t = top.t;
    let (ours, others): (Vec<_>, Vec<_>) =
        top.laid.sorted.puts(kind, at).iter().partition(|put| put.key == top.key);
    let put = |put: &Put| {
        // The message has a heap for each of these words.
        let side = match put.side {
            Side::Yes => "yes",
            Side::No => "no",
            Side::Both => "both",
        };
        let same = folded(&put.words) == folded(top.words());
        let (who, words) = (&put.who, &put.words);
        match (put.key == top.key, same) {
            (true, true) => t.with("card-we-put", &[("side", &side)]),
            (true, false) => t.with("card-we-put-at", &[("side", &side), ("words", words)]),
            (false, true) => t.with("card-who-put", &[("who", who), ("side", &side)]),
            (false, false) => {
                t.with("card-who-put-at", &[("who", who), ("side", &side), ("words", words)])
            }
        }
    };
    let collection = &top.desk.history.now;
    let typed = top.laid.said.sources(kind, at).into_iter();
    let typed = typed.filter(|(who, _)| collection.says_itself(kind, at, who));
    let typed = typed.filter_map(|(who, saying)| Some((who, saying.text()?)));
    let typed = typed.map(|(who, text)| {
        let who = if who.is_empty() { t.say("table-itself") } else { who.to_owned() };
        t.with("table-says", &[("who", &who), ("text", &text)])
    });
    ours.into_iter().chain(others).map(put).chain(typed).collect()
}
