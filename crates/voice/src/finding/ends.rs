//! What is said of where kinds come out.

use spinney_model::{Answer, Astray, FormAstray, NameAtEnd, OfEnds, Step};

use super::Told;
use super::phrases::{about, all, answer, at_end, at_ends, capital, cell, form, is_a_question};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfEnds) -> Told {
    match fact {
        OfEnds::NeverComesOut { kind, reads, all_linked } => {
            let message = match (reads.is_empty(), *all_linked) {
                (true, _) => "finding-never-comes-out",
                (false, true) => "finding-never-comes-out-reads",
                (false, false) => "finding-never-comes-out-reads-perhaps",
            };
            let says = t.with(message, &[("kind", kind), ("ends", &at_ends(t, reads))]);
            (says, t.with("finding-never-comes-out-remedy", &[("kind", kind)]))
        }
        OfEnds::NoQuestions { about: name } => {
            t.told("finding-no-questions", &[("about", &about(t, name))])
        }
        OfEnds::WrongPlace { question, about, astray } => {
            wrong_place(t, *question, about, astray)
        }
        OfEnds::VariesUsedAsFixed { question, about, answer, forms } => {
            varies(t, *question, about, *answer, forms)
        }
        OfEnds::SecondPlace { kind, end, wrong } => second_place(t, kind, *end, *wrong),
        OfEnds::EndUnreached { end, names, only_one } => {
            let (names, after) = (at_end(t, names), answer(t, end.answer));
            let texts: [(&str, &dyn std::fmt::Display); 3] =
                [("names", &names), ("answer", &after), ("question", &end.couplet)];
            let (says, remedy) = t.told("finding-end-unreached", &texts);
            match only_one {
                true => (says, format!("{remedy} {}", t.say("finding-end-unreached-only-one"))),
                false => (says, remedy),
            }
        }
        OfEnds::EndOnlyGuessed { end, names, kinds, cells } => {
            let cells: Vec<String> = cells.iter().map(|one| cell(t, one)).collect();
            t.told(
                "finding-end-guessed",
                &[
                    ("names", &at_end(t, names)),
                    ("answer", &answer(t, end.answer)),
                    ("question", &end.couplet),
                    ("kinds", &all(t, kinds)),
                    ("cells", &all(t, &cells)),
                ],
            )
        }
        OfEnds::PartsNothing { question, answer: given, kinds } => t.told(
            "finding-parts-nothing",
            &[
                ("question", question),
                ("answer", &answer(t, *given)),
                ("kinds", &all(t, kinds)),
            ],
        ),
        OfEnds::NamedTooOften { end, kinds } => t.told(
            "finding-named-too-often",
            &[
                ("answer", &answer(t, end.answer)),
                ("question", &end.couplet),
                ("kinds", &all(t, kinds)),
            ],
        ),
        OfEnds::CouldBeParted { end, kinds, about: name } => {
            let message = match is_a_question(name) {
                true => "finding-could-be-parted-by",
                false => "finding-could-be-parted",
            };
            let (name, kinds) = (about(t, name), all(t, kinds));
            let texts: [(&str, &dyn std::fmt::Display); 4] = [
                ("answer", &answer(t, end.answer)),
                ("question", &end.couplet),
                ("kinds", &kinds),
                ("about", &name),
            ];
            (t.with(message, &texts), t.with("finding-could-be-parted-remedy", &texts))
        }
    }
}

/// "comes out at lime".
fn comes_out(t: Tongue, reads: &[Vec<NameAtEnd>]) -> String {
    match reads {
        [] => t.say("finding-comes-out-nowhere"),
        _ => t.with("finding-comes-out", &[("ends", &at_ends(t, reads))]),
    }
}

fn wrong_place(t: Tongue, question: u32, name: &str, astray: &[Astray]) -> Told {
    let way = |one: &Astray| {
        let (given, out) = (answer(t, one.answer), comes_out(t, &one.reads));
        let texts: [(&str, &dyn std::fmt::Display); 3] =
            [("kind", &one.kind), ("answer", &given), ("out", &out)];
        t.with("finding-wrong-place-way", &texts)
    };
    let ways = astray.iter().map(way).collect::<Vec<_>>().join("; ");
    let says = t.with("finding-wrong-place", &[("question", &question), ("ways", &ways)]);
    let Some(first) = astray.first() else { return (says, String::new()) };
    if astray.iter().any(|one| one.answer != first.answer) {
        return (says, t.say("finding-wrong-place-exchanged"));
    }
    let kinds: Vec<String> = astray.iter().map(|one| one.kind.clone()).collect();
    let texts: [(&str, &dyn std::fmt::Display); 3] = [
        ("about", &about(t, name)),
        ("kinds", &all(t, &kinds)),
        ("answer", &answer(t, first.answer)),
    ];
    (says, t.with("finding-wrong-place-remedy", &texts))
}

fn varies(t: Tongue, question: u32, name: &str, given: Answer, forms: &[FormAstray]) -> Told {
    let way = |one: &FormAstray| {
        let number = !matches!(one.form, spinney_model::Form::States(_));
        let message = if number { "finding-varies-has" } else { "finding-varies-is" };
        let (shape, out) = (form(t, &one.form), comes_out(t, &one.reads));
        t.with(message, &[("kind", &one.kind), ("form", &shape), ("out", &out)])
    };
    let ways = forms.iter().map(way).collect::<Vec<_>>().join("; ");
    let kinds: Vec<String> = forms.iter().map(|one| one.kind.clone()).collect();
    t.told(
        "finding-varies",
        &[
            ("question", &question),
            ("about", &about(t, name)),
            ("ways", &ways),
            ("kinds", &all(t, &kinds)),
            ("answer", &answer(t, given)),
        ],
    )
}

fn second_place(t: Tongue, kind: &str, end: Step, wrong: Step) -> Told {
    let message =
        if wrong == end { "finding-second-place-here" } else { "finding-second-place" };
    let texts: [(&str, &dyn std::fmt::Display); 5] = [
        ("kind", &capital(kind)),
        ("answer", &answer(t, end.answer)),
        ("question", &end.couplet),
        ("misread", &answer(t, wrong.answer)),
        ("wrong", &wrong.couplet),
    ];
    (t.with(message, &texts), t.say("finding-second-place-remedy"))
}
