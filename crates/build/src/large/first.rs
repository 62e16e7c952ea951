//! A good key of a large heap early: the best question at every heap, with a look ahead.
//!
//! At a large heap the few most promising questions are each completed greedily, and the best
//! of them is asked; then the same below. A small heap is searched wholly, as long as that is
//! quick. Counted in work, the same on every machine.

use crate::bound::Splits;
use crate::large::ahead::{Choice, choices};
use crate::large::heap::LargeHeap;
use crate::state_space::StateSpace;

/// A key as questions only.
pub(crate) struct Branch {
    pub(crate) question: u32,
    pub(crate) yes: Option<Box<Branch>>,
    pub(crate) no: Option<Box<Branch>>,
}

/// A key and what it takes, in flows of large heaps.
pub(crate) struct Grown {
    pub(crate) effort: u64,
    pub(crate) branch: Option<Box<Branch>>,
}

/// Up to so many kinds a heap is searched wholly, for so many heaps at most.
const SMALL: usize = 10;
const SMALL_HEAPS: u32 = 40;
/// From so many kinds on several questions are completed.
const WIDE_FROM: usize = 16;

/// Grows keys.
pub(crate) struct Grower<'a> {
    pub(crate) space: &'a StateSpace,
    /// Kinds × questions looked at so far.
    pub(crate) work: u64,
    pub(crate) splits: Splits,
}

impl<'a> Grower<'a> {
    pub(crate) fn new(space: &'a StateSpace) -> Self {
        Self { space, work: 0, splits: Splits::default() }
    }

    /// A key of a large heap; at each heap on the way the best `wide` questions are completed.
    pub(crate) fn grow(&mut self, large: &LargeHeap, wide: usize) -> Grown {
        if large.kinds.len() <= SMALL {
            return self.small(large, u64::MAX, &mut SMALL_HEAPS.clone());
        }
        let choices = self.choices(large);
        let Some(first) = choices.first() else { return Grown { effort: 0, branch: None } };
        if wide < 2 || large.kinds.len() < WIDE_FROM {
            let (yes, no) = self.sides(large, first);
            let sides = (self.grow(&yes, wide), self.grow(&no, wide));
            return Grown::joined(first, sides);
        }
        let mut best: Option<(Choice, LargeHeap, LargeHeap, Grown, Grown)> = None;
        for choice in choices.iter().take(wide) {
            let (yes, no) = self.sides(large, choice);
            let sides = (self.grow(&yes, 1), self.grow(&no, 1));
            let effort = choice.own + sides.0.effort + sides.1.effort;
            let better = best
                .as_ref()
                .is_none_or(|(other, .., a, b)| effort < other.own + a.effort + b.effort);
            if better {
                best = Some((*choice, yes, no, sides.0, sides.1));
            }
        }
        let (choice, yes, no, a, b) = best.expect("there was a first choice");
        let better =
            |one: Grown, other: Grown| if other.effort < one.effort { other } else { one };
        let sides = (better(a, self.grow(&yes, wide)), better(b, self.grow(&no, wide)));
        Grown::joined(&choice, sides)
    }

    /// The best key of a large heap that few kinds are left in that takes less than `below`, if
    /// that is quick.
    fn small(&mut self, large: &LargeHeap, below: u64, heaps: &mut u32) -> Grown {
        let choices = self.choices(large);
        if large.kinds.len() < 2 || choices.is_empty() {
            return Grown { effort: 0, branch: None };
        }
        let mut best = Grown { effort: u64::MAX, branch: None };
        for choice in choices {
            let most = below.min(best.effort);
            if best.branch.is_some() && (choice.bound() >= most || *heaps == 0) {
                continue;
            }
            *heaps = heaps.saturating_sub(1);
            let (yes, no) = self.sides(large, &choice);
            let room = most.saturating_sub(choice.own + choice.no);
            let yes = self.small(&yes, room, heaps);
            if best.branch.is_some() && choice.own + yes.effort + choice.no >= most {
                continue;
            }
            let room = most.saturating_sub(choice.own + yes.effort);
            let grown = Grown::joined(&choice, (yes, self.small(&no, room, heaps)));
            if grown.effort < best.effort {
                best = grown;
            }
        }
        best
    }

    fn choices(&mut self, large: &LargeHeap) -> Vec<Choice> {
        self.work += large.work();
        let mut choices = choices(large, &mut self.splits);
        choices.sort_by_key(|choice| (choice.bound(), choice.question));
        choices
    }

    pub(crate) fn sides(
        &mut self,
        large: &LargeHeap,
        choice: &Choice,
    ) -> (LargeHeap, LargeHeap) {
        self.work += large.work();
        let at = choice.at as usize;
        (large.side(self.space, at, true), large.side(self.space, at, false))
    }
}

impl Grown {
    /// Nothing is asked any more.
    pub(crate) fn end() -> Self {
        Self { effort: 0, branch: None }
    }

    /// Two keys under a question.
    pub(crate) fn joined(choice: &Choice, (yes, no): (Self, Self)) -> Self {
        let (effort, question) = (choice.own + yes.effort + no.effort, choice.question);
        let branch = Branch { question, yes: yes.branch, no: no.branch };
        Self { effort, branch: Some(Box::new(branch)) }
    }
}
