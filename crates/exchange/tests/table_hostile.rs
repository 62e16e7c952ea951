//! Hostile spreadsheets: never a panic, and never more than 512 MiB of memory in all.
//!
//! A process of its own, so that the most memory it ever had, as the kernel counts it (`VmHWM` in
//! `/proc/self/status`), is that of reading these files and of building them. The tests take
//! turns: two at a time would count each other's memory.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use std::io::{Cursor, Write};
use std::sync::{Mutex, MutexGuard, PoisonError};

use spinney_exchange::table::{Settings, Source, Sources, TableError, TableRead, read};
use spinney_model::Code;
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

const MIB: usize = 1 << 20;

/// The most memory this process ever had, in MiB.
fn most_memory() -> usize {
    let status = std::fs::read_to_string("/proc/self/status").unwrap();
    let line = status.lines().find(|line| line.starts_with("VmHWM:")).unwrap();
    line.split_whitespace().nth(1).unwrap().parse::<usize>().unwrap() / 1024
}

fn try_read(name: &str, bytes: Vec<u8>) -> Result<TableRead, TableError> {
    let before = most_memory();
    let table = Source { name: name.to_owned(), bytes };
    let read = read(&Sources { table, ..Sources::default() }, &Settings::default());
    let after = most_memory();
    println!(
        "{name}: {before} -> {after} MiB, {}",
        match &read {
            Ok(read) => format!("{} kinds", read.matrix.taxa().len()),
            Err(error) => format!("{error:?}"),
        }
    );
    assert!(after <= 512, "{name} took {after} MiB");
    read
}

/// A workbook whose parts are written piece by piece, so that building it takes no memory.
struct Book(ZipWriter<Cursor<Vec<u8>>>);

const HEAD: &str = "<worksheet><sheetData>\
    <row r=\"1\"><c r=\"A1\" t=\"str\"><v>kind</v></c><c r=\"B1\" t=\"str\"><v>edge</v></c></row>\
    <row r=\"2\"><c r=\"A2\" t=\"str\"><v>hazel</v></c><c r=\"B2\" t=\"str\"><v>toothed</v></c></row>";
const TAIL: &str = "</sheetData></worksheet>";

impl Book {
    fn new() -> Self {
        let mut book = Self(ZipWriter::new(Cursor::new(Vec::new())));
        let kind = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        book.part(
            "_rels/.rels",
            &[(
                &format!(
                    "<Relationships><Relationship Id=\"r1\" Type=\"{kind}/officeDocument\" \
                      Target=\"xl/workbook.xml\"/></Relationships>"
                ),
                1,
            )],
        );
        book.part(
            "xl/_rels/workbook.xml.rels",
            &[(
                &format!(
                    "<Relationships><Relationship Id=\"r1\" Type=\"{kind}/worksheet\" \
                      Target=\"worksheets/sheet1.xml\"/></Relationships>"
                ),
                1,
            )],
        );
        book.part(
            "xl/workbook.xml",
            &[(
                "<workbook><sheets><sheet name=\"Sheet1\" r:id=\"r1\"/></sheets></workbook>",
                1,
            )],
        );
        book
    }

    /// A part of repeated pieces.
    fn part(&mut self, name: &str, pieces: &[(&str, usize)]) {
        self.0.start_file(name, SimpleFileOptions::default()).unwrap();
        for (piece, times) in pieces {
            let at_once = (MIB / piece.len().max(1)).clamp(1, *times);
            let block = piece.repeat(at_once);
            for _ in 0..times / at_once {
                self.0.write_all(block.as_bytes()).unwrap();
            }
            self.0.write_all(piece.repeat(times % at_once).as_bytes()).unwrap();
        }
    }

    fn sheet(pieces: &[(&str, usize)]) -> Vec<u8> {
        let mut book = Self::new();
        book.part("xl/worksheets/sheet1.xml", pieces);
        book.bytes()
    }

    fn bytes(self) -> Vec<u8> {
        self.0.finish().unwrap().into_inner()
    }
}

/// Held by the test whose turn it is, also if the one before it failed.
fn turn() -> MutexGuard<'static, ()> {
    static TURN: Mutex<()> = Mutex::new(());
    TURN.lock().unwrap_or_else(PoisonError::into_inner)
}

