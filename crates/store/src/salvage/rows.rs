//! The rows of our tables, wherever they are in a file.
//!
//! From the pages of a file to every place that looks like a row of ours, whatever the pages say
//! of where their rows are. A row is known by the head of its record, which says how long each of
//! its fields is; what it says is looked at by whoever asked. Nothing is believed, nothing is
//! written.
//!
//! Source: SQLite documentation, "Database File Format", sections 1.6 (cells and overflow pages)
//! and 2.1 (records).

use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom};
use std::path::{Path, PathBuf};
use std::rc::Rc;

use crate::head::PAGE;
use crate::seal::Whole;

/// The type of a field of 32 bytes: a hash or a seal.
const HASH: u64 = 2 * 32 + 12;
/// The most bytes of a record that stay on its page (the document's U - 35).
const MOST_HERE: usize = PAGE - 35;
/// The least bytes of a longer record that stay on its page (its M).
const LEAST_HERE: usize = (PAGE - 12) * 32 / 255 - 23;

/// Longer than any row that we write: a picture has 32 MiB, a line that was pasted 24.
const MOST_RECORD: usize = 64 << 20;
/// How often as much as the file holds is read and compared. Rows of ours take it once, and what
/// happens to look like a row hardly anything; a row that was made to be read without end does not.
const MOST_TIMES: u64 = 3;

/// What looks like a row.
pub(super) enum Found {
    Line { number: u64, epoch: i64, line: Rc<[u8]>, seal: [u8; 32] },
    Picture { hash: [u8; 32], bytes: Vec<u8>, place: Place },
    Whole { whole: Whole, seal: [u8; 32] },
}

/// Where a record begins, and how long its head and all of it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Place {
    page: u64,
    at: usize,
    head: usize,
    all: usize,
}

/// A file, page by page.
#[derive(Debug)]
pub(super) struct Pages {
    file: File,
    path: PathBuf,
    count: u64,
}

impl Pages {
    pub(super) fn of(path: &Path) -> io::Result<Self> {
        let file = File::open(path)?;
        let count = file.metadata()?.len().div_ceil(PAGE as u64);
        Ok(Self { file, path: path.to_owned(), count })
    }

    /// How long the file is, in bytes; its last page counts whole.
    pub(super) fn length(&self) -> u64 {
        self.count * PAGE as u64
    }

    pub(super) fn path(&self) -> &Path {
        &self.path
    }

    /// Gives everything that looks like a row.
    pub(super) fn look_through(&mut self, mut give: impl FnMut(Found)) -> io::Result<()> {
        let mut left = self.length().saturating_mul(MOST_TIMES);
        for page in 1..=self.count {
            let bytes = self.page(page)?;
            for at in 0..PAGE - 4 {
                let Some(head) = Head::at(&bytes[at..]) else { continue };
                let place = Place { page, at, head: head.length, all: head.all() };
                let Some(record) = self.record(&bytes, &place, &mut left)? else { continue };
                head.rows(&bytes[..at], &record[head.length..], place, &mut give);
            }
        }
        Ok(())
    }

    /// The fields after the hash of a picture; None: the file ends before.
    pub(super) fn bytes_of(&mut self, place: &Place) -> io::Result<Option<Vec<u8>>> {
        let bytes = self.page(place.page)?;
        let record = self.record(&bytes, place, &mut self.length())?;
        Ok(record.and_then(|record| Some(record.get(place.head + 32..)?.to_vec())))
    }

    /// A whole record: what is on its page and on those that follow it, no more than is `left`.
    /// None: it is longer than the file, or it ends before.
    fn record(
        &mut self,
        bytes: &[u8],
        place: &Place,
        left: &mut u64,
    ) -> io::Result<Option<Vec<u8>>> {
        let all = place.all;
        if all as u64 > self.length() {
            return Ok(None);
        }
        let here = match LEAST_HERE + all.saturating_sub(LEAST_HERE) % (PAGE - 4) {
            _ if all <= MOST_HERE => all,
            here if here <= MOST_HERE => here,
            _ => LEAST_HERE,
        };
        let Some(first) = bytes.get(place.at..place.at + here) else { return Ok(None) };
        let mut read = |some: usize| {
            let enough = left.checked_sub(some as u64);
            *left = enough.unwrap_or(0);
            enough.is_some()
        };
        if !read(here) {
            return Ok(None);
        }
        let mut record = first.to_vec();
        let mut next = bytes.get(place.at + here..).and_then(number_of_page);
        while record.len() < all {
            let Some(page) = next.filter(|page| (1..=self.count).contains(page)) else {
                return Ok(None);
            };
            let part = (all - record.len()).min(PAGE - 4);
            if !read(part) {
                return Ok(None);
            }
            let bytes = self.page(page)?;
            next = number_of_page(&bytes);
            record.extend_from_slice(&bytes[4..4 + part]);
        }
        Ok(Some(record))
    }

    /// A page; what the file does not have of it is empty.
    fn page(&mut self, page: u64) -> io::Result<Vec<u8>> {
        self.file.seek(SeekFrom::Start((page - 1) * PAGE as u64))?;
        let mut bytes = Vec::with_capacity(PAGE);
        self.file.by_ref().take(PAGE as u64).read_to_end(&mut bytes)?;
        bytes.resize(PAGE, 0);
        Ok(bytes)
    }
}

