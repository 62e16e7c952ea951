//! How large a pixel is: what a file says of it, and whether that can be.
//!
//! From the head of a PNG file (pHYs: PNG, third edition, 11.3.4.3), of a JPEG file (JFIF 1.02,
//! APP0), of a BMP file and from Exif 2.32 (XResolution, ResolutionUnit) to a scale, or to why there is none.
//! A number that nobody measured is worse than none: a camera's says nothing, and 72 and 96 are
//! what programs write for want of a better one.

use exif::{In, Tag, Value};
use spinney_model::{Doubt, NoScale, PictureScale};

/// The longest side that a scan may have, in mm: A3 has 420, and its scanners a little more.
const LONGEST: f64 = 450.0;
/// What programs write where nobody measured.
const USUAL: [f64; 2] = [72.0, 96.0];
const MM_AN_INCH: f64 = 25.4;

/// What stands at the head of a file.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Head {
    /// Dots per inch, across and down.
    dpi: Option<(f64, f64)>,
    /// A photograph that shows coarse first (ITU-T T.81, B.1.1.3): unpacking it takes more.
    pub(crate) stepwise: bool,
}

/// Reads the head of a file.
pub(crate) fn head(file: &[u8]) -> Head {
    match file {
        [0x89, b'P', b'N', b'G', _, _, _, _, chunks @ ..] => {
            Head { dpi: of_png(chunks), stepwise: false }
        }
        [0xFF, 0xD8, segments @ ..] => of_jpeg(segments),
        [b'B', b'M', rest @ ..] => Head { dpi: of_bmp(rest), stepwise: false },
        _ => Head::default(),
    }
}

/// The scale of a picture whose longer side has so many pixels.
pub(crate) fn scale(head: &Head, exif: Option<Vec<u8>>, longer: u32) -> PictureScale {
    let (camera, of_exif) = exif.map_or((false, None), of_exif);
    if camera {
        return PictureScale::Unknown(NoScale::Camera);
    }
    let Some((across, down)) = head.dpi.or(of_exif).filter(|(x, y)| *x >= 1.0 && *y >= 1.0)
    else {
        return PictureScale::Unknown(NoScale::NotSaid);
    };
    if (across - down).abs() > 0.01 * across {
        return PictureScale::Unknown(NoScale::NotSquare);
    }
    let length = f64::from(longer) / across * MM_AN_INCH;
    if length > LONGEST {
        return PictureScale::Unknown(NoScale::TooLarge { dpi: across, longer: length });
    }
    let usual = USUAL.iter().any(|usual| (across - usual).abs() < 0.5);
    PictureScale::OfFile { dpi: across, doubt: usual.then_some(Doubt::Usual) }
}

/// pHYs: pixels a metre, rounded; 300 dpi are written as 11,811.
fn of_png(mut rest: &[u8]) -> Option<(f64, f64)> {
    loop {
        let (length, behind) = rest.split_first_chunk::<4>()?;
        let (kind, behind) = behind.split_first_chunk::<4>()?;
        let length = usize::try_from(u32::from_be_bytes(*length)).ok()?;
        let content = behind.get(..length)?;
        match (kind, content) {
            (b"pHYs", [a, b, c, d, e, f, g, h, 1]) => {
                let dpi = |pixels: [u8; 4]| {
                    near_whole(f64::from(u32::from_be_bytes(pixels)) * MM_AN_INCH / 1000.0)
                };
                return Some((dpi([*a, *b, *c, *d]), dpi([*e, *f, *g, *h])));
            }
            (b"IDAT" | b"IEND", _) => return None,
            _ => rest = behind.get(length.checked_add(4)?..)?,
        }
    }
}

