//! The parts of a plant or animal that a text speaks of, and in which place of the sentence.
//!
//! From words to mentions of parts: what is spoken of ("the twig has thorns"), where it is
//! ("thorns on the twig"), or what something is likened to ("like the teeth of a saw"). A part
//! that a column does not speak of makes a question somebody else's, however well its other
//! words fit: "is the fruit in one piece?" asks nothing of a leaf. It knows no table.

use super::words::{Lexicon, Role, Word};

/// How a part stands in a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Mention {
    /// It is what the text is about.
    Spoken,
    /// It is where something is, or sits.
    Place,
    /// Something is likened to it.
    Likened,
}

/// Words that say where something is.
const WHERE: [&str; 24] = [
    "on", "along", "at", "in", "from", "across", "under", "over", "up", "down", "near",
    "between", "round", "around", "into", "onto", "below", "above", "towards", "inside",
    "behind", "beside", "against", "to",
];

/// Words behind which a text speaks of its thing again.
const AGAIN: [&str; 24] = [
    "is", "are", "was", "do", "does", "has", "have", "had", "got", "and", "or", "but", "with",
    "without", "no", "not", "that", "which", "where", "when", "if", "grow", "sit", "there",
];

/// How each word stands in a text; only that of parts matters.
fn mentions(words: &[Word]) -> Vec<Mention> {
    let mut now = Mention::Spoken;
    let mut found = Vec::with_capacity(words.len());
    for word in words {
        let likens = word.text.split(' ').any(|text| text == "like");
        let text = word.text.rsplit(' ').next().unwrap_or_default();
        now = match now {
            _ if matches!(word.role, Role::Mark(',' | ';' | ':' | '.' | '?')) => {
                Mention::Spoken
            }
            Mention::Likened => Mention::Likened,
            _ if likens => Mention::Likened,
            _ if WHERE.contains(&text) => Mention::Place,
            _ if AGAIN.contains(&text) => Mention::Spoken,
            same => same,
        };
        found.push(now);
    }
    found
}

/// The parts that a text names: which word it is, and how it stands there.
pub(super) fn mentioned(words: &[Word], lexicon: &Lexicon) -> Vec<(usize, Mention)> {
    let mentions = mentions(words);
    let parts = words.iter().enumerate().filter(|(_, word)| lexicon.is_part(word));
    parts.map(|(at, _)| (at, mentions[at])).collect()
}

/// The words of a text that are no place and no likeness.
pub(super) fn spoken_of(words: &[Word]) -> Vec<Word> {
    let mentions = mentions(words);
    let words = words.iter().zip(mentions);
    words.filter(|(_, how)| *how == Mention::Spoken).map(|(word, _)| word.clone()).collect()
}
