//! The claim against what its certificate proves, or against the best of every key: from two
//! lists of numbers to a finding.

use std::cmp::Ordering;

use spinney_model::{Claim, Code, Early, Finding, Goal, Place, Share};

use super::certificate::{self, Fault, Followed};
use super::reached;
use super::replay::{Part, Replayed, replay};
use crate::report::{Proof, Road};
use crate::seen::Seen;
use crate::sentence::{called, kinds};

/// Whether none is better, by the certificate if one is carried, else by looking at every key.
/// `fine`: nothing else contradicts the claim so far.
pub(super) fn compare(seen: &Seen<'_>, claim: &Claim, fine: bool) -> (Option<Finding>, Proof) {
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
        (fine && bound > least).then(|| {
            format!("No key is said to take less effort than {bound}, but one takes {least}.")
        })
    };
    match says {
        Some(says) => (Some(wrong(says)), Proof::Contradicted(Road::EveryKey { nodes })),
        None if fine => (None, Proof::Confirmed(Road::EveryKey { nodes })),
        None => (None, Proof::Contradicted(Road::EveryKey { nodes })),
    }
}

fn wrong(says: String) -> Finding {
    Finding::new(Code::BoundWrong, Place::Key, says, super::REMEDY)
}

/// What is to be said of a certificate that was followed, and whether it proves the claim; None:
/// certificates do not speak of such wishes, or of numbers as large as these.
fn proved(
    seen: &Seen<'_>,
    claim: &Claim,
    followed: Followed,
    fine: bool,
) -> Option<(Option<String>, bool)> {
    let not_so = |why: String| {
        Some((
            Some(format!("The proof that this key is the best does not hold: {why}.")),
            false,
        ))
    };
    match followed {
        Followed::CannotSay => None,
        Followed::Fails(Fault::NoSuchHeap) => {
            not_so("it speaks of kinds, values or numbers that do not fit the table".to_owned())
        }
        Followed::Fails(Fault::AnEnd { kinds: heap }) => not_so(format!(
            "it says that {} must be separated, but no question can do that",
            kinds(seen.matrix, heap)
        )),
        Followed::Fails(Fault::TakesLess { kinds: heap, character }) => not_so(format!(
            "it says too much of what it takes to separate {}, as can be seen when {} is asked \
             about",
            kinds(seen.matrix, heap),
            called(&seen.matrix.character(character).name)
        )),
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
            not_so(format!(
                "{} is claimed, but it only shows that no key comes below {least}",
                in_words(seen, parts[at], said)
            ))
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
    seen: &Seen<'_>,
    parts: &[Part],
    said: &[Share],
    best: &[Share],
    fine: bool,
) -> Option<String> {
    let (at, order) = said
        .iter()
        .zip(best)
        .map(|(said, best)| best.cmp(said))
        .enumerate()
        .find(|(_, order)| order.is_ne())?;
    let (said, best) = (said[at], best[at]);
    match order {
        Ordering::Less => Some(format!(
            "The key is said to be the best under its wishes, but there is a better one: {}, \
             not {said}.",
            in_words(seen, parts[at], best)
        )),
        // What else is wrong with the claim has been said already.
        _ => fine.then(|| {
            format!(
                "No whole key reaches what is claimed of this one. At best, {}, not {said}. \
                 See whether an end names kinds that could be told apart.",
                in_words(seen, parts[at], best)
            )
        }),
    }
}

fn in_words(seen: &Seen<'_>, part: Part, number: Share) -> String {
    match part {
        Part::Aim(goal) => reached::in_words(goal, number),
        Part::AllNewWords => {
            format!("all finds together meet {number} new words, each find by its weight")
        }
        Part::Until(early) => {
            let count = reached::questions(u32::try_from(number.to_integer()).unwrap_or(0));
            match early {
                Early::Part(one, other) => {
                    let pair = kinds(seen.matrix, [one, other]);
                    format!("{pair} are apart within {count}")
                }
                Early::Leave(taxon) => {
                    format!("{} is out within {count}", seen.matrix.taxon(taxon).name)
                }
            }
        }
    }
}
