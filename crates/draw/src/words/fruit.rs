//! Words of fruits, seeds, cones and catkins: cut open where the difference is inside.
//!
//! From what is spoken of to a fruit of no kind in particular. What is a berry, a nut and a pod is
//! meant as people say it, after the word list; a botanist draws the lines elsewhere. Common
//! practice, without a source.

use spinney_model::{Stroke, Weight};

use super::skin::scallops;
use super::spoken_of;
use super::twig::wood;
use crate::pen::{Point, arc, closed, compass, mirrored, oval, placed, round, stroke};

/// What a round fruit that was cut open shows.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Cut {
    Berry,
    Nut,
    Hip,
    All,
    Seeds,
}

/// Where the middle of a round fruit is, and how large it is, in millimetres.
const MIDDLE: Point = (0.0, 12.0);
const RADIUS: f64 = 19.0;

/// A seed: a drop that points to the middle of its fruit.
fn seed(at: Point, up: Point, size: f64) -> Vec<Point> {
    let half = [(0.0, -3.4), (1.2, -1.6), (2.2, 0.6), (1.6, 2.6), (0.0, 3.4)];
    let half = round(&half.map(|(x, y)| (x * size, y * size)));
    let left: Vec<Point> = mirrored(&half).into_iter().rev().collect();
    placed(&half.into_iter().chain(left).collect::<Vec<_>>(), at, up)
}

/// A round fruit on its stalk, cut open.
pub(super) fn cut(shows: Cut) -> Vec<Stroke> {
    let (x, y) = MIDDLE;
    let top = y + RADIUS;
    let mut strokes = vec![stroke(
        Weight::Twig,
        &round(&[(x, top - 0.4), (x + 0.6, top + 8.0), (x + 3.0, top + 16.0)]),
    )];
    match shows {
        Cut::Berry | Cut::All | Cut::Seeds => {
            let skin = spoken_of(shows == Cut::All, Weight::Outline);
            strokes.push(stroke(skin, &oval(MIDDLE, (RADIUS, RADIUS))));
            for n in 0..5 {
                let way = compass(2 + n * 5);
                let at = (x + way.0 * 9.0, y + way.1 * 9.0);
                let weight = spoken_of(shows == Cut::Seeds, Weight::Outline);
                strokes.push(stroke(weight, &seed(at, way, 1.25)));
            }
        }
        Cut::Nut => {
            strokes.push(stroke(Weight::Outline, &oval(MIDDLE, (RADIUS, RADIUS))));
            strokes.push(stroke(Weight::Outline, &oval(MIDDLE, (RADIUS - 5.0, RADIUS - 5.0))));
            // The shell, hatched all round.
            for n in 0..24 {
                let (one, other) = (compass(n), compass(n + 1));
                let inner = (x + one.0 * (RADIUS - 4.6), y + one.1 * (RADIUS - 4.6));
                let outer = (x + other.0 * (RADIUS - 0.4), y + other.1 * (RADIUS - 0.4));
                strokes.push(stroke(Weight::Hatch, &[inner, outer]));
            }
            strokes.push(stroke(Weight::Outline, &oval((x, y - 0.4), (10.4, 11.6))));
        }
        Cut::Hip => {
            let half = [
                (2.4, -22.0),
                (4.4, -19.0),
                (11.0, -13.0),
                (17.6, -3.0),
                (17.4, 7.0),
                (10.0, 16.0),
                (0.0, 19.0),
            ];
            let outer = round(&half.map(|(dx, dy)| (x + dx, y + dy)));
            let hollow = [
                (1.4, -20.0),
                (2.0, -16.0),
                (8.0, -10.4),
                (13.6, -2.4),
                (13.2, 5.4),
                (7.6, 12.0),
                (0.0, 14.4),
            ];
            let inner = round(&hollow.map(|(dx, dy)| (x + dx, y + dy)));
            for line in [&outer, &inner] {
                strokes.push(stroke(Weight::Outline, line));
                strokes.push(stroke(Weight::Outline, &mirrored(line)));
            }
            // What is left of the sepals hangs at the end.
            for side in [-1.0, 1.0] {
                let foot = (side * 2.4, y - 22.0);
                let end = [(side * 7.0, y - 24.6), (side * 2.4, y - 25.2)];
                strokes.push(stroke(Weight::Outline, &[foot, end[0]]));
                strokes.push(stroke(Weight::Outline, &[(side * 1.2, y - 22.0), end[1]]));
            }
            let seeds = [
                (0.0, 8.4),
                (-7.0, 4.6),
                (7.0, 4.6),
                (-3.4, -1.6),
                (3.8, -1.6),
                (0.0, -8.6),
                (-8.8, -2.6),
                (8.8, -2.6),
            ];
            for (n, (dx, dy)) in seeds.into_iter().enumerate() {
                let way = if n % 2 == 0 { (0.2, 1.0) } else { (-0.25, 1.0) };
                strokes.push(stroke(Weight::Outline, &seed((x + dx, y + dy), way, 0.78)));
                for hair in [(-0.5, -1.0), (0.1, -1.0), (0.6, -1.0)] {
                    let foot = (x + dx, y + dy - 2.4);
                    let end = (foot.0 + hair.0 * 1.9, foot.1 + hair.1 * 2.4);
                    strokes.push(stroke(Weight::Hatch, &[foot, end]));
                }
            }
        }
    }
    if shows != Cut::Hip {
        // What is left of the flower.
        for aside in [-2.4, 0.0, 2.4] {
            strokes.push(stroke(
                Weight::Outline,
                &[(x, y - RADIUS), (x + aside, y - RADIUS - 3.2)],
            ));
        }
    }
    strokes
}

