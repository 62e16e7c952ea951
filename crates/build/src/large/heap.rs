//! A heap laid out for speed: only the kinds that are here, and only what can still be asked.
//!
//! The same heap as in `heap`, but flows are 64-bit numbers, **rounded down** wherever a varying
//! kind is shared out, so that whatever is a bound for them is a bound for the true ones; and a
//! large heap is made from the large heap above it, so that it shrinks with its kinds. A question that
//! all kinds answer alike never parts any of them again and is left out; of several on which no
//! kind varies and which split alike, the cheapest stays.

mod below;
mod lay;

use crate::cost::Effort;
use crate::heap::Remains;

/// Bits after the point of a share.
const SHARE: u32 = 24;
/// Bits that the greatest flow fills.
const FLOW: u32 = 40;

/// A heap laid out for speed.
pub(crate) struct LargeHeap {
    /// The kinds, by their place in the matrix.
    pub(crate) kinds: Vec<u32>,
    pub(crate) flows: Vec<u64>,
    words: usize,
    /// Per question the kinds wholly on yes, wholly on no, and in the way: `words` each.
    bits: Vec<u64>,
    pub(crate) asks: Vec<LargeQuestion>,
    /// What is left of varying cells, where another question than the one that cuts them can
    /// depend on it: the slot, the kind by its place here, and what is left.
    left: Vec<(u32, u32, Remains)>,
    /// Kinds with the same flow, those of groups apart.
    levels: Vec<(u64, Vec<u64>)>,
    /// Kinds that are in a group, by their place here, and the group.
    grouped: Vec<(u32, u32)>,
}

/// A question that can still be asked, here or below.
#[derive(Clone)]
pub(crate) struct LargeQuestion {
    pub(crate) question: u32,
    pub(crate) cost: u64,
    /// Kinds that go both ways.
    both: Vec<Both>,
}

#[derive(Clone, Copy)]
struct Both {
    kind: u32,
    yes: u32,
    no: u32,
}

/// Between flows of large heaps and flows of heaps.
#[derive(Clone, Copy)]
pub(crate) struct Units {
    /// How far flows of heaps are moved to the left, or, below zero, to the right.
    left: i32,
}

impl Units {
    fn down(self, flow: Effort) -> u64 {
        (if self.left >= 0 { flow << self.left } else { flow >> -self.left }) as u64
    }

    /// The least effort that is at least this.
    pub(crate) fn effort(self, units: u64) -> Effort {
        let units = Effort::from(units);
        match self.left >= 0 {
            true => (units + (1 << self.left) - 1) >> self.left,
            false => units << -self.left,
        }
    }
}

/// A side of a question as flows: how many kinds with each.
pub(crate) type Flows = smallvec::SmallVec<[(u64, u32); 24]>;

impl LargeHeap {
    /// Sorts the kinds into levels of equal flow.
    fn put_in_order(&mut self) {
        let mut grouped = vec![false; self.kinds.len()];
        for (kind, _) in &self.grouped {
            grouped[*kind as usize] = true;
        }
        let mut order: Vec<u32> =
            (0..self.kinds.len() as u32).filter(|kind| !grouped[*kind as usize]).collect();
        order.sort_unstable_by_key(|kind| self.flows[*kind as usize]);
        for kind in order {
            let flow = self.flows[kind as usize];
            if self.levels.last().is_none_or(|level| level.0 != flow) {
                self.levels.push((flow, vec![0; self.words]));
            }
            if let Some(level) = self.levels.last_mut() {
                set_bit(&mut level.1, kind);
            }
        }
    }

    /// Whether a question may be asked here: nobody is in its way, and it parts a pair.
    pub(crate) fn admits(&self, at: usize) -> bool {
        let bits = &self.bits[3 * self.words * at..3 * self.words * (at + 1)];
        let some =
            |set: usize| bits[set * self.words..(set + 1) * self.words].iter().any(|w| *w != 0);
        !some(2) && some(0) && some(1)
    }

    /// The most kinds that the smaller side of any question holds, here or below.
    pub(crate) fn split_off(&self) -> usize {
        let count = |words: &[u64]| words.iter().map(|word| word.count_ones()).sum::<u32>();
        let sets = self.bits.chunks_exact(3 * self.words);
        let smaller = |(set, asked): (&[u64], &LargeQuestion)| {
            let (yes, no) = (&set[..self.words], &set[self.words..2 * self.words]);
            count(yes).min(count(no)) as usize + asked.both.len()
        };
        sets.zip(&self.asks).map(smaller).max().unwrap_or(0)
    }

