//! Whether a mutant is switched on in this process: put into the copy of the tree.

use std::sync::OnceLock;
use std::sync::atomic::{AtomicBool, Ordering};

static ON: OnceLock<usize> = OnceLock::new();
static REACHED: OnceLock<(Option<std::ffi::OsString>, Vec<AtomicBool>)> = OnceLock::new();

/// Whether this mutant is the one, by `SPINNEY_MUTANT`. With `SPINNEY_REACHED` every mutant that is
/// asked for is written down there once.
pub fn on(number: usize) -> bool {
    let wanted = *ON.get_or_init(|| {
        let text = std::env::var("SPINNEY_MUTANT").unwrap_or_default();
        text.parse().unwrap_or(usize::MAX)
    });
    if wanted == usize::MAX {
        reached(number);
    }
    wanted == number
}

fn reached(number: usize) {
    let (file, seen) = REACHED.get_or_init(|| {
        let seen = (0..10_000).map(|_| AtomicBool::new(false)).collect();
        (std::env::var_os("SPINNEY_REACHED"), seen)
    });
    let Some(file) = file else { return };
    if !seen[number].swap(true, Ordering::Relaxed) {
        use std::io::Write;
        let file = std::fs::OpenOptions::new().append(true).create(true).open(file);
        if let Ok(mut file) = file {
            let _ = file.write_all(format!("{number}\n").as_bytes());
        }
    }
}
