//! What a cell holds, as far as a search needs to know, and the room it takes in a heap.
//!
//! From a cell of the matrix to one value, a range, or a slot that keeps which values remain.

use spinney_model::{CharacterIx, Matrix, Quantity, TaxonIx, Value};

use crate::cost::Effort;
use crate::heap::Layout;
use crate::split::{self, Column};

/// What a cell holds, as far as a search needs to know.
pub(super) enum Held {
    Nothing,
    /// One value: its number in the column.
    One(usize),
    Range {
        low: Quantity,
        high: Quantity,
    },
    /// Several values, and the slot that keeps which remain. `values` as numbers in the column.
    Several {
        slot: usize,
        values: Vec<usize>,
    },
    /// An unknown measure: which of the column's intervals remain.
    Intervals {
        slot: usize,
    },
}

/// Makes room for a cell where it needs some.
pub(super) fn hold(
    matrix: &Matrix,
    taxon: TaxonIx,
    at: CharacterIx,
    column: &Column,
    layout: &mut Layout,
) -> Held {
    if !split::can_apply(matrix, taxon, at) {
        return Held::Nothing;
    }
    let mut several = |values: Vec<usize>| match values.as_slice() {
        [] => Held::Nothing,
        [one] => Held::One(*one),
        _ => Held::Several { slot: layout.slot_of_values(values.len()), values },
    };
    match (&matrix.cell(taxon, at).value, &matrix.character(at).scale) {
        (Value::DoesNotApply, _) => Held::Nothing,
        (Value::States(shares), _) => several(shares.iter().map(|(s, _)| s.0).collect()),
        (Value::Counts(shares), _) => {
            several(shares.iter().map(|(count, _)| number_of(&column.counts, *count)).collect())
        }
        (Value::Range { low, high }, _) => Held::Range { low: *low, high: *high },
        (Value::Unknown, spinney_model::Scale::Words { states }) => {
            several((0..states.len()).collect())
        }
        (Value::Unknown, spinney_model::Scale::Counts) => {
            several((0..column.counts.len()).collect())
        }
        (Value::Unknown, spinney_model::Scale::Measure { .. }) => {
            if column.cuts.is_empty() {
                return Held::Nothing;
            }
            let intervals = column.cuts.len() as u32 + 1;
            Held::Intervals { slot: layout.slot_of_intervals(intervals) }
        }
    }
}

fn number_of(counts: &[u32], count: u32) -> usize {
    counts.binary_search(&count).expect("every count of a column stands in its list")
}

/// The shares of a cell with several values, in the order of `hold`.
pub(super) fn shares_of(
    matrix: &Matrix,
    taxon: TaxonIx,
    at: CharacterIx,
    column: &Column,
) -> Option<Vec<spinney_model::Share>> {
    let equal = |n: usize| (n > 0).then(|| vec![spinney_model::Share::new(1, n as Effort); n]);
    match (&matrix.cell(taxon, at).value, &matrix.character(at).scale) {
        (Value::States(shares), _) => Some(shares.iter().map(|(_, share)| *share).collect()),
        (Value::Counts(shares), _) => Some(shares.iter().map(|(_, share)| *share).collect()),
        (Value::Unknown, spinney_model::Scale::Words { states }) => equal(states.len()),
        (Value::Unknown, spinney_model::Scale::Counts) => equal(column.counts.len()),
        // Intervals have the same share each: it stands once.
        (Value::Unknown, _) => {
            Some(vec![spinney_model::Share::new(1, column.cuts.len() as Effort + 1)])
        }
        _ => None,
    }
}
