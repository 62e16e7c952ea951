//! The empty workbook, opened by another reader (calamine) and by our own.

use std::io::Cursor;

use calamine::{DataType, Reader, Xlsx};

use spinney_model::CharacterField;

use super::{Begun, Content, TemplateError};
use crate::table::{Settings, Source, Sources, TableError, read};

/// Two characters and a line of advice.
fn content() -> Content {
    let fields = |question: &str, states: &str| {
        let all = [(CharacterField::Question, question), (CharacterField::States, states)];
        all.map(|(field, text)| (field, text.to_owned())).to_vec()
    };
    let begun = |name: &str, question: &str, states: &str| Begun {
        name: name.to_owned(),
        fields: fields(question, states),
        hint: "Pick one.".to_owned(),
    };
    Content {
        title: "A table".to_owned(),
        characters: vec![
            begun("form of the leaf", "Is the leaf {}?", "in one piece; like a feather"),
            begun("stalk length", "Is the stalk {} long?", ""),
        ],
        advice: vec![["30-60".to_owned(), "From the smallest to the largest.".to_owned()]],
    }
}

fn xlsx(created: &str) -> Result<Vec<u8>, TemplateError> {
    super::xlsx(created, &content())
}

fn opened() -> Xlsx<Cursor<Vec<u8>>> {
    Xlsx::new(Cursor::new(xlsx("2026-10-03").unwrap())).unwrap()
}

#[test]
fn another_reader_finds_the_sheets_and_the_headings() {
    let mut book = opened();
    let sheets = ["table", "characters", "kinds", "about", "how to fill this in"];
    assert_eq!(book.sheet_names(), sheets);
    let table = book.worksheet_range("table").unwrap();
    let headings: Vec<String> = table.rows().next().unwrap().iter().map(text).collect();
    assert_eq!(headings, ["kind", "form of the leaf", "stalk length"]);
    assert_eq!(table.height(), 1, "no kind and no value stands in the template");
    let characters = book.worksheet_range("characters").unwrap();
    let row: Vec<String> = characters.rows().nth(1).unwrap().iter().map(text).collect();
    assert_eq!(row[1], "Is the leaf {}?");
    assert_eq!(characters.height(), 3);
    let advice = book.worksheet_range("how to fill this in").unwrap();
    let row: Vec<String> = advice.rows().next().unwrap().iter().map(text).collect();
    assert_eq!(row, ["30-60", "From the smallest to the largest."]);
    // Every sheet begins in its corner, where a person looks first.
    for name in sheets {
        assert_eq!(book.worksheet_range(name).unwrap().start(), Some((0, 0)), "{name}");
    }
}

fn text(cell: &calamine::Data) -> String {
    cell.get_string().unwrap_or("").to_owned()
}

#[test]
fn the_empty_template_lacks_nothing_but_kinds() {
    let bytes = xlsx("2026-10-03").unwrap();
    let table = Source { name: "leaves.xlsx".to_owned(), bytes };
    let sources = Sources { table, ..Sources::default() };
    let error = read(&sources, &Settings::default()).unwrap_err();
    assert_eq!(error, TableError::NoKinds { name: "table".to_owned() });
}

#[test]
fn the_same_date_gives_the_same_bytes() {
    assert_eq!(xlsx("2026-10-03"), xlsx("2026-10-03"));
    assert_ne!(xlsx("2026-10-03"), xlsx("2026-10-04"));
}

#[test]
fn a_date_that_is_none_is_refused() {
    for date in ["yesterday", "2026-13-01", "2026-10", "", "2026-10-03T12:00:00"] {
        let error = xlsx(date).unwrap_err();
        assert_eq!(error, TemplateError::Date(date.to_owned()));
    }
}

#[test]
fn every_column_of_the_sheet_of_characters_stands_in_the_template() {
    let mut book = opened();
    let characters = book.worksheet_range("characters").unwrap();
    let headings: Vec<String> = characters.rows().next().unwrap().iter().map(text).collect();
    let usual: Vec<&str> = crate::table::CHARACTERS.iter().map(|of| of.headings[0]).collect();
    assert_eq!(headings, usual);
    for new in ["season", "instrument", "in order", "words to know", "ratio of"] {
        assert!(headings.iter().any(|heading| heading == new), "{new}");
    }
}
