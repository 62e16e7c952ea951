//! Two leads as one question: the second must say the opposite of the first.
//!
//! From the readings of both leads to readings of the couplet. Where the second lead leaves
//! something out that the first does not have either, and that can still come to this couplet,
//! no link is sure.

use std::collections::BTreeSet;

use spinney_model::{Ask, Asked, Matrix, Scale, StateIx};

use super::left::Left;
use super::readings::{self, Doubt, Reading, Readings};
use super::vocabulary::Vocabulary;

/// A second lead that only says: not so.
const NOT_SO: [&str; 10] = [
    "",
    "not",
    "not so",
    "no",
    "otherwise",
    "not as above",
    "without",
    "none of these",
    "other",
    "not like this",
];
/// What a reading loses whose other lead does not agree; it is never sure then.
const DISAGREES: i32 = 9;

/// Reads a pair of leads: what stands before the first comma counts first, then all of it.
pub(super) fn read(
    yes: &str,
    no: &str,
    matrix: &Matrix,
    vocabulary: &Vocabulary,
    left: &Left,
) -> Readings {
    let clause = |lead: &str| lead.split([';', ',']).next().unwrap_or("").to_owned();
    let (first, second) = (clause(yes), clause(no));
    let main = pair(&first, &second, matrix, vocabulary, left);
    if super::sure(&main) || (first == yes && second == no) {
        return main;
    }
    pair(yes, no, matrix, vocabulary, left)
}

fn pair(
    yes: &str,
    no: &str,
    matrix: &Matrix,
    vocabulary: &Vocabulary,
    left: &Left,
) -> Readings {
    let first = readings::read(yes, matrix, vocabulary);
    let bare = no.trim().trim_end_matches(['.', '!']).to_lowercase();
    if NOT_SO.contains(&bare.as_str()) {
        return first;
    }
    let second = readings::read(no, matrix, vocabulary);
    let mut both = Vec::new();
    for reading in &first.readings {
        let other = second
            .readings
            .iter()
            .find(|other| opposite(&reading.ask, &other.ask, matrix, left));
        let points = match other {
            Some(other) => i32::midpoint(reading.points, other.points),
            None => (reading.points - DISAGREES).min(super::SURE - 1),
        };
        let understood = reading.understood && other.is_none_or(|other| other.understood);
        both.push(Reading { ask: reading.ask.clone(), points, understood });
    }
    both.sort_by(|a, b| b.points.cmp(&a.points).then_with(|| a.ask.cmp(&b.ask)));
    both.retain(|reading| reading.points > 0);
    let doubts = first.doubts.union(&second.doubts).cloned();
    // A lead says what is so, and offers nothing.
    let doubts: BTreeSet<Doubt> = doubts.filter(|doubt| *doubt != Doubt::Choice).collect();
    let named = first.named.or(second.named);
    let no_ratio = first.no_ratio.or(second.no_ratio);
    Readings {
        readings: both,
        doubts,
        named,
        no_ratio,
        at_once: first.at_once,
        unitless: first.unitless,
    }
}

/// Whether one means just what a no to the other means, among what is left.
fn opposite(first: &Ask, second: &Ask, matrix: &Matrix, left: &Left) -> bool {
    if first.character != second.character {
        return false;
    }
    match (&first.yes, &second.yes, &matrix.character(first.character).scale) {
        (Asked::States(first_yes), Asked::States(second_yes), Scale::Words { states }) => {
            let all = || (0..states.len()).map(StateIx).collect();
            let left = left.get(&first.character).cloned().unwrap_or_else(all);
            let parted =
                left.iter().all(|ix| first_yes.contains(ix) != second_yes.contains(ix));
            let asked = |yes: &BTreeSet<StateIx>| !yes.is_disjoint(&left);
            parted && asked(first_yes) && asked(second_yes)
        }
        (Asked::AtLeast(first), Asked::Below(second), _)
        | (Asked::Below(first), Asked::AtLeast(second), _) => first == second,
        _ => false,
    }
}
