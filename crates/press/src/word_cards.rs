//! Words as cards: eight to a page, to cut out, to lay beside the real thing, to play with.
//!
//! From a booklet to a card for each word that its key uses: the word, its drawing beside what it
//! is taken for, and its plain words below. What is left of the last page are cards for words of
//! the group's own.
//!
//! Source: words on cards, matched with things, are common practice, without a source.

use spinney_model::{DrawnWord, Figure};

use crate::card_grid::Cells;
use crate::glossary::{self, Entry};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper, lines};

/// From the edge of a card to what stands on it, in mm.
const PADDING: f64 = 4.0;
/// The least and the greatest height of a drawing, in mm.
const LEAST: f64 = 18.0;
const GREATEST: f64 = 28.0;
/// Between two drawings, in mm.
const BETWEEN: f64 = 2.0;
/// Lines of plain words on a card.
const LINES: usize = 5;

/// Whether the key uses any word of the list.
pub fn has_something(booklet: &Booklet) -> bool {
    !glossary::words_used(booklet).is_empty()
}

/// The cards as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-word-cards", &[("title", &setting.title())]);
    let frame = setting.frame(paper, false, "sheet-word-cards", OUR_GROUP);
    let about_leaves = glossary::about_leaves(booklet);
    let words = glossary::words_used(booklet);
    let mut cells = Cells::of(&setting, &frame);
    let fits = |entry: &Entry| {
        let drawn = (booklet.drawn.word)(entry.id, about_leaves);
        on_card(&setting, entry, drawn.as_ref(), &cells).h <= cells.h - 1.5 * PADDING
    };
    if setting.is_large() && !words.iter().all(fits) {
        cells = Cells::widest(&setting, &frame);
    }
    let a_page = cells.a_page();
    let of = words.len().div_ceil(a_page);
    let mut pages: Vec<Page> = Vec::new();
    for chunk in words.chunks(a_page) {
        let mut nodes = Vec::new();
        if pages.is_empty() {
            nodes.extend(head(&setting, &frame).nodes);
        }
        for at in 0..a_page {
            let card = match chunk.get(at) {
                Some(entry) => {
                    let drawn = (booklet.drawn.word)(entry.id, about_leaves);
                    card(&setting, entry, drawn.as_ref(), &cells)
                }
                None => own_word(&setting, &cells),
            };
            let (x, y) = cells.corner(at, false);
            nodes.extend(card.grouped(Group::Section).moved(x, y).nodes);
        }
        nodes.extend(cells.cuts().moved(MARGIN, cells.top).nodes);
        pages.push(frame.page(&setting.faces, nodes, pages.len(), of));
    }
    setting.sheet(title, pages)
}

/// One line: cards need the paper.
fn head(setting: &Setting, frame: &Frame) -> Piece {
    let style = Style::SMALL_STRONG.inked(Ink::Hedge);
    let block = setting.block(&frame.running, style, frame.wide());
    let block = block.at_most(&setting.faces, setting.lines(1));
    Piece::text(block, Role::Heading(1)).moved(MARGIN, MARGIN + 0.8)
}

/// The word, its drawings as large as the words leave room for, and its plain words.
fn card(setting: &Setting, entry: &Entry, drawn: Option<&DrawnWord>, cells: &Cells) -> Piece {
    let words = on_card(setting, entry, drawn, cells);
    Piece::blank(cells.w, cells.h).with(PADDING, PADDING, words)
}

