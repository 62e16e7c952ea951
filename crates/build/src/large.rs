//! Large tables: a good key early, and a bound that looks ahead, before the search proper.
//!
//! `exact` closes in on the best key of a heap from both sides, but on hundreds of kinds it is
//! lost in the first few questions. Here the root alone is looked at: `first` grows a key,
//! `ahead` bounds every key; both work on `large::heap`, a heap laid out for speed, and know from
//! `apart` which kinds every key must part. What they find is remembered like everything else,
//! so that the search goes on from there.

pub(crate) mod ahead;
pub(crate) mod apart;
pub(crate) mod first;
pub(crate) mod heap;

use std::sync::Arc;

use spinney_model::Goal;

use crate::cost::Effort;
use crate::exact::{Known, LARGE, NEVER, Solver};
use crate::heap::{Asking, Heap};
use crate::large::ahead::Ahead;
use crate::large::apart::Groups;
use crate::large::first::{Branch, Grower};
use crate::large::heap::{LargeHeap, Units};
use crate::state_space::StateSpace;

/// Kinds from which a heap is looked at as a whole once the search proper has done some work,
/// and from which at once.
const LATER: usize = 32;
const AT_ONCE: usize = 100;

/// Heaps that the search proper takes apart first: what it proves in that time needs no more.
const FIRST: u64 = 1000;

/// A large heap, and what is found out about it bit by bit.
pub(crate) struct Large {
    heap: Heap,
    large: Arc<LargeHeap>,
    units: Units,
    ahead: Ahead,
    /// How many questions were completed at each heap last; 0: no key was grown yet.
    wide: usize,
    /// What growing keys took, in kinds × questions.
    growing: u64,
    /// The effort of the best key grown.
    best: u64,
    over: bool,
}

/// At most so many questions are completed at each heap.
const WIDEST: usize = 8;

impl Large {
    /// `room`: bytes for heaps thought of ahead, and for large heaps kept for later.
    fn new(space: &StateSpace, heap: &Heap, room: (u64, u64)) -> Self {
        let groups = Groups::at(space, heap);
        let (large, units) = LargeHeap::of(space, heap, &groups);
        let large = Arc::new(large);
        Self {
            heap: heap.clone(),
            ahead: Ahead::new(large.clone(), room),
            large,
            units,
            wide: 0,
            growing: 0,
            best: u64::MAX,
            over: false,
        }
    }

    /// What it fills, in bytes.
    pub(crate) fn bytes(&self) -> u64 {
        self.large.bytes() as u64 + self.ahead.bytes()
    }

    /// What was done so far, in heaps as the search proper counts them.
    fn work(&self) -> u64 {
        (self.growing + self.ahead.work) / LARGE as u64
    }

    /// Does the next bit: a wider key as long as keys took less than a third of the work, else
    /// a look ahead, and at the end the key that the looks lead to. A new best key is given
    /// back.
    fn go_on(&mut self, space: &StateSpace) -> Option<Box<Branch>> {
        let worth =
            self.wide == 0 || (self.wide < WIDEST && 2 * self.growing < self.ahead.work);
        let mut grower = Grower::new(space);
        let grown = if worth {
            self.wide = (2 * self.wide).max(1);
            grower.grow(&self.large, self.wide)
        } else if self.ahead.look(space, self.best) {
            return None;
        } else {
            self.over = true;
            self.ahead.key(&mut grower)
        };
        self.growing += grower.work;
        if grown.effort >= self.best {
            return None;
        }
        self.best = grown.effort;
        grown.branch
    }
}

impl Solver {
    /// How much the search proper does before a heap is looked at as a whole; None: it is not.
    pub(crate) fn before_looking_at(&self, heap: &Heap) -> Option<u64> {
        let size = self.space.layout.size(heap);
        (size >= LATER && self.only_effort()).then_some(if size < AT_ONCE { FIRST } else { 0 })
    }

    /// Looks at a large heap as a whole and remembers what it finds: for all that may be done
    /// where the search proper would be lost, else for half of it.
    pub(crate) fn look_at_large(&mut self, heap: &Heap) {
        let mut large = match self.large.take() {
            Some(large) if large.heap == *heap => large,
            _ => Box::new(Large::new(&self.space, heap, self.memory_budget.ahead())),
        };
        let before = self.work - large.work().min(self.work);
        let alone = self.space.layout.size(heap) >= AT_ONCE;
        let share = if alone { self.limit } else { self.limit / 2 };
        // One key is grown in any case: without it there would be nothing to give.
        while large.wide == 0 || (!large.over && !self.spent() && large.work() < share) {
            let branch = large.go_on(&self.space);
            self.work = before + large.work();
            self.moved = true;
            self.remember(heap, branch.as_deref());
        }
        let lower = large.units.effort(large.ahead.lower());
        if let Some(known) = self.memo.get_mut(heap) {
            known.lower = known.lower.max(lower.min(known.upper));
        }
        // Beyond this the search proper would find nothing in any time.
        self.at_an_end = alone && large.over && large.ahead.full();
        self.large = Some(large);
    }

    /// Whether all of a large heap was looked at, so that only the rounding of large heaps can
    /// stand between the best key and its proof.
    pub(crate) fn all_looked_at(&self) -> bool {
        self.large.as_ref().is_some_and(|large| large.over && !large.ahead.full())
    }

    /// Whether nothing but effort counts, and no wish stands in the way of any question.
    fn only_effort(&self) -> bool {
        let space = &self.space;
        let plain = space.goals.order == [Goal::LeastEffort]
            && space.order.is_empty()
            && space.touch_is_free()
            && self.most_new_words.is_none()
            && !space.layout.carries_more();
        let usable = || space.questions.iter().all(|question| question.usable);
        plain && (space.denominator.exact || space.denominator.rounded) && usable()
    }

    fn remember(&mut self, heap: &Heap, branch: Option<&Branch>) -> Effort {
        let Some(branch) = branch else { return 0 };
        let question = &self.space.questions[branch.question as usize];
        let Asking::Parts(sides) = self.space.layout.ask(heap, question) else {
            unreachable!("a large heap asks only what its heap can ask")
        };
        let own = self.space.layout.own(heap, question);
        let (yes, no) = self.space.layout.take_sides(heap, question, &sides);
        let upper = own
            + self.remember(&yes, branch.yes.as_deref())
            + self.remember(&no, branch.no.as_deref());
        let known = self.memo.entry(heap.clone()).or_insert(Known {
            lower: 0,
            upper: NEVER,
            incumbent: branch.question,
        });
        if upper < known.upper {
            (known.upper, known.incumbent) = (upper, branch.question);
        }
        known.upper
    }
}

#[cfg(test)]
mod tests;
