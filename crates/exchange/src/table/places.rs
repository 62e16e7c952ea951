//! Cells in words: where somebody looks at a table on a screen, `table!F11` is "hazel, edge".
//!
//! From the cells that a finding names to what their rows and columns are called. On the command
//! line, where a person has a spreadsheet open, addresses stay.

use std::collections::BTreeMap;

use spinney_model::{Called, CellAt, Finding};

use super::grid::Grid;
use super::layout;
use super::report::Report;

/// The names of a table's rows and columns.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Places {
    sheet: String,
    heading_row: u32,
    /// The column with the names of kinds.
    names: u32,
    rows: BTreeMap<u32, String>,
    columns: BTreeMap<u32, String>,
}

impl Places {
    /// `names`: the column with the names, where that is not found by itself.
    pub(super) fn of(table: &Grid, names: Option<u32>) -> Self {
        let sheet = table.name.clone();
        let Some(headed) = table.below_heading(&mut Report::default()) else {
            return Self { sheet, ..Self::default() };
        };
        let first = names.or_else(|| layout::names_column(table, &headed)).unwrap_or(0);
        let name = |row: &u32| (*row, table.get(*row, first).to_owned());
        Self {
            sheet,
            heading_row: headed.row,
            names: first,
            rows: headed.rows.iter().map(name).filter(|(_, name)| !name.is_empty()).collect(),
            columns: headed.headings.iter().cloned().collect(),
        }
    }

    /// The finding with every cell that it names called by its row and its column. Its place
    /// stays, and so does what is called otherwise already.
    pub fn in_words(&self, finding: &Finding) -> Finding {
        let mut finding = finding.clone();
        for cell in finding.fact.cells_mut() {
            if cell.called == Called::Address {
                cell.called = self.called(&cell.at);
            }
        }
        finding
    }

    fn called(&self, at: &CellAt) -> Called {
        if at.sheet != self.sheet {
            return Called::RowOfSheet;
        }
        let heading = self.columns.get(&at.column).cloned();
        if at.row == self.heading_row {
            return heading.map_or(Called::Headings, Called::Heading);
        }
        match (self.rows.get(&at.row).cloned(), heading) {
            (Some(kind), Some(heading)) if at.column != self.names => {
                Called::KindUnder(kind, heading)
            }
            (Some(kind), _) => Called::Kind(kind),
            (None, Some(heading)) => Called::RowUnder(heading),
            (None, None) => Called::Row,
        }
    }
}

#[cfg(test)]
mod tests {
    use spinney_model::{Called, CellAt, Finding, OfCell, Place};

    use super::super::{Source, typed_sheets};

    #[test]
    fn a_cell_is_named_by_its_row_and_its_column() {
        let text =
            "Our walk\n\nkind,edge,blade (mm)\nhazel,toothed,60-110\nelm,toothed,a lot\n";
        let source = Source { name: "my table".to_owned(), bytes: text.as_bytes().to_vec() };
        let places = typed_sheets(&[source]).expect("it has kinds").places;
        let called = |sheet: &str, row: u32, column: u32| {
            let cell = CellAt { sheet: sheet.to_owned(), row, column };
            let fact = OfCell::Formula { at: cell.clone().into() };
            let place = Place::Cell(cell);
            let mut finding = places.in_words(&Finding::of(place.clone(), fact));
            assert_eq!(finding.place, place);
            finding.fact.cells_mut()[0].called.clone()
        };
        let ours = |row, column| called("my table", row, column);
        let [elm, blade] = ["elm", "blade (mm)"].map(str::to_owned);
        assert_eq!(ours(4, 2), Called::KindUnder(elm, blade.clone()));
        assert_eq!(ours(3, 0), Called::Kind("hazel".to_owned()));
        assert_eq!(ours(2, 1), Called::Heading("edge".to_owned()));
        assert_eq!(ours(2, 9), Called::Headings);
        assert_eq!(ours(8, 2), Called::RowUnder(blade));
        assert_eq!(ours(98, 25), Called::Row);
        assert_eq!(called("characters", 3, 2), Called::RowOfSheet);
    }
}