fn on_card(
    setting: &Setting,
    entry: &Entry,
    drawn: Option<&DrawnWord>,
    cells: &Cells,
) -> Piece {
    let (w, h) = (cells.w - 2.0 * PADDING, cells.h - 2.0 * PADDING);
    let name = setting.block(&entry.word, Style::LARGE.inked(Ink::Hedge), w);
    let name = Piece::text(name.at_most(&setting.faces, setting.lines(2)), Role::Heading(2));
    let style = if drawn.is_some() { Style::SMALL } else { Style::BODY };
    let plain =
        setting.block(&entry.plain, style, w).at_most(&setting.faces, setting.lines(LINES));
    let mut below = Piece::text(plain, Role::Paragraph);
    if let (Some(other), None) = (&entry.not_to_be_confused, drawn) {
        let words = setting.t().with("try-not-confused", &[("other", &other)]);
        below = below.then(1.0, setting.text(&words, Style::SMALL.inked(Ink::Soft), w));
    }
    let Some(drawn) = drawn else {
        return name.then(2.0, below);
    };
    let not = not(setting, drawn, w);
    let taken = name.h + below.h + not.as_ref().map_or(0.0, |not| not.h) + 3.0;
    let many = (drawn.own.len() + drawn.other.len()) as f64;
    let widest = (w - 2.0 * BETWEEN * many) / many * HIGH_TO_WIDE;
    let high = (h - taken).clamp(LEAST, GREATEST).min(widest);
    let shown = figures(setting, entry, drawn, (w, high), not);
    name.then(1.0, shown).then(1.0, below)
}

/// The height of every drawing of a word in parts of its width.
const HIGH_TO_WIDE: f64 = 64.0 / 48.0;

/// What the word is taken for, in words: `not: lobed like a feather`.
fn not(setting: &Setting, drawn: &DrawnWord, wide: f64) -> Option<Piece> {
    let say = |figure: &Figure| setting.say(&format!("words-draw-{}", figure.caption));
    let others: Vec<String> = drawn.other.iter().map(say).collect();
    let (last, before) = others.split_last()?;
    let caption = if before.is_empty() { last.clone() } else { setting.either(before, last) };
    let words = setting.t().with("sheet-not", &[("caption", &caption)]);
    let block = setting.caption(&words, Style::SMALL.inked(Ink::Soft), wide * 0.62);
    Some(Piece::text(block.at_most(&setting.faces, setting.lines(2)), Role::Caption))
}

/// The drawings side by side: what it is, a dashed line, what it is not, and that in words.
fn figures(
    setting: &Setting,
    entry: &Entry,
    drawn: &DrawnWord,
    (wide, high): (f64, f64),
    not: Option<Piece>,
) -> Piece {
    let mut row = Piece::blank(wide, high);
    let mut x = 0.0;
    for figure in &drawn.own {
        let heard = setting.say(&format!("words-draw-{}", figure.caption));
        let piece = lines::piece(&figure.drawing, high, heard);
        let step = piece.w + BETWEEN;
        row = row.with(x, 0.0, piece);
        x += step;
    }
    let Some(not) = not else { return row };
    let rule = Piece::upright(high, Pen::dashed(0.3, Ink::Soft));
    // What it is not stands on the right, away from what it is.
    let other = drawn.other.len() as f64 * (high / HIGH_TO_WIDE + BETWEEN) - BETWEEN;
    let from = wide - other;
    row = row.with((x + from - BETWEEN) / 2.0, 0.0, rule);
    for (at, figure) in drawn.other.iter().enumerate() {
        let caption = setting.say(&format!("words-draw-{}", figure.caption));
        let parts: [(&str, &dyn std::fmt::Display); 2] =
            [("word", &entry.word), ("caption", &caption)];
        let heard = setting.t().with("sheet-not-word", &parts);
        let piece = lines::piece(&figure.drawing, high, heard);
        row = row.with(from + at as f64 * (piece.w + BETWEEN), 0.0, piece);
    }
    let left = wide - not.w;
    row.with(left, high + 0.5, not)
}

/// A card for a word of the group's own.
fn own_word(setting: &Setting, cells: &Cells) -> Piece {
    let w = cells.w - 2.0 * PADDING;
    let words = setting.text(&setting.say("sheet-word-of-our-own"), Style::SMALL, w);
    let line = Piece::rule(w, Pen::solid(0.2, Ink::Soft));
    Piece::blank(cells.w, cells.h).with(PADDING, PADDING, words.then(9.0, line))
}
