//! The proof that a claim carries: lines that say what every key takes at least from somewhere.
//!
//! Data only: `docs/KEY.md` 20 says when a line holds, `build` writes it, `check` follows it.

use std::collections::BTreeSet;

use crate::{CharacterIx, Quantity, StateIx, TaxonIx};

/// A proof that no key takes less than a claimed one. None of its lines needs a search.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Certificate {
    /// The denominator of every number in it, above zero.
    pub whole: i128,
    /// What remains of cells. Lines name it by its place here.
    pub remains: Vec<Remains>,
    /// The lines, each about another heap.
    pub lines: Vec<Line>,
}

/// What every key takes at least from one heap on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// The kinds that are still possible, rising.
    pub kinds: Vec<TaxonIx>,
    /// What remains of the cells from which answers have taken something: places in
    /// [`Certificate::remains`], rising.
    pub remains: Vec<usize>,
    /// A number for each goal that adds up, in their order, over [`Certificate::whole`]; of the
    /// least effort alone, one.
    pub at_least: Vec<i128>,
}

/// What remains of a cell.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Remains {
    /// The kind.
    pub taxon: TaxonIx,
    /// The character.
    pub character: CharacterIx,
    /// Its values that are still possible.
    pub values: Remaining,
}

/// The values of a cell that are still possible.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Remaining {
    /// These states.
    States(BTreeSet<StateIx>),
    /// Numbers from the first on and below the second; None: open to that side.
    Numbers(Option<Quantity>, Option<Quantity>),
}
