//! Tables drawn with bars between the cells, and what was read of them.

#![allow(dead_code, reason = "each test file uses a part")]
#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use spinney_exchange::table::{Settings, Source, Sources, TableRead, read};
use spinney_model::{
    CellAt, CellTrouble, CellTyped, CharacterIx, Code, Fact, NamedCell, OfCell, Quantity,
    ReadAs, Scale, Share, TaxonIx, Value,
};

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

/// What is told under one code.
pub(crate) fn told(read: &TableRead, code: Code) -> Vec<Fact> {
    let found = read.findings.iter().filter(|finding| finding.code == code);
    found.map(|finding| finding.fact.clone()).collect()
}

/// The only thing that is told under a code.
pub(crate) fn only(read: &TableRead, code: Code) -> Fact {
    let [fact] = told(read, code).try_into().unwrap_or_else(|told| panic!("{told:#?}"));
    fact
}

/// Where it is told under one code.
pub(crate) fn places(read: &TableRead, code: Code) -> Vec<String> {
    let found = read.findings.iter().filter(|finding| finding.code == code);
    found.map(|finding| finding.place.to_string()).collect()
}

/// A cell by its address, as `hedge.csv!B2`.
pub(crate) fn at(address: &str) -> NamedCell {
    let (sheet, cell) = address.split_once('!').unwrap();
    let number = cell.trim_start_matches(|sign: char| sign.is_ascii_uppercase());
    let letters = &cell[..cell.len() - number.len()];
    let column = (0..).find(|column| CellAt::letters(*column) == letters).unwrap();
    let row = number.parse::<u32>().unwrap() - 1;
    CellAt { sheet: sheet.to_owned(), row, column }.into()
}

/// What is typed at an address, for a kind in a column.
pub(crate) fn typed(address: &str, kind: &str, about: &str, text: &str) -> CellTyped {
    let [text, kind, about] = [text, kind, about].map(str::to_owned);
    CellTyped { text, kind, about, at: at(address) }
}

/// That a cell is not understood.
pub(crate) fn odd(cell: CellTyped, trouble: CellTrouble) -> Fact {
    OfCell::Odd { cell, trouble }.into()
}

/// That a cell is read as something.
pub(crate) fn read_as(cell: CellTyped, read: ReadAs) -> Fact {
    OfCell::ReadAs { cell, read }.into()
}

/// Words that somebody owns.
pub(crate) fn owned<const MANY: usize>(words: [&str; MANY]) -> [String; MANY] {
    words.map(str::to_owned)
}
