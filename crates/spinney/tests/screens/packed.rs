//! A collection is packed, moved, and opened elsewhere as it was.

use std::path::Path;
use std::process::Command;

use spinney_exchange::bundle::Bundle;
use spinney_fixtures::photographs::{PHOTOGRAPH, tales_in, telling_jpeg};
use spinney_store::Hash;

use super::browser::{Screens, fresh};

/// The exit code and what was said, on both channels.
fn spinney(verb: &str, from: &Path, to: &Path) -> (Option<i32>, String) {
    let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
    let output = command.arg(verb).args([from, to]).output().expect("it runs");
    let said = [output.stdout, output.stderr].concat();
    (output.status.code(), String::from_utf8(said).expect("text"))
}

#[test]
fn what_was_packed_is_unpacked_as_it_was() {
    let folder = fresh("packed");
    let (file, zip) = (folder.join("walk.spinney"), folder.join("walk.zip"));
    let other = folder.join("other.spinney");
    let screens = Screens::open(Some(&file));
    let parts: [(&str, Option<&str>, &[u8]); 2] =
        [("names", None, b"yew\nholly"), ("pictures", Some("a.png"), super::doors::GREY)];
    assert_eq!(screens.post_files("/do/add-kinds", &parts).status, 303);
    assert_eq!((screens.again("undo"), screens.again("redo")), (303, 303));
    let before = screens.get("/finds").text();
    // Packing works while a window is open.
    let (code, said) = spinney("pack", &file, &zip);
    assert_eq!(
        (code, said.contains("3 steps and 1 picture are packed into")),
        (Some(0), true),
        "{said}"
    );
    drop(screens);
    let (code, said) = spinney("pack", &file, &zip);
    assert_eq!((code, said.contains("--force")), (Some(1), true), "{said}");
    let (code, said) = spinney("unpack", &zip, &other);
    assert_eq!(code, Some(0), "{said}");
    let screens = Screens::open(Some(&other));
    assert_eq!(screens.get("/finds").text(), before);
    let (code, said) = spinney("unpack", &zip, &other);
    assert_eq!((code, said.contains("already")), (Some(1), true), "{said}");
}

