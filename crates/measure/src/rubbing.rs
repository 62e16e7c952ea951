//! The leaves of rubbings: crayon over a leaf under paper.
//!
//! From a picture to its leaves, found by their texture and their dark edge. A rubbed leaf is no
//! dark thing on light ground: its blade is mottled, strokes go on beyond it, and what stands out is its
//! edge. So everything is looked at as tone, how much crayon there is over a fifth of a millimetre
//! (`tone`); places are kept that are darker than their surroundings and end in a dark line
//! (`candidates`), and each is outlined where the tone beyond that line falls (`settle`). What follows is
//! as for any leaf. `notice` tells a rubbing that nobody said is one.
//!
//! No tooth is told of a rubbing: crayon is as coarse as a tooth.

mod candidates;
mod gaps;
mod notice;
mod settle;
mod tone;

use spinney_model::{LeafNote, LeftOut, MeasuredPicture, PictureError};

use crate::ground;
use crate::leaf::{self, Marked, evenly};
use crate::outline;
use crate::picture::Picture;
use crate::pieces::Piece;
use crate::plus_minus;
use crate::polygon::{Point, area, encloses, smoothed};
pub(crate) use notice::looks_like_one;
use tone::Tone;

/// So far beyond the leaf the dark of its edge falls, in mm: paper lies over it, and crayon is
/// blunt. Set on drawn rubbings.
const OVER: f64 = 0.25;
/// Paper is what is lightest so far around, in mm.
const AROUND: f64 = 3.0;
/// A page is so long, in mm (A4).
const PAGE: f64 = 297.0;
/// Nothing smaller is a rubbed leaf, in mm².
const LEAST: f64 = 60.0;
/// What is finer along an outline is the grain of the crayon, in mm.
const GRAIN: f64 = 0.5;

/// Finds the leaves of rubbings and measures each.
///
/// **Guarantees**: as of [`measure`](crate::measure()).
/// **Errors**: nothing is found that is darker than its surroundings and ends in a dark line.
/// **Cost**: some 50 ns a pixel, and a second for a page of leaves; some ten bytes of memory a pixel.
pub fn measure_rubbing(picture: &Picture) -> Result<MeasuredPicture, PictureError> {
    let tone = Tone::of(picture);
    let found = candidates::found(&tone);
    let mm = picture.scale.mm();
    let mut leaves = Vec::new();
    let mut cut_off = 0;
    let mut lines: Vec<Vec<Point>> = Vec::new();
    for outline in settle::outlines(&tone, &found).into_iter().flatten() {
        if tone.touches_the_edge(&outline) {
            cut_off += 1;
            continue;
        }
        let line =
            evenly(&outline.iter().map(|point| tone.in_picture(*point)).collect::<Vec<_>>());
        // What was found twice is one.
        let again = |other: &Vec<Point>| encloses(other, middle(&line));
        if lines.iter().any(again) {
            continue;
        }
        let mm_in_pixels = tone.per_mm * tone.step as f64;
        let line = narrower(&smoothed(&line, GRAIN * mm_in_pixels), OVER * mm_in_pixels);
        // Of what was no leaf a shred may be left.
        if area(&line) < LEAST * mm_in_pixels * mm_in_pixels {
            continue;
        }
        let Some(piece) = Piece::inside(&line) else { continue };
        lines.push(line.clone());
        let notes = vec![LeafNote::Rubbed];
        leaves.push(Marked { line, notes, ..Marked::default() }.leaf(&piece, mm));
    }
    if leaves.is_empty() && cut_off == 0 {
        return Err(PictureError::NothingThere);
    }
    leaf::number(&mut leaves);
    plus_minus::of_scale(&mut leaves, picture.scale);
    let left_out = (cut_off > 0).then_some((LeftOut::CutOff, cut_off)).into_iter().collect();
    let empty = MeasuredPicture::of(picture.pixels.dimensions());
    let (scale, halved) = (picture.scale, picture.halved);
    Ok(MeasuredPicture { scale, halved, leaves, left_out, ..empty })
}

/// How large the dots of a rubbing are taken to be where nobody says it: those of a page, in dots per inch. All that
/// looks for rubbings goes by it.
pub fn dpi_of_page(picture: &Picture) -> f64 {
    let (width, height) = picture.pixels.dimensions();
    f64::from(width.max(height)) / PAGE * 25.4
}

/// How long a dot is, in mm.
fn mm(picture: &Picture) -> f64 {
    picture.scale.mm().unwrap_or(25.4 / dpi_of_page(picture))
}

/// A picture as on white paper, for leaves to be cut out of: tone by tone divided by that of the paper
/// around it, with the crayon in its own colours.
pub fn on_white(mut picture: Picture) -> Picture {
    let around = AROUND / mm(&picture);
    ground::on_white(&mut picture, around);
    picture
}

/// A line so much nearer to what it goes around, clockwise as seen on the screen.
fn narrower(line: &[Point], by: f64) -> Vec<Point> {
    let each = line.iter().enumerate().map(|(at, [x, y])| {
        let [right, down] = outline::outward(line, at);
        [x - by * right, y - by * down]
    });
    each.collect()
}

fn middle(line: &[Point]) -> Point {
    let sum = line.iter().fold([0.0; 2], |sum, point| [sum[0] + point[0], sum[1] + point[1]]);
    sum.map(|sum| sum / line.len().max(1) as f64)
}
