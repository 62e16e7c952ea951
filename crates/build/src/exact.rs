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

use rustc_hash::{FxHashMap, FxHashSet};

use crate::bound::{PAIRS_UP_TO, Parted, Splits};
use crate::cost::Effort;
use crate::ground::Ground;
use crate::heap::{Asking, Heap, Sides};
use crate::set::Set;

/// What is known of a heap.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Known {
    pub(crate) lower: Effort,
    /// `NEVER` where no whole key was found yet.
    pub(crate) upper: Effort,
    /// The question of the best key found.
    pub(crate) choice: u32,
}

/// More than any effort.
pub(crate) const NEVER: Effort = Effort::MAX / 4;
const NO_CHOICE: u32 = u32::MAX;

/// Kinds × questions from which a heap counts as more than one: about what 40 kinds with 50
/// questions are, so that a budget of heaps means much the same time on a large table.
const LARGE: usize = 2000;

/// What remembered heaps may fill, in bytes: half of what the whole program may take.
const REMEMBERED: usize = 256 << 20;

/// How far from proved each stage may stop: (1 + numerator / denominator) × the bound.
const SLACKS: [(Effort, Effort); 4] = [(1, 10), (1, 25), (1, 100), (0, 1)];

/// The search with everything it remembers.
pub(crate) struct Solver {
    pub(crate) ground: Ground,
    /// Heaps taken apart so far.
    pub(crate) taken_apart: u64,
    /// The work that took, a small heap counting 1.
    work: u64,
    memory: FxHashMap<Heap, Known>,
    splits: RefCell<Splits>,
    /// Which of [`SLACKS`] the search is at.
    stage: usize,
    limit: u64,
    /// Whether anything new was taken apart since the limit was set: a step that would end on
    /// the way to where the last one ended must still get somewhere.
    moved: bool,
}

/// A question that may be asked of a heap, and what it makes.
pub(crate) struct Candidate {
    pub(crate) question: usize,
    pub(crate) yes: Heap,
    pub(crate) no: Heap,
    /// The question's own effort here.
    pub(crate) own: Effort,
    pub(crate) yes_lower: Effort,
    pub(crate) no_lower: Effort,
    /// What the two heaps would take if every pair in them had to be parted: no bound, but a
    /// good guess at which of two equally bounded questions is better.
    guess: Effort,
}

impl Candidate {
    pub(crate) fn bound(&self) -> Effort {
        self.own + self.yes_lower + self.no_lower
    }

    /// The most promising first.
    pub(crate) fn promise(&self) -> (Effort, Effort, usize) {
        (self.bound(), self.guess, self.question)
    }
}

impl Solver {
    pub(crate) fn new(ground: Ground) -> Self {
        Self {
            ground,
            taken_apart: 0,
            work: 0,
            memory: FxHashMap::default(),
            splits: RefCell::default(),
            stage: 0,
            limit: 0,
            moved: true,
        }
    }

    /// Narrows what is known of some heaps with at most `heaps` more taken apart; whether all
    /// are proved.
    pub(crate) fn narrow(&mut self, open: &[Heap], heaps: u64) -> bool {
        self.limit = self.work.saturating_add(heaps);
        self.moved = heaps == 0;
        while self.stage < SLACKS.len() {
            for heap in open {
                self.refine(heap, 0, NEVER);
            }
            if self.spent() {
                break;
            }
            self.stage += 1;
        }
        open.iter().all(|heap| {
            let (lower, upper) = self.known(heap);
            upper == Some(lower)
        })
    }

    /// Allows `heaps` more heaps to be taken apart, without slack.
    pub(crate) fn allow(&mut self, heaps: u64) {
        self.limit = self.work.saturating_add(heaps);
        self.moved = true;
        self.stage = SLACKS.len();
    }

    /// What a heap takes at least, and at most if a whole key was found.
    pub(crate) fn known(&self, heap: &Heap) -> (Effort, Option<Effort>) {
        if self.ground.layout.size(heap) < 2 {
            return (0, Some(0));
        }
        self.memory.get(heap).map_or((0, None), |known| {
            (known.lower, (known.upper < NEVER).then_some(known.upper))
        })
    }

    /// A bound and an effort of a key for the whole table; the key may be a first guess.
    pub(crate) fn bounds(&mut self) -> (Effort, Effort) {
        let root = self.ground.root();
        let settled = crate::settle::settle(self, &root);
        (settled.lower, settled.effort)
    }

    /// The question of the best key found for this heap.
    pub(crate) fn choice(&self, heap: &Heap) -> Option<usize> {
        let known = self.memory.get(heap)?;
        (known.choice != NO_CHOICE).then_some(known.choice as usize)
    }

    /// Whether the budget of work or of memory is used up.
    fn spent(&self) -> bool {
        (self.moved && self.work >= self.limit) || self.full()
    }

    /// Whether nothing more can be remembered, so that further steps lead nowhere.
    pub(crate) fn full(&self) -> bool {
        self.memory.len() * self.bytes_each() >= REMEMBERED
    }

