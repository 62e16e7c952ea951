//! The best key of a heap, by bounds that close in from both sides.
//!
//! A heap's effort is the least, over the questions that may be asked, of the question's own
//! effort plus the efforts of the two heaps it makes. For every heap taken apart we remember
//! what it takes **at least** and the best key found, **at most**. [`Solver::refine`] looks at
//! the questions in the order of their bounds, refines the heaps of the most promising one just
//! far enough to decide whether it can beat the best key so far, and stops when no other
//! question can. With a *slack* of one twentieth it stops as soon as the best is within that of
//! the bound; the slack falls to nothing step by step, so that there is a good key early and the
//! proof follows. The same heap is reached in many orders of asking: it is remembered once.

use std::cell::RefCell;

use rustc_hash::FxHashMap;

use crate::bound::Splits;
use crate::candidates::Candidate;
use crate::cost::Effort;
use crate::heap::Heap;
use crate::large::Large;
use crate::memory_budget::MemoryBudget;
use crate::state_space::StateSpace;

/// What is known of a heap.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Known {
    pub(crate) lower: Effort,
    /// `NEVER` where no whole key was found yet.
    pub(crate) upper: Effort,
    /// The question of the best key found.
    pub(crate) incumbent: u32,
}

/// More than any effort.
pub(crate) const NEVER: Effort = Effort::MAX / 4;
const NO_INCUMBENT: u32 = u32::MAX;

/// Kinds × questions from which a heap counts as more than one: about what 40 kinds with 50
/// questions are, so that a budget of heaps means much the same time on a large table.
pub(crate) const LARGE: usize = 2000;

/// How far from proved each stage may stop: (1 + numerator / denominator) × the bound.
const SLACKS: [(Effort, Effort); 4] = [(1, 10), (1, 25), (1, 100), (0, 1)];

/// The search with everything it remembers.
pub(crate) struct Solver {
    pub(crate) space: StateSpace,
    /// Heaps taken apart so far.
    pub(crate) taken_apart: u64,
    /// The work that took, a small heap counting 1.
    pub(crate) work: u64,
    pub(crate) memo: FxHashMap<Heap, Known>,
    pub(crate) splits: RefCell<Splits>,
    /// The most new words that a question may bring; None: any number.
    pub(crate) most_new_words: Option<u32>,
    /// A large heap that is looked at as a whole.
    pub(crate) large: Option<Box<Large>>,
    /// Whether such a heap was looked at as far as memory allows.
    pub(crate) at_an_end: bool,
    pub(crate) memory_budget: MemoryBudget,
    /// Which of [`SLACKS`] the search is at.
    stage: usize,
    pub(crate) limit: u64,
    /// Whether anything new was taken apart since the limit was set: a step that would end on
    /// the way to where the last one ended must still get somewhere.
    pub(crate) moved: bool,
}

impl Solver {
    pub(crate) fn new(space: StateSpace) -> Self {
        let memory_budget = MemoryBudget::on(&space);
        Self {
            memory_budget,
            space,
            taken_apart: 0,
            work: 0,
            memo: FxHashMap::default(),
            splits: RefCell::default(),
            most_new_words: None,
            large: None,
            at_an_end: false,
            stage: 0,
            limit: 0,
            moved: true,
        }
    }

    /// Goes on until all heaps are proved or cannot take less than `goal`, as long as the limit
    /// allows; whether that was reached.
    pub(crate) fn close(&mut self, open: &[Heap], goal: Effort) -> bool {
        if let [heap] = open
            && let Some(first) = self.before_looking_at(heap)
        {
            // To list what may be asked of hundreds of kinds, with the heaps that it makes, takes
            // hundreds of megabytes: where that leads nowhere it is not done at all.
            if first > 0 {
                let limit = self.limit;
                self.limit = limit.min(first);
                let closed = self.close_in(open, goal);
                self.limit = limit;
                if closed {
                    return true;
                }
            }
            self.look_at_large(heap);
            if first == 0 && !self.all_looked_at() {
                return self.is_closed(open, goal);
            }
        }
        self.close_in(open, goal)
    }

    /// The same by refining alone.
    pub(crate) fn close_in(&mut self, open: &[Heap], goal: Effort) -> bool {
        self.stage = 0;
        while self.stage < SLACKS.len() {
            for heap in open {
                self.refine(heap, 0, goal);
            }
            if self.spent() {
                break;
            }
            self.stage += 1;
        }
        self.is_closed(open, goal)
    }

    fn is_closed(&self, open: &[Heap], goal: Effort) -> bool {
        open.iter().all(|heap| {
            let (lower, upper) = self.known(heap);
            lower >= goal || upper == Some(lower)
        })
    }

    /// Counts work that takes no heaps apart, so that a budget ends it all the same.
    pub(crate) fn charge(&mut self, heaps: u64) {
        self.work += heaps;
        self.moved = true;
    }

