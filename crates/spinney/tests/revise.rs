//! Last season's key on the command line: what a teacher reads, and what programs read.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

fn hedge_walk() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/hedge_walk")
}

fn revise(more: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_spinney"))
        .args(["revise", ".", "--old", "last_season.txt"])
        .args(more)
        .current_dir(hedge_walk())
        .output()
        .expect("spinney starts")
}

fn said(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("it speaks UTF-8")
}

#[test]
fn a_teacher_reads_what_changed_and_what_changing_less_would_cost() {
    let text = said(&revise(&[]));
    for sentence in [
        "Last season's key with",
        "New in the table: lime, rowan.",
        "No longer in the table, or spelt differently: elder.",
        "Kept as they were: 1,",
        "Proved: every key with fewer changes takes more",
        "not possible",
        "this key",
    ] {
        assert!(text.contains(sentence), "{sentence}: {text}");
    }
    // A heading stands only over what was found.
    assert!(text.contains("\nWhat to look at\n"), "{text}");
    assert!(!text.contains("In last season's key"), "{text}");
    // What was gone is what revising is for.
    assert!(!text.contains("name-unknown"), "{text}");
    // Every kind of the table comes out of the new key.
    let key = text.split("What changed").next().expect("the key comes first");
    for kind in ["rowan", "lime", "hazel", "holly", "dogwood"] {
        assert!(key.contains(kind), "{kind}: {key}");
    }
    assert!(!key.contains("elder"), "{key}");
}

#[test]
fn the_second_opinion_finds_nothing_to_mend_in_the_new_key() {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("revise_out");
    let output = revise(&["--out", folder.to_str().expect("a plain path"), "--date", "today"]);
    assert!(said(&output).contains("changes.txt"), "{}", said(&output));
    for name in ["key.txt", "key.json", "chart.pdf", "changes.txt"] {
        assert!(fs::metadata(folder.join(name)).is_ok_and(|file| file.len() > 0), "{name}");
    }
    let again = Command::new(env!("CARGO_BIN_EXE_spinney"))
        .args(["check", ".", "--key"])
        .arg(folder.join("key.json"))
        .current_dir(hedge_walk())
        .output()
        .expect("spinney starts");
    for broken in ["never-comes-out", "wrong-place", "does-not-have", "threshold-inside"] {
        assert!(!said(&again).contains(broken), "{broken}: {}", said(&again));
    }
}

#[test]
fn a_smaller_loss_changes_no_fewer_questions_and_costs_no_more() {
    let of = |loss: &str| {
        let text = said(&revise(&["--loss", loss, "--format", "json"]));
        let number = |field: &str| -> f64 {
            let after = text.split(&format!("\"{field}\": ")).nth(1).expect("the field");
            after.split([',', '\n']).next().expect("a value").parse().expect("a number")
        };
        assert!(text.contains("\"proved\": true"), "{text}");
        (number("changes"), number("mean_steps"))
    };
    let all: Vec<(f64, f64)> = ["2", "0.25", "0"].map(of).to_vec();
    assert!(all.windows(2).all(|two| two[0].0 <= two[1].0 && two[0].1 >= two[1].1), "{all:?}");
    assert!(all[0] != all[2], "the loss matters here: {all:?}");
}

#[test]
fn wrong_use_is_said_with_what_to_type() {
    for (args, remedy) in
        [(["--loss", "-1"], "between 0 and 1000"), (["--loss", "much"], "such as")]
    {
        let output = revise(&args);
        assert_eq!(output.status.code(), Some(2), "{args:?}");
        let complaint = String::from_utf8(output.stderr).expect("it speaks UTF-8");
        assert!(complaint.contains(remedy), "{complaint}");
    }
}
