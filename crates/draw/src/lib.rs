//! How it looks as lines: leaves from the cells of a table, and the words of the list.
//!
//! From a table to a drawing of each kind that it describes well enough ([`Leaves`]), and from a
//! word to drawings of what it means and of what it is taken for ([`of_word`]), and from the state
//! of a column to what it looks like ([`of_state`]); and from a measured leaf to its lines ([`of_measured`]). A drawing is true
//! or absent: it shows every feature that the table states of a leaf, or there is none.
//!
//! It is the table that is drawn, not the plant: kinds that the table does not tell apart look
//! alike. It has no pages, papers or languages; a [`Drawing`] is lines in
//! millimetres, which screens and sheets place.

mod blade;
mod columns;
mod leaf;
mod leaf_words;
mod measured;
mod outlines;
mod pen;
mod states;
mod words;

use spinney_model::{Drawing, LeafSize, Matrix, TaxonIx, Weight};

use columns::Columns;
use leaf::{Leaf, Part};
pub use measured::of_measured;
pub use states::of_state;
pub use words::{Shows, of_word};

/// The box of every kind, in millimetres: half its width, how far it goes up and down.
const BOX: [f64; 4] = [-24.0, -41.0, 48.0, 57.0];

/// What the columns of a table say of leaves.
#[derive(Clone, Debug, Default)]
pub struct Leaves(Columns);

impl Leaves {
    /// Reads the columns of a table.
    pub fn of(matrix: &Matrix) -> Self {
        Self(Columns::of(matrix))
    }

    /// Whether the table speaks of leaves at all.
    pub fn any(&self) -> bool {
        self.0.any()
    }

    /// The drawing of a kind of this table.
    ///
    /// **Guarantees**: it shows the form that the cells state, the lobes and how they are
    /// arranged, the edge and, where leaflets were counted, a number of them that was counted.
    /// None: the cells do not say one of these, or say something that these lines cannot show.
    pub fn drawing(&self, matrix: &Matrix, taxon: TaxonIx) -> Option<Drawing> {
        self.0.leaf(matrix, taxon).map(|leaf| drawing(&leaf))
    }
}

/// The drawing of every kind of a table, where there is one.
pub fn of_kinds(matrix: &Matrix) -> Vec<Option<Drawing>> {
    let leaves = Leaves::of(matrix);
    matrix.taxon_indices().map(|taxon| leaves.drawing(matrix, taxon)).collect()
}

/// How large the largest leaf of every kind of a table is, where its blade was measured.
pub fn sizes(matrix: &Matrix) -> Vec<Option<LeafSize>> {
    let columns = Columns::of(matrix);
    matrix.taxon_indices().map(|taxon| columns.size(matrix, taxon)).collect()
}

/// How heavy the lines of a part are.
fn weight(part: Part) -> Weight {
    match part {
        Part::Edge | Part::Stalk => Weight::Outline,
        Part::Midrib | Part::SlimEdge => Weight::Midrib,
        Part::Veins | Part::Hairs => Weight::Fine,
    }
}

/// Fine lines first, so that the outline lies on top of them.
fn drawing(leaf: &Leaf) -> Drawing {
    let lines = leaf.lines();
    let mut strokes: Vec<_> =
        lines.iter().map(|line| pen::stroke(weight(line.part), &line.points)).collect();
    strokes.sort_by_key(|stroke| stroke.weight);
    Drawing { frame: BOX, strokes }
}

#[cfg(test)]
mod tests;
