//! Invented leaves of which the answers can be counted, and seeded ones cut a second way.

use num_traits::ToPrimitive;
use spinney_model::{
    Cell, CellAt, Character, CharacterIx, Cut, Matrix, Quantity, Scale, Scene, Specimen,
    Specimens, Spread, Taxon, TaxonIx, Trust, Unit, Value,
};

use super::spread;

/// Leaves of two kinds with one length each, in mm.
fn leaves(hazel: &[f64], elm: &[f64]) -> (Matrix, Specimens) {
    let mm = |value: f64| Quantity::from_thousandths((value * 1000.0).round() as i64);
    let cell = |value: f64| Cell::from(Value::Range { low: mm(value), high: mm(value) });
    let scale = Scale::Measure { unit: Unit::Millimetres, gap: mm(5.0) };
    let characters = vec![Character::named("blade", scale)];
    let all = [hazel, elm];
    let (mut rows, mut taxa, mut written) = (Vec::new(), Vec::new(), Vec::new());
    for (kind, values) in all.iter().enumerate() {
        for value in *values {
            let row = u32::try_from(rows.len()).expect("few leaves") + 1;
            rows.push(vec![cell(*value)]);
            taxa.push(Taxon::named(["hazel", "elm"][kind]));
            written.push(Specimen {
                kind: TaxonIx(kind),
                at: CellAt { sheet: "leaves".to_owned(), row, column: 0 },
                find: String::new(),
                picture: String::new(),
                plant: format!("{}", row % 3),
                place: String::new(),
                when: String::new(),
                part: if row % 2 == 0 { "shade".to_owned() } else { String::new() },
            });
        }
    }
    let kinds = vec![vec![Cell::from(Value::Unknown)]; 2];
    let names = ["hazel", "elm"].map(Taxon::named).to_vec();
    let make = |taxa, rows| {
        Matrix::new(Scene::default(), taxa, characters.clone(), rows).expect("it fits")
    };
    (make(names, kinds), Specimens { finds: make(taxa, rows), written })
}

fn of(hazel: &[f64], elm: &[f64]) -> Spread {
    let (kinds, specimens) = leaves(hazel, elm);
    spread(&kinds, &specimens)
}

fn cut(hazel: &[f64], elm: &[f64]) -> Cut {
    let found = of(hazel, elm);
    found.cuts.expect("two kinds").pop().expect("one character")
}

#[test]
fn a_kind_has_its_ends_its_mean_and_its_plants_and_each_part_apart() {
    let found = of(&[60.0, 70.0, 80.0, 110.0], &[40.0]);
    let hazel = &found.of_kinds[0];
    assert_eq!(
        (hazel.taxon, hazel.character, &hazel.part),
        (TaxonIx(0), CharacterIx(0), &None)
    );
    let ends = [hazel.least, hazel.most].map(Quantity::as_f64);
    assert_eq!((ends, hazel.mean, hazel.finds), ([60.0, 110.0], 80.0, 4));
    assert_eq!(hazel.plants, Some(3));
    let deviation = hazel.deviation.expect("four leaves");
    assert!((deviation - (1400.0_f64 / 3.0).sqrt()).abs() < 1e-9, "{deviation}");
    let shade = &found.of_kinds[1];
    assert_eq!((shade.part.as_deref(), shade.finds), (Some("shade"), 2));
    assert_eq!(shade.mean, 90.0);
    let elm = &found.of_kinds[2];
    assert_eq!((elm.taxon, elm.deviation), (TaxonIx(1), None));
}

/// Hinges 52 and 58, so that the inner fences are at 43 and 67, the outer ones at 34 and 76.
#[test]
fn what_lies_beyond_the_fences_is_named_and_counts_all_the_same() {
    let found = of(&[50.0, 52.0, 55.0, 58.0, 76.5], &[1.0]);
    let hazel = &found.of_kinds[0];
    let outliers: Vec<_> =
        hazel.outliers.iter().map(|one| (one.find, one.value.as_f64(), one.far)).collect();
    assert_eq!(outliers, [(4, 76.5, true)]);
    assert_eq!((hazel.finds, hazel.most.as_f64()), (5, 76.5));
    let on_the_fence = of(&[50.0, 52.0, 55.0, 58.0, 67.0], &[1.0]);
    assert_eq!(on_the_fence.of_kinds[0].outliers, []);
    let just_beyond = of(&[50.0, 52.0, 55.0, 58.0, 67.001], &[1.0]);
    assert!(!just_beyond.of_kinds[0].outliers[0].far);
    // Of four, nobody can say which is far from the others.
    assert_eq!(of(&[1.0, 1.0, 1.0, 90.0], &[1.0]).of_kinds[0].outliers, []);
}

#[test]
fn ranges_apart_are_cut_midway_with_a_margin() {
    let cut = cut(&[60.0, 64.0, 70.0], &[90.0, 95.0, 101.0]);
    assert_eq!(cut.at.as_f64(), 80.0);
    assert_eq!((cut.wrong, cut.left_out), ([0, 0], Some([0, 0])));
    assert_eq!(cut.margin.map(Quantity::as_f64), Some(10.0));
    assert_eq!(cut.taxa, [TaxonIx(0), TaxonIx(1)]);
}

