//! What is said of a key as a tree of numbers.

use spinney_model::OfTree;

use super::Told;
use super::phrases::{all, answer, any, capital, numbers, step};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfTree) -> Told {
    match fact {
        OfTree::NumberTwice { number, bearers, meant } => {
            let (says, remedy) =
                t.told_of("finding-number-twice", *bearers, &[("number", number)]);
            let probably = meant.map(|meant| {
                t.with("finding-number-twice-meant", &[("number", number), ("meant", &meant)])
            });
            (says, probably.unwrap_or(remedy))
        }
        OfTree::NumberMissing { to, from, lost, perhaps } => {
            let leads: Vec<String> = from.iter().map(|from| step(t, *from)).collect();
            let (says, remedy) = t.told_of(
                "finding-number-missing",
                from.len(),
                &[("from", &all(t, &leads)), ("to", to)],
            );
            let meant =
                perhaps.map(|meant| t.with("finding-number-perhaps", &[("meant", &meant)]));
            (and_lost(t, capital(&says), lost), meant.unwrap_or(remedy))
        }
        OfTree::NumbersSkip { number, expected } => {
            t.told("finding-numbers-skip", &[("number", number), ("expected", expected)])
        }
        OfTree::NothingWritten { question, after, lost } => {
            let after: Vec<String> = after.iter().map(|one| answer(t, *one)).collect();
            let after = all(t, &after);
            let texts: [(&str, &dyn std::fmt::Display); 2] =
                [("question", question), ("after", &after)];
            let (says, remedy) = t.told("finding-nothing-written", &texts);
            (and_lost(t, says, lost), remedy)
        }
        OfTree::Loop { from, to, lost } => {
            let (says, remedy) =
                t.told("finding-loop", &[("from", &step(t, *from)), ("to", to)]);
            (and_lost(t, capital(&says), lost), remedy)
        }
        OfTree::Unreachable { question, named_below } if named_below.is_empty() => {
            t.told("finding-unreachable", &[("question", question)])
        }
        OfTree::Unreachable { question, named_below } => {
            let kinds = all(t, named_below);
            let texts: [(&str, &dyn std::fmt::Display); 2] =
                [("question", question), ("kinds", &kinds)];
            let (_, remedy) = t.told("finding-unreachable", &texts);
            (t.count_with("finding-unreachable-named", named_below.len(), &texts), remedy)
        }
        OfTree::BackWrong { question, back, from } => t.told(
            "finding-back-wrong",
            &[("question", question), ("back", back), ("from", &any(t, &numbers(from)))],
        ),
        OfTree::WaysMeet { question, from } => t.told(
            "finding-ways-meet",
            &[("question", question), ("from", &all(t, &numbers(from)))],
        ),
        OfTree::SameBothWays { question } => {
            t.told("finding-same-both-ways", &[("question", question)])
        }
        OfTree::TooManyWays { kinds } => {
            t.told("finding-too-many-ways", &[("kinds", &all(t, kinds))])
        }
    }
}

/// A sentence, and after it who gets lost there.
fn and_lost(t: Tongue, says: String, lost: &[String]) -> String {
    if lost.is_empty() {
        return says;
    }
    let lost = t.count_with("finding-gets-lost", lost.len(), &[("kinds", &all(t, lost))]);
    format!("{says} {}", capital(&lost))
}