#[test]
fn where_a_picture_of_a_bundle_was_taken_is_not_kept() {
    let folder = fresh("packed-elsewhere");
    let (zip, file) = (folder.join("walk.zip"), folder.join("walk.spinney"));
    let (taken, broken) =
        (telling_jpeg(PHOTOGRAPH, 1), b"\xFF\xD8 no picture, Tale:latitude".to_vec());
    let name = |bytes: &[u8]| Hash::of(bytes).to_string();
    let line = |edits: &str| format!(r#"{{"v":1,"at":0,"edits":[{edits}]}}"#).into_bytes();
    let kind = |kind: u32, picture: &str| {
        line(&format!(
            r#"{{"add_kind":{{"kind":{kind},"name":"kind {kind}"}}}},{{"add_picture":{{"kind":{kind},"picture":"{picture}"}}}}"#
        ))
    };
    let away =
        line(&format!(r#"{{"remove_picture":{{"kind":1,"picture":"{}"}}}}"#, name(&taken)));
    let undo = br#"{"v":1,"at":0,"undo":true}"#.to_vec();
    let unnamed = b"\xFF\xD8 named by no line, Tale:latitude".to_vec();
    let bundle = Bundle {
        lines: vec![kind(1, &name(&taken)), kind(2, &name(&broken)), away, undo],
        pictures: [&taken, &broken, &unnamed].map(|b| (name(b), b.clone())).into(),
    };
    let packed = bundle.pack().expect("it is small");
    assert!(!tales_in(&packed).is_empty(), "it is there before");
    std::fs::write(&zip, packed).expect("written");
    let (code, said) = spinney("unpack", &zip, &file);
    assert_eq!(code, Some(0), "{said}");
    assert!(said.contains("4 steps and 1 picture are"), "{said}");
    assert!(said.contains("could not be read and were left out: 1."), "{said}");
    let bytes = std::fs::read(&file).expect("its bytes");
    assert_eq!(tales_in(&bytes), Vec::<&str>::new());
    assert!(!holds(&bytes, name(&taken).as_bytes()), "its old name is kept");
    let screens = Screens::open(Some(&file));
    let finds = screens.get("/finds").text();
    let address = finds.split("<img src=\"").nth(1).and_then(|rest| rest.split('"').next());
    let picture = screens.get(address.expect("the picture of the first kind, not undone"));
    assert_eq!((picture.status, picture.header("content-type")), (200, "image/jpeg"));
    assert_eq!(tales_in(&picture.body), Vec::<&str>::new());
    assert_eq!(screens.again("redo"), 303);
    let finds = screens.get("/finds").text();
    assert!(!finds.contains(address.expect("as above")), "the line that took it away names it");
}

fn holds(all: &[u8], part: &[u8]) -> bool {
    all.windows(part.len()).any(|window| window == part)
}

#[test]
fn what_is_no_bundle_makes_no_collection() {
    let folder = fresh("no-bundle");
    let (zip, file) = (folder.join("walk.zip"), folder.join("walk.spinney"));
    std::fs::write(&zip, "kind,edge\nholly,spiny\n").expect("written");
    let (code, said) = spinney("unpack", &zip, &file);
    assert_eq!((code, said.contains("no packed collection")), (Some(1), true), "{said}");
    assert!(!file.exists());
    let (code, said) = spinney("pack", &zip, &folder.join("out.zip"));
    assert_eq!((code, said.contains("no collection of Spinney's")), (Some(1), true), "{said}");
    assert!(!folder.join("out.zip").exists());
}

/// A packed collection of so many kinds.
fn packed(zip: &Path, kinds: u32) {
    let line = |kind: u32| {
        format!(
            r#"{{"v":1,"at":0,"edits":[{{"add_kind":{{"kind":{kind},"name":"kind {kind}"}}}}]}}"#
        )
        .into_bytes()
    };
    let bundle = Bundle { lines: (1..=kinds).map(line).collect(), pictures: [].into() };
    std::fs::write(zip, bundle.pack().expect("it is small")).expect("written");
}

#[test]
fn of_two_that_unpack_to_one_name_one_wins_and_keeps_its_file() {
    let folder = fresh("two-unpack");
    let zips = [folder.join("a.zip"), folder.join("b.zip")];
    packed(&zips[0], 40);
    packed(&zips[1], 70);
    for round in 0..30 {
        let file = folder.join(format!("walk-{round}.spinney"));
        let start = |zip: &Path| {
            let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
            command.arg("unpack").args([zip, &file]).output().expect("it runs").status.code()
        };
        let codes = std::thread::scope(|scope| {
            let both = zips.each_ref().map(|zip| scope.spawn(|| start(zip)));
            both.map(|one| one.join().expect("it ends"))
        });
        let store = spinney_store::Store::open(&file).expect("the winner's file is there");
        let lines = store.head().expect("it can be read");
        match codes {
            [Some(0), Some(1)] => assert_eq!(lines, 40),
            [Some(1), Some(0)] => assert_eq!(lines, 70),
            other => panic!("{other:?}"),
        }
    }
    let left = std::fs::read_dir(&folder).expect("read").count();
    assert_eq!(left, 32, "the loser left something");
}

#[test]
fn an_unpack_that_fails_removes_only_what_it_made() {
    let folder = fresh("failed-unpack");
    let (zip, file) = (folder.join("walk.zip"), folder.join("walk.spinney"));
    packed(&zip, 400);
    let all = || {
        let entries = std::fs::read_dir(&folder).expect("read");
        let mut names: Vec<_> =
            entries.map(|entry| entry.expect("an entry").file_name()).collect();
        names.sort();
        names
    };
    // A limit on the size of files stands in for a full disk.
    let full = |kibibytes: u32| -> (Option<i32>, String) {
        let limit = format!("ulimit -f {kibibytes}; exec \"$0\" unpack \"$1\" \"$2\"");
        let mut command = Command::new("bash");
        command.args(["-c", &limit, env!("CARGO_BIN_EXE_spinney")]).args([&zip, &file]);
        let output = command.output().expect("bash runs");
        (output.status.code(), String::from_utf8(output.stderr).expect("text"))
    };
    for kibibytes in [0, 4, 8, 16, 24, 32] {
        let (code, said) = full(kibibytes);
        assert_eq!(code, Some(1), "{kibibytes} KiB: {said}");
        let plain =
            said.contains("walk.spinney could not be read or written: the disk did not");
        assert!(plain && !said.contains(".part"), "{said}");
        assert_eq!(all(), ["walk.zip"], "{kibibytes} KiB");
    }
    // What stands there is somebody's: a file, also an empty one, a folder, a link to nowhere.
    std::fs::write(&file, "").expect("written");
    assert_eq!(spinney("unpack", &zip, &file).0, Some(1));
    assert_eq!(std::fs::metadata(&file).map(|file| file.len()).ok(), Some(0));
    std::fs::remove_file(&file).expect("removed");
    std::os::unix::fs::symlink("nowhere", &file).expect("linked");
    assert_eq!(spinney("unpack", &zip, &file).0, Some(1));
    assert_eq!(all(), ["walk.spinney", "walk.zip"]);
}
