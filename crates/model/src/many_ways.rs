//! A key in which a question may have three or four ways (`docs/KEY.md` 19).

use std::collections::BTreeSet;

use crate::{Key, Share, Stopped};

/// The key of least effort in which a question may have several ways.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ManyWays {
    /// The key as questions of yes and no. A tree.
    pub key: Key,
    /// The numbers of the couplets that are answered in the same look as the one before them:
    /// about the same character, and at no cost.
    pub same_look: BTreeSet<u32>,
    /// Its effort.
    pub total: Share,
    /// No such key takes less; equal to `total` where that is proved.
    pub lower_bound: Share,
    /// Looks that a find takes on average.
    pub mean_questions: Share,
    /// The most looks on any path.
    pub longest: u32,
    /// Why the search ended before it was sure; None: the key is proved best.
    pub stopped: Option<Stopped>,
    /// How many heaps were taken apart.
    pub heaps: u64,
}
