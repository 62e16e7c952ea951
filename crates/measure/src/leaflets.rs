//! Leaflets: what is left of a leaf when all that is as thin as its stalk is taken away.
//!
//! From the pixels of a leaf and its stalk to the leaflets that hang together by thin parts alone, and
//! how they are arranged. Each pixel's way to the edge is worked out in two passes (chamfer
//! distances 5, 7: Borgefors, *Distance transformations in digital images*, 1986); what is farther
//! inside than half of a stalk is the core of a leaflet (opening by a disc: Serra, *Image analysis and
//! mathematical morphology*, 1982). Leaflets that lie over each other are one.

use spinney_model::{Arrangement, Leaflets};

use crate::pieces::Piece;
use crate::polygon::{Point, distance, square};
use crate::stalk::Cut;

/// What is thicker than so many times the stalk, and a pixel on each side, is no stalk.
const THICKER: f64 = 1.35;
const ASIDE: f64 = 1.0;
/// A stalk is so many cells wide: finer ones say nothing more.
const CELLS: f64 = 8.0;
/// A leaflet's core has at least this share of what the largest has.
const LEAST: f64 = 0.1;
/// Leaflets whose feet are all so near each other, of their length, are around one point.
const HAND: f64 = 0.22;
/// A leaflet at the end goes on as the rachis does, to so many radians.
const ON: f64 = 0.5;
/// Two straight and three slanting steps, in fifths of a cell.
const STRAIGHT: u16 = 5;
const SLANTING: u16 = 7;

/// A leaflet, in pixels.
struct Core {
    middle: Point,
    /// Its place nearest to the base of the leaf, and how far that is.
    foot: Point,
    way: f64,
    /// How far it reaches from its foot.
    length: f64,
}

/// The leaflets of a leaf; None: it is in one piece.
pub(crate) fn leaflets(piece: &Piece, cut: &Cut) -> Option<Leaflets> {
    let grid = Grid::of(piece, (cut.width / CELLS).floor().max(1.0) as u32);
    let half = THICKER * cut.width / 2.0 + ASIDE;
    let base = cut.base();
    let mut cores = grid.cores(half);
    let largest = cores.iter().map(Vec::len).max()?;
    cores.retain(|cells| cells.len() as f64 >= LEAST * largest as f64);
    if cores.len() < 2 {
        return None;
    }
    let mut cores: Vec<Core> = cores.iter().map(|cells| grid.core(cells, base)).collect();
    cores.sort_by(|a, b| a.way.total_cmp(&b.way));
    let (first, last) = (cores.first()?, cores.last()?);
    let longest = cores.iter().map(|core| core.length).fold(0.0, f64::max);
    let arrangement = match last.way - first.way < HAND * longest {
        true => Arrangement::Hand,
        false => Arrangement::Feather,
    };
    let at_end = (arrangement == Arrangement::Feather).then(|| {
        let angle = |a: Point, b: Point| (b[1] - a[1]).atan2(b[0] - a[0]);
        let off = angle(last.foot, last.middle) - angle(base, last.foot);
        off.sin().atan2(off.cos()).abs() < ON
    });
    let middles = cores.iter().map(|core| core.middle).collect();
    Some(Leaflets { middles, arrangement, at_end })
}

/// A leaf in cells of a few pixels.
struct Grid {
    /// Pixels to a cell.
    step: u32,
    wide: usize,
    high: usize,
    /// The first pixel.
    corner: [f64; 2],
    /// How far each cell is inside, in fifths of a cell; 0: outside.
    inside: Vec<u16>,
}

impl Grid {
    fn of(piece: &Piece, step: u32) -> Self {
        let (left, top) = (piece.across.0, piece.down.0);
        // A rim of cells outside.
        let wide = ((piece.across.1 - left) / step + 3) as usize;
        let high = ((piece.down.1 - top) / step + 3) as usize;
        let mut inside = vec![0; wide * high];
        for run in piece.runs.iter().filter(|run| (run.y - top) % step == 0) {
            let row = ((run.y - top) / step + 1) as usize * wide;
            let first = (run.first - left).div_ceil(step) as usize + 1;
            let last = ((run.last - left) / step) as usize + 1;
            if first <= last {
                inside[row + first..=row + last].fill(u16::MAX);
            }
        }
        let corner = [f64::from(left), f64::from(top)];
        let mut grid = Self { step, wide, high, corner, inside };
        grid.measure();
        grid
    }

    /// How far each cell is from the nearest one outside.
    fn measure(&mut self) {
        let wide = self.wide;
        for row in 1..self.high {
            let (above, row) = self.inside.split_at_mut(row * wide);
            nearer(&mut row[..wide], &above[above.len() - wide..]);
        }
        for row in (0..self.high - 1).rev() {
            let (row, below) = self.inside[row * wide..].split_at_mut(wide);
            nearer(row, &below[..wide]);
        }
    }

    /// What hangs together farther inside than so many pixels, each as its cells.
    fn cores(&self, half: f64) -> Vec<Vec<usize>> {
        let least = (f64::from(STRAIGHT) * half / f64::from(self.step)) as u16;
        let mut open: Vec<bool> = self.inside.iter().map(|inside| *inside > least).collect();
        let mut cores = Vec::new();
        for start in 0..open.len() {
            if !std::mem::take(&mut open[start]) {
                continue;
            }
            let (mut cells, mut seen) = (vec![start], 0);
            while let Some(at) = cells.get(seen).copied() {
                seen += 1;
                for beside in [at - 1, at + 1, at - self.wide, at + self.wide] {
                    if std::mem::take(&mut open[beside]) {
                        cells.push(beside);
                    }
                }
            }
            cores.push(cells);
        }
        cores
    }

    fn core(&self, cells: &[usize], base: Point) -> Core {
        let places = || cells.iter().map(|cell| self.place(*cell));
        let foot = places().min_by(|a, b| square(*a, base).total_cmp(&square(*b, base)));
        let foot = foot.expect("a core has a cell");
        let sum = places().fold([0.0; 2], |sum, cell| [sum[0] + cell[0], sum[1] + cell[1]]);
        let length = places().map(|cell| square(cell, foot)).fold(0.0, f64::max).sqrt();
        let middle = sum.map(|sum| sum / cells.len() as f64);
        Core { middle, foot, way: distance(foot, base), length }
    }

    fn place(&self, at: usize) -> Point {
        let pixel =
            |cell: usize, corner: f64| corner + (cell as f64 - 1.0) * f64::from(self.step);
        [pixel(at % self.wide, self.corner[0]), pixel(at / self.wide, self.corner[1])]
    }
}

/// Takes for the cells of a row the nearest way out over the row beside it, and along the row from its
/// first cell on and back.
fn nearer(row: &mut [u16], beside: &[u16]) {
    let count = row.len();
    let inner = row[1..count - 1].iter_mut();
    for ((cell, across), beside) in inner.zip(&beside[1..]).zip(beside.windows(3)) {
        let slanting = beside[0].min(beside[2]).saturating_add(SLANTING);
        *cell = (*cell).min(across.saturating_add(STRAIGHT)).min(slanting);
    }
    for at in 1..count {
        row[at] = row[at].min(row[at - 1].saturating_add(STRAIGHT));
    }
    for at in (0..count - 1).rev() {
        row[at] = row[at].min(row[at + 1].saturating_add(STRAIGHT));
    }
}
