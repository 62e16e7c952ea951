//! Closed lines: area, length, evenly spaced points, the convex hull.
//!
//! From points to numbers and other points, in whatever unit the points are. Nothing here knows
//! what a leaf is.

/// A point.
pub(crate) type Point = [f64; 2];

pub(crate) fn distance(a: Point, b: Point) -> f64 {
    // Places of a picture are neither so large nor so small that a square would be lost.
    square(a, b).sqrt()
}

/// The same squared: enough to tell which is nearer.
pub(crate) fn square(a: Point, b: Point) -> f64 {
    let [x, y] = [a[0] - b[0], a[1] - b[1]];
    x * x + y * y
}

pub(crate) fn between(a: Point, b: Point, part: f64) -> Point {
    [a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1])]
}

/// The area inside.
pub(crate) fn area(line: &[Point]) -> f64 {
    signed_area(line).abs()
}

/// The area inside of a line that goes around clockwise, as seen on a screen; of one that goes the other way
/// less than 0 (shoelace formula).
pub(crate) fn signed_area(line: &[Point]) -> f64 {
    sides(line).map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum::<f64>() / 2.0
}

/// The length around.
pub(crate) fn perimeter(line: &[Point]) -> f64 {
    sides(line).map(|(a, b)| distance(a, b)).sum()
}

/// The length of an open line.
pub(crate) fn length(line: &[Point]) -> f64 {
    line.windows(2).map(|two| distance(two[0], two[1])).sum()
}

fn sides(line: &[Point]) -> impl Iterator<Item = (Point, Point)> {
    (0..line.len()).map(|at| (line[at], line[(at + 1) % line.len()]))
}

/// Whether a point lies inside (even–odd rule).
pub(crate) fn encloses(line: &[Point], [x, y]: Point) -> bool {
    let crossed = sides(line).filter(|(a, b)| {
        let crosses = (a[1] > y) != (b[1] > y);
        crosses && x < a[0] + (y - a[1]) / (b[1] - a[1]) * (b[0] - a[0])
    });
    crossed.count() % 2 == 1
}

/// So many points, evenly spaced along a closed line.
pub(crate) fn spaced(line: &[Point], count: usize) -> Vec<Point> {
    let step = perimeter(line) / count as f64;
    let mut found = Vec::with_capacity(count);
    let (mut gone, mut next) = (0.0, 0.0);
    for (a, b) in sides(line) {
        let side = distance(a, b);
        while found.len() < count && next <= gone + side {
            let part = if side > 0.0 { (next - gone) / side } else { 0.0 };
            found.push(between(a, b, part));
            next += step;
        }
        gone += side;
    }
    // The last may be lost to rounding.
    while found.len() < count {
        found.push(line[0]);
    }
    found
}

/// A closed line that begins, and ends, with its point nearest to another one.
pub(crate) fn from(line: &[Point], near: Point) -> Vec<Point> {
    let way = |at: &usize| distance(line[*at], near);
    let first = (0..line.len()).min_by(|a, b| way(a).total_cmp(&way(b))).unwrap_or(0);
    (0..=line.len()).map(|at| line[(first + at) % line.len()]).collect()
}

/// A closed line of evenly spaced points without what is finer than so many of them: each the mean
/// of its neighbours, weighted by the normal curve.
pub(crate) fn smoothed(line: &[Point], sigma: f64) -> Vec<Point> {
    let reach = (3.0 * sigma).ceil() as usize;
    if line.len() <= 2 * reach || reach == 0 {
        return line.to_vec();
    }
    let weights: Vec<f64> = (0..=2 * reach)
        .map(|at| {
            let apart = at as f64 - reach as f64;
            (-apart * apart / (2.0 * sigma * sigma)).exp()
        })
        .collect();
    let all: f64 = weights.iter().sum();
    let count = line.len();
    (0..count)
        .map(|at| {
            let mut sum = [0.0; 2];
            for (offset, weight) in weights.iter().enumerate() {
                let point = line[(at + count + offset - reach) % count];
                sum[0] += weight * point[0];
                sum[1] += weight * point[1];
            }
            [sum[0] / all, sum[1] / all]
        })
        .collect()
}

/// The convex hull.
///
/// **Source**: Andrew, *Another efficient algorithm for convex hulls in two dimensions*, 1979.
pub(crate) fn hull(points: &[Point]) -> Vec<Point> {
    let mut sorted = points.to_vec();
    sorted.sort_by(|a, b| a[0].total_cmp(&b[0]).then(a[1].total_cmp(&b[1])));
    sorted.dedup();
    if sorted.len() < 3 {
        return sorted;
    }
    let turns = |a: Point, b: Point, c: Point| {
        (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0.0
    };
    let chain = |points: &mut dyn Iterator<Item = Point>| {
        let mut chain: Vec<Point> = Vec::new();
        for point in points {
            while chain.len() >= 2
                && !turns(chain[chain.len() - 2], chain[chain.len() - 1], point)
            {
                chain.pop();
            }
            chain.push(point);
        }
        chain.pop();
        chain
    };
    let mut around = chain(&mut sorted.iter().copied());
    around.extend(chain(&mut sorted.iter().rev().copied()));
    around
}

/// The area of the smallest rectangle around a convex hull: one of its sides lies along one of the
/// hull's.
///
/// **Source**: Freeman and Shapira, *Determining the minimum-area encasing rectangle for an
/// arbitrary closed curve*, 1975.
pub(crate) fn smallest_rectangle(hull: &[Point]) -> f64 {
    let of = |(a, b): (Point, Point)| {
        let side = distance(a, b).max(f64::MIN_POSITIVE);
        let along = [(b[0] - a[0]) / side, (b[1] - a[1]) / side];
        let mut spans = [(f64::MAX, f64::MIN); 2];
        for point in hull {
            let place = [
                point[0] * along[0] + point[1] * along[1],
                point[1] * along[0] - point[0] * along[1],
            ];
            for (span, place) in spans.iter_mut().zip(place) {
                *span = (span.0.min(place), span.1.max(place));
            }
        }
        (spans[0].1 - spans[0].0) * (spans[1].1 - spans[1].0)
    };
    sides(hull).map(of).fold(f64::MAX, f64::min)
}

/// The two points of a hull that are farthest apart.
pub(crate) fn farthest_apart(hull: &[Point]) -> Option<(Point, Point)> {
    let pairs = hull
        .iter()
        .enumerate()
        .flat_map(|(at, a)| hull[at + 1..].iter().map(move |b| (*a, *b)));
    pairs.max_by(|one, other| distance(one.0, one.1).total_cmp(&distance(other.0, other.1)))
}

#[cfg(test)]
mod tests;
