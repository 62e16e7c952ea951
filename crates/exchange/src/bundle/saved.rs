//! What can be read of a damaged bundle.
//!
//! From the bytes of a zip to the lines and pictures in it that are what was packed. The table
//! of contents at the end of the zip is not asked, since one changed byte there hides all of it:
//! the files are looked for by the mark at the beginning of each, and what they hold is compared
//! with its sums. Of a bundle of before, which has no sums, the lines are read as far as they can
//! be inflated.
//!
//! A bundle that was made to fill the memory or to be read without end is no exception to the
//! limits of one that is whole: no more lines, no more text, and no byte is hashed more than twice.
//!
//! Source: ISO/IEC 21320-1; PKWARE's APPNOTE, section 4.3.7 (the head of a file).

use std::collections::{BTreeMap, BTreeSet};
use std::io::{Cursor, Read};

use zip::ZipArchive;

use super::{
    Bundle, FILE_SUMS, JOURNAL, JOURNAL_BYTES, JOURNAL_LINES, LARGEST_PICTURE, LINE_SUMS,
    PICTURES, READ_ME, hash_of, is_hash, sum_of_line,
};

/// The length of the sum of a line, in hexadecimal digits.
pub(super) const SUM: usize = 16;
/// What a file begins with, and what comes after the last one.
const MARKS: [&[u8]; 2] = [b"PK\x03\x04", b"PK\x01\x02"];

/// What can be read of a damaged bundle.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Saved {
    /// Every line that there was, in order; None: it is lost.
    pub lines: Vec<Option<Vec<u8>>>,
    /// The pictures that are what they were, by their hashes.
    pub pictures: BTreeMap<String, Vec<u8>>,
    /// How many pictures are lost; None: that is not known.
    pub pictures_lost: Option<usize>,
    /// Whether it is known how many lines there were.
    pub end_known: bool,
}

impl Saved {
    /// Reads what can be read; None: nothing of a bundle is in it.
    pub fn of(bytes: &[u8]) -> Option<Self> {
        if let Ok(Bundle { lines, pictures }) = Bundle::unpack(bytes) {
            let lines = lines.into_iter().map(Some).collect();
            return Some(Self { lines, pictures, pictures_lost: Some(0), end_known: true });
        }
        let files = files(bytes);
        let by_name = |name: &str, begins: fn(&[u8]) -> bool| {
            let named = files.iter().find(|file| file.name == name.as_bytes());
            named.or_else(|| files.iter().find(|file| begins(file.to_mark)))
        };
        let file_sums = by_name(FILE_SUMS, |text| is_sums(text, 64));
        let file_sums = String::from_utf8_lossy(file_sums.map_or(&[][..], |file| file.to_mark));
        let file_sums: Vec<(&str, &str)> =
            file_sums.lines().filter_map(|line| line.split_once("  ")).collect();
        let listed: BTreeSet<&str> = file_sums
            .iter()
            .filter(|(hash, name)| name.starts_with(PICTURES) && is_hash(hash))
            .map(|(hash, _)| *hash)
            .collect();
        let mut left = bytes.len() * 2;
        let pictures: BTreeMap<String, Vec<u8>> =
            files.iter().filter_map(|file| file.picture(&listed, &mut left)).collect();
        let pictures_lost = (!file_sums.is_empty())
            .then(|| listed.iter().filter(|hash| !pictures.contains_key(**hash)).count());
        let journal = by_name(JOURNAL, |text| text.starts_with(b"{\""));
        let sums = by_name(LINE_SUMS, |text| is_sums(text, SUM));
        let whole = file_sums.iter().find(|(_, name)| *name == JOURNAL).map(|(hash, _)| *hash);
        let (lines, end_known) = match (journal, sums) {
            (Some(journal), Some(sums)) => journal.lines(sums, whole),
            _ => (inflated(bytes), false),
        };
        let found = !lines.is_empty() || !pictures.is_empty();
        found.then_some(Self { lines, pictures, pictures_lost, end_known })
    }
}

/// Whether a text is sums of so many digits, a line each.
fn is_sums(text: &[u8], digits: usize) -> bool {
    let first = text.split(|byte| *byte == b'\n').next().unwrap_or_default();
    let hash = first.split(|byte| *byte == b' ').next().unwrap_or_default();
    hash.len() == digits && hash.iter().all(u8::is_ascii_hexdigit)
}

/// A file in the zip, as its own head says.
struct InZip<'b> {
    name: &'b [u8],
    /// Its bytes by the length that its head says; None: the zip ends before.
    by_length: Option<&'b [u8]>,
    /// Its bytes up to the next mark: no text of ours has one in it.
    to_mark: &'b [u8],
}

/// How long the head of a file is, up to its name.
const HEAD: usize = 30;

