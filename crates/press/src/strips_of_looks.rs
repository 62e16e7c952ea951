//! A key in another form, as strips: one for each thing that can be seen.
//!
//! From a booklet to a sheet with the names of the kinds in rows, and strips of the same rows to
//! cut out. Lay the strips of what you see beside the names: the kind with a mark on all of them
//! is the one. One may begin with whatever one sees; there is no first question.
//!
//! Source: keys of several entries, as tables with movable columns, are common practice, without
//! a source.

use crate::looks::{self, Has, Look};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Path, Piece, Role, Segment, Sheet};
use crate::{Booklet, Paper, drawing};

/// Height of a kind's row, in mm: every strip has the same.
const ROW: f64 = 8.6;
/// Height of the words on top of a strip, in mm.
const HEAD: f64 = 26.0;
/// Width of a strip and of the names, in mm.
const STRIP: f64 = 31.0;
const NAMES: f64 = 62.0;
/// More kinds than this do not stand on one page.
const MOST: usize = 22;
/// Between two rows of strips, in mm.
const BETWEEN: f64 = 6.0;

/// Whether there are kinds enough to tell apart, and few enough for one page of rows.
pub fn has_something(booklet: &Booklet) -> bool {
    (2..=MOST).contains(&booklet.matrix.taxa().len()) && looks::of(booklet).len() > 1
}

/// The strips as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-looks", &[("title", &setting.title())]);
    setting.sheet(title, pages(&setting, paper))
}

fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let looks = looks::of(setting.booklet);
    let many = setting.booklet.matrix.taxa().len();
    let high = HEAD + many as f64 * ROW;
    let (frame, head) = turned(setting, paper, high);
    let mut pieces: Vec<Piece> = looks.iter().map(|look| strip(setting, look)).collect();
    pieces.insert(0, names(setting));
    let mut rest = pieces.into_iter().peekable();
    let mut bodies = Vec::new();
    while rest.peek().is_some() {
        let top = if bodies.is_empty() { head.h + 5.0 } else { 3.0 };
        let room = frame.bottom() - frame.top(bodies.len()) - top;
        let rows = (((room + BETWEEN) / (high + BETWEEN)).floor() as usize).max(1);
        let mut body = Piece::default();
        for row in 0..rows {
            let mut line = Piece::default();
            while let Some(piece) =
                rest.next_if(|piece| line.w + piece.w <= frame.wide() + 0.01)
            {
                line = line.beside(0.0, piece);
            }
            // What is left of the last row are strips for looks of one's own.
            while line.w > 0.0 && rest.peek().is_none() && line.w + STRIP <= frame.wide() {
                line = line.beside(0.0, blank(many));
            }
            if line.w > 0.0 {
                let y = row as f64 * (high + BETWEEN);
                body = body.with(0.0, y, cut(line));
            }
        }
        bodies.push((top, body));
    }
    mind(setting, &frame, &mut bodies);
    let of = bodies.len();
    let page = |(at, (top, body)): (usize, (f64, Piece))| {
        let mut nodes = Vec::new();
        if at == 0 {
            nodes.extend(head.clone().moved(MARGIN, MARGIN).nodes);
        }
        let (body, y) = filled(setting, &frame, body, frame.top(at) + top);
        nodes.extend(body.moved(MARGIN, y).nodes);
        frame.page(&setting.faces, nodes, at, of)
    };
    bodies.into_iter().enumerate().map(page).collect()
}

/// What everybody must mind, beneath the strips of the first page that has room for it: on top of
/// the first, it would push the strips onto another page.
fn mind(setting: &Setting, frame: &Frame, bodies: &mut Vec<(f64, Piece)>) {
    let words = || setting.to_mind(frame.wide());
    let apart = 6.0;
    let needed = apart + words().h;
    let with_room = bodies
        .iter()
        .enumerate()
        .position(|(at, (top, body))| frame.top(at) + top + body.h + needed <= frame.bottom());
    match with_room.and_then(|at| bodies.get_mut(at)) {
        Some((_, body)) => *body = std::mem::take(body).then(apart, words()),
        None => bodies.push((3.0, words())),
    }
}

/// The page upright, or turned where it would hold one row of strips only and a turned one holds it
/// too; with what stands on top of it.
fn turned(setting: &Setting, paper: Paper, high: f64) -> (Frame, Piece) {
    let of = |turned: bool| {
        let frame = setting.frame(paper, turned, "sheet-looks", OUR_GROUP);
        let head = setting.masthead(&frame, &setting.say("sheet-looks"), true);
        let about = setting.say("sheet-looks-about");
        let about = setting.text(&about, Style::SMALL, frame.wide());
        let head = head.then(3.0, about);
        let room = frame.bottom() - frame.top(0) - head.h - 5.0;
        (frame, head, room)
    };
    let ((upright, above, room), (turned, beside, low)) = (of(false), of(true));
    match room < 2.0 * high + BETWEEN && low >= high {
        true => (turned, beside),
        false => (upright, above),
    }
}

