//! The best keys of a table, one after the other, and how many are equally good.

use crate::{Key, Share};

/// The best keys that differ in their nested heaps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BestKeys {
    /// The keys, the best first, each with its effort.
    pub keys: Vec<(Key, Share)>,
    /// Whether no other key stands between these; false: the search was not at its end.
    pub sure: bool,
    /// How many keys are as good as the best; None: not counted to the end.
    pub as_good: Option<AsGood>,
}

/// How many keys are as good as the best.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AsGood {
    /// Two questions that part a heap alike make two keys; two thresholds of one character that
    /// do so make one.
    pub keys: u128,
    /// Keys that differ in their nested heaps.
    pub nestings: u128,
}
