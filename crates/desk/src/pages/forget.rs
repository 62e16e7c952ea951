//! Removing for good: what undo would keep. A page of its own says what goes, and asks.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_exchange::journal;
use spinney_model::{Entry, KindId};

use super::frame::{self, Parts, Screen};
use super::{Route, Shown};
use crate::routes::{Asked, Handler, Refused};
use crate::{Desk, Method, Page, Reply, said};
use spinney_collection::forget::{self, Going};
use spinney_voice::Tongue;

pub(super) const ROUTES: &[Route] = &[
    (Method::Get, "/forget", Handler::Show(overview)),
    (Method::Get, "/forget/all", Handler::Show(ask_all)),
    (Method::Get, "/forget/kind/{kind}", Handler::Show(ask_kind)),
    (Method::Get, "/forget/picture/{kind}/{hash}", Handler::Show(ask_picture)),
    (Method::Post, "/do/forget-all", Handler::Answer(forget_all)),
    (Method::Post, "/do/forget-kind", Handler::Answer(forget_kind)),
    (Method::Post, "/do/forget-picture", Handler::Answer(forget_picture)),
];

/// So many places where a name was typed are shown; the others are counted.
const MENTIONS_SHOWN: usize = 12;

/// Everything that can go: kinds, also those that were taken out, pictures that nobody shows
/// any more, all of it.
fn overview(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let pictures = forget::pictures(&desk.history.entries);
    let shown: BTreeSet<&String> =
        collection.kinds.values().flat_map(|kind| &kind.pictures).collect();
    let hidden = pictures.iter().filter(|(hash, _)| !shown.contains(hash));
    let hidden: Vec<_> = hidden.collect();
    let work = html! {
        h1 { (t.say("forget-title")) }
        p.empty { (t.say("forget-why")) }
        h2 { (t.say("forget-kinds")) }
        ul {
            @for id in collection.kinds.keys() {
                li { a href={"/forget/kind/" (id.0)} dir="auto" { (collection.name(*id)) } }
            }
            @for id in taken_out(desk) {
                li {
                    a href={"/forget/kind/" (id.0)} dir="auto" { (name(desk, t, id)) }
                    " " span.quiet { (t.say("forget-taken-out")) }
                }
            }
        }
        @if !hidden.is_empty() {
            h2 { (t.say("forget-pictures")) }
            ul.prints {
                @for (at, (hash, kinds)) in hidden.iter().enumerate() {
                    @let kind = kinds.first().map_or(0, |kind| kind.0);
                    li {
                        img src={"/picture/" (hash)} alt=(t.count("finds-picture-number", at + 1)) loading="lazy";
                        a href={"/forget/picture/" (kind) "/" (hash)} { (t.say("finds-picture-forget")) }
                    }
                }
            }
        }
        h2 { (t.say("forget-all")) }
        p { a href="/forget/all" { (t.say("forget-all-link")) } }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("forget-title"), work))
}

/// Kinds that are not there any more but are kept for undo.
fn taken_out(desk: &Desk) -> BTreeSet<KindId> {
    forget::kinds(&desk.history.entries)
        .into_iter()
        .filter(|id| !desk.history.now.kinds.contains_key(id))
        .collect()
}

/// The name of a kind, now or when it was there.
fn name(desk: &Desk, t: Tongue, id: KindId) -> String {
    if desk.history.now.kinds.contains_key(&id) {
        return desk.history.now.name(id);
    }
    let names = forget::names(&desk.history.entries, &BTreeSet::from([id]));
    match names.is_empty() {
        true => t.with("forget-nameless", &[("number", &id.0)]),
        false => names.into_iter().collect::<Vec<_>>().join(", "),
    }
}

/// The form that asks once more.
fn confirm(desk: &Desk, t: Tongue, action: &str, fields: &Markup, button: &str) -> Markup {
    html! {
        form method="post" action=(action) {
            input type="hidden" name="head" value=(desk.head());
            (fields)
            p.being-sure {
                input #sure type="checkbox" name="sure" value="yes" required;
                label for="sure" { (t.say("forget-sure")) }
            }
            button.for-good-do #forget-do { (button) }
        }
        p { a.main href="/finds" { (t.say("forget-keep")) } }
    }
}

fn asking(desk: &Desk, asked: &Asked<'_>, title: &str, goes: &Markup, form: &Markup) -> Shown {
    let t = asked.tongue;
    let work = html! {
        h1 dir="auto" { (title) }
        div.goes { (goes) }
        p { strong { (t.say("forget-no-undo")) } }
        p.quiet { (t.say("forget-copies")) }
        (form)
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, title, work))
}

