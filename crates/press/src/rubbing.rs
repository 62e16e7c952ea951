//! Rubbings: how to make one, and a frame with the true size at its edges.
//!
//! From the words of the sheet to one page: five steps, why left and right change places, a frame
//! with lines for millimetres, and what to write beneath it. The paper is for the rubbing itself.
//!
//! Source: vein side up, a soft crayon on its side, the paper held still: common practice, without
//! a source.

use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::MARGIN;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Path, Piece, Role, Segment, Sheet};
use crate::{Booklet, Paper};
use Segment::{Close, Curve, Line, Move};

/// What is done, in order.
const STEPS: [&str; 5] = [
    "sheet-rubbing-choose",
    "sheet-rubbing-lay",
    "sheet-rubbing-rub",
    "sheet-rubbing-write",
    "sheet-rubbing-keep",
];
/// Left of the frame and below it, in mm: the numbers of its centimetres.
const LEFT: f64 = 7.0;
const BELOW: f64 = 6.5;
/// Height of the lines to write on, in mm.
const WRITE: f64 = 11.0;
/// A drawn leaf of the two, in mm.
const LEAF: (f64, f64) = (21.0, 29.0);

/// Whether the table names leaves: nothing else is rubbed.
pub fn has_something(booklet: &Booklet) -> bool {
    spinney_voice::wording::speaks_of_leaves(booklet.matrix)
}

/// The sheet as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-rubbing", &[("title", &setting.title())]);
    setting.sheet(title, vec![page(&setting, paper)])
}

fn page(setting: &Setting, paper: Paper) -> Page {
    let frame = setting.frame(paper, false, "sheet-rubbing", OUR_GROUP);
    let wide = frame.wide();
    let head = setting.masthead(&frame, &setting.say("sheet-rubbing"), true);
    let turned = turned(setting);
    let room = wide - turned.w - 6.0;
    let steps = steps(setting, room);
    let how = Piece::blank(wide, steps.h.max(turned.h)).with(0.0, 0.0, steps).with(
        room + 6.0,
        0.0,
        turned,
    );
    let top = head.then(3.0, how);
    let y = frame.top(0) + top.h + 4.0;
    let left = frame.bottom() - y - BELOW - WRITE - 1.0;
    let (w, h) = (((wide - LEFT) / 10.0).floor() * 10.0, (left / 10.0).floor() * 10.0);
    let mut nodes = top.moved(MARGIN, MARGIN).nodes;
    let x = MARGIN + (wide - LEFT - w) / 2.0;
    nodes.extend(true_size(setting, (w, h.max(40.0))).moved(x, y).nodes);
    let foot = frame.bottom() - WRITE;
    nodes.extend(to_write(setting, wide).moved(MARGIN, foot).nodes);
    frame.page(&setting.faces, nodes, 0, 1)
}

fn steps(setting: &Setting, wide: f64) -> Piece {
    let picture = setting.say("sheet-rubbing-picture");
    let picture = setting.text(&picture, Style::SMALL.inked(Ink::Soft), wide);
    setting.steps(&STEPS, wide).then(1.2, picture)
}

/// The same leaf twice: as the rubbing shows it, and from above.
fn turned(setting: &Setting) -> Piece {
    let (w, h) = LEAF;
    let each = 36.0;
    let one = |mirrored: bool, words: &str| {
        let words = setting.say(words);
        let drawn = lopsided(mirrored, words.clone());
        let block = setting.block(&words, Style::SMALL, each).centred(each);
        let x = (each - w) / 2.0;
        let under = Piece::text(block, Role::Paragraph);
        Piece::blank(each, h).with(x, 0.0, drawn).with(0.0, h + 1.0, under)
    };
    let both = one(false, "sheet-rubbing-rubbed")
        .beside(2.0, one(true, "sheet-rubbing-above"))
        .grouped(Group::Section);
    let note = setting.text(&setting.say("sheet-rubbing-mirror"), Style::SMALL, both.w);
    both.then(1.5, note)
}

