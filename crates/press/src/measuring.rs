//! The measuring sheet: several leaves of a kind, and the range to type in.
//!
//! From the columns of the table that hold lengths to blocks of rows to write in by hand: six
//! finds of one kind, the least and the most of them. It holds no measurement itself; the range
//! of the last line is what a cell of the table wants.
//!
//! Source: a range from several leaves instead of one is common practice, without a source.

use spinney_model::{Character, Scale, Unit};

use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::MARGIN;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper};

/// Finds of one kind: one tells nothing of the range, six fit where four kinds are on a page.
const FINDS: usize = 6;
/// The most columns of one sheet.
const MOST: usize = 4;
/// So many columns leave room for two blocks beside each other.
const NARROW: usize = 2;
/// Between two blocks, in mm.
const BETWEEN: f64 = 8.0;
/// Width of the first cell of a row, in mm: a word like `least`.
const FIRST: f64 = 24.0;

/// Whether the table has a column of lengths.
pub fn has_something(booklet: &Booklet) -> bool {
    !columns(booklet).is_empty()
}

/// The measuring sheet as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-measuring", &[("title", &setting.title())]);
    setting.sheet(title, pages(&setting, paper))
}

/// The columns of lengths that are measured, not worked out of two others.
fn columns<'b>(booklet: &'b Booklet) -> Vec<&'b Character> {
    let lengths = booklet.matrix.characters().iter().filter(|character| {
        matches!(character.scale, Scale::Measure { unit: Unit::Millimetres, .. })
    });
    lengths.filter(|character| character.ratio_of.is_none()).take(MOST).collect()
}

fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let columns = columns(setting.booklet);
    let frame = setting.frame(paper, false, "sheet-measuring", OUR_GROUP);
    let head = setting.masthead(&frame, &setting.say("sheet-measuring"), false);
    let about = setting.text(&setting.say("sheet-measuring-about"), Style::BODY, frame.wide());
    let head = head.then(4.0, about).then(1.0, setting.to_mind(frame.wide()));
    let top = frame.top(0) + head.h + 6.0;
    let high = (frame.bottom() - top - BETWEEN) / 2.0;
    let across = if columns.len() <= NARROW { 2 } else { 1 };
    let wide = (frame.wide() - BETWEEN * (across - 1) as f64) / across as f64;
    let block = block(setting, &columns, (wide, high));
    let mut nodes = head.moved(MARGIN, MARGIN).nodes;
    for at in 0..2 * across {
        let x = MARGIN + (at % across) as f64 * (wide + BETWEEN);
        let y = top + (at / across) as f64 * (high + BETWEEN);
        nodes.extend(block.clone().moved(x, y).nodes);
    }
    vec![frame.page(&setting.faces, nodes, 0, 1)]
}

/// One kind: whose measurements, the finds, the least, the most and the range.
fn block(setting: &Setting, columns: &[&Character], (wide, high): (f64, f64)) -> Piece {
    let kind = setting.text(&setting.say("sheet-measuring-kind"), Style::STRONG, wide);
    let x = kind.w + 2.0;
    let kind = kind.with(x, 5.8, Piece::rule(wide - x, Pen::solid(0.2, Ink::Soft)));
    let each = (wide - FIRST) / columns.len() as f64;
    let words = columns.iter().map(|column| match column.sign() {
        "" => column.name.clone(),
        sign => format!("{} ({sign})", without_unit(&column.name, sign)),
    });
    let mut head = Piece::blank(wide, 0.0);
    for (at, words) in words.enumerate() {
        let block = setting.block(&words, Style::SMALL_STRONG.inked(Ink::Hedge), each - 2.0);
        let text = Piece::text(block.at_most(&setting.faces, 3), Role::Paragraph);
        head = head.with(FIRST + at as f64 * each + 1.0, 0.0, text.grouped(Group::ColumnHead));
    }
    let head =
        head.grouped(Group::Row).then(0.8, Piece::rule(wide, Pen::solid(0.5, Ink::Hedge)));
    let rows = FINDS + 3;
    let step = ((high - kind.h - 2.0 - head.h) / rows as f64).min(12.0);
    let mut table = head;
    let names = (1..=FINDS).map(|find| find.to_string()).chain(
        ["sheet-measuring-least", "sheet-measuring-most", "sheet-measuring-type"]
            .map(|name| setting.say(name)),
    );
    for (at, name) in names.enumerate() {
        let style = if at < FINDS { Style::SMALL } else { Style::SMALL_STRONG };
        let block = setting.block(&name, style, FIRST - 1.0).at_most(&setting.faces, 1);
        let y = (step - block.height) / 2.0;
        let mut row = Piece::blank(wide, step);
        if at + 1 == rows {
            row = row.with(0.0, 0.3, Piece::rectangle(wide, step - 0.6, Some(Ink::Tint), None));
        }
        row = row.with(0.0, y, Piece::text(block, Role::Paragraph).grouped(Group::RowHead));
        if at + 1 == rows {
            for column in 0..columns.len() {
                let dash = setting.block("–", Style::STRONG, each).centred(each);
                let dash = Piece::text(dash, Role::Paragraph).grouped(Group::Cell);
                row = row.with(FIRST + column as f64 * each, (step - dash.h) / 2.0, dash);
            }
        }
        let pen = Pen::solid(if at + 1 == FINDS { 0.5 } else { 0.2 }, Ink::Hedge);
        table =
            table.then(0.0, row.grouped(Group::Row).with(0.0, step, Piece::rule(wide, pen)));
    }
    let rows_high = rows as f64 * step;
    let top = table.h - rows_high;
    for column in 0..columns.len() {
        let pen = Pen::solid(0.2, Ink::Soft);
        let x = FIRST + column as f64 * each;
        table = table.with(x, top, Piece::upright(rows_high, pen));
    }
    kind.then(2.0, table.grouped(Group::Table))
}

/// `blade (mm)` as `blade`: the unit is said once.
fn without_unit<'n>(name: &'n str, sign: &str) -> &'n str {
    let bare = name.trim().strip_suffix(&format!("({sign})"));
    bare.map_or(name, str::trim_end)
}
