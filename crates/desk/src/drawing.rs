//! The drawing of a kind's leaf on a page.
//!
//! Which leaf is drawn, and how, is the room `draw`; here it becomes part of a page.

use maud::{Markup, PreEscaped};
use spinney_collection::laid::Laid;
use spinney_draw::Leaves;
use spinney_model::{Drawing, KindId, Matrix};

/// The drawing of what the table says of a kind; None: it says nothing of a leaf, or not enough.
pub(crate) fn of_kind(laid: &Laid, kind: KindId) -> Option<Markup> {
    laid.drawing(kind, all).map(|drawing| svg(drawing, "leaf drawn"))
}

fn all(matrix: &Matrix) -> Vec<Option<Drawing>> {
    let leaves = Leaves::of(matrix);
    matrix.taxon_indices().map(|taxon| leaves.drawing(matrix, taxon)).collect()
}

/// A drawing on a page. Nothing that anybody typed is in it: it is made of numbers.
pub(crate) fn svg(drawing: &Drawing, class: &str) -> Markup {
    PreEscaped(spinney_draw::svg(drawing, class))
}
