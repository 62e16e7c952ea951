//! What is said when it cannot start.

use std::path::Path;
use std::process::Command;

use spinney_exchange::journal;
use spinney_model::{Done, Edit, Entry, KindEdit, KindId, limits};
use spinney_store::Store;

use super::browser::{Screens, fresh};

/// The exit code and what was said.
fn fails(args: &[&str], file: Option<&Path>) -> (Option<i32>, String) {
    let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
    let output = command.args(["open", "--no-browser"]).args(args).args(file).output();
    let output = output.expect("it runs");
    (output.status.code(), String::from_utf8_lossy(&output.stderr).into_owned())
}

#[test]
fn a_file_that_is_no_collection_is_said_to_be_none() {
    let folder = fresh("no-collection");
    let table = folder.join("finds.csv");
    std::fs::write(&table, "kind,edge\nholly,spiny\n".repeat(100)).expect("written");
    let (code, said) = fails(&[], Some(&table));
    assert_eq!(code, Some(1), "{said}");
    assert!(said.contains("is no collection of Spinney's"), "{said}");
    // A folder for a file, and a folder that is not there, are wrong use.
    let (code, said) = fails(&[], Some(&folder));
    assert_eq!(code, Some(2), "{said}");
    assert!(said.contains("is a folder"), "{said}");
    let (code, said) = fails(&[], Some(&folder.join("no/such/folder/x.spinney")));
    assert_eq!(code, Some(2), "{said}");
    assert!(said.contains("There is no folder"), "{said}");
}

#[test]
fn a_newer_or_damaged_file_is_said_to_be_so_and_left_alone() {
    let folder = fresh("newer");
    let file = folder.join("walk.spinney");
    let mut store = Store::create(&file).expect("a file");
    store.append(0, &[br#"{"v":999,"at":0,"x":1}"#.to_vec()], &[]).expect("kept");
    drop(store);
    let before = std::fs::read(&file).expect("its bytes");
    let (code, said) = fails(&[], Some(&file));
    assert_eq!(code, Some(1), "{said}");
    assert!(said.contains("newer Spinney"), "{said}");
    assert_eq!(std::fs::read(&file).expect("its bytes"), before);
    let damaged = folder.join("damaged.spinney");
    let mut bytes = before;
    bytes[4096..].fill(0x55);
    std::fs::write(&damaged, bytes).expect("written");
    let (code, said) = fails(&[], Some(&damaged));
    assert_eq!(code, Some(1), "{said}");
    assert!(said.contains("is damaged"), "{said}");
}

#[test]
fn a_port_that_is_taken_is_said_to_be_taken() {
    let screens = Screens::open(None);
    assert!(screens.said.contains("in memory only"), "{}", screens.said);
    let (code, said) = fails(&["--port", &screens.port.to_string()], None);
    assert_eq!(code, Some(1), "{said}");
    assert!(said.contains("could not be taken") && said.contains("--port"), "{said}");
}

#[test]
fn started_by_its_name_alone_it_opens_the_screens() {
    let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
    // No browser is found there, and none is opened by a test.
    command.env("PATH", "");
    let screens = Screens::start(command);
    assert!(screens.said.contains("in memory only"), "{}", screens.said);
    assert_eq!(screens.get("/finds").status, 200);
}

#[test]
fn a_collection_too_large_for_the_screens_is_said_to_be_so_and_left_as_it_is() {
    let file = fresh("too-large").join("walk.spinney");
    let mut store = Store::create(&file).expect("a file");
    let all = u32::try_from(limits::SCREENS_KINDS).expect("few enough") + 1;
    let kinds = (1..=all).map(|at| Edit::Kind(KindId(at), KindEdit::Add(format!("kind {at}"))));
    let line = journal::write(&Entry { at: 0, done: Done::Edits(kinds.collect()) });
    store.append(0, &[line], &[]).expect("kept");
    drop(store);
    let screens = Screens::open(Some(&file));
    let most = format!("at most {}", limits::SCREENS_KINDS);
    assert!(
        screens.said.contains(&most) && screens.said.contains("spinney key"),
        "{}",
        screens.said
    );
    for path in ["/finds", "/table", "/key"] {
        let answer = screens.get(path);
        assert_eq!(answer.status, 422, "{path}");
        assert!(answer.text().contains(&most), "{path}");
    }
    let table = screens.get("/saved/table.csv");
    assert_eq!((table.status, table.text().lines().count() as u32), (200, all + 1));
    assert_eq!(screens.interrupt(), Some(0));
    assert_eq!(Store::open(&file).expect("it is whole").head().expect("read"), 1);
}

#[test]
fn a_journal_of_more_steps_than_are_held_is_not_opened() {
    let file = fresh("long-journal").join("walk.spinney");
    let mut store = Store::create(&file).expect("a file");
    let lines = vec![b"x".to_vec(); limits::JOURNAL_LINES + 1];
    store.append(0, &lines, &[]).expect("kept");
    drop(store);
    let (code, said) = fails(&[], Some(&file));
    assert_eq!(code, Some(1), "{said}");
    assert!(said.contains(&format!("at most {} steps", limits::JOURNAL_LINES)), "{said}");
}
