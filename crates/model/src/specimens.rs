//! Specimens: finds with a row each, as somebody measured them one by one, before they become
//! the cells of their kinds.
//!
//! From a table in which a row is a find to what statistics rest on. What the kinds of it come to
//! stands in a [`Matrix`] of its own.

use crate::{CellAt, Matrix, TaxonIx};

/// Finds with a row each.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Specimens {
    /// A row a find, called as its kind; the characters are those of the table of kinds.
    pub finds: Matrix,
    /// What is written of each find beside what was seen on it, in the same order.
    pub written: Vec<Specimen>,
}

/// What is written of one find.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Specimen {
    /// What kind it is, in the table of kinds.
    pub kind: TaxonIx,
    /// Where its kind is written.
    pub at: CellAt,
    /// What the find is called; empty: nobody said.
    pub find: String,
    /// In which picture it is; empty: nobody said.
    pub picture: String,
    /// Which plant it is of; empty: nobody said.
    pub plant: String,
    /// Where it was found; empty: nobody said.
    pub place: String,
    /// When it was found; empty: nobody said.
    pub when: String,
    /// Which part of the plant it is, such as a shade leaf; empty: nobody said.
    pub part: String,
}
