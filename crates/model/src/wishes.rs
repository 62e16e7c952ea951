//! What a person asks of a key before it is built.

use crate::Ask;

/// What a person asks of a key before it is built.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Wishes {
    /// Questions to keep, from the start of the key downwards.
    pub kept: Option<Box<Kept>>,
}

/// A question that stays, and those to keep after it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// The question.
    pub ask: Ask,
    /// What to keep after a yes.
    pub yes: Option<Box<Kept>>,
    /// What to keep after a no.
    pub no: Option<Box<Kept>>,
}
