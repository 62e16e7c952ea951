//! What blank cells could add: from a cell in which nobody has looked to the pairs it could
//! part, were it filled in.
//!
//! A blank cell in words is tried with every state that its column declares (where it declares
//! fewer than two, with a new one as well). In a column of numbers some number always parts it
//! from a kind whose numbers are known. It looks at the pairs of that kind alone.

use spinney_model::{CharacterIx, Governor, Scale, TaxonIx, Value};

use super::{Differences, Fact, Parts, fact, parts};
use crate::settled::{self, Settled};
use crate::values::{Left, Taken};

/// What a kind could contribute in a character, its blank cells filled in as one likes.
enum Best {
    Nothing,
    AnyState,
    /// What stands there.
    Known(Fact),
    AnyNumber,
}

impl Differences<'_, '_> {
    /// Whether the kind has, or may have, this character, and nobody has looked.
    pub(crate) fn blank(&self, taxon: TaxonIx, character: CharacterIx) -> bool {
        self.values.unknown(taxon, character)
    }

    /// The most characters that can part the two once this blank cell of the first is filled
    /// in; `now` of them part the two already.
    pub(crate) fn after_filling(
        &self,
        (taxon, blank): (TaxonIx, CharacterIx),
        other: TaxonIx,
        now: usize,
    ) -> usize {
        let governed = &self.governs[blank.0];
        if governed.is_empty() {
            return now + usize::from(self.could_part(taxon, blank, other));
        }
        let affected = || std::iter::once(blank).chain(governed.iter().copied());
        let unaffected = now - affected().filter(|c| self.part(*c, taxon, other)).count();
        let parted = |state: u64| {
            let settled = self.settled_with(taxon, blank, state);
            let filled = (taxon, blank, state);
            affected().filter(|c| self.part_filled(*c, &settled, filled, other)).count()
        };
        unaffected + self.fillings(blank).map(parted).max().unwrap_or(0)
    }

    /// Blank cells of two kinds that are alike which could part them, all filled in together;
    /// some may stand there twice. Generous: what is named may turn out not to do it; where
    /// nothing is, nothing does.
    pub(crate) fn blanks_together(
        &self,
        one: TaxonIx,
        other: TaxonIx,
        cells: &mut Vec<(TaxonIx, CharacterIx)>,
    ) {
        cells.clear();
        for character in self.values.matrix.character_indices() {
            let already = cells.len();
            let chain = settled::above(self.values, character).map(|g| g.character);
            for here in std::iter::once(character).chain(chain) {
                let both = [(one, here), (other, here)];
                cells.extend(both.into_iter().filter(|cell| self.blank(cell.0, cell.1)));
            }
            if cells.len() > already && !self.at_best_parted(character, one, other) {
                cells.truncate(already);
            }
        }
    }

    fn at_best_parted(&self, character: CharacterIx, one: TaxonIx, other: TaxonIx) -> bool {
        let vary_in = |taxon: TaxonIx, governor: &Governor| {
            !self.blank(taxon, governor.character)
                && settled::mixed(self.values, taxon, governor).is_some()
        };
        let lack_together = settled::above(self.values, character)
            .any(|governor| vary_in(one, governor) && vary_in(other, governor));
        if lack_together {
            return false;
        }
        let part = |a: Fact, b: Fact| matches!(parts(self.values, character, a, b), Parts::Yes);
        let best = [one, other].map(|taxon| self.at_best(taxon, character));
        match best {
            [Best::Nothing, _] | [_, Best::Nothing] => false,
            [Best::Known(a), Best::Known(b)] => part(a, b),
            [Best::AnyNumber, Best::Known(Fact::Numbers(..)) | Best::AnyNumber]
            | [Best::Known(Fact::Numbers(..)), Best::AnyNumber] => true,
            [Best::AnyState, Best::Known(known)] | [Best::Known(known), Best::AnyState] => {
                self.fillings(character).any(|state| part(Fact::States(state), known))
            }
            // Two blank cells can come out different: there are two states.
            [Best::AnyState, Best::AnyState] => true,
            _ => false,
        }
    }

    fn at_best(&self, taxon: TaxonIx, character: CharacterIx) -> Best {
        let before = settled::all_before(self.values, taxon, character);
        match fact(self.values, taxon, character, &before) {
            Fact::Blocked => Best::Nothing,
            known if !self.blank(taxon, character) => Best::Known(known),
            Fact::States(_) => Best::AnyState,
            _ => Best::AnyNumber,
        }
    }

    /// Whether something in a blank cell of a column that governs nothing parts the two.
    fn could_part(&self, taxon: TaxonIx, blank: CharacterIx, other: TaxonIx) -> bool {
        // Two blank cells show the same: everything.
        if self.blank(other, blank) {
            return false;
        }
        let [here, there] = [taxon, other].map(|taxon| self.rows[taxon.0][blank.0]);
        let part = |state: u64| {
            matches!(parts(self.values, blank, Fact::States(state), there), Parts::Yes)
        };
        let could = match (here, there) {
            (Fact::Blocked, _) => false,
            (Fact::States(_), _) => self.fillings(blank).any(part),
            (_, Fact::Numbers(..)) => true,
            _ => false,
        };
        could && !settled::lack_together(self.values, taxon, other, blank)
    }

    /// What a blank cell in words is tried with.
    fn fillings(&self, character: CharacterIx) -> impl Iterator<Item = u64> + use<> {
        let states = match &self.values.matrix.character(character).scale {
            Scale::Words { states } => states.len().max(2),
            _ => 0,
        };
        (0..states).map(|state| 1 << state)
    }

    /// Which governors are worth asking once a kind shows that state of one.
    fn settled_with(&self, taxon: TaxonIx, governor: CharacterIx, state: u64) -> Settled {
        let differs = |other: TaxonIx| {
            let there = self.values.states(other, governor, &Taken::new());
            other != taxon
                && matches!(self.values.value(other, governor), Value::States(_))
                && matches!(
                    parts(self.values, governor, Fact::States(state), Fact::States(there)),
                    Parts::Yes
                )
        };
        let mut settled = self.settled.clone();
        if self.values.matrix.taxon_indices().any(differs) {
            settled.now_worth_asking(governor);
        }
        settled
    }

    /// Whether a character parts the two once a blank cell of the first shows that state.
    fn part_filled(
        &self,
        character: CharacterIx,
        settled: &Settled,
        (taxon, blank, state): (TaxonIx, CharacterIx, u64),
        other: TaxonIx,
    ) -> bool {
        let mut taken = settled.before(self.values, taxon, character);
        taken.retain(|(governor, _)| *governor != blank);
        taken.push((blank, Left::States(state)));
        let before = settled.before(self.values, other, character);
        let filled = fact(self.values, taxon, character, &taken);
        let there = fact(self.values, other, character, &before);
        let vary_in = |taxon, governor| settled::mixed(self.values, taxon, governor).is_some();
        let lack_together = settled::above(self.values, character)
            .filter(|governor| governor.character != blank)
            .any(|governor| vary_in(taxon, governor) && vary_in(other, governor));
        matches!(parts(self.values, character, filled, there), Parts::Yes) && !lack_together
    }
}