/// A leaf of which one half begins lower, so that its two sides can be told apart.
fn lopsided(mirrored: bool, words: String) -> Piece {
    let (w, h) = LEAF;
    let middle = w / 2.0;
    let turn = |x: f64| if mirrored { middle - x } else { middle + x };
    let edge = vec![
        Move(turn(0.0), 1.0),
        Curve(turn(3.0), 4.0, turn(9.5), 9.0, turn(9.0), 15.0),
        Curve(turn(8.5), 19.0, turn(4.0), 19.0, turn(0.0), 18.0),
        Curve(turn(-2.0), 27.0, turn(-10.0), 27.0, turn(-10.3), 18.0),
        Curve(turn(-10.5), 10.0, turn(-4.0), 5.0, turn(0.0), 1.0),
        Close,
    ];
    let rib = vec![Move(turn(0.0), 2.5), Line(turn(0.0), 18.0), Line(turn(1.5), h)];
    let mut veins = Vec::new();
    for at in 0..4 {
        let y = 8.0 + f64::from(at) * 3.6;
        let reach = [4.0, 5.5, 6.2, 5.6][at as usize];
        veins.extend([Move(turn(0.0), y), Line(turn(reach), y - 3.0)]);
        veins.extend([Move(turn(0.0), y + 0.8), Line(turn(-reach * 1.1), y - 2.2)]);
    }
    let line =
        |segments, width| Path { segments, fill: None, pen: Some(Pen::solid(width, Ink::Ink)) };
    Piece::path(w, h, line(edge, 0.6), Role::Figure(words))
        .with(0.0, 0.0, Piece::path(w, h, line(rib, 0.4), Role::Decoration))
        .with(0.0, 0.0, Piece::path(w, h, line(veins, 0.25), Role::Decoration))
}

/// A frame of whole centimetres with lines for millimetres inside its edges; 0 is at the left,
/// below.
fn true_size(setting: &Setting, (w, h): (f64, f64)) -> Piece {
    let edge = Piece::rectangle(w, h, None, Some(Pen::solid(0.5, Ink::Ink)));
    let mut lines = Vec::new();
    let long = |mm: usize| match mm {
        _ if mm.is_multiple_of(10) => 4.0,
        _ if mm.is_multiple_of(5) => 2.8,
        _ => 1.6,
    };
    for mm in 1..w as usize {
        let (x, tick) = (mm as f64, long(mm));
        lines.extend([Move(x, h), Line(x, h - tick), Move(x, 0.0), Line(x, tick)]);
    }
    for mm in 1..h as usize {
        let (y, tick) = (h - mm as f64, long(mm));
        lines.extend([Move(0.0, y), Line(tick, y), Move(w, y), Line(w - tick, y)]);
    }
    let pen = Some(Pen::solid(0.18, Ink::Ink));
    let path = Path { segments: lines, fill: None, pen };
    let words = setting.say("sheet-rubbing-frame");
    let ticks = Piece::path(w, h, path, Role::Figure(words));
    let mut frame =
        Piece::blank(LEFT + w, h + BELOW).with(LEFT, 0.0, edge).with(LEFT, 0.0, ticks);
    let number = |cm: usize| setting.block(&cm.to_string(), Style::SMALL, LEFT + 3.0);
    for cm in 0..=(w / 10.0) as usize {
        let block = number(cm);
        let x = LEFT + cm as f64 * 10.0 - block.width / 2.0;
        frame = frame.with(
            x.min(LEFT + w - block.width),
            h + 0.6,
            Piece::text(block, Role::Decoration),
        );
    }
    for cm in 1..=(h / 10.0) as usize {
        let block = number(cm);
        let (x, y) = (LEFT - 1.0 - block.width, h - cm as f64 * 10.0 - block.height / 2.0);
        frame = frame.with(x, y.max(0.0), Piece::text(block, Role::Decoration));
    }
    frame.grouped(Group::Section)
}

/// What is written beneath: which, where, when. Never who.
fn to_write(setting: &Setting, wide: f64) -> Piece {
    let asks = ["sheet-measuring-kind", "sheet-rubbing-where", "sheet-rubbing-day"];
    let widths = [wide * 0.4, wide * 0.34, wide * 0.26];
    let mut row = Piece::blank(wide, WRITE);
    let mut x = 0.0;
    for (ask, width) in asks.into_iter().zip(widths) {
        let words = setting.text(&setting.say(ask), Style::SMALL, width - 4.0);
        let from = words.w + 1.5;
        let line = Piece::rule((width - from - 4.0).max(4.0), Pen::solid(0.2, Ink::Soft));
        row = row.with(x, 3.5, words.with(from, 4.6, line));
        x += width;
    }
    row
}
