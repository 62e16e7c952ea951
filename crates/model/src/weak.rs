//! Where a table is weak: which columns it cannot do without, which pairs of kinds hang on
//! little, and which cells to go and look at next.
//!
//! What `check` works out of a matrix alone, for people and programs to read. "Parts" means
//! that a question about the character has the one kind wholly on yes and the other wholly on
//! no, and that neither is in its way (`docs/KEY.md` 3 to 5).

use std::collections::BTreeSet;

use crate::{CharacterIx, TaxonIx};

/// Where a table is weak.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Weak {
    /// How many pairs of kinds were compared; None: there were too many, and nothing else
    /// here says anything.
    pub pairs: Option<usize>,
    /// By how many characters the pairs are parted: so many pairs by none, by one, by two, …
    /// The last number is not 0.
    pub distances: Vec<usize>,
    /// Pairs that no character parts, in the order of the table.
    pub alike: Vec<Alike>,
    /// Pairs that a single character parts, in the order of the table.
    pub fragile: Vec<Fragile>,
    /// The fewest characters that part every pair that all of them part.
    pub once: Fewest,
    /// The fewest characters that part every pair twice, or once where no second character
    /// parts it: then one wrong observation is noticed in every pair but the fragile ones.
    pub twice: Fewest,
    /// Blank cells that could part or secure a pair, the most useful first, as many as asked.
    pub next: Vec<Look>,
    /// How many blank cells could do so, those above included.
    pub useful_blanks: usize,
}

/// Two kinds that no character parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Alike {
    /// The two.
    pub taxa: [TaxonIx; 2],
    /// What might help.
    pub hope: Hope,
}

/// What might part two kinds that are still alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Hope {
    /// One blank cell of theirs, filled in.
    OneBlank,
    /// Several blank cells of theirs, all filled in.
    SeveralBlanks,
    /// Nothing that the table asks about: a new difference must be found.
    NewDifference,
}

/// Two kinds that a single character parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fragile {
    /// The two.
    pub taxa: [TaxonIx; 2],
    /// What parts them.
    pub character: CharacterIx,
}

/// The smallest sets of characters that do something.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fewest {
    /// No set with fewer characters does it.
    pub at_least: usize,
    /// The smallest that was found has so many.
    pub best: usize,
    /// Smallest sets that were found, in the order of the table; there is always one.
    pub sets: Vec<BTreeSet<CharacterIx>>,
    /// Whether these are all there are of their size.
    pub all: bool,
    /// Characters that are in every set that does it, small or large.
    pub indispensable: BTreeSet<CharacterIx>,
}

impl Fewest {
    /// Whether no smaller set does it.
    pub fn proved(&self) -> bool {
        self.at_least == self.best
    }
}

/// A blank cell that is worth a look.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Look {
    /// Whose cell it is.
    pub taxon: TaxonIx,
    /// In which column.
    pub character: CharacterIx,
    /// Kinds alike to it that some value in this cell would part from it.
    pub parts: Vec<TaxonIx>,
    /// Kinds alike to it that could be parted from it if other blank cells of the two are
    /// filled in as well; this cell alone does not do it, nor does any other.
    pub with_others: Vec<TaxonIx>,
    /// Kinds parted from it by one character, to which some value in this cell would give
    /// another difference.
    pub secures: Vec<TaxonIx>,
}
