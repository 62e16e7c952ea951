//! What stands under a cell: who says what, where people differ, what another window wrote,
//! what the reader could not understand. Only where there is something to say.

use maud::{Markup, html};
use spinney_collection::{Agreed, Collection, Saying};
use spinney_exchange::table::either;
use spinney_model::{CharacterId, Finding, KindId, Severity};
use spinney_voice::Tongue;

use super::typed::{TAKE, seen};
use super::view::{View, shown};
use crate::pages::cell;

/// None: nothing is to be said.
pub(super) fn notes(
    t: Tongue,
    collection: &Collection,
    view: &View,
    kind: KindId,
    at: CharacterId,
    mine: Option<&str>,
) -> Option<Markup> {
    let cells = view.said();
    let said = cells.sources(kind, at);
    let by_heaps =
        |who: &str| !who.is_empty() && collection.cells.said(kind, at, who).is_empty();
    let who_says = || who_says(t, &said, by_heaps);
    let differ = match cells.agreed(kind, at) {
        Agreed::Contradicted => Some(differ(t, kind, at, &cells.choices(kind, at), who_says())),
        _ => None,
    };
    let named = said.iter().filter(|(who, _)| !who.is_empty()).count();
    let findings = view.of_cells.get(&(kind, at));
    if mine.is_none() && differ.is_none() && named == 0 && findings.is_none() {
        return None;
    }
    Some(html! {
        @if mine.is_some() || differ.is_some() {
            (seen((kind, at)))
        }
        @if let Some(mine) = mine { (clash(t, view, kind, at, mine)) }
        @if let Some(differ) = &differ { (differ) }
        @for finding in findings.into_iter().flatten() { (found(t, finding)) }
        @if differ.is_none() && named > 0 {
            details.who-says {
                summary { (t.count("table-who", named)) }
                (who_says())
            }
        }
    })
}

/// Somebody wrote here while this person did: both texts stay in sight.
fn clash(t: Tongue, view: &View, kind: KindId, at: CharacterId, mine: &str) -> Markup {
    let theirs = shown(view.said(), &view.who, kind, at);
    let place = format!("{}-{}", kind.0, at.0);
    html! {
        p.word.mend { (t.say("table-clash")) }
        p dir="auto" {
            @if theirs.is_empty() { (t.with("table-clash-cleared", &[("mine", &mine)])) }
            @else { (t.with("table-clash-told", &[("theirs", &theirs), ("mine", &mine)])) }
        }
        button #{"d-" (place) "-mine"} name="decide" value={(place) "-mine"} { (t.say("table-clash-mine")) }
        button #{"d-" (place) "-leave"} name="decide" value={(place) "-leave"} { (t.say("table-clash-leave")) }
    }
}

fn differ(t: Tongue, kind: KindId, at: CharacterId, ways: &[&str], who_says: Markup) -> Markup {
    let place = format!("{}-{}", kind.0, at.0);
    let both = either(ways);
    html! {
        p.word.look { (t.say("table-differ")) }
        (who_says)
        div.ways {
            @for (n, text) in ways.iter().enumerate() {
                button #{"d-" (place) "-" (n)} name="decide" value={(place) "-" (TAKE) (text)} {
                    (t.with("table-take", &[("text", text)]))
                }
            }
            @if let Some(both) = both {
                button #{"d-" (place) "-varies"} name="decide" value={(place) "-" (TAKE) (both)} {
                    (t.with("table-varies", &[("text", &both)]))
                }
            }
            button #{"d-" (place) "-look"} name="decide" value={(place) "-look"} { (t.say("table-look-again")) }
        }
    }
}

fn who_says(t: Tongue, said: &[(&str, &Saying)], by_heaps: impl Fn(&str) -> bool) -> Markup {
    html! {
        ul {
            @for (who, saying) in said {
                @let name = if who.is_empty() { t.say("table-itself") } else { (*who).to_owned() };
                li dir="auto" {
                    @match saying.text() {
                        Some(text) => (t.with("table-says", &[("who", &name), ("text", &text)])),
                        None => (t.with("finds-says", &[("source", &name), ("text", &cell::words(t, saying))])),
                    }
                    @if by_heaps(who) { " " span.quiet { (t.say("table-by-heaps")) } }
                }
            }
        }
    }
}

/// What the reader says of this cell.
fn found(t: Tongue, finding: &Finding) -> Markup {
    let (class, word) = match finding.severity {
        Severity::MendThis => ("word mend", "severity-mend"),
        Severity::WorthALook => ("word look", "severity-look"),
        Severity::GoodToKnow => ("word know", "severity-know"),
    };
    let (sentence, remedy) = spinney_voice::finding(finding, t);
    let language = spinney_voice::language(finding, t);
    html! {
        details {
            summary { span class=(class) { (t.say(word)) } }
            p dir="auto" lang=(language) { (sentence) }
            p.remedy dir="auto" lang=(language) { (remedy) }
        }
    }
}
