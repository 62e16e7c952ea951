//! The midrib line of a blade, its length, and the width at right angles to it.
//!
//! From the outline of a blade and its base to the line midway between both sides (Ellis et al.,
//! *Manual of Leaf Architecture*, 2009: blade length along the midvein, width at right angles; the
//! midvein itself is not looked for: in most pictures it cannot be seen). The tip is the
//! place farthest along that line. The line is a curve with one or two bends
//! at most: what teeth and lobes do to the middle is no bend of the midrib.

use crate::polygon::{Point, distance, length};

/// Places along the blade where its middle is looked at.
const PLACES: usize = 60;
/// Base and tip are no wider than a stalk or a point: there the middle says nothing.
const ENDS: f64 = 0.08;
/// A bend counts when it is so many times what it could be by chance.
const SURE: f64 = 2.5;
/// Neighbouring places say the same: so many count as one.
const ALIKE: f64 = 4.0;
/// The part of the blade by which it is seen where the tip lies, and how often it is looked for.
const TIPWARD: std::ops::RangeInclusive<f64> = 0.12..=0.85;
const ROUNDS: usize = 3;
/// What it costs to lie beside that line, of the way beside it: less than any pointed tip gains.
const ASIDE: f64 = 0.3;
/// Points of the line that is handed on.
const POINTS: usize = 48;

/// The axis of a blade.
pub(crate) struct Axis {
    /// From base to tip.
    pub(crate) midrib: Vec<Point>,
    /// Along it.
    pub(crate) length: f64,
    /// How much of a pointed tip is too thin to be seen: it lies beyond the midrib line.
    pub(crate) unseen: f64,
    /// From the outermost place of one side to that of the other, at right angles.
    pub(crate) width: f64,
    /// A line across of that width.
    pub(crate) across: [Point; 2],
    /// The blade as if its midrib were straight: how far along it each point is, and how far beside it.
    pub(crate) straight: Vec<Point>,
}

/// The axis of a blade that begins at its base; and that ends where a person says.
pub(crate) fn axis(blade: &[Point], base: Point, said: Option<Point>) -> Axis {
    let chord = match said {
        Some(tip) => Chord::new(base, tip),
        None => to_tip(blade, base),
    };
    let flat: Vec<Point> = blade.iter().map(|point| chord.seen(*point)).collect();
    let bend = Bend::of(&flat);
    let midrib = bend.drawn(&chord);
    let (mut left, mut right) = ((0.0, 0.0), (0.0, 0.0));
    for point in &flat {
        let aside = bend.aside(*point);
        if aside > left.0 {
            left = (aside, point[0]);
        }
        if aside < right.0 {
            right = (aside, point[0]);
        }
    }
    let place = f64::midpoint(left.1, right.1).clamp(0.0, 1.0);
    let across = [left.0, right.0].map(|aside| chord.back(bend.beside(place, aside)));
    let length = length(&midrib);
    let straight = bend.straight(&flat, length, &chord);
    let unseen = unseen_tip(&straight, length);
    Axis { length, unseen, midrib, width: (left.0 - right.0) * chord.length, across, straight }
}

/// A blade along another line than the one midway between both sides.
pub(crate) struct Along {
    /// From the base on.
    pub(crate) midrib: Vec<Point>,
    /// Along it.
    pub(crate) length: f64,
    /// How far its places usually lie beside it, in pixels.
    pub(crate) off: f64,
    /// The blade as if that were straight.
    pub(crate) straight: Vec<Point>,
}

/// A blade along its main vein, as far as that is seen: from the base to the last of some places.
pub(crate) fn along(blade: &[Point], base: Point, seen: &[Point]) -> Option<Along> {
    let chord = Chord::new(base, *seen.last()?);
    let seen: Vec<Point> = seen.iter().map(|point| chord.seen(*point)).collect();
    let bend = Bend::through(&seen);
    let midrib = bend.drawn(&chord);
    let length = length(&midrib);
    let flat: Vec<Point> = blade.iter().map(|point| chord.seen(*point)).collect();
    let off = usual(seen.iter().map(|point| (point[1] - bend.at(point[0])).abs()));
    let straight = bend.straight(&flat, length, &chord);
    Some(Along { length, straight, off: off * chord.length, midrib })
}

