//! Signs for the floor: the key is laid out on the ground and walked along.
//!
//! From a booklet to a page a question: its words as large as they may be, and two large arrows.
//! Yes points left, its edge solid and its corners round; no points right, its edge dashed and its
//! corners square. A sign says where its arrows lead, a number or a name, so that nobody needs to
//! know the key.

use spinney_model::{Couplet, Destination};

use crate::key_pages::answer_words;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Path, Piece, Role, Segment, Sheet};
use crate::{Booklet, Paper, drawing, signs};
use Segment::{Close, Curve, Line, Move};

/// Height of an arrow and depth of its head, in mm.
const ARROW: f64 = 66.0;
const HEAD: f64 = 30.0;
/// How far the shaft stays from the arrow's upper and lower edge, in mm.
const SHOULDER: f64 = 9.0;
/// Between the two arrows, in mm.
const BETWEEN: f64 = 8.0;

/// Whether the key is one to lay on the ground.
pub fn has_something(booklet: &Booklet) -> bool {
    signs::fits(booklet)
}

/// The signs as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-floor", &[("title", &setting.title())]);
    let frame = setting.frame_of_key(paper, true, "sheet-floor", OUR_GROUP);
    let couplets = &booklet.key.couplets;
    let page = |(at, couplet)| page(&setting, &frame, couplet, (at, couplets.len()));
    setting.sheet(title, couplets.iter().enumerate().map(page).collect())
}

fn page(setting: &Setting, frame: &Frame, couplet: &Couplet, (at, of): (usize, usize)) -> Page {
    let wide = frame.wide();
    let mut nodes = Vec::new();
    if at == 0 {
        let style = Style::SMALL_STRONG.inked(Ink::Hedge);
        let block = setting.block(&frame.running, style, wide * 0.7).at_most(&setting.faces, 1);
        let start = drawing::start(setting);
        let title = Piece::text(block, Role::Heading(1)).with(wide - start.w, -0.8, start);
        nodes.extend(title.moved(MARGIN, MARGIN + 0.8).nodes);
    }
    let top = frame.top(1);
    let warned = signs::cautions(setting, couplet, wide);
    let below = warned.as_ref().map_or(0.0, |piece| piece.h + 3.0);
    let arrows = frame.bottom() - ARROW - below;
    let number = large_number(setting, couplet.number);
    let x = number.w + 8.0;
    let room = (wide - x, arrows - top - 6.0);
    let block = signs::large(setting, &signs::asked(setting, couplet), room, 72.0);
    let down = ((room.1 - block.height) / 2.0).max(0.0);
    let words = Piece::text(block, Role::Heading(2));
    let middle = ((room.1 - number.h) / 2.0).max(0.0);
    let asked = Piece::blank(wide, room.1).with(0.0, middle, number).with(x, down, words);
    nodes.extend(asked.grouped(Group::Section).moved(MARGIN, top).nodes);
    let each = (wide - BETWEEN) / 2.0;
    let both = Piece::blank(wide, ARROW)
        .with(0.0, 0.0, arrow(setting, couplet, true, each).grouped(Group::Item))
        .with(each + BETWEEN, 0.0, arrow(setting, couplet, false, each).grouped(Group::Item));
    nodes.extend(both.grouped(Group::List).moved(MARGIN, arrows).nodes);
    if let Some(warned) = warned {
        let y = frame.bottom() - warned.h;
        nodes.extend(warned.moved(MARGIN, y).nodes);
    }
    frame.page(&setting.faces, nodes, at, of)
}

/// The number of a question, to be seen from where the way comes.
fn large_number(setting: &Setting, number: u32) -> Piece {
    let style = Style { size: 60.0, leading: 1.1, ..Style::TITLE };
    let block = setting.block(&number.to_string(), style.inked(Ink::Paper), 200.0);
    let d = (block.width + 12.0).max(34.0);
    let block = block.centred(d);
    let y = (34.0 - block.height) / 2.0;
    drawing::pill(d, 34.0).with(0.0, y, Piece::text(block, Role::Paragraph)).at_least(d, 34.0)
}

/// One arrow: the answer, and where it leads.
fn arrow(setting: &Setting, couplet: &Couplet, yes: bool, wide: f64) -> Piece {
    let to = if yes { &couplet.yes } else { &couplet.no };
    let answers = answer_words(setting.t(), couplet);
    let word = if yes { answers.0 } else { answers.1 };
    let tab = setting.scaled_answer(&word, yes, Role::Label, 2.6);
    let shape = if yes { rounded(wide) } else { square(wide) };
    let left = if yes { HEAD * 0.62 } else { 6.0 };
    let room = wide - HEAD * 0.62 - 6.0;
    let top = SHOULDER + 4.0;
    let inner = ARROW - 2.0 * top;
    let words = match to {
        Destination::Couplet(number) => {
            let known = setting.booklet.key.couplets.iter().any(|c| c.number == *number);
            setting.go_to(*number, known)
        }
        Destination::End(end) => setting.end_name(end),
        Destination::Missing => setting.say("sheet-where-to"),
    };
    let x = tab.w + 5.0;
    let block = signs::large(setting, &words, (room - x, inner), 46.0);
    let down = (inner - block.height) / 2.0;
    let words = Piece::text(block, Role::Paragraph).grouped(Group::Body);
    let middle = (inner - tab.h) / 2.0;
    shape.with(left, top + middle, tab).with(left + x, top + down, words)
}

/// An arrow to the left with round corners and a solid edge.
fn rounded(w: f64) -> Piece {
    let (h, s, r) = (ARROW, SHOULDER, 8.0);
    let middle = h / 2.0;
    let segments = vec![
        Move(2.5, middle - 3.5),
        Line(HEAD - 4.0, 3.0),
        Curve(HEAD - 1.5, 0.4, HEAD, 1.0, HEAD, 4.0),
        Line(HEAD, s),
        Line(w - r, s),
        Curve(w - r * 0.45, s, w, s + r * 0.45, w, s + r),
        Line(w, h - s - r),
        Curve(w, h - s - r * 0.45, w - r * 0.45, h - s, w - r, h - s),
        Line(HEAD, h - s),
        Line(HEAD, h - 4.0),
        Curve(HEAD, h - 1.0, HEAD - 1.5, h - 0.4, HEAD - 4.0, h - 3.0),
        Line(2.5, middle + 3.5),
        Curve(0.0, middle + 1.0, 0.0, middle - 1.0, 2.5, middle - 3.5),
        Close,
    ];
    edge(w, segments, Pen::solid(1.4, Ink::Hedge))
}

/// An arrow to the right with square corners and a dashed edge.
fn square(w: f64) -> Piece {
    let (h, s) = (ARROW, SHOULDER);
    let segments = vec![
        Move(w, h / 2.0),
        Line(w - HEAD, h),
        Line(w - HEAD, h - s),
        Line(0.0, h - s),
        Line(0.0, s),
        Line(w - HEAD, s),
        Line(w - HEAD, 0.0),
        Close,
    ];
    edge(w, segments, Pen { width: 1.4, ink: Ink::Ink, dash: Dash::Dashed })
}

fn edge(w: f64, segments: Vec<Segment>, pen: Pen) -> Piece {
    let path = Path { segments, fill: Some(Ink::Paper), pen: Some(pen) };
    Piece::path(w, ARROW, path, Role::Decoration)
}
