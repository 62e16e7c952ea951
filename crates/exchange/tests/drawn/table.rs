//! Tables drawn with bars between the cells, and what was read of them.

#![allow(dead_code, reason = "each test file uses a part")]
#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use spinney_exchange::table::{Settings, Source, Sources, TableRead, read};
use spinney_model::{CharacterIx, Code, Quantity, Scale, Share, TaxonIx, Value};

/// Reads a table whose columns are parted by `|`.
pub(crate) fn table(text: &str) -> TableRead {
    with_characters(text, None)
}

/// The same with a `characters` sheet.
pub(crate) fn with_characters(text: &str, characters: Option<&str>) -> TableRead {
    let source = |name: &str, text: &str| {
        let rows = text.trim().lines().map(|line| {
            let cells = line.split('|').map(|cell| cell.trim().to_owned());
            cells.collect::<Vec<_>>().join("\t")
        });
        Source { name: name.to_owned(), bytes: rows.collect::<Vec<_>>().join("\n").into() }
    };
    let sources = Sources {
        table: source("hedge.csv", text),
        characters: characters.map(|text| source("characters.csv", text)),
        ..Sources::default()
    };
    read(&sources, &Settings::default()).unwrap()
}

/// What one cell holds.
pub(crate) fn value(read: &TableRead, taxon: usize, character: usize) -> Value {
    read.matrix.cell(TaxonIx(taxon), CharacterIx(character)).value.clone()
}

/// The states of a character in words.
pub(crate) fn states(read: &TableRead, character: usize) -> Vec<String> {
    match &read.matrix.character(CharacterIx(character)).scale {
        Scale::Words { states } => states.clone(),
        scale => panic!("no words: {scale:?}"),
    }
}

/// So many of so many.
pub(crate) fn share(part: i128, whole: i128) -> Share {
    Share::new(part, whole)
}

/// A range in thousandths.
pub(crate) fn mm(low: i64, high: i64) -> Value {
    Value::Range {
        low: Quantity::from_thousandths(low),
        high: Quantity::from_thousandths(high),
    }
}

/// The findings of one code, with their places.
pub(crate) fn told(read: &TableRead, code: Code) -> Vec<String> {
    let found = read.findings.iter().filter(|finding| finding.code == code);
    found.map(|finding| format!("{}: {:?}", finding.place, finding.fact)).collect()
}
