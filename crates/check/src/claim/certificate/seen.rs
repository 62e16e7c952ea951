//! What everybody can see of a heap without a line about it: the join bound and the shape bound
//! of `docs/KEY.md` 20.
//!
//! From flows and from who is parted from whom to a number of steps × flow.

use std::cmp::Reverse;
use std::collections::HashMap;

use super::board::{Board, Put};
use super::heap::{Heap, Splits, each, has};

/// Which kinds every key from the heap of a line on has to part, and how few a question there
/// may split off.
pub(super) struct Sight {
    words: usize,
    /// For every kind, those from which it is parted wherever both are.
    always: Vec<u64>,
    /// The same at this heap; empty where all its kinds are parted from each other.
    from: Vec<u64>,
    split_off: usize,
    /// The kinds of the heap, the greatest flow first.
    falling: Vec<(i128, usize)>,
    shapes: Shapes,
    side: Vec<(i128, usize)>,
    kept: Vec<u64>,
    kept_flows: Vec<i128>,
    joins: Vec<i128>,
}

impl Sight {
    pub(super) fn of(board: &Board<'_>) -> Self {
        let kinds = board.flows.len();
        let words = kinds.div_ceil(64);
        let mut always = vec![0; kinds * words];
        // Nothing can be in the way of such a question.
        let free = |put: &&Put| put.never.is_empty() && put.governed.is_empty();
        for put in board.questions.iter().filter(free) {
            part(&mut always, put.yes.words(), put.no.words());
        }
        Self {
            words,
            always,
            from: Vec::new(),
            split_off: 0,
            falling: Vec::new(),
            shapes: Shapes::default(),
            side: Vec::new(),
            kept: Vec::new(),
            kept_flows: Vec::new(),
            joins: Vec::new(),
        }
    }

    /// Looks at a heap; whether all its kinds are parted from each other whatever stands in the
    /// way of other questions. Then nothing more need be known.
    pub(super) fn at_once(&mut self, board: &Board<'_>, heap: &Heap) -> bool {
        self.falling.clear();
        self.falling.extend(each(&heap.kinds).map(|kind| (heap.flows[kind], kind)));
        sort(&mut self.falling);
        self.split_off = split_off(board, &heap.kinds, self.falling.len());
        self.from.clear();
        self.complete(&self.always, &heap.kinds)
    }

    /// Looks at the same heap with all that can be asked of it.
    pub(super) fn at(&mut self, heap: &Heap, asks: &Splits) {
        self.from.extend_from_slice(&self.always);
        for at in 0..asks.all.len() {
            let [yes, no] = asks.sides(at);
            let mut only = [yes.to_vec(), no.to_vec()];
            for (word, both) in yes.iter().zip(no).map(|(yes, no)| yes & no).enumerate() {
                only.iter_mut().for_each(|side| side[word] &= !both);
            }
            part(&mut self.from, &only[0], &only[1]);
        }
        if self.complete(&self.from, &heap.kinds) {
            self.from.clear();
        }
    }

    fn complete(&self, from: &[u64], here: &[u64]) -> bool {
        each(here).all(|kind| {
            let parted = &from[kind * self.words..(kind + 1) * self.words];
            let mut words = here.iter().zip(parted).enumerate();
            words.all(|(word, (here, parted))| {
                let itself = if word == kind / 64 { 1 << (kind % 64) } else { 0 };
                here & !parted & !itself == 0
            })
        })
    }

