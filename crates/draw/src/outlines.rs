//! Outlines of blades: points that the right-hand line goes through, from the base up to the tip.
//!
//! To the right in parts of the width, up in parts of the length; drawn by hand for this program,
//! after no plant in particular.

use super::blade::Tip;
use super::pen::Point;

pub(super) const EGG: &[Point] = &[
    (0.0, 0.0),
    (0.15, 0.01),
    (0.31, 0.055),
    (0.43, 0.14),
    (0.493, 0.26),
    (0.49, 0.39),
    (0.42, 0.55),
    (0.29, 0.72),
    (0.135, 0.87),
    (0.05, 0.945),
    (0.0, 1.0),
];
pub(super) const HEART: &[Point] = &[
    (0.0, 0.0),
    (0.06, -0.05),
    (0.18, -0.085),
    (0.32, -0.06),
    (0.44, 0.03),
    (0.5, 0.16),
    (0.49, 0.3),
    (0.41, 0.48),
    (0.28, 0.67),
    (0.12, 0.86),
    (0.045, 0.94),
    (0.0, 1.0),
];
pub(super) const ROUND: &[Point] = &[
    (0.0, 0.0),
    (0.19, 0.035),
    (0.35, 0.13),
    (0.46, 0.28),
    (0.5, 0.47),
    (0.47, 0.66),
    (0.38, 0.83),
    (0.25, 0.94),
    (0.12, 0.99),
    (0.0, 1.0),
];
pub(super) const NARROW: &[Point] = &[
    (0.0, 0.0),
    (0.2, 0.08),
    (0.38, 0.2),
    (0.49, 0.36),
    (0.49, 0.52),
    (0.39, 0.7),
    (0.2, 0.87),
    (0.0, 1.0),
];
pub(super) const LEAFLET: &[Point] = &[
    (0.0, 0.0),
    (0.12, 0.07),
    (0.34, 0.21),
    (0.48, 0.38),
    (0.49, 0.5),
    (0.41, 0.66),
    (0.21, 0.86),
    (0.0, 1.0),
];
/// An oval line that is widest at this part of its length, with a tip.
pub(super) fn widest_at(widest: f64, tip: Tip) -> Vec<Point> {
    let below = [0.0, 0.025, 0.12, 0.3, 0.6, 1.0].map(|part| {
        let up: f64 = 1.0 - part;
        (0.5 * (1.0 - up * up).sqrt(), widest * part)
    });
    let above = |part: f64| widest + (1.0 - widest) * part;
    let end: Vec<Point> = match tip {
        Tip::Rounded | Tip::Notched => {
            let round = |part: f64| (0.5 * (1.0 - part * part).sqrt(), above(part));
            let ends = [0.25, 0.5, 0.7, 0.85, 0.95].map(round);
            let last = if tip == Tip::Notched { NOTCH } else { &[(0.0, 1.0)] };
            ends.into_iter().chain(last.iter().copied()).collect()
        }
        Tip::Usual | Tip::Pointed | Tip::Spine => {
            let point = |part: f64| (0.5 * (1.0 - part * part), above(part));
            let ends = [0.2, 0.4, 0.6, 0.8, 0.92].map(point);
            ends.into_iter().chain([(0.0, 1.0)]).collect()
        }
    };
    below.into_iter().chain(end).collect()
}

/// The end of a blade that is cut in at its tip.
const NOTCH: &[Point] = &[(0.1, 1.0), (0.05, 0.985), (0.0, 0.93)];

/// The same outline with another tip.
pub(super) fn ending(outline: &[Point], tip: Tip) -> Vec<Point> {
    let keep = outline.iter().copied().filter(|(_, y)| *y < 0.6);
    match tip {
        Tip::Usual | Tip::Pointed | Tip::Spine => outline.to_vec(),
        Tip::Rounded => {
            let end = [(0.45, 0.7), (0.37, 0.83), (0.26, 0.93), (0.13, 0.985), (0.0, 1.0)];
            keep.chain(end).collect()
        }
        Tip::Notched => {
            let end = [(0.45, 0.7), (0.37, 0.83), (0.25, 0.95)];
            keep.chain(end).chain(NOTCH.iter().copied()).collect()
        }
    }
}

