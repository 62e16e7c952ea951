//! Words of shells and cases.
//!
//! From what is spoken of to a shell of no kind in particular. The pointed shell winds to the
//! right, as most do: held with its point up and its mouth towards you, the mouth is on the right
//! (common knowledge, without a source).

use spinney_model::{Stroke, Weight};

use super::spoken_of;
use crate::pen::{Point, closed, compass, mirrored, oval, placed, round, stroke, swept};

/// The part of a shell that is heavy.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum OfShell {
    Nothing,
    Mouth,
    Whorl,
}

/// How much longer a shell is after one turn more.
const TURN: f64 = 1.7;
/// Half its width, in parts of the way from its point.
const SLOPE: f64 = 0.36;
/// Its point.
const POINT: f64 = 48.0;

/// A shell with a point, its mouth in front on the right.
pub(super) fn pointed(heavy: OfShell) -> Vec<Stroke> {
    let half_turn = TURN.sqrt();
    // Where the seams meet the right side, from the mouth up; on the left half a turn later.
    let right: Vec<f64> = (0..5)
        .scan(28.0, |far, _| {
            let here = *far;
            *far /= TURN;
            Some(here)
        })
        .collect();
    let left: Vec<f64> = right[1..].iter().map(|far| far * half_turn).collect();
    let at = |side: f64, far: f64| (side * SLOPE * far, POINT - far);
    let bulge = |side: f64, from: f64, to: f64| {
        let middle = (from + to) / 2.0;
        let (x, y) = at(side, middle);
        round(&[at(side, from), (x + side * (to - from) * 0.16, y), at(side, to)])
    };
    let seam = |n: usize| {
        let (from, to) = (at(1.0, right[n]), at(-1.0, left[n - 1]));
        let middle = ((from.0 + to.0) / 2.0, (from.1 + to.1) / 2.0 - right[n] * 0.09);
        round(&[from, middle, to])
    };
    let mut strokes = Vec::new();
    for n in 1..right.len() {
        let of =
            |whorl: usize| spoken_of(heavy == OfShell::Whorl && n == whorl, Weight::Outline);
        strokes.push(stroke(of(1), &bulge(1.0, right[n], right[n - 1])));
        let seam_heavy = heavy == OfShell::Whorl && (n == 1 || n == 2);
        strokes.push(stroke(spoken_of(seam_heavy, Weight::Outline), &seam(n)));
        if n > 1 {
            strokes.push(stroke(of(2), &bulge(-1.0, left[n - 1], left[n - 2])));
        }
    }
    let (end, last) = (right[right.len() - 1], left[left.len() - 1]);
    strokes.push(stroke(Weight::Outline, &[at(1.0, end), (0.0, POINT), at(-1.0, last)]));
    let body = [at(-1.0, left[0]), (-15.6, 14.0), (-14.0, 1.0), (-7.0, -7.4), (3.0, -9.6)];
    strokes.push(stroke(Weight::Outline, &round(&body)));
    let corner = at(1.0, right[0]);
    let mouth = [
        corner,
        (15.4, 12.6),
        (16.0, 1.0),
        (10.4, -8.4),
        (3.0, -9.6),
        (-0.4, -2.0),
        (2.8, 9.0),
    ];
    strokes.push(stroke(spoken_of(heavy == OfShell::Mouth, Weight::Outline), &closed(&mouth)));
    strokes
}

/// The shell with its mouth heavy that winds to the left: a mirror image.
pub(super) fn wound_to_the_left() -> Vec<Stroke> {
    let mut strokes = pointed(OfShell::Mouth);
    for (x, _) in strokes.iter_mut().flat_map(|stroke| &mut stroke.points) {
        *x = -*x;
    }
    strokes
}

/// The middle of what is wound up flat.
const MIDDLE: Point = (0.0, 18.0);

/// Points of a winding line to a turn.
const ROUND: usize = 24 * 4;

/// A line that winds outwards: its way from the middle at each twenty-fourth of a turn.
fn winding(first: f64, turns: usize, next: impl Fn(f64) -> f64) -> Vec<Point> {
    let mut far = first;
    let line: Vec<Point> = (0..=turns * 24)
        .map(|n| {
            let (x, y) = compass(n);
            let point = (MIDDLE.0 + x * far, MIDDLE.1 + y * far);
            far = next(far);
            point
        })
        .collect();
    round(&line)
}

