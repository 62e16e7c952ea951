//! Sentences, each with its reading.

use spinney_exchange::link::{Links, link};
use spinney_model::{Couplet, Destination, Key, Matrix, Place, Wording};

use crate::{approved, asked, hedge, leaves, pond, said};

/// A list of sentences: one a line, or the first cell of a line.
fn listed(list: &str) -> Vec<String> {
    let lines = list.lines().filter(|line| !line.starts_with('#') && !line.is_empty());
    lines.map(|line| line.split('\t').next().unwrap_or_default().to_owned()).collect()
}

/// Questions as a key whose numbers are those of the lines.
fn key(sentences: &[String]) -> Key {
    let couplet = |(at, text): (usize, &String)| Couplet {
        number: u32::try_from(at).expect("few lines"),
        back: None,
        wording: Wording::Question(text.clone()),
        ask: None,
        yes: Destination::Missing,
        no: Destination::Missing,
        kept: false,
        line: None,
    };
    Key { couplets: sentences.iter().enumerate().map(couplet).collect() }
}

/// Each sentence with what was read: `sure 24 edge = toothed`, or all that it may mean with
/// points, and what is said of it.
fn readings(sentences: &[String], matrix: &Matrix) -> Vec<String> {
    let mut key = key(sentences);
    let report = link(&mut key, matrix, &Links::default());
    let mut lines = Vec::new();
    for couplet in &key.couplets {
        let here = report.proposals.iter().filter(|found| found.couplet == couplet.number);
        let mut read: Vec<String> = here
            .map(|found| {
                let sure = if found.sure { "sure " } else { "" };
                format!("{sure}{} {}", found.points, said::ask(&found.ask, matrix))
            })
            .collect();
        let place = Place::Couplet(couplet.number);
        let here = report.findings.iter().filter(|finding| finding.place == place);
        read.extend(here.map(said::finding));
        lines.push(format!("{} | {}", couplet.wording.first(), read.join(" | ")));
    }
    let linked = lines.iter().filter(|line| line.contains(" | sure ")).count();
    assert_eq!((report.linked, report.of), (linked, lines.len()));
    lines
}

fn by_hand() -> Vec<String> {
    listed(include_str!("sentences.txt"))
}

#[test]
fn sentences_about_leaves() {
    let matrix = leaves();
    let mut all = by_hand();
    all.extend(listed(include_str!("../sentences/must_link.tsv")));
    all.extend(listed(include_str!("../sentences/must_not_link.tsv")));
    all.extend(listed(include_str!("../sentences/further_must_not_link.tsv")));
    approved("sentences_about_leaves.txt", &readings(&all, &matrix));
}

#[test]
fn sentences_about_a_pond() {
    approved("sentences_about_a_pond.txt", &readings(&by_hand(), &pond()));
}

#[test]
fn sentences_about_a_hedge_in_german() {
    approved("sentences_about_a_hedge_in_german.txt", &readings(&by_hand(), &hedge()));
}

#[test]
fn every_column_in_every_way_people_ask() {
    let mut lines = Vec::new();
    for matrix in [leaves(), pond(), hedge()] {
        lines.extend(readings(&asked::all(&matrix), &matrix));
    }
    approved("every_column_in_every_way.txt", &lines);
}
