//! What tells a changed byte from one that was kept: a seal on every line, and one on the whole.
//!
//! From a line with its number to 32 bytes that fit no other line, and from all of a file to one
//! row that says how many lines and pictures there are and what they add up to. A line that is
//! changed, lost, moved, or left over from before a removal does not fit; a lost end does not
//! add up. It guards against accidents of disks and copies, not against people: whoever can
//! write the file can seal it too. SHA-256 (FIPS 180-4).

use rusqlite::{Connection, params};
use sha2::{Digest, Sha256};

use crate::Hash;

/// The seal of a line: which time round, which number, which bytes.
pub(crate) fn of_line(epoch: i64, number: u64, line: &[u8]) -> [u8; 32] {
    let mut seal = Sha256::new();
    seal.update(b"line");
    seal.update(epoch.to_be_bytes());
    seal.update(number.to_be_bytes());
    seal.update(line);
    seal.finalize().into()
}

/// What a whole file adds up to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Whole {
    /// How often the journal was rewritten.
    pub(crate) epoch: i64,
    pub(crate) lines: u64,
    /// The seals of all lines, one hashed onto the other in their order.
    pub(crate) chain: [u8; 32],
    pub(crate) pictures: u64,
    /// The hashes of all pictures, added without carry, so that their order does not matter.
    pub(crate) sum: [u8; 32],
}

impl Whole {
    pub(crate) fn of_epoch(epoch: i64) -> Self {
        Self { epoch, ..Self::default() }
    }

    pub(crate) fn add_line(&mut self, seal: &[u8; 32]) {
        self.lines += 1;
        self.chain =
            Sha256::new().chain_update(self.chain).chain_update(seal).finalize().into();
    }

    pub(crate) fn add_picture(&mut self, hash: &Hash) {
        self.pictures += 1;
        self.turn(hash);
    }

    pub(crate) fn take_picture(&mut self, hash: &Hash) {
        self.pictures = self.pictures.saturating_sub(1);
        self.turn(hash);
    }

    fn turn(&mut self, hash: &Hash) {
        self.sum.iter_mut().zip(hash.bytes()).for_each(|(sum, byte)| *sum ^= byte);
    }

    /// The seal of the row itself.
    pub(crate) fn seal(&self) -> [u8; 32] {
        let mut seal = Sha256::new();
        seal.update(b"whole");
        seal.update(self.epoch.to_be_bytes());
        seal.update(self.lines.to_be_bytes());
        seal.update(self.chain);
        seal.update(self.pictures.to_be_bytes());
        seal.update(self.sum);
        seal.finalize().into()
    }

    /// As it is kept; None: it is not what was kept.
    pub(crate) fn read(connection: &Connection) -> rusqlite::Result<Option<Self>> {
        let mut query = connection
            .prepare_cached("SELECT epoch, lines, chain, pictures, sum, seal FROM whole")?;
        query.query_row([], |row| {
            let whole = Self {
                epoch: row.get(0)?,
                lines: row.get::<_, i64>(1)? as u64,
                chain: row.get(2)?,
                pictures: row.get::<_, i64>(3)? as u64,
                sum: row.get(4)?,
            };
            Ok((whole.seal() == row.get::<_, [u8; 32]>(5)?).then_some(whole))
        })
    }

    pub(crate) fn write(&self, connection: &Connection) -> rusqlite::Result<()> {
        connection
            .prepare_cached(
                "INSERT OR REPLACE INTO whole (one, epoch, lines, chain, pictures, sum, seal) \
                 VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6)",
            )?
            .execute(params![
                self.epoch,
                self.lines as i64,
                self.chain,
                self.pictures as i64,
                self.sum,
                self.seal()
            ])
            .map(drop)
    }
}
