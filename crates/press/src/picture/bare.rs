//! Whether a picture is bare: pixels, and nothing that tells of whom or where.
//!
//! From the bytes of a file to yes or no, by the list of its parts (PNG, third edition, 11; JPEG,
//! ITU-T T.81 annex B, with JFIF 1.02). A part that is not needed to show the pixels is one too
//! many, whatever it holds; so is anything behind the end. It decodes nothing.

/// Whether a file has no part but those that [`super::packed_anew`] writes.
pub fn is_bare(file: &[u8]) -> bool {
    match file {
        [0x89, b'P', b'N', b'G', _, _, _, _, chunks @ ..] => bare_png(chunks).is_some(),
        [0xFF, 0xD8, segments @ ..] => bare_jpeg(segments).is_some(),
        _ => false,
    }
}

/// Chunks: length, kind, content, sum.
fn bare_png(mut rest: &[u8]) -> Option<()> {
    loop {
        let (length, behind) = rest.split_first_chunk::<4>()?;
        let (kind, behind) = behind.split_first_chunk::<4>()?;
        let length = usize::try_from(u32::from_be_bytes(*length)).ok()?;
        rest = behind.get(length.checked_add(4)?..)?;
        match kind {
            b"IEND" => return (length == 0 && rest.is_empty()).then_some(()),
            b"IHDR" | b"PLTE" | b"tRNS" | b"IDAT" => {}
            _ => return None,
        }
    }
}

/// Segments: a mark, and for most of them a length that counts itself, and content.
fn bare_jpeg(mut rest: &[u8]) -> Option<()> {
    loop {
        let ([0xFF, mark], behind) = rest.split_first_chunk::<2>()? else { return None };
        if *mark == 0xD9 {
            return behind.is_empty().then_some(());
        }
        let (length, _) = behind.split_first_chunk::<2>()?;
        let length = usize::from(u16::from_be_bytes(*length));
        let content = behind.get(2..length)?;
        rest = behind.get(length..)?;
        match mark {
            // Tables, frames and how often lines begin anew.
            0xDB | 0xC0..=0xC7 | 0xC9..=0xCF | 0xDD => {}
            // How wide a pixel is, without a small second picture.
            0xE0 if content.starts_with(b"JFIF\0") && content.len() == 14 => {}
            0xDA => rest = rest.get(end_of_pixels(rest)?..)?,
            _ => return None,
        }
    }
}

/// Where the packed pixels of a scan end: at a mark that is neither a byte 0xFF of theirs nor the
/// beginning of lines anew.
fn end_of_pixels(scan: &[u8]) -> Option<usize> {
    scan.windows(2).position(|two| two[0] == 0xFF && !matches!(two[1], 0 | 0xD0..=0xD7))
}

#[cfg(test)]
mod tests {
    use std::io::Cursor;

    use image::codecs::jpeg::JpegEncoder;
    use image::{ImageFormat, RgbImage};
    use spinney_fixtures::photographs::{PHOTOGRAPH, telling_jpeg, telling_png};

    use super::is_bare;
    use crate::picture::packed_anew;

    fn drawing() -> Vec<u8> {
        let mut file = Cursor::new(Vec::new());
        let leaf = RgbImage::from_fn(30, 20, |x, y| image::Rgb([x as u8, y as u8, 90]));
        leaf.write_to(&mut file, ImageFormat::Png).expect("it can be written");
        file.into_inner()
    }

    #[test]
    fn what_is_packed_here_is_bare_and_what_comes_from_a_camera_is_not() {
        for telling in [telling_jpeg(PHOTOGRAPH, 6), telling_png(&drawing(), 1)] {
            assert!(!is_bare(&telling));
            let packed = packed_anew(&telling, 1600).expect("a picture").into_bytes();
            assert!(is_bare(&packed));
            for more in [&b"x"[..], b"\xFF\xD9", b"\0\0\0\0IEND\xAE\x42\x60\x82"] {
                assert!(!is_bare(&[packed.as_slice(), more].concat()), "behind the end");
            }
            for shorter in 0..packed.len() {
                assert!(!is_bare(&packed[..shorter]), "{shorter} of {}", packed.len());
            }
        }
    }

    /// Another library's files, and one segment or chunk more.
    #[test]
    fn one_part_more_is_found_wherever_it_is() {
        let mut jpeg = Vec::new();
        let pixels = RgbImage::from_pixel(9, 7, image::Rgb([40, 90, 60]));
        JpegEncoder::new(&mut jpeg).encode_image(&pixels).expect("it can be written");
        assert!(is_bare(&jpeg));
        for mark in (0xE0..=0xEF).chain([0xFE]) {
            let more = [&jpeg[..2], &[0xFF, mark, 0, 5], b"hid", &jpeg[2..]].concat();
            assert!(!is_bare(&more), "{mark:X}");
        }
        let png = drawing();
        assert!(is_bare(&png));
        for kind in [b"tEXt", b"iTXt", b"zTXt", b"eXIf", b"tIME", b"iCCP"] {
            let more = [&png[..33], &[0, 0, 0, 3], kind, b"hid\0\0\0\0", &png[33..]].concat();
            assert!(!is_bare(&more));
        }
    }

    #[test]
    fn what_is_no_picture_is_not_bare() {
        for file in [&b""[..], b"picture", b"\xFF\xD8", b"\x89PNG\r\n\x1A\n", b"GIF89a"] {
            assert!(!is_bare(file));
        }
    }
}
