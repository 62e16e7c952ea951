//! What a question does to a heap: nothing, or who goes to which side.
//!
//! Data that a heap yields; the two heaps themselves are made only where they are wanted.

use smallvec::SmallVec;

use super::Remains;
use crate::set::Set;

/// What a question does to a heap.
pub(crate) enum Asking {
    /// It cannot be put to a kind that is present.
    Blocked,
    /// All kinds answer it alike.
    Idle,
    /// Both answers occur.
    Parts(Sides),
}

/// Who goes to which side, with what left.
pub(crate) struct Sides {
    pub(crate) yes: Set,
    pub(crate) no: Set,
    /// The slots that are cut, with what goes to yes and to no.
    pub(super) cuts: SmallVec<[(usize, Remains, Remains); 2]>,
    /// Whether one kind goes only to yes and another only to no.
    pub(crate) parts_a_pair: bool,
}

impl Sides {
    /// Whether no cell that varies is cut, so that the kinds alone say what is made.
    pub(crate) fn fixed(&self) -> bool {
        self.cuts.is_empty()
    }

    /// Whether a kind goes to both sides.
    pub(crate) fn both(&self, kind: usize) -> bool {
        self.yes.has(kind) && self.no.has(kind)
    }

    /// Kinds that go only to yes, and kinds that go only to no.
    pub(crate) fn only(&self) -> (Set, Set) {
        let apart = |a: &Set, b: &Set| {
            Set(a.0.iter().zip(&b.0).map(|(here, there)| here & !there).collect())
        };
        (apart(&self.yes, &self.no), apart(&self.no, &self.yes))
    }
}
