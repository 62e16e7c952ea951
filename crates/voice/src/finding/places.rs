//! Where a cell is, within a sentence: its address, the names of its row and of its column, or
//! nothing where the sentence is read beside the cell.

use spinney_model::{Called, NamedCell};

use super::phrases::capital;
use crate::Tongue;

/// `table!C7`, "elm, edge".
pub(super) fn place(t: Tongue, cell: &NamedCell) -> String {
    let row = cell.at.number();
    match &cell.called {
        Called::Address => cell.at.to_string(),
        Called::Here => t.say("finding-this-cell"),
        Called::RowOfSheet => {
            t.with("finding-row-of-sheet", &[("row", &row), ("sheet", &cell.at.sheet)])
        }
        Called::Headings => t.say("finding-headings"),
        Called::Heading(heading) => t.with("finding-heading", &[("heading", heading)]),
        Called::Kind(kind) => t.with("finding-kind-cell", &[("kind", kind)]),
        Called::KindUnder(kind, about) => {
            t.with("finding-kind-under", &[("kind", kind), ("about", about)])
        }
        Called::Row => t.with("finding-row", &[("row", &row)]),
        Called::RowUnder(about) => {
            t.with("finding-row-under", &[("row", &row), ("about", about)])
        }
    }
}

/// The same where a sentence begins with it; an address stays as it is.
pub(super) fn subject(t: Tongue, cell: &NamedCell) -> String {
    match cell.called {
        Called::Address => place(t, cell),
        _ => capital(&place(t, cell)),
    }
}

/// " (table!C7)", behind something else.
pub(super) fn bracketed(t: Tongue, cell: &NamedCell) -> String {
    behind(t, "finding-at", cell)
}

/// The same in a sentence that names the row and the column itself: only an address adds to it.
pub(super) fn besides(t: Tongue, cell: &NamedCell) -> String {
    match cell.called {
        Called::Address => bracketed(t, cell),
        _ => String::new(),
    }
}

/// " in table!C7".
pub(super) fn within(t: Tongue, cell: &NamedCell) -> String {
    behind(t, "finding-in", cell)
}

fn behind(t: Tongue, message: &str, cell: &NamedCell) -> String {
    match cell.called {
        Called::Here => String::new(),
        _ => t.with(message, &[("cell", &place(t, cell))]),
    }
}
