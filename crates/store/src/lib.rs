//! Where a collection is kept: one file with a journal of lines and pictures by their hash.
//!
//! From bytes to bytes on a disk, and back. It knows nothing of what they mean. What
//! [`Store::append`] has acknowledged is on the disk, whatever happens then. The only crate
//! with SQL; `docs/decisions/` says why it is SQLite with a rollback journal.

mod error;
mod hash;
mod open;

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior, params};

pub use error::StoreError;
pub use hash::Hash;

/// Whether the first hundred bytes of a file are those of a collection.
pub fn is_collection(beginning: &[u8]) -> bool {
    open::is_collection(beginning)
}

/// One collection, one file.
#[derive(Debug)]
pub struct Store {
    connection: Connection,
    path: PathBuf,
    /// How often the journal had been rewritten when this was opened.
    epoch: i64,
}

/// A line of the journal.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// Its number; the first is 1, and none is left out.
    pub number: u64,
    /// Its bytes.
    pub bytes: Vec<u8>,
}

impl Store {
    /// Makes a new file.
    ///
    /// **Errors**: there is one already, or it cannot be made there.
    pub fn create(path: &Path) -> Result<Self, StoreError> {
        open::create(path)
    }

    /// Opens a file. One that cannot be written to can still be read.
    ///
    /// **Errors**: there is none, it is no collection, it is newer than this program, damaged,
    /// or held by another program.
    pub fn open(path: &Path) -> Result<Self, StoreError> {
        open::open(path)
    }

    /// Where it is.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// The number of the last line; 0: there is none.
    ///
    /// **Errors**: [`StoreError::Rewritten`] if another program has removed something for good
    /// since this was opened: open it anew.
    pub fn head(&self) -> Result<u64, StoreError> {
        let look = self.look()?;
        last_of(&look).map_err(|error| StoreError::of(&self.path, &error))
    }

