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
