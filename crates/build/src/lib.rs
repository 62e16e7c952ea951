//! Here is a matrix: what should I ask first? The key of least effort, and the proof.
//!
//! The definition is `docs/KEY.md`. In the order of reading:
//! * `cost` makes shares, weights and difficulties whole numbers;
//! * `split` lists every question that a table allows;
//! * `state_space` lays cells out as masks, `heap` is a node of the key: which kinds, with which
//!   values left;
//! * `bound` says what a heap takes at the very least;
//! * `candidates` is what may be asked of a heap, `exact` refines bounds from both sides until they
//!   meet, or until the budget is used up;
//! * `goals` packs what "best" means into one number, `limits` carries what must be over early,
//!   `goals_in_order` settles one after the other (`possible`, `vocabulary`), `prices` says what each
//!   wish costs;
//! * `certificate` writes the proof down, so that it can be followed without a search;
//! * `read_off` reads the key off, ties broken as the definition says; `kept_questions` puts a person's own
//!   questions on top; `explain` says what the alternatives cost;
//! * `forgiving` gives doubtful kinds second places, so that the most finds come out right.
//!
//! It never reads a wording or a picture, has no clock, and gives the same key everywhere.

mod best_keys;
mod bound;
mod candidates;
mod certificate;
mod cost;
mod exact;
mod explain;
mod forgiving;
mod goals;
mod goals_in_order;
mod heap;
mod in_full;
mod kept_questions;
mod large;
mod limits;
mod memory_budget;
mod possible;
mod prices;
mod read_off;
mod revise;
mod set;
mod split;
mod state_space;
mod vocabulary;

use std::collections::BTreeMap;

use spinney_model::{
    Ask, BestKeys, Claim, Key, Matrix, Reasons, Refusal, Share, Stopped, Wishes,
};

pub use crate::forgiving::{MOST_SECOND_PLACES, forgive};
pub use crate::memory_budget::{USUAL_MEMORY, memory_wanted};
pub use crate::revise::{Revised, Revising, revise};

use crate::goals::Sum;
use crate::goals_in_order::GoalsInOrder;
use crate::prices::Prices;

/// How much work a search may do. Counted in heaps taken apart (a heap of many kinds and
/// questions counts for several), never in seconds, so that every machine stops at the same
/// place. Settling ties afterwards may take a quarter more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Budget {
    /// Heaps that may be taken apart.
    pub heaps: u64,
}

impl Default for Budget {
    /// Used up after 1.5 to 2 s and 24 MiB on skewed tables of 60 kinds × 24 characters that
    /// vary, on the machine of `docs/measurements.md`.
    fn default() -> Self {
        Self { heaps: 60_000 }
    }
}

/// A key and what is claimed of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Built {
    /// The key, without words.
    pub key: Key,
    /// Its effort, the bound, and whether they meet.
    pub claim: Claim,
    /// Wishes that could not be fulfilled, and why.
    pub refused: Vec<Refusal>,
}

/// How far a search has come.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Progress {
    /// Not sure yet; call `step` again, or `finish` with what there is.
    Working {
        /// The least effort found so far, if any whole key was.
        best: Option<Share>,
        /// What every key under the wishes takes at least.
        lower_bound: Share,
    },
    /// Nothing more can be remembered: `finish` with what there is.
    MemoryFull,
    /// Proved.
    Done,
}

/// A search under way: a value that its host steps, hands from thread to thread, and may drop at
/// any time.
pub struct Search {
    in_order: GoalsInOrder,
    /// The same table with fewer wishes, for their prices.
    prices: Prices,
}

impl Search {
    /// Makes a table ready to search. Wishes that cannot be fulfilled are put aside.
    pub fn new(matrix: &Matrix, wishes: &Wishes) -> Self {
        Self::within(matrix, wishes, USUAL_MEMORY)
    }

    /// The same, for a program that may take so many mebibytes. They are counted, so that every
    /// machine stops at the same place; see [`Stopped::Memory`].
    pub fn within(matrix: &Matrix, wishes: &Wishes, mebibytes: u64) -> Self {
        let in_order = GoalsInOrder::new(matrix, wishes);
        let prices = Prices::of(matrix, &in_order, wishes);
        let mut search = Self { in_order, prices };
        let searches = 1 + search.prices.searches().count() as u64;
        for in_order in std::iter::once(&mut search.in_order).chain(search.prices.searches()) {
            in_order.solver.make_room(mebibytes, searches);
        }
        search
    }