/// Where both sides of a tip are looked at, in pixels from its end.
const NEAR_TIP: [f64; 2] = [4.0, 10.0];
/// How wide a tip must be to be seen, in pixels: the blur of a scanner and of the outline. A drawn-out tip becomes
/// thinner still beyond where its sides are looked at, and that counts once more.
const SEEN: f64 = 1.5;

/// A tip that is wider there, or hardly becomes wider, is blunt: it ends where it is seen to end.
const THIN: f64 = 12.0;
const WIDENS: f64 = 0.12;
/// No tip goes on farther than this share of the blade.
const FARTHEST: f64 = 0.03;

/// How far beyond its end the sides of a pointed tip would meet, in pixels: no farther than what
/// is too thin to be seen. Of a blunt tip that is nothing.
fn unseen_tip(straight: &[Point], length: f64) -> f64 {
    let [near, far] = NEAR_TIP.map(|by| across(straight, length - by));
    let (Some(near), Some(far)) = (near, far) else { return 0.0 };
    let slope = (far - near) / (NEAR_TIP[1] - NEAR_TIP[0]);
    if near > THIN || slope < WIDENS {
        return 0.0;
    }
    let drawn_out = 1.0 / (1.0 + 4.0 * slope * slope);
    let most = (SEEN * (1.0 + drawn_out) / slope).min(FARTHEST * length);
    (near / slope - NEAR_TIP[0]).clamp(0.0, most)
}

/// How wide a blade is at a place along its midrib line.
fn across(straight: &[Point], along: f64) -> Option<f64> {
    let mut span = (f64::MAX, f64::MIN);
    for (at, a) in straight.iter().enumerate() {
        let b = straight[(at + 1) % straight.len()];
        if (a[0] - along) * (b[0] - along) <= 0.0 && a[0] != b[0] {
            let aside = a[1] + (along - a[0]) / (b[0] - a[0]) * (b[1] - a[1]);
            span = (span.0.min(aside), span.1.max(aside));
        }
    }
    (span.0 < span.1).then_some(span.1 - span.0)
}

/// The chord to where the tip seems to be.
fn to_tip(blade: &[Point], base: Point) -> Chord {
    let farthest = blade
        .iter()
        .copied()
        .max_by(|one, other| distance(base, *one).total_cmp(&distance(base, *other)));
    let mut chord = Chord::new(base, farthest.unwrap_or(base));
    for _ in 0..ROUNDS {
        let flat: Vec<Point> = blade.iter().map(|point| chord.seen(*point)).collect();
        chord = Chord::new(base, chord.back(tip(&flat)));
    }
    chord
}

/// The tip, seen from a chord that leads about there: the place farthest along, of those near the end
/// of the line midway between both sides. At a blunt end that is the middle, and not a corner.
fn tip(flat: &[Point]) -> Point {
    let middles = middles(flat, TIPWARD);
    // The line a u + b u², by least squares in which a middle that is far off counts less.
    let (mut tilt, mut bow) = (0.0, 0.0);
    for _ in 0..5 {
        let off = |[u, v]: &Point| (v - tilt * u - bow * u * u).abs();
        let usual = usual(middles.iter().map(off));
        let terms = |u: f64| (u, u * u);
        let Some(sums) = Sums::of(&middles, usual, terms, off) else { break };
        (tilt, bow) = sums.solved();
    }
    let aside = |[u, v]: &Point| (v - tilt * u - bow * u * u).abs();
    let far = |point: &Point| point[0] - ASIDE * aside(point);
    let end = flat.iter().filter(|point| point[0] > 0.6);
    let end = end.max_by(|one, other| far(one).total_cmp(&far(other)));
    end.copied().unwrap_or([1.0, 0.0])
}

/// What half of some distances stay below, as a standard deviation (Huber 1964).
fn usual(off: impl Iterator<Item = f64>) -> f64 {
    let mut off: Vec<f64> = off.collect();
    off.sort_by(f64::total_cmp);
    1.4826 * off.get(off.len() / 2).copied().unwrap_or(0.0) + 1e-6
}