/// BITMAPINFOHEADER: pixels a metre, from byte 38 of the file on; 0: not said.
fn of_bmp(behind: &[u8]) -> Option<(f64, f64)> {
    // The head of the oldest files has 12 bytes, and says nothing of it.
    let head: &[u8; 4] = behind.get(12..16)?.try_into().ok()?;
    if u32::from_le_bytes(*head) < 40 {
        return None;
    }
    let both: &[u8; 8] = behind.get(36..44)?.try_into().ok()?;
    let [a, b, c, d, e, f, g, h] = *both;
    let dpi = |pixels: [u8; 4]| {
        near_whole(f64::from(i32::from_le_bytes(pixels)) * MM_AN_INCH / 1000.0)
    };
    Some((dpi([a, b, c, d]), dpi([e, f, g, h])))
}

/// A file that counts by the metre cannot say 300: what is nearer to a whole number than half of
/// what it can say is that number.
fn near_whole(dpi: f64) -> f64 {
    let whole = dpi.round();
    if (dpi - whole).abs() <= 0.5 * MM_AN_INCH / 1000.0 { whole } else { dpi }
}

fn of_jpeg(mut rest: &[u8]) -> Head {
    let mut head = Head { dpi: None, stepwise: true };
    loop {
        match rest {
            [0xFF, 0xFF, ..] => rest = &rest[1..],
            [0xFF, 0x01 | 0xD0..=0xD8, ..] => rest = &rest[2..],
            [0xFF, 0xC2 | 0xC6 | 0xCA | 0xCE, ..] => return head,
            [0xFF, 0xC0 | 0xC1 | 0xC3 | 0xC5 | 0xC7 | 0xC9 | 0xCB | 0xCD | 0xCF, ..]
            | [0xFF, 0xD9 | 0xDA, ..] => {
                head.stepwise = false;
                return head;
            }
            [0xFF, mark, high, low, ..] => {
                let length = usize::from(u16::from_be_bytes([*high, *low]));
                let content = rest.get(4..2 + length).unwrap_or_default();
                if let (0xE0, Some(dpi)) = (mark, of_jfif(content)) {
                    head.dpi = Some(dpi);
                }
                rest = rest.get(2 + length..).unwrap_or_default();
            }
            // What cannot be read here counts as the worst.
            [] => return head,
            [_, after @ ..] => rest = after,
        }
    }
}

/// APP0: after the name and the version a unit (1: an inch, 2: a centimetre) and two numbers.
fn of_jfif(content: &[u8]) -> Option<(f64, f64)> {
    let [unit @ 1..=2, a, b, c, d, ..] = content.strip_prefix(b"JFIF\0")?.get(2..)? else {
        return None;
    };
    let an_inch = if *unit == 2 { 2.54 } else { 1.0 };
    let dpi = |high, low| f64::from(u16::from_be_bytes([high, low])) * an_inch;
    Some((near_whole(dpi(*a, *b)), near_whole(dpi(*c, *d))))
}

