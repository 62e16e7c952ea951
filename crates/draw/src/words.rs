//! Drawings of the leaf words: what a word means, and beside it what it is taken for, at the same
//! size and turn.
//!
//! From a word of the list to what is drawn of it. Heavy is the part that is spoken of. A word
//! without a drawing simply has none. What a lobe, a tooth, a leaflet, a base and a tip are
//! follows Ellis et al. 2009, *Manual of Leaf Architecture* (from memory); where buds stand is
//! common practice, without a source.

use spinney_model::{Drawing, DrawnWord, Figure, Stroke, Weight};

use crate::blade::{Blade, Edge, Lobes, Shape, Tip};
use crate::leaf::{Form, LENGTH, Leaf, Line, Part, TIP};
use crate::pen::{Point, circle, one_long, placed, stroke};
use crate::weight;

/// The box of every word, in millimetres.
const BOX: [f64; 4] = [-24.0, -50.0, 48.0, 64.0];
/// A stalk a third of the blade, long enough to be pointed at.
const STALK: f64 = 1.0 / 3.0;

macro_rules! shows {
    ($($(#[$doc:meta])* $name:ident = $caption:literal),* $(,)?) => {
        /// What a drawing shows.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum Shows {
            $($(#[$doc])* $name),*
        }

        impl Shows {
            /// All of them.
            pub const ALL: &[Self] = &[$(Self::$name),*];

            /// The name of its caption among the messages of the screens.
            pub fn caption(self) -> &'static str {
                match self { $(Self::$name => $caption),* }
            }
        }
    };
}

shows! {
    /// A blade whose edge is a plain line.
    Smooth = "smooth",
    /// A blade without lobes.
    Unlobed = "unlobed",
    /// Widest below the middle.
    Egg = "egg",
    /// Widest in the middle.
    Oval = "oval",
    /// With a notch at the stalk.
    Heart = "heart",
    /// With small points.
    Toothed = "toothed",
    /// The same, fewer and larger.
    ToothedLarge = "toothed-large",
    /// With small teeth on large ones.
    DoubleToothed = "double",
    /// With soft bends.
    Wavy = "wavy",
    /// With hard points.
    Spiny = "spiny",
    /// With lobes in two rows.
    Lobed = "lobed",
    /// With lobes from one point.
    HandLobed = "hand-lobed",
    /// One lobe.
    Lobe = "lobe",
    /// One tooth.
    Tooth = "tooth",
    /// Between two lobes.
    Gap = "gap",
    /// A twig with needles.
    Needles = "needles",
    /// The tip comes to a point.
    PointedTip = "pointed-tip",
    /// The tip is round.
    RoundTip = "round-tip",
    /// One half starts lower.
    Lopsided = "lopsided",
    /// Both halves start together.
    Even = "even",
    /// Leaflets in two rows.
    Feather = "feather",
    /// Leaflets from one point.
    Hand = "hand",
    /// Everything from the bud on.
    OneLeaf = "one-leaf",
    /// A part of it, without a bud.
    OneLeaflet = "one-leaflet",
    /// In the angle above the stalk.
    Bud = "bud",
    /// A swelling beside it.
    Gall = "gall",
    /// Two leaves at one height.
    Opposite = "opposite",
    /// One leaf at each height.
    Alternate = "alternate",
    /// Leaflets in pairs on leaves that are not.
    PairedLeaflets = "paired-leaflets",
    /// Three leaves at one height.
    Whorl = "whorl",
    /// The flat part.
    BladePart = "blade",
    /// The stalk of a leaf, on its twig.
    StalkPart = "stalk",
    /// The twig that carries it.
    TwigPart = "twig",
    /// The rim of the blade.
    EdgePart = "edge",
    /// The vein down the middle.
    MidribPart = "midrib",
    /// The veins at its sides.
    VeinsPart = "veins",
    /// Two of them.
    VeinPair = "vein-pair",
    /// The far end.
    TipPart = "tip",
    /// The end at the stalk.
    BasePart = "base",
}

/// The drawings of a word: all that are said of leaves alone, and, where the text is about
/// leaves, those that are said of shells and tails as well.
pub fn of_word(word: &str, about_leaves: bool) -> Option<DrawnWord> {
    let (own, other) = shown(word, about_leaves)?;
    let drawn = |shows: &[Shows]| shows.iter().map(|shows| shows.figure()).collect();
    Some(DrawnWord { own: drawn(own), other: drawn(other) })
}

/// What a word shows, and what it is taken for.
fn shown(word: &str, about_leaves: bool) -> Option<(&'static [Shows], &'static [Shows])> {
    use Shows::*;
    let of = |own: &'static [Shows], other: &'static [Shows]| Some((own, other));
    match word {
        "lobed" => of(&[Lobed, HandLobed], &[Toothed]),
        "lobe" => of(&[Lobe], &[Tooth]),
        "unlobed" => of(&[Unlobed], &[Lobed]),
        "tooth" => of(&[Tooth], &[Lobe]),
        "toothed" => of(&[Toothed], &[Lobed]),
        "double-toothed" => of(&[DoubleToothed], &[ToothedLarge]),
        "entire" => of(&[Smooth], &[Toothed]),
        "heart-shaped" => of(&[Heart], &[Egg]),
        "needle" => of(&[Needles], &[Spiny]),
        "leaf" => of(&[OneLeaf], &[OneLeaflet]),
        "leaflet" => of(&[OneLeaflet], &[OneLeaf]),
        "compound" => of(&[Feather, Hand], &[Lobed]),
        "feather" => of(&[Feather, Lobed], &[Hand]),
        "hand-shaped" => of(&[Hand, HandLobed], &[Feather]),
        "opposite" => of(&[Opposite], &[Alternate, PairedLeaflets]),
        "alternate" => of(&[Alternate], &[Opposite]),
        "bud" => of(&[Bud], &[Gall]),
        "blade" => of(&[BladePart], &[StalkPart]),
        "leaf stalk" => of(&[StalkPart], &[TwigPart]),
        "midrib" => of(&[MidribPart], &[VeinsPart]),
        "vein" => of(&[VeinsPart], &[MidribPart]),
        "vein pair" => of(&[VeinPair], &[]),
        _ if !about_leaves => None,
        "gap" => of(&[Gap], &[Lobe]),
        "wavy" => of(&[Wavy], &[Toothed]),
        "smooth" => of(&[Smooth], &[Toothed]),
        "spine" | "spike" => of(&[Spiny], &[Toothed]),
        "oval" => of(&[Oval], &[Egg]),
        "egg-shaped" => of(&[Egg], &[Oval]),
        "pointed" => of(&[PointedTip], &[RoundTip]),
        "lopsided" => of(&[Lopsided], &[Even]),
        "whorl" => of(&[Whorl], &[Opposite]),
        "stalk" => of(&[StalkPart], &[TwigPart]),
        "twig" => of(&[TwigPart], &[StalkPart]),
        "edge" => of(&[EdgePart], &[TipPart]),
        "tip" => of(&[TipPart], &[BasePart]),
        "base" => of(&[BasePart], &[TipPart]),
        _ => None,
    }
}

impl Shows {
    /// Its lines, with its caption.
    fn figure(self) -> Figure {
        Figure { caption: self.caption(), drawing: self.drawing() }
    }

    /// Its lines.
    pub fn drawing(self) -> Drawing {
        Drawing { frame: BOX, strokes: self.strokes() }
    }

    fn strokes(self) -> Vec<Stroke> {
        let plain = Blade::default();
        let edged = |edge| one(Blade { edge, ..plain });
        let shaped = |shape| one(Blade { shape, ..plain });
        let large = |edge| one(Blade { edge, coarse: true, ..plain });
        let tipped = |tip| one(Blade { shape: Shape::Oval, tip, ..plain });
        match self {
            Self::Smooth | Self::Unlobed | Self::Egg | Self::Even => one(plain),
            Self::Oval => shaped(Shape::Oval),
            Self::Heart => shaped(Shape::Heart),
            Self::Toothed => edged(Edge::Toothed),
            Self::ToothedLarge => large(Edge::Toothed),
            Self::DoubleToothed => large(Edge::DoubleToothed),
            Self::Wavy => edged(Edge::Wavy),
            Self::Spiny => edged(Edge::Spiny),
            Self::Lobed => one(LOBED),
            Self::HandLobed => one(Blade { lobes: Lobes::Hand(5), ..plain }),
            Self::Lobe => stretch(LOBED, 1, false),
            Self::Gap => stretch(LOBED, 1, true),
            Self::Tooth => stretch(Blade { edge: Edge::Toothed, ..plain }, 3, false),
            Self::Needles => needles(),
            Self::PointedTip => tipped(Tip::Pointed),
            Self::RoundTip => tipped(Tip::Rounded),
            Self::Lopsided => lopsided(),
            Self::Feather => leaf(Form::Feather(7), plain, |_| false),
            Self::Hand => leaf(Form::Hand(5), plain, |_| false),
            Self::OneLeaf | Self::OneLeaflet | Self::Bud | Self::Gall => lesson(self),
            Self::Opposite => {
                twig(&[(30.0, &[(-1.0, 0.5), (1.0, 0.5)]), (8.0, &[(-1.0, 0.5), (1.0, 0.5)])])
            }
            Self::Alternate => twig(&[
                (36.0, &[(-1.0, 0.5)]),
                (25.0, &[(1.0, 0.5)]),
                (14.0, &[(-1.0, 0.5)]),
                (3.0, &[(1.0, 0.5)]),
            ]),
            Self::Whorl => twig(&[
                (30.0, &[(-1.0, 0.3), (0.35, 1.0), (1.0, 0.3)]),
                (4.0, &[(-1.0, 0.3), (0.35, 1.0), (1.0, 0.3)]),
            ]),
            Self::PairedLeaflets => paired_leaflets(),
            Self::BladePart => {
                let mut strokes = hatching(plain);
                strokes.extend(one(plain));
                strokes
            }
            Self::StalkPart | Self::TwigPart => stalk_or_twig(self),
            Self::EdgePart => leaf(Form::OnePiece, plain, |part| part == Part::Edge),
            Self::MidribPart => leaf(Form::OnePiece, plain, |part| part == Part::Midrib),
            Self::VeinsPart => leaf(Form::OnePiece, plain, |part| part == Part::Veins),
            Self::VeinPair => vein_pair(),
            Self::TipPart => ringed((0.0, TIP)),
            Self::BasePart => ringed((0.0, TIP - LENGTH)),
        }
    }
}

/// A blade with lobes in two rows.
const LOBED: Blade = Blade {
    shape: Shape::Egg,
    lobes: Lobes::Feather(7),
    edge: Edge::Smooth,
    tip: Tip::Usual,
    coarse: false,
};

/// The lines of a leaf, some of its parts heavy.
fn leaf(form: Form, blade: Blade, heavy: impl Fn(Part) -> bool) -> Vec<Stroke> {
    let leaf = Leaf { form, blade, stalk: Some(STALK), ..Leaf::default() };
    let of = |part| if heavy(part) { Weight::Heavy } else { weight(part) };
    leaf.lines().iter().map(|line| stroke(of(line.part), &line.points)).collect()
}

/// A leaf in one piece.
fn one(blade: Blade) -> Vec<Stroke> {
    leaf(Form::OnePiece, blade, |_| false)
}

/// The same with a ring round a place.
fn ringed(at: Point) -> Vec<Stroke> {
    let mut strokes = one(Blade::default());
    strokes.push(stroke(Weight::Heavy, &circle(at, 5.0)));
    strokes
}

/// A leaf with one stretch of its edge heavy: from hollow to hollow, or from top to top.
fn stretch(blade: Blade, nth: usize, gap: bool) -> Vec<Stroke> {
    let leaf = Leaf { blade, stalk: Some(STALK), ..Leaf::default() };
    let lines = leaf.lines();
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

fn vein_pair() -> Vec<Stroke> {
    let mut strokes = one(Blade::default());
    let veins = strokes.iter_mut().filter(|stroke| stroke.weight == Weight::Fine);
    veins.skip(4).take(2).for_each(|stroke| stroke.weight = Weight::Heavy);
    strokes
}

/// Hatching over the blade: lines across it, from edge to edge.
fn hatching(blade: Blade) -> Vec<Stroke> {
    let size = 52.0 / (LENGTH * (1.0 + STALK));
    let base = TIP - LENGTH * size.min(1.0);
    let across = (1..LENGTH as u32 / 2).filter_map(|n| {
        let y = f64::from(n) * 2.0;
        let half = blade.half_width(LENGTH, LENGTH * blade.usual_width(), y)? * 0.9;
        Some(stroke(Weight::Hatch, &[(-half, base + y - 0.8), (half, base + y + 0.8)]))
    });
    across.collect()
}

/// A blade one half of which begins lower on the stalk than the other.
fn lopsided() -> Vec<Stroke> {
    let blade = Blade::default();
    let width = LENGTH * blade.usual_width();
    let lower = LENGTH * 0.1;
    let right = blade.side(LENGTH, width * 0.86);
    // The lower half is as high at the tip and larger all the way down.
    let left = blade.side(LENGTH + lower, width * 1.14);
    let left = left.iter().rev().map(|(x, y)| (-x, y - lower));
    let up = |(x, y): Point| (x, y + TIP - LENGTH);
    let outline: Vec<Point> = right.iter().copied().chain(left).map(up).collect();
    let mut strokes = one(blade);
    strokes.retain(|stroke| stroke.weight != Weight::Outline);
    let foot = TIP - LENGTH;
    strokes.push(stroke(Weight::Outline, &outline));
    strokes
        .push(stroke(Weight::Outline, &[(0.0, foot), (0.0, foot - lower), (1.5, foot - 12.0)]));
    strokes
}

/// A line of the twig.
fn wood(from: Point, to: Point, heavy: bool) -> Stroke {
    stroke(if heavy { Weight::Heavy } else { Weight::Twig }, &[from, to])
}

/// A bud that sits at a place and points somewhere.
fn bud(at: Point, up: Point, heavy: bool) -> Stroke {
    let half = [(0.0, 0.0), (1.5, 0.9), (1.9, 2.4), (1.3, 4.6), (0.0, 6.6)];
    let left = half.iter().rev().skip(1).map(|(x, y)| (-x, *y));
    let outline: Vec<Point> = half.iter().copied().chain(left).collect();
    let weight = if heavy { Weight::Heavy } else { Weight::Outline };
    stroke(weight, &placed(&outline, at, up))
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

/// The lesson of leaf and leaflet: the bud stands in the angle above the stalk, and everything
/// beyond it is one leaf.
fn lesson(shows: Shows) -> Vec<Stroke> {
    let (at, up) = ((-14.0, -5.0), one_long((0.62, 0.8)));
    let whole = Leaf { form: Form::Feather(5), stalk: Some(STALK), ..Leaf::default() };
    let simple = Leaf { stalk: Some(STALK), ..Leaf::default() };
    let leaf = if matches!(shows, Shows::Bud | Shows::Gall) { &simple } else { &whole };
    let mut strokes = vec![wood((-14.0, -12.0), (-14.0, 46.0), false)];
    let lines = grown(leaf, at, up, 0.86);
    let edges = lines.iter().enumerate().filter(|(_, line)| line.part == Part::Edge);
    let leaflet = edges.map(|(n, _)| n).nth(3);
    for (n, line) in lines.iter().enumerate() {
        let heavy = match shows {
            Shows::OneLeaf => matches!(line.part, Part::Edge | Part::Stalk),
            Shows::OneLeaflet => Some(n) == leaflet,
            _ => false,
        };
        let weight = if heavy { Weight::Heavy } else { weight(line.part) };
        strokes.push(stroke(weight, &line.points));
    }
    strokes.push(bud((-13.2, -2.6), (0.22, 1.0), shows == Shows::Bud));
    if shows == Shows::Gall {
        strokes.push(stroke(Weight::Heavy, &circle((-12.4, 26.0), 3.6)));
    }
    strokes
}

/// A leaf stalk and the twig that it comes from, one of them heavy.
fn stalk_or_twig(shows: Shows) -> Vec<Stroke> {
    let leaf = Leaf { stalk: Some(0.6), ..Leaf::default() };
    let mut strokes = vec![wood((-12.0, -12.0), (-12.0, 46.0), shows == Shows::TwigPart)];
    for line in grown(&leaf, (-12.0, -6.0), one_long((0.6, 0.8)), 0.86) {
        let heavy = shows == Shows::StalkPart && line.part == Part::Stalk;
        strokes
            .push(stroke(if heavy { Weight::Heavy } else { weight(line.part) }, &line.points));
    }
    for (height, side) in [(-3.4, 1.0), (14.0, -1.0), (31.0, 1.0)] {
        strokes.push(bud((-12.0 + 0.8 * side, height), (0.3 * side, 1.0), false));
    }
    strokes
}

/// A twig with needles.
fn needles() -> Vec<Stroke> {
    let mut strokes = vec![wood((0.0, -12.0), (0.0, 36.0), false)];
    for n in 0..13 {
        for side in [-1.0, 1.0] {
            let at = (0.0, -6.0 + 3.2 * f64::from(n) + side * 0.5);
            let needle = [(-0.3, 0.0), (-0.5, 1.0), (-0.5, 15.5), (0.0, 17.0), (0.5, 15.5)];
            let needle = needle.iter().copied().chain([(0.5, 1.0), (0.3, 0.0)]);
            let needle: Vec<Point> = needle.collect();
            strokes.push(stroke(Weight::Midrib, &placed(&needle, at, (side, 0.55))));
        }
    }
    strokes
}

/// A twig with leaves at some heights.
fn twig(leaves: &[(f64, &[Point])]) -> Vec<Stroke> {
    let blade = Blade { shape: Shape::Leaflet, ..Blade::default() };
    let (length, width) = (14.0, 14.0 * blade.usual_width());
    let mut strokes = vec![wood((0.0, -12.0), (0.0, 47.0), false)];
    for (height, ways) in leaves {
        for way in *ways {
            let foot = placed(&[(0.0, 0.0), (0.0, 3.0)], (0.0, *height), *way);
            let blade = placed(&blade.outline(length, width), foot[1], *way);
            let rib = placed(&[(0.0, 0.0), (0.0, length * 0.92)], foot[1], *way);
            strokes.push(stroke(Weight::Outline, &foot));
            strokes.push(stroke(Weight::Outline, &blade));
            strokes.push(stroke(Weight::Fine, &rib));
        }
    }
    strokes
}

/// Two leaves, one at each height, whose leaflets stand in pairs; a bud above each stalk.
fn paired_leaflets() -> Vec<Stroke> {
    let leaf = Leaf { form: Form::Feather(5), stalk: Some(STALK), ..Leaf::default() };
    let mut strokes = vec![wood((0.0, -12.0), (0.0, 47.0), false)];
    for (height, side) in [(-4.0, 1.0), (14.0, -1.0)] {
        for line in grown(&leaf, (0.0, height), one_long((0.8 * side, 0.6)), 0.56) {
            let slim = match weight(line.part) {
                Weight::Outline => Weight::Midrib,
                other => other,
            };
            strokes.push(stroke(slim, &line.points));
        }
        strokes.push(bud((0.6 * side, height + 1.8), (0.35 * side, 1.0), false));
    }
    strokes
}
