//! A scale strip in a photograph: rings in a line, in or beside a tray.
//!
//! From rings to how large a dot is beside the strip, and how unsure that is. Along its line a strip tells
//! how the photograph was tilted (a projective map of a line has three numbers: Hartley and Zisserman,
//! *Multiple View Geometry*, 2003, 2.5; from memory); across it only by how much rings are seen narrower
//! than long. Which side is farther from the camera it does not tell, so nothing is laid flat: what a tilt
//! may change goes into the ±.

use image::{Rgb, RgbImage};
use spinney_model::PictureScale;
use spinney_model::scale_card::{STRIP, STRIP_FIRST, STRIP_SIZE};

use super::rings::Ring;
use crate::equations::nearest;
use crate::polygon::{Point, distance};

/// So few rings are still believed.
const FEWEST: usize = 5;
/// A ring lies so far from where others say, of the way from one to the next, at most.
const ASIDE: f64 = 0.15;
/// Half of the length of its line of rings, in mm.
const HALF: f64 = STRIP[STRIP.len() - 1].at[0] / 2.0;
/// Paper and shade around the strip, in mm.
const AROUND: f64 = 3.0;
/// What a tilt across the strip changes of what lies beside it, of the tangent of the tilt: 10 cm from the
/// strip, half a metre from the camera.
const BESIDE: f64 = 0.2;
/// So far from the middle of a ring there may be its ink, in mm: the photograph may be aslant.
const INK: f64 = 9.0;
/// And so far from the edge of the paper there may be a shade, or the line along which it was cut.
const EDGE: f64 = 2.0;
/// The line of ten centimetres with its words: from where to where along the strip and down it, in mm from the middle
/// of the first ring.
const TEN: ([f64; 2], [f64; 2]) = ([-3.0, 128.0], [9.0, 20.0]);
/// What is so light, of the paper, is paper too.
const LIGHT: f64 = 0.65;
/// How well a strip is printed, and how flat it lies.
const PRINTED: f64 = 0.004;

/// A strip, as it is seen.
pub(super) struct Strip {
    /// The middle of its line of rings, the direction along it, and the one to its lower edge, one long.
    middle: Point,
    along: Point,
    down: Point,
    /// Pixels in a mm, along the strip and across.
    per_mm: [f64; 2],
    /// How far its rings are from their places, in mm.
    off: f64,
    /// By what share a length may be off.
    unsure: f64,
}

/// Rings of the strip that are seen: where each lies along it, from -1 to 1.
type Seen<'r> = Vec<(f64, &'r Ring)>;

impl Strip {
    /// None: there is no strip.
    pub(super) fn of(rings: &[Ring]) -> Option<Self> {
        let seen = (0..rings.len())
            .flat_map(|one| (0..rings.len()).map(move |other| [one, other]))
            .filter(|[one, other]| one != other)
            .flat_map(|two| fitting(rings, two))
            .max_by_key(Vec::len)
            .filter(|seen| seen.len() >= FEWEST)?;
        let (first, last) = (seen.first()?.1, seen.last()?.1);
        let long = distance(first.at, last.at);
        let along = [0, 1].map(|side| (last.at[side] - first.at[side]) / long);
        let down = [-along[1], along[0]];
        let place = |ring: &Ring| {
            let off = [ring.at[0] - first.at[0], ring.at[1] - first.at[1]];
            [off[0] * along[0] + off[1] * along[1], off[0] * down[0] + off[1] * down[1]]
        };
        // t (1 + c x) = a x + b
        let [a, b, c] = nearest(seen.iter().map(|(x, ring)| {
            let [t, _] = place(ring);
            ([*x, 1.0, -t * x], t)
        }))?;
        let there = |x: f64| (a * x + b) / (1.0 + c * x);
        let half = a - b * c;
        let squares = seen.iter().map(|(x, ring)| {
            let [t, aside] = place(ring);
            (t - there(*x)).powi(2) + aside * aside
        });
        let per_mm = half / HALF;
        let off = (squares.sum::<f64>() / seen.len() as f64).sqrt() / per_mm;
        let narrow = narrower(&seen, [along, down]);
        if !(per_mm > 0.0 && narrow.is_finite() && off.is_finite()) {
            return None;
        }
        let tilted = (1.0 - narrow).abs();
        let across = tilted / 2.0 + BESIDE * (2.0 * tilted).sqrt();
        let unsure = PRINTED.hypot(across).hypot(2.0 * c).hypot(off / HALF);
        let middle = [0, 1].map(|side| first.at[side] + b * along[side]);
        Some(Self { middle, along, down, per_mm: [per_mm, per_mm * narrow], off, unsure })
    }

    /// How large a dot is beside it: the mean of both directions.
    pub(super) fn scale(&self) -> PictureScale {
        let dpi = 25.4 * (self.per_mm[0] * self.per_mm[1]).sqrt();
        PictureScale::OfStrip { dpi, off: self.off, unsure: self.unsure }
    }

