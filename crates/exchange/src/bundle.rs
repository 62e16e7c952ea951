//! The bundle: a whole collection as one zip, to move it, mail it or keep it.
//!
//! From the lines of a journal and its pictures to a zip of `journal.jsonl`,
//! `pictures/<hash>` and a page that says what they are, and back. Everything in it can be read
//! without this program. Nothing is unpacked to a disk here.
//!
//! Nothing in it is deflated: then a changed byte spoils one line, and not all after it. Beside
//! the journal are a sum for each line and the SHA-256 of each file, so that a change is found and
//! [`Saved`] can tell what is as it was. Bundles of before have neither, and are read too.
//!
//! Source: ISO/IEC 21320-1 (ZIP, stored and deflated); JSON Lines for the journal.

mod saved;

use std::collections::BTreeMap;
use std::io::{Cursor, Read, Write};

use sha2::{Digest, Sha256};
use spinney_model::limits::{
    BUNDLE_FILES as MOST_FILES, BUNDLE_UNPACKED as MOST, JOURNAL_BYTES, JOURNAL_LINES,
    PICTURE_BYTES as LARGEST_PICTURE,
};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipArchive, ZipWriter};

const JOURNAL: &str = "journal.jsonl";
const PICTURES: &str = "pictures/";
const READ_ME: &str = "read_me.txt";
/// The sum of each line of the journal, a line each.
const LINE_SUMS: &str = "journal.sums";
/// The SHA-256 of each file, as `sha256sum` writes it.
const FILE_SUMS: &str = "checksums.txt";
/// What a person finds who opens the zip without this program.
const EXPLAINED: &str = include_str!("bundle/read_me.txt");

pub use saved::Saved;
pub use spinney_model::BundleError;

/// A collection as it came out of a bundle.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Bundle {
    /// The lines of its journal.
    pub lines: Vec<Vec<u8>>,
    /// Its pictures, by the SHA-256 of their bytes in hexadecimal digits.
    pub pictures: BTreeMap<String, Vec<u8>>,
}

impl Bundle {
    /// Packs it. The same collection gives the same bytes.
    ///
    /// **Errors**: it is larger than what would be unpacked again.
    pub fn pack(&self) -> Result<Vec<u8>, BundleError> {
        let pictures = self.pictures.iter().map(|(hash, bytes)| (hash.as_str(), &**bytes));
        Self::packed(&self.lines, &pictures.collect(), MOST)
    }

    /// The same of lines and pictures that somebody else holds; at most so many bytes.
    ///
    /// **Errors**: it is larger than that, or than what would be unpacked again.
    pub fn packed(
        lines: &[Vec<u8>],
        pictures: &BTreeMap<&str, &[u8]>,
        most: u64,
    ) -> Result<Vec<u8>, BundleError> {
        let sizes = pictures.values().copied().chain(lines.iter().map(Vec::as_slice));
        let sizes = sizes.map(|bytes| bytes.len() as u64 + 1);
        let large = pictures.values().any(|bytes| bytes.len() > LARGEST_PICTURE);
        let journal: u64 = lines.iter().map(|line| line.len() as u64 + 1).sum();
        let long = lines.len() > JOURNAL_LINES || journal > JOURNAL_BYTES;
        if large
            || long
            || sizes.sum::<u64>() > MOST.min(most)
            || pictures.len() + 4 > MOST_FILES
        {
            return Err(BundleError::TooLarge);
        }
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        let text = lines.iter().flat_map(|line| line.iter().copied().chain([b'\n']));
        let text: Vec<u8> = text.collect();
        let line_sums: String =
            lines.iter().map(|line| format!("{}\n", sum_of_line(line))).collect();
        let mut put = |name: &str, bytes: &[u8]| {
            let options = SimpleFileOptions::default()
                .compression_method(CompressionMethod::Stored)
                .last_modified_time(DateTime::default());
            zip.start_file(name, options)
                .and_then(|()| zip.write_all(bytes).map_err(Into::into))
                .expect("writing into memory does not fail");
            format!("{}  {name}\n", hash_of(bytes))
        };
        let mut file_sums = put(READ_ME, EXPLAINED.as_bytes());
        file_sums.push_str(&put(JOURNAL, &text));
        file_sums.push_str(&put(LINE_SUMS, line_sums.as_bytes()));
        for (hash, bytes) in pictures {
            file_sums.push_str(&put(&format!("{PICTURES}{hash}"), bytes));
        }
        put(FILE_SUMS, file_sums.as_bytes());
        Ok(zip.finish().expect("writing into memory does not fail").into_inner())
    }

