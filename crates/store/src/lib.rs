//! Where a collection is kept: one file with a journal of lines and pictures by their hash.
//!
//! From bytes to bytes on a disk, and back. It knows nothing of what they mean. What
//! [`Store::append`] has acknowledged is on the disk, whatever happens then. The only crate
//! with SQL; `docs/decisions/` says why it is SQLite with a rollback journal. Every line is sealed
//! (`seal`), so that a changed byte is found and not believed; [`Salvage`] reads what can be
//! read of a damaged file, and changes nothing in it.

mod error;
mod form;
mod hash;
mod head;
mod open;
mod salvage;
mod seal;

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior, params};

pub use error::{Fault, StoreError};
pub use hash::Hash;
pub use salvage::{Picture, Salvage, Saved};

use seal::Whole;

/// Whether the first hundred bytes of a file are those of a collection.
pub fn is_collection(beginning: &[u8]) -> bool {
    head::Beginning::of_bytes(beginning) != head::Beginning::Others
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
        self.last_of(&look)
    }

    /// How many lines there are after a number, and their bytes. None of them is held for it.
    pub fn size(&self, after: u64) -> Result<(u64, u64), StoreError> {
        let look = self.look()?;
        let wrong = |error| StoreError::of(&self.path, &error);
        let after = after.min(i64::MAX as u64) as i64;
        look.query_row(
            "SELECT count(*), coalesce(sum(length(line)), 0) FROM journal WHERE number > ?1",
            [after],
            |row| Ok((row.get::<_, i64>(0)? as u64, row.get::<_, i64>(1)? as u64)),
        )
        .map_err(wrong)
    }

    /// The lines after a number, in order.
    ///
    /// **Errors**: [`StoreError::Damaged`] if one of them is not what was kept, or not there.
    /// From 0, that none is missing and none was put in another's place is looked at too.
    pub fn rows(&self, after: u64) -> Result<Vec<Row>, StoreError> {
        let look = self.look()?;
        let wrong = |error| StoreError::of(&self.path, &error);
        let last = self.last_of(&look)?;
        // SQLite counts no further than this.
        let after = after.min(i64::MAX as u64);
        let sealed = form::of(&look).map_err(wrong)? > 1;
        let what = if sealed { "number, line, seal" } else { "number, line, NULL" };
        let mut query = look
            .prepare_cached(&format!(
                "SELECT {what} FROM journal WHERE number > ?1 ORDER BY number"
            ))
            .map_err(wrong)?;
        let row = |row: &rusqlite::Row<'_>| {
            let number = row.get::<_, i64>(0)? as u64;
            Ok((Row { number, bytes: row.get(1)? }, row.get::<_, Option<[u8; 32]>>(2)?))
        };
        let found = query.query_map(params![after as i64], row).map_err(wrong)?;
        let (mut rows, mut whole) = (Vec::new(), Whole::of_epoch(self.epoch));
        for found in found {
            let (row, seal) = found.map_err(wrong)?;
            if row.number != after + rows.len() as u64 + 1 {
                return Err(self.damaged());
            }
            if sealed {
                let fits = seal::of_line(self.epoch, row.number, &row.bytes);
                if seal != Some(fits) {
                    return Err(self.damaged());
                }
                whole.add_line(&fits);
            }
            rows.push(row);
        }
        let all = after.saturating_add(rows.len() as u64) >= last;
        let chained = !sealed || after > 0 || {
            let kept = Whole::read(&look).map_err(wrong)?;
            kept.is_some_and(|kept| (kept.lines, kept.chain) == (whole.lines, whole.chain))
        };
        if all && chained { Ok(rows) } else { Err(self.damaged()) }
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
        let (transaction, mut whole) = self.begin_after(head)?;
        for picture in pictures {
            let hash = Hash::of(picture);
            let new = transaction
                .prepare_cached("INSERT OR IGNORE INTO pictures (hash, bytes) VALUES (?1, ?2)")
                .and_then(|mut insert| insert.execute(params![hash.bytes(), picture]))
                .map_err(wrong)?;
            if new > 0 {
                whole.add_picture(&hash);
            }
        }
        write_rows(&transaction, &mut whole, rows).map_err(wrong)?;
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
            Some(bytes) if Hash::of(&bytes) != hash => Err(self.damaged()),
            picture => Ok(picture),
        }
    }

    /// The hashes of all pictures, in their order.
    pub fn pictures(&self) -> Result<Vec<Hash>, StoreError> {
        hashes_of(&self.connection).map_err(|error| StoreError::of(&self.path, &error))
    }

    /// Looks at everything in the file: every line, every picture, and SQLite's own pages.
    ///
    /// **Errors**: [`StoreError::Damaged`] if anything is not what was kept. Of a file of form 1,
    /// whose lines have no seals, a changed line is not found out.
    pub fn check(&self) -> Result<(), StoreError> {
        let wrong = |error| StoreError::of(&self.path, &error);
        self.rows(0)?;
        open::looks_whole(&self.connection, "integrity_check").map_err(wrong)?;
        let mut found = Whole::default();
        for hash in self.pictures()? {
            self.picture(hash)?.ok_or_else(|| self.damaged())?;
            found.add_picture(&hash);
        }
        if form::of(&self.connection).map_err(wrong)? == 1 {
            return Ok(());
        }
        let kept = Whole::read(&self.connection).map_err(wrong)?;
        let all =
            kept.map(|kept| (kept.pictures, kept.sum)) == Some((found.pictures, found.sum));
        if all { Ok(()) } else { Err(self.damaged()) }
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
        let (transaction, mut whole) = self.begin_after(head)?;
        transaction.execute("DELETE FROM journal", []).map_err(wrong)?;
        // Asked in here: a picture may have come without a line since the caller looked.
        let mut gone = hashes_of(&transaction).map_err(wrong)?;
        gone.retain(|hash| !keep.contains(hash));
        for hash in gone {
            transaction
                .execute("DELETE FROM pictures WHERE hash = ?1", [hash.bytes()])
                .map_err(wrong)?;
            whole.take_picture(&hash);
        }
        // A line that was there before fits no seal any more.
        let epoch = whole.epoch + 1;
        let mut whole = Whole { epoch, lines: 0, chain: [0; 32], ..whole };
        write_rows(&transaction, &mut whole, rows).map_err(wrong)?;
        transaction
            .execute("UPDATE facts SET value = value + 1 WHERE name = 'epoch'", [])
            .map_err(wrong)?;
        transaction.commit().map_err(wrong)?;
        self.epoch = epoch;
        // What goes was written over before the line above returned. Packing only makes the
        // file smaller: if another program or a full disk stops it, the removal is done all the
        // same, and must not be reported as one that was not.
        let _ = self.connection.execute_batch("VACUUM");
        Ok(rows.len() as u64)
    }

    /// Begins to write after line `head`, if nobody has written or rewritten meanwhile. A file
    /// of an older form becomes one of today.
    fn begin_after(&mut self, head: u64) -> Result<(Transaction<'_>, Whole), StoreError> {
        let path = self.path.clone();
        let wrong = |error| StoreError::of(&path, &error);
        let epoch = self.epoch;
        let transaction = self
            .connection
            .transaction_with_behavior(TransactionBehavior::Immediate)
            .map_err(wrong)?;
        if open::epoch(&transaction).map_err(wrong)? != epoch {
            return Err(StoreError::Rewritten);
        }
        let last = head::last_of(&transaction).map_err(wrong)?;
        if last != head {
            return Err(StoreError::Moved { head: last });
        }
        if form::of(&transaction).map_err(wrong)? == 1 {
            form::renew(&transaction, epoch).map_err(wrong)?;
        }
        let whole = Whole::read(&transaction).map_err(wrong)?;
        match whole.filter(|whole| (whole.epoch, whole.lines) == (epoch, head)) {
            Some(whole) => Ok((transaction, whole)),
            None => Err(StoreError::Damaged { path }),
        }
    }

    fn damaged(&self) -> StoreError {
        StoreError::Damaged { path: self.path.clone() }
    }

    /// The number of the last line there is, if it is the last that was kept.
    fn last_of(&self, look: &Connection) -> Result<u64, StoreError> {
        let wrong = |error| StoreError::of(&self.path, &error);
        let last = head::last_of(look).map_err(wrong)?;
        if form::of(look).map_err(wrong)? == 1 {
            return Ok(last);
        }
        let whole = Whole::read(look).map_err(wrong)?;
        let fits = whole.is_some_and(|whole| (whole.epoch, whole.lines) == (self.epoch, last));
        if fits { Ok(last) } else { Err(self.damaged()) }
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

fn hashes_of(connection: &Connection) -> rusqlite::Result<Vec<Hash>> {
    let mut query = connection.prepare_cached("SELECT hash FROM pictures ORDER BY hash")?;
    let hashes = query.query_map([], |row| row.get::<_, [u8; 32]>(0))?;
    hashes.map(|hash| hash.map(Hash::from_bytes)).collect()
}

/// Writes lines after those that are there, and what the whole adds up to then.
fn write_rows(
    connection: &Connection,
    whole: &mut Whole,
    rows: &[Vec<u8>],
) -> rusqlite::Result<()> {
    let mut insert = form::insert(connection)?;
    for row in rows {
        let number = whole.lines + 1;
        let seal = seal::of_line(whole.epoch, number, row);
        insert.execute(params![number as i64, whole.epoch, row, seal])?;
        whole.add_line(&seal);
    }
    whole.write(connection)
}
