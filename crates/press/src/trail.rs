//! Posts for a trail: one question a sheet, to hang up along a path.
//!
//! From a booklet to a plan for the adult and a page a question. A post is named by its number
//! and its shape, drawn and said, so that nobody looks for a colour. Children carry a find from
//! post to post; where a way ends, the post says what it is and how to make sure.

mod shape;

use spinney_model::{Couplet, Destination, End};

use crate::key_pages::answer_words;
use crate::setting::{NOTES, OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper, drawing, fitting, signs};
use shape::Shape;

/// Size of a post's own sign and of the one beside a way, in mm.
const OWN: f64 = 46.0;
const BESIDE: f64 = 34.0;
/// The least room for a name, in mm.
const NAME: f64 = 12.0;
/// Between two parts of a sheet, in mm.
const GAP: f64 = 8.0;

/// Whether the key is one to hang along a path.
pub fn has_something(booklet: &Booklet) -> bool {
    signs::fits(booklet)
}

/// The plan and the posts as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-trail", &[("title", &setting.title())]);
    let mut pages = plan(&setting, paper);
    let frame = setting.frame_of_key(paper, false, "sheet-trail-plan", OUR_GROUP);
    let couplets = &booklet.key.couplets;
    for (at, couplet) in couplets.iter().enumerate() {
        pages.push(post(&setting, &frame, couplet, (at, couplets.len())));
    }
    setting.sheet(title, pages)
}

/// `post 4, the triangle`.
fn name_of(setting: &Setting, number: u32) -> String {
    let shape = setting.say(Shape::of(number).message());
    setting.t().with("sheet-trail-post", &[("number", &number), ("shape", &shape)])
}

/// Which posts there are, what they ask and, to be written in, where they hang.
fn plan(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-trail-plan", NOTES);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-trail-plan"), true));
    let wide = flow.wide();
    flow.put(4.0, setting.text(&setting.say("sheet-trail-about"), Style::BODY, wide));
    flow.put(1.5, setting.to_mind(wide));
    let widths = [wide * 0.24, wide * 0.42, wide * 0.34];
    let row = |cells: [Piece; 3], pen: Pen| {
        let mut x = 0.0;
        let mut row = Piece::blank(wide, 0.0);
        for (cell, width) in cells.into_iter().zip(widths) {
            row = row.with(x, 1.6, cell);
            x += width;
        }
        let y = row.h + 1.6;
        row.grouped(Group::Row).with(0.0, y, Piece::rule(wide, pen))
    };
    let heads = ["sheet-trail-which", "sheet-trail-asks", "sheet-trail-hangs"].map(|head| {
        let style = Style::SMALL_STRONG.inked(Ink::Hedge);
        setting.text(&setting.say(head), style, 60.0).grouped(Group::ColumnHead)
    });
    let heads = row(heads, Pen::solid(0.5, Ink::Hedge));
    let rows = setting.booklet.key.couplets.iter().map(|couplet| {
        let sign =
            Shape::of(couplet.number).sign(setting, couplet.number, 9.0, Style::SMALL_STRONG);
        let name =
            setting.text(&name_of(setting, couplet.number), Style::SMALL, widths[0] - 14.0);
        let first = sign.with(11.0, 1.6, name).grouped(Group::RowHead);
        let words =
            setting.block(&signs::asked(setting, couplet), Style::SMALL, widths[1] - 3.0);
        let words = Piece::text(words.at_most(&setting.faces, 3), Role::Paragraph);
        let cells = [first, words.grouped(Group::Cell), Piece::default()];
        row(cells, Pen::solid(0.2, Ink::Hedge))
    });
    flow.table(4.0, &heads, rows.collect());
    flow.lines_to_write_on(&setting.say("sheet-for-myself"));
    flow.finish()
}

