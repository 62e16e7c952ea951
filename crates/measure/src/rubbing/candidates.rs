//! Which places of a page may be rubbed leaves.
//!
//! From tones to pieces that are darker than what is around them. Strokes beyond a leaf may be darker than
//! the blade of another, so no one level of tone serves: pieces are looked for at many, and of those that lie in each
//! other the one is kept whose rim falls most steeply from dark to pale (as stable regions are chosen:
//! Matas and others, *Robust wide-baseline stereo from maximally stable extremal regions*, 2002;
//! from memory).

use super::tone::{Plane, Tone};
use crate::ground::{Contrast, WHOLE};
use crate::outline;
use crate::pieces::{Piece, pieces};
use crate::polygon::{Point, area, encloses, perimeter, spaced};

/// How far tones are smoothed, in mm: that holes between grains close.
const CLOSED: f64 = 0.9;
/// So many levels are looked at.
const LEVELS: usize = 16;
/// The faintest.
const FAINTEST: f32 = 0.05;
/// Smaller pieces are writing and scribbles, in mm².
const LEAST: f64 = 120.0;
/// The step of a rim from dark to pale, of the darkest tones of the page.
const STEEP: f32 = 0.3;
/// A rim is nearly as steep as another: so much of it.
const NEARLY: f32 = 0.72;
/// Two leaves that touch: each is such a share of both, and all of them such a share.
const A_LEAF: f64 = 0.15;
const TOGETHER: f64 = 0.6;
/// How far a rim is looked for on both sides of where a piece ends, in mm.
const ASIDE: f64 = 1.2;

/// Pieces that may be leaves, the surest first.
pub(super) fn found(tone: &Tone) -> Vec<Piece> {
    let closed = tone.plane.smooth(CLOSED * tone.per_mm);
    let fine = tone.plane.smooth(0.25 * tone.per_mm);
    let darkest = fine.quantile(0.995);
    let highest = closed.quantile(0.99);
    let contrast = contrast(&closed);
    let whole = ((0, closed.width as u32 - 1), (0, closed.height as u32 - 1));
    let mut all: Vec<Rimmed> = Vec::new();
    for at in 0..LEVELS {
        let level = FAINTEST + (highest - FAINTEST).max(0.0) * at as f32 / LEVELS as f32;
        let level = (f64::from(level) * WHOLE) as u16;
        for piece in pieces(&contrast, whole.0, whole.1, level) {
            let size = tone.per_mm * tone.per_mm;
            if (piece.pixels as f64) < 0.2 * LEAST * size {
                continue;
            }
            let line = outline::outline(&contrast, &piece, level);
            if area(&line) < LEAST * size {
                continue;
            }
            let steep = steep(&line, &fine, tone.per_mm);
            if steep > STEEP * darkest {
                all.push(Rimmed { area: area(&line), line, steep, piece });
            }
        }
    }
    chosen(all)
}

/// A piece with the line around it.
struct Rimmed {
    piece: Piece,
    line: Vec<Point>,
    area: f64,
    steep: f32,
}

impl Rimmed {
    fn holds(&self, other: &Self) -> bool {
        other.area < self.area
            && other.piece.runs.first().is_some_and(|run| {
                encloses(&self.line, [f64::from(run.first), f64::from(run.y)])
            })
    }
}

/// Of pieces in each other the largest whose rim is nearly as steep as any, unless it is several
/// that touch.
fn chosen(mut all: Vec<Rimmed>) -> Vec<Piece> {
    all.sort_by(|one, other| other.area.total_cmp(&one.area));
    let mut kept: Vec<usize> = Vec::new();
    for (at, rimmed) in all.iter().enumerate() {
        if kept.iter().any(|other| all[*other].holds(rimmed)) {
            continue;
        }
        let within = || all[at + 1..].iter().filter(|other| rimmed.holds(other));
        let steepest = within().map(|other| other.steep).fold(0.0, f32::max);
        let mut apart: Vec<&Rimmed> = Vec::new();
        for other in within().filter(|other| other.steep >= NEARLY * steepest) {
            if !apart.iter().any(|one| one.holds(other)) {
                apart.push(other);
            }
        }
        apart.retain(|other| other.area >= A_LEAF * rimmed.area);
        let together = apart.iter().map(|other| other.area).sum::<f64>();
        let several = apart.len() > 1 && together >= TOGETHER * rimmed.area;
        if rimmed.steep >= NEARLY * steepest && !several {
            kept.push(at);
        }
    }
    let mut kept: Vec<Rimmed> = all
        .into_iter()
        .enumerate()
        .filter(|(at, _)| kept.contains(at))
        .map(|(_, one)| one)
        .collect();
    kept.sort_by(|one, other| other.steep.total_cmp(&one.steep));
    kept.into_iter().map(|rimmed| rimmed.piece).collect()
}

/// How far the tone falls across a rim, in the mean.
fn steep(line: &[[f64; 2]], fine: &Plane, per_mm: f64) -> f32 {
    let count = (perimeter(line) / (0.6 * per_mm)) as usize;
    let points = spaced(line, count.max(24));
    let count = points.len();
    let falls = (0..count).map(|at| {
        let (before, after) = (points[(at + count - 1) % count], points[(at + 1) % count]);
        let way = (after[0] - before[0]).hypot(after[1] - before[1]).max(1e-9);
        // The piece is at the right of its line.
        let into = [-(after[1] - before[1]) / way, (after[0] - before[0]) / way];
        let tone = |mm: f64| {
            let point = points[at];
            fine.at([0, 1].map(|side| point[side] + mm * per_mm * into[side]))
        };
        (-6..=6)
            .map(|step| ASIDE * f64::from(step) / 6.0)
            .map(|aside| tone(aside + 0.3) - tone(aside - 0.7))
            .fold(0.0_f32, f32::max)
    });
    falls.sum::<f32>() / count as f32
}

/// Tones as the finders of pieces and outlines take them.
pub(super) fn contrast(plane: &Plane) -> Contrast {
    let values = plane.values.iter();
    let values = values.map(|value| (f64::from(*value) * WHOLE) as u16).collect();
    Contrast { width: plane.width, height: plane.height, values }
}
