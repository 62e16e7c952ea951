//! A heap laid out as a large heap: the one time that the whole table is looked through.

use std::collections::BTreeMap;

use rustc_hash::FxHashMap;

use super::{Both, FLOW, LargeHeap, LargeQuestion, Units, set_bit, within};
use crate::cost::Effort;
use crate::heap::{Heap, Remains};
use crate::large::apart::Groups;
use crate::state_space::{Question, StateSpace};

/// The kinds of the heap, by their place in the matrix.
type Here = FxHashMap<usize, u32>;

impl LargeHeap {
    /// The large heap of a heap.
    pub(crate) fn of(space: &StateSpace, heap: &Heap, groups: &Groups) -> (Self, Units) {
        let kinds: Vec<u32> = space.layout.kinds(heap).map(|kind| kind as u32).collect();
        let flows: Vec<Effort> =
            kinds.iter().map(|kind| space.layout.flow(heap, *kind as usize)).collect();
        let most = flows.iter().max().copied().unwrap_or(1).max(1);
        let units = Units { left: FLOW as i32 - (Effort::BITS - most.leading_zeros()) as i32 };
        let mut large = Self {
            flows: flows.iter().map(|flow| units.down(*flow)).collect(),
            words: kinds.len().div_ceil(64).max(1),
            bits: Vec::new(),
            asks: Vec::new(),
            left: Vec::new(),
            levels: Vec::new(),
            grouped: groups.of(&kinds),
            kinds,
        };
        let here: Here =
            large.kinds.iter().zip(0..).map(|(kind, at)| (*kind as usize, at)).collect();
        let left = space.layout.left_of(heap);
        for (at, question) in space.questions[..space.candidates].iter().enumerate() {
            let both = large.lay(space, question, &here, &left);
            let (question, cost) = (at as u32, question.cost as u64);
            large.asks.push(LargeQuestion { question, cost, both });
        }
        for (slot, kind) in matter(space) {
            if let Some(kind) = here.get(&kind) {
                large.left.push((slot as u32, *kind, left[slot]));
            }
        }
        large.put_in_order();
        (large, units)
    }

    /// Lays the sets of a question out; the kinds that go both ways.
    fn lay(
        &mut self,
        space: &StateSpace,
        question: &Question,
        here: &Here,
        left: &[Remains],
    ) -> Vec<Both> {
        let start = self.bits.len();
        self.bits.resize(start + 3 * self.words, 0);
        let (yes, rest) = self.bits[start..].split_at_mut(self.words);
        let (no, way) = rest.split_at_mut(self.words);
        let sets = [(&question.yes, &mut *yes), (&question.no, &mut *no)];
        for (set, bits) in sets.into_iter().chain([(&question.never, &mut *way)]) {
            for kind in set.iter().filter_map(|kind| here.get(&kind)) {
                set_bit(bits, *kind);
            }
        }
        let mut both = Vec::new();
        for varying in &question.varying {
            let Some(kind) = here.get(&varying.kind) else { continue };
            match space.layout.shares(varying.slot, left[varying.slot], varying.yes) {
                (_, 0) => set_bit(yes, *kind),
                (0, _) => set_bit(no, *kind),
                shares => both.push(Both::of(*kind, shares)),
            }
        }
        for governed in &question.governed {
            if let Some(kind) = here.get(&governed.kind)
                && !governed.within.iter().all(|(slot, right)| within(left[*slot], *right))
            {
                set_bit(way, *kind);
            }
        }
        both
    }
}

/// The slots on which another question can depend than the one that cuts them, rising, each
/// with its kind: those of characters with several questions, and those that govern.
fn matter(space: &StateSpace) -> BTreeMap<usize, usize> {
    let mut slots = BTreeMap::new();
    let candidates = &space.questions[..space.candidates];
    for (at, question) in candidates.iter().enumerate() {
        let character = |other: usize| {
            candidates.get(other).is_some_and(|one| one.ask.character == question.ask.character)
        };
        if character(at + 1) || (at > 0 && character(at - 1)) {
            slots.extend(question.varying.iter().map(|varying| (varying.slot, varying.kind)));
        }
        for governed in &question.governed {
            slots.extend(governed.within.iter().map(|(slot, _)| (*slot, governed.kind)));
        }
    }
    slots
}
