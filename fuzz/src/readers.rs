//! The readers, one function each: from bytes that anybody may have written to nothing.
//!
//! A reader must come back whatever the bytes are. Where a reader promises more (what it writes
//! is read again as the same), that is asserted too.

use std::io::{Cursor, Write};
use std::sync::OnceLock;

use spinney_exchange::bundle::Bundle;
use spinney_exchange::link::{self, Links};
use spinney_exchange::table::{self, Settings, Source, Sources};
use spinney_exchange::{journal, json, key_text};
use spinney_model::Matrix;
use spinney_store::{Hash, Store};
use zip::{CompressionMethod, ZipWriter, write::SimpleFileOptions};

use crate::scenery;

/// What it is called, the longest input that is tried, in bytes, and the reader.
pub(crate) type Reader = (&'static str, usize, fn(&[u8]));

/// The readers of files.
pub(crate) const READERS: &[Reader] = &[
    ("table-csv", 1_200, table_csv),
    ("table-xlsx", 16_000, table_xlsx),
    ("xlsx-parts", 4_000, xlsx_parts),
    ("second-sheets", 4_000, second_sheets),
    ("key-text", 1_000, key_text),
    ("key-json", 4_000, key_json),
    ("links", 1_000, links),
    ("bundle", 8_000, bundle),
    ("journal", 2_000, journal_lines),
    ("collection-file", 50_000, collection_file),
];

/// Cuts an input into parts: a line of five equals signs lies between two of them.
const BETWEEN: &[u8] = b"\n=====\n";

pub(crate) fn parts(bytes: &[u8]) -> Vec<&[u8]> {
    let mut parts = Vec::new();
    let mut rest = bytes;
    while let Some(at) = rest.windows(BETWEEN.len()).position(|window| window == BETWEEN) {
        parts.push(&rest[..at]);
        rest = &rest[at + BETWEEN.len()..];
    }
    parts.push(rest);
    parts
}

fn source(name: &str, bytes: &[u8]) -> Source {
    Source { name: name.to_owned(), bytes: bytes.to_vec() }
}

fn matrix() -> &'static Matrix {
    static MATRIX: OnceLock<Matrix> = OnceLock::new();
    MATRIX.get_or_init(scenery::matrix)
}

/// What was read is written and read again as the same table.
fn read_table(sources: &Sources) {
    let Ok(read) = table::read(sources, &Settings::default()) else { return };
    let sheets = table::write(&read.matrix);
    let again = Sources {
        table: source("table.csv", sheets.table.as_bytes()),
        characters: Some(source("characters.csv", sheets.characters.as_bytes())),
        kinds: Some(source("kinds.csv", sheets.kinds.as_bytes())),
        about: Some(source("about.csv", sheets.about.as_bytes())),
    };
    let again = table::read(&again, &Settings::default());
    let again = again.unwrap_or_else(|error| panic!("{error:?}: {}", sheets.table));
    same(&again.matrix, &read.matrix);
}

/// Says where the first difference is, since a table is long.
fn same(again: &Matrix, read: &Matrix) {
    if again != read {
        let (again, read) = (format!("{again:?}"), format!("{read:?}"));
        let same = again.bytes().zip(read.bytes()).take_while(|(a, b)| a == b).count();
        let near = |text: &str| {
            let from = text.floor_char_boundary(same.saturating_sub(200));
            text[from..text.floor_char_boundary(same + 100)].to_owned()
        };
        panic!("written and read again:\n  {}\nis not\n  {}", near(&again), near(&read));
    }
}

fn table_csv(bytes: &[u8]) {
    read_table(&Sources { table: source("table.csv", bytes), ..Sources::default() });
    let _ = table::typed_sheets(&[source("table.csv", bytes)]);
}

fn table_xlsx(bytes: &[u8]) {
    read_table(&Sources { table: source("table.xlsx", bytes), ..Sources::default() });
}