    pub(crate) fn flow(&self) -> u64 {
        self.flows.iter().sum()
    }

    /// The flows of the two sides of a question, rising; groups counted as one kind.
    pub(crate) fn sides(&self, at: usize) -> (Flows, Flows) {
        let base = 3 * self.words * at;
        let yes = &self.bits[base..base + self.words];
        let no = &self.bits[base + self.words..base + 2 * self.words];
        (
            self.flows_of(yes, &self.asks[at].both, true),
            self.flows_of(no, &self.asks[at].both, false),
        )
    }

    fn flows_of(&self, side: &[u64], both: &[Both], yes: bool) -> Flows {
        let mut flows = Flows::new();
        for (flow, kinds) in &self.levels {
            let here = side.iter().zip(kinds).map(|(side, kinds)| (side & kinds).count_ones());
            let here: u32 = here.sum();
            if here > 0 {
                flows.push((*flow, here));
            }
        }
        let shared = |both: &Both| {
            let share = u64::from(if yes { both.yes } else { both.no });
            (self.flows[both.kind as usize] * share) >> SHARE
        };
        if self.grouped.is_empty() {
            for both in both {
                put(&mut flows, shared(both));
            }
            return flows;
        }
        let mut groups: smallvec::SmallVec<[(u32, u64); 16]> = smallvec::SmallVec::new();
        let mut to_group =
            |group: u32, flow: u64| match groups.iter_mut().find(|g| g.0 == group) {
                Some(known) => known.1 += flow,
                None => groups.push((group, flow)),
            };
        let group = |kind: u32| {
            self.grouped.binary_search_by_key(&kind, |g| g.0).ok().map(|at| self.grouped[at].1)
        };
        for both in both {
            match group(both.kind) {
                Some(group) => to_group(group, shared(both)),
                None => put(&mut flows, shared(both)),
            }
        }
        for (kind, group) in &self.grouped {
            if has_bit(side, *kind) {
                to_group(*group, self.flows[*kind as usize]);
            }
        }
        for (_, flow) in groups {
            put(&mut flows, flow);
        }
        flows
    }

    /// The flows of all kinds; groups counted as one kind.
    pub(crate) fn all(&self) -> Flows {
        let mut everyone = vec![u64::MAX; self.words];
        if !self.kinds.len().is_multiple_of(64) {
            everyone[self.words - 1] = (1 << (self.kinds.len() % 64)) - 1;
        }
        self.flows_of(&everyone, &[], true)
    }

    /// About how many bytes it fills.
    pub(crate) fn bytes(&self) -> usize {
        let both: usize = self.asks.iter().map(|asked| 32 + 12 * asked.both.len()).sum();
        8 * self.bits.len() + both + 24 * self.left.len() + 16 * self.kinds.len()
    }

    /// How much work it is to look at all its questions.
    pub(crate) fn work(&self) -> u64 {
        (self.kinds.len() * self.asks.len()) as u64
    }

    /// What flows to a side of a question, and whether no more than one kind goes there.
    pub(crate) fn side_flow(&self, at: usize, yes: bool) -> (u64, bool) {
        let base = 3 * self.words * at + if yes { 0 } else { self.words };
        let side = &self.bits[base..base + self.words];
        let kinds = crate::set::bits(side);
        let (mut flow, mut count) = (0, 0);
        for kind in kinds {
            (flow, count) = (flow + self.flows[kind], count + 1);
        }
        for both in &self.asks[at].both {
            let share = u64::from(if yes { both.yes } else { both.no });
            (flow, count) =
                (flow + ((self.flows[both.kind as usize] * share) >> SHARE), count + 1);
        }
        (flow, count < 2)
    }
}

impl Both {
    fn of(kind: u32, (yes, no): (Effort, Effort)) -> Self {
        let share = |part: Effort| ((part << SHARE) / (yes + no).max(1)) as u32;
        Self { kind, yes: share(yes), no: share(no) }
    }
}

/// Adds a flow in its place.
fn put(flows: &mut Flows, flow: u64) {
    let at = flows.partition_point(|level| level.0 < flow);
    match flows.get_mut(at) {
        Some(level) if level.0 == flow => level.1 += 1,
        _ => flows.insert(at, (flow, 1)),
    }
}

fn within(remains: Remains, right: u64) -> bool {
    matches!(remains, Remains::Values(left) if left & !right == 0)
}

fn set_bit(words: &mut [u64], at: u32) {
    words[at as usize / 64] |= 1 << (at % 64);
}

fn has_bit(words: &[u64], at: u32) -> bool {
    words[at as usize / 64] >> (at % 64) & 1 == 1
}
