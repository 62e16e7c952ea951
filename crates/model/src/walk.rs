//! A walk: the way of one kind through a key; and kinds whose ways a key leaves together.

use crate::{CharacterIx, TaxonIx};

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

/// Kinds that come out at one end of a key together: it does not tell them apart.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LeftTogether {
    /// The kinds, two or more, in the order of the matrix.
    pub taxa: Vec<TaxonIx>,
    /// The last question on the way to them and its answer; None: the key asks nothing at all.
    pub after: Option<Step>,
    /// A character that tells some of them apart there; None: the table has none.
    pub differ: Option<CharacterIx>,
}
