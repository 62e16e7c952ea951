//! Heaps: the kinds as cards on a table top, sorted by hand to yes and to no.
//!
//! One fork of one key at a time: its question, the cards on both sides and those in the
//! middle, and the ways on. Nobody is forgotten: the margin says who is not placed yet and who
//! still lies together, and how to finish. The answers that are still needed are asked one by
//! one.

pub(crate) mod ask_here;
pub(crate) mod card;
pub(crate) mod deeds;
pub(crate) mod place;

use deeds::{ANSWER, FINISH, TAKE_OUT, finish_fields, start_form};
use maud::{Markup, html};
use place::Top;
use spinney_collection::keys::{Made, letters};
use spinney_collection::layer::Layer;
use spinney_exchange::table;
use spinney_model::{Fork, KindId, Scale, Side};
use spinney_voice::Tongue;

use crate::asked::{Asked, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{hidden, post};
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::key::keyed::Together;

pub(crate) const ROUTES: &[Route] = &[
    get("/heaps", show),
    get("/heaps/answers", answers),
    post(&deeds::START),
    post(&deeds::ASK_HERE),
    post(&deeds::SORT),
    post(&deeds::TABLE_AS_SORTED),
    post(&deeds::TAKE_OUT),
    post(&deeds::FINISH),
    post(&deeds::ANSWER),
];

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let key = frame::key_asked(desk, asked);
    let laid = desk.laid();
    let (Some(key), Some(laid)) = (key, laid) else {
        let work = beginning(desk, t);
        return frame::shown(desk, asked, &Parts::new(Screen::Heaps, t.say("nav-heaps"), work));
    };
    let drawn = &desk.history.now.keys[&key];
    let Some(layer) = Layer::of(&desk.history.now, &laid, drawn) else {
        return Shown::Nothing;
    };
    let mut at = place::way(asked.request.asked("at"));
    while !layer.forks.contains_key(&at) {
        at.0.pop();
    }
    let could_ask = ask_here::could_ask(t, desk, &laid, key, &at);
    let made = drawn.finished().then(|| desk.made(t, key)).flatten();
    let top = Top {
        t,
        desk,
        key,
        drawn,
        laid: &laid,
        layer: &layer,
        back: format!("/heaps?key={}&at={}", key.0, letters(&at)),
        at,
    };
    let work = html! {
        (keys(&top))
        div.way-here {
            (trail(&top))
            a #copy href={"/copy?key=" (top.key.0)} { (t.say("heaps-copy")) }
        }
        @if top.heap().ask.is_some() {
            (table_top(&top))
            (ask_here::proposals(&top, &laid))
        } @else {
            (open_heap(&top))
            @if top.heap().kinds.len() > 1 { (ask_here::form(&top, &laid, &could_ask)) }
        }
    };
    let parts = Parts {
        margin: Some(margin(&top, made.as_deref())),
        hand: Some("heaps"),
        ..Parts::new(Screen::Heaps, t.say("nav-heaps"), work)
    };
    frame::shown(desk, asked, &parts)
}

