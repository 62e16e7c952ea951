//! Kinds that may not have a character, where another question can settle it first.
//!
//! Holly with leaflets or without may not be asked for its blade; but where ash, which always
//! has leaflets, makes "has it leaflets?" worth asking, holly without leaflets can be asked
//! afterwards (`docs/KEY.md` 2, 4 and 5). It looks at single columns and is generous: what it
//! calls settled may still be blocked by somebody else.

use std::collections::BTreeSet;

use spinney_model::{CharacterIx, Governor, TaxonIx};

use crate::separable::stands_before;
use crate::values::{Has, Left, Taken, Values};

/// Which governors some two kinds of the table make worth asking.
#[derive(Clone)]
pub(crate) struct Settled {
    worth_asking: Vec<bool>,
}

impl Settled {
    /// Looks for two kinds without a common state in every governor.
    pub(crate) fn of(values: &Values<'_>) -> Self {
        let characters = values.matrix.characters();
        let governors: BTreeSet<CharacterIx> =
            characters.iter().flat_map(|c| &c.governor).map(|g| g.character).collect();
        let none = Taken::new();
        let mut worth_asking = vec![false; characters.len()];
        for governor in governors {
            let shown: BTreeSet<u64> = values
                .matrix
                .taxon_indices()
                .filter(|taxon| values.has(*taxon, governor, &none) != Has::No)
                .map(|taxon| values.states(taxon, governor, &none))
                .collect();
            let ordered = characters[governor.0].ordered;
            let apart = |one: u64, other: u64| match ordered {
                true => stands_before(one, other),
                false => one & other == 0,
            };
            worth_asking[governor.0] =
                shown.iter().any(|one| shown.iter().any(|other| apart(*one, *other)));
        }
        Self { worth_asking }
    }

    /// The same where some two kinds make this governor worth asking after all.
    pub(crate) fn now_worth_asking(&mut self, governor: CharacterIx) {
        self.worth_asking[governor.0] = true;
    }

    /// What questions about the governors can have taken from a kind, so that it has the
    /// character; nothing where it has it anyway.
    pub(crate) fn before(
        &self,
        values: &Values<'_>,
        taxon: TaxonIx,
        character: CharacterIx,
    ) -> Taken {
        let mut taken = all_before(values, taxon, character);
        taken.retain(|(governor, _)| self.worth_asking[governor.0]);
        taken
    }
}

/// The same, were every governor asked before.
pub(crate) fn all_before(values: &Values<'_>, taxon: TaxonIx, character: CharacterIx) -> Taken {
    let right = |governor: &Governor| {
        Some((governor.character, Left::States(mixed(values, taxon, governor)?)))
    };
    let mut taken: Taken = above(values, character).filter_map(right).collect();
    taken.sort_unstable();
    taken
}

/// Whether two kinds may both lack a character by one governor: then they stay together there.
pub(crate) fn lack_together(
    values: &Values<'_>,
    one: TaxonIx,
    other: TaxonIx,
    character: CharacterIx,
) -> bool {
    above(values, character).any(|governor| {
        [one, other].into_iter().all(|taxon| mixed(values, taxon, governor).is_some())
    })
}

/// The right states of a kind that has wrong ones as well.
pub(crate) fn mixed(values: &Values<'_>, taxon: TaxonIx, governor: &Governor) -> Option<u64> {
    let right = governor.states.iter().fold(0_u64, |bits, state| bits | 1 << state.0);
    let states = values.states(taxon, governor.character, &Taken::new());
    (states & right != 0 && states & !right != 0).then_some(states & right)
}

/// The governor of a character, its governor, and so on.
pub(crate) fn above<'m>(
    values: &Values<'m>,
    character: CharacterIx,
) -> impl Iterator<Item = &'m Governor> {
    let matrix = values.matrix;
    std::iter::successors(matrix.character(character).governor.as_ref(), move |governor| {
        matrix.character(governor.character).governor.as_ref()
    })
}
