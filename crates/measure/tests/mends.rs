//! What a person says of leaves that were found otherwise, on drawn scans of which everything is known.

use fastrand::Rng;
use image::RgbImage;
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Leaf, Plan, Point, Shape};
use spinney_measure::{measure, mended, read};
use spinney_model::{
    Aside, CannotMend, LeafNote, LeftOut, Measurand, MeasuredLeaf, MeasuredPicture, Mend,
    NoScale, PictureScale,
};

const DPI: f64 = 300.0;

/// Pixels of a page, a black bar laid on it, measured.
fn found(page: &Page<'_>, bar: Option<[u32; 4]>) -> MeasuredPicture {
    let (width, height) = page.pixels();
    let pixels = page.scanned(&mut Rng::with_seed(5));
    let mut pixels =
        RgbImage::from_raw(width as u32, height as u32, pixels).expect("all of it");
    if let Some([left, top, wide, high]) = bar {
        for (x, y) in (top..top + high).flat_map(|y| (left..left + wide).map(move |x| (x, y))) {
            pixels.put_pixel(x, y, image::Rgb([60; 3]));
        }
    }
    measured(&pixels)
}

fn measured(pixels: &RgbImage) -> MeasuredPicture {
    let mut file = std::io::Cursor::new(Vec::new());
    pixels.write_to(&mut file, image::ImageFormat::Png).expect("it can be packed");
    measure(&read(file.get_ref(), Some(DPI)).expect("a picture")).expect("a leaf")
}

fn page<'l>(size: (f64, f64), leaves: Vec<(&'l Leaf, Point, f64)>) -> Page<'l> {
    let first = leaves[0].0;
    Page { size, leaves, ..Page::of_one(first, 0.0) }
}

/// A place in mm as pixels.
fn at(place: Point) -> Point {
    place.map(|mm| mm / 25.4 * DPI - 0.5)
}

fn how_much(leaf: &MeasuredLeaf, what: Measurand) -> f64 {
    leaf.measure(what).expect("it is there").value
}

fn near(found: f64, truth: f64, share: f64) {
    assert!((found / truth - 1.0).abs() < share, "{found} instead of {truth}");
}

fn numbers(picture: &MeasuredPicture) -> Vec<usize> {
    picture.leaves.iter().map(|leaf| leaf.number).collect()
}

/// The place in the middle of a line.
fn halfway(line: &[Point]) -> Point {
    let way = |two: &[Point]| (two[1][0] - two[0][0]).hypot(two[1][1] - two[0][1]);
    let mut left = line.windows(2).map(way).sum::<f64>() / 2.0;
    for two in line.windows(2) {
        if way(two) >= left {
            let part = left / way(two);
            return [0, 1].map(|side| two[0][side] + part * (two[1][side] - two[0][side]));
        }
        left -= way(two);
    }
    line[0]
}

fn cannot(picture: &MeasuredPicture, mend: Mend) -> Option<CannotMend> {
    mended(picture, &[mend]).err().map(|(_, why)| why)
}

#[test]
fn a_base_that_was_guessed_wrongly_is_put_right() {
    // Upside down: the lower end, which is taken for the base, is the tip.
    let leaf = Plan::smooth(Shape::Ovate, 0.0).leaf();
    let page = page((80.0, 90.0), vec![(&leaf, [40.0, 10.0], std::f64::consts::PI)]);
    let found = found(&page, None);
    assert_eq!(found.leaves[0].notes, [LeafNote::BaseGuessed]);
    let guessed = &found.leaves[0].lines.midrib;
    assert!(guessed[0][1] > guessed[48][1], "the base was guessed to be below");
    let base = Mend::Base { leaf: 1, at: at([41.0, 9.0]) };
    let now = mended(&found, &[base]).expect("it is a place beside the leaf");
    let midrib = &now.leaves[0].lines.midrib;
    assert!(midrib[0][1] < midrib[48][1]);
    assert_eq!(now.leaves[0].notes, [LeafNote::Mended]);
    assert_eq!(now.mends, [base]);
    near(how_much(&now.leaves[0], Measurand::BladeLength), leaf.truth.length, 0.01);
    near(how_much(&now.leaves[0], Measurand::BladeWidth), leaf.truth.width, 0.01);
}

