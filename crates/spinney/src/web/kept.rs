//! Where a collection is kept while it is open.
//!
//! From lines and pictures to where they stay: in a file, or for the demo in memory, and gone
//! afterwards. What went wrong is said as a trouble of the host.

use std::collections::{BTreeMap, BTreeSet};

use spinney_desk::{KeptIn, TooLarge, Trouble};
use spinney_model::FileTrouble;
use spinney_store::{Hash, Store, StoreError};

use super::limits::LONGEST_COPY;
use crate::failure;

/// A journal with its pictures.
pub(crate) enum Kept {
    /// Gone when the program ends.
    InMemory(InMemory),
    /// On the disk before it is acknowledged.
    InFile(Store),
}

/// A journal in memory.
#[derive(Default)]
pub(crate) struct InMemory {
    lines: Vec<Vec<u8>>,
    pictures: BTreeMap<Hash, Vec<u8>>,
}

/// Why something was not kept or read.
#[derive(Debug)]
pub(crate) enum NotKept {
    /// Another program has written meanwhile.
    Moved,
    /// Another program has removed something for good meanwhile.
    Rewritten,
    /// It cannot be done.
    Trouble(Trouble),
}

impl Kept {
    /// These lines, in memory only.
    pub(crate) fn in_memory(lines: Vec<Vec<u8>>) -> Self {
        Self::InMemory(InMemory { lines, pictures: BTreeMap::new() })
    }

    /// The number of the last line.
    pub(crate) fn head(&self) -> Result<u64, NotKept> {
        match self {
            Self::InMemory(memory) => Ok(memory.lines.len() as u64),
            Self::InFile(store) => store.head().map_err(not_kept),
        }
    }

    /// The lines after a number.
    pub(crate) fn lines(&self, after: u64) -> Result<Vec<Vec<u8>>, NotKept> {
        match self {
            Self::InMemory(memory) => {
                Ok(memory.lines.iter().skip(after as usize).cloned().collect())
            }
            Self::InFile(store) => {
                let too_large = journal_too_large(store, 0).map_err(not_kept)?;
                if let Some(why) = too_large {
                    return Err(NotKept::Trouble(Trouble::TooLarge(self.name(), why)));
                }
                let rows = store.rows(after).map_err(not_kept)?;
                Ok(rows.into_iter().map(|row| row.bytes).collect())
            }
        }
    }

    /// Keeps lines and pictures after line `head`, all or nothing.
    pub(crate) fn append(
        &mut self,
        head: u64,
        lines: &[Vec<u8>],
        pictures: &[Vec<u8>],
    ) -> Result<(), NotKept> {
        match self {
            Self::InMemory(memory) => {
                let held: usize = memory.pictures.values().map(Vec::len).sum();
                let more: usize = pictures.iter().map(Vec::len).sum();
                if held + more > LONGEST_COPY {
                    return Err(NotKept::Trouble(Trouble::MemoryFull(LONGEST_COPY >> 20)));
                }
                let pictures = pictures.iter().map(|bytes| (Hash::of(bytes), bytes.clone()));
                memory.pictures.extend(pictures);
                memory.lines.extend_from_slice(lines);
                Ok(())
            }
            Self::InFile(store) => {
                store.append(head, lines, pictures).map(drop).map_err(not_kept)
            }
        }
    }

    /// Removes everything for good but these lines and pictures.
    pub(crate) fn rewrite(
        &mut self,
        head: u64,
        lines: &[Vec<u8>],
        pictures: &BTreeSet<String>,
    ) -> Result<(), NotKept> {
        let keep: BTreeSet<Hash> =
            pictures.iter().filter_map(|hash| hash.parse().ok()).collect();
        match self {
            Self::InMemory(memory) => {
                memory.pictures.retain(|hash, _| keep.contains(hash));
                memory.lines = lines.to_vec();
                Ok(())
            }
            Self::InFile(store) => {
                store.rewrite(head, lines, &keep).map(drop).map_err(not_kept)
            }
        }
    }

    /// Puts a collection in the place of what is kept. A file takes one only while it is empty:
    /// what it holds is never written over.
    pub(crate) fn replace(
        &mut self,
        head: u64,
        lines: &[Vec<u8>],
        pictures: &[Vec<u8>],
    ) -> Result<(), NotKept> {
        match self {
            Self::InMemory(memory) if memory.lines.len() as u64 != head => Err(NotKept::Moved),
            Self::InMemory(memory) => {
                let before = std::mem::take(memory);
                let kept = self.append(0, lines, pictures);
                if let (Err(_), Self::InMemory(memory)) = (&kept, self) {
                    *memory = before;
                }
                kept
            }
            Self::InFile(_) => self.append(0, lines, pictures),
        }
    }

    /// Where it is, as the desk is told.
    pub(crate) fn place(&self) -> KeptIn {
        match self {
            Self::InMemory(_) => KeptIn::Memory,
            Self::InFile(_) => KeptIn::File,
        }
    }

    /// The bytes of a picture; None: it is not here.
    pub(crate) fn picture(&self, hash: &str) -> Result<Option<Vec<u8>>, NotKept> {
        let Ok(hash) = hash.parse::<Hash>() else { return Ok(None) };
        match self {
            Self::InMemory(memory) => Ok(memory.pictures.get(&hash).cloned()),
            Self::InFile(store) => store.picture(hash).map_err(not_kept),
        }
    }

    /// Opens the file anew, after another program has removed something for good.
    pub(crate) fn open_again(&mut self) -> Result<(), NotKept> {
        if let Self::InFile(store) = self {
            *store = Store::open(store.path()).map_err(not_kept)?;
        }
        Ok(())
    }

    /// What to call it in a sentence.
    pub(crate) fn name(&self) -> String {
        match self {
            Self::InMemory(_) => String::new(),
            Self::InFile(store) => store.path().display().to_string(),
        }
    }
}

/// What of a journal is more than is held; it is counted before any of it is.
pub(crate) fn journal_too_large(
    store: &Store,
    after: u64,
) -> Result<Option<TooLarge>, StoreError> {
    let (lines, bytes) = store.size(after)?;
    let number = |number: u64| usize::try_from(number).unwrap_or(usize::MAX);
    Ok(TooLarge::of_journal(number(lines), number(bytes)))
}

fn not_kept(error: StoreError) -> NotKept {
    let name = |path: std::path::PathBuf| path.display().to_string();
    NotKept::Trouble(match error {
        StoreError::Moved { .. } => return NotKept::Moved,
        StoreError::Rewritten => return NotKept::Rewritten,
        StoreError::ReadOnly { path } => Trouble::ReadOnly(name(path)),
        StoreError::Full { path } => Trouble::Full(name(path)),
        StoreError::Locked { path } => Trouble::Locked(name(path)),
        StoreError::Newer { path, .. } => Trouble::Newer(name(path)),
        StoreError::Damaged { path } | StoreError::NotACollection { path } => {
            Trouble::Damaged(name(path))
        }
        StoreError::Other { path, why } => {
            Trouble::NotReached(name(path), failure::of_fault(why))
        }
        StoreError::Missing { path } | StoreError::Exists { path } => {
            Trouble::NotReached(name(path), FileTrouble::Gone)
        }
    })
}
