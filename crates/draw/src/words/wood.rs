//! Words of wood: bare twigs with their buds, thorns and prickles, trunk and bark.
//!
//! From what is spoken of to its lines. That a thorn is a twig and stands above a leaf, that a
//! prickle is a part of the skin and stands anywhere, and that rings of scars show where a year's
//! shoot begins, is what handbooks of botany say (from memory); the rest is common practice,
//! without a source.

use spinney_model::{Stroke, Weight};

use super::spoken_of;
use super::twig::{bud, small_leaf, wood};
use crate::pen::{Point, arc, circle, closed, compass, mirrored, oval, round, stroke};

/// What a bare twig shows.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Bare {
    EndBud,
    SideBuds,
    Scars,
    Shoot,
    Older,
}

/// Half the thickness of the older part of a bare twig, and of this year's, in millimetres.
const OLDER: f64 = 3.2;
const YOUNG: f64 = 2.4;
/// Where this year's part begins, and where it ends.
const RINGS: f64 = 8.0;
const TOP: f64 = 35.0;

/// A twig in winter: rings where this year's shoot begins, a bud at its end, and buds along it,
/// each above the scar of a leaf.
pub(super) fn bare(shows: Bare) -> Vec<Stroke> {
    let mut strokes = Vec::new();
    let side = |side: f64, of: [f64; 2], from: f64, to: f64| {
        vec![(side * of[0], from), (side * of[1], to)]
    };
    for of in [-1.0, 1.0] {
        let older = side(of, [OLDER, OLDER], -12.0, RINGS - 2.2);
        let young = side(of, [YOUNG, YOUNG * 0.8], RINGS + 2.2, TOP);
        strokes.push(stroke(spoken_of(shows == Bare::Older, Weight::Outline), &older));
        strokes.push(stroke(spoken_of(shows == Bare::Shoot, Weight::Outline), &young));
    }
    for height in [-1.6, 0.0, 1.6] {
        let ring = arc((0.0, RINGS + height), (OLDER + 0.6, 1.1), 6, 18);
        strokes.push(stroke(Weight::Midrib, &ring));
    }
    let end = shows == Bare::EndBud;
    strokes.push(bud((0.0, TOP - 0.6), (0.0, 1.0), 1.7, end));
    for (height, out, half) in
        [(-5.0, 1.0, OLDER), (15.0, -1.0, YOUNG * 0.95), (25.0, 1.0, YOUNG * 0.9)]
    {
        let bump =
            bud((out * (half + 0.7), height), (out * 0.5, 1.0), 1.15, shows == Bare::SideBuds);
        strokes.push(bump);
        // The scar: a half-moon below the bud, on the side that is seen.
        let scar = closed(&[
            (0.0, 0.3),
            (1.6, 1.2),
            (1.3, -0.9),
            (0.0, -1.5),
            (-1.3, -0.9),
            (-1.6, 1.2),
        ]);
        let scar: Vec<Point> =
            scar.iter().map(|(x, y)| (x + out * (half - 1.9), y + height - 1.6)).collect();
        strokes.push(stroke(spoken_of(shows == Bare::Scars, Weight::Midrib), &scar));
    }
    strokes
}

/// A bare twig with large buds: two at a height, or one.
pub(super) fn buds(opposite: bool) -> Vec<Stroke> {
    let mut strokes = vec![wood((0.0, -12.0), (0.0, 38.0), false)];
    strokes.push(bud((0.0, 37.0), (0.0, 1.0), 1.6, false));
    let heights = [-6.0, 4.0, 14.0, 24.0];
    for (n, height) in heights.into_iter().enumerate() {
        for side in [-1.0, 1.0] {
            let here = if opposite { n % 2 == 0 } else { (n % 2 == 0) == (side > 0.0) };
            if here {
                strokes.push(bud((0.6 * side, height), (0.62 * side, 1.0), 1.7, false));
            }
        }
    }
    strokes
}

