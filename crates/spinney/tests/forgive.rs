//! `spinney forgive` as a teacher uses it: which kinds get a second place, and what that saves.

use std::path::Path;
use std::process::Output;

#[path = "program/run.rs"]
mod run;

use run::spinney;

const FINDS: &str = "kind,edge,face,tip
hazel,toothed,white,sharp
box,smooth,green,blunt
elm,smooth,white,blunt
";

fn forgive(args: &[&str], table: &str) -> Output {
    let all: Vec<&str> = ["forgive", "-"].iter().chain(args).copied().collect();
    spinney(Path::new("."), &all, table)
}

/// What was said, as one line.
fn said(output: &Output) -> String {
    let text = String::from_utf8(output.stdout.clone()).expect("it speaks UTF-8");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// By hand: every question is read right 95 times of 100. One kind is a question away and two
/// are two: (0.95 + 2 × 0.9025) / 3 = 0.9183. Box looked for beside hazel as well, and hazel
/// then beside box: 0.9025 + 0.0475 × 0.95 = 0.947625 for each of the two, and 0.9025 for elm:
/// 0.9326.
#[test]
fn a_teacher_reads_what_second_places_save() {
    let output = forgive(&["--places", "2"], FINDS);
    assert_eq!(output.status.code(), Some(0));
    let text = said(&output);
    for sentence in [
        "With no second place: 91.8 of 100. ",
        "With one second place: 91.8 of 100, no more. ",
        "With 2 second places: 93.3 of 100, 1.4 more: ",
        "A second place for box after “yes” at question 1 (Is the edge toothed?) saves 1.5 finds",
        "A second place for hazel after “no” at question 2 (Is the face white?) saves 1.5 finds",
    ] {
        assert!(text.contains(sentence), "{sentence}\n{text}");
    }
}

#[test]
fn what_must_not_be_asked_is_not() {
    let text = said(&forgive(&["--never", "edge, tip", "--places", "0"], FINDS));
    assert!(text.contains("Is the face white?"), "{text}");
    assert!(!text.contains("edge") && !text.contains("tip"), "{text}");
    assert_eq!(forgive(&["--never", "colour"], FINDS).status.code(), Some(2));
}

#[test]
fn programs_get_exact_shares_and_the_wrong_use_an_answer() {
    let text = said(&forgive(&["--places", "0", "--format", "json"], FINDS));
    assert!(text.contains("\"right_exact\": \"551/600\""), "{text}");
    assert!(text.contains("\"proved\": true"), "{text}");
    assert_eq!(forgive(&["--places", "4"], FINDS).status.code(), Some(2));
    assert_eq!(forgive(&[], "").status.code(), Some(1));
}

#[test]
fn a_table_that_nobody_could_wait_for_is_refused_with_what_to_do() {
    let most = spinney_model::limits::FORGIVING_KINDS;
    let table = |kinds: usize| {
        let row =
            |kind| format!("kind {kind},{}\n", if kind == 0 { "toothed" } else { "smooth" });
        std::iter::once("kind,edge\n".to_owned()).chain((0..kinds).map(row)).collect::<String>()
    };
    let output = forgive(&[], &table(most + 1));
    let told = String::from_utf8(output.stderr).expect("it speaks UTF-8");
    assert_eq!(output.status.code(), Some(1), "{told}");
    assert!(told.contains("301 kinds") && told.contains("up to 300"), "{told}");
    assert!(told.contains("Leave out kinds"), "{told}");
    let output = forgive(&["--places", "0", "--budget", "10"], &table(most));
    assert!(output.stderr.is_empty(), "{}", String::from_utf8_lossy(&output.stderr));
}
