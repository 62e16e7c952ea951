//! Every character that parts two kinds: from the matrix to the differences of a pair.
//!
//! A character parts a pair here exactly where it does for [`Pairs`](super::Pairs). Where a
//! kind varies in a governor, the governed character parts it only after a question about the
//! governor: those governors are named with it. What blank cells could add stands in `filled`.

use std::collections::BTreeMap;

use spinney_model::{CharacterIx, TaxonIx};

use super::{Fact, Parts, parts, row};
use crate::settled::{self, Settled};
use crate::values::Values;

/// A character that parts two kinds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Difference {
    pub(crate) character: CharacterIx,
    /// Governors that must have been asked about before; mostly none.
    pub(crate) after: Vec<CharacterIx>,
}

/// What every kind contributes in every character.
pub(crate) struct Differences<'v, 'm> {
    pub(super) values: &'v Values<'m>,
    pub(super) settled: Settled,
    pub(super) rows: Vec<Vec<Fact>>,
    /// Kinds and characters for which governors must be asked first.
    after: BTreeMap<(TaxonIx, CharacterIx), Vec<CharacterIx>>,
    /// Column after column: the characters that it governs, however far below.
    pub(super) governs: Vec<Vec<CharacterIx>>,
}

impl<'v, 'm> Differences<'v, 'm> {
    /// Reads every row.
    pub(crate) fn of(values: &'v Values<'m>) -> Self {
        let matrix = values.matrix;
        let settled = Settled::of(values);
        let rows = matrix.taxon_indices().map(|taxon| row(values, &settled, taxon)).collect();
        let mut after = BTreeMap::new();
        let mut governs = vec![Vec::new(); matrix.characters().len()];
        for character in matrix.character_indices() {
            for governor in settled::above(values, character) {
                governs[governor.character.0].push(character);
            }
            if matrix.character(character).governor.is_none() {
                continue;
            }
            for taxon in matrix.taxon_indices() {
                let before = settled.before(values, taxon, character);
                if !before.is_empty() {
                    let asked = before.into_iter().map(|(governor, _)| governor).collect();
                    after.insert((taxon, character), asked);
                }
            }
        }
        Self { values, settled, rows, after, governs }
    }

    /// Whether any character has a governor.
    pub(crate) fn governed(&self) -> bool {
        self.governs.iter().any(|governed| !governed.is_empty())
    }

    /// All characters that part the two, in the order of the table.
    pub(crate) fn between(&self, one: TaxonIx, other: TaxonIx) -> Vec<Difference> {
        let after = |character: CharacterIx| {
            let mut after = Vec::new();
            if !self.after.is_empty() {
                let of = |taxon| self.after.get(&(taxon, character));
                after.extend([one, other].into_iter().filter_map(of).flatten().copied());
                after.sort_unstable();
                after.dedup();
            }
            Difference { character, after }
        };
        let all = self.values.matrix.character_indices();
        all.filter(|c| self.part(*c, one, other)).map(after).collect()
    }

    pub(super) fn part(&self, character: CharacterIx, one: TaxonIx, other: TaxonIx) -> bool {
        let [a, b] = [one, other].map(|taxon| self.rows[taxon.0][character.0]);
        matches!(parts(self.values, character, a, b), Parts::Yes)
            && !settled::lack_together(self.values, one, other, character)
    }
}
