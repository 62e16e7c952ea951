//! Opening pictures: a PNG or JPEG file to pixels that may be printed.
//!
//! From the bytes of a picture to pixels of a modest size, the right way up, or a sentence why
//! not. Photographs are always opened and packed anew, so that what a camera hides in the file
//! (place, time, device) is never handed out with a sheet.

use std::sync::Arc;

use crate::Picture;

/// A photograph of 40 million pixels is more than any sheet can show.
const MOST_PIXELS: u64 = 40_000_000;
/// The longest side that is kept: 80 mm at 280 dots to the inch.
const LONGEST_SIDE: usize = 880;
/// How finely photographs are packed, of 100.
const FINENESS: u8 = 85;

/// Pixels ready to print.
#[derive(Clone, Debug)]
pub struct Pixels {
    /// Across.
    pub width: u32,
    /// Down.
    pub height: u32,
    /// The packed bytes.
    pub packed: Packed,
}

/// How pixels are packed.
#[derive(Clone, Debug)]
pub enum Packed {
    /// Red, green, blue, row after row: drawings stay sharp.
    Rgb(Arc<[u8]>),
    /// A JPEG file: photographs stay small.
    Jpeg(Arc<[u8]>),
}

/// Pixels as they come out of a file: red, green, blue.
struct Open {
    width: usize,
    height: usize,
    rgb: Vec<u8>,
}

/// Opens a picture.
///
/// **Errors**: a short sentence, to be printed where the picture would have stood.
pub fn open(picture: &Picture) -> Result<Pixels, &'static str> {
    match picture {
        Picture::Png(bytes) => {
            let small = png(bytes)?.smaller();
            let (width, height) = (small.width as u32, small.height as u32);
            Ok(Pixels { width, height, packed: Packed::Rgb(small.rgb.into()) })
        }
        Picture::Jpeg(bytes) => {
            let small = jpeg(bytes)?.smaller();
            let mut file = Vec::new();
            let size = |side: usize| u16::try_from(side).map_err(|_| BROKEN);
            let (width, height) = (size(small.width)?, size(small.height)?);
            jpeg_encoder::Encoder::new(&mut file, FINENESS)
                .encode(&small.rgb, width, height, jpeg_encoder::ColorType::Rgb)
                .map_err(|_| BROKEN)?;
            let packed = Packed::Jpeg(file.into());
            Ok(Pixels { width: width.into(), height: height.into(), packed })
        }
    }
}

const BROKEN: &str = "This picture file could not be opened.";
const HUGE: &str = "This picture is too large. Make it smaller.";

fn png(bytes: &[u8]) -> Result<Open, &'static str> {
    let limits = png::Limits { bytes: 256 << 20 };
    let mut decoder = png::Decoder::new_with_limits(std::io::Cursor::new(bytes), limits);
    decoder.set_transformations(png::Transformations::EXPAND | png::Transformations::STRIP_16);
    let mut reader = decoder.read_info().map_err(|_| BROKEN)?;
    let (width, height) = reader.info().size();
    if u64::from(width) * u64::from(height) > MOST_PIXELS {
        return Err(HUGE);
    }
    let mut data = vec![0; reader.output_buffer_size().ok_or(HUGE)?];
    let frame = reader.next_frame(&mut data).map_err(|_| BROKEN)?;
    let channels = frame.color_type.samples();
    let on_paper = |value: u8, alpha: u8| {
        let (value, alpha) = (u32::from(value), u32::from(alpha));
        ((value * alpha + 255 * (255 - alpha) + 127) / 255) as u8
    };
    let mut rgb = Vec::with_capacity(data.len() / channels * 3);
    for pixel in data[..frame.buffer_size()].chunks_exact(channels) {
        match *pixel {
            [grey] => rgb.extend([grey; 3]),
            [grey, alpha] => rgb.extend([on_paper(grey, alpha); 3]),
            [r, g, b] => rgb.extend([r, g, b]),
            [r, g, b, alpha] => rgb.extend([r, g, b].map(|value| on_paper(value, alpha))),
            _ => return Err(BROKEN),
        }
    }
    Ok(Open { width: width as usize, height: height as usize, rgb })
}