/// The middles between both sides, at places along the chord.
fn middles(flat: &[Point], range: std::ops::RangeInclusive<f64>) -> Vec<Point> {
    let mut spans = [(f64::MAX, f64::MIN); PLACES];
    for (at, a) in flat.iter().enumerate() {
        let b = flat[(at + 1) % flat.len()];
        let (low, high) = (a[0].min(b[0]), a[0].max(b[0]));
        let first = (low * PLACES as f64 - 0.5).ceil().max(0.0) as usize;
        for (at, span) in spans.iter_mut().enumerate().skip(first) {
            let u = part(at);
            if u > high {
                break;
            }
            let share = if high > low { (u - a[0]) / (b[0] - a[0]) } else { 0.0 };
            let v = a[1] + share * (b[1] - a[1]);
            *span = (span.0.min(v), span.1.max(v));
        }
    }
    let seen =
        |(at, span): &(usize, &(f64, f64))| range.contains(&part(*at)) && span.0 <= span.1;
    let spans = spans.iter().enumerate().filter(seen);
    spans.map(|(at, span)| [part(at), f64::midpoint(span.0, span.1)]).collect()
}

/// The straight line from base to tip; seen from it, the base is at 0, the tip at 1.
struct Chord {
    base: Point,
    along: Point,
    length: f64,
}

impl Chord {
    fn new(base: Point, tip: Point) -> Self {
        let length = distance(base, tip).max(1.0);
        let along = [(tip[0] - base[0]) / length, (tip[1] - base[1]) / length];
        Self { base, along, length }
    }

    fn seen(&self, point: Point) -> Point {
        let [x, y] = [point[0] - self.base[0], point[1] - self.base[1]];
        let [along, aside] = self.along;
        [(x * along + y * aside) / self.length, (y * along - x * aside) / self.length]
    }

    fn back(&self, [part, aside]: Point) -> Point {
        let [x, y] = self.along;
        [
            self.base[0] + self.length * (part * x - aside * y),
            self.base[1] + self.length * (part * y + aside * x),
        ]
    }
}

/// The sums of least squares for two terms a and b, in which a middle that is far off counts less
/// (Huber, *Robust estimation of a location parameter*, 1964).
#[derive(Default)]
struct Sums {
    aa: f64,
    ab: f64,
    bb: f64,
    av: f64,
    bv: f64,
}

impl Sums {
    /// None: the middles do not tell the two terms apart. `off`: how far a middle is off now.
    fn of(
        middles: &[Point],
        usual: f64,
        terms: impl Fn(f64) -> (f64, f64),
        off: impl Fn(&Point) -> f64,
    ) -> Option<Self> {
        let mut sums = Self::default();
        for middle in middles {
            let weight = (1.345 * usual / off(middle).max(1e-9)).min(1.0);
            let ((a, b), v) = (terms(middle[0]), middle[1]);
            sums.aa += weight * a * a;
            sums.ab += weight * a * b;
            sums.bb += weight * b * b;
            sums.av += weight * a * v;
            sums.bv += weight * b * v;
        }
        (sums.whole() >= 1e-12).then_some(sums)
    }

    fn whole(&self) -> f64 {
        self.aa * self.bb - self.ab * self.ab
    }

    /// How much there is of a and of b.
    fn solved(&self) -> (f64, f64) {
        let Self { aa, ab, bb, av, bv } = self;
        ((av * bb - bv * ab) / self.whole(), (bv * aa - av * ab) / self.whole())
    }
}

/// How far the midrib lies beside the chord: u (1 - u) (a + b (2 u - 1)).
struct Bend {
    bow: f64,
    twist: f64,
}

impl Bend {
    /// The bend that goes midway between both sides.
    fn of(flat: &[Point]) -> Self {
        Self::through(&middles(flat, ENDS..=1.0 - ENDS))
    }

