//! One program for all readers: `SPINNEY_READER=key-text fuzz …` feeds that reader.
//!
//! From the fuzzer's bytes to a reader of `readers`. `fuzz/run` builds and starts it; the
//! fuzzer itself (libFuzzer) brings `main`.
#![no_main]

mod readers;
mod scenery;

use std::sync::OnceLock;

static READER: OnceLock<fn(&[u8])> = OnceLock::new();

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    let reader = READER.get_or_init(|| {
        let wanted = std::env::var("SPINNEY_READER").unwrap_or_default();
        let found = readers::READERS.iter().find(|(name, _)| *name == wanted);
        let Some((_, reader)) = found else {
            let names: Vec<&str> = readers::READERS.iter().map(|(name, _)| *name).collect();
            eprintln!("Set SPINNEY_READER to one of: {}", names.join(", "));
            std::process::exit(2);
        };
        *reader
    });
    reader(bytes);
});
