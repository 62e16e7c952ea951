//! Which kinds can be parted at all: from the matrix to groups that must end together.
//!
//! Not being parted is not transitive: beech may stay with holly and holly with box while
//! beech and box are parted. So the groups are the complete sets of kinds of which no two are
//! ever parted, each as large as it can be. Source of the enumeration: Bron and Kerbosch,
//! Communications of the ACM 16 (1973), algorithm 457, with a pivot.

use std::collections::BTreeSet;

use spinney_model::{
    CharacterIx, Finding, OfEnds, OfTable, Place, Scale, Severity, TaxonIx, Value,
};

use crate::candidate;
use crate::names;
use crate::pairs::Pairs;
use crate::tree::To;
use crate::values::{Has, Taken, Values};
use crate::walked_key::WalkedKey;

mod blocked;
mod groups;

/// Groups that nothing parts. Pairs that only the safety gap keeps together are said there.
pub(crate) fn of_table(values: &Values<'_>, pairs: &Pairs) -> Vec<Finding> {
    let (groups, all) = groups::complete(values, pairs);
    let mut found: Vec<Finding> = groups
        .iter()
        .filter(|group| !pairs.only_the_gap(group))
        .map(|group| blocked::finding(values, pairs, group))
        .collect();
    if !all {
        found.push(too_many(OfTable::TooManyGroups));
    }
    if pairs.capped {
        found.push(too_many(OfTable::TooManyKinds));
    }
    found
}

/// Something was too large to be looked at whole. That is no fault of the table.
fn too_many(fact: OfTable) -> Finding {
    Finding { severity: Severity::WorthALook, ..Finding::of(Place::Table, fact) }
}

/// Ends that name kinds which one more question would part, or which never get there.
pub(crate) fn of_key(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (&(couplet, answer), there) in &seen.walked.ends {
        let end = seen.tree.end(couplet, answer).expect("walks come out at ends");
        if seen.tree.to(couplet, answer) != To::End || end.taxa.len() < 2 {
            continue;
        }
        let named: BTreeSet<TaxonIx> = end.taxa.iter().copied().collect();
        let came: BTreeSet<TaxonIx> = there.iter().map(|(taxon, _)| *taxon).collect();
        let heap: Vec<(TaxonIx, &Taken)> = there
            .iter()
            .filter(|(taxon, _)| named.contains(taxon))
            .map(|(taxon, taken)| (*taxon, taken))
            .collect();
        let elsewhere: Vec<TaxonIx> = end
            .taxa
            .iter()
            .filter(|taxon| seen.walked.arrived.get(taxon).is_some_and(|sure| *sure))
            .filter(|taxon| !came.contains(taxon))
            .copied()
            .collect();
        let end = seen.step((couplet, answer));
        let place = Place::Couplet(end.couplet);
        if !elsewhere.is_empty() {
            let kinds = names::kinds(seen.matrix, elsewhere);
            found.push(Finding::of(place, OfEnds::NamedTooOften { end, kinds }));
        } else if let Some(character) = question_for(seen.values, &heap, seen.left_out) {
            let kinds = names::kinds(seen.matrix, heap.iter().map(|(taxon, _)| *taxon));
            let about = names::about(seen.matrix, character);
            found.push(Finding::of(place, OfEnds::CouldBeParted { end, kinds, about }));
        }
    }
    found
}

/// The first character with an admissible question for this heap (sections 4 and 5).
pub(crate) fn question_for(
    values: &Values<'_>,
    heap: &[(TaxonIx, &Taken)],
    left_out: &BTreeSet<CharacterIx>,
) -> Option<CharacterIx> {
    if heap.len() < 2 {
        return None;
    }
    let mut asked = values.matrix.character_indices().filter(|at| !left_out.contains(at));
    asked.find(|character| may_ask(values, heap, *character))
}

/// Whether a question about this character is admissible for this heap.
pub(crate) fn may_ask(
    values: &Values<'_>,
    heap: &[(TaxonIx, &Taken)],
    character: CharacterIx,
) -> bool {
    heap.iter().all(|(taxon, taken)| values.has(*taxon, character, taken) == Has::Yes)
        && match &values.matrix.character(character).scale {
            Scale::Words { states } => words_part(values, heap, character, states.len()),
            Scale::Counts => counts_part(values, heap, character),
            Scale::Measure { gap, .. } => {
                measures_part(values, heap, character, gap.thousandths())
            }
        }
}

fn words_part(
    values: &Values<'_>,
    heap: &[(TaxonIx, &Taken)],
    character: CharacterIx,
    declared: usize,
) -> bool {
    // In a column without any state nothing is shown, and nothing can be asked.
    let shown: BTreeSet<u64> = heap
        .iter()
        .map(|(taxon, taken)| values.states(*taxon, character, taken))
        .filter(|states| *states != 0)
        .collect();
    if values.matrix.character(character).ordered {
        return shown.iter().any(|one| shown.iter().any(|other| stands_before(*one, *other)));
    }
    // Up to six states every split is a question; beyond, one state against the rest.
    let may_be_yes = |states: u64| declared <= 6 || states.count_ones() == 1;
    shown.iter().any(|one| may_be_yes(*one) && shown.iter().any(|other| one & other == 0))
}

/// Whether an order can be cut between these states and those: they all come first.
pub(crate) fn stands_before(these: u64, those: u64) -> bool {
    these != 0 && those != 0 && 63 - these.leading_zeros() < those.trailing_zeros()
}

fn counts_part(values: &Values<'_>, heap: &[(TaxonIx, &Taken)], c: CharacterIx) -> bool {
    let reaches = || heap.iter().filter_map(|(taxon, taken)| values.reach(*taxon, c, taken));
    let lowest_high = reaches().map(|(_, high)| high).min();
    let highest_low = reaches().map(|(low, _)| low).max();
    lowest_high.zip(highest_low).is_some_and(|(high, low)| high < low)
}

/// A threshold is blocked by a range it lies in or near; an unknown kind blocks none.
fn measures_part(
    values: &Values<'_>,
    heap: &[(TaxonIx, &Taken)],
    character: CharacterIx,
    gap: i64,
) -> bool {
    let (mut ranges, mut narrowed) = (Vec::new(), Vec::new());
    for (taxon, taken) in heap {
        let reach = values.reach(*taxon, character, taken);
        match (values.value(*taxon, character), reach) {
            (Value::Range { low, high }, _) => {
                ranges.push((low.thousandths(), high.thousandths()));
            }
            (_, Some(reach)) => narrowed.push(reach),
            _ => {}
        }
    }
    let sides = || ranges.iter().chain(&narrowed);
    let Some(lowest_high) = sides().map(|side| side.1).min() else { return false };
    let highest_low = sides().map(|side| side.0).max().unwrap_or(lowest_high);
    let gap = i128::from(gap);
    ranges.sort_unstable();
    // Stretches in which no range lies, from the end of one to the beginning of the next.
    let mut end = i64::MIN;
    let beyond = [(i64::MAX, i64::MAX)];
    ranges.iter().chain(&beyond).any(|&(low, high)| {
        let (from, to) = (i128::from(end), i128::from(low));
        let middle = candidate::middle(end, low);
        end = end.max(high);
        let least = (from + gap.max(1)).max(i128::from(lowest_high) + 1);
        let most = (to - gap).min(i128::from(highest_low));
        match values.candidates(character) {
            Some(candidates) => candidates.any(least, most),
            None => least <= middle.into() && i128::from(middle) <= most,
        }
    })
}
