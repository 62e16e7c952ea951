//! How the paper of a scale card was seen: turned, tilted, and bent by the lens.
//!
//! From rings in a photograph to which card it is and where each of its millimetres is seen. A plane
//! seen by a pinhole is a projective map of eight numbers (Hartley and Zisserman, *Multiple View
//! Geometry*, 2003, 4.1: the direct linear transformation); a lens pulls everything towards the middle
//! of the photograph or away from it, as the cube of the distance (Brown, *Close-range camera
//! calibration*, 1971: its first term). Both books from memory. Eight rings give sixteen numbers: what
//! is left over says how far off it is.

use spinney_model::scale_card::{RingMark, ScaleCard, TELLING};

use super::rings::Ring;
use crate::equations::nearest;
use crate::polygon::{Point, distance};

/// How a card was seen.
#[derive(Clone, Debug)]
pub(crate) struct Tilt {
    lens: Lens,
    /// From mm on the paper to places of a photograph without a lens, nine numbers row by row.
    map: [f64; 9],
    /// How far from where they should be the rings are seen, in mm on the paper: the root of the
    /// mean square.
    pub(crate) off: f64,
}

/// Places of a photograph: the middle is 0, half of a diagonal 1.
#[derive(Clone, Copy, Debug)]
struct Lens {
    middle: Point,
    half: f64,
    /// So far, as a share, is everything moved outwards at a distance of 1.
    bent: f64,
}

/// A ring of the card, and the one that is seen for it.
type Pair = (RingMark, Ring);

/// So few rings are still believed: one or two may be covered.
const FEWEST: usize = 6;
/// A ring that is seen farther than this from its place is another thing, in mm.
const FARTHEST: f64 = 1.5;
/// No lens of a telephone bends more.
const MOST_BENT: f64 = 0.25;

/// Which card is seen, and how.
pub(crate) fn of(rings: &[Ring], [width, height]: [f64; 2]) -> Option<(ScaleCard, Tilt)> {
    let lens = Lens {
        middle: [(width - 1.0) / 2.0, (height - 1.0) / 2.0],
        half: width.hypot(height) / 2.0,
        bent: 0.0,
    };
    let mut best: Option<(ScaleCard, Vec<Pair>, f64)> = None;
    for many in (FEWEST..=rings.len().min(8)).rev() {
        for chosen in choices(rings, many) {
            let around = clockwise(&chosen);
            for card in ScaleCard::ALL {
                for pairs in fitting(card, &around) {
                    let Some(tilt) = Tilt::through(&pairs, lens) else { continue };
                    let better = best.as_ref().is_none_or(|(.., off)| tilt.off < *off);
                    if tilt.off < FARTHEST && better {
                        best = Some((card, pairs, tilt.off));
                    }
                }
            }
        }
        // More rings say more than a better fit of fewer.
        if best.is_some() {
            break;
        }
    }
    let (card, pairs, _) = best?;
    Some((card, Tilt::bent(&pairs, lens)?))
}

/// Each way of taking so many of the rings.
fn choices(rings: &[Ring], many: usize) -> Vec<Vec<Ring>> {
    (0_u32..1 << rings.len())
        .filter(|chosen| chosen.count_ones() as usize == many)
        .map(|chosen| {
            let taken = |at: &usize| chosen & (1 << at) != 0;
            (0..rings.len()).filter(taken).map(|at| rings[at]).collect()
        })
        .collect()
}

/// Rings in the order in which they lie around their middle, clockwise as seen on the screen.
fn clockwise(rings: &[Ring]) -> Vec<Ring> {
    let count = rings.len() as f64;
    let middle = [0, 1].map(|axis| rings.iter().map(|ring| ring.at[axis]).sum::<f64>() / count);
    let angle = |ring: &Ring| (ring.at[1] - middle[1]).atan2(ring.at[0] - middle[0]);
    let mut around = rings.to_vec();
    around.sort_by(|a, b| angle(a).total_cmp(&angle(b)));
    around
}

/// Whether the rings that are seen, a bit each, tell which card it is and how it is turned: those of its
/// upper side do, and its two corners above where all the others are seen.
fn tells(seen: u32) -> bool {
    const UPPER: u32 = (1 << TELLING) - 1;
    const ALL_BUT_MIDDLE: u32 = 0b1111_1101;
    seen & UPPER == UPPER || seen == ALL_BUT_MIDDLE
}

