//! Cards to sort: one a kind, eight to a page, to cut out and lay on two heaps.
//!
//! From a booklet to pages of cards with the picture of each kind, else what the table says of it
//! as a drawing, else a box to stick or draw it into. The name is printed below, or on the back of
//! the card, or the card has a number and the adult a list of answers. What is left of the last
//! page are cards for newcomers. It knows nothing of the key: sorting comes before it.
//!
//! Source: sorting cards before a key is made is common practice, without a source.

use std::collections::BTreeSet;

use spinney_model::{Drawing, TaxonIx};

use crate::card_grid::Cells;
use crate::setting::{NOTES, OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper, drawing, fitting};

/// From the edge of a card to what stands on it, in mm.
const PADDING: f64 = 4.0;
/// Lines of a name on its card.
const NAME_LINES: usize = 2;

/// Where the name of a kind is.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Named {
    Below,
    OnTheBack,
    /// On the adult's list alone; the card has a number.
    OnAList,
}

/// Cards with their names below.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    cards(booklet, paper, Named::Below)
}

/// Cards with their names on the back: every second page is the back of the one before, turned
/// along its long edge.
pub fn with_backs(booklet: &Booklet, paper: Paper) -> Sheet {
    cards(booklet, paper, Named::OnTheBack)
}

/// Cards with numbers, and the adult's list of what they are.
pub fn with_numbers(booklet: &Booklet, paper: Paper) -> Sheet {
    cards(booklet, paper, Named::OnAList)
}

/// Whether there is any kind to make a card of.
pub fn has_something(booklet: &Booklet) -> bool {
    !booklet.matrix.taxa().is_empty()
}

fn cards(booklet: &Booklet, paper: Paper, named: Named) -> Sheet {
    let setting = Setting::new(booklet);
    let title = match named {
        Named::Below => "sheet-title-cards",
        Named::OnTheBack => "sheet-title-cards-backs",
        Named::OnAList => "sheet-title-cards-numbered",
    };
    let title = setting.t().with(title, &[("title", &setting.title())]);
    let mut pages = fronts_and_backs(&setting, paper, named);
    if named == Named::OnAList {
        pages.extend(answers(&setting, paper));
    }
    setting.sheet(title, pages)
}

fn fronts_and_backs(setting: &Setting, paper: Paper, named: Named) -> Vec<Page> {
    let name = match named {
        Named::OnAList => "sheet-cards-numbered",
        Named::Below | Named::OnTheBack => "sheet-cards",
    };
    let frame = setting.frame(paper, false, name, OUR_GROUP);
    let cells = Cells::of(setting, &frame);
    let kinds: Vec<_> = setting.booklet.matrix.taxon_indices().collect();
    let alike = drawn_alike(setting);
    let sides: &[bool] = if named == Named::OnTheBack { &[false, true] } else { &[false] };
    let sheets: Vec<_> = kinds.chunks(cells.a_page()).collect();
    let of = sheets.len() * sides.len();
    let mut pages = Vec::new();
    for (sheet, chunk) in sheets.iter().enumerate() {
        for &back in sides {
            let mut nodes = Vec::new();
            if pages.is_empty() {
                nodes.extend(title(setting, &frame, named).nodes);
            }
            for at in 0..cells.a_page() {
                let kind = chunk.get(at).copied();
                let card = match back {
                    true => back_of(setting, kind, &cells),
                    false => {
                        let number = sheet * cells.a_page() + at + 1;
                        front_of(setting, kind, number, named, &alike, &cells)
                    }
                };
                let (x, y) = cells.corner(at, back);
                nodes.extend(card.grouped(Group::Section).moved(x, y).nodes);
            }
            if !back {
                nodes.extend(cells.cuts().moved(MARGIN, cells.top).nodes);
            }
            pages.push(frame.page(&setting.faces, nodes, pages.len(), of));
        }
    }
    pages
}

