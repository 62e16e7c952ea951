//! What the second opinion says of a key: findings, ways, and how much could be looked at.

use std::collections::BTreeSet;

use spinney_model::{
    Answer, CharacterIx, Code, Finding, Holds, LeftTogether, Severity, Share, TaxonIx, Walk,
};

/// How much to say, and to whom.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Settings {
    /// How many pairs that hang on one hard or narrow character are named, the worst first.
    pub pairs_named: usize,
    /// Pupils wrote the key: good questions are praised.
    pub pupils_wrote_it: bool,
    /// How many nodes are looked at of a claim that carries no certificate, before the table is
    /// called too large for that; 20,000 take some tenths of a second.
    pub replay_nodes: usize,
    /// Second places that are meant: the question, the wrong answer, and the kind that is looked
    /// for there as well. Others are named as something to be looked at.
    pub second_places: BTreeSet<(u32, Answer, TaxonIx)>,
    /// Characters that must not be asked about, besides those that the wishes of a claim leave
    /// out: nobody is told to ask about them.
    pub left_out: BTreeSet<CharacterIx>,
    /// Columns that were made from sorting by hand: a question about one is in people's own
    /// words, and what they mean was not checked against the table. It is never praised.
    pub by_hand: BTreeSet<CharacterIx>,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            pairs_named: 3,
            pupils_wrote_it: false,
            replay_nodes: 20_000,
            second_places: BTreeSet::new(),
            left_out: BTreeSet::new(),
            by_hand: BTreeSet::new(),
        }
    }
}

/// The effort of a key as the second opinion added it up, section 7 of `docs/KEY.md`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Effort {
    /// The effort of the whole key.
    pub total: Share,
    /// Questions a find takes on average.
    pub mean_questions: Share,
    /// The most questions on any path.
    pub longest: u32,
}

/// How a second opinion went over a claim.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Road {
    /// It followed the certificate that the claim carries, line by line (`docs/KEY.md` 20).
    Certificate {
        /// How many lines it has.
        lines: usize,
    },
    /// It looked at every key, since no certificate is carried.
    EveryKey {
        /// How many nodes were looked at.
        nodes: usize,
    },
}

/// What came of a second opinion on what is claimed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Proof {
    /// Nothing is claimed, or nothing that a second opinion can go over.
    #[default]
    NothingClaimed,
    /// It is so: of a proved key, that none is better under its wishes; of a search that
    /// stopped, that its bound is not too high.
    Confirmed(Road),
    /// No certificate is carried, and the table is too large to look at every key.
    NotCarried {
        /// How many nodes were looked at before that was seen.
        nodes: usize,
    },
    /// Something contradicts the claim, or its proof does not hold; the findings say what.
    Contradicted(Road),
}

/// The second opinion on a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Report {
    /// What is so, the worst first; then in the order of the questions.
    pub findings: Vec<Finding>,
    /// Every way of every kind, in the order of the matrix, yes before no. Ways that met with
    /// the same values still to be asked about are one.
    pub walks: Vec<Walk>,
    /// Whether ways were left out of `walks` because there were too many to write down.
    pub walks_left_out: bool,
    /// Questions that are linked and were put to the table.
    pub checked: usize,
    /// Questions in the key.
    pub questions: usize,
    /// The effort, as section 8 says it; None where it cannot be added up: a question is not
    /// linked, asks a kind for what it does not have, or cuts through a range.
    pub effort: Option<Effort>,
    /// Kinds that vary in too many ways to be followed to the end of all of them.
    pub unfinished: BTreeSet<TaxonIx>,
    /// Kinds that the key does not tell apart, in the order of the questions: no set is part of
    /// another. Screens, sheets and the command line name them before they say how good the key
    /// is.
    pub left_together: Vec<LeftTogether>,
    /// Whether what is claimed is so.
    pub proof: Proof,
}

impl Report {
    /// Whether somebody following the numbers is lost: a kind never comes out, a number leads
    /// nowhere or stands twice, nothing is written, or one goes round in a loop. Such a key
    /// prints as a draft.
    pub fn broken_as_a_tree(&self) -> bool {
        self.findings.iter().any(|finding| {
            matches!(
                finding.code,
                Code::NumberTwice
                    | Code::NumberMissing
                    | Code::NothingWritten
                    | Code::Loop
                    | Code::Unreachable
                    | Code::NeverComesOut
            )
        })
    }

    /// Whether anything must be mended.
    pub fn says_mend_this(&self) -> bool {
        self.findings.iter().any(|finding| finding.severity == Severity::MendThis)
    }

    /// Whether the key works: all of it was checked, nothing must be mended, and every form of
    /// every kind comes out, also where nobody has recorded what it has.
    pub fn works(&self) -> bool {
        !self.says_mend_this()
            && self.checked == self.questions
            && self.unfinished.is_empty()
            && self.walks.iter().all(|walk| walk.arrived)
    }

    /// The same in one word.
    pub fn holds(&self) -> Holds {
        match () {
            () if self.broken_as_a_tree() => Holds::Broken,
            () if self.works() => Holds::Whole,
            () if self.says_mend_this() || self.walks.iter().any(|walk| !walk.arrived) => {
                Holds::ToMend
            }
            () => Holds::Unchecked,
        }
    }
}
