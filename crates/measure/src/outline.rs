//! The outline of a piece, between pixels.
//!
//! From a plane of contrasts and a level to a closed line around one piece: where a pixel is above
//! the level and its neighbour below, the line passes between them, in proportion (linear
//! interpolation, as in marching squares: Lorensen and Cline, *Marching cubes*, 1987, in two
//! dimensions). Only the border is walked along, not every pixel: it takes as long as the outline
//! is, and no holes are met. Pixels that touch by a corner hang together, as in `pieces`.

use crate::ground::Contrast;
use crate::pieces::Piece;

/// The outline of a piece at the level at which it was found. The line leaves the piece on its
/// right: it goes around clockwise, as seen on the screen.
pub(crate) fn outline(contrast: &Contrast, piece: &Piece, level: u16) -> Vec<[f64; 2]> {
    let Some(first) = piece.runs.first() else { return Vec::new() };
    // Above the first pixel in reading order there is none of the piece.
    let start = Border { x: i64::from(first.first), y: i64::from(first.y), out: (0, -1) };
    let mut at = start;
    let mut line = Vec::new();
    loop {
        line.push(at.crossing(contrast, level));
        at = at.next(contrast, level);
        if at == start {
            return line;
        }
    }
}

/// A pixel of the piece, and the direction in which its neighbour is none.
#[derive(Clone, Copy, PartialEq, Eq)]
struct Border {
    x: i64,
    y: i64,
    out: (i64, i64),
}

impl Border {
    /// Where the line passes between the two.
    fn crossing(self, contrast: &Contrast, level: u16) -> [f64; 2] {
        let inside = f64::from(contrast.at(self.x, self.y));
        let outside = f64::from(contrast.at(self.x + self.out.0, self.y + self.out.1));
        let part = (inside - f64::from(level) + 0.5) / (inside - outside);
        let part = part.clamp(0.0, 1.0);
        [self.x as f64 + part * self.out.0 as f64, self.y as f64 + part * self.out.1 as f64]
    }

    fn next(self, contrast: &Contrast, level: u16) -> Self {
        // Clockwise: with the outside above, to the right.
        let along = (-self.out.1, self.out.0);
        let inside = |x, y| contrast.at(x, y) >= level;
        let (ahead_x, ahead_y) = (self.x + along.0, self.y + along.1);
        let (corner_x, corner_y) = (ahead_x + self.out.0, ahead_y + self.out.1);
        if inside(corner_x, corner_y) {
            return Self { x: corner_x, y: corner_y, out: (-along.0, -along.1) };
        }
        if inside(ahead_x, ahead_y) {
            return Self { x: ahead_x, y: ahead_y, out: self.out };
        }
        Self { out: along, ..self }
    }
}

/// How far inside and outside of the line, in pixels, a leaf and the ground beside it are looked at.
const BESIDE: [f64; 2] = [3.0, 4.0];
/// How far the line may have to be moved, and by what steps that is looked for, in pixels.
const FARTHEST: f64 = 2.0;
const STEP: f64 = 0.25;
/// Less than this share of a leaf's contrast it is not all leaf, and more than this not all ground.
const LEAF: f64 = 0.7;
const GROUND: f64 = 0.45;
/// What the two places on one side may differ by, as a share of the leaf's contrast.
const FLAT: f64 = 0.12;
/// So many points to each side say together how far a point is moved.
const ALONG: usize = 14;
/// The fewest of them that say anything.
const FEWEST: usize = 6;

