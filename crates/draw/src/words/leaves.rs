//! Words of the leaf: one blade, of which one thing is otherwise or one part is heavy.
//!
//! From a parameter of the blade, or a part of it, to lines. What base, tip, edge, lobe and vein
//! are follows Ellis et al. 2009, *Manual of Leaf Architecture* (from memory).

use spinney_model::{Stroke, Weight};

use super::spoken_of;
use crate::blade::{Blade, Edge, Lobes, Shape, Tip};
use crate::leaf::{Form, LENGTH, Leaf, Line, Part, TIP};
use crate::pen::{Point, circle, round, stroke, swept};
use crate::weight;

/// A stalk a third of the blade, long enough to be pointed at.
pub(super) const STALK: f64 = 1.0 / 3.0;

/// The blade that all others are compared with.
pub(super) const PLAIN: Blade = Blade {
    shape: Shape::Egg,
    lobes: Lobes::None,
    edge: Edge::Smooth,
    tip: Tip::Usual,
    coarse: false,
};

/// A blade with lobes in two rows.
pub(super) const LOBED: Blade = Blade { lobes: Lobes::Feather(7), ..PLAIN };

/// A blade with lobes from one point.
pub(super) const HAND_LOBED: Blade = Blade { lobes: Lobes::Hand(5), ..PLAIN };

/// The plain blade with another edge.
pub(super) fn edged(edge: Edge) -> Blade {
    Blade { edge, ..PLAIN }
}

/// The same with fewer and larger teeth.
pub(super) fn coarse(edge: Edge) -> Blade {
    Blade { edge, coarse: true, ..PLAIN }
}

/// An oval blade with another tip.
pub(super) fn tipped(tip: Tip) -> Blade {
    Blade { shape: Shape::Oval, tip, ..PLAIN }
}

/// The lines of a leaf with a blade, in parts.
pub(super) fn lines(form: Form, blade: Blade) -> Vec<Line> {
    Leaf { form, blade, stalk: Some(STALK), ..Leaf::default() }.lines()
}

/// A leaf of plain blades, some of its parts heavy.
pub(super) fn leaf(form: Form, heavy: impl Fn(Part) -> bool) -> Vec<Stroke> {
    let of = |part| if heavy(part) { Weight::Heavy } else { weight(part) };
    lines(form, PLAIN).iter().map(|line| stroke(of(line.part), &line.points)).collect()
}

/// A leaf in one piece.
pub(super) fn one(blade: Blade) -> Vec<Stroke> {
    let lines = lines(Form::OnePiece, blade);
    lines.iter().map(|line| stroke(weight(line.part), &line.points)).collect()
}

/// The plain leaf with a ring round a place at this height.
pub(super) fn ringed(height: f64) -> Vec<Stroke> {
    let mut strokes = one(PLAIN);
    strokes.push(stroke(Weight::Heavy, &circle((0.0, height), 5.0)));
    strokes
}

/// A leaf with one stretch of its edge heavy: from hollow to hollow, or from top to top.
pub(super) fn stretch(blade: Blade, nth: usize, gap: bool) -> Vec<Stroke> {
    let lines = lines(Form::OnePiece, blade);
    let edge = lines.iter().find(|line| line.part == Part::Edge).expect("a blade has an edge");
    let right = &edge.points[..edge.points.len() / 2];
    // Where the edge turns back towards the midrib, or away from it.
    let turns: Vec<usize> = (1..right.len() - 1)
        .filter(|at| {
            let [before, here, after] = [at - 1, *at, at + 1].map(|n| right[n].0);
            if gap { before < here && here >= after } else { before > here && here <= after }
        })
        .collect();
    let mut strokes = one(blade);
    if let [from, to] = turns[nth..nth + 2] {
        strokes.push(stroke(Weight::Heavy, &right[from..=to]));
    }
    strokes
}

/// Two side veins of the plain leaf, heavy.
pub(super) fn vein_pair() -> Vec<Stroke> {
    let mut strokes = one(PLAIN);
    let veins = strokes.iter_mut().filter(|stroke| stroke.weight == Weight::Fine);
    veins.skip(4).take(2).for_each(|stroke| stroke.weight = Weight::Heavy);
    strokes
}

