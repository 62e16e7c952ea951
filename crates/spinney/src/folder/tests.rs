//! A list is read as it was written; a change that fails half-way is taken back.

use std::fs;
use std::path::Path;

use super::change::Changing;
use super::ours::{NAME, Ours, hash_of};

#[test]
fn a_list_is_read_as_it_was_written() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut ours = Ours::default();
    ours.add("key.txt", hash_of(b"one"));
    ours.add("today.pdf", hash_of(b"two"));
    let both = ours.with(&ours);
    assert_eq!(both, ours);
    fs::write(folder.path().join(NAME), ours.text()).expect("written");
    assert_eq!(Ours::of(folder.path()), ours);
    fs::write(folder.path().join("key.txt"), "one").expect("written");
    fs::write(folder.path().join("today.pdf"), "changed").expect("written");
    assert!(ours.has(folder.path(), "key.txt") && ours.has(folder.path(), NAME));
    assert!(!ours.has(folder.path(), "today.pdf") && !ours.has(folder.path(), "chart.pdf"));
    // Names that lead out of the folder are none of ours.
    let outside = format!("{}  ../key.txt\n{}  ..\n", hash_of(b"one"), hash_of(b""));
    fs::write(folder.path().join(NAME), outside).expect("written");
    assert_eq!(Ours::of(folder.path()), Ours::default());
    assert!(!ours.has(folder.path(), NAME), "a list that is not ours");
}

fn names(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).expect("it can be read");
    let mut names: Vec<String> = entries
        .map(|entry| entry.expect("an entry").file_name().into_string().expect("text"))
        .collect();
    names.sort();
    names
}

/// What comes is not all there, as if the last move had failed; beside what stays, and alone.
#[test]
fn a_change_that_fails_half_way_is_taken_back() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = |name: &str| folder.path().join(name);
    for (name, text) in [("key.txt", "old"), ("chart.pdf", "old"), (NAME, "old"), ("mine", "")]
    {
        fs::write(at(name), text).expect("written");
    }
    let side = tempfile::tempdir_in(folder.path()).expect("a folder");
    fs::write(side.path().join("key.txt"), "new").expect("written");
    let comes = ["key.txt", "today.pdf", NAME].map(str::to_owned);
    let changing = Changing {
        folder: folder.path(),
        side,
        comes: &comes,
        goes: &["chart.pdf".to_owned()],
        during: "both".to_owned(),
    };
    assert!(changing.change().is_err());
    assert_eq!(names(folder.path()), ["chart.pdf", "key.txt", NAME, "mine"]);
    for name in ["key.txt", "chart.pdf", NAME] {
        assert_eq!(fs::read_to_string(at(name)).expect("there"), "old", "{name}");
    }
}
