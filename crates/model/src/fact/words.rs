//! What is so of the wording of a question: what people trip over.

use crate::Code;

/// Which text of a question it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhichText {
    /// The question itself.
    Question,
    /// The first of two leads.
    FirstLead,
    /// The second of two leads.
    SecondLead,
}

/// A text that people read at a question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TextOf {
    /// The number of the question.
    pub question: u32,
    /// Which of its texts.
    pub which: WhichText,
    /// The text as it is written.
    pub text: String,
}

/// What people trip over in a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfWords {
    /// A size that nothing measures.
    Bare {
        /// The word.
        word: String,
    },
    /// It compares with what others do not have.
    Compared {
        /// The words.
        word: String,
    },
    /// A word that commits to nothing, or is a matter of taste.
    Vague {
        /// The word.
        word: String,
    },
    /// It cannot be answered with yes or no.
    NotYesNo,
    /// It asks two things at once.
    TwoAtOnce,
    /// It offers two choices.
    Choice,
    /// It has a negative in it.
    Negative {
        /// The word.
        word: String,
    },
    /// It names a kind.
    NamesKind {
        /// The name.
        kind: String,
    },
    /// It has too many words.
    TooManyWords {
        /// How many.
        words: usize,
        /// How many are enough.
        most: usize,
    },
    /// It has a number without a unit.
    NoUnit {
        /// The number as it is written.
        number: String,
        /// The sign of the unit.
        sign: &'static str,
    },
}

impl OfWords {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::Bare { .. } | Self::Compared { .. } => Code::BareComparative,
            Self::Vague { .. } => Code::VagueWord,
            Self::NotYesNo | Self::TwoAtOnce | Self::Choice => Code::NotYesNo,
            Self::Negative { .. } => Code::Negative,
            Self::NamesKind { .. } => Code::NameInQuestion,
            Self::TooManyWords { .. } => Code::TooManyWords,
            Self::NoUnit { .. } => Code::NoUnit,
        }
    }
}
