//! A whole leaf: from its parameters to lines, each of a part of the leaf.
//!
//! In one piece, like a feather or like a hand, with its stalk and hairs. All leaves stand
//! upright, their tips at one height, in a box of one size; one with a long stalk is drawn
//! smaller as a whole, so that stalk and blade keep their proportion.

use super::blade::{Blade, Shape, Tip};
use super::pen::{Point, Way, one_long, placed};

/// What a line of the drawing is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Part {
    Edge,
    /// The edge of a leaflet so slim that a thick line would fill it.
    SlimEdge,
    Stalk,
    Midrib,
    Veins,
    Hairs,
}

/// A line of the drawing.
pub(crate) struct Line {
    pub(crate) part: Part,
    pub(crate) points: Vec<Point>,
}

/// Of what a leaf is made.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Form {
    #[default]
    OnePiece,
    /// So many leaflets, in pairs along a common stalk.
    Feather(u32),
    /// So many leaflets, all from one point.
    Hand(u32),
}

/// A leaf by its parameters.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Leaf {
    pub(crate) form: Form,
    /// The blade, or every leaflet.
    pub(crate) blade: Blade,
    /// Width of the blade in parts of its length; None: nobody measured it.
    pub(crate) width: Option<f64>,
    /// Length of the stalk in parts of that of the blade; None: nobody measured it.
    pub(crate) stalk: Option<f64>,
    pub(crate) hairy: bool,
}

/// Length of a blade, from base to tip.
pub(crate) const LENGTH: f64 = 36.0;
/// The stalk of a leaf of which nobody measured it, in parts of the blade.
const USUAL_STALK: f64 = 0.22;
/// The whole height of a drawing, stalk and all, and the width of a blade: teeth and hairs stand
/// out of it.
const HEIGHT: f64 = 52.0;
const BREADTH: f64 = 38.0;
/// Where the tips of all leaves are.
pub(crate) const TIP: f64 = 38.0;
/// More leaflets than these cannot be told apart at the size of a card.
pub(crate) const MOST_FEATHER: u32 = 31;
pub(crate) const MOST_HAND: u32 = 11;
/// Width of a leaflet in parts of its length, where its neighbours leave room.
const LEAFLET_WIDTH: f64 = 0.5;
/// Slimmer leaflets get a finer outline.
const SLIM: f64 = 4.0;
/// From that point to the foot of each leaflet, where they would lie over each other.
const APART: f64 = 3.0;
/// How far the topmost pair stands out above the tips of its midribs.
const PAIR_RISES: f64 = 3.0;
/// From one point more leaflets than these are slim.
const MOST_BROAD: u32 = 7;
impl Default for Leaf {
    fn default() -> Self {
        let (form, blade) = (Form::OnePiece, Blade::default());
        Self { form, blade, width: None, stalk: None, hairy: false }
    }
}

impl Leaf {
    /// Its lines, in the box of all drawings.
    pub(crate) fn lines(&self) -> Vec<Line> {
        let stalk = LENGTH * self.stalk.unwrap_or(USUAL_STALK).min(2.0);
        let mut pen = Pen { lines: Vec::new(), hairy: self.hairy, slim: false };
        let mut broad: f64 = 0.0;
        match self.form {
            Form::Feather(many) => pen.feather(self.blade, many),
            Form::Hand(many) => pen.hand(self.blade, many),
            Form::OnePiece => {
                let width = self.width.unwrap_or(self.blade.usual_width()).clamp(0.04, 2.0);
                broad = width * LENGTH;
                pen.one_piece(self.blade, broad);
            }
        }
        if stalk > 0.0 {
            let bend = [(0.0, 0.0), (stalk * 0.05, -stalk * 0.5), (stalk * 0.17, -stalk)];
            pen.line(Part::Stalk, super::pen::round(&bend));
        }
        let size = (HEIGHT / (LENGTH + stalk)).min(BREADTH / broad.max(1.0)).min(1.0);
        let moved = |(x, y): Point| (x * size, TIP + (y - LENGTH) * size);
        for line in &mut pen.lines {
            line.points = line.points.iter().copied().map(moved).collect();
        }
        pen.lines
    }
}

/// The lines that were drawn so far.
struct Pen {
    lines: Vec<Line>,
    hairy: bool,
    /// Whether the leaflets are.
    slim: bool,
}

impl Pen {
    fn line(&mut self, part: Part, points: Vec<Point>) {
        self.lines.push(Line { part, points });
    }

