//! Drawn rubbings of which everything is known, measured.

#[path = "packing/png.rs"]
mod png_file;

use fastrand::Rng;
use png_file::packed;
use spinney_fixtures::leaves::rubbed::{Pixels, Rubbing};
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Leaf, Plan, Shape};
use spinney_measure::{Picture, cut_out, measure, measure_rubbing, on_white, read};
use spinney_model::{EdgeUnseen, LeafNote, Measurand, PictureError};

/// A rubbing of a plan at 150 dpi, with strokes beyond it of such a share of the blade's tone.
fn drawn(plan: Plan, background: f64) -> Rubbing {
    let any = Rubbing::seeded(&mut Rng::with_seed(4), plan);
    Rubbing { background, dpi: 150.0, gaps: 0.05, noise: 2.0, turn: 0.7, blade: 0.42, ..any }
}

fn picture(Pixels { bytes, size }: &Pixels) -> Picture {
    read(&packed(bytes, *size), Some(150.0)).expect("a picture")
}

/// Two pictures beside each other, on paper of the first.
fn beside(one: &Pixels, other: &Pixels) -> Pixels {
    let size = (one.size.0 + other.size.0, one.size.1.max(other.size.1));
    let mut bytes = one.bytes[..3].repeat(size.0 * size.1);
    for (from, left) in [(one, 0), (other, one.size.0)] {
        for (y, row) in from.bytes.chunks_exact(3 * from.size.0).enumerate() {
            let at = 3 * (y * size.0 + left);
            bytes[at..at + row.len()].copy_from_slice(row);
        }
    }
    Pixels { bytes, size }
}

/// Blade length and width, stalk and area, each with what is true.
fn sizes(leaf: &spinney_model::MeasuredLeaf, drawn: &Leaf) -> [(f64, f64, f64); 4] {
    let truth = drawn.truth;
    let all = [
        (Measurand::BladeLength, truth.length),
        (Measurand::BladeWidth, truth.width),
        (Measurand::StalkLength, truth.stalk.unwrap_or(0.0)),
        (Measurand::BladeArea, truth.area),
    ];
    all.map(|(what, truth)| {
        let measure = leaf.measure(what).expect("it has a stalk and a scale");
        (measure.value, measure.plus_minus, truth)
    })
}

#[test]
fn a_rubbed_leaf_has_its_sizes_with_and_without_strokes_beyond_it() {
    for background in [0.0, 0.25, 0.45] {
        let rubbing = drawn(Plan::smooth(Shape::Ellipse, 22.0), background);
        let found = measure_rubbing(&picture(&rubbing.scanned())).expect("a leaf");
        assert_eq!(found.leaves.len(), 1, "with strokes of {background}");
        let leaf = &found.leaves[0];
        for (found, plus_minus, truth) in sizes(leaf, &rubbing.plan.leaf()) {
            assert!((found - truth).abs() <= plus_minus, "{found} ± {plus_minus}: {truth}");
        }
        assert!(leaf.notes.contains(&LeafNote::Rubbed));
    }
}

#[test]
fn no_form_is_told_of_a_rubbing() {
    let rubbing = drawn(Plan::smooth(Shape::Ovate, 22.0), 0.2);
    let found = measure_rubbing(&picture(&rubbing.scanned())).expect("a leaf");
    let form = &found.leaves[0].form;
    assert_eq!(form.edge, Err(EdgeUnseen::Rubbed));
    assert!(form.lobes.is_none() && form.leaflets.is_none() && form.ends.is_none());
}

#[test]
fn two_rubbings_beside_each_other_are_two_leaves() {
    let one = drawn(Plan::smooth(Shape::Ellipse, 22.0), 0.3);
    let other = Rubbing { paper: one.paper, ..drawn(Plan::smooth(Shape::Rhombus, 15.0), 0.1) };
    let found = measure_rubbing(&picture(&beside(&one.scanned(), &other.scanned())));
    assert_eq!(found.expect("leaves").leaves.len(), 2);
}