    /// The lines after a number, in order.
    pub fn rows(&self, after: u64) -> Result<Vec<Row>, StoreError> {
        let look = self.look()?;
        let wrong = |error| StoreError::of(&self.path, &error);
        // SQLite counts no further than this.
        let after = after.min(i64::MAX as u64);
        let mut query = look
            .prepare_cached(
                "SELECT number, line FROM journal WHERE number > ?1 ORDER BY number",
            )
            .map_err(wrong)?;
        let row = |row: &rusqlite::Row<'_>| {
            Ok(Row { number: row.get::<_, i64>(0)? as u64, bytes: row.get(1)? })
        };
        let rows = query.query_map(params![after as i64], row).map_err(wrong)?;
        let rows: Vec<Row> = rows.collect::<Result<_, _>>().map_err(wrong)?;
        let whole = rows.iter().zip(after + 1..).all(|(row, number)| row.number == number);
        if whole { Ok(rows) } else { Err(StoreError::Damaged { path: self.path.clone() }) }
    }

    /// Appends lines and keeps pictures, all or nothing. Returns the number of the last line.
    ///
    /// **Guarantees**: when it returns, all of it is on the disk.
    /// **Errors**: [`StoreError::Moved`] if the last line is not `head` any more, because
    /// another program has written; then nothing is kept.
    pub fn append(
        &mut self,
        head: u64,
        rows: &[Vec<u8>],
        pictures: &[Vec<u8>],
    ) -> Result<u64, StoreError> {
        let path = self.path.clone();
        let wrong = |error| StoreError::of(&path, &error);
        let transaction = self.begin_after(head)?;
        for picture in pictures {
            transaction
                .prepare_cached("INSERT OR IGNORE INTO pictures (hash, bytes) VALUES (?1, ?2)")
                .and_then(|mut insert| {
                    insert.execute(params![Hash::of(picture).bytes(), picture])
                })
                .map_err(wrong)?;
        }
        write_rows(&transaction, head, rows).map_err(wrong)?;
        transaction.commit().map_err(wrong)?;
        Ok(head + rows.len() as u64)
    }

    /// The bytes of a picture; None: it is not here.
    ///
    /// **Errors**: [`StoreError::Damaged`] if its bytes are not what its name says.
    pub fn picture(&self, hash: Hash) -> Result<Option<Vec<u8>>, StoreError> {
        let picture: Option<Vec<u8>> = self
            .connection
            .prepare_cached("SELECT bytes FROM pictures WHERE hash = ?1")
            .and_then(|mut query| query.query_row([hash.bytes()], |row| row.get(0)).optional())
            .map_err(|error| StoreError::of(&self.path, &error))?;
        match picture {
            Some(bytes) if Hash::of(&bytes) != hash => {
                Err(StoreError::Damaged { path: self.path.clone() })
            }
            picture => Ok(picture),
        }
    }

    /// The hashes of all pictures, in their order.
    pub fn pictures(&self) -> Result<Vec<Hash>, StoreError> {
        hashes_of(&self.connection).map_err(|error| StoreError::of(&self.path, &error))
    }

    /// Removes for good: the journal is these lines from now on, numbered anew, and only these
    /// pictures stay. What is gone is written over, and the file is packed.
    ///
    /// **Errors**: as [`Store::append`]. Other programs that have the file open find out by
    /// [`StoreError::Rewritten`].
    pub fn rewrite(
        &mut self,
        head: u64,
        rows: &[Vec<u8>],
        keep: &BTreeSet<Hash>,
    ) -> Result<u64, StoreError> {
        let path = self.path.clone();
        let wrong = |error| StoreError::of(&path, &error);
        let epoch = self.epoch;
        let transaction = self.begin_after(head)?;
        transaction.execute("DELETE FROM journal", []).map_err(wrong)?;
        // Asked in here: a picture may have come without a line since the caller looked.
        let mut gone = hashes_of(&transaction).map_err(wrong)?;
        gone.retain(|hash| !keep.contains(hash));
        for hash in gone {
            transaction
                .execute("DELETE FROM pictures WHERE hash = ?1", [hash.bytes()])
                .map_err(wrong)?;
        }
        write_rows(&transaction, 0, rows).map_err(wrong)?;
        transaction
            .execute("UPDATE facts SET value = value + 1 WHERE name = 'epoch'", [])
            .map_err(wrong)?;
        transaction.commit().map_err(wrong)?;
        self.epoch = epoch + 1;
        // What goes was written over before the line above returned. Packing only makes the
        // file smaller: if another program or a full disk stops it, the removal is done all the
        // same, and must not be reported as one that was not.
        let _ = self.connection.execute_batch("VACUUM");
        Ok(rows.len() as u64)
    }

    /// Begins to write after line `head`, if nobody has written or rewritten meanwhile.
    fn begin_after(&mut self, head: u64) -> Result<Transaction<'_>, StoreError> {
        let wrong = |error| StoreError::of(&self.path, &error);
        let transaction = self
            .connection
            .transaction_with_behavior(TransactionBehavior::Immediate)
            .map_err(wrong)?;
        if open::epoch(&transaction).map_err(wrong)? != self.epoch {
            return Err(StoreError::Rewritten);
        }
        match last_of(&transaction).map_err(wrong)? {
            last if last == head => Ok(transaction),
            last => Err(StoreError::Moved { head: last }),
        }
    }

    /// Lets the file grow to so many pages of 4 KiB only, as a full disk would.
    pub fn allow_pages(&mut self, pages: u32) -> Result<(), StoreError> {
        let wrong = |error| StoreError::of(&self.path, &error);
        self.connection
            .query_row(&format!("PRAGMA max_page_count = {pages}"), [], |_| Ok(()))
            .map_err(wrong)
    }

    /// One unchanging view of the file, so that nothing is removed between asking whether it
    /// is still the journal that was opened and reading it.
    fn look(&self) -> Result<Transaction<'_>, StoreError> {
        let wrong = |error| StoreError::of(&self.path, &error);
        let look = self.connection.unchecked_transaction().map_err(wrong)?;
        let now = open::epoch(&look).map_err(wrong)?;
        if now == self.epoch { Ok(look) } else { Err(StoreError::Rewritten) }
    }
}

fn last_of(connection: &Connection) -> rusqlite::Result<u64> {
    let last: i64 = connection
        .prepare_cached("SELECT COALESCE(MAX(number), 0) FROM journal")?
        .query_row([], |row| row.get(0))?;
    u64::try_from(last).map_err(|_| rusqlite::Error::IntegralValueOutOfRange(0, last))
}

fn hashes_of(connection: &Connection) -> rusqlite::Result<Vec<Hash>> {
    let mut query = connection.prepare_cached("SELECT hash FROM pictures ORDER BY hash")?;
    let hashes = query.query_map([], |row| row.get::<_, [u8; 32]>(0))?;
    hashes.map(|hash| hash.map(Hash::from_bytes)).collect()
}

fn write_rows(connection: &Connection, head: u64, rows: &[Vec<u8>]) -> rusqlite::Result<()> {
    let mut insert =
        connection.prepare_cached("INSERT INTO journal (number, line) VALUES (?1, ?2)")?;
    for (number, row) in (head + 1..).zip(rows) {
        insert.execute(params![number as i64, row])?;
    }
    Ok(())
}
