//! The tick strip: tick every kind when it reaches an end; unticked at the end means lost.

use crate::Paper;
use crate::drawing;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};

/// Height of one kind's line, in mm.
const LINE: f64 = 8.5;
/// The gap between two strips, where one cuts, in mm.
const CUT: f64 = 10.0;

/// The pages, and how many strips stand on one.
pub(super) fn pages(setting: &Setting, paper: Paper) -> (Vec<Page>, usize) {
    let frame = setting.frame(paper, false, "sheet-strips", OUR_GROUP);
    let head = setting.masthead(&frame, &setting.say("sheet-strips"), false);
    let top = head.h + 5.0;
    let high = frame.bottom() - frame.top(0) - top;
    let strips = strips(setting, &frame, high);
    let width = strips.first().map_or(60.0, |strip| strip.w);
    let across = (((frame.wide() + CUT) / (width + CUT)).floor() as usize).max(1);
    // A strip of one piece is printed as often as it fits; a long one in all its parts.
    let copies = (across / strips.len().max(1)).max(1);
    let down = if strips.len() == 1 { rows(&strips[0], high) } else { 1 };
    let order: Vec<_> = (0..copies * down).flat_map(|_| strips.iter().cloned()).collect();
    let mut pages = Vec::new();
    let sheets: Vec<_> = order.chunks(across * down).collect();
    for (at, chunk) in sheets.iter().enumerate() {
        let y = if at == 0 { frame.top(0) + top } else { frame.top(at) };
        let mut body = Piece::blank(frame.wide(), high);
        for (place, strip) in chunk.iter().enumerate() {
            let (column, row) = (place % across, place / across);
            let step = strip.h + CUT;
            body = body.with(column as f64 * (width + CUT), row as f64 * step, strip.clone());
        }
        body = cuts(body, across, width, (chunk.len().div_ceil(across), strips[0].h), high);
        let mut nodes = Vec::new();
        if at == 0 {
            nodes.extend(head.clone().moved(MARGIN, MARGIN).nodes);
        }
        nodes.extend(body.moved(MARGIN, y).nodes);
        pages.push(frame.page(&setting.faces, nodes, at, sheets.len()));
    }
    (pages, copies * down)
}

fn rows(strip: &Piece, high: f64) -> usize {
    (((high + CUT) / (strip.h + CUT)).floor() as usize).max(1)
}

/// Dashed lines between the strips, with scissors.
fn cuts(
    mut body: Piece,
    across: usize,
    width: f64,
    (rows, h): (usize, f64),
    high: f64,
) -> Piece {
    let (pen, wide) = (Pen::dashed(0.3, Ink::Ink), body.w);
    for column in 1..across {
        let x = column as f64 * (width + CUT) - CUT / 2.0;
        body = body.with(x, 8.0, Piece::upright(high - 8.0, pen));
        body = body.with(x - 3.5, 2.0, drawing::scissors());
    }
    for row in 1..rows {
        let y = row as f64 * (h + CUT) - CUT / 2.0;
        body = body.with(0.0, y, Piece::rule(wide, pen));
        body = body.with(2.0, y - 2.4, drawing::scissors());
    }
    body
}

/// The strip in as many parts as the page's height asks for.
fn strips(setting: &Setting, frame: &Frame, high: f64) -> Vec<Piece> {
    let names: Vec<_> =
        setting.booklet.matrix.taxon_indices().map(|taxon| setting.name(taxon)).collect();
    let longest = names
        .iter()
        .map(|name| setting.block(name, Style::BODY, f64::INFINITY).width)
        .fold(0.0, f64::max);
    let width = (longest + 9.0).clamp(52.0, (frame.wide() - CUT) / 2.0);
    let head = head(setting, width);
    let deep = high - head.h - 4.0;
    let set = |least: f64| -> Vec<Piece> {
        names.iter().map(|name| line(setting, name, width, least)).collect()
    };
    let all = |lines: &[Piece]| lines.iter().map(|line| line.h).sum::<f64>();
    let mut lines = set(LINE);
    // One row of strips that would leave half of the page empty gets roomier lines.
    if all(&lines) <= deep && 2.0 * (head.h + 3.0 + all(&lines)) + CUT > high {
        lines = set((deep / names.len().max(1) as f64).clamp(LINE, 13.0));
        if all(&lines) > deep {
            lines = set(LINE);
        }
    }
    let mut strips = vec![head];
    let mut used = 0.0;
    for line in lines {
        if used + line.h > deep {
            strips.push(Piece::blank(width, 0.0));
            used = 0.0;
        }
        used += line.h;
        let strip = strips.pop().expect("a strip was begun");
        strips.push(strip.then(if used > line.h { 0.0 } else { 3.0 }, line));
    }
    strips.into_iter().map(|strip| strip.grouped(Group::Section)).collect()
}

fn head(setting: &Setting, width: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-comes-out"), Style::STRONG, width);
    let words = setting.say("sheet-strip-about");
    title.then(0.5, setting.text(&words, Style::SMALL, width))
}

fn line(setting: &Setting, name: &str, width: f64, least: f64) -> Piece {
    let block = setting.block(name, Style::BODY, width - 9.0).at_most(&setting.faces, 2);
    let h = least.max(block.height + 1.6);
    let y = (h - block.height) / 2.0;
    Piece::blank(width, h).with(0.0, (h - 6.0) / 2.0, drawing::tick_box(6.0)).with(
        9.0,
        y,
        Piece::text(block, Role::Paragraph),
    )
}
