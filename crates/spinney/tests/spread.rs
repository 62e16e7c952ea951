//! `spinney spread`, and tables with a row a leaf, as a teacher uses them. The leaves are invented.

use std::fs;
use std::path::{Path, PathBuf};

#[path = "program/run.rs"]
mod run;

const LEAVES: &str = "\
kind,leaf,tree,which part,blade length (mm),edge
hazel,1,gate,sun,82,toothed
hazel,2,gate,shade,104,double-toothed
hazel,3,pond,sun,95,toothed
hazel,4,pond,sun,98,toothed
hazel,5,pond,sun,97,toothed
hazel,6,pond,sucker,160,toothed
lime,1,church,,51,toothed
lime,2,church,,56,toothed
lime,3,church,,60,toothed
";

fn desk(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("spread").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for one case");
    fs::write(folder.join("leaves.csv"), LEAVES).expect("written");
    folder
}

fn said(folder: &Path, args: &[&str], code: i32) -> String {
    let output = run::spinney(folder, args, "");
    let text = String::from_utf8(output.stdout).expect("it speaks UTF-8");
    let error = String::from_utf8_lossy(&output.stderr).into_owned();
    assert_eq!(output.status.code(), Some(code), "{args:?}: {text}{error}");
    let words: Vec<&str> = text.split_whitespace().chain(error.split_whitespace()).collect();
    words.join(" ")
}

#[test]
fn it_says_how_far_leaves_spread_where_to_cut_and_how_many_more_to_measure() {
    let folder = desk("text");
    let said = said(&folder, &["spread", "leaves.csv"], 0);
    for part in [
        "9 rows of 2 kinds.",
        "hazel: 82 to 160 mm, mean 106 mm, standard deviation 27 mm (6 measured on 2 plants)",
        "Far from the others: 160 mm (row 7, number 6). Measure it again",
        "sun: 82 to 98 mm",
        "sucker: 160 mm (1 measured on 1 plant)",
        "lime or hazel? “blade length”: 71 mm or more is hazel, less is lime.",
        "All 9 are on the right side. The safety margin is 11 mm.",
        "on the wrong side.",
        "Do not trust this, however many you measure. Even if further finds are like these, more than 5 in 100 of hazel would be",
    ] {
        assert!(said.contains(part), "{part}: {said}");
    }
}

#[test]
fn what_is_missing_is_asked_for_in_numbers() {
    let folder = desk("more");
    let without = LEAVES.replace("hazel,6,pond,sucker,160,toothed\n", "");
    fs::write(folder.join("leaves.csv"), without).expect("written");
    let said = said(&folder, &["spread", "leaves.csv"], 0);
    assert!(said.contains("more of lime and"), "{said}");
    assert!(said.contains("more of hazel before you trust this."), "{said}");
}

#[test]
fn a_table_with_a_row_a_leaf_is_asked_about_and_read_so_where_somebody_says_so() {
    let folder = desk("rows");
    let asked = said(&folder, &["table", "leaves.csv"], 1);
    assert!(asked.contains("2 kinds are on several rows each; “hazel” is on 6"), "{asked}");
    assert!(asked.contains("`--rows leaves`"), "{asked}");
    let read = said(&folder, &["table", "leaves.csv", "--rows", "leaves", "--out", "walk"], 0);
    assert!(read.contains("2 kinds and 2 columns were read"), "{read}");
    let table = fs::read_to_string(folder.join("walk/table.csv")).expect("written");
    assert!(table.contains("hazel,82-160 mm (6 seen on 2 plants)"), "{table}");
    // What was written has a row a kind.
    let key = |args: &[&str]| {
        let said = said(&folder, &[&["key"], args].concat(), 0);
        said.split("What to look at").next().map(|key| key.trim().to_owned())
    };
    assert_eq!(key(&["leaves.csv", "--rows", "leaves"]), key(&["walk"]));
}

#[test]
fn a_row_a_leaf_is_refused_where_it_cannot_be() {
    let folder = desk("refused");
    let kinds = said(&folder, &["spread", "leaves.csv", "--rows", "kinds"], 2);
    assert!(kinds.contains("Leave out `--rows kinds`"), "{kinds}");
    let nameless = LEAVES.replace("kind,leaf", "± x,leaf");
    fs::write(folder.join("nameless.csv"), nameless).expect("written");
    let none = said(&folder, &["spread", "nameless.csv"], 1);
    assert!(none.contains("Add a column with the heading `kind`"), "{none}");
}
