//! Thresholds against ranges: inside one, or nearer to one than the safety gap.
//!
//! Section 4 of `docs/KEY.md`: two people with rulers must give the same answer.

use spinney_model::{Finding, OfAnswers, Place, RangeOf, Scale, TaxonIx, Value};

use crate::names;
use crate::question::Question;
use crate::walked_key::{WalkedKey, taxa};
use crate::walks::Visit;

/// Thresholds inside a range or too near to one.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (_, couplet, question, visits) in seen.asked() {
        let Some(at) = question.at() else { continue };
        let Scale::Measure { gap, .. } = seen.matrix.character(question.character).scale else {
            continue;
        };
        let measured =
            visits.iter().copied().filter(|visit| range(seen, visit, &question).is_some());
        let (inside, outside): (Vec<&Visit>, Vec<&Visit>) =
            measured.partition(|visit| visit.goes == [true, true]);
        let inside = taxa(inside);
        let near: Vec<TaxonIx> = taxa(outside.into_iter().filter(|visit| {
            range(seen, visit, &question).is_some_and(|(low, high)| {
                let room = if high < at {
                    i128::from(at) - i128::from(high)
                } else {
                    i128::from(low) - i128::from(at)
                };
                // A range that an earlier threshold cut through lies on both sides of this one.
                room >= 0 && room < i128::from(gap.thousandths())
            })
        }));
        found.extend(finding(seen, couplet.number, &question, &inside, true));
        found.extend(finding(seen, couplet.number, &question, &near, false));
    }
    found
}

fn range(seen: &WalkedKey<'_>, visit: &Visit, question: &Question) -> Option<(i64, i64)> {
    match seen.values.value(visit.taxon, question.character) {
        Value::Range { low, high } => Some((low.thousandths(), high.thousandths())),
        _ => None,
    }
}

fn finding(
    seen: &WalkedKey<'_>,
    couplet: u32,
    question: &Question,
    taxa: &[TaxonIx],
    inside: bool,
) -> Option<Finding> {
    let character = seen.matrix.character(question.character);
    let at = names::written(character, question.at()?);
    let range = |taxon: &TaxonIx| {
        let value = seen.values.value(*taxon, question.character);
        names::range(seen.matrix, question.character, *taxon, value)
    };
    let ranges: Vec<RangeOf> = taxa.iter().filter_map(range).collect();
    if ranges.is_empty() {
        return None;
    }
    let (question, about) = (couplet, character.name.clone());
    let fact = match (inside, &character.scale) {
        (true, _) => OfAnswers::ThresholdInside { question, about, at, ranges },
        (false, Scale::Measure { gap, .. }) => OfAnswers::ThresholdNear {
            question,
            about,
            at,
            margin: character.written(*gap),
            smaller_may_do: names::smaller_margin_may_do(character, &ranges),
            ranges,
        },
        (false, _) => return None,
    };
    Some(Finding::of(Place::Couplet(couplet), fact))
}
