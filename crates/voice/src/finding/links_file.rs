//! What is said of a file that says what questions mean.

use std::fmt::Display;

use spinney_model::{LinksLine, OfLinks};

use super::Told;
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfLinks) -> Told {
    match fact {
        OfLinks::NoSuchQuestion { question } => {
            t.told("finding-links-no-question", &[("question", question)])
        }
        OfLinks::Line { line, why } => told_of_line(t, *line, why),
    }
}

fn told_of_line(t: Tongue, line: usize, why: &LinksLine) -> Told {
    let told = |message: &str, texts: &[(&str, &dyn Display)]| {
        let mut all: Vec<(&str, &dyn Display)> = vec![("line", &line)];
        all.extend(texts);
        t.told(message, &all)
    };
    let kind = |example: &Option<String>| {
        example.clone().unwrap_or_else(|| t.say("finding-links-hazel"))
    };
    let in_unit = |unit: &Option<&str>| match unit {
        Some(unit) => t.with("finding-links-in-unit", &[("unit", unit)]),
        None => t.say("finding-links-in-figures"),
    };
    match why {
        LinksLine::Unread { text } => told("finding-links-unread", &[("text", text)]),
        LinksLine::Again { question } => told("finding-links-again", &[("question", question)]),
        LinksLine::NoEquals { text, example } => {
            told("finding-links-no-equals", &[("text", text), ("kind", &kind(example))])
        }
        LinksLine::NoSuchKind { text, example } => {
            told("finding-links-no-such-kind", &[("text", text), ("kind", &kind(example))])
        }
        LinksLine::NoKind { example } => {
            told("finding-links-no-kind", &[("kind", &kind(example))])
        }
        LinksLine::NothingAsked { text } => {
            told("finding-links-nothing-asked", &[("text", text)])
        }
        LinksLine::NumberOfWords { about, instead } => {
            told("finding-links-number-of-words", &[("about", about), ("instead", instead)])
        }
        LinksLine::NoSuchColumn { text, known } => told(
            "finding-links-no-such-column",
            &[("text", text), ("known", &known.join(", "))],
        ),
        LinksLine::NoSuchState { about, text, known } => told(
            "finding-links-no-such-state",
            &[("about", about), ("text", text), ("known", &known.join(", "))],
        ),
        LinksLine::NotSomeStates { about, known } => told(
            "finding-links-not-some-states",
            &[("about", about), ("known", &known.join(", "))],
        ),
        LinksLine::NumberUnread { text, column, unit } => told(
            "finding-links-number-unread",
            &[("text", text), ("column", column), ("how", &in_unit(unit))],
        ),
        LinksLine::NumberUnfit { about, column, unit } => told(
            "finding-links-number-unfit",
            &[("about", about), ("column", column), ("how", &in_unit(unit))],
        ),
        LinksLine::Exactly { about, number, at_least, below } => told(
            "finding-links-exactly",
            &[("about", about), ("number", number), ("least", at_least), ("below", below)],
        ),
    }
}