#[test]
fn where_a_blade_begins_the_stalk_ends() {
    let leaf = Plan::smooth(Shape::Ovate, 25.0).leaf();
    let page = Page::of_one(&leaf, 0.7);
    let found = found(&page, None);
    let truth = leaf.truth.stalk.expect("it was drawn with one");
    near(how_much(&found.leaves[0], Measurand::StalkLength), truth, 0.03);
    let cut = found.leaves[0].lines.midrib[0];
    // At the same place a mend changes next to nothing; halfway down, half of the stalk is blade.
    let middle = halfway(&found.leaves[0].lines.stalk);
    for (place, share) in [(cut, 1.0), (middle, 0.5)] {
        let mend = Mend::Base { leaf: 1, at: place };
        let now = mended(&found, &[mend]).expect("it lies on the stalk");
        near(how_much(&now.leaves[0], Measurand::StalkLength), share * truth, 0.06);
        let all = truth * (1.0 - share) + leaf.truth.length;
        near(how_much(&now.leaves[0], Measurand::BladeLength), all, 0.02);
    }
    // At its end there is no stalk.
    let mend = Mend::Base { leaf: 1, at: found.leaves[0].lines.stalk[0] };
    let now = mended(&found, &[mend]).expect("it lies on the stalk");
    assert!(now.leaves[0].measure(Measurand::StalkLength).is_err());
}

#[test]
fn a_tip_that_a_person_marks_is_where_the_blade_ends() {
    let leaf = Plan::smooth(Shape::Ellipse, 20.0).leaf();
    let found = found(&Page::of_one(&leaf, 0.0), None);
    let side = found.leaves[0].lines.width[1];
    let now = mended(&found, &[Mend::Tip { leaf: 1, at: side }]).expect("it lies on the leaf");
    let tip = now.leaves[0].lines.midrib[48];
    assert!((tip[0] - side[0]).hypot(tip[1] - side[1]) < 3.0, "{tip:?} instead of {side:?}");
}

#[test]
fn two_leaves_that_touch_are_cut_apart() {
    let large = Plan::smooth(Shape::Ellipse, 15.0).leaf();
    let small = Plan { length: 40.0, ..Plan::smooth(Shape::Ovate, 10.0) }.leaf();
    // Side by side, so that the widest places touch.
    let beside = (large.truth.width + small.truth.width) / 2.0 - 0.3;
    let leaves = vec![(&large, [30.0, 80.0], 0.0), (&small, [30.0 + beside, 70.0], 0.0)];
    let found = found(&page((100.0, 110.0), leaves), None);
    assert_eq!(found.leaves.len(), 2, "they are cut apart by themselves");
    // Whoever would rather cut it by hand has one leaf first.
    let one = Mend::PartOf { part: 2, leaf: 1 };
    let between = 30.0 + large.truth.width / 2.0 - 0.15;
    let line = [[between, 38.0], [between, 62.0]].map(at);
    let two = Mend::Two { leaf: 1, between: line };
    let now = mended(&found, &[one, two]).expect("right across");
    assert_eq!(numbers(&now), [1, 3]);
    for (leaf, truth) in now.leaves.iter().zip([&large, &small]) {
        near(how_much(leaf, Measurand::BladeArea), truth.truth.area, 0.02);
        near(how_much(leaf, Measurand::BladeLength), truth.truth.length, 0.02);
        assert_eq!(leaf.notes, [LeafNote::Mended]);
    }
    let beside = [[5.0, 5.0], [8.0, 9.0]].map(at);
    let no = cannot(&found, Mend::Two { leaf: 1, between: beside });
    assert_eq!(no, Some(CannotMend::NotAcross { leaf: 1 }));
    // And together again they are as they were.
    let all = [one, two, Mend::PartOf { part: 3, leaf: 1 }];
    let again = mended(&found, &all).expect("both are there");
    assert_eq!(numbers(&again), [1]);
    let area = |picture: &MeasuredPicture| how_much(&picture.leaves[0], Measurand::BladeArea);
    near(area(&again), area(&mended(&found, &[one]).expect("both are there")), 0.01);
}

