//! Finds far from the others of their kind: beyond the fences of Tukey, *Exploratory Data
//! Analysis*, 1977, chapter 2.
//!
//! From measurements, the smallest first, to those more than one and a half (the inner fence) or
//! three (the outer) times the distance of the hinges away from a hinge. A hinge is the middle of
//! the lower or the upper half, the middle itself belonging to both. Nothing is left out.

use spinney_model::{Outlier, Quantity};

use super::Measured;

/// Of fewer, each is a hinge or next to one.
const FEWEST: usize = 5;

/// The finds beyond the inner fences.
pub(super) fn of(finds: &[Measured]) -> Vec<Outlier> {
    if finds.len() < FEWEST {
        return Vec::new();
    }
    // In quarters of a thousandth, so that no middle of two middles is rounded.
    let half = finds.len().div_ceil(2);
    let low = twice_the_middle(&finds[..half]);
    let high = twice_the_middle(&finds[finds.len() - half..]);
    let apart = high - low;
    let beyond = |value: i64, fence_in_halves: i64| {
        let value = 4 * value;
        let reach = fence_in_halves * apart;
        value < 2 * low - reach || value > 2 * high + reach
    };
    let outer = finds.iter().filter(|one| beyond(one.value, 3));
    let outlier = |one: &Measured| Outlier {
        find: one.find,
        value: Quantity::from_thousandths(one.value),
        far: beyond(one.value, 6),
    };
    outer.map(outlier).collect()
}

fn twice_the_middle(sorted: &[Measured]) -> i64 {
    let middle = sorted.len() / 2;
    match sorted.len() % 2 {
        1 => 2 * sorted[middle].value,
        _ => sorted[middle - 1].value + sorted[middle].value,
    }
}
