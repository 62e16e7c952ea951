//! The claim, looked at again: from a walked key and what is claimed to a second opinion.
//!
//! Cost and aims are added up along the walks, wishes are looked for in the key, and the
//! certificate is followed; where none is carried, every key of a small table is looked at.
//! Sections 7, 10, 13 and 20 of `docs/KEY.md`, in exact numbers. Nothing here knows how the key was found.

use std::collections::BTreeSet;

use spinney_model::{CharacterIx, Claim, Code, Finding, Matrix, Place, Share, Wishes};

use crate::amount::Amount;
use crate::report::{Effort, Proof};
use crate::seen::Seen;
use crate::sentence;

mod aims;
mod certificate;
mod least;
mod reached;
mod replay;
mod wished;

pub(crate) use aims::steps;

/// What to do about a claim that is not so.
const REMEDY: &str =
    "Make the key again from this table. If this comes back, the fault is in Spinney.";

/// Characters that must not be asked about under some wishes (`docs/KEY.md` 13).
pub fn left_out(matrix: &Matrix, wishes: &Wishes) -> BTreeSet<CharacterIx> {
    wished::left_out(matrix, wishes)
}

/// The effort of the walked key, where it can be added up.
pub(crate) fn effort(seen: &Seen<'_>) -> Option<Effort> {
    let effort = seen.walked.effort.as_ref()?;
    let weights = seen.matrix.taxa().iter().map(|taxon| Amount::Short(taxon.weight));
    let weights = weights.fold(Amount::zero(), |all, weight| all.plus(&weight));
    let mean_questions = if weights == Amount::zero() {
        Share::from_integer(0)
    } else {
        effort.steps.over(&weights).said()?
    };
    let total = effort.total.said()?;
    Some(Effort { total, mean_questions, longest: seen.tree.longest() })
}

/// Where the claim and the key disagree, and what became of the proof.
pub(crate) fn findings(seen: &Seen<'_>, claim: &Claim) -> (Vec<Finding>, Proof) {
    let mut found = wished::findings(seen, claim);
    let Some(effort) = effort(seen) else {
        found.push(Finding::new(
            Code::CostWrong,
            Place::Key,
            "The claimed effort could not be added up again for this key.",
            "Link every question, and mend what is asked of kinds that cannot answer.",
        ));
        return (found, Proof::NothingClaimed);
    };
    let wrong = cost(claim, &effort);
    found.extend(bound(claim, &effort, wrong.is_none()));
    found.extend(wrong);
    found.extend(reached::finding(seen, claim));
    let (more, proof) = least::compare(seen, claim, found.is_empty());
    found.extend(more);
    (found, proof)
}

/// Where the cost is not what was claimed.
fn cost(claim: &Claim, effort: &Effort) -> Option<Finding> {
    let mut wrong = Vec::new();
    if claim.total != effort.total {
        wrong.push(format!("its effort is {}, not {}", effort.total, claim.total));
    }
    if claim.mean_questions != effort.mean_questions {
        let (is, said) = (effort.mean_questions, claim.mean_questions);
        let questions = if is == Share::from_integer(1) { "question" } else { "questions" };
        wrong.push(format!("a find takes {is} {questions} on average, not {said}"));
    }
    if claim.longest != effort.longest {
        let (is, said) = (effort.longest, claim.longest);
        let questions = sentence::number(is as usize, "question", "questions");
        wrong.push(format!("the longest path has {is} {questions}, not {said}"));
    }
    (!wrong.is_empty()).then(|| {
        let says = format!("What is claimed of this key is not so: {}.", sentence::all(&wrong));
        Finding::new(Code::CostWrong, Place::Key, says, REMEDY)
    })
}

/// Where the bound contradicts the key. A proved key reaches its bound, if it costs at all what
/// was claimed.
fn bound(claim: &Claim, effort: &Effort, cost_right: bool) -> Option<Finding> {
    let bound = claim.lower_bound;
    let says = if bound > effort.total {
        format!(
            "No key is said to take less effort than {bound}, but this one takes {}.",
            effort.total
        )
    } else if claim.optimal() && bound != effort.total && cost_right {
        format!(
            "The key is said to be proved best, but its effort is {} and the proved bound \
             {bound}.",
            effort.total
        )
    } else {
        return None;
    };
    Some(Finding::new(Code::BoundWrong, Place::Key, says, REMEDY))
}
