//! A picture: bytes to upright pixels on white, and how large a pixel is.
//!
//! From the bytes of a PNG, JPEG, TIFF, WebP or BMP file, judged by its header before it is unpacked, to
//! eight bits a colour, turned as the file says (Exif, orientation). Clear parts are white paper; of a
//! file with several pages it is the first.

use std::borrow::Cow;
use std::io::Cursor;

use image::metadata::Orientation;
use image::{
    DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, Limits, RgbImage,
};
use spinney_model::limits::{
    PICTURE_PIXELS, PICTURE_STEPWISE, SCAN_BYTES, SCAN_PIXELS, SCAN_SIDE,
};
use spinney_model::{NoScale, PictureError, PictureScale};

use crate::polygon::Point;
use crate::{card, resolution};

/// What is read here: what people call it, and its media type. The pocket page reads no TIFF and no
/// WebP.
pub fn formats() -> impl Iterator<Item = (&'static str, &'static str)> {
    let all = [
        ("PNG", ImageFormat::Png),
        ("JPEG", ImageFormat::Jpeg),
        ("TIFF", ImageFormat::Tiff),
        ("WebP", ImageFormat::WebP),
        ("BMP", ImageFormat::Bmp),
    ];
    let read = all.into_iter().filter(|(_, format)| format.reading_enabled());
    read.map(|(name, format)| (name, format.to_mime_type()))
}

/// What each pixel takes, in bytes, and each of a picture that is made smaller first: 16 bits a
/// colour, what lies on the ground, the cut-outs (measured: `docs/measurements.md`).
const TAKES: u64 = 16;
const TAKES_LARGE: u64 = 4;

/// The most memory that unpacking one picture may take, in bytes, where there is much: eight for each
/// pixel of one that is measured whole, which sixteen bits a colour and clear parts need; three for
/// each of a larger one.
const MOST_MEMORY: u64 =
    if PICTURE_PIXELS * 8 < SCAN_PIXELS * 3 { SCAN_PIXELS * 3 } else { PICTURE_PIXELS * 8 };

/// The most memory that unpacking one picture may take where little is to be had: three bytes
/// for each pixel, as scanners write them.
pub const LITTLE_MEMORY: u64 = PICTURE_PIXELS * 3;

/// The longest side of what is shown of a picture, in pixels.
const SHOWN: u32 = 2400;

/// A picture, unpacked.
pub struct Picture {
    /// Upright, red, green and blue of eight bits.
    pub pixels: RgbImage,
    /// How large a pixel is.
    pub scale: PictureScale,
    /// Whether a pixel is two by two of the file's.
    pub halved: bool,
    /// The corners of a scale strip, which was painted over.
    pub(crate) strip: Option<[Point; 4]>,
}

impl Picture {
    /// Whether nobody said for certain how large a pixel is: then a scale card is looked for.
    fn is_doubtful(&self) -> bool {
        match self.scale {
            PictureScale::Said { .. }
            | PictureScale::OfRuler { .. }
            | PictureScale::OfFile { doubt: None, .. } => false,
            PictureScale::OfFile { doubt: Some(_), .. }
            | PictureScale::OfCard { .. }
            | PictureScale::OfStrip { .. }
            | PictureScale::Unknown(_) => true,
        }
    }

    /// What was looked at, no longer than a screen needs: of a larger picture so many by so many
    /// pixels become one.
    pub fn shown(&self) -> Cow<'_, RgbImage> {
        let (width, height) = self.pixels.dimensions();
        match width.max(height).div_ceil(SHOWN) {
            0 | 1 => Cow::Borrowed(&self.pixels),
            many => Cow::Owned(smaller(&self.pixels, many as usize)),
        }
    }
}

/// A picture of which so many by so many pixels become one; what is left over along the right and below is
/// not in it.
fn smaller(pixels: &RgbImage, many: usize) -> RgbImage {
    let wide = pixels.width() as usize / many;
    let high = pixels.height() as usize / many;
    let all = (many * many) as u32;
    let mut found = Vec::with_capacity(3 * wide * high);
    let mut sums = vec![[0_u32; 3]; wide];
    for rows in pixels.as_raw().chunks_exact(3 * pixels.width() as usize * many) {
        sums.fill([0; 3]);
        for row in rows.chunks_exact(3 * pixels.width() as usize) {
            for (sum, near) in sums.iter_mut().zip(row.chunks_exact(3 * many)) {
                for pixel in near.chunks_exact(3) {
                    (0..3).for_each(|colour| sum[colour] += u32::from(pixel[colour]));
                }
            }
        }
        found.extend(sums.iter().flatten().map(|sum| ((sum + all / 2) / all) as u8));
    }
    RgbImage::from_raw(wide as u32, high as u32, found).unwrap_or_default()
}

/// Reads a picture. What the person says of its dots per inch goes before what the file says. Where
/// neither says it for certain a scale card is looked for, and what lies on it is laid flat, or else a scale strip. Of one with
/// more than [`PICTURE_PIXELS`] each two by two become one.
///
/// **Errors**: none of the formats that are read, or damaged; more bytes or pixels than are unpacked.
pub fn read(bytes: &[u8], said: Option<f64>) -> Result<Picture, PictureError> {
    let most = Most { pixels: SCAN_PIXELS, memory: MOST_MEMORY };
    read_with(bytes, said, &most, PICTURE_PIXELS).map(|small| small.picture)
}

