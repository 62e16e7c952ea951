//! `spinney ways` as a person uses it: a key whose questions may have three or four ways.

use std::path::Path;
use std::process::Output;

#[path = "program/run.rs"]
mod run;

use run::spinney;

/// Invented finds.
const FINDS: &str = "kind,leaflets,form
alpha,3,feather
beta,5,feather
gamma,7,feather
delta,9,feather
epsilon,n/a,hand
zeta,n/a,one piece
eta,n/a,needle
";
const CHARACTERS: &str = "character,applies when
leaflets,form = feather
";

fn ways(args: &[&str]) -> Output {
    ways_of(FINDS, args)
}

fn ways_of(finds: &str, args: &[&str]) -> Output {
    let folder = std::env::temp_dir().join(format!("spinney-ways-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("a folder");
    std::fs::write(folder.join("characters.csv"), CHARACTERS).expect("a file");
    let mut all = vec!["ways", "-", "--characters", "characters.csv"];
    all.extend(args);
    spinney(&folder, &all, finds)
}

fn text(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("it speaks UTF-8")
}

/// By hand: the form in one look, then the number of leaflets in another: of seven finds three
/// take one question and four take two, 11/7 on average.
#[test]
fn four_ways_make_two_questions_of_it() {
    let output = ways(&["--most", "4"]);
    let text = text(&output);
    assert_eq!(output.status.code(), Some(0), "{text}");
    let expected = "\
1. Form:
   feather → 2
   hand → epsilon
   one piece → zeta
   needle → eta
2. Leaflets:
   4 or fewer → alpha
   5 to 6 → beta
   7 to 8 → gamma
   9 or more → delta
";
    assert!(text.starts_with(expected), "{text}");
    assert!(text.contains("A find takes 1.57 questions on average and 2 at most"), "{text}");
}

#[test]
fn one_number_alone_is_no_range() {
    let finds = "kind,leaflets\nalpha,3\nbeta,5\ngamma,6\ndelta,7\n";
    let text = text(&ways_of(finds, &["--most", "4"]));
    let expected = "\
1. Leaflets:
   4 or fewer → alpha
   5 → beta
   6 → gamma
   7 or more → delta
";
    assert!(text.starts_with(expected), "{text}");
}

#[test]
fn two_ways_are_yes_and_no() {
    let text = text(&ways(&["--most", "2"]));
    assert!(text.contains("Yes → ") && !text.contains(":\n   "), "{text}");
}

#[test]
fn programs_get_the_looks_and_wrong_use_an_answer() {
    let json = text(&ways(&["--format", "json"]));
    assert!(json.contains("\"same_look\"") && json.contains("\"proved\": true"), "{json}");
    for most in ["1", "5", "many"] {
        assert_eq!(ways(&["--most", most]).status.code(), Some(2));
    }
    let nothing = spinney(Path::new("."), &["ways", "-"], "");
    assert_eq!(nothing.status.code(), Some(1));
}