    /// What one remembered heap fills, in bytes; the map holds it twice at worst, growing.
    fn bytes_each(&self) -> usize {
        2 * (size_of::<(Heap, Known)>() + self.ground.layout.bytes())
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
        if self.ground.layout.size(heap) < 2 {
            return Known { lower: 0, upper: 0, choice: NO_CHOICE };
        }
        let mut known = self.memory.get(heap).copied().unwrap_or(Known {
            lower: 0,
            upper: NEVER,
            choice: NO_CHOICE,
        });
        known.lower = known.lower.max(lower);
        if known.lower >= self.target(goal, known.upper) || self.spent() {
            return known;
        }
        self.taken_apart += 1;
        self.work +=
            1 + (self.ground.layout.size(heap) * self.ground.candidates / LARGE) as u64;
        let mut candidates = self.candidates(heap);
        if candidates.is_empty() {
            known = Known { lower: 0, upper: 0, choice: NO_CHOICE };
        } else {
            self.try_each(&mut candidates, &mut known, goal);
        }
        self.moved |= !self.memory.contains_key(heap);
        self.memory.insert(heap.clone(), known);
        known
    }

    fn try_each(&mut self, candidates: &mut [Candidate], known: &mut Known, goal: Effort) {
        candidates.sort_by_key(|candidate| candidate.promise());
        for candidate in candidates.iter_mut() {
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
                    known.choice = candidate.question as u32;
                }
            }
        }
        let least = candidates.iter().map(Candidate::bound).min().unwrap_or(0);
        known.lower = known.lower.max(least.min(known.upper));
    }

    /// Every question that may be asked of a heap; of several that make the same two heaps at
    /// the same effort, the first.
    pub(crate) fn candidates(&self, heap: &Heap) -> Vec<Candidate> {
        let mut seen = FxHashSet::default();
        self.every_candidate(heap, |cost, yes, no| {
            let pair = if yes <= no { (yes, no) } else { (no, yes) };
            seen.insert((cost, pair.0.clone(), pair.1.clone()))
        })
    }

    /// Every question that may be asked of a heap and that is `wanted` for its cost and the two
    /// heaps it makes.
    pub(crate) fn every_candidate(
        &self,
        heap: &Heap,
        mut wanted: impl FnMut(Effort, &Heap, &Heap) -> bool,
    ) -> Vec<Candidate> {
        let ground = &self.ground;
        let layout = &ground.layout;
        let present: Vec<usize> = layout.kinds(heap).collect();
        let mut flows = vec![0; ground.matrix.taxa().len()];
        for kind in &present {
            flows[*kind] = layout.flow(heap, *kind);
        }
        let all: Effort = present.iter().map(|kind| flows[*kind]).sum();
        let mut admissible: Vec<(usize, Sides)> = Vec::new();
        for (at, question) in ground.questions[..ground.candidates].iter().enumerate() {
            if let Asking::Parts(sides) = layout.ask(heap, question)
                && sides.parts_a_pair
            {
                admissible.push((at, sides));
            }
        }
        let parted = self.parted(heap, &present, &admissible);
        let mut rising = present;
        rising.sort_unstable_by_key(|kind| (flows[*kind], *kind));
        let mut candidates = Vec::with_capacity(admissible.len());
        for (question, sides) in admissible {
            let (yes, no) = layout.take_sides(heap, &sides);
            let cost = ground.questions[question].cost;
            if !wanted(cost, &yes, &no) {
                continue;
            }
            let weigh = |side: &Heap, kinds: &Set| {
                self.weigh(side, kinds, &sides, &rising, &flows, &parted)
            };
            let (yes_lower, yes_guess) = weigh(&yes, &sides.yes);
            let (no_lower, no_guess) = weigh(&no, &sides.no);
            candidates.push(Candidate {
                question,
                own: cost * all,
                yes,
                no,
                yes_lower,
                no_lower,
                guess: yes_guess + no_guess,
            });
        }
        candidates
    }

    fn parted(&self, heap: &Heap, present: &[usize], admissible: &[(usize, Sides)]) -> Parted {
        let kinds = self.ground.matrix.taxa().len();
        if kinds > PAIRS_UP_TO {
            return Parted::none();
        }
        let all = self.ground.questions[..self.ground.candidates].iter();
        let split_off =
            all.map(|question| self.ground.layout.smaller_side(heap, question)).max();
        let split_off = split_off.unwrap_or(0);
        Parted::by(kinds, present, split_off, admissible.iter().map(|(_, sides)| sides.only()))
    }

    /// What one side takes at least, as remembered or by the kinds that must be parted; and
    /// what it would take if all had to be.
    fn weigh(
        &self,
        side: &Heap,
        kinds: &Set,
        sides: &Sides,
        rising: &[usize],
        flows: &[Effort],
        parted: &Parted,
    ) -> (Effort, Effort) {
        let known = self.memory.get(side);
        if let Some(known) = known
            && parted.complete()
        {
            return (known.lower, 0);
        }
        let mut with_flows: Vec<(Effort, usize)> = Vec::with_capacity(rising.len());
        for kind in rising {
            if kinds.has(*kind) {
                let flow = if sides.both(*kind) {
                    self.ground.layout.flow(side, *kind)
                } else {
                    flows[*kind]
                };
                with_flows.push((flow, *kind));
            }
        }
        let (least, guess) = parted.least_steps(&mut with_flows, &mut self.splits.borrow_mut());
        let least = least * self.ground.cheapest;
        (known.map_or(least, |known| known.lower.max(least)), guess * self.ground.cheapest)
    }
}
