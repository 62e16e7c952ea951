//! A couplet's question as it can be put to the matrix: from an ask to a test of values.
//!
//! An ask that does not fit the matrix (a character of another table, a threshold for a
//! character in words) is treated like a question that nobody linked.

use spinney_model::{Ask, Asked, CharacterIx, Couplet, Matrix, Scale};

/// A question about one character of the matrix.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Question {
    /// The character to look at.
    pub(crate) character: CharacterIx,
    /// What a yes means.
    pub(crate) yes: Yes,
}

/// What a yes means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Yes {
    /// One of these states, as bits.
    States(u64),
    /// This much or more, in thousandths.
    AtLeast(i64),
    /// Less than this, in thousandths.
    Below(i64),
}

impl Question {
    /// The question of a couplet; None: not linked.
    pub(crate) fn of(matrix: &Matrix, couplet: &Couplet) -> Option<Self> {
        Self::asks(matrix, couplet.ask.as_ref()?)
    }

    /// The question of an ask; None: the matrix has nothing to answer it with.
    pub(crate) fn asks(matrix: &Matrix, ask: &Ask) -> Option<Self> {
        let character = matrix.characters().get(ask.character.0)?;
        let yes = match (&ask.yes, &character.scale) {
            (Asked::States(asked), Scale::Words { states }) => {
                let fits = asked.iter().all(|state| state.0 < states.len());
                if asked.is_empty() || !fits || asked.len() >= states.len() {
                    return None;
                }
                Yes::States(asked.iter().fold(0, |bits, state| bits | 1 << state.0))
            }
            (Asked::AtLeast(at), Scale::Counts | Scale::Measure { .. }) => {
                Yes::AtLeast(at.thousandths())
            }
            (Asked::Below(at), Scale::Counts | Scale::Measure { .. }) => {
                Yes::Below(at.thousandths())
            }
            _ => return None,
        };
        Some(Self { character: ask.character, yes })
    }

    /// The threshold of a question about numbers.
    pub(crate) fn at(&self) -> Option<i64> {
        match self.yes {
            Yes::AtLeast(at) | Yes::Below(at) => Some(at),
            Yes::States(_) => None,
        }
    }
}
