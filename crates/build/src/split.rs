//! Every question that a table allows, in the order in which ties are broken.
//!
//! `docs/KEY.md` 3: splits of the states of a character in words, "n or more" for counts,
//! thresholds midway between ranges for measures.

use std::collections::BTreeSet;
use std::ops::Bound;

use spinney_model::{
    Ask, Asked, Character, CharacterIx, Matrix, Quantity, Scale, StateIx, TaxonIx, Value,
};

/// From so many different lower or upper ends on, only thresholds between neighbouring ranges
/// are candidates: a million pairs already take a second.
pub(crate) const MOST_ENDS: usize = 1000;

/// Up to this many states every split is a question; beyond it, one state against the rest.
const EVERY_SPLIT: usize = 6;

/// What a column offers to ask.
pub(crate) struct Column {
    pub(crate) asks: Vec<Asked>,
    /// The values that "unknown" may have: whole numbers that stand in a column of counts.
    pub(crate) counts: Vec<u32>,
    /// What cuts an unknown measure: the candidate thresholds, and a person's own; rising.
    pub(crate) cuts: Vec<Quantity>,
}

/// The questions of one character; `kept` are a person's own.
pub(crate) fn column(matrix: &Matrix, character: CharacterIx, kept: &[Ask]) -> Column {
    let mut column = Column { asks: Vec::new(), counts: Vec::new(), cuts: Vec::new() };
    let about = matrix.character(character);
    match &about.scale {
        Scale::Words { states } => {
            let groups = groups(states, about.ordered);
            column.asks = groups.into_iter().map(Asked::States).collect();
        }
        Scale::Counts => {
            column.counts = counts(matrix, character);
            let above = column.counts.iter().skip(1);
            column.asks = above
                .map(|&count| Asked::AtLeast(Quantity::from_whole(count.into())))
                .collect();
        }
        Scale::Measure { gap, .. } => {
            let candidates = thresholds(matrix, character, *gap);
            column.asks = candidates.iter().copied().map(Asked::AtLeast).collect();
            let own = kept.iter().filter(|ask| ask.character == character);
            let own = own.filter_map(|ask| threshold(&ask.yes));
            let cuts: BTreeSet<Quantity> =
                candidates.into_iter().chain(own.map(|(at, _)| at)).collect();
            column.cuts = cuts.into_iter().collect();
        }
    }
    column
}

/// The yes sides of all splits, the smaller first; an order is only ever cut once.
fn groups(states: &[String], ordered: bool) -> Vec<BTreeSet<StateIx>> {
    let n = states.len();
    if n < 2 {
        return Vec::new();
    }
    if let Some(yes) = yes_of_yes_and_no(states) {
        return vec![BTreeSet::from([yes])];
    }
    if ordered {
        let end = |cut: usize| if 2 * cut <= n { 0..cut } else { cut..n };
        let mut groups: Vec<BTreeSet<StateIx>> =
            (1..n).map(|cut| end(cut).map(StateIx).collect()).collect();
        groups.sort_by_key(|group| (group.len(), group.clone()));
        return groups;
    }
    if n > EVERY_SPLIT {
        return (0..n).map(|state| BTreeSet::from([StateIx(state)])).collect();
    }
    let mut groups: Vec<BTreeSet<StateIx>> = (1u32..(1 << n) - 1)
        .filter(|mask| {
            let size = mask.count_ones() as usize;
            2 * size < n || (2 * size == n && mask & 1 == 1)
        })
        .map(|mask| (0..n).filter(|state| mask >> state & 1 == 1).map(StateIx).collect())
        .collect();
    groups.sort_by_key(|group| (group.len(), group.clone()));
    groups
}

fn yes_of_yes_and_no(states: &[String]) -> Option<StateIx> {
    let [a, b] = states else { return None };
    match (a.to_lowercase().as_str(), b.to_lowercase().as_str()) {
        ("yes", "no") => Some(StateIx(0)),
        ("no", "yes") => Some(StateIx(1)),
        _ => None,
    }
}

fn counts(matrix: &Matrix, character: CharacterIx) -> Vec<u32> {
    let mut numbers = BTreeSet::new();
    for taxon in matrix.taxon_indices().filter(|taxon| can_apply(matrix, *taxon, character)) {
        if let Value::Counts(shares) = &matrix.cell(taxon, character).value {
            numbers.extend(shares.iter().map(|(count, _)| *count));
        }
    }
    numbers.into_iter().collect()
}

