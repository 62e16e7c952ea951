//! The cells of a sheet, column by column: the same curve is judged from all rows at once.
//!
//! From second derivatives to what all places of a curve come to, for each row of the main vein in which
//! it may begin. Where a curve goes the same way from every row, what one step adds lies side by side, and
//! a processor takes several of them at a time.

use std::ops::{Range, RangeInclusive};

use crate::polygon::Point;

/// A column of the main vein counts to so many parts of one.
const PARTS: f64 = 2.0;

/// Cells column by column.
pub(super) struct Upright {
    rows: usize,
    columns: usize,
    bent: [Vec<f32>; 3],
    /// 1: side veins are judged by it; 0: they are not.
    judged: Vec<f32>,
}

/// What the places of a curve come to, for each row in which it may begin.
pub(super) struct Sums {
    /// If it is lighter than the blade, and if it is darker.
    pub(super) of: [Vec<f32>; 2],
    /// By how many places it is judged.
    pub(super) many: Vec<f32>,
}

/// A step of a curve: how far down and aside from where it begins, and what each derivative adds there.
type Step = (Point, [f32; 3]);

impl Upright {
    pub(super) fn of(
        (rows, columns): (usize, usize),
        bent: &[Vec<f32>; 3],
        judged: impl Fn(usize) -> Range<usize>,
    ) -> Self {
        let turned = |plane: &Vec<f32>| {
            let mut cells = vec![0.0; rows * columns];
            for (row, line) in plane.chunks_exact(columns).enumerate() {
                for (column, value) in line.iter().enumerate() {
                    cells[column * rows + row] = *value;
                }
            }
            cells
        };
        let mut inside = vec![0.0; rows * columns];
        for row in 0..rows {
            judged(row).for_each(|column| inside[column * rows + row] = 1.0);
        }
        Self { rows, columns, bent: bent.each_ref().map(turned), judged: inside }
    }

    /// What a curve comes to that begins at these columns; it ends where it meets a cell by which it is
    /// not judged. No place counts less or more than `within`.
    pub(super) fn along(
        &self,
        feet: &[f64],
        steps: impl Iterator<Item = Step>,
        within: RangeInclusive<f32>,
    ) -> Sums {
        let blank = || vec![0.0_f32; self.rows];
        let mut sums = Sums { of: [blank(), blank()], many: blank() };
        let mut open = vec![1.0_f32; self.rows];
        let stretches = stretches(feet);
        for ([down, aside], weights) in steps {
            let down = (down + 0.5).floor() as i64;
            for (rows, foot) in &stretches {
                let column = (foot + aside + 0.5).floor();
                let seen = self.seen(rows, down);
                open[rows.start..seen.start].fill(0.0);
                open[seen.end..rows.end].fill(0.0);
                let beside = column < 0.0 || column >= self.columns as f64;
                if beside || seen.is_empty() {
                    open[seen].fill(0.0);
                    continue;
                }
                let from = column as usize * self.rows;
                let from = from + (seen.start as i64 + down) as usize;
                let cells = Cells {
                    bent: self.bent.each_ref().map(|plane| &plane[from..from + seen.len()]),
                    judged: &self.judged[from..from + seen.len()],
                };
                cells.add(&mut sums, &mut open[seen.clone()], seen, weights, &within);
            }
            if open.iter().all(|open| *open == 0.0) {
                break;
            }
        }
        sums
    }

    /// Those of some rows that are still on the sheet so far down: none, if none is.
    fn seen(&self, rows: &Range<usize>, down: i64) -> Range<usize> {
        let first = (-down).clamp(rows.start as i64, rows.end as i64);
        let last = (self.rows as i64 - down).clamp(first, rows.end as i64);
        first as usize..last as usize
    }
}

/// The cells that one step of a curve meets from some rows.
struct Cells<'a> {
    bent: [&'a [f32]; 3],
    judged: &'a [f32],
}

impl Cells<'_> {
    fn add(
        &self,
        sums: &mut Sums,
        open: &mut [f32],
        rows: Range<usize>,
        [first, second, third]: [f32; 3],
        within: &RangeInclusive<f32>,
    ) {
        let (least, most) = (*within.start(), *within.end());
        let count = rows.len();
        let [light, dark] = &mut sums.of;
        let (light, dark) =
            (&mut light[rows.clone()][..count], &mut dark[rows.clone()][..count]);
        let many = &mut sums.many[rows][..count];
        let [down, both, aside] = self.bent.map(|plane| &plane[..count]);
        let (judged, open) = (&self.judged[..count], &mut open[..count]);
        for at in 0..count {
            let ridge = first * down[at] + second * both[at] + third * aside[at];
            let goes_on = open[at] * judged[at];
            open[at] = goes_on;
            many[at] += goes_on;
            light[at] += goes_on * ridge.max(least).min(most);
            dark[at] += goes_on * (-ridge).max(least).min(most);
        }
    }
}

/// Rows that begin in about the same column.
fn stretches(feet: &[f64]) -> Vec<(Range<usize>, f64)> {
    let place = |foot: f64| (foot * PARTS).round() / PARTS;
    let mut all: Vec<(Range<usize>, f64)> = Vec::new();
    for (row, foot) in feet.iter().enumerate() {
        match all.last_mut().filter(|(_, before)| *before == place(*foot)) {
            Some((rows, _)) => rows.end = row + 1,
            None => all.push((row..row + 1, place(*foot))),
        }
    }
    all
}
