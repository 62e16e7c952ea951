//! The printed numbers: twice, with gaps, and the back numbers in brackets.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Code, Finding, Place};

use crate::seen::Seen;
use crate::sentence;
use crate::tree::To;

/// Numbers that stand at two couplets.
pub(super) fn twice(seen: &Seen<'_>) -> Vec<Finding> {
    let mut bearers: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    for &couplet in &seen.tree.repeated {
        bearers.entry(seen.tree.number(couplet)).or_default().push(couplet);
    }
    bearers
        .into_iter()
        .map(|(number, others)| {
            let meant = seen.tree.probably.iter().find(|(_, couplet)| others.contains(couplet));
            let sentence = format!("{} questions have the number {number}.", others.len() + 1);
            let remedy = meant.map_or_else(
                || "Give each question a number of its own, and mend what leads there.".into(),
                |(meant, _)| {
                    format!(
                        "The second {number} is probably {meant}: an answer leads to {meant}, \
                         and no question has that number."
                    )
                },
            );
            Finding::new(Code::NumberTwice, Place::Couplet(number), sentence, remedy)
        })
        .collect()
}

/// Numbers that do not run 1, 2, 3 down the page.
pub(super) fn skip(seen: &Seen<'_>) -> Option<Finding> {
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
    Some(Finding::new(
        Code::NumbersSkip,
        Place::Couplet(couplet.number),
        format!(
            "The numbers do not run 1, 2, 3: question {} is where {expected} is expected.",
            couplet.number
        ),
        "Number the questions down the page; a class finds its way faster.",
    ))
}

/// Back numbers that are not where one came from.
pub(super) fn back(seen: &Seen<'_>) -> Vec<Finding> {
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
            let number = couplet.number;
            let from = sentence::any(&from.iter().map(u32::to_string).collect::<Vec<_>>());
            Some(Finding::new(
                Code::BackWrong,
                Place::Couplet(number),
                format!(
                    "The number in brackets at question {number} is {back}, but the question \
                     before it is {from}."
                ),
                format!("Write {number} ({from}) there."),
            ))
        })
        .collect()
}
