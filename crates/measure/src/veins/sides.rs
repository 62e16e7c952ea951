//! Side veins: curves that leave the main vein towards the tip.
//!
//! From ridges and the main vein to the places along it where a side vein begins, each with how
//! clearly it is seen. Each curve is judged by how much light bends across it on the mean, so that a
//! spot or a bit of the net is not taken for a vein (a line is looked for by all that would lie on it:
//! Hough 1962; Ballard, *Generalizing the Hough transform*, 1981; from memory). Side veins of a leaf
//! lean alike, or change from base to tip. The same curves are tried towards the base: what is found
//! there is no side vein, and says how clear one has to be in this leaf.

use super::main_vein::MainVein;
use super::ridges::{Ridges, weights};
use super::sheet::Sheet;
use super::upright::Upright;
use crate::polygon::Point;

/// How far a side vein goes up for each step outwards, near the main vein.
const SLOPES: [f64; 11] = [0.18, 0.3, 0.42, 0.55, 0.7, 0.86, 1.04, 1.25, 1.5, 1.8, 2.2];
/// How much steeper it becomes, over the widest half of the blade.
const BENDS: [f64; 4] = [0.0, 0.2, 0.45, 0.75];
/// By so many slopes a side vein may differ from those beside it.
const ALIKE: f64 = 1.3;
/// A side vein is judged on so much of the way to the edge.
const JUDGED: f64 = 0.7;
/// The fewest cells by which one is judged, and so many more for half of the trust.
const FEWEST: usize = 8;
const TRUST: f64 = 9.0;
/// A place counts between these, times what is usual.
const LEAST: f32 = -1.5;
const MOST: f32 = 3.5;
/// From one place by which a curve is judged to the next, in cells.
const STEP: f64 = 1.4;
/// So far outwards the main vein itself is seen, of the rows, and cells besides.
const MAIN: f64 = 0.008;
/// Two side veins are at least so many rows apart, where they begin and so far out.
const APART: f64 = 8.0;
const MET: [f64; 2] = [0.0, 0.35];
/// So much clearer than what is found towards the base a side vein has to be.
const CLEARER: f64 = 1.1;
/// And so much of what the clear ones are.
const OF_CLEAR: f64 = 0.42;

/// A side vein.
#[derive(Clone, Copy, Debug)]
pub(super) struct SideVein {
    /// On the left (0) or the right (1).
    pub(super) side: usize,
    /// The row in which it leaves the main vein.
    pub(super) row: f64,
    slope: f64,
    bend: f64,
    /// How clearly it is seen.
    pub(super) score: f64,
}

#[cfg(test)]
impl SideVein {
    /// One that begins in a row.
    pub(super) fn at(row: f64) -> Self {
        Self { side: 0, row, slope: 1.0, bend: 0.0, score: 1.0 }
    }
}

/// How clear each curve is, by row, slope and bend.
type Table = Vec<[[f64; BENDS.len()]; SLOPES.len()]>;

/// A blade in which side veins are looked for at one scale.
pub(super) struct Looked<'s> {
    sheet: &'s Sheet,
    main: &'s MainVein,
    ridges: Ridges,
    /// The cells by which side veins are judged.
    upright: Upright,
}

/// What was seen of side veins at one scale, lighter or darker than the blade.
pub(super) struct Sides {
    /// Lighter (1) or darker (-1).
    tone: f64,
    /// All places where one may begin, from base to tip, on the left and the right.
    found: [Vec<SideVein>; 2],
    /// How clear what was found towards the base is, at most.
    chance: f64,
}

impl<'s> Looked<'s> {
    pub(super) fn of(sheet: &'s Sheet, main: &'s MainVein, scale: f64) -> Self {
        let ridges = Ridges::of(sheet, scale);
        let limits = sheet.limits(2.0 + 2.0 * scale);
        let judged = |row: usize| {
            let reach = [0, 1].map(|side| JUDGED * sheet.half(row, side));
            let (left, right) = limits[row];
            let first = (sheet.middle() as f64 - reach[0]).ceil().max(0.0) as usize;
            let last = sheet.middle() + reach[1].max(0.0) as usize;
            left.max(first)..right.min(last + 1)
        };
        let upright = Upright::of((sheet.rows, sheet.columns), ridges.bent(), judged);
        Self { sheet, main, ridges, upright }
    }

