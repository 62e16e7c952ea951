//! Kinds that never come out: forgotten at every end.
//!
//! A kind that is named only where nobody gets to, or that is lost where a number leads
//! nowhere, is said at that fault and not again here.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Finding, NameAtEnd, OfEnds, Place, TaxonIx};

use crate::names;
use crate::walked_key::WalkedKey;

/// One finding for each forgotten kind, with the place where it strands.
pub(super) fn never_come_out(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let forgotten = forgotten(seen);
    if seen.tree.to.is_empty() {
        return empty_key(seen);
    }
    let mut strands: BTreeMap<TaxonIx, BTreeSet<_>> = BTreeMap::new();
    for (place, taxa) in &seen.walked.ends {
        for (taxon, _) in taxa.iter().filter(|(taxon, _)| forgotten.contains(taxon)) {
            strands.entry(*taxon).or_default().insert(*place);
        }
    }
    let finding = |&taxon: &TaxonIx| {
        let kind = seen.matrix.taxon(taxon).name.clone();
        let places = strands.get(&taxon).into_iter().flatten();
        let reads: BTreeSet<Vec<NameAtEnd>> =
            places.map(|place| names::at_end(seen.matrix, seen.tree, *place)).collect();
        let fact = OfEnds::NeverComesOut {
            kind: kind.clone(),
            reads: reads.into_iter().collect(),
            all_linked: !seen.meets_unlinked(taxon),
        };
        Finding::of(Place::Taxon(kind), fact)
    };
    forgotten.iter().map(finding).collect()
}

/// Kinds named at no end, for which no other fault of the tree is to blame.
pub(crate) fn forgotten(seen: &WalkedKey<'_>) -> BTreeSet<TaxonIx> {
    let fallen: BTreeSet<TaxonIx> = seen.walked.fallen.values().flatten().copied().collect();
    let strange: BTreeSet<TaxonIx> = seen
        .walked
        .ends
        .iter()
        .filter(|(place, _)| seen.tree.to(place.0, place.1) == crate::tree::To::Strange)
        .flat_map(|(_, taxa)| taxa.iter().map(|(taxon, _)| *taxon))
        .collect();
    seen.matrix
        .taxon_indices()
        .filter(|taxon| seen.named.nowhere(*taxon) && !seen.named.beyond_reach[taxon.0])
        .filter(|taxon| !fallen.contains(taxon) && !strange.contains(taxon))
        .collect()
}

/// A key without questions is right only where nothing can be asked.
fn empty_key(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let none = Vec::new();
    let heap: Vec<_> = seen.matrix.taxon_indices().map(|taxon| (taxon, &none)).collect();
    let could = crate::separable::question_for(seen.values, &heap, seen.left_out);
    could
        .map(|character| {
            let about = names::about(seen.matrix, character);
            Finding::of(Place::Key, OfEnds::NoQuestions { about })
        })
        .into_iter()
        .collect()
}
