//! Why a file could not be opened or written, in sentences.

use std::fmt;
use std::path::{Path, PathBuf};

use rusqlite::ErrorCode;

/// Why a file could not be opened or written.
#[derive(Clone, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "every variant with a path is about the file at that path")]
pub enum StoreError {
    /// There is no such file.
    Missing { path: PathBuf },
    /// There is a file already.
    Exists { path: PathBuf },
    /// Something else than a collection.
    NotACollection { path: PathBuf },
    /// Kept by a later version of this program.
    Newer { path: PathBuf, version: i64 },
    /// The file or its folder may not be written to.
    ReadOnly { path: PathBuf },
    /// Another program holds the file.
    Locked { path: PathBuf },
    /// The disk is full.
    Full { path: PathBuf },
    /// The file is damaged.
    Damaged { path: PathBuf },
    /// Another program has written meanwhile; the last line is this one now.
    Moved { head: u64 },
    /// Another program has removed something for good meanwhile; open the file anew.
    Rewritten,
    /// Something else went wrong with the file or its disk.
    Other { path: PathBuf, why: String },
}

/// What people can know of a disk that fails. The numbers and names of SQLite and of the system
/// say nothing to them.
pub(crate) const ITS_PLACE: &str =
    "its disk, or the place where it is, does not work as it should";

impl StoreError {
    pub(crate) fn of(path: &Path, error: &rusqlite::Error) -> Self {
        let path = path.to_owned();
        // Our statements are always the same: where one does not fit, the tables are not ours.
        let unfit = match error {
            rusqlite::Error::SqliteFailure(failure, _) => failure.extended_code == 1,
            rusqlite::Error::SqlInputError { .. } => true,
            rusqlite::Error::QueryReturnedNoRows
            | rusqlite::Error::IntegralValueOutOfRange(..)
            | rusqlite::Error::FromSqlConversionFailure(..)
            | rusqlite::Error::InvalidColumnType(..) => true,
            _ => false,
        };
        if unfit {
            return Self::Damaged { path };
        }
        match error.sqlite_error_code() {
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Locked { path },
            Some(ErrorCode::ReadOnly | ErrorCode::PermissionDenied | ErrorCode::CannotOpen) => {
                Self::ReadOnly { path }
            }
            Some(ErrorCode::DiskFull) => Self::Full { path },
            Some(ErrorCode::NotADatabase) => Self::NotACollection { path },
            Some(ErrorCode::DatabaseCorrupt) => Self::Damaged { path },
            Some(ErrorCode::OutOfMemory) => {
                Self::Other { path, why: "there is not enough memory".to_owned() }
            }
            Some(ErrorCode::TooBig) => {
                Self::Other { path, why: "something in it is too large to be kept".to_owned() }
            }
            _ => Self::Other { path, why: ITS_PLACE.to_owned() },
        }
    }

    /// The same of another place: of the name that a person knows, where a file was being made
    /// under another one.
    #[must_use]
    pub fn of_place(mut self, made: &Path, known: &Path) -> Self {
        match &mut self {
            Self::Missing { path }
            | Self::Exists { path }
            | Self::NotACollection { path }
            | Self::Newer { path, .. }
            | Self::ReadOnly { path }
            | Self::Locked { path }
            | Self::Full { path }
            | Self::Damaged { path }
            | Self::Other { path, .. }
                if path == made =>
            {
                known.clone_into(path);
            }
            _ => {}
        }
        self
    }

    /// What to do about it.
    pub fn remedy(&self) -> &'static str {
        match self {
            Self::Missing { .. } => "Look whether its name is spelt as on the disk.",
            Self::Exists { .. } => "Choose another name, or open the one that is there.",
            Self::NotACollection { .. } => {
                "Give the file of a collection; a table is taken in on the page “Our finds”."
            }
            Self::Newer { .. } => "Open it with the newer Spinney that it was made with.",
            Self::ReadOnly { .. } => {
                "Copy the file into a folder of your own and open the copy. Nothing was changed."
            }
            Self::Locked { .. } => {
                "Close the other program, or wait until it is done, and try again. Nothing was \
                 changed."
            }
            Self::Full { .. } => {
                "Make room on the disk and try again. Nothing was changed, and nothing is lost."
            }
            Self::Damaged { .. } => {
                "“spinney rescue” saves what can be read into a new file. This one was not changed."
            }
            Self::Moved { .. } | Self::Rewritten => "Look at it as it is now, and try again.",
            Self::Other { .. } => "Look whether the disk is still there, and try again.",
        }
    }
}

impl fmt::Display for StoreError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Missing { path } => write!(f, "There is no file {}.", path.display()),
            Self::Exists { path } => write!(f, "There is a file {} already.", path.display()),
            Self::NotACollection { path } => {
                write!(f, "{} is no collection of Spinney's.", path.display())
            }
            Self::Newer { path, version } => write!(
                f,
                "{} was kept by a newer Spinney (its form is {version}; this one knows {}).",
                path.display(),
                crate::form::FORM
            ),
            Self::ReadOnly { path } => {
                write!(f, "{} may not be written to here.", path.display())
            }
            Self::Locked { path } => {
                write!(f, "Another program holds {}.", path.display())
            }
            Self::Full { path } => {
                write!(f, "The disk is full: {} cannot grow.", path.display())
            }
            Self::Damaged { path } => write!(f, "{} is damaged.", path.display()),
            Self::Moved { head } => {
                write!(f, "Another window has written meanwhile (the last line is {head}).")
            }
            Self::Rewritten => {
                f.write_str("Another window has removed something for good meanwhile.")
            }
            Self::Other { path, why } => {
                write!(f, "{} could not be read or written: {why}.", path.display())
            }
        }
    }
}

impl std::error::Error for StoreError {}
