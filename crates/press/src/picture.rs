//! Pictures: decoded and packed anew, so that nothing but pixels is ever handed on.
//!
//! From the bytes of a photograph, scan or drawing to a PNG or JPEG file that holds pixels and
//! nothing else: upright, no longer than asked for, without the place, the time, the camera, the
//! words and the small second picture that a file can carry. Everything that shows a picture
//! (sheets, phone page, what is kept of a collection) gets it from here. It opens no file.

mod bare;

use std::io::Cursor;

use image::codecs::png::PngEncoder;
use image::metadata::Orientation;
use image::{
    DynamicImage, ExtendedColorType, ImageDecoder, ImageEncoder, ImageError, ImageFormat,
    ImageReader, Limits, RgbImage, RgbaImage,
};

use spinney_model::limits::{
    PICTURE_BYTES as MOST_BYTES, PICTURE_PIXELS as MOST_PIXELS, PICTURE_SIDE as MOST_SIDE,
    PICTURE_STEPWISE as MOST_STEPWISE,
};

use crate::Picture;

pub use bare::is_bare;

/// The most memory that unpacking one picture may take, in bytes: four for each pixel.
const MOST_MEMORY: u64 = MOST_PIXELS * 4;
/// How finely photographs are packed, of 100.
const FINENESS: u8 = 85;
/// What a phone shows at most, in pixels: the screen is narrower.
const ON_A_PHONE: [u32; 5] = [640, 480, 360, 240, 120];
/// How finely a picture is packed for a phone, the finest first.
const FINE_ENOUGH: [u8; 3] = [80, 65, 50];

/// Why a picture cannot be shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoPicture {
    /// Neither JPEG nor PNG, or damaged.
    NotRead,
    /// More bytes or pixels than are unpacked.
    TooLarge,
}

/// The picture packed anew, its longest side at most so many pixels. A drawing (PNG) stays
/// sharp, a photograph (JPEG) stays small.
///
/// **Guarantees**: of the file that came in, nothing but its pixels. The same bytes give the
/// same bytes.
/// **Cost**: up to 500 ms for a photograph of 40 million pixels.
pub fn packed_anew(bytes: &[u8], longest: u32) -> Result<Picture, NoPicture> {
    let (format, pixels) = opened(bytes, longest)?;
    match format {
        ImageFormat::Png => png(pixels.width(), pixels.height(), &pixels).map(Picture::Png),
        _ => jpeg(&pixels).map(Picture::Jpeg),
    }
}

/// The picture as a phone shows it, in at most so many bytes; None: not even a small one fits.
pub fn for_a_phone(bytes: &[u8], most: usize) -> Result<Option<Picture>, NoPicture> {
    let (format, large) = opened(bytes, ON_A_PHONE[0])?;
    if format == ImageFormat::Png {
        let sharp = png(large.width(), large.height(), &large)?;
        if sharp.len() <= most {
            return Ok(Some(Picture::Png(sharp)));
        }
    }
    let large = DynamicImage::from(large);
    for longest in ON_A_PHONE {
        let pixels = no_longer_than(longest, large.clone()).into_rgb8();
        for fineness in FINE_ENOUGH {
            let packed = jpeg_of(fineness, &pixels)?;
            if packed.len() <= most {
                return Ok(Some(Picture::Jpeg(packed)));
            }
        }
    }
    Ok(None)
}

/// Pixels as a photograph, their longest side at most so many: red, green, blue, and where
/// there are four bytes of each, how much of it is no paper.
///
/// **Errors**: there are not as many as its size says, or too many.
pub fn photograph(
    (width, height): (u32, u32),
    pixels: Vec<u8>,
    longest: u32,
) -> Result<Vec<u8>, NoPicture> {
    let each = pixels.len() / (width as usize * height as usize).max(1);
    let picture = match each {
        4 => RgbaImage::from_raw(width, height, pixels).map(DynamicImage::from),
        _ => RgbImage::from_raw(width, height, pixels).map(DynamicImage::from),
    };
    let picture = picture.ok_or(NoPicture::NotRead)?;
    jpeg(&on_paper(no_longer_than(longest, picture)))
}