fn jpeg(bytes: &[u8]) -> Result<Open, &'static str> {
    use zune_jpeg::zune_core::{bytestream::ZCursor, colorspace::ColorSpace, options};
    let options = options::DecoderOptions::default().jpeg_set_out_colorspace(ColorSpace::RGB);
    let mut decoder = zune_jpeg::JpegDecoder::new_with_options(ZCursor::new(bytes), options);
    decoder.decode_headers().map_err(|_| BROKEN)?;
    let (width, height) = decoder.dimensions().ok_or(BROKEN)?;
    if width as u64 * height as u64 > MOST_PIXELS {
        return Err(HUGE);
    }
    let turn = decoder.exif().map_or(1, |exif| orientation(exif));
    let rgb = decoder.decode().map_err(|_| BROKEN)?;
    if width == 0 || rgb.len() != width * height * 3 {
        return Err(BROKEN);
    }
    Ok(Open { width, height, rgb }.smaller().turned(turn))
}

/// Which way up a photograph was taken: tag 0x0112 of the Exif standard (CIPA DC-008), 1 to 8.
fn orientation(exif: &[u8]) -> u16 {
    let little = exif.starts_with(b"II");
    let short = |at: usize| {
        let pair: [u8; 2] = exif.get(at..at + 2)?.try_into().ok()?;
        Some(if little { u16::from_le_bytes(pair) } else { u16::from_be_bytes(pair) })
    };
    let long = |at: usize| {
        let (first, second) = (u32::from(short(at)?), u32::from(short(at + 2)?));
        Some(if little { second << 16 | first } else { first << 16 | second })
    };
    let find = || {
        let list = long(4)? as usize;
        let count = usize::from(short(list)?);
        let entry = |n: usize| list + 2 + 12 * n;
        let at = (0..count).map(entry).find(|at| short(*at) == Some(0x0112))?;
        short(at + 8)
    };
    find().filter(|turn| (1..=8).contains(turn)).unwrap_or(1)
}

impl Open {
    /// No longer than [`LONGEST_SIDE`], every new pixel the mean of the old ones in its place.
    fn smaller(self) -> Self {
        let longest = self.width.max(self.height);
        if longest <= LONGEST_SIDE {
            return self;
        }
        let side = |old: usize| (old * LONGEST_SIDE / longest).max(1);
        let (width, height) = (side(self.width), side(self.height));
        let mut rgb = Vec::with_capacity(width * height * 3);
        let span = |new: usize, news: usize, olds: usize| {
            let from = new * olds / news;
            from..((new + 1) * olds / news).max(from + 1)
        };
        for y in 0..height {
            for x in 0..width {
                let (mut sums, mut count) = ([0u64; 3], 0);
                for row in span(y, height, self.height) {
                    for column in span(x, width, self.width) {
                        let at = (row * self.width + column) * 3;
                        (0..3).for_each(|c| sums[c] += u64::from(self.rgb[at + c]));
                        count += 1;
                    }
                }
                rgb.extend(sums.map(|sum| (sum / count) as u8));
            }
        }
        Self { width, height, rgb }
    }

    /// Turned and mirrored as the camera says.
    fn turned(self, turn: u16) -> Self {
        let (w, h) = (self.width, self.height);
        let (width, height) = if turn >= 5 { (h, w) } else { (w, h) };
        let mut rgb = Vec::with_capacity(self.rgb.len());
        for y in 0..height {
            for x in 0..width {
                let (column, row) = match turn {
                    2 => (w - 1 - x, y),
                    3 => (w - 1 - x, h - 1 - y),
                    4 => (x, h - 1 - y),
                    5 => (y, x),
                    6 => (y, h - 1 - x),
                    7 => (w - 1 - y, h - 1 - x),
                    8 => (w - 1 - y, x),
                    _ => (x, y),
                };
                let at = (row * w + column) * 3;
                rgb.extend_from_slice(&self.rgb[at..at + 3]);
            }
        }
        Self { width, height, rgb }
    }
}

#[cfg(test)]
mod tests;
