//! Side veins on scans of drawn leaves: how many, in pairs or in turn; and none where there are none.

#[path = "packing/png.rs"]
mod png_file;

use fastrand::Rng;
use png_file::packed;
use spinney_fixtures::leaves::Shape;
use spinney_fixtures::leaves::form::{Blade, FormPlan, LobeForm, Margin, VeinLine, VeinPlan};
use spinney_fixtures::leaves::scan::Page;
use spinney_measure::{look_for_veins, measure, mended, read};
use spinney_model::{MeasuredPicture, Mend, VeinPairs, Veins, VeinsUnseen};

fn blade(kind: Blade) -> FormPlan {
    let mut rng = Rng::with_seed(3);
    let parts = (Shape::Ovate, kind, LobeForm::Round);
    FormPlan { length: 62.0, bend: 0.2, ..FormPlan::seeded(&mut rng, parts, Margin::Serrate) }
}

fn veins() -> VeinPlan {
    VeinPlan {
        counts: [8, 8],
        stagger: 0.0,
        jitter: 0.04,
        from: 0.08,
        to: 0.86,
        lean: 0.9,
        curve: 0.2,
        width: 0.3,
        main: 1.0,
        aside: 0.04,
        tone: 0.5,
        net: 0.4,
        mesh: 1.6,
    }
}

/// A page with one leaf that has these veins, measured.
fn scanned(blade: &FormPlan, veins: Vec<VeinLine>, turn: f64) -> (Vec<u8>, MeasuredPicture) {
    let leaf = blade.leaf();
    let page = Page { veins, noise: 2.0, ..Page::of_one(&leaf, turn) };
    let file = packed(&page.scanned(&mut Rng::with_seed(5)), page.pixels());
    let found = measure(&read(&file, Some(300.0)).expect("a picture")).expect("a leaf");
    assert_eq!(found.leaves.len(), 1, "{:?}", found.left_out);
    (file, found)
}

fn told(plan: &VeinPlan, turn: f64) -> Result<Veins, VeinsUnseen> {
    let blade = blade(Blade::Plain);
    let drawn = plan.drawn(&blade, &mut Rng::with_seed(7));
    scanned(&blade, drawn, turn).1.leaves[0].form.veins.clone()
}

#[test]
fn lighter_and_darker_veins_are_counted_on_each_side_at_any_turn() {
    for (tone, turn) in [(0.5, 0.0), (-0.35, 2.0), (0.4, 4.0)] {
        for (stagger, pairs) in [(0.0, VeinPairs::Opposite), (0.5, VeinPairs::Alternate)] {
            let plan = VeinPlan { tone, stagger, counts: [8, 7], ..veins() };
            let found = told(&plan, turn).expect("they are clear");
            let counts = found.sides.each_ref().map(Vec::len);
            assert!(counts[0].abs_diff(8) <= 1 && counts[1].abs_diff(7) <= 1, "{counts:?}");
            assert_eq!(found.pairs, Some(pairs), "{tone} {turn}");
            // Each begins near the main vein and leads outwards.
            for vein in found.sides.iter().flatten() {
                assert!(vein.len() > 3, "{vein:?}");
                let apart = |place: &[f64; 2]| {
                    let way = |main: &[f64; 2]| (main[0] - place[0]).hypot(main[1] - place[1]);
                    found.main.iter().map(way).fold(f64::MAX, f64::min)
                };
                assert!(apart(&vein[0]) < 8.0 && apart(&vein[vein.len() - 1]) > 30.0);
            }
        }
    }
}

#[test]
fn left_is_left_with_the_tip_up() {
    let blade = blade(Blade::Plain);
    let drawn = veins().drawn(&blade, &mut Rng::with_seed(7));
    for turn in [0.0, 2.5] {
        let (_, found) = scanned(&blade, drawn.clone(), turn);
        let leaf = &found.leaves[0];
        let veins = leaf.form.veins.as_ref().expect("they are clear");
        let (base, tip) = (leaf.lines.midrib[0], leaf.lines.midrib[48]);
        let up = [tip[0] - base[0], tip[1] - base[1]];
        for (side, sign) in veins.sides.iter().zip([-1.0, 1.0]) {
            for vein in side {
                let (foot, end) = (vein[0], vein[vein.len() - 1]);
                let out = [end[0] - foot[0], end[1] - foot[1]];
                // In a picture y goes down, so that right of upwards is a positive cross product.
                assert!(sign * (up[0] * out[1] - up[1] * out[0]) > 0.0, "{turn}");
            }
        }
    }
}

/// With the veins of one side gone the other side alone does not say how they stand.
#[test]
fn what_is_seen_on_one_side_only_is_not_told() {
    let blade = blade(Blade::Plain);
    let mut drawn = veins().drawn(&blade, &mut Rng::with_seed(7));
    drawn.retain(|line| line.points.last().is_none_or(|[x, _]| *x > -3.0));
    let veins = scanned(&blade, drawn, 1.0).1.leaves[0].form.veins.clone();
    assert_eq!(veins, Err(VeinsUnseen::Faint));
}

#[test]
fn no_veins_are_told_where_there_are_none() {
    let plan = veins();
    let blade = blade(Blade::Plain);
    let rng = || Rng::with_seed(7);
    for lines in [
        Vec::new(),
        plan.main_alone(&blade, &mut rng()),
        plan.without_side_veins(&blade, &mut rng()),
        plan.beside(&blade, &mut rng()),
    ] {
        let veins = scanned(&blade, lines, 0.6).1.leaves[0].form.veins.clone();
        assert_eq!(veins, Err(VeinsUnseen::Faint));
    }
}

/// A needle has no room for side veins, whatever is drawn on it.
#[test]
fn a_needle_has_no_side_veins() {
    for half_width in [0.012, 0.02, 0.04] {
        let needle = FormPlan { half_width, margin: Margin::Smooth, ..blade(Blade::Plain) };
        for lines in [Vec::new(), veins().main_alone(&needle, &mut Rng::with_seed(7))] {
            let veins = scanned(&needle, lines, 0.6).1.leaves[0].form.veins.clone();
            assert_eq!(veins, Err(VeinsUnseen::Faint));
        }
    }
}

#[test]
fn lobed_leaves_are_not_looked_at_and_mended_ones_when_there_are_pixels() {
    let lobed = blade(Blade::Feather(3));
    let (_, found) = scanned(&lobed, Vec::new(), 0.3);
    assert_eq!(found.leaves[0].form.veins, Err(VeinsUnseen::NotLookedFor));
    let whole = blade(Blade::Plain);
    let (file, found) = scanned(&whole, veins().drawn(&whole, &mut Rng::with_seed(7)), 0.3);
    let base = found.leaves[0].lines.midrib[0];
    let mut after =
        mended(&found, &[Mend::Base { leaf: 1, at: base }]).expect("it can be mended");
    assert_eq!(after.leaves[0].form.veins, Err(VeinsUnseen::NotLookedFor));
    look_for_veins(&read(&file, Some(300.0)).expect("a picture"), &mut after);
    assert!(after.leaves[0].form.veins.is_ok());
}
