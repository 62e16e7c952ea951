//! A set of kinds, as bits in machine words.

use smallvec::SmallVec;

/// A set of kinds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Set(pub(crate) SmallVec<[u64; 2]>);

impl Set {
    pub(crate) fn none(kinds: usize) -> Self {
        Self(SmallVec::from_elem(0, kinds.div_ceil(64).max(1)))
    }

    /// Those of a heap's kinds, given as words, that are in this set.
    pub(crate) fn of(&self, words: &[u64]) -> Self {
        if let ([here], [there]) = (words, self.0.as_slice()) {
            return Self(SmallVec::from_buf_and_len([here & there, 0], 1));
        }
        Self(words.iter().zip(&self.0).map(|(here, there)| here & there).collect())
    }

    /// The kinds of this set that are not in the other.
    pub(crate) fn without(&self, other: &Self) -> Self {
        if let ([here], [there]) = (self.0.as_slice(), other.0.as_slice()) {
            return Self(SmallVec::from_buf_and_len([here & !there, 0], 1));
        }
        Self(self.0.iter().zip(&other.0).map(|(here, there)| here & !there).collect())
    }

    pub(crate) fn add(&mut self, kind: usize) {
        self.0[kind / 64] |= 1 << (kind % 64);
    }

    pub(crate) fn has(&self, kind: usize) -> bool {
        self.0[kind / 64] >> (kind % 64) & 1 == 1
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.0.iter().all(|word| *word == 0)
    }

    pub(crate) fn len(&self) -> usize {
        self.0.iter().map(|word| word.count_ones() as usize).sum()
    }

    pub(crate) fn iter(&self) -> impl Iterator<Item = usize> + '_ {
        bits(&self.0)
    }

    /// Adds all kinds of the other set.
    pub(crate) fn join(&mut self, other: &Self) {
        for (word, more) in self.0.iter_mut().zip(&other.0) {
            *word |= more;
        }
    }

    /// Whether some kind of the other set is here.
    pub(crate) fn meets(&self, other: &Self) -> bool {
        self.0.iter().zip(&other.0).any(|(word, more)| word & more != 0)
    }

    /// Whether every kind of the other set is here.
    pub(crate) fn holds(&self, other: &Self) -> bool {
        self.0.iter().zip(&other.0).all(|(word, more)| more & !word == 0)
    }
}

/// The places of the ones in some words, rising.
pub(crate) fn bits(words: &[u64]) -> impl Iterator<Item = usize> + '_ {
    words.iter().enumerate().flat_map(|(at, &word)| {
        let mut left = word;
        std::iter::from_fn(move || {
            (left != 0).then(|| {
                let bit = left.trailing_zeros() as usize;
                left &= left - 1;
                at * 64 + bit
            })
        })
    })
}
