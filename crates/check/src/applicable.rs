//! Questions about what is not there: from the heap before a couplet to findings.
//!
//! A leaf in one piece has no leaflets to count, a kind whose governing character varies may
//! have none, and where nobody has looked nobody can answer.

use spinney_model::{Code, Finding, Place};

use crate::seen::{Seen, taxa};
use crate::sentence::{called, capital, kinds, number};
use crate::tree::{ANSWERS, word};
use crate::values::Has;
use crate::walks::Cause;

/// What kinds are asked for and do not have, may not have, or nobody recorded.
pub(crate) fn findings(seen: &Seen<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, couplet, question, visits) in seen.asked() {
        let asks = seen.asks(&question);
        let at = couplet.number;
        let with =
            |has: Has| taxa(visits.iter().copied().filter(move |visit| visit.has == has));
        let lacking = with(Has::No);
        if !lacking.is_empty() {
            let names = kinds(seen.matrix, lacking.iter().copied());
            found.push(Finding::new(
                Code::DoesNotHave,
                Place::Couplet(at),
                format!(
                    "Question {at} {asks}, but {names} {} here and {} none.",
                    number(lacking.len(), "gets", "get"),
                    number(lacking.len(), "has", "have"),
                ),
                format!(
                    "Ask it where {names} can no longer come, or ask about something \
                     else."
                ),
            ));
        }
        let perhaps = with(Has::Maybe);
        if !perhaps.is_empty() {
            let names = kinds(seen.matrix, perhaps.iter().copied());
            let governor = seen.matrix.character(question.character).governor.as_ref();
            let governor = governor.map_or_else(
                || "another character".to_owned(),
                |g| called(&seen.matrix.character(g.character).name),
            );
            found.push(Finding::new(
                Code::MayNotHave,
                Place::Couplet(at),
                format!(
                    "Question {at} {asks}, but {names} may have none: it depends on {governor}."
                ),
                format!("Ask about {governor} before this question."),
            ));
        }
        found.extend(nobody_recorded(seen, index));
    }
    found
}

fn nobody_recorded(seen: &Seen<'_>, index: usize) -> Option<Finding> {
    let question = seen.questions[index]?;
    let at = seen.tree.number(index);
    let asked = taxa(seen.walked.visits[index].iter().filter(|visit| {
        !visit.stray
            && visit.has == Has::Yes
            && visit.goes == [true, true]
            && seen.values.unknown(visit.taxon, question.character)
    }));
    if asked.is_empty() {
        return None;
    }
    let (about, asks) = (seen.about(&question), seen.asks(&question));
    let names = kinds(seen.matrix, asked.iter().copied());
    let lost: Vec<String> = ANSWERS
        .into_iter()
        .flat_map(|answer| {
            let strays = asked.iter().filter(move |taxon| {
                let stray = seen.walked.strays.get(&(index, answer, **taxon));
                stray.is_some_and(|stray| stray.cause == Cause::Unrecorded)
            });
            strays.map(move |taxon| {
                let name = capital(&seen.matrix.taxon(*taxon).name);
                format!(" {name} is lost if the answer is {}.", word(answer))
            })
        })
        .collect();
    Some(Finding::new(
        Code::NobodyRecorded,
        Place::Couplet(at),
        format!(
            "Question {at} {asks}, and nobody has looked at that on {names}.{}",
            lost.concat()
        ),
        match about.starts_with('“') {
            true => format!("Look at {names} and say yes or no to it, or move the question."),
            false => format!("Look at {names} and fill in {about}, or move the question."),
        },
    ))
}
