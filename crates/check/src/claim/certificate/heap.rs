//! A heap spread out, and what questions make of it.
//!
//! From kinds as bits and cells as words to flows, and on to the two heaps of a question. One
//! heap after the other takes the same room: a proof has thousands.

use std::ops::Range;

use super::board::{Board, Put, Word};
use super::lines::{Lefts, Query, Taken};
use crate::bits::Bits;

/// The heap that is looked at.
pub(super) struct Heap {
    pub(super) kinds: Vec<u64>,
    taken: Vec<Taken>,
    /// What is left of every cell.
    left: Vec<Word>,
    /// The flow of every kind.
    pub(super) flows: Vec<i128>,
}

/// What a question makes of the heap.
pub(super) struct Split {
    /// Its place among all questions.
    pub(super) question: u32,
    cuts: Range<usize>,
}

/// A cell that is torn: what is left on either side.
#[derive(Clone, Copy, PartialEq, Eq)]
struct Cut {
    cell: u32,
    left: [Word; 2],
}

/// What questions make of the heap, one after the other.
#[derive(Default)]
pub(super) struct Splits {
    words: usize,
    pub(super) all: Vec<Split>,
    /// The kinds on yes and the kinds on no, of each.
    sides: Vec<u64>,
    cuts: Vec<Cut>,
}

pub(super) fn has(kinds: &[u64], kind: usize) -> bool {
    kinds[kind / 64] >> (kind % 64) & 1 == 1
}

pub(super) fn meet(some: &[u64], others: &[u64]) -> bool {
    some.iter().zip(others).any(|(some, others)| some & others != 0)
}

/// The kinds in a set, rising.
pub(super) fn each(kinds: &[u64]) -> impl Iterator<Item = usize> {
    kinds.iter().enumerate().flat_map(|(word, bits)| {
        let mut bits = *bits;
        std::iter::from_fn(move || {
            let lowest = (bits != 0).then(|| word * 64 + bits.trailing_zeros() as usize);
            bits &= bits.wrapping_sub(1);
            lowest
        })
    })
}

impl Heap {
    /// All kinds, nothing taken.
    pub(super) fn whole(board: &Board<'_>) -> Self {
        Self {
            kinds: Bits::all(board.flows.len()).words().to_vec(),
            taken: Vec::new(),
            left: board.cells.iter().map(|cell| cell.full).collect(),
            flows: board.flows.clone(),
        }
    }

    /// Another heap instead.
    pub(super) fn becomes(
        &mut self,
        board: &Board<'_>,
        lefts: &Lefts,
        kinds: &[u64],
        taken: &[Taken],
    ) {
        for before in self.taken.drain(..) {
            let cell = lefts.all[before as usize].0 as usize;
            let of = &board.cells[cell];
            self.left[cell] = of.full;
            self.flows[of.taxon] = board.flows[of.taxon];
        }
        self.kinds.clear();
        self.kinds.extend_from_slice(kinds);
        for now in taken {
            let (cell, word) = lefts.all[*now as usize];
            let of = &board.cells[cell as usize];
            self.left[cell as usize] = word;
            // Whole multiples: every flow has the denominators of all its cells in it.
            let flow = &mut self.flows[of.taxon];
            *flow = *flow / of.denominator() * of.numerator(word);
        }
        self.taken.extend_from_slice(taken);
    }

    /// The flow of all kinds together.
    pub(super) fn flow(&self) -> i128 {
        each(&self.kinds).map(|kind| self.flows[kind]).sum()
    }
}

impl Splits {
    pub(super) fn clear(&mut self, words: usize) {
        self.words = words;
        self.all.clear();
        self.sides.clear();
        self.cuts.clear();
    }

    /// Puts a question to the heap, and keeps what it makes of it unless it is blocked or all
    /// answer it alike; whether it was kept.
    pub(super) fn put(&mut self, heap: &Heap, put: &Put, question: usize) -> bool {
        let here = &heap.kinds[..];
        if meet(put.never.words(), here) {
            return false;
        }
        let settled = |&(kind, cell, right): &(usize, u32, u64)| {
            !has(here, kind) || heap.left[cell as usize] & !right == 0
        };
        if !put.governed.iter().all(settled) {
            return false;
        }
        let (begun, first) = (self.sides.len(), self.cuts.len());
        self.sides.extend_from_slice(put.yes.words());
        self.sides.extend_from_slice(put.no.words());
        let (yes, no) = self.sides[begun..].split_at_mut(self.words);
        yes.iter_mut().zip(here).for_each(|(of, here)| *of &= here);
        no.iter_mut().zip(here).for_each(|(of, here)| *of &= here);
        if meet(put.varies.words(), here) {
            for &(kind, cell, taking) in &put.varying {
                if !has(here, kind) {
                    continue;
                }
                let left = taking.cut(heap.left[cell as usize]);
                let (word, bit) = (kind / 64, 1 << (kind % 64));
                yes[word] |= if left[0] != 0 { bit } else { 0 };
                no[word] |= if left[1] != 0 { bit } else { 0 };
                if left[0] != 0 && left[1] != 0 {
                    self.cuts.push(Cut { cell, left });
                }
            }
        }
        let some = |side: &[u64]| side.iter().any(|word| *word != 0);
        let both = some(yes) && some(no);
        if both {
            let cuts = first..self.cuts.len();
            self.all.push(Split { question: question as u32, cuts });
        } else {
            self.sides.truncate(begun);
            self.cuts.truncate(first);
        }
        both
    }

