//! The readers of what comes from outside, fed with the fuzzer's corpus and what is made of it.
//!
//! The functions are those that `fuzz/run` feeds for hours (see docs/decisions/0013-fuzzing.md),
//! here without its engine: every input of `fuzz/corpus` as it is, so that what was found once
//! stays mended, then inputs cut, joined and changed at random, the same ones every time. An
//! input that panics or takes over ten seconds is kept under `target/tmp/corpus`.
//!
//! `MADE=100 cargo test -p spinney --test corpus` makes a hundred times as many.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

#[path = "../../../fuzz/src/readers.rs"]
mod readers;
#[path = "../../../fuzz/src/scans.rs"]
mod scans;
#[path = "../../../fuzz/src/scenery.rs"]
mod scenery;
#[path = "../../../fuzz/src/screens.rs"]
mod screens;

use std::collections::BTreeSet;
use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use fastrand::Rng;

/// No input takes longer.
const LONGEST: Duration = Duration::from_secs(10);

fn folder(reader: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fuzz/corpus").join(reader)
}

fn corpus(reader: &str) -> Vec<Vec<u8>> {
    let files = fs::read_dir(folder(reader)).unwrap().map(|file| file.unwrap().path());
    let files: BTreeSet<PathBuf> = files.collect();
    files.into_iter().map(|file| fs::read(file).unwrap()).collect()
}

fn all() -> impl Iterator<Item = &'static readers::Reader> {
    readers::READERS.iter().chain(scans::READERS).chain(screens::READERS)
}

/// Feeds a reader with its corpus, then with so many inputs made of it.
fn feed(reader: &str, made: usize) {
    let (_, longest, read) = all().find(|(name, ..)| *name == reader).unwrap();
    let corpus = corpus(reader);
    assert!(!corpus.is_empty(), "{reader} has no corpus");
    for input in &corpus {
        one(reader, *read, input);
    }
    let times = std::env::var("MADE").map_or(1, |times| times.parse::<usize>().unwrap());
    let mut rng = Rng::with_seed(1);
    for _ in 0..made * times {
        let mut input = rng.choice(&corpus).unwrap().clone();
        for _ in 0..rng.usize(1..5) {
            change(&mut input, rng.choice(&corpus).unwrap(), &mut rng);
        }
        input.truncate(*longest);
        one(reader, *read, &input);
    }
}

fn one(reader: &str, read: fn(&[u8]), input: &[u8]) {
    let start = Instant::now();
    let panicked = catch_unwind(AssertUnwindSafe(|| read(input))).is_err();
    let took = start.elapsed();
    if panicked || took > LONGEST {
        let kept = Path::new(env!("CARGO_TARGET_TMPDIR")).join("corpus");
        fs::create_dir_all(&kept).unwrap();
        fs::write(kept.join(reader), input).unwrap();
        panic!("{reader}: panicked: {panicked}, took {took:?}; see target/tmp/corpus/{reader}");
    }
}

/// One change: a sign, a piece taken out, said twice, or taken from another input.
fn change(input: &mut Vec<u8>, other: &[u8], rng: &mut Rng) {
    let piece = |of: &[u8], rng: &mut Rng| {
        let from = rng.usize(..=of.len());
        from..(from + rng.usize(..60)).min(of.len())
    };
    let at = rng.usize(..=input.len());
    match rng.u8(..5) {
        0 if at < input.len() => input[at] = rng.u8(..),
        1 => drop(input.drain(piece(input, rng))),
        2 => {
            let again = input[piece(input, rng)].to_vec();
            drop(input.splice(at..at, again));
        }
        3 => drop(input.splice(at..at, other[piece(other, rng)].to_vec())),
        _ => input.insert(at, SIGNS[rng.usize(..SIGNS.len())]),
    }
}

/// What means something to one reader or another.
const SIGNS: &[u8; 14] = b"\n,;\"'=?0-({<&\0";

#[test]
fn every_reader_has_a_corpus_and_every_corpus_a_reader() {
    let readers: BTreeSet<String> = all().map(|(name, ..)| (*name).to_owned()).collect();
    let there = fs::read_dir(folder("")).unwrap();
    let there: BTreeSet<String> =
        there.map(|file| file.unwrap().file_name().into_string().unwrap()).collect();
    assert_eq!(there, readers);
}

#[test]
fn every_reader_is_fed() {
    let here = include_str!("corpus.rs");
    for (name, ..) in all() {
        assert!(here.contains(&format!("feed(\"{name}\", ")), "{name}");
    }
}

#[test]
fn tables_are_fed() {
    feed("table-csv", 1_500);
}

#[test]
fn scans_are_fed() {
    feed("scan", 400);
}

#[test]
fn outlines_are_fed() {
    feed("leaves", 300);
}

#[test]
fn workbooks_are_fed() {
    feed("table-xlsx", 1_500);
}

#[test]
fn parts_of_workbooks_are_fed() {
    feed("xlsx-parts", 1_500);
}

#[test]
fn second_sheets_are_fed() {
    feed("second-sheets", 1_000);
}

#[test]
fn keys_in_words_are_fed() {
    feed("key-text", 1_000);
}

#[test]
fn keys_for_programs_are_fed() {
    feed("key-json", 1_500);
}

#[test]
fn links_are_fed() {
    feed("links", 5_000);
}

#[test]
fn bundles_are_fed() {
    feed("bundle", 2_500);
}

#[test]
fn lines_of_a_journal_are_fed() {
    feed("journal", 5_000);
}

#[test]
fn files_of_collections_are_fed() {
    feed("collection-file", 1_000);
}

#[test]
fn pictures_are_fed() {
    feed("picture", 1_500);
}

#[test]
fn lines_are_fed_to_a_desk() {
    feed("replay", 500);
}

#[test]
fn forms_are_fed() {
    feed("form", 1_000);
}

/// A corpus whose forms are all refused would reach nothing.
#[test]
fn many_forms_of_the_corpus_change_the_collection() {
    let forms = corpus("form");
    let kept = forms.iter().filter(|form| screens::kept(form) > 0).count();
    assert!(4 * kept >= forms.len(), "{kept} of {}", forms.len());
}