fn ask_kind(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let id = KindId(asked.number(0));
    let entries = &desk.history.entries;
    if !forget::kinds(entries).contains(&id) {
        return Shown::Nothing;
    }
    let going = going_with(desk, id);
    let name = name(desk, t, id);
    let also: Vec<String> = going
        .kinds
        .iter()
        .filter(|kind| **kind != id)
        .map(|k| self::name(desk, t, *k))
        .collect();
    let mentions = mentions(desk, t, &going);
    let goes = html! {
        p dir="auto" { (t.with("forget-kind-goes", &[("kind", &name)])) }
        @if !also.is_empty() { p dir="auto" { (t.with("forget-also", &[("kinds", &also.join(", "))])) } }
        @if !going.pictures.is_empty() { p { (t.count("forget-its-pictures", going.pictures.len())) } }
    };
    let fields = html! {
        input type="hidden" name="kind" value=(id.0);
        @if !mentions.is_empty() {
            h2 { (t.count("forget-mentions", mentions.len())) }
            ul {
                @for sentence in mentions.iter().take(MENTIONS_SHOWN) { li dir="auto" { (sentence) } }
            }
            @if mentions.len() > MENTIONS_SHOWN {
                p { (t.count("forget-mentions-more", mentions.len() - MENTIONS_SHOWN)) }
            }
            p.being-sure {
                input #words type="checkbox" name="words" value="yes" checked;
                label for="words" { (t.say("forget-strike")) }
            }
        }
    };
    let button = t.with("forget-kind-do", &[("kind", &name)]);
    let form = confirm(desk, t, "/do/forget-kind", &fields, &button);
    asking(desk, asked, &t.with("forget-kind-title", &[("kind", &name)]), &goes, &form)
}

/// A kind, all that turned out to be the same, and the pictures of nobody else.
fn going_with(desk: &Desk, id: KindId) -> Going {
    let history = &desk.history;
    let holding = history.holding.iter().map(|line| history.entries[*line].clone());
    let kinds = forget::with_merged(&holding.collect::<Vec<Entry>>(), id);
    let pictures = forget::pictures(&history.entries)
        .into_iter()
        .filter(|(_, of)| of.is_subset(&kinds))
        .map(|(hash, _)| hash);
    Going { pictures: pictures.collect(), kinds, words: BTreeSet::new() }
}

/// Where else its names were typed, in sentences.
fn mentions(desk: &Desk, t: Tongue, going: &Going) -> Vec<String> {
    let entries = &desk.history.entries;
    let names = forget::names(entries, &going.kinds);
    let left = forget::without(entries, going);
    let lines = forget::mentions(&left, &names);
    let sentence = |entry: &Entry| said::done(t, &desk.history.now, &entry.done);
    lines.map(sentence).collect()
}

fn ask_picture(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let hash = asked.parts[1];
    let pictures = forget::pictures(&desk.history.entries);
    let Some(kinds) = pictures.get(hash) else { return Shown::Nothing };
    let names: Vec<String> = kinds.iter().map(|kind| name(desk, t, *kind)).collect();
    let goes = html! {
        img src={"/picture/" (hash)} alt=(t.with("forget-picture-of", &[("kinds", &names.join(", "))]));
        p dir="auto" { (t.with("forget-picture-of", &[("kinds", &names.join(", "))])) }
    };
    let fields = html! { input type="hidden" name="picture" value=(hash); };
    let button = t.say("forget-picture-do");
    let form = confirm(desk, t, "/do/forget-picture", &fields, &button);
    asking(desk, asked, &t.say("forget-picture-title"), &goes, &form)
}

fn ask_all(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let goes = html! {
        p { (t.count("forget-all-kinds", collection.kinds.len())) }
        p { (t.count("forget-all-keys", collection.keys.len())) }
        p { (t.count("forget-all-lines", desk.history.entries.len())) }
    };
    let button = t.say("forget-all-do");
    let form = confirm(desk, t, "/do/forget-all", &html! {}, &button);
    asking(desk, asked, &t.say("forget-all-title"), &goes, &form)
}

/// Whether the person said so, of what the page showed.
fn not_yet(desk: &Desk, asked: &Asked<'_>) -> Option<Reply> {
    let t = asked.tongue;
    let same = asked.request.field("head") == desk.head().to_string();
    let sure = asked.request.field("sure") == "yes";
    let (sentence, remedy) = match (same, sure) {
        (true, true) => return None,
        (false, _) => ("forget-moved", "forget-moved-remedy"),
        (true, false) => ("forget-unsure", "forget-unsure-remedy"),
    };
    let refused = Refused { sentence: t.say(sentence), remedy: t.say(remedy) };
    Some(Reply::Page(frame::refused(desk, asked, &refused)))
}

fn rewritten(desk: &Desk, entries: &[Entry]) -> Reply {
    Reply::Rewrite {
        head: desk.head(),
        lines: entries.iter().map(journal::write).collect(),
        pictures: forget::pictures(entries).into_keys().collect(),
        then: Page::see("/finds"),
    }
}

fn forget_kind(desk: &mut Desk, asked: &Asked<'_>) -> Reply {
    if let Some(reply) = not_yet(desk, asked) {
        return reply;
    }
    let entries = &desk.history.entries;
    let id = KindId(asked.request.field("kind").parse().unwrap_or(0));
    let mut going = going_with(desk, id);
    if asked.request.field("words") == "yes" {
        going.words = forget::names(entries, &going.kinds);
    }
    rewritten(desk, &forget::without(entries, &going))
}

fn forget_picture(desk: &mut Desk, asked: &Asked<'_>) -> Reply {
    if let Some(reply) = not_yet(desk, asked) {
        return reply;
    }
    let pictures = BTreeSet::from([asked.request.field("picture").to_owned()]);
    let going = Going { pictures, ..Going::default() };
    rewritten(desk, &forget::without(&desk.history.entries, &going))
}

fn forget_all(desk: &mut Desk, asked: &Asked<'_>) -> Reply {
    match not_yet(desk, asked) {
        Some(reply) => reply,
        None => rewritten(desk, &[]),
    }
}
