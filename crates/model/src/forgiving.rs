//! A forgiving key: a key in which some kinds are looked for on the wrong side of a question as
//! well, so that a pupil who misread it can still come out right (`docs/KEY.md` 18).

use crate::{Answer, Key, Share, Stopped, TaxonIx};

/// The key with the most right ends for every number of second places, from none upwards.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ForgivingKeys {
    /// One for each budget: at most 0, 1, 2, … second places.
    pub keys: Vec<Forgiving>,
    /// How many heaps were taken apart.
    pub heaps: u64,
}

/// The key with the most right ends that has at most so many second places.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Forgiving {
    /// How many second places it may have.
    pub budget: u32,
    /// The key. An end may stand in it twice.
    pub key: Key,
    /// Which kinds have a second place, and after which question; in the order of the key.
    pub both_ways: Vec<BothWays>,
    /// The share of all finds that comes out right.
    pub right: Share,
    /// No key with so many second places brings out more; equal to `right` where that is proved.
    pub at_most: Share,
    /// Why the search ended before it was sure; None: the key is proved best.
    pub stopped: Option<Stopped>,
}

/// One kind that is looked for on the wrong side of one question as well.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BothWays {
    /// The number of the question.
    pub couplet: u32,
    /// The kind.
    pub taxon: TaxonIx,
    /// The wrong answer, after which it has its second place.
    pub after: Answer,
    /// The share of all finds that comes out right only because of it.
    pub saves: Share,
}