    /// Unpacks a bundle.
    ///
    /// **Errors**: it is no bundle, larger than any collection, or damaged: a picture that is
    /// not what its name says counts as damage, and so does a file that is not what its sum
    /// says, or is missing. Files that a bundle does not have are passed over.
    pub fn unpack(bytes: &[u8]) -> Result<Self, BundleError> {
        let mut zip =
            ZipArchive::new(Cursor::new(bytes)).map_err(|_| match is_cut_off(bytes) {
                true => BundleError::CutOff,
                false => BundleError::NotABundle,
            })?;
        if zip.len() > MOST_FILES {
            return Err(BundleError::TooLarge);
        }
        let mut bundle = Self::default();
        // All files but the pictures, by their names.
        let mut texts: BTreeMap<&str, Vec<u8>> = BTreeMap::new();
        let mut left = MOST;
        for at in 0..zip.len() {
            let mut file = zip.by_index(at).map_err(|_| BundleError::Damaged)?;
            let name = file.name().map_err(|_| BundleError::Damaged)?.into_owned();
            let text =
                [JOURNAL, LINE_SUMS, FILE_SUMS, READ_ME].into_iter().find(|it| *it == name);
            let picture = name.strip_prefix(PICTURES).filter(|hash| is_hash(hash));
            let most = match (text, picture) {
                (Some(_), _) => left.min(JOURNAL_BYTES),
                (None, Some(_)) => left.min(LARGEST_PICTURE as u64),
                (None, None) => continue,
            };
            let mut content = Vec::new();
            file.by_ref()
                .take(most + 1)
                .read_to_end(&mut content)
                .map_err(|_| BundleError::Damaged)?;
            let size = content.len() as u64;
            if size > most {
                return Err(BundleError::TooLarge);
            }
            left -= size;
            match (text, picture) {
                (Some(text), _) => drop(texts.insert(text, content)),
                (None, Some(hash)) if hash_of(&content) == hash => {
                    bundle.pictures.insert(hash.to_owned(), content);
                }
                _ => return Err(BundleError::Damaged),
            }
        }
        let sums = texts.get(FILE_SUMS).map(|sums| String::from_utf8_lossy(sums).into_owned());
        if let Some(sums) = sums
            && !bundle.fits(&sums, &texts)
        {
            return Err(BundleError::Damaged);
        }
        let journal = texts.remove(JOURNAL).ok_or(BundleError::NotABundle)?;
        let lines = || journal.split(|byte| *byte == b'\n').filter(|line| !line.is_empty());
        if lines().count() > JOURNAL_LINES {
            return Err(BundleError::TooLarge);
        }
        bundle.lines = lines().map(<[u8]>::to_vec).collect();
        Ok(bundle)
    }

    /// Whether every file that has a sum is there and fits, and no picture has none.
    fn fits(&self, sums: &str, texts: &BTreeMap<&str, Vec<u8>>) -> bool {
        let mut pictures = 0;
        let fits = sums.lines().all(|line| {
            let Some((hash, name)) = line.split_once("  ") else { return false };
            match name.strip_prefix(PICTURES) {
                Some(picture) => {
                    pictures += 1;
                    picture == hash && self.pictures.contains_key(picture)
                }
                None => texts.get(name).is_some_and(|text| hash_of(text) == hash),
            }
        });
        fits && pictures == self.pictures.len()
    }
}

/// The sum of a line: the first half of what is needed to find any accident.
fn sum_of_line(line: &[u8]) -> String {
    let mut sum = hash_of(line);
    sum.truncate(saved::SUM);
    sum
}

/// Whether it begins as a zip and has no end, which all zips have.
fn is_cut_off(bytes: &[u8]) -> bool {
    let end = b"PK\x05\x06";
    bytes.starts_with(b"PK\x03\x04") && !bytes.windows(end.len()).any(|window| window == end)
}

fn is_hash(name: &str) -> bool {
    name.len() == 64 && name.bytes().all(|b| b.is_ascii_digit() || (b'a'..=b'f').contains(&b))
}

fn hash_of(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

#[cfg(test)]
mod tests;
