//! What can be read of a damaged file, with nothing changed in it.
//!
//! From a file to the lines and pictures in it that are what was kept. SQLite is not asked where
//! that can be helped: one changed byte in its pages can hide every row behind it. Instead all
//! pages are looked through ([`rows`]) for what fits a seal: a line, a picture, or the row that
//! says what the whole adds up to. Only a file of form 1, which has no seals, is read by SQLite,
//! line by line.

mod rows;

use std::collections::BTreeMap;
use std::path::Path;
use std::rc::Rc;

use rusqlite::{Connection, OpenFlags, params};

use crate::seal::{self, Whole};
use crate::{Hash, Store, StoreError, open};
use rows::{Found, Pages};

/// The most lines that a file is believed to have lost: whoever can write one can seal any number.
const MOST_LOST: usize = 200_000;

/// Lines by their numbers, each with the time round that it is of.
type Lines = BTreeMap<u64, (i64, Rc<[u8]>)>;

/// What became of a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Saved {
    /// It is what was kept; in a file of form 1, it can be read.
    Sound(Vec<u8>),
    /// It is not what was kept. These bytes are there in its place.
    Changed(Vec<u8>),
    /// Nothing of it is there.
    Lost,
}

/// Where a picture is in the file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    /// Its name.
    pub hash: Hash,
    place: rows::Place,
}

/// What can be read of a damaged file.
#[derive(Debug)]
pub struct Salvage {
    /// Every line that there was, in order from the first.
    pub lines: Vec<Saved>,
    /// Whether it is known how many there were. If not, some may be missing at the end.
    pub end_known: bool,
    /// The pictures that are what they were, in the order of their hashes.
    pub pictures: Vec<Picture>,
    /// How many pictures are lost; None: that is not known.
    pub pictures_lost: Option<u64>,
    /// Whether its lines have seals: those of form 1 have none.
    sealed: bool,
    pages: Pages,
}

impl Salvage {
    /// Reads what can be read.
    ///
    /// **Guarantees**: nothing is written to the file.
    /// **Errors**: it cannot be read at all, or nothing of a collection is in it.
    /// **Cost**: about a second for 200 MB. No file makes it hold more than some copies of itself
    /// and `MOST_LOST` lines.
    pub fn of(path: &Path) -> Result<Self, StoreError> {
        let failed = |error: std::io::Error| open::of_io(path, &error);
        let mut pages = Pages::of(path).map_err(failed)?;
        let mut lines = Lines::new();
        let (mut changed, mut pictures) = (BTreeMap::new(), BTreeMap::new());
        let mut whole: Option<Whole> = None;
        pages
            .look_through(|found| match found {
                Found::Line { number, epoch, line, seal } => {
                    if seal::of_line(epoch, number, &line) != seal {
                        changed.entry(number).or_insert(line);
                    } else if lines.get(&number).is_none_or(|(other, _)| *other < epoch) {
                        lines.insert(number, (epoch, line));
                    }
                }
                Found::Picture { hash, bytes, place } => {
                    let hash = Hash::from_bytes(hash);
                    if Hash::of(&bytes) == hash {
                        pictures.insert(hash, place);
                    }
                }
                Found::Whole { whole: found, seal } => {
                    let newer =
                        |one: &Whole| (one.epoch, one.lines) < (found.epoch, found.lines);
                    if found.seal() == seal && whole.as_ref().is_none_or(newer) {
                        whole = Some(found);
                    }
                }
            })
            .map_err(failed)?;
        let sealed = !lines.is_empty() || whole.is_some();
        if !sealed {
            lines = unsealed(path, pages.length())?;
        }
        // Lines of before a removal are none of today's.
        let epoch = whole.as_ref().map(|whole| whole.epoch);
        let epoch =
            epoch.or_else(|| lines.values().map(|(epoch, _)| *epoch).max()).unwrap_or(0);
        lines.retain(|_, (of, _)| *of == epoch);
        let most = most_lines(lines.len(), pages.length());
        let far = lines.split_off(&(most + 1));
        let last = lines.keys().next_back().copied().unwrap_or(0);
        let said = whole.as_ref().map_or(last, |whole| whole.lines.max(last));
        let last = said.min(most);
        if last == 0 && pictures.is_empty() && whole.is_none() {
            return Err(StoreError::NotACollection { path: path.to_owned() });
        }
        let one = |number| match (lines.remove(&number), changed.remove(&number)) {
            (Some((_, line)), _) => Saved::Sound(line.to_vec()),
            (None, Some(line)) => Saved::Changed(line.to_vec()),
            (None, None) => Saved::Lost,
        };
        let pictures_lost =
            whole.as_ref().map(|whole| whole.pictures.saturating_sub(pictures.len() as u64));
        let place = |(hash, place)| Picture { hash, place };
        Ok(Self {
            lines: (1..=last).map(one).collect(),
            end_known: whole.is_some() && last == said && far.is_empty(),
            pictures: pictures.into_iter().map(place).collect(),
            pictures_lost,
            sealed,
            pages,
        })
    }

    /// The bytes of a picture.
    ///
    /// **Errors**: the file cannot be read any more.
    pub fn picture(&mut self, picture: &Picture) -> Result<Vec<u8>, StoreError> {
        let bytes = self.pages.bytes_of(&picture.place);
        let bytes = bytes.map_err(|error| open::of_io(self.pages.path(), &error))?;
        let damaged = || StoreError::Damaged { path: self.pages.path().to_owned() };
        bytes.filter(|bytes| Hash::of(bytes) == picture.hash).ok_or_else(damaged)
    }

    /// Whether nothing at all is missing, as far as seals tell; and where there are none, whether
    /// the file opens and what can be looked at in it is as it should be.
    pub fn is_whole(&self) -> bool {
        let sound = self.lines.iter().all(|line| matches!(line, Saved::Sound(_)));
        let adds_up = self.end_known && self.pictures_lost == Some(0);
        let opens = || Store::open(self.pages.path()).is_ok_and(|it| it.check().is_ok());
        sound && (adds_up || !self.sealed) && opens()
    }
}

/// The number of the last line that there can have been: no more are missing than the file has
/// bytes.
fn most_lines(found: usize, length: u64) -> u64 {
    found as u64 + length.min(MOST_LOST as u64)
}

/// The lines of a file of form 1, each asked for by itself, so that one that cannot be read does
/// not hide the others.
fn unsealed(path: &Path, length: u64) -> Result<Lines, StoreError> {
    let wrong = |error| StoreError::of(path, &error);
    let connection = Connection::open_with_flags(
        open::plainly(path),
        OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX,
    )
    .map_err(wrong)?;
    let last: i64 = connection
        .query_row("SELECT COALESCE(MAX(number), 0) FROM journal", [], |row| row.get(0))
        .map_err(wrong)?;
    let mut lines = Lines::new();
    for number in 1..=last {
        if number as u64 > most_lines(lines.len(), length) {
            break;
        }
        let line = connection
            .prepare_cached("SELECT line FROM journal WHERE number = ?1")
            .and_then(|mut query| query.query_row(params![number], |row| row.get(0)));
        let line: rusqlite::Result<Rc<[u8]>> = line;
        if let Ok(line) = line {
            lines.insert(number as u64, (0, line));
        }
    }
    Ok(lines)
}
