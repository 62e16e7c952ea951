//! What is so of a question that could not be linked to the table, or not surely.

use crate::Code;

/// What could be asked of a column that a question names.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CanAsk {
    /// Only whether it is so.
    Whether,
    /// One of its states.
    States(Vec<String>),
    /// A count or more.
    Count,
    /// A number of a unit or more.
    Measure(&'static str),
}

/// What is so of a question that could not be linked to the table, or not surely.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfLink {
    /// It compares two lengths, and no column does.
    NoRatio {
        /// The question.
        question: u32,
        /// The column of the one.
        one: String,
        /// The column of the other.
        other: String,
    },
    /// It speaks of a part that no column is about.
    SpeaksOf {
        /// The question.
        question: u32,
        /// The part.
        word: String,
    },
    /// It asks what, which or how.
    NotYesOrNo {
        /// The question.
        question: u32,
    },
    /// It asks two things.
    TwoThings {
        /// The question.
        question: u32,
    },
    /// It offers two things that exclude each other.
    TwoChoices {
        /// The question.
        question: u32,
    },
    /// It asks for one of two numbers.
    OneOfTwoNumbers {
        /// The question.
        question: u32,
        /// The column.
        about: String,
    },
    /// It asks for exactly one number, in the middle of a column.
    ExactlyOneNumber {
        /// The question.
        question: u32,
        /// The column.
        about: String,
    },
    /// There are several numbers in it.
    SeveralNumbers {
        /// The question.
        question: u32,
    },
    /// It asks for everything that a column can be.
    EveryState {
        /// The question.
        question: u32,
        /// The column.
        about: String,
    },
    /// It says a size without a measure.
    NoMeasure {
        /// The question.
        question: u32,
        /// The word.
        word: String,
        /// A column that is measured, with its unit.
        example: Option<(String, &'static str)>,
    },
    /// It may mean one of these.
    MayAsk {
        /// The question.
        question: u32,
        /// What it may mean, as a links file has it, the likeliest first.
        meanings: Vec<String>,
        /// Whether it says "not" in a way that may mean the first.
        denied: bool,
        /// The unit that its number lacks; None: that is not what is missing.
        unit: Option<&'static str>,
        /// The line of a links file for the first.
        line: String,
    },
    /// It asks for states of two columns.
    AsksBoth {
        /// The question.
        question: u32,
        /// The one, as a links file has it.
        first: String,
        /// The other.
        second: String,
        /// The line of a links file for the one.
        line: String,
    },
    /// It has no words.
    NoWords {
        /// The question.
        question: u32,
    },
    /// It asks for a kind by name.
    NamesAKind {
        /// The question.
        question: u32,
        /// The kind.
        kind: String,
        /// The name, as it stands in the question.
        name: String,
    },
    /// It names a column, but nothing that the column has.
    NothingThere {
        /// The question.
        question: u32,
        /// The column.
        about: String,
        /// What could be asked of it.
        can: CanAsk,
    },
    /// It speaks of nothing that the table has.
    Nothing {
        /// The question.
        question: u32,
        /// A column of the table, as an example; None: it has none.
        example: Option<String>,
    },
    /// It asks for something that the table does not have, as a file of ours says.
    NotInTable {
        /// The question.
        question: u32,
        /// What it asks for.
        what: NotInTable,
    },
}

/// Something that a file of ours asks for and a table does not have.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotInTable {
    /// A column or a state of this name.
    Named(String),
    /// Something of a column that it cannot be asked.
    Of(String),
}

impl OfLink {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::MayAsk { unit: Some(_), .. } => Code::NoUnit,
            Self::MayAsk { unit: None, .. } | Self::AsksBoth { .. } => Code::LinkNotSure,
            Self::NoRatio { .. }
            | Self::SpeaksOf { .. }
            | Self::NotYesOrNo { .. }
            | Self::TwoThings { .. }
            | Self::TwoChoices { .. }
            | Self::OneOfTwoNumbers { .. }
            | Self::ExactlyOneNumber { .. }
            | Self::SeveralNumbers { .. }
            | Self::EveryState { .. }
            | Self::NoMeasure { .. }
            | Self::NoWords { .. }
            | Self::NamesAKind { .. }
            | Self::NothingThere { .. }
            | Self::Nothing { .. }
            | Self::NotInTable { .. } => Code::NotLinked,
        }
    }
}