#[test]
fn what_is_no_leaf_goes_and_what_was_left_out_comes() {
    let leaf = Plan::smooth(Shape::Ellipse, 10.0).leaf();
    let leaves = vec![(&leaf, [40.0, 85.0], 0.0), (&leaf, [85.0, 85.0], 0.0)];
    let found = found(&page((120.0, 125.0), leaves), Some([750, 1300, 300, 100]));
    assert_eq!((numbers(&found), &*found.left_out), (vec![1, 2], &[(LeftOut::Label, 1)][..]));
    let mends = [Mend::NoLeaf { leaf: 1 }, Mend::ALeaf { at: [900.0, 1350.0] }];
    let now = mended(&found, &mends).expect("both can be done");
    assert_eq!(numbers(&now), [2, 3]);
    assert!(now.left_out.is_empty() && now.aside.is_empty());
    let mm = 25.4 / DPI;
    let bar = 300.0 * 100.0 * mm * mm;
    near(how_much(&now.leaves[1], Measurand::BladeArea), bar, 0.02);
    assert_eq!(now.leaves[0], found.leaves[1], "what nobody mended stays as it was");
    let twice = [mends[0], mends[0]];
    let gone = CannotMend::NoSuchLeaf { leaf: 1 };
    assert_eq!(mended(&found, &twice).err(), Some((1, gone)));
}

#[test]
fn a_pale_leaf_beside_a_dark_one_is_told_and_can_be_taken() {
    let (dark, pale) = (Plan::smooth(Shape::Ovate, 15.0), Plan::smooth(Shape::Ellipse, 0.0));
    let (dark, pale) = (dark.leaf(), pale.leaf());
    let size = (150.0, 125.0);
    let of_dark = page(size, vec![(&dark, [40.0, 95.0], 0.0)]);
    // White felt on white paper: what an edge of leaves is found by lies far above it.
    let of_pale = page(size, vec![(&pale, [110.0, 95.0], 0.3)]);
    let of_pale = Page { colour: [218, 222, 214], shade: 0.0, ..of_pale };
    let scan = |page: &Page<'_>, seed| page.scanned(&mut Rng::with_seed(seed));
    let both = scan(&of_dark, 5).into_iter().zip(scan(&of_pale, 6));
    let both = both.map(|(one, other)| one.min(other)).collect();
    let (width, height) = of_dark.pixels();
    let both = RgbImage::from_raw(width as u32, height as u32, both).expect("all of it");
    let found = measured(&both);
    assert_eq!((numbers(&found), &*found.left_out), (vec![1], &[(LeftOut::Faint, 1)][..]));
    let place = spinney_measure::place_inside(&found.aside[0].outline).expect("it is a blade");
    let now = mended(&found, &[Mend::ALeaf { at: place }]).expect("it lies there");
    near(how_much(&now.leaves[1], Measurand::BladeArea), pale.truth.area, 0.01);
    near(how_much(&now.leaves[1], Measurand::BladeLength), pale.truth.length, 0.01);
    assert!(now.leaves[1].notes.contains(&LeafNote::FaintEdge));
    assert_eq!(now.leaves[0], found.leaves[0], "what nobody mended stays as it was");
    // Without the pale one there is nothing to tell, noise and shade included.
    let alone = scan(&Page { shade: 0.3, noise: 4.0, ..of_dark }, 7);
    let alone = RgbImage::from_raw(width as u32, height as u32, alone).expect("all of it");
    assert!(measured(&alone).left_out.is_empty());
}

