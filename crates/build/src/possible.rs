//! Whether a heap has any key at all that keeps the early wishes.
//!
//! From a heap with limits to yes or no: some question whose two heaps both have such a key, or
//! none is needed any more. Costs play no part. How many steps a path may have in all, and which
//! words may be used, is not looked at here.

use rustc_hash::FxHashMap;

use crate::ground::Ground;
use crate::heap::{Asking, Heap};

/// What is known of heaps so far.
#[derive(Default)]
pub(crate) struct Possible {
    seen: FxHashMap<Heap, bool>,
    /// Whether some heap was taken for impossible because there were too many to look at.
    pub(crate) cut_short: bool,
}

/// Heaps that are looked at before the rest is taken for impossible.
const MOST: usize = 200_000;

impl Possible {
    /// Whether the early wishes can still be kept from here.
    pub(crate) fn heap(&mut self, ground: &Ground, heap: &Heap) -> bool {
        let layout = &ground.layout;
        if layout.size(heap) < 2 || !layout.early_open(heap) {
            return true;
        }
        if let Some(known) = self.seen.get(heap) {
            return *known;
        }
        if self.seen.len() >= MOST {
            self.cut_short = true;
            return false;
        }
        let out_of_steps = layout.out_of_steps(heap);
        let mut end = true;
        let mut possible = false;
        let first = self.first_of_order(ground, heap);
        for question in &ground.questions[..ground.candidates] {
            let Asking::Parts(sides) = layout.ask(heap, question) else { continue };
            if !sides.parts_a_pair {
                continue;
            }
            end = false;
            if out_of_steps {
                break;
            }
            let wished = first.is_none_or(|first| question.ask.character == first);
            if !wished || !question.usable {
                continue;
            }
            let (yes, no) = layout.take_sides(heap, question, &sides);
            if self.heap(ground, &yes) && self.heap(ground, &no) {
                possible = true;
                break;
            }
        }
        let possible = possible || end;
        self.seen.insert(heap.clone(), possible);
        possible
    }

    /// The character that must be asked about here because of the order that was wished.
    fn first_of_order(
        &self,
        ground: &Ground,
        heap: &Heap,
    ) -> Option<spinney_model::CharacterIx> {
        ground.order.iter().copied().find(|first| {
            let mut of_first = ground.questions[..ground.candidates]
                .iter()
                .filter(|question| question.ask.character == *first);
            of_first.any(|question| {
                matches!(ground.layout.ask(heap, question),
                    Asking::Parts(sides) if sides.parts_a_pair)
            })
        })
    }
}
