//! Lobes, teeth and leaflets, counted on scans of closed forms and of drawn leaves.

#[path = "packing/png.rs"]
mod png_file;

use std::f64::consts::TAU;

use fastrand::Rng;
use png_file::packed;
use spinney_fixtures::leaves::form::{
    Blade, FormPlan, FormTruth, Leaflets, LobeForm, Lopsided, Margin, VeinPlan,
};
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Leaf, Plan, Shape};
use spinney_measure::{measure, read};
use spinney_model::{
    Arrangement, BaseForm, BaseSides, EdgeKind, EdgeUnseen, LeafForm, TipForm, WhichSide,
};

/// A line in mm.
type Line = Vec<[f64; 2]>;

fn form<T>(leaf: &Leaf<T>, dpi: f64, turn: f64) -> LeafForm {
    let page = Page { dpi, ..Page::of_one(leaf, turn) };
    let file = packed(&page.scanned(&mut Rng::with_seed(5)), page.pixels());
    let found = measure(&read(&file, Some(dpi)).expect("a picture")).expect("a leaf");
    assert_eq!(found.leaves.len(), 1, "{:?}", found.left_out);
    found.leaves[0].form.clone()
}

/// A closed form around the end of a stalk that comes from below: its radius by the angle from
/// above.
fn with_stalk(radius: impl Fn(f64) -> f64) -> Leaf<()> {
    let half = 0.6;
    let at = |angle: f64| [radius(angle) * angle.sin(), radius(angle) * angle.cos()];
    // Down the right side, so from the tip on, as far as the stalk lets it.
    let steps = 4000;
    let mut line: Line = (0..steps)
        .map(|step| at(TAU * (f64::from(step) / f64::from(steps) - 0.5)))
        .filter(|[x, y]| x.abs() > half || *y > 0.0)
        .collect();
    let foot = -radius(TAU / 2.0) - 25.0;
    line.extend([[half, foot], [-half, foot]]);
    Leaf { outline: line, truth: () }
}

#[test]
fn a_rose_has_as_many_lobes_as_its_formula_says_and_is_like_a_hand() {
    for lobes in [3, 5, 7] {
        let rose = |angle: f64| 25.0 + 10.0 * (f64::from(lobes) * angle).cos();
        for (dpi, turn) in [(150.0, 0.4), (300.0, 3.0)] {
            let found = form(&with_stalk(rose), dpi, turn).lobes.expect("it is in one piece");
            assert_eq!(found.count(), lobes as usize, "{dpi}");
            let sinuses = found.sinuses.expect("it is lobed");
            assert!(sinuses.arrangement != Some(Arrangement::Feather));
        }
    }
}

#[test]
fn a_circle_an_ellipse_and_a_faint_rose_are_not_lobed() {
    let ellipse = |angle: f64| 1.0 / (angle.sin() / 14.0).hypot(angle.cos() / 30.0);
    // Its sinuses take an eighth of the way in.
    let faint = |angle: f64| 25.0 + 1.6 * (5.0 * angle).cos();
    for outline in [with_stalk(|_| 22.0), with_stalk(ellipse), with_stalk(faint)] {
        let found = form(&outline, 300.0, 1.0).lobes.expect("it is in one piece");
        assert_eq!((found.count(), found.sinuses), (1, None));
    }
}

#[test]
fn a_circle_and_an_ellipse_are_entire_and_a_fine_rose_has_its_waves() {
    let ellipse = |angle: f64| 1.0 / (angle.sin() / 14.0).hypot(angle.cos() / 30.0);
    for outline in [with_stalk(|_| 22.0), with_stalk(ellipse)] {
        let edge = form(&outline, 300.0, 1.0).edge.expect("it is fine enough");
        assert_eq!((edge.kind, edge.per_cm), (EdgeKind::Entire, None));
    }
    // Twenty waves, of which one is at the tip and one at the stalk.
    let waves = with_stalk(|angle: f64| 25.0 + 0.8 * (20.0 * angle).cos());
    let edge = form(&waves, 300.0, 1.0).edge.expect("it is fine enough");
    assert_eq!(edge.kind, EdgeKind::Wavy);
    let [left, right] = edge.teeth.each_ref().map(Vec::len);
    assert!((9..=10).contains(&left) && (9..=10).contains(&right), "{left} {right}");
    let per_cm = edge.per_cm.expect("there is a scale");
    let truth = 20.0 / (TAU * 2.42);
    assert!((per_cm.value - truth).abs() < 0.05 * truth, "{} {truth}", per_cm.value);
}

