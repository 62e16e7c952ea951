//! What flows are where those of the search are rounded, and what a heap fills.
//!
//! From heaps and slots to numbers of any length, and to bytes as they are counted.

use num_rational::BigRational;

use super::{Heap, Layout, Remains, Slot};
use crate::cost::Effort;
use crate::in_full;
use crate::set::bits;

impl Layout {
    /// The true flow of a kind that is present, where those of the search are rounded.
    pub(crate) fn true_flow(&self, heap: &Heap, kind: usize) -> BigRational {
        let of_kind = &self.of_kind[kind];
        let weight = in_full::long(of_kind.weight);
        let shares = of_kind.slots.iter().map(|slot| (*slot, self.left(heap, *slot)));
        shares.fold(weight, |flow, (slot, left)| flow * self.true_share(slot, left))
    }

    /// The true shares of some values of a slot together.
    pub(crate) fn true_share(&self, slot: usize, remains: Remains) -> BigRational {
        let shares = &self.slots[slot].shares;
        match remains {
            Remains::Intervals(from, to) => {
                in_full::long(shares[0] * Effort::from(to.saturating_sub(from)))
            }
            Remains::Values(mask) => {
                let mask = [mask];
                let shares = bits(&mask).map(|value| in_full::long(shares[value]));
                shares.fold(BigRational::default(), |all, share| all + share)
            }
        }
    }

    /// What the slots fill, in bytes.
    pub(crate) fn slot_bytes(&self) -> u64 {
        let of = |slot: &Slot| {
            size_of::<Slot>() + 8 + 16 * slot.numerators.len() + 32 * slot.shares.len()
        };
        self.slots.iter().map(of).sum::<usize>() as u64
    }

    /// What one heap fills beside itself, in bytes.
    pub(crate) fn bytes(&self) -> usize {
        let words = self.own_words() + self.more;
        if words > 6 { 8 * words } else { 0 }
    }
}
