//! Opening pictures for paper: a PNG or JPEG file to pixels that may be printed.
//!
//! From the bytes of a picture to pixels of a modest size, the right way up, or why
//! not. `picture` decodes them and packs them anew.

use std::sync::Arc;

use crate::Picture;
use crate::picture::{self, NoPicture};

/// The longest side that is kept: 80 mm at 280 dots to the inch.
pub const LONGEST_SIDE: u32 = 880;

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

impl Pixels {
    /// The same picture without its colours; a photograph that cannot be opened again is left.
    pub(crate) fn grey(&self) -> Self {
        let luma = |rgb: &[u8]| -> Vec<u8> {
            // Rec. 601: what a grey copier makes of it, about.
            let one = |pixel: &[u8]| {
                let [red, green, blue] = [pixel[0], pixel[1], pixel[2]].map(u32::from);
                ((299 * red + 587 * green + 114 * blue + 500) / 1000) as u8
            };
            rgb.chunks_exact(3).flat_map(|pixel| [one(pixel); 3]).collect()
        };
        let packed = match &self.packed {
            Packed::Rgb(rgb) => Packed::Rgb(luma(rgb).into()),
            Packed::Jpeg(file) => {
                let opened = picture::opened(file, LONGEST_SIDE).ok();
                let grey = opened.and_then(|(_, pixels)| {
                    let (width, height) = pixels.dimensions();
                    image::RgbImage::from_raw(width, height, luma(pixels.as_raw()))
                });
                let file_again = grey.and_then(|pixels| picture::jpeg(&pixels).ok());
                Packed::Jpeg(file_again.map_or_else(|| file.clone(), Into::into))
            }
        };
        Self { packed, ..*self }
    }

    /// What a drawing holds pixel by pixel, in bytes.
    pub(crate) fn sharp(&self) -> usize {
        match &self.packed {
            Packed::Rgb(rgb) => rgb.len(),
            Packed::Jpeg(_) => 0,
        }
    }
}

/// Opens a picture; a drawing stays sharp if so many bytes are room enough for its pixels.
///
/// **Errors**: why there is none, to be said where the picture would have stood.
pub fn open(given: &Picture, room: usize) -> Result<Pixels, NoPicture> {
    let (format, pixels) = picture::opened(given.bytes(), LONGEST_SIDE)?;
    let (width, height) = pixels.dimensions();
    let packed = match format {
        image::ImageFormat::Png if pixels.as_raw().len() <= room => {
            Packed::Rgb(pixels.into_raw().into())
        }
        _ => Packed::Jpeg(picture::jpeg(&pixels)?.into()),
    };
    Ok(Pixels { width, height, packed })
}

#[cfg(test)]
mod tests;
