//! Pictures as they are kept: pixels and nothing else.
//!
//! From the bytes of a photograph or scan to a JPEG or PNG that was written anew, upright, at
//! most so large, without place, time, camera or thumbnail. It opens no file.

use std::io::Cursor;

use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, Limits};
use sha2::{Digest, Sha256};

/// The longest side that is kept, in pixels: sharp on half a page of A4 at 150 dots an inch,
/// and 200 to 400 kB.
const LONGEST_SIDE: u32 = 1600;
/// The most pixels that are unpacked, in bytes of memory: 40 million pixels of four bytes.
const MOST_MEMORY: u64 = 160 << 20;
const MOST_SIDE: u32 = 20_000;
/// The most bytes of a file: as much as a whole form may bring.
const MOST_BYTES: usize = 32 << 20;

/// Why a picture cannot be kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum NoPicture {
    /// Neither JPEG nor PNG, or damaged.
    NotRead,
    /// More pixels than are unpacked.
    TooLarge,
}

/// The picture as it is kept.
pub(crate) fn written_anew(bytes: &[u8]) -> Result<Vec<u8>, NoPicture> {
    if bytes.len() > MOST_BYTES {
        return Err(NoPicture::TooLarge);
    }
    let reader = ImageReader::new(Cursor::new(bytes));
    let mut reader = reader.with_guessed_format().map_err(|_| NoPicture::NotRead)?;
    let format = reader.format().ok_or(NoPicture::NotRead)?;
    let mut limits = Limits::default();
    limits.max_image_width = Some(MOST_SIDE);
    limits.max_image_height = Some(MOST_SIDE);
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let why = |error| match error {
        image::ImageError::Limits(_) => NoPicture::TooLarge,
        _ => NoPicture::NotRead,
    };
    let mut decoder = reader.into_decoder().map_err(why)?;
    let (width, height) = decoder.dimensions();
    if u64::from(width) * u64::from(height) * 4 > MOST_MEMORY {
        return Err(NoPicture::TooLarge);
    }
    let turned = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let mut picture = DynamicImage::from_decoder(decoder).map_err(why)?;
    picture.apply_orientation(turned);
    if picture.width().max(picture.height()) > LONGEST_SIDE {
        picture = picture.thumbnail(LONGEST_SIDE, LONGEST_SIDE);
    }
    let mut out = Cursor::new(Vec::new());
    let written = match format {
        ImageFormat::Png => picture.write_to(&mut out, ImageFormat::Png),
        _ => DynamicImage::from(picture.to_rgb8()).write_to(&mut out, ImageFormat::Jpeg),
    };
    written.map_err(|_| NoPicture::NotRead)?;
    Ok(out.into_inner())
}

/// The name of a picture: the SHA-256 of its bytes in hexadecimal digits.
pub(crate) fn name(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

#[cfg(test)]
pub(crate) mod tests;
