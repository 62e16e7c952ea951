//! A leaf blade as an outline: from its shape, lobes and edge to points in millimetres.
//!
//! The parameters are those by which people tell leaves apart; two drawings that differ in one
//! of them differ in nothing else. The shape gives a round line from base to tip, lobes another
//! one, and the edge is cut into either.

use super::outlines::{
    EGG, FEATHER_LOBED, HAND_LOBED, HEART, LEAFLET, LOBED, NARROW, NEEDLE, ROUND,
};
use super::pen::{Point, Way, round};

/// How a blade goes from base to tip.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Shape {
    /// Broadest below the middle; also where nobody said.
    #[default]
    Egg,
    Heart,
    Round,
    Narrow,
    Needle,
    /// An egg with a drawn-out base: a part of a leaf in several pieces.
    Leaflet,
}

/// How deep cuts divide a blade.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Lobes {
    #[default]
    None,
    /// Lobed, nobody said how.
    Some,
    /// Deep, in rows on both sides of the midrib.
    Feather,
    /// All from the foot of the blade.
    Hand,
}

/// How the edge is cut.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Edge {
    /// A plain line: smooth, or nobody said.
    #[default]
    Plain,
    Toothed,
    DoubleToothed,
    Spiny,
}

/// A blade in one piece, or a leaflet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Blade {
    pub(crate) shape: Shape,
    pub(crate) lobes: Lobes,
    pub(crate) edge: Edge,
}

/// From tooth to tooth on a blade of 36 mm; smaller blades have fewer teeth, not finer ones.
const TOOTH: f64 = 3.6;
/// The fewest teeth to a side: fewer look like lobes.
const FEWEST_TEETH: f64 = 4.0;
/// From spine to spine.
const SPINE: f64 = 7.4;
/// Points from spine to spine.
const HOLLOW: u32 = 8;

impl Blade {
    /// Its width in parts of its length, where nobody measured it.
    pub(crate) fn usual_width(self) -> f64 {
        match (self.lobes, self.shape) {
            (Lobes::Hand, _) => 1.0,
            (Lobes::Some | Lobes::Feather, _) => 0.78,
            (Lobes::None, Shape::Egg) => 24.0 / 36.0,
            (Lobes::None, Shape::Heart) => 0.84,
            (Lobes::None, Shape::Round) => 0.96,
            (Lobes::None, Shape::Narrow) => 0.24,
            (Lobes::None, Shape::Leaflet) => 0.5,
            (Lobes::None, Shape::Needle) => 0.05,
        }
    }

    /// The right-hand line from the base at (0, 0) up to the tip, the edge not yet cut.
    fn plain_side(self, length: f64, width: f64) -> Vec<Point> {
        let runs: &[&[Point]] = match (self.lobes, self.shape) {
            (Lobes::Some, _) => &[LOBED],
            (Lobes::Feather, _) => &[FEATHER_LOBED],
            (Lobes::Hand, _) => HAND_LOBED,
            (Lobes::None, Shape::Egg) => &[EGG],
            (Lobes::None, Shape::Heart) => &[HEART],
            (Lobes::None, Shape::Round) => &[ROUND],
            (Lobes::None, Shape::Narrow) => &[NARROW],
            (Lobes::None, Shape::Leaflet) => &[LEAFLET],
            (Lobes::None, Shape::Needle) => &[NEEDLE],
        };
        let mut points: Vec<Point> = Vec::new();
        for run in runs {
            points.pop();
            points.extend(round(run).into_iter().map(|(x, y)| (x * width, y * length)));
        }
        points
    }

    /// The right-hand side with its edge.
    pub(super) fn side(self, length: f64, width: f64) -> Vec<Point> {
        let plain = self.plain_side(length, width);
        // Lobes are narrower than a blade: finer teeth follow their hollows.
        let large = if self.lobes == Lobes::None { 1.0 } else { 0.72 };
        match self.edge {
            _ if self.shape == Shape::Needle => plain,
            Edge::Plain => plain,
            Edge::Toothed => teeth(&plain, width, large, false),
            Edge::DoubleToothed => teeth(&plain, width, 1.9 * large, true),
            Edge::Spiny => spines(&plain, width, large),
        }
    }

    /// The whole outline, from the base round the tip and back.
    pub(crate) fn outline(self, length: f64, width: f64) -> Vec<Point> {
        let right = self.side(length, width);
        let left = right.iter().rev().skip(1).map(|(x, y)| (-x, *y));
        right.iter().copied().chain(left).collect()
    }

