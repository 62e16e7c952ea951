//! Whether both sides of a base are alike: how far down each reaches, and how wide each is.
//!
//! From the outline of a leaf and its stalk to where each side leaves the stalk, and, where it goes on
//! down behind that, to its lowest place; from where the main vein runs to what each side has of the
//! width. Ellis et al., *Manual of Leaf Architecture*, 2009, name a base asymmetrical by width, by
//! extension or by insertion (from memory): the first is `wider` here, both others are `lower`. The midrib
//! line lies midway between both sides and cannot say which is wider. A stalk
//! that is bent where it joins the blade says little of a base that reaches behind it, and widens the ±.

use spinney_model::{OneSide, WhichSide, WithPlusMinus};

use crate::axis::{Along, Axis};
use crate::ends::Straight;
use crate::equations::nearest;
use crate::polygon::{Point, distance};
use crate::stalk::Cut;

/// The part of the way up in which the width of both sides is compared.
const LOWEST: [f64; 2] = [0.06, 0.25];
/// More than this share of the blade, and one side reaches clearly further down.
const LOWER: f64 = 0.03;
/// The manual's limit of 0.7 for the narrower side over the wider one: what the wider one then has of both.
const WIDER: f64 = 1.0 / 1.7;
/// So far a stalk is looked at below the base, in its widths and as a share of its length.
const STALK: [f64; 2] = [0.8, 12.0];
const OF_STALK: f64 = 0.7;
/// A side has left the stalk where it is so many stalk widths and pixels beside it; and is followed back
/// from there to the first.
const BESIDE: [[f64; 2]; 2] = [[0.3, 1.0], [0.9, 2.5]];
/// No side is followed back farther, in widths of the stalk.
const BACK: f64 = 4.0;
/// So far from the stalk a side that goes down is behind the base, in its widths.
const BEHIND: f64 = 1.0;
/// The ± of where a side begins: in pixels, of how far both sides were followed back, and a share of the
/// blade. Set on drawn leaves by
/// `crates/measure/benches/drawn_forms`.
const EDGE: f64 = 0.8;
const FOLLOWED: f64 = 0.3;
const OF_BLADE: f64 = 0.001;
/// The ± of a share of the width: a share, and where vein and edges are in pixels.
const OF_WIDTH: f64 = 0.003;
const VEIN: f64 = 1.2;
/// And of how far the places of the vein lie beside its curve.
const SCATTER: f64 = 2.0;

/// Which of the two sides of a blade laid straight is the right one, seen with the tip up.
const RIGHT: usize = 0;

/// What is told of two sides, by the side that has more.
fn one_side(value: f64, plus_minus: f64, limit: f64, right: bool) -> Option<OneSide> {
    // Of a blade that is no longer than a point nothing can be told.
    if !(value.is_finite() && plus_minus.is_finite()) {
        return None;
    }
    let which = match right {
        _ if value + plus_minus <= limit => Some(WhichSide::Neither),
        _ if value - plus_minus < limit => None,
        true => Some(WhichSide::Right),
        false => Some(WhichSide::Left),
    };
    Some(OneSide { value: WithPlusMinus { value, plus_minus }, which })
}

/// Which side is wider; `along`: a blade so long along its main vein.
pub(crate) fn wider(along: &Along, length: f64) -> Option<OneSide> {
    const PLACES: usize = 40;
    let blade = Straight { line: &along.straight, length: along.length };
    let [mut right, mut left] = [0.0; 2];
    for at in 0..PLACES {
        let part = (at as f64 + 0.5) / PLACES as f64;
        let up = LOWEST[0] + part * (LOWEST[1] - LOWEST[0]);
        let sides = blade.sides(up * length);
        right += sides[RIGHT] / PLACES as f64;
        left += sides[1 - RIGHT] / PLACES as f64;
    }
    let whole = left + right;
    let share = left.max(right) / whole;
    let off = VEIN + SCATTER * along.off;
    one_side(share, OF_WIDTH.hypot(off / whole), WIDER, right > left)
}

/// Which side reaches further down, and whether any goes on down behind where it leaves the stalk. None: it
/// cannot be seen where they begin.
pub(crate) fn lower(outline: &[Point], cut: &Cut, axis: &Axis) -> Option<(OneSide, bool)> {
    let stalk = Stalk::of(cut)?;
    let sides = stalk.sides(outline, cut)?;
    let [left, right] = &sides;
    // Where both go on behind the base, it matters which way is down.
    let apart = sides.iter().map(|side| side.lowest[1].abs()).sum::<f64>();
    let behind = left.behind || right.behind;
    let turned = if behind { stalk.turn(axis) } else { 0.0 };
    let (sin, cos) = (turned / 2.0).sin_cos();
    let height = |side: &Side| side.lowest[0] * cos + side.lowest[1] * sin;
    let by = (height(left) - height(right)) / axis.length;
    let parts = [
        EDGE / axis.length,
        FOLLOWED * (left.back + right.back) / axis.length,
        OF_BLADE,
        turned / 2.0 * apart / axis.length,
    ];
    let plus_minus = parts.iter().map(|part| part * part).sum::<f64>().sqrt();
    Some((one_side(by.abs(), plus_minus, LOWER, by > 0.0)?, behind))
}

/// A stalk near its base, carried on into the blade.
struct Stalk {
    base: Point,
    /// The direction upwards.
    up: Point,
    /// How far the middle is to the right, by how far up: a + b u + c u².
    curve: [f64; 3],
    width: f64,
}

