//! Candidate thresholds of a measured column: from its ranges to the numbers it may ask for.
//!
//! Section 3 of `docs/KEY.md`. It looks at whole columns; what stands in the way of a
//! threshold at a heap is for those who ask.

use std::collections::BTreeSet;

/// In a column with more different lower or upper ends than this, only neighbouring ranges
/// have a threshold between them (section 3): all pairs would be a million and more.
const MOST_ENDS: usize = 1_000;

/// The candidate thresholds of one column.
pub(crate) struct Candidates {
    /// The thresholds, rising, in thousandths.
    pub(crate) at: Vec<i64>,
    /// Whether every two ranges far enough apart gave one.
    pub(crate) every_pair: bool,
}

impl Candidates {
    /// The candidates between these ranges; None where none stands in the column.
    pub(crate) fn of(ranges: &BTreeSet<(i64, i64)>, gap: i64) -> Option<Self> {
        if ranges.is_empty() {
            return None;
        }
        let lows = rising(ranges.iter().map(|(low, _)| *low));
        let highs = rising(ranges.iter().map(|(_, high)| *high));
        let every_pair = lows.len() <= MOST_ENDS && highs.len() <= MOST_ENDS;
        let at = if every_pair {
            let pairs = highs.iter().flat_map(|high| {
                let above = lows.partition_point(|low| low <= high);
                lows[above..].iter().map(move |low| (*high, *low))
            });
            between(pairs, gap)
        } else {
            between(neighbours(&lows, &highs), gap)
        };
        Some(Self { at: rising(at), every_pair })
    }

    /// Whether one of them lies between two ranges and keeps the gap to both.
    pub(crate) fn part(&self, high: i64, low: i64, gap: i64) -> bool {
        let gap = i128::from(gap);
        self.any(i128::from(high) + gap.max(1), i128::from(low) - gap)
    }

    /// Whether one of them is at least and at most so much.
    pub(crate) fn any(&self, least: i128, most: i128) -> bool {
        let first = self.at.partition_point(|at| i128::from(*at) < least);
        self.at.get(first).is_some_and(|at| i128::from(*at) <= most)
    }
}

/// The middle between the end of one range and the beginning of the next; half a thousandth
/// is rounded up, so that it never falls on the end of the lower range.
pub(crate) fn middle(high: i64, low: i64) -> i64 {
    let middle = (i128::from(high) + i128::from(low) + 1).div_euclid(2);
    i64::try_from(middle).expect("the middle of two numbers lies between them")
}

/// How far the second number lies above the first.
fn far(from: i64, to: i64) -> i128 {
    i128::from(to) - i128::from(from)
}

fn between(pairs: impl Iterator<Item = (i64, i64)>, gap: i64) -> Vec<i64> {
    let wide = |&(high, low): &(i64, i64)| far(high, low) >= 2 * i128::from(gap);
    pairs.filter(wide).map(|(high, low)| middle(high, low)).collect()
}

/// For each lower end the greatest upper end below it, unless another range begins between.
fn neighbours(lows: &[i64], highs: &[i64]) -> impl Iterator<Item = (i64, i64)> {
    lows.iter().enumerate().filter_map(|(place, low)| {
        let below = highs.partition_point(|high| high < low);
        let high = highs[..below].last()?;
        let another = place > 0 && lows[place - 1] > *high;
        (!another).then_some((*high, *low))
    })
}

fn rising(numbers: impl IntoIterator<Item = i64>) -> Vec<i64> {
    let mut numbers: Vec<i64> = numbers.into_iter().collect();
    numbers.sort_unstable();
    numbers.dedup();
    numbers
}

#[cfg(test)]
mod tests;
