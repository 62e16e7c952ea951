//! Sentences that compare two lengths, and the ratio they must link to.

use spinney_model::{Asked, CharacterIx, Matrix, Quantity};

use super::super::super::proposals;
use crate::table::{self, Settings, Source, Sources};

const TABLE: &str = "kind,stalk length (mm),blade length (mm),blade width (mm),edge
alpha,10-12,50-60,20-30,smooth
beta,40-50,50-60,40-50,toothed
gamma,90-99,30-35,50-60,toothed
";
const CHARACTERS: &str = "character,question,ratio of
stalk to blade,,stalk length / blade length
slimness,,blade length / blade width
";

fn table() -> Matrix {
    let source = |name: &str, text: &str| Source {
        name: name.to_owned(),
        bytes: text.as_bytes().to_vec(),
    };
    let sources = Sources {
        table: source("table.csv", TABLE),
        characters: Some(source("characters.csv", CHARACTERS)),
        kinds: None,
        about: None,
    };
    table::read(&sources, &Settings::default()).expect("it is a table").matrix
}

/// What one question is surely about.
fn linked(question: &str) -> Option<(String, Asked)> {
    let matrix = table();
    let proposals = proposals(question, &matrix);
    let sure = proposals.iter().find(|proposal| proposal.sure)?;
    Some((matrix.character(sure.ask.character).name.clone(), sure.ask.yes.clone()))
}

fn more(thousandths: i64) -> Asked {
    Asked::AtLeast(Quantity::from_thousandths(thousandths))
}

fn less(thousandths: i64) -> Asked {
    Asked::Below(Quantity::from_thousandths(thousandths))
}

#[test]
fn a_comparison_of_two_parts_is_a_threshold_of_their_ratio() {
    for (sentence, column, yes) in [
        ("Is the stalk longer than half the blade?", "stalk to blade", more(500)),
        ("Is the stalk longer than half of the blade?", "stalk to blade", more(500)),
        ("Is the leaf stalk longer than the blade?", "stalk to blade", more(1_000)),
        ("Is the stalk shorter than a third of the blade?", "stalk to blade", less(333)),
        ("Is the stalk not longer than half the blade?", "stalk to blade", less(500)),
        ("Is the stalk more than twice as long as the blade?", "stalk to blade", more(2_000)),
        ("Is the stalk at least twice as long as the blade?", "stalk to blade", more(2_000)),
        ("Is the stalk half as long as the blade or longer?", "stalk to blade", more(500)),
        (
            "Is the stalk more than one and a half times as long as the blade?",
            "stalk to blade",
            more(1_500),
        ),
        ("Is the stalk more than 0.4 times as long as the blade?", "stalk to blade", more(400)),
        (
            "Is the stalk less than three times as long as the blade?",
            "stalk to blade",
            less(3_000),
        ),
        ("Is the stalk longer than 1/2 of the blade?", "stalk to blade", more(500)),
        ("Is the stalk longer than 3/4 of the blade?", "stalk to blade", more(750)),
        ("Is the stalk longer than 50 % of the blade?", "stalk to blade", more(500)),
        ("Is the stalk longer than a fifth of the blade?", "stalk to blade", more(200)),
        ("Is the stalk longer than four fifths of the blade?", "stalk to blade", more(800)),
        (
            "Is the stalk more than two and a half times as long as the blade?",
            "stalk to blade",
            more(2_500),
        ),
        // Read as any number without a unit of the column that both words name.
        ("Is the stalk longer than 2 blades?", "stalk to blade", more(2_000)),
        ("Is the stalk longer than 0.5 of the blade?", "stalk to blade", more(500)),
        ("Is the stalk longer than 1.5 × the blade?", "stalk to blade", more(1_500)),
        ("Is the stalk as long as half the blade or longer?", "stalk to blade", more(500)),
        // The other way round: a blade longer than two stalks is a stalk under half the blade.
        ("Is the blade longer than twice the stalk?", "stalk to blade", less(500)),
        ("Is the blade shorter than the stalk?", "stalk to blade", more(1_000)),
        ("Is the blade longer than it is wide?", "slimness", more(1_000)),
        ("Is the blade at least twice as long as it is wide?", "slimness", more(2_000)),
        ("Is the blade wider than half its length?", "slimness", less(2_000)),
        ("Is the blade wider than it is long?", "slimness", less(1_000)),
    ] {
        assert_eq!(linked(sentence), Some((column.to_owned(), yes)), "{sentence}");
    }
}

#[test]
fn an_exact_amount_or_a_third_thing_is_not_linked() {
    for sentence in [
        "Is the stalk twice as long as the blade?",
        "Is the stalk as long as the blade?",
        "Is the stalk longer than half the twig?",
        "Is the stalk longer than half your finger?",
        "Is the stalk longer than half the blade and is the edge toothed?",
        "Is the stalk wider than half the blade?",
        "Is half the stalk longer than the blade?",
        "Is the stalk twice longer than the blade?",
        "Is the stalk 10 mm longer than the blade?",
        "Is the stalk at least 5 mm longer than the blade?",
        "Is the stalk longer than the blade by 10 mm?",
        "Is the stalk not longer than the blade and not wider?",
        "Is the stalk shorter than 20 mm and longer than half the blade?",
        "Is the stalk longer than the blade but not longer than twice the blade?",
        "Is the stalk longer than half of one third of the blade?",
        "Is the stalk longer than a seventh of the blade?",
        "Is the stalk longer than half or a third of the blade?",
        "Is the stalk longer than the twig and the blade?",
        "Is the stalk longer or wider than the blade?",
        "Is the stalk only longer than the blade sometimes?",
        "Is the stalk half as long as half the blade or longer?",
        "Is the stalk 1/0 as long as the blade or longer?",
        // The whole blade must not be taken for half of it.
        "Is the stalk at least half long as the blade?",
    ] {
        assert_eq!(linked(sentence), None, "{sentence}");
    }
}

/// Twice the stalk is not the stalk: it is not even offered to a person.
#[test]
fn a_portion_of_the_first_part_is_not_passed_over() {
    for sentence in [
        "Is twice the stalk longer than the blade?",
        "Is double the stalk longer than the blade?",
    ] {
        let matrix = table();
        let proposals = proposals(sentence, &matrix);
        let name = |at: CharacterIx| matrix.character(at).name.as_str();
        let named: Vec<&str> =
            proposals.iter().map(|proposal| name(proposal.ask.character)).collect();
        assert!(!named.contains(&"stalk to blade"), "{sentence}: {named:?}");
    }
}

#[test]
fn lengths_that_are_compared_without_a_column_are_told_how_to_get_one() {
    let hedge = crate::link::hedge::table();
    let words = "Is the stalk longer than half the blade?".to_owned();
    let mut key = crate::link::alone(spinney_model::Wording::Question(words));
    let report = crate::link::link(&mut key, &hedge, &crate::link::Links::default());
    let [finding] = report.findings.as_slice() else { panic!("{:?}", report.findings) };
    let [one, other] = ["stalk length", "blade length"].map(str::to_owned);
    let fact = spinney_model::OfLink::NoRatio { question: 1, one, other };
    assert_eq!(finding.fact, fact.into());
}