fn number_of_page(bytes: &[u8]) -> Option<u64> {
    Some(u32::from_be_bytes(bytes.first_chunk::<4>().copied()?).into())
}

/// The head of a record of ours.
struct Head {
    length: usize,
    row: Row,
}

enum Row {
    /// The types of the time round, and of the line.
    Line(u64, u64),
    Picture(u64),
    /// The types of the time round, of the number of lines, of the number of pictures.
    Whole([u64; 3]),
}

impl Head {
    /// The head that begins here; None: none of ours does.
    fn at(bytes: &[u8]) -> Option<Self> {
        // Nearly every place is none: looked at first what costs least.
        let length = usize::from(*bytes.first()?);
        if !(3..=16).contains(&length) {
            return None;
        }
        let mut rest = bytes.get(1..length)?;
        let (mut types, mut count) = ([0; 8], 0);
        while !rest.is_empty() {
            let (field, size) = varint(rest)?;
            *types.get_mut(count)? = field;
            (rest, count) = (&rest[size..], count + 1);
        }
        let blob = |field: u64| field >= 12 && field.is_multiple_of(2);
        let whole = |field: u64| (1..=6).contains(&field) || field == 8 || field == 9;
        let row = match types[..count] {
            [HASH, bytes] if blob(bytes) => Row::Picture(bytes),
            [0, epoch, line, HASH] if whole(epoch) && blob(line) => Row::Line(epoch, line),
            [0, epoch, lines, HASH, pictures, HASH, HASH]
                if whole(epoch) && whole(lines) && whole(pictures) =>
            {
                Row::Whole([epoch, lines, pictures])
            }
            _ => return None,
        };
        let head = Self { length, row };
        (head.all() <= MOST_RECORD).then_some(head)
    }

    /// How long the whole record is.
    fn all(&self) -> usize {
        let fields = match self.row {
            Row::Line(epoch, line) => size(epoch) + size(line) + 32,
            Row::Picture(bytes) => 32 + size(bytes),
            Row::Whole(fields) => fields.into_iter().map(size).sum::<usize>() + 3 * 32,
        };
        self.length.saturating_add(fields)
    }

    /// The rows that this may be, from what is before the head and what is after it.
    fn rows(&self, before: &[u8], fields: &[u8], place: Place, give: &mut impl FnMut(Found)) {
        let mut fields = Fields(fields);
        match self.row {
            Row::Picture(bytes) => {
                let (Some(hash), Some(bytes)) = (fields.hash(), fields.take(size(bytes)))
                else {
                    return;
                };
                give(Found::Picture { hash, bytes: bytes.to_vec(), place });
            }
            Row::Whole([epoch, lines, pictures]) => {
                let whole = (|| {
                    let (epoch, lines) = (fields.whole(epoch)?, fields.whole(lines)?);
                    let chain = fields.hash()?;
                    let pictures = fields.whole(pictures)?;
                    let (sum, seal) = (fields.hash()?, fields.hash()?);
                    let [lines, pictures] = [lines as u64, pictures as u64];
                    let whole = Whole { epoch, lines, chain, pictures, sum };
                    Some(Found::Whole { whole, seal })
                })();
                whole.map(give);
            }
            Row::Line(epoch, line) => {
                let read = (fields.whole(epoch), fields.take(size(line)), fields.hash());
                let (Some(epoch), Some(line), Some(seal)) = read else { return };
                let line: Rc<[u8]> = line.into();
                // Its number ends where the head begins; where that began is not known.
                for length in 1..=9.min(before.len()) {
                    let number = &before[before.len() - length..];
                    if let Some((number, size)) = varint(number)
                        && size == length
                        && number > 0
                    {
                        give(Found::Line { number, epoch, line: line.clone(), seal });
                    }
                }
            }
        }
    }
}

/// The fields of a record, one after another.
struct Fields<'b>(&'b [u8]);

impl<'b> Fields<'b> {
    fn take(&mut self, length: usize) -> Option<&'b [u8]> {
        let (field, rest) = self.0.split_at_checked(length)?;
        self.0 = rest;
        Some(field)
    }

    fn hash(&mut self) -> Option<[u8; 32]> {
        self.take(32)?.try_into().ok()
    }

    /// A whole number of this type.
    fn whole(&mut self, of: u64) -> Option<i64> {
        if of >= 8 {
            return Some((of - 8) as i64);
        }
        let bytes = self.take(size(of))?;
        let negative = bytes.first().is_some_and(|first| *first >= 0x80);
        let start = if negative { -1 } else { 0 };
        Some(bytes.iter().fold(start, |number, byte| number << 8 | i64::from(*byte)))
    }
}

/// How many bytes a field of this type takes.
fn size(field: u64) -> usize {
    match field {
        0 | 8 | 9 => 0,
        1..=4 => field as usize,
        5 => 6,
        6 | 7 => 8,
        longer => usize::try_from((longer - 12) / 2).unwrap_or(usize::MAX),
    }
}

/// A number of varying length, and how many bytes it takes.
fn varint(bytes: &[u8]) -> Option<(u64, usize)> {
    let mut number = 0;
    for (at, byte) in bytes.iter().take(9).enumerate() {
        if at == 8 {
            return Some((number << 8 | u64::from(*byte), 9));
        }
        number = number << 7 | u64::from(byte & 0x7F);
        if *byte < 0x80 {
            return Some((number, at + 1));
        }
    }
    None
}
