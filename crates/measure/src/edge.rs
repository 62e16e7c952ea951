//! The edge of a blade: entire, wavy, toothed, double-toothed or spiny, and its teeth.
//!
//! From the sinuses of an outline that part no lobes to teeth, counted on each side. A tooth stands out
//! between two sinuses (Ellis et al., *Manual of Leaf Architecture*, 2009: a projection whose sinus is
//! incised by less than a quarter; teeth of two sizes make an edge double-toothed; teeth per
//! cm; from memory). Where the picture is too coarse to see teeth, that is said.

use spinney_model::{Edge, EdgeKind, EdgeUnseen, TeethPerCm};

use crate::polygon::{Point, area, distance, signed_area};
use crate::turns::{Sinus, beside};

/// So many teeth make an edge toothed.
const FEWEST: usize = 3;
/// Without teeth an edge is entire where a pixel is at most so many mm, or, where nobody knows how
/// large it is, where the blade is so many pixels long. Coarser ones say nothing.
const FINE: f64 = 0.13;
const LONG: f64 = 600.0;
/// Teeth narrower than this many pixels are not told apart.
const NARROWEST: f64 = 6.0;
/// A sinus less than so many times as deep as the deepest near it, of so many on each side, is one
/// between small teeth.
const SMALL: f64 = 0.6;
const NEAR: usize = 2;
/// Where this share of the large teeth has smaller ones on it, an edge is double-toothed.
const DOUBLE: f64 = 0.45;
/// On teeth lower than this many pixels smaller ones cannot be seen.
const LOWEST: f64 = 6.0;
/// Between sinuses so many times as far apart as usual is plain edge.
const APART: f64 = 2.5;
/// A tooth at the end of a row, which only one sinus bounds, is at least so high, of the usual height.
const AT_END: f64 = 0.45;
/// One between the last sinus and the tip of a lobe is at least so pointed, of the usual point: a tip that is
/// round stands out from a sinus, too.
const POINTED: f64 = 0.6;
/// How sharply a wave turns at most within an eighth of its width, of how it turns on the whole: a
/// point turns all at once, a sine by 0.56. Seen where it has so many pixels; a point of fewer than
/// the second number of them is blunted by the scan.
const ROUND: [f64; 2] = [0.75, 0.85];
const EIGHTH: f64 = 0.12;
const WIDE: [f64; 2] = [30.0, 50.0];
/// Spines: what a tooth has of the triangle between its point and both sinuses is at most so much, and each of its
/// sides is hollow by so much of it. Straight sides have all, a half-sine too. Seen on teeth that are so many
/// pixels wide and high, and so high of their width.
const FILLED: f64 = 0.8;
const EACH_SIDE: f64 = 0.06;
const SPINE: [f64; 2] = [30.0, 8.0];
const DEEP: f64 = 0.2;

/// What the edge is told from: the line around a blade, all its sinuses, and those that part lobes.
pub(crate) struct Margin<'a> {
    pub(crate) line: &'a [Point],
    pub(crate) all: &'a [Sinus],
    pub(crate) lobes: &'a [Sinus],
    /// The tips of the lobes, one more than there are sinuses between them.
    pub(crate) tips: &'a [usize],
    /// The tip of the blade.
    pub(crate) tip: Point,
    /// How long the blade is, in pixels.
    pub(crate) length: f64,
    /// Sides are those of each leaflet, and not those of the leaf.
    pub(crate) leaflets: bool,
}

/// A lobe, or a leaflet, or the whole blade: from the sinus or the base before it to the one behind.
struct Lobe {
    from: usize,
    to: usize,
    tip: usize,
    /// Its own sinuses in their order.
    sinuses: Vec<Sinus>,
}

/// What stands out between two places.
struct Tooth {
    /// From where to where, and its tip.
    ends: [usize; 2],
    tip: usize,
    /// Both ends are sinuses.
    whole: bool,
    height: f64,
    width: f64,
}