/// Pixels, upright and on white paper, and what kind of file they came from.
pub(crate) fn opened(bytes: &[u8], longest: u32) -> Result<(ImageFormat, RgbImage), NoPicture> {
    if bytes.len() > MOST_BYTES {
        return Err(NoPicture::TooLarge);
    }
    let reader = ImageReader::new(Cursor::new(bytes));
    let mut reader = reader.with_guessed_format().map_err(|_| NoPicture::NotRead)?;
    // What else is read depends on what other rooms ask of the library.
    let known = |format: &ImageFormat| matches!(format, ImageFormat::Png | ImageFormat::Jpeg);
    let format = reader.format().filter(known).ok_or(NoPicture::NotRead)?;
    let mut limits = Limits::default();
    limits.max_image_width = Some(MOST_SIDE);
    limits.max_image_height = Some(MOST_SIDE);
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let why = |error| match error {
        ImageError::Limits(_) => NoPicture::TooLarge,
        _ => NoPicture::NotRead,
    };
    let mut decoder = reader.into_decoder().map_err(why)?;
    let (width, height) = decoder.dimensions();
    let stepwise = format == ImageFormat::Jpeg && is_stepwise(bytes);
    let most = if stepwise { MOST_STEPWISE } else { MOST_PIXELS };
    if u64::from(width) * u64::from(height) > most {
        return Err(NoPicture::TooLarge);
    }
    let turn = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let picture = DynamicImage::from_decoder(decoder).map_err(why)?;
    let mut picture = no_longer_than(longest, picture);
    picture.apply_orientation(turn);
    Ok((format, on_paper(picture)))
}

/// Whether a photograph shows coarse first: all of it is held in another form while it is
/// unpacked. Its frame header says so (ITU-T T.81, B.1.1.3: 2, 6, 10 and 14 of SOF).
fn is_stepwise(bytes: &[u8]) -> bool {
    let mut rest = bytes.get(2..).unwrap_or_default();
    loop {
        match rest {
            // Bytes to fill up, and marks without a length.
            [0xFF, 0xFF, ..] => rest = &rest[1..],
            [0xFF, 0x01 | 0xD0..=0xD8, ..] => rest = &rest[2..],
            [0xFF, 0xC2 | 0xC6 | 0xCA | 0xCE, ..] => return true,
            // Another frame, the pixels, or the end.
            [0xFF, 0xC0 | 0xC1 | 0xC3 | 0xC5 | 0xC7 | 0xC9 | 0xCB | 0xCD | 0xCF, ..]
            | [0xFF, 0xD9 | 0xDA, ..] => return false,
            [0xFF, _, high, low, ..] => {
                let length = usize::from(u16::from_be_bytes([*high, *low]));
                rest = rest.get(2 + length..).unwrap_or_default();
            }
            // What cannot be read here is read by nobody; or it is, and then at its worst.
            [] => return true,
            [_, after @ ..] => rest = after,
        }
    }
}

fn no_longer_than(longest: u32, picture: DynamicImage) -> DynamicImage {
    match picture.width().max(picture.height()) > longest {
        true => picture.thumbnail(longest, longest),
        false => picture,
    }
}

/// Clear parts of a drawing are paper.
fn on_paper(picture: DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.into_rgb8();
    }
    let clear = picture.into_rgba8();
    RgbImage::from_fn(clear.width(), clear.height(), |x, y| {
        let [red, green, blue, alpha] = clear.get_pixel(x, y).0.map(u32::from);
        let laid = |value: u32| ((value * alpha + 255 * (255 - alpha) + 127) / 255) as u8;
        image::Rgb([red, green, blue].map(laid))
    })
}

/// Pixels as a PNG file.
pub(crate) fn png(width: u32, height: u32, rgb: &[u8]) -> Result<Vec<u8>, NoPicture> {
    let mut file = Vec::new();
    PngEncoder::new(&mut file)
        .write_image(rgb, width, height, ExtendedColorType::Rgb8)
        .map_err(|_| NoPicture::NotRead)?;
    Ok(file)
}

/// Pixels as a JPEG file.
pub(crate) fn jpeg(pixels: &RgbImage) -> Result<Vec<u8>, NoPicture> {
    jpeg_of(FINENESS, pixels)
}

/// Red, green, blue, row by row, as a JPEG file.
///
/// **Errors**: there are fewer than its size says.
pub(crate) fn jpeg_of_pixels(size: (u32, u32), pixels: &[u8]) -> Result<Vec<u8>, NoPicture> {
    packed_as_jpeg(FINENESS, size, pixels)
}

fn jpeg_of(fineness: u8, pixels: &RgbImage) -> Result<Vec<u8>, NoPicture> {
    packed_as_jpeg(fineness, pixels.dimensions(), pixels.as_raw())
}

fn packed_as_jpeg(
    fineness: u8,
    (width, height): (u32, u32),
    pixels: &[u8],
) -> Result<Vec<u8>, NoPicture> {
    let size = |side: u32| u16::try_from(side).map_err(|_| NoPicture::TooLarge);
    let (width, height) = (size(width)?, size(height)?);
    let mut file = Vec::new();
    jpeg_encoder::Encoder::new(&mut file, fineness)
        .encode(pixels, width, height, jpeg_encoder::ColorType::Rgb)
        .map_err(|_| NoPicture::NotRead)?;
    Ok(file)
}

#[cfg(test)]
mod tests;
