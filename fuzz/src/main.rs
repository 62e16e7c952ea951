//! One program for all readers: `SPINNEY_READER=key-text fuzz …` feeds that reader.
//!
//! From the fuzzer's bytes to a reader of `readers`. `fuzz/run` builds and starts it; the
//! fuzzer itself (libFuzzer) brings `main`.
#![no_main]

mod readers;
mod scans;
mod scenery;
#[cfg(feature = "screens")]
mod screens;

use std::sync::OnceLock;

use readers::Reader;

#[cfg(feature = "screens")]
const READERS: &[&[Reader]] = &[readers::READERS, scans::READERS, screens::READERS];
#[cfg(not(feature = "screens"))]
const READERS: &[&[Reader]] = &[readers::READERS, scans::READERS];

static READER: OnceLock<fn(&[u8])> = OnceLock::new();

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    let reader = READER.get_or_init(|| {
        let wanted = std::env::var("SPINNEY_READER").unwrap_or_default();
        let all = || READERS.iter().copied().flatten();
        let Some((_, _, reader)) = all().find(|(name, ..)| *name == wanted) else {
            let names: Vec<&str> = all().map(|(name, ..)| *name).collect();
            eprintln!("Set SPINNEY_READER to one of: {}", names.join(", "));
            std::process::exit(2);
        };
        *reader
    });
    reader(bytes);
});
