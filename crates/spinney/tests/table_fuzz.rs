//! Thousands of damaged tables, the same ones every time: no panic, and findings that name a
//! place and that every language says in sentences of its own.
//!
//! They stand here and not beside the reader of tables, which has no sentences.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use std::io::{Cursor, Read, Write};

use fastrand::Rng;
use spinney_exchange::table::{Settings, Source, Sources, read};
use spinney_exchange::template::{self, Begun, Content};
use spinney_model::CharacterField;
use spinney_model::Finding;
use spinney_voice::{LANGUAGES, Tongue, finding};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipArchive, ZipWriter};

fn try_read(bytes: Vec<u8>) -> bool {
    let table = Source { name: "fuzz".to_owned(), bytes };
    match read(&Sources { table, ..Sources::default() }, &Settings::default()) {
        Ok(read) => {
            read.findings.iter().for_each(can_be_said);
            true
        }
        Err(error) => {
            for (tag, _) in LANGUAGES {
                let (sentence, remedy) =
                    spinney_voice::table_error(Tongue::for_person(&[tag.to_owned()]), &error);
                assert!(sentence.ends_with('.') && !remedy.is_empty(), "{error:?}");
            }
            false
        }
    }
}

/// A finding is data, and each language has a sentence and a remedy for it. A message that lacks a
/// text, or is not there, ends a test; one that is only there in English is said in English.
fn can_be_said(found: &Finding) {
    assert!(!found.place.to_string().is_empty(), "{found:?}");
    let said = LANGUAGES.map(|(tag, _)| finding(found, Tongue::for_person(&[tag.to_owned()])));
    for (at, (sentence, remedy)) in said.iter().enumerate() {
        assert!(sentence.ends_with(['.', '?', ':', '!']), "{sentence}");
        assert!(!remedy.is_empty(), "{sentence}");
        let before = &said[..at];
        assert!(before.iter().all(|(other, _)| other != sentence), "{sentence}");
        assert!(before.iter().all(|(_, other)| other != remedy), "{remedy}");
    }
}

const PIECES: [&str; 42] = [
    "kind",
    "hazel",
    "ivy",
    "lobed 8, entire 2",
    "3,5 cm",
    "30-60",
    "yes",
    "no",
    "?",
    "n/a",
    "-",
    "\"",
    "'",
    "=1+1",
    "\n",
    "\r\n",
    ",",
    ";",
    "\t",
    " or ",
    "5",
    "stalk (mm)",
    "1/3",
    "80 %",
    "(8 seen)",
    "é",
    "\u{feff}",
    "999999999999999999999999",
    "-0",
    "1e9",
    "\u{2013}",
    ":",
    "mm",
    "yes 3 of 10",
    "3 out of ",
    "±",
    "..",
    "five",
    "≥ 5",
    "1,200 mm",
    "4294967295 of 4294967295",
    "a 1/99999999989, b 99999999988/99999999989",
];

#[test]
fn texts_of_odd_pieces_are_read_without_panic() {
    let mut rng = Rng::with_seed(1);
    let mut read = 0;
    for _ in 0..4_000 {
        let separator = [",", ";", "\t"][rng.usize(..3)];
        let mut text = String::new();
        for _ in 0..rng.usize(1..60) {
            text.push_str(PIECES[rng.usize(..PIECES.len())]);
            text.push_str(["", separator, separator, "\n"][rng.usize(..4)]);
        }
        let mut bytes = text.into_bytes();
        for _ in 0..rng.usize(..3) {
            let at = rng.usize(..bytes.len());
            bytes[at] = rng.u8(..);
        }
        read += usize::from(try_read(bytes));
    }
    assert!(read > 1_000, "only {read} could be read, so this looks at little");
}

#[test]
fn second_sheets_of_odd_pieces_are_read_without_panic() {
    let mut rng = Rng::with_seed(2);
    let headings = "character\tquestion\tvalues\tstates\tunit\tgap\tseen on\tdifficulty\tread right\t\
                    by touch\tapplies when\n";
    let kinds = "kind\tscientific name\tother names\thow often\tcaution\n";
    for _ in 0..2_000 {
        let mut rows = |columns: usize| {
            let mut text = String::new();
            for name in ["a", "b", "x"] {
                text.push_str(name);
                for _ in 1..columns {
                    text.push('\t');
                    for _ in 0..rng.usize(..3) {
                        let piece = PIECES[rng.usize(..PIECES.len())];
                        text.push_str(if piece.contains('\n') { "a = lobed" } else { piece });
                    }
                }
                text.push('\n');
            }
            text
        };
        let source = |text: String| Source { name: "f".to_owned(), bytes: text.into() };
        let sources = Sources {
            table: source(format!("kind\ta\tb\n{}", rows(3))),
            characters: Some(source(format!("{headings}{}", rows(11)))),
            kinds: Some(source(format!("{kinds}{}", rows(5)))),
            about: Some(source(rows(2))),
        };
        let read = read(&sources, &Settings::default()).expect("a table of kinds");
        read.findings.iter().for_each(can_be_said);
    }
}