/// A long fruit that hangs, one half taken off: the seeds in a row, all on one side.
pub(super) fn pod() -> Vec<Stroke> {
    let mut strokes = hanging();
    let half = round(&[
        (0.0, 34.0),
        (4.6, 31.0),
        (6.6, 24.0),
        (6.8, 10.0),
        (6.4, -2.0),
        (4.0, -8.0),
        (0.0, -12.0),
    ]);
    strokes.push(stroke(Weight::Outline, &half));
    strokes.push(stroke(Weight::Outline, &mirrored(&half)));
    for n in 0..5 {
        let y = 26.0 - 7.6 * f64::from(n);
        strokes.push(stroke(Weight::Heavy, &oval((0.0, y), (3.4, 3.1))));
        strokes.push(stroke(Weight::Midrib, &[(3.4, y + 0.6), (6.4, y + 2.2)]));
    }
    strokes
}

/// A dry fruit that hangs: its seed near the stalk, a thin flap beyond it, which is heavy.
pub(super) fn winged() -> Vec<Stroke> {
    let mut strokes = hanging();
    let half =
        round(&[(2.6, 18.0), (5.6, 11.0), (6.8, 2.0), (6.0, -6.0), (3.2, -11.0), (0.0, -12.4)]);
    strokes.push(stroke(Weight::Heavy, &half));
    strokes.push(stroke(Weight::Heavy, &mirrored(&half)));
    let body =
        round(&[(0.0, 34.0), (2.6, 32.0), (4.2, 26.0), (3.8, 20.0), (2.0, 15.6), (0.0, 14.0)]);
    strokes.push(stroke(Weight::Outline, &body));
    strokes.push(stroke(Weight::Outline, &mirrored(&body)));
    for x in [-2.4, 0.0, 2.4] {
        let line = round(&[(x * 0.3, 13.0), (x, 4.0), (x * 1.2, -7.0)]);
        strokes.push(stroke(Weight::Fine, &line));
    }
    strokes
}

/// The end of a twig from which something hangs.
fn hanging() -> Vec<Stroke> {
    vec![
        wood((-17.0, 44.0), (17.0, 44.0), false),
        stroke(Weight::Outline, &[(0.0, 44.0), (0.0, 34.0)]),
    ]
}

/// Woody scales round a middle: hanging, each with its free end down.
pub(super) fn cone() -> Vec<Stroke> {
    let mut strokes = hanging();
    let rows = [2, 3, 4, 5, 4, 5, 4, 3, 2, 1];
    for (row, many) in rows.into_iter().enumerate() {
        let y = 34.0 - 4.4 * row as f64;
        for line in scallops(many, 7.2, (0.0, 0.0), 5.4) {
            let down: Vec<Point> = line.iter().map(|(x, up)| (*x, y - up)).collect();
            strokes.push(stroke(Weight::Outline, &down));
        }
    }
    strokes.push(stroke(Weight::Outline, &arc((0.0, 34.0), (7.2, 3.0), 0, 6)));
    strokes.push(stroke(Weight::Outline, &arc((0.0, 34.0), (7.2, 3.0), 18, 24)));
    strokes
}

/// Tiny flowers along a soft thread: hanging, each with threads that hold its dust.
pub(super) fn catkin() -> Vec<Stroke> {
    let mut strokes = hanging();
    for row in 0..13 {
        let y = 33.4 - 3.2 * f64::from(row);
        let many = if row > 10 { 13 - row } else { 3 - row % 2 };
        let wide = 3.8;
        for line in scallops(many, wide, (0.0, 0.0), 3.8) {
            let down: Vec<Point> = line.iter().map(|(x, up)| (*x, y - up)).collect();
            strokes.push(stroke(Weight::Midrib, &down));
        }
        if row < 11 {
            for side in [-1.0, 1.0] {
                let from = (side * (5.4 - 1.6 * f64::from(row % 2)), y - 1.8);
                let knob = (side * (8.4 - 1.2 * f64::from(row % 2)), y - 3.0);
                strokes.push(stroke(Weight::Fine, &[from, knob]));
                strokes.push(stroke(
                    Weight::Midrib,
                    &closed(&[
                        (knob.0, knob.1 + 0.9),
                        (knob.0 + 0.9, knob.1),
                        (knob.0, knob.1 - 0.9),
                        (knob.0 - 0.9, knob.1),
                    ]),
                ));
            }
        }
    }
    strokes
}
