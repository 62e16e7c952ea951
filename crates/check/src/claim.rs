//! The claim, added up again: from the walks' effort to a second opinion on the certificate.
//!
//! Section 7 of `docs/KEY.md` in exact rationals. It cannot prove a bound; it can say where
//! one contradicts the key.

use spinney_model::{Claim, Code, Finding, Place, Share};

use crate::report::Effort;
use crate::seen::Seen;
use crate::sentence;

/// The effort of the walked key, where it can be added up.
pub(crate) fn effort(seen: &Seen<'_>) -> Option<Effort> {
    let effort = seen.walked.effort?;
    let weights: Share = seen.matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let none = Share::from_integer(0);
    let mean_steps = if weights > none { effort.steps / weights } else { none };
    Some(Effort { total: effort.total, mean_steps, longest: seen.tree.longest() })
}

/// Where the claim and the key disagree.
pub(crate) fn findings(seen: &Seen<'_>, claim: &Claim) -> Vec<Finding> {
    let Some(effort) = effort(seen) else {
        return vec![Finding::new(
            Code::CostWrong,
            Place::Key,
            "The claimed effort could not be added up again for this key.",
            "Link every question, and mend what is asked of kinds that cannot answer.",
        )];
    };
    let mut found = Vec::new();
    let mut wrong = Vec::new();
    if claim.total != effort.total {
        wrong.push(format!("its effort is {}, not {}", effort.total, claim.total));
    }
    if claim.mean_steps != effort.mean_steps {
        let (is, said) = (effort.mean_steps, claim.mean_steps);
        let questions = if is == Share::from_integer(1) { "question" } else { "questions" };
        wrong.push(format!("a find takes {is} {questions} on average, not {said}"));
    }
    if claim.longest != effort.longest {
        let (is, said) = (effort.longest, claim.longest);
        let questions = sentence::number(is as usize, "question", "questions");
        wrong.push(format!("the longest path has {is} {questions}, not {said}"));
    }
    if !wrong.is_empty() {
        found.push(Finding::new(
            Code::CostWrong,
            Place::Key,
            format!("What is claimed of this key is not so: {}.", sentence::all(&wrong)),
            "Build the key again from this table; if it stays so, the tool is at fault.",
        ));
    }
    let bound = claim.lower_bound;
    if bound > effort.total || (claim.optimal() && bound != effort.total && wrong.is_empty()) {
        let sentence = if bound > effort.total {
            format!(
                "No key is said to take less effort than {bound}, but this one takes {}.",
                effort.total
            )
        } else {
            format!(
                "The key is said to be proved best, but its effort is {} and the proved bound \
                 {bound}.",
                effort.total
            )
        };
        found.push(Finding::new(
            Code::BoundWrong,
            Place::Key,
            sentence,
            "Build the key again from this table; if it stays so, the tool is at fault.",
        ));
    }
    found
}
