//! Eight cards on a page: where each is, and the lines to cut along.
//!
//! From the frame of a page to its cells in mm. They lie as far from the left edge of the paper as
//! from its right, so that the back of a card is behind its front. What stands on a card it does
//! not know.

use crate::drawing;
use crate::sheet::Piece;
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Ink, Pen};

/// Cards beside each other and beneath each other.
const ACROSS: usize = 2;
const DOWN: usize = 4;
/// Cards on a page.
pub(crate) const A_PAGE: usize = ACROSS * DOWN;
/// From the head and the foot of a page to the cards, in mm: the scissors lie on their lines.
const AROUND: f64 = 3.0;

/// The cells of a page: where the first is, and their size, in mm.
pub(crate) struct Cells {
    pub(crate) top: f64,
    pub(crate) w: f64,
    pub(crate) h: f64,
}

impl Cells {
    /// The cells of every page of a frame: the head is one line, on the first page too.
    pub(crate) fn of(frame: &Frame) -> Self {
        let top = frame.top(1) + AROUND;
        let high = frame.bottom() - top - AROUND;
        Self { top, w: frame.wide() / ACROSS as f64, h: high / DOWN as f64 }
    }

    /// The corner of a card in its page, seen from the front or from the back.
    pub(crate) fn corner(&self, at: usize, back: bool) -> (f64, f64) {
        let (column, row) = (at % ACROSS, at / ACROSS);
        let column = if back { ACROSS - 1 - column } else { column };
        (MARGIN + column as f64 * self.w, self.top + row as f64 * self.h)
    }

    /// The lines to cut along, to be placed at the left margin and at the top of the cells.
    pub(crate) fn cuts(&self) -> Piece {
        let pen = Pen::dashed(0.3, Ink::Ink);
        let (wide, high) = (self.w * ACROSS as f64, self.h * DOWN as f64);
        let mut cuts = Piece::blank(wide, high);
        for column in 0..=ACROSS {
            cuts = cuts.with(column as f64 * self.w, 0.0, Piece::upright(high, pen));
        }
        for row in 0..=DOWN {
            let y = row as f64 * self.h;
            cuts = cuts.with(0.0, y, Piece::rule(wide, pen));
            cuts = cuts.with(2.0, y - 2.4, drawing::scissors());
        }
        cuts
    }
}
