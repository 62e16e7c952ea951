//! Files as they come: encodings, separators, quotation marks, workbooks.
//!
//! Sources: the examples of RFC 4180 (2005), section 2; the workbooks are written by
//! rust_xlsxwriter and read a second time by calamine.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use std::io::{Cursor, Read as _, Write as _};

use calamine::{DataType, Reader, Xlsx};
use rust_xlsxwriter::{Format, Formula, Workbook};
use spinney_exchange::table::{
    Instead, Settings, Source, Sources, TableError, TableRead, read,
};
use spinney_model::{
    CharacterIx, Code, Fact, KindAt, OfCell, OfColumn, OfSheet, TaxonIx, Value,
};
use zip::write::SimpleFileOptions;
use zip::{ZipArchive, ZipWriter};

#[path = "drawn/table.rs"]
mod drawn;

use drawn::{at, only, owned, states, told};

fn try_read(name: &str, bytes: impl Into<Vec<u8>>) -> Result<TableRead, TableError> {
    let table = Source { name: name.to_owned(), bytes: bytes.into() };
    read(&Sources { table, ..Sources::default() }, &Settings::default())
}

fn names(read: &TableRead) -> Vec<&str> {
    read.matrix.taxa().iter().map(|taxon| taxon.name.as_str()).collect()
}

#[test]
fn every_encoding_that_spreadsheets_write_gives_the_same_table() {
    let text = "kind;Rückseite\nGänsefuß;weiß\nHasel;grün";
    let utf16 = |swap: fn(u16) -> [u8; 2]| -> Vec<u8> {
        std::iter::once(0xfeff).chain(text.encode_utf16()).flat_map(swap).collect()
    };
    let windows: Vec<u8> =
        text.chars().map(|sign| u8::try_from(u32::from(sign)).unwrap()).collect();
    let files = [
        text.as_bytes().to_vec(),
        [b"\xef\xbb\xbf", text.as_bytes()].concat(),
        utf16(u16::to_le_bytes),
        utf16(u16::to_be_bytes),
        windows,
    ];
    for bytes in files {
        let read = try_read("a.csv", bytes).unwrap();
        assert_eq!(names(&read), ["Gänsefuß", "Hasel"]);
        assert_eq!(states(&read, 0), ["weiß", "grün"]);
        assert_eq!(read.matrix.character(CharacterIx(0)).name, "Rückseite");
    }
}

#[test]
fn every_separator_and_line_end_gives_the_same_table() {
    for separator in [",", ";", "\t"] {
        for end in ["\n", "\r\n", "\r"] {
            let text = ["kind|edge|stalk (mm)", "hazel|toothed|3.5", "ivy|smooth|40"].join(end);
            let read = try_read("a.csv", text.replace('|', separator)).unwrap();
            assert_eq!(names(&read), ["hazel", "ivy"], "{separator:?} {end:?}");
            assert_eq!(states(&read, 0), ["toothed", "smooth"]);
            assert!(read.findings.is_empty(), "{:?}", read.findings);
        }
    }
}

#[test]
fn a_decimal_comma_beside_semicolons_is_no_separator() {
    let read = try_read("a.csv", "kind;a (cm);b (cm)\nx;3,5;1,5\ny;4,5;2,5-3,5").unwrap();
    assert_eq!(read.matrix.characters().len(), 2);
    let cell = &read.matrix.cell(TaxonIx(1), CharacterIx(1)).value;
    assert!(matches!(cell, Value::Range { low, high }
        if (low.thousandths(), high.thousandths()) == (25_000, 35_000)));
}

#[test]
fn a_first_line_may_declare_its_separator() {
    let read = try_read("a.csv", "sep=;\nkind;edge\nhazel;toothed").unwrap();
    assert_eq!(states(&read, 0), ["toothed"]);
}