#[test]
fn a_ruler_that_lies_beside_the_leaves_says_how_long_they_are() {
    let leaf = Plan::smooth(Shape::Ovate, 20.0).leaf();
    let found = found(&Page::of_one(&leaf, 0.3), None);
    let unknown =
        MeasuredPicture { scale: PictureScale::Unknown(NoScale::NotSaid), ..found.clone() };
    let ruler =
        |mm| Mend::Length { between: [[0.5, 9.0], at([50.8, 0.0]).map(|x| x.max(9.0))], mm };
    let now = mended(&unknown, &[ruler(50.8)]).expect("it is long enough");
    assert!(
        matches!(now.scale, PictureScale::OfRuler { dpi } if (dpi / DPI - 1.0).abs() < 0.01)
    );
    near(how_much(&now.leaves[0], Measurand::BladeLength), leaf.truth.length, 0.01);
    assert_eq!(now.leaves[0].notes, found.leaves[0].notes, "nobody mended the leaf");
    // Twice as long a ruler: twice as long a leaf; the last word counts.
    let twice = mended(&unknown, &[ruler(50.8), ruler(101.6)]).expect("it is long enough");
    near(how_much(&twice.leaves[0], Measurand::BladeLength), 2.0 * leaf.truth.length, 0.01);
    let short = Mend::Length { between: [[9.0; 2], [11.0, 9.0]], mm: 50.0 };
    assert_eq!(cannot(&found, short), Some(CannotMend::NoLength));
}

#[test]
fn within_a_dark_rim_each_letter_means_its_own_thing() {
    let leaf = Plan::smooth(Shape::Ellipse, 0.0).leaf();
    let mut found = found(
        &page((80.0, 110.0), vec![(&leaf, [40.0, 80.0], 0.0)]),
        Some([100, 1100, 300, 100]),
    );
    // The lid was open: all lies inside of one thing that goes over the edge.
    let (right, bottom) = (f64::from(found.size.0), f64::from(found.size.1));
    let rim = vec![[0.0, 0.0], [right, 0.0], [right, bottom], [0.0, bottom]];
    found.aside.insert(0, Aside { why: LeftOut::CutOff, outline: rim });
    let now = mended(&found, &[Mend::ALeaf { at: [250.0, 1150.0] }]).expect("a bar lies there");
    let mm = 25.4 / DPI;
    near(how_much(&now.leaves[1], Measurand::BladeArea), 30_000.0 * mm * mm, 0.02);
    // A ruler measures anew, and what is guessed is said once.
    let ruler = Mend::Length { between: [[0.0; 2], [0.0, 300.0]], mm: 25.4 };
    let now = mended(&found, &[ruler]).expect("it is long enough");
    assert_eq!(now.leaves[0].notes, [LeafNote::BaseGuessed]);
}

#[test]
fn a_line_beside_the_place_where_leaves_touch_cuts_no_paper_off() {
    // Like a V: they touch below, and between them is paper.
    let leaf = Plan::smooth(Shape::Ellipse, 0.0).leaf();
    let leaves = vec![(&leaf, [50.0, 90.0], 0.5), (&leaf, [50.5, 90.0], -0.5)];
    let found = found(&page((100.0, 110.0), leaves), None);
    assert_eq!(found.leaves.len(), 1, "they touch");
    let inside = [[35.0, 60.0], [65.0, 60.0]].map(at);
    let no = cannot(&found, Mend::Two { leaf: 1, between: inside });
    assert_eq!(no, Some(CannotMend::NotAcross { leaf: 1 }));
}

#[test]
fn without_mends_all_is_as_it_was_found() {
    let leaf = Plan::smooth(Shape::Heart, 20.0).leaf();
    let found = found(&Page::of_one(&leaf, 0.0), None);
    assert_eq!(mended(&found, &[]).as_ref(), Ok(&found));
    let far = [[0.0; 2], [-4000.0, 9.0]];
    for at in far {
        let no = cannot(&found, Mend::Base { leaf: 1, at: [at[0] - 900.0, at[1]] });
        assert_eq!(no, Some(CannotMend::FarOff { leaf: 1 }));
        assert_eq!(cannot(&found, Mend::ALeaf { at }), Some(CannotMend::NothingThere));
    }
    let itself = cannot(&found, Mend::PartOf { part: 1, leaf: 1 });
    assert_eq!(itself, Some(CannotMend::PartOfItself { leaf: 1 }));
}
