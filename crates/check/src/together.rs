//! Kinds that a key leaves together: from its walks to the sets that come out at one end.
//!
//! The one place that works it out. Whether that is a fault is said elsewhere: a table that
//! cannot tell them apart is no fault of the key, a question that was not asked may be one.
//! Second places, to which only a wrong answer leads, leave nobody together.

use std::collections::BTreeSet;

use spinney_model::{LeftTogether, Step, TaxonIx};

use crate::separable::question_for;
use crate::tree::To;
use crate::values::Taken;
use crate::walked_key::WalkedKey;

/// Every set of two or more kinds that come out at one end, in the order of the questions. A set
/// that is part of another, or the same again, is not repeated.
pub(crate) fn left(seen: &WalkedKey<'_>) -> Vec<LeftTogether> {
    let all =
        if seen.tree.key.couplets.is_empty() { nothing_asked(seen) } else { at_ends(seen) };
    let whole = |at: usize, one: &LeftTogether| {
        !all.iter().enumerate().any(|(other_at, other)| {
            let part = one.taxa.iter().all(|taxon| other.taxa.contains(taxon));
            let larger = other.taxa.len() > one.taxa.len();
            at != other_at && part && (larger || other_at < at)
        })
    };
    let kept = all.iter().enumerate().filter(|(at, one)| whole(*at, one));
    kept.map(|(_, one)| one.clone()).collect()
}

/// A key that asks nothing leaves everything together.
fn nothing_asked(seen: &WalkedKey<'_>) -> Vec<LeftTogether> {
    let none = Taken::default();
    let heap: Vec<(TaxonIx, &Taken)> =
        seen.matrix.taxon_indices().map(|taxon| (taxon, &none)).collect();
    heaps(seen, &heap, None).into_iter().collect()
}

fn at_ends(seen: &WalkedKey<'_>) -> Vec<LeftTogether> {
    let mut found = Vec::new();
    for (&(couplet, answer), there) in &seen.walked.ends {
        let Some(end) = seen.tree.end(couplet, answer) else { continue };
        if seen.tree.to(couplet, answer) != To::End {
            continue;
        }
        let named: BTreeSet<TaxonIx> = end.taxa.iter().copied().collect();
        let heap: Vec<(TaxonIx, &Taken)> = there
            .iter()
            .filter(|(taxon, _)| named.contains(taxon))
            .map(|(taxon, taken)| (*taxon, taken))
            .collect();
        let after = Step { couplet: seen.tree.number(couplet), answer };
        found.extend(heaps(seen, &heap, Some(after)).map(|one| (after, one)));
    }
    found.sort_by_key(|(after, _)| *after);
    found.into_iter().map(|(_, one)| one).collect()
}

/// The kinds of a heap, where they are several.
fn heaps(
    seen: &WalkedKey<'_>,
    heap: &[(TaxonIx, &Taken)],
    after: Option<Step>,
) -> Option<LeftTogether> {
    let taxa: BTreeSet<TaxonIx> = heap.iter().map(|(taxon, _)| *taxon).collect();
    if taxa.len() < 2 {
        return None;
    }
    let differ = question_for(seen.values, heap, seen.left_out);
    Some(LeftTogether { taxa: taxa.into_iter().collect(), after, differ })
}
