//! What `build` claims of a key it found, for `check` to confirm and for people to read.

use crate::{Ask, Certificate, CharacterIx, Early, Goal, Share, TaxonIx, Wish, Wishes};

/// What is claimed of a key. Effort is V of `docs/KEY.md`, over all kinds with their weights.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Claim {
    /// The effort of the whole key: every kind's weight times the cost of its questions.
    pub total: Share,
    /// No key with the same wishes takes less than this.
    pub lower_bound: Share,
    /// Questions a find takes on average, whatever they cost.
    pub mean_questions: Share,
    /// The most questions on any path.
    pub longest: u32,
    /// Why the search ended before it was sure; None: the key is proved best.
    pub stopped: Option<Stopped>,
    /// How many heaps were taken apart, as the budget counts them: one of many kinds and questions
    /// counts for several, and one that was taken apart again counts again.
    pub heaps: u64,
    /// What the wishes cost, where there were any.
    pub kept: Option<KeptPrice>,
    /// The wishes that the key fulfils, and under which it is best.
    pub wishes: Wishes,
    /// What the key reaches of every goal that was asked for, in their order.
    pub reached: Vec<Reached>,
    /// What each wish costs alone: the rest of the wishes without it.
    pub prices: Vec<Price>,
    /// How early the early wishes are over: questions, in the order of the wishes.
    pub within: Vec<u32>,
    /// The numbers of the questions answered by touch at which a kind with a caution is possible.
    pub touching: Vec<u32>,
    /// The proof that none is better (`docs/KEY.md` 20); None: it is not carried.
    pub certificate: Option<Certificate>,
}

/// What a key reaches of a goal.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reached {
    /// The goal.
    pub goal: Goal,
    /// Effort: as [`Claim::total`]. Longest path: questions. Right ends: the sum of weight ×
    /// −ln(reliability), in millionths, each rounded. Even teaching: the most new words on a
    /// question. Words: how many. Rulers: weight × questions that take one.
    pub value: Share,
    /// Even teaching alone: weight × new words, over all finds.
    pub then: Option<Share>,
}

/// What one wish costs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Price {
    /// The wish.
    pub wish: Wish,
    /// Effort with all wishes less effort without this one. Below zero where the wish keeps
    /// more kinds together.
    pub extra: Share,
    /// Whether both are proved.
    pub exact: bool,
    /// Pairs that stay together because of it.
    pub together: Vec<(TaxonIx, TaxonIx)>,
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
    /// Nothing more may be held in memory.
    Memory,
    /// The shares of this table need larger numbers than exact arithmetic has here.
    Overflow,
}

/// What the wishes cost, all together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptPrice {
    /// The effort of the best key of the same table without any wish of a person's; the least only if
    /// `without_wishes_optimal`.
    pub without_wishes: Share,
    /// Whether no key without wishes takes less.
    pub without_wishes_optimal: bool,
    /// Kept questions that could not be asked where they were wanted.
    pub refused: Vec<Ask>,
}

/// A wish that could not be fulfilled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// The wish.
    pub wanted: Wanted,
    /// Why not.
    pub why: WhyNot,
}

/// What was wanted and could not be had.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// A question at its place.
    Ask(Ask),
    /// A character among the first.
    Order(CharacterIx),
    /// Something to be over early.
    Early(Early),
    /// A goal together with those before it.
    Goal(Goal),
}

/// Why a wish cannot be fulfilled.
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
    /// Its character must not be asked about, or cannot be seen on what is in the hand.
    LeftOut,
    /// Nothing parts these kinds.
    NeverParted,
    /// Exact numbers for so many goals together would be too large for this table.
    TooLarge,
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
    /// Questions about other characters that part the very same kinds in the same way, yes for
    /// yes; or in the opposite way, where the flag is set: the pupil's second look.
    pub also: Vec<(Ask, bool)>,
    /// Every other question that could stand here, the cheapest first.
    pub alternatives: Vec<Alternative>,
    /// Characters that cannot be asked about here, each with a kind that stands in the way.
    pub blocked: Vec<(CharacterIx, TaxonIx)>,
    /// What is not asked here because a kind in the heap may hurt, where that would take less.
    pub not_by_touch: Option<NotByTouch>,
}

/// A question that would take less, but sends pupils to touch what may hurt.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NotByTouch {
    /// The best question answered by touch.
    pub instead: Alternative,
    /// Kinds with a caution that may be in the hand.
    pub kinds: Vec<TaxonIx>,
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
