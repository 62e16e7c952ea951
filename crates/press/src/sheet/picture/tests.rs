//! Pictures from cameras: turned upright, made small, their data dropped; broken ones refused.

use super::{HUGE, LONGEST_SIDE, Open, Packed, open, orientation};
use crate::Picture;

fn png(width: u32, height: u32, rgba: &[u8]) -> Picture {
    let mut file = Vec::new();
    let mut encoder = png::Encoder::new(&mut file, width, height);
    encoder.set_color(png::ColorType::Rgba);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.write_header().unwrap().write_image_data(rgba).unwrap();
    Picture::Png(file)
}

#[test]
fn clear_parts_of_a_drawing_are_paper() {
    let pixels = open(&png(2, 1, &[10, 20, 30, 255, 0, 0, 0, 0])).unwrap();
    let Packed::Rgb(rgb) = pixels.packed else { panic!("a drawing stays sharp") };
    assert_eq!(rgb[..], [10, 20, 30, 255, 255, 255]);
}

#[test]
fn a_large_photograph_becomes_small_and_loses_what_the_camera_hid() {
    let (width, height) = (2000u16, 1000u16);
    let rgb = vec![90; usize::from(width) * usize::from(height) * 3];
    let mut file = Vec::new();
    let mut encoder = jpeg_encoder::Encoder::new(&mut file, 90);
    encoder.add_app_segment(1, b"Exif\0\0II*\0\x08\0\0\0hidden place".to_vec()).unwrap();
    encoder.encode(&rgb, width, height, jpeg_encoder::ColorType::Rgb).unwrap();
    let pixels = open(&Picture::Jpeg(file)).unwrap();
    assert_eq!((pixels.width, pixels.height), (LONGEST_SIDE as u32, LONGEST_SIDE as u32 / 2));
    let Packed::Jpeg(packed) = pixels.packed else { panic!("a photograph stays small") };
    assert!(!packed.windows(6).any(|bytes| bytes == b"hidden"));
}

#[test]
fn a_broken_picture_says_so() {
    for bytes in [vec![], b"no picture".to_vec(), b"\x89PNG\r\n\x1a\n\0\0".to_vec()] {
        assert!(open(&Picture::Png(bytes.clone())).is_err());
        assert!(open(&Picture::Jpeg(bytes)).is_err());
    }
    let Picture::Png(mut huge) = png(1, 1, &[0; 4]) else { unreachable!() };
    huge[16..24].copy_from_slice(&[0, 1, 0, 0, 0, 1, 0, 0]);
    let check = crc(&huge[12..29]);
    huge[29..33].copy_from_slice(&check);
    assert_eq!(open(&Picture::Png(huge)).unwrap_err(), HUGE);
}

#[test]
fn a_photograph_that_says_it_is_huge_is_not_unpacked() {
    let mut file = Vec::new();
    let encoder = jpeg_encoder::Encoder::new(&mut file, 90);
    encoder.encode(&[90; 16 * 16 * 3], 16, 16, jpeg_encoder::ColorType::Rgb).unwrap();
    // Height and width stand behind the mark of the frame (ISO/IEC 10918-1, B.2.2).
    let frame = file.windows(2).position(|two| two == [0xFF, 0xC0]).expect("a frame");
    let says = |height: u16, width: u16| {
        let mut file = file.clone();
        file[frame + 5..frame + 7].copy_from_slice(&height.to_be_bytes());
        file[frame + 7..frame + 9].copy_from_slice(&width.to_be_bytes());
        open(&Picture::Jpeg(file))
    };
    assert!(says(16, 16).is_ok());
    assert_eq!(says(8_000, 5_001).unwrap_err(), HUGE);
    assert_eq!(says(16_000, 16_000).unwrap_err(), HUGE);
}

/// The check sum of a PNG chunk (PNG specification, annex D).
fn crc(bytes: &[u8]) -> [u8; 4] {
    let mut crc = u32::MAX;
    for byte in bytes {
        crc ^= u32::from(*byte);
        for _ in 0..8 {
            crc = if crc & 1 == 1 { 0xEDB8_8320 ^ (crc >> 1) } else { crc >> 1 };
        }
    }
    (!crc).to_be_bytes()
}

#[test]
fn a_photograph_stands_the_right_way_up() {
    // Two pixels side by side, taken with the camera on its side (6: a quarter turn).
    let lying = || Open { width: 2, height: 1, rgb: vec![1, 1, 1, 2, 2, 2] };
    let upright = lying().turned(6);
    assert_eq!((upright.width, upright.height), (1, 2));
    assert_eq!(upright.rgb, [1, 1, 1, 2, 2, 2]);
    assert_eq!(lying().turned(8).rgb, [2, 2, 2, 1, 1, 1]);
    assert_eq!(lying().turned(3).rgb, [2, 2, 2, 1, 1, 1]);
    let exif = b"MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0";
    assert_eq!(orientation(exif), 6);
    assert_eq!(orientation(b"MM\0*\xff\xff\xff\xff"), 1);
}
