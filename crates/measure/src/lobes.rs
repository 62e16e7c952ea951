//! The lobes of a blade: how many, how deep the gaps between them are, how they are arranged.
//!
//! From the turns of an outline and the midrib line to what stands out by a quarter or more of the
//! way to the midrib, or to the centre where lobes are arranged like a hand. What stands out less is
//! a tooth (Ellis et al., *Manual of Leaf Architecture*, 2009: a lobe is a projection whose sinus is
//! incised by 25 % or more of the distance to the midvein; from memory). Veins are not looked for,
//! so the arrangement is judged by where the middle lines of the lobes meet the midrib.

use spinney_model::{Arrangement, Lobes, Sinuses};

use crate::polygon::{Point, between, distance};
use crate::turns::{Sinus, Turns, beside};

/// From so deep a sinus on it parts two lobes.
const LOBED: f64 = 0.25;
/// A sinus is at least so deep, of the length of its lid: the slight hollow below a drawn-out tip
/// is none.
const HOLLOW: f64 = 0.1;
/// And of the blade's length: what is less is a tooth, however near the midrib is.
const SMALLEST: f64 = 0.02;
/// Where there are so many teeth, a sinus between lobes is so many times as deep as those between them
/// usually are: near the tip of a blade a tooth reaches as far in.
const TEETH: usize = 6;
const DEEPER: f64 = 2.0;
/// Lobes around a centre reach so far from it, of the blade's length.
const FROM_CENTRE: f64 = 0.35;
/// Where the lobes beside the tip point back to the first part of the midrib, or to its other parts, as shares of
/// its length.
const HAND: f64 = 0.22;
const FEATHER: f64 = 0.34;
/// The ± of a depth: of where the midrib is taken to be, and of the edge, in pixels.
const PLUS_MINUS: f64 = 0.06;
const EDGE: f64 = 1.5;

/// What the lobes of a blade are told from.
pub(crate) struct Blade<'a> {
    pub(crate) base: Point,
    pub(crate) midrib: &'a [Point],
    pub(crate) length: f64,
}

impl Blade<'_> {
    fn to_midrib(&self, point: Point) -> f64 {
        let ways = self.midrib.windows(2).map(|two| beside(point, [two[0], two[1]]));
        ways.fold(f64::MAX, f64::min)
    }

    /// How deep a sinus is, of the way to the midrib: across the lid, towards the nearest place of
    /// the midrib.
    fn across(&self, line: &[Point], sinus: &Sinus) -> f64 {
        sinus.depth / (sinus.depth + self.to_midrib(line[sinus.at])).max(1e-9)
    }

    /// How deep it is, of the way to the centre.
    fn inwards(&self, line: &[Point], sinus: &Sinus) -> f64 {
        let way = |at: usize| distance(line[at], self.base);
        let [first, second] = sinus.lid.map(way);
        match first.min(second) >= FROM_CENTRE * self.length {
            true => 1.0 - way(sinus.at) / f64::midpoint(first, second),
            false => 0.0,
        }
    }

    /// Whether a sinus so deep parts two lobes.
    fn parts(&self, line: &[Point], sinus: &Sinus, depth: f64) -> bool {
        let lid = distance(line[sinus.lid[0]], line[sinus.lid[1]]);
        depth >= LOBED && sinus.depth >= (HOLLOW * lid).max(SMALLEST * self.length)
    }
}

/// Leaves of the turns what parts lobes, and says how they are.
pub(crate) fn lobes(turns: &mut Turns<'_>, blade: &Blade<'_>) -> Lobes {
    let all = turns.sinuses.clone();
    turns.keep(|line, sinus| {
        let depth = blade.across(line, sinus).max(blade.inwards(line, sinus));
        blade.parts(line, sinus, depth)
    });
    let usual = usual(&all, turns);
    turns.keep(|_, sinus| sinus.depth >= DEEPER * usual);
    let arrangement = arrangement(turns, blade);
    let depth = |line: &[Point], sinus: &Sinus| {
        let (inwards, across) = (blade.inwards(line, sinus), blade.across(line, sinus));
        match arrangement {
            Some(Arrangement::Hand) => inwards,
            None if inwards >= LOBED => inwards,
            _ => across,
        }
    };
    turns.keep(|line, sinus| blade.parts(line, sinus, depth(line, sinus)));
    let line = turns.line;
    let deepest = turns.sinuses.iter().map(|it| (depth(line, it), it.depth));
    let sinuses = deepest.max_by(|a, b| a.0.total_cmp(&b.0)).map(|(depth, pixels)| Sinuses {
        depth,
        plus_minus: PLUS_MINUS.hypot(depth * EDGE / pixels),
        arrangement,
        places: turns.sinuses.iter().map(|sinus| line[sinus.at]).collect(),
    });
    Lobes { tips: turns.tips().into_iter().map(|at| line[at]).collect(), sinuses }
}

/// How deep sinuses between large teeth usually are; 0: it has no teeth to speak of.
fn usual(all: &[Sinus], lobes: &Turns<'_>) -> f64 {
    let under = |sinus: &Sinus, lobe: &Sinus| (sinus.lid[0]..=sinus.lid[1]).contains(&lobe.at);
    let parts = |sinus: &&Sinus| lobes.sinuses.iter().any(|lobe| under(sinus, lobe));
    let mut teeth: Vec<f64> =
        all.iter().filter(|sinus| !parts(sinus)).map(|sinus| sinus.depth).collect();
    teeth.sort_by(f64::total_cmp);
    if teeth.len() < TEETH { 0.0 } else { teeth[teeth.len() * 4 / 5] }
}

/// How the lobes are arranged, by where their middle lines meet the midrib. One lobe on each side may
/// be either.
fn arrangement(turns: &Turns<'_>, blade: &Blade<'_>) -> Option<Arrangement> {
    let tip = *blade.midrib.last()?;
    let line = turns.line;
    let tips = turns.tips();
    let mut ends = vec![0];
    ends.extend(turns.sinuses.iter().map(|sinus| sinus.at));
    ends.push(line.len() - 1);
    let foot = |at: usize| between(line[ends[at]], line[ends[at + 1]], 0.5);
    // The lobe at the tip lies along the midrib.
    let last = (0..tips.len())
        .min_by(|a, b| distance(line[tips[*a]], tip).total_cmp(&distance(line[tips[*b]], tip)));
    // Those beside it say most: below them a feather and a hand are alike.
    let last = last.filter(|_| tips.len() > 3)?;
    let beside = [last.checked_sub(1), (last + 1 < tips.len()).then_some(last + 1)];
    let met = |at: usize| met(line[tips[at]], foot(at), [blade.base, tip]);
    let parts: Vec<f64> = beside.into_iter().flatten().filter_map(met).collect();
    let mean = parts.iter().sum::<f64>() / parts.len() as f64;
    match mean {
        part if part <= HAND => Some(Arrangement::Hand),
        part if part >= FEATHER => Some(Arrangement::Feather),
        _ => None,
    }
}

/// How far along the line from base to tip the line from a tip through a foot meets it.
fn met(from: Point, through: Point, [base, tip]: [Point; 2]) -> Option<f64> {
    let way = [through[0] - from[0], through[1] - from[1]];
    let along = [tip[0] - base[0], tip[1] - base[1]];
    let across = way[0] * along[1] - way[1] * along[0];
    let to = [base[0] - from[0], base[1] - from[1]];
    let part = (to[0] * way[1] - to[1] * way[0]) / across;
    (across.abs() > 1e-9).then_some(part)
}
