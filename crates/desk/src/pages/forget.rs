//! Removing for good: what undo would keep. A page of its own says what goes, and asks.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::forget::{self, Going};
use spinney_exchange::journal;
use spinney_model::{Entry, KindId};
use spinney_voice::Tongue;

use super::frame::{self, Parts, Screen};
use crate::asked::{Asked, Deed, Route, Shown, What, get};
use crate::desk::Desk;
use crate::forms::{Fact, Form, hidden, post};
use crate::reply::Refused;
use crate::said;

pub(crate) const ROUTES: &[Route] = &[
    get("/forget", overview),
    get("/forget/all", ask_all),
    get("/forget/kind/{kind}", ask_kind),
    get("/forget/picture/{kind}/{hash}", ask_picture),
    post(&FORGET_ALL),
    post(&FORGET_KIND),
    post(&FORGET_PICTURE),
];

/// So many places where a name was typed are shown; the others are counted.
const MENTIONS_SHOWN: usize = 12;

/// Everything that can go: kinds, also those that were taken out, pictures that nobody shows
/// any more, all of it.
fn overview(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let pictures = forget::pictures(&desk.history.entries);
    let shown: BTreeSet<&String> =
        collection.kinds.values().flat_map(|kind| &kind.pictures).collect();
    let of_leaves = collection.specimens.values().map(|one| &one.picture);
    let shown: BTreeSet<&String> = shown.into_iter().chain(of_leaves).collect();
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
fn confirm(t: Tongue, action: &str, fields: &Markup, button: &str) -> Markup {
    html! {
        form method="post" action=(action) {
            (hidden(&[]))
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

fn ask_kind(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let id = KindId(asked.number(0));
    let entries = &desk.history.entries;
    if !forget::kinds(entries).contains(&id) {
        return Shown::Nothing;
    }
    let going = forget::going_with(&desk.history, id);
    let name = name(desk, t, id);
    let also: Vec<String> = going
        .kinds
        .iter()
        .filter(|kind| **kind != id)
        .map(|k| self::name(desk, t, *k))
        .collect();
    let mentions = mentions(desk, t, &going);
    let leaves = forget::specimens_going(entries, &going);
    let goes = html! {
        p dir="auto" { (t.with("forget-kind-goes", &[("kind", &name)])) }
        @if !also.is_empty() { p dir="auto" { (t.with("forget-also", &[("kinds", &also.join(", "))])) } }
        @if leaves > 0 { p { (t.count("forget-its-leaves", leaves)) } }
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
    let form = confirm(t, FORGET_KIND.path, &fields, &button);
    asking(desk, asked, &t.with("forget-kind-title", &[("kind", &name)]), &goes, &form)
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

fn ask_picture(desk: &Desk, asked: &Asked<'_>) -> Shown {
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
    let form = confirm(t, FORGET_PICTURE.path, &fields, &button);
    asking(desk, asked, &t.say("forget-picture-title"), &goes, &form)
}

fn ask_all(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let goes = html! {
        p { (t.count("forget-all-kinds", collection.kinds.len())) }
        p { (t.count("forget-all-keys", collection.keys.len())) }
        p { (t.count("forget-all-lines", desk.history.entries.len())) }
    };
    let button = t.say("forget-all-do");
    let form = confirm(t, FORGET_ALL.path, &html! {}, &button);
    asking(desk, asked, &t.say("forget-all-title"), &goes, &form)
}

/// Whether the person said so.
fn sure(asked: &Asked<'_>) -> Result<(), Refused> {
    match asked.request.field("sure") {
        "yes" => Ok(()),
        _ => Err(asked.refused("forget-unsure")),
    }
}

/// What goes is what the page showed.
fn all_of_it<T>(_: &T) -> Vec<Fact<'_>> {
    vec![Fact::all(|at| at.asked.refused("forget-moved"))]
}

fn rewritten(entries: &[Entry]) -> Deed {
    let lines = entries.iter().map(journal::write).collect();
    let pictures = forget::pictures(entries).into_keys().collect();
    Deed {
        what: What::Rewritten(lines, pictures),
        pictures: Vec::new(),
        to: "/finds".to_owned(),
    }
}

/// A kind goes for good, with all that turned out to be the same; and whether its names are
/// struck out wherever else somebody typed them.
static FORGET_KIND: Form<(KindId, bool)> = Form {
    path: "/do/forget-kind",
    read: |at| Ok((KindId(at.asked.id("kind")), at.asked.request.field("words") == "yes")),
    rests_on: all_of_it,
    act: |(kind, words), at| {
        sure(at.asked)?;
        let entries = &at.desk.history.entries;
        let mut going = forget::going_with(&at.desk.history, kind);
        if words {
            going.words = forget::names(entries, &going.kinds);
        }
        Ok(rewritten(&forget::without(entries, &going)))
    },
};

/// A picture goes for good.
static FORGET_PICTURE: Form<String> = Form {
    path: "/do/forget-picture",
    read: |at| Ok(at.asked.request.field("picture").to_owned()),
    rests_on: all_of_it,
    act: |picture, at| {
        sure(at.asked)?;
        let going = Going { pictures: BTreeSet::from([picture]), ..Going::default() };
        Ok(rewritten(&forget::without(&at.desk.history.entries, &going)))
    },
};

/// Everything goes for good.
static FORGET_ALL: Form<()> = Form {
    path: "/do/forget-all",
    read: |_| Ok(()),
    rests_on: all_of_it,
    act: |(), at| sure(at.asked).map(|()| rewritten(&[])),
};
