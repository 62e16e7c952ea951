//! What may hurt, and what tires: from the key's shape and cautions to findings.
//!
//! Rules P8, S11 and S12 of `docs/TRADE.md`.

use std::collections::BTreeMap;

use spinney_model::{Code, Finding, Place};

use crate::seen::{Seen, taxa};
use crate::sentence::{kinds, number};
use crate::tree::{ANSWERS, To};

/// Children follow five or six questions (S12).
const MOST_QUESTIONS: u32 = 6;

/// So many kinds split off one after the other are a comb; three are hardly avoided.
const TEETH: usize = 4;

/// Touching with caution, combs and long paths.
pub(crate) fn findings(seen: &Seen<'_>) -> Vec<Finding> {
    let mut found = touch(seen);
    found.extend(comb(seen));
    found.extend(long_path(seen));
    found
}

fn touch(seen: &Seen<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, couplet, question, _) in seen.asked() {
        if !seen.matrix.character(question.character).by_touch {
            continue;
        }
        // Strays hurt as much as kinds that belong there.
        let here = taxa(&seen.walked.visits[index]);
        let risky: Vec<_> = here
            .into_iter()
            .filter(|taxon| seen.matrix.taxon(*taxon).caution.is_some())
            .collect();
        if risky.is_empty() {
            continue;
        }
        let names = kinds(seen.matrix, risky.iter().copied());
        found.push(Finding::new(
            Code::TouchCaution,
            Place::Couplet(couplet.number),
            format!(
                "Question {} asks pupils to touch, and {names} {} still among what they may \
                 hold.",
                couplet.number,
                number(risky.len(), "is", "are")
            ),
            "The caution is printed at this question; let an adult hold such a find, or \
             ask another question first.",
        ));
    }
    found
}

/// The longest run of questions that each send one side straight to an end.
fn comb(seen: &Seen<'_>) -> Option<Finding> {
    let mut runs: BTreeMap<usize, usize> = BTreeMap::new();
    let mut best: Option<(usize, usize)> = None;
    for &couplet in seen.tree.order.iter().rev() {
        let on: Vec<usize> = seen.tree.to[couplet]
            .iter()
            .filter_map(|to| match to {
                To::Couplet(next) => Some(*next),
                _ => None,
            })
            .collect();
        let ends = ANSWERS.iter().filter(|a| seen.tree.to(couplet, **a) == To::End).count();
        let run = match on[..] {
            [next] if ends == 1 => 1 + runs.get(&next).copied().unwrap_or(0),
            _ => 0,
        };
        runs.insert(couplet, run);
        if run >= TEETH && best.is_none_or(|(_, longest)| run >= longest) {
            best = Some((couplet, run));
        }
    }
    let (couplet, run) = best?;
    let here = taxa(&seen.walked.visits[couplet]).len();
    // Where even the most even questions take as many steps, nothing is wrong.
    if here > 0 && (run as u32) < even_steps(here) {
        return None;
    }
    let at = seen.tree.number(couplet);
    Some(Finding::new(
        Code::Comb,
        Place::Couplet(at),
        format!(
            "From question {at} on, {run} questions in a row each split off one end only, like \
             the teeth of a comb."
        ),
        "Look for a question that makes two heaps of nearly the same size.",
    ))
}

fn long_path(seen: &Seen<'_>) -> Option<Finding> {
    let longest = seen.tree.longest();
    let ends = seen.matrix.taxa().len();
    let even = even_steps(ends);
    if longest <= MOST_QUESTIONS && longest <= even + 2 {
        return None;
    }
    Some(Finding::new(
        Code::LongPath,
        Place::Key,
        format!(
            "The longest path has {longest} questions; with even questions {ends} {} about \
             {even}.",
            number(ends, "kind takes", "kinds take")
        ),
        "Ask questions that make two heaps of nearly the same size, or make two keys.",
    ))
}

/// The least longest path for so many kinds: the logarithm to base 2, rounded up.
fn even_steps(kinds: usize) -> u32 {
    kinds.max(1).next_power_of_two().trailing_zeros()
}
