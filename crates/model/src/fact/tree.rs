//! What is so of a key as a tree of numbers: from printed numbers to facts.

use crate::{Answer, Code, Step};

/// What is so of the numbers of a key and of where they lead.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfTree {
    /// Several questions have one number.
    NumberTwice {
        /// The number.
        number: u32,
        /// How many questions have it.
        bearers: usize,
        /// What the last of them is probably meant to be.
        meant: Option<u32>,
    },
    /// An answer leads to a number that no question has.
    NumberMissing {
        /// The number.
        to: u32,
        /// The answers that lead there.
        from: Vec<Step>,
        /// The kinds that get lost there.
        lost: Vec<String>,
        /// The question to which no answer leads, where there is one such.
        perhaps: Option<u32>,
    },
    /// The numbers do not run 1, 2, 3 down the page.
    NumbersSkip {
        /// The number that was found.
        number: u32,
        /// The number that was expected.
        expected: u32,
    },
    /// After an answer there is nothing.
    NothingWritten {
        /// The question.
        question: u32,
        /// The answers.
        after: Vec<Answer>,
        /// The kinds that get lost there.
        lost: Vec<String>,
    },
    /// An answer leads back.
    Loop {
        /// The answer.
        from: Step,
        /// The question to which it leads.
        to: u32,
        /// The kinds that get lost there.
        lost: Vec<String>,
    },
    /// No answer leads to a question.
    Unreachable {
        /// The question.
        question: u32,
        /// The kinds that are named below it and nowhere else.
        named_below: Vec<String>,
    },
    /// The number in brackets is not the question before.
    BackWrong {
        /// The question.
        question: u32,
        /// The number in brackets.
        back: u32,
        /// The questions that do lead there.
        from: Vec<u32>,
    },
    /// Several answers lead to one question.
    WaysMeet {
        /// The question.
        question: u32,
        /// The questions that lead there.
        from: Vec<u32>,
    },
    /// Both answers lead to the same place.
    SameBothWays {
        /// The question.
        question: u32,
    },
    /// There are too many ways to follow all of them.
    TooManyWays {
        /// The kinds that were not followed to the end.
        kinds: Vec<String>,
    },
}

impl OfTree {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::NumberTwice { .. } => Code::NumberTwice,
            Self::NumberMissing { .. } => Code::NumberMissing,
            Self::NumbersSkip { .. } => Code::NumbersSkip,
            Self::NothingWritten { .. } => Code::NothingWritten,
            Self::Loop { .. } => Code::Loop,
            Self::Unreachable { .. } => Code::Unreachable,
            Self::BackWrong { .. } => Code::BackWrong,
            Self::WaysMeet { .. } => Code::WaysMeet,
            Self::SameBothWays { .. } => Code::SameBothWays,
            Self::TooManyWays { .. } => Code::TooLarge,
        }
    }
}
