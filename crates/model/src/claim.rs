//! What `build` claims of a key it found, for `check` to confirm and for people to read.

use crate::{Ask, CharacterIx, Share, TaxonIx};

/// What is claimed of a key. Effort is V of `docs/KEY.md`, over all kinds with their weights.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Claim {
    /// The effort of the whole key: every kind's weight times the cost of its questions.
    pub total: Share,
    /// No key with the same wishes takes less than this.
    pub lower_bound: Share,
    /// Questions a find takes on average, whatever they cost.
    pub mean_steps: Share,
    /// The most questions on any path.
    pub longest: u32,
    /// Why the search ended before it was sure; None: the key is proved best.
    pub stopped: Option<Stopped>,
    /// How many heaps were taken apart, one that was taken apart again counted again.
    pub heaps: u64,
    /// What keeping a person's questions costs, where there were any.
    pub kept: Option<KeptPrice>,
}

impl Claim {
    /// Whether the key is proved best under its wishes.
    pub fn optimal(&self) -> bool {
        self.stopped.is_none()
    }
}

/// Why a search ended before it was sure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stopped {
    /// The budget of heaps was used up.
    Budget,
    /// The shares of this table need larger numbers than exact arithmetic has here.
    Overflow,
}

/// What keeping a person's questions costs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptPrice {
    /// Effort of the best key without the wish; exact only if `free_optimal`.
    pub free_total: Share,
    /// Whether `free_total` is proved.
    pub free_optimal: bool,
    /// Kept questions that could not be asked where they were wanted.
    pub refused: Vec<Ask>,
}

/// A question that could not be asked where a person wanted it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// The question.
    pub ask: Ask,
    /// Why not.
    pub why: WhyNot,
}

/// Why a question cannot be asked of a heap.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyNot {
    /// It does not, or may not, apply to this kind, or cuts through its range.
    Blocked(TaxonIx),
    /// All kinds that are left answer it alike.
    AllAlike,
    /// It asks a character for something that it cannot have.
    NoSuchState,
    /// The question before it was refused.
    AfterRefused,
}

/// Why a couplet asks what it asks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reasons {
    /// The number of the couplet.
    pub couplet: u32,
    /// How many kinds are still in the heap.
    pub kinds: usize,
    /// How many kinds go only to yes, only to no, and to both.
    pub heaps: (usize, usize, usize),
    /// Every other question that could stand here, the cheapest first.
    pub alternatives: Vec<Alternative>,
    /// Characters that cannot be asked about here, each with a kind that stands in the way.
    pub blocked: Vec<(CharacterIx, TaxonIx)>,
}

/// Another question that could stand at a couplet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Alternative {
    /// The question.
    pub ask: Ask,
    /// How many kinds go only to yes, only to no, and to both.
    pub heaps: (usize, usize, usize),
    /// How much more effort the whole key takes with it, the rest completed best.
    pub extra: Share,
    /// Whether `extra` is exact; otherwise it is at least that.
    pub exact: bool,
}