/// A workbook put together from its parts, so that the fuzzer need not find checksums: the list of
/// sheets, the sheets' addresses, the shared texts, the styles, then sheets.
fn xlsx_parts(bytes: &[u8]) {
    let parts = parts(bytes);
    let names = [
        "xl/workbook.xml",
        "xl/_rels/workbook.xml.rels",
        "xl/sharedStrings.xml",
        "xl/styles.xml",
    ];
    let names = names.into_iter().map(str::to_owned);
    let names = names.chain((1..).map(|number| format!("xl/worksheets/sheet{number}.xml")));
    table_xlsx(&zip(names.zip(parts)));
}

fn zip<'b>(files: impl Iterator<Item = (String, &'b [u8])>) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default().compression_method(CompressionMethod::Stored);
    for (name, bytes) in files {
        zip.start_file(name, options).expect("memory takes it");
        zip.write_all(bytes).expect("memory takes it");
    }
    zip.finish().expect("memory takes it").into_inner()
}

fn second_sheets(bytes: &[u8]) {
    let mut parts = parts(bytes).into_iter();
    let table = source("table.csv", parts.next().unwrap_or_default());
    let mut sheet = |name| parts.next().map(|bytes| source(name, bytes));
    let sources = Sources {
        table,
        characters: sheet("characters.csv"),
        kinds: sheet("kinds.csv"),
        about: sheet("about.csv"),
    };
    read_table(&sources);
    let sheets = [Some(sources.table), sources.characters, sources.kinds, sources.about];
    let _ = table::typed_sheets(&sheets.into_iter().flatten().collect::<Vec<_>>());
}

fn key_text(bytes: &[u8]) {
    let text = table::decode(bytes);
    let links = Links::default();
    let mut read = key_text::read(&text, matrix(), &links);
    link::link(&mut read.key, matrix(), &links);
    let _ = json::key(&read.key, matrix());
}

fn key_json(bytes: &[u8]) {
    let text = table::decode(bytes);
    if let Ok((key, _)) = json::read_key(&text, matrix()) {
        let written = json::key(&key, matrix());
        let (again, _) = json::read_key(&written, matrix()).expect("what we write is a key");
        assert_eq!(again, key, "the key changed by being written and read again");
    }
    let _ = json::read(&text, matrix());
}

fn links(bytes: &[u8]) {
    let (links, _) = Links::read(&table::decode(bytes), matrix());
    let written = links.write(matrix());
    let (again, _) = Links::read(&written, matrix());
    assert_eq!(again.write(matrix()), written, "links changed by being written and read again");
}

fn bundle(bytes: &[u8]) {
    let Ok(bundle) = Bundle::unpack(bytes) else { return };
    let packed = bundle.pack().expect("what was unpacked can be packed");
    let again = Bundle::unpack(&packed).expect("what we pack is a bundle");
    assert_eq!(again.lines, bundle.lines, "lines changed by being packed and unpacked again");
    assert_eq!(again.pictures, bundle.pictures, "pictures changed by being packed");
}

fn journal_lines(bytes: &[u8]) {
    for line in bytes.split(|byte| *byte == b'\n') {
        let Ok(entry) = journal::read(line) else { continue };
        let again = journal::read(&journal::write(&entry)).expect("what we write is a line");
        assert_eq!(again, entry, "a line changed by being written and read again");
    }
}

/// A file in memory where there is such a place, made afresh for each input.
fn collection_file(bytes: &[u8]) {
    let place =
        if cfg!(target_os = "linux") { "/dev/shm".into() } else { std::env::temp_dir() };
    let path = place.join(format!("spinney-fuzz-{}.spinney", std::process::id()));
    std::fs::write(&path, bytes).expect("the place for files can be written to");
    if let Ok(mut store) = Store::open(&path) {
        let _ = store.rows(0);
        for hash in store.pictures().unwrap_or_default() {
            let _: Option<Vec<u8>> = store.picture(hash).unwrap_or_default();
        }
        let _ = store.picture(Hash::of(b"nothing"));
        if let Ok(head) = store.head() {
            let _ = store.append(head, &[b"{}".to_vec()], &[b"picture".to_vec()]);
        }
    }
    for name in ["", "-journal", "-wal", "-shm"] {
        let mut file = path.clone().into_os_string();
        file.push(name);
        let _ = std::fs::remove_file(file);
    }
}
