//! Complete sets of kinds that are never parted, each as large as it can be.

use std::collections::BTreeSet;

use spinney_model::TaxonIx;

use crate::bits::Bits;
use crate::pairs::Pairs;
use crate::values::{Taken, Values};

/// More groups than this are not listed.
const MOST_GROUPS: usize = 200;

/// Steps of the enumeration after which it gives up; a good table needs a few dozen.
const MOST_STEPS: usize = 50_000;

/// Up to this many kinds, groups are also looked at with whatever blocks their questions.
const MOST_WITH_BLOCKERS: usize = 200;

/// All groups, and whether that is all of them.
pub(super) fn complete(values: &Values<'_>, pairs: &Pairs) -> (Vec<Vec<usize>>, bool) {
    if pairs.capped {
        let mut groups = pairs.equal_rows.clone();
        let all = groups.len() <= MOST_GROUPS;
        groups.truncate(MOST_GROUPS);
        return (groups, all);
    }
    let mut search = Grouping { pairs, groups: Vec::new(), steps: 0 };
    let with: Vec<usize> =
        (0..pairs.kinds()).filter(|t| pairs.company(*t).next().is_some()).collect();
    let mut here = Bits::none(pairs.kinds());
    with.iter().for_each(|taxon| here.add(*taxon));
    search.grow(&mut Vec::new(), here, Bits::none(pairs.kinds()));
    let all = search.steps < MOST_STEPS && search.groups.len() < MOST_GROUPS;
    let mut groups = search.groups;
    if pairs.kinds() <= MOST_WITH_BLOCKERS {
        groups = with_blockers(values, pairs, groups);
    }
    groups.sort();
    (groups, all)
}

/// Adds kinds to a group that is parted only by questions which the newcomer's company
/// blocks: lime and elm may be told by the stalk, but not while hazel, which is never parted
/// from either, lies across every threshold.
fn with_blockers(
    values: &Values<'_>,
    pairs: &Pairs,
    groups: Vec<Vec<usize>>,
) -> Vec<Vec<usize>> {
    let mut grown: BTreeSet<Vec<usize>> = BTreeSet::new();
    for mut group in groups {
        let near: BTreeSet<usize> =
            group.iter().flat_map(|taxon| pairs.company(*taxon)).collect();
        for taxon in near {
            if group.contains(&taxon) {
                continue;
            }
            group.push(taxon);
            if parted(values, pairs, &group) {
                group.pop();
            }
        }
        group.sort_unstable();
        grown.insert(group);
    }
    let all: Vec<Vec<usize>> = grown.into_iter().collect();
    all.iter()
        .filter(|group| {
            !all.iter().any(|other| {
                other.len() > group.len() && group.iter().all(|taxon| other.contains(taxon))
            })
        })
        .cloned()
        .collect()
}

/// Whether a question parts some of these kinds and none of them is in its way, whatever
/// questions about its governors come before it.
fn parted(values: &Values<'_>, pairs: &Pairs, group: &[usize]) -> bool {
    values.matrix.character_indices().any(|character| {
        let before: Vec<(TaxonIx, Taken)> = group
            .iter()
            .map(|taxon| TaxonIx(*taxon))
            .map(|taxon| (taxon, pairs.settled.before(values, taxon, character)))
            .collect();
        let heap: Vec<(TaxonIx, &Taken)> =
            before.iter().map(|(taxon, taken)| (*taxon, taken)).collect();
        super::may_ask(values, &heap, character)
    })
}

struct Grouping<'p> {
    pairs: &'p Pairs,
    groups: Vec<Vec<usize>>,
    steps: usize,
}

impl Grouping<'_> {
    /// Grows a group by every kind that is never parted from all of it. `open` may still
    /// join; `done` could join but its groups are already listed.
    fn grow(&mut self, group: &mut Vec<usize>, mut open: Bits, mut done: Bits) {
        self.steps += 1;
        if self.steps >= MOST_STEPS || self.groups.len() >= MOST_GROUPS {
            return;
        }
        if open.is_empty() && done.is_empty() {
            if group.len() > 1 {
                let mut found = group.clone();
                found.sort_unstable();
                self.groups.push(found);
            }
            return;
        }
        let pivot = open
            .iter()
            .chain(done.iter())
            .max_by_key(|taxon| (open.common(self.pairs.bits(*taxon)), usize::MAX - taxon));
        let Some(pivot) = pivot else { return };
        let candidates: Vec<usize> =
            open.iter().filter(|taxon| !self.pairs.bits(pivot).has(*taxon)).collect();
        for taxon in candidates {
            let company = self.pairs.bits(taxon);
            group.push(taxon);
            self.grow(group, open.and(company), done.and(company));
            group.pop();
            open.remove(taxon);
            done.add(taxon);
        }
    }
}
