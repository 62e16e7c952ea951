//! What is said of what is claimed of a key, and of its proof.

use spinney_model::{Differs, Goal, GoalWrong, OfClaim, ProofFault, Reaches, Share};

use super::Told;
use super::phrases::{about, all, plural};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfClaim) -> Told {
    let again = |says| (says, t.say("finding-claim-remedy"));
    match fact {
        OfClaim::EffortNotAdded => t.told("finding-effort-not-added", &[]),
        OfClaim::CostWrong { effort, mean_questions, longest } => {
            let mut wrong = Vec::new();
            if let Some(Differs { is, said }) = effort {
                wrong.push(not(t, &goal(t, Goal::LeastEffort, *is), said));
            }
            if let Some(Differs { is, said }) = mean_questions {
                let message = "finding-mean-questions";
                wrong.push(t.count_with(message, plural(*is), &[("is", is), ("said", said)]));
            }
            if let Some(Differs { is, said }) = longest {
                let is = Share::from_integer((*is).into());
                wrong.push(not(t, &goal(t, Goal::ShortestLongestPath, is), said));
            }
            again(t.with("finding-cost-wrong", &[("wrong", &all(t, &wrong))]))
        }
        OfClaim::BoundAboveKey { bound, takes } => {
            again(t.with("finding-bound-above-key", &[("bound", bound), ("takes", takes)]))
        }
        OfClaim::NotAtBound { takes, bound } => {
            again(t.with("finding-not-at-bound", &[("takes", takes), ("bound", bound)]))
        }
        OfClaim::BoundAboveSome { bound, least } => {
            again(t.with("finding-bound-above-some", &[("bound", bound), ("least", least)]))
        }
        OfClaim::GoalWrong(wrong) => {
            let wrong: Vec<String> = wrong.iter().map(|one| goal_wrong(t, one)).collect();
            again(t.with("finding-goal-wrong", &[("wrong", &all(t, &wrong))]))
        }
        OfClaim::ProofFails(fault) => {
            again(t.with("finding-proof-fails", &[("why", &proof_fault(t, fault))]))
        }
        OfClaim::BetterKey { best, said } => {
            again(t.with("finding-better-key", &[("best", &not(t, &reaches(t, best), said))]))
        }
        OfClaim::NoKeyReaches { best, said } => again(
            t.with("finding-no-key-reaches", &[("best", &not(t, &reaches(t, best), said))]),
        ),
    }
}

/// "its effort is 32, not 31".
fn not(t: Tongue, is: &str, said: &dyn std::fmt::Display) -> String {
    t.with("finding-not", &[("is", &is), ("said", said)])
}

fn goal_wrong(t: Tongue, wrong: &GoalWrong) -> String {
    match wrong {
        GoalWrong::NotCounted(goal) => {
            t.with("finding-goal-not-counted", &[("goal", &name(t, *goal))])
        }
        GoalWrong::Reaches(of, Differs { is, said }) => not(t, &goal(t, *of, *is), said),
        GoalWrong::NewWords(Differs { is, said }) => {
            not(t, &reaches(t, &Reaches::AllNewWords(*is)), said)
        }
        GoalWrong::NothingSaid(goal) => {
            t.with("finding-goal-nothing-said", &[("goal", &name(t, *goal))])
        }
    }
}

/// A goal in a teacher's words.
fn name(t: Tongue, goal: Goal) -> String {
    t.say(match goal {
        Goal::LeastEffort => "finding-goal-effort",
        Goal::ShortestLongestPath => "finding-goal-longest",
        Goal::MostRightEnds => "finding-goal-right",
        Goal::EvenTeaching => "finding-goal-even",
        Goal::FewestWords => "finding-goal-words",
        Goal::FewestRulers => "finding-goal-rulers",
    })
}

/// "its effort is 32".
fn goal(t: Tongue, goal: Goal, value: Share) -> String {
    let message = match goal {
        Goal::LeastEffort => "finding-reaches-effort",
        Goal::ShortestLongestPath => "finding-reaches-longest",
        Goal::MostRightEnds => "finding-reaches-right",
        Goal::EvenTeaching => "finding-reaches-even",
        Goal::FewestWords => "finding-reaches-words",
        Goal::FewestRulers => "finding-reaches-rulers",
    };
    t.count_with(message, plural(value), &[("value", &value)])
}

fn reaches(t: Tongue, reaches: &Reaches) -> String {
    match reaches {
        Reaches::Goal(of, value) => goal(t, *of, *value),
        Reaches::AllNewWords(value) => {
            t.with("finding-reaches-all-new-words", &[("value", value)])
        }
        Reaches::Apart(kinds, within) => {
            let kinds = all(t, kinds);
            t.count_with("finding-reaches-apart", *within as usize, &[("kinds", &kinds)])
        }
        Reaches::Out(kind, within) => {
            t.count_with("finding-reaches-out", *within as usize, &[("kind", kind)])
        }
    }
}

fn proof_fault(t: Tongue, fault: &ProofFault) -> String {
    match fault {
        ProofFault::DoesNotFit => t.say("finding-proof-does-not-fit"),
        ProofFault::CannotSeparate { kinds } => {
            t.with("finding-proof-cannot-separate", &[("kinds", &all(t, kinds))])
        }
        ProofFault::SaysTooMuch { kinds, about: name } => t.with(
            "finding-proof-says-too-much",
            &[("kinds", &all(t, kinds)), ("about", &about(t, name))],
        ),
        ProofFault::ShowsLess { claimed, least } => t.with(
            "finding-proof-shows-less",
            &[("claimed", &reaches(t, claimed)), ("least", least)],
        ),
    }
}