/// Whether a camera took it, and its dots per inch.
fn of_exif(raw: Vec<u8>) -> (bool, Option<(f64, f64)>) {
    let Ok(said) = exif::Reader::new().read_raw(raw) else { return (false, None) };
    let camera = [Tag::ExposureTime, Tag::FNumber, Tag::FocalLength]
        .iter()
        .any(|tag| said.get_field(*tag, In::PRIMARY).is_some());
    let unit = said.get_field(Tag::ResolutionUnit, In::PRIMARY);
    let an_inch = match unit.and_then(|field| field.value.get_uint(0)) {
        Some(3) => 2.54,
        _ => 1.0,
    };
    let number = |tag| match said.get_field(tag, In::PRIMARY).map(|field| &field.value) {
        Some(Value::Rational(numbers)) => numbers
            .first()
            .map(|number| number.to_f64() * an_inch)
            .filter(|number| number.is_finite()),
        _ => None,
    };
    (camera, number(Tag::XResolution).zip(number(Tag::YResolution)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn png(per_metre: u32) -> Vec<u8> {
        let number = per_metre.to_be_bytes();
        let mut file = b"\x89PNG\r\n\x1A\n\0\0\0\x09pHYs".to_vec();
        file.extend(number);
        file.extend(number);
        file.extend(b"\x01\0\0\0\0\0\0\0\0IDAT");
        file
    }

    /// A JFIF head alone, with a plain frame behind it.
    fn jpeg(unit: u8, density: u16) -> Vec<u8> {
        let number = density.to_be_bytes();
        let mut file = b"\xFF\xD8\xFF\xE0\0\x10JFIF\0\x01\x02".to_vec();
        file.push(unit);
        file.extend(number);
        file.extend(number);
        file.extend(b"\0\0\xFF\xC0");
        file
    }

    fn of(file: &[u8], longer: u32) -> PictureScale {
        scale(&head(file), None, longer)
    }

    #[test]
    fn what_a_file_says_is_read_to_the_dot() {
        let said = |dpi| PictureScale::OfFile { dpi, doubt: None };
        for (per_metre, dpi) in [(5906, 150.0), (11_811, 300.0), (23_622, 600.0)] {
            assert_eq!(of(&png(per_metre), 2480), said(dpi));
        }
        assert_eq!(of(&jpeg(1, 300), 3508), said(300.0));
        assert_eq!(of(&jpeg(2, 118), 3508), said(118.0 * 2.54));
        assert!(!head(&jpeg(1, 300)).stepwise);
    }

    #[test]
    fn what_nobody_measured_is_doubted_or_not_believed() {
        let doubtful = |dpi| PictureScale::OfFile { dpi, doubt: Some(Doubt::Usual) };
        // A4 at 72 dpi: it may be.
        assert_eq!(of(&jpeg(1, 72), 842), doubtful(72.0));
        assert_eq!(of(&png(3780), 1123), doubtful(96.0));
        // A page at 300 dpi that calls itself 72 would be longer than a metre.
        let PictureScale::Unknown(NoScale::TooLarge { dpi, longer }) = of(&jpeg(1, 72), 3508)
        else {
            panic!("a metre and a quarter of leaves")
        };
        assert_eq!((dpi, longer.round()), (72.0, 1238.0));
        assert_eq!(of(&jpeg(0, 1), 3508), PictureScale::Unknown(NoScale::NotSaid));
        assert_eq!(of(b"leaf", 100), PictureScale::Unknown(NoScale::NotSaid));
    }

    #[test]
    fn a_camera_says_nothing_of_the_leaf() {
        // TIFF head; a directory with XResolution, YResolution (300/1) and where the camera's
        // directory is; that one with FocalLength (5/1).
        let mut exif = b"II*\0\x08\0\0\0\x03\0".to_vec();
        let entry = |exif: &mut Vec<u8>, tag: u16, form: u16, value: u32| {
            exif.extend(tag.to_le_bytes());
            exif.extend(form.to_le_bytes());
            exif.extend(1_u32.to_le_bytes());
            exif.extend(value.to_le_bytes());
        };
        entry(&mut exif, 0x011A, 5, 50);
        entry(&mut exif, 0x011B, 5, 50);
        entry(&mut exif, 0x8769, 4, 58);
        exif.extend([0; 4]);
        exif.extend([300_u32, 1].iter().flat_map(|number| number.to_le_bytes()));
        exif.extend(b"\x01\0");
        entry(&mut exif, 0x920A, 5, 76);
        exif.extend([0; 4]);
        exif.extend([5_u32, 1].iter().flat_map(|number| number.to_le_bytes()));
        let camera = scale(&Head::default(), Some(exif.clone()), 4000);
        assert_eq!(camera, PictureScale::Unknown(NoScale::Camera));
        // The same without the camera's directory is a scanner's.
        exif[34..36].copy_from_slice(&0x9999_u16.to_le_bytes());
        let scanner = scale(&Head::default(), Some(exif), 2480);
        assert_eq!(scanner, PictureScale::OfFile { dpi: 300.0, doubt: None });
    }
}
