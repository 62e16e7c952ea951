//! Ridges of light: second derivatives of a sheet at a scale.
//!
//! From how light each cell is to how sharply light bends there in any direction, smoothed by a normal
//! curve as wide as a vein (Steger, *An unbiased detector of curvilinear structures*, 1998; from
//! memory). A light line is where it bends down across and not along.

use super::sheet::Sheet;

/// The sharpest part of a blade is taken for veins: what is usual is at least one over so much of that.
const SHARP: f64 = 0.97;
const SHARPER: f32 = 3.0;
/// No more than this is usual in a blade that is as light everywhere, in bytes.
const LEAST: f32 = 0.1;

/// A sheet's second derivatives, of what is usual in the blade.
pub(super) struct Ridges {
    columns: usize,
    rows: usize,
    pub(super) scale: f64,
    /// Of each cell: down twice, down and aside, aside twice.
    bent: [Vec<f32>; 3],
}

impl Ridges {
    /// In every direction.
    pub(super) fn of(sheet: &Sheet, scale: f64) -> Self {
        Self::with(sheet, scale, true)
    }

    /// Those alone that run along the blade or across it.
    pub(super) fn straight(sheet: &Sheet, scale: f64) -> Self {
        Self::with(sheet, scale, false)
    }

    fn with(sheet: &Sheet, scale: f64, slanting: bool) -> Self {
        let kernels = kernels(scale);
        let size = (sheet.rows, sheet.columns);
        let mut bent = [(2, 0), (1, 1), (0, 2)].map(|(down, aside): (usize, usize)| {
            if down == 1 && !slanting {
                return Vec::new();
            }
            folded_down(
                &folded_aside(&sheet.light, size, &kernels[aside]),
                size,
                &kernels[down],
            )
        });
        let (rows, columns) = size;
        let mut inside = Vec::new();
        let limits = sheet.limits(3.0 * scale);
        for (row, (left, right)) in limits.into_iter().enumerate().step_by(3) {
            for column in (left.next_multiple_of(3)..right).step_by(3) {
                let at = row * columns + column;
                inside.push(bent[0][at].abs().max(bent[2][at].abs()));
            }
        }
        inside.sort_unstable_by(f32::total_cmp);
        let part = |part: f64| {
            inside.get((part * inside.len() as f64) as usize).copied().unwrap_or(1.0)
        };
        let least = LEAST / (scale * scale) as f32;
        let usual = part(0.5).max(part(SHARP) / SHARPER).max(least);
        bent.iter_mut().flatten().for_each(|value| *value /= usual);
        Self { columns, rows, scale, bent }
    }

    /// The second derivatives of all cells, row by row: down twice, down and aside, aside twice.
    pub(super) fn bent(&self) -> &[Vec<f32>; 3] {
        &self.bent
    }

    /// How much light bends down at right angles to a direction (rows before columns, one long); 0
    /// outside.
    pub(super) fn ridge(&self, [row, column]: [f64; 2], along: [f64; 2]) -> f64 {
        let (row, column) = (row.round(), column.round());
        if row < 0.0 || column < 0.0 {
            return 0.0;
        }
        let (row, column) = (row as usize, column as usize);
        if row >= self.rows || column >= self.columns {
            return 0.0;
        }
        let cell = row * self.columns + column;
        let weighed =
            self.bent.iter().zip(weights(along)).map(|(bent, weight)| weight * bent[cell]);
        f64::from(weighed.sum::<f32>())
    }
}

/// What each derivative adds to how much light bends down at right angles to a direction.
pub(super) fn weights([down, aside]: [f64; 2]) -> [f32; 3] {
    [-aside * aside, 2.0 * down * aside, -down * down].map(|weight| weight as f32)
}

/// The normal curve and its first and second derivative.
fn kernels(scale: f64) -> [Vec<f32>; 3] {
    let reach = (3.5 * scale).ceil() as i64;
    let at = |at: i64| at as f64 / scale;
    let normal = |x: f64| (-x * x / 2.0).exp() / (scale * std::f64::consts::TAU.sqrt());
    let all = |of: &dyn Fn(f64) -> f64| (-reach..=reach).map(|x| of(at(x)) as f32).collect();
    let mut kernels: [Vec<f32>; 3] = [
        all(&|x| normal(x)),
        all(&|x| -x / scale * normal(x)),
        all(&|x| (x * x - 1.0) / (scale * scale) * normal(x)),
    ];
    // What is as light everywhere is no ridge.
    let mean = kernels[2].iter().sum::<f32>() / kernels[2].len() as f32;
    kernels[2].iter_mut().for_each(|value| *value -= mean);
    kernels
}

/// Each cell as the sum of those around it in its row, with these weights; beyond the ends the last
/// cell goes on.
fn folded_aside(cells: &[f32], (rows, columns): (usize, usize), by: &[f32]) -> Vec<f32> {
    let reach = by.len() / 2;
    let mut found = vec![0.0; rows * columns];
    let mut padded = vec![0.0; columns + 2 * reach];
    for (line, into) in cells.chunks_exact(columns).zip(found.chunks_exact_mut(columns)) {
        padded[..reach].fill(line[0]);
        padded[reach..reach + columns].copy_from_slice(line);
        padded[reach + columns..].fill(line[columns - 1]);
        for (at, weight) in by.iter().enumerate() {
            add(into, &padded[at..at + columns], *weight);
        }
    }
    found
}

/// The same in its column.
fn folded_down(cells: &[f32], (rows, columns): (usize, usize), by: &[f32]) -> Vec<f32> {
    let reach = by.len() / 2;
    let mut found = vec![0.0; rows * columns];
    for (row, into) in found.chunks_exact_mut(columns).enumerate() {
        for (at, weight) in by.iter().enumerate() {
            let from = (row + at).saturating_sub(reach).min(rows - 1) * columns;
            add(into, &cells[from..from + columns], *weight);
        }
    }
    found
}

/// Many at once: the compiler takes several in a step.
fn add(into: &mut [f32], values: &[f32], weight: f32) {
    for (cell, value) in into.iter_mut().zip(values) {
        *cell += weight * value;
    }
}