/// The edge of a blade; `mm` is the length of a pixel.
pub(crate) fn edge(margin: &Margin<'_>, mm: Option<f64>) -> Result<Edge, EdgeUnseen> {
    let mut lobes = margin.lobes();
    let rows: Vec<Row> = lobes.iter().map(Row::of).collect();
    let count: usize = rows.iter().map(|row| row.teeth).sum();
    let with_small: usize = rows.iter().map(|row| row.with_small).sum();
    // Spines of several sizes are no teeth with smaller ones on them.
    let mut teeth = margin.teeth(&lobes);
    let spiny = margin.spiny(&teeth);
    let double = !spiny && count >= FEWEST && with_small as f64 >= DOUBLE * count as f64;
    if double {
        for (lobe, row) in lobes.iter_mut().zip(rows) {
            lobe.sinuses = row.large;
        }
        teeth = margin.teeth(&lobes);
    }
    if teeth.len() < FEWEST {
        return match mm.map_or(margin.length >= LONG, |mm| mm <= FINE) {
            true => {
                Ok(Edge { kind: EdgeKind::Entire, teeth: Default::default(), per_cm: None })
            }
            false => Err(EdgeUnseen::TooCoarse),
        };
    }
    let width = middle(teeth.iter().map(|tooth| tooth.width));
    if width < NARROWEST {
        return Err(EdgeUnseen::TooCoarse);
    }
    let kind = match middle(teeth.iter().map(|tooth| tooth.height)) {
        _ if double => EdgeKind::DoubleToothed,
        _ if spiny => EdgeKind::Spiny,
        _ if width >= WIDE[0] && margin.round(&teeth, width) => EdgeKind::Wavy,
        height if height < LOWEST => EdgeKind::ToothedOrDouble,
        _ => EdgeKind::Toothed,
    };
    let (left, right): (Vec<&Tooth>, _) =
        teeth.iter().partition(|tooth| margin.is_left(&lobes, tooth));
    let tips = |side: Vec<&Tooth>| side.iter().map(|tooth| margin.line[tooth.tip]).collect();
    let teeth_of = [tips(left), tips(right)];
    Ok(Edge { kind, teeth: teeth_of, per_cm: mm.map(|mm| per_cm(&teeth, mm)) })
}

/// The large sinuses of a lobe.
struct Row {
    large: Vec<Sinus>,
    /// How many teeth are between two of them, and how many of those have smaller ones on them.
    teeth: usize,
    with_small: usize,
}

impl Row {
    fn of(lobe: &Lobe) -> Self {
        let sinuses = &lobe.sinuses;
        let deepest = |at: usize| {
            let near = &sinuses[at.saturating_sub(NEAR)..(at + NEAR + 1).min(sinuses.len())];
            near.iter().map(|sinus| sinus.depth).fold(0.0, f64::max)
        };
        let is_large = |at: &usize| sinuses[*at].depth >= SMALL * deepest(*at);
        let large: Vec<usize> = (0..sinuses.len()).filter(is_large).collect();
        let of_tip =
            |two: &&[usize]| (sinuses[two[0]].at..=sinuses[two[1]].at).contains(&lobe.tip);
        let teeth = || large.windows(2).filter(|two| !of_tip(two));
        // One small sinus at the end of a row is the beginning of plain edge, two are on a tooth.
        let at_end = [large.first().copied(), large.last().map(|at| sinuses.len() - 1 - at)];
        let at_end = at_end.into_iter().flatten().filter(|small| *small >= 2).count();
        let with_small = teeth().filter(|two| two[1] - two[0] > 1).count() + at_end;
        let teeth = teeth().count() + at_end;
        Self { large: large.into_iter().map(|at| sinuses[at]).collect(), teeth, with_small }
    }
}

/// How many teeth are in a cm, by how wide the middle one is.
fn per_cm(teeth: &[Tooth], mm: f64) -> TeethPerCm {
    let count = teeth.len() as f64;
    let mean = teeth.iter().map(|tooth| tooth.width).sum::<f64>() / count;
    let squares = teeth.iter().map(|tooth| (tooth.width - mean).powi(2)).sum::<f64>();
    let error = (squares / (count - 1.0) / count).sqrt();
    let value = 10.0 / (middle(teeth.iter().map(|tooth| tooth.width)) * mm);
    TeethPerCm { value, plus_minus: value * 2.0 * (error / mean).hypot(0.02) }
}

fn middle(all: impl Iterator<Item = f64>) -> f64 {
    let mut all: Vec<f64> = all.collect();
    all.sort_by(f64::total_cmp);
    all.get(all.len() / 2).copied().unwrap_or(0.0)
}

