//! How the finds of kinds spread: from the least to the most, what stands far out, where two
//! kinds are cut apart, and how many more to measure before a cut is trusted.
//!
//! What `check` works out of [`Specimens`](crate::Specimens), for people and programs to read.
//! Means and standard deviations are floats in the unit in which the character is kept.

use crate::{CharacterIx, Quantity, TaxonIx};

/// How finds spread.
#[derive(Clone, Debug, PartialEq)]
pub struct Spread {
    /// Of every kind and every character in numbers: all finds of it, and behind them each part
    /// that is marked.
    pub of_kinds: Vec<SpreadOf>,
    /// Of every two kinds and every character in numbers the best cut; None: there are too many
    /// kinds to compare.
    pub cuts: Option<Vec<Cut>>,
}

/// How one kind spreads in one character.
#[derive(Clone, Debug, PartialEq)]
pub struct SpreadOf {
    /// The kind.
    pub taxon: TaxonIx,
    /// The character.
    pub character: CharacterIx,
    /// The part of the plant; None: all finds of the kind.
    pub part: Option<String>,
    /// On how many finds it rests.
    pub finds: usize,
    /// Of how many plants they are; None: that is not written of each.
    pub plants: Option<usize>,
    /// The smallest.
    pub least: Quantity,
    /// The largest.
    pub most: Quantity,
    /// The mean.
    pub mean: f64,
    /// The standard deviation, with n - 1; None: one find has none.
    pub deviation: Option<f64>,
    /// Finds far from the others; of a part alone nothing is said.
    pub outliers: Vec<Outlier>,
}

/// A find far from the others of its kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Outlier {
    /// Its place among the finds.
    pub find: usize,
    /// What was measured.
    pub value: Quantity,
    /// Beyond the outer fence, not only beyond the inner one.
    pub far: bool,
}

/// Where two kinds are cut apart in a character.
#[derive(Clone, Debug, PartialEq)]
pub struct Cut {
    /// The character.
    pub character: CharacterIx,
    /// The kind below and the kind above.
    pub taxa: [TaxonIx; 2],
    /// That much or more is above.
    pub at: Quantity,
    /// How many finds there are of each.
    pub finds: [usize; 2],
    /// How many finds of each are on the wrong side.
    pub wrong: [usize; 2],
    /// How many of each come out on the wrong side of a cut that was made without them; None:
    /// there are too many finds to leave each out, or one kind has a single one.
    pub left_out: Option<[usize; 2]>,
    /// The share of each on the wrong side if both were normal; None: one find has no spread.
    pub normal: [Option<f64>; 2],
    /// How far the cut stays from every measurement; None: some are on the wrong side.
    pub margin: Option<Quantity>,
    /// Whether each has been measured often enough.
    pub trust: [Trust; 2],
}

/// Whether a kind has been measured often enough to trust a cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trust {
    /// It has.
    Enough,
    /// So many more are needed, if they turn out like those that there are.
    More(usize),
    /// More than is worth it.
    TooMany,
    /// However many are measured: too large a share is on the wrong side.
    Never,
}

impl Cut {
    /// The share of finds on the wrong side, every kind counting alike, by leaving each out.
    pub fn left_out_share(&self) -> Option<f64> {
        let [low, high] = self.left_out?;
        Some((low as f64 / self.finds[0] as f64 + high as f64 / self.finds[1] as f64) / 2.0)
    }

    /// The share on the wrong side if both were normal, every kind counting alike.
    pub fn normal_share(&self) -> Option<f64> {
        let [low, high] = self.normal;
        Some((low? + high?) / 2.0)
    }
}
