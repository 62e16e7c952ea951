//! What a heap takes at the very least.
//!
//! Kinds that every key below a heap must part need a prefix code among them, so Huffman's mean
//! length (Huffman 1952) times the cheapest question bounds their effort. It would be false over
//! all kinds: those that no key parts need no question between them (`docs/KEY.md` 12).
//!
//! Where no question splits more than s kinds off, as in a comb, no code is that good: n kinds
//! then take at least L(n, s) = n + min over k <= s of L(k, s) + L(n − k, s) steps, each carrying
//! at least the least flow. (A kind that goes both ways counts on both sides; of its several
//! ends take the nearest. Below a heap s only falls.)

use rustc_hash::FxHashMap;
use smallvec::SmallVec;

use crate::cost::Effort;
use crate::set::Set;

/// Which pairs of kinds every key below a heap must part.
pub(crate) struct Parted {
    with: Vec<Set>,
    complete: bool,
    /// The most kinds that the smaller side of any question holds, here or below.
    split_off: usize,
}

/// Beyond this many kinds pairs are not listed one by one: they would fill memory.
pub(crate) const PAIRS_UP_TO: usize = 512;

impl Parted {
    /// No pair is known to be parted.
    pub(crate) fn none() -> Self {
        Self { with: Vec::new(), complete: false, split_off: usize::MAX }
    }

    /// From the kinds that admissible questions send only to yes and only to no.
    pub(crate) fn by(
        kinds: usize,
        present: &[usize],
        split_off: usize,
        questions: impl Iterator<Item = (Set, Set)>,
    ) -> Self {
        let mut with = vec![Set::none(kinds); kinds];
        for (yes, no) in questions {
            for kind in yes.iter() {
                with[kind].join(&no);
            }
            for kind in no.iter() {
                with[kind].join(&yes);
            }
        }
        let complete = present.iter().all(|kind| with[*kind].len() + 1 >= present.len());
        Self { with, complete, split_off }
    }

    /// Whether two of these kinds must be parted.
    pub(crate) fn some_of(&self, kinds: &Set) -> bool {
        !self.with.is_empty() && kinds.iter().any(|kind| self.with[kind].meets(kinds))
    }

    /// Whether all pairs must be parted.
    pub(crate) fn complete(&self) -> bool {
        self.complete
    }

    /// The least steps for kinds with these flows: Huffman over a set that is wholly parted.
    /// Then Huffman over all of them, which is a guess where not all are parted, else 0.
    ///
    /// `kinds` gives each kind once, with its flow.
    pub(crate) fn least_steps(
        &self,
        kinds: &mut Vec<(Effort, usize)>,
        splits: &mut Splits,
    ) -> (Effort, Effort) {
        sort(kinds);
        let all = huffman(kinds.iter().map(|(flow, _)| *flow));
        if self.complete {
            return (all.max(self.by_splits(kinds, splits)), 0);
        }
        self.keep_parted(kinds);
        sort(kinds);
        let least = huffman(kinds.iter().map(|(flow, _)| *flow));
        (least.max(self.by_splits(kinds, splits)), all)
    }

    fn by_splits(&self, rising: &[(Effort, usize)], splits: &mut Splits) -> Effort {
        let n = rising.len();
        if n < 4 || 2 * self.split_off >= n {
            return 0;
        }
        rising[0].0 * splits.least_steps(n, self.split_off)
    }

    /// Leaves kinds that are parted from each other, the greatest flows first.
    pub(crate) fn keep_parted(&self, kinds: &mut Vec<(Effort, usize)>) {
        if self.with.is_empty() {
            kinds.clear();
            return;
        }
        kinds.sort_unstable_by_key(|(flow, kind)| (std::cmp::Reverse(*flow), *kind));
        let mut chosen = Set::none(self.with.len());
        kinds.retain(|(_, kind)| {
            let parted = self.with[*kind].holds(&chosen);
            if parted {
                chosen.add(*kind);
            }
            parted
        });
    }
}

/// L(n, s): the least steps to n kinds if no question splits more than s off.
#[derive(Default)]
pub(crate) struct Splits {
    /// By s, then by n.
    by_size: FxHashMap<usize, Vec<Effort>>,
}

impl Splits {
    pub(crate) fn least_steps(&mut self, n: usize, split_off: usize) -> Effort {
        let steps = self.by_size.entry(split_off).or_insert_with(|| vec![0, 0]);
        while steps.len() <= n {
            let all = steps.len();
            let best = (1..=split_off.min(all / 2)).map(|k| steps[k] + steps[all - k]).min();
            steps.push(all as Effort + best.unwrap_or(0));
        }
        steps[n]
    }
}

/// Flows come nearly sorted from the heap above.
fn sort(kinds: &mut [(Effort, usize)]) {
    if kinds.len() > 64 {
        kinds.sort_unstable();
        return;
    }
    for at in 1..kinds.len() {
        let mut place = at;
        while place > 0 && kinds[place - 1] > kinds[place] {
            kinds.swap(place - 1, place);
            place -= 1;
        }
    }
}

/// The least sum of flow × depth over all binary trees with these flows, given in rising order.
///
/// **Source**: Huffman 1952 with two queues (van Leeuwen 1976).
pub(crate) fn huffman(rising: impl ExactSizeIterator<Item = Effort>) -> Effort {
    let n = rising.len();
    if n < 2 {
        return 0;
    }
    let mut single = rising.peekable();
    let mut joined: SmallVec<[Effort; 16]> = SmallVec::with_capacity(n - 1);
    let mut head = 0;
    let mut sum = 0;
    for _ in 1..n {
        let mut pair = 0;
        for _ in 0..2 {
            let take_single = match (single.peek(), joined.get(head)) {
                (Some(one), Some(two)) => one <= two,
                (one, _) => one.is_some(),
            };
            if take_single {
                pair += single.next().unwrap_or(0);
            } else {
                pair += joined[head];
                head += 1;
            }
        }
        joined.push(pair);
        sum += pair;
    }
    sum
}

#[cfg(test)]
mod tests;