    /// The bend that goes through these middles, by least squares.
    fn through(middles: &[Point]) -> Self {
        let usual_off =
            |bend: &Self| usual(middles.iter().map(|[u, v]| (v - bend.at(*u)).abs()));
        let mut found = Self { bow: 0.0, twist: 0.0 };
        for _ in 0..6 {
            let usual = usual_off(&found);
            let off = |[u, v]: &Point| (v - found.at(*u)).abs();
            let Some(sums) = Sums::of(middles, usual, terms, off) else { break };
            let (bow, twist) = sums.solved();
            found = Self { bow, twist };
            // What is left beside this line, and not beside the one before: that has its bend in it.
            let usual = usual_off(&found);
            let chance = |square: f64| SURE * usual * (ALIKE / square).sqrt();
            if found.twist.abs() < chance(sums.bb) {
                found = Self { bow: sums.av / sums.aa, twist: 0.0 };
            }
            if found.bow.abs() < chance(sums.aa) {
                found.bow = 0.0;
            }
        }
        found
    }

    /// Its places from base to tip.
    fn drawn(&self, chord: &Chord) -> Vec<Point> {
        let part = |at: usize| at as f64 / POINTS as f64;
        (0..=POINTS).map(|at| chord.back([part(at), self.at(part(at))])).collect()
    }

    /// A line seen from the chord, as if the midrib were straight and so long: how far along it each point
    /// stands beside it, and how far beside.
    fn straight(&self, flat: &[Point], length: f64, chord: &Chord) -> Vec<Point> {
        let place = |point: &Point| {
            let slope = self.slope(point[0].clamp(0.0, 1.0));
            let aside = self.aside(*point);
            let foot = point[0] + aside * slope / slope.hypot(1.0);
            [foot * length, aside * chord.length]
        };
        flat.iter().map(place).collect()
    }

    fn at(&self, u: f64) -> f64 {
        let (a, b) = terms(u);
        self.bow * a + self.twist * b
    }

    fn slope(&self, u: f64) -> f64 {
        // Of u - u² and of (u - u²) (2 u - 1) = -2 u³ + 3 u² - u.
        self.bow * (1.0 - 2.0 * u) + self.twist * (-6.0 * u * u + 6.0 * u - 1.0)
    }

    /// How far a point is beside the line; beyond its ends, beside the line carried on straight.
    fn aside(&self, [u, v]: Point) -> f64 {
        let near = u.clamp(0.0, 1.0);
        let slope = self.slope(near);
        (v - self.at(near) - slope * (u - near)) / slope.hypot(1.0)
    }

    /// The point so far beside the line.
    fn beside(&self, u: f64, aside: f64) -> Point {
        let slope = self.slope(u);
        let whole = slope.hypot(1.0);
        [u - aside * slope / whole, self.at(u) + aside / whole]
    }
}

fn terms(u: f64) -> (f64, f64) {
    let bow = u * (1.0 - u);
    (bow, bow * (2.0 * u - 1.0))
}

fn part(place: usize) -> f64 {
    (place as f64 + 0.5) / PLACES as f64
}

#[cfg(test)]
mod tests {
    use super::unseen_tip;
    use crate::polygon::Point;

    /// Both sides of a blade 400 pixels long, so wide at each place.
    fn blade(width: impl Fn(f64) -> f64) -> Vec<Point> {
        let up = (0..=400).map(|at| [f64::from(at), -width(f64::from(at)) / 2.0]);
        let down = (0..=400).rev().map(|at| [f64::from(at), width(f64::from(at)) / 2.0]);
        up.chain(down).collect()
    }

    #[test]
    fn only_a_thin_tip_goes_on_beyond_what_is_seen() {
        // A cone of which the last five pixels are not seen.
        let cone = unseen_tip(&blade(|at| 0.5 * (405.0 - at)), 400.0);
        assert!((3.0..=5.01).contains(&cone), "{cone}");
        // Cut off square, a needle as wide all along, an ellipse, and one that becomes narrower.
        for (name, blunt) in [
            ("strap", blade(|_| 200.0)),
            ("needle", blade(|_| 8.0)),
            ("ellipse", blade(|at| 240.0 * (at / 400.0 * (1.0 - at / 400.0)).sqrt())),
            ("club", blade(|at| 3.0 + at / 40.0)),
        ] {
            assert_eq!(unseen_tip(&blunt, 400.0), 0.0, "{name}");
        }
        // A tip that hardly widens does not make the blade longer by more than a few hundredths.
        let needle = unseen_tip(&blade(|at| 0.13 * (440.0 - at)), 400.0);
        assert!(needle <= 12.0, "{needle}");
    }
}
