//! What is said of kinds at a question that they cannot answer, or not surely.

use spinney_model::{OfAnswers, RangeOf};

use super::Told;
use super::phrases::{about, all, answer, asks, capital, figure, is_a_question, range};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfAnswers) -> Told {
    match fact {
        OfAnswers::BothLeads { question, about: name, kinds } => {
            at_leads(t, "finding-both-leads", *question, name, kinds)
        }
        OfAnswers::NeitherLead { question, about: name, kinds } => {
            at_leads(t, "finding-neither-lead", *question, name, kinds)
        }
        OfAnswers::DoesNotHave { question, about: name, kinds } => t.told_of(
            "finding-does-not-have",
            kinds.len(),
            &[("question", question), ("asks", &asks(t, name)), ("kinds", &all(t, kinds))],
        ),
        OfAnswers::MayNotHave { question, about: name, kinds, governor } => {
            let governor = match governor {
                Some(governor) => about(t, governor),
                None => t.say("finding-another-column"),
            };
            t.told(
                "finding-may-not-have",
                &[
                    ("question", question),
                    ("asks", &asks(t, name)),
                    ("kinds", &all(t, kinds)),
                    ("governor", &governor),
                ],
            )
        }
        OfAnswers::NobodyRecorded { question, about: name, kinds, lost } => {
            let kinds = all(t, kinds);
            let texts: [(&str, &dyn std::fmt::Display); 4] = [
                ("question", question),
                ("asks", &asks(t, name)),
                ("kinds", &kinds),
                ("about", &about(t, name)),
            ];
            let (mut says, remedy) = t.told("finding-nobody-recorded", &texts);
            for (kind, given) in lost {
                let texts: [(&str, &dyn std::fmt::Display); 2] =
                    [("kind", kind), ("answer", &answer(t, *given))];
                says.push(' ');
                says.push_str(&capital(&t.with("finding-nobody-recorded-lost", &texts)));
            }
            match is_a_question(name) {
                true => (says, t.with("finding-nobody-recorded-say", &texts)),
                false => (says, remedy),
            }
        }
        OfAnswers::ThresholdInside { question, about: name, at, ranges } => {
            let kinds: Vec<String> = ranges.iter().map(|range| range.kind.clone()).collect();
            t.told_of(
                "finding-threshold-inside",
                ranges.len(),
                &[
                    ("question", question),
                    ("at", &figure(t, *at)),
                    ("about", name),
                    ("ranges", &in_brackets(t, ranges)),
                    ("kinds", &all(t, &kinds)),
                ],
            )
        }
        OfAnswers::ThresholdNear {
            question,
            about: name,
            at,
            ranges,
            margin,
            smaller_may_do,
        } => {
            let texts: [(&str, &dyn std::fmt::Display); 5] = [
                ("question", question),
                ("at", &figure(t, *at)),
                ("about", name),
                ("ranges", &in_brackets(t, ranges)),
                ("margin", &figure(t, *margin)),
            ];
            let (says, remedy) = t.told("finding-threshold-near", &texts);
            (says, with_margin(t, remedy, name, *smaller_may_do))
        }
        OfAnswers::ThinEvidence { question, about: name, kind } => t.told(
            "finding-thin-evidence",
            &[("question", question), ("kind", kind), ("about", &about(t, name))],
        ),
    }
}

fn at_leads(t: Tongue, message: &str, question: u32, name: &str, kinds: &[String]) -> Told {
    t.told_of(
        message,
        kinds.len(),
        &[("question", &question), ("kinds", &all(t, kinds)), ("about", &name)],
    )
}

/// "hazel (30 to 35 mm) and lime (40 mm)".
fn in_brackets(t: Tongue, ranges: &[RangeOf]) -> String {
    let one = |of: &RangeOf| format!("{} ({})", of.kind, range(t, of));
    all(t, &ranges.iter().map(one).collect::<Vec<_>>())
}

/// A remedy, and after it the setting of the safety margin where a smaller one may do.
pub(super) fn with_margin(t: Tongue, remedy: String, name: &str, may_do: bool) -> String {
    match may_do {
        true => format!("{remedy} {}", t.with("finding-smaller-margin", &[("about", &name)])),
        false => remedy,
    }
}
