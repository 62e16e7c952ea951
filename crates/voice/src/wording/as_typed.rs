//! Headings and states as teachers type them, and the question wanted of each.
//!
//! `as_typed/headings.tsv` was written before the wording was looked at, and no row is changed
//! to fit it. `as_typed/further.tsv` is a second list, of headings that once went wrong and of
//! others like them. Every question is the one wanted or the plain form; a third does not count.

use std::collections::BTreeSet;

use spinney_model::{
    Ask, Asked, Cell, Character, CharacterIx, Matrix, Quantity, Scale, Scene, StateIx, Taxon,
    Unit, Value, WrittenIn,
};

use super::question;
use crate::Tongue;

const LIST: &str = include_str!("as_typed/headings.tsv");
const FURTHER: &str = include_str!("as_typed/further.tsv");

/// One row as a column, and what is asked of it.
fn column(row: &[&str]) -> (Character, Asked) {
    let [name, kind, states, wanted, _, language] = row[..] else { panic!("{row:?}") };
    let number = || {
        let text: String =
            wanted.chars().take_while(|c| c.is_ascii_digit() || *c == '.').collect();
        text.parse::<f64>().expect("a number")
    };
    match kind {
        "count" => {
            let at = Quantity::from_whole(number() as i64);
            (Character::named(name, Scale::Counts), Asked::AtLeast(at))
        }
        "length" => {
            let cm = wanted.contains("cm");
            let thousandths = (number() * if cm { 10_000.0 } else { 1_000.0 }) as i64;
            let scale = Scale::Measure { unit: Unit::Millimetres, gap: Quantity::ZERO };
            let written_in = cm.then_some(WrittenIn::Centimetres);
            let column = Character { written_in, ..Character::named(name, scale) };
            (column, Asked::AtLeast(Quantity::from_thousandths(thousandths)))
        }
        _ => {
            let mut states: Vec<String> =
                states.split(" / ").map(|state| state.trim().to_owned()).collect();
            let at = states.iter().position(|state| state == wanted).expect("a state");
            // The reader of tables makes "yes" of y and x where yes and no are English.
            if kind == "yes-no" && language == "English" && wanted != "present" {
                states = vec!["yes".to_owned(), "no".to_owned()];
                assert_eq!(at, usize::from(wanted == "no"), "{row:?}");
            }
            let yes = Asked::States(BTreeSet::from([StateIx(at)]));
            (Character::named(name, Scale::Words { states }), yes)
        }
    }
}

/// A table of one kind with these columns.
fn table(columns: Vec<Character>) -> Matrix {
    let row = columns.iter().map(|_| Cell::from(Value::Unknown)).collect();
    Matrix::new(Scene::default(), vec![Taxon::named("it")], columns, vec![row])
        .expect("a table")
}

fn rows(list: &'static str) -> Vec<Vec<&'static str>> {
    // The remark, and the heading.
    let lines = list.lines().skip(2);
    lines.map(|line| line.split('\t').collect()).collect()
}

/// The plain form is a heading, a colon and what is asked, with or without "is it".
fn is_plain(question: &str) -> bool {
    question.contains(": ") || question.contains(" : ")
}

/// How many questions are natural, plain as wanted, and plain where a natural one is wanted;
/// and those that are neither.
fn tally(list: &'static str) -> ((usize, usize, usize), Vec<String>) {
    let mut wrong = Vec::new();
    let (mut natural, mut plain, mut plainer) = (0, 0, 0);
    for row in rows(list) {
        let (column, yes) = column(&row);
        // English headings stand alone, so that none helps another; the others' language is
        // known from their table.
        let (matrix, at) = if row[5] == "English" {
            (table(vec![column]), 0)
        } else {
            let of_language: Vec<_> =
                rows(list).into_iter().filter(|r| r[5] == row[5]).collect();
            let at = of_language.iter().position(|other| *other == row).expect("itself");
            (table(of_language.iter().map(|row| self::column(row).0).collect()), at)
        };
        let found =
            question(Tongue::of_terminal(), &matrix, &Ask { character: CharacterIx(at), yes });
        if found == row[4] {
            if is_plain(&found) { plain += 1 } else { natural += 1 }
        } else if is_plain(&found) {
            println!("plain: {found}   wanted: {}", row[4]);
            plainer += 1;
        } else {
            wrong.push(format!("{}: {found}   wanted: {}", row[0], row[4]));
        }
    }
    println!("{natural} natural, {plain} plain as wanted, {plainer} plain instead");
    ((natural, plain, plainer), wrong)
}

#[test]
fn every_heading_gives_the_question_wanted_or_the_plain_form() {
    let (tally, wrong) = tally(LIST);
    assert_eq!(wrong, [""; 0]);
    // "Does it have no wings?" is a question that is answered either way.
    assert_eq!(tally, (285, 89, 1));
}

#[test]
fn every_further_heading_gives_the_question_wanted_or_the_plain_form() {
    let (tally, wrong) = tally(FURTHER);
    assert_eq!(wrong, [""; 0]);
    assert_eq!(tally, (9, 41, 0));
}
