//! Making and opening the file of a collection.

use std::fs::{self, OpenOptions};
use std::io::ErrorKind;
use std::path::Path;
use std::time::Duration;

use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};

use crate::{Store, StoreError};

/// The form of the file; older forms are opened.
pub(crate) const FORM: i64 = 1;
/// `SPNY`: tells our files from other SQLite files.
const OURS: i64 = 0x5350_4E59;
/// How long to wait for another program that is just writing.
const PATIENCE: Duration = Duration::from_secs(2);

const TABLES: &str = "
    CREATE TABLE journal (number INTEGER PRIMARY KEY, line BLOB NOT NULL) STRICT;
    CREATE TABLE pictures (hash BLOB NOT NULL UNIQUE, bytes BLOB NOT NULL) STRICT;
    CREATE TABLE facts (name TEXT PRIMARY KEY, value INTEGER NOT NULL) STRICT;
    INSERT INTO facts (name, value) VALUES ('epoch', 1);
";

/// Whether the beginning of a file is that of a collection.
pub(crate) fn is_collection(bytes: &[u8]) -> bool {
    // SQLite keeps the application's id behind the first 68 bytes (its file format, 1.3).
    let id = bytes.get(68..72).and_then(|id| id.try_into().ok()).map(u32::from_be_bytes);
    bytes.starts_with(b"SQLite format 3\0") && id.map(i64::from) == Some(OURS)
}

pub(crate) fn create(path: &Path) -> Result<Store, StoreError> {
    // The file is claimed before anything is written, so that two programs cannot both make it.
    let claimed = match OpenOptions::new().write(true).create_new(true).open(path) {
        Ok(_) => true,
        // An empty file is what is left of a beginning that was cut off, or another program's
        // that is just beginning: it is not ours to take away.
        Err(error) if error.kind() == ErrorKind::AlreadyExists && is_empty(path) => false,
        Err(error) if error.kind() == ErrorKind::AlreadyExists => {
            return Err(StoreError::Exists { path: path.to_owned() });
        }
        Err(error) => return Err(of_io(path, &error)),
    };
    let made = connect(path).and_then(|connection| {
        connection.execute_batch(&format!(
            "BEGIN IMMEDIATE; {TABLES} PRAGMA application_id = {OURS}; \
             PRAGMA user_version = {FORM}; COMMIT;"
        ))?;
        Ok(connection)
    });
    match made {
        Ok(connection) => Ok(Store { connection, path: path.to_owned(), epoch: 1 }),
        Err(error) => {
            match (claimed, is_empty(path)) {
                // An empty file would look like a collection that lost everything.
                (true, true) => {
                    let _ = fs::remove_file(path);
                }
                // Another program was first.
                (false, false) => return open(path),
                _ => {}
            }
            Err(StoreError::of(path, &error))
        }
    }
}

pub(crate) fn open(path: &Path) -> Result<Store, StoreError> {
    let wrong = |error| StoreError::of(path, &error);
    match fs::metadata(path) {
        Ok(file) if file.is_file() => {}
        Ok(_) => return Err(StoreError::NotACollection { path: path.to_owned() }),
        Err(error) if error.kind() == ErrorKind::NotFound => {
            return Err(StoreError::Missing { path: path.to_owned() });
        }
        Err(error) => return Err(of_io(path, &error)),
    }
    let connection = connect(path).map_err(wrong)?;
    let number = |name| connection.pragma_query_value(None, name, |row| row.get::<_, i64>(0));
    if number("application_id").map_err(wrong)? != OURS {
        return Err(StoreError::NotACollection { path: path.to_owned() });
    }
    let version = number("user_version").map_err(wrong)?;
    if version > FORM {
        return Err(StoreError::Newer { path: path.to_owned(), version });
    }
    let epoch = epoch(&connection).map_err(wrong)?;
    Ok(Store { connection, path: path.to_owned(), epoch })
}

/// How often the journal was rewritten, counted from 1.
pub(crate) fn epoch(connection: &Connection) -> rusqlite::Result<i64> {
    connection
        .prepare_cached("SELECT value FROM facts WHERE name = 'epoch'")?
        .query_row([], |row| row.get(0))
}

fn is_empty(path: &Path) -> bool {
    fs::metadata(path).is_ok_and(|file| file.is_file() && file.len() == 0)
}

fn connect(path: &Path) -> rusqlite::Result<Connection> {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection = Connection::open_with_flags(path, flags)?;
    connection.busy_timeout(PATIENCE)?;
    // A file from elsewhere may hold triggers and views; ours has none.
    for (config, on) in [
        (DbConfig::SQLITE_DBCONFIG_DEFENSIVE, true),
        (DbConfig::SQLITE_DBCONFIG_ENABLE_TRIGGER, false),
        (DbConfig::SQLITE_DBCONFIG_ENABLE_VIEW, false),
    ] {
        connection.set_db_config(config, on)?;
    }
    // EXTRA is FULL, and the folder is synced too once the rollback journal is gone. On a Mac
    // only a full fsync empties the drive's own cache.
    connection.execute_batch(
        "PRAGMA journal_mode = DELETE; PRAGMA synchronous = EXTRA; PRAGMA secure_delete = ON; \
         PRAGMA fullfsync = ON; PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON;",
    )?;
    Ok(connection)
}

fn of_io(path: &Path, error: &std::io::Error) -> StoreError {
    let path = path.to_owned();
    match error.kind() {
        ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => {
            StoreError::ReadOnly { path }
        }
        ErrorKind::NotFound => StoreError::Missing { path },
        ErrorKind::StorageFull => StoreError::Full { path },
        _ => StoreError::Other { path, why: crate::error::ITS_PLACE.to_owned() },
    }
}