#[test]
fn the_kind_with_the_smaller_mean_is_below() {
    assert_eq!(cut(&[90.0, 95.0], &[60.0, 70.0]).taxa, [TaxonIx(1), TaxonIx(0)]);
}

#[test]
fn ranges_that_overlap_have_the_fewest_on_the_wrong_side_and_no_margin() {
    // Between 70 and 72 one hazel of five is wrong and no elm.
    let cut = cut(&[50.0, 55.0, 60.0, 70.0, 80.0], &[72.0, 85.0, 90.0, 95.0]);
    assert_eq!(cut.at.as_f64(), 71.0);
    assert_eq!((cut.wrong, cut.margin), ([1, 0], None));
    let shares = [cut.left_out_share(), cut.normal_share()];
    assert!(shares.iter().all(|share| share.is_some_and(|share| share > 0.05)), "{shares:?}");
}

#[test]
fn a_find_left_out_comes_out_where_the_others_send_it() {
    // Without 70 the cut is midway between 60 and 100, so 70 is right; without 100 between 70
    // and 120; each of the others stays where it was.
    assert_eq!(cut(&[50.0, 60.0, 70.0], &[100.0, 120.0]).left_out, Some([0, 0]));
    // Without 99 the cut is at 80, and 99 is above it; without 100 it is at 109.5.
    assert_eq!(cut(&[50.0, 60.0, 99.0], &[100.0, 120.0]).left_out, Some([1, 1]));
    // One leaf of a kind leaves none to make a cut with.
    assert_eq!(cut(&[50.0], &[100.0, 120.0]).left_out, None);
}

#[test]
fn measurements_that_are_all_the_same_have_no_cut() {
    assert_eq!(of(&[50.0, 50.0], &[50.0]).cuts, Some(Vec::new()));
}

#[test]
fn how_many_more_follows_from_how_far_the_cut_is() {
    // Standard deviation 1, the cut at 58.5.
    let near = cut(&[49.0, 50.0, 51.0], &[66.0, 67.0, 68.0]);
    assert_eq!(near.trust, [Trust::More(2), Trust::More(2)], "five at least: {near:?}");
    let wide: Vec<f64> = (0..12).map(|at| 40.0 + 2.0 * f64::from(at)).collect();
    let far: Vec<f64> = wide.iter().map(|value| value + 200.0).collect();
    assert_eq!(cut(&wide, &far).trust, [Trust::Enough, Trust::Enough]);
    // Deviations 7.2, the cut 18 from both means: 2.5 of them.
    let close: Vec<f64> = wide.iter().map(|value| value + 36.0).collect();
    let [Trust::More(more), _] = cut(&wide, &close).trust else { panic!("not enough") };
    assert!((1..20).contains(&more), "{more}");
    let mixed: Vec<f64> = wide.iter().map(|value| value + 8.0).collect();
    assert!(cut(&wide, &mixed).trust.contains(&Trust::Never));
    // Alike leaves say little of those that nobody looked at.
    assert_eq!(cut(&[10.0, 10.0], &[90.0]).trust, [Trust::More(57), Trust::More(4)]);
}

/// Every cut between neighbours tried, on seeded leaves; the least sum of both shares.
#[test]
fn no_other_cut_has_fewer_on_the_wrong_side() {
    let mut rng = fastrand::Rng::with_seed(14);
    for _ in 0..200 {
        let shift = f64::from(rng.u32(0..30));
        let mut some = |most: u32, shift: f64| -> Vec<f64> {
            let count = rng.u32(1..12);
            (0..count).map(|_| f64::from(rng.u32(20..most)) + shift).collect()
        };
        let (hazel, elm) = (some(50, 0.0), some(60, shift));
        let found = of(&hazel, &elm).cuts.expect("two kinds");
        let all: Vec<f64> = hazel.iter().chain(&elm).copied().collect();
        let Some(cut) = found.first() else {
            assert!(all.iter().all(|value| *value == all[0]));
            continue;
        };
        let [low, high] = cut.taxa.map(|taxon| if taxon == TaxonIx(0) { &hazel } else { &elm });
        let wrong = |at: f64| {
            let above = low.iter().filter(|value| **value >= at).count();
            let below = high.iter().filter(|value| **value < at).count();
            let share = |wrong: usize, of: usize| {
                wrong.to_f64().unwrap_or(0.0) / of.to_f64().unwrap_or(1.0)
            };
            share(above, low.len()) + share(below, high.len())
        };
        let least = all.iter().map(|value| value + 0.5).map(wrong).fold(f64::MAX, f64::min);
        // A cut above all or below all is none.
        assert!(wrong(cut.at.as_f64()) <= least.max(0.0) + 1e-9 || least >= 1.0, "{cut:?}");
        let counted = [
            low.iter().filter(|value| **value >= cut.at.as_f64()).count(),
            high.iter().filter(|value| **value < cut.at.as_f64()).count(),
        ];
        assert_eq!(cut.wrong, counted);
    }
}
