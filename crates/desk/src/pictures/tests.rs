//! Only pixels are kept, upright and not too many; what is no picture says so.

use std::io::Cursor;

use image::{DynamicImage, GenericImageView, ImageFormat, Rgb, RgbImage};

use super::{LONGEST_SIDE, MOST_BYTES, MOST_SIDE, NoPicture, name, written_anew};

/// Red on its left half, blue on its right.
pub(crate) fn two_halves(width: u32, height: u32) -> DynamicImage {
    RgbImage::from_fn(width, height, |x, _| match x < width / 2 {
        true => Rgb([220, 20, 20]),
        false => Rgb([20, 20, 220]),
    })
    .into()
}

fn bytes(picture: &DynamicImage, format: ImageFormat) -> Vec<u8> {
    let mut out = Cursor::new(Vec::new());
    picture.write_to(&mut out, format).expect("it can be written");
    out.into_inner()
}

/// Says where it was taken, by whom, and how the camera was held (Exif 2.3, in the order of
/// small ends): 6 is a quarter turn to the right.
fn exif(turned: u8) -> Vec<u8> {
    let mut tiff = b"II*\0\x08\0\0\0".to_vec();
    tiff.extend([3, 0]);
    // 0x010F, the maker: 12 letters that stand behind the directory.
    tiff.extend([0x0F, 0x01, 2, 0, 12, 0, 0, 0, 50, 0, 0, 0]);
    tiff.extend([0x12, 0x01, 3, 0, 1, 0, 0, 0, turned, 0, 0, 0]);
    // 0x8825, the directory of the place: at 62.
    tiff.extend([0x25, 0x88, 4, 0, 1, 0, 0, 0, 62, 0, 0, 0]);
    tiff.extend([0, 0, 0, 0]);
    tiff.extend(b"Lenstownish\0");
    // One entry: the reference of the latitude, N.
    tiff.extend([1, 0, 1, 0, 2, 0, 2, 0, 0, 0, b'N', 0, 0, 0, 0, 0, 0, 0]);
    tiff.extend(b"GPS 51.4769 -0.0005");
    tiff
}

/// A JPEG with an Exif segment behind its start (ISO/IEC 10918-1, Exif 2.3).
pub(crate) fn jpeg_with_exif(picture: &DynamicImage, turned: u8) -> Vec<u8> {
    let plain = bytes(picture, ImageFormat::Jpeg);
    let mut body = b"Exif\0\0".to_vec();
    body.extend(exif(turned));
    let mut out = plain[..2].to_vec();
    out.extend([0xFF, 0xE1]);
    out.extend((body.len() as u16 + 2).to_be_bytes());
    out.extend(body);
    out.extend(&plain[2..]);
    out
}

/// A chunk of a PNG file (ISO/IEC 15948) with its check sum.
fn chunk(kind: &[u8; 4], body: &[u8]) -> Vec<u8> {
    let mut crc = u32::MAX;
    for byte in kind.iter().chain(body) {
        crc ^= u32::from(*byte);
        for _ in 0..8 {
            crc = if crc & 1 == 1 { (crc >> 1) ^ 0xEDB8_8320 } else { crc >> 1 };
        }
    }
    let mut out = (body.len() as u32).to_be_bytes().to_vec();
    out.extend(kind);
    out.extend(body);
    out.extend((!crc).to_be_bytes());
    out
}

/// A PNG with words and Exif behind its head.
fn png_with_words(picture: &DynamicImage, turned: u8) -> Vec<u8> {
    let plain = bytes(picture, ImageFormat::Png);
    let mut out = plain[..33].to_vec();
    out.extend(chunk(b"tEXt", b"Location\0GPS 51.4769 -0.0005"));
    out.extend(chunk(b"eXIf", &exif(turned)));
    out.extend(&plain[33..]);
    out
}

pub(crate) fn contains(all: &[u8], part: &[u8]) -> bool {
    all.windows(part.len()).any(|window| window == part)
}

#[test]
fn where_and_when_it_was_taken_is_gone() {
    let picture = two_halves(40, 20);
    for given in [jpeg_with_exif(&picture, 1), png_with_words(&picture, 1)] {
        let kept = written_anew(&given).expect("it is a picture");
        for told in
            [&b"GPS"[..], b"Exif", b"eXIf", b"tEXt", b"Lenstownish", b"51.4769", b"II*\0"]
        {
            assert!(!contains(&kept, told), "{} is kept", String::from_utf8_lossy(told));
        }
        assert!(contains(&given, b"GPS 51.4769"), "it was there before");
    }
}