/// The same line where half of the contrast lies between the leaf and the ground *beside it*: a
/// leaf's shade on the paper, or its own dark rim, moves the place at which one level is crossed. How far
/// is the mean of what neighbours say; teeth and stalks too thin to have an inside and an outside say
/// nothing and move as their neighbours do.
pub(crate) fn between(contrast: &Contrast, line: &[[f64; 2]], middle: u16) -> Vec<[f64; 2]> {
    let count = line.len();
    if count < 2 * ALONG + 2 {
        return line.to_vec();
    }
    let outward = |at: usize| outward(line, at);
    let moved: Vec<Option<f64>> =
        (0..count).map(|at| half(contrast, line[at], outward(at), f64::from(middle))).collect();
    let sum = |at: usize| {
        let near = (0..=2 * ALONG).filter_map(|by| moved[(at + count + by - ALONG) % count]);
        near.fold((0.0, 0_usize), |(sum, seen), by| (sum + by, seen + 1))
    };
    let place = |at: usize| {
        let (sum, seen) = sum(at);
        let by = if seen < FEWEST { 0.0 } else { sum / seen as f64 };
        let [x, y] = outward(at);
        [line[at][0] + by * x, line[at][1] + by * y]
    };
    (0..count).map(place).collect()
}

/// Where it is out of a closed line at one of its points; it goes around clockwise, as seen on the screen.
pub(crate) fn outward(line: &[[f64; 2]], at: usize) -> [f64; 2] {
    let count = line.len();
    let (a, b) = (line[(at + count - 2) % count], line[(at + 2) % count]);
    let (x, y) = (b[0] - a[0], b[1] - a[1]);
    let long = x.hypot(y).max(1e-9);
    [y / long, -x / long]
}

/// How far outward of a point half of the contrast is reached; None: it has no clear inside or outside.
fn half(contrast: &Contrast, at: [f64; 2], outward: [f64; 2], middle: f64) -> Option<f64> {
    let seen = |by: f64| sampled(contrast, [at[0] + by * outward[0], at[1] + by * outward[1]]);
    let inside = BESIDE.map(|by| seen(-by));
    let outside = BESIDE.map(seen);
    let flat = |two: [f64; 2]| (two[0] - two[1]).abs() <= FLAT * middle;
    let clear = inside.iter().all(|value| *value >= LEAF * middle)
        && outside.iter().all(|value| *value <= GROUND * middle);
    if !clear || !flat(inside) || !flat(outside) {
        return None;
    }
    let level = (inside[0] + inside[1] + outside[0] + outside[1]) / 4.0;
    let (mut by, mut before) = (-FARTHEST, seen(-FARTHEST));
    while by < FARTHEST {
        let next = seen(by + STEP);
        if before >= level && next < level {
            return Some(by + STEP * (before - level) / (before - next));
        }
        (by, before) = (by + STEP, next);
    }
    None
}

/// The contrast between pixels.
fn sampled(contrast: &Contrast, [x, y]: [f64; 2]) -> f64 {
    let (left, top) = (x.floor(), y.floor());
    let (right, down) = (x - left, y - top);
    let value = |dx: i64, dy: i64| f64::from(contrast.at(left as i64 + dx, top as i64 + dy));
    let upper = value(0, 0) + right * (value(1, 0) - value(0, 0));
    let lower = value(0, 1) + right * (value(1, 1) - value(0, 1));
    upper + down * (lower - upper)
}

#[cfg(test)]
mod tests {
    use super::between;
    use crate::ground::Contrast;

    /// The right half of a picture is a leaf from 50.3 on, blurred over three pixels, and the ground beside it in shade.
    #[test]
    fn an_edge_lies_halfway_between_the_leaf_and_the_ground_beside_it() {
        let (leaf, edge) = (6000.0, 50.3);
        for shade in [0.0, 1500.0] {
            let value =
                |x: f64| shade + (leaf - shade) * ((x - edge) / 3.0 + 0.5).clamp(0.0, 1.0);
            let row: Vec<u16> = (0..100).map(|x| value(f64::from(x)) as u16).collect();
            let contrast = Contrast { width: 100, height: 60, values: row.repeat(60) };
            // Upwards, with the leaf on the right.
            let line: Vec<[f64; 2]> = (5..55).rev().map(|y| [49.6, f64::from(y)]).collect();
            let moved = between(&contrast, &line, leaf as u16);
            for point in &moved[5..45] {
                assert!((point[0] - edge).abs() < 0.05, "{shade}: {point:?}");
            }
        }
    }
}