/// Where no key was begun: begin one, or find something first.
fn beginning(desk: &Desk, t: Tongue) -> Markup {
    html! {
        h1 { (t.say("nav-heaps")) }
        @if desk.history.now.kinds.is_empty() {
            p.empty { (t.say("heaps-no-finds")) }
            p { a.main href="/finds" { (t.say("nav-finds")) } }
        } @else {
            p.empty { (t.say("heaps-empty")) }
            (start_form(t, false))
            h2 { (t.say("heaps-on-paper")) }
            p { a.button #copy-new href="/copy/new" { (t.say("heaps-copy")) } }
        }
    }
}

/// Whose heaps these are, and the ways to the others'.
fn keys(top: &Top<'_>) -> Markup {
    let t = top.t;
    html! {
        div.whose {
            h1 { (t.say("heaps-title")) " · " span dir="auto" { (top.drawn.name) } }
            (frame::key_picker(t, &top.desk.history.now, Some(top.key), "/heaps"))
            details {
                summary { (t.say("heaps-another")) }
                (start_form(t, false))
            }
        }
    }
}

/// The path so far: every question with its answer, each a way back.
fn trail(top: &Top<'_>) -> Markup {
    let t = top.t;
    let steps = (0..top.at.0.len()).map(|length| {
        let place = Fork(top.at.0[..length].to_vec());
        let words = top.drawn.questions.get(&place).map_or("", |q| q.words.as_str()).to_owned();
        (place, words, top.at.0[length])
    });
    html! {
        nav.trail aria-label=(t.say("heaps-path")) {
            ol {
                @for (place, words, yes) in steps {
                    li {
                        a href=(top.address(&place)) dir="auto" { (words) }
                        " " (card::answer_tab(t, yes))
                    }
                }
                li aria-current="step" {
                    (t.count("heaps-here", top.heap().kinds.len()))
                }
            }
        }
    }
}

/// The question, and the cards to its left, in the middle and to its right.
fn table_top(top: &Top<'_>) -> Markup {
    let t = top.t;
    let heap = top.heap();
    let words = top.words();
    let lying =
        |side: Option<Side>| heap.kinds.iter().filter(move |k| heap.sides[*k].side == side);
    let heaps = [
        (Some(Side::Yes), "yes", "heaps-yes"),
        (None, "middle", "heaps-middle"),
        (Some(Side::No), "no", "heaps-no"),
    ];
    html! {
        div.asked-now {
            h2 #asked dir="auto" { (words) }
            form method="post" action=(TAKE_OUT.path) {
                (top.place_fields())
                button.quiet #ask-otherwise { (t.say("heaps-ask-otherwise")) }
            }
        }
        div.top.many-wait[lying(None).count() > 3] role="group" aria-labelledby="asked" {
            @for (side, class, heading) in heaps {
                section class={"heap " (class)} data-side=(class) {
                    h3 { (t.say(heading)) }
                    @if side.is_none() && lying(None).next().is_some() {
                        p.how { span.by-mouse { (t.say("heaps-drag")) } span.by-finger { (t.say("heaps-tap")) } }
                    }
                    ul.cards {
                        @for kind in lying(side) { (card::card(top, *kind)) }
                        @if side.is_none() {
                            @for kind in lying(Some(Side::Both)) { (card::card(top, *kind)) }
                        }
                    }
                    @if side.is_none() && lying(None).chain(lying(Some(Side::Both))).next().is_none() {
                        p.quiet { (t.say("heaps-nobody-waits")) }
                    }
                    @if side.is_some() { (go_on(top, side == Some(Side::Yes))) }
                }
            }
        }
    }
}

/// The way on to one of the two heaps.
fn go_on(top: &Top<'_>, yes: bool) -> Markup {
    let t = top.t;
    let next = top.at.after(yes);
    let there = top.layer.forks.get(&next).map_or(&[][..], |heap| &heap.kinds);
    let name = |kind: &_| top.desk.history.now.name_in(top.key, *kind);
    html! {
        p.on {
            @match there {
                [] => span.quiet { (t.say("heaps-empty-heap")) },
                [one] => strong { (t.with("heaps-comes-out", &[("kind", &name(one))])) },
                more => a.button id={"on-" (if yes { "yes" } else { "no" })} href=(top.address(&next)) {
                    (t.count("heaps-go-on", more.len()))
                },
            }
        }
    }
}

/// A heap that nothing is asked of yet.
fn open_heap(top: &Top<'_>) -> Markup {
    let t = top.t;
    html! {
        ul.cards.lying {
            @for kind in &top.heap().kinds { (card::plain(top, *kind)) }
        }
        @if top.heap().kinds.len() == 1 { p.empty { (t.say("heaps-one-left")) } }
    }
}

/// So many blank cells are asked for at most.
const MOST_ANSWERS: usize = 20;

/// The margin. `made`: the key as it was finished, where somebody wished for that.
fn margin(top: &Top<'_>, made: Option<&Made>) -> Markup {
    let t = top.t;
    let (stranded, together) = (top.layer.stranded(), top.layer.together());
    let name = |kind: &KindId| top.desk.history.now.name_in(top.key, *kind);
    let answers = top.layer.answers_needed(top.laid, MOST_ANSWERS).len();
    html! {
        h2 { (t.say("beside-not-placed")) }
        @if top.drawn.questions.is_empty() { p.quiet { (t.say("beside-nothing-sorted")) } }
        @else if stranded.is_empty() { p.quiet { (t.say("beside-all-placed")) } }
        ul.waiting {
            @for (at, kind) in &stranded {
                li { a href=(top.address(at)) dir="auto" { (name(kind)) } }
            }
        }
        h2 { (t.say("beside-together")) }
        @if let Some(made) = made {
            @let together = Together { t, collection: &top.desk.history.now, key: top.key, made };
            @if together.none() { p.quiet { (t.say("beside-finished")) } }
            (together.slip())
        } @else {
            @if together.is_empty() && stranded.is_empty() { p.quiet { (t.say("beside-none-together")) } }
            @else if together.is_empty() { p.quiet { (t.say("beside-first-place")) } }
            ul {
                @for (at, kinds) in &together {
                    li {
                        a href=(top.address(at)) dir="auto" {
                            (kinds.iter().map(name).collect::<Vec<_>>().join(", "))
                        }
                    }
                }
            }
        }
        h2 { (t.say("beside-finish")) }
        form method="post" action=(FINISH.path) {
            (finish_fields(top.key, top.drawn, &format!("/key?key={}", top.key.0)))
            button.main #finish {
                (t.say(if top.drawn.finished() { "beside-unfinish" } else { "beside-finish-button" }))
            }
        }
        @if answers > 0 {
            p { a href={"/heaps/answers?key=" (top.key.0)} { (t.count("beside-answers", answers)) } }
        }
    }
}

