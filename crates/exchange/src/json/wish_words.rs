//! The words of our JSON for goals and for why a wish was refused: one list, read both ways.

use spinney_model::{Goal, WhyNot};

/// Every goal with its word.
pub(super) const GOALS: [(Goal, &str); 6] = [
    (Goal::LeastEffort, "least effort"),
    (Goal::ShortestLongestPath, "shortest longest path"),
    (Goal::MostRightEnds, "most right ends"),
    (Goal::EvenTeaching, "even teaching"),
    (Goal::FewestWords, "fewest words"),
    (Goal::FewestRulers, "fewest rulers"),
];

/// The word of a goal.
pub(super) fn of_goal(goal: Goal) -> String {
    let found = GOALS.iter().find(|(other, _)| *other == goal);
    found.map(|(_, word)| (*word).to_owned()).expect("every goal has a word")
}

/// The goal of a word.
pub(super) fn goal(word: &str) -> Option<Goal> {
    GOALS.iter().find(|(_, other)| *other == word).map(|(goal, _)| *goal)
}

/// Why a wish was refused.
pub(super) fn of_why(why: WhyNot) -> &'static str {
    match why {
        WhyNot::Blocked(_) => "blocked",
        WhyNot::AllAlike => "all alike",
        WhyNot::NoSuchState => "no such state",
        WhyNot::AfterRefused => "after refused",
        WhyNot::LeftOut => "left out",
        WhyNot::NeverParted => "never parted",
        WhyNot::TooLarge => "too large",
    }
}
