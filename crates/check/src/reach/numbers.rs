//! The printed numbers: twice, with gaps, and the back numbers in brackets.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Finding, OfTree, Place};

use crate::tree::To;
use crate::walked_key::WalkedKey;

/// Numbers that stand at two couplets.
pub(super) fn twice(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut bearers: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    for &couplet in &seen.tree.repeated {
        bearers.entry(seen.tree.number(couplet)).or_default().push(couplet);
    }
    bearers
        .into_iter()
        .map(|(number, others)| {
            let probably = seen.tree.probably.iter();
            let mut meant = probably.filter(|(_, couplet)| others.contains(couplet));
            let fact = OfTree::NumberTwice {
                number,
                bearers: others.len() + 1,
                meant: meant.next().map(|(meant, _)| *meant),
            };
            Finding::of(Place::Couplet(number), fact)
        })
        .collect()
}

/// Numbers that do not run 1, 2, 3 down the page.
pub(super) fn skip(seen: &WalkedKey<'_>) -> Option<Finding> {
    if !seen.tree.repeated.is_empty() {
        return None;
    }
    // A gap to which an answer leads is said at that answer.
    let nowhere: BTreeSet<u32> = seen
        .tree
        .to
        .iter()
        .flatten()
        .filter_map(|to| match to {
            To::Nowhere(number) => Some(*number),
            _ => None,
        })
        .collect();
    let expected = (1_u32..).filter(|number| !nowhere.contains(number));
    let mut couplets = seen.tree.key.couplets.iter().zip(expected);
    let (couplet, expected) =
        couplets.find(|(couplet, expected)| couplet.number != *expected)?;
    let fact = OfTree::NumbersSkip { number: couplet.number, expected };
    Some(Finding::of(Place::Couplet(couplet.number), fact))
}

/// Back numbers that are not where one came from.
pub(super) fn back(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let couplets = seen.tree.key.couplets.iter().enumerate();
    couplets
        .filter_map(|(index, couplet)| {
            let back = couplet.back?;
            let mut from: Vec<u32> =
                seen.tree.parents[index].iter().map(|p| seen.tree.number(*p)).collect();
            from.sort_unstable();
            if from.is_empty() || from.contains(&back) {
                return None;
            }
            let question = couplet.number;
            let fact = OfTree::BackWrong { question, back, from };
            Some(Finding::of(Place::Couplet(question), fact))
        })
        .collect()
}