/// One line: cards need the paper.
fn title(setting: &Setting, frame: &Frame, named: Named) -> Piece {
    let style = Style::SMALL_STRONG.inked(Ink::Hedge);
    let line = |words: &str| {
        let block = setting.block(words, style, frame.wide());
        let block = block.at_most(&setting.faces, setting.lines(1));
        Piece::text(block, Role::Heading(1))
    };
    let title = match named {
        Named::OnTheBack => {
            let title = line(&setting.say("sheet-cards"));
            let words = setting.say("sheet-cards-both-sides");
            let set = |wide: f64| {
                let block = setting.block(&words, Style::SMALL, wide);
                Piece::text(block.at_most(&setting.faces, 1), Role::Paragraph)
            };
            let x = title.w + 6.0;
            match setting.is_large() {
                true => title.then(0.0, set(frame.wide())),
                false => title.with(x, 0.0, set(frame.wide() - x)),
            }
        }
        Named::Below | Named::OnAList => line(&frame.running),
    };
    title.moved(MARGIN, MARGIN + 0.8)
}

fn front_of(
    setting: &Setting,
    kind: Option<TaxonIx>,
    number: usize,
    named: Named,
    alike: &BTreeSet<TaxonIx>,
    cells: &Cells,
) -> Piece {
    let (w, h) = (cells.w - 2.0 * PADDING, cells.h - 2.0 * PADDING);
    let below = match (kind, named) {
        (Some(kind), Named::Below) => name_of(setting, kind, w),
        (_, Named::OnTheBack) => Piece::default(),
        (None, Named::Below) => to_write(Piece::default(), w),
        (_, Named::OnAList) => {
            let number = setting.disc(&number.to_string(), Role::Paragraph);
            let is = setting.text(&setting.say("sheet-card-is"), Style::BODY, w);
            let x = number.w + 3.0;
            to_write(number.with(x, 1.6, is), w)
        }
    };
    let high = h - below.h - if below.h > 0.0 { 1.5 } else { 0.0 };
    // Which of two that are drawn alike it is, nobody could say.
    let drawn = named != Named::OnAList || kind.is_none_or(|kind| !alike.contains(&kind));
    let shown = match named {
        Named::OnAList => setting.unnamed_likeness(kind, drawn, (w, high)),
        Named::Below | Named::OnTheBack => setting.likeness(kind, (w, high)),
    };
    Piece::blank(cells.w, cells.h).with(PADDING, PADDING, shown).with(
        PADDING,
        PADDING + h - below.h,
        below,
    )
}

/// A line to write on behind a few words.
fn to_write(words: Piece, wide: f64) -> Piece {
    let x = if words.w > 0.0 { words.w + 2.0 } else { 0.0 };
    let line = Piece::rule(wide - x, Pen::solid(0.2, Ink::Soft));
    let high = words.h.max(9.0);
    words.at_least(0.0, high).with(x, high - 1.2, line)
}

fn name_of(setting: &Setting, kind: TaxonIx, wide: f64) -> Piece {
    let block = setting.block(&setting.name(kind), Style::LARGE, wide);
    let block = block.at_most(&setting.faces, setting.lines(NAME_LINES)).centred(wide);
    let name = Piece::text(block, Role::Heading(2));
    match setting.second_name(kind, Style::SMALL, wide) {
        Some(second) => {
            let x = (wide - second.w) / 2.0;
            let y = name.h;
            name.with(x, y, second)
        }
        None => name,
    }
}

