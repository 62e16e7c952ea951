//! Questions about what is not there: from the heap before a couplet to findings.
//!
//! A leaf in one piece has no leaflets to count, a kind whose governing character varies may
//! have none, and where nobody has looked nobody can answer.

use spinney_model::{Finding, OfAnswers, Place};

use crate::names;
use crate::tree::ANSWERS;
use crate::values::Has;
use crate::walked_key::{WalkedKey, taxa};
use crate::walks::Cause;

/// What kinds are asked for and do not have, may not have, or nobody recorded.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, couplet, question, visits) in seen.asked() {
        let (about, question_at) = (seen.about(&question), couplet.number);
        let with = |has: Has| {
            let visits = visits.iter().copied().filter(move |visit| visit.has == has);
            names::kinds(seen.matrix, taxa(visits))
        };
        let mut say = |fact| found.push(Finding::of(Place::Couplet(question_at), fact));
        let lacking = with(Has::No);
        if !lacking.is_empty() {
            say(OfAnswers::DoesNotHave {
                question: question_at,
                about: about.clone(),
                kinds: lacking,
            });
        }
        let perhaps = with(Has::Maybe);
        if !perhaps.is_empty() {
            let governor = seen.matrix.character(question.character).governor.as_ref();
            say(OfAnswers::MayNotHave {
                question: question_at,
                about,
                kinds: perhaps,
                governor: governor.map(|above| names::about(seen.matrix, above.character)),
            });
        }
        found.extend(nobody_recorded(seen, index));
    }
    found
}

fn nobody_recorded(seen: &WalkedKey<'_>, index: usize) -> Option<Finding> {
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
    let lost = ANSWERS.into_iter().flat_map(|answer| {
        let strays = asked.iter().filter(move |taxon| {
            let stray = seen.walked.strays.get(&(index, answer, **taxon));
            stray.is_some_and(|stray| stray.cause == Cause::Unrecorded)
        });
        strays.map(move |taxon| (seen.matrix.taxon(*taxon).name.clone(), answer))
    });
    let fact = OfAnswers::NobodyRecorded {
        question: at,
        about: seen.about(&question),
        kinds: names::kinds(seen.matrix, asked.iter().copied()),
        lost: lost.collect(),
    };
    Some(Finding::of(Place::Couplet(at), fact))
}