impl Margin<'_> {
    fn lobes(&self) -> Vec<Lobe> {
        let mut ends = vec![0];
        ends.extend(self.lobes.iter().map(|sinus| sinus.at));
        ends.push(self.line.len() - 1);
        let parts = |sinus: &Sinus| {
            let lid = sinus.lid[0]..=sinus.lid[1];
            self.lobes.iter().any(|lobe| lid.contains(&lobe.at))
        };
        let lobe = |(tip, ends): (&usize, &[usize])| {
            let within = |sinus: &&Sinus| (ends[0]..ends[1]).contains(&sinus.at);
            let own = self.all.iter().filter(within).filter(|sinus| !parts(sinus)).copied();
            Lobe { from: ends[0], to: ends[1], tip: *tip, sinuses: own.collect() }
        };
        self.tips.iter().zip(ends.windows(2)).map(lobe).collect()
    }

    /// Whether a tooth is on the left, seen with the tip up: of its leaflet, or else of the leaf.
    fn is_left(&self, lobes: &[Lobe], tooth: &Tooth) -> bool {
        if self.leaflets {
            let its = lobes.iter().find(|lobe| (lobe.from..=lobe.to).contains(&tooth.tip));
            return its.is_some_and(|lobe| tooth.tip < lobe.tip);
        }
        tooth.tip < self.top()
    }

    /// The place of the edge nearest to the tip of the blade.
    fn top(&self) -> usize {
        let away = |at: &usize| distance(self.line[*at], self.tip);
        (0..self.line.len()).min_by(|a, b| away(a).total_cmp(&away(b))).unwrap_or(0)
    }

    /// All teeth: those between two sinuses but for the tips of lobes, and those at the ends of rows.
    fn teeth(&self, lobes: &[Lobe]) -> Vec<Tooth> {
        let between = |lobe: &Lobe| -> Vec<Tooth> {
            let two = lobe.sinuses.windows(2).map(|two| [two[0].at, two[1].at]);
            two.filter(|ends| !(ends[0]..=ends[1]).contains(&lobe.tip))
                .map(|ends| self.tooth(ends, true))
                .collect()
        };
        let mut all: Vec<Vec<Tooth>> = lobes.iter().map(between).collect();
        let width = middle(all.iter().flatten().map(|tooth| tooth.width));
        let height = middle(all.iter().flatten().map(|tooth| tooth.height));
        let point = middle(all.iter().flatten().map(|tooth| self.turn_at(tooth)));
        let top = self.top();
        for (lobe, teeth) in lobes.iter().zip(&mut all) {
            // Where rows begin and end: at the ends of the lobe, and where plain edge is between.
            let plain = teeth.extract_if(.., |tooth| tooth.width > APART * width);
            let mut ends: Vec<[usize; 2]> =
                plain.flat_map(|it| [it.ends, [it.ends[1], it.ends[0]]]).collect();
            // Those of either side of its tip.
            let up = lobe.sinuses.partition_point(|sinus| sinus.at < lobe.tip);
            let (up, down) = lobe.sinuses.split_at(up);
            ends.extend(up.first().map(|first| [first.at, lobe.from]));
            ends.extend(down.last().map(|last| [last.at, lobe.to]));
            let around_tip = [
                up.last().map_or(lobe.from, |last| last.at),
                down.first().map_or(lobe.to, |first| first.at),
            ];
            // Where plain edge follows on a tooth, the lobe goes on beyond it, and it is not the tip of the
            // lobe, though none of its places be farther out.
            let [before, behind] = around_tip.map(|at| self.line[at]);
            let plain_tip = !self.leaflets
                && !(lobe.from..=lobe.to).contains(&top)
                && distance(before, behind) > APART * width;
            let to_tip = [(up.last(), around_tip[1]), (down.first(), around_tip[0])];
            let to_tip = to_tip.into_iter().filter_map(|(sinus, other)| {
                Some([sinus?.at, if plain_tip { other } else { lobe.tip }])
            });
            let high = |tooth: &Tooth| height > 0.0 && tooth.height >= AT_END * height;
            let of_tip = |tooth: &Tooth| (tooth.ends[0]..=tooth.ends[1]).contains(&lobe.tip);
            let found = |ends: [usize; 2]| self.at_end(ends[0], ends[1], width).filter(high);
            let at_ends = ends.into_iter().filter_map(found).filter(|tooth| !of_tip(tooth));
            let at_ends: Vec<Tooth> = at_ends.collect();
            let pointed = |tooth: &Tooth| self.turn_at(tooth) >= POINTED * point;
            let clear = |tooth: &Tooth| plain_tip || !of_tip(tooth);
            teeth.extend(to_tip.filter_map(found).filter(pointed).filter(clear));
            teeth.extend(at_ends);
        }
        let mut teeth: Vec<Tooth> = all.into_iter().flatten().collect();
        teeth.sort_by_key(|tooth| tooth.tip);
        teeth
    }

    fn tooth(&self, ends: [usize; 2], whole: bool) -> Tooth {
        let ends = [ends[0].min(ends[1]), ends[0].max(ends[1])];
        let foot = ends.map(|at| self.line[at]);
        let far = |at: &usize| beside(self.line[*at], foot);
        let tip = (ends[0]..=ends[1]).max_by(|a, b| far(a).total_cmp(&far(b)));
        let tip = tip.unwrap_or(ends[0]);
        Tooth { ends, tip, whole, height: far(&tip), width: distance(foot[0], foot[1]) }
    }

    /// What stands out from a sinus as far as a tooth is wide, towards the end of its lobe, if there is
    /// room for it.
    fn at_end(&self, from: usize, end: usize, width: f64) -> Option<Tooth> {
        let far = |at: &usize| distance(self.line[*at], self.line[from]) >= width;
        let to = match end < from {
            true => (end..from).rev().find(far),
            false => (from..end).find(far),
        };
        Some(self.tooth([from, to?], false))
    }

    /// By how many radians the edge turns at the tip of a tooth, over half of its width.
    fn turn_at(&self, tooth: &Tooth) -> f64 {
        let step = (tooth.width / 4.0).round() as usize;
        let last = self.line.len() - 1;
        self.turn(tooth.tip, [tooth.tip.saturating_sub(step), (tooth.tip + step).min(last)])
    }

    fn turn(&self, at: usize, off: [usize; 2]) -> f64 {
        let [a, b, c] = [off[0], at, off[1]].map(|at| self.line[at]);
        let angle = |a: Point, b: Point| (b[1] - a[1]).atan2(b[0] - a[0]);
        let turn = angle(b, c) - angle(a, b);
        turn.sin().atan2(turn.cos()).abs()
    }

    /// Whether teeth end in a point between two hollow sides.
    fn spiny(&self, teeth: &[Tooth]) -> bool {
        let width = middle(teeth.iter().map(|tooth| tooth.width));
        let height = middle(teeth.iter().map(|tooth| tooth.height));
        if width < SPINE[0] || height < SPINE[1].max(DEEP * width) {
            return false;
        }
        let whole: Vec<&Tooth> = teeth.iter().filter(|tooth| tooth.whole).collect();
        let triangle = |tooth: &Tooth| {
            let [a, b] = tooth.ends.map(|at| self.line[at]);
            area(&[a, self.line[tooth.tip], b]).max(1e-6)
        };
        // How much of the triangle is missing beside a side; less than nothing where it bulges.
        let missing = |from: usize, to: usize| -signed_area(&self.line[from..=to]);
        let sides = |tooth: &Tooth| {
            let [before, behind] = tooth.ends;
            [missing(before, tooth.tip), missing(tooth.tip, behind)]
                .map(|missing| missing / triangle(tooth))
        };
        let hollow = middle(whole.iter().map(|tooth| sides(tooth).iter().sum::<f64>()));
        let least = middle(whole.iter().map(|tooth| sides(tooth)[0].min(sides(tooth)[1])));
        whole.len() >= FEWEST && hollow >= 1.0 - FILLED && least >= EACH_SIDE
    }

    /// Whether neither teeth nor sinuses have a point.
    fn round(&self, teeth: &[Tooth], width: f64) -> bool {
        let most = ROUND[usize::from(width >= WIDE[1])];
        let last = self.line.len() - 1;
        let sharp = |at: usize, ends: [usize; 2], width: f64| {
            let step = (EIGHTH * width).round() as usize;
            let near = [at.saturating_sub(step), (at + step).min(last)];
            self.turn(at, near) / self.turn(at, ends).max(1e-6)
        };
        let whole = teeth.iter().filter(|tooth| tooth.whole);
        let tips = whole.map(|tooth| sharp(tooth.tip, tooth.ends, tooth.width));
        // A sinus between two teeth.
        let beside = teeth.windows(2).filter(|two| two[0].ends[1] == two[1].ends[0]);
        let sinuses =
            beside.map(|two| sharp(two[0].ends[1], [two[0].tip, two[1].tip], two[0].width));
        middle(tips) < most && middle(sinuses) < most
    }
}
