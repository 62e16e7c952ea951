//! Pixels as a scanner would pack them: PNG, or JPEG 60; and scans that are kept to be looked at.

use std::io::Cursor;

use image::ImageEncoder;

pub(crate) fn packed(pixels: &[u8], (width, height): (usize, usize), jpeg: bool) -> Vec<u8> {
    let mut file = Cursor::new(Vec::new());
    if jpeg {
        jpeg_encoder::Encoder::new(&mut file, 60)
            .encode(pixels, width as u16, height as u16, jpeg_encoder::ColorType::Rgb)
            .expect("it can be packed");
    } else {
        image::codecs::png::PngEncoder::new(&mut file)
            .write_image(pixels, width as u32, height as u32, image::ExtendedColorType::Rgb8)
            .expect("it can be packed");
    }
    file.into_inner()
}

/// Keeps a scan where `KEEP=folder` says so, called after what is told of it. What it is called there,
/// without its ending; None: nothing is kept.
pub(crate) fn kept(told: &str, file: &[u8], jpeg: bool) -> Option<String> {
    let folder = std::env::var("KEEP").ok()?;
    let name = told.replace([' ', ',', ':'], "_");
    let ending = if jpeg { "jpg" } else { "png" };
    std::fs::write(format!("{folder}/{name}.{ending}"), file).expect("a folder to keep in");
    Some(format!("{folder}/{name}"))
}
