//! A collection is packed, moved, and opened elsewhere as it was.

use std::path::Path;
use std::process::Command;

use super::browser::{Workbench, fresh};

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
    let workbench = Workbench::open(Some(&file));
    let parts: [(&str, Option<&str>, &[u8]); 2] =
        [("names", None, b"yew\nholly"), ("pictures", Some("a.png"), super::doors::GREY)];
    assert_eq!(workbench.post_files("/do/add-kinds", &parts).status, 303);
    assert_eq!(workbench.post("/do/undo", &[]).status, 303);
    assert_eq!(workbench.post("/do/redo", &[]).status, 303);
    let before = workbench.get("/finds").text();
    // Packing works while a window is open.
    let (code, said) = spinney("pack", &file, &zip);
    assert_eq!((code, said.contains("journal: 3; pictures: 1;")), (Some(0), true), "{said}");
    drop(workbench);
    let (code, said) = spinney("pack", &file, &zip);
    assert_eq!((code, said.contains("--force")), (Some(1), true), "{said}");
    let (code, said) = spinney("unpack", &zip, &other);
    assert_eq!(code, Some(0), "{said}");
    let workbench = Workbench::open(Some(&other));
    assert_eq!(workbench.get("/finds").text(), before);
    let (code, said) = spinney("unpack", &zip, &other);
    assert_eq!((code, said.contains("already")), (Some(1), true), "{said}");
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