/// What a short page has room for: lines to write on, so that little paper is wasted.
fn filled(setting: &Setting, frame: &Frame, body: Piece, y: f64) -> (Piece, f64) {
    let left = frame.bottom() - y - body.h - 8.0;
    if left < 0.22 * frame.deep() {
        return (body, y);
    }
    let title =
        setting.text(&setting.say("sheet-what-we-noticed"), Style::STRONG, frame.wide());
    let lines = (((left - title.h) / 12.0).floor() as usize).max(1);
    let rule = || Piece::rule(frame.wide(), Pen::solid(0.2, Ink::Soft));
    let below = (0..lines).fold(title, |piece, _| piece.then(11.8, rule()));
    (body.then(8.0, below), y)
}

/// A dashed line around what stands in one row, with scissors.
fn cut(row: Piece) -> Piece {
    let (w, h) = (row.w, row.h);
    let edge = Piece::rectangle(w, h, None, Some(Pen::dashed(0.3, Ink::Ink)));
    let cut = row.with(0.0, 0.0, edge).with(w - 10.0, -2.4, drawing::scissors());
    Piece { w, h, ..cut }
}

/// The rows with their names.
fn names(setting: &Setting) -> Piece {
    let kinds: Vec<_> = setting.booklet.matrix.taxon_indices().collect();
    let mut names = rows(NAMES, kinds.len());
    let head = setting.block(&setting.say("sheet-looks-lay"), Style::SMALL_STRONG, NAMES - 6.0);
    let head = head.at_most(&setting.faces, 4);
    names = names.with(3.0, HEAD - head.height - 2.0, Piece::text(head, Role::Paragraph));
    for (at, kind) in kinds.into_iter().enumerate() {
        let block = setting.block(&setting.name(kind), Style::SMALL_STRONG, NAMES - 6.0);
        let block = block.at_most(&setting.faces, 1);
        let y = HEAD + at as f64 * ROW + (ROW - block.height) / 2.0;
        names = names.with(3.0, y, Piece::text(block, Role::Paragraph));
    }
    names.grouped(Group::Section)
}

/// One look, with a mark in the row of each kind that has it.
fn strip(setting: &Setting, look: &Look) -> Piece {
    let mut strip = rows(STRIP, look.kinds.len());
    let block = setting.block(&look.words, Style::SMALL_STRONG, STRIP - 4.0);
    let block = block.at_most(&setting.faces, 4).centred(STRIP - 4.0);
    let words = Piece::text(block, Role::Heading(2));
    strip = strip.with(2.0, (HEAD - words.h) / 2.0, words);
    let mut who = Vec::new();
    for (at, has) in look.kinds.iter().enumerate() {
        let y = HEAD + at as f64 * ROW;
        let (x, d) = ((STRIP - 5.4) / 2.0, 5.4);
        match has {
            Has::Yes => {
                who.push(setting.name(spinney_model::TaxonIx(at)));
                let dot = drawing::disc(d, Some(Ink::Hedge), Pen::solid(0.3, Ink::Hedge));
                strip = strip.with(x, y + (ROW - d) / 2.0, dot);
            }
            Has::Perhaps => {
                let block = setting.block("?", Style::SMALL_STRONG, d).centred(d);
                let pen = Pen { width: 0.3, ink: Ink::Ink, dash: Dash::Dotted };
                let ring = drawing::disc(d, None, pen);
                let down = (d - block.height) / 2.0;
                let mark = ring.with(0.0, down, Piece::text(block, Role::Decoration));
                strip = strip.with(x, y + (ROW - d) / 2.0, mark);
            }
            Has::No => {}
        }
    }
    // A listener hears who has it, not where the dots are.
    let heard = setting.t().with("sheet-look-who", &[("kinds", &who.join(", "))]);
    let edge = vec![Segment::Move(0.0, 0.0), Segment::Line(0.0, strip.h)];
    let pen = Some(Pen::dashed(0.3, Ink::Ink));
    let path = Path { segments: edge, fill: None, pen };
    let high = strip.h;
    strip
        .with(0.0, 0.0, Piece::path(0.3, high, path, Role::Figure(heard)))
        .grouped(Group::Section)
}

/// A strip to write on.
fn blank(kinds: usize) -> Piece {
    let edge = Piece::upright(HEAD + kinds as f64 * ROW, Pen::dashed(0.3, Ink::Ink));
    let line = || Piece::rule(STRIP - 6.0, Pen::solid(0.2, Ink::Soft));
    let strip = rows(STRIP, kinds).with(3.0, 11.0, line()).with(3.0, 20.0, line());
    let strip = strip.with(0.0, 0.0, edge);
    Piece { w: STRIP, ..strip }
}

/// Rows for kinds, every second on a tint, so that eyes keep to theirs.
fn rows(wide: f64, many: usize) -> Piece {
    let high = HEAD + many as f64 * ROW;
    let mut rows = Piece::blank(wide, high);
    for at in (1..many).step_by(2) {
        let y = HEAD + at as f64 * ROW;
        rows = rows.with(0.0, y, Piece::rectangle(wide, ROW, Some(Ink::Tint), None));
    }
    let pen = Pen::solid(0.18, Ink::Soft);
    (0..many)
        .fold(rows, |rows, at| rows.with(0.0, HEAD + at as f64 * ROW, Piece::rule(wide, pen)))
}
