//! Sentences about a table of leaves, written by somebody who had not seen how they are linked.
//!
//! `sentences/must_link.tsv` holds what the table can answer, `sentences/must_not_link.tsv` what
//! it cannot. They were
//! written before the linker was looked at, and no row is changed to fit it. The table is
//! invented. `docs/key-text.md` gives the rates.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use std::collections::BTreeSet;

use spinney_exchange::link::proposals;
use spinney_exchange::table::{Settings, Source, Sources, read};
use spinney_model::{Ask, Asked, Matrix, Scale};

const TABLE: &str = include_str!("sentences/table.tsv");
const MUST_LINK: &str = include_str!("sentences/must_link.tsv");
/// Not by a stranger: made up with the rules known, before any of it was tried.
const FURTHER: &str = include_str!("sentences/further_must_not_link.tsv");
const MUST_NOT_LINK: &str = include_str!("sentences/must_not_link.tsv");

/// The ratio that some of the sentences ask for is no column of the list's table.
const CHARACTERS: &str = include_str!("sentences/characters.tsv");

/// The table; with the sheet on its characters, or as bare columns.
fn table(described: bool) -> Matrix {
    let source = |name: &str, text: &str| Source {
        name: name.to_owned(),
        bytes: text.as_bytes().to_vec(),
    };
    let sources = Sources {
        table: source("leaves.tsv", TABLE),
        characters: described.then(|| source("characters.tsv", CHARACTERS)),
        ..Sources::default()
    };
    read(&sources, &Settings::default()).unwrap().matrix
}

/// The rows of a list without its remark and heading.
fn rows(list: &str) -> Vec<Vec<&str>> {
    let lines = list.lines().filter(|line| !line.starts_with('#')).skip(1);
    lines.map(|line| line.split('\t').collect()).collect()
}

/// A row's column as the table calls it: its heading without the unit.
fn column(named: &str) -> &str {
    if named.contains(" / ") { "stalk against blade" } else { named.trim_end_matches(" in mm") }
}

/// Whether an ask is what a row wants; None: no threshold can say it ("between 5 and 7").
fn wanted(matrix: &Matrix, ask: &Ask, row: &[&str]) -> Option<bool> {
    let means = row[2].trim_start_matches("ratio stalk/blade ");
    let character = matrix.character(ask.character);
    let named = character.name == column(row[1]);
    let asked = match (&character.scale, &ask.yes) {
        (Scale::Words { states }, Asked::States(asked)) => {
            let names: BTreeSet<&str> = asked.iter().map(|ix| states[ix.0].as_str()).collect();
            return Some(named && names == means.split(" or ").collect());
        }
        _ if means.contains(" and ") => return None,
        (_, asked) => asked,
    };
    let Some((sign, number)) = means.split_once(' ') else { return Some(false) };
    let number = number.trim_end_matches(" mm");
    let thousandths = match number.split_once('/') {
        Some((over, under)) => {
            1_000 * over.parse::<i64>().unwrap() / under.parse::<i64>().unwrap()
        }
        None => (number.parse::<f64>().unwrap() * 1_000.0).round() as i64,
    };
    // Of counts "more than 7" is 8 or more; of lengths no ruler shows the difference.
    let next = if character.scale == Scale::Counts { thousandths + 1_000 } else { thousandths };
    let (least, limit) = match sign {
        ">" => (Some(next), None),
        ">=" => (Some(thousandths), None),
        "<" => (None, Some(thousandths)),
        "<=" => (None, Some(next)),
        // 3 is the fewest of the table.
        "=" => (None, Some(next)),
        _ => panic!("{row:?}"),
    };
    Some(
        named
            && match asked {
                Asked::AtLeast(at) => Some(at.thousandths()) == least,
                Asked::Below(at) => Some(at.thousandths()) == limit,
                Asked::States(_) => false,
            },
    )
}

/// What becomes of the sentences that the table can answer.
#[derive(Debug, Default, PartialEq, Eq)]
struct Rates {
    /// Linked by itself, and rightly.
    sure: usize,
    /// Asked back, with the right proposal first.
    asked: usize,
    open: usize,
    wrong: usize,
    of: usize,
}

#[test]
fn nine_in_ten_that_the_table_can_answer_are_right_and_none_is_wrong() {
    let matrix = table(true);
    let mut rates = Rates::default();
    for row in rows(MUST_LINK) {
        let found = proposals(row[0], &matrix);
        rates.of += 1;
        let Some(best) = found.first() else {
            println!("open: {}", row[0]);
            rates.open += 1;
            continue;
        };
        match (wanted(&matrix, &best.ask, &row), best.sure) {
            (Some(true), true) => rates.sure += 1,
            (Some(true), false) => {
                println!("asked: {}: {found:?}", row[0]);
                rates.asked += 1;
            }
            _ => {
                println!("wrong: {}: {found:?}", row[0]);
                rates.wrong += 1;
            }
        }
    }
    assert_eq!(rates, Rates { sure: 160, asked: 11, open: 6, wrong: 0, of: 177 });
    assert!(10 * rates.sure >= 9 * rates.of);
}

#[test]
fn nothing_that_the_table_does_not_speak_of_is_linked_by_itself() {
    for described in [true, false] {
        let matrix = table(described);
        let mut list = rows(MUST_NOT_LINK);
        list.extend(rows(FURTHER));
        assert_eq!(list.len(), 183 + 60);
        let linked: Vec<&str> = list
            .iter()
            .filter(|row| proposals(row[0], &matrix).iter().any(|proposal| proposal.sure))
            .map(|row| row[0])
            .collect();
        assert_eq!(linked, [""; 0], "described: {described}");
    }
}

#[test]
fn another_part_is_not_even_proposed() {
    let matrix = table(true);
    let list = rows(MUST_NOT_LINK);
    let parts = list.iter().filter(|row| row[1].starts_with("another part"));
    let proposed: Vec<&str> =
        parts.filter(|row| !proposals(row[0], &matrix).is_empty()).map(|row| row[0]).collect();
    assert_eq!(proposed, [""; 0]);
}

/// A stalk that is at most half as long as the blade, and a blade that is at least twice as long
/// as the stalk.
#[test]
fn at_most_one_way_round_is_at_least_the_other_way_round() {
    let matrix = table(true);
    let ask = |sentence: &str| {
        let first = proposals(sentence, &matrix).into_iter().next();
        first.filter(|first| first.sure).map(|first| first.ask)
    };
    let stalk = ask("Is the leaf stalk at most half as long as the blade?");
    assert!(stalk.is_some());
    let blade = ask("Is the blade at least twice as long as the leaf stalk?");
    // Only the side of the answers differs, if anything.
    assert_eq!(stalk.map(|ask| ask.character), blade.as_ref().map(|ask| ask.character));
}