    fn one_piece(&mut self, blade: Blade, width: f64) {
        self.line(Part::Edge, blade.outline(LENGTH, width));
        let top = if blade.tip == Tip::Notched { 0.9 } else { 0.97 };
        self.line(Part::Midrib, vec![(0.0, 0.0), (0.0, LENGTH * top)]);
        for vein in blade.side_veins(LENGTH, width) {
            self.line(Part::Veins, vein.iter().map(|(x, y)| (-x, *y)).collect());
            self.line(Part::Veins, vein);
        }
        self.hairs(blade, LENGTH, width, (0.0, 0.0), (0.0, 1.0));
    }

    /// A leaflet with its midrib, growing in a direction.
    fn leaflet(&mut self, blade: Blade, at: Point, up: Point, size: (f64, f64)) {
        let (length, width) = size;
        let blade = Blade { shape: Shape::Leaflet, ..blade };
        let edge = if self.slim { Part::SlimEdge } else { Part::Edge };
        self.line(edge, placed(&blade.outline(length, width), at, up));
        self.line(Part::Veins, placed(&[(0.0, 0.0), (0.0, length * 0.92)], at, up));
        self.hairs(blade, length, width, at, up);
    }

    /// Pairs of leaflets along a common stalk, and one at its end where their number is odd.
    fn feather(&mut self, blade: Blade, many: u32) {
        let many = many.clamp(2, MOST_FEATHER);
        let (pairs, odd) = (many / 2, many % 2 == 1);
        let length = 9.0 + 18.0 / (f64::from(pairs) + 1.0);
        let up = one_long((1.0, 0.42));
        let end = if odd { LENGTH - length } else { LENGTH - length * up.1 - PAIR_RISES };
        let step = end / f64::from(pairs);
        let width = (length * LEAFLET_WIDTH).min(step * up.0 * 0.68);
        self.slim = width < SLIM;
        for pair in 0..pairs {
            let height = step * (f64::from(pair) + if odd { 0.55 } else { 1.0 });
            for side in [-1.0, 1.0] {
                self.leaflet(blade, (0.0, height), (side * up.0, up.1), (length, width));
            }
        }
        if odd {
            self.leaflet(blade, (0.0, end), (0.0, 1.0), (length, width));
        }
        self.line(Part::Stalk, vec![(0.0, 0.0), (0.0, end)]);
    }

    /// Leaflets from one point, those at the sides shorter; each next is turned by one angle.
    fn hand(&mut self, blade: Blade, many: u32) {
        let many = many.clamp(2, MOST_HAND);
        // Tangent of half the angle between two neighbours.
        let half = (1.9 / (f64::from(many) - 1.0)).min(0.64);
        let turn = turned(half);
        let from = LENGTH * 0.22;
        let middle = f64::from(many - 1) / 2.0;
        self.slim = many > MOST_BROAD;
        let mut up = (0.0, 1.0);
        if many.is_multiple_of(2) {
            up = rotate(up, turned(half / (1.0 + (1.0 + half * half).sqrt())));
        }
        for leaflet in many / 2..many {
            let aside = (f64::from(leaflet) - middle) / middle;
            let length = (LENGTH - from - APART) * (1.0 - 0.3 * aside);
            let between = 2.0 * half / (1.0 + half * half).sqrt() * (APART + length * 0.42);
            let width = (length * LEAFLET_WIDTH).min(between * 0.74);
            for side in [1.0, -1.0] {
                let way = (up.0 * side, up.1);
                let at = placed(&[(0.0, APART)], (0.0, from), way)[0];
                self.line(Part::Stalk, vec![(0.0, from), at]);
                self.leaflet(blade, at, way, (length, width));
                if up.0 == 0.0 {
                    break;
                }
            }
            up = rotate(up, turn);
        }
        self.line(Part::Stalk, vec![(0.0, 0.0), (0.0, from)]);
    }

    /// Short hairs that stand out from the edge, to the right and to the left.
    fn hairs(&mut self, blade: Blade, length: f64, width: f64, at: Point, up: Point) {
        if !self.hairy {
            return;
        }
        let side = blade.side(length, width);
        let way = Way::of(&side);
        let many = (way.long() / 2.6).round().max(4.0);
        for hair in 1..many as u32 {
            let along = way.long() * f64::from(hair) / many;
            let (foot, end) = (way.at(along, 0.3), way.at(along + 0.5, 2.0));
            let other = [foot, end].map(|(x, y)| (-x, y));
            self.line(Part::Hairs, placed(&[foot, end], at, up));
            self.line(Part::Hairs, placed(&other, at, up));
        }
    }
}

/// Cosine and sine of the angle of which half has this tangent.
fn turned(half: f64) -> (f64, f64) {
    let all = 1.0 + half * half;
    ((1.0 - half * half) / all, 2.0 * half / all)
}

/// A direction turned to the right.
fn rotate((x, y): Point, (cosine, sine): (f64, f64)) -> Point {
    (x * cosine + y * sine, y * cosine - x * sine)
}
