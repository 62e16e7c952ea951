//! Questions that yes and no do not answer: "Is it a or b?", "Which …?", "4 or 5 cm?".
//!
//! "Lobed or spiny" is one phrase where both are what a yes means; "toothed or smooth" is a
//! choice where only one of them is.

use spinney_model::{Character, Finding, OfWords, Scale};

use super::{Text, asks_number};
use crate::phrase;
use crate::question::Yes;
use crate::walked_key::WalkedKey;

/// Words that ask for more than yes or no.
const OPEN: [&str; 7] = ["what", "which", "how", "where", "who", "when", "why"];

/// What may follow "or" in a question with a threshold: "5 or more".
const BEYOND: [&str; 20] = [
    "more", "less", "fewer", "longer", "shorter", "wider", "narrower", "larger", "smaller",
    "bigger", "higher", "lower", "taller", "over", "above", "under", "below", "thicker",
    "heavier", "greater",
];

/// A question that has to be answered with something else than yes or no.
pub(super) fn not_yes_no(seen: &WalkedKey<'_>, text: &Text<'_>) -> Option<Finding> {
    if !text.is_question {
        return None;
    }
    let first = text.words.list.first()?;
    let fact = if OPEN.contains(&first.as_str()) {
        OfWords::NotYesNo
    } else if two_at_once(seen, &text.words.list) {
        OfWords::TwoAtOnce
    } else if must_choose(seen, text) {
        OfWords::Choice
    } else {
        return None;
    };
    Some(text.finding(fact))
}

/// "Is it smooth and shiny?": two things that the table has in two columns; or a second question
/// behind an "and".
fn two_at_once(seen: &WalkedKey<'_>, list: &[String]) -> bool {
    let homes = |word: &str| -> Vec<usize> {
        let characters = seen.matrix.characters().iter().enumerate();
        let knows = |character: &Character| {
            let alone = |text: &String| text.trim().eq_ignore_ascii_case(word);
            match &character.scale {
                Scale::Words { states } => alone(&character.name) || states.iter().any(alone),
                Scale::Counts | Scale::Measure { .. } => false,
            }
        };
        characters.filter(|(_, character)| knows(character)).map(|(at, _)| at).collect()
    };
    list.windows(3).any(|three| {
        let [before, and, behind] = three else { return false };
        let again = matches!(behind.as_str(), "is" | "are" | "does" | "do" | "has" | "have");
        let (one, other) = (homes(before), homes(behind));
        let two =
            !one.is_empty() && !other.is_empty() && one.iter().all(|at| !other.contains(at));
        and == "and" && (again || two)
    })
}

/// Pairs of which one excludes the other: "toothed or smooth?" offers a choice, whatever other
/// states there are.
const OPPOSITES: [(&str, &str); 10] = [
    ("toothed", "smooth"),
    ("opposite", "alternate"),
    ("round", "pointed"),
    ("rounded", "pointed"),
    ("hairy", "bare"),
    ("hairy", "smooth"),
    ("rough", "smooth"),
    ("rough", "soft"),
    ("shiny", "dull"),
    ("simple", "compound"),
];

fn must_choose(seen: &WalkedKey<'_>, text: &Text<'_>) -> bool {
    let words = match text.question {
        Some(question) => phrase::simple(seen.matrix, question.character, &text.words),
        None => text.words.clone(),
    };
    let word = |place: usize| words.list.get(place).map_or("", String::as_str);
    let open: Vec<usize> = (0..words.list.len())
        .filter(|place| word(*place) == "or" && !BEYOND.contains(&word(place + 1)))
        // "more or less" is a vague word, and "one or two" may be a number as well.
        .collect();
    if open.is_empty() {
        return false;
    }
    let opposites = open.iter().any(|place| {
        let (before, behind) = (place.checked_sub(1).map_or("", word), word(place + 1));
        let pair = [(before, behind), (behind, before)];
        OPPOSITES.iter().any(|known| pair.contains(known))
    });
    if text.question.is_none() && opposites && !words.list.iter().any(|word| word == "either") {
        return true;
    }
    let numbers = open.iter().any(|place| {
        *place > 0
            && (1..=2).any(|back| *place >= back && phrase::is_number(word(place - back)))
            && phrase::is_number(word(place + 1))
    });
    match text.question.map(|question| (question.character, question.yes)) {
        Some((character, Yes::States(yes))) => {
            let Scale::Words { states } = &seen.matrix.character(character).scale else {
                return numbers;
            };
            phrase::states(states, &words) & !yes != 0
        }
        Some(_) if asks_number(seen, text.question) => true,
        _ => numbers || !within_one_side(seen, &words),
    }
}

/// Whether an unlinked "a or b" names some but not all states of one character: then it may
/// be one phrase.
fn within_one_side(seen: &WalkedKey<'_>, words: &phrase::Words) -> bool {
    seen.matrix.characters().iter().any(|character| {
        let Scale::Words { states } = &character.scale else { return false };
        let named = phrase::states(states, words).count_ones() as usize;
        named >= 2 && named < states.len()
    })
}
