//! The drawing of a kind's leaf on a page.
//!
//! Which leaf is drawn, and how, is the room `draw`; here it becomes part of a page.

use maud::{Markup, PreEscaped};
use spinney_collection::laid::Laid;
use spinney_model::{Drawing, KindId};

/// The drawing of what the table says of a kind; None: it says nothing of a leaf, or not enough.
pub(crate) fn of_kind(laid: &Laid, kind: KindId) -> Option<Markup> {
    laid.drawing(kind, spinney_draw::of_kinds).map(|drawing| svg(drawing, "leaf drawn"))
}

/// A drawing on a page. Nothing that anybody typed is in it: it is made of numbers.
pub(crate) fn svg(drawing: &Drawing, class: &str) -> Markup {
    PreEscaped(spinney_press::lines::svg(drawing, class))
}
