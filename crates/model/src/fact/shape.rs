//! What is so of the shape of a key: what may hurt, what tires, and what is good.

use crate::Code;

/// What is so of the shape of a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfShape {
    /// Pupils are asked to touch what may hurt.
    TouchCaution {
        /// The question.
        question: u32,
        /// The kinds with a caution.
        kinds: Vec<String>,
        /// The column that can be asked about first.
        otherwise: Option<String>,
    },
    /// One kind after the other is split off.
    Comb {
        /// The first of the questions.
        question: u32,
        /// How many in a row.
        in_a_row: usize,
    },
    /// One way has more questions than children follow.
    LongPath {
        /// How many questions it has.
        longest: u32,
        /// How many kinds there are.
        kinds: usize,
        /// How many questions even heaps would take.
        even: u32,
    },
    /// A question worth praising.
    GoodQuestion {
        /// The question.
        question: u32,
        /// For how many kinds it is clear.
        kinds: usize,
    },
}

impl OfShape {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::TouchCaution { .. } => Code::TouchCaution,
            Self::Comb { .. } => Code::Comb,
            Self::LongPath { .. } => Code::LongPath,
            Self::GoodQuestion { .. } => Code::GoodQuestion,
        }
    }
}