    /// Sets how much may be done from here on.
    pub(crate) fn set_limit(&mut self, heaps: u64) {
        self.limit = self.work.saturating_add(heaps);
        self.moved = heaps == 0;
    }

    /// Does some work beside the search, for which `heaps` more heaps may be taken apart,
    /// without slack.
    pub(crate) fn beside<T>(&mut self, heaps: u64, work: impl FnOnce(&mut Self) -> T) -> T {
        let before = (self.limit, self.moved, self.work);
        self.limit = self.work.saturating_add(heaps);
        self.moved = true;
        self.stage = SLACKS.len();
        let done = work(self);
        self.limit = before.0.saturating_add(self.work - before.2);
        self.moved = before.1;
        done
    }

    /// Forgets everything for another state space with the same matrix.
    pub(crate) fn start_again(&mut self, space: StateSpace) {
        self.space = space;
        self.make_room_for_the_space();
        (self.large, self.at_an_end) = (None, false);
        self.memo.clear();
    }

    /// What a heap takes at least, and at most if a whole key was found.
    pub(crate) fn known(&self, heap: &Heap) -> (Effort, Option<Effort>) {
        if self.space.layout.size(heap) < 2 {
            return (0, Some(0));
        }
        self.memo.get(heap).map_or((0, None), |known| {
            (known.lower, (known.upper < NEVER).then_some(known.upper))
        })
    }

    /// The question of the best key found for this heap.
    pub(crate) fn incumbent(&self, heap: &Heap) -> Option<usize> {
        let known = self.memo.get(heap)?;
        (known.incumbent != NO_INCUMBENT).then_some(known.incumbent as usize)
    }

    /// Whether the budget of work or of memory is used up.
    pub(crate) fn spent(&self) -> bool {
        (self.moved && self.work >= self.limit) || self.full()
    }

    /// Where refining may stop: the bound has reached `goal`, or the best is close enough.
    fn target(&self, goal: Effort, upper: Effort) -> Effort {
        if upper >= NEVER {
            return goal;
        }
        let (numerator, denominator) = SLACKS.get(self.stage).copied().unwrap_or((0, 1));
        let enough =
            (upper * denominator + numerator + denominator - 1) / (numerator + denominator);
        goal.min(if numerator == 0 { upper } else { enough })
    }

    /// Refines what is known of a heap until its bound is at least `goal`, or its best key is
    /// within the slack of its bound, or the limit is reached.
    pub(crate) fn refine(&mut self, heap: &Heap, lower: Effort, goal: Effort) -> Known {
        if self.space.layout.size(heap) < 2 {
            return Known { lower: 0, upper: 0, incumbent: NO_INCUMBENT };
        }
        let mut known = self.memo.get(heap).copied().unwrap_or(Known {
            lower: 0,
            upper: NEVER,
            incumbent: NO_INCUMBENT,
        });
        known.lower = known.lower.max(lower);
        if known.lower >= self.target(goal, known.upper) || self.spent() {
            return known;
        }
        self.taken_apart += 1;
        self.work += 1 + (self.space.layout.size(heap) * self.space.candidates / LARGE) as u64;
        let mut candidates = self.candidates(heap);
        if candidates.end {
            known = Known { lower: 0, upper: 0, incumbent: NO_INCUMBENT };
        } else {
            let (count, left_out) = (candidates.list.len(), candidates.left_out);
            self.holding(count, |solver| {
                solver.try_each(&mut candidates.list, left_out, &mut known, goal);
            });
        }
        self.moved |= !self.memo.contains_key(heap);
        self.memo.insert(heap.clone(), known);
        known
    }

    fn try_each(
        &mut self,
        candidates: &mut [Candidate],
        left_out: Effort,
        known: &mut Known,
        goal: Effort,
    ) {
        // Candidates are large: their places are sorted.
        let mut order: Vec<usize> = (0..candidates.len()).collect();
        order.sort_by_cached_key(|at| candidates[*at].promise());
        for at in order {
            let candidate = &mut candidates[at];
            let target = self.target(goal, known.upper);
            if candidate.bound() >= target {
                break;
            }
            let yes_goal = target - candidate.own - candidate.no_lower;
            let yes = self.refine(&candidate.yes, candidate.yes_lower, yes_goal);
            candidate.yes_lower = yes.lower;
            if candidate.bound() >= target && yes.upper > yes.lower {
                continue;
            }
            let no_goal = target - candidate.own - candidate.yes_lower;
            let no = self.refine(&candidate.no, candidate.no_lower, no_goal);
            candidate.no_lower = no.lower;
            if yes.upper < NEVER && no.upper < NEVER {
                let whole = candidate.own + yes.upper + no.upper;
                if whole < known.upper {
                    known.upper = whole;
                    known.incumbent = candidate.question as u32;
                }
            }
        }
        let least = candidates.iter().map(Candidate::bound).min().unwrap_or(NEVER);
        known.lower = known.lower.max(least.min(left_out).min(known.upper));
    }
}
