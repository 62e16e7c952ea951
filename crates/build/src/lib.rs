//! Here is a matrix: what should I ask first? The key of least effort, and the proof.
//!
//! The definition is `docs/KEY.md`. In the order of reading:
//! * `cost` makes shares, weights and difficulties whole numbers;
//! * `split` lists every question that a table allows;
//! * `ground` lays cells out as masks, `heap` is a node of the key: which kinds, with which
//!   values left;
//! * `bound` says what a heap takes at the very least;
//! * `offer` is what may be asked of a heap, `exact` refines bounds from both sides until they
//!   meet, or until the budget is used up;
//! * `goals` packs what "best" means into one number, `limits` carries what must be over early,
//!   `course` settles one after the other (`possible`, `vocabulary`), `prices` says what each
//!   wish costs;
//! * `certificate` writes the proof down, so that it can be followed without a search;
//! * `settle` reads the key off, ties broken as the definition says; `kept` puts a person's own
//!   questions on top; `explain` says what the alternatives cost;
//! * `forgiving` gives doubtful kinds second places, so that the most finds come out right.
//!
//! It never reads a wording or a picture, has no clock, and gives the same key everywhere.

mod best_keys;
mod bound;
mod certificate;
mod cost;
mod course;
mod exact;
mod explain;
mod forgiving;
mod goals;
mod ground;
mod heap;
mod kept;
mod large;
mod limits;
mod offer;
mod possible;
mod prices;
mod revise;
mod room;
mod set;
mod settle;
mod split;
mod tally;
mod vocabulary;

use std::collections::BTreeMap;

use spinney_model::{
    Ask, BestKeys, Claim, Key, Matrix, Reasons, Refusal, Share, Stopped, Wishes,
};

pub use crate::forgiving::{MOST_SECOND_PLACES, forgive};
pub use crate::revise::{Revised, Revising, revise};
pub use crate::room::{USUAL_MEMORY, memory_wanted};

use crate::course::Course;
use crate::goals::Sum;
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
    course: Course,
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
        let course = Course::new(matrix, wishes);
        let prices = Prices::of(matrix, &course, wishes);
        let mut search = Self { course, prices };
        let searches = 1 + search.prices.courses().count() as u64;
        for course in std::iter::once(&mut search.course).chain(search.prices.courses()) {
            course.solver.make_room(mebibytes, searches);
        }
        search
    }

    /// Takes at most `heaps` more heaps apart (with wishes: as many again for the price of
    /// each), and at least one that was not looked at before.
    pub fn step(&mut self, heaps: u64) -> Progress {
        let sure = self.course.step(heaps);
        let (prices_sure, prices_full) = self.prices.step(heaps);
        if sure && prices_sure {
            return Progress::Done;
        }
        if (sure || self.course.solver.full()) && (prices_sure || prices_full) {
            return Progress::MemoryFull;
        }
        let root = self.course.root();
        let (lower, best) = self.course.known(&root);
        let ground = &self.course.solver.ground;
        let effort = |packed| ground.scale.share(ground.goals.effort(packed));
        let lower = if ground.goals.effort_first() { lower } else { 0 };
        Progress::Working { best: best.map(effort), lower_bound: effort(lower) }
    }

    /// The best key known now, with its claim.
    pub fn finish(&mut self) -> Built {
        let course = &mut self.course;
        course.step_back();
        let root = course.root();
        let wished = course.place(&root);
        let ground = &course.solver.ground;
        let sure = wished.lower == wished.effort && course.limits_sure();
        let stopped = match (ground.scale.exact, sure) {
            (false, _) => Some(Stopped::Overflow),
            (true, false) if course.solver.full() => Some(Stopped::Memory),
            (true, false) => Some(Stopped::Budget),
            (true, true) => None,
        };
        let effort = ground.goals.effort(wished.effort);
        // Where the effort is not the first goal, only the proof itself bounds it.
        let lower = match (ground.scale.exact, ground.scale.rounded, sure) {
            (true, _, true) => effort,
            (true, _, false) | (false, true, _) if ground.goals.effort_first() => {
                ground.goals.effort(wished.lower)
            }
            _ => 0,
        };
        let tally = course.tally(&wished.key);
        let claim = Claim {
            total: tally
                .as_ref()
                .map_or_else(|| ground.scale.share(effort), |tally| tally.share(Sum::Effort)),
            lower_bound: ground.scale.share(lower),
            mean_questions: tally.as_ref().map_or_else(
                || ground.scale.mean(wished.steps, ground.total_flow()),
                |tally| tally.mean_questions(ground),
            ),
            longest: wished.longest,
            stopped,
            heaps: course.solver.work + self.prices.work(),
            kept: None,
            wishes: course.wishes.clone(),
            reached: prices::reached(course, &wished, tally.as_ref()),
            prices: Vec::new(),
            within: course.within.clone(),
            touching: tally::touching(ground, &wished.key),
            certificate: None,
        };
        let certificate = if sure { certificate::of(course) } else { None };
        let claim = Claim { certificate, ..claim };
        let claim = self.prices.put_into(claim, &wished.key, &self.course.refused);
        Built { key: wished.key, claim, refused: self.course.refused.clone() }
    }

    /// For every couplet of the key: why it is asked there, and what else could have been.
    ///
    /// **Cost**: every alternative is completed at least effort, within `budget` further heaps
    /// for the whole key; what is not sure by then is given as "at least".
    pub fn explain(&mut self, key: &Key, budget: Budget) -> Vec<Reasons> {
        let root = self.course.root();
        explain::explain(&mut self.course.solver, &root, key, budget.heaps)
    }

    /// By the number of a couplet of the key: the questions about other characters, none of them
    /// answered by touch, that part its kinds in the same way, and whether their yes is its no.
    /// Nothing is searched.
    pub fn second_looks(&self, key: &Key) -> BTreeMap<u32, Vec<(Ask, bool)>> {
        explain::second_looks(&self.course.solver, &self.course.root(), key)
    }
}

impl Search {
    /// The best keys under the wishes that differ in their nested heaps, the best first, and
    /// how many are as good as the best. Kept questions are not regarded.
    ///
    /// **Cost**: at most `budget` further heaps; what is not proved by then is left out, or said
    /// not to be sure.
    pub fn best_keys(&mut self, wanted: usize, budget: Budget) -> BestKeys {
        let root = self.course.root();
        let solver = &mut self.course.solver;
        solver.beside(budget.heaps, |solver| best_keys::of(solver, &root, wanted))
    }
}

/// The key of least effort under the wishes, or the best one that the budget finds.
pub fn build(matrix: &Matrix, wishes: &Wishes, budget: Budget) -> Built {
    let mut search = Search::new(matrix, wishes);
    search.step(budget.heaps);
    search.finish()
}
