//! Which kinds can still come out below a question.
//!
//! From a key to every kind that is named at an end which can be reached from a couplet. It reads
//! the key alone, and no cell of the table; ways that lead in a circle do no harm.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Couplet, Destination, Key, TaxonIx};

/// Every kind named at an end that can be reached from a couplet of this number.
pub fn below(key: &Key, number: u32) -> BTreeSet<TaxonIx> {
    let (mut seen, mut open, mut found) = (BTreeSet::new(), vec![number], BTreeSet::new());
    let mut by_number: BTreeMap<u32, Vec<&Couplet>> = BTreeMap::new();
    for couplet in &key.couplets {
        by_number.entry(couplet.number).or_default().push(couplet);
    }
    while let Some(number) = open.pop() {
        if !seen.insert(number) {
            continue;
        }
        let same = by_number.get(&number).into_iter().flatten();
        for to in same.flat_map(|couplet| [&couplet.yes, &couplet.no]) {
            match to {
                Destination::Couplet(next) => open.push(*next),
                Destination::End(end) => found.extend(end.taxa.iter().copied()),
                Destination::Missing => {}
            }
        }
    }
    found
}
