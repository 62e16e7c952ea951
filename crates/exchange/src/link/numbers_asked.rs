//! Thresholds in a sentence: `more than 4`, `2 cm or longer`, `under 3 cm`, `4 or 5`.
//!
//! From the words of a sentence to the one number it asks about. "More than 4 leaflets" is 5
//! or more; of measures, "longer than 2 cm" and "2 cm or longer" are one threshold, since no
//! ruler shows the difference. A choice, a span or an exact number is no threshold and is
//! told apart, so that nobody takes it for one.

use spinney_model::{Quantity, Unit};

use super::numbers;
use super::words::{Role, Word};

/// What a sentence says of a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Bound {
    /// More than it.
    Above,
    /// It or more.
    AtLeast,
    /// Less than it.
    Under,
    /// It or less.
    AtMost,
    /// It and nothing else.
    Exactly,
    /// One of two, or anything between them.
    Span,
    /// Several numbers that do not belong together.
    Several,
}

/// The number a sentence asks about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Asks {
    pub(super) bound: Bound,
    /// In thousandths as written, before the unit is reckoned in.
    pub(super) number: Quantity,
    /// The unit, and how many thousandths of the kept unit one of it is.
    pub(super) unit: Option<(Unit, i64)>,
}

pub(super) const MORE: [&str; 12] = [
    "more", "longer", "bigger", "larger", "wider", "taller", "greater", "higher", "heavier",
    "thicker", "broader", "above",
];
pub(super) const LESS: [&str; 9] =
    ["less", "fewer", "shorter", "smaller", "narrower", "lower", "lighter", "thinner", "below"];
const UP: [&str; 5] = ["over", "above", "upwards", "up", "plus"];
const DOWN: [&str; 2] = ["under", "below"];

/// So many words behind a number its bound may stand: "8 pairs of side veins or more".
const FAR: usize = 6;

/// The number a sentence asks about, if there is any in it.
pub(super) fn asked(words: &[Word]) -> Option<Asks> {
    let numbers: Vec<(usize, Quantity)> = words
        .iter()
        .enumerate()
        .filter_map(|(at, word)| match word.role {
            Role::Number(number) => Some((at, number)),
            _ => None,
        })
        .collect();
    let (at, number) = *numbers.first()?;
    let unit_at =
        |at: usize| words.get(at + 1).and_then(|word| numbers::unit_in_sentence(&word.text));
    if let Some((second, _)) = numbers.get(1) {
        let unit = unit_at(*second).or_else(|| unit_at(at));
        let bound =
            if numbers.len() == 2 { between(words, at, *second) } else { Bound::Several };
        return Some(Asks { bound, number, unit });
    }
    let unit = unit_at(at);
    let behind = at + 1 + usize::from(unit.is_some());
    let bound = before(words, at).or_else(|| after(words, behind)).unwrap_or(Bound::Exactly);
    let denied = words[at].keys.first().is_some_and(|(_, denied)| *denied);
    Some(Asks { bound: if denied { turned(bound) } else { bound }, number, unit })
}

/// How two numbers belong together.
fn between(words: &[Word], first: usize, second: usize) -> Bound {
    let joined = words[first + 1..second].iter().all(|word| {
        matches!(word.text.as_str(), "or" | "to" | "and" | "-" | "–" | "—" | "/")
            || numbers::unit_in_sentence(&word.text).is_some()
    });
    if joined { Bound::Span } else { Bound::Several }
}

/// The bound in the words before the number.
fn before(words: &[Word], at: usize) -> Option<Bound> {
    let back = |steps: usize| at.checked_sub(steps).map(|ix| words[ix].text.as_str());
    match back(1)? {
        "than" => {
            let word = back(2)?;
            if MORE.contains(&word) {
                Some(Bound::Above)
            } else if LESS.contains(&word) {
                Some(Bound::Under)
            } else {
                None
            }
        }
        "least" => Some(Bound::AtLeast),
        "most" => Some(Bound::AtMost),
        "to" if back(2) == Some("up") => Some(Bound::AtMost),
        "over" | "above" => Some(Bound::Above),
        "under" | "below" => Some(Bound::Under),
        ">" => Some(Bound::Above),
        "≥" => Some(Bound::AtLeast),
        "<" => Some(Bound::Under),
        "≤" => Some(Bound::AtMost),
        "=" => match back(2)? {
            ">" => Some(Bound::AtLeast),
            "<" => Some(Bound::AtMost),
            _ => None,
        },
        _ => None,
    }
}

/// The bound in the words behind the number and its unit: `5 leaflets or more`, `5+`.
fn after(words: &[Word], at: usize) -> Option<Bound> {
    let rest = &words[at.min(words.len())..];
    if rest.first().is_some_and(|word| word.text == "+") {
        return Some(Bound::AtLeast);
    }
    let far = &rest[..rest.len().min(FAR)];
    let most = far.windows(2).find(|two| two[0].text == "at").map(|two| two[1].text.as_str());
    match most {
        Some("most") => return Some(Bound::AtMost),
        Some("least") => return Some(Bound::AtLeast),
        _ => {}
    }
    let joint = far.iter().position(|word| matches!(word.text.as_str(), "or" | "and"));
    let bound = match joint {
        Some(joint) => rest.get(joint + 1)?.text.as_str(),
        None => rest.first().map(|word| word.text.as_str()).filter(|word| UP.contains(word))?,
    };
    if MORE.contains(&bound) || UP.contains(&bound) {
        Some(Bound::AtLeast)
    } else if LESS.contains(&bound) || DOWN.contains(&bound) {
        Some(Bound::AtMost)
    } else {
        None
    }
}

/// What is left when a bound is denied: not more than 4 is 4 or less.
fn turned(bound: Bound) -> Bound {
    match bound {
        Bound::Above => Bound::AtMost,
        Bound::AtMost => Bound::Above,
        Bound::AtLeast => Bound::Under,
        Bound::Under => Bound::AtLeast,
        Bound::Exactly | Bound::Span | Bound::Several => Bound::Several,
    }
}
