//! The least effort of a heap by branch and bound, with every heap remembered.
//!
//! Looks are tried in the order of what they take at least, each way refined only as far as it
//! can still matter. Once the budget is used up, the most promising look is taken unseen.

use std::cmp::Reverse;
use std::collections::BinaryHeap;
use std::rc::Rc;

use rustc_hash::FxHashMap;

use super::look::{self, Look};
use crate::bound::Parted;
use crate::cost::Effort;
use crate::exact::{LARGE, NEVER};
use crate::ground::Ground;
use crate::heap::Heap;

/// Remembered heaps, at most: some 200 MiB.
const REMEMBERED: usize = 400_000;

/// What is known of a heap.
#[derive(Clone, Copy)]
pub(super) struct Known {
    pub(super) lower: Effort,
    /// `NEVER` where no whole key was found yet.
    pub(super) upper: Effort,
    pub(super) done: bool,
}

const NOTHING: Known = Known { lower: 0, upper: NEVER, done: false };
const END: Known = Known { lower: 0, upper: 0, done: true };

pub(super) struct Search {
    pub(super) ground: Ground,
    most: usize,
    known: FxHashMap<Heap, (Known, Option<Rc<Look>>)>,
    /// Heaps taken apart.
    pub(super) opened: u64,
    work: u64,
    limit: u64,
}

/// A look with what its ways take at least.
struct Weighed {
    look: Look,
    lowers: Vec<Effort>,
    bound: Effort,
}

impl Search {
    pub(super) fn new(ground: Ground, most: usize, heaps: u64) -> Self {
        let known = FxHashMap::default();
        let most = most.min(look::most_ways(&ground));
        Self { ground, most, known, opened: 0, work: 0, limit: heaps }
    }

    pub(super) fn whole(&mut self, root: &Heap) -> Known {
        self.solve(root, NEVER)
    }

    /// The look of the best key found; None: an end.
    pub(super) fn choice(&self, heap: &Heap) -> Option<Rc<Look>> {
        self.known.get(heap)?.1.clone()
    }

    /// Finds what a heap takes, or that it takes `enough` or more.
    fn solve(&mut self, heap: &Heap, enough: Effort) -> Known {
        if self.ground.layout.size(heap) < 2 {
            return END;
        }
        let (known, choice) = self.known.get(heap).cloned().unwrap_or((NOTHING, None));
        if known.done || known.lower >= enough {
            return known;
        }
        if self.spent() {
            return self.unseen(heap);
        }
        let looks = self.weighed(heap);
        if looks.is_empty() {
            return self.remember(heap, END, None);
        }
        let (mut best, mut choice) = (known.upper, choice);
        let mut rest = NEVER;
        for Weighed { look, lowers, bound } in looks {
            let cap = best.min(enough);
            if bound >= cap || best < NEVER && self.spent() {
                rest = rest.min(bound);
                break;
            }
            let (lower, upper) = self.look(&look, &lowers, bound, cap);
            rest = rest.min(lower);
            if upper < best {
                (best, choice) = (upper, Some(Rc::new(look)));
            }
        }
        let lower = known.lower.max(rest.min(best));
        self.remember(heap, Known { lower, upper: best, done: best <= rest }, choice)
    }

    fn spent(&self) -> bool {
        self.work >= self.limit || self.known.len() >= REMEMBERED
    }

    /// What a look takes at least and at most; stops where it reaches the cap.
    fn look(
        &mut self,
        look: &Look,
        lowers: &[Effort],
        bound: Effort,
        cap: Effort,
    ) -> (Effort, Effort) {
        let (mut lower, mut upper) = (bound, look.own);
        for (way, least) in look.ways.iter().zip(lowers) {
            let known = self.solve(way, cap - (lower - least));
            lower += known.lower.max(*least) - least;
            upper = upper.saturating_add(known.upper).min(NEVER);
            if lower >= cap {
                return (lower, NEVER);
            }
        }
        (lower, upper)
    }

    /// The most promising look all the way down.
    fn unseen(&mut self, heap: &Heap) -> Known {
        if self.ground.layout.size(heap) < 2 {
            return END;
        }
        if let Some((known, _)) = self.known.get(heap).filter(|(known, _)| known.upper < NEVER)
        {
            return *known;
        }
        let Some(Weighed { look, bound, .. }) = self.weighed(heap).into_iter().next() else {
            return self.remember(heap, END, None);
        };
        let ways = look.ways.iter().map(|way| self.unseen(way).upper);
        let upper = look.own + ways.sum::<Effort>();
        self.remember(heap, Known { lower: bound, upper, done: false }, Some(Rc::new(look)))
    }

    fn remember(&mut self, heap: &Heap, known: Known, choice: Option<Rc<Look>>) -> Known {
        self.known.insert(heap.clone(), (known, choice));
        known
    }

    /// Every look of a heap, the one that takes least at least first.
    fn weighed(&mut self, heap: &Heap) -> Vec<Weighed> {
        let layout = &self.ground.layout;
        let present: Vec<usize> = layout.kinds(heap).collect();
        let (looks, parted) = look::all(&self.ground, heap, self.most);
        self.opened += 1;
        let asked = self.ground.candidates + looks.len();
        self.work += 1 + (present.len() * asked / LARGE) as u64;
        let kinds = layout.kinds_in_all();
        let parted = Parted::by(kinds, &present, usize::MAX, parted.into_iter());
        let weigh = |look: Look| {
            let lowers: Vec<Effort> =
                look.ways.iter().map(|way| self.least(way, &parted)).collect();
            let bound = look.own + lowers.iter().sum::<Effort>();
            Weighed { look, lowers, bound }
        };
        let mut weighed: Vec<Weighed> = looks.into_iter().map(weigh).collect();
        weighed.sort_by(|one, other| {
            one.bound.cmp(&other.bound).then_with(|| look::plainer(&one.look, &other.look))
        });
        weighed
    }

    /// What a way takes at least: what is known of it, or that kinds which every key parts need
    /// a code of their own.
    fn least(&self, way: &Heap, parted: &Parted) -> Effort {
        if let Some((known, _)) = self.known.get(way) {
            return known.lower;
        }
        let layout = &self.ground.layout;
        let mut kinds: Vec<(Effort, usize)> =
            layout.kinds(way).map(|kind| (layout.flow(way, kind), kind)).collect();
        parted.keep_parted(&mut kinds);
        self.ground.cheapest * joined(kinds.iter().map(|(flow, _)| *flow), self.most)
    }
}

/// The least sum of flow × depth over all trees in which a node has at most so many ways.
///
/// **Source**: Huffman 1952, with blanks added so that every join but none is full.
fn joined(flows: impl ExactSizeIterator<Item = Effort>, ways: usize) -> Effort {
    let n = flows.len();
    if n < 2 {
        return 0;
    }
    let blanks = (ways - 1 - (n - 1) % (ways - 1)) % (ways - 1);
    let mut open: BinaryHeap<Reverse<Effort>> =
        flows.chain(std::iter::repeat_n(0, blanks)).map(Reverse).collect();
    let mut sum = 0;
    while open.len() > 1 {
        let join: Effort = (0..ways).filter_map(|_| open.pop()).map(|Reverse(flow)| flow).sum();
        sum += join;
        open.push(Reverse(join));
    }
    sum
}
