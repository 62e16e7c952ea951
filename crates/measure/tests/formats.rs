//! The same leaf in every format that is read has the same size; and files say how large their dots are.

use fastrand::Rng;
use image::{DynamicImage, ImageFormat, RgbImage};
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Leaf, Plan, Shape};
use spinney_measure::{measure, read};
use spinney_model::{Measurand, MeasuredLeaf, NoScale, PictureScale};

const DPI: f64 = 150.0;

fn drawn() -> (Leaf, RgbImage) {
    let leaf = Plan::smooth(Shape::Ovate, 20.0).leaf();
    let page = Page { dpi: DPI, ..Page::of_one(&leaf, 0.3) };
    let (width, height) = page.pixels();
    let pixels = page.scanned(&mut Rng::with_seed(5));
    drop(page);
    (leaf, RgbImage::from_raw(width as u32, height as u32, pixels).expect("all of it"))
}

fn packed(picture: &DynamicImage, format: ImageFormat) -> Vec<u8> {
    let mut file = std::io::Cursor::new(Vec::new());
    picture.write_to(&mut file, format).expect("it can be packed");
    file.into_inner()
}

fn measured(file: &[u8], dpi: Option<f64>) -> (PictureScale, MeasuredLeaf) {
    let found = measure(&read(file, dpi).expect("a picture")).expect("a leaf");
    (found.scale, found.leaves.into_iter().next().expect("a leaf"))
}

fn is_as_long(leaf: &MeasuredLeaf, truth: &Leaf, what: &str) {
    let length = leaf.measure(Measurand::BladeLength).expect("it is there").value;
    assert!((length - truth.truth.length).abs() < 0.5, "{what}: {length}");
}

#[test]
fn every_format_and_depth_gives_the_same_leaf() {
    let (leaf, pixels) = drawn();
    let plain = DynamicImage::from(pixels);
    let all = [
        ("PNG", plain.clone(), ImageFormat::Png),
        ("PNG of sixteen bits", plain.clone().into_rgb16().into(), ImageFormat::Png),
        ("grey PNG", plain.clone().into_luma8().into(), ImageFormat::Png),
        ("grey PNG of sixteen bits", plain.clone().into_luma16().into(), ImageFormat::Png),
        ("PNG with clear parts", plain.clone().into_rgba8().into(), ImageFormat::Png),
        ("JPEG", plain.clone(), ImageFormat::Jpeg),
        ("TIFF", plain.clone(), ImageFormat::Tiff),
        ("TIFF of sixteen bits", plain.clone().into_rgb16().into(), ImageFormat::Tiff),
        ("grey TIFF", plain.clone().into_luma8().into(), ImageFormat::Tiff),
        ("WebP", plain.clone(), ImageFormat::WebP),
        ("BMP", plain, ImageFormat::Bmp),
    ];
    for (name, picture, format) in all {
        let (_, found) = measured(&packed(&picture, format), Some(DPI));
        is_as_long(&found, &leaf, name);
    }
}

#[test]
fn a_bmp_says_how_large_its_dots_are() {
    let (leaf, pixels) = drawn();
    let mut file = packed(&pixels.into(), ImageFormat::Bmp);
    for side in [38, 42] {
        file[side..side + 4].copy_from_slice(&5906_i32.to_le_bytes());
    }
    let (scale, found) = measured(&file, None);
    assert_eq!(scale, PictureScale::OfFile { dpi: 150.0, doubt: None });
    is_as_long(&found, &leaf, "BMP");
    for side in [38, 42] {
        file[side..side + 4].fill(0);
    }
    assert_eq!(measured(&file, None).0, PictureScale::Unknown(NoScale::NotSaid));
}

/// A TIFF file (TIFF 6.0, Adobe 1992): one strip, eight bits a colour, 150 dots to the inch, lying on
/// its side.
fn tiff(pixels: &RgbImage) -> Vec<u8> {
    const ENTRIES: u16 = 12;
    let behind = 8 + 2 + u32::from(ENTRIES) * 12 + 4;
    let (width, height) = pixels.dimensions();
    let mut file = b"II*\0\x08\0\0\0".to_vec();
    file.extend(ENTRIES.to_le_bytes());
    let mut entry = |tag: u16, kind: u16, count: u32, value: u32| {
        file.extend(tag.to_le_bytes());
        file.extend(kind.to_le_bytes());
        file.extend(count.to_le_bytes());
        file.extend(value.to_le_bytes());
    };
    let (short, long, ratio) = (3, 4, 5);
    entry(256, long, 1, width);
    entry(257, long, 1, height);
    entry(258, short, 3, behind + 16);
    entry(259, short, 1, 1);
    entry(262, short, 1, 2);
    entry(273, long, 1, behind + 22);
    // Turned by a quarter: the first row is the right side.
    entry(274, short, 1, 6);
    entry(277, short, 1, 3);
    entry(279, long, 1, 3 * width * height);
    entry(282, ratio, 1, behind);
    entry(283, ratio, 1, behind + 8);
    entry(296, short, 1, 2);
    file.extend([0; 4]);
    for number in [150_u32, 1, 150, 1] {
        file.extend(number.to_le_bytes());
    }
    for bits in [8_u16; 3] {
        file.extend(bits.to_le_bytes());
    }
    file.extend(pixels.as_raw());
    file
}

#[test]
fn a_tiff_says_how_large_its_dots_are_and_which_side_is_up() {
    let (leaf, pixels) = drawn();
    let (width, height) = pixels.dimensions();
    let picture = read(&tiff(&pixels), None).expect("a picture");
    assert_eq!(picture.scale, PictureScale::OfFile { dpi: 150.0, doubt: None });
    assert_eq!(picture.pixels.dimensions(), (height, width));
    let found = measure(&picture).expect("a leaf");
    is_as_long(&found.leaves[0], &leaf, "TIFF");
    assert_eq!(*picture.shown(), picture.pixels, "small enough for a screen");
}

#[test]
fn of_a_very_large_scan_each_two_by_two_become_one() {
    // 7,000 by 6,000 pixels, in which an ellipse lies.
    let pixels = image::GrayImage::from_fn(7000, 6000, |x, y| {
        let (across, down) =
            ((f64::from(x) - 3500.0) / 1000.0, (f64::from(y) - 3000.0) / 2000.0);
        image::Luma([if across.hypot(down) < 1.0 { 70 } else { 245 }])
    });
    let file = packed(&pixels.into(), ImageFormat::Png);
    let picture = read(&file, Some(1200.0)).expect("a picture");
    assert_eq!(picture.pixels.dimensions(), (3500, 3000));
    assert_eq!(picture.scale, PictureScale::Said { dpi: 600.0 });
    let found = measure(&picture).expect("an ellipse");
    let length = found.leaves[0].measure(Measurand::BladeLength).expect("it is there").value;
    assert!((length - 4000.0 / 1200.0 * 25.4).abs() < 0.3, "{length}");
    let shown = picture.shown();
    assert_eq!(shown.dimensions(), (1750, 1500));
    assert_eq!(shown.get_pixel(875, 750).0, [70; 3], "the leaf is where it was");
    assert_eq!(shown.get_pixel(1500, 750).0, [245; 3], "and the paper");
}
