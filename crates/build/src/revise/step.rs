//! What may be done first with a heap at a place of the old key.

use super::old::{Old, Place};

/// What is done first at a heap and a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Step {
    /// Nothing is asked: the rest of the old key is struck out.
    End,
    /// The best key of the heap, all of it new.
    Best,
    /// The old question stays; so many changes after a yes.
    Keep { after_yes: u32 },
    /// The old question is struck out; the old yes side, or no side, follows.
    Strike { yes: bool },
    /// Another question; so many changes after a yes.
    Ask { question: usize, on: On, after_yes: u32 },
}

/// Where the old key goes on after another question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum On {
    /// Rewritten: the old yes side follows a yes, the old no side a no.
    Straight,
    /// Rewritten the other way round.
    Crossed,
    /// New: the old question itself follows a yes.
    Yes,
    /// New: the old question itself follows a no.
    No,
    /// There is no old key here.
    Nowhere,
}

impl On {
    /// The places that follow a yes and a no.
    pub(super) fn places(self, place: Place, old: &Old) -> (Place, Place) {
        let below = || place.map_or((None, None), |at| (old.places[at].yes, old.places[at].no));
        match self {
            Self::Straight => below(),
            Self::Crossed => (below().1, below().0),
            Self::Yes => (place, None),
            Self::No => (None, place),
            Self::Nowhere => (None, None),
        }
    }
}