fn plan(blade: Blade, margin: Margin) -> FormPlan {
    FormPlan {
        shape: Shape::Obovate,
        blade,
        lobe_form: LobeForm::Round,
        depth: 0.5,
        margin,
        pitch: 5.0,
        tooth: 1.5,
        length: 70.0,
        half_width: 0.3,
        bend: 0.1,
        stalk: 20.0,
        stalk_width: 1.2,
        stalk_bend: 0.2,
        lopsided: Lopsided::default(),
    }
}

#[test]
fn teeth_are_counted_on_each_side_and_small_ones_make_an_edge_double_toothed() {
    for (margin, kind) in [
        (Margin::Serrate, EdgeKind::Toothed),
        (Margin::Crenate, EdgeKind::Toothed),
        (Margin::Double, EdgeKind::DoubleToothed),
    ] {
        let leaf: Leaf<FormTruth> = plan(Blade::Plain, margin).leaf();
        for turn in [0.3, 3.5] {
            let edge = form(&leaf, 300.0, turn).edge.expect("it is fine enough");
            assert_eq!(edge.kind, kind);
            for (found, truth) in edge.teeth.iter().zip(leaf.truth.teeth) {
                assert!(found.len().abs_diff(truth) <= 1, "{} {truth}", found.len());
            }
        }
    }
}

#[test]
fn teeth_with_a_sharp_point_between_hollow_sides_are_spines_where_that_can_be_seen() {
    let edge = |margin, dpi| {
        let spines = FormPlan { pitch: 9.0, tooth: 3.4, ..plan(Blade::Plain, margin) };
        form(&spines.leaf(), dpi, 0.3).edge.map(|edge| edge.kind)
    };
    for margin in [Margin::Spiny, Margin::SpinyArc] {
        for dpi in [150.0, 300.0, 600.0] {
            assert_eq!(edge(margin, dpi), Ok(EdgeKind::Spiny), "{margin:?} {dpi}");
        }
        // Two pixels of blur are as wide as a spine.
        assert_ne!(edge(margin, 50.0), Ok(EdgeKind::Spiny), "{margin:?}");
    }
    for margin in [Margin::Serrate, Margin::Dentate, Margin::Crenate] {
        assert_eq!(edge(margin, 300.0), Ok(EdgeKind::Toothed), "{margin:?}");
    }
}

#[test]
fn a_tooth_at_the_shoulder_of_a_lobe_is_one() {
    // The lower lobes bulge most where their first tooth towards the sinus stands; beyond it is plain edge.
    for (shape, tooth) in [(Shape::Obovate, 1.5), (Shape::Ellipse, 1.3)] {
        let leaf = FormPlan {
            shape,
            depth: 0.65,
            length: 66.0,
            half_width: 0.36,
            pitch: 3.6,
            tooth,
            ..plan(Blade::Feather(1), Margin::Serrate)
        }
        .leaf();
        let edge = form(&leaf, 300.0, 0.7).edge.expect("it is fine enough");
        assert_eq!(edge.teeth.each_ref().map(Vec::len), leaf.truth.teeth, "{shape:?}");
    }
}

#[test]
fn spines_of_two_sizes_are_spines_and_no_double_teeth() {
    let spines = |angle: f64| {
        let place = (angle / TAU).rem_euclid(1.0) * 18.0;
        let high = if (place as usize).is_multiple_of(3) { 5.4 } else { 2.1 };
        let near = 1.0 - 2.0 * (place.fract() - 0.5).abs();
        25.0 + high * near.powf(2.2)
    };
    let edge = form(&with_stalk(spines), 300.0, 0.7).edge.expect("it is fine enough");
    assert_eq!(edge.kind, EdgeKind::Spiny);
}

#[test]
fn teeth_of_leaflets_are_counted_beside_their_stalks_and_up_to_their_tips() {
    let leaflets =
        Leaflets::Feather { pairs: 2, end: true, lean: 0.92, stagger: 0.0, stalk: 2.0 };
    let leaf = FormPlan {
        length: 34.0,
        half_width: 0.22,
        pitch: 4.8,
        tooth: 1.7,
        ..plan(Blade::Compound(leaflets), Margin::Serrate)
    }
    .leaf();
    assert_eq!(leaf.truth.teeth, [20, 20]);
    for turn in [0.3, 2.0, 5.0] {
        let edge = form(&leaf, 300.0, turn).edge.expect("it is fine enough");
        let found = edge.teeth.each_ref().map(Vec::len);
        assert!(found.iter().all(|side| (19..=20).contains(side)), "{found:?}");
    }
}

