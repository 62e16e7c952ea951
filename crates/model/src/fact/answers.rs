//! What is so of kinds at a question that they cannot answer, or not surely.

use super::RangeOf;
use crate::{Answer, Code, Written};

/// What is so of the kinds at one question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfAnswers {
    /// Kinds that fit both leads.
    BothLeads {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// The kinds.
        kinds: Vec<String>,
    },
    /// Kinds that fit neither lead.
    NeitherLead {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// The kinds.
        kinds: Vec<String>,
    },
    /// Kinds that do not have what is asked about.
    DoesNotHave {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// The kinds.
        kinds: Vec<String>,
    },
    /// Kinds that may not have what is asked about.
    MayNotHave {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// The kinds.
        kinds: Vec<String>,
        /// The column on which it depends.
        governor: Option<String>,
    },
    /// Kinds on which nobody has looked.
    NobodyRecorded {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// The kinds.
        kinds: Vec<String>,
        /// The kinds that are lost by an answer.
        lost: Vec<(String, Answer)>,
    },
    /// A number inside what was measured on kinds.
    ThresholdInside {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// Its number.
        at: Written,
        /// What was measured.
        ranges: Vec<RangeOf>,
    },
    /// A number nearer than the safety margin to what was measured.
    ThresholdNear {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// Its number.
        at: Written,
        /// What was measured.
        ranges: Vec<RangeOf>,
        /// The safety margin.
        margin: Written,
        /// Whether a smaller margin may do, since the lengths are small beside it.
        smaller_may_do: bool,
    },
    /// A kind that is split off by what was looked at only once.
    ThinEvidence {
        /// The question.
        question: u32,
        /// The column that it is about.
        about: String,
        /// The kind.
        kind: String,
    },
}

impl OfAnswers {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::BothLeads { .. } => Code::BothLeads,
            Self::NeitherLead { .. } => Code::NeitherLead,
            Self::DoesNotHave { .. } => Code::DoesNotHave,
            Self::MayNotHave { .. } => Code::MayNotHave,
            Self::NobodyRecorded { .. } => Code::NobodyRecorded,
            Self::ThresholdInside { .. } => Code::ThresholdInside,
            Self::ThresholdNear { .. } => Code::ThresholdNear,
            Self::ThinEvidence { .. } => Code::ThinEvidence,
        }
    }
}
