//! A collection is damaged: it is said what is, nothing is written over, and the rest is saved.

use std::path::{Path, PathBuf};
use std::process::Command;

use spinney_store::Store;

use super::browser::{Screens, fresh};

fn spinney(typed: &[&str], files: &[&Path]) -> (Option<i32>, String) {
    let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
    let output = command.env("TZ", "UTC").args(typed).args(files).output().expect("it runs");
    let said = [output.stdout, output.stderr].concat();
    (output.status.code(), String::from_utf8(said).expect("text"))
}

/// A collection of three lines, a minute apart from 3 October 2026, 10:12 (UTC) on.
fn collection(folder: &Path) -> PathBuf {
    let file = folder.join("walk.spinney");
    let mut store = Store::create(&file).expect("a new file");
    let line = |number: i64, name: &str| {
        let at = 1_791_022_320_000 + number * 60_000;
        format!(
            r#"{{"v":1,"at":{at},"edits":[{{"add_kind":{{"kind":{number},"name":"{name}"}}}}]}}"#
        )
    };
    let lines = [line(0, "yew"), line(1, "holly"), line(2, "ivy")].map(String::into_bytes);
    store.append(0, &lines, &[super::doors::GREY.to_vec()]).expect("kept");
    file
}

/// Changes one letter of a text that is in the file once.
fn damage(file: &Path, text: &str) -> Vec<u8> {
    let mut bytes = std::fs::read(file).expect("read");
    let at = bytes.windows(text.len()).position(|part| part == text.as_bytes());
    bytes[at.expect("it is there")] ^= 1;
    std::fs::write(file, &bytes).expect("written");
    bytes
}

#[test]
fn a_damaged_collection_is_not_packed_over_a_good_backup() {
    let folder = fresh("damaged-pack");
    let (file, zip) = (collection(&folder), folder.join("walk.zip"));
    assert_eq!(spinney(&["pack"], &[&file, &zip]).0, Some(0));
    let good = std::fs::read(&zip).expect("read");
    // Believed before: a name with one other letter in it.
    let damaged = damage(&file, "holly");
    let (code, said) = spinney(&["pack", "--force"], &[&file, &zip]);
    assert_eq!(code, Some(1), "{said}");
    let wanted = "Step 2 of 3 cannot be read. It was made on 3 October 2026 at 10:13.";
    assert!(said.contains(wanted) && said.contains("spinney rescue"), "{said}");
    assert_eq!(std::fs::read(&zip).expect("read"), good, "the good backup was replaced");
    assert_eq!(std::fs::read(&file).expect("read"), damaged);
    // A picture that is damaged is found as well.
    let other = folder.join("other.spinney");
    assert_eq!(spinney(&["unpack"], &[&zip, &other]).0, Some(0));
    let store = Store::open(&other).expect("it opens");
    let hash = store.pictures().expect("a list").first().copied();
    assert!(hash.is_none(), "no line names the picture, so that it was not unpacked");
}

#[test]
fn what_can_be_read_is_saved_by_command() {
    let folder = fresh("damaged-rescue");
    let (file, new) = (collection(&folder), folder.join("new.spinney"));
    let (code, said) = spinney(&["rescue"], &[&file, &new]);
    assert_eq!(
        (code, said.contains("Nothing in"), new.exists()),
        (Some(0), true, false),
        "{said}"
    );
    let damaged = damage(&file, "holly");
    let (code, said) = spinney(&["rescue"], &[&file, &new]);
    assert_eq!(code, Some(0), "{said}");
    assert!(said.contains("2 steps and 1 picture are saved into"), "{said}");
    assert_eq!(std::fs::read(&file).expect("read"), damaged);
    let finds = Screens::open(Some(&new)).get("/finds").text();
    assert!(finds.contains("yew") && finds.contains("ivy") && !finds.contains("holl"));
    // A line stands in for the lost one, so that undo takes back the same step as before.
    let store = Store::open(&new).expect("it opens");
    assert_eq!(store.head(), Ok(3));
    let (code, said) = spinney(&["rescue"], &[&file, &new]);
    assert_eq!((code, said.contains("is there already")), (Some(1), true), "{said}");
    let before = folder.join("before.spinney");
    assert!(said_look(&spinney(&["rescue"], &[&file, &folder.join("other.spinney")]).1));
    let (code, said) = spinney(&["rescue", "--before"], &[&file, &before]);
    assert_eq!((code, said_look(&said)), (Some(0), false), "{said}");
    assert_eq!(Store::open(&before).and_then(|store| store.head()), Ok(1));
}

fn said_look(said: &str) -> bool {
    said.contains("Look over what came after the damage")
}

