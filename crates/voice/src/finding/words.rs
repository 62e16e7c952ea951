//! What is said of the wording of a question.

use spinney_model::{OfWords, TextOf, WhichText};

use super::Told;
use crate::Tongue;

pub(super) fn told(t: Tongue, text: &TextOf, fact: &OfWords) -> Told {
    let called = called(t, text);
    match fact {
        OfWords::Bare { word } => {
            t.told("finding-bare", &[("called", &called), ("word", word)])
        }
        OfWords::Compared { word } => {
            t.told("finding-compared", &[("called", &called), ("word", word)])
        }
        OfWords::Vague { word } => {
            t.told("finding-vague", &[("called", &called), ("word", word)])
        }
        OfWords::NotYesNo => t.told("finding-not-yes-no", &[("called", &called)]),
        OfWords::TwoAtOnce => t.told("finding-two-at-once", &[("called", &called)]),
        OfWords::Choice => t.told("finding-choice", &[("called", &called)]),
        OfWords::Negative { word } => {
            t.told("finding-negative", &[("called", &called), ("word", word)])
        }
        OfWords::NamesKind { kind } => {
            t.told("finding-names-kind", &[("called", &called), ("kind", kind)])
        }
        OfWords::TooManyWords { words, most } => t.told(
            "finding-too-many-words",
            &[("called", &called), ("words", words), ("most", most)],
        ),
        OfWords::NoUnit { number, sign } => t.told(
            "finding-no-unit",
            &[("called", &called), ("number", number), ("unit", sign)],
        ),
    }
}

/// How the text is called in a sentence.
fn called(t: Tongue, text: &TextOf) -> String {
    let message = match text.which {
        WhichText::Question => "finding-the-question",
        WhichText::FirstLead => "finding-the-first-lead",
        WhichText::SecondLead => "finding-the-second-lead",
    };
    t.with(message, &[("question", &text.question), ("text", &text.text)])
}
