//! A heap: the kinds that are still possible, each with the values it has left.
//!
//! This is the node of `docs/KEY.md` 2. The set of kinds alone is not enough: `lobed or entire`
//! after "lobed? no" *is* `entire`. A heap is one short run of machine words (kinds present,
//! then what is left of every varying cell of a kind present; then what `limits` needs), so
//! that two ways to the same heap are seen to be the same.

use smallvec::SmallVec;
use spinney_model::Share;

use crate::cost::{Effort, SHARE_BITS, Shares, Whole};
use crate::limits::Limits;
use crate::set::{Set, bits};
use crate::state_space::{Governed, Question};

/// A node of a key.
#[derive(Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(crate) struct Heap(pub(crate) SmallVec<[u64; 6]>);

pub(crate) use remains::Remains;
pub(crate) use sides::{Asking, Sides};

mod remains;
mod sides;
mod truth;

/// Where the varying cells of all kinds stand in a heap.
pub(crate) struct Layout {
    kinds: usize,
    present: usize,
    slots: Vec<Slot>,
    /// Per kind its slots, and the words and bits that they fill.
    of_kind: Vec<OfKind>,
    /// Whether flows are true.
    exact: bool,
    /// Whether flows are rounded down; otherwise, where they are not true either, every kind
    /// counts 1 wherever it is present.
    rounded: bool,
    /// The word that is being filled, and how far.
    filling: (usize, u32),
    open: OfKind,
    /// Words beside kinds and slots.
    more: usize,
    pub(crate) limits: Limits,
}

#[derive(Clone, Default)]
struct OfKind {
    slots: Vec<usize>,
    bits: Vec<(usize, u64)>,
    base: Effort,
    /// The true weight, where flows are not true.
    weight: Share,
}

struct Slot {
    word: usize,
    shift: u32,
    width: u32,
    /// Values or intervals.
    values: u32,
    intervals: bool,
    /// A numerator for each value; of intervals all are alike, and there is but one.
    numerators: Vec<Effort>,
    /// True shares in the same way, where numerators are not.
    shares: Vec<Share>,
}

impl Layout {
    pub(crate) fn new(kinds: usize) -> Self {
        let present = kinds.div_ceil(64).max(1);
        Self {
            kinds,
            present,
            slots: Vec::new(),
            of_kind: Vec::new(),
            exact: true,
            rounded: false,
            filling: (present, 0),
            open: OfKind::default(),
            more: 0,
            limits: Limits::default(),
        }
    }

    pub(crate) fn slot_of_values(&mut self, values: usize) -> usize {
        self.slot(values as u32, false, values as u32)
    }

    /// Two numbers of 32 bits: the first interval left, and the one after the last.
    pub(crate) fn slot_of_intervals(&mut self, intervals: u32) -> usize {
        self.slot(64, true, intervals)
    }

    fn slot(&mut self, width: u32, intervals: bool, values: u32) -> usize {
        let (mut word, mut shift) = self.filling;
        if shift + width > 64 {
            (word, shift) = (word + 1, 0);
        }
        self.filling = (word, shift + width);
        let (numerators, shares) = (Vec::new(), Vec::new());
        self.slots.push(Slot { word, shift, width, values, intervals, numerators, shares });
        let slot = self.slots.len() - 1;
        self.open.slots.push(slot);
        match self.open.bits.last_mut() {
            Some((last, bits)) if *last == word => *bits |= ones(width) << shift,
            _ => self.open.bits.push((word, ones(width) << shift)),
        }
        slot
    }

    /// All slots of one kind have been made.
    pub(crate) fn close_kind(&mut self) {
        self.of_kind.push(std::mem::take(&mut self.open));
    }

