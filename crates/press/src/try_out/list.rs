//! The try-out list: where each find came out, which question stopped us, and who got lost.
//!
//! From the number of kinds to one list for a group: a row for each number label, and every kind
//! to tick when it comes out. What has no tick at the end got lost. It replaces a slip for every
//! try: a group of four has one pencil, and twelve slips are two sheets of paper.

use crate::Paper;
use crate::drawing;
use crate::fitting;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};

/// The least height of a row, in mm: a child writes into it. The second, which is still more than
/// the lines of a school book, saves a page.
const ROWS: [f64; 2] = [12.0, 10.0];
/// The most: the page is filled as far as that goes.
const ROOMY: f64 = 17.0;
/// From what stands above a table to the table, in mm.
const ABOVE: f64 = 4.0;
/// From the table to what stands beneath it, in mm.
const BELOW: f64 = 6.0;
/// Kinds to tick beside each other.
const ACROSS: usize = 3;
/// The height of a kind to tick, in mm.
const TICK: f64 = 8.5;

/// The pages of a list with a row for every kind.
pub(super) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let [high, low] = ROWS.map(|least| laid(setting, paper, least));
    if low.len() < high.len() { low } else { high }
}

fn laid(setting: &Setting, paper: Paper, least: f64) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-tried", OUR_GROUP);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-tried"), true));
    let wide = flow.wide();
    flow.put(4.0, setting.text(&setting.say("sheet-tried-about"), Style::BODY, wide));
    let ticks = ticks(setting, wide);
    let shares = match setting.is_large() {
        true => [0.1, 0.23, 0.26, 0.2, 0.21],
        false => [0.1, 0.3, 0.17, 0.2, 0.23],
    };
    let widths = shares.map(|share| share * wide);
    let heads = heads(setting, widths);
    let rows = setting.booklet.matrix.taxa().len().max(1);
    let room = flow.room()
        - ABOVE
        - heads.h
        - ticks.iter().map(|row| row.h).sum::<f64>()
        - BELOW
        - 1.0;
    let high = (room / rows as f64).clamp(least, ROOMY);
    let rows = (1..=rows).map(|number| row(setting, number, widths, high)).collect();
    flow.table(ABOVE, &heads, rows);
    for (at, row) in ticks.into_iter().enumerate() {
        flow.put(if at == 0 { BELOW } else { 0.0 }, row);
    }
    flow.lines_to_write_on(&setting.say("sheet-what-we-noticed"));
    flow.finish()
}

fn heads(setting: &Setting, widths: [f64; 5]) -> Piece {
    let fits = match fitting::anywhere(setting.booklet.matrix) {
        true => "sheet-tried-fits",
        false => "sheet-tried-looks",
    };
    let heads = [
        "sheet-tried-number",
        "sheet-tried-came-out",
        fits,
        "sheet-tried-stopped",
        "sheet-tried-word",
    ];
    let mut x = 0.0;
    let mut row = Piece::blank(widths.iter().sum(), 0.0);
    for (words, width) in heads.into_iter().zip(widths) {
        let style = Style::SMALL_STRONG.inked(Ink::Hedge);
        let text = setting.text(&setting.say(words), style, width - 3.0);
        row = row.with(x, 0.0, text.grouped(Group::ColumnHead));
        x += width;
    }
    let (w, y) = (row.w, row.h + 1.2);
    row.grouped(Group::Row).with(0.0, y, Piece::rule(w, Pen::solid(0.5, Ink::Hedge)))
}

/// The row of a number label: lines to write on, and two boxes to tick.
fn row(setting: &Setting, number: usize, widths: [f64; 5], high: f64) -> Piece {
    let [first, came_out, fits, stopped, _] = widths;
    let whole: f64 = widths.iter().sum();
    let number = setting.block(&number.to_string(), Style::LARGE, first);
    let y = (high - number.height) / 2.0;
    let number = Piece::text(number, Role::Paragraph).grouped(Group::RowHead);
    let tick = |word: &str| {
        let word = setting.text(&setting.say(word), Style::SMALL, fits);
        drawing::tick_box(5.0).with(6.0, -0.3, word)
    };
    let (yes, no) = (tick("answer-yes"), tick("answer-no"));
    let second = yes.w + 2.5;
    let ticks = yes.with(second, 0.0, no).grouped(Group::Cell);
    let start = first + came_out;
    let mut row =
        Piece::blank(whole, high).with(0.0, y, number).with(start, (high - 5.0) / 2.0, ticks);
    for x in [first - 2.0, start - 2.0, start + fits - 2.0, start + fits + stopped - 2.0] {
        row = row.with(x, 0.0, Piece::upright(high, Pen::solid(0.2, Ink::Soft)));
    }
    row.grouped(Group::Row).with(
        0.0,
        high - 0.2,
        Piece::rule(whole, Pen::solid(0.2, Ink::Soft)),
    )
}

/// Every kind to tick when it comes out: a heading, then rows, none of which breaks.
fn ticks(setting: &Setting, wide: f64) -> Vec<Piece> {
    let title = setting.heading(2, &setting.say("sheet-comes-out"), Style::STRONG, wide);
    let about = setting.text(&setting.say("sheet-tick-about"), Style::SMALL, wide);
    let column = wide / ACROSS as f64;
    let kinds: Vec<_> = setting.booklet.matrix.taxon_indices().collect();
    // Down the columns, as one reads a list.
    let down = kinds.len().div_ceil(ACROSS).max(1);
    let rows = (0..down).map(|row| {
        let mut high = TICK;
        let blocks: Vec<_> = kinds
            .iter()
            .skip(row)
            .step_by(down)
            .map(|kind| {
                let name = setting.block(&setting.name(*kind), Style::BODY, column - 12.0);
                let name = name.at_most(&setting.faces, setting.lines(2));
                high = high.max(name.height + 1.6);
                name
            })
            .collect();
        let mut piece = Piece::blank(wide, high);
        for (at, block) in blocks.into_iter().enumerate() {
            let (x, y) = (at as f64 * column, (high - block.height) / 2.0);
            piece = piece.with(x, (high - 6.0) / 2.0, drawing::tick_box(6.0));
            piece = piece.with(x + 9.0, y, Piece::text(block, Role::Paragraph));
        }
        piece.grouped(Group::Section)
    });
    let mut rows: Vec<_> = rows.collect();
    let first = rows.remove(0);
    rows.insert(0, title.then(0.5, about).then(1.5, first));
    rows
}