/// RFC 4180 section 2, rules 5 to 7: quotation marks, line breaks and doubled marks.
#[test]
fn quotation_marks_are_those_of_rfc_4180() {
    let text = "\"kind\",\"b\r\nbb\",ccc\r\n\"a\"\"aa\",b,\"c, c\"\r\nzzz,yyy,xxx\r\n";
    let read = try_read("a.csv", text).unwrap();
    assert_eq!(names(&read), ["a\"aa", "zzz"]);
    assert_eq!(read.matrix.character(CharacterIx(0)).name, "b\r\nbb");
}

#[test]
fn blank_lines_and_broken_rows_keep_the_names_of_cells() {
    let text = "kind,edge,lobes\n\n\nhazel,?4?\n,,\r\nivy,toothed,lobed,extra\n";
    let read = try_read("a.csv", text).unwrap();
    assert_eq!(names(&read), ["hazel", "ivy"]);
    let called = "column D".to_owned();
    let none = OfColumn::NoHeading { called, at: at("a.csv!D1") };
    assert_eq!(told(&read, Code::HeadingTwice)[0], none.into());
    let Fact::Cell(OfCell::NotRecorded { kinds, .. }) = &told(&read, Code::Unknown)[0] else {
        panic!("{:#?}", read.findings)
    };
    assert_eq!(kinds[0], KindAt { kind: "hazel".to_owned(), at: at("a.csv!C4") });
}

#[test]
fn a_quotation_mark_that_is_never_closed_is_told_where_it_swallows_the_table() {
    let rows: Vec<_> = (0..900).map(|at| format!("k{at},red")).collect();
    let text = format!("kind,colour\nhazel,\"red\n{}", rows.join("\n"));
    let read = try_read("a.csv", text).unwrap();
    assert_eq!(drawn::places(&read, Code::TooLarge)[0], "a.csv!B2");
    assert_eq!(names(&read), ["hazel"]);
}

#[test]
fn what_is_no_table_is_refused_and_named() {
    let mut compound = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1".to_vec();
    let old = try_read("old.xls", compound.clone()).unwrap_err();
    assert!(matches!(old, TableError::OldFormat { .. }));
    compound.extend("EncryptedPackage".encode_utf16().flat_map(u16::to_le_bytes));
    let locked = try_read("locked.xlsx", compound).unwrap_err();
    assert!(matches!(locked, TableError::Protected { .. }));
    let pdf = try_read("a.pdf", b"%PDF-1.7".to_vec()).unwrap_err();
    let name = "a.pdf".to_owned();
    assert_eq!(pdf, TableError::NotATable { name, what: Instead::Pdf });
    let binary = try_read("a.bin", vec![0; 100]).unwrap_err();
    let zip =
        try_read("a.zip", b"PK\x05\x06".iter().chain(&[0; 18]).copied().collect::<Vec<_>>());
    let zip = zip.unwrap_err();
    assert!(matches!(zip, TableError::NotATable { what: Instead::Zip, .. }), "{zip:?}");
    assert!(matches!(binary, TableError::NotATable { what: Instead::NotText, .. }));
}

