//! A picture: bytes to upright pixels on white, and how large a pixel is.
//!
//! From the bytes of a PNG or JPEG file, judged by its header before it is unpacked, to eight bits
//! a colour, turned as the file says (Exif, orientation). Clear parts are white paper.

use std::borrow::Cow;
use std::io::Cursor;

use image::metadata::Orientation;
use image::{
    DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, Limits, RgbImage,
};
use spinney_model::limits::{PICTURE_BYTES, PICTURE_PIXELS, PICTURE_SIDE, PICTURE_STEPWISE};
use spinney_model::{PictureError, PictureScale};

use crate::{card, resolution};

/// The most memory that unpacking one picture may take, in bytes: eight for each pixel, which
/// sixteen bits a colour and clear parts need.
const MOST_MEMORY: u64 = PICTURE_PIXELS * 8;

/// The most memory that unpacking one picture may take where little is to be had: three bytes
/// for each pixel, as scanners write them.
pub const LITTLE_MEMORY: u64 = PICTURE_PIXELS * 3;

/// A picture, unpacked.
pub struct Picture {
    /// Upright, red, green and blue of eight bits.
    pub pixels: RgbImage,
    /// How large a pixel is.
    pub scale: PictureScale,
    /// Whether it is no longer what the file shows: a photograph laid flat by its scale card.
    pub(crate) flattened: bool,
}

impl Picture {
    /// What lies on a scale card in it, where nobody said for certain how large a pixel is and there is
    /// one.
    fn on_card(&self) -> Option<Self> {
        match self.scale {
            PictureScale::Said { .. } | PictureScale::OfFile { doubt: None, .. } => None,
            _ => card::flat(&self.pixels),
        }
    }

    /// What was looked at, as a file: the picture's own, or what it was laid flat to (PNG).
    ///
    /// **Errors**: there is no memory to pack it.
    pub fn looked_at<'f>(&self, file: &'f [u8]) -> Result<Cow<'f, [u8]>, PictureError> {
        if !self.flattened {
            return Ok(Cow::Borrowed(file));
        }
        let mut packed = Vec::new();
        self.pixels
            .write_to(&mut Cursor::new(&mut packed), ImageFormat::Png)
            .map_err(|_| PictureError::TooLarge)?;
        Ok(Cow::Owned(packed))
    }
}

/// Reads a picture. What the person says of its dots per inch goes before what the file says. Where
/// neither says it for certain a scale card is looked for, and what lies on it is laid flat.
///
/// **Errors**: neither PNG nor JPEG, or damaged; more bytes or pixels than are unpacked.
pub fn read(bytes: &[u8], said: Option<f64>) -> Result<Picture, PictureError> {
    let (picture, scale) = opened(bytes, said, MOST_MEMORY)?;
    let picture = Picture { pixels: on_paper(picture), scale, flattened: false };
    Ok(picture.on_card().unwrap_or(picture))
}

/// A picture that was read in little memory.
pub struct Small {
    /// As it is measured.
    pub picture: Picture,
    /// How large its pixels were in the file.
    pub scale: PictureScale,
    /// Whether each two by two of the file's pixels became one.
    pub halved: bool,
}

/// Reads a picture in little memory: of one with more than so many pixels, each two by two
/// become one.
///
/// **Errors**: as for [`read`]; and where unpacking takes more than [`LITTLE_MEMORY`].
pub fn read_small(bytes: &[u8], said: Option<f64>, most: u64) -> Result<Small, PictureError> {
    let (picture, scale) = opened(bytes, said, LITTLE_MEMORY)?;
    let (width, height) = (picture.width(), picture.height());
    let halved = u64::from(width) * u64::from(height) > most;
    let small = match halved {
        false => Picture { pixels: on_paper(picture), scale, flattened: false },
        true => {
            let half = picture.thumbnail_exact(width.div_ceil(2), height.div_ceil(2));
            drop(picture);
            Picture { pixels: on_paper(half), scale: scale.halved(), flattened: false }
        }
    };
    Ok(match small.on_card() {
        Some(flat) => Small { scale: flat.scale, picture: flat, halved: false },
        None => Small { picture: small, scale, halved },
    })
}

/// A picture as it is unpacked, upright, and how large its pixels are.
fn opened(
    bytes: &[u8],
    said: Option<f64>,
    memory: u64,
) -> Result<(DynamicImage, PictureScale), PictureError> {
    if bytes.len() > PICTURE_BYTES {
        return Err(PictureError::TooLarge);
    }
    let reader = ImageReader::new(Cursor::new(bytes));
    let mut reader = reader.with_guessed_format().map_err(|_| PictureError::NotRead)?;
    let format = reader.format();
    if !matches!(format, Some(ImageFormat::Png | ImageFormat::Jpeg)) {
        return Err(PictureError::NotRead);
    }
    let mut limits = Limits::default();
    limits.max_image_width = Some(PICTURE_SIDE);
    limits.max_image_height = Some(PICTURE_SIDE);
    limits.max_alloc = Some(memory);
    reader.limits(limits);
    let why = |error| match error {
        ImageError::Limits(_) => PictureError::TooLarge,
        _ => PictureError::NotRead,
    };
    let mut decoder = reader.into_decoder().map_err(why)?;
    let head = resolution::head(bytes);
    let (width, height) = decoder.dimensions();
    let most = if head.stepwise { PICTURE_STEPWISE } else { PICTURE_PIXELS };
    if u64::from(width) * u64::from(height) > most || decoder.total_bytes() > memory {
        return Err(PictureError::TooLarge);
    }
    let exif = decoder.exif_metadata().ok().flatten();
    let turn = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let mut picture = DynamicImage::from_decoder(decoder).map_err(why)?;
    picture.apply_orientation(turn);
    let scale = match said {
        Some(dpi) => PictureScale::Said { dpi },
        None => resolution::scale(&head, exif, width.max(height)),
    };
    Ok((picture, scale))
}

/// Clear parts are paper.
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
