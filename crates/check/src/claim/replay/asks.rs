//! Every question about one character that may be worth trying at a node.
//!
//! Section 3 of `docs/KEY.md`. Whether something is in the way is for the node to say.

use spinney_model::{Character, CharacterIx, Quantity, Scale, Value};

use super::node::Node;
use crate::candidate;
use crate::question::{Question, Yes};
use crate::values::{Has, Values};

/// Up to this many states every split is a question; beyond it, one state against the rest.
const EVERY_SPLIT: usize = 6;

/// The safety gap of a character in thousandths; 0 where it has none.
pub(in crate::claim) fn gap(character: &Character) -> i64 {
    match character.scale {
        Scale::Measure { gap, .. } => gap.thousandths(),
        Scale::Words { .. } | Scale::Counts => Quantity::ZERO.thousandths(),
    }
}

/// The questions about a character; none where some kind may not have it.
pub(super) fn of(values: &Values<'_>, node: &Node, at: CharacterIx) -> Vec<Question> {
    let mut kinds = node.kinds().iter();
    if kinds.any(|kind| values.has(kind.taxon, at, &kind.taken) != Has::Yes) {
        return Vec::new();
    }
    let character = values.matrix.character(at);
    let asked: Vec<Yes> = match &character.scale {
        Scale::Words { states } => {
            groups(states, character.ordered).into_iter().map(Yes::States).collect()
        }
        Scale::Counts => {
            values.wholes(at).iter().skip(1).map(|whole| Yes::AtLeast(*whole)).collect()
        }
        Scale::Measure { gap, .. } => {
            thresholds(values, node, at, gap.thousandths()).map(Yes::AtLeast).collect()
        }
    };
    asked.into_iter().map(|yes| Question { character: at, yes }).collect()
}

/// Every split of states once: the smaller group, and of equal ones that with the first state.
/// An order is only ever cut once.
pub(in crate::claim) fn groups(states: &[String], ordered: bool) -> Vec<u64> {
    let count = states.len();
    if ordered {
        let cut = |at: usize| {
            let first = (1_u64 << at) - 1;
            if 2 * at <= count { first } else { all(count) & !first }
        };
        return (1..count).map(cut).collect();
    }
    if count > EVERY_SPLIT {
        return (0..count).map(|state| 1 << state).collect();
    }
    let smaller = |group: &u64| {
        let size = group.count_ones() as usize;
        2 * size < count || (2 * size == count && group & 1 == 1)
    };
    (1..1_u64 << count).filter(smaller).collect()
}

/// So many states, as bits.
fn all(count: usize) -> u64 {
    if count < 64 { (1 << count) - 1 } else { u64::MAX }
}

/// Thresholds that no range of the node is known to hinder. Where no cell of the column is
/// unknown, one between two neighbouring ranges is as good as another.
fn thresholds(
    values: &Values<'_>,
    node: &Node,
    at: CharacterIx,
    gap: i64,
) -> impl Iterator<Item = i64> {
    if let Some(candidates) = values.candidates(at) {
        return candidates.at.clone().into_iter();
    }
    let range = |kind: &super::node::Kind| match values.value(kind.taxon, at) {
        Value::Range { low, high } => Some((low.thousandths(), high.thousandths())),
        _ => None,
    };
    let mut ranges: Vec<(i64, i64)> = node.kinds().iter().filter_map(range).collect();
    ranges.sort_unstable();
    let mut found = Vec::new();
    let mut end = None;
    for (low, high) in ranges {
        if let Some(end) = end.filter(|end| *end < low)
            && i128::from(low) - i128::from(end) >= 2 * i128::from(gap)
        {
            found.push(candidate::middle(end, low));
        }
        end = end.max(Some(high));
    }
    found.into_iter()
}