#[test]
fn most_rubbings_that_nobody_said_are_some_are_noticed_and_no_scan_is() {
    let noticed = (0..8).filter(|seed| {
        let plan = Plan::smooth(Shape::Ellipse, 22.0);
        let any = Rubbing::seeded(&mut Rng::with_seed(*seed), plan);
        let rubbing = Rubbing { dpi: 150.0, ..any };
        measure(&picture(&rubbing.scanned())).is_ok_and(|found| found.like_a_rubbing)
    });
    let noticed = noticed.count();
    assert!(noticed >= 6, "{noticed} of 8");
    for shape in Shape::ALL {
        let mut narrow = Plan::smooth(shape, 10.0);
        for width in [0.3, 0.02] {
            narrow.half_width = width;
            let leaf = narrow.leaf();
            let mut page = Page::of_one(&leaf, 0.9);
            page.noise = 4.0;
            page.dpi = 150.0;
            let pixels = page.scanned(&mut Rng::with_seed(1));
            let scan = picture(&Pixels { bytes: pixels, size: page.pixels() });
            let found = measure(&scan).expect("a leaf");
            assert!(!found.like_a_rubbing, "{shape:?}, {width}");
        }
    }
}

#[test]
fn nothing_is_found_on_paper_that_nobody_rubbed() {
    let size = (600, 800);
    let mut rng = Rng::with_seed(3);
    let bytes = (0..3 * size.0 * size.1).map(|_| 236 + rng.u8(..8)).collect();
    let found = measure_rubbing(&picture(&Pixels { bytes, size }));
    assert_eq!(found, Err(PictureError::NothingThere));
}

#[test]
fn a_rubbing_is_cut_out_on_white_paper_in_its_own_colour() {
    let mut rubbing = drawn(Plan::smooth(Shape::Ellipse, 22.0), 0.4);
    (rubbing.crayon, rubbing.paper) = ([38, 112, 58], [226, 214, 190]);
    let rubbed = picture(&rubbing.scanned());
    let found = measure_rubbing(&rubbed).expect("a leaf");
    let white = on_white(rubbed);
    let file = cut_out(&white, &found.leaves[0].lines).expect("a file");
    let cut = image::load_from_memory(&file).expect("a picture").into_rgba8();
    assert_eq!(cut.get_pixel(0, 0).0[3], 0, "clear beyond the leaf");
    let inside = || cut.pixels().map(|pixel| pixel.0).filter(|pixel| pixel[3] == 255);
    let count = inside().count();
    let paper = inside().filter(|pixel| pixel.iter().all(|byte| *byte >= 245)).count();
    assert!(paper * 5 > count, "paper between the grains is white: {paper} of {count}");
    let green = inside().filter(|[red, green, blue, _]| green > red && green > blue).count();
    assert!(green * 5 > count, "the crayon stays green: {green} of {count}");
}

/// However small a picture, or large its dots are said to be: no scale makes it fail.
#[test]
fn small_and_narrow_pictures_are_measured_or_have_nothing() {
    for (width, height) in [(1, 1), (2, 400), (4000, 2), (60, 60)] {
        let pixels = image::RgbImage::from_fn(width, height, |x, y| {
            let dark = x.abs_diff(width / 2).pow(2) + y.abs_diff(height / 2).pow(2) < 400;
            image::Rgb(if dark { [60, 90, 40] } else { [240; 3] })
        });
        let mut file = std::io::Cursor::new(Vec::new());
        pixels.write_to(&mut file, image::ImageFormat::Png).expect("it can be packed");
        for dpi in [None, Some(10.0), Some(300.0), Some(10_000.0)] {
            let picture = spinney_measure::read(file.get_ref(), dpi).expect("it can be read");
            let scan = spinney_measure::measure(&picture);
            let rubbing = spinney_measure::measure_rubbing(&picture);
            for found in [scan, rubbing].into_iter().flatten() {
                assert!(found.leaves.len() + found.left_out.len() > 0, "{width} x {height}");
            }
        }
    }
}

/// Where nobody says how large a dot is, it is that of a page, for whoever looks.
#[test]
fn without_a_scale_a_rubbing_is_taken_for_a_page() {
    let rubbed = drawn(Plan::smooth(Shape::Ovate, 20.0), 0.2).scanned();
    let file = packed(&rubbed.bytes, rubbed.size);
    let unknown = read(&file, None).expect("a picture");
    assert_eq!(unknown.scale.mm(), None);
    let dpi = spinney_measure::dpi_of_page(&unknown);
    let longer = rubbed.size.0.max(rubbed.size.1) as f64;
    assert!((longer / dpi * 25.4 - 297.0).abs() < 1e-6, "{dpi}");
    let said = read(&file, Some(dpi)).expect("a picture");
    let [one, other] = [&unknown, &said].map(|picture| {
        let found = spinney_measure::measure_rubbing(picture).expect("there is a leaf");
        found.leaves.into_iter().map(|leaf| leaf.lines).collect::<Vec<_>>()
    });
    assert!(!one.is_empty());
    assert_eq!(one, other);
}