/// The plain leaf with lines across its blade, from edge to edge.
pub(super) fn hatched() -> Vec<Stroke> {
    let across = (1..LENGTH as u32 / 2).filter_map(|n| {
        let y = f64::from(n) * 2.0;
        let half = PLAIN.half_width(LENGTH, LENGTH * PLAIN.usual_width(), y)? * 0.9;
        let at = |x: f64, aside: f64| (x, TIP - LENGTH + y + aside);
        Some(stroke(Weight::Hatch, &[at(-half, -0.8), at(half, 0.8)]))
    });
    across.chain(one(PLAIN)).collect()
}

/// A blade one half of which begins lower on the stalk than the other.
pub(super) fn lopsided() -> Vec<Stroke> {
    let width = LENGTH * PLAIN.usual_width();
    let lower = LENGTH * 0.1;
    let right = PLAIN.side(LENGTH, width * 0.86);
    // The lower half is as high at the tip and larger all the way down.
    let left = PLAIN.side(LENGTH + lower, width * 1.14);
    let left = left.iter().rev().map(|(x, y)| (-x, y - lower));
    let up = |(x, y): Point| (x, y + TIP - LENGTH);
    let outline: Vec<Point> = right.iter().copied().chain(left).map(up).collect();
    let mut strokes = one(PLAIN);
    strokes.retain(|stroke| stroke.weight != Weight::Outline);
    let foot = TIP - LENGTH;
    strokes.push(stroke(Weight::Outline, &outline));
    strokes
        .push(stroke(Weight::Outline, &[(0.0, foot), (0.0, foot - lower), (1.5, foot - 12.0)]));
    strokes
}

/// An oval blade whose sides run straight to the stalk: the oval one drawn in below its middle.
pub(super) fn wedge() -> Vec<Stroke> {
    let mut strokes = one(tipped(Tip::Pointed));
    let (foot, widest) = (TIP - LENGTH, LENGTH / 2.0);
    for (x, y) in strokes.iter_mut().flat_map(|stroke| &mut stroke.points) {
        let part = (-*y - foot) / widest;
        if part > 0.0 && part < 1.0 {
            // A line that is straight at the foot and upright at the middle, against a quarter
            // of an oval.
            let straight = part * (1.5 - 0.5 * part * part);
            *x *= straight / (part * (2.0 - part)).sqrt();
        }
    }
    strokes
}

/// The plain leaf, its veins heavy: side veins in two rows from a midrib.
pub(super) fn veins_of_feather() -> Vec<Stroke> {
    leaf(Form::OnePiece, |part| matches!(part, Part::Midrib | Part::Veins))
}

/// The same with five veins that all start where the stalk comes in.
pub(super) fn veins_of_hand() -> Vec<Stroke> {
    let mut strokes = leaf(Form::OnePiece, |part| part == Part::Midrib);
    strokes.retain(|stroke| stroke.weight != Weight::Fine);
    let width = LENGTH * PLAIN.usual_width();
    for side in [-1.0, 1.0] {
        for (bend, end) in [((0.2, 0.2), (0.31, 0.6)), ((0.25, 0.07), (0.4, 0.24))] {
            let at = |(x, y): Point| (x * width * side, TIP - LENGTH + y * LENGTH);
            strokes.push(stroke(Weight::Heavy, &round(&[at((0.0, 0.0)), at(bend), at(end)])));
        }
    }
    strokes
}

/// Seven leaflets in pairs and one at the end, some of them heavy, counted from the stalk.
pub(super) fn leaflets(heavy: &[usize]) -> Vec<Stroke> {
    let mut leaflet = 0;
    let lines = lines(Form::Feather(7), PLAIN);
    let drawn = lines.iter().map(|line| {
        let edge = line.part == Part::Edge;
        let spoken = edge && heavy.contains(&leaflet);
        leaflet += usize::from(edge);
        stroke(spoken_of(spoken, weight(line.part)), &line.points)
    });
    drawn.collect()
}

/// The plain leaf from below, where the veins are cords.
pub(super) fn underside() -> Vec<Stroke> {
    let lines = lines(Form::OnePiece, PLAIN);
    let cord = |line: &Line| {
        let (foot, end) = match line.part {
            Part::Stalk => (1.3, 1.7),
            Part::Midrib => (1.3, 0.5),
            _ => (0.75, 0.3),
        };
        let many = (line.points.len() - 1) as f64;
        let halves: Vec<f64> =
            (0..line.points.len()).map(|n| foot + (end - foot) * n as f64 / many).collect();
        stroke(Weight::Hatch, &swept(&line.points, &halves))
    };
    let drawn = lines.iter().map(|line| match line.part {
        Part::Stalk | Part::Midrib | Part::Veins => cord(line),
        part => stroke(weight(part), &line.points),
    });
    drawn.collect()
}
