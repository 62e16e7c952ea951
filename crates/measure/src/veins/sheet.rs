//! A blade laid straight: rows from base to tip, columns beside the midrib line.
//!
//! From the pixels of a picture and the lines of a leaf to how light each place of the straight blade
//! is. It is never finer than the picture, and never finer than veins need.

use image::RgbImage;
use spinney_model::LeafLines;

use crate::pieces::Piece;
use crate::polygon::{Point, between, distance, length};

/// So many rows a blade has at most: side veins are still ten rows apart where there are thirty.
const ROWS: f64 = 400.0;
/// With fewer there is nothing to be seen, nor where it reaches less far to a side.
const FEWEST: usize = 100;
const NARROWEST: f64 = 12.0;

/// A blade laid straight.
pub(super) struct Sheet {
    pub(super) rows: usize,
    pub(super) columns: usize,
    /// How light each cell is, in bytes.
    pub(super) light: Vec<f32>,
    /// The columns of each row that lie in the blade, around the midrib line; the last one is not
    /// among them.
    pub(super) spans: Vec<(usize, usize)>,
    /// Where each row crosses the midrib line, and the direction to the right.
    across: Vec<(Point, Point)>,
    /// How many pixels a cell is wide and high.
    cell: f64,
    /// The farthest it reaches on the left and the right of its midrib line.
    pub(super) widest: [f64; 2],
}

impl Sheet {
    /// None: the blade is too small or too narrow.
    pub(super) fn of(pixels: &RgbImage, lines: &LeafLines) -> Option<Self> {
        let long = length(&lines.midrib);
        let cell = (long / ROWS).max(1.0);
        let rows = (long / cell) as usize;
        let reach = lines.blade.iter().map(|point| beside_squared(&lines.midrib, *point));
        let half = (reach.fold(0.0, f64::max).sqrt() / cell).ceil() as usize + 2;
        if rows < FEWEST || half > 2 * rows {
            return None;
        }
        let blade = Piece::inside(&lines.blade)?;
        let columns = 2 * half + 1;
        let across = across(&lines.midrib, rows, cell);
        let plane = Plane::of(pixels, &blade);
        let spans: Vec<(usize, usize)> =
            across.iter().map(|row| span(&plane, row, half, cell)).collect();
        // Every pixel that a cell covers is looked at.
        let fine = cell.ceil() as usize;
        let mut light = vec![0.0; rows * columns];
        for row in 0..rows {
            let (left, right) = spans[row];
            let ([x, y], [to_right, to_down]) = across[row];
            for cells in 0..fine * fine {
                let off = |at: usize| ((at as f64 + 0.5) / fine as f64 - 0.5) * cell;
                let (down, beside) = (off(cells / fine), off(cells % fine));
                let first = (left as f64 - half as f64) * cell + beside;
                let from = [
                    x + down * to_down + first * to_right,
                    y - down * to_right + first * to_down,
                ];
                let step = [cell * to_right, cell * to_down];
                plane.add(&mut light[row * columns..][left..right], from, step);
            }
        }
        let many = (fine * fine) as f32;
        light.iter_mut().for_each(|light| *light /= many);
        let mut sheet = Self { rows, columns, light, spans, across, cell, widest: [0.0; 2] };
        sheet.widest =
            [0, 1].map(|side| (0..rows).map(|row| sheet.half(row, side)).fold(1.0, f64::max));
        sheet.carry_on();
        sheet.widest.iter().all(|widest| *widest >= NARROWEST).then_some(sheet)
    }

