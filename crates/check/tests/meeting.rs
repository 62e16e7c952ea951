//! Keys whose ways meet and keys whose numbers repeat: what is said where two things are one.

use spinney_check::{Settings, check};
use spinney_model::{Answer, Astray, Code, Fact, Finding, NameAtEnd, OfEnds, OfTree, Step};

#[path = "drawn/good_key.rs"]
mod drawn;

use drawn::{codes, key, matrix};

/// Invented for these tests.
const TWIGS: &str = "
    colour: red, blue
    edge: toothed, smooth
    shape: long, round
    holly | red or blue | smooth  | round
    hazel | red         | toothed | long
    beech | blue        | smooth  | long
";

fn findings(text: &str) -> Vec<Finding> {
    let matrix = matrix(TWIGS);
    check(&matrix, &key(&matrix, text), None, &Settings::default()).findings
}

#[test]
fn forms_that_met_after_they_went_astray_come_out_where_they_come_out() {
    let found = findings(
        "1. Is it red? [colour = red] -> 2 / 3
         2. Is it toothed? [edge = toothed] -> holly or hazel / 4
         3. Does the edge have teeth? [edge = toothed] -> holly / 4
         4. Is it long? [shape = long] -> beech / hazel",
    );
    let wrong: Vec<&Finding> = found.iter().filter(|f| f.code == Code::WrongPlace).collect();
    assert_eq!(wrong.len(), 2, "{found:#?}");
    for (at, finding) in [2, 3].into_iter().zip(wrong) {
        let astray = Astray {
            kind: "holly".to_owned(),
            answer: Answer::No,
            reads: vec![vec![NameAtEnd::Kind("hazel".to_owned())]],
        };
        let Fact::Ends(OfEnds::WrongPlace { question, astray: found, .. }) = &finding.fact
        else {
            panic!("{finding:?}");
        };
        assert_eq!((*question, found.as_slice()), (at, &[astray][..]));
    }
}

#[test]
fn a_loop_behind_the_second_bearer_of_a_number_is_found() {
    let with = |second: &str| {
        let text = format!(
            "1. Is it red? [colour = red] -> 2 / holly or beech
             2. Is it toothed? [edge = toothed] -> hazel / 3
             2. Is it round? [shape = round] -> {second}
             3. Is it long? [shape = long] -> hazel / holly",
        );
        findings(&text).into_iter().filter(|f| f.code == Code::Loop).collect::<Vec<_>>()
    };
    assert_eq!(with("holly / 3"), []);
    let found = with("holly / 1");
    assert_eq!(codes(&found), [Code::Loop]);
    let from = Step { couplet: 2, answer: Answer::No };
    let fact = OfTree::Loop { from, to: 1, lost: Vec::new() };
    assert_eq!(found[0].fact, fact.into());
    // A loop that does not need the second bearer is said once.
    assert_eq!(with("2 / 2").len(), 2, "both answers lead back to where they stand");
}

#[test]
fn a_second_bearer_that_is_probably_another_number_loops_only_as_that_number() {
    // The second 2 is the missing 4; that it leads on to 2 is no loop then.
    let found = findings(
        "1. Is it red? [colour = red] -> 4 / 3
         2. Is it toothed? [edge = toothed] -> hazel / holly
         2. Is it round? [shape = round] -> holly / 2
         3. Is it long? [shape = long] -> beech / holly",
    );
    assert!(found.iter().any(|finding| finding.code == Code::NumberTwice), "{found:#?}");
    assert!(found.iter().all(|finding| finding.code != Code::Loop), "{found:#?}");
}
