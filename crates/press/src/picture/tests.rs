//! Only pixels are handed on, upright and not too many; what is no picture says so.

use std::io::Cursor;

use image::{DynamicImage, GenericImageView, ImageFormat, Rgb, RgbImage, Rgba, RgbaImage};
use spinney_fixtures::photographs::{
    chunk, more_than_pixels, tales_in, telling_jpeg, telling_png,
};

use super::{MOST_BYTES, MOST_SIDE, NoPicture, for_a_phone, packed_anew};
use crate::Picture;

const LONGEST: u32 = 1600;

fn anew(given: &[u8]) -> Result<Vec<u8>, NoPicture> {
    packed_anew(given, LONGEST).map(Picture::into_bytes)
}

/// Red on its left half, blue on its right.
fn two_halves(width: u32, height: u32) -> DynamicImage {
    RgbImage::from_fn(width, height, |x, _| match x < width / 2 {
        true => Rgb([220, 20, 20]),
        false => Rgb([20, 20, 220]),
    })
    .into()
}

/// A picture that packs badly, as undergrowth does.
fn undergrowth(width: u32, height: u32) -> DynamicImage {
    let mut random = fastrand::Rng::with_seed(7);
    RgbImage::from_fn(width, height, |_, _| Rgb([random.u8(..), random.u8(..), random.u8(..)]))
        .into()
}

fn bytes(picture: &DynamicImage, format: ImageFormat) -> Vec<u8> {
    let mut out = Cursor::new(Vec::new());
    picture.write_to(&mut out, format).expect("it can be written");
    out.into_inner()
}

fn photograph(picture: &DynamicImage, held: u8) -> Vec<u8> {
    telling_jpeg(&bytes(picture, ImageFormat::Jpeg), held)
}

fn drawing(picture: &DynamicImage, held: u8) -> Vec<u8> {
    telling_png(&bytes(picture, ImageFormat::Png), held)
}

#[test]
fn where_and_when_it_was_taken_is_gone() {
    let picture = two_halves(40, 20);
    for given in [photograph(&picture, 1), drawing(&picture, 1)] {
        assert!(tales_in(&given).len() >= 8, "{:?}", tales_in(&given));
        assert!(more_than_pixels(&given).len() >= 6, "{:?}", more_than_pixels(&given));
        let small = for_a_phone(&given, 60_000).expect("a picture").expect("it fits");
        for kept in [anew(&given).expect("a picture"), small.into_bytes()] {
            assert_eq!(tales_in(&kept), Vec::<&str>::new());
            assert_eq!(more_than_pixels(&kept), Vec::<String>::new());
        }
    }
}

#[test]
fn a_camera_held_sideways_gives_an_upright_picture() {
    let picture = two_halves(40, 20);
    for given in [photograph(&picture, 6), drawing(&picture, 6)] {
        let small = for_a_phone(&given, 60_000).expect("a picture").expect("it fits");
        for kept in [anew(&given).expect("a picture"), small.into_bytes()] {
            let kept = image::load_from_memory(&kept).expect("it can be read again");
            assert_eq!(kept.dimensions(), (20, 40));
            let [top, bottom] = [5, 34].map(|y| kept.get_pixel(10, y).0);
            assert!(top[0] > 150 && top[2] < 100, "the left half is on top: {top:?}");
            assert!(bottom[2] > 150 && bottom[0] < 100, "the right one is below: {bottom:?}");
        }
    }
}

#[test]
fn a_large_picture_becomes_smaller_and_a_small_one_stays() {
    let given = bytes(&two_halves(2400, 300), ImageFormat::Jpeg);
    let kept = anew(&given).expect("it is a picture");
    let kept = image::load_from_memory(&kept).expect("it can be read again");
    assert_eq!(kept.dimensions(), (LONGEST, 200));
    let small = bytes(&two_halves(3, 2), ImageFormat::Png);
    let once = anew(&small).expect("it is a picture");
    assert_eq!(image::load_from_memory(&once).expect("readable"), two_halves(3, 2));
    assert_eq!(once, anew(&once).expect("it is a picture"), "twice is once");
}

#[test]
fn clear_parts_of_a_drawing_are_paper() {
    let pixels = |x, _| if x == 0 { Rgba([10, 20, 30, 255]) } else { Rgba([0; 4]) };
    let given = bytes(&RgbaImage::from_fn(2, 1, pixels).into(), ImageFormat::Png);
    let kept = image::load_from_memory(&anew(&given).expect("a picture")).expect("readable");
    assert_eq!(kept.into_rgb8().into_raw(), [10, 20, 30, 255, 255, 255]);
}

#[test]
fn a_phone_gets_what_it_shows_and_no_more_bytes_than_asked_for() {
    let sharp = bytes(&two_halves(300, 200), ImageFormat::Png);
    let shown = for_a_phone(&sharp, 60_000).expect("a picture").expect("it fits");
    assert!(matches!(shown, Picture::Png(_)), "a drawing stays sharp");
    let mut sides = Vec::new();
    for format in [ImageFormat::Jpeg, ImageFormat::Png] {
        let given = bytes(&undergrowth(1500, 1000), format);
        for most in [60_000, 25_000, 8_000] {
            let shown = for_a_phone(&given, most).expect("a picture").expect("it fits");
            assert!(shown.bytes().len() <= most, "{} > {most}", shown.bytes().len());
            let shown = image::load_from_memory(shown.bytes()).expect("readable");
            sides.push(shown.width());
        }
        assert_eq!(for_a_phone(&given, 300), Ok(None), "nothing fits into so little");
    }
    assert!(sides.iter().all(|side| (120..=640).contains(side)), "{sides:?}");
    assert!(sides[0] > sides[2], "fewer bytes, fewer pixels: {sides:?}");
}

