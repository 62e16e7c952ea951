//! A walk: the way of one kind through a key.

use crate::TaxonIx;

/// What was answered at a couplet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Answer {
    /// Yes, or the first lead.
    Yes,
    /// No, or the second lead.
    No,
}

/// One couplet on a walk.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Step {
    /// The couplet's number.
    pub couplet: u32,
    /// What was answered there.
    pub answer: Answer,
}

/// One way of one kind through a key; a kind that varies has several.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Walk {
    /// The kind in the hand.
    pub taxon: TaxonIx,
    /// The couplets and answers, from the start.
    pub steps: Vec<Step>,
    /// Whether it came out at an end that names the kind.
    pub arrived: bool,
}
