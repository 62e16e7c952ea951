//! How finely a character can divide kinds: from a column to as few groups as can be, of which
//! it parts no two members.
//!
//! Kinds that are all parted from each other by some characters must differ in a group of one
//! of them: so many kinds need at least so many groups, all groups multiplied. It says nothing
//! about which kinds a question parts.

use spinney_model::{CharacterIx, Scale};

use super::{Differences, Fact};

impl Differences<'_, '_> {
    /// The group of each kind in one column, counted from 0.
    pub(crate) fn groups(&self, character: CharacterIx) -> Vec<u32> {
        let column: Vec<Fact> = self.rows.iter().map(|row| row[character.0]).collect();
        match &self.values.matrix.character(character).scale {
            Scale::Words { states } => by_state(&column, states.len()),
            Scale::Counts => by_number(&column, 0),
            Scale::Measure { gap, .. } => by_number(&column, gap.thousandths()),
        }
    }
}

/// Kinds that share a state are never parted by it: again and again the state that most of
/// the kinds left over can show. Kinds without a state are parted from nobody: any group.
fn by_state(column: &[Fact], states: usize) -> Vec<u32> {
    let shown = |taxon: &usize, state: usize| match column[*taxon] {
        Fact::States(states) => states >> state & 1 == 1,
        _ => false,
    };
    let mut group = vec![0; column.len()];
    let mut open: Vec<usize> = (0..column.len()).collect();
    for number in 0.. {
        let count = |state: usize| open.iter().filter(|taxon| shown(taxon, state)).count();
        let best = (0..states).map(|state| (count(state), states - state)).max();
        let Some((1.., back)) = best else { break };
        let state = states - back;
        open.retain(|taxon| {
            let here = shown(taxon, state);
            if here {
                group[*taxon] = number;
            }
            !here
        });
    }
    group
}

/// Ranges nearer to each other than twice the gap are never parted: with the range that ends
/// first go all that begin before its end and twice the gap.
fn by_number(column: &[Fact], gap: i64) -> Vec<u32> {
    let mut rising: Vec<(i64, i64, usize)> = column
        .iter()
        .enumerate()
        .filter_map(|(taxon, fact)| match *fact {
            Fact::Numbers(low, high) => Some((high, low, taxon)),
            _ => None,
        })
        .collect();
    rising.sort_unstable();
    let mut group = vec![0; column.len()];
    let (mut number, mut until) = (0, i128::MAX);
    for (place, (high, low, taxon)) in rising.into_iter().enumerate() {
        if place == 0 || i128::from(low) > until {
            number += u32::from(place > 0);
            until = i128::from(high) + (2 * i128::from(gap) - 1).max(0);
        }
        group[taxon] = number;
    }
    group
}
