//! A card of which people do not agree what the table is to say: who says what, and the ways
//! to decide.
//!
//! Nothing is decided here by anybody but the people: until then the table counts as blank for
//! all keys, and a card that this group put somewhere stays there.

use maud::{Markup, html};
use spinney_model::{CharacterId, KindId, Side};

use super::{Top, deeds};
use spinney_collection::Put;
use spinney_collection::laid::folded;
use spinney_collection::layer::Placed;

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
                form method="post" action="/do/sort-as-table" {
                    (top.where_fields())
                    input type="hidden" name="kind" value=(kind.0);
                    button id={"take-back-" (kind.0)} { (t.say("card-take-back")) }
                }
                @if writes {
                    form method="post" action="/do/table-as-sorted" {
                        (top.where_fields())
                        input type="hidden" name="kind" value=(kind.0);
                        (deeds::weighed_field(top, kind))
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
    let typed = top.desk.history.now.cells.sources(kind, at).into_iter();
    let typed = typed.map(|(who, text)| {
        let who = if who.is_empty() { t.say("table-itself") } else { who.to_owned() };
        t.with("table-says", &[("who", &who), ("text", &text)])
    });
    ours.into_iter().chain(others).map(put).chain(typed).collect()
}
