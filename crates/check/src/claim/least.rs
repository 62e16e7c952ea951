//! The claim against the best that the replay finds: from two lists of numbers to a finding.

use std::cmp::Ordering;

use spinney_model::{Claim, Code, Early, Finding, Goal, Place, Share};

use super::reached;
use super::replay::{Part, Replayed, replay};
use crate::report::Replay;
use crate::seen::Seen;
use crate::sentence::kinds;

/// Replays the proof. `fine`: nothing else contradicts the claim so far.
pub(super) fn compare(seen: &Seen<'_>, claim: &Claim, fine: bool) -> (Option<Finding>, Replay) {
    let effort_first = claim.wishes.early.is_empty()
        && reached::goals(&claim.wishes).first() == Some(&Goal::LeastEffort);
    if !claim.optimal() && !effort_first {
        // A search that stopped says nothing then that a better key would contradict.
        return (None, Replay::NotReplayed);
    }
    let Replayed { nodes, best, parts } = replay(seen, claim);
    let Some(best) = best else { return (None, Replay::TooLarge { nodes }) };
    let says = if claim.optimal() {
        let Some(said) = claimed(claim).filter(|said| said.len() == best.len()) else {
            return (None, Replay::NotReplayed);
        };
        against_proved(seen, &parts, &said, &best, fine)
    } else {
        let (bound, least) = (claim.lower_bound, best[0]);
        (fine && bound > least).then(|| {
            format!("No key is said to take less effort than {bound}, but one takes {least}.")
        })
    };
    match says {
        Some(says) => {
            let finding = Finding::new(Code::BoundWrong, Place::Key, says, super::REMEDY);
            (Some(finding), Replay::Contradicted { nodes })
        }
        None if fine => (None, Replay::Confirmed { nodes }),
        None => (None, Replay::Contradicted { nodes }),
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
                "No whole key reaches what is claimed of this one. At best, {}, not {said}. See \
                 whether an end names kinds that could be parted.",
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
