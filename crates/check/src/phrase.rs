//! The words of a question or lead: from a text to words, numbers and the states it names.
//!
//! English only, and only as much as the rules need. It links nothing: `exchange` does that.

use spinney_model::{CharacterIx, Matrix};

/// A text cut into words.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Words {
    /// Lower case, without punctuation; `4cm`, `2-5` and `long-stalked` are one word each.
    pub(crate) list: Vec<String>,
}

impl Words {
    /// Cuts a text into words.
    pub(crate) fn of(text: &str) -> Self {
        let dashed = text.replace(['–', '—', '−'], "-").replace('’', "'");
        let list = dashed
            .split(|letter: char| letter.is_whitespace() || letter == '/')
            .map(|word| {
                let inside = |letter: char| letter.is_alphanumeric() || letter == '°';
                word.trim_matches(|letter: char| !inside(letter)).to_lowercase()
            })
            .filter(|word| !word.is_empty())
            .collect();
        Self { list }
    }

    /// Where a phrase begins.
    pub(crate) fn find(&self, phrase: &[String]) -> Option<usize> {
        if phrase.is_empty() {
            return None;
        }
        self.list.windows(phrase.len()).position(|window| window == phrase)
    }

    /// The text without a phrase; a mark stands in its place.
    pub(crate) fn without(&self, phrase: &[String]) -> Self {
        let mut words = self.clone();
        while let Some(at) = words.find(phrase) {
            words.list.splice(at..at + phrase.len(), ["…".to_owned()]);
        }
        words
    }

    /// All numbers, `one` unit being that many thousandths: `2-5` is two.
    pub(crate) fn numbers(&self, one: i64) -> Vec<i64> {
        let mut numbers = Vec::new();
        for word in &self.list {
            if let Some(small) = NUMBER_WORDS.iter().position(|number| number == word) {
                // "one" is as often a pronoun: "in one piece".
                if small != 1 {
                    numbers.push(small as i64 * one);
                }
                continue;
            }
            for part in word.split('-') {
                let digits: String = part
                    .chars()
                    .take_while(|letter| letter.is_ascii_digit() || matches!(letter, '.' | ','))
                    .map(|letter| if letter == ',' { '.' } else { letter })
                    .collect();
                if let Ok(number) = digits.parse::<f64>()
                    && number < 1e9
                {
                    numbers.push((number * one as f64).round() as i64);
                }
            }
        }
        numbers
    }
}

const NUMBER_WORDS: [&str; 13] = [
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve",
];

/// A single number written with digits or as a word.
pub(crate) fn is_number(word: &str) -> bool {
    word.starts_with(|letter: char| letter.is_ascii_digit()) || NUMBER_WORDS.contains(&word)
}

/// The states a text names, as bits; longer names first, so that "double toothed" is not
/// "toothed" as well.
pub(crate) fn states(states: &[String], words: &Words) -> u64 {
    let mut phrases: Vec<(usize, Vec<String>)> =
        states.iter().enumerate().map(|(state, name)| (state, Words::of(name).list)).collect();
    phrases.sort_by_key(|(state, phrase)| (usize::MAX - phrase.len(), *state));
    let (mut words, mut bits) = (words.clone(), 0_u64);
    for (state, phrase) in phrases {
        if state < 64 && words.find(&phrase).is_some() {
            bits |= 1 << state;
            words = words.without(&phrase);
        }
    }
    bits
}

/// The states right before which a text has a negative: "not toothed".
pub(crate) fn denied(states: &[String], words: &Words) -> u64 {
    let denies = |at: usize| at > 0 && NEGATIVES.contains(&words.list[at - 1].as_str());
    states.iter().enumerate().take(64).fold(0, |bits, (state, name)| {
        let denied = words.find(&Words::of(name).list).is_some_and(denies);
        bits | u64::from(denied) << state
    })
}

const NEGATIVES: [&str; 12] = [
    "not", "no", "without", "never", "none", "isn't", "doesn't", "aren't", "don't", "hasn't",
    "lacks", "lacking",
];

/// The first negative word.
pub(crate) fn negative(words: &Words) -> Option<&str> {
    words.list.iter().find(|word| NEGATIVES.contains(&word.as_str())).map(String::as_str)
}

/// The text without the name of the character, where that has several words: "length of the
/// blade" is a name and no judgement.
pub(crate) fn simple(matrix: &Matrix, character: CharacterIx, words: &Words) -> Words {
    let name = Words::of(&matrix.character(character).name).list;
    if name.len() > 1 { words.without(&name) } else { words.clone() }
}
