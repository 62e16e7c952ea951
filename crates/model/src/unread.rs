//! Why nothing of a file could be read (a table, a key, a journal, a packed collection), and what
//! a file is that was given for a table by mistake. Whoever reads it says which file it is.

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
    /// No column says which kind each find is.
    NoKindColumn {
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

/// Why a file of programs holds no key, or not what is claimed of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KeyFileError {
    /// It is not JSON, or not of our shape.
    NotOurs {
        /// The line, counted from 1.
        line: usize,
        /// The column, counted from 1.
        column: usize,
    },
    /// It stops in the middle of this line.
    CutOff {
        /// The line, counted from 1.
        line: usize,
    },
    /// A field of the key that this program does not know.
    Unknown {
        /// The name of the field.
        field: String,
    },
    /// It holds no key.
    NoKey,
    /// A cost as a number and as an exact fraction that are not the same.
    Disagree {
        /// The field with the number.
        field: &'static str,
        /// What stands there.
        number: String,
        /// What stands in the field of the same name with `_exact` behind it.
        exact: String,
    },
    /// A line of the proof that is none of ours.
    Line {
        /// The line.
        line: String,
    },
    /// A proof in a form that is none of ours.
    Form {
        /// The number of the form.
        form: u32,
    },
    /// A cost that is no number of ours.
    Cost {
        /// The field.
        field: &'static str,
    },
}

/// Why a line of a journal cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LineError {
    /// Written by a later version of this program, in a form of this number.
    Newer(u32),
    /// Not a line of a journal, or damaged.
    NotALine,
}

/// Why a packed collection cannot be packed or unpacked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BundleError {
    /// Not a zip, or without a journal in it.
    NotABundle,
    /// Larger than any collection, perhaps on purpose.
    TooLarge,
    /// It stops in the middle.
    CutOff,
    /// A part of it is not what it was.
    Damaged,
}

/// Why there is no empty table to fill in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TemplateError {
    /// This is no date.
    Date(String),
    /// The writer of workbooks refused something: what it says.
    Writer(String),
}
