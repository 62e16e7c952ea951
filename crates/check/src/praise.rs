//! Questions worth praising in a key that pupils wrote: from everything else that was found.
//!
//! A good question is linked, clear for every kind before it, easy to see, cleanly worded,
//! and parts the heap about evenly.

use spinney_model::{Code, Difficulty, Finding, Place};

use crate::seen::{Seen, taxa};
use crate::values::Has;

/// So many at most: praise for everything is praise for nothing.
const MOST_PRAISED: usize = 3;

/// A heap of fewer kinds is parted evenly by almost any question.
const LEAST_HEAP: usize = 4;

/// The best questions, by the size of the heap they part.
pub(crate) fn findings(seen: &Seen<'_>, others: &[Finding]) -> Vec<Finding> {
    if !seen.settings.pupils_wrote_it || !seen.finished() {
        return Vec::new();
    }
    let mut good: Vec<(usize, u32)> = Vec::new();
    for (index, couplet, question, _) in seen.asked() {
        let place = Place::Couplet(couplet.number);
        if others.iter().any(|finding| finding.place == place)
            || seen.matrix.character(question.character).difficulty != Difficulty::Easy
        {
            continue;
        }
        let visits = &seen.walked.visits[index];
        let clear = |visit: &crate::walks::Visit| {
            !visit.stray && visit.has == Has::Yes && visit.goes != [true, true]
        };
        let heap = taxa(visits).len();
        let yes = taxa(visits.iter().filter(|visit| visit.goes[0])).len();
        // Even means that the smaller heap holds at least a third.
        if heap >= LEAST_HEAP && visits.iter().all(clear) && 3 * yes.min(heap - yes) >= heap {
            good.push((heap, couplet.number));
        }
    }
    good.sort_by_key(|(heap, number)| (usize::MAX - heap, *number));
    good.truncate(MOST_PRAISED);
    good.into_iter()
        .map(|(heap, number)| {
            Finding::new(
                Code::GoodQuestion,
                Place::Couplet(number),
                format!(
                    "Question {number} is a good one: easy to see, clear for all {heap} kinds, \
                     and it parts them about evenly."
                ),
                "Keep it.",
            )
        })
        .collect()
}
