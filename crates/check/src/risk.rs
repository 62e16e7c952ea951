//! What may hurt, and what tires: from the key's shape and cautions to findings.
//!
//! Rules P8, S11 and S12 of `docs/TRADE.md`.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{CharacterIx, Finding, OfShape, Place, TaxonIx};

use crate::names;
use crate::question::Question;
use crate::separable::may_ask;
use crate::tree::{ANSWERS, To};
use crate::values::Taken;
use crate::walked_key::{WalkedKey, taxa};

/// Children follow five or six questions (S12).
const MOST_QUESTIONS: u32 = 6;

/// So many kinds split off one after the other are a comb; three are hardly avoided.
const TEETH: usize = 4;

/// Touching with caution, combs and long paths.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = touch(seen);
    found.extend(comb(seen));
    found.extend(long_path(seen));
    found
}

fn touch(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, couplet, question, _) in seen.asked() {
        let Some((risky, otherwise)) = by_touch(seen, index, &question) else { continue };
        let fact = OfShape::TouchCaution {
            question: couplet.number,
            kinds: names::kinds(seen.matrix, risky),
            otherwise: otherwise.map(|at| names::about(seen.matrix, at)),
        };
        found.push(Finding::of(Place::Couplet(couplet.number), fact));
    }
    found
}

/// The kinds with a caution that may be in the hand at a question answered by touch, and what
/// else separates there, if anything does; None: nobody touches what may hurt.
pub(crate) fn by_touch(
    seen: &WalkedKey<'_>,
    couplet: usize,
    question: &Question,
) -> Option<(Vec<TaxonIx>, Option<CharacterIx>)> {
    if !seen.matrix.character(question.character).by_touch {
        return None;
    }
    let visits = &seen.walked.visits[couplet];
    // Strays hurt as much as kinds that belong there.
    let may_hurt = |taxon: &TaxonIx| seen.matrix.taxon(*taxon).caution.is_some();
    let risky: Vec<TaxonIx> = taxa(visits).into_iter().filter(may_hurt).collect();
    if risky.is_empty() {
        return None;
    }
    let otherwise = heap(seen, couplet).and_then(|heap| otherwise(seen, &heap));
    Some((risky, otherwise))
}

/// The first character that separates kinds of which one may hurt, and that nobody has to touch
/// anything for (`docs/KEY.md` 13); None: none of them may hurt, or there is no such character.
pub(crate) fn otherwise(
    seen: &WalkedKey<'_>,
    heap: &[(TaxonIx, &Taken)],
) -> Option<CharacterIx> {
    let matrix = seen.matrix;
    heap.iter().find(|(taxon, _)| matrix.taxon(*taxon).caution.is_some())?;
    let mut seen_alone = matrix
        .character_indices()
        .filter(|at| !matrix.character(*at).by_touch && !seen.left_out.contains(at));
    seen_alone.find(|at| may_ask(seen.values, heap, *at))
}

/// The heap of a couplet; None: ways meet here, and what could be asked depends on the way.
pub(crate) fn heap<'s>(
    seen: &'s WalkedKey<'_>,
    couplet: usize,
) -> Option<Vec<(TaxonIx, &'s Taken)>> {
    let visits = &seen.walked.visits[couplet];
    let heap: Vec<(TaxonIx, &Taken)> =
        visits.iter().map(|visit| (visit.taxon, &visit.taken)).collect();
    let different: BTreeSet<TaxonIx> = heap.iter().map(|(taxon, _)| *taxon).collect();
    (different.len() == heap.len()).then_some(heap)
}

/// The longest run of questions that each send one side straight to an end.
fn comb(seen: &WalkedKey<'_>) -> Option<Finding> {
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
    let question = seen.tree.number(couplet);
    Some(Finding::of(Place::Couplet(question), OfShape::Comb { question, in_a_row: run }))
}

fn long_path(seen: &WalkedKey<'_>) -> Option<Finding> {
    let longest = seen.tree.longest();
    let kinds = seen.matrix.taxa().len();
    let even = even_steps(kinds);
    if longest <= MOST_QUESTIONS && longest <= even + 2 {
        return None;
    }
    Some(Finding::of(Place::Key, OfShape::LongPath { longest, kinds, even }))
}

/// The least longest path for so many kinds: the logarithm to base 2, rounded up.
fn even_steps(kinds: usize) -> u32 {
    kinds.max(1).next_power_of_two().trailing_zeros()
}
