//! Leaves that touch, cut apart where that is clear.
//!
//! From the line around a piece with several stalks to a line around each leaf. Where two leaves touch,
//! the line turns in on both sides of the place: it is cut between two notches that are deep and
//! near each other (pairs of concave points, as for grains that touch: van den Berg et al., *Automated
//! separation of touching grains in digital images*, 2002; from memory). It is clear where each part has a
//! stalk of its own and is a blade in one piece, and where no other cut is nearly as good. A leaf
//! has one stalk, however many lobes or leaflets it has: what has one is never cut.

use crate::leaf::evenly;
use crate::pieces::Piece;
use crate::polygon::{Point, area, between, distance, from};
use crate::stalk;
use crate::turns::{Sinus, Turns};

/// What turns in less than this is a tooth, of the square root of the area of all.
const TEETH: f64 = 0.05;
/// What turns in less is the edge of a blade, of the square root of the smaller part's area.
const DEEP: f64 = 0.1;
/// The cut is at most so long, of the same.
const LONGEST: f64 = 0.55;
/// And so long, of how deep the shallower of both notches is.
const NARROW: f64 = 1.6;
/// The smaller part is at least so large, of both.
const SMALLEST: f64 = 0.05;
/// A cut elsewhere is so many times as bad, or it is not clear which is right.
const CLEARER: f64 = 1.5;
/// Elsewhere: so far off, of the square root of the smaller part's area.
const ELSEWHERE: f64 = 0.15;
/// So far beside a notch its narrowest place is looked for, of the way across.
const NEAR: f64 = 0.15;
/// A stalk ends so far from a cut, of its length.
const FREE: f64 = 0.5;
/// So many leaves hang together at most.
const MOST: usize = 8;
/// What stands out less than so many pixels is no more than the steps between them.
const LEAST: f64 = 2.0;

/// The lines around the leaves of a piece, of which one line goes around all; None: it is one leaf, or where to cut it is not clear.
pub(crate) fn apart(piece: &Piece, line: &[Point]) -> Option<Vec<Vec<Point>>> {
    let mut open = vec![line.to_vec()];
    let (mut done, mut seams) = (Vec::new(), Vec::new());
    while let Some(line) = open.pop() {
        // The whole is looked at in `in_two`, which leaves a leaf of one stalk alone.
        let part = !seams.is_empty();
        let own = part.then(|| stalk::cut(&line)).flatten().filter(|cut| !cut.several);
        match own {
            Some(stalk) => done.push((line, stalk)),
            None if open.len() + done.len() >= MOST => return None,
            None => {
                let (parts, seam) = in_two(&line)?;
                open.extend(parts);
                seams.push(seam);
            }
        }
    }
    // A stalk that begins at a cut may be that of a leaflet.
    let free = |(_, stalk): &(Vec<Point>, stalk::Cut)| {
        let far = (FREE * stalk.length).max(2.0 * stalk.width);
        let way = |[a, b]: &[Point; 2]| distance(between(*a, *b, 0.5), stalk.stalk[0]);
        seams.iter().all(|seam| way(seam) >= far)
    };
    // Where a cut goes over the ground, leaves touch in several places.
    let whole = |[a, b]: &[Point; 2]| {
        (2..=8).map(|at| between(*a, *b, f64::from(at) / 10.0)).all(|at| has(piece, at))
    };
    let clear = done.iter().all(free) && seams.iter().all(whole);
    clear.then(|| done.into_iter().map(|(line, _)| line).collect())
}

/// A way to cut a line: the places of both notches, and how long the cut is for how deep they are.
struct Cut {
    ends: [usize; 2],
    cost: f64,
    /// The area of the smaller part.
    smaller: f64,
}

impl Cut {
    /// Whether both may be right: three leaves in a row are cut twice.
    fn goes_with(&self, other: &Self, stalks: &[usize]) -> bool {
        let ([a, b], [c, d]) = (self.ends, other.ends);
        let inside = |end: usize, from: usize, to: usize| (from..to).contains(&end);
        let of = |end: &usize| (inside(*end, a, b), inside(*end, c, d));
        let apart = b <= c || d <= a || (a <= c && d <= b) || (c <= a && b <= d);
        let mut parts: Vec<(bool, bool)> = stalks.iter().map(of).collect();
        parts.sort_unstable();
        parts.dedup();
        // Two cuts that do not cross make three parts, each with a leaf in it.
        apart && parts.len() == 3
    }
}

