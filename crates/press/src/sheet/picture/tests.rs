//! A picture on paper: small enough, the right way up; a broken one says so.

use spinney_fixtures::photographs::{more_than_pixels, telling_jpeg};

use super::{LONGEST_SIDE, Packed, open};
use crate::Picture;
use crate::picture::NoPicture;

fn picture(width: u32, height: u32, format: image::ImageFormat) -> Vec<u8> {
    let mut out = std::io::Cursor::new(Vec::new());
    let grey = image::RgbImage::from_pixel(width, height, image::Rgb([90; 3]));
    grey.write_to(&mut out, format).unwrap();
    out.into_inner()
}

#[test]
fn a_large_photograph_becomes_small_and_loses_what_the_camera_hid() {
    let file = telling_jpeg(&picture(2000, 1000, image::ImageFormat::Jpeg), 6);
    let pixels = open(&Picture::Jpeg(file), 0).unwrap();
    assert_eq!((pixels.width, pixels.height), (LONGEST_SIDE / 2, LONGEST_SIDE));
    let Packed::Jpeg(packed) = pixels.packed else { panic!("a photograph stays small") };
    assert_eq!(more_than_pixels(&packed), Vec::<String>::new());
}

#[test]
fn a_drawing_stays_sharp() {
    let drawing = Picture::Png(picture(2, 1, image::ImageFormat::Png));
    let pixels = open(&drawing, 6).unwrap();
    let Packed::Rgb(rgb) = pixels.packed else { panic!("a drawing stays sharp") };
    assert_eq!(rgb[..], [90; 6]);
    let packed = open(&drawing, 5).unwrap().packed;
    assert!(matches!(packed, Packed::Jpeg(_)), "without room for its pixels it is packed");
}

#[test]
fn a_broken_or_huge_picture_says_so() {
    for bytes in [vec![], b"no picture".to_vec(), b"\x89PNG\r\n\x1a\n\0\0".to_vec()] {
        assert_eq!(open(&Picture::Png(bytes), 0).unwrap_err(), NoPicture::NotRead);
    }
    let mut huge = picture(16, 16, image::ImageFormat::Jpeg);
    // Height and width stand behind the mark of the frame (ISO/IEC 10918-1, B.2.2).
    let frame = huge.windows(2).position(|two| two == [0xFF, 0xC0]).expect("a frame");
    huge[frame + 5..frame + 7].copy_from_slice(&8_000u16.to_be_bytes());
    huge[frame + 7..frame + 9].copy_from_slice(&5_001u16.to_be_bytes());
    assert_eq!(open(&Picture::Jpeg(huge), 0).unwrap_err(), NoPicture::TooLarge);
}
