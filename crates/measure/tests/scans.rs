//! Drawn scans of which everything is known, read and measured.

#[path = "packing/png.rs"]
mod png_file;

use fastrand::Rng;
use png_file::packed;
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Leaf, Plan, Shape};
use spinney_measure::{cut_out, measure, read};
use spinney_model::{
    LeafNote, LeftOut, Measurand, MeasuredPicture, NoScale, NotMeasured, PictureError,
    PictureScale,
};

fn png(page: &Page<'_>) -> Vec<u8> {
    packed(&page.scanned(&mut Rng::with_seed(5)), page.pixels())
}

fn measured(page: &Page<'_>) -> MeasuredPicture {
    let picture = read(&png(page), Some(page.dpi)).expect("a picture");
    measure(&picture).expect("there is a leaf in it")
}

/// Length, width, stalk and area of one leaf.
fn sizes(page: &Page<'_>) -> [f64; 4] {
    let found = measured(page);
    assert_eq!(found.leaves.len(), 1, "{:?}", found.left_out);
    [
        Measurand::BladeLength,
        Measurand::BladeWidth,
        Measurand::StalkLength,
        Measurand::BladeArea,
    ]
    .map(|what| found.leaves[0].measure(what).map_or(0.0, |measure| measure.value))
}

fn truths(leaf: &Leaf) -> [f64; 4] {
    let truth = leaf.truth;
    [truth.length, truth.width, truth.stalk.unwrap_or(0.0), truth.area]
}

fn near(found: [f64; 4], truth: [f64; 4], share: f64) {
    for (found, truth) in found.into_iter().zip(truth) {
        assert!((found - truth).abs() <= share * truth + 0.15, "{found} instead of {truth}");
    }
}

#[test]
fn an_ellipse_with_a_stalk_has_the_sizes_that_it_was_drawn_with() {
    let leaf = Plan::smooth(Shape::Ellipse, 20.0).leaf();
    near(sizes(&Page::of_one(&leaf, 0.4)), truths(&leaf), 0.004);
}

#[test]
fn turned_mirrored_and_at_another_dpi_a_leaf_is_as_large() {
    let leaf = Plan::smooth(Shape::Ovate, 25.0).leaf();
    for turn in [0.0, 1.1, 2.9, 4.4] {
        for dpi in [150.0, 300.0, 600.0] {
            let page = Page { dpi, mirrored: dpi > 200.0, ..Page::of_one(&leaf, turn) };
            near(sizes(&page), truths(&leaf), 0.008);
        }
    }
}

#[test]
fn light_paper_shade_and_noise_do_not_change_a_leaf() {
    let leaf = Plan::smooth(Shape::Obovate, 18.0).leaf();
    let page = Page::of_one(&leaf, 5.0);
    for paper in [[244, 243, 238], [180, 200, 225], [235, 205, 190]] {
        let page = Page {
            paper,
            shade: 0.3,
            uneven: 0.3,
            noise: 3.0,
            blur: 1.0,
            leaves: page.leaves.clone(),
            ..Page::of_one(&leaf, 5.0)
        };
        near(sizes(&page), truths(&leaf), 0.015);
    }
}

#[test]
fn leaves_are_counted_row_by_row_and_each_keeps_its_own_size() {
    let lengths = [30.0, 44.0, 38.0, 52.0, 41.0];
    let leaves: Vec<Leaf> = lengths
        .iter()
        .map(|length| Plan { length: *length, ..Plan::smooth(Shape::Ovate, 12.0) }.leaf())
        .collect();
    let places = [[30.0, 70.0], [75.0, 64.0], [120.0, 72.0], [40.0, 140.0], [100.0, 135.0]];
    let page = Page {
        size: (150.0, 170.0),
        leaves: leaves.iter().zip(places).map(|(leaf, at)| (leaf, at, 0.1)).collect(),
        ..Page::of_one(&leaves[0], 0.0)
    };
    let found = measured(&page);
    assert_eq!(found.leaves.len(), 5);
    for (at, (leaf, length)) in found.leaves.iter().zip(lengths).enumerate() {
        assert_eq!(leaf.number, at + 1);
        let measure = leaf.measure(Measurand::BladeLength).expect("it is there");
        assert!((measure.value - length).abs() < 0.4, "{} is {}", measure.value, length);
    }
}

#[test]
fn labels_specks_and_what_is_cut_off_are_no_leaves() {
    let leaf = Plan::smooth(Shape::Ellipse, 10.0).leaf();
    let page = Page { size: (120.0, 100.0), ..Page::of_one(&leaf, 0.0) };
    let page =
        Page { leaves: vec![(&leaf, [40.0, 75.0], 0.0), (&leaf, [119.0, 60.0], 0.0)], ..page };
    let (width, height) = page.pixels();
    let mut pixels = page.scanned(&mut Rng::with_seed(5));
    let mut square = |left: usize, top: usize, wide: usize, high: usize| {
        for y in top..top + high {
            pixels[3 * (y * width + left)..3 * (y * width + left + wide)].fill(60);
        }
    };
    square(750, 1000, 300, 100);
    square(60, 60, 6, 5);
    square(90, 60, 4, 7);
    let file = packed(&pixels, (width, height));
    let found = measure(&read(&file, Some(300.0)).expect("a picture")).expect("a leaf");
    assert_eq!(found.leaves.len(), 1);
    assert_eq!(
        found.left_out,
        [(LeftOut::CutOff, 1), (LeftOut::Label, 1), (LeftOut::Speck, 2)]
    );
}

