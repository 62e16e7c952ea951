//! Number labels to cut out and lay beside the specimens.
//!
//! From the number of kinds to pages of numbers, each with a line for the place where the
//! specimen was found. They ask for no child's name and give no kind away.

use crate::Paper;
use crate::drawing;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::MARGIN;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};

/// Labels across a page at most.
const ACROSS: usize = 4;
/// The same of large print: there must be a line left to write on.
const LARGE_ACROSS: usize = 3;
/// The least height of a label, in mm: a number to read across a table.
const LEAST: f64 = 34.0;

/// The pages: a label for every kind, and not one more.
pub(super) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-labels", OUR_GROUP);
    let head = setting.masthead(&frame, &setting.say("sheet-labels"), false);
    let words = setting.say("sheet-labels-about");
    let head = head.then(4.0, setting.text(&words, Style::BODY, frame.wide()));
    let wanted = setting.booklet.matrix.taxa().len().max(1);
    let room = |page: usize| {
        let top = if page == 0 { head.h + 7.0 } else { 3.0 };
        (frame.top(page) + top, frame.bottom() - frame.top(page) - top - 3.0)
    };
    let most =
        |page: usize| ((room(page).1 / LEAST).floor() as usize).max(1) * most_across(setting);
    let mut shares = Vec::new();
    let mut left = wanted;
    while left > 0 {
        let share = left.min(most(shares.len()));
        shares.push(share);
        left -= share;
    }
    // What the last page would have alone is shared with the one before, so that none is empty.
    let room_before = shares.len().checked_sub(2).map_or(0, most);
    if let [.., before, last] = &mut shares[..] {
        let both = *before + *last;
        *before = both.div_ceil(2).min(room_before);
        *last = both - *before;
    }
    let of = shares.len();
    let mut number = 1;
    let mut pages = Vec::new();
    for (page, share) in shares.into_iter().enumerate() {
        let (y, high) = room(page);
        let grid = grid(setting, number, share, (frame.wide(), high));
        number += share;
        let mut nodes = Vec::new();
        if page == 0 {
            nodes.extend(head.clone().moved(MARGIN, MARGIN).nodes);
        }
        nodes.extend(grid.moved(MARGIN, y).nodes);
        pages.push(frame.page(&setting.faces, nodes, page, of));
    }
    pages
}

/// All labels on a part of a page; None: a label would be too low to read across a table.
pub(super) fn within(setting: &Setting, wide: f64, high: f64) -> Option<Piece> {
    let words = setting.text(&setting.say("sheet-labels-about"), Style::SMALL, wide);
    let wanted = setting.booklet.matrix.taxa().len().max(1);
    let (y, most) = (words.h + 4.0, most_across(setting));
    let fits = wanted.div_ceil(most) as f64 * LEAST <= high - y;
    fits.then(|| words.with(0.0, y, grid(setting, 1, wanted, (wide, high - y))))
}

fn most_across(setting: &Setting) -> usize {
    if setting.is_large() { LARGE_ACROSS } else { ACROSS }
}

/// How many labels stand beside each other: as many as leave the fewest places empty, four
/// before three before two.
fn across(count: usize, high: f64, most: usize) -> usize {
    let fits = |across: &usize| count.div_ceil(*across) as f64 * LEAST <= high;
    let empty = |across: &usize| count.next_multiple_of(*across) - count;
    let all = (2..=most).rev().filter(fits);
    all.min_by_key(empty).unwrap_or(most).min(count.max(1))
}

/// So many labels, from a number on, with dashed lines to cut along; the page is filled.
fn grid(setting: &Setting, first: usize, count: usize, (wide, high): (f64, f64)) -> Piece {
    let across = across(count, high, most_across(setting));
    let rows = count.div_ceil(across);
    let (w, h) = (wide / across as f64, high / rows as f64);
    let mut grid = Piece::blank(wide, high);
    for at in 0..count {
        let (column, row) = ((at % across) as f64, (at / across) as f64);
        grid = grid.with(column * w, row * h, label(setting, first + at, w, h));
    }
    let pen = Pen::dashed(0.3, Ink::Ink);
    for column in 1..across {
        grid = grid.with(column as f64 * w, 0.0, Piece::upright(high, pen));
    }
    for row in 0..=rows {
        let y = row as f64 * h;
        grid = grid.with(0.0, y, Piece::rule(wide, pen));
        grid = grid.with(2.0, y - 2.4, drawing::scissors());
    }
    grid
}

fn label(setting: &Setting, number: usize, w: f64, h: f64) -> Piece {
    let style = Style { size: 42.0, leading: 1.1, ..Style::TITLE };
    let block = setting.block(&number.to_string(), style, w).centred(w);
    let under = setting.say("sheet-found-at");
    let under = setting.block(&under, Style::SMALL.inked(Ink::Soft), w - 8.0);
    let line = Piece::rule(w - 8.0 - under.width - 2.0, Pen::solid(0.2, Ink::Soft));
    let y = (h - 8.0 - block.height) / 2.0;
    let (left, foot) = (4.0 + under.width + 2.0, h - 8.4);
    Piece::blank(w, h)
        .with(0.0, y, Piece::text(block, Role::Paragraph))
        .with(4.0, foot, Piece::text(under, Role::Paragraph))
        .with(left, foot + 4.8, line)
        .grouped(Group::Section)
}
