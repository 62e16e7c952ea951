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

/// The template's own headings, filled in by a spreadsheet: what the second language needs is
/// read from an XLSX file as from any other.
#[test]
fn the_second_language_is_filled_in_under_the_headings_of_the_template() {
    let mut book = opened();
    let mut filled = rust_xlsxwriter::Workbook::new();
    let typed = [
        ("characters", "second question", "Czy liść jest {}?"),
        ("characters", "second states", "in one piece = w całości; like a feather = pierzasty"),
        ("kinds", "kind", "hazel"),
        ("kinds", "second name", "leszczyna"),
    ];
    for name in ["table", "characters", "kinds", "about"] {
        let range = book.worksheet_range(name).unwrap();
        let mut lines: Vec<Vec<String>> =
            range.rows().map(|row| row.iter().map(text).collect()).collect();
        let headings = lines[0].clone();
        let put = |line: &mut Vec<String>, heading: &str, typed: &str| {
            let at = headings.iter().position(|other| other == heading);
            line[at.unwrap_or_else(|| panic!("{name} has no {heading}"))] = typed.to_owned();
        };
        if name == "table" {
            lines.push(["hazel", "in one piece", "10-20"].map(str::to_owned).to_vec());
            lines.push(["ash", "like a feather", "30-40"].map(str::to_owned).to_vec());
        }
        if name == "kinds" {
            lines.truncate(1);
            lines.push(vec![String::new(); headings.len()]);
        }
        for (_, heading, typed) in typed.iter().filter(|(of, ..)| *of == name) {
            put(&mut lines[1], heading, typed);
        }
        if name == "about" {
            let row = |what: &str, text: &str| vec![what.to_owned(), text.to_owned()];
            lines.retain(|line| line[0] != "second language" && line[0] != "second question");
            lines.push(row("second language", "Polski"));
            lines.push(row("second question", "yes = tak"));
            lines.push(row("second question", "Is it hollow? = Czy jest pusty?"));
        }
        let sheet = filled.add_worksheet();
        sheet.set_name(name).unwrap();
        for (y, line) in lines.iter().enumerate() {
            for (x, typed) in line.iter().enumerate() {
                sheet.write_string(y as u32, x as u16, typed).unwrap();
            }
        }
    }
    let bytes = filled.save_to_buffer().unwrap();
    let table = Source { name: "leaves.xlsx".to_owned(), bytes };
    let sources = Sources { table, ..Sources::default() };
    let matrix = read(&sources, &Settings::default()).unwrap().matrix;
    assert_eq!(matrix.taxa()[0].second_name.as_deref(), Some("leszczyna"));
    let form = &matrix.characters()[0];
    assert_eq!(form.second_question.as_deref(), Some("Czy liść jest {}?"));
    let states: Vec<_> =
        form.second_states.iter().map(|pair| (&*pair.text, &*pair.second)).collect();
    assert_eq!(states, [("in one piece", "w całości"), ("like a feather", "pierzasty")]);
    let scene = matrix.scene();
    assert_eq!(scene.second_language.as_deref(), Some("Polski"));
    let pairs: Vec<_> =
        scene.second_questions.iter().map(|pair| (&*pair.text, &*pair.second)).collect();
    assert_eq!(pairs, [("yes", "tak"), ("Is it hollow?", "Czy jest pusty?")]);
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
