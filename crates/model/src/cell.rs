//! A cell: what is known of one kind in one character.

use crate::{Quantity, Share, StateIx};

/// What is known of one kind in one character, and on how many things it was seen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cell {
    /// What was seen.
    pub value: Value,
    /// On how many finds it was seen, where somebody counted.
    pub seen: Option<Seen>,
}

/// On how many finds (leaves, shells, …) something was seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Seen {
    /// How many finds.
    pub on: u32,
    /// Of how many plants they are, where that is written of each.
    pub plants: Option<u32>,
}

impl Seen {
    /// So many finds, of nobody knows how many plants.
    pub fn on(on: u32) -> Self {
        Self { on, plants: None }
    }
}

/// What was seen. "Unknown" and "does not apply" are never the same thing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Value {
    /// Nobody has looked, or they could not agree: any state is possible.
    Unknown,
    /// The kind does not have this character: a leaf in one piece has no leaflets.
    DoesNotApply,
    /// One or several states with their shares: in order of the states, none twice, every
    /// share above 0, together 1.
    States(Vec<(StateIx, Share)>),
    /// One or several whole numbers with their shares: rising, above 0, together 1.
    Counts(Vec<(u32, Share)>),
    /// One measured range, `low <= high`, in the character's unit.
    Range {
        /// The smallest value seen.
        low: Quantity,
        /// The largest value seen.
        high: Quantity,
    },
}

impl From<Value> for Cell {
    fn from(value: Value) -> Self {
        Self { value, seen: None }
    }
}
