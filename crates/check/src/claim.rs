//! The claim, looked at again: from a walked key and what is claimed to a second opinion.
//!
//! Cost and aims are added up along the walks, wishes are looked for in the key, and the
//! certificate is followed; where none is carried, every key of a small table is looked at.
//! Sections 7, 10, 13 and 20 of `docs/KEY.md`, in exact numbers. Nothing here knows how the key
//! was found.

use std::collections::BTreeSet;

use spinney_model::{
    CharacterIx, Claim, Differs, Finding, Matrix, OfClaim, Place, Share, Wishes,
};

use crate::amount::Amount;
use crate::report::{Effort, Proof};
use crate::walked_key::WalkedKey;

mod aims;
mod certificate;
mod least;
mod reached;
mod replay;
mod wished;

pub(crate) use aims::steps;

/// Characters that must not be asked about under some wishes (`docs/KEY.md` 13).
pub fn left_out(matrix: &Matrix, wishes: &Wishes) -> BTreeSet<CharacterIx> {
    wished::left_out(matrix, wishes)
}

/// The effort of the walked key, where it can be added up.
pub(crate) fn effort(seen: &WalkedKey<'_>) -> Option<Effort> {
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
pub(crate) fn findings(seen: &WalkedKey<'_>, claim: &Claim) -> (Vec<Finding>, Proof) {
    let mut found = wished::findings(seen, claim);
    let Some(effort) = effort(seen) else {
        found.push(Finding::of(Place::Key, OfClaim::EffortNotAdded));
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
fn cost(claim: &Claim, is: &Effort) -> Option<Finding> {
    let effort = Differs::of(is.total, claim.total);
    let mean_questions = Differs::of(is.mean_questions, claim.mean_questions);
    let longest = Differs::of(is.longest, claim.longest);
    if effort.is_none() && mean_questions.is_none() && longest.is_none() {
        return None;
    }
    Some(Finding::of(Place::Key, OfClaim::CostWrong { effort, mean_questions, longest }))
}

/// Where the bound contradicts the key. A proved key reaches its bound, if it costs at all what
/// was claimed.
fn bound(claim: &Claim, effort: &Effort, cost_right: bool) -> Option<Finding> {
    let (bound, takes) = (claim.lower_bound, effort.total);
    let fact = if bound > takes {
        OfClaim::BoundAboveKey { bound, takes }
    } else if claim.optimal() && bound != takes && cost_right {
        OfClaim::NotAtBound { takes, bound }
    } else {
        return None;
    };
    Some(Finding::of(Place::Key, fact))
}