/// A twig with leaves and what pricks: thorns, each a hard twig above a leaf, or prickles, each on
/// the skin and anywhere.
pub(super) fn sharp(thorns: bool) -> Vec<Stroke> {
    const HALF: f64 = 3.0;
    let nodes = [(-4.0, 1.0), (18.0, -1.0)];
    let mut strokes = Vec::new();
    for side in [-1.0, 1.0] {
        let mut edge = vec![(side * HALF, -12.0)];
        for (height, _) in nodes.iter().filter(|(_, of)| thorns && *of == side) {
            // The wood of the twig runs on into the thorn.
            edge.extend([(side * HALF, height + 4.0), (side * (HALF + 1.6), height + 6.0)]);
            edge.extend([(side * (HALF + 16.0), height + 17.5)]);
            edge.extend([(side * (HALF + 1.4), height + 10.0), (side * HALF, height + 12.0)]);
        }
        edge.push((side * HALF, 47.0));
        strokes.push(stroke(Weight::Outline, &edge));
        if thorns && edge.len() > 3 {
            strokes.push(stroke(Weight::Heavy, &edge[1..edge.len() - 1]));
        }
    }
    for (height, side) in nodes {
        strokes.extend(small_leaf((side * HALF, height), (side, -0.1), 14.0, Weight::Outline));
    }
    if !thorns {
        for (height, side) in [(2.0, -1.0), (14.0, 1.0), (32.0, 1.0), (38.0, -1.0)] {
            let hook =
                [(0.0, 5.0), (4.0, 3.0), (8.4, -2.6), (4.0, -0.4), (0.0, -1.0), (0.0, 5.0)];
            let hook = hook.map(|(x, y)| (side * (HALF + x), y + height));
            strokes.push(stroke(Weight::Heavy, &hook));
        }
    }
    strokes
}

/// A tree in winter: its trunk or its twigs heavy.
pub(super) fn tree(trunk: bool) -> Vec<Stroke> {
    let mut strokes = Vec::new();
    let half = round(&[(3.2, 12.0), (2.6, 4.0), (3.0, -8.0), (5.4, -12.0)]);
    for side in [half.clone(), mirrored(&half)] {
        strokes.push(stroke(spoken_of(trunk, Weight::Outline), &side));
    }
    strokes.push(stroke(Weight::Fine, &[(-20.0, -12.0), (20.0, -12.0)]));
    // Each branch ends in two, turned by an eighth of a half circle to each side.
    let mut branches = vec![
        ((-1.6, 11.0), 22, 14.0, 0),
        ((1.6, 11.0), 2, 14.0, 0),
        ((0.0, 12.0), 24, 16.0, 0),
    ];
    while let Some((at, way, long, depth)) = branches.pop() {
        let (x, y) = compass(way);
        let end = (at.0 + x * long, at.1 + y * long);
        let usual = [Weight::Twig, Weight::Outline, Weight::Midrib][depth];
        let heavy = !trunk && depth == 2;
        strokes.push(stroke(if heavy { Weight::Heavy } else { usual }, &[at, end]));
        if depth < 2 {
            for turn in [way + 22, way + 24, way + 26] {
                branches.push((
                    end,
                    turn % 24,
                    long * if depth == 0 { 0.68 } else { 0.62 },
                    depth + 1,
                ));
            }
        }
    }
    strokes
}

/// A piece of a trunk, sawn through: the skin hatched, or the rings of wood heavy.
pub(super) fn log(bark: bool) -> Vec<Stroke> {
    let (top, foot, wide, deep) = (34.0, -7.0, 19.0, 8.0);
    let mut strokes = vec![
        stroke(spoken_of(bark, Weight::Outline), &oval((0.0, top), (wide, deep))),
        stroke(Weight::Outline, &oval((0.0, top), (wide - 3.4, deep - 1.8))),
        stroke(Weight::Outline, &arc((0.0, foot), (wide, deep * 0.8), 6, 18)),
    ];
    for ring in [4.0, 8.0, 12.0] {
        let line = oval((0.0, top), (ring, ring * 0.42));
        strokes.push(stroke(if bark { Weight::Fine } else { Weight::Heavy }, &line));
    }
    strokes.push(stroke(Weight::Outline, &[(-wide, top), (-wide, foot)]));
    strokes.push(stroke(Weight::Outline, &[(wide, top), (wide, foot)]));
    // Cracks of the skin: down the front, broken, each beginning elsewhere.
    let front = circle((0.0, 0.0), 1.0);
    for (n, at) in (7..18).enumerate() {
        let (x, down) = front[at];
        let from = top + down * deep;
        let to = foot + down * deep * 0.8;
        let breaks = [0.06, 0.3, 0.37, 0.62, 0.7, 0.95];
        for part in breaks.chunks(2) {
            let shift = if n % 2 == 0 { 0.0 } else { 0.04 };
            let y = |part: f64| from + (to - from) * (part + shift).min(0.97);
            let bend = if n % 2 == 0 { 1.0 } else { -1.0 };
            let middle = (x * wide + bend, (y(part[0]) + y(part[1])) / 2.0);
            let crack = [(x * wide, y(part[0])), middle, (x * wide, y(part[1]))];
            strokes.push(stroke(if bark { Weight::Hatch } else { Weight::Fine }, &crack));
        }
    }
    strokes
}
