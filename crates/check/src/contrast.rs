//! Whether the two ways of a couplet contrast: from two leads and the heap to findings.
//!
//! The leads are compared as they are worded: the states and numbers that stand in each. A
//! lead that names neither is left alone; the link alone says nothing about a second lead.

use spinney_model::{Finding, OfAnswers, OfEnds, Place, Scale, TaxonIx, Value};

use crate::names;
use crate::phrase::{self, Words};
use crate::question::Question;
use crate::tree::{ANSWERS, To};
use crate::walked_key::{WalkedKey, taxa};
use crate::walks::Visit;

mod leads;

use leads::Said;

/// Kinds that fit both leads or neither, and questions that part nothing.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, couplet, question, visits) in seen.asked() {
        if let spinney_model::Wording::Leads { yes, no } = &couplet.wording {
            found.extend(against_leads(seen, couplet.number, &question, &visits, yes, no));
        }
        found.extend(parts_nothing(seen, index));
    }
    found
}

fn against_leads(
    seen: &WalkedKey<'_>,
    at: u32,
    question: &Question,
    visits: &[&Visit],
    yes: &str,
    no: &str,
) -> Vec<Finding> {
    let character = seen.matrix.character(question.character);
    let read = |text: &str| {
        Said::of(&phrase::simple(seen.matrix, question.character, &Words::of(text)), character)
    };
    let (Some(yes), Some(no)) = (read(yes), read(no)) else { return Vec::new() };
    let (mut both, mut neither) = (Vec::new(), Vec::new());
    for visit in visits {
        let fits = fits(seen, visit, question, &yes, &no);
        if fits.0 {
            both.push(visit.taxon);
        }
        if fits.1 {
            neither.push(visit.taxon);
        }
    }
    let named = |mut taxa: Vec<TaxonIx>| {
        taxa.dedup();
        names::kinds(seen.matrix, taxa)
    };
    let (both, neither) = (named(both), named(neither));
    let about = || character.name.clone();
    let mut found = Vec::new();
    if !both.is_empty() {
        found.push(OfAnswers::BothLeads { question: at, about: about(), kinds: both });
    }
    if !neither.is_empty() {
        found.push(OfAnswers::NeitherLead { question: at, about: about(), kinds: neither });
    }
    found.into_iter().map(|fact| Finding::of(Place::Couplet(at), fact)).collect()
}

/// Whether some form of the kind fits both leads, and whether some form fits neither.
fn fits(
    seen: &WalkedKey<'_>,
    visit: &Visit,
    q: &Question,
    yes: &Said,
    no: &Said,
) -> (bool, bool) {
    let value = seen.values.value(visit.taxon, q.character);
    match (yes, no) {
        (Said::States(yes), Said::States(no)) => {
            if *value == Value::Unknown || *value == Value::DoesNotApply {
                return (false, false);
            }
            let shows = seen.values.states(visit.taxon, q.character, &visit.taken);
            (shows & yes & no != 0, shows & !yes & !no != 0)
        }
        (Said::Numbers(yes), Said::Numbers(no)) => match value {
            Value::Counts(shares) => {
                let span = seen.values.span(q.character, &visit.taken);
                let shown = shares
                    .iter()
                    .map(|(n, _)| i64::from(*n) * 1000)
                    .filter(|n| span.0 <= *n && *n < span.1);
                let has = |span: &(i64, i64), n: i64| span.0 <= n && n <= span.1;
                shown.fold((false, false), |(both, neither), n| {
                    let (y, o) = (has(yes, n), has(no, n));
                    (both || y && o, neither || !y && !o)
                })
            }
            Value::Range { .. } => {
                let Some((low, high)) =
                    seen.values.reach(visit.taxon, q.character, &visit.taken)
                else {
                    return (false, false);
                };
                let shared = (yes.0.max(no.0).max(low), yes.1.min(no.1).min(high));
                (shared.0 <= shared.1, leads::leaves_out(*yes, *no, (low, high)))
            }
            _ => (false, false),
        },
        _ => (false, false),
    }
}

/// A question that everybody before it answers alike. Where the other answer leads to an end,
/// that end is what nobody reaches, and `places` says so.
fn parts_nothing(seen: &WalkedKey<'_>, index: usize) -> Option<Finding> {
    let all = &seen.walked.visits[index];
    let here: Vec<&Visit> = all.iter().filter(|visit| !visit.stray).collect();
    let at = seen.tree.number(index);
    let astray = ANSWERS.iter().any(|answer| {
        let from = (index, *answer, TaxonIx(0));
        let to = (index, *answer, TaxonIx(usize::MAX));
        seen.walked.strays.range(from..=to).next().is_some()
    });
    let forgives = seen.second.iter().any(|place| place.meant && place.below.contains(&index));
    if here.is_empty()
        || astray
        || forgives
        || !seen.finished()
        || seen.tree.same_both_ways(index)
    {
        return None;
    }
    let side = (0..2).find(|side| all.iter().all(|visit| !visit.goes[1 - side]))?;
    let other = seen.tree.to[index][1 - side];
    if !matches!(other, To::Couplet(_)) {
        return None;
    }
    let kinds = names::kinds(seen.matrix, taxa(here));
    let fact = OfEnds::PartsNothing { question: at, answer: ANSWERS[side], kinds };
    Some(Finding::of(Place::Couplet(at), fact))
}

/// Whether a character is measured or counted.
pub(crate) fn is_number(scale: &Scale) -> bool {
    matches!(scale, Scale::Counts | Scale::Measure { .. })
}