/// About how many bytes it takes to measure a picture and to draw what was measured, by its head:
/// for whoever measures several at once. What is no picture takes nothing.
pub fn takes(bytes: &[u8]) -> usize {
    let reader = ImageReader::new(Cursor::new(bytes)).with_guessed_format();
    let size = reader.ok().and_then(|reader| reader.into_dimensions().ok());
    let (width, height) = size.unwrap_or((0, 0));
    let pixels = u64::from(width) * u64::from(height);
    let each = if pixels > PICTURE_PIXELS { TAKES_LARGE } else { TAKES };
    bytes.len() + usize::try_from(pixels.min(SCAN_PIXELS) * each).unwrap_or(usize::MAX)
}

/// A picture that was read in little memory.
pub struct Small {
    /// As it is measured.
    pub picture: Picture,
    /// How large its pixels were in the file.
    pub scale: PictureScale,
}

/// Reads a picture in little memory: of one with more than so many pixels, each two by two
/// become one.
///
/// **Errors**: as for [`read`]; and where unpacking takes more than [`LITTLE_MEMORY`].
pub fn read_small(bytes: &[u8], said: Option<f64>, whole: u64) -> Result<Small, PictureError> {
    let most = Most { pixels: PICTURE_PIXELS, memory: LITTLE_MEMORY };
    read_with(bytes, said, &most, whole)
}

/// What may be unpacked.
struct Most {
    pixels: u64,
    memory: u64,
}

/// Reads a picture; of one with more than so many pixels each two by two become one.
fn read_with(
    bytes: &[u8],
    said: Option<f64>,
    most: &Most,
    whole: u64,
) -> Result<Small, PictureError> {
    let Opened { picture, scale } = opened(bytes, said, most)?;
    let (width, height) = (picture.width(), picture.height());
    let halved = u64::from(width) * u64::from(height) > whole;
    let mut small = match halved {
        false => Picture { pixels: on_paper(picture), scale, halved, strip: None },
        true => {
            let half = picture.thumbnail_exact(width.div_ceil(2), height.div_ceil(2));
            drop(picture);
            Picture { pixels: on_paper(half), scale: scale.halved(), halved, strip: None }
        }
    };
    let card = small.is_doubtful().then(|| card::seen(&mut small.pixels)).flatten();
    Ok(match card {
        Some(card::Seen::Flat(flat)) => Small { scale: flat.scale, picture: flat },
        Some(card::Seen::Beside(beside, strip)) => {
            let scale = if halved { beside.doubled() } else { beside };
            Small { scale, picture: Picture { scale: beside, strip, ..small } }
        }
        Some(card::Seen::Unclear) => {
            let scale = PictureScale::Unknown(NoScale::Rings);
            Small { scale, picture: Picture { scale, ..small } }
        }
        None => Small { picture: small, scale },
    })
}

/// A picture as it is unpacked, upright.
struct Opened {
    picture: DynamicImage,
    /// How large its pixels are.
    scale: PictureScale,
}

fn opened(bytes: &[u8], said: Option<f64>, most: &Most) -> Result<Opened, PictureError> {
    let too_large = PictureError::TooLarge { most: most.pixels };
    if bytes.len() > SCAN_BYTES {
        return Err(too_large);
    }
    let reader = ImageReader::new(Cursor::new(bytes));
    let mut reader = reader.with_guessed_format().map_err(|_| PictureError::NotRead)?;
    let format = reader.format().filter(|format| format.reading_enabled());
    let format = format.ok_or(PictureError::NotRead)?;
    let mut limits = Limits::default();
    limits.max_image_width = Some(SCAN_SIDE);
    limits.max_image_height = Some(SCAN_SIDE);
    limits.max_alloc = Some(most.memory);
    reader.limits(limits);
    let why = |error| match error {
        ImageError::Limits(_) => too_large,
        _ => PictureError::NotRead,
    };
    let mut decoder = reader.into_decoder().map_err(why)?;
    let head = resolution::head(bytes);
    let (width, height) = decoder.dimensions();
    let pixels = if head.stepwise { PICTURE_STEPWISE } else { most.pixels };
    let count = u64::from(width) * u64::from(height);
    if count > pixels || decoder.total_bytes() > most.memory {
        let each = (decoder.total_bytes() / count.max(1)).max(1);
        return Err(PictureError::TooLarge { most: pixels.min(most.memory / each) });
    }
    // A TIFF file is what Exif is packed as.
    let (exif, turn) = match format {
        ImageFormat::Tiff => (Some(bytes.to_vec()), Orientation::from_exif_chunk(bytes)),
        _ => (decoder.exif_metadata().ok().flatten(), decoder.orientation().ok()),
    };
    let scale = match said {
        Some(dpi) => PictureScale::Said { dpi },
        None => resolution::scale(&head, exif, width.max(height)),
    };
    let mut picture = DynamicImage::from_decoder(decoder).map_err(why)?;
    picture.apply_orientation(turn.unwrap_or(Orientation::NoTransforms));
    Ok(Opened { picture, scale })
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
