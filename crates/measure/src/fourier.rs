//! An outline as harmonics: how a form is compared whatever its size, place and turn.
//!
//! From a closed line to elliptic Fourier coefficients (Kuhl and Giardina, *Elliptic Fourier features of
//! a closed contour*, 1982): each harmonic is an ellipse, and the sum of all is the line. The first one is
//! made the measure of all others: it begins at its own far end, lies along the first axis and is
//! one long.

use std::f64::consts::TAU;

use crate::polygon::{Point, distance};

/// So many harmonics tell leaves apart (McLellan and Endler, *The relative success of some methods for
/// measuring and describing the shape of complex objects*, 1998, take about ten; from memory).
const HARMONICS: usize = 10;

/// The coefficients a, b, c, d of the first ten harmonics, normalised; none: the line has no length.
pub(crate) fn harmonics(line: &[Point]) -> Vec<[f64; 4]> {
    let raw = raw(line);
    let Some(first) = raw.first() else { return Vec::new() };
    let [a, b, c, d] = *first;
    // Where along the line the first ellipse is farthest from its middle.
    let begin = 0.5 * (2.0 * (a * b + c * d)).atan2(a * a - b * b + c * c - d * d);
    let turned = |[a, b, c, d]: [f64; 4], order: usize| {
        let (sin, cos) = (order as f64 * begin).sin_cos();
        [a * cos + b * sin, b * cos - a * sin, c * cos + d * sin, d * cos - c * sin]
    };
    let [along, _, aside, _] = turned(*first, 1);
    let (turn, size) = (aside.atan2(along), along.hypot(aside));
    if size <= 0.0 {
        return Vec::new();
    }
    let (sin, cos) = turn.sin_cos();
    let laid = |(at, harmonic): (usize, &[f64; 4])| {
        let [a, b, c, d] = turned(*harmonic, at + 1);
        [a * cos + c * sin, b * cos + d * sin, c * cos - a * sin, d * cos - b * sin]
            .map(|value| value / size)
    };
    raw.iter().enumerate().map(laid).collect()
}

/// The coefficients as the line lies.
fn raw(line: &[Point]) -> Vec<[f64; 4]> {
    let mut steps: Vec<(Point, f64)> = Vec::with_capacity(line.len());
    for (at, a) in line.iter().enumerate() {
        let b = line[(at + 1) % line.len()];
        let way = distance(*a, b);
        if way > 0.0 {
            steps.push(([b[0] - a[0], b[1] - a[1]], way));
        }
    }
    let around: f64 = steps.iter().map(|(_, way)| way).sum();
    if around <= 0.0 {
        return Vec::new();
    }
    let of = |order: usize| {
        let order = order as f64;
        let mut sums = [0.0; 4];
        let mut gone = 0.0;
        let (mut sin, mut cos) = (0.0, 1.0);
        for ([x, y], way) in &steps {
            gone += way;
            let (next_sin, next_cos) = (TAU * order * gone / around).sin_cos();
            sums[0] += x / way * (next_cos - cos);
            sums[1] += x / way * (next_sin - sin);
            sums[2] += y / way * (next_cos - cos);
            sums[3] += y / way * (next_sin - sin);
            (sin, cos) = (next_sin, next_cos);
        }
        sums.map(|sum| sum * around / (2.0 * (order * std::f64::consts::PI).powi(2)))
    };
    (1..=HARMONICS).map(of).collect()
}

#[cfg(test)]
mod tests {
    //! Closed forms whose harmonics are known.

    use super::*;

    fn line(at: impl Fn(f64) -> Point) -> Vec<Point> {
        (0..5000).map(|step| at(TAU * f64::from(step) / 5000.0)).collect()
    }

    #[test]
    fn a_circle_is_its_first_harmonic_wherever_it_lies() {
        let circle = line(|angle| [40.0 + 7.0 * angle.cos(), 12.0 + 7.0 * angle.sin()]);
        let found = harmonics(&circle);
        assert_eq!(found.len(), HARMONICS);
        for (at, [a, b, c, d]) in found.into_iter().enumerate() {
            let first = if at == 0 { 1.0 } else { 0.0 };
            assert!((a.abs() - first).abs() < 1e-4 && b.abs() < 1e-4, "{at}: {a} {b}");
            assert!(c.abs() < 1e-4 && (d.abs() - first).abs() < 1e-4, "{at}: {c} {d}");
        }
    }

    #[test]
    fn size_place_turn_and_where_it_begins_do_not_matter() {
        let form = |turn: f64, size: f64, begin: f64| {
            line(|angle| {
                let angle = angle + begin;
                let (x, y) = (3.0 * angle.cos() + 0.4 * (3.0 * angle).cos(), angle.sin());
                let (sin, cos) = turn.sin_cos();
                [size * (x * cos - y * sin) + 9.0, size * (x * sin + y * cos)]
            })
        };
        let plain = harmonics(&form(0.0, 1.0, 0.0));
        for (turn, size, begin) in [(0.4, 3.0, 0.0), (0.0, 0.2, 1.0), (1.2, 50.0, 0.3)] {
            for (a, b) in plain.iter().zip(harmonics(&form(turn, size, begin))) {
                // An ellipse has two far ends: from the other one, every second harmonic is turned over.
                let near =
                    |sign: f64| a.iter().zip(b).all(|(a, b)| (a - sign * b).abs() < 1e-3);
                assert!(near(1.0) || near(-1.0), "{a:?} {b:?}");
            }
        }
    }

    #[test]
    fn a_point_has_none() {
        assert!(harmonics(&[[1.0, 2.0]; 5]).is_empty());
        assert!(harmonics(&[]).is_empty());
    }
}
