//! Why a file could not be opened or written, as data: whoever keeps a collection here says it.

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
    Other { path: PathBuf, why: Fault },
}

/// What people can know of a disk that fails. The numbers and names of SQLite and of the system
/// say nothing to them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The disk, or the place of the file, does not work as it should.
    Place,
    /// The disk did not do what was asked of it.
    Disk,
    /// The disk did not take what was written to it.
    DiskWrite,
    /// There is not enough memory.
    NoMemory,
    /// Something in the file is too large to be kept.
    TooLarge,
}

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
            Some(ErrorCode::SystemIoFailure) => Self::Other { path, why: of_disk(error) },
            Some(ErrorCode::OutOfMemory) => Self::Other { path, why: Fault::NoMemory },
            Some(ErrorCode::TooBig) => Self::Other { path, why: Fault::TooLarge },
            _ => Self::Other { path, why: Fault::Place },
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
}

/// What a disk did not do. SQLite's own words say neither what nor to whom.
fn of_disk(error: &rusqlite::Error) -> Fault {
    let wrote = error.sqlite_error().is_some_and(|failure| {
        // SQLite documentation, "Result and Error Codes": SQLITE_IOERR_WRITE.
        failure.extended_code == 10 | (3 << 8)
    });
    if wrote { Fault::DiskWrite } else { Fault::Disk }
}
