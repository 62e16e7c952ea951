//! What is so of wishes that a key was said to keep and does not.

use super::Form;
use crate::{Season, SeenOn, Step};

/// What a question is about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhatIsAsked {
    /// What a column has.
    Of {
        /// The column.
        about: String,
        /// What it asks for.
        form: Form,
    },
    /// Something that the table does not have.
    NotOfTable,
}

/// Why nothing was to be asked about a column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyLeftOut {
    /// It was never to be asked about.
    Never,
    /// It cannot be seen on what is in the hand.
    InTheHand(SeenOn),
    /// It cannot be seen in the season.
    InSeason(Season),
}

/// What was to be over early.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum EarlyOf {
    /// Two kinds were to be apart.
    Apart([String; 2]),
    /// A kind was to be out.
    Out(String),
}

/// What is so of a wish that a key does not keep.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfWishes {
    /// A question that was to be kept is not asked, and nothing else is asked there.
    KeptNotAsked {
        /// The answer that leads there; None: it was to be the first.
        after: Option<Step>,
        /// What was to be asked.
        wanted: WhatIsAsked,
    },
    /// Something else is asked where a question was to be kept.
    KeptOther {
        /// The answer that leads there; None: it was to be the first.
        after: Option<Step>,
        /// What was to be asked.
        wanted: WhatIsAsked,
        /// The question that is asked there.
        question: u32,
        /// What it is about; None: it is not linked to the table.
        asks: Option<WhatIsAsked>,
    },
    /// A question is about what was not to be asked.
    NotToBeAsked {
        /// The question.
        question: u32,
        /// The column.
        about: String,
        /// Why not.
        why: WhyLeftOut,
    },
    /// People are sent to touch what may hurt although something else separates.
    SentToTouch {
        /// The question.
        question: u32,
        /// What may be in the hand.
        kinds: Vec<String>,
        /// The column that can be asked about.
        otherwise: String,
    },
    /// A question is said to send people to touch what may hurt, and does not.
    TouchNotSo {
        /// The question.
        question: u32,
    },
    /// A question sends people to touch what may hurt, and that is not said.
    TouchNotSaid {
        /// The question.
        question: u32,
    },
    /// Something that was to come first could be asked.
    OutOfOrder {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// The column that was to come first.
        first: String,
    },
    /// It is not said within how many questions a wish is over.
    EarlyNotSaid {
        /// The wish.
        wish: EarlyOf,
    },
    /// A wish is over later than was claimed.
    Late {
        /// The wish.
        wish: EarlyOf,
        /// Within how many questions it was to be over.
        within: u32,
        /// How many it takes.
        takes: u32,
        /// The last of them.
        up_to: Option<u32>,
    },
}
