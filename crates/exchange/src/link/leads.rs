//! Two leads as one question: the second must say the opposite of the first.
//!
//! From the readings of both leads to readings of the couplet. Where the second lead leaves
//! something out that the first does not have either, no link is sure.

use std::collections::BTreeSet;

use spinney_model::{Ask, Asked, Matrix, Scale, StateIx};

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
pub(super) fn read(yes: &str, no: &str, matrix: &Matrix, vocabulary: &Vocabulary) -> Readings {
    let clause = |lead: &str| lead.split([';', ',']).next().unwrap_or("").to_owned();
    let (first, second) = (clause(yes), clause(no));
    let main = pair(&first, &second, matrix, vocabulary);
    if super::sure(&main) || (first == yes && second == no) {
        return main;
    }
    pair(yes, no, matrix, vocabulary)
}

fn pair(yes: &str, no: &str, matrix: &Matrix, vocabulary: &Vocabulary) -> Readings {
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
            .find(|other| opposite(&other.ask, matrix).as_ref() == Some(&reading.ask));
        let points = match other {
            Some(other) => i32::midpoint(reading.points, other.points),
            None => (reading.points - DISAGREES).min(super::SURE - 1),
        };
        both.push(Reading { ask: reading.ask.clone(), points });
    }
    both.sort_by(|a, b| b.points.cmp(&a.points).then_with(|| a.ask.cmp(&b.ask)));
    both.retain(|reading| reading.points > 0);
    let doubts: BTreeSet<Doubt> = first.doubts.union(&second.doubts).cloned().collect();
    Readings { readings: both, doubts, named: first.named.or(second.named) }
}

/// What a no to this means.
fn opposite(ask: &Ask, matrix: &Matrix) -> Option<Ask> {
    let yes = match (&ask.yes, &matrix.character(ask.character).scale) {
        (Asked::States(asked), Scale::Words { states }) => Asked::States(
            (0..states.len()).map(StateIx).filter(|state| !asked.contains(state)).collect(),
        ),
        (Asked::States(_), _) => return None,
        (Asked::AtLeast(number), _) => Asked::Below(*number),
        (Asked::Below(number), _) => Asked::AtLeast(*number),
    };
    Some(Ask { character: ask.character, yes })
}
