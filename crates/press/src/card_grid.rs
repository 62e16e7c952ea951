//! Eight cards on a page, four of large print: where each is, and the lines to cut along.
//!
//! From the frame of a page to its cells in mm. They lie as far from the left edge of the paper as
//! from its right, so that the back of a card is behind its front. What stands on a card it does
//! not know.

use crate::drawing;
use crate::setting::Setting;
use crate::sheet::Piece;
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Ink, Pen};

/// Cards beside each other and beneath each other.
const ACROSS: usize = 2;
const DOWN: usize = 4;
/// The same of large print.
const LARGE_DOWN: usize = 2;
/// The same where a card has more words than that holds.
const WIDEST_ACROSS: usize = 1;
/// From the head and the foot of a page to the cards, in mm: the scissors lie on their lines.
const AROUND: f64 = 3.0;

/// What a second line of the head takes in large print, in mm.
const SECOND_LINE: f64 = 5.0;

/// The cells of a page: where the first is, and their size, in mm.
pub(crate) struct Cells {
    pub(crate) top: f64,
    pub(crate) w: f64,
    pub(crate) h: f64,
    across: usize,
    down: usize,
}

impl Cells {
    /// The cells of every page of a frame: the head is one line, on the first page too.
    pub(crate) fn of(setting: &Setting, frame: &Frame) -> Self {
        Self::beside(ACROSS, setting, frame)
    }

    /// The same for cards of large print whose words need more room: one beneath the other.
    pub(crate) fn widest(setting: &Setting, frame: &Frame) -> Self {
        Self::beside(WIDEST_ACROSS, setting, frame)
    }

    fn beside(across: usize, setting: &Setting, frame: &Frame) -> Self {
        let down = if setting.is_large() { LARGE_DOWN } else { DOWN };
        let second_line = if setting.is_large() { SECOND_LINE } else { 0.0 };
        let top = frame.top(1) + AROUND + second_line;
        let high = frame.bottom() - top - AROUND;
        Self { top, w: frame.wide() / across as f64, h: high / down as f64, across, down }
    }

    /// Cards on a page.
    pub(crate) fn a_page(&self) -> usize {
        self.across * self.down
    }

    /// The corner of a card in its page, seen from the front or from the back.
    pub(crate) fn corner(&self, at: usize, back: bool) -> (f64, f64) {
        let (column, row) = (at % self.across, at / self.across);
        let column = if back { self.across - 1 - column } else { column };
        (MARGIN + column as f64 * self.w, self.top + row as f64 * self.h)
    }

    /// The lines to cut along, to be placed at the left margin and at the top of the cells.
    pub(crate) fn cuts(&self) -> Piece {
        let pen = Pen::dashed(0.3, Ink::Ink);
        let (wide, high) = (self.w * self.across as f64, self.h * self.down as f64);
        let mut cuts = Piece::blank(wide, high);
        for column in 0..=self.across {
            cuts = cuts.with(column as f64 * self.w, 0.0, Piece::upright(high, pen));
        }
        for row in 0..=self.down {
            let y = row as f64 * self.h;
            cuts = cuts.with(0.0, y, Piece::rule(wide, pen));
            cuts = cuts.with(2.0, y - 2.4, drawing::scissors());
        }
        cuts
    }
}