/// Both parts of a line that goes around more than one leaf, and the ends of the cut.
fn in_two(line: &[Point]) -> Option<([Vec<Point>; 2], [Point; 2])> {
    let stalks = stalk::several(line);
    let first = *stalks.first().filter(|_| stalks.len() > 1)?;
    let count = line.len();
    let stalks: Vec<usize> = stalks.iter().map(|end| (end + count - first) % count).collect();
    let line = from(line, line[first]);
    let mut turns = Turns::of(&line, LEAST);
    // Without teeth, so that a notch is as deep as it is between both leaves.
    let sizes = Sizes::of(&line);
    let least = TEETH * sizes.whole.sqrt();
    turns.keep(|_, sinus| sinus.depth >= least);
    let notches = &turns.sinuses;
    let mut cuts: Vec<Cut> = Vec::new();
    for (at, one) in notches.iter().enumerate() {
        for other in &notches[at + 1..] {
            let within = |end: &&usize| (one.at..other.at).contains(end);
            let inside = stalks.iter().filter(within).count();
            if inside > 0 && inside < stalks.len() {
                cuts.extend(cut(&line, &sizes, one, other));
            }
        }
    }
    cuts.sort_by(|one, other| one.cost.total_cmp(&other.cost));
    let best = cuts.first()?;
    let near =
        |a: usize, b: usize| distance(line[a], line[b]) <= ELSEWHERE * best.smaller.sqrt();
    let elsewhere = |cut: &&Cut| {
        let [one, other] = [0, 1].map(|end: usize| near(cut.ends[end], best.ends[end]));
        !(one && other)
    };
    let next = cuts.iter().filter(elsewhere).find(|cut| !best.goes_with(cut, &stalks));
    if next.is_some_and(|next| next.cost < CLEARER * best.cost) {
        return None;
    }
    let [from, to] = narrowest(&line, best.ends);
    let inner = line[from..=to].to_vec();
    let outer = [&line[to..], &line[1..=from]].concat();
    Some(([evenly(&inner), evenly(&outer)], [line[from], line[to]]))
}

/// What it takes to tell how large a part of a line is without going along it.
struct Sizes {
    /// The area of all.
    whole: f64,
    /// Up to each point, twice the area that is swept from the first.
    swept: Vec<f64>,
}

impl Sizes {
    fn of(line: &[Point]) -> Self {
        let mut sum = 0.0;
        let mut swept = vec![0.0];
        swept.extend(line.windows(2).map(|two| {
            sum += cross(line[0], two[0], two[1]);
            sum
        }));
        Self { whole: area(line), swept }
    }

    /// The area of what lies between two points of the line.
    fn between(&self, line: &[Point], from: usize, to: usize) -> f64 {
        let back = cross(line[0], line[to], line[from]);
        ((self.swept[to] - self.swept[from] + back) / 2.0).abs()
    }
}

/// Twice the area of a triangle.
fn cross(first: Point, a: Point, b: Point) -> f64 {
    (a[0] - first[0]) * (b[1] - first[1]) - (a[1] - first[1]) * (b[0] - first[0])
}

/// The cut between two notches; None: it is none between leaves.
fn cut(line: &[Point], sizes: &Sizes, one: &Sinus, other: &Sinus) -> Option<Cut> {
    let long = distance(line[one.at], line[other.at]);
    let shallower = one.depth.min(other.depth);
    if long > NARROW * shallower {
        return None;
    }
    let (whole, inner) = (sizes.whole, sizes.between(line, one.at, other.at));
    let smaller = inner.min(whole - inner);
    let size = smaller.max(0.0).sqrt();
    let fits =
        smaller >= SMALLEST * whole && shallower >= DEEP * size && long <= LONGEST * size;
    // A neck of no width at all has a length still.
    let cost = (long + LEAST) / shallower;
    fits.then_some(Cut { ends: [one.at, other.at], cost, smaller })
}

/// The places beside two notches that are nearest to each other.
fn narrowest(line: &[Point], [one, other]: [usize; 2]) -> [usize; 2] {
    let reach = ((NEAR * distance(line[one], line[other])) as usize).max(2);
    let last = line.len() - 1;
    let around = |at: usize| at.saturating_sub(reach)..=(at + reach).min(last);
    let pairs = around(one).flat_map(|a| around(other).map(move |b| [a, b]));
    let way = |[a, b]: &[usize; 2]| distance(line[*a], line[*b]);
    let pairs = pairs.filter(|[a, b]| a < b);
    pairs.min_by(|x, y| way(x).total_cmp(&way(y))).unwrap_or([one, other])
}

fn has(piece: &Piece, [x, y]: Point) -> bool {
    x >= 0.0 && y >= 0.0 && piece.has(x.round() as u32, y.round() as u32)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_part_of_a_line_is_as_large_as_when_it_is_gone_along() {
        let line: Vec<Point> = (0..300)
            .map(|at| {
                let turn = f64::from(at) / 300.0 * std::f64::consts::TAU;
                let far = 90.0 + 30.0 * (5.0 * turn).sin();
                [400.0 + far * turn.cos(), 700.0 + far * turn.sin()]
            })
            .collect();
        let sizes = Sizes::of(&line);
        for (from, to) in [(0, 299), (3, 150), (40, 44), (120, 290)] {
            let gone_along = area(&line[from..=to]);
            assert!((sizes.between(&line, from, to) - gone_along).abs() < 1e-6);
        }
    }
}
