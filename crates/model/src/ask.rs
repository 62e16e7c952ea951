//! What a couplet asks, in terms of the matrix.

use std::collections::BTreeSet;

use crate::{CharacterIx, Quantity, StateIx};

/// A yes/no question about one character.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Ask {
    /// The character to look at.
    pub character: CharacterIx,
    /// What a "yes" means.
    pub yes: Asked,
}

/// What a "yes" means.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Asked {
    /// The thing has one of these states, read as one phrase; not empty, not all of them.
    States(BTreeSet<StateIx>),
    /// The count or measure is this much or more (counts: a whole number).
    AtLeast(Quantity),
    /// The count or measure is less than this: how a person may have put it. It parts a heap
    /// as [`Asked::AtLeast`] does, with the two answers exchanged.
    Below(Quantity),
}