    /// Takes at most `heaps` more heaps apart (with wishes: as many again for the price of
    /// each), and at least one that was not looked at before.
    pub fn step(&mut self, heaps: u64) -> Progress {
        let sure = self.in_order.step(heaps);
        let (prices_sure, prices_full) = self.prices.step(heaps);
        if sure && prices_sure {
            return Progress::Done;
        }
        if (sure || self.in_order.solver.full()) && (prices_sure || prices_full) {
            return Progress::MemoryFull;
        }
        let root = self.in_order.root();
        let (lower, best) = self.in_order.known(&root);
        let space = &self.in_order.solver.space;
        let effort = |packed| space.denominator.share(space.goals.effort(packed));
        let lower = if space.goals.effort_first() { lower } else { 0 };
        Progress::Working { best: best.map(effort), lower_bound: effort(lower) }
    }

    /// The best key known now, with its claim.
    pub fn finish(&mut self) -> Built {
        let in_order = &mut self.in_order;
        in_order.step_back();
        let root = in_order.root();
        let wished = in_order.place(&root);
        let space = &in_order.solver.space;
        let sure = wished.lower == wished.effort && in_order.limits_sure();
        let stopped = match (space.denominator.exact, sure) {
            (false, _) => Some(Stopped::Overflow),
            (true, false) if in_order.solver.full() => Some(Stopped::Memory),
            (true, false) => Some(Stopped::Budget),
            (true, true) => None,
        };
        let effort = space.goals.effort(wished.effort);
        // Where the effort is not the first goal, only the proof itself bounds it.
        let lower = match (space.denominator.exact, space.denominator.rounded, sure) {
            (true, _, true) => effort,
            (true, _, false) | (false, true, _) if space.goals.effort_first() => {
                space.goals.effort(wished.lower)
            }
            _ => 0,
        };
        let in_full = in_order.in_full(&wished.key);
        let claim = Claim {
            total: in_full.as_ref().map_or_else(
                || space.denominator.share(effort),
                |in_full| in_full.share(Sum::Effort),
            ),
            lower_bound: space.denominator.share(lower),
            mean_questions: in_full.as_ref().map_or_else(
                || space.denominator.mean(wished.steps, space.total_flow()),
                |in_full| in_full.mean_questions(space),
            ),
            longest: wished.longest,
            stopped,
            heaps: in_order.solver.work + self.prices.work(),
            kept: None,
            wishes: in_order.wishes.clone(),
            reached: prices::reached(in_order, &wished, in_full.as_ref()),
            prices: Vec::new(),
            within: in_order.within.clone(),
            touching: in_full::touching(space, &wished.key),
            certificate: None,
        };
        let certificate = if sure { certificate::of(in_order) } else { None };
        let claim = Claim { certificate, ..claim };
        let claim = self.prices.put_into(claim, &wished.key, &self.in_order.refused);
        Built { key: wished.key, claim, refused: self.in_order.refused.clone() }
    }

    /// For every couplet of the key: why it is asked there, and what else could have been.
    ///
    /// **Cost**: every alternative is completed at least effort, within `budget` further heaps
    /// for the whole key; what is not sure by then is given as "at least".
    pub fn explain(&mut self, key: &Key, budget: Budget) -> Vec<Reasons> {
        let root = self.in_order.root();
        explain::explain(&mut self.in_order.solver, &root, key, budget.heaps)
    }

    /// By the number of a couplet of the key: the questions about other characters, none of them
    /// answered by touch, that part its kinds in the same way, and whether their yes is its no.
    /// Nothing is searched.
    pub fn second_looks(&self, key: &Key) -> BTreeMap<u32, Vec<(Ask, bool)>> {
        explain::second_looks(&self.in_order.solver, &self.in_order.root(), key)
    }
}

impl Search {
    /// The best keys under the wishes that differ in their nested heaps, the best first, and
    /// how many are as good as the best. Kept questions are not regarded.
    ///
    /// **Cost**: at most `budget` further heaps; what is not proved by then is left out, or said
    /// not to be sure.
    pub fn best_keys(&mut self, wanted: usize, budget: Budget) -> BestKeys {
        let root = self.in_order.root();
        let solver = &mut self.in_order.solver;
        solver.beside(budget.heaps, |solver| best_keys::of(solver, &root, wanted))
    }
}

/// The key of least effort under the wishes, or the best one that the budget finds.
pub fn build(matrix: &Matrix, wishes: &Wishes, budget: Budget) -> Built {
    let mut search = Search::new(matrix, wishes);
    search.step(budget.heaps);
    search.finish()
}
