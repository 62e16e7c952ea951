//! For tests: sentences written down before any was tried, linked with the shipped tables.
//!
//! `fresh/sentences.txt` is the list, and `docs/key-text.md` gives its first and second rate.
//! The keys that ship with the tables are linked here too.

use spinney_model::{Matrix, Wording};

use super::links_file::meaning;
use super::{LinkReport, Links, alone, link};
use crate::key_text;
use crate::table::{self, Settings, Source, Sources};

const SENTENCES: &str = include_str!("fresh/sentences.txt");

const FURTHER: &str = include_str!("fresh/further.txt");

macro_rules! shipped {
    ($name:literal) => {
        include_str!(concat!("../../../spinney/scenarios/", $name))
    };
}

fn source(name: &str, text: &str) -> Source {
    Source { name: name.to_owned(), bytes: text.as_bytes().to_vec() }
}

fn read(table: &str, characters: &str, kinds: &str, about: &str) -> Matrix {
    let sources = Sources {
        table: source("table.csv", table),
        characters: Some(source("characters.csv", characters)),
        kinds: Some(source("kinds.csv", kinds)),
        about: Some(source("about.csv", about)),
    };
    table::read(&sources, &Settings::default()).expect("the shipped tables are readable").matrix
}

fn hedge() -> Matrix {
    read(
        shipped!("hedge_walk/table_with_spine.csv"),
        shipped!("hedge_walk/characters_with_spine.csv"),
        shipped!("hedge_walk/kinds.csv"),
        shipped!("hedge_walk/about.csv"),
    )
}

fn pond() -> Matrix {
    read(
        shipped!("pond_tray/table.csv"),
        shipped!("pond_tray/characters.csv"),
        shipped!("pond_tray/kinds.csv"),
        shipped!("pond_tray/about.csv"),
    )
}

fn pasta() -> Matrix {
    read(
        shipped!("pasta_shapes/table.csv"),
        shipped!("pasta_shapes/characters.csv"),
        shipped!("pasta_shapes/kinds.csv"),
        shipped!("pasta_shapes/about.csv"),
    )
}

fn linked(matrix: &Matrix, question: &str) -> (Option<String>, LinkReport) {
    let mut key = alone(Wording::Question(question.to_owned()));
    let report = link(&mut key, matrix, &Links::default());
    let ask = key.couplets[0].ask.as_ref().map(|ask| meaning(ask, matrix).replace('"', ""));
    (ask, report)
}

/// How many of a list link right, stay unlinked, or link wrong; of the linkable and the others.
#[derive(Debug, Default)]
struct Tally {
    right: usize,
    not_linked: usize,
    wrong: usize,
    rightly_left: usize,
}

fn tally(list: &str) -> Tally {
    let tables = [("hedge", hedge()), ("pond", pond()), ("pasta", pasta())];
    let mut tally = Tally::default();
    for line in list.lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
        let parts: Vec<&str> = line.split('|').map(str::trim).collect();
        let [name, question, wanted] = parts[..] else { panic!("three parts: {line}") };
        let matrix = tables.iter().find(|table| table.0 == name).map(|table| &table.1);
        let (found, report) = linked(matrix.expect("a shipped table"), question);
        match (found.as_deref(), wanted) {
            (None, "-") => tally.rightly_left += 1,
            (None, _) => {
                println!("not linked: {line}: {:?} {:?}", report.proposals, report.findings);
                tally.not_linked += 1;
            }
            (Some(found), wanted) if found == wanted => tally.right += 1,
            (Some(found), _) => {
                println!("WRONG: {line}: {found} {:?}", report.proposals);
                tally.wrong += 1;
            }
        }
    }
    tally
}

/// None links wrong, nothing that has no answer is guessed, and no fewer link than did when the
/// list was written: more may.
fn links(list: &str, at_least: usize, linkable: usize, others: usize) {
    let found = tally(list);
    assert_eq!((found.wrong, found.rightly_left), (0, others), "{found:?}");
    assert_eq!(found.right + found.not_linked, linkable, "{found:?}");
    assert!(found.right >= at_least, "{found:?}");
}

#[test]
fn sentences_written_before_any_was_tried() {
    links(SENTENCES, 31, 40, 20);
}

#[test]
fn further_sentences_written_after_mending() {
    links(FURTHER, 15, 18, 22);
}

/// The numbers of the questions of a key that are not linked.
fn open(matrix: &Matrix, text: &str) -> Vec<u32> {
    let links = Links::default();
    let mut key = key_text::read(text, matrix, &links).key;
    let report = link(&mut key, matrix, &links);
    println!("{:?}", report.findings);
    let open = key.couplets.iter().filter(|couplet| couplet.ask.is_none());
    open.map(|couplet| couplet.number).collect()
}

#[test]
fn the_shipped_keys_link_but_for_the_planted_faults() {
    let none: [u32; 0] = [];
    let hedge = hedge();
    assert_eq!(open(&hedge, shipped!("hedge_walk/key_by_hand.txt")), [4, 5, 12]);
    assert_eq!(open(&hedge, shipped!("hedge_walk/key_by_hand_mended.txt")), none);
    assert_eq!(open(&hedge, shipped!("hedge_walk/key_in_leads.txt")), none);
    assert_eq!(open(&pond(), shipped!("pond_tray/key_by_hand.txt")), none);
    assert_eq!(open(&pasta(), shipped!("pasta_shapes/key_by_hand.txt")), none);
}