#[test]
fn writing_and_web_pages_are_no_table_and_tables_are() {
    let repository = concat!(env!("CARGO_MANIFEST_DIR"), "/../..");
    let read =
        |path: &str| try_read(path, std::fs::read(format!("{repository}/{path}")).unwrap());
    let no_table = |name: &str, read: Result<TableRead, TableError>| {
        let error = read.expect_err(name);
        assert!(matches!(error, TableError::NotATable { .. }), "{name}: {error:?}");
    };
    for path in
        ["README.md", "ARCHITECTURE.md", "CONTRIBUTING.md", "docs/KEY.md", "docs/findings.md"]
    {
        no_table(path, read(path));
    }
    let scenarios = "crates/spinney/scenarios";
    for path in [
        "hedge_walk/key_by_hand.txt",
        "hedge_walk/key_in_leads.txt",
        "pond_tray/key_by_hand.txt",
    ] {
        no_table(path, read(&format!("{scenarios}/{path}")));
    }
    for (name, text) in [
        (
            "letter",
            "Dear class,\n\ntoday we go out and look for leaves, twigs and shells.\n\
                    Bring boots, a coat and a bag.\nMr Green\n",
        ),
        ("short letter", "Dear class\nwe go out\n"),
        ("short lines", "Hello everybody\nplease bring boots\nwe meet at nine\n"),
        ("one line", "We found hazel, ivy and a very old oak behind the church wall.\n"),
        (
            "page",
            "\n <!DOCTYPE html>\n<html><body><table><tr><td>a</td></tr></table></body></html>",
        ),
        ("json", "{\n  \"version\": 1,\n  \"key\": []\n}"),
        ("pdf", "scanned\n%PDF-1.4\n1 0 obj\n"),
    ] {
        no_table(name, try_read(name, text.as_bytes().to_vec()));
    }
    for name in ["hedge_walk", "pond_tray", "pasta_shapes"] {
        assert!(read(&format!("{scenarios}/{name}/table.csv")).is_ok(), "{name}");
    }
    for text in [
        "kind\nhazel\nivy\n",
        "our trees\nhazel\nfield maple\nlily of the valley\n",
        "Leaves of our hedge, spring, all of them invented for this lesson\nkind,edge\nhazel,toothed\n",
        "kind,what the leaf looks like\nhazel,round and soft and toothed all round\nivy,dark and shiny with five lobes\n",
        "kind;the leaf in your own words;the twig in your own words\n\
         hazel;round and soft and toothed all round;brown with many soft hairs\n\
         ivy;dark and shiny with five lobes;green with small roots on it\n",
        "kind,edge,note\nhazel,toothed,\nivy,smooth,found behind the old church wall\nlime,toothed,\n",
    ] {
        assert!(try_read("a.csv", text.as_bytes().to_vec()).is_ok(), "{text}");
    }
}

/// A workbook as a person makes it, with everything that is no plain value.
fn hedge() -> Vec<u8> {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet().set_name("Hedge").unwrap();
    for (column, heading) in
        ["kind", "edge", "stalk (mm)", "leaflets", "spines"].iter().enumerate()
    {
        sheet.write(0, u16::try_from(column).unwrap(), *heading).unwrap();
    }
    sheet.write(1, 0, "hazel").unwrap();
    sheet.write(1, 1, "toothed").unwrap();
    sheet.write(1, 2, 3.5).unwrap();
    sheet.write(1, 3, "n/a").unwrap();
    sheet.write(1, 4, false).unwrap();
    sheet.write(2, 0, "dog rose").unwrap();
    sheet.write(2, 1, "toothed or smooth").unwrap();
    sheet.write(2, 2, 0.1 + 0.2).unwrap();
    sheet.write_formula(2, 3, Formula::new("=2+3").set_result("5")).unwrap();
    sheet.write(2, 4, true).unwrap();
    sheet.write(3, 0, "ivy").unwrap();
    // What a spreadsheet makes of `3-5`: the 45,080th day, shown as a day and a month.
    let date = Format::new().set_num_format("d-mmm");
    sheet.write_number_with_format(3, 2, 45_080.0, &date).unwrap();
    sheet.write(3, 1, "smooth").unwrap();
    let characters = book.add_worksheet().set_name("Characters").unwrap();
    for (at, text) in ["character", "question", "spines", "Has it spines?"].iter().enumerate() {
        let (row, column) = (u32::try_from(at / 2).unwrap(), u16::try_from(at % 2).unwrap());
        characters.write(row, column, *text).unwrap();
    }
    let about = book.add_worksheet().set_name("about").unwrap();
    about.write(0, 0, "title").unwrap();
    about.write(0, 1, "Hedge walk").unwrap();
    book.add_worksheet().set_name("scribbles").unwrap().write(0, 0, "x").unwrap();
    book.save_to_buffer().unwrap()
}

