//! What is appended is there; what is removed for good is gone; what cannot be, is said.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use spinney_store::{Hash, Store, StoreError};

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for the test");
    folder
}

fn lines_of(texts: &[&str]) -> Vec<Vec<u8>> {
    texts.iter().map(|text| text.as_bytes().to_vec()).collect()
}

#[test]
fn what_is_appended_comes_back_in_order() {
    let path = folder("appended").join("walk.spinney");
    let mut store = Store::create(&path).expect("a new file");
    assert_eq!(store.head(), Ok(0));
    assert_eq!(store.append(0, &lines_of(&["one", "two"]), &[]), Ok(2));
    assert_eq!(
        store.append(2, &lines_of(&["three"]), &lines_of(&["picture", "picture"])),
        Ok(3)
    );
    drop(store);
    let store = Store::open(&path).expect("it is there");
    let rows = store.rows(1).expect("it can be read");
    let read: Vec<_> = rows.iter().map(|row| (row.number, row.bytes.as_slice())).collect();
    assert_eq!(read, [(2, &b"two"[..]), (3, &b"three"[..])]);
    let hash = Hash::of(b"picture");
    assert_eq!(store.pictures(), Ok(vec![hash]));
    assert_eq!(store.picture(hash), Ok(Some(b"picture".to_vec())));
    assert_eq!(store.picture(Hash::of(b"another")), Ok(None));
    let beside: Vec<_> =
        fs::read_dir(path.parent().expect("a folder")).expect("read").collect();
    assert_eq!(beside.len(), 1, "one collection is one file");
}

#[test]
fn a_hash_is_what_the_standard_says() {
    // FIPS 180-4, the example "abc" of its appendix.
    let digits = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    assert_eq!(Hash::of(b"abc").to_string(), digits);
    assert_eq!(digits.parse(), Ok(Hash::of(b"abc")));
    assert!("xy".parse::<Hash>().is_err() && digits.to_uppercase().parse::<Hash>().is_err());
}

#[test]
fn two_windows_do_not_lose_each_others_lines() {
    let path = folder("two").join("walk.spinney");
    let mut one = Store::create(&path).expect("a new file");
    let mut other = Store::open(&path).expect("it is there");
    assert_eq!(one.append(0, &lines_of(&["from one"]), &[]), Ok(1));
    assert_eq!(
        other.append(0, &lines_of(&["from other"]), &lines_of(&["p"])),
        Err(StoreError::Moved { head: 1 })
    );
    assert_eq!(other.pictures(), Ok(Vec::new()), "nothing of it was kept");
    assert_eq!(other.append(1, &lines_of(&["from other"]), &[]), Ok(2));
    assert_eq!(one.rows(1).map(|rows| rows[0].bytes.clone()), Ok(b"from other".to_vec()));
}

#[test]
fn what_is_removed_for_good_is_in_no_file() {
    let path = folder("removed").join("walk.spinney");
    let mut store = Store::create(&path).expect("a new file");
    let secret = "a name that must go ".repeat(40);
    let picture = vec![b'Q'; 100_000];
    let mut head = 0;
    for at in 0..200 {
        let line = if at % 3 == 0 { format!("{at} {secret}") } else { format!("{at} stays") };
        let pictures =
            if at == 100 { vec![picture.clone(), b"stays".to_vec()] } else { vec![] };
        head = store.append(head, &[line.into_bytes()], &pictures).expect("it is kept");
    }
    let mut other = Store::open(&path).expect("it is there");
    let keep = BTreeSet::from([Hash::of(b"stays")]);
    let left: Vec<Vec<u8>> = store
        .rows(0)
        .expect("it can be read")
        .into_iter()
        .map(|row| row.bytes)
        .filter(|line| !line.windows(12).any(|part| part == b"a name that "))
        .collect();
    assert_eq!(store.rewrite(head, &left, &keep), Ok(left.len() as u64));
    assert_eq!(store.rows(0).map(|rows| rows.len()), Ok(left.len()));
    assert_eq!(store.pictures(), Ok(vec![Hash::of(b"stays")]));
    for file in fs::read_dir(path.parent().expect("a folder")).expect("read") {
        let bytes = fs::read(file.expect("a file").path()).expect("it can be read");
        let there = |what: &[u8]| bytes.windows(what.len()).any(|part| part == what);
        assert!(!there(b"a name that must go") && !there(b"QQQQQQQQQQQQ"));
    }
    assert_eq!(other.rows(0), Err(StoreError::Rewritten));
    assert_eq!(other.append(head, &lines_of(&["late"]), &[]), Err(StoreError::Rewritten));
    assert_eq!(Store::open(&path).and_then(|store| store.head()), Ok(left.len() as u64));
}