    /// Gives it the colour of what lies around it, so that its rings are not measured. Dark things that lie on it stay, but
    /// for what may be ink: they are seen, and not measured. Back come the corners of what was painted.
    pub(super) fn paint_over(&self, pixels: &mut RgbImage) -> Option<[Point; 4]> {
        let [long, wide] = STRIP_SIZE;
        let left = -HALF - STRIP_FIRST[0] - AROUND;
        let top = -STRIP_FIRST[1] - AROUND;
        let (right, bottom) = (left + long + 2.0 * AROUND, top + wide + 2.0 * AROUND);
        let corners = [[left, top], [right, top], [right, bottom], [left, bottom]];
        let around = self.around(pixels, &corners)?;
        // Half way from ring to ring, and a little above and below.
        let blank = STRIP.iter().flat_map(|mark| {
            let across = mark.at[0] + STRIP[1].at[0] / 2.0 - HALF;
            [-5.0, 0.0, 5.0].map(|down| self.place([across, down]))
        });
        let paper = usual(pixels, blank.take(3 * (STRIP.len() - 1)))?;
        let corners = corners.map(|mm| self.place(mm));
        let span = |side: usize, count: u32| {
            let places = corners.iter().map(|corner| corner[side]);
            let (low, high) = places
                .fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)));
            low.max(0.0) as u32..=(high.max(0.0) as u32).min(count - 1)
        };
        let (columns, rows) = (span(0, pixels.width()), span(1, pixels.height()));
        for y in rows {
            for x in columns.clone() {
                let off = [f64::from(x) - self.middle[0], f64::from(y) - self.middle[1]];
                let mm = [self.along, self.down].map(|way| off[0] * way[0] + off[1] * way[1]);
                let [across, down] = [mm[0] / self.per_mm[0], mm[1] / self.per_mm[1]];
                if (left..=right).contains(&across) && (top..=bottom).contains(&down) {
                    let under = if on_paper([across, down]) { paper } else { around };
                    let dark = LIGHT * f64::from(light(&under));
                    let thing = f64::from(light(pixels.get_pixel(x, y))) < dark;
                    if !thing || is_ink([across, down]) {
                        pixels.put_pixel(x, y, around);
                    }
                }
            }
        }
        Some(corners)
    }

    /// The usual colour along a line around it.
    fn around(&self, pixels: &RgbImage, corners: &[Point; 4]) -> Option<Rgb<u8>> {
        let sides = (0..4).map(|at| (corners[at], corners[(at + 1) % 4]));
        let places = sides.flat_map(|(a, b)| {
            let part = move |at: i32| f64::from(at) / 200.0;
            (0..200).map(move |at| [0, 1].map(|side| a[side] + part(at) * (b[side] - a[side])))
        });
        usual(pixels, places.map(|mm| self.place(mm)))
    }

    /// A place of the strip in mm from the middle of its rings, as pixels.
    fn place(&self, [x, y]: Point) -> Point {
        let (x, y) = (x * self.per_mm[0], y * self.per_mm[1]);
        [0, 1].map(|side| self.middle[side] + x * self.along[side] + y * self.down[side])
    }
}

/// Whether a place is on the paper of the strip, in mm from the middle of its rings.
fn on_paper([across, down]: Point) -> bool {
    let [left, top] = [-HALF - STRIP_FIRST[0], -STRIP_FIRST[1]];
    (left..left + STRIP_SIZE[0]).contains(&across) && (top..top + STRIP_SIZE[1]).contains(&down)
}

/// Whether there may be ink of the strip at a place, or a shade of its edge.
fn is_ink(mm: Point) -> bool {
    let [across, down] = mm;
    let rings = STRIP.iter().any(|mark| distance([mark.at[0] - HALF, mark.at[1]], mm) <= INK);
    let (along, below) = TEN;
    let ten = (along[0] - HALF..along[1] - HALF).contains(&across)
        && (below[0]..below[1]).contains(&down);
    let moved = [[-EDGE, 0.0], [EDGE, 0.0], [0.0, -EDGE], [0.0, EDGE]];
    let here = on_paper(mm);
    let edge = moved.iter().any(|by| on_paper([across + by[0], down + by[1]]) != here);
    rings || ten || edge
}

fn light(pixel: &Rgb<u8>) -> u32 {
    pixel.0.iter().map(|byte| u32::from(*byte)).sum()
}

/// The usual colour at these places.
fn usual(pixels: &RgbImage, places: impl Iterator<Item = Point>) -> Option<Rgb<u8>> {
    let mut seen: Vec<Rgb<u8>> = places
        .filter(|[x, y]| *x >= 0.0 && *y >= 0.0)
        .filter_map(|[x, y]| pixels.get_pixel_checked(x as u32, y as u32).copied())
        .collect();
    seen.sort_by_key(light);
    seen.get(seen.len() / 2).copied()
}

/// The rings that lie where those of a strip would, where two of them are its first and its last: or
/// others of it.
fn fitting<'r>(rings: &'r [Ring], [one, other]: [usize; 2]) -> Vec<Seen<'r>> {
    let (from, to) = (&rings[one], &rings[other]);
    let mut all = Vec::new();
    for first in 0..STRIP.len() {
        for last in first + FEWEST - 1..STRIP.len() {
            let [begin, end] = [first, last].map(|at| STRIP[at].at[0]);
            let next = distance(from.at, to.at) * STRIP[1].at[0] / (end - begin);
            let found = |at: usize| {
                let mark = STRIP[at];
                let part = (mark.at[0] - begin) / (end - begin);
                let place =
                    [0, 1].map(|side| from.at[side] + part * (to.at[side] - from.at[side]));
                let way = |ring: &&Ring| distance(ring.at, place);
                let near = rings.iter().min_by(|a, b| way(a).total_cmp(&way(b)))?;
                let fits = way(&near) <= ASIDE * next && near.small == mark.small;
                fits.then_some((mark.at[0] / HALF - 1.0, near))
            };
            all.push((0..STRIP.len()).filter_map(found).collect());
        }
    }
    all
}

/// How wide rings are across the strip, of how long they are along it.
fn narrower(seen: &Seen<'_>, ways: [Point; 2]) -> f64 {
    let reach = |[x, y]: Point| -> f64 {
        let of = |ring: &Ring| {
            let [across, down, both] = ring.spread;
            (x * x * across + y * y * down + 2.0 * x * y * both).max(0.0).sqrt()
        };
        seen.iter().map(|(_, ring)| of(ring) / ring.across).sum()
    };
    reach(ways[1]) / reach(ways[0])
}
