//! The sheet of cells: kinds down, characters across, an input a cell, in one form.
//!
//! Every cell carries what stood there when the page was made, so that only what a person
//! changed here is written, and another window's cells are left alone.

use maud::{Markup, html};
use spinney_collection::{Agreed, Collection};
use spinney_model::{CharacterId, KindId};
use spinney_voice::Tongue;

use super::fields::LONGEST_TEXT;
use super::notes;
use super::typed::CELLS;
use super::view::{View, Which, shown, unit};
use crate::forms::hidden;

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
    let text = shown(said, &view.who, kind, at);
    let place = format!("{}-{}", kind.0, at.0);
    let mine = view.clashes.get(&(kind, at)).filter(|mine| *mine != text);
    let notes = notes::notes(t, collection, view, kind, at, mine.map(String::as_str));
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