#[test]
fn a_workbook_is_read_with_its_sheets() {
    let read = try_read("hedge.xlsx", hedge()).unwrap();
    assert_eq!(names(&read), ["hazel", "dog rose", "ivy"]);
    let cell = |kind, character| &read.matrix.cell(TaxonIx(kind), CharacterIx(character)).value;
    assert!(matches!(cell(0, 1), Value::Range { low, .. } if low.thousandths() == 3_500));
    assert!(matches!(cell(1, 1), Value::Range { low, .. } if low.thousandths() == 300));
    assert_eq!(*cell(2, 1), Value::Unknown);
    assert!(matches!(cell(1, 2), Value::Counts(counts) if counts[0].0 == 5));
    assert_eq!(states(&read, 3), ["yes", "no"]);
    let spines = read.matrix.character(CharacterIx(3));
    assert_eq!(spines.question.as_deref(), Some("Has it spines?"));
    assert_eq!(read.matrix.scene().title.as_deref(), Some("Hedge walk"));
    let formula = OfCell::Formula { at: at("Hedge!D3") };
    let date = OfCell::MadeADate { at: at("Hedge!C4") };
    assert_eq!(told(&read, Code::CellNotPlain), [formula.into(), date.into()]);
    let [read_one, others] = owned(["Hedge", "scribbles"]);
    let left = OfSheet::SheetsNotRead { read: read_one, others: vec![others] };
    assert_eq!(only(&read, Code::LeftOut), left.into());
}

#[test]
fn another_reader_sees_the_same_texts_in_the_same_cells() {
    let mut book = Xlsx::new(Cursor::new(hedge())).unwrap();
    let range = book.worksheet_range("Hedge").unwrap();
    let read = try_read("hedge.xlsx", hedge()).unwrap();
    for (row, taxon) in read.matrix.taxa().iter().enumerate() {
        let text = range.get((row + 1, 0)).unwrap().get_string().unwrap();
        assert_eq!(text, taxon.name);
        let edge = range.get((row + 1, 1)).unwrap().get_string().unwrap();
        let Value::States(shares) = &read.matrix.cell(TaxonIx(row), CharacterIx(0)).value
        else {
            panic!("no words")
        };
        let states = states(&read, 0);
        let ours: Vec<&str> =
            shares.iter().map(|(state, _)| states[state.0].as_str()).collect();
        assert_eq!(ours.join(" or "), edge);
    }
}

#[test]
fn merged_cells_hold_their_value_in_each_row() {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    for (row, texts) in
        [["kind", "edge"], ["hazel", ""], ["ivy", ""], ["oak", "wavy"]].iter().enumerate()
    {
        for (column, text) in texts.iter().enumerate().filter(|(_, text)| !text.is_empty()) {
            sheet
                .write(u32::try_from(row).unwrap(), u16::try_from(column).unwrap(), *text)
                .unwrap();
        }
    }
    sheet.merge_range(1, 1, 2, 1, "toothed", &Format::new()).unwrap();
    let read = try_read("merged.xlsx", book.save_to_buffer().unwrap()).unwrap();
    let cell = |kind| read.matrix.cell(TaxonIx(kind), CharacterIx(0)).value.clone();
    assert_eq!(cell(0), cell(1));
    assert!(matches!(cell(1), Value::States(_)));
    let text = "toothed".to_owned();
    let merged = OfCell::Merged { text, at: at("Sheet1!B2"), to: at("Sheet1!B3") };
    assert_eq!(only(&read, Code::CellNotPlain), merged.into());
}

