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
    bent: Vec<[f32; 3]>,
}

impl Ridges {
    pub(super) fn of(sheet: &Sheet, scale: f64) -> Self {
        let kernels = kernels(scale);
        let (rows, columns) = (sheet.rows, sheet.columns);
        let planes = [(2, 0), (1, 1), (0, 2)].map(|(down, aside): (usize, usize)| {
            let folded_aside = folded(&sheet.light, (rows, columns), &kernels[aside], false);
            folded(&folded_aside, (rows, columns), &kernels[down], true)
        });
        let mut inside = Vec::new();
        for row in (0..rows).step_by(3) {
            for column in (0..columns).step_by(3) {
                if sheet.within([row as f64, column as f64], 3.0 * scale) {
                    let at = row * columns + column;
                    inside.push(planes[0][at].abs().max(planes[2][at].abs()));
                }
            }
        }
        inside.sort_by(f32::total_cmp);
        let part = |part: f64| {
            inside.get((part * inside.len() as f64) as usize).copied().unwrap_or(1.0)
        };
        let least = LEAST / (scale * scale) as f32;
        let usual = part(0.5).max(part(SHARP) / SHARPER).max(least);
        let bent = (0..rows * columns)
            .map(|at| [0, 1, 2].map(|plane: usize| planes[plane][at] / usual))
            .collect();
        Self { columns, rows, scale, bent }
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
        f64::from(self.across(row * self.columns + column, weights(along)))
    }

    /// The same of a cell of which it is known that it is there.
    pub(super) fn across(&self, cell: usize, weights: [f32; 3]) -> f32 {
        let [down, both, aside] = self.bent[cell];
        weights[0] * down + weights[1] * both + weights[2] * aside
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

/// Each cell as the sum of those around it in its row or in its column, with these weights; beyond
/// the ends the last cell goes on.
fn folded(cells: &[f32], (rows, columns): (usize, usize), by: &[f32], down: bool) -> Vec<f32> {
    let reach = by.len() / 2;
    let mut found = vec![0.0; cells.len()];
    if down {
        for row in 0..rows {
            for (at, weight) in by.iter().enumerate() {
                let from = (row + at).saturating_sub(reach).min(rows - 1) * columns;
                let into = &mut found[row * columns..(row + 1) * columns];
                for (cell, value) in into.iter_mut().zip(&cells[from..from + columns]) {
                    *cell += weight * value;
                }
            }
        }
        return found;
    }
    let mut padded = vec![0.0; columns + 2 * reach];
    for row in 0..rows {
        let line = &cells[row * columns..(row + 1) * columns];
        for (at, value) in padded.iter_mut().enumerate() {
            *value = line[at.saturating_sub(reach).min(columns - 1)];
        }
        for (column, cell) in found[row * columns..(row + 1) * columns].iter_mut().enumerate() {
            let window = &padded[column..column + by.len()];
            *cell = window.iter().zip(by).map(|(value, weight)| value * weight).sum();
        }
    }
    found
}
