//! A drawing for every kind that the table describes as a leaf, for cards without a picture.
//!
//! From the cells of a kind to the line drawing of one leaf: its form, lobes, edge, shape,
//! proportions and hairs as the table says them, plain where it says nothing. It is the table
//! that is drawn, not the plant: kinds that the table does not tell apart look alike. A kind of
//! which it says nothing of a leaf (a pond animal, a piece of pasta) has no drawing.
//!
//! The word pages draw with the same pen ([`leaf`], [`blade`]).

pub(crate) mod blade;
mod columns;
pub(crate) mod leaf;
mod leaf_words;
mod outlines;
pub(crate) mod pen;

use std::sync::OnceLock;

use maud::{Markup, html};
use spinney_model::{Matrix, TaxonIx};

use columns::Columns;
use leaf::{Leaf, Part};

/// The box of every drawing, in millimetres: half its width, how far it goes up and down.
pub(crate) const BOX: &str = "-24 -41 48 57";

/// The drawings of a table's kinds, each made when it is first looked at.
#[derive(Clone, Debug, Default)]
pub(crate) struct Drawings {
    columns: OnceLock<Columns>,
    kinds: Vec<OnceLock<Option<Markup>>>,
}

impl Drawings {
    /// None drawn yet.
    pub(crate) fn of(matrix: &Matrix) -> Self {
        let kinds = matrix.taxa().iter().map(|_| OnceLock::new()).collect();
        Self { columns: OnceLock::new(), kinds }
    }

    /// The drawing of a kind of this matrix; None: the table says nothing of a leaf.
    pub(crate) fn drawing(&self, matrix: &Matrix, taxon: TaxonIx) -> Option<&Markup> {
        let columns = self.columns.get_or_init(|| Columns::of(matrix));
        let drawn = self.kinds.get(taxon.0)?;
        drawn.get_or_init(|| columns.leaf(matrix, taxon).map(|leaf| svg(&leaf))).as_ref()
    }
}

/// The class by which a part of a leaf gets its thickness.
pub(crate) fn class(part: Part) -> &'static str {
    match part {
        Part::Edge | Part::Stalk => "outline",
        Part::Midrib | Part::SlimEdge => "midrib",
        Part::Veins | Part::Hairs => "vein",
    }
}

/// One path for each thickness, fine lines first so that the outline lies on top of them. It
/// says nothing to a screen reader: the name beside it does.
fn svg(leaf: &Leaf) -> Markup {
    let lines = leaf.lines();
    let paths = ["vein", "midrib", "outline"].map(|of| {
        let lines = lines.iter().filter(|line| class(line.part) == of);
        (of, lines.map(|line| pen::path(&line.points)).collect::<String>())
    });
    html! {
        svg.leaf.drawn viewBox=(BOX) aria-hidden="true" focusable="false" {
            @for (class, path) in &paths {
                @if !path.is_empty() { path class=(class) d=(path) {} }
            }
        }
    }
}

#[cfg(test)]
mod tests;
