//! How many side veins a blade has, and how those of both sides stand to each other.
//!
//! From places where side veins seem to begin to those that are counted; none, where they do not
//! follow each other about evenly from base to tip on both sides: one of them may not have been seen.

use spinney_model::VeinPairs;

use super::sheet::Sheet;
use super::sides::{SideVein, Sides};

/// The fewest on a side.
const FEWEST: usize = 3;
/// The first begins below, the last above so much of the blade.
const FROM: f64 = 0.36;
const TO: f64 = 0.6;
/// Two that are nearer than so much of the usual way are one.
const ONE: f64 = 0.45;
/// No way from one to the next is so many times the usual one.
const GAP: f64 = 1.75;
/// From so far on how they stand to each other is clear: 1 is exactly opposite, -1 exactly alternate.
const CLEAR: f64 = 0.45;

/// The side veins of both sides; None: they cannot be told.
pub(super) fn counted(sheet: &Sheet, sides: &Sides) -> Option<[Vec<SideVein>; 2]> {
    let [left, right] = sides.sure().map(|side| apart(&side));
    let (left, right) = (even(sheet, left?)?, even(sheet, right?)?);
    let (fewer, more) = (left.len().min(right.len()), left.len().max(right.len()));
    (4 * (more - fewer) <= more.max(4)).then_some([left, right])
}

/// Without the fainter of two that are too near each other; None: there are too few.
fn apart(side: &[SideVein]) -> Option<Vec<SideVein>> {
    let mut kept = side.to_vec();
    loop {
        let usual = usual(&kept)?;
        let near = kept
            .windows(2)
            .enumerate()
            .filter(|(_, two)| two[1].row - two[0].row < ONE * usual);
        let fainter =
            near.map(|(at, two)| if two[0].score < two[1].score { at } else { at + 1 });
        let Some(faintest) = fainter.min_by(|a, b| kept[*a].score.total_cmp(&kept[*b].score))
        else {
            return Some(kept);
        };
        kept.remove(faintest);
    }
}

/// The way from one to the next that half of the ways are longer than.
fn usual(side: &[SideVein]) -> Option<f64> {
    let mut ways: Vec<f64> = side.windows(2).map(|two| two[1].row - two[0].row).collect();
    ways.sort_by(f64::total_cmp);
    (side.len() >= FEWEST).then(|| ways[ways.len() / 2])
}

/// Those of a side, if they follow each other about evenly from base to tip.
fn even(sheet: &Sheet, side: Vec<SideVein>) -> Option<Vec<SideVein>> {
    let usual = usual(&side)?;
    let rows = sheet.rows as f64;
    let whole = side.first()?.row < FROM * rows && side.last()?.row > TO * rows;
    let gap = side.windows(2).map(|two| two[1].row - two[0].row).fold(0.0, f64::max);
    (whole && gap <= GAP * usual).then_some(side)
}

/// How they stand to each other: by where between two of one side those of the other begin.
pub(super) fn pairs(footed: &[Vec<SideVein>; 2]) -> Option<VeinPairs> {
    let [left, right] = footed;
    let mut turns = Vec::new();
    for vein in left {
        for two in right.windows(2) {
            if (two[0].row..two[1].row).contains(&vein.row) {
                let part = (vein.row - two[0].row) / (two[1].row - two[0].row);
                turns.push((std::f64::consts::TAU * part).cos());
            }
        }
    }
    if turns.len() < FEWEST - 1 {
        return None;
    }
    let mean = turns.iter().sum::<f64>() / turns.len() as f64;
    if mean >= CLEAR {
        Some(VeinPairs::Opposite)
    } else if mean <= -CLEAR {
        Some(VeinPairs::Alternate)
    } else {
        None
    }
}
