//! The power fails at any moment: every file opens, and no acknowledged edit is lost.
//!
//! The system calls of a program that edits collections are recorded once; then the power is cut
//! after any of them, with any part of what was not synced on the disk. The long run:
//! `CUTS=10000 cargo test -p spinney-store --test power_cut -- --nocapture`.

mod disk;
mod story;
mod writer;

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use spinney_store::{Store, StoreError};

use disk::{Cut, Did, Disk};
use story::{STEPS, State, after};

const NAMES: [&str; 2] = ["new.spinney", "old.spinney"];
const OLD: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/fixtures/form_1.spinney");

fn fresh(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("power_cut").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for the test");
    folder
}

/// What the writer did, and what was in the folder before.
fn recorded(folder: &Path) -> Vec<Did> {
    fs::copy(OLD, folder.join(NAMES[1])).expect("the fixture is there");
    let test = std::env::current_exe().expect("this test is a program");
    let trace = folder.join("trace.txt");
    let ended = Command::new("strace")
        .args(["-f", "-y", "-xx", "-s", "100000", "-e"])
        .arg("trace=openat,pwrite64,write,ftruncate,fsync,fdatasync,unlink,unlinkat")
        .arg("-o")
        .arg(&trace)
        .arg(test)
        .args(["--exact", "writes_a_story", "--nocapture"])
        .env("FOLDER", folder)
        .output()
        .expect("strace is there");
    assert!(ended.status.success(), "{}", String::from_utf8_lossy(&ended.stderr));
    disk::read(&fs::read_to_string(trace).expect("a trace"))
}

/// The program that is recorded; asked for by itself, it has nothing to do.
#[test]
fn writes_a_story() {
    let Some(folder) = std::env::var_os("FOLDER").map(PathBuf::from) else { return };
    writer::write(&folder.join(NAMES[0]), &folder.join(NAMES[1]));
}

/// What a file holds after each of its steps.
fn states(before: State, steps: usize) -> Vec<State> {
    let mut states = vec![before];
    for number in 1..=steps {
        states.push(after(number, states.last().expect("the first one")));
    }
    states
}

/// What is in a file. None: it was not begun yet, and can be begun.
fn found(path: &Path) -> Result<Option<State>, StoreError> {
    let store = match Store::open(path) {
        Err(StoreError::Missing { .. }) => return Ok(None),
        // A beginning that was cut off leaves an empty file, in which one can begin again.
        Err(_) if fs::metadata(path).is_ok_and(|file| file.len() == 0) => {
            return Store::create(path).map(|_| None);
        }
        store => store?,
    };
    store.check()?;
    let lines = store.rows(0)?.into_iter().map(|row| row.bytes).collect();
    let pictures = store.pictures()?.into_iter();
    let pictures = pictures.map(|hash| Ok(store.picture(hash)?.expect("it was checked")));
    Ok(Some(State { lines, pictures: pictures.collect::<Result<_, StoreError>>()? }))
}

#[derive(Debug, Default)]
struct Figures {
    calls: usize,
    cuts: usize,
    not_opened: usize,
    lost: usize,
    /// The step that was under way was done after all.
    done: usize,
    undone: usize,
}

/// Cuts the power so many times.
fn cut_off(name: &str, cuts: usize, lies: bool) -> Figures {
    let folder = fresh(name);
    let calls = recorded(&folder);
    let path = |at: usize| folder.join(NAMES[at]).to_str().expect("text").to_owned();
    let old = fs::read(OLD).expect("the fixture is there");
    let mut disk = Disk::new(lies);
    disk.put(&path(1), old);
    let after_cut = folder.join("after");
    fs::create_dir(&after_cut).expect("made");
    fs::copy(OLD, after_cut.join("first")).expect("copied");
    let first = found(&after_cut.join("first")).expect("it opens").expect("it is there");
    let states = [states(State::default(), STEPS[0]), states(first, STEPS[1])];
    let mut random = fastrand::Rng::with_seed(3);
    let mut at: Vec<usize> =
        std::iter::repeat_with(|| random.usize(..=calls.len())).take(cuts).collect();
    at.sort_unstable();
    let (mut taken, mut said) = (0, [None, Some(0)]);
    let mut figures = Figures { calls: calls.len(), cuts, ..Figures::default() };
    for (number, at) in at.into_iter().enumerate() {
        for did in &calls[taken..at] {
            if let Did::Said(step, name) = did {
                let file = NAMES.iter().position(|known| known == name).expect("one of ours");
                said[file] = Some(*step);
            }
            disk.take(did);
        }
        taken = at;
        let cut = [Cut::AnyPart, Cut::AnyPart, Cut::Nothing, Cut::All][number % 4];
        lay_out(&after_cut, &disk.after(cut, &mut random));
        for (file, name) in NAMES.iter().enumerate() {
            match found(&after_cut.join(name)) {
                Err(error) => {
                    figures.not_opened += 1;
                    assert!(lies, "{name} after call {at}, {cut:?}: {error:?}");
                }
                Ok(found) => {
                    let kept = said[file].map(|step| &states[file][step]);
                    let next = states[file].get(said[file].map_or(0, |step| step + 1));
                    if found.as_ref() == kept {
                        figures.undone += 1;
                    } else if found.as_ref() == next {
                        figures.done += 1;
                    } else {
                        figures.lost += 1;
                        assert!(lies, "{name} after call {at}, {cut:?}: lost after {said:?}");
                    }
                }
            }
        }
    }
    figures
}

/// Writes what is on the disk after a cut into a folder.
fn lay_out(folder: &Path, files: &BTreeMap<String, Vec<u8>>) {
    fs::remove_dir_all(folder).expect("removed");
    fs::create_dir(folder).expect("made");
    for (path, bytes) in files {
        let name = Path::new(path).file_name().expect("a file");
        fs::write(folder.join(name), bytes).expect("written");
    }
}

#[test]
fn no_acknowledged_edit_is_lost_by_a_power_cut() {
    let cuts = std::env::var("CUTS").ok().and_then(|n| n.parse().ok()).unwrap_or(300);
    let figures = cut_off("cut", cuts, false);
    println!(
        "{} power cuts in {} system calls: {} files not opened, {} edits lost; the edit under way \
         was kept {} times, and not kept {} times",
        figures.cuts,
        figures.calls,
        figures.not_opened,
        figures.lost,
        figures.done,
        figures.undone
    );
    assert!(figures.calls > 1_000, "too little was recorded");
    assert_eq!((figures.not_opened, figures.lost), (0, 0));
    assert!(figures.done > 0, "no cut came between the disk and the answer");
}

/// On a disk that does not keep what it was told to sync, losses are found: so the test above
/// can fail.
#[test]
fn a_disk_that_lies_is_found_out() {
    let figures = cut_off("lies", 100, true);
    assert!(figures.lost + figures.not_opened > 20, "{figures:?}");
}
