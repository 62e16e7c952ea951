//! What a file is that was given for a table, or for something else, by mistake.
//!
//! From the name of a file and its bytes to what people call it, and what to do with it. It
//! trusts no ending of a name but those of files that only point to others. That a text is
//! writing and no table is for [`super::no_table`] to say.
//!
//! Sources: the first bytes as the formats' own specifications give them; in a zip the names of
//! what it holds (ISO/IEC 29500-2, ISO/IEC 26300-2), which stand in it unpacked.

use spinney_model::Instead;

use super::no_table;

/// Files that people pick by mistake, by their first bytes.
const BEGINNINGS: [(&[u8], Instead); 8] = [
    (b"%PDF", Instead::Pdf),
    (b"\x89PNG", Instead::Picture),
    (b"\xff\xd8\xff", Instead::Photograph),
    (b"GIF8", Instead::Picture),
    (b"{\\rtf", Instead::TextDocument),
    (b"SQLite format 3", Instead::Database),
    (COMPOUND, Instead::Spreadsheet),
    (b"\x00\x00\x01\x00", Instead::Picture),
];

/// The first bytes of the older office files, and of encrypted new ones.
pub(super) const COMPOUND: &[u8] = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1";

/// What zips hold, by which one tells them; the first that is there says it.
const IN_ZIPS: [(&[u8], Instead); 6] = [
    (b"xl/workbook.", Instead::Spreadsheet),
    (b"word/document.xml", Instead::WordDocument),
    (b"application/vnd.oasis.opendocument", Instead::LibreOffice),
    (b"Index/Document.iwa", Instead::Numbers),
    (b"Index/Tables/", Instead::Numbers),
    (b"journal.jsonl", Instead::PackedCollection),
];

/// So much of the two ends of a zip is looked at for names, in bytes.
const ENDS: usize = 1 << 16;

/// Whether a file is a zip.
pub(super) fn is_zip(bytes: &[u8]) -> bool {
    bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(b"PK\x05\x06")
}

/// What a file is that may be anything; None: a text that can be a table or a key.
pub fn what_it_is(name: &str, bytes: &[u8]) -> Option<Instead> {
    let file = name.rsplit(['/', '\\']).next().unwrap_or_default();
    if file.starts_with("~$") {
        return Some(Instead::ExcelLock);
    }
    if is_zip(bytes) {
        let ends =
            [&bytes[..bytes.len().min(ENDS)], &bytes[bytes.len().saturating_sub(ENDS)..]];
        let holds = |part: &[u8]| {
            ends.iter().any(|end| end.windows(part.len()).any(|window| window == part))
        };
        let known = IN_ZIPS.iter().find(|(part, _)| holds(part));
        return Some(known.map_or(Instead::Zip, |(_, what)| *what));
    }
    if let Some((_, what)) = BEGINNINGS.iter().find(|(start, _)| bytes.starts_with(start)) {
        return Some(*what);
    }
    let text = super::source::decode(bytes);
    if text.trim_start_matches('\u{feff}').trim().is_empty() {
        return Some(Instead::Empty);
    }
    if text.contains('\0') {
        return Some(Instead::NotText);
    }
    no_table::by_its_beginning(&text)
}

#[cfg(test)]
mod tests {
    use super::{Instead, what_it_is};

    #[test]
    fn files_are_known_by_what_is_in_them_and_not_by_their_names() {
        let zip = |part: &str| [b"PK\x03\x04 .. ", part.as_bytes()].concat();
        for (bytes, what) in [
            (zip("xl/workbook.xml"), Some(Instead::Spreadsheet)),
            (zip("word/document.xml"), Some(Instead::WordDocument)),
            (
                zip("mimetypeapplication/vnd.oasis.opendocument.text"),
                Some(Instead::LibreOffice),
            ),
            (zip("Index/Document.iwa"), Some(Instead::Numbers)),
            (zip("journal.jsonl"), Some(Instead::PackedCollection)),
            (zip("photos/1.jpg"), Some(Instead::Zip)),
            (b"%PDF-1.4".to_vec(), Some(Instead::Pdf)),
            (b" \n".to_vec(), Some(Instead::Empty)),
            (b"\xef\xbb\xbf\n".to_vec(), Some(Instead::Empty)),
            (
                br#"{"url":"https://docs.google.com/x","doc_id":"1"}"#.to_vec(),
                Some(Instead::GoogleSheet),
            ),
            (br#"{"couplets":[]}"#.to_vec(), Some(Instead::Json)),
            (b"kind,edge\nhazel,toothed\n".to_vec(), None),
            (b"1. Is it lobed? Yes -> 2, No -> 3\n".to_vec(), None),
        ] {
            assert_eq!(what_it_is("file.csv", &bytes), what, "{bytes:?}");
        }
        assert_eq!(what_it_is("walk/~$finds.xlsx", b"x"), Some(Instead::ExcelLock));
    }
}
