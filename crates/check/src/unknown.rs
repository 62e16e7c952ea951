//! Cells in which nobody has looked: from the matrix to one finding that sums them up.
//!
//! A cell whose kind cannot have the character is not unknown, whatever stands in it.

use spinney_model::{Code, Finding, Place};

use crate::sentence::{called, capital, kinds, number};
use crate::values::Values;

/// Characters named in the sentence; the others are counted.
const MOST_CHARACTERS: usize = 4;

/// One finding for all unknown cells.
pub(crate) fn summary(values: &Values<'_>) -> Option<Finding> {
    let matrix = values.matrix;
    let mut cells = 0;
    let mut listed = Vec::new();
    for character in matrix.character_indices() {
        let unknown: Vec<_> =
            matrix.taxon_indices().filter(|taxon| values.unknown(*taxon, character)).collect();
        cells += unknown.len();
        if !unknown.is_empty() {
            let name = called(&matrix.character(character).name);
            listed.push(format!("{name} of {}", kinds(matrix, unknown)));
        }
    }
    if cells == 0 {
        return None;
    }
    let more = listed.len().saturating_sub(MOST_CHARACTERS);
    listed.truncate(MOST_CHARACTERS);
    let rest = match more {
        0 => String::new(),
        1 => "; and in one more column".to_owned(),
        more => format!("; and in {more} more columns"),
    };
    Some(Finding::new(
        Code::Unknown,
        Place::Table,
        capital(&format!(
            "{cells} {} unknown: {}{rest}.",
            number(cells, "cell is", "cells are"),
            listed.join("; ")
        )),
        "Look at these kinds and fill in what you see. Until then a question about it lets \
         them come out on both sides.",
    ))
}
