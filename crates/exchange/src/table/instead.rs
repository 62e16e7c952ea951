//! What a file is that was given for a table, or for something else, by mistake.
//!
//! From the name of a file and its bytes to what people call it, and what to do with it. It
//! trusts no ending of a name but those of files that only point to others. That a text is
//! writing and no table is for [`super::no_table`] to say.
//!
//! Sources: the first bytes as the formats' own specifications give them; in a zip the names of
//! what it holds (ISO/IEC 29500-2, ISO/IEC 26300-2), which stand in it unpacked.

use super::no_table;

/// What a file is instead.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the names are what `said` says")]
pub enum Instead {
    /// Nothing is in it.
    Empty,
    Pdf,
    Picture,
    Photograph,
    /// RTF.
    TextDocument,
    WordDocument,
    LibreOffice,
    Numbers,
    /// A small file that only points to a sheet on the internet.
    GoogleSheet,
    /// What Excel keeps beside an open table.
    ExcelLock,
    /// SQLite; whether it is a collection is for the keeper of collections to say.
    Database,
    PackedCollection,
    /// An XLSX, or an older one.
    Spreadsheet,
    Zip,
    NotText,
    WebPage,
    Json,
    KeyInWords,
    Writing,
    /// Text whose columns are lined up with spaces.
    LinedUp,
}

impl Instead {
    /// What it is: `a PDF`.
    pub fn said(self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::Pdf => "a PDF",
            Self::Picture => "a picture",
            Self::Photograph => "a photograph",
            Self::TextDocument => "a text document",
            Self::WordDocument => "a Word document",
            Self::LibreOffice => "a LibreOffice file, which is not read here",
            Self::Numbers => "a Numbers file, which is not read here",
            Self::GoogleSheet => "a link to a Google sheet, and the table is not in it",
            Self::ExcelLock => "what Excel keeps while the table is open",
            Self::Database => "a database",
            Self::PackedCollection => "a packed collection",
            Self::Spreadsheet => "a spreadsheet",
            Self::Zip => "a zip without sheets",
            Self::NotText => "not text",
            Self::WebPage => "a web page",
            Self::Json => "a file that programs exchange (JSON)",
            Self::KeyInWords => "a key in words",
            Self::Writing => "writing, not rows and columns",
            Self::LinedUp => "text whose columns are lined up with spaces",
        }
    }

    /// What to do, where a table is wanted.
    pub fn remedy(self) -> &'static str {
        match self {
            Self::Pdf => {
                "A PDF is made for paper. Give the spreadsheet that it was made from, or type \
                 the table as CSV, one kind a row."
            }
            Self::Picture | Self::Photograph => {
                "Spinney cannot read writing in a picture. Type the table into a spreadsheet."
            }
            Self::WordDocument | Self::TextDocument => {
                "Copy its table into a spreadsheet, and save that as XLSX or CSV."
            }
            Self::LibreOffice => "Open it there and use Save As to make an XLSX or a CSV.",
            Self::Numbers => "Open it in Numbers, choose Export To, then Excel or CSV.",
            Self::GoogleSheet => {
                "Open it in the browser and choose File, Download, Microsoft Excel."
            }
            Self::ExcelLock => "Give the table itself: its name is the same without ~$.",
            Self::Zip => "If the table is in it, unpack it first, and give the table alone.",
            Self::LinedUp => {
                "Put a comma between the cells, or type them into a spreadsheet: one kind a row."
            }
            _ => {
                "Give a spreadsheet saved as XLSX or CSV, or paste its cells: one kind a row, its \
                 name first, below a row of headings."
            }
        }
    }

    /// Whether it is a text, in which something else than a table may be written.
    pub fn is_text(self) -> bool {
        matches!(
            self,
            Self::WebPage | Self::Json | Self::KeyInWords | Self::Writing | Self::LinedUp
        )
    }
}

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