#[test]
fn a_workbook_may_describe_a_table_in_another_file() {
    let sources = Sources {
        table: Source { name: "t.csv".to_owned(), bytes: b"kind,spines\nholly,yes".to_vec() },
        characters: Some(Source { name: "hedge.xlsx".to_owned(), bytes: hedge() }),
        ..Sources::default()
    };
    let read = read(&sources, &Settings::default()).unwrap();
    let spines = read.matrix.character(CharacterIx(0));
    assert_eq!(spines.question.as_deref(), Some("Has it spines?"));
}

/// The parts of a workbook, each with its name, packed again after a change.
fn repacked(bytes: Vec<u8>, change: impl Fn(&str, String) -> String) -> Vec<u8> {
    let mut parts = ZipArchive::new(Cursor::new(bytes)).unwrap();
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for at in 0..parts.len() {
        let mut part = parts.by_index(at).unwrap();
        let mut text = String::new();
        part.read_to_string(&mut text).unwrap();
        let name = part.name().unwrap().into_owned();
        writer.start_file(name.as_str(), SimpleFileOptions::default()).unwrap();
        writer.write_all(change(&name, text).as_bytes()).unwrap();
    }
    writer.finish().unwrap().into_inner()
}

/// ECMA-376, part 1, 18.3.1.4 and 18.3.1.73: rows and cells may leave out where they stand; then
/// each stands after the one before.
#[test]
fn cells_that_do_not_say_where_they_are_stand_one_after_the_other() {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    let rows = [["kind", "edge"], ["hazel", "toothed"], ["ivy", "smooth"], ["oak", "wavy?!"]];
    for (row, texts) in (0_u32..).zip(rows) {
        for (column, text) in (0_u16..).zip(texts) {
            sheet.write(row, column, text).unwrap();
        }
    }
    let named = book.save_to_buffer().unwrap();
    let nameless = repacked(named.clone(), |name, text| match name.contains("sheet1.xml") {
        true => {
            let mut parts = text.split(" r=\"");
            let first = parts.next().unwrap().to_owned();
            let rest = parts.map(|part| part.split_once('"').unwrap().1);
            rest.fold(first, |all, part| all + part)
        }
        false => text,
    });
    let [named, nameless] = [named, nameless].map(|bytes| try_read("a.xlsx", bytes).unwrap());
    assert_eq!(nameless.matrix, named.matrix);
    assert_eq!(nameless.findings, named.findings);
    assert_eq!(names(&nameless), ["hazel", "ivy", "oak"]);
}

/// OpenDocument 1.3, part 2, 3.3: its kind stands in a part called "mimetype".
#[test]
fn an_opendocument_file_is_told_by_its_parts_whatever_its_name_is() {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for name in ["content.xml", "mimetype"] {
        writer.start_file(name, SimpleFileOptions::default()).unwrap();
        writer.write_all(b"<a/>").unwrap();
    }
    let bytes = writer.finish().unwrap().into_inner();
    let found = try_read("a.xlsx", bytes).unwrap_err();
    assert!(matches!(found, TableError::OldFormat { .. }), "{found:?}");
}

/// A sheet of remarks that somebody put in front of the table is no list of kinds.
#[test]
fn a_sheet_in_front_of_the_table_is_not_read_in_its_place() {
    let mut book = Workbook::new();
    let cover = book.add_worksheet().set_name("cover").unwrap();
    for (row, text) in (0_u32..).zip(["Our hedge", "Class 4", "October"]) {
        cover.write(row, 0, text).unwrap();
    }
    let table = book.add_worksheet().set_name("hedge").unwrap();
    for (row, texts) in
        (0_u32..).zip([["kind", "edge"], ["hazel", "toothed"], ["ivy", "smooth"]])
    {
        for (column, text) in (0_u16..).zip(texts) {
            table.write(row, column, text).unwrap();
        }
    }
    let found = try_read("a.xlsx", book.save_to_buffer().unwrap()).unwrap_err();
    let (name, other) = ("cover".to_owned(), "hedge".to_owned());
    assert_eq!(found, TableError::OtherSheet { name, other });
}
