//! What the reader of tables had to say, cell by cell.

use std::collections::BTreeMap;

use spinney_model::{Called, CellAt, CharacterId, Code, Finding, KindId, Place};

use super::{Laid, named};
use crate::Collection;

/// Findings, cell by cell.
pub type OfCells = BTreeMap<(KindId, CharacterId), Vec<Finding>>;

impl Laid {
    /// What is said of each cell, and what of the whole, its kinds and its characters; not that
    /// cells are blank.
    pub fn findings_by_cell(&self, collection: &Collection) -> (OfCells, Vec<Finding>) {
        let kinds: Vec<KindId> = collection.kinds.keys().copied().collect();
        let characters: Vec<CharacterId> = named(collection).collect();
        let mut of_cells = OfCells::new();
        let mut of_table = Vec::new();
        for finding in self.findings.iter().filter(|finding| finding.code != Code::Unknown) {
            let cell = match &finding.place {
                Place::Cell(at) => cell_of(at, &kinds, &characters),
                _ => None,
            };
            match cell {
                Some(at) => {
                    let finding = self.places.in_words(&here(finding));
                    of_cells.entry(at).or_default().push(finding);
                }
                None => of_table.push(self.places.in_words(finding)),
            }
        }
        (of_cells, of_table)
    }
}

/// What is said of a cell, at the cell itself: there its address means nothing.
fn here(finding: &Finding) -> Finding {
    let mut finding = finding.clone();
    for cell in finding.fact.cells_mut() {
        if finding.place == Place::Cell(cell.at.clone()) {
            cell.called = Called::Here;
        }
    }
    finding
}

/// The cell of a collection that is this one of the table that was laid out.
fn cell_of(
    at: &CellAt,
    kinds: &[KindId],
    characters: &[CharacterId],
) -> Option<(KindId, CharacterId)> {
    // The first row holds headings, the first column names.
    let place = |at: u32| usize::try_from(at.checked_sub(1)?).ok();
    let of_table = at.sheet == "table";
    let (kind, character) = place(at.row).zip(place(at.column)).filter(|_| of_table)?;
    Some((*kinds.get(kind)?, *characters.get(character)?))
}
