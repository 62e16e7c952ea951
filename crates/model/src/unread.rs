//! Why nothing of a table could be read, and what a file is that was given for one by mistake.

use crate::Finding;

/// Why nothing of a table could be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TableError {
    /// Something that never was a table.
    NotATable {
        /// The file.
        name: String,
        /// What it is instead.
        what: Instead,
    },
    /// A table in a format that is not read.
    OldFormat {
        /// The file.
        name: String,
        /// The format.
        format: OldFormat,
    },
    /// A workbook that asks for a password.
    Protected {
        /// The file.
        name: String,
    },
    /// Larger than any table, perhaps on purpose.
    TooLarge {
        /// The file.
        name: String,
    },
    /// The table is on another sheet.
    OtherSheet {
        /// The first sheet.
        name: String,
        /// The sheet that looks like one.
        other: String,
    },
    /// A file beside the table that is another one than it was given for.
    OtherPart {
        /// The file.
        name: String,
        /// The sheet that it is: `characters`.
        is: &'static str,
        /// The sheet for which it was given.
        wanted: &'static str,
    },
    /// A damaged workbook.
    Broken {
        /// The file.
        name: String,
    },
    /// No row names a kind.
    NoKinds {
        /// The sheet or file.
        name: String,
    },
    /// Some of it is over a limit and would be lost without a word.
    DoesNotFit {
        /// What, and where.
        what: Box<Finding>,
    },
}

/// A format of tables that is not read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OldFormat {
    /// An office file of before 2007.
    Office,
    /// An OpenDocument file.
    OpenDocument,
}

/// What a file is instead.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the names say it")]
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
    /// Whether it is a text, in which something else than a table may be written.
    pub fn is_text(self) -> bool {
        matches!(
            self,
            Self::WebPage | Self::Json | Self::KeyInWords | Self::Writing | Self::LinedUp
        )
    }
}