    /// Side veins of the right-hand half: from the midrib to near the edge, or into each lobe.
    pub(crate) fn side_veins(self, length: f64, width: f64) -> Vec<Vec<Point>> {
        let at = |(x, y): Point| (x * width, y * length);
        let into = |veins: &[[Point; 3]]| {
            veins.iter().map(|vein| round(&vein.map(at))).collect::<Vec<_>>()
        };
        match (self.lobes, self.shape) {
            (Lobes::Some, _) => into(&[
                [(0.0, 0.05), (0.17, 0.1), (0.35, 0.18)],
                [(0.0, 0.3), (0.2, 0.375), (0.42, 0.465)],
                [(0.0, 0.55), (0.15, 0.615), (0.31, 0.71)],
            ]),
            (Lobes::Feather, _) => into(&[
                [(0.0, 0.06), (0.12, 0.09), (0.26, 0.14)],
                [(0.0, 0.24), (0.18, 0.3), (0.38, 0.375)],
                [(0.0, 0.46), (0.18, 0.52), (0.41, 0.61)],
                [(0.0, 0.67), (0.13, 0.72), (0.29, 0.8)],
            ]),
            (Lobes::Hand, _) => into(&[
                [(0.0, 0.0), (0.18, 0.035), (0.36, 0.065)],
                [(0.0, 0.0), (0.19, 0.25), (0.42, 0.525)],
            ]),
            (Lobes::None, Shape::Needle) => Vec::new(),
            (Lobes::None, _) => self.feathered(length, width),
        }
    }

    /// From the midrib to the edge at a height, above which the blade only gets narrower; None:
    /// it has ended.
    pub(crate) fn half_width(self, length: f64, width: f64, height: f64) -> Option<f64> {
        let plain = self.plain_side(length, width);
        // Where the blade is broadest the line begins to come back to the midrib.
        let broadest = plain.iter().position(|(x, _)| *x >= width * 0.48).unwrap_or(0);
        let low = height < plain[broadest].1;
        let mut edge = plain.iter().enumerate();
        let edge = edge.find(|(at, (_, y))| *y >= height && (low || *at > broadest));
        edge.map(|(_, (x, _))| *x)
    }

    /// Five veins that bend towards the tip.
    fn feathered(self, length: f64, width: f64) -> Vec<Vec<Point>> {
        let vein = |n: u32| {
            let from = (0.04 + 0.15 * f64::from(n)) * length;
            let rise = (0.28 - 0.03 * f64::from(n)) * width.min(length * 0.75);
            let to = from + rise;
            let reach = self.half_width(length, width, to).unwrap_or(0.0) * 0.84;
            round(&[(0.0, from), (reach * 0.55, from + rise * 0.42), (reach, to)])
        };
        (0..5).map(vein).collect()
    }
}

/// How high a cut may stand at a place: less towards base and tip, where the sides meet, and
/// nothing in the hollow between two lobes, where it would cross its neighbour.
fn room(way: &Way<'_>, along: f64) -> f64 {
    let (base, tip) = (along / way.long() / 0.2, (way.long() - along) / way.long() / 0.16);
    let hollow = [-1.4, 0.0, 1.4].iter().any(|near| way.hollow(along + near, 1.9));
    if hollow { 0.0 } else { base.min(tip).clamp(0.0, 1.0) }
}

/// Teeth like those of a saw, their points towards the tip; small ones on the big ones if wished.
fn teeth(plain: &[Point], width: f64, large: f64, double: bool) -> Vec<Point> {
    let way = Way::of(plain);
    let many = (way.long() / TOOTH / large).round().max(FEWEST_TEETH);
    let step = way.long() / many;
    let high = (step * 0.42).min(width * 0.17);
    let mut points = vec![plain[0]];
    for tooth in 0..many as u32 {
        let from = (f64::from(tooth) + 0.3) * step;
        let mut go = |part: f64, out: f64| {
            let along = from + step * part;
            if along < way.long() {
                points.push(way.at(along, high * out * room(&way, along)));
            }
        };
        go(0.0, 0.0);
        if double {
            go(0.2, 0.39);
            go(0.4, 0.78);
            go(0.46, 0.36);
            go(0.66, 0.68);
        } else {
            go(0.4, 0.68);
        }
        go(0.86, 1.0);
    }
    points.push(plain[plain.len() - 1]);
    points
}

/// Hollows between spines: a parabola with its ends drawn out to points.
fn spines(plain: &[Point], width: f64, large: f64) -> Vec<Point> {
    let way = Way::of(plain);
    let many = (way.long() / SPINE / large).round().max(3.0);
    let step = way.long() / many;
    let high = step.min(width * 0.35);
    // Between two spines of a lobe it is no hollower: its tip has no room for that.
    let deep = if large < 1.0 { 0.0 } else { 0.13 };
    let mut points = vec![plain[0]];
    for hollow in 0..many as u32 {
        for part in 1..=HOLLOW {
            let along = f64::from(part) / f64::from(HOLLOW);
            let end = (2.0 * along - 1.0) * (2.0 * along - 1.0);
            let at = (f64::from(hollow) + along) * step;
            if at < way.long() - step * 0.01 {
                let out = high * (0.5 * end * end * end - deep);
                points.push(way.at(at, out * room(&way, at)));
            }
        }
    }
    points.push(plain[plain.len() - 1]);
    points
}