/// The answers that are still needed, one question a page.
fn answers(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let Some(key) = frame::key_asked(desk, asked) else { return Shown::Nothing };
    let Some(laid) = desk.laid() else { return Shown::Nothing };
    let drawn = &desk.history.now.keys[&key];
    let Some(layer) = Layer::of(&desk.history.now, &laid, drawn) else { return Shown::Nothing };
    let looks = layer.answers_needed(&laid, MOST_ANSWERS);
    let passed: usize = asked.request.asked("passed").parse().unwrap_or(0);
    let heaps = format!("/heaps?key={}&at={}", key.0, letters(&Fork::default()));
    let work = html! {
        h1 { (t.count("answers-title", looks.len())) }
        @match looks.get(passed.min(looks.len().saturating_sub(1))) {
            None => {
                p.empty { (t.say("answers-none")) }
                p { a.main href=(heaps) { (t.say("answers-back")) } }
            }
            Some(look) => {
                @let kind = layer.kinds[look.taxon.0];
                @let character = layer.matrix.character(look.character);
                @let others: Vec<String> = look.parts.iter().chain(&look.with_others)
                    .map(|taxon| desk.history.now.name_in(key, layer.kinds[taxon.0])).collect();
                h2 dir="auto" {
                    (t.with("answers-look", &[("kind", &desk.history.now.name_in(key, kind)), ("character", &character.name)]))
                }
                p.quiet dir="auto" { (t.with("answers-why", &[("kinds", &others.join(", "))])) }
                form method="post" action=(ANSWER.path) {
                    @let at = laid.characters[look.character.0].map_or(0, |at| at.0);
                    @let back = format!("/heaps/answers?key={}&passed={passed}", key.0);
                    (hidden(&[("key", &key.0), ("kind", &kind.0), ("character", &at), ("back", &back)]))
                    @if let Scale::Words { states } = &character.scale {
                        @for (at, state) in states.iter().enumerate() {
                            button name="text" value=(table::as_typed(state)) id={"state-" (at)} { span dir="auto" { (state) } } " "
                        }
                        button name="text" value="n/a" #state-none { (t.say("answers-has-none")) }
                    } @else {
                        label for="text" { (t.say("answers-number")) }
                        input #text name="text" maxlength="120" required;
                        button.main { (t.say("answers-write")) }
                    }
                }
                p {
                    a href={"/heaps/answers?key=" (key.0) "&passed=" (passed + 1)} { (t.say("answers-later")) }
                    " · " a href=(heaps) { (t.say("answers-back")) }
                }
            }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Heaps, t.say("nav-heaps"), work))
}