#[test]
fn far_and_empty_cells_take_no_room() {
    let _turn = turn();
    let far = "<row r=\"1048576\"><c r=\"XFD1048576\" t=\"str\"><v>x</v></c>\
               <c r=\"A1048576\" t=\"str\"><v>ivy</v></c></row>";
    let read = try_read("far cell", Book::sheet(&[(HEAD, 1), (far, 1), (TAIL, 1)])).unwrap();
    assert_eq!(read.matrix.taxa().len(), 2);
    assert!(read.findings.iter().any(|finding| {
        finding.code == Code::TooLarge && finding.place.to_string() == "Sheet1!XFD1048576"
    }));
    let empty = "<c r=\"C2\" s=\"1\"/>";
    let pieces = [(HEAD, 1), ("<row>", 1), (empty, 1_000_000), ("</row>", 1), (TAIL, 1)];
    let read = try_read("a million empty cells", Book::sheet(&pieces)).unwrap();
    assert_eq!(read.matrix.taxa().len(), 1);
    let formula = "<c><f>SUM(A1:A9)</f><v>7</v></c>";
    let rows = "<row><c t=\"str\"><v>ash</v></c>".to_owned() + &formula.repeat(5) + "</row>";
    let pieces = [(HEAD, 1), (rows.as_str(), 20_000), (TAIL, 1)];
    let read = try_read("formula cells", Book::sheet(&pieces)).unwrap();
    assert!(read.findings.iter().any(|finding| finding.code == Code::CellNotPlain));
    assert!(read.findings.len() < 60, "{}", read.findings.len());
    let shared =
        "<c r=\"B3\"><f t=\"shared\" ref=\"A1:XFD1048576\" si=\"4294967295\">1</f></c>";
    let merged = "</sheetData><mergeCells><mergeCell ref=\"B2:XFD1048576\"/></mergeCells>";
    let pieces = [(HEAD, 1), ("<row>", 1), (shared, 1), ("</row>", 1), (merged, 1)];
    try_read("one formula and one merged area over all", Book::sheet(&pieces)).unwrap();
}

#[test]
fn bombs_do_not_unpack() {
    let _turn = turn();
    let zip_bomb = Book::sheet(&[(HEAD, 1), ("        ", 256 * MIB / 8), (TAIL, 1)]);
    let error = try_read("zip bomb", zip_bomb).unwrap_err();
    assert!(matches!(error, TableError::TooLarge { .. }), "{error:?}");
    let tag = Book::sheet(&[(HEAD, 1), ("<c ", 1), ("a=\"b\" ", 20 * MIB), (TAIL, 1)]);
    let error = try_read("one endless tag", tag).unwrap_err();
    assert!(matches!(error, TableError::TooLarge { .. }), "{error:?}");
    let deep = Book::sheet(&[(HEAD, 1), ("<a>", 5 * MIB), (TAIL, 1)]);
    assert!(try_read("five million open tags", deep).is_ok());
    let text = Book::sheet(&[
        (HEAD, 1),
        ("<row><c t=\"str\"><v>", 1),
        ("x", 50 * MIB),
        ("</v></c></row>", 1),
        (TAIL, 1),
    ]);
    let read = try_read("one endless text", text).unwrap();
    assert!(read.findings.iter().any(|finding| finding.code == Code::TooLarge));
}

#[test]
fn strings_are_counted() {
    let _turn = turn();
    let mut book = Book::new();
    book.part("xl/worksheets/sheet1.xml", &[(HEAD, 1), (TAIL, 1)]);
    book.part(
        "xl/sharedStrings.xml",
        &[("<sst uniqueCount=\"99999999999\">", 1), ("<si/>", 2 * MIB)],
    );
    assert!(try_read("two million shared strings", book.bytes()).is_ok());
    // One long text that every cell shows.
    let mut book = Book::new();
    let row = "<row><c t=\"str\"><v>k</v></c><c t=\"s\"><v>0</v></c></row>";
    book.part("xl/worksheets/sheet1.xml", &[(HEAD, 1), (row, 500_000), (TAIL, 1)]);
    book.part(
        "xl/sharedStrings.xml",
        &[("<sst><si><t>", 1), ("word ", 700), ("</t></si></sst>", 1)],
    );
    let read = try_read("one long text in every cell", book.bytes()).unwrap();
    assert!(read.findings.iter().any(|finding| finding.code == Code::TooLarge));
    let mut book = Book::new();
    book.part("xl/worksheets/sheet1.xml", &[(HEAD, 1), (TAIL, 1)]);
    book.part("xl/styles.xml", &[("<styleSheet><cellXfs>", 1), ("<xf/>", 2 * MIB)]);
    assert!(try_read("two million styles", book.bytes()).is_ok());
}

