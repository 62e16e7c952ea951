//! Cells in which nobody has looked: from the matrix to one finding that sums them up.
//!
//! A cell whose kind cannot have the character is not unknown, whatever stands in it.

use spinney_model::{CellsOf, Finding, OfTable, Place};

use crate::names;
use crate::values::Values;

/// Characters that are named; the others are counted.
const MOST_CHARACTERS: usize = 4;

/// One finding for all unknown cells.
pub(crate) fn summary(values: &Values<'_>) -> Option<Finding> {
    let matrix = values.matrix;
    let mut cells = 0;
    let mut columns = Vec::new();
    for character in matrix.character_indices() {
        let unknown = matrix.taxon_indices().filter(|taxon| values.unknown(*taxon, character));
        let kinds = names::kinds(matrix, unknown);
        cells += kinds.len();
        if !kinds.is_empty() {
            columns.push(CellsOf { about: names::about(matrix, character), kinds });
        }
    }
    if cells == 0 {
        return None;
    }
    let more_columns = columns.len().saturating_sub(MOST_CHARACTERS);
    columns.truncate(MOST_CHARACTERS);
    Some(Finding::of(Place::Table, OfTable::Unknown { cells, columns, more_columns }))
}
