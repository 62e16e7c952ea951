//! Leaves that touch on drawn scans of which everything is known.

use fastrand::Rng;
use image::RgbImage;
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Leaf, Plan, Point, Shape};
use spinney_measure::{measure, mended, read};
use spinney_model::{LeafNote, Measurand, MeasuredPicture, Mend};

const DPI: f64 = 200.0;

fn found(size: (f64, f64), leaves: Vec<(&Leaf, Point, f64)>) -> MeasuredPicture {
    let first = leaves[0].0;
    let page = Page { size, leaves, dpi: DPI, ..Page::of_one(first, 0.0) };
    let (width, height) = page.pixels();
    let pixels = page.scanned(&mut Rng::with_seed(5));
    let pixels = RgbImage::from_raw(width as u32, height as u32, pixels).expect("all of it");
    let mut file = std::io::Cursor::new(Vec::new());
    pixels.write_to(&mut file, image::ImageFormat::Png).expect("it can be packed");
    measure(&read(file.get_ref(), Some(DPI)).expect("a picture")).expect("a leaf")
}

/// Blades 36 mm wide whose middles are 35 mm apart.
fn beside(leaf: &Leaf, many: usize) -> Vec<(&Leaf, Point, f64)> {
    (0..many).map(|at| (leaf, [30.0 + 35.0 * at as f64, 75.0], 0.0)).collect()
}

#[test]
fn leaves_that_touch_are_cut_apart_and_it_is_said() {
    let leaf = Plan::smooth(Shape::Ellipse, 20.0).leaf();
    for many in [2, 3] {
        let picture = found((30.0 + 35.0 * many as f64, 105.0), beside(&leaf, many));
        assert_eq!(picture.leaves.len(), many);
        let numbers: Vec<usize> = (1..=many).collect();
        assert_eq!(picture.cut_apart, [numbers]);
        for found in &picture.leaves {
            assert!(found.notes.contains(&LeafNote::CutApart));
            assert!(!found.notes.contains(&LeafNote::TwoStalks));
            let near = |what, truth: f64, share: f64| {
                let value = found.measure(what).expect("it is there").value;
                assert!((value / truth - 1.0).abs() < share, "{what:?} {value} for {truth}");
            };
            near(Measurand::BladeLength, leaf.truth.length, 0.01);
            near(Measurand::StalkLength, 20.0, 0.04);
            // A millimetre of its width is the neighbour's too.
            near(Measurand::BladeArea, leaf.truth.area, 0.03);
            // The ± says so.
            let area = found.measure(Measurand::BladeArea).expect("it is there");
            let off = (area.value - leaf.truth.area).abs();
            assert!(off <= area.plus_minus, "{area:?} for {}", leaf.truth.area);
            assert!(area.plus_minus < 0.03 * area.value, "{area:?}: it says something still");
        }
    }
}

#[test]
fn a_person_puts_them_together_again() {
    let leaf = Plan::smooth(Shape::Ellipse, 20.0).leaf();
    let picture = found((100.0, 105.0), beside(&leaf, 2));
    let one = mended(&picture, &[Mend::PartOf { part: 2, leaf: 1 }]).expect("it can be done");
    assert_eq!(one.leaves.len(), 1);
    assert!(one.cut_apart.is_empty(), "of what was put right nothing is said");
    assert!(!one.leaves[0].notes.contains(&LeafNote::CutApart));
    // What nobody touched stays as it was found.
    assert_eq!(mended(&picture, &[]).expect("nothing is to be done").cut_apart, [[1, 2]]);
}

#[test]
fn of_those_that_nobody_mended_it_is_still_said() {
    let leaf = Plan::smooth(Shape::Ellipse, 20.0).leaf();
    let picture = found((135.0, 105.0), beside(&leaf, 3));
    let midrib = &picture.leaves[0].lines.midrib;
    let tip = Mend::Tip { leaf: 1, at: midrib[midrib.len() - 1] };
    let now = mended(&picture, &[tip]).expect("it lies there");
    assert_eq!(now.cut_apart, [[1, 2, 3]]);
    // What is put right by hand is as unsure beyond its seam as before.
    let area = |picture: &MeasuredPicture| {
        picture.leaves[0].measure(Measurand::BladeArea).expect("it is there").plus_minus
    };
    assert!((area(&now) / area(&picture) - 1.0).abs() < 0.1);
    let now = mended(&picture, &[Mend::PartOf { part: 2, leaf: 1 }]).expect("both are there");
    assert_eq!(now.cut_apart, [[1, 3]], "the third was cut from what is one now");
}

/// A leaf that is cut in two by hand and put together again is the leaf that it was.
#[test]
fn halves_are_joined_along_their_whole_seam() {
    let lobed = Plan { lobes: 3, depth: 0.5, ..Plan::smooth(Shape::Oblong, 20.0) }.leaf();
    let picture = found((100.0, 120.0), vec![(&lobed, [50.0, 85.0], 0.0)]);
    assert_eq!(picture.leaves.len(), 1);
    let whole = &picture.leaves[0];
    let [left, right] = whole.lines.width;
    let mends =
        [Mend::Two { leaf: 1, between: [left, right] }, Mend::PartOf { part: 2, leaf: 1 }];
    let two = mended(&picture, &mends[..1]).expect("right across");
    assert_eq!(two.leaves.len(), 2);
    let again = mended(&picture, &mends).expect("both are there");
    let again = &again.leaves[0];
    for what in [Measurand::Perimeter, Measurand::BladeArea, Measurand::Roundness] {
        let value =
            |leaf: &spinney_model::MeasuredLeaf| leaf.measure(what).expect("it is there");
        let (now, before) = (value(again).value, value(whole).value);
        assert!((now / before - 1.0).abs() < 0.004, "{what:?} {now} for {before}");
        let (now, before) = (value(again).plus_minus, value(whole).plus_minus);
        assert!((now / before - 1.0).abs() < 0.05, "{what:?} ± {now} for {before}");
    }
    let lobes = |leaf: &spinney_model::MeasuredLeaf| {
        leaf.form.lobes.as_ref().map(|lobes| lobes.tips.len())
    };
    assert_eq!(lobes(again), lobes(whole));
    let edge =
        |leaf: &spinney_model::MeasuredLeaf| leaf.form.edge.as_ref().ok().map(|edge| edge.kind);
    assert_eq!(edge(again), edge(whole));
}

#[test]
fn leaves_apart_from_each_other_and_lobed_ones_are_left_whole() {
    let leaf = Plan::smooth(Shape::Ellipse, 20.0).leaf();
    let lobed = Plan { lobes: 3, depth: 0.7, ..Plan::smooth(Shape::Oblong, 20.0) }.leaf();
    let apart = vec![(&leaf, [30.0, 75.0], 0.0), (&lobed, [75.0, 75.0], 0.4)];
    let picture = found((110.0, 105.0), apart);
    assert_eq!(picture.leaves.len(), 2);
    assert!(picture.cut_apart.is_empty());
    assert!(picture.leaves.iter().all(|leaf| !leaf.notes.contains(&LeafNote::CutApart)));
}

#[test]
fn leaves_that_lie_on_each_other_are_left_to_a_person() {
    let leaf = Plan::smooth(Shape::Ellipse, 20.0).leaf();
    let over = vec![(&leaf, [35.0, 75.0], 0.0), (&leaf, [57.0, 75.0], 0.0)];
    let picture = found((95.0, 105.0), over);
    assert_eq!(picture.leaves.len(), 1);
    assert!(picture.cut_apart.is_empty());
    assert!(picture.leaves[0].notes.contains(&LeafNote::TwoStalks), "it may be two");
}
