//! What we did: the list of what was done, undo to anywhere, named versions.

use maud::{Markup, html};
use spinney_model::Done;

use super::frame::{self, Parts, Screen};
use super::{Route, Shown};
use crate::routes::{Asked, Deed, Handler, Refused};
use crate::{Desk, Method, said};

pub(super) const ROUTES: &[Route] = &[
    (Method::Get, "/done", Handler::Show(show)),
    (Method::Post, "/do/undo", Handler::Do(undo)),
    (Method::Post, "/do/redo", Handler::Do(redo)),
    (Method::Post, "/do/version", Handler::Do(version)),
];

/// The longest name of a version, in letters.
const LONGEST_NAME: usize = 200;
/// So many lines are shown; older ones are counted.
const LINES_SHOWN: usize = 200;

fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let history = &desk.history;
    let holding = &history.holding;
    let shown = holding.len().saturating_sub(LINES_SHOWN);
    let work = html! {
        h1 { (t.say("nav-done")) }
        @if holding.is_empty() { p.empty { (t.say("done-empty")) } }
        ol.deeds reversed start=(holding.len()) {
            @for line in holding[shown..].iter().rev() {
                li dir="auto" { (said::done(t, &history.now, &history.entries[*line].done)) }
            }
        }
        @if shown > 0 { p { (t.count("done-older", shown)) } }
    };
    let margin = versions(desk, asked);
    let parts =
        Parts { margin: Some(margin), ..Parts::new(Screen::Done, t.say("nav-done"), work) };
    frame::shown(desk, asked, &parts)
}

fn versions(desk: &Desk, asked: &Asked<'_>) -> Markup {
    let t = asked.tongue;
    html! {
        h2 { (t.say("done-versions")) }
        ul {
            @for version in desk.history.versions.iter().rev() {
                li dir="auto" { (version.name) }
            }
        }
        form method="post" action="/do/version" {
            label for="version" { (t.say("done-name-version")) }
            input #version name="name" maxlength=(LONGEST_NAME) required;
            input type="hidden" name="back" value="/done";
            button { (t.say("done-keep-version")) }
        }
    }
}

fn undo(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let done = (!desk.history.holding.is_empty()).then_some(Done::Undo);
    Ok(Deed { done, pictures: Vec::new(), to: asked.back("/done") })
}

fn redo(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let done = (!desk.history.undone.is_empty()).then_some(Done::Redo);
    Ok(Deed { done, pictures: Vec::new(), to: asked.back("/done") })
}

fn version(_: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let name: String = asked.request.field("name").chars().take(LONGEST_NAME).collect();
    let done = (!name.is_empty()).then_some(Done::Version(name));
    Ok(Deed { done, pictures: Vec::new(), to: asked.back("/done") })
}