/// Where the gaps between the lobes of a feather begin, and how far it is to the next.
fn rows(many: u32) -> (u32, f64) {
    let pairs = many / 2;
    (pairs, 0.78 / f64::from(pairs.max(1)))
}

/// How far lobes reach out at a height: most a little above the middle.
fn reach(height: f64) -> f64 {
    let off = (height - 0.56) / 0.62;
    0.5 * (1.0 - off * off)
}

/// How near to the midrib the gaps between the lobes come.
const GAP: f64 = 0.1;

/// Round lobes in two rows, and one at the tip.
pub(super) fn feather_lobed(many: u32) -> Vec<Point> {
    let (pairs, step) = rows(many);
    let mut points = vec![(0.0, 0.0), (0.06, 0.035)];
    for lobe in 0..pairs {
        let from = 0.05 + f64::from(lobe) * step;
        let out = reach(from + step * 0.7);
        let part = |x: f64, y: f64| (GAP + (out - GAP) * x, from + step * y);
        points.extend([part(0.22, 0.2), part(0.72, 0.4), part(1.0, 0.68)]);
        points.extend([part(0.86, 0.93), part(0.36, 0.89), part(0.0, 1.0)]);
    }
    points.extend([(0.185, 0.885), (0.165, 0.945), (0.085, 0.99), (0.0, 1.0)]);
    points
}

/// One side vein for each lobe of a feather.
pub(super) fn veins_of_feather(many: u32) -> Vec<[Point; 3]> {
    let (pairs, step) = rows(many);
    let vein = |lobe: u32| {
        let from = 0.05 + f64::from(lobe) * step;
        let out = reach(from + step * 0.7);
        [
            (0.0, from + step * 0.1),
            (out * 0.45, from + step * 0.38),
            (out * 0.84, from + step * 0.7),
        ]
    };
    (0..pairs).map(vein).collect()
}

/// Lobes from the foot: between two tips a round line, at every tip a corner.
pub(super) fn hand_lobed(many: u32) -> &'static [&'static [Point]] {
    match many {
        0..=3 => HAND_3,
        4..=5 => HAND_5,
        _ => HAND_7,
    }
}

const HAND_3: &[&[Point]] = &[
    &[(0.0, 0.0), (0.1, -0.045), (0.24, -0.03), (0.36, 0.07), (0.44, 0.26), (0.5, 0.54)],
    &[
        (0.5, 0.54),
        (0.37, 0.5),
        (0.25, 0.43),
        (0.16, 0.4),
        (0.19, 0.52),
        (0.175, 0.71),
        (0.09, 0.88),
        (0.0, 1.0),
    ],
];
const HAND_5: &[&[Point]] = &[
    &[(0.0, 0.0), (0.08, -0.05), (0.2, -0.055), (0.32, -0.02), (0.43, 0.06)],
    &[
        (0.43, 0.06),
        (0.41, 0.16),
        (0.34, 0.235),
        (0.25, 0.275),
        (0.3, 0.345),
        (0.39, 0.44),
        (0.5, 0.61),
    ],
    &[
        (0.5, 0.61),
        (0.38, 0.585),
        (0.25, 0.53),
        (0.15, 0.49),
        (0.185, 0.6),
        (0.17, 0.75),
        (0.09, 0.89),
        (0.0, 1.0),
    ],
];
const HAND_7: &[&[Point]] = &[
    &[(0.0, 0.0), (0.06, -0.05), (0.14, -0.085), (0.25, -0.1), (0.34, -0.09)],
    &[
        (0.34, -0.09),
        (0.33, -0.01),
        (0.28, 0.06),
        (0.2, 0.1),
        (0.28, 0.125),
        (0.39, 0.17),
        (0.5, 0.25),
    ],
    &[
        (0.5, 0.25),
        (0.41, 0.285),
        (0.3, 0.305),
        (0.19, 0.3),
        (0.255, 0.4),
        (0.34, 0.52),
        (0.42, 0.69),
    ],
    &[
        (0.42, 0.69),
        (0.32, 0.64),
        (0.21, 0.56),
        (0.125, 0.5),
        (0.16, 0.62),
        (0.145, 0.77),
        (0.08, 0.9),
        (0.0, 1.0),
    ],
];