    /// What is seen, lighter and darker.
    pub(super) fn sides(&self) -> [Sides; 2] {
        let both = |way: f64| {
            let [left, right] = [0, 1].map(|side| self.tables(side, way));
            let ([left_light, left_dark], [right_light, right_dark]) = (left, right);
            [[left_light, right_light], [left_dark, right_dark]]
        };
        let (up, down) = (both(1.0), both(-1.0));
        [0, 1].map(|tone: usize| {
            let found = self.judged_by(&up[tone]);
            let down = self.judged_by(&down[tone]);
            let mut chance: Vec<f64> = down.iter().flatten().map(|vein| vein.score).collect();
            chance.sort_by(f64::total_cmp);
            let chance = chance.get(chance.len() * 19 / 20).copied().unwrap_or(0.0).max(0.2);
            Sides { tone: [1.0, -1.0][tone], found, chance }
        })
    }
}

impl Sides {
    /// By how much the clearest are clearer than chance.
    pub(super) fn clear(&self) -> f64 {
        self.of_clear() - self.chance
    }

    /// How clear a clear one is.
    fn of_clear(&self) -> f64 {
        let mut scores: Vec<f64> = self.found.iter().flatten().map(|vein| vein.score).collect();
        scores.sort_by(|a, b| b.total_cmp(a));
        scores.truncate(8);
        match scores.len() {
            0..4 => 0.0,
            many => scores.iter().sum::<f64>() / many as f64,
        }
    }

    /// Those that are side veins.
    pub(super) fn sure(&self) -> [Vec<SideVein>; 2] {
        let least = (CLEARER * self.chance).max(OF_CLEAR * self.of_clear());
        self.found
            .each_ref()
            .map(|side| side.iter().copied().filter(|vein| vein.score >= least).collect())
    }
}

