//! A key in another form, as cards with holes: one for each thing that can be seen.
//!
//! From a booklet to a page that says how and whose number is whose, and cards to cut out and
//! punch. Every kind has one place along the edge, where a punch reaches it, and it is the same on
//! every card. A card is punched where the kind has what it says. Hold the cards of what you see
//! against the light: it shines through at the numbers of the kinds that are left.
//!
//! Source: cards that are laid on each other against the light are common practice, without a
//! source; a hole of 6 mm is that of office punches (ISO 838, from memory).

use crate::looks::{self, Has, Look};
use crate::setting::{NOTES, OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::frame::MARGIN;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper, drawing};

/// Cards beside each other and beneath each other.
const ACROSS: usize = 2;
const DOWN: usize = 4;
/// The size of a card, in mm: eight on A4 and on Letter.
const CARD: (f64, f64) = (92.0, 57.0);
/// The middle of a hole from the edge, its width, and the middles of two from each other, in mm.
const INSET: f64 = 7.0;
const HOLE: f64 = 6.0;
const STEP: f64 = 11.0;
/// From the middle of a hole to the middle of its number below or above it, in mm.
const NUMBER: f64 = 6.2;

/// Whether there are kinds enough to tell apart, and few enough for the edge of a card.
pub fn has_something(booklet: &Booklet) -> bool {
    let kinds = booklet.matrix.taxa().len();
    (2..=places().len()).contains(&kinds) && looks::of(booklet).len() > 1
}

/// The cards as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-holes", &[("title", &setting.title())]);
    let mut pages = how(&setting, paper);
    pages.extend(cards(&setting, paper));
    setting.sheet(title, pages)
}

/// The middles of the holes, clockwise from the upper left; and where their numbers go.
fn places() -> Vec<((f64, f64), (f64, f64))> {
    let (w, h) = CARD;
    let across = (((w - 2.0 * INSET) / STEP).floor()) as usize + 1;
    let first = (w - STEP * (across - 1) as f64) / 2.0;
    let down = (((h - 2.0 * (INSET + STEP)) / STEP).floor()) as usize + 1;
    let top = (h - STEP * (down - 1) as f64) / 2.0;
    let mut places = Vec::new();
    for at in 0..across {
        places.push(((first + at as f64 * STEP, INSET), (0.0, 1.0)));
    }
    for at in 0..down {
        places.push(((w - INSET, top + at as f64 * STEP), (-1.0, 0.0)));
    }
    for at in (0..across).rev() {
        places.push(((first + at as f64 * STEP, h - INSET), (0.0, -1.0)));
    }
    for at in (0..down).rev() {
        places.push(((INSET, top + at as f64 * STEP), (1.0, 0.0)));
    }
    places
}

/// What to do, and whose number is whose.
fn how(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-holes", NOTES);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-holes"), true));
    let wide = flow.wide();
    let steps =
        ["sheet-holes-punch", "sheet-holes-doubt", "sheet-holes-lay", "sheet-holes-light"];
    let list = steps.iter().zip(1..).fold(Piece::blank(wide, 0.0), |list, (step, number)| {
        let number = setting.block(&i32::to_string(&number), Style::STRONG, 6.0);
        let words = setting.text(&setting.say(step), Style::BODY, wide - 8.0);
        let item = Piece::text(number, Role::Label).with(8.0, 0.0, words.grouped(Group::Body));
        list.then(1.0, item.grouped(Group::Item))
    });
    flow.put(4.0, list.grouped(Group::List));
    flow.put(2.0, setting.to_mind(wide));
    let title = setting.heading(2, &setting.say("sheet-holes-numbers"), Style::LARGE, wide);
    flow.put(6.0, title);
    let column = (wide - 8.0) / 2.0;
    let kinds: Vec<_> = setting.booklet.matrix.taxon_indices().collect();
    let half = kinds.len().div_ceil(2);
    for at in 0..half {
        let mut row = Piece::blank(wide, 0.0);
        let two = [Some(kinds[at]), kinds.get(at + half).copied()];
        for (kind, x) in two.into_iter().zip([0.0, column + 8.0]) {
            let Some(kind) = kind else { continue };
            let number = setting.block(&(kind.0 + 1).to_string(), Style::STRONG, 10.0);
            let name = setting.block(&setting.name(kind), Style::BODY, column - 12.0);
            let name = Piece::text(name.at_most(&setting.faces, 1), Role::Paragraph);
            let one =
                Piece::text(number, Role::Label).with(12.0, 0.0, name.grouped(Group::Body));
            row = row.with(x, 0.0, one.grouped(Group::Item));
        }
        flow.put(2.6, row.grouped(Group::List));
    }
    flow.lines_to_write_on(&setting.say("sheet-what-we-noticed"));
    flow.finish()
}

