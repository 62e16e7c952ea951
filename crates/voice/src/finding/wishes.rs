//! What is said of wishes that a key does not keep.

use spinney_model::{EarlyOf, OfWishes, Season, SeenOn, Step, WhyLeftOut};

use super::Told;
use super::phrases::{about, all, answer, asked};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfWishes) -> Told {
    let again = |says| (says, t.say("finding-wish-remedy"));
    match fact {
        OfWishes::KeptNotAsked { after, wanted } => again(t.with(
            "finding-kept-not-asked",
            &[("place", &place(t, *after)), ("wanted", &asked(t, wanted))],
        )),
        OfWishes::KeptOther { after, wanted, question, asks } => {
            let here = match asks {
                None => t.say("finding-kept-not-linked"),
                Some(asks) => t.with(
                    "finding-kept-other-is",
                    &[("question", question), ("asked", &asked(t, asks))],
                ),
            };
            again(t.with(
                "finding-kept-other",
                &[("place", &place(t, *after)), ("wanted", &asked(t, wanted)), ("here", &here)],
            ))
        }
        OfWishes::NotToBeAsked { question, about: name, why } => t.told(
            "finding-not-to-be-asked",
            &[("question", question), ("about", &about(t, name)), ("why", &left_out(t, *why))],
        ),
        OfWishes::SentToTouch { question, kinds, otherwise } => again(t.with(
            "finding-sent-to-touch",
            &[
                ("question", question),
                ("kinds", &all(t, kinds)),
                ("otherwise", &about(t, otherwise)),
            ],
        )),
        OfWishes::TouchNotSo { question } => {
            let says = t.with("finding-touch-not-so", &[("question", question)]);
            (says, t.say("finding-claim-remedy"))
        }
        OfWishes::TouchNotSaid { question } => {
            let says = t.with("finding-touch-not-said", &[("question", question)]);
            (says, t.say("finding-claim-remedy"))
        }
        OfWishes::OutOfOrder { question, about: name, first } => again(t.with(
            "finding-out-of-order",
            &[("question", question), ("about", &about(t, name)), ("first", &about(t, first))],
        )),
        OfWishes::EarlyNotSaid { wish } => again(match wish {
            EarlyOf::Apart(kinds) => {
                t.with("finding-early-apart-not-said", &[("kinds", &all(t, kinds))])
            }
            EarlyOf::Out(kind) => t.with("finding-early-out-not-said", &[("kind", kind)]),
        }),
        OfWishes::Late { wish, within, takes, up_to } => {
            let to = up_to.map(|number| t.with("finding-late-up-to", &[("question", &number)]));
            let to = to.unwrap_or_default();
            let (message, who) = match wish {
                EarlyOf::Apart(kinds) => ("finding-late-apart", all(t, kinds)),
                EarlyOf::Out(kind) => ("finding-late-out", kind.clone()),
            };
            let texts: [(&str, &dyn std::fmt::Display); 3] =
                [("kinds", &who), ("takes", takes), ("to", &to)];
            again(t.count_with(message, *within as usize, &texts))
        }
    }
}

/// "The question after yes at 3".
fn place(t: Tongue, after: Option<Step>) -> String {
    match after {
        None => t.say("finding-first-question"),
        Some(step) => t.with(
            "finding-question-after",
            &[("answer", &answer(t, step.answer)), ("question", &step.couplet)],
        ),
    }
}

fn left_out(t: Tongue, why: WhyLeftOut) -> String {
    match why {
        WhyLeftOut::Never => t.say("finding-left-out-never"),
        WhyLeftOut::InTheHand(in_the_hand) => {
            t.with("finding-left-out-hand", &[("hand", &hand(t, in_the_hand))])
        }
        WhyLeftOut::InSeason(of_year) => {
            t.with("finding-left-out-season", &[("season", &season(t, of_year))])
        }
    }
}

/// What is in the hand: "a twig with leaves".
pub fn hand(t: Tongue, hand: SeenOn) -> String {
    t.say(match hand {
        SeenOn::Tree => "table-word-tree",
        SeenOn::Twig => "table-word-twig",
        SeenOn::Leaf => "table-word-leaf",
        SeenOn::Rubbing => "table-word-rubbing",
        SeenOn::Photograph => "table-word-photograph",
        SeenOn::WinterTwig => "table-word-winter-twig",
        SeenOn::Tray => "table-word-tray",
    })
}

/// A season of the year: "autumn".
pub fn season(t: Tongue, season: Season) -> String {
    t.say(match season {
        Season::Spring => "table-word-spring",
        Season::Summer => "table-word-summer",
        Season::Autumn => "table-word-autumn",
        Season::Winter => "table-word-winter",
    })
}