#[test]
fn teeth_on_one_side_alone_are_told_of_that_side() {
    let leaf = plan(Blade::Plain, Margin::Serrate).leaf();
    let entire = plan(Blade::Plain, Margin::Smooth).leaf();
    // The left side of the one and the right side of the other.
    let half = |leaf: &Leaf<FormTruth>, from: f64| -> Line {
        let tip = leaf.outline.iter().map(|[_, y]| *y).fold(f64::MIN, f64::max);
        let at = leaf.outline.iter().position(|[_, y]| *y == tip).expect("it has a tip");
        if from < 0.0 { leaf.outline[..at].to_vec() } else { leaf.outline[at..].to_vec() }
    };
    let outline = [half(&leaf, -1.0), half(&entire, 1.0)].concat();
    for turn in [0.3, 3.5] {
        let edge = form(&Leaf { outline: outline.clone(), truth: () }, 300.0, turn).edge;
        let [toothed, plain] = edge.expect("it is fine enough").teeth;
        let truth = leaf.truth.teeth[0];
        assert!(toothed.len().abs_diff(truth) <= 1, "{} {truth}", toothed.len());
        assert!(plain.is_empty());
    }
}

#[test]
fn what_a_scan_is_too_coarse_for_is_not_guessed() {
    let fine = FormPlan { pitch: 1.4, tooth: 0.4, ..plan(Blade::Plain, Margin::Serrate) };
    let leaf = fine.leaf();
    let entire = plan(Blade::Plain, Margin::Smooth).leaf();
    for dpi in [75.0, 150.0] {
        assert_eq!(form(&leaf, dpi, 0.3).edge, Err(EdgeUnseen::TooCoarse));
        assert_eq!(form(&entire, dpi, 0.3).edge, Err(EdgeUnseen::TooCoarse));
    }
    let kind = |leaf, dpi| form(leaf, dpi, 0.3).edge.expect("it is fine enough").kind;
    assert_eq!(kind(&leaf, 300.0), EdgeKind::ToothedOrDouble);
    assert_eq!(kind(&leaf, 600.0), EdgeKind::Toothed);
    assert_eq!(kind(&entire, 300.0), EdgeKind::Entire);
}

#[test]
fn leaflets_are_counted_along_a_rachis_and_around_a_point() {
    let small = |leaflets| FormPlan {
        length: 24.0,
        half_width: 0.2,
        ..plan(Blade::Compound(leaflets), Margin::Smooth)
    };
    for end in [true, false] {
        let lean = 1.0;
        let leaflets = Leaflets::Feather { pairs: 4, end, lean, stagger: 0.2, stalk: 1.0 };
        let found = form(&small(leaflets).leaf(), 300.0, 0.4);
        assert_eq!(found.lobes, None);
        let found = found.leaflets.expect("it has leaflets");
        assert_eq!(found.middles.len(), 8 + usize::from(end));
        assert_eq!((found.arrangement, found.at_end), (Arrangement::Feather, Some(end)));
    }
    let leaflets = Leaflets::Hand { count: 5, apart: 0.75, stalk: 1.0 };
    let found = form(&small(leaflets).leaf(), 300.0, 0.4).leaflets.expect("it has leaflets");
    assert_eq!(found.middles.len(), 5);
    assert_eq!((found.arrangement, found.at_end), (Arrangement::Hand, None));
}