    /// Beside the blade it goes on as light as at its edge, so that the edge is no ridge.
    fn carry_on(&mut self) {
        for row in 0..self.rows {
            let (left, right) = self.spans[row];
            let cells = &mut self.light[row * self.columns..(row + 1) * self.columns];
            if left < right {
                let inner = 2.min((right - left) / 2);
                let (first, last) = (cells[left + inner], cells[right - 1 - inner]);
                cells[..left + inner].fill(first);
                cells[right - inner..].fill(last);
            }
        }
        let filled: Vec<usize> =
            (0..self.rows).filter(|row| self.spans[*row].0 < self.spans[*row].1).collect();
        for row in 0..self.rows {
            let near = filled.iter().min_by_key(|filled| filled.abs_diff(row));
            if let Some(near) = near.filter(|near| **near != row) {
                let from = near * self.columns;
                self.light.copy_within(from..from + self.columns, row * self.columns);
            }
        }
    }

    /// The column of the midrib line.
    pub(super) fn middle(&self) -> usize {
        self.columns / 2
    }

    /// How far the blade reaches from its midrib line at a row, on the left (0) or the right (1).
    pub(super) fn half(&self, row: usize, side: usize) -> f64 {
        let (left, right) = self.spans[row];
        match side {
            0 => self.middle() as f64 - left as f64,
            _ => right as f64 - self.middle() as f64,
        }
    }

    /// The columns of each row that lie so far inside of the blade; the last one is not among them.
    pub(super) fn limits(&self, margin: f64) -> Vec<(usize, usize)> {
        let limits = |row: usize| {
            let rows = [row as f64 - margin, row as f64, row as f64 + margin];
            if rows[0] < 0.0 || rows[2] >= self.rows as f64 {
                return (0, 0);
            }
            let spans = rows.map(|row| self.spans[row as usize]);
            let left = spans.iter().map(|span| span.0).fold(0, usize::max) as f64 + margin;
            let right = spans.iter().map(|span| span.1).fold(usize::MAX, usize::min);
            let right = (right as f64 - margin).ceil().max(0.0) as usize;
            (left.ceil() as usize, right)
        };
        (0..self.rows).map(limits).collect()
    }

    /// Whether a place lies so far inside of the blade.
    pub(super) fn within(&self, [row, column]: Point, margin: f64) -> bool {
        let beside = |row: f64| {
            if row < 0.0 || row >= self.rows as f64 {
                return false;
            }
            let (left, right) = self.spans[row as usize];
            column >= left as f64 + margin && column < right as f64 - margin
        };
        beside(row) && beside(row - margin) && beside(row + margin)
    }

    /// Places of the sheet, rows before columns, as places of the picture.
    pub(super) fn back(&self, places: &[Point]) -> Vec<Point> {
        let place = |[row, column]: &Point| {
            let below = (row.max(0.0) as usize).min(self.rows - 1);
            let next = (below + 1).min(self.rows - 1);
            let part = (row - below as f64).clamp(0.0, 1.0);
            let (from, to) = (self.across[below], self.across[next]);
            let at = between(from.0, to.0, part);
            let right = between(from.1, to.1, part);
            let off = (column - self.middle() as f64) * self.cell;
            [at[0] + off * right[0], at[1] + off * right[1]]
        };
        places.iter().map(place).collect()
    }
}

/// Where each row crosses a line, and the direction to the right of it.
fn across(line: &[Point], rows: usize, cell: f64) -> Vec<(Point, Point)> {
    let mut found = Vec::with_capacity(rows);
    let mut gone = 0.0;
    for two in line.windows(2) {
        let side = distance(two[0], two[1]).max(1e-9);
        let along = [(two[1][0] - two[0][0]) / side, (two[1][1] - two[0][1]) / side];
        while found.len() < rows && (found.len() as f64 + 0.5) * cell <= gone + side {
            let part = ((found.len() as f64 + 0.5) * cell - gone) / side;
            found.push((between(two[0], two[1], part), [-along[1], along[0]]));
        }
        gone += side;
    }
    while let Some(last) = found.last().copied().filter(|_| found.len() < rows) {
        found.push(last);
    }
    found
}

/// How far a point is from a line, squared.
fn beside_squared(line: &[Point], point: Point) -> f64 {
    line.windows(2)
        .map(|two| crate::turns::beside_squared(point, [two[0], two[1]]))
        .fold(f64::MAX, f64::min)
}

