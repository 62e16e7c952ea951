//! Last season's key for this season's table: what stays, what changes, and what that costs.

use crate::{Key, Share, Stopped, TaxonIx};

/// A key that was made from an old one, and how change and effort are weighed
/// (`docs/KEY.md` 16).
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Revision {
    /// The new key.
    pub key: Key,
    /// How many questions changed: rewritten, new, or struck out.
    pub changes: u32,
    /// The effort of the new key.
    pub effort: Share,
    /// Questions a find takes on average, whatever they cost.
    pub mean_questions: Share,
    /// The most questions on any path.
    pub longest: u32,
    /// The effort of the best key from this table, however much it changes.
    pub best: Share,
    /// Effort that may be lost against the best, as it was asked for.
    pub loss: Share,
    /// The least effort for so many changes: rising changes, falling effort.
    pub curve: Vec<Tradeoff>,
    /// No key has fewer changes than this.
    pub fewest: u32,
    /// What became of the old questions, and which are new.
    pub parts: Parts,
    /// Names at the old key's ends that are no kinds of this table.
    pub gone: Vec<String>,
    /// Kinds that the old key does not name.
    pub arrived: Vec<TaxonIx>,
    /// Why it is not sure that no other key within the loss has fewer changes, or as many and
    /// less effort; None: it is.
    pub stopped: Option<Stopped>,
    /// How many heaps were taken apart.
    pub heaps: u64,
}

/// The least effort for so many changes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tradeoff {
    /// At most so many changes.
    pub changes: u32,
    /// The least effort that was found.
    pub effort: Share,
    /// Whether no key with so many changes takes less.
    pub proved: bool,
}

/// What became of the old questions, by their numbers on paper.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Parts {
    /// Kept as they were: old number, new number.
    pub kept: Vec<(u32, u32)>,
    /// Something else is asked in their place: old number, new number.
    pub rewritten: Vec<(u32, u32)>,
    /// New questions: new number.
    pub added: Vec<u32>,
    /// Struck out: old number.
    pub struck: Vec<u32>,
}