/// An empty collection would look like one that lost everything.
#[test]
fn where_nothing_is_left_to_save_no_file_is_made() {
    let folder = fresh("damaged-nothing");
    let (file, new) = (collection(&folder), folder.join("new.spinney"));
    damage(&file, "yew");
    let (code, said) = spinney(&["rescue", "--before"], &[&file, &new]);
    assert_eq!((code, new.exists()), (Some(1), false), "{said}");
    assert!(said.contains("without --before"), "{said}");
    damage(&file, "holly");
    damage(&file, "ivy");
    let (code, said) = spinney(&["rescue"], &[&file, &new]);
    assert_eq!((code, new.exists()), (Some(1), false), "{said}");
    assert!(said.contains("Open an older copy of it."), "{said}");
}

#[test]
fn a_healthy_collection_of_the_first_form_is_not_called_damaged() {
    let folder = fresh("damaged-first-form");
    let kept = concat!(env!("CARGO_MANIFEST_DIR"), "/../store/tests/fixtures/form_1.spinney");
    let (file, new) = (folder.join("walk.spinney"), folder.join("new.spinney"));
    std::fs::copy(kept, &file).expect("copied");
    let (code, said) = spinney(&["rescue"], &[&file, &new]);
    assert_eq!((code, new.exists()), (Some(0), false), "{said}");
    assert!(said.contains("Nothing in"), "{said}");
}

#[test]
fn what_can_be_read_of_a_damaged_bundle_is_saved() {
    let folder = fresh("damaged-bundle");
    let (file, zip, new) =
        (collection(&folder), folder.join("walk.zip"), folder.join("new.spinney"));
    assert_eq!(spinney(&["pack"], &[&file, &zip]).0, Some(0));
    let damaged = damage(&zip, "holly");
    let (code, said) = spinney(&["unpack"], &[&zip, &new]);
    assert_eq!((code, new.exists()), (Some(1), false), "{said}");
    assert!(said.contains("Step 2 of 3 cannot be read."), "{said}");
    assert!(said.contains("It was made after 3 October 2026 at 10:12."), "{said}");
    let (code, said) = spinney(&["rescue"], &[&zip, &new]);
    assert_eq!(code, Some(0), "{said}");
    assert_eq!(Store::open(&new).and_then(|store| store.head()), Ok(3));
    assert_eq!(std::fs::read(&zip).expect("read"), damaged);
}

#[test]
fn the_screens_say_what_is_damaged_and_save_the_rest() {
    for (what, there) in [("all", &["yew", "ivy"][..]), ("before", &["yew"])] {
        let folder = fresh(&format!("damaged-{what}"));
        let file = collection(&folder);
        let damaged = damage(&file, "holly");
        let screens = Screens::open(Some(&file));
        assert!(screens.said.contains("Step 2 of 3 cannot be read."), "{}", screens.said);
        for path in ["/", "/finds", "/key"] {
            let page = screens.get(path);
            let text = page.text().replace(['\u{2068}', '\u{2069}'], "");
            assert_eq!(page.status, 200);
            assert!(text.contains("Step 2 of 3 cannot be read."), "{text}");
            assert!(text.contains("walk-saved.spinney"), "{text}");
        }
        assert_eq!(screens.get("/assets/look.css").status, 200);
        // Nothing else is done meanwhile.
        assert_eq!(screens.post("/do/add-kinds", &[("names", "beech")]).status, 200);
        let answer = screens.post("/do/rescue", &[("what", what)]);
        assert_eq!((answer.status, answer.header("location")), (303, "/finds"));
        let finds = screens.get("/finds").text();
        for name in ["yew", "ivy", "beech"] {
            assert_eq!(finds.contains(name), there.contains(&name), "{name}");
        }
        // And it goes on, in the new file.
        assert_eq!(screens.post("/do/add-kinds", &[("names", "beech")]).status, 303);
        assert_eq!(std::fs::read(&file).expect("read"), damaged);
        let lines = Store::open(&folder.join("walk-saved.spinney")).and_then(|it| it.head());
        assert_eq!(lines, Ok(if what == "all" { 4 } else { 2 }));
    }
}

#[test]
fn a_name_that_sqlite_reads_otherwise_is_the_name_of_a_file() {
    let folder = fresh("names");
    for name in [":memory:", "file:walk?mode=memory"] {
        let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
        command.args(["open", "--no-browser", name]).current_dir(&folder);
        let screens = Screens::start(command);
        assert_eq!(screens.post("/do/add-kinds", &[("names", "beech")]).status, 303);
        assert_eq!(screens.interrupt(), Some(0));
        let store = Store::open(&folder.join(name)).expect("a file of that name");
        assert_eq!(store.head(), Ok(1), "{name}");
    }
}