    /// Gives every kind its base and every slot its numerators, and what these were made from
    /// where they are not true.
    pub(crate) fn weigh(&mut self, whole: Whole, kinds: &[Shares<'_>]) {
        let Whole { denominator, base, numerators } = whole;
        (self.exact, self.rounded) = (denominator.exact, denominator.rounded);
        for ((kind, base), cells) in self.of_kind.iter_mut().zip(base).zip(numerators) {
            kind.base = base;
            for (slot, cell) in kind.slots.iter().zip(cells) {
                self.slots[*slot].numerators = cell;
            }
        }
        if self.exact {
            return;
        }
        for (kind, shares) in self.of_kind.iter_mut().zip(kinds) {
            kind.weight = shares.weight;
            for (slot, cell) in kind.slots.iter().zip(&shares.cells) {
                self.slots[*slot].shares = cell.to_vec();
            }
        }
    }

    /// Whether heaps have words for limits or words that were met.
    pub(crate) fn carries_more(&self) -> bool {
        self.more > 0
    }

    pub(crate) fn kinds_in_all(&self) -> usize {
        self.kinds
    }

    /// Words for kinds and slots.
    fn own_words(&self) -> usize {
        (self.filling.0 + usize::from(self.filling.1 > 0)).max(self.present)
    }

    /// Room for so many more words behind the slots, all of which have been made; the first.
    pub(crate) fn add_words(&mut self, words: usize) -> usize {
        self.more += words;
        self.own_words() + self.more - words
    }

    /// The heap of all kinds with everything left, and no limits.
    pub(crate) fn whole(&self) -> Heap {
        let words = self.own_words() + self.more;
        let mut heap = Heap(SmallVec::from_elem(0, words));
        self.nothing_met(&mut heap);
        for kind in 0..self.kinds {
            heap.0[kind / 64] |= 1 << (kind % 64);
        }
        for slot in 0..self.slots.len() {
            let values = self.slots[slot].values;
            let all = if self.slots[slot].intervals {
                Remains::Intervals(0, values)
            } else {
                Remains::Values(ones(values))
            };
            self.leave(&mut heap, slot, all);
        }
        heap
    }

    pub(crate) fn kinds<'a>(&self, heap: &'a Heap) -> impl Iterator<Item = usize> + use<'a> {
        bits(&heap.0[..self.present])
    }

    pub(crate) fn size(&self, heap: &Heap) -> usize {
        heap.0[..self.present].iter().map(|word| word.count_ones() as usize).sum()
    }

    pub(crate) fn has(&self, heap: &Heap, kind: usize) -> bool {
        heap.0[kind / 64] >> (kind % 64) & 1 == 1
    }

    pub(crate) fn left(&self, heap: &Heap, slot: usize) -> Remains {
        let Slot { word, shift, width, intervals, .. } = self.slots[slot];
        let bits = heap.0[word] >> shift & ones(width);
        if intervals {
            Remains::Intervals((bits >> 32) as u32, bits as u32)
        } else {
            Remains::Values(bits)
        }
    }

    fn leave(&self, heap: &mut Heap, slot: usize, remains: Remains) {
        let Slot { word, shift, width, .. } = self.slots[slot];
        let bits = match remains {
            Remains::Values(mask) => mask,
            Remains::Intervals(from, to) => u64::from(from) << 32 | u64::from(to),
        };
        heap.0[word] = heap.0[word] & !(ones(width) << shift) | bits << shift;
    }

    /// The flow of a kind that is present.
    pub(crate) fn flow(&self, heap: &Heap, kind: usize) -> Effort {
        let of_kind = &self.of_kind[kind];
        let shares = of_kind.slots.iter().map(|&slot| self.share(heap, slot));
        match (self.exact, self.rounded) {
            (true, _) => shares.fold(of_kind.base, |flow, share| flow * share),
            (false, true) => {
                shares.fold(of_kind.base, |flow, share| (flow * share) >> SHARE_BITS)
            }
            (false, false) => of_kind.base,
        }
    }

    /// What is left of every slot.
    pub(crate) fn left_of(&self, heap: &Heap) -> Vec<Remains> {
        (0..self.slots.len()).map(|slot| self.left(heap, slot)).collect()
    }

    /// Of what is left in a slot, the parts that a question takes to yes and to no.
    pub(crate) fn shares(&self, slot: usize, left: Remains, yes: Remains) -> (Effort, Effort) {
        let (kept, rest) = left.cut(yes);
        (self.numerator(slot, kept), self.numerator(slot, rest))
    }

    /// The kinds of a set that are present.
    pub(crate) fn present_of(&self, heap: &Heap, set: &Set) -> Set {
        let words = heap.0[..self.present].iter().zip(&set.0);
        Set(words.map(|(here, there)| here & there).collect())
    }

    /// Whether several values are left in some cell of a kind that is present.
    pub(crate) fn varies(&self, heap: &Heap, kind: usize) -> bool {
        self.of_kind[kind].slots.iter().any(|slot| match self.left(heap, *slot) {
            Remains::Values(mask) => mask.count_ones() > 1,
            Remains::Intervals(from, to) => to - from > 1,
        })
    }

    /// Puts a kind into a heap with all that is left of it in another.
    pub(crate) fn put_back(&self, heap: &mut Heap, kind: usize, from: &Heap) {
        heap.0[kind / 64] |= 1 << (kind % 64);
        for (word, mask) in &self.of_kind[kind].bits {
            heap.0[*word] = heap.0[*word] & !mask | from.0[*word] & mask;
        }
    }

    fn share(&self, heap: &Heap, slot: usize) -> Effort {
        self.numerator(slot, self.left(heap, slot))
    }

    fn numerator(&self, slot: usize, remains: Remains) -> Effort {
        let numerators = &self.slots[slot].numerators;
        match remains {
            Remains::Intervals(from, to) => numerators[0] * Effort::from(to - from),
            Remains::Values(mask) => bits(&[mask]).map(|value| numerators[value]).sum(),
        }
    }

    /// A kind to which a blocked question cannot be put.
    pub(crate) fn in_the_way(&self, heap: &Heap, question: &Question) -> Option<usize> {
        self.kinds(heap).find(|kind| {
            let governed = question.governed.iter().filter(|governed| governed.kind == *kind);
            question.never.has(*kind) || governed.into_iter().any(|g| !self.settled(heap, g))
        })
    }

    /// The most kinds that the smaller side can hold, blocked or not, here or below.
    pub(crate) fn smaller_side(&self, heap: &Heap, question: &Question) -> usize {
        let words = &heap.0[..self.present];
        let count = |set: &Set| -> usize {
            let meet =
                words.iter().zip(&set.0).map(|(here, there)| (here & there).count_ones());
            meet.sum::<u32>() as usize
        };
        let varying = question.varying.iter().filter(|varying| self.has(heap, varying.kind));
        count(&question.yes).min(count(&question.no)) + varying.count()
    }

    fn governors_settled(&self, heap: &Heap, question: &Question) -> bool {
        question
            .governed
            .iter()
            .all(|governed| !self.has(heap, governed.kind) || self.settled(heap, governed))
    }

    pub(crate) fn settled(&self, heap: &Heap, governed: &Governed) -> bool {
        governed.within.iter().all(|(slot, right)| {
            matches!(self.left(heap, *slot), Remains::Values(left) if left & !right == 0)
        })
    }

    /// The two heaps that a question makes.
    pub(crate) fn take_sides(
        &self,
        heap: &Heap,
        question: &Question,
        sides: &Sides,
    ) -> (Heap, Heap) {
        let cuts = || sides.cuts.iter();
        let mut yes = self.side(heap, &sides.yes, cuts().map(|cut| (cut.0, cut.1)));
        let mut no = self.side(heap, &sides.no, cuts().map(|cut| (cut.0, cut.2)));
        if self.more > 0 {
            self.one_further(&mut yes, &question.words);
            self.one_further(&mut no, &question.words);
        }
        (yes, no)
    }

    /// What a question adds up to at a heap, in packed units.
    pub(crate) fn own(&self, heap: &Heap, question: &Question) -> Effort {
        let all: Effort = self.kinds(heap).map(|kind| self.flow(heap, kind)).sum();
        all * self.each(heap, question) + self.singles(heap, question)
    }

    /// What a question costs one find of any kind here.
    pub(crate) fn each(&self, heap: &Heap, question: &Question) -> Effort {
        let new = Effort::from(self.new_words(heap, &question.words));
        question.cost + question.word_unit * new
    }

    /// What it costs more, or less, for single kinds that are here.
    pub(crate) fn singles(&self, heap: &Heap, question: &Question) -> Effort {
        let here = question.singles.iter().filter(|(kind, _)| self.has(heap, *kind));
        here.map(|(kind, more)| self.flow(heap, *kind) * more).sum()
    }

    fn side(
        &self,
        heap: &Heap,
        kinds: &Set,
        cuts: impl Iterator<Item = (usize, Remains)>,
    ) -> Heap {
        let mut side = heap.clone();
        for (slot, remains) in cuts {
            self.leave(&mut side, slot, remains);
        }
        for at in 0..self.present {
            let gone = heap.0[at] & !kinds.0[at];
            side.0[at] = kinds.0[at];
            for bit in bits(&[gone]) {
                for (word, mask) in &self.of_kind[at * 64 + bit].bits {
                    side.0[*word] &= !mask;
                }
            }
        }
        side
    }
}

fn ones(width: u32) -> u64 {
    if width == 64 { u64::MAX } else { (1 << width) - 1 }
}
