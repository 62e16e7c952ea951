//! How much can come out right at most, without looking at single questions.
//!
//! Kinds that do not vary and that every key parts from each other need an end each. Were all
//! questions read as well as the best, and every split to be had, the most right ends would be
//! found by joining the two smallest again and again, each time times those odds; what is left
//! over is as much as any key can bring out right of them. Other kinds count in full, or once
//! times the odds if they must be parted from something.
//!
//! **Source**: Huffman's method for the sum of weight × odds^depth, odds at least a half: Hu,
//! Kleitman and Tamaki 1979 (from memory); the tests would find it false.

use num_traits::Zero;
use spinney_model::Share;

use super::node::{Node, Table};
use crate::set::Set;

/// Masses are carried in so many parts of a unit, rounded up.
const FINE: i128 = 1 << 24;

/// How many times at most a mass can come out right in a heap: over kinds that are pairwise
/// parted, see above. None: the numbers grow too large.
pub(super) fn most_right(table: &Table, node: &Node, parted: &[Set]) -> Option<Share> {
    let kinds = table.kinds(node);
    let layout = &table.space().layout;
    let (best, unit) = best_odds(table);
    let mut heaviest: Vec<(i128, usize)> =
        node.masses.iter().copied().zip(kinds.iter().copied()).collect();
    heaviest.sort_unstable_by_key(|(mass, kind)| (-mass, *kind));
    let mut clique: Vec<usize> = Vec::new();
    let mut masses: Vec<i128> = Vec::new();
    let mut right: i128 = 0;
    for (mass, kind) in heaviest {
        let mass = mass.checked_mul(FINE)?;
        let fixed = !layout.varies(&node.heap, kind);
        if fixed && clique.iter().all(|other| parted[kind].has(*other)) {
            clique.push(kind);
            masses.push(mass);
            continue;
        }
        let must_part = fixed && kinds.iter().any(|other| parted[kind].has(*other));
        right = right.checked_add(if must_part { times(mass, best, unit)? } else { mass })?;
    }
    // Heaviest first: the two smallest are at the end.
    while masses.len() > 1 {
        let two = masses.split_off(masses.len() - 2);
        let joined = times(two[0].checked_add(two[1])?, best, unit)?;
        let at = masses.partition_point(|mass| *mass > joined);
        masses.insert(at, joined);
    }
    let clique = masses.first().copied().unwrap_or(0);
    Some(Share::new(right.checked_add(clique)?, FINE))
}

/// The best odds of any question, at least a half.
fn best_odds(table: &Table) -> (i128, i128) {
    let (best, unit) = (table.odds.best, table.odds.unit);
    if 2 * best < unit { (1, 2) } else { (best, unit) }
}

fn times(mass: i128, best: i128, unit: i128) -> Option<i128> {
    Some(num_integer::Integer::div_ceil(&mass.checked_mul(best)?, &unit))
}

/// How much one second place can bring out right in a node at most.
pub(super) fn second_place(table: &Table, node: &Node) -> Option<Share> {
    let mut most = Share::zero();
    for (kind, mass) in table.kinds(node).into_iter().zip(&node.masses) {
        let wrong = table.odds.unit - table.odds.worst[kind];
        most = most.max(forgiven(table, node, kind, mass.checked_mul(wrong)?)?);
    }
    Some(most)
}

/// What of so many finds of a kind, in parts of one over the unit of the odds, can come out right
/// on the wrong side: there it must be parted from something, by one question at least.
pub(super) fn forgiven(table: &Table, node: &Node, kind: usize, wrong: i128) -> Option<Share> {
    let (best, unit) = (table.odds.best, table.odds.unit);
    if table.space().layout.varies(&node.heap, kind) {
        return Some(Share::new(wrong, unit));
    }
    Some(Share::new(wrong.checked_mul(best)?, unit.checked_mul(unit)?))
}