/// Whether a character can apply to a kind at all: some state of its governor is a right one,
/// and the governor can itself apply.
pub(crate) fn can_apply(matrix: &Matrix, taxon: TaxonIx, character: CharacterIx) -> bool {
    let mut at = character;
    loop {
        let Some(governor) = &matrix.character(at).governor else { return true };
        let right = match &matrix.cell(taxon, governor.character).value {
            Value::DoesNotApply => false,
            Value::States(shares) => {
                shares.iter().any(|(state, _)| governor.states.contains(state))
            }
            // Unknown may be anything; other values do not stand under words.
            _ => true,
        };
        if !right {
            return false;
        }
        at = governor.character;
    }
}

/// Midpoints of all pairs of ranges with room for the gap on both sides.
///
/// **Cost**: pairs of *different* ends of ranges. Beyond [`MOST_ENDS`] of them only neighbours
/// in the whole column are paired (`docs/KEY.md` 3).
fn thresholds(matrix: &Matrix, character: CharacterIx, gap: Quantity) -> Vec<Quantity> {
    let mut highs = BTreeSet::new();
    let mut lows = BTreeSet::new();
    for taxon in matrix.taxon_indices().filter(|taxon| can_apply(matrix, *taxon, character)) {
        if let Value::Range { low, high } = matrix.cell(taxon, character).value {
            lows.insert(low);
            highs.insert(high);
        }
    }
    let every_pair = highs.len() <= MOST_ENDS && lows.len() <= MOST_ENDS;
    let mut between = BTreeSet::new();
    for high in &highs {
        for low in lows.range(*high..) {
            let after = (Bound::Excluded(*high), Bound::Excluded(*low));
            let neighbours = every_pair
                || low == high
                || (highs.range(after).next().is_none() && lows.range(after).next().is_none());
            if !neighbours {
                break;
            }
            let room = room(*high, *low);
            if room > 0 && room >= 2 * i128::from(gap.thousandths()) {
                between.insert(midway(*high, *low));
            }
        }
    }
    between.into_iter().collect()
}

/// Halfway from `high` up to `low`, half a thousandth rounded up so that it is above `high`.
pub(crate) fn midway(high: Quantity, low: Quantity) -> Quantity {
    let middle = i128::from(high.thousandths()) + (room(high, low) + 1) / 2;
    let middle = i64::try_from(middle).expect("it lies between the two");
    Quantity::from_thousandths(middle)
}

/// How far it is from one number up to another, in thousandths. Wider than the numbers
/// themselves: a person may ask for any number, and two of them can be twice as far apart.
fn room(from: Quantity, to: Quantity) -> i128 {
    i128::from(to.thousandths()) - i128::from(from.thousandths())
}

/// On which side of a threshold a range lies.
pub(crate) enum Side {
    Yes,
    No,
    /// The threshold lies inside the range, or nearer to it than the gap.
    Blocked,
}

/// On which side of a threshold a range lies, the gap between them.
pub(crate) fn side(low: Quantity, high: Quantity, threshold: Quantity, gap: Quantity) -> Side {
    let gap = i128::from(gap.thousandths());
    if threshold <= low && room(threshold, low) >= gap {
        Side::Yes
    } else if threshold > high && room(high, threshold) >= gap {
        Side::No
    } else {
        Side::Blocked
    }
}

/// Among thresholds that do the same at a node, the one midway between its neighbours.
///
/// `present` are the kinds of the node.
pub(crate) fn settle_threshold(
    matrix: &Matrix,
    character: CharacterIx,
    threshold: Quantity,
    present: impl Iterator<Item = TaxonIx>,
) -> Option<Quantity> {
    let (mut below, mut above) = (None, None);
    for taxon in present {
        if let Value::Range { low, high } = matrix.cell(taxon, character).value {
            if low >= threshold {
                above = Some(above.map_or(low, |other: Quantity| other.min(low)));
            } else {
                below = Some(below.map_or(high, |other: Quantity| other.max(high)));
            }
        }
    }
    Some(midway(below?, above?))
}

/// The threshold of a question about numbers, and whether yes means "that much or more".
pub(crate) fn threshold(asked: &Asked) -> Option<(Quantity, bool)> {
    match asked {
        Asked::AtLeast(threshold) => Some((*threshold, true)),
        Asked::Below(threshold) => Some((*threshold, false)),
        Asked::States(_) => None,
    }
}

/// The gap of a measure, zero for everything else.
pub(crate) fn gap(character: &Character) -> Quantity {
    match character.scale {
        Scale::Measure { gap, .. } => gap,
        _ => Quantity::ZERO,
    }
}

/// An ask of this character.
pub(crate) fn ask(character: CharacterIx, yes: Asked) -> Ask {
    Ask { character, yes }
}

#[cfg(test)]
mod tests;
