//! What a key reaches of every aim, added up again along its ways.
//!
//! From a walked key to one number an aim (two for even teaching), and to a finding where
//! something else was claimed. Words that are new on the way to a question can only be counted
//! where one way leads there.

use std::collections::BTreeSet;

use spinney_model::{
    Character, Claim, Differs, Finding, Goal, GoalWrong, OfClaim, Place, Reached, Share,
    TaxonIx, Wishes,
};

use super::aims;
use crate::amount::Amount;
use crate::walked_key::WalkedKey;

/// The aims as wished, none twice; the least effort settles what they leave open.
pub(super) fn goals(wishes: &Wishes) -> Vec<Goal> {
    let mut goals = Vec::new();
    for goal in wishes.goals.iter().chain([&Goal::LeastEffort]) {
        if !goals.contains(goal) {
            goals.push(*goal);
        }
    }
    goals
}

/// Where the key reaches something else of an aim than was claimed.
pub(super) fn finding(seen: &WalkedKey<'_>, claim: &Claim) -> Option<Finding> {
    let mut wrong: Vec<GoalWrong> =
        claim.reached.iter().filter_map(|said| disagrees(seen, said)).collect();
    if !claim.wishes.goals.is_empty() {
        let said: Vec<Goal> = claim.reached.iter().map(|reached| reached.goal).collect();
        let silent = goals(&claim.wishes).into_iter().filter(|goal| !said.contains(goal));
        wrong.extend(silent.map(GoalWrong::NothingSaid));
    }
    (!wrong.is_empty()).then(|| Finding::of(Place::Key, OfClaim::GoalWrong(wrong)))
}

fn disagrees(seen: &WalkedKey<'_>, said: &Reached) -> Option<GoalWrong> {
    let Some((value, then)) = value(seen, said.goal) else {
        return Some(GoalWrong::NotCounted(said.goal));
    };
    if let Some(differs) = Differs::of(value, said.value) {
        return Some(GoalWrong::Reaches(said.goal, differs));
    }
    let differs = Differs::of(then, said.then)?;
    let (is, said) = (differs.is.unwrap_or_default(), differs.said.unwrap_or_default());
    Some(GoalWrong::NewWords(Differs { is, said }))
}

/// What the key reaches of an aim; None: it cannot be counted.
fn value(seen: &WalkedKey<'_>, goal: Goal) -> Option<(Share, Option<Share>)> {
    let whole = |count: usize| Share::from_integer(count as i128);
    let alone = |value: Share| (value, None);
    match goal {
        Goal::LeastEffort => seen.walked.effort.as_ref()?.total.said().map(alone),
        Goal::ShortestLongestPath => Some(alone(whole(seen.tree.longest() as usize))),
        Goal::MostRightEnds => sum(seen, aims::misreading).map(alone),
        Goal::FewestRulers => {
            sum(seen, |character, _| aims::ruler(character).into()).map(alone)
        }
        Goal::FewestWords => {
            let mut words = BTreeSet::new();
            for couplet in &seen.tree.order {
                words.extend(words_of(seen, *couplet)?);
            }
            Some(alone(whole(words.len())))
        }
        Goal::EvenTeaching => {
            let new = new_words(seen)?;
            let most = new.iter().copied().max().unwrap_or(0);
            let mut met = Amount::zero();
            for couplet in &seen.tree.order {
                met = met.plus(&flow(seen, *couplet)?.times(whole(new[*couplet])));
            }
            Some((whole(most), Some(met.said()?)))
        }
    }
}

/// Adds up over all finds what a question counts for each.
fn sum(seen: &WalkedKey<'_>, of: impl Fn(&Character, TaxonIx) -> i128) -> Option<Share> {
    let mut sum = Amount::zero();
    for &couplet in &seen.tree.order {
        let character = seen.matrix.character(seen.questions[couplet]?.character);
        for visit in &seen.walked.visits[couplet] {
            let counts = Share::from_integer(of(character, visit.taxon));
            sum = sum.plus(&visit.flow.as_ref()?.times(counts));
        }
    }
    sum.said()
}

fn flow(seen: &WalkedKey<'_>, couplet: usize) -> Option<Amount> {
    let mut flow = Amount::zero();
    for visit in &seen.walked.visits[couplet] {
        flow = flow.plus(visit.flow.as_ref()?);
    }
    Some(flow)
}

fn words_of(seen: &WalkedKey<'_>, couplet: usize) -> Option<BTreeSet<String>> {
    let question = seen.questions[couplet]?;
    Some(aims::words(seen.matrix.character(question.character), &question))
}

/// How many words are new at each couplet; None where several ways lead to one.
fn new_words(seen: &WalkedKey<'_>) -> Option<Vec<usize>> {
    let mut new = vec![0; seen.tree.to.len()];
    let mut met = vec![BTreeSet::new(); seen.tree.to.len()];
    for &couplet in &seen.tree.order {
        let before = match seen.tree.parents[couplet].as_slice() {
            [] => BTreeSet::new(),
            [one] => met[*one].clone(),
            _ => return None,
        };
        let words = words_of(seen, couplet)?;
        new[couplet] = words.difference(&before).count();
        met[couplet] = words.union(&before).cloned().collect();
    }
    Some(new)
}
