//! How a blade begins, how it ends, and where it is widest.
//!
//! From a blade whose midrib is laid straight to the angles at its base and tip, the form of both, and
//! the widest place. Angles are those of Ellis et al., *Manual of
//! Leaf Architecture*, 2009 (from memory): from the base to where the margin is a quarter of the way up, from
//! the tip to where it is three quarters of the way up. Form is told by what lies between those lines and
//! the margin. Of lobed blades and of leaflets nothing is said. Whether both sides of a
//! base are alike is told in `base_sides`.

use spinney_model::{BaseForm, BaseSides, Ends, OneSide, TipForm, WithPlusMinus};

use crate::axis::Axis;

/// Where the margin is looked at, of the way from an end to the other.
const QUARTER: f64 = 0.25;
/// So far a heart-shaped base reaches behind where the stalk joins it, of the blade's length; and a notched
/// tip beyond the end of the midrib.
const BEHIND: f64 = 0.03;
/// What lies below the margin, of the triangle below a straight line: less is drawn in, more is rounded,
/// far more is cut off.
const DRAWN_IN: f64 = 0.88;
const STRAIGHT: f64 = 1.22;
const CUT_OFF: f64 = 1.62;
/// Wider angles are never called wedge-shaped or pointed.
const RIGHT_ANGLE: f64 = 90.0;
/// Places along the quarter.
const PLACES: usize = 24;
/// The widest place is in the middle of all that is nearly as wide.
const NEARLY: f64 = 0.985;
/// The ± of the widest place, as a share of the blade's length.
const END: f64 = 0.02;
/// The ± of where an end lies: in pixels; of a blade with an even edge and of one with teeth or waves as a share
/// of its length, and of how far its beginning was looked for; of what is too thin at its tip to be seen. And
/// of an edge, in pixels. Set on drawn leaves by `crates/measure/benches/drawn_leaves.rs`.
const PIXELS: f64 = 0.8;
const OF_LENGTH: [f64; 2] = [0.0007, 0.003];
const UNSURE: [f64; 2] = [0.8, 1.6];
const UNSEEN: f64 = 1.6;
const EDGE: f64 = 0.4;

/// How far it may be off where a blade begins and ends, in pixels.
#[derive(Clone, Copy)]
pub(crate) struct Doubt {
    /// How far the beginning was looked for.
    pub(crate) base: f64,
    /// What of the tip is too thin to be seen.
    pub(crate) tip: f64,
    /// Whether the edge has neither teeth nor waves.
    pub(crate) even: bool,
}

/// How a blade begins and ends; `lower`: which side of the base reaches further down.
pub(crate) fn ends(axis: &Axis, doubt: Doubt, lower: Option<(OneSide, bool)>) -> Ends {
    let length = axis.length + axis.unseen;
    let blade = Straight { line: &axis.straight, length };
    let uneven = usize::from(!doubt.even);
    let off = |unsure: f64| PIXELS.hypot(OF_LENGTH[uneven] * length).hypot(unsure);
    let [at_base, at_tip] = [off(UNSURE[uneven] * doubt.base), off(UNSEEN * doubt.tip)];
    let base = blade.end(|place| place, [at_base, at_tip]);
    let tip = blade.end(|place| length - place, [at_tip, at_base]);
    // On both sides: a lobe of one side, or a midrib that ends beside the tip, is neither.
    let behind = |beyond: fn(f64, f64) -> f64| {
        let mut far = [0.0_f64; 2];
        for [along, aside] in blade.line {
            let side = usize::from(*aside < 0.0);
            far[side] = far[side].max(beyond(*along, axis.length));
        }
        far[0].min(far[1]) > BEHIND * axis.length
    };
    let heart = behind(|along, _| -along);
    let notched = behind(|along, length| along - length);
    Ends {
        widest: blade.widest(),
        base: match base.fullness {
            _ if heart => BaseForm::HeartShaped,
            full if full > CUT_OFF => BaseForm::CutOff,
            full if full > STRAIGHT || base.angle.value > RIGHT_ANGLE => BaseForm::Rounded,
            full if full < DRAWN_IN => BaseForm::DrawnIn,
            _ => BaseForm::WedgeShaped,
        },
        base_angle: (!heart).then_some(base.angle),
        tip: match tip.fullness {
            _ if notched => TipForm::Notched,
            full if full < DRAWN_IN => TipForm::DrawnOut,
            full if full > STRAIGHT || tip.angle.value > RIGHT_ANGLE => TipForm::Rounded,
            _ => TipForm::Pointed,
        },
        tip_angle: (!notched).then_some(tip.angle),
        sides: BaseSides {
            lower: lower.map(|(lower, _)| lower),
            behind: lower.is_some_and(|(_, behind)| behind),
            wider: None,
        },
    }
}