/// The head of a PNG that says it has so many pixels, and has none: were it unpacked, it would
/// be found damaged, not too large.
fn says_it_is(width: u32, height: u32) -> Vec<u8> {
    let mut head = width.to_be_bytes().to_vec();
    head.extend(height.to_be_bytes());
    head.extend([8, 6, 0, 0, 0]);
    let mut out = b"\x89PNG\r\n\x1a\n".to_vec();
    out.extend(chunk(b"IHDR", &head));
    out.extend(chunk(b"IDAT", b""));
    out.extend(chunk(b"IEND", b""));
    out
}

#[test]
fn too_many_pixels_are_refused_before_they_are_unpacked() {
    for (width, height) in [(60_000, 60_000), (19_999, 19_999), (1, 30_000), (8_000, 6_000)] {
        let refused = anew(&says_it_is(width, height));
        assert_eq!(refused, Err(NoPicture::TooLarge), "{width} × {height}");
    }
    assert_eq!(anew(&says_it_is(600, 600)), Err(NoPicture::NotRead));
    assert_eq!(anew(&says_it_is(MOST_SIDE, 1)), Err(NoPicture::NotRead));
    assert_eq!(anew(&says_it_is(1, MOST_SIDE + 1)), Err(NoPicture::TooLarge));
    let mut jpeg = bytes(&two_halves(16, 16), ImageFormat::Jpeg);
    let frame = jpeg.windows(2).position(|two| two == [0xFF, 0xC0]).expect("a frame");
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0x4E, 0x00, 0x4E, 0x00]);
    assert_eq!(anew(&jpeg), Err(NoPicture::TooLarge));
}

#[test]
fn too_many_bytes_are_refused_before_they_are_looked_at() {
    // A picture, and behind its end so much that nobody needs.
    let small = bytes(&two_halves(3, 2), ImageFormat::Png);
    let padded = |length: usize| {
        let mut padded = small.clone();
        padded.resize(length, 0);
        anew(&padded)
    };
    assert_eq!(padded(MOST_BYTES), anew(&small), "what stands behind is not kept");
    assert_eq!(padded(MOST_BYTES + 1), Err(NoPicture::TooLarge));
}

#[test]
fn what_is_no_picture_is_said_and_breaks_nothing() {
    let jpeg = photograph(&two_halves(32, 24), 6);
    let png = drawing(&two_halves(32, 24), 3);
    let others: [&[u8]; 6] = [
        b"",
        b"kind,edge\noak,smooth\n",
        b"GIF89a\x01\0\x01\0",
        b"%PDF-1.7",
        &jpeg[..4],
        &png[..40],
    ];
    for other in others {
        assert_eq!(anew(other), Err(NoPicture::NotRead));
    }
    // Whatever is broken in it, it is a picture or it is none.
    let (mut whole, mut none) = (0, 0);
    for given in [&jpeg, &png] {
        for at in 0..given.len() {
            let mut broken = given.clone();
            broken[at] ^= 0xA5;
            let turned = anew(&broken);
            let short = anew(&given[..at]);
            for kept in [turned, short] {
                match kept {
                    Ok(kept) => {
                        whole += 1;
                        assert_eq!(tales_in(&kept), Vec::<&str>::new());
                    }
                    Err(_) => none += 1,
                }
            }
        }
    }
    assert!(whole > 0 && none > 100, "{whole} whole, {none} none");
}

#[test]
fn a_photograph_that_shows_coarse_first_has_fewer_pixels() {
    // The head of a small file, as if it were a large one.
    let framed = |mark: u8, side: u16| {
        let mut file = bytes(&two_halves(16, 16), ImageFormat::Jpeg);
        let at = file.windows(2).position(|two| two == [0xFF, 0xC0]).expect("a frame");
        file[at + 1] = mark;
        file[at + 5..at + 7].copy_from_slice(&side.to_be_bytes());
        file[at + 7..at + 9].copy_from_slice(&side.to_be_bytes());
        anew(&file)
    };
    let (plain, stepwise) = (0xC0, 0xC2);
    assert_eq!(framed(stepwise, 4_000), Err(NoPicture::TooLarge));
    assert_ne!(framed(stepwise, 16), Err(NoPicture::TooLarge));
    assert_ne!(framed(plain, 4_000), Err(NoPicture::TooLarge));
    assert_eq!(framed(plain, 8_000), Err(NoPicture::TooLarge));
}

#[test]
fn what_the_measuring_reads_besides_is_no_picture_of_a_find() {
    // The library reads them in a build with `measure`: its limits here are those of PNG and JPEG.
    for other in [
        &include_bytes!("../../../../fuzz/corpus/scan/leaf.webp")[..],
        include_bytes!("../../../../fuzz/corpus/scan/leaf_lzw.tif"),
        include_bytes!("../../../../fuzz/corpus/scan/grey.bmp"),
    ] {
        assert_eq!(anew(other), Err(NoPicture::NotRead));
    }
}