/// Where a side of a blade begins.
struct Side {
    /// How far up its lowest place is, and how far to the right.
    lowest: [f64; 2],
    /// How far it was followed back.
    back: f64,
    /// It goes on down behind where it begins.
    behind: bool,
}

impl Stalk {
    /// None: too little of it is seen.
    fn of(cut: &Cut) -> Option<Self> {
        let base = cut.base();
        let mut gone = 0.0;
        let mut near: Vec<Point> = Vec::new();
        for two in cut.stalk.windows(2).rev() {
            gone += distance(two[0], two[1]);
            if gone > (STALK[1] * cut.width).min(OF_STALK * cut.length) {
                break;
            }
            if gone > STALK[0] * cut.width {
                near.push(two[0]);
            }
        }
        let (first, last) = (near.first()?, near.last()?);
        let way = distance(*first, *last);
        if near.len() < 3 || way < cut.width {
            return None;
        }
        let up = [(first[0] - last[0]) / way, (first[1] - last[1]) / way];
        let mut stalk = Self { base, up, curve: [0.0; 3], width: cut.width };
        // Once along its chord, and once along the way in which it comes to the base.
        for _ in 0..2 {
            let turn = stalk.curve[1].atan();
            let ([a, b], (sin, cos)) = (stalk.up, turn.sin_cos());
            stalk.up = [a * cos - b * sin, b * cos + a * sin];
            let seen = near.iter().map(|point| stalk.flat(*point));
            let widths = seen.map(|[up, right]| [up / cut.width, right]);
            stalk.curve = nearest(widths.map(|[up, right]| ([1.0, up, up * up], right)))?;
            stalk.curve[1] /= cut.width;
            stalk.curve[2] /= cut.width * cut.width;
        }
        Some(stalk)
    }

    /// How far up a place is from the base, and how far to the right of the straight line.
    fn flat(&self, point: Point) -> [f64; 2] {
        let [x, y] = [point[0] - self.base[0], point[1] - self.base[1]];
        let [a, b] = self.up;
        [x * a + y * b, y * a - x * b]
    }

    /// The same along its curve, near the base.
    fn seen(&self, point: Point) -> [f64; 2] {
        let [up, right] = self.flat(point);
        let [a, b, c] = self.curve;
        let near = up.clamp(-(STALK[1] * self.width), 6.0 * self.width);
        let slope = b + 2.0 * c * near;
        let middle = a + b * near + c * near * near + slope * (up - near);
        [up, (right - middle) / slope.hypot(1.0)]
    }

    /// By how many radians the midrib line goes on in another direction.
    fn turn(&self, axis: &Axis) -> f64 {
        let few = (axis.midrib.len() / 10).max(1);
        let [a, b] = [axis.midrib[0], axis.midrib[few]].map(|point| self.flat(point));
        (b[1] - a[1]).atan2(b[0] - a[0]) - self.curve[1].atan()
    }

    /// Both sides, left and right.
    fn sides(&self, outline: &[Point], cut: &Cut) -> Option<[Side; 2]> {
        let count = outline.len();
        let place = |at: Point| {
            let off = |place: &usize| distance(outline[*place], at);
            (0..count).min_by(|a, b| off(a).total_cmp(&off(b)))
        };
        let below = (STALK[1] * self.width).min(OF_STALK * cut.length) as usize;
        let [back, on] = [place(cut.sides[0])?, place(cut.sides[1])?];
        // From the stalk up along each side.
        let walk = |from: usize, on: bool| -> Vec<[f64; 2]> {
            let step = |gone: usize| match on {
                true => outline[(from + 2 * count - below.min(count) + gone) % count],
                false => outline[(from + 2 * count + below.min(count) - gone) % count],
            };
            (0..below + count / 3).map(|gone| self.seen(step(gone))).collect()
        };
        let one = self.side(&walk(back, false), below)?;
        let other = self.side(&walk(on, true), below)?;
        match one.0 < other.0 {
            true => Some([one.1, other.1]),
            false => Some([other.1, one.1]),
        }
    }

    /// A side from the stalk upwards, `below` places of it along the stalk: how far to the right the stalk's own
    /// edge is, and where the blade begins.
    fn side(&self, walk: &[[f64; 2]], below: usize) -> Option<(f64, Side)> {
        let along = |place: &&[f64; 2]| {
            (-STALK[1] * self.width..-STALK[0] * self.width).contains(&place[0])
        };
        // Behind the base hang the lobes of a heart, as low as the stalk.
        let of_stalk = walk.iter().take(below).filter(along);
        let mut edge: Vec<f64> = of_stalk.map(|place| place[1]).collect();
        edge.sort_by(f64::total_cmp);
        let edge = *edge.get(edge.len() / 2)?;
        let beside = |place: &[f64; 2]| (place[1] - edge) * edge.signum();
        let limits = BESIDE.map(|[widths, pixels]| widths * self.width + pixels);
        let second = walk.iter().position(|place| beside(place) > limits[1])?;
        let first = walk[..second].iter().rposition(|place| beside(place) <= limits[0])?;
        let [low, high] = [walk[first], walk[second]];
        let slope = (limits[1] - limits[0]) / (high[0] - low[0]).max(0.5);
        let back = match high[0] > low[0] {
            true => (beside(&low) / slope).clamp(0.0, BACK * self.width),
            false => 0.0,
        };
        let begins = [low[0] - back, edge];
        let deepest = walk[first..].iter().min_by(|a, b| a[0].total_cmp(&b[0]))?;
        let behind = deepest[0] < begins[0] && (deepest[1] - edge).abs() > BEHIND * self.width;
        Some((edge, Side { lowest: if behind { *deepest } else { begins }, back, behind }))
    }
}
