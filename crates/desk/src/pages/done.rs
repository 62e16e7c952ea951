//! What we did: the list of what was done, undo to anywhere in it, named states, and what
//! changed in a key between two of them.
//!
//! Whatever changes the collection here is an edit like any other: undo takes it back too.
//! Naming a state, and giving the name up, changes nothing in it.

mod between;
mod compare;
mod version;
mod when;

use maud::{Markup, html};
use spinney_model::Done;

use super::frame::{self, Parts, Screen};
use super::{Route, Shown};
use crate::routes::{Asked, Deed, Handler, Refused};
use crate::{Desk, Method, said};

pub(super) const ROUTES: &[Route] = &[
    (Method::Get, "/done", Handler::Show(show)),
    (Method::Get, "/done/between", Handler::Show(between::show)),
    (Method::Get, "/done/version/{n}", Handler::Show(version::show)),
    (Method::Post, "/do/undo", Handler::Do(undo)),
    (Method::Post, "/do/redo", Handler::Do(redo)),
    (Method::Post, "/do/hold-to", Handler::Do(hold_to)),
    (Method::Post, "/do/version", Handler::Do(version::name)),
    (Method::Post, "/do/unname", Handler::Do(version::unname)),
    (Method::Post, "/do/back-to-version", Handler::Do(version::go_back)),
];

/// So many things stand on a page; older ones on the next.
const A_PAGE: usize = 100;

fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
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
                        p.quiet { (when::when(t, *at, now)) }
                    }
                    @if place < held {
                        (to_place(desk, place, &t.count("done-undo-after", held - place)))
                    }
                } }
            }
        }
        @if first == 0 { (to_place(desk, 0, &t.say("done-undo-all"))) }
    }
}

/// A button that makes the first so many things hold, and no others.
fn to_place(desk: &Desk, place: usize, words: &str) -> Markup {
    html! {
        form method="post" action="/do/hold-to" {
            input type="hidden" name="place" value=(place);
            input type="hidden" name="head" value=(desk.head());
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
                        (to_place(desk, held + n + 1, &t.count("done-bring-back", n + 1)))
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

fn undo(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let would = |said: &str| asked.tongue.with("done-would-undo", &[("what", &said)]);
    seen(desk, asked, || last_held(desk, asked).map(|said| would(&said)))?;
    let done = (!desk.history.holding.is_empty()).then_some(Done::Undo);
    Ok(Deed { done, pictures: Vec::new(), to: asked.back("/done") })
}

fn redo(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let would = |said: &str| asked.tongue.with("done-would-redo", &[("what", &said)]);
    seen(desk, asked, || last_undone(desk, asked).map(|said| would(&said)))?;
    let done = (!desk.history.undone.is_empty()).then_some(Done::Redo);
    Ok(Deed { done, pictures: Vec::new(), to: asked.back("/done") })
}

/// Refused where something was done since the page was shown, perhaps in another window: it
/// must not be taken back unseen. `would` says what the button would do now.
fn seen(
    desk: &Desk,
    asked: &Asked<'_>,
    would: impl Fn() -> Option<String>,
) -> Result<(), Refused> {
    if asked.request.field("head").parse() == Ok(desk.head()) {
        return Ok(());
    }
    let t = asked.tongue;
    let moved = t.say("done-moved-on");
    let sentence = match would() {
        Some(would) => format!("{moved} {would}"),
        None => moved,
    };
    Err(Refused { sentence, remedy: t.say("done-moved-on-remedy") })
}

/// The thing that was done last and holds, in a sentence.
fn last_held(desk: &Desk, asked: &Asked<'_>) -> Option<String> {
    let history = &desk.history;
    let held = history.holding.len();
    let mut said = None;
    history.told(held.saturating_sub(1), held, |line, before| {
        said = Some(said::done(asked.tongue, before, &history.entries[line].done));
    });
    said
}

/// The thing that comes back first, in a sentence.
fn last_undone(desk: &Desk, asked: &Asked<'_>) -> Option<String> {
    let history = &desk.history;
    let mut said = None;
    history.told_undone(1, |line, before| {
        said = Some(said::done(asked.tongue, before, &history.entries[line].done));
    });
    said
}

/// So many milliseconds after something was taken back, a page still says what it was.
const JUST: i64 = 10_000;

/// What the last line of the journal took back or brought back; None: it did something else.
pub(super) fn just_taken_back(desk: &Desk, asked: &Asked<'_>) -> Option<String> {
    let last = desk.history.entries.last()?;
    // Only on the page that the button leads to, and not in every window from then on.
    if asked.request.at.saturating_sub(last.at) > JUST {
        return None;
    }
    let (message, what) = match last.done {
        Done::Undo => ("done-just-undone", last_undone(desk, asked)?),
        Done::Redo => ("done-just-redone", last_held(desk, asked)?),
        _ => return None,
    };
    Some(asked.tongue.with(message, &[("what", &what)]))
}

/// Undo or redo to a place in the list. What another window did since the list was shown is
/// not undone unseen.
fn hold_to(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    seen(desk, asked, || None)?;
    let history = &desk.history;
    let place: Option<usize> = asked.request.field("place").parse().ok();
    let there = |place: &usize| {
        *place <= history.holding.len() + history.undone.len()
            && *place != history.holding.len()
    };
    let done = place.filter(there).map(|place| Done::HoldFirst(place as u64));
    Ok(Deed { done, pictures: Vec::new(), to: "/done".to_owned() })
}

#[cfg(test)]
mod tests;
