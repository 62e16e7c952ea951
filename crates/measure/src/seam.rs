//! Seams: where leaves lie against each other that were cut apart.
//!
//! From the lines around two leaves to the stretch that both share; from it to one line around both again, and
//! to how far a leaf may go on beyond its seam, below the other one. A blade that bulges stays
//! within the lines in which its edge runs up to the seam on both sides.

use std::collections::HashMap;

use spinney_model::MeasuredLeaf;

use crate::polygon::{Point, area, between, distance};

/// Places of two lines that are so many pixels apart are one.
const SAME: f64 = 1.0;
/// So many places of a stretch may be farther apart.
const GAP: usize = 2;
/// Where fewer places are shared, two leaves are only near.
const SHORTEST: usize = 4;
/// A seam lies on a line that is so near its middle, in pixels.
const NEAR: f64 = 2.0;
/// The edge is looked at so far from a seam: of its length, and in pixels.
const BESIDE: f64 = 0.25;
const LEAST: usize = 6;
/// What a blade that bulges fills of the seam times how high the lines meet: a round one a third, a pointed one half.
const BULGE: f64 = 0.4;
/// The tangents of the flattest and the steepest angle in which an edge runs up to a seam.
const ANGLES: (f64, f64) = (0.1, 2.0);

/// The stretch that two lines share: where it begins and ends on one, and those places on the other.
pub(crate) struct Shared {
    one: [usize; 2],
    other: [usize; 2],
}

/// The longest stretch that two lines share, which go around in the same way; None: they share none.
pub(crate) fn shared(one: &[Point], other: &[Point]) -> Option<Shared> {
    let cell = |[x, y]: Point| ((x / SAME).floor() as i64, (y / SAME).floor() as i64);
    let mut cells: HashMap<(i64, i64), Vec<usize>> = HashMap::new();
    for (at, point) in other.iter().enumerate() {
        cells.entry(cell(*point)).or_default().push(at);
    }
    let same = |point: Point| {
        let (x, y) = cell(point);
        let around = (-1..=1).flat_map(|right| (-1..=1).map(move |down| (x + right, y + down)));
        let all = around.filter_map(|cell| cells.get(&cell)).flatten().copied();
        let way = |at: &usize| distance(other[*at], point);
        let nearest = all.min_by(|a, b| way(a).total_cmp(&way(b)))?;
        (way(&nearest) <= SAME).then_some(nearest)
    };
    let same: Vec<Option<usize>> = one.iter().map(|point| same(*point)).collect();
    let first = same.iter().position(Option::is_none)?;
    let (mut longest, mut now): ((usize, usize), Option<(usize, usize)>) = ((0, 0), None);
    for at in first..first + one.len() {
        if same[at % one.len()].is_none() {
            continue;
        }
        let (begun, _) = now.filter(|(_, last)| at - last <= GAP + 1).unwrap_or((at, at));
        now = Some((begun, at));
        if at - begun > longest.1 - longest.0 {
            longest = (begun, at);
        }
    }
    let ends = [longest.0 % one.len(), longest.1 % one.len()];
    let long = longest.1 - longest.0 + 1 >= SHORTEST;
    let other = [same[ends[0]]?, same[ends[1]]?];
    long.then_some(Shared { one: ends, other })
}

impl Shared {
    /// The two ends of the stretch.
    pub(crate) fn ends(&self, one: &[Point]) -> [Point; 2] {
        self.one.map(|at| one[at])
    }

    /// One line around both.
    pub(crate) fn around(&self, one: &[Point], other: &[Point]) -> Vec<Point> {
        let part = |line: &[Point], from: usize, to: usize| -> Vec<Point> {
            let count = (to + line.len() - from) % line.len();
            (0..=count).map(|at| line[(from + at) % line.len()]).collect()
        };
        let mut line = part(one, self.one[1], self.one[0]);
        line.extend(part(other, self.other[0], self.other[1]));
        line
    }
}

/// The seams between these lines, each as its two ends.
pub(crate) fn between_all(lines: &[&[Point]]) -> Vec<[Point; 2]> {
    let pairs = (0..lines.len()).flat_map(|a| (a + 1..lines.len()).map(move |b| [a, b]));
    pairs
        .filter_map(|two| {
            let [one, other] = two.map(|at| lines[at]);
            Some(shared(one, other)?.ends(one))
        })
        .collect()
}

