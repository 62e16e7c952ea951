//! Which files of a folder are ours: a list in the folder, with the SHA-256 of each.
//!
//! From the text of `made-by-spinney.txt` to names and hashes, and back. A file is ours while
//! its bytes are what the list says; one that somebody changed is theirs. The lines are those of
//! `sha256sum`, so that other programs can read them.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io::Read;
use std::path::Path;

use sha2::{Digest, Sha256};

/// The name of the list.
pub(super) const NAME: &str = "made-by-spinney.txt";
/// What a person reads who opens it.
const EXPLAINED: &str = "\
# Spinney made these files, and replaces them when it writes here again.
# A file that you have changed, or put here yourself, stays unless you say --force.
# Each line is the SHA-256 of a file and its name: sha256sum -c made-by-spinney.txt
";
/// How every list of ours begins, whatever else it explains.
const BEGINS: &str = "# Spinney made these files";
/// The most that is read of a list, in bytes: ours have some twenty lines.
const LONGEST: u64 = 1 << 20;

/// The files of a folder that we made. While a set changes places a name can have two hashes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Ours {
    files: BTreeMap<String, BTreeSet<String>>,
}

impl Ours {
    /// The list of a folder; empty where there is none, or none that can be read.
    pub(super) fn of(folder: &Path) -> Self {
        let text = text_of(folder).unwrap_or_default();
        let mut ours = Self::default();
        for (hash, name) in text.lines().filter_map(|line| line.split_once("  ")) {
            let plain = !name.is_empty() && !name.contains(['/', '\\']) && name != "..";
            if hash.len() == 64 && plain {
                ours.add(name, hash.to_owned());
            }
        }
        ours
    }

    pub(super) fn text(&self) -> String {
        let lines = self.files.iter().flat_map(|(name, hashes)| {
            hashes.iter().map(move |hash| format!("{hash}  {name}\n"))
        });
        std::iter::once(EXPLAINED.to_owned()).chain(lines).collect()
    }

    pub(super) fn add(&mut self, name: &str, hash: String) {
        self.files.entry(name.to_owned()).or_default().insert(hash);
    }

    /// The list with the lines of another one.
    pub(super) fn with(&self, other: &Self) -> Self {
        let mut both = self.clone();
        for (name, hashes) in &other.files {
            both.files.entry(name.clone()).or_default().extend(hashes.iter().cloned());
        }
        both
    }

    pub(super) fn names(&self) -> impl Iterator<Item = &str> {
        self.files.keys().map(String::as_str)
    }

    pub(super) fn remove(&mut self, name: &str) {
        self.files.remove(name);
    }

    /// Whether a file of the folder is one that we made, unchanged.
    pub(super) fn has(&self, folder: &Path, name: &str) -> bool {
        let path = folder.join(name);
        if name == NAME {
            return text_of(folder).is_some_and(|text| text.starts_with(BEGINS));
        }
        let Some(hashes) = self.files.get(name) else { return false };
        fs::symlink_metadata(&path).is_ok_and(|file| file.is_file())
            && hash_of_file(&path).is_some_and(|hash| hashes.contains(&hash))
    }
}

/// The text of the list of a folder; None: there is none, or it is longer than any of ours.
fn text_of(folder: &Path) -> Option<String> {
    let path = folder.join(NAME);
    let list = fs::symlink_metadata(&path).ok().filter(|it| it.is_file())?;
    (list.len() <= LONGEST).then(|| fs::read_to_string(path).ok())?
}

/// The SHA-256 of some bytes, in hexadecimal digits.
pub(super) fn hash_of(bytes: &[u8]) -> String {
    hexadecimal(&Sha256::digest(bytes))
}

fn hash_of_file(path: &Path) -> Option<String> {
    let mut file = fs::File::open(path).ok()?;
    let (mut hash, mut part) = (Sha256::new(), [0; 64 << 10]);
    loop {
        match file.read(&mut part).ok()? {
            0 => return Some(hexadecimal(&hash.finalize())),
            read => hash.update(&part[..read]),
        }
    }
}

fn hexadecimal(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