#[test]
fn workbooks_with_damaged_bytes_are_read_without_panic() {
    let mut rng = Rng::with_seed(3);
    let whole = filled_template();
    let mut read = 0;
    for _ in 0..500 {
        let mut bytes = whole.clone();
        for _ in 0..rng.usize(1..6) {
            let at = rng.usize(..bytes.len());
            bytes[at] = rng.u8(..);
        }
        if rng.u8(..5) == 0 {
            bytes.truncate(rng.usize(..bytes.len()));
        }
        read += usize::from(try_read(bytes));
    }
    assert!(read > 30, "only {read} could be read, so this looks at little");
}

#[test]
fn workbooks_with_damaged_parts_are_read_without_panic() {
    let mut rng = Rng::with_seed(4);
    let parts = parts(&filled_template());
    let mut read = 0;
    for _ in 0..500 {
        let mut parts = parts.clone();
        let at = rng.usize(..parts.len());
        let part = &mut parts[at].1;
        for _ in 0..rng.usize(1..5) {
            let at = rng.usize(..part.len());
            match rng.u8(..3) {
                0 => part[at] = *rng.choice(b"<>/\"&;=AZ09 rcvst\0").unwrap(),
                1 => drop(part.splice(at..at, *b"99999999999")),
                _ => drop(part.drain(at..(at + rng.usize(..40)).min(part.len()))),
            }
            if part.is_empty() {
                part.push(b'<');
            }
        }
        read += usize::from(try_read(packed(&parts)));
    }
    assert!(read > 100, "only {read} could be read, so this looks at little");
}

/// An empty table with six columns to begin with.
fn empty_table() -> Vec<u8> {
    let names = ["form", "leaflets", "lobes", "how lobed", "edge", "blade length"];
    let states = CharacterField::States;
    let begun = |name: &str| Begun {
        name: name.to_owned(),
        fields: vec![(states, "in one piece; like a feather".to_owned())],
        hint: "Pick one.".to_owned(),
    };
    let advice = vec![["30-60".to_owned(), "From the smallest to the largest.".to_owned()]];
    let characters = names.map(begun).to_vec();
    let content = Content { title: "A table".to_owned(), characters, advice };
    template::xlsx("2026-10-03", &content).unwrap()
}

/// A workbook with every sort of part, and a kind in it.
fn filled_template() -> Vec<u8> {
    let mut parts = parts(&empty_table());
    let (_, sheet) = parts.iter_mut().find(|(name, _)| name.ends_with("/sheet1.xml")).unwrap();
    let text = String::from_utf8(sheet.clone()).unwrap();
    let rows = "<row r=\"2\"><c r=\"A2\" t=\"inlineStr\"><is><t>hazel</t></is></c>\
                <c r=\"B2\" t=\"str\"><f>1</f><v>in one piece</v></c><c r=\"G2\"><v>8.5</v></c>\
                </row><row r=\"3\"><c r=\"A3\" t=\"s\"><v>3</v></c></row></sheetData>";
    *sheet = text.replace("</sheetData>", rows).into_bytes();
    packed(&parts)
}

fn parts(bytes: &[u8]) -> Vec<(String, Vec<u8>)> {
    let mut archive = ZipArchive::new(Cursor::new(bytes)).unwrap();
    (0..archive.len())
        .map(|at| {
            let mut part = archive.by_index(at).unwrap();
            let mut content = Vec::new();
            part.read_to_end(&mut content).unwrap();
            (part.name().unwrap().into_owned(), content)
        })
        .collect()
}

fn packed(parts: &[(String, Vec<u8>)]) -> Vec<u8> {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, content) in parts {
        // Stored, so that a damaged byte damages the content and not the packing.
        let stored = SimpleFileOptions::default().compression_method(CompressionMethod::Stored);
        writer.start_file(name.as_str(), stored).unwrap();
        writer.write_all(content).unwrap();
    }
    writer.finish().unwrap().into_inner()
}