/// The columns of a row that lie in the blade, on from the midrib line; the last one is not among them.
fn span(plane: &Plane, (at, right): &(Point, Point), half: usize, cell: f64) -> (usize, usize) {
    let inside = |column: &usize| {
        let off = (*column as f64 - half as f64) * cell;
        plane.inside([at[0] + off * right[0], at[1] + off * right[1]])
    };
    let left = (0..=half).rev().take_while(inside).last();
    let right = (half..2 * half + 1).take_while(inside).last();
    match (left, right) {
        (Some(left), Some(right)) => (left, right + 1),
        _ => (half, half),
    }
}

/// How light the pixels around a blade are, and which of them are its own.
struct Plane {
    /// The first column and row.
    corner: [u32; 2],
    wide: usize,
    high: usize,
    /// In bytes (ITU-R BT.601).
    light: Vec<f32>,
    inside: Vec<bool>,
}

/// Pixels around a blade that are seen with it: cells reach over its edge.
const AROUND: u32 = 4;

impl Plane {
    fn of(pixels: &RgbImage, blade: &Piece) -> Self {
        let ends = |(first, last): (u32, u32), count: u32| {
            let last = last.saturating_add(AROUND).min(count - 1);
            (first.saturating_sub(AROUND).min(last), last)
        };
        let (left, right) = ends(blade.across, pixels.width());
        let (top, bottom) = ends(blade.down, pixels.height());
        let (wide, high) = ((right - left + 1) as usize, (bottom - top + 1) as usize);
        let mut light = Vec::with_capacity(wide * high);
        for y in top..=bottom {
            let row = y as usize * pixels.width() as usize;
            let row = &pixels.as_raw()[3 * (row + left as usize)..][..3 * wide];
            light.extend(row.chunks_exact(3).map(|pixel| {
                let [red, green, blue] =
                    [0, 1, 2].map(|colour: usize| f32::from(pixel[colour]));
                0.299 * red + 0.587 * green + 0.114 * blue
            }));
        }
        let mut inside = vec![false; wide * high];
        // What a person drew may reach beyond the picture.
        for run in blade.runs.iter().filter(|run| run.y <= bottom && run.first <= right) {
            let row = (run.y - top) as usize * wide;
            let last = (run.last.min(right) - left) as usize;
            inside[row + (run.first - left) as usize..=row + last].fill(true);
        }
        Self { corner: [left, top], wide, high, light, inside }
    }

    fn inside(&self, [x, y]: Point) -> bool {
        let [x, y] = [x - f64::from(self.corner[0]), y - f64::from(self.corner[1])];
        let (x, y) = ((x + 0.5).floor(), (y + 0.5).floor());
        let within = x >= 0.0 && y >= 0.0 && x < self.wide as f64 && y < self.high as f64;
        within && self.inside[y as usize * self.wide + x as usize]
    }

    /// Adds to each of some cells how light it is, between four pixels: the first at a place, each
    /// further one a step on.
    fn add(&self, cells: &mut [f32], [x, y]: Point, step: Point) {
        let [x, y] = [x - f64::from(self.corner[0]), y - f64::from(self.corner[1])];
        let most = [(self.wide - 1) as f64, (self.high - 1) as f64];
        for (at, cell) in cells.iter_mut().enumerate() {
            let x = (x + at as f64 * step[0]).clamp(0.0, most[0]);
            let y = (y + at as f64 * step[1]).clamp(0.0, most[1]);
            let (left, top) = (x as usize, y as usize);
            let (across, down) = ((x - left as f64) as f32, (y - top as f64) as f32);
            let upper = &self.light[top * self.wide..][..self.wide];
            let lower = &self.light[(top + 1).min(self.high - 1) * self.wide..][..self.wide];
            let right = (left + 1).min(self.wide - 1);
            let above = upper[left] + across * (upper[right] - upper[left]);
            let below = lower[left] + across * (lower[right] - lower[left]);
            *cell += above + down * (below - above);
        }
    }
}
