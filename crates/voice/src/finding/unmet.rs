//! What is said of wishes that could not be fulfilled, and of what stays together because of
//! them.

use spinney_model::{EarlyOf, Goal, OfUnmet, WhyUnmet, WishedFor};

use super::Told;
use crate::Tongue;

/// So many pairs are named.
const MOST_PAIRS: usize = 6;

pub(super) fn told(t: Tongue, fact: &OfUnmet) -> Told {
    match fact {
        OfUnmet::Refused { wish, why } => {
            let (why, remedy) = told_why(t, why);
            let wish = wished(t, wish);
            (t.with("finding-unmet", &[("wish", &wish), ("why", &why)]), remedy)
        }
        OfUnmet::LeftTogether { pairs } => {
            t.told("finding-unmet-together", &[("pairs", &all_pairs(t, pairs))])
        }
    }
}

fn wished(t: Tongue, wish: &WishedFor) -> String {
    match wish {
        WishedFor::Question(words) => t.with("finding-unmet-question", &[("words", words)]),
        WishedFor::Order(about) => t.with("finding-unmet-order", &[("about", about)]),
        WishedFor::Early(of) => t.with("finding-unmet-early", &[("wish", &early(t, of))]),
        WishedFor::Goal(of) => t.with("finding-unmet-goal", &[("goal", &goal(t, *of))]),
    }
}

/// What is to be over early: "hazel and lime are told apart early".
pub fn early(t: Tongue, early: &EarlyOf) -> String {
    match early {
        EarlyOf::Apart([one, other]) => {
            t.with("finding-unmet-apart", &[("one", one), ("other", other)])
        }
        EarlyOf::Out(kind) => t.with("finding-unmet-out", &[("kind", kind)]),
    }
}

/// What is best, in a teacher's words.
fn goal(t: Tongue, goal: Goal) -> String {
    t.say(match goal {
        Goal::LeastEffort => "finding-aim-effort",
        Goal::ShortestLongestPath => "finding-aim-longest",
        Goal::MostRightEnds => "finding-aim-right",
        Goal::EvenTeaching => "finding-aim-even",
        Goal::FewestWords => "finding-aim-words",
        Goal::FewestRulers => "finding-aim-rulers",
    })
}

fn told_why(t: Tongue, why: &WhyUnmet) -> Told {
    match why {
        WhyUnmet::Blocked { kind, about } => {
            t.told("finding-unmet-blocked", &[("kind", kind), ("about", about)])
        }
        WhyUnmet::AllAlike => t.told("finding-unmet-alike", &[]),
        WhyUnmet::NoSuchState { about } => {
            t.told("finding-unmet-no-state", &[("about", about)])
        }
        WhyUnmet::AfterRefused => t.told("finding-unmet-after", &[]),
        WhyUnmet::LeftOut { about } => t.told("finding-unmet-left-out", &[("about", about)]),
        WhyUnmet::NeverParted => t.told("finding-unmet-never", &[]),
        WhyUnmet::TooLarge => t.told("finding-unmet-too-large", &[]),
    }
}

/// "hazel and lime, oak and beech", so many at most.
pub fn all_pairs(t: Tongue, pairs: &[[String; 2]]) -> String {
    let named = pairs.iter().take(MOST_PAIRS);
    let mut words: Vec<String> = named
        .map(|[one, other]| t.with("finding-unmet-pair", &[("one", one), ("other", other)]))
        .collect();
    if pairs.len() > MOST_PAIRS {
        words.push(t.count("finding-unmet-more-pairs", pairs.len() - MOST_PAIRS));
    }
    words.join(", ")
}
