//! The pen: points in millimetres, curves through them, strokes.
//!
//! Only sums, products and square roots, so that every machine draws the same line to the last
//! digit.

use spinney_model::{Stroke, Weight};

/// A point in millimetres: to the right, and up.
pub(crate) type Point = (f64, f64);

/// Points between two points that a curve goes through; at the size of the drawings it looks
/// round.
const STEPS: u32 = 4;

/// Points turned so that "up" is this direction, and put at a place.
pub(crate) fn placed(points: &[Point], at: Point, up: Point) -> Vec<Point> {
    let (ux, uy) = one_long(up);
    points.iter().map(|(x, y)| (at.0 + x * uy + y * ux, at.1 - x * ux + y * uy)).collect()
}

/// The same direction, one millimetre long.
pub(crate) fn one_long((x, y): Point) -> Point {
    let long = (x * x + y * y).sqrt();
    (x / long, y / long)
}

/// A round line through points: a cubic curve between every two, whose slope at a point is that
/// of the line from the point before to the point after.
pub(crate) fn round(through: &[Point]) -> Vec<Point> {
    let at = |n: usize| through[n.min(through.len() - 1)];
    let slope = |n: usize| {
        let (before, after) = (at(n.saturating_sub(1)), at(n + 1));
        ((after.0 - before.0) / 2.0, (after.1 - before.1) / 2.0)
    };
    let mut points = vec![through[0]];
    for n in 0..through.len() - 1 {
        let (from, to, leaves, comes) = (at(n), at(n + 1), slope(n), slope(n + 1));
        for step in 1..=STEPS {
            let s = f64::from(step) / f64::from(STEPS);
            let (s2, s3) = (s * s, s * s * s);
            let [a, b] = [2.0 * s3 - 3.0 * s2 + 1.0, 3.0 * s2 - 2.0 * s3];
            let [c, d] = [s3 - 2.0 * s2 + s, s3 - s2];
            points.push((
                a * from.0 + b * to.0 + c * leaves.0 + d * comes.0,
                a * from.1 + b * to.1 + c * leaves.1 + d * comes.1,
            ));
        }
    }
    points
}

/// A line by the way along it.
pub(super) struct Way<'p> {
    points: &'p [Point],
    /// How far each point is from the first.
    far: Vec<f64>,
}

impl<'p> Way<'p> {
    pub(super) fn of(points: &'p [Point]) -> Self {
        let mut far = vec![0.0];
        for pair in points.windows(2) {
            let (x, y) = (pair[1].0 - pair[0].0, pair[1].1 - pair[0].1);
            far.push(far[far.len() - 1] + (x * x + y * y).sqrt());
        }
        Self { points, far }
    }

    pub(super) fn long(&self) -> f64 {
        self.far[self.far.len() - 1]
    }

    /// Whether the line bends to the right here: within so much before and behind.
    pub(super) fn hollow(&self, along: f64, reach: f64) -> bool {
        self.bend(along, reach) < -0.12
    }

    /// Whether it comes to a point here.
    pub(super) fn point(&self, along: f64, reach: f64) -> bool {
        self.bend(along, reach) > 0.7
    }

    /// How much it bends to the left here: the sine of the angle, where it is sharp.
    fn bend(&self, along: f64, reach: f64) -> f64 {
        let end = self.long();
        let [from, here, to] = [along - reach, along, along + reach]
            .map(|along| self.at(along.clamp(0.0, end), 0.0));
        let (x1, y1) = (here.0 - from.0, here.1 - from.1);
        let (x2, y2) = (to.0 - here.0, to.1 - here.1);
        (x1 * y2 - y1 * x2) / (reach * reach)
    }

    /// The place so far along, moved out to the right of the way by so much.
    pub(super) fn at(&self, along: f64, out: f64) -> Point {
        let next = self.far.iter().position(|far| *far >= along);
        let next = next.unwrap_or(self.far.len() - 1).max(1);
        let (from, to) = (self.points[next - 1], self.points[next]);
        let part = (along - self.far[next - 1]) / (self.far[next] - self.far[next - 1]);
        let (x, y) = one_long((to.0 - from.0, to.1 - from.1));
        (from.0 + (to.0 - from.0) * part + y * out, from.1 + (to.1 - from.1) * part - x * out)
    }
}

/// A line on paper, where down is more.
pub(crate) fn stroke(weight: Weight, points: &[Point]) -> Stroke {
    Stroke { weight, points: points.iter().map(|(x, y)| (*x, -y)).collect() }
}

/// A circle round a place.
pub(crate) fn circle(at: Point, radius: f64) -> Vec<Point> {
    // Cosine and sine of a twenty-fourth of a circle, which is as round as the eye can see.
    let (cosine, sine) = (0.965_925_826_289_068_3, 0.258_819_045_102_520_76);
    let mut way: Point = (0.0, radius);
    let mut points = Vec::new();
    for _ in 0..=24 {
        points.push((at.0 + way.0, at.1 + way.1));
        way = (way.0 * cosine + way.1 * sine, way.1 * cosine - way.0 * sine);
    }
    points
}

/// A round line through points and back to the first.
pub(crate) fn closed(through: &[Point]) -> Vec<Point> {
    let many = through.len();
    let around: Vec<Point> = (0..many + 3).map(|n| through[(n + many - 1) % many]).collect();
    let line = round(&around);
    let span = STEPS as usize;
    line[span..line.len() - span].to_vec()
}

/// An oval round a place, so far to the side and so far up; it begins at the top and goes to the
/// right.
pub(crate) fn oval(at: Point, (aside, up): (f64, f64)) -> Vec<Point> {
    let around = circle((0.0, 0.0), 1.0);
    let line = closed(&around[..around.len() - 1]);
    line.iter().map(|(x, y)| (at.0 + x * aside, at.1 + y * up)).collect()
}

/// A part of it: from this twenty-fourth to that one.
pub(crate) fn arc(at: Point, half: (f64, f64), from: usize, to: usize) -> Vec<Point> {
    let span = STEPS as usize;
    oval(at, half)[from * span..=to * span].to_vec()
}

/// A direction, so many twenty-fourths of a full turn to the right of "up".
pub(crate) fn compass(turn: usize) -> Point {
    circle((0.0, 0.0), 1.0)[turn % 24]
}

/// The outline of something as thick as said at each point of its axis, in half widths.
pub(crate) fn swept(axis: &[Point], halves: &[f64]) -> Vec<Point> {
    let sides = |out: f64| -> Vec<Point> {
        (0..axis.len())
            .map(|n| {
                let (before, after) =
                    (axis[n.saturating_sub(1)], axis[(n + 1).min(axis.len() - 1)]);
                let (x, y) = one_long((after.0 - before.0, after.1 - before.1));
                let wide = halves[n] * out;
                (axis[n].0 + y * wide, axis[n].1 - x * wide)
            })
            .collect()
    };
    let (right, mut left) = (round(&sides(1.0)), round(&sides(-1.0)));
    left.reverse();
    let first = right[0];
    right.into_iter().chain(left).chain([first]).collect()
}

/// The mirror image of points, left and right changed.
pub(crate) fn mirrored(points: &[Point]) -> Vec<Point> {
    points.iter().map(|(x, y)| (-x, *y)).collect()
}
