//! Drawn pixels as a file.

use image::{ExtendedColorType, ImageEncoder};

/// Red, green and blue, row by row, as PNG.
pub(crate) fn packed(pixels: &[u8], (width, height): (usize, usize)) -> Vec<u8> {
    let mut file = Vec::new();
    image::codecs::png::PngEncoder::new(&mut file)
        .write_image(pixels, width as u32, height as u32, ExtendedColorType::Rgb8)
        .expect("it can be packed");
    file
}
