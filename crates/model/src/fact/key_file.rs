//! What is so of a key that was read from a file of ours and speaks of what the table lacks.

use super::NotInTable;
use crate::Code;

/// What the wishes of a key name and the table, or this program, does not have.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StrangeWish {
    /// A column or a kind.
    Named(String),
    /// What a question is to ask for.
    Asked(NotInTable),
    /// An aim.
    Goal(String),
    /// Something early that is neither a pair nor a kind.
    Early,
    /// What is in the hand.
    Hand(String),
    /// A season.
    Season(String),
    /// A wish that has a price.
    Priced(String),
}

/// What is so of a key that was read from a file of ours.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfKeyFile {
    /// Its wishes name what nobody has.
    Wishes {
        /// What they name.
        name: StrangeWish,
    },
    /// More questions were to be kept than can be.
    TooManyKept {
        /// How many can be.
        most: usize,
    },
    /// Its proof speaks of a kind or column that the table does not have in this way.
    Proof {
        /// The name.
        name: String,
    },
}

impl OfKeyFile {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::Wishes { .. } | Self::Proof { .. } => Code::NameUnknown,
            Self::TooManyKept { .. } => Code::TooLarge,
        }
    }
}
