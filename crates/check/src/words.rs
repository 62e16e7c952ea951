//! The words of a key: from what people read at each couplet to findings.
//!
//! Rules T1, T3, T4 and T10 to T13 of `docs/TRADE.md`. English only. Questions that the tool
//! words itself ("Is the leaf stalk 22.5 mm or longer?") pass them all.

use spinney_model::{
    Couplet, Fact, Finding, OfWords, Place, Scale, TextOf, Unit, WhichText, Wording, WrittenIn,
};

use crate::contrast::is_number;
use crate::phrase::{self, Words};
use crate::question::Question;
use crate::walked_key::WalkedKey;

mod choice;
mod names;
pub(crate) mod vague;

/// More words than this are too many for early readers (T10).
const MOST_WORDS: usize = 12;

/// One text of a couplet: a question, or one of its leads.
struct Text<'t> {
    index: usize,
    couplet: &'t Couplet,
    question: Option<Question>,
    text: &'t str,
    words: Words,
    is_question: bool,
    first: bool,
}

/// What the wording trips people up with.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    let known = names::Names::of(seen.matrix);
    for (index, couplet) in seen.tree.key.couplets.iter().enumerate() {
        let question = seen.questions[index];
        let texts: Vec<(&str, bool)> = match &couplet.wording {
            Wording::Question(text) => vec![(text, true)],
            Wording::Leads { yes, no } => vec![(yes, false), (no, false)],
        };
        for (place, (text, is_question)) in texts.into_iter().enumerate() {
            let words = Words::of(text);
            if words.list.is_empty() {
                continue;
            }
            let first = place == 0;
            let text = Text { index, couplet, question, text, words, is_question, first };
            found.extend(vague::vague(seen, &text));
            found.extend(choice::not_yes_no(seen, &text));
            found.extend(negative(&text));
            found.extend(names::name_in_question(seen, &text, &known));
            found.extend(too_many_words(&text));
            found.extend(no_unit(seen, &text));
        }
    }
    found
}

impl Text<'_> {
    fn finding(&self, fact: OfWords) -> Finding {
        let which = match (self.is_question, self.first) {
            (true, _) => WhichText::Question,
            (false, true) => WhichText::FirstLead,
            (false, false) => WhichText::SecondLead,
        };
        let question = self.couplet.number;
        let of = TextOf { question, which, text: self.text.trim().to_owned() };
        Finding::of(Place::Couplet(question), Fact::Words(of, fact))
    }
}

/// A negative in a question or first lead. In a second lead it is usual: "not so".
fn negative(text: &Text<'_>) -> Option<Finding> {
    let word = phrase::negative(&text.words).filter(|_| text.first)?;
    Some(text.finding(OfWords::Negative { word: word.to_owned() }))
}

fn too_many_words(text: &Text<'_>) -> Option<Finding> {
    let (words, most) = (text.words.list.len(), MOST_WORDS);
    (words > most).then(|| text.finding(OfWords::TooManyWords { words, most }))
}

fn no_unit(seen: &WalkedKey<'_>, text: &Text<'_>) -> Option<Finding> {
    let question = text.question?;
    let character = seen.matrix.character(question.character);
    let Scale::Measure { unit, .. } = character.scale else { return None };
    let number = text.words.list.iter().find(|word| phrase::is_number(word) && *word != "one");
    let has_unit = text.words.list.iter().any(|word| {
        let bare = word.trim_start_matches(|l: char| l.is_ascii_digit() || ".,-".contains(l));
        WrittenIn::spelt(bare).is_some_and(|written| written.row().kept_as == unit)
    });
    // A ratio has no unit. Where the table itself has none, its reader has said so.
    if matches!(unit, Unit::Unstated | Unit::Ratio) || has_unit {
        return None;
    }
    let fact = OfWords::NoUnit { number: number?.clone(), sign: character.sign() };
    Some(text.finding(fact))
}

/// Whether a couplet asks for a number.
fn asks_number(seen: &WalkedKey<'_>, question: Option<Question>) -> bool {
    question.is_some_and(|q| is_number(&seen.matrix.character(q.character).scale))
}
