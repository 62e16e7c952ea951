//! What hangs together: the pieces of a picture above a level of contrast.
//!
//! From a plane of contrasts to pieces, each a list of runs along rows; pixels that touch by a
//! corner hang together. Runs are joined as sets of which each knows its first (union–find:
//! Rosenfeld and Pfaltz, *Sequential operations in digital picture processing*, 1966). A plane
//! of labels would take four bytes for each pixel; the runs of a page of leaves take some
//! hundred kilobytes.

use std::collections::BTreeMap;

use crate::ground::Contrast;
use crate::polygon::Point;

/// What has fewer pixels is noise, and no piece.
const LEAST: u32 = 16;
/// So many pixels of a row are looked at in one step.
const AT_ONCE: usize = 32;

/// Pixels of a row that hang together: from the first to the last.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Run {
    pub(crate) y: u32,
    pub(crate) first: u32,
    pub(crate) last: u32,
}

/// What hangs together.
#[derive(Clone, Debug)]
pub(crate) struct Piece {
    /// In reading order.
    pub(crate) runs: Vec<Run>,
    /// How many pixels it has.
    pub(crate) pixels: usize,
    /// Its first and last column, and its first and last row.
    pub(crate) across: (u32, u32),
    pub(crate) down: (u32, u32),
}

impl Piece {
    fn of(runs: Vec<Run>) -> Self {
        let pixels = runs.iter().map(|run| (run.last - run.first + 1) as usize).sum();
        let first = runs.iter().map(|run| run.first).min().unwrap_or(0);
        let last = runs.iter().map(|run| run.last).max().unwrap_or(0);
        let down = (runs.first().map_or(0, |run| run.y), runs.last().map_or(0, |run| run.y));
        Self { runs, pixels, across: (first, last), down }
    }

    /// The pixels whose middles lie inside of a line; None: there are none.
    pub(crate) fn inside(line: &[Point]) -> Option<Self> {
        let mut crossings: BTreeMap<u32, Vec<f64>> = BTreeMap::new();
        for (at, a) in line.iter().enumerate() {
            let b = line[(at + 1) % line.len()];
            let (above, below) = if a[1] < b[1] { (*a, b) } else { (b, *a) };
            let mut y = above[1].ceil().max(0.0);
            while y < below[1] {
                let part = (y - above[1]) / (below[1] - above[1]);
                let x = above[0] + part * (below[0] - above[0]);
                crossings.entry(y as u32).or_default().push(x);
                y += 1.0;
            }
        }
        let mut runs = Vec::new();
        for (y, mut crossings) in crossings {
            crossings.sort_by(f64::total_cmp);
            for ends in crossings.chunks_exact(2) {
                let (first, last) = (ends[0].ceil().max(0.0), ends[1].floor());
                if first <= last {
                    runs.push(Run { y, first: first as u32, last: last as u32 });
                }
            }
        }
        (!runs.is_empty()).then(|| Self::of(runs))
    }

    /// Whether a pixel is one of its own.
    pub(crate) fn has(&self, x: u32, y: u32) -> bool {
        let behind = self.runs.partition_point(|run| (run.y, run.first) <= (y, x));
        behind > 0 && self.runs[behind - 1].y == y && x <= self.runs[behind - 1].last
    }
}

/// The pieces of [`LEAST`] pixels or more above a level within some columns and rows, the ends included.
pub(crate) fn pieces(
    contrast: &Contrast,
    (left, right): (u32, u32),
    (top, bottom): (u32, u32),
    level: u16,
) -> Vec<Piece> {
    let mut runs: Vec<Run> = Vec::new();
    let mut sets = Sets::default();
    let mut above = 0..0;
    for y in top..=bottom {
        let start = y as usize * contrast.width;
        let row = &contrast.values[start + left as usize..=start + right as usize];
        let begun = runs.len();
        let mut inside = None;
        for (at, values) in row.chunks(AT_ONCE).enumerate() {
            // Where all are alike nothing begins and nothing ends.
            let above = values.iter().fold(0, |sum, value| sum + u16::from(*value >= level));
            let as_before = if inside.is_some() { values.len() as u16 } else { 0 };
            if above == as_before {
                continue;
            }
            for (x, value) in values.iter().enumerate() {
                let x = at * AT_ONCE + x;
                match (*value >= level, inside) {
                    (true, None) => inside = Some(x),
                    (false, Some(first)) => {
                        runs.push(run(y, left, first, x - 1));
                        inside = None;
                    }
                    _ => {}
                }
            }
        }
        if let Some(first) = inside {
            runs.push(run(y, left, first, row.len() - 1));
        }
        sets.grow(runs.len());
        let mut near = above.start;
        for at in begun..runs.len() {
            while near < above.end && runs[near].last + 1 < runs[at].first {
                near += 1;
            }
            let mut touching = near;
            while touching < above.end && runs[touching].first <= runs[at].last + 1 {
                sets.join(touching, at);
                touching += 1;
            }
        }
        above = begun..runs.len();
    }
    // Of a picture that is all noise each grain would be a piece: millions of lists.
    let mut pixels = vec![0_u32; runs.len()];
    for (at, run) in runs.iter().enumerate() {
        pixels[sets.first(at)] += run.last - run.first + 1;
    }
    let mut pieces: BTreeMap<usize, Vec<Run>> = BTreeMap::new();
    for (at, run) in runs.iter().enumerate() {
        let first = sets.first(at);
        if pixels[first] >= LEAST {
            pieces.entry(first).or_default().push(*run);
        }
    }
    pieces.into_values().map(Piece::of).collect()
}

fn run(y: u32, left: u32, first: usize, last: usize) -> Run {
    Run { y, first: left + first as u32, last: left + last as u32 }
}

/// Sets of runs, each of which leads to the first of its set.
#[derive(Default)]
struct Sets {
    leads_to: Vec<usize>,
}

impl Sets {
    fn grow(&mut self, to: usize) {
        self.leads_to.extend(self.leads_to.len()..to);
    }

    fn first(&mut self, of: usize) -> usize {
        let mut at = of;
        while self.leads_to[at] != at {
            self.leads_to[at] = self.leads_to[self.leads_to[at]];
            at = self.leads_to[at];
        }
        at
    }

    fn join(&mut self, one: usize, other: usize) {
        let (one, other) = (self.first(one), self.first(other));
        self.leads_to[one.max(other)] = one.min(other);
    }
}
