//! A stalk that crayon left in pieces.
//!
//! From a leaf and the pieces around it to the leaf with what goes on in line with it: a narrow piece whose
//! end is near, and which points at it.

use crate::ground::{Contrast, WHOLE};
use crate::outline;
use crate::pieces::Piece;
use crate::polygon::{Point, distance};

/// How far apart two pieces of a stalk may be, in mm.
const FAR: f64 = 9.0;
/// So near it may point anywhere, in mm.
const NEAR: f64 = 2.0;
/// How short a piece may be, and how wide, in mm.
const SHORT: f64 = 1.0;
const WIDE: f64 = 3.0;
/// How many times as long as wide it is.
const LONGER: f64 = 2.0;
/// The cosine of how far it may point elsewhere.
const IN_LINE: f64 = 0.8;

/// The plane with gaps of the stalk closed.
pub(super) fn closed(leaf: &Contrast, all: &[Piece], main: &Piece, per_mm: f64) -> Contrast {
    let level = (WHOLE / 2.0) as u16;
    let mut around = outline::outline(leaf, main, level);
    let mut leaf = Contrast { values: leaf.values.clone(), ..*leaf };
    let mut left: Vec<Narrow> = all
        .iter()
        .filter(|piece| piece.runs[0] != main.runs[0])
        .filter_map(|piece| Narrow::of(piece, per_mm))
        .collect();
    loop {
        let nearest = left.iter().enumerate().filter_map(|(at, narrow)| {
            let (off, ends) = narrow.joins(&around, per_mm)?;
            Some((off, at, ends))
        });
        let Some((_, at, [from, to])) = nearest.min_by(|a, b| a.0.total_cmp(&b.0)) else {
            return leaf;
        };
        let narrow = left.swap_remove(at);
        bar(&mut leaf, [from, to], (narrow.width / 2.0).max(0.25 * per_mm));
        around.extend(narrow.ends);
        around.extend(
            narrow.piece.runs.iter().map(|run| [f64::from(run.first), f64::from(run.y)]),
        );
    }
}

/// A narrow piece.
struct Narrow<'p> {
    piece: &'p Piece,
    ends: [Point; 2],
    width: f64,
}

impl<'p> Narrow<'p> {
    fn of(piece: &'p Piece, per_mm: f64) -> Option<Self> {
        let places = || {
            let of = |run: &crate::pieces::Run| {
                let y = f64::from(run.y);
                (run.first..=run.last).map(move |x| [f64::from(x), y])
            };
            piece.runs.iter().flat_map(of)
        };
        let count = piece.pixels as f64;
        let sum = places().fold([0.0; 2], |sum, at| [sum[0] + at[0], sum[1] + at[1]]);
        let middle = sum.map(|sum| sum / count);
        let mut spread = [0.0; 3];
        for [x, y] in places() {
            let (x, y) = (x - middle[0], y - middle[1]);
            spread = [spread[0] + x * x, spread[1] + x * y, spread[2] + y * y];
        }
        // The direction in which it is longest.
        let angle = 0.5 * (2.0 * spread[1]).atan2(spread[0] - spread[2]);
        let along =
            |[x, y]: Point| (x - middle[0]) * angle.cos() + (y - middle[1]) * angle.sin();
        let first = places().min_by(|a, b| along(*a).total_cmp(&along(*b)))?;
        let last = places().max_by(|a, b| along(*a).total_cmp(&along(*b)))?;
        let length = distance(first, last);
        let width = count / length.max(1.0);
        let narrow =
            length >= SHORT * per_mm && width <= WIDE * per_mm && length >= LONGER * width;
        narrow.then_some(Self { piece, ends: [first, last], width })
    }

    /// The middle of what lies near one of its ends: a stalk may be bent.
    fn middle_near(&self, end: Point, reach: f64) -> Option<Point> {
        let mut sum = [0.0; 3];
        for run in &self.piece.runs {
            let at =
                [f64::midpoint(f64::from(run.first), f64::from(run.last)), f64::from(run.y)];
            if distance(at, end) <= reach {
                sum = [sum[0] + at[0], sum[1] + at[1], sum[2] + 1.0];
            }
        }
        (sum[2] > 1.0).then(|| [sum[0] / sum[2], sum[1] / sum[2]])
    }

    /// How far it is from the leaf, and from where to where the gap goes, if it points at it.
    fn joins(&self, around: &[Point], per_mm: f64) -> Option<(f64, [Point; 2])> {
        let each = [(self.ends[0], self.ends[1]), (self.ends[1], self.ends[0])];
        let each = each.into_iter().filter_map(|(near, far)| {
            let far = self.middle_near(near, 2.0 * FAR * per_mm / 3.0).unwrap_or(far);
            let off = |point: &&Point| distance(near, **point);
            let to = *around.iter().min_by(|a, b| off(a).total_cmp(&off(b)))?;
            let gap = distance(near, to);
            let (way, length) = ([near[0] - far[0], near[1] - far[1]], distance(near, far));
            let on = [to[0] - near[0], to[1] - near[1]];
            let in_line = (way[0] * on[0] + way[1] * on[1]) / (length * gap).max(1e-9);
            let joins = gap <= FAR * per_mm && (in_line >= IN_LINE || gap <= NEAR * per_mm);
            joins.then_some((gap, [near, to]))
        });
        each.min_by(|a, b| a.0.total_cmp(&b.0))
    }
}

/// Fills what lies within so many places of a line.
fn bar(leaf: &mut Contrast, [a, b]: [Point; 2], half: f64) {
    let steps = distance(a, b).ceil().max(1.0);
    let reach = half.ceil() as i64;
    for step in 0..=steps as usize {
        let part = step as f64 / steps;
        let at = [0, 1].map(|side| a[side] + part * (b[side] - a[side]));
        let [x, y] = at.map(|at| at.round() as i64);
        for (down, right) in
            (-reach..=reach).flat_map(|d| (-reach..=reach).map(move |r| (d, r)))
        {
            let inside =
                |at: i64, count: usize| usize::try_from(at).ok().filter(|at| *at < count);
            let place = (inside(x + right, leaf.width), inside(y + down, leaf.height));
            if let (Some(x), Some(y)) = place
                && distance([x as f64, y as f64], at) <= half
            {
                leaf.values[y * leaf.width + x] = WHOLE as u16;
            }
        }
    }
}
