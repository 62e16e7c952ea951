//! Words of leaves on a twig: where they stand, and what sits beside them.
//!
//! From what is spoken of to a twig with its leaves, needles or scales. Where buds and stipules
//! stand is common practice, without a source.

use spinney_model::{Stroke, Weight};

use super::leaves::STALK;
use super::skin::scallops;
use super::spoken_of;
use crate::blade::{Blade, Shape};
use crate::leaf::{Form, Leaf, Line, Part};
use crate::pen::{Point, circle, mirrored, one_long, placed, round, stroke};
use crate::weight;

/// What a twig with one leaf shows.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Lesson {
    Leaf,
    Leaflet,
    Bud,
    Gall,
}

/// Leaves at some heights of a twig, and the ways in which they point.
type Leaves = &'static [(f64, &'static [Point])];

pub(super) const OPPOSITE: Leaves =
    &[(30.0, &[(-1.0, 0.5), (1.0, 0.5)]), (8.0, &[(-1.0, 0.5), (1.0, 0.5)])];
pub(super) const ALTERNATE: Leaves = &[
    (36.0, &[(-1.0, 0.5)]),
    (25.0, &[(1.0, 0.5)]),
    (14.0, &[(-1.0, 0.5)]),
    (3.0, &[(1.0, 0.5)]),
];
pub(super) const WHORL: Leaves = &[
    (30.0, &[(-1.0, 0.3), (0.35, 1.0), (1.0, 0.3)]),
    (4.0, &[(-1.0, 0.3), (0.35, 1.0), (1.0, 0.3)]),
];

/// A line of the twig.
pub(super) fn wood(from: Point, to: Point, heavy: bool) -> Stroke {
    stroke(spoken_of(heavy, Weight::Twig), &[from, to])
}

/// A bud that sits at a place and points somewhere, so large.
pub(super) fn bud(at: Point, up: Point, size: f64, heavy: bool) -> Stroke {
    let half = [(0.0, 0.0), (1.5, 0.9), (1.9, 2.4), (1.3, 4.6), (0.0, 6.6)];
    let half = half.map(|(x, y)| (x * size, y * size));
    let half = round(&half);
    let left = mirrored(&half).into_iter().rev().skip(1);
    let outline: Vec<Point> = half.iter().copied().chain(left).collect();
    stroke(spoken_of(heavy, Weight::Outline), &placed(&outline, at, up))
}

/// A leaf on a twig: the lines of a leaf from the end of its stalk, so large, growing somewhere.
fn grown(leaf: &Leaf, at: Point, up: Point, size: f64) -> Vec<Line> {
    let mut lines = leaf.lines();
    let stalk = lines.iter().filter(|line| line.part == Part::Stalk);
    let feet = stalk.flat_map(|line| line.points.iter().copied());
    let foot = feet.min_by(|one, other| one.1.total_cmp(&other.1)).unwrap_or((0.0, 0.0));
    for line in &mut lines {
        let sized: Vec<Point> = line
            .points
            .iter()
            .map(|(x, y)| ((x - foot.0) * size, (y - foot.1) * size))
            .collect();
        line.points = placed(&sized, at, up);
    }
    lines
}

/// A leaf of five leaflets, or one in one piece, with a stalk that can be pointed at.
fn of_five(form: Form) -> Leaf {
    Leaf { form, stalk: Some(STALK), ..Leaf::default() }
}

/// A leaf that grows from a twig, its parts as heavy as said of the line and its number.
fn on_twig(leaf: &Leaf, at: Point, heavy: impl Fn(usize, Part) -> bool) -> Vec<Stroke> {
    let lines = grown(leaf, at, one_long((0.62, 0.8)), 0.86);
    let drawn = lines.iter().enumerate().map(|(n, line)| {
        stroke(spoken_of(heavy(n, line.part), weight(line.part)), &line.points)
    });
    drawn.collect()
}

/// The line of the fourth leaflet.
fn fourth(leaf: &Leaf) -> Option<usize> {
    let lines = leaf.lines();
    let edges = lines.iter().enumerate().filter(|(_, line)| line.part == Part::Edge);
    edges.map(|(n, _)| n).nth(3)
}

/// The lesson of leaf and leaflet: the bud stands in the angle above the stalk, and everything
/// beyond it is one leaf.
pub(super) fn lesson(shows: Lesson) -> Vec<Stroke> {
    let form = match shows {
        Lesson::Bud | Lesson::Gall => Form::OnePiece,
        Lesson::Leaf | Lesson::Leaflet => Form::Feather(5),
    };
    let leaf = of_five(form);
    let leaflet = fourth(&leaf);
    let mut strokes = vec![wood((-14.0, -12.0), (-14.0, 46.0), false)];
    strokes.extend(on_twig(&leaf, (-14.0, -5.0), |n, part| match shows {
        Lesson::Leaf => matches!(part, Part::Edge | Part::Stalk),
        Lesson::Leaflet => Some(n) == leaflet,
        Lesson::Bud | Lesson::Gall => false,
    }));
    strokes.push(bud((-13.2, -2.6), (0.22, 1.0), 1.0, shows == Lesson::Bud));
    if shows == Lesson::Gall {
        strokes.push(stroke(Weight::Heavy, &circle((-12.4, 26.0), 3.6)));
    }
    strokes
}