/// Leaves that hung together, so that each but the first has a seam with one before it, if it can be.
pub(crate) fn in_order(leaves: &[MeasuredLeaf], group: &[usize]) -> Vec<usize> {
    let line = |number: usize| {
        let leaf = leaves.iter().find(|leaf| leaf.number == number);
        leaf.map_or(&[][..], |leaf| &leaf.lines.outline)
    };
    let mut left = group.to_vec();
    let mut order: Vec<usize> = Vec::new();
    while !left.is_empty() {
        let hangs = |number: &usize| {
            order.iter().any(|before| shared(line(*before), line(*number)).is_some())
        };
        let next = left.iter().position(hangs).unwrap_or(0);
        order.push(left.remove(next));
    }
    order
}

/// How far a leaf may go on beyond its seams, in pixels.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Hidden {
    /// Along the blade, where a seam is at one of its ends; and across it.
    pub(crate) along: f64,
    pub(crate) across: f64,
    /// How large that may be.
    pub(crate) area: f64,
    /// And how much longer the line around it.
    pub(crate) around: f64,
}

/// What may be hidden of a blade beyond those of these seams that are its own; `ends`: base and tip; `sides`: where its
/// width is measured.
pub(crate) fn hidden(
    line: &[Point],
    seams: &[[Point; 2]],
    ends: [Point; 2],
    sides: [Point; 2],
) -> Hidden {
    let mut all = Hidden::default();
    for seam in seams {
        let Some((high, far)) = beyond(line, *seam) else { continue };
        let long = distance(seam[0], seam[1]);
        let reached = |point: &Point| {
            let places = (0..=20).map(|at| between(seam[0], seam[1], f64::from(at) / 20.0));
            places.map(|place| distance(place, *point)).fold(f64::MAX, f64::min) <= high + NEAR
        };
        if ends.iter().any(reached) {
            all.along += high;
        }
        if sides.iter().any(reached) {
            all.across += high;
        }
        all.area += BULGE * long * high;
        all.around += far - long;
    }
    all
}

/// How far the lines in which an edge runs up to a seam on both sides meet beyond it, and how long they are
/// until there; None: the seam is none of this line.
fn beyond(line: &[Point], seam: [Point; 2]) -> Option<(f64, f64)> {
    let nearest = |point: Point| {
        let way = |at: &usize| distance(line[*at], point);
        let at = (0..line.len()).min_by(|a, b| way(a).total_cmp(&way(b)))?;
        (way(&at) <= NEAR).then_some(at)
    };
    let [one, other] = [nearest(seam[0])?, nearest(seam[1])?];
    nearest(between(seam[0], seam[1], 0.5))?;
    let count = line.len();
    let gone = |from: usize, to: usize| (to + count - from) % count;
    // The seam is the short way from one to the other.
    let (from, to) =
        if gone(one, other) <= gone(other, one) { (one, other) } else { (other, one) };
    let long = distance(line[from], line[to]);
    let beside = ((BESIDE * long) as usize).max(LEAST).min(count / 8);
    let way = |a: Point, b: Point| [b[0] - a[0], b[1] - a[1]];
    let along = way(line[from], line[to]);
    let tangent = |side: [f64; 2]| {
        let cross = side[0] * along[1] - side[1] * along[0];
        let dot = side[0] * along[0] + side[1] * along[1];
        let steep = if dot > 0.0 { (cross / dot).abs() } else { ANGLES.1 };
        steep.clamp(ANGLES.0, ANGLES.1)
    };
    let before = tangent(way(line[(from + count - beside) % count], line[from]));
    let behind = tangent(way(line[to], line[(to + beside) % count]));
    let high = long * before * behind / (before + behind);
    // The foot of where both meet parts the seam as their tangents do.
    let feet = [behind, before].map(|part| long * part / (before + behind));
    Some((high, feet.iter().map(|foot| foot.hypot(high)).sum()))
}

/// Whether two lines around leaves may be one around both: nothing of either is lost.
pub(crate) fn holds(around: &[Point], one: &[Point], other: &[Point]) -> bool {
    area(around) >= 0.99 * (area(one) + area(other))
}
