//! The first hundred bytes of a file: what every file of ours says there.
//!
//! From bytes to whether they are ours, another program's, or ours and changed. SQLite acts on
//! most of what its first page says (a changed byte there can turn on another way of writing);
//! so what never changes in our files is looked at before SQLite sees it. Counters are not.
//!
//! Source: SQLite documentation, "Database File Format", section 1.3.

use std::fs::File;
use std::io::Read;
use std::ops::Range;
use std::path::Path;

use rusqlite::Connection;

/// `SPNY`: tells our files from other SQLite files.
pub(crate) const OURS: u32 = 0x5350_4E59;
/// The size of a page, in bytes: SQLite's usual one.
pub(crate) const PAGE: usize = 4096;

const MAGIC: &[u8] = b"SQLite format 3\0";
const MARK: Range<usize> = 68..72;

/// What the beginning of a file says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Beginning {
    /// As we write it.
    Ours,
    /// Ours, and changed.
    Damaged,
    /// Another program's.
    Others,
}

impl Beginning {
    pub(crate) fn of(path: &Path) -> std::io::Result<Self> {
        let mut bytes = Vec::new();
        File::open(path)?.take(100).read_to_end(&mut bytes)?;
        Ok(Self::of_bytes(&bytes))
    }

    pub(crate) fn of_bytes(bytes: &[u8]) -> Self {
        let mark = OURS.to_be_bytes();
        let alike = |range: Range<usize>, as_in: &[u8]| {
            let found = bytes.get(range).unwrap_or_default().iter();
            found.zip(as_in).filter(|(one, other)| one == other).count()
        };
        // One changed byte does not take away both marks.
        let ours = alike(MARK, &mark) == mark.len()
            || (alike(0..16, MAGIC) == MAGIC.len() && alike(MARK, &mark) + 1 == mark.len());
        let kept: [(usize, &[u8]); 6] = [
            (0, MAGIC),
            // Pages of 4096 bytes; a rollback journal; nothing reserved; three fixed fractions.
            (16, &[0x10, 0, 1, 1, 0, 64, 32, 32]),
            // The form of the schema; no cache of its own; no vacuum by itself; UTF-8.
            (44, &[0, 0, 0, 4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1]),
            (64, &[0; 4]),
            (MARK.start, &mark),
            (72, &[0; 20]),
        ];
        let same =
            |(at, as_in): &(usize, &[u8])| alike(*at..*at + as_in.len(), as_in) == as_in.len();
        match (ours, kept.iter().all(same)) {
            (false, _) => Self::Others,
            (true, true) => Self::Ours,
            (true, false) => Self::Damaged,
        }
    }
}

/// The number of the last line that is there; 0: there is none.
pub(crate) fn last_of(connection: &Connection) -> rusqlite::Result<u64> {
    let last: i64 = connection
        .prepare_cached("SELECT COALESCE(MAX(number), 0) FROM journal")?
        .query_row([], |row| row.get(0))?;
    u64::try_from(last).map_err(|_| rusqlite::Error::IntegralValueOutOfRange(0, last))
}
