//! What a pair of kinds asks of a set of characters: that so many of those that part it be in.
//!
//! From the differences of a pair to one demand, and from all demands to those that matter:
//! where {edge} is asked for, {edge, feel} is fulfilled. It does not search.

use crate::bits::Bits;
use crate::pairs::Difference;

/// What one pair asks for.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Clause {
    /// Characters that part it, each by itself.
    pub(super) alone: Bits,
    /// Characters that part it only together with governors that must be asked before.
    pub(super) together: Vec<Bits>,
    /// So many differences are wanted.
    pub(super) wanted: u32,
}

impl Clause {
    /// The demand of a pair with these differences, for the first of them.
    pub(super) fn of(differences: &[Difference], characters: usize) -> Self {
        let mut clause =
            Self { alone: Bits::none(characters), together: Vec::new(), wanted: 1 };
        for difference in differences {
            if difference.after.is_empty() {
                clause.alone.add(difference.character.0);
            } else {
                let mut all = Bits::none(characters);
                all.add(difference.character.0);
                difference.after.iter().for_each(|governor| all.add(governor.0));
                clause.together.push(all);
            }
        }
        clause
    }

    /// How many differences there are at all.
    pub(super) fn differences(&self) -> usize {
        self.alone.count() as usize + self.together.len()
    }

    /// How many of its differences these characters show.
    pub(super) fn found(&self, chosen: &Bits) -> u32 {
        let together = self.together.iter().filter(|all| all.within(chosen)).count();
        self.alone.common(chosen) + together as u32
    }

    /// Whether these characters are enough.
    pub(super) fn met(&self, chosen: &Bits) -> bool {
        self.found(chosen) >= self.wanted
    }

    /// How many differences there are without these characters.
    pub(super) fn without(&self, banned: &Bits) -> u32 {
        let together = self.together.iter().filter(|all| all.common(banned) == 0).count();
        self.alone.count() - self.alone.common(banned) + together as u32
    }

    /// Characters that could still add to it.
    pub(super) fn open(&self, chosen: &Bits, banned: &Bits) -> Bits {
        let mut open = self.alone.clone();
        for all in self.together.iter().filter(|all| all.common(banned) == 0) {
            open.add_all(all);
        }
        open.take_out(chosen.words());
        open.take_out(banned.words());
        open
    }
}

/// So many of the shortest demands are laid over all the others, to drop what follows anyway.
const MOST_LAID_OVER: usize = 64;

/// The demands for so many differences, or as many as a pair has; without those that follow
/// from others; the shortest first.
pub(super) fn reduced(clauses: &[Clause], wanted: u32) -> Vec<Clause> {
    let mut all: Vec<(usize, Clause)> = clauses
        .iter()
        .map(|clause| {
            let differences = clause.differences();
            let wanted = wanted.min(u32::try_from(differences).unwrap_or(u32::MAX));
            (differences, Clause { wanted, ..clause.clone() })
        })
        .collect();
    all.sort_unstable();
    all.dedup();
    let mut kept: Vec<Clause> = Vec::new();
    for (_, clause) in all {
        let follows = kept.iter().take(MOST_LAID_OVER).any(|shorter| {
            shorter.together.is_empty()
                && shorter.wanted >= clause.wanted
                && shorter.alone.within(&clause.alone)
        });
        if !follows {
            kept.push(clause);
        }
    }
    kept
}