fn cards(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-holes", OUR_GROUP);
    let looks = looks::of(setting.booklet);
    let sheets: Vec<_> = looks.chunks(ACROSS * DOWN).collect();
    let of = sheets.len() + 1;
    let left = MARGIN + (frame.wide() - ACROSS as f64 * CARD.0) / 2.0;
    let mut pages = Vec::new();
    for (at, chunk) in sheets.iter().enumerate() {
        let top = frame.top(1) + 3.0;
        let mut body = Piece::default();
        for place in 0..ACROSS * DOWN {
            let (x, y) = ((place % ACROSS) as f64 * CARD.0, (place / ACROSS) as f64 * CARD.1);
            body = body.with(x, y, card(setting, chunk.get(place)).grouped(Group::Section));
        }
        let body = cuts(body);
        let nodes = body.moved(left, top).nodes;
        pages.push(frame.page(&setting.faces, nodes, at + 1, of));
    }
    pages
}

fn cuts(mut body: Piece) -> Piece {
    let pen = Pen::dashed(0.3, Ink::Ink);
    let (w, h) = (CARD.0 * ACROSS as f64, CARD.1 * DOWN as f64);
    for column in 0..=ACROSS {
        body = body.with(column as f64 * CARD.0, 0.0, Piece::upright(h, pen));
    }
    for row in 0..=DOWN {
        body = body.with(0.0, row as f64 * CARD.1, Piece::rule(w, pen));
    }
    body.with(w / 2.0 + 20.0, -2.4, drawing::scissors())
}

/// One card; one that is left over is for a look of one's own.
fn card(setting: &Setting, look: Option<&Look>) -> Piece {
    let (w, h) = CARD;
    let kinds = setting.booklet.matrix.taxa().len();
    let mut card = Piece::blank(w, h);
    let room = (w - 2.0 * (INSET + NUMBER + 5.0), h - 2.0 * (INSET + NUMBER + 3.2));
    let (x, y) = ((w - room.0) / 2.0, (h - room.1) / 2.0);
    match look {
        Some(look) => {
            let mut block = setting.block(&look.words, Style::LARGE, room.0);
            if block.height > room.1 {
                block = setting.block(&look.words, Style::SMALL_STRONG, room.0);
            }
            let block = block.at_most(&setting.faces, 3).centred(room.0);
            let down = ((room.1 - block.height) / 2.0).max(0.0);
            card = card.with(x, y + down, Piece::text(block, Role::Heading(2)));
        }
        None => {
            let rule = || Piece::rule(room.0, Pen::solid(0.2, Ink::Soft));
            card = card.with(x, y + 10.0, rule()).with(x, y + 20.0, rule());
        }
    }
    let places = places();
    for at in 0..kinds.min(places.len()) {
        // Spread along the whole edge: holes side by side tear.
        let ((x, y), (dx, dy)) = places[at * places.len() / kinds];
        let has = look.map_or(Has::Perhaps, |look| look.kinds[at]);
        let pen = match (look, has) {
            (_, Has::No) => None,
            (Some(_), Has::Yes) => Some(Pen::solid(0.5, Ink::Ink)),
            (Some(_), Has::Perhaps) => {
                Some(Pen { width: 0.5, ink: Ink::Ink, dash: Dash::Dashed })
            }
            (None, _) => Some(Pen { width: 0.25, ink: Ink::Soft, dash: Dash::Dotted }),
        };
        if let Some(pen) = pen {
            let ring = drawing::disc(HOLE, None, pen);
            card = card.with(x - HOLE / 2.0, y - HOLE / 2.0, ring);
        }
        let block = setting.block(&(at + 1).to_string(), Style::SMALL, 12.0);
        let beside = HOLE / 2.0 + 1.2 + block.width / 2.0;
        let (mx, my) = (x + dx * beside, y + dy * NUMBER);
        let (bx, by) = (mx - block.width / 2.0, my - block.height / 2.0);
        card = card.with(bx, by, Piece::text(block, Role::Paragraph));
    }
    card
}
