//! What is so of a key that was read, in words or from a file: lines, leads and names.

use crate::{Answer, Code};

/// What a question has more of than two ways on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OneTooMany {
    /// A third lead.
    ThirdLead,
    /// The same answer twice.
    Twice(Answer),
}

/// What is so of a key that was read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfKeyRead {
    /// A text without a numbered question.
    NoNumberedQuestion,
    /// Only so many questions were read.
    OnlyFirstQuestions {
        /// How many.
        read: usize,
    },
    /// Only so many lines were read.
    OnlyFirstLines {
        /// How many.
        read: usize,
    },
    /// A line of which only the beginning was read.
    LineTooLong {
        /// How many letters of it were read.
        letters: usize,
    },
    /// A line that is neither a question, a lead nor an answer.
    LineNeither {
        /// The line, counted from 1.
        line: usize,
    },
    /// A question with one way on too many.
    LeadTooMany {
        /// The question.
        question: u32,
        /// What it has too many of.
        what: OneTooMany,
        /// The line, counted from 1.
        line: usize,
    },
    /// An answer that leads nobody can tell where.
    LeadsNobodyKnowsWhere {
        /// The question.
        question: u32,
        /// What is written there.
        written: String,
    },
    /// A name that the table has in another spelling.
    NameNotSure {
        /// The question.
        question: u32,
        /// The name as it is written.
        written: String,
        /// The names of the table that are near to it.
        near: Vec<String>,
    },
    /// A name that the table does not have.
    NameUnknown {
        /// The question.
        question: u32,
        /// The name as it is written.
        written: String,
    },
}

impl OfKeyRead {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::NoNumberedQuestion
            | Self::LineNeither { .. }
            | Self::LeadsNobodyKnowsWhere { .. } => Code::LineNotUnderstood,
            Self::OnlyFirstQuestions { .. }
            | Self::OnlyFirstLines { .. }
            | Self::LineTooLong { .. } => Code::TooLarge,
            Self::LeadTooMany { .. } => Code::LeadTooMany,
            Self::NameNotSure { .. } => Code::NameNotSure,
            Self::NameUnknown { .. } => Code::NameUnknown,
        }
    }
}
