//! Thresholds against ranges: inside one, or nearer to one than the safety gap.
//!
//! Section 4 of `docs/KEY.md`: two people with rulers must give the same answer.

use spinney_model::{Code, Finding, Place, Scale, TaxonIx, Value};

use crate::question::Question;
use crate::seen::{Seen, taxa};
use crate::sentence::{self, amount, kinds, number};
use crate::walks::Visit;

/// Thresholds inside a range or too near to one.
pub(crate) fn findings(seen: &Seen<'_>) -> Vec<Finding> {
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
        found.extend(finding(seen, couplet.number, &question, &inside, Code::ThresholdInside));
        found.extend(finding(seen, couplet.number, &question, &near, Code::ThresholdNear));
    }
    found
}

fn range(seen: &Seen<'_>, visit: &Visit, question: &Question) -> Option<(i64, i64)> {
    match seen.values.value(visit.taxon, question.character) {
        Value::Range { low, high } => Some((low.thousandths(), high.thousandths())),
        _ => None,
    }
}

fn finding(
    seen: &Seen<'_>,
    couplet: u32,
    question: &Question,
    taxa: &[TaxonIx],
    code: Code,
) -> Option<Finding> {
    let character = seen.matrix.character(question.character);
    let at = amount(character, question.at()?);
    if taxa.is_empty() {
        return None;
    }
    let ranges: Vec<String> = taxa
        .iter()
        .map(|&taxon| {
            let name = &seen.matrix.taxon(taxon).name;
            match seen.values.value(taxon, question.character) {
                Value::Range { low, high } => {
                    format!("{name} ({})", sentence::range(character, *low, *high))
                }
                _ => name.clone(),
            }
        })
        .collect();
    let (ranges, about) = (sentence::all(&ranges), &character.name);
    let names = kinds(seen.matrix, taxa.iter().copied());
    let (sentence, remedy) = if code == Code::ThresholdInside {
        (
            format!(
                "Question {couplet} has its number, {at}, inside the {about} of {ranges}: \
                 some answer yes and some no."
            ),
            format!(
                "Choose a number outside the {} of {names}.",
                number(taxa.len(), "range", "ranges")
            ),
        )
    } else {
        let Scale::Measure { gap, .. } = character.scale else { return None };
        (
            format!(
                "Question {couplet} asks at {at}, which is nearer than {} to the {about} of \
                 {ranges}: two people who measure may disagree.",
                amount(character, gap.thousandths())
            ),
            sentence::with_margin(
                character,
                taxa.iter().map(|taxon| seen.values.value(*taxon, question.character)),
                "Choose a number in the middle between the ranges, or ask about something else.",
            ),
        )
    };
    Some(Finding::new(code, Place::Couplet(couplet), sentence, remedy))
}
