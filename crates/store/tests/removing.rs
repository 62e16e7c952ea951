//! Removing for good, where something comes in between.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use spinney_store::{Hash, Store, StoreError};

fn file(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for the test");
    folder.join("walk.spinney")
}

#[test]
fn a_removal_that_could_not_be_packed_is_not_called_undone() {
    let path = file("not_packed");
    let mut store = Store::create(&path).expect("a new file");
    let secret = vec![b'Q'; 100_000];
    store.append(0, &[b"goes".to_vec(), b"stays".to_vec()], &[secret]).expect("kept");
    // A program that just looks stops the packing, but not what comes before it.
    let reader = rusqlite::Connection::open(&path).expect("it is SQLite");
    reader.execute_batch("BEGIN; SELECT * FROM journal;").expect("it looks");
    let answer = store.rewrite(2, &[b"stays".to_vec()], &BTreeSet::new());
    let head = Store::open(&path).and_then(|store| store.head());
    drop(reader);
    match answer {
        Ok(last) => assert_eq!(head, Ok(last)),
        Err(_) => assert_eq!(head, Ok(2), "an error says that nothing was changed"),
    }
}

#[test]
fn a_file_of_ours_without_its_tables_is_damaged() {
    let path = file("no_tables");
    drop(Store::create(&path).expect("a new file"));
    let other = rusqlite::Connection::open(&path).expect("it is SQLite");
    other.execute_batch("DROP TABLE facts").expect("dropped");
    drop(other);
    assert_eq!(Store::open(&path).err(), Some(StoreError::Damaged { path }));
}

#[test]
fn a_picture_that_is_not_what_its_name_says_is_damage() {
    let path = file("changed_picture");
    let mut store = Store::create(&path).expect("a new file");
    store.append(0, &[], &[b"leaf".to_vec()]).expect("kept");
    let other = rusqlite::Connection::open(&path).expect("it is SQLite");
    other.execute_batch("UPDATE pictures SET bytes = x'00'").expect("changed");
    assert_eq!(store.picture(Hash::of(b"leaf")), Err(StoreError::Damaged { path }));
}

#[test]
fn a_number_past_all_lines_has_none_after_it() {
    let path = file("past");
    let store = Store::create(&path).expect("a new file");
    assert_eq!(store.rows(u64::MAX), Ok(Vec::new()));
}

#[test]
fn a_trigger_that_another_program_adds_does_nothing() {
    let path = file("trigger");
    let mut store = Store::create(&path).expect("a new file");
    let other = rusqlite::Connection::open(&path).expect("it is SQLite");
    let trigger =
        "CREATE TRIGGER theirs AFTER INSERT ON journal BEGIN DELETE FROM journal; END";
    other.execute_batch(trigger).expect("added");
    drop(other);
    assert_eq!(store.append(0, &[b"one".to_vec()], &[]), Ok(1));
    let rows = store.rows(0).expect("it can be read");
    assert_eq!(rows.iter().map(|row| row.bytes.as_slice()).collect::<Vec<_>>(), [b"one"]);
    drop(store);
    assert_eq!(Store::open(&path).err(), Some(StoreError::Damaged { path }));
}
