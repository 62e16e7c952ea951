//! A leaf alone: cut out along its outline, upright, base down, on clear ground.
//!
//! From a picture and the lines of a leaf to its pixels, and to a PNG file that knows how large
//! they are (pHYs). How clear a pixel is says how much of it lies inside of the outline; what
//! lies on the outline takes its colour from the leaf beside it, so that no rim of the old
//! ground is left.

use image::RgbImage;
use spinney_model::limits::PICTURE_PIXELS;
use spinney_model::{LeafLines, PictureError};

use crate::picture::Picture;
use crate::polygon::Point;

/// Clear pixels around a leaf.
const ROOM: f64 = 4.0;
/// Rows looked at in each pixel of the outline.
const ROWS: usize = 4;

/// A leaf alone, as pixels.
pub struct Upright {
    /// How many pixels it is wide and high.
    pub size: (u32, u32),
    /// Red, green, blue, and how much of the pixel is leaf.
    pub rgba: Vec<u8>,
}

/// The leaf as a PNG file.
///
/// **Errors**: it has no size.
pub fn cut_out(picture: &Picture, lines: &LeafLines) -> Result<Vec<u8>, PictureError> {
    let Upright { size, rgba } = upright(picture, lines)?;
    packed(&rgba, size, picture.scale.mm())
}

/// The leaf as pixels, for whoever packs it another way.
///
/// **Errors**: it has no size.
pub fn upright(picture: &Picture, lines: &LeafLines) -> Result<Upright, PictureError> {
    let frame = Frame::of(&lines.outline, &lines.midrib)?;
    Ok(frame.filled(&lines.outline, |place| colour_at(&picture.pixels, place)))
}

/// The leaf as pixels, out of a smaller copy of the picture, which is so many pixels wide itself.
///
/// **Errors**: it has no size.
pub fn upright_of_copy(
    copy: &RgbImage,
    width: u32,
    lines: &LeafLines,
) -> Result<Upright, PictureError> {
    let frame = Frame::of(&lines.outline, &lines.midrib)?;
    let scale = f64::from(copy.width()) / f64::from(width);
    let colour = |place: Point| colour_at(copy, place.map(|at| (at + 0.5) * scale - 0.5));
    Ok(frame.filled(&lines.outline, colour))
}

/// The leaf as pixels, out of the cut-out of a leaf that it is a part of, or was before it was mended:
/// that one with its outline and its midrib line.
///
/// **Errors**: one of them has no size.
pub fn upright_again(
    before: &RgbImage,
    [outline, midrib]: [&[[f64; 2]]; 2],
    lines: &LeafLines,
) -> Result<Upright, PictureError> {
    let old = Frame::of(outline, midrib)?;
    let frame = Frame::of(&lines.outline, &lines.midrib)?;
    let scale = f64::from(before.width()) / old.width as f64;
    let colour =
        |place: Point| colour_at(before, old.inside(place).map(|at| (at + 0.5) * scale - 0.5));
    Ok(frame.filled(&lines.outline, colour))
}

/// The frame around a leaf that stands upright.
struct Frame {
    turn: Turn,
    /// Its corner, where the leaf is turned.
    corner: Point,
    width: usize,
    height: usize,
}

impl Frame {
    fn of(outline: &[Point], midrib: &[Point]) -> Result<Self, PictureError> {
        let turn = Turn::upright(midrib);
        let span = |side: usize| {
            let places = outline.iter().map(|point| turn.there(*point)[side]);
            places.fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)))
        };
        let ((left, right), (top, bottom)) = (span(0), span(1));
        let corner = [left - ROOM, top - ROOM];
        let size = [right - left, bottom - top].map(|side| (side + 2.0 * ROOM).ceil());
        let fits = size.iter().all(|side| (1.0..=65_535.0).contains(side));
        if !fits || size[0] * size[1] > PICTURE_PIXELS as f64 {
            return Err(PictureError::NotRead);
        }
        Ok(Self { turn, corner, width: size[0] as usize, height: size[1] as usize })
    }

    /// A place of the picture in the frame.
    fn inside(&self, place: Point) -> Point {
        let [x, y] = self.turn.there(place);
        [x - self.corner[0], y - self.corner[1]]
    }

    /// What an outline encloses, with the colour of each place of the picture.
    fn filled(&self, outline: &[Point], colour: impl Fn(Point) -> [u8; 3]) -> Upright {
        let (width, height) = (self.width, self.height);
        let inside: Vec<Point> = outline.iter().map(|place| self.inside(*place)).collect();
        let covered = covered(&inside, width, height);
        let mut pixels = vec![0_u8; width * height * 4];
        for (at, share) in covered.iter().enumerate().filter(|(_, share)| **share > 0.0) {
            let (x, y) = (at % width, at / width);
            let place = within(&covered, (width, height), (x, y));
            let from = self.turn.back([place[0] + self.corner[0], place[1] + self.corner[1]]);
            let colour = colour(from);
            pixels[4 * at..4 * at + 3].copy_from_slice(&colour);
            pixels[4 * at + 3] = (share * 255.0).round() as u8;
        }
        Upright { size: (width as u32, height as u32), rgba: pixels }
    }
}

/// A turn that puts the base of a leaf below its tip.
struct Turn {
    cos: f64,
    sin: f64,
}

