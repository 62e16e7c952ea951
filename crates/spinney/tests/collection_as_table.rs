//! A collection is a table at the command line: what its screens hold, `spinney key` reads.

use std::fs;
use std::path::Path;

use spinney_collection::{Collection, intake};
use spinney_desk::Desk;
use spinney_exchange::journal;
use spinney_exchange::table::{self, Source};
use spinney_model::{CharacterId, Done, Edit, Entry, KindId};
use spinney_store::Store;

#[path = "program/run.rs"]
mod run;

use run::spinney;

const FINDS: &str = "kind,edge,rings\nhazel,toothed,3\nbox,smooth,5\nelm,smooth,9\n";
const KEY: &str = "1. Is the edge toothed? Yes -> hazel, No -> 2\n\
                   2. Are there 7 or more rings? Yes -> elm, No -> box\n";

fn desk(name: &str) -> std::path::PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("collection_as_table").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder");
    fs::write(folder.join("finds.csv"), FINDS).expect("written");
    fs::write(folder.join("ours.txt"), KEY).expect("written");
    let source = Source { name: "table".to_owned(), bytes: FINDS.as_bytes().to_vec() };
    let lines = Desk::lines_of_table(&[source], 0).expect("it holds kinds");
    let mut store = Store::create(&folder.join("walk.spinney")).expect("a file");
    store.append(0, &lines, &[]).expect("kept");
    folder
}

/// The name of the file apart, every command says the same of both.
#[test]
fn what_is_said_of_a_table_is_said_of_a_collection_that_holds_it() {
    let folder = desk("the_same");
    let before = fs::read(folder.join("walk.spinney")).expect("its bytes");
    for rest in [
        &["key"][..],
        &["key", "--format", "json", "--gap", "1"],
        &["check", "--key", "ours.txt"],
        &["explain"],
        &["weak"],
        &["revise", "--old", "ours.txt"],
        &["table"],
        &["forgive", "--places", "1"],
    ] {
        let told = ["finds.csv", "walk.spinney"].map(|table| {
            let args = [&rest[..1], &[table], &rest[1..]].concat();
            let output = spinney(&folder, &args, "");
            let text = String::from_utf8(output.stdout).expect("it speaks UTF-8");
            assert!(output.stderr.is_empty() && text.len() > 40, "{args:?}: {text}");
            (output.status.code(), text)
        });
        assert_eq!(told[0], told[1], "{rest:?}");
    }
    assert_eq!(fs::read(folder.join("walk.spinney")).expect("its bytes"), before);
}

#[test]
fn an_edit_at_the_screens_changes_the_key() {
    let folder = desk("an_edit");
    let mut store = Store::open(&folder.join("walk.spinney")).expect("a collection");
    let edit = Edit::Cell {
        kind: KindId(2),
        character: CharacterId(1),
        source: String::new(),
        text: "wavy".to_owned(),
    };
    let line =
        spinney_exchange::journal::write(&Entry { at: 1, done: Done::Edits(vec![edit]) });
    let head = store.head().expect("its head");
    store.append(head, &[line], &[]).expect("kept");
    drop(store);
    let output = spinney(&folder, &["table", "walk.spinney"], "");
    let text = String::from_utf8(output.stdout).expect("it speaks UTF-8");
    assert!(text.contains("wavy"), "{text}");
}

#[test]
fn a_journal_of_more_steps_than_are_held_is_not_read() {
    let folder = desk("too_many_steps");
    let file = folder.join("long.spinney");
    let lines = vec![b"x".to_vec(); spinney_model::limits::JOURNAL_LINES + 1];
    Store::create(&file).and_then(|mut store| store.append(0, &lines, &[])).expect("kept");
    let output = spinney(&folder, &["key", "long.spinney"], "");
    let said = String::from_utf8(output.stderr).expect("it speaks UTF-8");
    assert_eq!(output.status.code(), Some(1), "{said}");
    assert!(said.contains("long.spinney is too large.") && said.contains("200000"), "{said}");
}

#[test]
fn sheets_beside_a_collection_and_a_collection_as_output_are_refused() {
    let folder = desk("refused");
    let told = |args: &[&str]| {
        let output = spinney(&folder, args, "");
        (output.status.code(), String::from_utf8(output.stderr).expect("it speaks UTF-8"))
    };
    let (code, said) = told(&["key", "walk.spinney", "--kinds", "finds.csv"]);
    assert_eq!(code, Some(2), "{said}");
    assert!(said.contains("Leave out --characters, --kinds and --about."), "{said}");
    let (code, said) =
        told(&["check", "walk.spinney", "--key", "ours.txt", "--write-links", "walk.spinney"]);
    assert_eq!(code, Some(2), "{said}");
    assert!(Store::open(&folder.join("walk.spinney")).is_ok(), "it is still a collection");
}

/// Invented leaves, in the order of their numbers.
const LEAVES: &str = "kind,leaf,tree,blade length (mm)\nelm,a,gate,50\nelm,b,gate,52\n\
    elm,c,pond,54\nelm,d,pond,56\nelm,e,pond,140\noak,f,hill,90\noak,g,hill,95\n";

/// The leaves of a collection spread as the table does that they came in.
#[test]
fn leaves_kept_one_by_one_are_read_as_leaves() {
    let folder = desk("leaves");
    fs::write(folder.join("leaves.csv"), LEAVES).expect("written");
    let sheet = Source { name: "table".to_owned(), bytes: LEAVES.as_bytes().to_vec() };
    let sheets = table::typed_sheets_of(&[sheet], table::RowsAre::Finds).expect("a table");
    let taken = intake::take_in(&Collection::default(), &sheets, "measured");
    let edits = taken.expect("units that fit").edits;
    let line = journal::write(&Entry { at: 0, done: Done::Edits(edits) });
    let mut store = Store::create(&folder.join("leaves.spinney")).expect("a file");
    store.append(0, &[line], &[]).expect("kept");
    let json = |file: &str| {
        let output = spinney(&folder, &["spread", file, "--format", "json"], "");
        let text = String::from_utf8(output.stdout).expect("it speaks UTF-8");
        let mut all: serde_json::Value = serde_json::from_str(&text).expect("JSON");
        // A sheet has a line of headings above its leaves.
        let row = &mut all["spread"][0]["outliers"][0]["row"];
        assert_eq!(*row, if file == "leaves.csv" { 6 } else { 5 }, "{text}");
        *row = serde_json::Value::Null;
        all["findings"] = serde_json::Value::Null;
        all
    };
    assert_eq!(json("leaves.csv"), json("leaves.spinney"));
    let none = spinney(&folder, &["spread", "walk.spinney"], "");
    let told = String::from_utf8_lossy(&none.stderr).into_owned();
    assert!(!none.status.success() && told.contains("holds no single leaves"), "{told}");
}
