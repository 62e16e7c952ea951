//! What the sheets beside the table have in common: headings in any order, under any of a few
//! natural names.
//!
//! From a sheet to its rows, with each wanted column found.

use spinney_model::{CellAt, FieldIs, OfSheet, Place};

use super::{grid::Grid, phrase::fold, report::Report};

/// A sheet whose headings were found.
pub(super) struct Records<'g> {
    grid: &'g Grid,
    columns: Vec<Option<u32>>,
    rows: Vec<u32>,
}

/// One row of it.
#[derive(Clone, Copy)]
pub(super) struct Record<'r> {
    grid: &'r Grid,
    columns: &'r [Option<u32>],
    row: u32,
}

impl<'g> Records<'g> {
    /// Finds the headings; `wanted` has the names of each column, the usual one first.
    pub(super) fn of(
        grid: &'g Grid,
        wanted: &[&[&'static str]],
        report: &mut Report,
    ) -> Option<Self> {
        let headed = grid.below_heading(report)?;
        let mut columns = vec![None; wanted.len()];
        for (column, heading) in headed.headings {
            let folded = fold(heading.trim_end_matches(['?', ':']));
            let names = wanted.iter().map(|names| names.contains(&folded.as_str()));
            match names.enumerate().find(|(_, named)| *named) {
                Some((field, _)) if columns[field].is_none() => columns[field] = Some(*column),
                _ => {
                    let not_read = OfSheet::ColumnNotRead {
                        heading: heading.clone(),
                        sheet: grid.name.clone(),
                        usual: wanted.iter().map(|names| names[0]).collect(),
                    };
                    let group = format!("heading {}", grid.name);
                    report.add(&group, grid.place(headed.row, *column), not_read);
                }
            }
        }
        Some(Self { grid, columns, rows: headed.rows })
    }

    /// Whether a column was found.
    pub(super) fn has(&self, field: usize) -> bool {
        self.columns[field].is_some()
    }

    /// The rows.
    pub(super) fn rows(&self) -> impl Iterator<Item = Record<'_>> {
        let (grid, columns) = (self.grid, &self.columns);
        self.rows.iter().map(move |row| Record { grid, columns, row: *row })
    }
}

impl<'r> Record<'r> {
    /// The text of a column; empty if there is none.
    pub(super) fn get(self, field: usize) -> &'r str {
        self.columns[field].map_or("", |column| self.grid.get(self.row, column))
    }

    /// The text of a column, if there is one.
    pub(super) fn text(self, field: usize) -> Option<String> {
        Some(self.get(field).to_owned()).filter(|text| !text.is_empty())
    }

    /// What is filled in besides the name, as it was typed; the fields are those of the columns.
    pub(super) fn typed<F>(self, fields: impl Iterator<Item = F>) -> Vec<(F, String)> {
        let fields = fields.enumerate().skip(1);
        fields.filter_map(|(at, field)| Some((field, self.text(at)?))).collect()
    }

    /// Where that is.
    pub(super) fn place(self, field: usize) -> CellAt {
        self.grid.at(self.row, self.columns[field].unwrap_or(0))
    }

    /// Says that the text of a column is not understood.
    pub(super) fn odd(
        self,
        field: usize,
        is: FieldIs,
        words: &'static [&'static str],
        report: &mut Report,
    ) {
        let (place, text) = (self.place(field), self.get(field).to_owned());
        let odd = OfSheet::FieldOdd { text, is, words, at: place.clone().into() };
        let alike = match is {
            FieldIs::ByTouch => FieldIs::InOrder,
            is => is,
        };
        report.add(&format!("{alike:?} {}", self.grid.name), Place::Cell(place), odd);
    }
}