/// A leaf stalk and the twig that it comes from, one of them heavy.
pub(super) fn stalk_or_twig(stalk: bool) -> Vec<Stroke> {
    let leaf = Leaf { stalk: Some(0.6), ..Leaf::default() };
    let mut strokes = vec![wood((-12.0, -12.0), (-12.0, 46.0), !stalk)];
    for line in grown(&leaf, (-12.0, -6.0), one_long((0.6, 0.8)), 0.86) {
        let heavy = stalk && line.part == Part::Stalk;
        strokes.push(stroke(spoken_of(heavy, weight(line.part)), &line.points));
    }
    for (height, side) in [(-3.4, 1.0), (14.0, -1.0), (31.0, 1.0)] {
        strokes.push(bud((-12.0 + 0.8 * side, height), (0.3 * side, 1.0), 1.0, false));
    }
    strokes
}

/// A leaf with two leafy parts at its foot: these or a leaflet heavy.
pub(super) fn stipules(heavy: bool) -> Vec<Stroke> {
    let leaf = of_five(Form::Feather(5));
    let leaflet = fourth(&leaf);
    let at = (-14.0, -5.0);
    let mut strokes = vec![wood((-14.0, -12.0), (-14.0, 46.0), false)];
    strokes.extend(on_twig(&leaf, at, |n, _| !heavy && Some(n) == leaflet));
    let (outline, rib) = leafy(8.5, 4.6);
    for way in [(-0.8, 0.6), (1.0, -0.05)] {
        let foot = placed(&[(0.0, 1.2)], at, way)[0];
        strokes.push(stroke(spoken_of(heavy, Weight::Outline), &placed(&outline, foot, way)));
        strokes.push(stroke(Weight::Fine, &placed(&rib, foot, way)));
    }
    strokes
}

/// Two knobs where the blade meets its stalk, and a bud on the twig: one of both heavy.
pub(super) fn glands(heavy: bool) -> Vec<Stroke> {
    let leaf = Leaf { stalk: Some(0.6), ..Leaf::default() };
    let mut strokes = vec![wood((-14.0, -12.0), (-14.0, 46.0), false)];
    let (at, up) = ((-14.0, -6.0), one_long((0.62, 0.8)));
    let lines = grown(&leaf, at, up, 0.86);
    strokes.extend(lines.iter().map(|line| stroke(weight(line.part), &line.points)));
    let stalk = lines.iter().find(|line| line.part == Part::Stalk).expect("it has a stalk");
    // A little below the place where the stalk comes into the blade.
    let top = stalk.points[0];
    for (aside, below) in [(-2.0, 1.6), (2.2, 2.0)] {
        let knob = placed(&[(aside, -below)], top, up)[0];
        strokes.push(stroke(spoken_of(heavy, Weight::Outline), &circle(knob, 1.7)));
    }
    strokes.push(bud((-13.2, -3.4), (0.22, 1.0), 1.0, !heavy));
    strokes
}

/// A thread that winds itself up, and a leaf beside it: the thread or the leaf stalk heavy.
pub(super) fn tendril(heavy: bool) -> Vec<Stroke> {
    let leaf = Leaf { stalk: Some(0.6), ..Leaf::default() };
    let mut strokes = vec![wood((-8.0, -12.0), (-8.0, 46.0), false)];
    for line in grown(&leaf, (-8.0, -6.0), one_long((0.6, 0.8)), 0.74) {
        let stalk = !heavy && line.part == Part::Stalk;
        strokes.push(stroke(spoken_of(stalk, weight(line.part)), &line.points));
    }
    // A wheel that rolls up the page and leaves loops behind.
    let wheel = circle((0.0, 0.0), 1.0);
    let mut thread = round(&[(-8.0, -6.0), (-13.0, -1.0), (-17.0, 6.0), (-17.8, 12.0)]);
    for n in 1..72 {
        let way = f64::from(n) / 24.0;
        let (x, y) = wheel[(n as usize + 18) % 24];
        let radius = 4.2 - way * 0.8;
        thread.push((-17.8 + (x + 1.0) * radius, 12.0 + way * 7.5 + y * radius));
    }
    strokes.push(stroke(spoken_of(heavy, Weight::Outline), &thread));
    strokes
}