/// Each way in which rings can be those of a card: in its order, with dots as they are, some left out, but
/// none of those that tell which card it is.
fn fitting(card: ScaleCard, around: &[Ring]) -> Vec<Vec<Pair>> {
    let marks = card.marks();
    let mut all = Vec::new();
    for seen in 0_u32..1 << marks.len() {
        if seen.count_ones() as usize != around.len() || !tells(seen) {
            continue;
        }
        let shown: Vec<RingMark> =
            (0..marks.len()).filter(|at| seen & (1 << at) != 0).map(|at| marks[at]).collect();
        for first in 0..around.len() {
            let turned = around[first..].iter().chain(&around[..first]);
            let pairs: Vec<_> = shown.iter().copied().zip(turned.copied()).collect();
            if pairs.iter().all(|(mark, ring)| mark.small == ring.small) {
                all.push(pairs);
            }
        }
    }
    all
}

impl Tilt {
    /// The map that fits best where the lens bends as it does.
    fn through(pairs: &[Pair], lens: Lens) -> Option<Self> {
        let numbers = nearest(pairs.iter().flat_map(|(mark, ring)| {
            let ([x, y], [u, v]) = (hundredths(mark.at), lens.straight(ring.at));
            [
                ([x, y, 1.0, 0.0, 0.0, 0.0, -u * x, -u * y], u),
                ([0.0, 0.0, 0.0, x, y, 1.0, -v * x, -v * y], v),
            ]
        }))?;
        let mut map = [1.0; 9];
        map[..8].copy_from_slice(&numbers);
        let mut tilt = Self { lens, map, off: 0.0 };
        let squares = pairs.iter().map(|(mark, ring)| {
            let apart = distance(tilt.seen(mark.at), ring.at) / tilt.pixels_per_mm(mark.at);
            apart * apart
        });
        tilt.off = (squares.sum::<f64>() / pairs.len() as f64).sqrt();
        tilt.off.is_finite().then_some(tilt)
    }

    /// The same with the lens that fits best: the golden section of what lenses do (Kiefer,
    /// *Sequential minimax search for a maximum*, 1953).
    fn bent(pairs: &[Pair], lens: Lens) -> Option<Self> {
        let golden = (5.0_f64.sqrt() - 1.0) / 2.0;
        let with = |bent: f64| Self::through(pairs, Lens { bent, ..lens });
        let off = |bent: f64| with(bent).map_or(f64::INFINITY, |tilt| tilt.off);
        let (mut low, mut high) = (-MOST_BENT, MOST_BENT);
        for _ in 0..40 {
            let part = golden * (high - low);
            match off(high - part) < off(low + part) {
                true => high = low + part,
                false => low = high - part,
            }
        }
        with(f64::midpoint(low, high))
    }

    /// Where a place of the paper is seen, in pixels.
    pub(crate) fn seen(&self, mm: Point) -> Point {
        let [x, y] = hundredths(mm);
        let row = |at: usize| self.map[at] * x + self.map[at + 1] * y + self.map[at + 2];
        self.lens.bends([row(0) / row(6), row(3) / row(6)])
    }

    /// How many pixels a millimetre of the paper is long there.
    pub(crate) fn pixels_per_mm(&self, [x, y]: Point) -> f64 {
        let side = |to: Point| {
            let (a, b) = (self.seen([x, y]), self.seen(to));
            [b[0] - a[0], b[1] - a[1]]
        };
        let (right, down) = (side([x + 1.0, y]), side([x, y + 1.0]));
        (right[0] * down[1] - right[1] * down[0]).abs().sqrt()
    }
}

/// So that all numbers of the equations are of one size.
fn hundredths([x, y]: Point) -> Point {
    [x / 100.0 - 0.9, y / 100.0 - 1.0]
}

impl Lens {
    /// From a place without a lens to pixels.
    fn bends(self, [u, v]: Point) -> Point {
        let out = 1.0 + self.bent * (u * u + v * v);
        [self.middle[0] + u * out * self.half, self.middle[1] + v * out * self.half]
    }

    /// From pixels to a place without a lens: a few steps of Newton's method.
    fn straight(self, [x, y]: Point) -> Point {
        let bent = [(x - self.middle[0]) / self.half, (y - self.middle[1]) / self.half];
        let far = bent[0].hypot(bent[1]);
        let mut without = far;
        for _ in 0..8 {
            let value = without + self.bent * without.powi(3) - far;
            without -= value / (1.0 + 3.0 * self.bent * without * without);
        }
        let share = if far > 0.0 { without / far } else { 1.0 };
        bent.map(|part| part * share)
    }
}

#[cfg(test)]
mod tests;
