//! A leaf blade as an outline: from its shape, lobes, edge and tip to points in millimetres.
//!
//! The parameters are those by which people tell leaves apart; two drawings that differ in one
//! of them differ in nothing else. The shape gives a round line from base to tip, lobes another
//! one, and the edge is cut into either.
//!
//! Source: what is a lobe, a tooth, a base and a tip, and where a blade is widest (ovate,
//! elliptic, obovate), as Ellis et al. 2009, *Manual of Leaf Architecture*, has it (from memory).

use super::outlines::{self, EGG, HEART, LEAFLET, NARROW, ROUND};
use super::pen::{Point, Way, round};

/// How a blade goes from base to tip.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Shape {
    /// Widest below the middle; also where nobody said.
    #[default]
    Egg,
    /// Widest in the middle.
    Oval,
    /// Widest above the middle.
    Upper,
    Heart,
    Round,
    Narrow,
    /// An oval with a drawn-out base: a part of a leaf in several pieces.
    Leaflet,
}

/// How deep cuts divide a blade: so many lobes, the one at the tip among them.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Lobes {
    #[default]
    None,
    /// In rows on both sides of the midrib.
    Feather(u32),
    /// All from the foot of the blade.
    Hand(u32),
}

/// How the edge is cut.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Edge {
    #[default]
    Smooth,
    Wavy,
    Toothed,
    DoubleToothed,
    Spiny,
}

/// How the blade ends.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Tip {
    /// As the shape has it: nobody said.
    #[default]
    Usual,
    Pointed,
    Rounded,
    Notched,
    /// With a spine at its end.
    Spine,
}

/// A blade in one piece, or a leaflet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Blade {
    pub(crate) shape: Shape,
    pub(crate) lobes: Lobes,
    pub(crate) edge: Edge,
    pub(crate) tip: Tip,
    /// Fewer and larger teeth, to show how they are made.
    pub(crate) coarse: bool,
}

/// From tooth to tooth on a blade of 36 mm; smaller blades have fewer teeth, not finer ones.
const TOOTH: f64 = 3.6;
/// The fewest teeth to a side: fewer look like lobes.
const FEWEST_TEETH: f64 = 4.0;
/// From spine to spine.
const SPINE: f64 = 7.4;
/// From bend to bend of a wavy edge.
const WAVE: f64 = 7.0;
/// Points from spine to spine, and in a bend.
const HOLLOW: u32 = 8;
/// Where the spine at a tip ends, in parts of the length.
const SPINE_ENDS: f64 = 1.07;

impl Lobes {
    /// Whether so many lobes can be drawn: two rows or all from one point, one at the tip.
    pub(crate) fn can_be_drawn(self) -> bool {
        match self {
            Self::None => true,
            Self::Hand(many) => matches!(many, 3 | 5 | 7),
            Self::Feather(many) => matches!(many, 5 | 7 | 9),
        }
    }
}

impl Blade {
    /// Whether its lobes, shape and tip can be drawn together.
    pub(crate) fn can_be_drawn(self) -> bool {
        let lobed = self.lobes != Lobes::None;
        let tip = match self.lobes {
            Lobes::None => !matches!(
                (self.shape, self.tip),
                (Shape::Heart | Shape::Narrow, Tip::Rounded | Tip::Notched)
                    | (Shape::Round, Tip::Pointed | Tip::Spine)
            ),
            Lobes::Feather(_) => matches!(self.tip, Tip::Usual | Tip::Rounded),
            Lobes::Hand(_) => matches!(self.tip, Tip::Usual | Tip::Pointed),
        };
        tip && self.lobes.can_be_drawn() && (!lobed || self.shape == Shape::Egg)
    }

    /// Its width in parts of its length, where nobody measured it.
    pub(crate) fn usual_width(self) -> f64 {
        match (self.lobes, self.shape) {
            (Lobes::Hand(_), _) => 1.0,
            (Lobes::Feather(_), _) => 0.78,
            (Lobes::None, Shape::Egg | Shape::Oval | Shape::Upper) => 24.0 / 36.0,
            (Lobes::None, Shape::Heart) => 0.84,
            (Lobes::None, Shape::Round) => 0.96,
            (Lobes::None, Shape::Narrow) => 0.24,
            (Lobes::None, Shape::Leaflet) => 0.5,
        }
    }