    /// Takes the last one back.
    pub(super) fn drop_last(&mut self) {
        if let Some(last) = self.all.pop() {
            self.cuts.truncate(last.cuts.start);
            self.sides.truncate(2 * self.words * self.all.len());
        }
    }

    /// The kinds on yes and the kinds on no.
    pub(super) fn sides(&self, at: usize) -> [&[u64]; 2] {
        let begins = 2 * self.words * at;
        let (yes, no) = self.sides[begins..begins + 2 * self.words].split_at(self.words);
        [yes, no]
    }

    /// Whether some kind goes to yes alone and another to no alone.
    pub(super) fn parts_a_pair(&self, at: usize) -> bool {
        let [yes, no] = self.sides(at);
        let only = |some: &[u64], others: &[u64]| {
            some.iter().zip(others).any(|(some, others)| some & !others != 0)
        };
        only(yes, no) && only(no, yes)
    }

    /// Whether two make the same two heaps, each the same one.
    pub(super) fn alike(&self, one: usize, other: usize) -> bool {
        let cuts = |at: usize| &self.cuts[self.all[at].cuts.clone()];
        self.sides(one) == self.sides(other) && cuts(one) == cuts(other)
    }

    /// The flows of kinds that are torn, on one side.
    pub(super) fn torn<'a>(
        &'a self,
        board: &'a Board<'_>,
        heap: &'a Heap,
        at: usize,
        side: usize,
    ) -> impl Iterator<Item = (usize, i128)> + 'a {
        self.cuts[self.all[at].cuts.clone()].iter().map(move |cut| {
            let cell = &board.cells[cut.cell as usize];
            let before = cell.numerator(heap.left[cut.cell as usize]);
            let flow = heap.flows[cell.taxon] / before * cell.numerator(cut.left[side]);
            (cell.taxon, flow)
        })
    }

    /// One of the two heaps; false: something is left of a cell of which no line speaks.
    pub(super) fn side(
        &self,
        board: &Board<'_>,
        lefts: &Lefts,
        heap: &Heap,
        (at, side): (usize, usize),
        into: &mut Query,
    ) -> bool {
        let cuts = self.start(lefts, board, heap, (at, side), into);
        for cut in cuts {
            let Some(number) = lefts.find(cut.cell, cut.left[side]) else { return false };
            into.taken.push(number);
        }
        if !cuts.is_empty() {
            into.taken.sort_unstable();
        }
        true
    }

    /// The same for a heap below a person's question, whether lines speak of it or not.
    pub(super) fn side_of_kept(
        &self,
        board: &Board<'_>,
        lefts: &mut Lefts,
        heap: &Heap,
        side: usize,
    ) -> Query {
        let mut into = Query::default();
        for cut in self.start(lefts, board, heap, (0, side), &mut into) {
            into.taken.push(lefts.add(cut.cell, cut.left[side]));
        }
        into.taken.sort_unstable();
        into
    }

    /// The kinds of a heap and what of its cells stays as it was.
    fn start(
        &self,
        lefts: &Lefts,
        board: &Board<'_>,
        heap: &Heap,
        (at, side): (usize, usize),
        into: &mut Query,
    ) -> &[Cut] {
        let kinds = self.sides(at)[side];
        let cuts = &self.cuts[self.all[at].cuts.clone()];
        into.kinds.clear();
        into.kinds.extend_from_slice(kinds);
        into.taken.clear();
        for taken in &heap.taken {
            let cell = lefts.all[*taken as usize].0;
            if has(kinds, board.cells[cell as usize].taxon)
                && cuts.iter().all(|cut| cut.cell != cell)
            {
                into.taken.push(*taken);
            }
        }
        cuts
    }
}