/// The name, how one makes sure, and the caution, in the middle of the back of a card.
fn back_of(setting: &Setting, kind: Option<TaxonIx>, cells: &Cells) -> Piece {
    let wide = cells.w - 2.0 * PADDING;
    let Some(kind) = kind else {
        let line = to_write(Piece::default(), wide);
        return Piece::blank(cells.w, cells.h).with(PADDING, cells.h / 2.0 - line.h, line);
    };
    let mut back = name_of(setting, kind, wide);
    let most = cells.h - 2.0 * PADDING;
    if let Some(sentence) = fitting::sentence(setting.booklet.matrix, kind) {
        let block = setting.block(sentence, Style::SMALL, wide).centred(wide);
        if back.h + 2.0 + block.height <= most {
            back = back.then(2.0, Piece::text(block, Role::Paragraph));
        }
    }
    let taxon = setting.booklet.matrix.taxon(kind);
    if let Some(caution) = &taxon.caution {
        let berry = Style::SMALL.inked(Ink::Berry);
        let second = setting.second_caution(caution, Style::SMALL, wide - 8.0);
        let first = setting.whole(caution);
        let words = setting.text(first[0], berry, wide - 8.0);
        let words = second.iter().fold(words, |words, second| words.then(0.3, second.clone()));
        let short = || setting.text(&setting.say("sheet-caution-in-key"), berry, wide - 8.0);
        let fits = first.len() == 1 && back.h + 2.0 + words.h <= most;
        let words = if fits { words } else { short() };
        if back.h + 2.0 + words.h <= most {
            back = back.then(2.0, drawing::warning(5.5).with(8.0, 0.0, words));
        }
    }
    let y = PADDING + (most - back.h) / 2.0;
    Piece::blank(cells.w, cells.h).with(PADDING, y, back)
}

/// Kinds whose drawings are the same lines: the table says nothing else of them.
fn drawn_alike(setting: &Setting) -> BTreeSet<TaxonIx> {
    let kinds = setting.booklet.matrix.taxon_indices();
    let drawn: Vec<_> =
        kinds.filter_map(|at| Some((at, setting.booklet.drawn.of_kind(at)?.0))).collect();
    let same = |(at, one): &(TaxonIx, &Drawing)| {
        drawn.iter().any(|(other, drawing)| other != at && drawing == one)
    };
    drawn.iter().filter(|one| same(one)).map(|(at, _)| *at).collect()
}

/// What the numbers on the cards are, for the adult.
fn answers(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-cards-answers", NOTES);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-cards-answers"), false));
    let wide = flow.wide();
    let about = setting.say("sheet-cards-answers-about");
    flow.put(4.0, setting.text(&about, Style::BODY, wide));
    let number = if setting.is_large() { 0.21 } else { 0.16 };
    let widths = [wide * number, wide * 0.34, wide * (0.66 - number)];
    let heads = ["sheet-column-number", "sheet-column-kind", "sheet-column-sure"];
    let heads = heads.map(|head| setting.say(head));
    let row = |cells: [&str; 3], styles: [Style; 3], groups: [Group; 3], pen: Pen| {
        let mut x = 0.0;
        let mut row = Piece::blank(wide, 0.0);
        for (at, width) in widths.into_iter().enumerate() {
            let block = setting.block(cells[at], styles[at], width - 3.0);
            let text =
                Piece::text(block.at_most(&setting.faces, setting.lines(4)), Role::Paragraph);
            row = row.with(x, 1.2, text.grouped(groups[at]));
            x += width;
        }
        let y = row.h + 1.2;
        row.grouped(Group::Row).with(0.0, y, Piece::rule(wide, pen))
    };
    let head = Style::SMALL_STRONG.inked(Ink::Hedge);
    let heads = row(
        [&heads[0], &heads[1], &heads[2]],
        [head; 3],
        [Group::ColumnHead; 3],
        Pen::solid(0.5, Ink::Hedge),
    );
    let rows = setting.booklet.matrix.taxon_indices().map(|kind| {
        let (number, name) = ((kind.0 + 1).to_string(), setting.name(kind));
        let sure = fitting::sentence(setting.booklet.matrix, kind).unwrap_or_default();
        row(
            [&number, &name, sure],
            [Style::STRONG, Style::STRONG, Style::SMALL],
            [Group::RowHead, Group::Cell, Group::Cell],
            Pen::solid(0.2, Ink::Hedge),
        )
    });
    flow.table(4.0, &heads, rows.collect());
    flow.lines_to_write_on(&setting.say("sheet-for-myself"));
    flow.finish()
}
