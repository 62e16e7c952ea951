//! The bundle: a whole collection as one zip, to move it, mail it or keep it.
//!
//! From the lines of a journal and its pictures to a zip of `journal.jsonl`,
//! `pictures/<hash>` and a page that says what they are, and back. Everything in it can be read
//! without this program. Nothing is unpacked to a disk here.
//!
//! Source: ISO/IEC 21320-1 (ZIP, stored and deflated); JSON Lines for the journal.

use std::collections::BTreeMap;
use std::fmt;
use std::io::{Cursor, Read, Write};

use sha2::{Digest, Sha256};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipArchive, ZipWriter};

const JOURNAL: &str = "journal.jsonl";
const PICTURES: &str = "pictures/";
const READ_ME: &str = "read_me.txt";
/// What a person finds who opens the zip without this program.
const EXPLAINED: &str = include_str!("bundle/read_me.txt");

/// The most that is unpacked, in bytes: a thousand pictures of half a megabyte.
const MOST: u64 = 512 << 20;
/// The most that one picture may be, in bytes.
const LARGEST_PICTURE: u64 = 32 << 20;
/// The most files that are looked at.
const MOST_FILES: usize = 20_000;

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
        let sizes =
            self.pictures.values().chain(&self.lines).map(|bytes| bytes.len() as u64 + 1);
        let large = self.pictures.values().any(|bytes| bytes.len() as u64 > LARGEST_PICTURE);
        if large || sizes.sum::<u64>() > MOST || self.pictures.len() + 2 > MOST_FILES {
            return Err(BundleError::TooLarge);
        }
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        let text = self.lines.iter().flat_map(|line| line.iter().copied().chain([b'\n']));
        let text: Vec<u8> = text.collect();
        let mut put = |name: &str, bytes: &[u8], method| {
            let options = SimpleFileOptions::default()
                .compression_method(method)
                .last_modified_time(DateTime::default());
            zip.start_file(name, options)
                .and_then(|()| zip.write_all(bytes).map_err(Into::into))
                .expect("writing into memory does not fail");
        };
        put(READ_ME, EXPLAINED.as_bytes(), CompressionMethod::Deflated);
        put(JOURNAL, &text, CompressionMethod::Deflated);
        // Photographs are packed already.
        for (hash, bytes) in &self.pictures {
            put(&format!("{PICTURES}{hash}"), bytes, CompressionMethod::Stored);
        }
        Ok(zip.finish().expect("writing into memory does not fail").into_inner())
    }

    /// Unpacks a bundle.
    ///
    /// **Errors**: it is no bundle, larger than any collection, or damaged: a picture that is
    /// not what its name says counts as damage. Files that a bundle does not have are passed
    /// over.
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
        let mut journal = None;
        let mut left = MOST;
        for at in 0..zip.len() {
            let mut file = zip.by_index(at).map_err(|_| BundleError::Damaged)?;
            let name = file.name().map_err(|_| BundleError::Damaged)?.into_owned();
            let (picture, most) = match name.strip_prefix(PICTURES) {
                Some(hash) if is_hash(hash) => {
                    (Some(hash.to_owned()), left.min(LARGEST_PICTURE))
                }
                _ if name == JOURNAL => (None, left),
                _ => continue,
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
            match picture {
                Some(hash) if hash_of(&content) == hash => {
                    bundle.pictures.insert(hash, content);
                }
                Some(_) => return Err(BundleError::Damaged),
                None => journal = Some(content),
            }
        }
        let journal = journal.ok_or(BundleError::NotABundle)?;
        let lines = journal.split(|byte| *byte == b'\n').map(<[u8]>::to_vec);
        bundle.lines = lines.filter(|line| !line.is_empty()).collect();
        Ok(bundle)
    }
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

/// Why a bundle cannot be unpacked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BundleError {
    /// Not a zip, or without a journal in it.
    NotABundle,
    /// Larger than any collection, perhaps on purpose.
    TooLarge,
    /// It stops in the middle.
    CutOff,
    /// A part of it is not what it was.
    Damaged,
}

impl BundleError {
    /// What to do about it.
    pub fn remedy(&self) -> &'static str {
        match self {
            Self::NotABundle => "Give a file that “spinney pack” has made.",
            Self::TooLarge => "Copy the collection's own file instead, or take pictures out.",
            Self::CutOff => "Copy it once more from where it came from.",
            Self::Damaged => "Fetch it once more: it was cut off or changed on the way.",
        }
    }
}

impl BundleError {
    /// The sentence, about a file of this name.
    pub fn of(&self, file: &str) -> String {
        match self {
            Self::NotABundle => format!("{file} is no packed collection."),
            Self::TooLarge => format!("{file} is larger than a packed collection may be."),
            Self::CutOff => format!("{file} is damaged: it stops in the middle."),
            Self::Damaged => format!("{file} is damaged."),
        }
    }
}

impl fmt::Display for BundleError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.of("This file"))
    }
}

impl std::error::Error for BundleError {}

#[cfg(test)]
mod tests;
