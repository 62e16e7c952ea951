//! Here is a matrix: what should I ask first? The key of least effort, and the proof.
//!
//! The definition is `docs/KEY.md`. In the order of reading:
//! * `cost` makes shares, weights and difficulties whole numbers;
//! * `split` lists every question that a table allows;
//! * `ground` lays cells out as masks, `heap` is a node of the key: which kinds, with which
//!   values left;
//! * `bound` says what a heap takes at the very least;
//! * `exact` refines bounds from both sides until they meet, or until the budget is used up;
//! * `settle` reads the key off, ties broken as the definition says; `kept` puts a person's own
//!   questions on top; `explain` says what the alternatives cost.
//!
//! It never reads a wording or a picture, has no clock, and gives the same key everywhere.

mod bound;
mod cost;
mod exact;
mod explain;
mod ground;
mod heap;
mod kept;
mod set;
mod settle;
mod split;

use spinney_model::{Claim, KeptPrice, Key, Matrix, Reasons, Refusal, Share, Stopped, Wishes};

use crate::exact::Solver;
use crate::ground::Ground;

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
    /// vary, on the machine of `docs/measurements.md`; what is remembered stops at 256 MiB.
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

/// A search under way: a value that its host steps, and may drop at any time.
pub struct Search {
    solver: Solver,
    /// The same table without the wishes, for their price.
    free: Option<Solver>,
    wishes: Wishes,
    refused: Vec<Refusal>,
}

impl Search {
    /// Makes a table ready to search. Wishes that cannot be fulfilled are put aside.
    pub fn new(matrix: &Matrix, wishes: &Wishes) -> Self {
        let fitting: Vec<_> = kept::asks(wishes);
        let fitting: Vec<_> =
            fitting.into_iter().filter(|ask| kept::fits(matrix, ask)).collect();
        let mut ground = Ground::lay(matrix, &fitting);
        let (wishes, refused) = kept::prune(&ground, wishes);
        if !refused.is_empty() {
            ground = Ground::lay(matrix, &kept::asks(&wishes));
        }
        let wished = wishes.kept.is_some() || !refused.is_empty();
        let free = wished.then(|| Solver::new(Ground::lay(matrix, &[])));
        Self { solver: Solver::new(ground), free, wishes, refused }
    }

    /// Takes at most `heaps` more heaps apart (with wishes: as many again for their price), and
    /// at least one that was not looked at before.
    pub fn step(&mut self, heaps: u64) -> Progress {
        let open = kept::open_heaps(&self.solver.ground, &self.wishes);
        let sure = self.solver.narrow(&open, heaps);
        let free_sure = self.free.as_mut().is_none_or(|free| {
            let root = free.ground.root();
            free.narrow(&[root], heaps)
        });
        if sure && free_sure {
            return Progress::Done;
        }
        let full = |solver: &Solver| solver.full();
        if (sure || full(&self.solver)) && (free_sure || self.free.as_ref().is_some_and(full)) {
            return Progress::MemoryFull;
        }
        let root = self.solver.ground.root();
        let (lower, best) = kept::known(&self.solver, &root, self.wishes.kept.as_deref());
        Progress::Working {
            best: best.map(|effort| self.solver.ground.scale.share(effort)),
            lower_bound: self.solver.ground.scale.share(lower),
        }
    }

    /// The best key known now, with its claim.
    pub fn finish(&mut self) -> Built {
        let root = self.solver.ground.root();
        let wished = kept::place(&mut self.solver, &root, self.wishes.kept.as_deref());
        let free = self.free.as_mut().map(Solver::bounds);
        let ground = &self.solver.ground;
        let sure = wished.lower == wished.effort;
        let stopped = match (ground.scale.exact, sure) {
            (false, _) => Some(Stopped::Overflow),
            (true, false) => Some(Stopped::Budget),
            (true, true) => None,
        };
        let kept = self.free.as_ref().zip(free).map(|(solver, (lower, effort))| KeptPrice {
            free_total: solver.ground.scale.share(effort),
            free_optimal: lower == effort && solver.ground.scale.exact,
            refused: self.refused.iter().map(|refusal| refusal.ask.clone()).collect(),
        });
        let lower = if ground.scale.exact { wished.lower } else { 0 };
        let free_heaps = self.free.as_ref().map_or(0, |free| free.taken_apart);
        let claim = Claim {
            total: ground.scale.share(wished.effort),
            lower_bound: ground.scale.share(lower),
            mean_steps: ground.scale.mean(wished.steps, ground.total_flow()),
            longest: wished.longest,
            stopped,
            heaps: self.solver.taken_apart + free_heaps,
            kept,
        };
        Built { key: wished.key, claim, refused: self.refused.clone() }
    }

    /// For every couplet of the key: why it is asked there, and what else could have been.
    ///
    /// **Cost**: every alternative is completed at least effort, within `budget` further heaps
    /// for the whole key; what is not sure by then is given as "at least".
    pub fn explain(&mut self, key: &Key, budget: Budget) -> Vec<Reasons> {
        explain::explain(&mut self.solver, key, budget.heaps)
    }
}

/// The key of least effort under the wishes, or the best one that the budget finds.
pub fn build(matrix: &Matrix, wishes: &Wishes, budget: Budget) -> Built {
    let mut search = Search::new(matrix, wishes);
    search.step(budget.heaps);
    search.finish()
}
