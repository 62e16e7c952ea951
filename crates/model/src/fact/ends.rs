//! What is so of where kinds come out: from walks through a key to facts.

use super::{CellOf, Form};
use crate::{Answer, Code, Step};

/// A name at an end.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum NameAtEnd {
    /// A kind of the table.
    Kind(String),
    /// A name that the table does not have.
    Strange(String),
}

/// A kind that leaves the side on which its name is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Astray {
    /// The name of the kind.
    pub kind: String,
    /// What it answers.
    pub answer: Answer,
    /// The names at each end where it comes out; empty: it never comes out from there.
    pub reads: Vec<Vec<NameAtEnd>>,
}

/// A form of a kind that leaves the side on which the kind's name is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FormAstray {
    /// The name of the kind.
    pub kind: String,
    /// The form.
    pub form: Form,
    /// The names at each end where it comes out; empty: it never comes out from there.
    pub reads: Vec<Vec<NameAtEnd>>,
}

/// What is so of where kinds come out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfEnds {
    /// A kind that no end names.
    NeverComesOut {
        /// The name of the kind.
        kind: String,
        /// The names at each end where it comes out.
        reads: Vec<Vec<NameAtEnd>>,
        /// Whether it meets linked questions only.
        all_linked: bool,
    },
    /// A key without a question, where one could be asked.
    NoQuestions {
        /// The column to ask about first.
        about: String,
    },
    /// Kinds that come out under another name.
    WrongPlace {
        /// The question at which they go astray.
        question: u32,
        /// The column that it is about.
        about: String,
        /// The kinds.
        astray: Vec<Astray>,
    },
    /// Forms of kinds that come out under another name.
    VariesUsedAsFixed {
        /// The question at which they go astray.
        question: u32,
        /// The column that it is about.
        about: String,
        /// What they answer.
        answer: Answer,
        /// The forms.
        forms: Vec<FormAstray>,
    },
    /// A kind that is named where only a wrong answer leads.
    SecondPlace {
        /// The name of the kind.
        kind: String,
        /// The answer to which its name is.
        end: Step,
        /// The wrong answer.
        wrong: Step,
    },
    /// An end at which no kind comes out.
    EndUnreached {
        /// The answer that leads there.
        end: Step,
        /// The names at it.
        names: Vec<NameAtEnd>,
        /// Whether only one kind gets to the question.
        only_one: bool,
    },
    /// An end at which others come out, and only because nobody has looked.
    EndOnlyGuessed {
        /// The answer that leads there.
        end: Step,
        /// The names at it.
        names: Vec<NameAtEnd>,
        /// Who comes out there.
        kinds: Vec<String>,
        /// The cells at which nobody has looked.
        cells: Vec<CellOf>,
    },
    /// Every kind gives the same answer.
    PartsNothing {
        /// The question.
        question: u32,
        /// The answer.
        answer: Answer,
        /// The kinds.
        kinds: Vec<String>,
    },
    /// An end names kinds that never get there.
    NamedTooOften {
        /// The answer that leads there.
        end: Step,
        /// The kinds.
        kinds: Vec<String>,
    },
    /// An end names kinds that one more question would separate.
    CouldBeParted {
        /// The answer that leads there.
        end: Step,
        /// The kinds.
        kinds: Vec<String>,
        /// The column to ask about.
        about: String,
    },
}

impl OfEnds {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::NeverComesOut { .. } | Self::NoQuestions { .. } => Code::NeverComesOut,
            Self::WrongPlace { .. } => Code::WrongPlace,
            Self::VariesUsedAsFixed { .. } => Code::VariesUsedAsFixed,
            Self::SecondPlace { .. } => Code::SecondPlace,
            Self::EndUnreached { .. } | Self::EndOnlyGuessed { .. } => Code::EndUnreached,
            Self::PartsNothing { .. } => Code::PartsNothing,
            Self::NamedTooOften { .. } | Self::CouldBeParted { .. } => Code::CouldBeParted,
        }
    }
}
