//! What is so of the numbers that are claimed of a key, and of the proof that comes with it.

use crate::{Code, Goal, Share};

/// A number that was claimed, and what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Differs<T> {
    /// What it is.
    pub is: T,
    /// What was claimed.
    pub said: T,
}

impl<T: PartialEq> Differs<T> {
    /// Where the two are not the same.
    pub fn of(is: T, said: T) -> Option<Self> {
        (is != said).then_some(Self { is, said })
    }
}

/// What is wrong with what was claimed of a goal.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum GoalWrong {
    /// It could not be counted again.
    NotCounted(Goal),
    /// It comes to another number.
    Reaches(Goal, Differs<Share>),
    /// All finds together meet another number of new words.
    NewWords(Differs<Share>),
    /// Nothing was said of it.
    NothingSaid(Goal),
}

/// What a key reaches of a goal, or of a wish that something is over early.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reaches {
    /// A goal comes to this.
    Goal(Goal, Share),
    /// All finds together meet so many new words.
    AllNewWords(Share),
    /// Two kinds are apart within so many questions.
    Apart([String; 2], u32),
    /// A kind is out within so many questions.
    Out(String, u32),
}

/// Why a proof does not hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ProofFault {
    /// It speaks of kinds, values or numbers that do not fit the table.
    DoesNotFit,
    /// It says that these must be separated, but no question can do that.
    CannotSeparate {
        /// The kinds.
        kinds: Vec<String>,
    },
    /// It says too much of what it takes to separate these.
    SaysTooMuch {
        /// The kinds.
        kinds: Vec<String>,
        /// The column that shows it.
        about: String,
    },
    /// It shows less than what is claimed.
    ShowsLess {
        /// What is claimed.
        claimed: Reaches,
        /// The least that it shows.
        least: Share,
    },
}

/// What is so of a claim.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfClaim {
    /// The effort cannot be added up again.
    EffortNotAdded,
    /// The key takes something else than was claimed.
    CostWrong {
        /// Its effort.
        effort: Option<Differs<Share>>,
        /// The questions that a find takes on average.
        mean_questions: Option<Differs<Share>>,
        /// The questions on the longest path.
        longest: Option<Differs<u32>>,
    },
    /// The key takes less than no key is said to take.
    BoundAboveKey {
        /// What no key is said to be below.
        bound: Share,
        /// What this one takes.
        takes: Share,
    },
    /// The key is said to be proved best and does not reach its bound.
    NotAtBound {
        /// What the key takes.
        takes: Share,
        /// What is proved.
        bound: Share,
    },
    /// Some key takes less than no key is said to take.
    BoundAboveSome {
        /// What no key is said to be below.
        bound: Share,
        /// What one takes.
        least: Share,
    },
    /// Something else than was claimed is reached of goals.
    GoalWrong(Vec<GoalWrong>),
    /// The proof that comes with the key does not hold.
    ProofFails(ProofFault),
    /// There is a better key under these wishes.
    BetterKey {
        /// What it reaches.
        best: Reaches,
        /// What was claimed.
        said: Share,
    },
    /// No key reaches what is claimed of this one.
    NoKeyReaches {
        /// What the best reaches.
        best: Reaches,
        /// What was claimed.
        said: Share,
    },
}

impl OfClaim {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::EffortNotAdded | Self::CostWrong { .. } => Code::CostWrong,
            Self::GoalWrong(_) => Code::GoalWrong,
            Self::BoundAboveKey { .. }
            | Self::NotAtBound { .. }
            | Self::BoundAboveSome { .. }
            | Self::ProofFails(_)
            | Self::BetterKey { .. }
            | Self::NoKeyReaches { .. } => Code::BoundWrong,
        }
    }
}
