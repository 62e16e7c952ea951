//! The key as a tree of numbers: from printed numbers and names at ends to findings.
//!
//! One slip makes one finding. A part that nobody gets to beside a number that leads nowhere
//! is one slip, and so are a repeated number beside a missing one. It reads no cell.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Answer, Finding, OfTree, Place, Step, TaxonIx};

use crate::names;
use crate::tree::{ANSWERS, To};
use crate::walked_key::WalkedKey;

mod lost;
mod numbers;

pub(crate) use lost::forgotten;

/// Everything that is wrong with the key as a tree.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    found.extend(numbers::twice(seen));
    found.extend(numbers::skip(seen));
    found.extend(numbers::back(seen));
    let orphans = orphans(seen);
    let holes = missing(seen, &orphans);
    let nothing = nothing_written(seen);
    // As many slips as parts without a way in: each part is probably where a slip should lead.
    let explained = orphans.len() <= holes.len() + nothing.len();
    found.extend(holes);
    found.extend(nothing);
    found.extend(loops(seen));
    if !explained {
        found.extend(orphans.iter().map(|&orphan| unreachable(seen, orphan)));
    }
    found.extend(ways_meet(seen));
    found.extend(same_both_ways(seen));
    found.extend(lost::never_come_out(seen));
    found
}

/// The kinds that get lost by these answers.
fn who_gets_lost(seen: &WalkedKey<'_>, answers: &[(usize, Answer)]) -> Vec<String> {
    let taxa: BTreeSet<TaxonIx> = answers
        .iter()
        .filter_map(|place| seen.walked.fallen.get(place))
        .flatten()
        .copied()
        .collect();
    names::kinds(seen.matrix, taxa)
}

fn missing(seen: &WalkedKey<'_>, orphans: &[usize]) -> Vec<Finding> {
    let mut leading: BTreeMap<u32, Vec<_>> = BTreeMap::new();
    for couplet in 0..seen.tree.to.len() {
        for answer in ANSWERS {
            if let To::Nowhere(number) = seen.tree.to(couplet, answer) {
                leading.entry(number).or_default().push((couplet, answer));
            }
        }
    }
    leading
        .into_iter()
        .map(|(to, places)| {
            let from: Vec<Step> = places.iter().map(|place| seen.step(*place)).collect();
            let place = Place::Couplet(from[0].couplet);
            let perhaps = match orphans {
                [orphan] => Some(seen.tree.number(*orphan)),
                _ => None,
            };
            let lost = who_gets_lost(seen, &places);
            Finding::of(place, OfTree::NumberMissing { to, from, lost, perhaps })
        })
        .collect()
}

fn nothing_written(seen: &WalkedKey<'_>) -> Vec<Finding> {
    (0..seen.tree.to.len())
        .filter_map(|couplet| {
            let empty: Vec<_> = ANSWERS
                .into_iter()
                .filter(|answer| seen.tree.to(couplet, *answer) == To::Nothing)
                .map(|answer| (couplet, answer))
                .collect();
            let question = seen.tree.number(couplet);
            (!empty.is_empty()).then(|| {
                let after = empty.iter().map(|(_, answer)| *answer).collect();
                let lost = who_gets_lost(seen, &empty);
                let fact = OfTree::NothingWritten { question, after, lost };
                Finding::of(Place::Couplet(question), fact)
            })
        })
        .collect()
}

fn loops(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut back = seen.tree.back_by_repeated_numbers();
    for couplet in 0..seen.tree.to.len() {
        for answer in ANSWERS {
            if let To::Back(to) = seen.tree.to(couplet, answer) {
                back.insert((couplet, answer), to);
            }
        }
    }
    let finding = |(place, to): ((usize, Answer), usize)| {
        let from = seen.step(place);
        let lost = who_gets_lost(seen, &[place]);
        let fact = OfTree::Loop { from, to: seen.tree.number(to), lost };
        Finding::of(Place::Couplet(from.couplet), fact)
    };
    back.into_iter().map(finding).collect()
}

/// The first couplet of each part of the key that nobody can get to.
fn orphans(seen: &WalkedKey<'_>) -> Vec<usize> {
    let unreached: Vec<usize> =
        (0..seen.tree.to.len()).filter(|couplet| seen.tree.rank[*couplet].is_none()).collect();
    let mut led_to = vec![false; seen.tree.to.len()];
    for to in unreached.iter().flat_map(|couplet| seen.tree.to[*couplet]) {
        if let To::Couplet(next) = to {
            led_to[next] = true;
        }
    }
    let without_a_way_in = unreached.iter().filter(|couplet| !led_to[**couplet]);
    // What these do not cover goes round in circles without a way in.
    let (mut roots, mut covered) = (Vec::new(), vec![false; seen.tree.to.len()]);
    for &root in without_a_way_in.chain(&unreached) {
        if covered[root] {
            continue;
        }
        roots.push(root);
        let mut trail = vec![root];
        while let Some(couplet) = trail.pop() {
            if seen.tree.rank[couplet].is_none()
                && !std::mem::replace(&mut covered[couplet], true)
            {
                trail.extend(onward(seen, couplet));
            }
        }
    }
    // The second bearer of a number is said at the number.
    roots.retain(|root| !seen.tree.repeated.contains(root));
    roots.sort_unstable();
    roots
}

/// The couplets that a couplet leads to.
fn onward(seen: &WalkedKey<'_>, couplet: usize) -> impl Iterator<Item = usize> {
    seen.tree.to[couplet].into_iter().filter_map(|to| match to {
        To::Couplet(next) => Some(next),
        _ => None,
    })
}

fn unreachable(seen: &WalkedKey<'_>, orphan: usize) -> Finding {
    let number = seen.tree.number(orphan);
    let mut below = BTreeSet::new();
    let mut trail = vec![orphan];
    let mut been = BTreeSet::new();
    while let Some(couplet) = trail.pop() {
        if !been.insert(couplet) {
            continue;
        }
        trail.extend(onward(seen, couplet));
        for answer in ANSWERS {
            let end = seen.tree.end(couplet, answer);
            below.extend(end.iter().flat_map(|end| end.taxa.iter().copied()));
        }
    }
    below.retain(|taxon| taxon.0 < seen.matrix.taxa().len() && seen.named.nowhere(*taxon));
    let fact = OfTree::Unreachable {
        question: number,
        named_below: names::kinds(seen.matrix, below.iter().copied()),
    };
    Finding::of(Place::Couplet(number), fact)
}

fn ways_meet(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let meeting =
        (0..seen.tree.to.len()).filter(|couplet| seen.tree.parents[*couplet].len() > 1);
    meeting
        .map(|couplet| {
            let question = seen.tree.number(couplet);
            let parents = seen.tree.parents[couplet].iter();
            let mut from: Vec<u32> = parents.map(|parent| seen.tree.number(*parent)).collect();
            from.sort_unstable();
            Finding::of(Place::Couplet(question), OfTree::WaysMeet { question, from })
        })
        .collect()
}

fn same_both_ways(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let same = (0..seen.tree.to.len()).filter(|couplet| seen.tree.same_both_ways(*couplet));
    same.map(|couplet| {
        let question = seen.tree.number(couplet);
        Finding::of(Place::Couplet(question), OfTree::SameBothWays { question })
    })
    .collect()
}
