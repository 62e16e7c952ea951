//! A sheet as it stands in a spreadsheet: texts at places, kept only where there are any.
//!
//! From cells in any order to rows. One far cell takes no more room than any other. It does
//! not know what the texts mean.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{CellAt, OfCell, OfSheet, Place};

use super::{Row, caps, report::Report};

/// Texts at places. Rows and columns are counted from 0, and named from 1 and A.
#[derive(Clone, Debug, Default)]
pub(super) struct Grid {
    /// What stands before the `!` of a cell's name: the sheet or the file.
    pub(super) name: String,
    rows: BTreeMap<u32, Vec<(u32, String)>>,
    cells: usize,
    text: usize,
    full: bool,
}

impl Grid {
    /// An empty sheet.
    pub(super) fn named(name: &str) -> Self {
        Self { name: name.to_owned(), ..Self::default() }
    }

    /// A sheet of typed cells, row after row.
    pub(super) fn typed(name: &str, rows: &[Row<'_>], report: &mut Report) -> Self {
        let mut grid = Self::named(name);
        for (row, cells) in (0..).zip(rows) {
            for (column, text) in (0..).zip(cells) {
                grid.put(row, column, text, report);
            }
        }
        grid
    }

    /// Puts a text at a place; what is over a limit is told and left out.
    pub(super) fn put(&mut self, row: u32, column: u32, text: &str, report: &mut Report) {
        let text = text.trim();
        if text.is_empty() || self.full {
            return;
        }
        if column >= caps::MOST_COLUMNS {
            self.too_far(row, column, report);
            return;
        }
        if text.len() > caps::LONGEST_TEXT {
            self.too_long(row, column, report);
            return;
        }
        let no_room =
            self.cells >= caps::MOST_CELLS || self.text + text.len() > caps::MOST_TEXT;
        if no_room {
            self.full = true;
            self.stops_here(row, column, report);
            return;
        }
        self.cells += 1;
        self.text += text.len();
        let cells = self.rows.entry(row).or_default();
        match cells.last() {
            Some((last, _)) if *last >= column => {
                match cells.binary_search_by_key(&column, |(place, _)| *place) {
                    Ok(at) => text.clone_into(&mut cells[at].1),
                    Err(at) => cells.insert(at, (column, text.to_owned())),
                }
            }
            _ => cells.push((column, text.to_owned())),
        }
    }

    fn too_far(&self, row: u32, column: u32, report: &mut Report) {
        let far = OfCell::TooFar { most: caps::MOST_COLUMNS, at: self.at(row, column).into() };
        report.add(&format!("far {}", self.name), self.place(row, column), far);
    }

    /// Says that a cell holds more text than a cell can mean.
    pub(super) fn too_long(&self, row: u32, column: u32, report: &mut Report) {
        let long =
            OfCell::TooLong { most: caps::LONGEST_TEXT, at: self.at(row, column).into() };
        report.add(&format!("long {}", self.name), self.place(row, column), long);
    }

    fn stops_here(&self, row: u32, column: u32, report: &mut Report) {
        let full = OfSheet::Full {
            cells: caps::MOST_CELLS,
            megabytes: caps::MOST_TEXT >> 20,
            at: self.at(row, column).into(),
        };
        report.one(self.place(row, column), full);
    }

    /// Whether a limit was met, so that nothing more need be read.
    pub(super) fn is_full(&self) -> bool {
        self.full
    }

    /// Whether nothing stands anywhere.
    pub(super) fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// The text at a place, trimmed; empty where there is none.
    pub(super) fn get(&self, row: u32, column: u32) -> &str {
        let cells = self.rows.get(&row).map_or(&[][..], Vec::as_slice);
        match cells.binary_search_by_key(&column, |(place, _)| *place) {
            Ok(at) => &cells[at].1,
            Err(_) => "",
        }
    }

    /// The rows in which something stands, with their cells from left to right.
    pub(super) fn rows(&self) -> impl Iterator<Item = (u32, &[(u32, String)])> {
        self.rows.iter().map(|(row, cells)| (*row, cells.as_slice()))
    }

    /// The columns in which something stands, from left to right.
    pub(super) fn columns(&self) -> BTreeSet<u32> {
        self.rows.values().flatten().map(|(column, _)| *column).collect()
    }

    /// A cell: `Sheet1!C7`.
    pub(super) fn at(&self, row: u32, column: u32) -> CellAt {
        CellAt { sheet: self.name.clone(), row, column }
    }

    /// The same as the place of a finding.
    pub(super) fn place(&self, row: u32, column: u32) -> Place {
        Place::Cell(self.at(row, column))
    }

    /// Splits the sheet into its heading row and the rows below.
    ///
    /// A first row with a single text above a fuller one is a title, and is told.
    pub(super) fn below_heading(&self, report: &mut Report) -> Option<Headed<'_>> {
        let mut rows = self.rows().peekable();
        let mut first = rows.next()?;
        while let (1, Some((_, next))) = (first.1.len(), rows.peek()) {
            if next.len() < 2 {
                break;
            }
            let (column, title) = &first.1[0];
            let title = OfSheet::Title { title: title.clone() };
            report.one(self.place(first.0, *column), title);
            first = rows.next().expect("a row was just looked at");
        }
        Some(Headed {
            row: first.0,
            headings: first.1,
            rows: rows.map(|(row, _)| row).collect(),
        })
    }
}

/// A sheet with its headings found.
#[derive(Debug)]
pub(super) struct Headed<'a> {
    /// The row of the headings.
    pub(super) row: u32,
    /// The headings from left to right, with their columns.
    pub(super) headings: &'a [(u32, String)],
    /// The rows below in which something stands.
    pub(super) rows: Vec<u32>,
}
