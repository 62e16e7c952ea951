//! A set of kinds as bits: quick to lay over another, for comparing each kind with each.
//!
//! It knows kinds by their place in the matrix and nothing else of them.

/// A set of kinds, one bit each.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Bits(Vec<u64>);

impl Bits {
    /// Room for so many kinds, none of them in.
    pub(crate) fn none(kinds: usize) -> Self {
        Self(vec![0; kinds.div_ceil(64)])
    }

    /// Puts a kind in.
    pub(crate) fn add(&mut self, taxon: usize) {
        self.0[taxon / 64] |= 1 << (taxon % 64);
    }

    /// Whether a kind is in.
    pub(crate) fn has(&self, taxon: usize) -> bool {
        self.0[taxon / 64] >> (taxon % 64) & 1 == 1
    }

    /// The kinds in it, rising.
    pub(crate) fn iter(&self) -> impl Iterator<Item = usize> {
        self.0.iter().enumerate().flat_map(|(word, bits)| {
            let bits = *bits;
            (0..64).filter(move |bit| bits >> bit & 1 == 1).map(move |bit| word * 64 + bit)
        })
    }

    /// Takes a kind out.
    pub(crate) fn remove(&mut self, taxon: usize) {
        self.0[taxon / 64] &= !(1 << (taxon % 64));
    }

    /// Whether no kind is in.
    pub(crate) fn is_empty(&self) -> bool {
        self.0.iter().all(|word| *word == 0)
    }

    /// The kinds in both.
    pub(crate) fn and(&self, other: &Self) -> Self {
        Self(self.0.iter().zip(&other.0).map(|(a, b)| a & b).collect())
    }

    /// How many kinds are in both.
    pub(crate) fn common(&self, other: &Self) -> u32 {
        self.0.iter().zip(&other.0).map(|(a, b)| (a & b).count_ones()).sum()
    }
}