/// A blade with a straight midrib from 0 to its length.
pub(crate) struct Straight<'a> {
    pub(crate) line: &'a [[f64; 2]],
    pub(crate) length: f64,
}

/// What is seen at one end.
struct End {
    angle: WithPlusMinus,
    /// What lies below the margin, of the triangle.
    fullness: f64,
}

impl Straight<'_> {
    /// Half widths left and right at a place along the midrib, to the outermost margin.
    pub(crate) fn sides(&self, along: f64) -> [f64; 2] {
        let mut sides = [0.0_f64; 2];
        for two in self.line.windows(2) {
            let (a, b) = (two[0], two[1]);
            if (a[0] <= along) == (b[0] <= along) {
                continue;
            }
            let aside = a[1] + (along - a[0]) / (b[0] - a[0]) * (b[1] - a[1]);
            let side = usize::from(aside < 0.0);
            sides[side] = sides[side].max(aside.abs());
        }
        sides
    }

    /// One end; `from`: how far along the midrib a place is that is so far from it; `off`: how far it may be off
    /// where that end lies, and where the other one does.
    fn end(&self, from: impl Fn(f64) -> f64, off: [f64; 2]) -> End {
        let quarter = QUARTER * self.length;
        let sides = self.sides(from(quarter));
        let sum: f64 = (0..PLACES)
            .map(|at| {
                let place = (at as f64 + 0.5) / PLACES as f64 * quarter;
                self.sides(from(place)).iter().sum::<f64>()
            })
            .sum();
        let triangle = sides.iter().sum::<f64>() / 2.0;
        // What both sides make with the midrib where both ends lie so much farther inside.
        let angles = |[this, other]: [f64; 2]| {
            let quarter = QUARTER * (self.length - this - other);
            self.sides(from(this + quarter)).map(|side| side.atan2(quarter))
        };
        let seen = angles([0.0; 2]);
        // The most by which each side changes, though it be a tooth that comes to lie there.
        let most = |moved: fn(f64) -> [f64; 2], off: f64| -> f64 {
            let other = [-1.0, -0.5, 0.5, 1.0].map(|part| angles(moved(part * off)));
            let most = |side: usize| {
                other.iter().map(|it| (it[side] - seen[side]).abs()).fold(0.0, f64::max)
            };
            most(0) + most(1)
        };
        let along = most(|this| [this, 0.0], off[0]).hypot(most(|other| [0.0, other], off[1]));
        let aside = sides.map(|side| EDGE * quarter / side.hypot(quarter).powi(2));
        let plus_minus = along.hypot(aside[0].hypot(aside[1]));
        End {
            angle: WithPlusMinus {
                value: seen.iter().sum::<f64>().to_degrees(),
                plus_minus: plus_minus.to_degrees(),
            },
            fullness: sum / PLACES as f64 / triangle.max(1e-9),
        }
    }

    /// How far up the blade is widest, as a share of its length.
    fn widest(&self) -> WithPlusMinus {
        const STEPS: usize = 100;
        let place = |at: usize| (at as f64 + 0.5) / STEPS as f64;
        let widths: Vec<f64> = (0..STEPS)
            .map(|at| self.sides(place(at) * self.length).iter().sum::<f64>())
            .collect();
        let most = widths.iter().copied().fold(0.0, f64::max);
        let nearly = |width: &f64| *width >= NEARLY * most;
        let first = widths.iter().position(nearly).unwrap_or(0);
        let last = widths.iter().rposition(nearly).unwrap_or(0);
        WithPlusMinus {
            value: f64::midpoint(place(first), place(last)),
            plus_minus: END.hypot((place(last) - place(first)) / 2.0),
        }
    }
}