#[test]
fn lies_are_not_believed() {
    let _turn = turn();
    let honest = Book::sheet(&[(HEAD, 1), ("        ", 100 * MIB / 8), (TAIL, 1)]);
    // Declared sizes of 1 in every header: what comes out is counted, not believed.
    for size in [1_u32, u32::MAX - 1] {
        let mut bytes = honest.clone();
        for at in 0..bytes.len() - 30 {
            let place = match &bytes[at..at + 4] {
                b"PK\x03\x04" => at + 22,
                b"PK\x01\x02" => at + 24,
                _ => continue,
            };
            bytes[place..place + 4].copy_from_slice(&size.to_le_bytes());
        }
        assert!(try_read("lying sizes", bytes).is_err());
    }
    let half = honest[..honest.len() / 2].to_vec();
    assert!(matches!(try_read("truncated zip", half), Err(TableError::Broken { .. })));
    let cut = Book::sheet(&[(HEAD, 1), ("<row><c t=\"str\"><v>ivy</v></c><c t=\"s", 1)]);
    let read = try_read("truncated sheet", cut).unwrap();
    assert_eq!(read.matrix.taxa().len(), 2);
    assert!(read.findings.iter().any(|finding| finding.code == Code::LeftOut));
    // A directory of very many parts.
    let mut book = Book::new();
    (0..60_000).for_each(|at| book.part(&format!("{at}"), &[]));
    assert!(try_read("sixty thousand parts", book.bytes()).is_err());
}

#[test]
fn what_is_shared_is_counted_each_time() {
    let _turn = turn();
    // Small cells that mean much: each is thirteen counts.
    let row = "k,".to_owned() + &vec!["0-12"; 250].join(",") + "\n";
    let heading =
        "kind,".to_owned() + &(0..250).map(|at| format!("c{at}")).collect::<Vec<_>>().join(",");
    let text = format!("{heading}\n{}", row.repeat(1_600));
    let read = try_read("four hundred thousand wide counts", text.into()).unwrap();
    assert!(read.findings.iter().any(|finding| finding.code == Code::TooLarge));
    let states = (0..64).map(|at| format!("s{at}")).collect::<Vec<_>>().join(" or ");
    let row = "k,".to_owned() + &vec![states.as_str(); 20].join(",") + "\n";
    let text = format!("{heading}\n{}", row.repeat(2_000));
    let read = try_read("all states in every cell", text.into()).unwrap();
    assert!(read.findings.iter().any(|finding| finding.code == Code::TooLarge));
}

#[test]
fn endless_texts_are_cut_or_refused() {
    let _turn = turn();
    let line = "kind,edge\nhazel,toothed\n".to_owned() + &",".repeat(20 * MIB);
    assert_eq!(try_read("a line of commas", line.into()).unwrap().matrix.taxa().len(), 1);
    let lines = "kind,edge\nhazel,toothed\n".to_owned() + &"\n".repeat(20 * MIB);
    assert_eq!(try_read("empty lines", lines.into()).unwrap().matrix.taxa().len(), 1);
    let quote = "kind,edge\nhazel,toothed\n\"".to_owned() + &"x,\n".repeat(6 * MIB);
    assert!(try_read("a mark that never closes", quote.into()).is_ok());
    let kinds = "kind,edge\n".to_owned() + &"k,a\n".repeat(5 * MIB);
    let read = try_read("five million kinds of one name", kinds.into()).unwrap();
    assert!(read.findings.len() < 30);
    let windows = vec![0x80_u8; 24 * MIB];
    assert!(try_read("euro signs", windows).is_err());
    let large = vec![b'x'; 25 * MIB];
    assert!(matches!(try_read("too many bytes", large), Err(TableError::TooLarge { .. })));
}