    /// Steps × flow that these kinds take at the least, and the flow of those kinds that are
    /// parted from each other; some of them with less flow than at the heap.
    pub(super) fn least(
        &mut self,
        kinds: &[u64],
        torn: impl Iterator<Item = (usize, i128)>,
    ) -> (i128, i128) {
        self.side.clear();
        for one in &self.falling {
            if has(kinds, one.1) {
                self.side.push(*one);
            }
        }
        let mut sorted = true;
        for (kind, flow) in torn {
            let of_kind = self.side.iter_mut().find(|(_, at)| *at == kind);
            of_kind.into_iter().for_each(|(whole, _)| *whole = flow);
            sorted = false;
        }
        if !sorted {
            sort(&mut self.side);
        }
        self.kept_flows.clear();
        if self.from.is_empty() {
            self.kept_flows.extend(self.side.iter().map(|(flow, _)| *flow));
        } else {
            self.kept.clear();
            self.kept.resize(self.words, 0);
            for (flow, kind) in &self.side {
                let from = &self.from[kind * self.words..(kind + 1) * self.words];
                if self.kept.iter().zip(from).all(|(kept, from)| kept & !from == 0) {
                    self.kept[kind / 64] |= 1 << (kind % 64);
                    self.kept_flows.push(*flow);
                }
            }
        }
        let many = self.kept_flows.len();
        let shape = match self.kept_flows.last() {
            Some(least) if many >= 4 && 2 * self.split_off < many => {
                least * self.shapes.least_steps(many, self.split_off)
            }
            _ => 0,
        };
        let joined = joined(&self.kept_flows, &mut self.joins);
        (shape.max(joined), self.kept_flows.iter().sum())
    }
}

/// The first of these are parted from the second.
fn part(from: &mut [u64], some: &[u64], others: &[u64]) {
    let words = some.len();
    for (some, others) in [(some, others), (others, some)] {
        for kind in each(some) {
            let of_kind = &mut from[kind * words..(kind + 1) * words];
            of_kind.iter_mut().zip(others).for_each(|(from, others)| *from |= others);
        }
    }
}

/// The most kinds that any question splits off at a heap or below it; where that says nothing
/// any more, some number that says nothing.
fn split_off(board: &Board<'_>, here: &[u64], many: usize) -> usize {
    let mut most = 0;
    for put in &board.questions {
        if many < 4 || 2 * most >= many {
            break;
        }
        let count = |set: &[u64]| -> u32 {
            set.iter().zip(here).map(|(set, here)| (set & here).count_ones()).sum()
        };
        let varying = count(put.varies.words());
        most = most.max((count(put.yes.words()).min(count(put.no.words())) + varying) as usize);
    }
    most
}

/// The greatest flow first; of equal flows the earlier in the table.
fn sort(flows: &mut [(i128, usize)]) {
    if flows.len() > 64 {
        flows.sort_unstable_by_key(|(flow, kind)| (Reverse(*flow), *kind));
        return;
    }
    // They come nearly sorted.
    let before = |one: &(i128, usize), two: &(i128, usize)| {
        one.0 > two.0 || (one.0 == two.0 && one.1 < two.1)
    };
    for at in 1..flows.len() {
        let mut place = at;
        while place > 0 && before(&flows[place], &flows[place - 1]) {
            flows.swap(place - 1, place);
            place -= 1;
        }
    }
}

/// The least sum of flow × depth over all trees with these flows, the greatest given first:
/// the two least are joined until one is left (Huffman 1952).
fn joined(falling: &[i128], joins: &mut Vec<i128>) -> i128 {
    joins.clear();
    let (mut single, mut next, mut sum) = (falling.len(), 0, 0);
    for _ in 1..falling.len() {
        let mut pair = 0;
        for _ in 0..2 {
            let take_single =
                single > 0 && joins.get(next).is_none_or(|join| falling[single - 1] <= *join);
            if take_single {
                single -= 1;
                pair += falling[single];
            } else {
                pair += joins[next];
                next += 1;
            }
        }
        joins.push(pair);
        sum += pair;
    }
    sum
}

/// S(n) for every s that was needed.
#[derive(Default)]
struct Shapes {
    by_split: HashMap<usize, Vec<i128>>,
}

impl Shapes {
    fn least_steps(&mut self, kinds: usize, split_off: usize) -> i128 {
        let steps = self.by_split.entry(split_off).or_insert_with(|| vec![0, 0]);
        while steps.len() <= kinds {
            let all = steps.len();
            let split = |k: usize| steps[k] + steps[all - k];
            // Where no question splits anything off there is no key; nothing is said then.
            let best = (1..=split_off.min(all / 2)).map(split).min().unwrap_or(0);
            steps.push(all as i128 + best);
        }
        steps[kinds]
    }
}