fn post(setting: &Setting, frame: &Frame, couplet: &Couplet, (at, of): (usize, usize)) -> Page {
    let wide = frame.wide();
    let top = frame.top(1);
    let own = Shape::of(couplet.number).sign(
        setting,
        couplet.number,
        OWN,
        Style { size: 64.0, ..Style::TITLE },
    );
    let name = name_of(setting, couplet.number);
    let name = setting.block(&name, Style { size: 29.0, ..Style::TITLE }, wide - OWN - 10.0);
    let mut head = own.with(OWN + 10.0, 0.0, Piece::text(name, Role::Heading(1)));
    if at == 0 {
        let start = drawing::start(setting);
        head = head.with(wide - start.w, OWN - start.h, start);
    }
    let warned = signs::cautions(setting, couplet, wide);
    let below = warned.as_ref().map_or(0.0, |piece| piece.h + 4.0);
    let left = frame.bottom() - top - OWN - below - 2.0 * GAP;
    let (asked, ways) = (left * 0.3, left * 0.7);
    let words = signs::large(setting, &signs::asked(setting, couplet), (wide, asked), 52.0);
    let y = top + OWN + GAP;
    let mut nodes = head.grouped(Group::Section).moved(MARGIN, top).nodes;
    nodes.extend(Piece::text(words, Role::Heading(2)).moved(MARGIN, y).nodes);
    let each = (ways - GAP) / 2.0;
    let y = y + asked + GAP;
    let both = Piece::blank(wide, ways)
        .with(0.0, 0.0, way(setting, couplet, true, (wide, each)).grouped(Group::Item))
        .with(0.0, each + GAP, way(setting, couplet, false, (wide, each)).grouped(Group::Item));
    nodes.extend(both.grouped(Group::List).moved(MARGIN, y).nodes);
    if let Some(warned) = warned {
        let y = frame.bottom() - warned.h;
        nodes.extend(warned.moved(MARGIN, y).nodes);
    }
    let frame = Frame { running: String::new(), ..frame.clone() };
    frame.page(&setting.faces, nodes, at, of)
}

/// One way on, in a frame whose edge is solid for yes and dashed for no.
fn way(setting: &Setting, couplet: &Couplet, yes: bool, (w, h): (f64, f64)) -> Piece {
    let to = if yes { &couplet.yes } else { &couplet.no };
    let answers = answer_words(setting.t(), couplet);
    let word = if yes { answers.0 } else { answers.1 };
    let tab = setting.scaled_answer(&word, yes, Role::Label, 2.2);
    let dash = if yes { Dash::Solid } else { Dash::Dashed };
    let edge = Some(Pen { width: 1.0, ink: Ink::Ink, dash });
    let frame = Piece::rectangle(w, h, Some(Ink::Paper), edge);
    let x = 6.0 + tab.w + 6.0;
    let middle = (h - tab.h) / 2.0;
    let room = (w - x - 6.0, h - 8.0);
    let body =
        match to {
            Destination::Couplet(number) => {
                let words = name_of(setting, *number);
                let go = setting.t().with("sheet-trail-go", &[("post", &words)]);
                let block = signs::large(setting, &go, (room.0 - BESIDE - 5.0, room.1), 34.0);
                let style = Style { size: 40.0, ..Style::TITLE };
                let sign = Shape::of(*number).sign(setting, *number, BESIDE, style);
                let y = (room.1 - block.height) / 2.0;
                Piece::blank(room.0, room.1)
                    .with(0.0, y, Piece::text(block, Role::Paragraph))
                    .with(room.0 - BESIDE, (room.1 - BESIDE) / 2.0, sign)
            }
            Destination::End(end) => arrived(setting, end, room),
            Destination::Missing => {
                let words = setting.say("sheet-where-to");
                let block = signs::large(setting, &words, room, 29.0);
                let y = (room.1 - block.height) / 2.0;
                Piece::blank(room.0, room.1).with(0.0, y, Piece::text(block, Role::Paragraph))
            }
        };
    frame.with(6.0, middle, tab).with(x, 4.0, body.grouped(Group::Body))
}

/// The name at the end of a way, and how to make sure.
fn arrived(setting: &Setting, end: &End, (w, h): (f64, f64)) -> Piece {
    let sentence = match end.taxa[..] {
        [only] => fitting::sentence(setting.booklet.matrix, only),
        _ => None,
    };
    let soft = Style::BODY.inked(Ink::Soft);
    let newcomer = |written| setting.text(&fitting::newcomer(setting.t(), written), soft, w);
    let sentence = sentence.map(|sentence| {
        let block = setting.block(sentence, Style::BODY, w).at_most(&setting.faces, 4);
        Piece::text(block, Role::Paragraph).then(1.0, newcomer(true))
    });
    // A sentence that has no room is not spoken of.
    let below = sentence.filter(|words| words.h + NAME <= h).unwrap_or_else(|| newcomer(false));
    let block = signs::large(setting, &setting.end_name(end), (w, h - below.h - 2.0), 40.0);
    let name = Piece::text(block, Role::Paragraph);
    let all = name.then(2.0, below);
    let y = ((h - all.h) / 2.0).max(0.0);
    Piece::blank(w, h).with(0.0, y, all)
}
