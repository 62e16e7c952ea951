//! The columns of every sheet: each heading once, each word that is offered read, and all of them on
//! their page.

use std::collections::BTreeSet;

use spinney_model::{Code, Instrument, Season, SeenOn};

use super::super::{Settings, Source, Sources, read};
use super::*;

#[test]
fn no_sheet_has_a_heading_twice() {
    let of_characters: Vec<_> = CHARACTERS.iter().map(|column| column.headings).collect();
    let of_kinds: Vec<_> = KINDS.iter().map(|column| column.headings).collect();
    let of_about: Vec<_> = ABOUT.iter().map(|row| row.headings).collect();
    for sheet in [of_characters, of_kinds, of_about] {
        let all: Vec<&str> = sheet.concat();
        assert_eq!(all.iter().collect::<BTreeSet<_>>().len(), all.len(), "{all:?}");
    }
}

fn words(field: CharacterField) -> &'static [&'static str] {
    super::words(CHARACTERS[place_of(field)].input)
}

#[test]
fn what_one_may_choose_among_is_what_there_is() {
    assert_eq!(words(CharacterField::SeenOn), SeenOn::ALL.map(SeenOn::word));
    assert_eq!(words(CharacterField::Season), Season::ALL.map(Season::word));
    assert_eq!(words(CharacterField::Instrument), Instrument::ALL.map(Instrument::word));
    // Nothing on a tray is weighed in kilograms, though they are read.
    let units: BTreeSet<&str> =
        spinney_model::UNITS.iter().map(|row| row.sign).filter(|sign| *sign != "kg").collect();
    let offered = words(CharacterField::Unit).iter().copied();
    let offered: BTreeSet<&str> =
        offered.map(|unit| if unit == "ratio" { "" } else { unit }).collect();
    assert_eq!(offered, units.into_iter().chain(["count"]).collect());
}

/// What is read where a column of a sheet beside the table says a word.
fn said(sheet: &str, heading: &str, word: &str) -> Matrix {
    let source =
        |name: &str, text: String| Source { name: name.to_owned(), bytes: text.into() };
    let row = format!("{}\t{heading}\nx\t{word}\n", sheet.trim_end_matches('s'));
    let row = Some(source(sheet, row));
    // A column of words holds no numbers, and only its states are in an order.
    let in_words = word == "words" || heading == "in order";
    let [first, second] = if in_words { ["thin", "thick"] } else { ["3", "5"] };
    let table = source("table", format!("kind\tx\nx\t{first}\ny\t{second}\n"));
    let sources = match sheet {
        "characters" => Sources { table, characters: row, ..Sources::default() },
        _ => Sources { table, kinds: row, ..Sources::default() },
    };
    let read = read(&sources, &Settings::default()).expect("a table of two kinds");
    let odd: Vec<_> = read
        .findings
        .iter()
        .filter(|finding| {
            matches!(finding.code, Code::CellNotUnderstood | Code::SheetDisagrees)
        })
        .collect();
    assert!(odd.is_empty(), "{heading}: {word}: {odd:#?}");
    read.matrix
}

/// A word that is offered is read, and as no other word of its column.
#[test]
fn every_word_that_is_offered_is_read() {
    let of_characters = CHARACTERS.iter().map(|of| ("characters", of.headings[0], of.input));
    let of_kinds = KINDS.iter().map(|of| ("kinds", of.headings[0], of.input));
    let mut offered = 0;
    for (sheet, heading, input) in of_characters.chain(of_kinds) {
        let words = super::words(input);
        let read: Vec<_> = words.iter().map(|word| said(sheet, heading, word)).collect();
        for (at, matrix) in read.iter().enumerate() {
            let same = read[..at].iter().position(|before| before == matrix);
            assert_eq!(same.map(|same| words[same]), None, "{heading}: {}", words[at]);
        }
        offered += words.len();
    }
    assert!(offered > 30, "only {offered} words are offered, so this looks at little");
}

/// `docs/table.md` is these columns as a page.
#[test]
fn every_column_stands_on_its_page() {
    let page = include_str!("../../../../../docs/table.md");
    let rows = |sheet: &str| -> Vec<&str> {
        let part = page.split(&format!("## The sheet `{sheet}`")).nth(1).expect(sheet);
        let part = part.split("\n## ").next().unwrap_or_default();
        part.lines().filter(|line| line.starts_with("| ")).skip(2).collect()
    };
    let row = |headings: &[&str], input: Input| {
        let holds = match input {
            Input::Line => "a text".to_owned(),
            Input::OneOf(words) => format!("one of: {}", words.join(", ")),
            Input::SomeOf(words) => format!("any of: {}", words.join(", ")),
        };
        format!("| {} | {} | {holds} |", headings[0], headings[1..].join(", "))
    };
    let of_characters = CHARACTERS.iter().map(|of| row(of.headings, of.input));
    assert_eq!(rows("characters"), of_characters.collect::<Vec<_>>());
    let of_kinds = KINDS.iter().map(|of| row(of.headings, of.input));
    assert_eq!(rows("kinds"), of_kinds.collect::<Vec<_>>());
    let of_about = ABOUT.iter().map(|of| match of.counts {
        true => row(of.headings, Input::Line).replace("a text", "a whole number"),
        false => row(of.headings, Input::Line),
    });
    assert_eq!(rows("about"), of_about.collect::<Vec<_>>());
    let of_finds = FINDS.iter().map(|(_, headings)| row(headings, Input::Line));
    assert_eq!(rows("table"), of_finds.collect::<Vec<_>>());
}