fn files(bytes: &[u8]) -> Vec<InZip<'_>> {
    // A mark in which one byte was changed is one where a name of ours follows.
    let marked = |at: &usize| {
        // Nearly every place is none: looked at first what costs least.
        if bytes[*at] != b'P' && bytes.get(at + 1) != Some(&b'K') {
            return false;
        }
        let alike = |mark: &[u8]| bytes[*at..].iter().zip(mark).filter(|(a, b)| a == b).count();
        let most = MARKS.map(alike).into_iter().max().unwrap_or(0);
        most == 4 || (most == 3 && name_at(bytes, at + HEAD).is_some())
    };
    let marks: Vec<usize> = (0..bytes.len()).filter(marked).collect();
    let ends = marks.iter().skip(1).copied().chain([bytes.len()]);
    let file = |(at, end): (usize, usize)| {
        let head = bytes.get(at..at + HEAD).filter(|head| !head.starts_with(MARKS[1]))?;
        let two = |at: usize| usize::from(u16::from_le_bytes([head[at], head[at + 1]]));
        let length = u32::from_le_bytes([head[18], head[19], head[20], head[21]]) as usize;
        // Where the name is one of ours, lengths that were changed do not matter: ours have
        // nothing between the name and the bytes.
        let (name, start) = match name_at(bytes, at + HEAD) {
            Some(name) => (name, at + HEAD + name.len()),
            None => {
                let end = at + HEAD + two(26);
                (bytes.get(at + HEAD..end)?, end + two(28))
            }
        };
        Some(InZip {
            name,
            by_length: bytes.get(start..start.checked_add(length)?),
            to_mark: bytes.get(start..end).unwrap_or_default(),
        })
    };
    marks.iter().copied().zip(ends).filter_map(file).collect()
}

/// A name that we give, if one is there.
fn name_at(bytes: &[u8], at: usize) -> Option<&[u8]> {
    let rest = bytes.get(at..)?;
    let text = [JOURNAL, LINE_SUMS, FILE_SUMS, READ_ME].map(str::as_bytes);
    if let Some(name) = text.into_iter().find(|name| rest.starts_with(name)) {
        return Some(&rest[..name.len()]);
    }
    let name = rest.get(..PICTURES.len() + 64)?;
    let hash = name.strip_prefix(PICTURES.as_bytes())?;
    std::str::from_utf8(hash).is_ok_and(is_hash).then_some(name)
}

impl InZip<'_> {
    /// A picture, if it is what some name says. No more than `left` bytes are looked at.
    fn picture(&self, listed: &BTreeSet<&str>, left: &mut usize) -> Option<(String, Vec<u8>)> {
        let named = (self.name.len() == PICTURES.len() + 64).then_some(self.name);
        let named = named.and_then(|name| std::str::from_utf8(name).ok());
        let named = named.and_then(|name| name.strip_prefix(PICTURES));
        let to_mark = Some(self.to_mark).filter(|bytes| self.by_length != Some(*bytes));
        [self.by_length, to_mark].into_iter().flatten().find_map(|bytes| {
            if bytes.len() > LARGEST_PICTURE {
                return None;
            }
            *left = left.checked_sub(bytes.len())?;
            let hash = hash_of(bytes);
            let known = listed.contains(hash.as_str()) || named == Some(hash.as_str());
            known.then(|| (hash, bytes.to_vec()))
        })
    }

    /// The lines of this journal, each compared with its sum, and whether these are all.
    fn lines(&self, sums: &Self, whole: Option<&str>) -> (Vec<Option<Vec<u8>>>, bool) {
        let all = self.by_length.filter(|text| text.len() as u64 <= JOURNAL_BYTES);
        let all = all.filter(|text| Some(hash_of(text).as_str()) == whole);
        if let Some(text) = all {
            return (lines_of(text), lines_in(text).nth(JOURNAL_LINES).is_none());
        }
        let lines = self.to_mark.split(|byte| *byte == b'\n').take(JOURNAL_LINES);
        let known: BTreeMap<String, &[u8]> =
            lines.map(|line| (sum_of_line(line), line)).collect();
        // Many sums can name one line: what they all take together is a journal at the most.
        let mut left = JOURNAL_BYTES as usize;
        let line = |sum: &[u8]| {
            let sum = sum.get(..SUM).and_then(|sum| std::str::from_utf8(sum).ok());
            let line = sum.and_then(|sum| known.get(sum)).copied();
            left = left.checked_sub(line.map_or(0, <[u8]>::len))?;
            Some(line.map(<[u8]>::to_vec))
        };
        let sums = sums.to_mark.chunks(SUM + 1);
        let count = sums.len();
        let lines: Vec<_> = sums.take(JOURNAL_LINES).map_while(line).collect();
        let all = lines.len() == count;
        (lines, all)
    }
}

fn lines_in(text: &[u8]) -> impl Iterator<Item = &[u8]> {
    text.split(|byte| *byte == b'\n').filter(|line| !line.is_empty())
}

/// The lines of a text, and no more than a journal may have.
fn lines_of(text: &[u8]) -> Vec<Option<Vec<u8>>> {
    lines_in(text).take(JOURNAL_LINES).map(|line| Some(line.to_vec())).collect()
}

/// The whole lines of a bundle of before, as far as they can be inflated.
fn inflated(bytes: &[u8]) -> Vec<Option<Vec<u8>>> {
    let mut text = Vec::new();
    let Ok(mut zip) = ZipArchive::new(Cursor::new(bytes)) else { return Vec::new() };
    let Ok(file) = zip.by_name(JOURNAL) else { return Vec::new() };
    // What was read before it went wrong is what counts.
    let _ = file.take(JOURNAL_BYTES).read_to_end(&mut text);
    let end = text.iter().rposition(|byte| *byte == b'\n').unwrap_or(0);
    lines_of(&text[..end])
}
