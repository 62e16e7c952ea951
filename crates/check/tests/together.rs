//! Which kinds a key leaves together: named once, in the order of the questions.

use spinney_check::{Report, Settings, check};
use spinney_model::{Answer, Key, Matrix};

#[path = "drawn/good_key.rs"]
mod drawn;

use drawn::{HEDGE, HEDGE_KEY, key, matrix};

/// Every set by name, with the question and the answer before it.
fn left(matrix: &Matrix, key: &Key) -> Vec<String> {
    let report: Report = check(matrix, key, None, &Settings::default());
    let sets = report.left_together.iter().map(|left| {
        let names: Vec<&str> =
            left.taxa.iter().map(|taxon| matrix.taxon(*taxon).name.as_str()).collect();
        let after = left.after.map_or("the start".to_owned(), |step| {
            let answer = if step.answer == Answer::Yes { "yes" } else { "no" };
            format!("{answer} at {}", step.couplet)
        });
        let differ = left.differ.map_or("nothing", |at| matrix.character(at).name.as_str());
        format!("{} after {after}: {differ}", names.join(" + "))
    });
    sets.collect()
}

#[test]
fn a_key_that_separates_everything_leaves_nobody_together() {
    let matrix = matrix(HEDGE);
    assert_eq!(left(&matrix, &key(&matrix, HEDGE_KEY)), [""; 0]);
}

#[test]
fn kinds_at_one_end_are_named_whether_or_not_the_table_could_do_better() {
    let matrix = matrix(
        "edge: toothed, smooth
         hazel | toothed
         lime  | toothed
         box   | smooth",
    );
    let found =
        left(&matrix, &key(&matrix, "1. Toothed? [edge = toothed] -> hazel or lime / box"));
    assert_eq!(found, ["hazel + lime after yes at 1: nothing"]);
}

#[test]
fn what_would_tell_them_apart_stands_beside_them() {
    let matrix = matrix(
        "edge: toothed, smooth
         fur: hairy, bald
         hazel | toothed | hairy
         lime  | toothed | bald
         box   | smooth  | bald",
    );
    let found =
        left(&matrix, &key(&matrix, "1. Toothed? [edge = toothed] -> hazel or lime / box"));
    assert_eq!(found, ["hazel + lime after yes at 1: fur"]);
    assert_eq!(left(&matrix, &Key::default()), ["hazel + lime + box after the start: edge"]);
}

#[test]
fn a_set_that_is_part_of_another_is_not_repeated() {
    let matrix = matrix(
        "edge: toothed, smooth
         hazel | toothed or smooth
         lime  | toothed or smooth
         box   | smooth",
    );
    let text = "1. Toothed? [edge = toothed] -> hazel or lime / hazel or lime or box";
    assert_eq!(
        left(&matrix, &key(&matrix, text)),
        ["hazel + lime + box after no at 1: nothing"]
    );
}

#[test]
fn a_name_to_which_only_a_wrong_answer_leads_is_not_left_together() {
    let matrix = matrix("edge: toothed, smooth\nhazel | toothed\nlime | smooth");
    let text = "1. Toothed? [edge = toothed] -> hazel or lime / lime";
    assert_eq!(left(&matrix, &key(&matrix, text)), [""; 0]);
}

#[test]
fn one_kind_alone_is_not_left_together_with_itself() {
    let matrix = matrix("edge: toothed, smooth\nhazel | toothed");
    assert_eq!(left(&matrix, &Key::default()), [""; 0]);
}
