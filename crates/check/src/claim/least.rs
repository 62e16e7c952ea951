//! The claim against what its certificate proves, or against the best of every key: from two
//! lists of numbers to a finding.

use std::cmp::Ordering;

use spinney_model::{
    Claim, Early, Finding, Goal, OfClaim, Place, ProofFault, Reaches, Share, TaxonIx,
};

use super::certificate::{self, Fault, Followed};
use super::reached;
use super::replay::{Part, Replayed, replay};
use crate::names;
use crate::report::{Proof, Road};
use crate::walked_key::WalkedKey;

/// Whether none is better, by the certificate if one is carried, else by looking at every key.
/// `fine`: nothing else contradicts the claim so far.
pub(super) fn compare(
    seen: &WalkedKey<'_>,
    claim: &Claim,
    fine: bool,
) -> (Option<Finding>, Proof) {
    if claim.optimal()
        && let Some((followed, lines)) = certificate::follow(seen, claim)
    {
        match proved(seen, claim, followed, fine) {
            Some((None, true)) => return (None, Proof::Confirmed(Road::Certificate { lines })),
            Some((says, _)) => {
                return (says.map(wrong), Proof::Contradicted(Road::Certificate { lines }));
            }
            None => {}
        }
    }
    let effort_first = claim.wishes.early.is_empty()
        && reached::goals(&claim.wishes).first() == Some(&Goal::LeastEffort);
    if !claim.optimal() && !effort_first {
        // A search that stopped says nothing then that a better key would contradict.
        return (None, Proof::NothingClaimed);
    }
    let Replayed { nodes, best, parts } = replay(seen, claim);
    let Some(best) = best else { return (None, Proof::NotCarried { nodes }) };
    let says = if claim.optimal() {
        let Some(said) = claimed(claim).filter(|said| said.len() == best.len()) else {
            return (None, Proof::NothingClaimed);
        };
        against_proved(seen, &parts, &said, &best, fine)
    } else {
        let (bound, least) = (claim.lower_bound, best[0]);
        (fine && bound > least).then_some(OfClaim::BoundAboveSome { bound, least })
    };
    match says {
        Some(says) => (Some(wrong(says)), Proof::Contradicted(Road::EveryKey { nodes })),
        None if fine => (None, Proof::Confirmed(Road::EveryKey { nodes })),
        None => (None, Proof::Contradicted(Road::EveryKey { nodes })),
    }
}

fn wrong(fact: OfClaim) -> Finding {
    Finding::of(Place::Key, fact)
}

/// What is to be said of a certificate that was followed, and whether it proves the claim; None:
/// certificates do not speak of such wishes, or of numbers as large as these.
fn proved(
    seen: &WalkedKey<'_>,
    claim: &Claim,
    followed: Followed,
    fine: bool,
) -> Option<(Option<OfClaim>, bool)> {
    let not_so = |fault| Some((Some(OfClaim::ProofFails(fault)), false));
    let named = |heap| names::kinds(seen.matrix, heap);
    match followed {
        Followed::CannotSay => None,
        Followed::Fails(Fault::NoSuchHeap) => not_so(ProofFault::DoesNotFit),
        Followed::Fails(Fault::AnEnd { kinds }) => {
            not_so(ProofFault::CannotSeparate { kinds: named(kinds) })
        }
        Followed::Fails(Fault::TakesLess { kinds, character }) => {
            let about = names::about(seen.matrix, character);
            not_so(ProofFault::SaysTooMuch { kinds: named(kinds), about })
        }
        Followed::Proves(least) => {
            let said = claimed(claim).filter(|said| said.len() == least.len());
            let Some(said) = said else { return Some((None, false)) };
            let parts: Vec<Part> =
                reached::goals(&claim.wishes).into_iter().map(Part::Aim).collect();
            let differs = said.iter().zip(&least).position(|(said, least)| said != least);
            let Some(at) = differs else { return Some((None, fine)) };
            if least[at] > said[at] {
                let says = against_proved(seen, &parts, &said, &least, fine);
                return Some((says, false));
            }
            let (said, least) = (said[at], least[at]);
            let claimed = reaches(seen, parts[at], said);
            not_so(ProofFault::ShowsLess { claimed, least })
        }
    }
}

/// What is claimed, number for number in the order of the parts.
fn claimed(claim: &Claim) -> Option<Vec<Share>> {
    let within = claim.within.iter().map(|within| Share::from_integer((*within).into()));
    let mut said: Vec<Share> = within.collect();
    if claim.wishes.goals.is_empty() {
        said.push(claim.total);
        return Some(said);
    }
    for goal in reached::goals(&claim.wishes) {
        let reached = claim.reached.iter().find(|reached| reached.goal == goal)?;
        said.push(reached.value);
        said.extend(reached.then);
    }
    Some(said)
}

/// What contradicts a claim to be best; nothing where the numbers are the same.
fn against_proved(
    seen: &WalkedKey<'_>,
    parts: &[Part],
    said: &[Share],
    best: &[Share],
    fine: bool,
) -> Option<OfClaim> {
    let (at, order) = said
        .iter()
        .zip(best)
        .map(|(said, best)| best.cmp(said))
        .enumerate()
        .find(|(_, order)| order.is_ne())?;
    let (said, best) = (said[at], best[at]);
    let best = reaches(seen, parts[at], best);
    match order {
        Ordering::Less => Some(OfClaim::BetterKey { best, said }),
        // What else is wrong with the claim has been said already.
        _ => fine.then_some(OfClaim::NoKeyReaches { best, said }),
    }
}

fn reaches(seen: &WalkedKey<'_>, part: Part, number: Share) -> Reaches {
    let name = |taxon: TaxonIx| seen.matrix.taxon(taxon).name.clone();
    let count = || u32::try_from(number.to_integer()).unwrap_or(0);
    match part {
        Part::Aim(goal) => Reaches::Goal(goal, number),
        Part::AllNewWords => Reaches::AllNewWords(number),
        Part::Until(Early::Part(one, other)) => Reaches::Apart([one, other].map(name), count()),
        Part::Until(Early::Leave(taxon)) => Reaches::Out(name(taxon), count()),
    }
}
