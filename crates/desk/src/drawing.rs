//! The drawings of a table's kinds on a page, each made when it is first looked at.
//!
//! Which leaf is drawn, and how, is the room `draw`; here it becomes part of a page.

use std::sync::OnceLock;

use maud::{Markup, PreEscaped};
use spinney_draw::Leaves;
use spinney_model::{Drawing, Matrix, TaxonIx};

/// The drawings of a table's kinds.
#[derive(Clone, Debug, Default)]
pub(crate) struct Drawings {
    leaves: OnceLock<Leaves>,
    kinds: Vec<OnceLock<Option<Markup>>>,
}

impl Drawings {
    /// None drawn yet.
    pub(crate) fn of(matrix: &Matrix) -> Self {
        let kinds = matrix.taxa().iter().map(|_| OnceLock::new()).collect();
        Self { leaves: OnceLock::new(), kinds }
    }

    /// The drawing of a kind of this matrix; None: the table does not say enough of its leaf.
    pub(crate) fn drawing(&self, matrix: &Matrix, taxon: TaxonIx) -> Option<&Markup> {
        let leaves = self.leaves.get_or_init(|| Leaves::of(matrix));
        let drawn = self.kinds.get(taxon.0)?;
        let draw = || leaves.drawing(matrix, taxon).map(|lines| svg(&lines, "leaf drawn"));
        drawn.get_or_init(draw).as_ref()
    }
}

/// A drawing on a page. Nothing that anybody typed is in it: it is made of numbers.
pub(crate) fn svg(drawing: &Drawing, class: &str) -> Markup {
    PreEscaped(spinney_draw::svg(drawing, class))
}
