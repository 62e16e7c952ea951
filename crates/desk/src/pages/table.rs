//! The table: kinds by characters, a cell each, with who says what and what is still missing.
//!
//! From the collection to one page: the sheet of cells, beside it a character's own sheet if
//! one is open, and what the table cannot do yet. What is typed here goes to the table itself,
//! which decides, or to the view of the group that types it.

pub(crate) mod fields;
mod margin;
mod panel;
mod rename;
mod sheet;
mod starters;
mod typed;
mod view;

use maud::{Markup, PreEscaped, html};
use view::View;

use super::frame::{self, Parts, Screen};
use crate::asked::{Asked, Handler, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::post;
use crate::request::Method;

pub(crate) const ROUTES: &[Route] = &[
    get("/table", show),
    get("/table/{character}", show_character),
    (Method::Post, typed::CELLS.path, Handler::Do(&typed::OfCells)),
    post(&rename::LAY_OVER),
    post(&rename::ADD_CHARACTER),
    post(&starters::TAKE),
    post(&fields::DESCRIBE),
    post(&rename::RENAME_STATE),
    post(&rename::TAKE_OUT),
];

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let view = View::of(desk, asked, None);
    page(desk, asked, &view)
}

fn show_character(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let id = spinney_model::CharacterId(asked.number(0));
    if !desk.history.now.characters.contains_key(&id) {
        return Shown::Nothing;
    }
    let view = View::of(desk, asked, Some(id));
    page(desk, asked, &view)
}

fn page(desk: &Desk, asked: &Asked<'_>, view: &View) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let work = html! {
        h1 { (t.say("nav-table")) }
        @if collection.kinds.is_empty() || collection.characters.is_empty() {
            (first_steps(t, collection.kinds.is_empty()))
        } @else {
            (help(t))
            (view::choices(t, collection, view))
            (sheet::sheet(t, collection, view))
        }
        (rename::add_forms(t, collection, view))
        (starters::offered(t, collection))
        (rename::lay_over_form(t, view))
    };
    let margin = html! {
        @if let Some(id) = view.open { (panel::panel(t, collection, view, id)) }
        (margin::margin(t, view, &desk.history.now))
    };
    let parts = Parts {
        margin: Some(margin),
        hand: Some("table"),
        ..Parts::new(Screen::Table, t.say("nav-table"), work)
    };
    frame::shown(desk, asked, &parts)
}

/// Two leaves, and nothing said of them yet.
const EMPTY_TABLE: PreEscaped<&str> =
    PreEscaped(include_str!("../../assets/drawn/empty_table.svg"));

/// What to do first, with a drawing of it.
fn first_steps(t: spinney_voice::Tongue, no_kinds: bool) -> Markup {
    html! {
        (EMPTY_TABLE)
        p.empty { @if no_kinds { (t.say("table-no-kinds")) } @else { (t.say("table-no-characters")) } }
    }
}

fn help(t: spinney_voice::Tongue) -> Markup {
    html! {
        details.table-help {
            summary #table-help { (t.say("table-help")) }
            dl {
                @for (example, meaning) in [
                    ("lobed", "table-help-word"),
                    ("lobed or entire", "table-help-varies"),
                    ("lobed 8, entire 2", "table-help-counted"),
                    ("30-60", "table-help-range"),
                    ("5-7", "table-help-count"),
                    ("?", "table-help-unknown"),
                    ("n/a", "table-help-not-there"),
                ] {
                    dt { code { (example) } }
                    dd { (t.say(meaning)) }
                }
            }
            p { (t.say("table-help-keys")) }
        }
    }
}

#[cfg(test)]
mod tests;