#[test]
fn without_a_scale_there_are_ratios_and_no_lengths() {
    let leaf = Plan::smooth(Shape::Ovate, 0.0).leaf();
    let file = png(&Page::of_one(&leaf, 0.2));
    let found = measure(&read(&file, None).expect("a picture")).expect("a leaf");
    assert_eq!(found.scale, PictureScale::Unknown(NoScale::NotSaid));
    let leaf_found = &found.leaves[0];
    let of = |what| leaf_found.measure(what);
    assert_eq!(of(Measurand::BladeLength), Err(NotMeasured::NoScale));
    assert_eq!(of(Measurand::StalkToBlade), Err(NotMeasured::NoStalk));
    let ratio = of(Measurand::LengthToWidth).expect("a shape has no unit").value;
    assert!((ratio / (leaf.truth.length / leaf.truth.width) - 1.0).abs() < 0.01, "{ratio}");
    assert_eq!(leaf_found.notes, [LeafNote::BaseGuessed]);
}

#[test]
fn a_hole_is_blade_and_is_said() {
    let leaf = Plan::smooth(Shape::Ellipse, 15.0).leaf();
    let page = Page::of_one(&leaf, 0.0);
    let (width, height) = page.pixels();
    let mut pixels = page.scanned(&mut Rng::with_seed(5));
    for y in 300..340 {
        let middle = 3 * (y * width + width / 2);
        pixels[middle..middle + 90].fill(244);
    }
    let found = measure(&read(&packed(&pixels, (width, height)), Some(300.0)).expect("read"));
    let found = found.expect("a leaf");
    assert_eq!(found.leaves[0].notes, [LeafNote::Holes]);
    let area = found.leaves[0].measure(Measurand::BladeArea).expect("it is there").value;
    assert!((area / leaf.truth.area - 1.0).abs() < 0.005, "{area}");
}

#[test]
fn a_cut_out_leaf_stands_upright_on_clear_ground_and_knows_its_size() {
    let leaf = Plan::smooth(Shape::Ovate, 20.0).leaf();
    let file = png(&Page::of_one(&leaf, 2.0));
    let picture = read(&file, Some(300.0)).expect("a picture");
    let found = measure(&picture).expect("a leaf");
    let cut = cut_out(&picture, &found.leaves[0].lines).expect("it has a size");
    let alone = image::load_from_memory(&cut).expect("a picture").into_rgba8();
    assert!(alone.height() > 2 * alone.width(), "{:?}", alone.dimensions());
    assert_eq!(alone.get_pixel(0, 0).0[3], 0);
    let solid = alone.pixels().filter(|pixel| pixel.0[3] == 255);
    let light = solid.clone().filter(|pixel| pixel.0[0] > 150).count();
    let (solid, mm) = (solid.count() as f64, 25.4_f64 / 300.0);
    assert!(light == 0, "{light} pixels of the paper are left");
    let stalk = 20.0 * 1.2;
    assert!((solid * mm * mm / (leaf.truth.area + stalk) - 1.0).abs() < 0.03);
    // The stalk is below: the lowest rows are narrow.
    let wide =
        |row: u32| (0..alone.width()).filter(|x| alone.get_pixel(*x, row).0[3] > 0).count();
    assert!(wide(alone.height() - 60) < 40 && wide(alone.height() / 3) > 150);
    // Measured once more, without being told the dots: the file has them.
    let again = measure(&read(&cut, None).expect("a picture")).expect("a leaf");
    assert_eq!(again.scale, PictureScale::OfFile { dpi: 300.0, doubt: None });
    let length = |of: &MeasuredPicture| {
        of.leaves[0].measure(Measurand::BladeLength).expect("it is there").value
    };
    assert!((length(&again) - length(&found)).abs() < 0.3);
}

#[test]
fn what_is_no_picture_too_large_or_empty_is_refused() {
    assert_eq!(read(b"leaf", None).err(), Some(PictureError::NotRead));
    let mut huge = packed(&[0; 12], (2, 2));
    huge[16..24].copy_from_slice(&[0, 1, 0x86, 0xA0, 0, 1, 0x86, 0xA0]);
    // A head that says 100,000 × 100,000, with the sum that fits it.
    let sum = checksum(&huge[12..29]);
    huge[29..33].copy_from_slice(&sum.to_be_bytes());
    assert_eq!(read(&huge, None).err(), Some(PictureError::TooLarge { most: 120_000_000 }));
    let white = packed(&vec![250; 3 * 90 * 90], (90, 90));
    let nothing = read(&white, None).map(|picture| measure(&picture).err());
    assert_eq!(nothing.ok().flatten(), Some(PictureError::NothingThere));
}

/// CRC-32 of PNG chunks (ISO 3309).
fn checksum(bytes: &[u8]) -> u32 {
    let mut sum = u32::MAX;
    for byte in bytes {
        sum ^= u32::from(*byte);
        for _ in 0..8 {
            sum = if sum & 1 == 1 { 0xEDB8_8320 ^ (sum >> 1) } else { sum >> 1 };
        }
    }
    !sum
}