impl Turn {
    fn upright(midrib: &[Point]) -> Self {
        let (Some(base), Some(tip)) = (midrib.first(), midrib.last()) else {
            return Self { cos: 1.0, sin: 0.0 };
        };
        let (x, y) = (tip[0] - base[0], tip[1] - base[1]);
        let length = x.hypot(y).max(1e-9);
        Self { cos: -y / length, sin: -x / length }
    }

    fn there(&self, [x, y]: Point) -> Point {
        [x * self.cos - y * self.sin, x * self.sin + y * self.cos]
    }

    fn back(&self, [x, y]: Point) -> Point {
        [x * self.cos + y * self.sin, y * self.cos - x * self.sin]
    }
}

/// How much of each pixel lies inside of a line.
fn covered(line: &[Point], width: usize, height: usize) -> Vec<f32> {
    let mut covered = vec![0.0_f32; width * height];
    let mut crossings: Vec<Vec<f64>> = vec![Vec::new(); height * ROWS];
    for (at, a) in line.iter().enumerate() {
        let b = line[(at + 1) % line.len()];
        let (top, bottom) = if a[1] < b[1] { (*a, b) } else { (b, *a) };
        let place = |y: f64| (y + 0.5) * ROWS as f64 - 0.5;
        let first = place(top[1]).ceil().max(0.0) as usize;
        for (at, crossings) in crossings.iter_mut().enumerate().skip(first) {
            let y = (at as f64 + 0.5) / ROWS as f64 - 0.5;
            if y >= bottom[1] {
                break;
            }
            let part = (y - top[1]) / (bottom[1] - top[1]);
            crossings.push(top[0] + part * (bottom[0] - top[0]) + 0.5);
        }
    }
    for (at, crossings) in crossings.iter_mut().enumerate() {
        crossings.sort_by(f64::total_cmp);
        let row = &mut covered[at / ROWS * width..(at / ROWS + 1) * width];
        for ends in crossings.chunks_exact(2) {
            let (from, to) = (ends[0].max(0.0), ends[1].min(width as f64));
            for (x, share) in row.iter_mut().enumerate().skip(from as usize) {
                let part = to.min(x as f64 + 1.0) - from.max(x as f64);
                if part <= 0.0 {
                    break;
                }
                *share += part as f32 / ROWS as f32;
            }
        }
    }
    covered
}

/// Where a pixel takes its colour from: itself, or at the outline the middle of the pixels around it
/// that lie well inside.
fn within(covered: &[f32], (width, height): (usize, usize), (x, y): (usize, usize)) -> Point {
    const REACH: usize = 3;
    let whole = |x: usize, y: usize| covered[y * width + x] > 0.999;
    let inside = |x: usize, y: usize| {
        (1..width - 1).contains(&x)
            && (1..height - 1).contains(&y)
            && [(x, y), (x - 1, y), (x + 1, y), (x, y - 1), (x, y + 1)]
                .into_iter()
                .all(|(x, y)| whole(x, y))
    };
    if inside(x, y) {
        return [x as f64, y as f64];
    }
    let (mut sum, mut count) = ([0.0; 2], 0.0);
    for row in y.saturating_sub(REACH)..(y + REACH + 1).min(height) {
        for column in x.saturating_sub(REACH)..(x + REACH + 1).min(width) {
            if inside(column, row) {
                sum = [sum[0] + column as f64, sum[1] + row as f64];
                count += 1.0;
            }
        }
    }
    match count > 0.0 {
        true => [sum[0] / count, sum[1] / count],
        false => [x as f64, y as f64],
    }
}

/// The colour between four pixels.
fn colour_at(pixels: &RgbImage, [x, y]: Point) -> [u8; 3] {
    let most = |side: u32| f64::from(side - 1);
    let (x, y) = (x.clamp(0.0, most(pixels.width())), y.clamp(0.0, most(pixels.height())));
    let (left, top) = (x as usize, y as usize);
    let (wide, high) = (pixels.width() as usize, pixels.height() as usize);
    let (right, bottom) = ((left + 1).min(wide - 1), (top + 1).min(high - 1));
    let (across, down) = ((x - left as f64) as f32, (y - top as f64) as f32);
    let corners = [(left, top), (right, top), (left, bottom), (right, bottom)];
    let raw = pixels.as_raw();
    let corners = corners.map(|(x, y)| &raw[3 * (y * wide + x)..][..3]);
    std::array::from_fn(|c| {
        let [a, b, c, d] = corners.map(|pixel| f32::from(pixel[c]));
        let (above, below) = (a + across * (b - a), c + across * (d - c));
        (above + down * (below - above) + 0.5) as u8
    })
}

fn packed(
    pixels: &[u8],
    (width, height): (u32, u32),
    mm: Option<f64>,
) -> Result<Vec<u8>, PictureError> {
    let mut file = Vec::new();
    let mut encoder = png::Encoder::new(&mut file, width, height);
    encoder.set_color(png::ColorType::Rgba);
    encoder.set_depth(png::BitDepth::Eight);
    // A person waits: a tenth larger, and packed in a third of the time.
    encoder.set_compression(png::Compression::Fast);
    encoder.set_pixel_dims(mm.map(|mm| {
        let per_metre = (1000.0 / mm).round() as u32;
        png::PixelDimensions { xppu: per_metre, yppu: per_metre, unit: png::Unit::Meter }
    }));
    let written = encoder
        .write_header()
        .and_then(|mut writer| writer.write_image_data(pixels).and_then(|()| writer.finish()));
    written.map_err(|_| PictureError::NotRead)?;
    Ok(file)
}
