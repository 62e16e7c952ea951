//! What must be over within so many questions, carried along in a heap.
//!
//! A wish such as "these two look-alikes must part early" or "no path longer than four" cannot
//! be told from the kinds that are left alone. So a heap has one more word: how many questions
//! each wish still allows, a byte each. Wishes that are over are the same as wishes that never
//! were, so that heaps still meet. Where words are counted, the words that were met follow.

use spinney_model::Early;

use crate::heap::{Heap, Layout};
use crate::set::Set;

/// Where limits and words stand in a heap.
#[derive(Default)]
pub(crate) struct Limits {
    /// The word of the limits; None: there are none.
    at: Option<usize>,
    early: Vec<Early>,
    /// The first word of the words that were met; None: nobody counts them.
    words_at: Option<usize>,
    words: usize,
}

/// No limit, or one that is over.
const OVER: u8 = u8::MAX;

/// Early wishes that a heap has room for, beside the longest path.
pub(crate) const MOST_EARLY: usize = 7;

/// Questions that a limit can allow.
pub(crate) const MOST_STEPS: u32 = 250;

impl Layout {
    /// Makes room for the longest path, and for so many words.
    pub(crate) fn make_room(&mut self, limited: bool, words: Option<usize>) {
        if limited {
            self.limits.at = Some(self.add_words(1));
        }
        if let Some(words) = words {
            self.limits.words = words.div_ceil(64);
            self.limits.words_at = Some(self.add_words(self.limits.words));
        }
    }

    /// Makes room for these wishes, which need not be known when a table is laid out.
    pub(crate) fn make_room_for_early(&mut self, early: &[Early]) {
        debug_assert!(early.len() <= MOST_EARLY, "more early wishes than a heap has room for");
        if !early.is_empty() {
            let at = self.limits.at.take();
            self.limits.at = Some(at.unwrap_or_else(|| self.add_words(1)));
            self.limits.early = early.to_vec();
        }
    }

    /// A heap with limits: questions on any path, and questions until each early wish is over.
    pub(crate) fn limited(&self, heap: &Heap, longest: Option<u32>, within: &[u32]) -> Heap {
        let mut heap = heap.clone();
        let Some(at) = self.limits.at else { return heap };
        let byte = |steps: u32| steps.min(MOST_STEPS) as u8;
        let mut bytes = [OVER; 8];
        bytes[0] = longest.map_or(OVER, byte);
        for (place, steps) in within.iter().enumerate() {
            bytes[place + 1] = byte(*steps);
        }
        heap.0[at] = u64::from_le_bytes(bytes);
        self.strike_what_is_over(&mut heap, at, 0);
        heap
    }

    /// No limits, no words met.
    pub(crate) fn nothing_met(&self, heap: &mut Heap) {
        if let Some(at) = self.limits.at {
            heap.0[at] = u64::MAX;
        }
    }

    /// One question further: limits are one less, and its words are met.
    pub(crate) fn one_further(&self, heap: &mut Heap, words: &Set) {
        if let Some(at) = self.limits.at {
            self.strike_what_is_over(heap, at, 1);
        }
        if let Some(from) = self.limits.words_at {
            for (place, word) in words.0.iter().enumerate() {
                heap.0[from + place] |= word;
            }
        }
    }

    fn strike_what_is_over(&self, heap: &mut Heap, at: usize, less: u8) {
        if heap.0[at] == u64::MAX {
            return;
        }
        let mut bytes = heap.0[at].to_le_bytes();
        for (place, left) in bytes.iter_mut().enumerate() {
            let over = match place.checked_sub(1).map(|early| self.limits.early.get(early)) {
                None => false,
                Some(None) => true,
                Some(Some(early)) => self.is_over(heap, *early),
            };
            if over {
                *left = OVER;
            } else if *left != OVER {
                *left = left.saturating_sub(less);
            }
        }
        heap.0[at] = u64::from_le_bytes(bytes);
    }

    fn is_over(&self, heap: &Heap, early: Early) -> bool {
        match early {
            Early::Part(one, other) => !self.has(heap, one.0) || !self.has(heap, other.0),
            Early::Leave(kind) => !self.has(heap, kind.0),
        }
    }

    /// Whether a limit allows no further question. It is kept all the same if the heap is an
    /// end.
    pub(crate) fn out_of_steps(&self, heap: &Heap) -> bool {
        self.limits.at.is_some_and(|at| heap.0[at].to_le_bytes().contains(&0))
    }

    /// Whether an early wish is still open here.
    pub(crate) fn early_open(&self, heap: &Heap) -> bool {
        let bytes = self.limits.at.map(|at| heap.0[at].to_le_bytes());
        bytes.is_some_and(|bytes| bytes[1..].iter().any(|left| *left != OVER))
    }

    /// Questions that may still be asked on the longest path.
    pub(crate) fn longest_left(&self, heap: &Heap) -> Option<u32> {
        let left = heap.0[self.limits.at?].to_le_bytes()[0];
        (left != OVER).then_some(left.into())
    }

    /// How many of these words were not met on the way here.
    pub(crate) fn new_words(&self, heap: &Heap, words: &Set) -> u32 {
        let Some(from) = self.limits.words_at else { return 0 };
        let met = &heap.0[from..from + self.limits.words];
        words.0.iter().zip(met).map(|(word, met)| (word & !met).count_ones()).sum()
    }
}