impl Looked<'_> {
    /// The best curve at each place of the main vein where it is better than those beside it.
    fn judged_by(&self, tables: &[Table; 2]) -> [Vec<SideVein>; 2] {
        [0, 1].map(|side: usize| {
            let table = &tables[side];
            let (slopes, bend) = self.lean(table);
            let along = |row: usize| {
                let part = row as f64 / self.sheet.rows as f64;
                slopes[0] + part * (slopes[1] - slopes[0])
            };
            let best: Vec<Option<SideVein>> = (0..self.sheet.rows)
                .map(|row| {
                    let mut best: Option<SideVein> = None;
                    let near = |at: &usize| (*at as f64 - along(row)).abs() <= ALIKE;
                    for slope in (0..SLOPES.len()).filter(near) {
                        for bend in bend.saturating_sub(1)..=(bend + 1).min(BENDS.len() - 1) {
                            let score = table[row][slope][bend];
                            if best.is_none_or(|best| score > best.score) {
                                let (slope, bend) = (SLOPES[slope], BENDS[bend]);
                                let row = row as f64;
                                best = Some(SideVein { side, row, slope, bend, score });
                            }
                        }
                    }
                    best
                })
                .collect();
            self.apart(best.into_iter().flatten().filter(|vein| vein.score > 0.0).collect())
        })
    }

    /// Of curves that lie on each other the clearest, from base to tip.
    fn apart(&self, mut veins: Vec<SideVein>) -> Vec<SideVein> {
        veins.sort_by(|a, b| b.score.total_cmp(&a.score));
        let places = |vein: &SideVein| {
            MET.map(|part| {
                let (place, _) = self.place(vein, part * self.sheet.widest[vein.side]);
                place[0]
            })
        };
        let mut kept: Vec<(SideVein, [f64; 2])> = Vec::new();
        for vein in veins {
            let there = places(&vein);
            let on = |(_, other): &(SideVein, [f64; 2])| {
                other.iter().zip(there).any(|(other, row)| (other - row).abs() < APART)
            };
            if !kept.iter().any(on) {
                kept.push((vein, there));
            }
        }
        let mut kept: Vec<SideVein> = kept.into_iter().map(|(vein, _)| vein).collect();
        kept.sort_by(|a, b| a.row.total_cmp(&b.row));
        kept
    }

    /// How clear each curve is on a side, by row, slope and bend; lighter ones before darker ones.
    fn tables(&self, side: usize, way: f64) -> [Table; 2] {
        let blank = [[0.0; BENDS.len()]; SLOPES.len()];
        let mut tables = [(); 2].map(|()| vec![blank; self.sheet.rows]);
        let first = MAIN * self.sheet.rows as f64 + 2.0 + self.ridges.scale;
        for (at, slope) in SLOPES.iter().enumerate() {
            for (of, bend) in BENDS.iter().enumerate() {
                let step = STEP / slope.hypot(1.0);
                let steps = (0..)
                    .map(|step_at| first + step * f64::from(step_at))
                    .take_while(|out| *out < self.sheet.widest[side])
                    .map(|out| {
                        let (off, along) = self.curve(side, (*slope, *bend), out, way);
                        (off, weights(along))
                    });
                let sums = self.upright.along(&self.main.columns, steps, LEAST..=MOST);
                for (tone, table) in tables.iter_mut().enumerate() {
                    for (row, scores) in table.iter_mut().enumerate() {
                        scores[at][of] = score(sums.of[tone][row], sums.many[row]);
                    }
                }
            }
        }
        tables
    }

    /// A curve so far out from its foot, and its direction there; rows before columns.
    fn curve(
        &self,
        side: usize,
        (slope, bend): (f64, f64),
        out: f64,
        way: f64,
    ) -> (Point, Point) {
        let whole = self.sheet.widest[side];
        let up = slope * out + bend * out * out / whole;
        let aside = if side == 0 { -1.0 } else { 1.0 };
        let slope = way * (slope + 2.0 * bend * out / whole);
        let long = slope.hypot(1.0);
        ([way * up, aside * out], [slope / long, aside / long])
    }

    /// A place of a side vein so far out, and its direction there.
    fn place(&self, vein: &SideVein, out: f64) -> (Point, Point) {
        let (off, along) = self.curve(vein.side, (vein.slope, vein.bend), out, 1.0);
        let foot = self.main.columns[(vein.row as usize).min(self.main.columns.len() - 1)];
        ([vein.row + off[0], foot + off[1]], along)
    }

    /// How side veins lean: the slope at the base and at the tip, as places of [`SLOPES`], and the
    /// bend that most of what is seen agrees with.
    fn lean(&self, table: &Table) -> ([f64; 2], usize) {
        let cubed = |score: f64| score.max(0.0).powi(3);
        let cubes: Table = table.iter().map(|row| row.map(|bends| bends.map(cubed))).collect();
        // What each row comes to at the best, by slope and bend.
        let mut most = (f64::MIN, [0.0; 2], 0);
        for base in 0..SLOPES.len() {
            for tip in 0..SLOPES.len() {
                if base.abs_diff(tip) > 5 {
                    continue;
                }
                let mut sums = [0.0; BENDS.len()];
                for (row, cubes) in cubes.iter().enumerate() {
                    let part = row as f64 / self.sheet.rows as f64;
                    let slope = base as f64 + part * (tip as f64 - base as f64);
                    for (sum, cube) in sums.iter_mut().zip(cubes[(slope + 0.5) as usize]) {
                        *sum += cube;
                    }
                }
                for (bend, sum) in sums.into_iter().enumerate() {
                    if sum > most.0 {
                        most = (sum, [base as f64, tip as f64], bend);
                    }
                }
            }
        }
        (most.1, most.2)
    }

    /// A side vein followed outwards from the main vein as far as it can be seen: on each step the
    /// place beside the curve that is clearest, never far from the one before.
    fn followed(&self, sides: &Sides, vein: &SideVein) -> Vec<Point> {
        const REACH: i32 = 5;
        let step = 1.5 / (1.0 + vein.slope * vein.slope).sqrt();
        let mut places: Vec<(Point, Point, f64)> = Vec::new();
        let mut out = MAIN * self.sheet.rows as f64 + 2.0;
        loop {
            let (place, along) = self.place(vein, out);
            if !self.sheet.within(place, 1.5) {
                break;
            }
            places.push((place, along, out));
            out += step;
        }
        let offs = (2 * REACH + 1) as usize;
        let aside = |(place, along, _): &(Point, Point, f64), at: usize| {
            let off = f64::from(at as i32 - REACH) * 0.8;
            [place[0] - off * along[1], place[1] + off * along[0]]
        };
        let value = |at: usize, off: usize| {
            let ridge = self.ridges.ridge(aside(&places[at], off), places[at].1);
            (sides.tone * ridge).clamp(f64::from(LEAST), f64::from(MOST))
        };
        let mut sums: Vec<f64> = vec![0.0; offs];
        let mut came: Vec<Vec<usize>> = Vec::new();
        for at in 0..places.len() {
            let cost = |before: usize, off: usize| {
                sums[before] - if before == off { 0.0 } else { 0.4 }
            };
            let ways: Vec<usize> = (0..offs)
                .map(|off| {
                    let near = off.saturating_sub(1)..=(off + 1).min(offs - 1);
                    near.max_by(|a, b| cost(*a, off).total_cmp(&cost(*b, off))).unwrap_or(off)
                })
                .collect();
            sums = (0..offs).map(|off| cost(ways[off], off) + value(at, off)).collect();
            came.push(ways);
        }
        let mut off = (0..offs).max_by(|a, b| sums[*a].total_cmp(&sums[*b])).unwrap_or(0);
        let mut line: Vec<(Point, f64)> = Vec::new();
        for at in (0..places.len()).rev() {
            line.push((aside(&places[at], off), value(at, off)));
            off = came[at][off];
        }
        line.reverse();
        // It ends where it is no longer seen.
        let mut sum = 0.0;
        let mut seen = (0.0, 0);
        for (at, (_, value)) in line.iter().enumerate() {
            sum += value - 0.5 * sides.chance;
            if sum >= seen.0 {
                seen = (sum, at + 1);
            }
        }
        line.truncate(seen.1);
        line.into_iter().map(|(place, _)| place).collect()
    }

    /// The same as a smooth line with few places, from the main vein on.
    pub(super) fn traced(&self, sides: &Sides, vein: &SideVein) -> Vec<Point> {
        let foot = [
            vein.row,
            self.main.columns[(vein.row.max(0.0) as usize).min(self.sheet.rows - 1)],
        ];
        [vec![foot], thinned(&self.followed(sides, vein))].concat()
    }

    /// The same vein with the row in which it leaves the main vein by where it was seen: what was seen
    /// is carried on straight, beside the curve by which it was found.
    pub(super) fn footed(&self, sides: &Sides, vein: &SideVein) -> SideVein {
        let line = self.followed(sides, vein);
        let ([_, foot], _) = self.place(vein, 0.0);
        let off = |[row, column]: &Point| {
            let out = (column - foot).abs();
            let (there, _) = self.place(vein, out);
            (out, row - there[0])
        };
        let offs: Vec<(f64, f64)> = line.iter().map(off).collect();
        let many = offs.len() as f64;
        let mean = |of: &dyn Fn(&(f64, f64)) -> f64| offs.iter().map(of).sum::<f64>() / many;
        let (out, aside) = (mean(&|it| it.0), mean(&|it| it.1));
        let square = mean(&|it| (it.0 - out).powi(2));
        let both = mean(&|it| (it.0 - out) * (it.1 - aside));
        if offs.len() < FEWEST || square < 1e-6 {
            return *vein;
        }
        let row = vein.row + aside - both / square * out;
        SideVein { row: row.clamp(0.0, (self.sheet.rows - 1) as f64), ..*vein }
    }
}

/// How clear a curve is, by what so many places on it come to.
fn score(sum: f32, many: f32) -> f64 {
    if many < FEWEST as f32 {
        return 0.0;
    }
    let many = f64::from(many);
    f64::from(sum) / many * (many / (many + TRUST)).sqrt()
}

/// Every few places of a line, each the mean of those around it.
fn thinned(line: &[Point]) -> Vec<Point> {
    const REACH: usize = 4;
    let Some(last) = line.len().checked_sub(1) else { return Vec::new() };
    let places = (0..last).step_by(REACH).chain([last]);
    places
        .map(|at| {
            let reach = REACH.min(at).min(last - at);
            let near = &line[at - reach..=at + reach];
            let many = near.len() as f64;
            [0, 1].map(|side| near.iter().map(|place| place[side]).sum::<f64>() / many)
        })
        .collect()
}
