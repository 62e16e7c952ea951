//! What is so of wishes that could not be fulfilled, and of what stays together because of them.

use super::EarlyOf;
use crate::{Code, Goal};

/// What somebody wished for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WishedFor {
    /// A question, in its words.
    Question(String),
    /// A column was to come among the first.
    Order(String),
    /// Something was to be over early.
    Early(EarlyOf),
    /// An aim.
    Goal(Goal),
}

/// Why a wish could not be fulfilled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyUnmet {
    /// A kind is still there and has no clear answer.
    Blocked {
        /// The kind.
        kind: String,
        /// The column.
        about: String,
    },
    /// All kinds that are left answer alike.
    AllAlike,
    /// A column cannot be asked for that.
    NoSuchState {
        /// The column.
        about: String,
    },
    /// The question before it could not be kept.
    AfterRefused,
    /// A column must not be asked about, or is not seen.
    LeftOut {
        /// The column.
        about: String,
    },
    /// Nothing that may be asked tells them apart.
    NeverParted,
    /// The numbers would be too large.
    TooLarge,
}

/// What is so of wishes that could not be fulfilled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfUnmet {
    /// A wish could not be fulfilled.
    Refused {
        /// What was wished for.
        wish: WishedFor,
        /// Why not.
        why: WhyUnmet,
    },
    /// Kinds are left together because of what must not or cannot be asked.
    LeftTogether {
        /// The pairs.
        pairs: Vec<[String; 2]>,
    },
}

impl OfUnmet {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::Refused { wish: WishedFor::Question(_), .. } => Code::KeptRefused,
            Self::Refused {
                wish: WishedFor::Order(_) | WishedFor::Early(_) | WishedFor::Goal(_),
                ..
            } => Code::WishRefused,
            Self::LeftTogether { .. } => Code::LeftTogether,
        }
    }
}
