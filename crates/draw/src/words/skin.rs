//! Words of the surface: hairs, bristles, ribs, scales.
//!
//! From what is on a surface to its lines. Common practice, without a source.

use spinney_model::{Stroke, Weight};

use super::leaves::{PLAIN, coarse, lines, one};
use crate::blade::Edge;
use crate::leaf::{Form, LENGTH, Part, TIP};
use crate::pen::{Point, Way, arc, closed, compass, mirrored, one_long, oval, stroke};

/// Length of a hair, in millimetres: it shows where the drawing is as high as a thumb is wide.
const HAIR: f64 = 3.4;

/// Length of a bristle, in millimetres.
const BRISTLE: f64 = 4.6;

/// Lines that stand out from a line, so long and so far apart.
pub(super) fn hairs_along(points: &[Point], long: f64, apart: f64) -> Vec<[Point; 2]> {
    let way = Way::of(points);
    let many = (way.long() / apart).round().max(2.0);
    let hair = |n: u32| {
        let along = way.long() * f64::from(n) / many;
        [way.at(along, 0.3), way.at((along + 0.8).min(way.long()), long)]
    };
    (1..many as u32).map(hair).collect()
}

/// The plain leaf with hairs: along its edge, and all over if wished.
pub(super) fn hairs(all_over: bool) -> Vec<Stroke> {
    let mut strokes = one(PLAIN);
    let width = LENGTH * PLAIN.usual_width();
    let up = |(x, y): Point| (x, y + TIP - LENGTH);
    for hair in hairs_along(&PLAIN.side(LENGTH, width), HAIR, 2.8) {
        let hair = hair.map(up);
        strokes.push(stroke(Weight::Hatch, &hair));
        strokes.push(stroke(Weight::Hatch, &mirrored(&hair)));
    }
    if all_over {
        for row in 0..9 {
            let y = 2.4 + 3.4 * f64::from(row);
            let half = PLAIN.half_width(LENGTH, width, y).unwrap_or(0.0) - 1.6;
            for place in 0..4 {
                let x = 1.6 + 3.2 * f64::from(place) + if row % 2 == 0 { 0.0 } else { 1.6 };
                if x < half {
                    let hair = [(x, y), (x + 0.9, y + 2.0)].map(up);
                    strokes.push(stroke(Weight::Hatch, &hair));
                    strokes.push(stroke(Weight::Hatch, &mirrored(&hair)));
                }
            }
        }
    }
    strokes
}

/// A leaf with a stiff hair at the end of each tooth.
pub(super) fn bristles() -> Vec<Stroke> {
    let blade = coarse(Edge::Toothed);
    let mut strokes = one(blade);
    let lines = lines(Form::OnePiece, blade);
    let edge = lines.iter().find(|line| line.part == Part::Edge).expect("a blade has an edge");
    let right = &edge.points[..edge.points.len() / 2];
    for three in right.windows(3) {
        let [before, tooth, after] = [three[0], three[1], three[2]];
        let comes = one_long((tooth.0 - before.0, tooth.1 - before.1));
        let goes = one_long((after.0 - tooth.0, after.1 - tooth.1));
        // Its top: the line turns sharply inwards.
        if comes.0 * goes.1 - comes.1 * goes.0 > 0.6 {
            let out = one_long((comes.0 - goes.0, comes.1 - goes.1));
            let bristle = [tooth, (tooth.0 + out.0 * BRISTLE, tooth.1 + out.1 * BRISTLE)];
            strokes.push(stroke(Weight::Hatch, &bristle));
            strokes.push(stroke(Weight::Hatch, &mirrored(&bristle)));
        }
    }
    strokes
}

/// A round piece, cut across: lines that stand up, as the cut shows, or lines of colour alone.
pub(super) fn piece(ribs: bool) -> Vec<Stroke> {
    let (top, foot, wide, deep) = (33.0, -5.0, 16.0, 6.4);
    let cut = |height: f64| -> Vec<Point> {
        let point = |n: usize| {
            let (x, y) = compass(n);
            let out = match (ribs, n.is_multiple_of(2)) {
                (true, true) => 1.12,
                (true, false) => 0.86,
                (false, _) => 1.0,
            };
            (x * wide * out, height + y * deep * out)
        };
        (0..24).map(point).collect()
    };
    let whole = if ribs { closed(&cut(top)) } else { oval((0.0, top), (wide, deep)) };
    let front = match ribs {
        // Four points between every two of the cut.
        true => closed(&cut(foot))[24..=72].to_vec(),
        false => arc((0.0, foot), (wide, deep), 6, 18),
    };
    let mut strokes = vec![stroke(Weight::Outline, &whole), stroke(Weight::Outline, &front)];
    let (above, below) = (cut(top), cut(foot));
    for n in 6..=18 {
        let edge = n == 6 || n == 18;
        if edge || n % 2 == 0 {
            let line = [above[n], below[n]];
            let weight = if edge { Weight::Outline } else { Weight::Hatch };
            strokes.push(stroke(weight, &line));
        }
    }
    strokes
}

/// The free ends of scales side by side, so many and so wide, their ends upwards, so high.
pub(super) fn scallops(many: u32, wide: f64, at: Point, high: f64) -> Vec<Vec<Point>> {
    let scale = |n: u32| {
        let x = at.0 + (f64::from(n) + 0.5 - f64::from(many) / 2.0) * wide;
        // From the left end over the top to the right one.
        let half = (wide / 2.0, high);
        let left = arc((x, at.1), half, 18, 24);
        left.into_iter().chain(arc((x, at.1), half, 0, 6)).collect()
    };
    (0..many).map(scale).collect()
}
