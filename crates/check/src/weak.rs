//! Where a table is weak: from a matrix to the fewest columns that do, the pairs that hang on
//! little, and the blank cells to go and look at next.
//!
//! A character parts a pair here exactly where it does for [`table`](crate::table). Kinds are
//! looked at two by two: that a third kind may stand in the way of a question at some heap is
//! for a key to mind. Nothing here builds a key.

mod clause;
mod demands;
mod dividing;
mod fewest;
mod looks;
mod search;

use spinney_model::{Alike, Fewest, Fragile, Hope, Matrix, TaxonIx, Weak};

use crate::pairs::{self, Differences};
use crate::values::Values;
use clause::Clause;
use dividing::Dividing;

/// How far to look.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WeakSettings {
    /// Steps for each of the two searches for the fewest characters: a step is a look at one
    /// pair. Then the best so far is given with its bound.
    pub steps: u64,
    /// How many smallest sets are listed at most.
    pub sets_listed: usize,
    /// How many blank cells are named at most.
    pub cells_named: usize,
}

impl Default for WeakSettings {
    fn default() -> Self {
        Self { steps: 25_000_000, sets_listed: 20, cells_named: 10 }
    }
}

/// More comparisons of two cells than this take too long for somebody who waits.
const MOST_COMPARISONS: usize = 200_000_000;

/// Where a table is weak.
///
/// **Guarantees**: the same arguments give the same answer. What is said of the fewest
/// characters is proved; where the steps ran out, both ends of what is proved are given.
///
/// **Cost**: quadratic in the kinds up to 1,500 of them, times the characters; beyond, and
/// beyond 200 million pairs of cells, nothing is compared and `pairs` is None.
pub fn weak(matrix: &Matrix, settings: &WeakSettings) -> Weak {
    if !compared(matrix) {
        return not_compared();
    }
    let kinds = matrix.taxa().len();
    let pairs = kinds * kinds.saturating_sub(1) / 2;
    let values = Values::new(matrix, None);
    let differences = Differences::of(&values);
    let mut compared = Compared::new(kinds, matrix.characters().len());
    for one in 0..kinds {
        for other in one + 1..kinds {
            compared.add(&differences, [TaxonIx(one), TaxonIx(other)]);
        }
    }
    let fewest = |wanted: u32| {
        let clauses = clause::reduced(&compared.clauses, wanted);
        let dividing = Dividing::new(&differences, &compared, wanted);
        fewest::fewest(&clauses, &dividing, compared.characters, settings)
    };
    let (once, twice) = (fewest(1), fewest(2));
    let looks = looks::find(&differences, &mut compared, settings.cells_named);
    Weak {
        pairs: Some(pairs),
        distances: compared.distances,
        alike: compared.alike,
        fragile: compared.fragile,
        once,
        twice,
        next: looks.next,
        useful_blanks: looks.useful,
    }
}

/// Whether a table is small enough to compare each kind with each.
pub(crate) fn compared(matrix: &Matrix) -> bool {
    let kinds = matrix.taxa().len();
    let pairs = kinds * kinds.saturating_sub(1) / 2;
    kinds <= pairs::MOST_KINDS
        && pairs.saturating_mul(matrix.characters().len()) <= MOST_COMPARISONS
}

/// All pairs, with what parts them.
struct Compared {
    kinds: usize,
    characters: usize,
    distances: Vec<usize>,
    alike: Vec<Alike>,
    fragile: Vec<Fragile>,
    clauses: Vec<Clause>,
    /// By how many characters each pair is parted, row after row.
    apart: Vec<u32>,
}

impl Compared {
    fn new(kinds: usize, characters: usize) -> Self {
        Self {
            kinds,
            characters,
            distances: Vec::new(),
            alike: Vec::new(),
            fragile: Vec::new(),
            clauses: Vec::new(),
            apart: vec![0; kinds * kinds],
        }
    }

    fn add(&mut self, differences: &Differences<'_, '_>, taxa: [TaxonIx; 2]) {
        let between = differences.between(taxa[0], taxa[1]);
        let distance = between.len();
        if self.distances.len() <= distance {
            self.distances.resize(distance + 1, 0);
        }
        self.distances[distance] += 1;
        for (one, other) in [(taxa[0], taxa[1]), (taxa[1], taxa[0])] {
            self.apart[one.0 * self.kinds + other.0] =
                u32::try_from(distance).expect("a table has fewer columns");
        }
        match between.as_slice() {
            [] => self.alike.push(Alike { taxa, hope: Hope::NewDifference }),
            [only] => self.fragile.push(Fragile { taxa, character: only.character }),
            _ => {}
        }
        if distance > 0 {
            self.clauses.push(Clause::of(&between, self.characters));
        }
    }

    /// By how many characters two kinds are parted.
    fn apart(&self, one: usize, other: usize) -> u32 {
        self.apart[one * self.kinds + other]
    }
}

/// There were too many kinds.
fn not_compared() -> Weak {
    let nothing = Fewest {
        at_least: 0,
        best: 0,
        sets: Vec::new(),
        all: false,
        indispensable: std::collections::BTreeSet::new(),
    };
    Weak {
        pairs: None,
        distances: Vec::new(),
        alike: Vec::new(),
        fragile: Vec::new(),
        once: nothing.clone(),
        twice: nothing,
        next: Vec::new(),
        useful_blanks: 0,
    }
}