    /// The right-hand line from the base at (0, 0) up to the tip, the edge not yet cut.
    fn plain_side(self, length: f64, width: f64) -> Vec<Point> {
        let runs: Vec<Vec<Point>> = match (self.lobes, self.shape) {
            (Lobes::Feather(many), _) => vec![outlines::feather_lobed(many)],
            (Lobes::Hand(many), _) => {
                outlines::hand_lobed(many).iter().map(|run| run.to_vec()).collect()
            }
            (Lobes::None, Shape::Egg) => match self.tip {
                Tip::Rounded | Tip::Notched => vec![outlines::widest_at(0.3, self.tip)],
                Tip::Usual | Tip::Pointed | Tip::Spine => vec![EGG.to_vec()],
            },
            (Lobes::None, Shape::Oval) => vec![outlines::widest_at(0.5, self.tip)],
            (Lobes::None, Shape::Upper) => vec![outlines::widest_at(0.66, self.tip)],
            (Lobes::None, Shape::Heart) => vec![HEART.to_vec()],
            (Lobes::None, Shape::Round) => vec![outlines::ending(ROUND, self.tip)],
            (Lobes::None, Shape::Narrow) => vec![NARROW.to_vec()],
            (Lobes::None, Shape::Leaflet) => vec![outlines::ending(LEAFLET, self.tip)],
        };
        let mut points: Vec<Point> = Vec::new();
        for run in runs {
            points.pop();
            points.extend(round(&run).into_iter().map(|(x, y)| (x * width, y * length)));
        }
        points
    }

    /// The right-hand side with its edge.
    pub(crate) fn side(self, length: f64, width: f64) -> Vec<Point> {
        let plain = self.plain_side(length, width);
        // Lobes are narrower than a blade: finer teeth follow their hollows.
        let large = match (self.lobes, self.coarse) {
            (Lobes::None, true) => 2.2,
            (Lobes::None, false) => 1.0,
            _ => 0.72,
        };
        let mut side = match self.edge {
            Edge::Smooth => plain,
            Edge::Wavy => waves(&plain, width, large),
            Edge::Toothed => teeth(&plain, width, large, false),
            Edge::DoubleToothed => teeth(&plain, width, 1.9 * large, true),
            Edge::Spiny => spines(&plain, width, large),
        };
        if self.tip == Tip::Spine {
            side.push((0.0, length * SPINE_ENDS));
        }
        side
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
        match self.lobes {
            Lobes::Feather(many) => {
                let veins = outlines::veins_of_feather(many).into_iter();
                veins.map(|vein| round(&vein.map(at))).collect()
            }
            Lobes::Hand(many) => {
                let tips = outlines::hand_lobed(many).iter().rev().skip(1);
                let tips = tips.filter_map(|run| run.last());
                let vein =
                    |(x, y): &Point| [(0.0, 0.0), (x * 0.45, y * 0.42), (x * 0.86, y * 0.86)];
                tips.map(|tip| round(&vein(tip).map(at))).collect()
            }
            Lobes::None => self.feathered(length, width),
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
    // In the narrow lobes of a hand small teeth on high ones would meet those across the gap.
    let high = (step * if double && large < 1.5 { 0.2 } else { 0.42 }).min(width * 0.17);
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
            go(0.26, 0.02);
            go(0.46, 0.72);
            go(0.52, 0.3);
            go(0.68, 0.64);
        } else {
            go(0.4, 0.68);
        }
        go(0.86, 1.0);
    }
    points.push(plain[plain.len() - 1]);
    points
}

/// Soft bends, out and in by turns, without a corner.
fn waves(plain: &[Point], width: f64, large: f64) -> Vec<Point> {
    let way = Way::of(plain);
    let many = (way.long() / WAVE / large).round().max(3.0);
    let step = way.long() / many;
    // Bends of narrow lobes are flatter, or they would meet across the gap.
    let high = (step * if large < 1.0 { 0.1 } else { 0.16 }).min(width * 0.08);
    let mut points = vec![plain[0]];
    for half in 0..2 * many as u32 {
        let out = if half.is_multiple_of(2) { high } else { -high };
        for part in 1..=HOLLOW {
            let part = f64::from(part) / f64::from(HOLLOW);
            let at = (f64::from(half) + part) * step / 2.0;
            let bend = 1.0 - (2.0 * part - 1.0) * (2.0 * part - 1.0);
            if at < way.long() - step * 0.01 {
                let pointed = [-1.2, 0.0, 1.2].iter().any(|near| way.point(at + near, 1.9));
                let room = if pointed { 0.0 } else { room(&way, at) };
                points.push(way.at(at, out * bend * room));
            }
        }
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
