//! The main vein: the best ridge or furrow from base to tip near the midrib line.
//!
//! From a straight blade to a column for each row. Of all lines that move by a column a row at most
//! it is the one along which light bends most (dynamic programming: Bellman 1957). Lines found in
//! the same way to the left and to the right of it say what would be found where there is no vein.

use super::ridges::Ridges;
use super::sheet::Sheet;
use crate::polygon::Point;

/// The main vein is wider than side veins.
const SCALES: [f64; 2] = [1.6, 3.0];
/// So far from the midrib line it may lie, of the half width.
const BESIDE: f64 = 0.3;
/// The part of the blade by which it is judged.
const JUDGED: std::ops::Range<f64> = 0.1..0.8;
/// What is nearer to the end of where it is looked for than this share says little.
const WELL_WITHIN: f64 = 0.75;
/// Up to here it is looked at for how it runs near the base.
pub(super) const LOWER: f64 = 0.6;
/// A place counts at most so many times what is usual where lines are judged, and where one is looked for.
const MOST: f64 = 5.0;
const SHARPEST: f64 = 40.0;
/// A step aside costs so much.
const STEP: f64 = 0.5;
/// It stands out so much from what is usual, and from the lines beside it.
const CLEAR: f64 = 1.5;
const CLEARER: f64 = 1.4;

/// The main vein of a sheet.
pub(super) struct MainVein {
    /// Its column in each row.
    pub(super) columns: Vec<f64>,
}

impl MainVein {
    /// None: it cannot be seen.
    pub(super) fn of(sheet: &Sheet) -> Option<Self> {
        let mut best: Option<Line> = None;
        let mut clear = false;
        for scale in SCALES {
            let ridges = Ridges::straight(sheet, scale);
            for tone in [1.0, -1.0] {
                let found = line(sheet, &ridges, tone, 0.0)?;
                if best.as_ref().is_some_and(|best| best.sharp >= found.sharp) {
                    continue;
                }
                let beside = [-1.0, 1.0].map(|aside| line(sheet, &ridges, tone, aside));
                let beside = beside.iter().flatten().map(|line| line.score).fold(0.0, f64::max);
                clear = found.score >= CLEAR && found.score >= CLEARER * beside;
                best = Some(found);
            }
        }
        let best = best.filter(|_| clear)?;
        Some(Self { columns: smooth(&best.columns) })
    }

    /// Whether it lies well within where it was looked for: another one may be the clearest farther aside.
    pub(super) fn is_within(&self, sheet: &Sheet) -> bool {
        let most = WELL_WITHIN * reach(sheet) as f64;
        let rows = JUDGED.start * sheet.rows as f64..LOWER * sheet.rows as f64;
        let aside = |row: usize| (self.columns[row] - sheet.middle() as f64).abs();
        (0..sheet.rows).filter(|row| rows.contains(&(*row as f64))).all(|row| aside(row) < most)
    }

    /// Its places, from base to tip.
    pub(super) fn places(&self) -> Vec<Point> {
        let last = self.columns.len() - 1;
        let rows = (0..last).step_by(8).chain([last]);
        rows.map(|row| [row as f64, self.columns[row]]).collect()
    }
}

/// A line from base to tip.
struct Line {
    columns: Vec<f64>,
    /// How clear it is on the mean, and how sharp.
    score: f64,
    sharp: f64,
}

/// How far from the midrib line a line is looked for, in cells.
fn reach(sheet: &Sheet) -> usize {
    let narrow = sheet.widest[0].min(sheet.widest[1]);
    (BESIDE * narrow).max(4.0) as usize
}

/// The best line in a band; the band lies as far aside as said, in steps of one that lies
/// clear of the middle.
fn line(sheet: &Sheet, ridges: &Ridges, tone: f64, aside: f64) -> Option<Line> {
    let reach = reach(sheet);
    let shift = (aside * 1.9 * reach as f64).round();
    let first = (sheet.middle() as f64 + shift) as usize - reach;
    let many = 2 * reach + 1;
    let (from, to) = ((0.02 * sheet.rows as f64) as usize, (0.96 * sheet.rows as f64) as usize);
    // The edge of the blade is no line beside the main vein.
    let margin = if aside == 0.0 { 1.0 } else { 2.0 + 2.0 * ridges.scale };
    let limits = sheet.limits(margin);
    let [_, _, bent] = ridges.bent();
    let value = |row: usize, column: usize| {
        let (left, right) = limits[row];
        match (left..right).contains(&column) {
            // A light line bends down.
            true => {
                (-tone * f64::from(bent[row * sheet.columns + column])).clamp(-1.0, SHARPEST)
            }
            false => 0.0,
        }
    };
    let (mut sums, mut next) = (vec![0.0; many], vec![0.0; many]);
    let mut came: Vec<usize> = Vec::with_capacity((to - from) * many);
    for row in from..to {
        for (at, next) in next.iter_mut().enumerate() {
            let mut best = (f64::MIN, at);
            let lowest = at.saturating_sub(1);
            for (off, sum) in sums[lowest..(at + 2).min(many)].iter().enumerate() {
                let before = lowest + off;
                let sum = sum - if before == at { 0.0 } else { STEP };
                if sum >= best.0 {
                    best = (sum, before);
                }
            }
            *next = best.0 + value(row, first + at);
            came.push(best.1);
        }
        std::mem::swap(&mut sums, &mut next);
    }
    let mut at = (0..many).max_by(|a, b| sums[*a].total_cmp(&sums[*b]))?;
    let mut columns = vec![0; sheet.rows];
    for row in (from..to).rev() {
        columns[row] = first + at;
        at = came[(row - from) * many + at];
    }
    let (low, high) = (columns[from], columns[to - 1]);
    columns[..from].fill(low);
    columns[to..].fill(high);
    let judged = |row: &usize| {
        let part = *row as f64 / sheet.rows as f64;
        JUDGED.contains(&part)
    };
    let rows: Vec<usize> = (0..sheet.rows).filter(judged).collect();
    let mean = |most: f64| {
        let sum: f64 = rows.iter().map(|row| value(*row, columns[*row]).min(most)).sum();
        sum / rows.len().max(1) as f64
    };
    let (score, sharp) = (mean(MOST), mean(SHARPEST));
    // Between columns: where on the mean of those beside it light bends.
    let fine = |(row, column): (usize, &usize)| {
        let beside = column.saturating_sub(2)..=column + 2;
        let (mut whole, mut off) = (0.0, 0.0);
        for at in beside {
            let weight = value(row, at).max(0.0);
            whole += weight;
            off += weight * (at as f64 - *column as f64);
        }
        *column as f64 + if whole > 0.0 { off / whole } else { 0.0 }
    };
    let columns = columns.iter().enumerate().map(fine).collect();
    Some(Line { columns, score, sharp })
}

/// The mean of so many rows before and behind.
fn smooth(columns: &[f64]) -> Vec<f64> {
    const REACH: usize = 6;
    (0..columns.len())
        .map(|row| {
            let near =
                &columns[row.saturating_sub(REACH)..(row + REACH + 1).min(columns.len())];
            near.iter().sum::<f64>() / near.len() as f64
        })
        .collect()
}
