//! A cell of a sheet, by its address and by what a person calls it.
//!
//! From row and column to `table!C7`, or to the names of the row and of the column where
//! somebody looks at the table on a screen. It says nothing: `voice` does.

use std::fmt;

/// A cell of a sheet; rows and columns are counted from 0.
#[derive(Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct CellAt {
    /// The sheet or the file.
    pub sheet: String,
    /// The row.
    pub row: u32,
    /// The column.
    pub column: u32,
}

impl CellAt {
    /// The letters of a column: A, Z, AA.
    pub fn letters(column: u32) -> String {
        let mut rest = column;
        let mut letters = Vec::new();
        loop {
            letters.push(char::from(b'A' + u8::try_from(rest % 26).expect("below 26")));
            match (rest / 26).checked_sub(1) {
                Some(more) => rest = more,
                None => return letters.iter().rev().collect(),
            }
        }
    }

    /// The row as a spreadsheet counts it, from 1.
    pub fn number(&self) -> u32 {
        self.row.saturating_add(1)
    }
}

impl fmt::Display for CellAt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}!{}{}", self.sheet, Self::letters(self.column), self.number())
    }
}

impl fmt::Debug for CellAt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

/// What a person is told of where a cell is.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Called {
    /// Its address, for whoever has a spreadsheet open.
    #[default]
    Address,
    /// Nothing, where it is said beside the cell itself.
    Here,
    /// Its row on a sheet beside the table.
    RowOfSheet,
    /// The row of headings.
    Headings,
    /// A heading.
    Heading(String),
    /// The kind of its row.
    Kind(String),
    /// The kind of its row and the heading of its column.
    KindUnder(String, String),
    /// Its row, in which no kind is named.
    Row,
    /// Its row, in which no kind is named, and the heading of its column.
    RowUnder(String),
}

/// A cell, and what a person is told of where it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NamedCell {
    /// The cell.
    pub at: CellAt,
    /// What it is called.
    pub called: Called,
}

impl From<CellAt> for NamedCell {
    fn from(at: CellAt) -> Self {
        Self { at, called: Called::Address }
    }
}

#[cfg(test)]
mod tests {
    use super::CellAt;

    #[test]
    fn columns_have_letters_as_in_a_spreadsheet() {
        for (column, letters) in
            [(0, "A"), (25, "Z"), (26, "AA"), (701, "ZZ"), (702, "AAA"), (u32::MAX, "MWLQKWV")]
        {
            assert_eq!(CellAt::letters(column), letters);
        }
    }
}
