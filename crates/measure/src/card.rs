//! Photographs of leaves on a scale card, laid flat.
//!
//! From a photograph in which the rings of a [`ScaleCard`] are seen to the picture that a scanner would
//! have made of what lies between them. `rings` finds the rings, `tilt` works out from where they are
//! how the paper was turned, tilted and bent by the lens, and this file takes the picture apart along it. Where
//! there is no card, `strip` looks for a strip of rings: by that nothing is laid flat.

mod rings;
mod strip;
mod tilt;

use image::{Rgb, RgbImage};
use spinney_model::PictureScale;
use spinney_model::limits::PICTURE_PIXELS;
use spinney_model::scale_card::{CLEAR, ScaleCard};

use crate::picture::Picture;
use crate::polygon::Point;
use tilt::Tilt;

/// What is seen in a photograph of which nobody said how large a dot is.
pub(crate) enum Seen {
    /// What lies on a scale card, as from straight above.
    Flat(Picture),
    /// A scale strip beside what lies there, and how large dots are by it. The strip is painted over, and its corners
    /// are told.
    Beside(PictureScale, Option<[Point; 4]>),
    /// Rings, and neither a card nor a strip: some are covered, or they do not lie as they do on one.
    Unclear,
}

/// So many rings are those of a card or a strip.
const SOME: usize = 4;

/// The scale card in a photograph, or the scale strip. None: nothing of either is seen.
///
/// **Cost**: some 40 ns a pixel, and five bytes of memory.
pub(crate) fn seen(photograph: &mut RgbImage) -> Option<Seen> {
    let rings = rings::found(photograph);
    let size = [photograph.width(), photograph.height()].map(f64::from);
    if let Some((card, tilt)) = tilt::of(&rings, size) {
        return Some(Seen::Flat(flat(photograph, card, &tilt)));
    }
    let Some(strip) = strip::Strip::of(&rings) else {
        return (rings.len() >= SOME).then_some(Seen::Unclear);
    };
    let corners = strip.paint_over(photograph);
    Some(Seen::Beside(strip.scale(), corners))
}

/// What lies on a card, laid flat.
fn flat(photograph: &RgbImage, card: ScaleCard, tilt: &Tilt) -> Picture {
    let pixels = unfolded(photograph, card, tilt);
    let (wide, _) = room(card);
    let dpi = f64::from(pixels.width()) / wide * 25.4;
    let scale = PictureScale::OfCard { dpi, off: tilt.off };
    Picture { pixels, scale, halved: false, strip: None }
}

/// How wide and high what is measured is, in mm.
fn room(card: ScaleCard) -> (f64, f64) {
    let [wide, high] = card.size();
    (wide - 2.0 * CLEAR, high - 2.0 * CLEAR)
}

/// The paper between the rings, as fine as the photograph has it in the middle.
fn unfolded(photograph: &RgbImage, card: ScaleCard, tilt: &Tilt) -> RgbImage {
    let (wide, high) = room(card);
    let middle = card.size().map(|side| side / 2.0);
    let most = (PICTURE_PIXELS as f64 / (wide * high)).sqrt();
    let per_mm = tilt.pixels_per_mm(middle).min(most);
    let [width, height] = [wide, high].map(|side| (side * per_mm).round().max(1.0) as u32);
    let step = wide / f64::from(width);
    RgbImage::from_fn(width, height, |x, y| {
        let at = [x, y].map(|at| CLEAR + (f64::from(at) + 0.5) * step);
        between(photograph, tilt.seen(at))
    })
}

/// The colour between four pixels.
fn between(pixels: &RgbImage, [x, y]: [f64; 2]) -> Rgb<u8> {
    let place = |at: f64, count: u32| {
        let at = at.clamp(0.0, f64::from(count - 1));
        let before = (at as u32).min(count.saturating_sub(2));
        (before, (before + 1).min(count - 1), (at - f64::from(before)) as f32)
    };
    let (left, right, across) = place(x, pixels.width());
    let (upper, lower, down) = place(y, pixels.height());
    let corners = [(left, upper), (right, upper), (left, lower), (right, lower)];
    let [a, b, c, d] = corners.map(|(x, y)| pixels.get_pixel(x, y).0.map(f32::from));
    Rgb(std::array::from_fn(|colour| {
        let above = a[colour] + across * (b[colour] - a[colour]);
        let below = c[colour] + across * (d[colour] - c[colour]);
        (above + down * (below - above)).round() as u8
    }))
}
