//! The rings of a scale card in a photograph.
//!
//! From pixels to places: what is darker than the paper around it, hangs together, is round with a hole,
//! and has a round dot in its middle. Neither light nor tilt changes that.

use image::RgbImage;
use spinney_model::scale_card::{LARGE_DOT, RING, SMALL_DOT};

use crate::ground::{Contrast, WHOLE};
use crate::pieces::{Piece, pieces};
use crate::polygon::{Point, distance};

/// A ring that is seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Ring {
    /// Its middle, in pixels.
    pub(crate) at: Point,
    /// How large it is, in pixels.
    pub(crate) across: f64,
    /// Whether its dot is a small one.
    pub(crate) small: bool,
    /// How far its ink is from its middle, as mean squares: across, down, and both.
    pub(crate) spread: [f64; 3],
}

/// How far around a pixel the paper is looked at: the longer side over this.
const AROUND: usize = 24;
/// Darker than the paper around it by this share.
const DARK: f64 = 0.3;
/// The least number of pixels of a dot or a ring.
const LEAST: usize = 20;
/// More rings than these are not looked at: a card has eight.
const MOST: usize = 10;
/// A dot as a share of its ring, half way between a small one and a large one.
const HALF_WAY: f64 = f64::midpoint(SMALL_DOT, LARGE_DOT) / RING.0;

/// The rings in a photograph, the largest first.
pub(crate) fn found(photograph: &RgbImage) -> Vec<Ring> {
    let dark = darkness(photograph);
    let level = (DARK * WHOLE) as u16;
    let last = |count: usize| count.saturating_sub(1) as u32;
    let mut round: Vec<Piece> =
        pieces(&dark, (0, last(dark.width)), (0, last(dark.height)), level);
    let longest = dark.width.max(dark.height) as f64 / 5.0;
    round.retain(|piece| {
        let [wide, high] = sides(piece);
        piece.pixels >= LEAST
            && wide.max(high) < longest
            && (0.4..=2.5).contains(&(wide / high))
    });
    // From the top down: a ring looks only at those as far down as its own middle.
    let mut dots: Vec<&Piece> = round.iter().filter(|piece| full(piece) > 0.8).collect();
    dots.sort_by(|a, b| middle(a)[1].total_cmp(&middle(b)[1]));
    let mut rings: Vec<Ring> = round
        .iter()
        .filter(|piece| (0.25..0.75).contains(&full(piece)))
        .filter_map(|piece| ring(&dark, piece, &dots))
        .collect();
    rings.sort_by(|a, b| b.across.total_cmp(&a.across));
    rings.truncate(MOST);
    rings
}

/// A piece with a dot in its middle; the dots from the top down.
fn ring(dark: &Contrast, piece: &Piece, dots: &[&Piece]) -> Option<Ring> {
    let [wide, high] = sides(piece);
    let across = f64::midpoint(wide, high);
    let near = 0.1 * across;
    let [_, down] = middle(piece);
    let first = dots.partition_point(|dot| middle(dot)[1] < down - near);
    let mut level = dots[first..].iter().take_while(|dot| middle(dot)[1] <= down + near);
    let dot = level.find(|dot| {
        let [dot_wide, dot_high] = sides(dot);
        let share = f64::midpoint(dot_wide, dot_high) / across;
        distance(middle(piece), middle(dot)) < near
            && (0.1..0.68).contains(&share)
            // Tilted as its ring is.
            && (0.7..1.4).contains(&(dot_wide / dot_high / (wide / high)))
    })?;
    let [dot_wide, dot_high] = sides(dot);
    let small = f64::midpoint(dot_wide, dot_high) / across < HALF_WAY;
    let (at, spread) = weighed(dark, [piece, *dot]);
    Some(Ring { at, across, small, spread })
}

fn sides(piece: &Piece) -> [f64; 2] {
    [piece.across, piece.down].map(|(first, last)| f64::from(last - first + 1))
}

fn middle(piece: &Piece) -> Point {
    [piece.across, piece.down].map(|(first, last)| f64::midpoint(first.into(), last.into()))
}

/// How much of the ellipse in its box a piece fills.
fn full(piece: &Piece) -> f64 {
    let [wide, high] = sides(piece);
    piece.pixels as f64 / (std::f64::consts::FRAC_PI_4 * wide * high)
}

/// The middle of both and how far they reach from it, each pixel weighed by how dark it is; those along the
/// edge too, which are dark in part.
fn weighed(dark: &Contrast, both: [&Piece; 2]) -> (Point, [f64; 3]) {
    let (mut sum, mut squares) = ([0.0; 3], [0.0; 3]);
    let first = middle(both[0]);
    let (across, down) = (both[0].across, both[0].down);
    let around = |(first, last): (u32, u32)| i64::from(first) - 1..=i64::from(last) + 1;
    for y in around(down) {
        for x in around(across) {
            let weight = f64::from(dark.at(x, y));
            let off = [x as f64 - first[0], y as f64 - first[1]];
            sum[0] += weight * off[0];
            sum[1] += weight * off[1];
            sum[2] += weight;
            squares[0] += weight * off[0] * off[0];
            squares[1] += weight * off[1] * off[1];
            squares[2] += weight * off[0] * off[1];
        }
    }
    let [x, y] = [sum[0] / sum[2], sum[1] / sum[2]];
    let spread = [squares[0] / sum[2] - x * x, squares[1] / sum[2] - y * y];
    ([first[0] + x, first[1] + y], [spread[0], spread[1], squares[2] / sum[2] - x * y])
}

/// How much darker each pixel is than what lies around it.
fn darkness(photograph: &RgbImage) -> Contrast {
    let (width, height) = (photograph.width() as usize, photograph.height() as usize);
    let grey = |pixel: &[u8]| pixel.iter().map(|byte| u32::from(*byte)).sum::<u32>();
    // The sum of all that is above and to the left. It may run over: differences stay right.
    let mut sums = vec![0_u32; (width + 1) * (height + 1)];
    for y in 0..height {
        let mut row = 0_u32;
        for x in 0..width {
            row = row.wrapping_add(grey(&photograph.as_raw()[3 * (y * width + x)..][..3]));
            sums[(y + 1) * (width + 1) + x + 1] =
                sums[y * (width + 1) + x + 1].wrapping_add(row);
        }
    }
    let reach = width.max(height) / AROUND;
    let ends =
        |at: usize, count: usize| (at.saturating_sub(reach), (at + reach + 1).min(count));
    let mut values = Vec::with_capacity(width * height);
    for y in 0..height {
        let (top, bottom) = ends(y, height);
        for x in 0..width {
            let (left, right) = ends(x, width);
            let sum = |x: usize, y: usize| sums[y * (width + 1) + x];
            let inside = sum(right, bottom)
                .wrapping_sub(sum(left, bottom))
                .wrapping_sub(sum(right, top))
                .wrapping_add(sum(left, top));
            let mean = f64::from(inside) / ((right - left) * (bottom - top)) as f64;
            let own = f64::from(grey(&photograph.as_raw()[3 * (y * width + x)..][..3]));
            let darker = (1.0 - own / mean.max(1.0)).max(0.0);
            values.push((darker * WHOLE) as u16);
        }
    }
    Contrast { width, height, values }
}
