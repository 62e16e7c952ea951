//! What is said of a key that was read, in words or from a file.

use spinney_model::{Answer, OfKeyRead, OneTooMany};

use super::Told;
use super::phrases::any;
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfKeyRead) -> Told {
    match fact {
        OfKeyRead::NoNumberedQuestion => t.told("finding-no-numbered-question", &[]),
        OfKeyRead::OnlyFirstQuestions { read } => {
            let says = t.with("finding-only-first-questions", &[("read", read)]);
            (says, t.say("finding-several-keys"))
        }
        OfKeyRead::OnlyFirstLines { read } => {
            let says = t.with("finding-only-first-lines", &[("read", read)]);
            (says, t.say("finding-several-keys"))
        }
        OfKeyRead::LineTooLong { letters } => {
            t.told("finding-line-too-long", &[("letters", letters)])
        }
        OfKeyRead::LineNeither { line } => t.told("finding-line-neither", &[("line", line)]),
        OfKeyRead::LeadTooMany { question, what, line } => {
            let what = t.say(match what {
                OneTooMany::ThirdLead => "finding-a-third-lead",
                OneTooMany::Twice(Answer::Yes) => "finding-yes-twice",
                OneTooMany::Twice(Answer::No) => "finding-no-twice",
            });
            t.told(
                "finding-lead-too-many",
                &[("question", question), ("what", &what), ("line", line)],
            )
        }
        OfKeyRead::LeadsNobodyKnowsWhere { question, written } => t.told(
            "finding-leads-nobody-knows-where",
            &[("question", question), ("written", written)],
        ),
        OfKeyRead::NameNotSure { question, written, near } => t.told(
            "finding-name-not-sure",
            &[
                ("question", question),
                ("written", written),
                ("near", &any(t, near)),
                ("first", &near.first().map_or("", String::as_str)),
            ],
        ),
        OfKeyRead::NameUnknown { question, written } => {
            t.told("finding-name-unknown", &[("question", question), ("written", written)])
        }
    }
}
