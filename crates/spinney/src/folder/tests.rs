//! A list is read as it was written; a change that fails half-way is taken back.

use std::fs;
use std::path::{Path, PathBuf};

use super::change::{Changing, alike};
use super::ours::{NAME, Ours, hash_of};
use crate::files::{Over, SYNCED};

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
    // One that is longer than any of ours is not read to its end to find that out.
    fs::write(folder.path().join(NAME), ours.text() + &"#".repeat(1 << 20)).expect("written");
    assert!(!ours.has(folder.path(), NAME), "a list that has no end");
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

/// A folder with an old key text, and a new one beside it.
fn changing(folder: &Path) -> Changing<'_> {
    fs::write(folder.join("key.txt"), "old").expect("written");
    fs::write(folder.join(NAME), Ours::default().text()).expect("written");
    let side = tempfile::tempdir_in(folder).expect("a folder");
    fs::write(side.path().join("key.txt"), "new").expect("written");
    fs::write(side.path().join(NAME), Ours::default().text()).expect("written");
    let comes = vec!["key.txt".to_owned(), NAME.to_owned()].leak();
    Changing { folder, side, comes, goes: &[], during: Ours::default().text() }
}

fn text(folder: &Path) -> String {
    fs::read_to_string(folder.join("key.txt")).expect("there")
}

/// The way in one step fails, and the way back with it: what went wrong is what is said.
#[test]
fn a_new_set_that_cannot_be_put_back_is_an_error() {
    let folder = tempfile::tempdir().expect("a folder");
    let changing = changing(folder.path());
    let in_the_way = changing.side.path().join("somebody's");
    let swap = |_: &Path, _: &Path| {
        fs::create_dir_all(&in_the_way).expect("made");
        false
    };
    assert!(changing.exchange(swap).is_err());
    assert_eq!(text(folder.path()), "old");
}

/// A file that somebody finds after a power cut has its name, and is in a folder that has.
#[test]
fn the_names_are_on_the_disk_too() {
    let synced = |folder: &Path| SYNCED.with_borrow(|all| all.iter().any(|one| one == folder));
    let above = tempfile::tempdir().expect("a folder");
    let above = fs::canonicalize(above.path()).expect("there");
    crate::files::write_whole(&above.join("key.txt"), b"one", Over::Nothing).expect("written");
    assert!(synced(&above));
    let visit = above.join("visit");
    fs::create_dir(&visit).expect("made");
    SYNCED.take();
    let change = changing(&visit);
    assert!(change.exchange(|_, _| true).is_ok());
    let new = |folder: &PathBuf| folder.ends_with("new");
    assert!(SYNCED.with_borrow(|all| all.iter().any(new)) && synced(&above));
    SYNCED.take();
    let arrives = above.join("new visit");
    let change = changing(&visit);
    let side = change.side.path().to_owned();
    Changing { folder: &arrives, ..change }.arrive().expect("moved");
    assert!(synced(&side) && synced(&above));
    assert_eq!(text(&arrives), "new");
}

/// A folder that is another's, or of which something else is said, keeps that.
#[cfg(target_os = "linux")]
#[test]
fn a_folder_is_not_exchanged_for_one_that_is_open_to_others() {
    let (one, other) = (tempfile::tempdir(), tempfile::tempdir());
    let (one, other) = (one.expect("a folder"), other.expect("a folder"));
    assert!(alike(one.path(), other.path()));
    // Something else is said of it; or it is given away; or it is the system's.
    let noted = rustix::fs::setxattr(
        other.path(),
        "user.spinney_test",
        b"1",
        rustix::fs::XattrFlags::empty(),
    );
    let marked = noted.is_ok() || std::os::unix::fs::chown(other.path(), Some(1), None).is_ok();
    let others = if marked { other.path() } else { Path::new("/proc/1") };
    assert!(!alike(one.path(), others));
}