#[test]
fn base_and_tip_are_called_as_they_were_drawn() {
    let ends = |shape| {
        let leaf = Plan::smooth(shape, 20.0).leaf();
        let ends = form(&leaf, 300.0, 0.8).ends.expect("it is in one piece");
        let near = |found: f64, truth: f64| (found - truth).abs() < 1.5;
        if let Some(angle) = ends.base_angle {
            let truth = leaf.truth.base_angle.expect("it was called heart-shaped");
            assert!(near(angle.value, truth), "{shape:?}: {} is {truth}", angle.value);
        }
        let tip = ends.tip_angle.expect("no tip is notched").value;
        assert!(near(tip, leaf.truth.tip_angle), "{shape:?}: {tip}");
        (ends.base, ends.tip, (ends.widest.value * 10.0).round() as i32)
    };
    assert_eq!(ends(Shape::Ellipse), (BaseForm::Rounded, TipForm::Rounded, 5));
    assert_eq!(ends(Shape::Rhombus), (BaseForm::WedgeShaped, TipForm::Pointed, 5));
    assert_eq!(ends(Shape::Heart).0, BaseForm::HeartShaped);
    // Of p(t) = t^a (1 - t)^b the most is at a / (a + b).
    let (base, tip, widest) = ends(Shape::Obovate);
    assert_eq!((base, tip, widest), (BaseForm::WedgeShaped, TipForm::Rounded, 7));
    assert_eq!(ends(Shape::Ovate).2, 3);
    let (_, oblong, _) = ends(Shape::Oblong);
    assert_eq!(oblong, TipForm::Rounded);
}

/// What is told of the base of a blade that is so unlike on both sides, with its main vein drawn or not.
fn base(plan: &FormPlan, veined: bool, dpi: f64, turn: f64) -> BaseSides {
    let leaf = plan.leaf();
    let mut page = Page { dpi, ..Page::of_one(&leaf, turn) };
    let rng = &mut Rng::with_seed(8);
    if veined {
        let veins = VeinPlan { aside: 0.0, ..VeinPlan::seeded(rng, plan.length, 0.5) };
        page.veins = veins.drawn(plan, rng);
    }
    let file = packed(&page.scanned(rng), page.pixels());
    let found = measure(&read(&file, Some(dpi)).expect("a picture")).expect("a leaf");
    found.leaves[0].form.ends.expect("it is in one piece").sides
}

#[test]
fn a_base_that_is_wider_on_one_side_is_told_by_its_main_vein_alone() {
    for (wider, which) in [
        (0.0, WhichSide::Neither),
        (0.1, WhichSide::Neither),
        (0.9, WhichSide::Right),
        (-0.9, WhichSide::Left),
    ] {
        let lopsided = Lopsided { wider, lower: 0.0 };
        let plan = FormPlan { lopsided, ..plan(Blade::Plain, Margin::Smooth) };
        for turn in [0.0, 2.5] {
            let said = base(&plan, true, 300.0, turn).wider.expect("its main vein is seen");
            let truth = plan.base([0.06, 0.25]).right;
            assert_eq!(said.which, Some(which), "{wider}");
            assert!((said.value.value - truth.max(1.0 - truth)).abs() < said.value.plus_minus);
            assert_eq!(base(&plan, false, 300.0, turn).wider, None);
        }
    }
}

#[test]
fn a_side_that_begins_further_down_is_told_with_the_way_between_both() {
    for (shape, lower, which) in [
        (Shape::Obovate, 0.0, WhichSide::Neither),
        (Shape::Ellipse, -0.09, WhichSide::Left),
        (Shape::Rhombus, 0.07, WhichSide::Right),
        (Shape::Heart, 0.09, WhichSide::Right),
    ] {
        let lopsided = Lopsided { wider: 0.0, lower };
        let plan = FormPlan { shape, lopsided, ..plan(Blade::Plain, Margin::Smooth) };
        for (dpi, turn) in [(150.0, 0.0), (300.0, 2.5)] {
            let said = base(&plan, false, dpi, turn).lower.expect("it has a stalk");
            let truth = plan.base([0.06, 0.25]).lower.abs();
            assert_eq!(said.which, Some(which), "{shape:?} {lower}: {said:?}");
            // Where a heart begins whose sides begin at two heights, the drawing does not say.
            let unsure = if shape == Shape::Heart { lower * truth } else { 0.0 };
            let off = (said.value.value - truth).abs();
            assert!(
                off < said.value.plus_minus + unsure + 0.002,
                "{shape:?} {truth}: {said:?}"
            );
        }
    }
    // In between nobody can say.
    let lopsided = Lopsided { wider: 0.0, lower: 0.031 };
    let between = FormPlan { lopsided, ..plan(Blade::Plain, Margin::Smooth) };
    let said = base(&between, false, 150.0, 0.0).lower.expect("it has a stalk");
    assert_eq!(said.which, None, "{said:?}");
}

#[test]
fn what_is_lobed_has_no_base_angle() {
    let rose = with_stalk(|angle: f64| 25.0 + 10.0 * (5.0 * angle).cos());
    assert_eq!(form(&rose, 300.0, 0.4).ends, None);
}
