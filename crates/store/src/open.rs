//! Making and opening the file of a collection.

use std::fs::{self, OpenOptions};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};

use crate::form::{self, FORM};
use crate::head::{Beginning, OURS};
use crate::seal::Whole;
use crate::{Fault, Store, StoreError};

/// So many forms later are a newer program's; a number beyond is one that was changed.
const NEAR: i64 = 16;
/// How long to wait for another program that is just writing.
const PATIENCE: Duration = Duration::from_secs(2);

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
        connection.execute_batch("BEGIN IMMEDIATE")?;
        connection.execute_batch(&format!("PRAGMA application_id = {OURS}"))?;
        form::make(&connection)?;
        connection.execute_batch("COMMIT")?;
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
    let damaged = || StoreError::Damaged { path: path.to_owned() };
    let as_begun = || match Beginning::of(path) {
        Ok(Beginning::Ours) => Ok(()),
        Ok(Beginning::Damaged) => Err(damaged()),
        Ok(Beginning::Others) => Err(StoreError::NotACollection { path: path.to_owned() }),
        Err(error) => Err(of_io(path, &error)),
    };
    // A journal that was left beside it means that its writer was cut off: SQLite takes back what
    // was begun when it opens the file.
    let cut_off = fs::metadata(journal_of(path)).is_ok_and(|journal| journal.len() > 0);
    if !cut_off {
        as_begun()?;
    }
    let connection = connect(path).map_err(wrong)?;
    let version = form::of(&connection).map_err(wrong)?;
    if cut_off {
        as_begun()?;
    }
    let tables = form::of_tables(&connection).map_err(wrong)?;
    if tables != Some(version) {
        return Err(match tables {
            _ if (FORM + 1..=FORM + NEAR).contains(&version) => {
                StoreError::Newer { path: path.to_owned(), version }
            }
            _ => damaged(),
        });
    }
    looks_whole(&connection, "quick_check").map_err(wrong)?;
    let epoch = epoch(&connection).map_err(wrong)?;
    if version > 1 {
        let whole = Whole::read(&connection).map_err(wrong)?;
        whole.filter(|whole| whole.epoch == epoch).ok_or_else(damaged)?;
    }
    Ok(Store { connection, path: path.to_owned(), epoch })
}

/// What SQLite itself says of its pages.
pub(crate) fn looks_whole(connection: &Connection, check: &str) -> rusqlite::Result<()> {
    let said: String =
        connection.query_row(&format!("PRAGMA {check}(1)"), [], |row| row.get(0))?;
    if said == "ok" { Ok(()) } else { Err(rusqlite::Error::QueryReturnedNoRows) }
}

/// The file that SQLite keeps beside another one while it writes.
fn journal_of(path: &Path) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push("-journal");
    PathBuf::from(name)
}

/// A path that SQLite takes for nothing but a path: `:memory:` and `file:…` mean something else
/// to it, and are names of files like any other to a person.
pub(crate) fn plainly(path: &Path) -> PathBuf {
    std::path::absolute(path).unwrap_or_else(|_| Path::new(".").join(path))
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
    let connection = Connection::open_with_flags(plainly(path), flags)?;
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

pub(crate) fn of_io(path: &Path, error: &std::io::Error) -> StoreError {
    let path = path.to_owned();
    match error.kind() {
        ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => {
            StoreError::ReadOnly { path }
        }
        ErrorKind::NotFound => StoreError::Missing { path },
        ErrorKind::StorageFull => StoreError::Full { path },
        _ => StoreError::Other { path, why: Fault::Place },
    }
}
