//! The sheet of cells: kinds down, characters across, an input a cell, in one form; and what
//! stands under a cell, where there is something to say: who says what, where people differ,
//! what another window wrote, what the reader could not understand.
//!
//! Every cell carries what stood there when the page was made, so that only what a person
//! changed here is written, and another window's cells are left alone.

use maud::{Markup, html};
use spinney_collection::{Agreed, Collection, Saying};
use spinney_exchange::table::either;
use spinney_model::{CharacterId, Finding, KindId, Severity};
use spinney_voice::Tongue;

use crate::forms::hidden;
use crate::pages::cell;
use crate::pages::table::fields::LONGEST_TEXT;
use crate::pages::table::typed::{CELLS, TAKE, seen};
use crate::pages::table::view::{View, Which, unit};

pub(super) fn sheet(t: Tongue, collection: &Collection, view: &View) -> Markup {
    html! {
        @if view.kinds.is_empty() || view.characters.is_empty() {
            p.empty { (t.say(nothing_of(view.which))) }
            p { a.button href="/table" { (t.say("table-show-whole")) } }
        } @else {
            form #cells method="post" action=(CELLS.path) {
                (hidden(&[("as", &view.who), ("back", &view.address())]))
                p #not-kept hidden { (t.say("table-not-kept")) }
                p #not-pasted hidden { (t.say("table-not-pasted")) }
                p.keep {
                    button.main #keep { (t.say("table-keep")) }
                    " " a href="#margin" { (t.say("table-to-margin")) }
                }
                div.sheet role="region" tabindex="0" aria-labelledby="table-caption" {
                    table {
                        caption #table-caption { (caption(t, collection, view)) }
                        thead { tr {
                            th scope="col" { (t.say("table-kind")) }
                            @for &at in &view.characters { (heading(t, collection, view, at)) }
                        } }
                        tbody {
                            @for &kind in &view.kinds { (row(t, collection, view, kind)) }
                        }
                    }
                }
            }
            (pages(t, view))
        }
    }
}

fn nothing_of(which: Which) -> &'static str {
    match which {
        Which::Blank => "table-none-blank",
        Which::Differ => "table-none-differ",
        Which::All => "table-none",
    }
}

fn caption(t: Tongue, collection: &Collection, view: &View) -> String {
    let shown = view.kinds.len();
    let all = collection.kinds.len();
    let kinds = match shown == all {
        true => t.count("table-caption-kinds", all),
        false => t.count_with("table-caption-some", shown, &[("all", &all)]),
    };
    let characters = t.count("table-caption-characters", view.characters.len());
    t.with("table-caption", &[("kinds", &kinds), ("characters", &characters)])
}

fn heading(t: Tongue, collection: &Collection, view: &View, at: CharacterId) -> Markup {
    let unit = unit(collection, view, at);
    let address = format!("{}#panel", view.with_choices(&format!("/table/{}", at.0)));
    html! {
        th.open[view.open == Some(at)] scope="col" {
            a id={"h-" (at.0)} href=(address) dir="auto" aria-current=[(view.open == Some(at)).then_some("true")] {
                (collection.character_name(at))
            }
            @if !unit.is_empty() { " " span.unit { (t.with("table-in", &[("unit", &unit)])) } }
        }
    }
}

fn row(t: Tongue, collection: &Collection, view: &View, kind: KindId) -> Markup {
    html! {
        tr {
            th scope="row" {
                a id={"k-" (kind.0)} href={"/finds/" (kind.0)} dir="auto" { (collection.name(kind)) }
            }
            @for &at in &view.characters { (cell(t, collection, view, kind, at)) }
        }
    }
}

fn cell(
    t: Tongue,
    collection: &Collection,
    view: &View,
    kind: KindId,
    at: CharacterId,
) -> Markup {
    let said = view.said();
    let text = said.shown(&view.who, kind, at);
    let place = format!("{}-{}", kind.0, at.0);
    let mine = view.clashes.get(&(kind, at)).filter(|mine| *mine != text);
    let notes = notes(t, collection, view, kind, at, mine.map(String::as_str));
    let differ = said.agreed(kind, at) == Agreed::Contradicted;
    html! {
        td id={"c-" (place)} .differ[differ] .clash[mine.is_some()] .open[view.open == Some(at)] {
            @if view.fits(kind, at) || mine.is_some() {
                input id={"i-" (place)} name={"c-" (place)} value=(mine.map_or(text, String::as_str))
                    aria-labelledby={"k-" (kind.0) " h-" (at.0)}
                    aria-describedby=[notes.is_some().then(|| format!("n-{place}"))]
                    maxlength=(LONGEST_TEXT.max(text.chars().count()))
                    dir="auto" autocomplete="off" autocapitalize="off" spellcheck="false" size=(wide(text));
                input type="hidden" name={"b-" (place)} value=(text);
            } @else {
                span.said dir="auto" { (text) }
            }
            @if let Some(notes) = notes { div.notes id={"n-" (place)} { (notes) } }
        }
    }
}

/// How many letters of a cell are in sight: all of them, within reason.
fn wide(text: &str) -> usize {
    text.chars().count().clamp(9, 24)
}

fn pages(t: Tongue, view: &View) -> Markup {
    let page = view.kinds.len();
    html! {
        @if view.before > 0 || view.after > 0 {
            p.table-pages {
                @if view.before > 0 {
                    a.button href=(view.with_choices_from("/table", view.before.saturating_sub(page))) {
                        (t.say("table-kinds-before"))
                    }
                }
                " "
                @if view.after > 0 {
                    a.button href=(view.with_choices_from("/table", view.before + page)) {
                        (t.count("table-kinds-after", view.after))
                    }
                }
            }
        }
    }
}

/// None: nothing is to be said.
fn notes(
    t: Tongue,
    collection: &Collection,
    view: &View,
    kind: KindId,
    at: CharacterId,
    mine: Option<&str>,
) -> Option<Markup> {
    let cells = view.said();
    let said = cells.sources(kind, at);
    let by_heaps = |who: &str| !who.is_empty() && !collection.says_itself(kind, at, who);
    let who_says = || who_says(t, &said, by_heaps);
    let differ = match cells.agreed(kind, at) {
        Agreed::Contradicted => Some(differ(t, kind, at, &cells.choices(kind, at), who_says())),
        _ => None,
    };
    let named: Vec<&str> =
        said.iter().map(|(who, _)| *who).filter(|who| !who.is_empty()).collect();
    let findings = view.of_cells.get(&(kind, at));
    if mine.is_none() && differ.is_none() && named.is_empty() && findings.is_none() {
        return None;
    }
    Some(html! {
        @if mine.is_some() || differ.is_some() {
            (seen((kind, at)))
        }
        @if let Some(mine) = mine { (clash(t, view, kind, at, mine)) }
        @if let Some(differ) = &differ { (differ) }
        @for finding in findings.into_iter().flatten() { (found(t, finding)) }
        @if differ.is_none() && !named.is_empty() {
            details.who-says {
                summary dir="auto" { (cell::who(t, &named)) }
                (who_says())
            }
        }
    })
}

/// Somebody wrote here while this person did: both texts stay in sight.
fn clash(t: Tongue, view: &View, kind: KindId, at: CharacterId, mine: &str) -> Markup {
    let theirs = view.said().shown(&view.who, kind, at);
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
    html! {
        details {
            summary { span class=(class) { (t.say(word)) } }
            p dir="auto" lang=(t.tag()) { (sentence) }
            p.remedy dir="auto" lang=(t.tag()) { (remedy) }
        }
    }
}
