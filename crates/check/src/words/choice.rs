//! Questions that yes and no do not answer: "Is it a or b?", "Which …?", "4 or 5 cm?".
//!
//! "Lobed or spiny" is one phrase where both are what a yes means; "toothed or smooth" is a
//! choice where only one of them is.

use spinney_model::{Code, Finding, Scale};

use super::{Text, asks_number};
use crate::phrase;
use crate::question::Yes;
use crate::seen::Seen;

/// Words that ask for more than yes or no.
const OPEN: [&str; 7] = ["what", "which", "how", "where", "who", "when", "why"];

/// What may follow "or" in a question with a threshold: "5 or more".
const BEYOND: [&str; 20] = [
    "more", "less", "fewer", "longer", "shorter", "wider", "narrower", "larger", "smaller",
    "bigger", "higher", "lower", "taller", "over", "above", "under", "below", "thicker",
    "heavier", "greater",
];

/// A question that has to be answered with something else than yes or no.
pub(super) fn not_yes_no(seen: &Seen<'_>, text: &Text<'_>) -> Option<Finding> {
    if !text.is_question {
        return None;
    }
    let first = text.words.list.first()?;
    if OPEN.contains(&first.as_str()) {
        return Some(text.finding(
            Code::NotYesNo,
            format!("{} cannot be answered with yes or no.", text.called()),
            "Begin with Is, Are, Does, Do, Has or Have.",
        ));
    }
    must_choose(seen, text).then(|| {
        text.finding(
            Code::NotYesNo,
            format!("{} makes one choose, and “yes” says nothing.", text.called()),
            "Ask for one of the two only; the other is the “no”.",
        )
    })
}

fn must_choose(seen: &Seen<'_>, text: &Text<'_>) -> bool {
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
fn within_one_side(seen: &Seen<'_>, words: &phrase::Words) -> bool {
    seen.matrix.characters().iter().any(|character| {
        let Scale::Words { states } = &character.scale else { return false };
        let named = phrase::states(states, words).count_ones() as usize;
        named >= 2 && named < states.len()
    })
}
