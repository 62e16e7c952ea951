//! What is said when it cannot start.

use std::path::Path;
use std::process::Command;

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
