//! A key: numbered couplets that lead to kinds. It may be broken; a person may have drawn it.
//!
//! Couplets refer to each other by the numbers that stand on paper, so that a key with a
//! missing or repeated number can be held as it is and shown to its author.

use std::collections::BTreeMap;

use crate::{Ask, TaxonIx};

/// A key as it stands on paper. The first couplet in the list is where one begins.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Key {
    /// The couplets in the order in which they are printed.
    pub couplets: Vec<Couplet>,
}

/// By the number of a question: what else parts the kinds that are left there in the same way,
/// and whether its yes is the question's no.
pub type SecondLooks = BTreeMap<u32, Vec<(Ask, bool)>>;

/// One question with its two ways on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Couplet {
    /// The number printed before it.
    pub number: u32,
    /// The number printed in brackets behind it: where one came from.
    pub back: Option<u32>,
    /// The words people read.
    pub wording: Wording,
    /// What it asks of the matrix; None: nobody has linked it yet.
    pub ask: Option<Ask>,
    /// Where a yes (or the first lead) leads.
    pub yes: Destination,
    /// Where a no (or the second lead) leads.
    pub no: Destination,
    /// Whether a person fixed this question before the key was built.
    pub kept: bool,
    /// The line of the text it was read from, counted from 1.
    pub line: Option<usize>,
}

/// The words of a couplet. Empty text: not worded yet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Wording {
    /// A question with yes and no.
    Question(String),
    /// Two contrasting statements, the first for the yes side.
    Leads {
        /// The first lead.
        yes: String,
        /// The second lead.
        no: String,
    },
}

impl Wording {
    /// The question, or the first lead: what names the couplet in a sentence.
    pub fn first(&self) -> &str {
        match self {
            Self::Question(text) => text,
            Self::Leads { yes, .. } => yes,
        }
    }
}

/// Where an answer leads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Destination {
    /// On to the couplet with this number (which may not exist).
    Couplet(u32),
    /// To an end.
    End(End),
    /// Nothing was written there.
    Missing,
}

/// An end of a key and what is written at it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct End {
    /// The kinds named, in the order of the matrix.
    pub taxa: Vec<TaxonIx>,
    /// Names that stand there and are none of the matrix's, as written.
    pub unrecognised: Vec<String>,
}

impl End {
    /// An end that names these kinds.
    pub fn of(taxa: impl IntoIterator<Item = TaxonIx>) -> Self {
        Self { taxa: taxa.into_iter().collect(), unrecognised: Vec::new() }
    }
}
