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
        let reach = lines.blade.iter().map(|point| beside(&lines.midrib, *point));
        let half = (reach.fold(0.0, f64::max) / cell).ceil() as usize + 2;
        if rows < FEWEST || half > 2 * rows {
            return None;
        }
        let blade = Piece::inside(&lines.blade)?;
        let columns = 2 * half + 1;
        let across = across(&lines.midrib, rows, cell);
        let place = |(at, right): &(Point, Point), column: f64| {
            let off = (column - half as f64) * cell;
            [at[0] + off * right[0], at[1] + off * right[1]]
        };
        let inside = |row: usize, column: usize| {
            let [x, y] = place(&across[row], column as f64);
            x >= 0.0 && y >= 0.0 && blade.has(x.round() as u32, y.round() as u32)
        };
        let spans: Vec<(usize, usize)> = (0..rows)
            .map(|row| {
                let left = (0..=half).rev().take_while(|column| inside(row, *column)).last();
                let right = (half..columns).take_while(|column| inside(row, *column)).last();
                match (left, right) {
                    (Some(left), Some(right)) => (left, right + 1),
                    _ => (half, half),
                }
            })
            .collect();
        // Every pixel that a cell covers is looked at.
        let fine = cell.ceil() as usize;
        let mut light = vec![0.0; rows * columns];
        for row in 0..rows {
            let (left, right) = spans[row];
            for column in left..right {
                let mut sum = 0.0;
                for down in 0..fine {
                    let off = |at: usize| (at as f64 + 0.5) / fine as f64 - 0.5;
                    let (at, to_right) = across[row];
                    let along = [to_right[1], -to_right[0]];
                    let up = off(down) * cell;
                    let at = [at[0] + up * along[0], at[1] + up * along[1]];
                    for beside in 0..fine {
                        let column = column as f64 + off(beside);
                        sum += lightness(pixels, place(&(at, to_right), column));
                    }
                }
                light[row * columns + column] = (sum / (fine * fine) as f64) as f32;
            }
        }
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

/// How far a point is from a line.
fn beside(line: &[Point], point: Point) -> f64 {
    line.windows(2)
        .map(|two| crate::turns::beside(point, [two[0], two[1]]))
        .fold(f64::MAX, f64::min)
}

/// How light a place between four pixels is, in bytes (ITU-R BT.601).
fn lightness(pixels: &RgbImage, [x, y]: Point) -> f64 {
    let most = |side: u32| f64::from(side - 1);
    let (x, y) = (x.clamp(0.0, most(pixels.width())), y.clamp(0.0, most(pixels.height())));
    let (left, top) = (x as u32, y as u32);
    let (right, bottom) =
        ((left + 1).min(pixels.width() - 1), (top + 1).min(pixels.height() - 1));
    let at = |x, y| {
        let [red, green, blue] = pixels.get_pixel(x, y).0.map(f64::from);
        0.299 * red + 0.587 * green + 0.114 * blue
    };
    let (across, down) = (x - f64::from(left), y - f64::from(top));
    let above = at(left, top) + across * (at(right, top) - at(left, top));
    let below = at(left, bottom) + across * (at(right, bottom) - at(left, bottom));
    above + down * (below - above)
}
