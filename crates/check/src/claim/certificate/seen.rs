//! What everybody can see of a heap without a line about it: the join bound and the shape bound
//! of `docs/KEY.md` 20.
//!
//! From flows and from who is parted from whom to a number of steps × flow.

use std::collections::HashMap;

use crate::bits::Bits;

/// Which kinds every key from a node on has to part, and how few a question there may split off.
pub(super) struct Parted {
    from: Vec<Bits>,
    split_off: usize,
}

impl Parted {
    /// Nothing is known to be parted yet.
    pub(super) fn none(kinds: usize, split_off: usize) -> Self {
        Self { from: vec![Bits::none(kinds); kinds], split_off }
    }

    /// The first of these are parted from the second.
    pub(super) fn part(&mut self, some: &Bits, others: &Bits) {
        some.iter().for_each(|kind| self.from[kind].add_all(others));
        others.iter().for_each(|kind| self.from[kind].add_all(some));
    }

    /// Steps × flow that these kinds take at the least. `flows` is sorted here.
    pub(super) fn least(&self, flows: &mut [(i128, usize)], shapes: &mut Shapes) -> i128 {
        flows.sort_unstable_by(|(a, one), (b, other)| b.cmp(a).then(one.cmp(other)));
        let mut kept = Bits::none(self.from.len());
        // The greatest flows first.
        let mut falling = Vec::with_capacity(flows.len());
        for (flow, kind) in flows.iter() {
            if kept.within(&self.from[*kind]) {
                kept.add(*kind);
                falling.push(*flow);
            }
        }
        let shape = match falling.last() {
            Some(least) if falling.len() >= 4 && 2 * self.split_off < falling.len() => {
                least * shapes.least_steps(falling.len(), self.split_off)
            }
            _ => 0,
        };
        shape.max(joined(&falling))
    }
}

/// The least sum of flow × depth over all trees with these flows, the greatest given first:
/// the two least are joined until one is left (Huffman 1952).
fn joined(falling: &[i128]) -> i128 {
    let mut single = falling.iter().rev().copied().peekable();
    let mut pairs: Vec<i128> = Vec::with_capacity(falling.len());
    let (mut next, mut sum) = (0, 0);
    for _ in 1..falling.len() {
        let mut least = || match (single.peek(), pairs.get(next)) {
            (Some(one), Some(pair)) if pair < one => {
                next += 1;
                pairs[next - 1]
            }
            (Some(_), _) => single.next().unwrap_or(0),
            (None, _) => {
                next += 1;
                pairs[next - 1]
            }
        };
        let pair = least() + least();
        pairs.push(pair);
        sum += pair;
    }
    sum
}

/// S(n) for every s that was needed.
#[derive(Default)]
pub(super) struct Shapes {
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
