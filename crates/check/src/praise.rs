//! Questions worth praising in a key that pupils wrote: from everything else that was found.
//!
//! A good question is linked to the table and not only sorted by hand, clear for every kind
//! that belongs before it, not hard to see, cleanly worded, and leaves no side with less than a
//! quarter of the heap.

use spinney_model::{Difficulty, Finding, OfShape, Place};

use crate::values::Has;
use crate::walked_key::{WalkedKey, taxa};

/// So many at most: praise for everything is praise for nothing.
const MOST_PRAISED: usize = 3;

/// A heap of fewer kinds is parted evenly by almost any question.
const LEAST_HEAP: usize = 4;

/// The best questions, by the size of the heap they part.
pub(crate) fn findings(seen: &WalkedKey<'_>, others: &[Finding]) -> Vec<Finding> {
    if !seen.settings.pupils_wrote_it || !seen.finished() {
        return Vec::new();
    }
    let mut good: Vec<(usize, u32)> = Vec::new();
    for (index, couplet, question, _) in seen.asked() {
        let place = Place::Couplet(couplet.number);
        if others.iter().any(|finding| finding.place == place)
            || seen.settings.by_hand.contains(&question.character)
            || seen.matrix.character(question.character).difficulty == Difficulty::Hard
        {
            continue;
        }
        let visits = &seen.walked.visits[index];
        // Strays are the fault of the question that let them in.
        let belongs = || visits.iter().filter(|visit| !visit.stray);
        let mut clear =
            belongs().map(|visit| visit.has == Has::Yes && visit.goes != [true, true]);
        let heap = taxa(belongs()).len();
        let yes = taxa(belongs().filter(|visit| visit.goes[0])).len();
        let even = 4 * yes.min(heap - yes) >= heap;
        if heap >= LEAST_HEAP && even && clear.all(|is| is) {
            good.push((heap, couplet.number));
        }
    }
    good.sort_by_key(|(heap, number)| (usize::MAX - heap, *number));
    good.truncate(MOST_PRAISED);
    good.into_iter()
        .map(|(kinds, question)| {
            let fact = OfShape::GoodQuestion { question, kinds };
            Finding::of(Place::Couplet(question), fact)
        })
        .collect()
}
