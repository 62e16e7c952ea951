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
