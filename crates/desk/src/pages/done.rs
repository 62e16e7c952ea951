//! What we did: the list of what was done, undo to anywhere in it, named states, and what
//! changed in a key between two of them.
//!
//! Whatever changes the collection here is an edit like any other: undo takes it back too.
//! Naming a state, and giving the name up, changes nothing in it.

mod between;
mod version;

use maud::{Markup, html};
use spinney_model::Done;

use version::when;

use super::frame::{self, Parts, Screen};
use crate::asked::{Asked, Deed, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{At, Fact, Form, hidden, post};
use crate::reply::Refused;
use crate::said;

pub(crate) const ROUTES: &[Route] = &[
    get("/done", show),
    get("/done/between", between::show),
    get("/done/version/{n}", version::show),
    post(&UNDO),
    post(&REDO),
    post(&HOLD_TO),
    post(&version::NAME),
    post(&version::UNNAME),
    post(&version::GO_BACK),
];

/// So many things stand on a page; older ones on the next.
const A_PAGE: usize = 100;

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let held = desk.history.holding.len();
    let end = asked.request.asked("before").parse().unwrap_or(held).min(held);
    let first = end.saturating_sub(A_PAGE);
    let work = html! {
        h1 { (t.say("nav-done")) }
        @if held == 0 && desk.history.undone.is_empty() {
            p.empty { (t.say("done-empty")) }
        }
        @if end == held { (undone(desk, asked)) }
        @if held > 0 {
            h2 { (t.say("done-list")) }
            (list(desk, asked, first, end))
            (pages(desk, asked, first, end))
        }
    };
    let margin = version::list(desk, asked);
    let parts =
        Parts { margin: Some(margin), ..Parts::new(Screen::Done, t.say("nav-done"), work) };
    frame::shown(desk, asked, &parts)
}

/// What holds, the latest on top, each with a way back to just after it.
fn list(desk: &Desk, asked: &Asked<'_>, first: usize, end: usize) -> Markup {
    let t = asked.tongue;
    let history = &desk.history;
    let mut deeds = Vec::new();
    let now = asked.request.at;
    history.told(first, end, |line, before| {
        let entry = &history.entries[line];
        deeds.push((said::done(t, before, &entry.done), entry.at));
    });
    let held = history.holding.len();
    html! {
        ol.deeds reversed start=(end) {
            @for (n, (sentence, at)) in deeds.iter().enumerate().rev() {
                @let place = first + n + 1;
                li { div.deed {
                    div {
                        p.what dir="auto" { (sentence) }
                        p.quiet { (when(t, *at, now)) }
                    }
                    @if place < held {
                        (to_place(place, &t.count("done-undo-after", held - place)))
                    }
                } }
            }
        }
        @if first == 0 { (to_place(0, &t.say("done-undo-all"))) }
    }
}

/// A button that makes the first so many things hold, and no others.
fn to_place(place: usize, words: &str) -> Markup {
    html! {
        form method="post" action=(HOLD_TO.path) {
            (hidden(&[("place", &place)]))
            button.quiet id={"to-" (place)} { (words) }
        }
    }
}

/// What was undone and can come back, what comes back first on top.
fn undone(desk: &Desk, asked: &Asked<'_>) -> Markup {
    let t = asked.tongue;
    let history = &desk.history;
    let held = history.holding.len();
    let mut deeds = Vec::new();
    history.told_undone(A_PAGE, |line, before| {
        deeds.push(said::done(t, before, &history.entries[line].done));
    });
    html! {
        @if !deeds.is_empty() {
            h2 { (t.say("done-undone")) }
            p.quiet { (t.say("done-undone-help")) }
            ul.deeds.undone {
                @for (n, sentence) in deeds.iter().enumerate() {
                    li { div.deed {
                        p.what dir="auto" { s { (sentence) } }
                        (to_place(held + n + 1, &t.count("done-bring-back", n + 1)))
                    } }
                }
            }
            @if history.undone.len() > deeds.len() {
                p.quiet { (t.count("done-more-undone", history.undone.len() - deeds.len())) }
            }
        }
    }
}

fn pages(desk: &Desk, asked: &Asked<'_>, first: usize, end: usize) -> Markup {
    let t = asked.tongue;
    let held = desk.history.holding.len();
    html! {
        @if first > 0 || end < held {
            p.done-pages {
                @if end < held {
                    a.button href={"/done?before=" ((end + A_PAGE).min(held))} { (t.say("done-newer")) }
                }
                " "
                @if first > 0 {
                    a.button href={"/done?before=" (first)} { (t.count("done-older", first)) }
                }
            }
        }
    }
}

/// What was done last is taken back.
pub(crate) static UNDO: Form<()> = Form {
    path: "/do/undo",
    read: |_| Ok(()),
    rests_on: |()| {
        vec![Fact::all(|at| {
            let last = said::last_held(at.desk, at.asked.tongue);
            moved_on(at, last.map(|said| ("done-would-undo", said)))
        })]
    },
    act: |(), at| {
        let done = (!at.desk.history.holding.is_empty()).then_some(Done::Undo);
        Ok(Deed::of(done, at.asked.back("/done")))
    },
};

/// What was taken back last comes back.
pub(crate) static REDO: Form<()> = Form {
    path: "/do/redo",
    read: |_| Ok(()),
    rests_on: |()| {
        vec![Fact::all(|at| {
            let last = said::last_undone(at.desk, at.asked.tongue);
            moved_on(at, last.map(|said| ("done-would-redo", said)))
        })]
    },
    act: |(), at| {
        let done = (!at.desk.history.undone.is_empty()).then_some(Done::Redo);
        Ok(Deed::of(done, at.asked.back("/done")))
    },
};

/// Something was done since the page was shown, perhaps in another window: it must not be taken
/// back unseen. `would` says what the button would do now.
fn moved_on(at: &At<'_>, would: Option<(&str, String)>) -> Refused {
    let t = at.asked.tongue;
    let moved = t.say("done-moved-on");
    let sentence = match would {
        Some((would, what)) => format!("{moved} {}", t.with(would, &[("what", &what)])),
        None => moved,
    };
    Refused { sentence, remedy: t.say("done-moved-on-remedy") }
}

/// Undo or redo to a place in the list. What another window did since the list was shown is
/// not undone unseen.
static HOLD_TO: Form<Option<usize>> = Form {
    path: "/do/hold-to",
    read: |at| Ok(at.asked.request.field("place").parse().ok()),
    rests_on: |_| vec![Fact::all(|at| moved_on(at, None))],
    act: |place, at| {
        let history = &at.desk.history;
        let held = history.holding.len();
        let there = |place: &usize| *place <= held + history.undone.len() && *place != held;
        let done = place.filter(there).map(|place| Done::HoldFirst(place as u64));
        Ok(Deed::of(done, "/done"))
    },
};

#[cfg(test)]
mod tests;
