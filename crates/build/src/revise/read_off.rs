//! The key that the search found, read off step by step.

use super::new_key::{From, NewKey};
use super::old::Place;
use super::opened::parted;
use super::search::FewestChanges;
use super::step::{On, Step};
use crate::heap::Heap;

impl FewestChanges<'_> {
    /// The key that was found for a heap at a place.
    pub(super) fn laid(&mut self, heap: &Heap, place: Place, changes: u32) -> NewKey {
        let end = NewKey::End(heap.clone());
        if self.solver.space.layout.size(heap) < 2 {
            return end;
        }
        let Some((changes, step)) = self.step(heap, place, changes) else { return end };
        let (question, from, places, own, after_yes) = match (step, place) {
            (Step::Best, _) => return NewKey::best(self.solver, heap),
            (Step::Keep { after_yes }, Some(at)) => {
                let here = &self.old.places[at];
                let Some(question) = here.question else { return end };
                (question, From::Kept(at), (here.yes, here.no), 0, after_yes)
            }
            (Step::Strike { yes }, Some(at)) => {
                let here = &self.old.places[at];
                let (on, lost) = if yes { (here.yes, here.no) } else { (here.no, here.yes) };
                let left = changes - 1 - self.old.size(lost);
                return self.laid(heap, on, left);
            }
            (Step::Ask { question, on, after_yes }, _) => {
                let from = match (on, place) {
                    (On::Straight | On::Crossed, Some(at)) => From::Rewritten(at),
                    _ => From::Added,
                };
                (question, from, on.places(place, self.old), 1, after_yes)
            }
            _ => return end,
        };
        let (yes, no, _) =
            parted(self.solver, heap, question).expect("what was tried can be asked");
        let after_no = changes - own - after_yes;
        let (yes, no) =
            (self.laid(&yes, places.0, after_yes), self.laid(&no, places.1, after_no));
        NewKey::join(heap, question, from, yes, no)
    }
}