#[test]
fn what_is_no_collection_is_said() {
    let folder = folder("wrong");
    let missing = folder.join("missing.spinney");
    assert_eq!(Store::open(&missing).err(), Some(StoreError::Missing { path: missing }));
    for (name, bytes) in [("table.csv", &b"kind,edge\nyew,smooth\n"[..]), ("empty", b"")] {
        let path = folder.join(name);
        fs::write(&path, bytes).expect("written");
        let error = Store::open(&path).expect_err("it is none");
        assert_eq!(error, StoreError::NotACollection { path: path.clone() });
        assert_eq!(fs::read(&path).expect("read"), bytes, "it was not touched");
    }
    let there = folder.join("there");
    drop(Store::create(&there).expect("a new file"));
    assert_eq!(Store::create(&there).err(), Some(StoreError::Exists { path: there.clone() }));
    let mut bytes = fs::read(&there).expect("read");
    bytes.truncate(5000);
    bytes[200..4900].fill(0x5a);
    fs::write(&there, bytes).expect("written");
    assert!(Store::open(&there).is_err(), "a damaged file does not open as an empty one");
    let elsewhere = folder.join("no such folder").join("walk.spinney");
    assert!(Store::create(&elsewhere).is_err());
}

#[test]
fn a_newer_file_says_so() {
    let path = folder("newer").join("walk.spinney");
    drop(Store::create(&path).expect("a new file"));
    let connection = rusqlite::Connection::open(&path).expect("it is SQLite");
    connection.pragma_update(None, "user_version", 3).expect("it can be written");
    drop(connection);
    let error = Store::open(&path).expect_err("it is newer");
    assert_eq!(error, StoreError::Newer { path, version: 3 });
}

/// The lines of the fixtures, as they were first written.
const FIXED: [&[u8]; 2] = [
    br#"{"v":1,"at":0,"edits":[{"add_kind":{"kind":1,"name":"yew"}}]}"#,
    br#"{"v":1,"at":7,"undo":true}"#,
];

/// A copy, so that a fixture stays as it was first written.
fn fixture(form: u32, name: &str) -> PathBuf {
    let kept = format!("{}/tests/fixtures/form_{form}.spinney", env!("CARGO_MANIFEST_DIR"));
    let path = folder(name).join("walk.spinney");
    fs::copy(kept, &path).expect("the fixture is there");
    path
}

#[test]
fn a_file_of_every_form_opens_and_goes_on() {
    for (form, count) in [(1, 1), (2, 2)] {
        let path = fixture(form, &format!("form_{form}"));
        let before = fs::read(&path).expect("read");
        let mut store = Store::open(&path).expect("it opens");
        let rows = store.rows(0).expect("it can be read");
        let lines: Vec<&[u8]> = rows.iter().map(|row| row.bytes.as_slice()).collect();
        assert_eq!(lines, &FIXED[..count], "form {form}");
        assert_eq!(store.pictures().map(|all| all.len()), Ok(1));
        assert_eq!(store.check(), Ok(()));
        assert_eq!(fs::read(&path).expect("read"), before, "opening it changed form {form}");
        let mut other = Store::open(&path).expect("a second window");
        let last = count as u64 + 1;
        assert_eq!(
            store.append(last - 1, &lines_of(&["more"]), &lines_of(&["leaf"])),
            Ok(last)
        );
        assert_eq!((other.head(), other.check()), (Ok(last), Ok(())), "form {form}");
        assert_eq!(other.append(last, &lines_of(&["and more"]), &[]), Ok(last + 1));
        assert_eq!(store.check(), Ok(()));
        // Now every line has a seal, those of before too.
        drop((store, other));
        let other = rusqlite::Connection::open(&path).expect("it is SQLite");
        other
            .execute("UPDATE journal SET line = x'7b7d' WHERE number = 1", [])
            .expect("changed");
        drop(other);
        let store = Store::open(&path).expect("the pages are whole");
        assert_eq!(store.rows(0), Err(StoreError::Damaged { path }), "form {form}");
    }
}

#[test]
fn a_file_that_another_program_holds_is_said_to_be_held() {
    let path = folder("held").join("walk.spinney");
    let mut store = Store::create(&path).expect("a new file");
    let other = rusqlite::Connection::open(&path).expect("it is SQLite");
    other.execute_batch("BEGIN EXCLUSIVE").expect("nobody else holds it");
    let error = store.append(0, &lines_of(&["one"]), &[]).expect_err("it is held");
    assert_eq!(error, StoreError::Locked { path });
    other.execute_batch("ROLLBACK").expect("it lets go");
    assert_eq!(store.append(0, &lines_of(&["one"]), &[]), Ok(1));
}

#[test]
fn a_full_disk_is_said_and_nothing_is_lost() {
    let path = folder("full").join("walk.spinney");
    let mut store = Store::create(&path).expect("a new file");
    store.append(0, &lines_of(&["one"]), &[]).expect("there is room");
    drop(store);
    // A limit on pages stands in for the disk: SQLite answers as it does on a full one.
    let mut store = Store::open(&path).expect("it is there");
    store.allow_pages(12).expect("a limit can be set");
    let error = store.append(1, &lines_of(&["two"]), &[vec![1; 200_000]]).expect_err("full");
    assert_eq!(error, StoreError::Full { path: path.clone() });
    assert_eq!(store.rows(0).map(|rows| rows.len()), Ok(1));
    assert_eq!(store.append(1, &lines_of(&["two"]), &[]), Ok(2), "a short line still fits");
}
