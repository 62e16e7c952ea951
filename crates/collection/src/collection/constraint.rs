//! What somebody says of the states that a kind has, and whether all of it can be true.
//!
//! From sets of states to yes or no. A word in a cell says which states there are and that
//! there are no others; a card on a heap may leave several open. People contradict each other
//! where no set of states would make all of them right: a yes and a no to the same question do,
//! though neither names a state. That two can be right each beside the third is not enough.

use std::collections::BTreeSet;

/// Names of states, folded.
pub(super) type States = BTreeSet<String>;

/// What somebody says of the states of a kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Constraint {
    /// It has these, and no others.
    Exactly(States),
    /// It has one or several of these, and no others.
    Within(States),
    /// It has others than these.
    Outside(States),
    /// It varies: it has some of these, and others too.
    Across(States),
}

impl Constraint {
    fn named(&self) -> &States {
        let (Self::Exactly(states)
        | Self::Within(states)
        | Self::Outside(states)
        | Self::Across(states)) = self;
        states
    }
}

/// Whether there are states that make all of them right. `known` are the character's states;
/// what somebody names beyond them is a state as well.
pub(super) fn satisfiable(constraints: &[Constraint], known: &States) -> bool {
    let all: States =
        constraints.iter().flat_map(Constraint::named).chain(known).cloned().collect();
    let mut left = all.clone();
    let mut met: Vec<States> = Vec::new();
    for constraint in constraints {
        match constraint {
            Constraint::Exactly(states) => {
                left.retain(|state| states.contains(state));
                met.extend(states.iter().map(|state| States::from([state.clone()])));
            }
            Constraint::Within(states) => left.retain(|state| states.contains(state)),
            Constraint::Outside(states) => left.retain(|state| !states.contains(state)),
            Constraint::Across(states) => {
                met.push(states.clone());
                met.push(all.difference(states).cloned().collect());
            }
        }
    }
    // Nothing speaks against all that are left, so it is enough to try these.
    !left.is_empty() && met.iter().all(|some| !some.is_disjoint(&left))
}

#[cfg(test)]
mod tests {
    //! Every set of states tried, as a second road.

    use super::{Constraint, States, satisfiable};

    fn set(names: &str) -> States {
        names.chars().map(String::from).collect()
    }

    /// Whether a set of states makes a constraint right, said plainly.
    fn right(constraint: &Constraint, has: &States) -> bool {
        match constraint {
            Constraint::Exactly(states) => has == states,
            Constraint::Within(states) => has.is_subset(states),
            Constraint::Outside(states) => has.is_disjoint(states),
            Constraint::Across(states) => !has.is_disjoint(states) && !has.is_subset(states),
        }
    }

    #[test]
    fn what_people_say_can_be_true_if_some_set_of_states_makes_it_true() {
        let known = set("abcd");
        let subsets: Vec<States> = (1_u32..16)
            .map(|bits| {
                let some = known.iter().enumerate().filter(|(at, _)| bits >> at & 1 == 1);
                some.map(|(_, state)| state.clone()).collect()
            })
            .collect();
        let kinds =
            [Constraint::Exactly, Constraint::Within, Constraint::Outside, Constraint::Across];
        let constraints: Vec<Constraint> = kinds
            .iter()
            .flat_map(|kind| subsets.iter().map(move |some| kind(some.clone())))
            .collect();
        let mut seen = [0, 0];
        for one in &constraints {
            for other in &constraints {
                for third in constraints.iter().step_by(7) {
                    let said = [one.clone(), other.clone(), third.clone()];
                    let plainly = subsets.iter().any(|has| said.iter().all(|c| right(c, has)));
                    assert_eq!(satisfiable(&said, &known), plainly, "{said:?}");
                    seen[usize::from(plainly)] += 1;
                }
            }
        }
        assert!(seen.iter().all(|count| *count > 1_000), "both happen: {seen:?}");
    }

    #[test]
    fn a_word_that_nobody_listed_is_a_state_too() {
        let wavy = Constraint::Exactly(set("w"));
        assert!(satisfiable(&[wavy.clone(), Constraint::Outside(set("a"))], &set("ab")));
        assert!(!satisfiable(&[wavy, Constraint::Within(set("a"))], &set("ab")));
    }
}
