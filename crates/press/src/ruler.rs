//! A ruler of today: a strip of paper with exactly the lengths that the key asks for.
//!
//! From a booklet to a sheet with strips to cut out, a line to hold a real ruler against, and how
//! to measure. A strip longer than the paper comes in pieces to glue together; what is longer
//! than a metre is said, and measured with a tape. Printers shrink: without the check the strip
//! is a guess.

mod how;
mod lengths;
mod strip;

use crate::copies::For;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::frame::Frame;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Page, Piece, Sheet};
use crate::{Booklet, Paper, drawing};
use lengths::Length;

/// Between two strips, in mm: room for the scissors.
const BETWEEN: f64 = 6.0;

/// Whether the key asks for any length.
pub fn has_something(booklet: &Booklet) -> bool {
    !lengths::asked(booklet).is_empty()
}

/// The ruler as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-ruler", &[("title", &setting.title())]);
    setting.sheet(title, pages(&setting, paper))
}

fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let all = lengths::asked(setting.booklet);
    let (short, long): (Vec<&Length>, Vec<&Length>) =
        all.iter().partition(|length| length.mm <= strip::LONGEST);
    let frame = setting.frame(paper, true, "sheet-ruler", OUR_GROUP);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-ruler"), true));
    flow.put(3.0, how_to(setting, &frame, &long));
    flow.put(1.5, setting.to_mind(frame.wide()));
    let pieces = strip::pieces(setting, &short);
    let cut: Vec<Piece> = pieces.into_iter().map(|piece| cut_out(&frame, piece)).collect();
    // A strip for each group, the pieces of one after the other.
    for _ in 0..For::EachGroup.count(setting.class()) {
        cut.iter().for_each(|piece| flow.put(BETWEEN, piece.clone()));
    }
    flow.lines_to_write_on(&setting.say("sheet-ruler-measured"));
    flow.finish()
}

/// Dashed lines around a strip, with scissors on the first.
fn cut_out(frame: &Frame, piece: Piece) -> Piece {
    let (w, h) = (piece.w, piece.h);
    let pen = Some(Pen::dashed(0.3, Ink::Ink));
    let around = Piece::rectangle(w, h, None, pen);
    let x = ((frame.wide() - w) / 2.0).max(0.0);
    let cut = piece.with(0.0, 0.0, around).with(w - 12.0, h - 2.4, drawing::scissors());
    let cut = Piece { w, h: h + 2.4, ..cut };
    Piece::blank(frame.wide(), h + 2.4).with(x, 0.0, cut)
}

/// What to do, beside a drawn leaf, and the line for the check.
fn how_to(setting: &Setting, frame: &Frame, long: &[&Length]) -> Piece {
    let leaf = setting.speaks_of_leaves().then(|| how::leaf(setting));
    let x = leaf.as_ref().map_or(0.0, |leaf| leaf.w + 8.0);
    let room = frame.wide() - x;
    let mut words = Piece::blank(room, 0.0);
    let first = setting.text(&setting.say("sheet-ruler-check"), Style::SMALL_STRONG, room);
    words = words.then(0.0, first).then(1.5, setting.check_line());
    words = words.then(2.5, setting.text(&setting.say("sheet-ruler-how"), Style::SMALL, room));
    for length in long {
        let numbers = length.numbers.iter().map(u32::to_string).collect::<Vec<_>>().join(", ");
        let line = setting
            .t()
            .with("sheet-ruler-tape", &[("numbers", &numbers), ("amount", &length.amount)]);
        words = words.then(1.0, setting.text(&line, Style::SMALL, room));
    }
    match leaf {
        Some(leaf) => leaf.with(x, 0.0, words),
        None => words,
    }
}
