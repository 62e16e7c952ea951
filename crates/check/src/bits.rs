//! A set of kinds, or of characters, as bits: quick to lay over another.
//!
//! It knows them by their place in the matrix and nothing else of them.

/// A set of kinds, or of characters, one bit each.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(crate) struct Bits(Vec<u64>);

impl Bits {
    /// Room for so many kinds, none of them in.
    pub(crate) fn none(kinds: usize) -> Self {
        Self(vec![0; kinds.div_ceil(64)])
    }

    /// So many, all of them in.
    pub(crate) fn all(many: usize) -> Self {
        let mut all = Self::none(many);
        (0..many).for_each(|one| all.add(one));
        all
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
            let mut bits = *bits;
            std::iter::from_fn(move || {
                let lowest = (bits != 0).then(|| word * 64 + bits.trailing_zeros() as usize);
                bits &= bits.wrapping_sub(1);
                lowest
            })
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

    /// How many are in.
    pub(crate) fn count(&self) -> u32 {
        self.0.iter().map(|word| word.count_ones()).sum()
    }

    /// Whether all of it is in the other.
    pub(crate) fn within(&self, other: &Self) -> bool {
        self.0.iter().zip(&other.0).all(|(a, b)| a & !b == 0)
    }

    /// Puts all of another in.
    pub(crate) fn add_all(&mut self, other: &Self) {
        self.0.iter_mut().zip(&other.0).for_each(|(a, b)| *a |= b);
    }

    /// The same as words of 64 bits, the lowest first.
    pub(crate) fn words(&self) -> &[u64] {
        &self.0
    }

    /// Keeps what is in these words as well.
    pub(crate) fn keep_only(&mut self, words: &[u64]) {
        self.0.iter_mut().zip(words).for_each(|(a, b)| *a &= b);
    }

    /// Takes what is in these words out.
    pub(crate) fn take_out(&mut self, words: &[u64]) {
        self.0.iter_mut().zip(words).for_each(|(a, b)| *a &= !b);
    }
}
