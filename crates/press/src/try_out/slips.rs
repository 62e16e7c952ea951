//! The try-out slip: which specimen, where it came out, which question stopped us.

use crate::Paper;
use crate::drawing;
use crate::fitting;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::MARGIN;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece};

/// Slips beside each other on a page.
const ACROSS: usize = 2;
/// The least height of a slip, in mm: five lines that a child can write on.
const LEAST: f64 = 64.0;

/// The page, and how many slips stand on it.
pub(super) fn pages(setting: &Setting, paper: Paper) -> (Vec<Page>, usize) {
    let frame = setting.frame(paper, false, "sheet-slips", OUR_GROUP);
    let head = setting.masthead(&frame, &setting.say("sheet-slips"), true);
    let top = frame.top(0) + head.h + 5.0;
    let high = frame.bottom() - top;
    let down = ((high / LEAST).floor() as usize).clamp(1, 3);
    let (w, h) = (frame.wide() / ACROSS as f64, high / down as f64);
    let mut body = Piece::blank(frame.wide(), h * down as f64);
    for at in 0..ACROSS * down {
        let (column, row) = (at % ACROSS, at / ACROSS);
        let x = column as f64 * w + if column == 0 { 0.0 } else { 6.0 };
        body = body.with(x, row as f64 * h + 5.0, slip(setting, w - 6.0, h - 8.0));
    }
    let pen = Pen::dashed(0.3, Ink::Ink);
    body = body.with(w, 0.0, Piece::upright(h * down as f64, pen));
    for row in 0..down {
        let y = row as f64 * h;
        body = body.with(0.0, y, Piece::rule(frame.wide(), pen));
        body = body.with(2.0, y - 2.4, drawing::scissors());
    }
    let mut nodes = head.moved(MARGIN, MARGIN).nodes;
    nodes.extend(body.moved(MARGIN, top).nodes);
    (vec![frame.page(&setting.faces, nodes, 0, 1)], ACROSS * down)
}

fn slip(setting: &Setting, w: f64, h: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-we-tried"), Style::STRONG, w);
    let asks =
        ["sheet-slip-number", "sheet-slip-came-out", "sheet-slip-stopped", "sheet-slip-word"];
    let step = ((h - title.h - 13.0) / asks.len() as f64).min(12.0);
    let mut slip = title;
    for ask in asks {
        let words = setting.text(&setting.say(ask), Style::BODY, w);
        let (x, y) = (words.w + 2.0, slip.h + step - words.h);
        let line = Piece::rule((w - x).max(6.0), Pen::solid(0.2, Ink::Soft));
        slip = slip.with(0.0, y, words.with(x, 5.8, line));
    }
    let y = slip.h + 4.0;
    let tick = |words: &str| {
        drawing::tick_box(5.0).with(
            7.0,
            -0.8,
            setting.text(&setting.say(words), Style::BODY, w),
        )
    };
    let (yes, no) = (tick("answer-yes"), tick("answer-no"));
    let fits = match fitting::anywhere(setting.booklet.matrix) {
        true => setting.say("sheet-slip-fits"),
        false => setting.say("sheet-slip-looks"),
    };
    let fits = setting.text(&fits, Style::BODY, w);
    let first = fits.w + 4.0;
    let second = first + yes.w + 4.0;
    slip.with(0.0, y - 0.8, fits)
        .with(first, y, yes)
        .with(second, y, no)
        .grouped(Group::Section)
}
