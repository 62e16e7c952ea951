//! What is said of a question that is not linked to the table, or not surely.

use spinney_model::{CanAsk, NotInTable, OfLink};

use super::Told;
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfLink) -> Told {
    match fact {
        OfLink::NoRatio { question, one, other } => t.told(
            "finding-link-no-ratio",
            &[("question", question), ("one", one), ("other", other)],
        ),
        OfLink::SpeaksOf { question, word } => {
            t.told("finding-link-speaks-of", &[("question", question), ("word", word)])
        }
        OfLink::NotYesOrNo { question } => {
            t.told("finding-link-not-yes-or-no", &[("question", question)])
        }
        OfLink::TwoThings { question } => {
            t.told("finding-link-two-things", &[("question", question)])
        }
        OfLink::TwoChoices { question } => {
            t.told("finding-link-two-choices", &[("question", question)])
        }
        OfLink::OneOfTwoNumbers { question, about } => {
            t.told("finding-link-one-of-two", &[("question", question), ("about", about)])
        }
        OfLink::ExactlyOneNumber { question, about } => {
            t.told("finding-link-exactly", &[("question", question), ("about", about)])
        }
        OfLink::SeveralNumbers { question } => {
            t.told("finding-link-several-numbers", &[("question", question)])
        }
        OfLink::EveryState { question, about } => {
            t.told("finding-link-every-state", &[("question", question), ("about", about)])
        }
        OfLink::NoMeasure { question, word, example } => {
            let says =
                t.with("finding-link-no-measure", &[("question", question), ("word", word)]);
            let remedy = match example {
                Some((about, unit)) => t.with(
                    "finding-link-no-measure-remedy",
                    &[("about", about), ("unit", unit)],
                ),
                None => t.say("finding-link-no-measure-at-all"),
            };
            (says, remedy)
        }
        OfLink::MayAsk { .. } => may_ask(t, fact),
        OfLink::AsksBoth { question, first, second, line } => t.told(
            "finding-link-asks-both",
            &[("question", question), ("first", first), ("second", second), ("line", line)],
        ),
        OfLink::NoWords { question } => {
            t.told("finding-link-no-words", &[("question", question)])
        }
        OfLink::NamesAKind { question, kind, name } => t.told(
            "finding-link-names-a-kind",
            &[("question", question), ("kind", kind), ("name", name)],
        ),
        OfLink::NothingThere { question, about, can } => {
            let says = t.with(
                "finding-link-nothing-there",
                &[("question", question), ("about", about)],
            );
            (says, can_ask(t, about, can))
        }
        OfLink::Nothing { question, example } => {
            let example = example.clone().unwrap_or_else(|| t.say("finding-link-edge"));
            t.told("finding-link-nothing", &[("question", question), ("example", &example)])
        }
        OfLink::NotInTable { question, what } => t.told(
            "finding-link-not-in-table",
            &[("question", question), ("what", &not_in_table(t, what))],
        ),
    }
}

fn may_ask(t: Tongue, fact: &OfLink) -> Told {
    let OfLink::MayAsk { question, meanings, denied, unit, line } = fact else {
        unreachable!("only what may be asked comes here");
    };
    let mut meanings = meanings.iter();
    let first = meanings.next().cloned().unwrap_or_default();
    let may = match denied {
        true => t.with("finding-link-says-not", &[("question", question), ("what", &first)]),
        false => {
            let what = meanings.fold(first, |before, next| {
                t.with("finding-link-or-for", &[("before", &before), ("next", next)])
            });
            t.with("finding-link-may-ask", &[("question", question), ("what", &what)])
        }
    };
    match unit {
        Some(unit) => (
            t.with("finding-link-no-unit", &[("question", question), ("may", &may)]),
            t.with("finding-link-no-unit-remedy", &[("unit", unit), ("line", line)]),
        ),
        None => (may, t.with("finding-link-may-ask-remedy", &[("line", line)])),
    }
}

fn can_ask(t: Tongue, about: &str, can: &CanAsk) -> String {
    match can {
        CanAsk::Whether => t.with("finding-link-can-whether", &[("about", &about)]),
        CanAsk::States(states) => {
            t.with("finding-link-can-states", &[("states", &states.join(", "))])
        }
        CanAsk::Count => t.say("finding-link-can-count"),
        CanAsk::Measure(unit) => t.with("finding-link-can-measure", &[("unit", unit)]),
    }
}

/// Something that a table does not have, as part of a sentence.
pub(super) fn not_in_table(t: Tongue, what: &NotInTable) -> String {
    match what {
        NotInTable::Named(name) => t.with("finding-link-named", &[("name", name)]),
        NotInTable::Of(name) => t.with("finding-link-this-of", &[("name", name)]),
    }
}