/// A twig with needles.
pub(super) fn needles() -> Vec<Stroke> {
    let mut strokes = vec![wood((0.0, -12.0), (0.0, 36.0), false)];
    for n in 0..13 {
        for side in [-1.0, 1.0] {
            let at = (0.0, -6.0 + 3.2 * f64::from(n) + side * 0.5);
            strokes.push(needle(17.0, at, (side, 0.55)));
        }
    }
    strokes
}

/// One needle, so long.
fn needle(long: f64, at: Point, way: Point) -> Stroke {
    let half = [(-0.3, 0.0), (-0.5, 1.0), (-0.5, long - 1.5), (0.0, long)];
    let outline: Vec<Point> =
        half.into_iter().chain([(0.5, long - 1.5), (0.5, 1.0), (0.3, 0.0)]).collect();
    stroke(Weight::Midrib, &placed(&outline, at, way))
}

/// A twig with needles that come in bunches of five, each bunch out of one place.
pub(super) fn bunches() -> Vec<Stroke> {
    let mut strokes = vec![wood((0.0, -12.0), (0.0, 32.0), false)];
    for (height, side) in [(-4.0, 1.0), (6.0, -1.0), (16.0, 1.0), (26.0, -1.0)] {
        let knob = (side * 1.6, height + 0.8);
        strokes.push(stroke(Weight::Outline, &[(0.0, height), knob]));
        for (x, y) in [(1.0, 0.0), (1.0, 0.3), (1.0, 0.62), (0.9, 1.0), (0.5, 1.1)] {
            strokes.push(needle(18.0, knob, (x * side, y)));
        }
    }
    strokes
}

/// A twig whose leaves are scales that lie on each other: a middle shoot and two at its sides.
pub(super) fn scales() -> Vec<Stroke> {
    let mut strokes = Vec::new();
    let shoots: [(Point, Point, u32); 3] = [
        ((0.0, -12.0), (0.0, 1.0), 14),
        ((5.2, 3.0), (0.75, 1.0), 5),
        ((-5.2, 11.0), (-0.75, 1.0), 5),
    ];
    for (at, way, rows) in shoots {
        for row in 0..rows {
            // Towards the end of a shoot they are smaller.
            let size = 3.6 - 1.3 * f64::from(row) / f64::from(rows);
            let many = 1 + (row + 1) % 2;
            let lines = scallops(many, size * 1.25, (0.0, f64::from(row) * 4.0), 5.2);
            strokes.extend(
                lines.iter().map(|line| stroke(Weight::Outline, &placed(line, at, way))),
            );
        }
        let end = placed(&[(0.0, f64::from(rows) * 4.0)], at, way)[0];
        let tip = scallops(1, 2.6, (0.0, 0.0), 4.4);
        strokes.extend(tip.iter().map(|line| stroke(Weight::Outline, &placed(line, end, way))));
    }
    strokes
}

/// A small leaf without a stalk: its outline and its midrib.
pub(super) fn leafy(length: f64, width: f64) -> (Vec<Point>, [Point; 2]) {
    let blade = Blade { shape: Shape::Leaflet, ..Blade::default() };
    (blade.outline(length, width), [(0.0, 0.0), (0.0, length * 0.92)])
}

/// A small leaf on a stalk.
pub(super) fn small_leaf(at: Point, way: Point, length: f64, stalk: Weight) -> [Stroke; 3] {
    let (outline, rib) = leafy(length, length * 0.5);
    let foot = placed(&[(0.0, 0.0), (0.0, length * 0.215)], at, way);
    [
        stroke(stalk, &foot),
        stroke(Weight::Outline, &placed(&outline, foot[1], way)),
        stroke(Weight::Fine, &placed(&rib, foot[1], way)),
    ]
}

/// A twig with leaves at some heights.
pub(super) fn leaves(leaves: Leaves) -> Vec<Stroke> {
    let mut strokes = vec![wood((0.0, -12.0), (0.0, 47.0), false)];
    for (height, ways) in leaves {
        for way in *ways {
            strokes.extend(small_leaf((0.0, *height), *way, 14.0, Weight::Outline));
        }
    }
    strokes
}

/// Two leaves, one at each height, whose leaflets stand in pairs; a bud above each stalk.
pub(super) fn paired_leaflets() -> Vec<Stroke> {
    let leaf = of_five(Form::Feather(5));
    let mut strokes = vec![wood((0.0, -12.0), (0.0, 47.0), false)];
    for (height, side) in [(-4.0, 1.0), (14.0, -1.0)] {
        for line in grown(&leaf, (0.0, height), one_long((0.8 * side, 0.6)), 0.56) {
            let slim = match weight(line.part) {
                Weight::Outline => Weight::Midrib,
                other => other,
            };
            strokes.push(stroke(slim, &line.points));
        }
        strokes.push(bud((0.6 * side, height + 1.8), (0.35 * side, 1.0), 1.0, false));
    }
    strokes
}
