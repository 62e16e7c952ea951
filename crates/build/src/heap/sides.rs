//! What a question does to a heap: who goes to which side, and what is left of whoever goes to
//! both.

use smallvec::SmallVec;

use crate::heap::{Heap, Layout, Remains};
use crate::set::Set;
use crate::state_space::{Question, Varying};

/// Two to the 64 over the golden ratio (Knuth 1973): near numbers come to lie far apart.
const SPREAD: u64 = 0x9e37_79b9_7f4a_7c15;

/// What a question does to a heap.
pub(crate) enum Asking {
    /// It cannot be put to a kind that is present.
    Blocked,
    /// All kinds answer it alike.
    Idle,
    /// Both answers occur.
    Parts(Sides),
}

/// A cell of which something goes to either side: its slot, what goes to yes and what to no.
pub(crate) type Cut = (usize, Remains, Remains);

/// Who goes to which side, with what left.
#[derive(Clone)]
pub(crate) struct Sides {
    pub(crate) yes: Set,
    pub(crate) no: Set,
    /// The cells that are torn. Of one heap these and the kinds say what is made of it.
    pub(crate) cuts: SmallVec<[Cut; 2]>,
    /// Whether one kind goes only to yes and another only to no.
    pub(crate) parts_a_pair: bool,
}

impl Sides {
    /// Whether both make the same two heaps of the heap that they are sides of, each the same
    /// one.
    pub(crate) fn same_as(&self, other: &Self) -> bool {
        self.yes == other.yes && self.no == other.no && self.cuts == other.cuts
    }

    /// The same, the yes of the one being the no of the other.
    pub(crate) fn opposite_of(&self, other: &Self) -> bool {
        let cuts = || self.cuts.iter().zip(&other.cuts);
        let crossed = |(one, two): (&Cut, &Cut)| *one == (two.0, two.2, two.1);
        self.yes == other.no
            && self.no == other.yes
            && self.cuts.len() == other.cuts.len()
            && cuts().all(crossed)
    }

    /// A number that is the same for sides that are the same, or opposite; others may share it.
    pub(crate) fn in_either_order(&self) -> u8 {
        let words = self.yes.0.iter().zip(&self.no.0);
        let mixed = words.fold(0_u64, |mixed, (yes, no)| {
            let both = yes.wrapping_mul(*no | 1).wrapping_add(no.wrapping_mul(*yes | 1));
            (mixed ^ both ^ yes ^ no).wrapping_mul(SPREAD)
        });
        (mixed >> 56) as u8
    }

    /// Whether a kind goes to both sides.
    pub(crate) fn both(&self, kind: usize) -> bool {
        self.yes.has(kind) && self.no.has(kind)
    }

    /// Kinds that go only to yes, and kinds that go only to no.
    pub(crate) fn only(&self) -> (Set, Set) {
        (self.yes.without(&self.no), self.no.without(&self.yes))
    }
}

impl Layout {
    /// Whether kinds of a heap may answer a question differently, if it can be put at all.
    pub(crate) fn may_part(&self, heap: &Heap, question: &Question) -> bool {
        let words = &heap.0[..self.present];
        let meets = |set: &Set| words.iter().zip(&set.0).any(|(here, there)| here & there != 0);
        meets(&question.may.0) && meets(&question.may.1) && !meets(&question.never)
    }

    /// Puts a question to a heap.
    pub(crate) fn ask(&self, heap: &Heap, question: &Question) -> Asking {
        let words = &heap.0[..self.present];
        let meets = |set: &Set| words.iter().zip(&set.0).any(|(here, there)| here & there != 0);
        if meets(&question.never) || !self.governors_settled(heap, question) {
            return Asking::Blocked;
        }
        let (mut yes, mut no) = (question.yes.of(words), question.no.of(words));
        let (mut yes_only, mut no_only) = (!yes.is_empty(), !no.is_empty());
        let mut cuts: SmallVec<[(usize, Remains, Remains); 2]> = SmallVec::new();
        for Varying { kind, slot, yes: taken } in &question.varying {
            if !self.has(heap, *kind) {
                continue;
            }
            let (kept, rest) = self.left(heap, *slot).cut(*taken);
            match (kept.is_empty(), rest.is_empty()) {
                (false, true) => yes_only = true,
                (true, false) => no_only = true,
                // Only a kind that goes both ways leaves less behind than it brought.
                (false, false) => cuts.push((*slot, kept, rest)),
                (true, true) => {}
            }
            if !kept.is_empty() {
                yes.add(*kind);
            }
            if !rest.is_empty() {
                no.add(*kind);
            }
        }
        if yes.is_empty() || no.is_empty() {
            return Asking::Idle;
        }
        Asking::Parts(Sides { yes, no, cuts, parts_a_pair: yes_only && no_only })
    }
}