#[test]
fn a_camera_held_sideways_gives_an_upright_picture() {
    let picture = two_halves(40, 20);
    for given in [jpeg_with_exif(&picture, 6), png_with_words(&picture, 6)] {
        let kept = written_anew(&given).expect("it is a picture");
        let kept = image::load_from_memory(&kept).expect("it can be read again");
        assert_eq!(kept.dimensions(), (20, 40));
        let [top, bottom] = [5, 34].map(|y| kept.get_pixel(10, y).0);
        assert!(top[0] > 150 && top[2] < 100, "the left half is on top: {top:?}");
        assert!(bottom[2] > 150 && bottom[0] < 100, "the right half is below: {bottom:?}");
    }
}

#[test]
fn a_large_picture_becomes_smaller_and_a_small_one_stays() {
    let given = bytes(&two_halves(2400, 300), ImageFormat::Jpeg);
    let kept = written_anew(&given).expect("it is a picture");
    let kept = image::load_from_memory(&kept).expect("it can be read again");
    assert_eq!(kept.dimensions(), (LONGEST_SIDE, 200));
    let small = bytes(&two_halves(3, 2), ImageFormat::Png);
    let once = written_anew(&small).expect("it is a picture");
    assert_eq!(image::load_from_memory(&once).expect("readable"), two_halves(3, 2));
    assert_eq!(once, written_anew(&once).expect("it is a picture"), "twice is once");
    assert_eq!(name(&once), name(&once.clone()));
    assert_ne!(name(&once), name(&small[..small.len() - 1]));
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
        let refused = written_anew(&says_it_is(width, height));
        assert_eq!(refused, Err(NoPicture::TooLarge), "{width} × {height}");
    }
    assert_eq!(written_anew(&says_it_is(600, 600)), Err(NoPicture::NotRead));
    assert_eq!(written_anew(&says_it_is(MOST_SIDE, 1)), Err(NoPicture::NotRead));
    assert_eq!(written_anew(&says_it_is(1, MOST_SIDE + 1)), Err(NoPicture::TooLarge));
    let mut jpeg = bytes(&two_halves(16, 16), ImageFormat::Jpeg);
    let frame = jpeg.windows(2).position(|two| two == [0xFF, 0xC0]).expect("a frame");
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0x4E, 0x00, 0x4E, 0x00]);
    assert_eq!(written_anew(&jpeg), Err(NoPicture::TooLarge));
}

#[test]
fn too_many_bytes_are_refused_before_they_are_looked_at() {
    // A picture, and behind its end so much that nobody needs.
    let small = bytes(&two_halves(3, 2), ImageFormat::Png);
    let padded = |length: usize| {
        let mut padded = small.clone();
        padded.resize(length, 0);
        written_anew(&padded)
    };
    assert_eq!(padded(MOST_BYTES), written_anew(&small), "what stands behind is not kept");
    assert_eq!(padded(MOST_BYTES + 1), Err(NoPicture::TooLarge));
}

#[test]
fn what_is_no_picture_is_said_and_breaks_nothing() {
    let jpeg = jpeg_with_exif(&two_halves(32, 24), 6);
    let png = png_with_words(&two_halves(32, 24), 3);
    let others: [&[u8]; 6] = [
        b"",
        b"kind,edge\noak,smooth\n",
        b"GIF89a\x01\0\x01\0",
        b"%PDF-1.7",
        &jpeg[..4],
        &png[..40],
    ];
    for other in others {
        assert_eq!(written_anew(other), Err(NoPicture::NotRead));
    }
    // Whatever is broken in it, it is a picture or it is none.
    let (mut whole, mut none) = (0, 0);
    for given in [&jpeg, &png] {
        for at in 0..given.len() {
            let mut broken = given.clone();
            broken[at] ^= 0xA5;
            let turned = written_anew(&broken);
            let short = written_anew(&given[..at]);
            for kept in [turned, short] {
                match kept {
                    Ok(kept) => {
                        whole += 1;
                        assert!(!contains(&kept, b"GPS"));
                    }
                    Err(_) => none += 1,
                }
            }
        }
    }
    assert!(whole > 0 && none > 100, "{whole} whole, {none} none");
}
