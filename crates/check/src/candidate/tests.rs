//! Candidate thresholds by hand: rounding, the gap, and the cap on very long columns.

use std::collections::BTreeSet;

use super::{Candidates, MOST_ENDS, middle};

#[test]
fn half_a_thousandth_is_rounded_up_on_both_sides_of_zero() {
    assert_eq!([middle(1, 2), middle(1, 3), middle(-2, -1), middle(-1, 2)], [2, 2, -1, 1]);
    assert_eq!(middle(i64::MAX - 1, i64::MAX), i64::MAX);
}

#[test]
fn every_two_ranges_far_enough_apart_have_one_between_them() {
    let ranges = BTreeSet::from([(0, 10), (11, 20), (5, 30), (41, 50)]);
    let at = |gap| Candidates::of(&ranges, gap).unwrap().at;
    assert_eq!(at(0), [11, 26, 31, 36]);
    // From 30 to 41 are eleven: twice five, and not twice six.
    assert_eq!(at(5), [26, 31, 36]);
    assert_eq!(at(6), [26, 31]);
    assert!(Candidates::of(&BTreeSet::new(), 0).is_none());
}

/// Ranges (0, 1), (100, 101), ... and one that lies across some of them.
fn long(ranges: i64) -> BTreeSet<(i64, i64)> {
    (0..ranges).map(|n| (100 * n, 100 * n + 1)).chain([(150, 450)]).collect()
}

#[test]
fn a_very_long_column_has_one_between_neighbours_only() {
    let short = Candidates::of(&long(MOST_ENDS as i64 - 1), 0).unwrap();
    assert!(short.every_pair && short.at.len() > 1_000);
    let long = Candidates::of(&long(1_500), 0).unwrap();
    assert!(!long.every_pair);
    // Below 150 lies 101, and no range begins between; the next below 200 is 101 as well, but
    // 150 begins between.
    assert_eq!(long.at[..5], [51, 126, 251, 351, 475]);
    assert!(long.part(101, 150, 20) && !long.part(1, 100, 60) && !long.part(126, 250, 0));
}

/// Ends of one sort alone are enough to make a column long, whichever they are: then 17, between
/// 14 and 20 and over another range, is no candidate any more.
#[test]
fn a_column_is_long_by_its_lower_or_by_its_upper_ends() {
    let asks_17 = |more: &dyn Fn(i64) -> (i64, i64), many: i64| {
        let mut ranges: BTreeSet<(i64, i64)> = [(10, 14), (15, 19), (20, 24)].into();
        ranges.extend((0..many).map(more));
        Candidates::of(&ranges, 3).expect("there are ranges").at.contains(&17)
    };
    let lower = |n: i64| (1_000 + n, 100_000_i64);
    let upper = |n: i64| (1_000_i64, 2_000 + n);
    // Three ends are there already.
    for (ends, more) in [("lower", &lower as &dyn Fn(i64) -> (i64, i64)), ("upper", &upper)] {
        assert!(asks_17(more, 997), "{ends}: 1,000 of them are not too many");
        assert!(!asks_17(more, 998), "{ends}: 1,001 are");
    }
}
