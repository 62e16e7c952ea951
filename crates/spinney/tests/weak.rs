//! `spinney weak` as a teacher uses it: what it says, in what order, and how it exits.

use std::path::Path;
use std::process::Output;

#[path = "program/run.rs"]
mod run;

fn weak(args: &[&str], table: &str) -> Output {
    let all: Vec<&str> = ["weak", "-"].iter().chain(args).copied().collect();
    run::spinney(Path::new("."), &all, table)
}

/// What was said, as one line.
fn said(output: &Output) -> String {
    let text = String::from_utf8(output.stdout.clone()).expect("it speaks UTF-8");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

const FINDS: &str = "kind,edge,lobes,feel,stalk length
hazel,toothed,unlobed,soft,6-14 mm
lime,toothed,unlobed,?,30-50 mm
dogwood,smooth,unlobed,soft,5-14 mm
box,smooth,unlobed,soft,?
hawthorn,toothed,lobed,soft,10-20 mm
";

#[test]
fn a_teacher_reads_what_is_weak_and_what_to_look_at() {
    let output = weak(&[], FINDS);
    assert_eq!(output.status.code(), Some(0));
    let text = said(&output);
    for sentence in [
        "5 kinds, 4 columns, 10 pairs of kinds: 1 cannot be told apart, 5 differ in 1 column, 4 in 2.",
        "One more cell filled in could tell these apart (see below): dogwood from box.",
        "Only “edge” tells hazel from dogwood and box; lime from box.",
        "Only “lobes” tells hazel from hawthorn.",
        "Only “stalk length” tells hazel from lime.",
        "1. stalk length of box: could tell it from dogwood; could be a second difference from \
         hazel and lime.",
        "2. feel of lime: could be a second difference from hazel and box.",
        "These 3 columns alone tell apart whatever the whole table can: edge, lobes and stalk \
         length. Proved: fewer cannot do it.",
    ] {
        assert!(text.contains(sentence), "{sentence}\n{text}");
    }
}

#[test]
fn a_strong_table_is_said_to_be_strong() {
    let table = "kind,a,b,c\nx,yes,yes,no\ny,no,no,no\nz,yes,no,yes\n";
    let text = said(&weak(&[], table));
    for sentence in [
        "None. Every pair differs in two columns or more.",
        "Nothing is needed.",
        "2 columns alone tell all kinds apart: any of these choices: - a and b - a and c - b and c",
        "It takes all 3 columns to show two differences in every pair.",
    ] {
        assert!(text.contains(sentence), "{sentence}\n{text}");
    }
    assert!(!text.contains("Not told apart yet"), "{text}");
}

#[test]
fn programs_get_json_and_the_wrong_use_an_answer() {
    let output = weak(&["--format", "json", "--next", "1"], FINDS);
    let text = said(&output);
    assert!(text.starts_with('{') && text.ends_with('}'), "{text}");
    assert!(text.contains("\"useful_blanks\": 2"), "{text}");
    assert!(text.contains("\"distances\": [ 1, 5, 4 ]"), "{text}");
    assert_eq!(weak(&["--next", "many"], FINDS).status.code(), Some(2));
    assert_eq!(weak(&[], "").status.code(), Some(1));
}

/// A table with something to mend is looked at all the same, and the exit says so.
#[test]
fn what_says_mend_this_is_said_as_well() {
    let output = weak(&[], "kind,edge\nhazel,toothed\nhazel,smooth\nbox,smooth\n");
    assert_eq!(output.status.code(), Some(1));
    assert!(said(&output).contains("[kind-twice]"), "{}", said(&output));
}
