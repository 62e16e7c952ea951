//! Does the steps of [`crate::story`] to a new collection and to one of the first form, and says
//! each once it is acknowledged: the program whose system calls are recorded.

use std::collections::BTreeSet;
use std::io::Write;
use std::path::Path;

use spinney_store::{Hash, Store};

use crate::story::{STEPS, State, Step, after, step};

pub(crate) fn write(new: &Path, old: &Path) {
    let store = Store::create(new).expect("there is none yet");
    say(new, 0);
    do_all(store, new, STEPS[0]);
    do_all(Store::open(old).expect("it is there"), old, STEPS[1]);
}

fn do_all(mut store: Store, path: &Path, steps: usize) {
    let lines = store.rows(0).expect("it can be read").into_iter().map(|row| row.bytes);
    let pictures = store.pictures().expect("they can be listed").into_iter();
    let pictures = pictures.filter_map(|hash| store.picture(hash).expect("it can be read"));
    let mut state = State { lines: lines.collect(), pictures: pictures.collect() };
    for number in 1..=steps {
        let head = store.head().expect("it can be read");
        match step(number, &state) {
            Step::Append(lines, pictures) => store.append(head, &lines, &pictures),
            Step::Rewrite(after) => store.rewrite(head, &after.lines, &hashes(&after)),
        }
        .expect("it can be written");
        say(path, number);
        state = after(number, &state);
    }
}

fn hashes(state: &State) -> BTreeSet<Hash> {
    state.pictures.iter().map(|bytes| Hash::of(bytes)).collect()
}

/// In one call, so that it is one line of a trace.
fn say(path: &Path, number: usize) {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let told = format!("\nkept {number} of {name}\n");
    std::io::stdout().lock().write_all(told.as_bytes()).expect("somebody listens");
}
