//! Thresholds as they are said, against a search through every number.

use spinney_model::{
    Ask, Asked, Character, CharacterIx, Matrix, Quantity, Scale, Scene, Taxon, TaxonIx, Unit,
    Value, WrittenIn,
};

use super::{BTreeSet, rounded};

/// A column of ranges in thousandths of a millimetre.
fn column(ranges: &[(i64, i64)], gap: i64, written_in: Option<WrittenIn>) -> Matrix {
    let scale =
        Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_thousandths(gap) };
    let mut length = Character::named("stalk length", scale);
    length.written_in = written_in;
    let taxa = (0..ranges.len()).map(|at| Taxon::named(format!("kind {at}"))).collect();
    let quantity = Quantity::from_thousandths;
    let range = |(low, high): &(i64, i64)| {
        vec![Value::Range { low: quantity(*low), high: quantity(*high) }.into()]
    };
    let rows = ranges.iter().map(range).collect();
    Matrix::new(Scene::default(), taxa, vec![length], rows).expect("it fits")
}

fn said(matrix: &Matrix, threshold: i64, present: &[usize]) -> i64 {
    let yes = Asked::AtLeast(Quantity::from_thousandths(threshold));
    let ask = Ask { character: CharacterIx(0), yes };
    let present: BTreeSet<TaxonIx> = present.iter().map(|at| TaxonIx(*at)).collect();
    match rounded(matrix, &ask, &present).yes {
        Asked::AtLeast(number) => number.thousandths(),
        other => panic!("another question: {other:?}"),
    }
}

#[test]
fn five_centimetres_before_four_and_a_half() {
    let table = [
        // Ranges in mm, the midpoint, what is said in thousandths of a millimetre.
        ((6, 14), (30, 50), 22_000, 20_000), // 19 to 25: 2 cm, not 2.2
        ((6, 14), (26, 50), 20_000, 20_000), // 19 to 21
        ((10, 20), (35, 50), 27_500, 30_000), // 25 to 30: 3 cm, not 2.75
        ((20, 36), (52, 90), 44_000, 45_000), // 41 to 47: no whole one, so the half
        ((10, 20), (60, 90), 40_000, 40_000), // 25 to 55: the whole one in the middle
        ((20, 70), (121, 190), 95_500, 100_000), // 75 to 116: the nearer whole one
        ((5, 14), (24, 30), 19_000, 19_000), // 19 and nothing else is free
    ];
    for ((a, b), (c, d), middle, wanted) in table {
        let ranges = [(a * 1000, b * 1000), (c * 1000, d * 1000)];
        assert_eq!(said(&column(&ranges, 5_000, None), middle, &[0, 1]), wanted, "{b} to {c}");
    }
}

#[test]
fn only_kinds_that_come_out_below_take_room_away() {
    let matrix = column(&[(6_000, 14_000), (19_500, 21_000), (30_000, 50_000)], 5_000, None);
    assert_eq!(said(&matrix, 22_000, &[0, 2]), 20_000);
    assert_eq!(
        said(&matrix, 22_000, &[0, 1, 2]),
        22_000,
        "nearer than the gap: a person's own"
    );
}

#[test]
fn inches_are_whole_inches() {
    let inch = 25_400;
    let ranges = [(inch, 2 * inch), (4 * inch, 6 * inch)];
    let matrix = column(&ranges, 5_000, Some(WrittenIn::Inches));
    assert_eq!(said(&matrix, 3 * inch + 1_200, &[0, 1]), 3 * inch);
}

/// Every number with at most one digit behind the unit is tried.
#[test]
fn nothing_rounder_is_free() {
    let mut rng = fastrand::Rng::with_seed(5);
    let (mut moved, mut left) = (0, 0);
    for _ in 0..3_000 {
        let low = rng.i64(1..80) * 500;
        let high = low + rng.i64(0..40) * 500;
        let gap = rng.i64(0..8) * 1_000;
        let next = high + 2 * gap + rng.i64(1..60) * 500;
        let matrix = column(&[(low, high), (next, next + 3_000)], gap, None);
        let middle = (high + next + 1) / 2;
        let number = said(&matrix, middle, &[0, 1]);
        let free = |n: i64| n > high && n - high >= gap && next - n >= gap;
        assert!(free(number), "{high} {next} {gap}: {number}");
        let round = |n: i64| {
            let grains = [10_000, 5_000, 1_000];
            grains.iter().position(|grain| n % grain == 0).unwrap_or(grains.len())
        };
        let all = (0..=300).map(|millimetres| millimetres * 1_000).filter(|n| free(*n));
        let best = all
            .min_by_key(|n| (round(*n), (2 * n - (high + next)).abs(), *n))
            .filter(|best| round(*best) < 3);
        match best {
            Some(best) => assert_eq!(number, best, "{high} to {next}, gap {gap}"),
            None => assert_eq!(number, middle, "{high} to {next}, gap {gap}"),
        }
        moved += usize::from(number != middle);
        left += usize::from(best.is_none());
    }
    assert!(moved > 1_000 && left > 0, "{moved} moved, {left} left");
}