/// A shell that is wound up flat, its mouth at the outer end.
pub(super) fn flat() -> Vec<Stroke> {
    // After 24 steps it is half as far out again.
    let line = winding(3.0, 5, |far| far * 1.017_04);
    let end = line[line.len() - 1];
    let before = line[line.len() - 1 - ROUND];
    let middle = (end.0 + 3.4, (before.1 + end.1) / 2.0);
    let mouth = [before, middle, (end.0 + 1.6, end.1 + 0.4), end];
    vec![stroke(Weight::Outline, &line), stroke(Weight::Outline, &round(&mouth))]
}

/// A rope: wound up, or hanging straight; its strands go slantwise across.
pub(super) fn rope(wound: bool) -> Vec<Stroke> {
    const THICK: f64 = 6.4;
    if !wound {
        let (top, foot) = (46.0, -10.0);
        let half = THICK / 2.0;
        let line = |from: Point, to: Point| stroke(Weight::Outline, &[from, to]);
        let mut strokes = vec![
            line((-half, foot), (-half, top)),
            line((half, foot), (half, top)),
            line((-half, top), (half, top)),
            line((-half, foot), (half, foot)),
        ];
        strokes.extend((0..12).map(|n| {
            let y = foot + 1.2 + 4.4 * f64::from(n);
            stroke(Weight::Fine, &[(-half, y), (half, y + 4.0)])
        }));
        return strokes;
    }
    // One turn is as far from the next as the rope is thick, so that its sides are one line.
    let line = winding(1.6, 3, |far| far + THICK / 24.0);
    let (end, before) = (line[line.len() - 1], line[line.len() - 1 - ROUND]);
    let mut strokes =
        vec![stroke(Weight::Outline, &line), stroke(Weight::Outline, &[before, end])];
    // Far out a turn is longer: strands as far from each other take fewer steps.
    let mut at = 12;
    while at + ROUND + 6 < line.len() {
        strokes.push(stroke(Weight::Fine, &[line[at], line[at + ROUND + 5]]));
        at += if at < ROUND { 12 } else { 8 };
    }
    strokes
}

/// A line that winds outwards, or rings that close.
pub(super) fn spiral(winds: bool) -> Vec<Stroke> {
    if winds {
        return vec![stroke(Weight::Heavy, &winding(1.0, 4, |far| far + 5.2 / 24.0))];
    }
    [5.4, 10.6, 15.8, 21.0].map(|far| stroke(Weight::Heavy, &oval(MIDDLE, (far, far)))).to_vec()
}

/// A tube of small pieces, and the animal that built it looking out.
pub(super) fn case() -> Vec<Stroke> {
    let half = |y: f64| 6.4 + (y + 12.0) * 0.085;
    let mut strokes = Vec::new();
    for row in 0..8 {
        let (low, high) = (-12.0 + 5.2 * f64::from(row), -12.0 + 5.2 * f64::from(row + 1));
        // Pieces of three lengths by turns, no joint above another.
        let parts: [f64; 4] = match row % 3 {
            0 => [-1.0, -0.3, 0.4, 1.0],
            1 => [-1.0, -0.5, 0.1, 1.0],
            _ => [-1.0, -0.1, 0.6, 1.0],
        };
        for two in parts.windows(2) {
            let lift = if two[0] < -0.4 { 0.5 } else { -0.3 };
            let piece = [
                (two[0] * half(low), low + lift),
                (two[1] * half(low), low - lift),
                (two[1] * half(high) + 0.2, high - lift - 0.5),
                (two[0] * half(high) + 0.4, high + lift - 0.5),
                (two[0] * half(low), low + lift),
            ];
            strokes.push(stroke(Weight::Outline, &piece));
        }
    }
    let head =
        swept(&[(0.0, 30.0), (0.0, 37.0), (0.0, 42.0), (0.0, 44.4)], &[5.0, 4.6, 3.6, 1.4]);
    strokes.push(stroke(Weight::Midrib, &head));
    for (height, way) in [(32.0, (1.0, 0.5)), (34.5, (1.0, 0.9)), (37.5, (0.9, 1.2))] {
        let leg = placed(&[(0.0, 4.4), (1.2, 8.0), (-0.6, 11.5)], (0.0, height), way);
        strokes.push(stroke(Weight::Midrib, &leg));
        strokes.push(stroke(Weight::Midrib, &mirrored(&leg)));
    }
    strokes
}
