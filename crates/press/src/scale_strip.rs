//! The scale strip: rings in a line, to lie in a pond tray or beside it.
//!
//! From the places of its rings (`spinney_model::scale_card`) to one page with several strips to cut out, each
//! with ten centimetres to hold a ruler against. `measure` finds the rings again in a photograph.

use spinney_model::scale_card::{LARGE_DOT, RING, SMALL_DOT, STRIP, STRIP_FIRST, STRIP_SIZE};

use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Page, Path, Piece, Role, Segment, Sheet};
use crate::{Booklet, Paper, drawing, ruler, scale_card};

/// What is done, in order.
const STEPS: [&str; 3] = ["sheet-strip-cut", "sheet-strip-lay", "sheet-strip-photograph"];
/// Between two strips, in mm: room for the scissors.
const BETWEEN: f64 = 4.0;
/// The line to hold a ruler against: how long, and how far below the rings' middles, in mm.
const TEN: f64 = 100.0;
const BELOW: f64 = 14.0;

/// Whether anything is measured by it: lengths of what is no leaf. Leaves lie on the card, which
/// tells more.
pub fn has_something(booklet: &Booklet) -> bool {
    ruler::has_something(booklet) && !scale_card::has_something(booklet)
}

/// The strips as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-strip", &[("title", &setting.title())]);
    setting.sheet(title, vec![page(&setting, paper)])
}

/// The same before there is any table.
pub fn alone(tongue: spinney_voice::Tongue, paper: Paper) -> Sheet {
    scale_card::without_table(tongue, |booklet| sheet(booklet, paper))
}

fn page(setting: &Setting, paper: Paper) -> Page {
    let frame = setting.frame(paper, true, "sheet-strip", OUR_GROUP);
    let wide = frame.wide();
    let head = setting.masthead(&frame, &setting.say("sheet-strip"), true);
    let check = setting.text(&setting.say("sheet-strip-check"), Style::SMALL_STRONG, wide);
    let mut all = head.then(1.5, setting.steps(&STEPS, wide)).then(1.0, check);
    let room = frame.bottom() - frame.top(0);
    while all.h + BETWEEN + STRIP_SIZE[1] <= room {
        all = all.then(BETWEEN, cut_out(setting, wide));
    }
    let nodes = all.moved((frame.width - wide) / 2.0, frame.top(0)).nodes;
    frame.page(&setting.faces, nodes, 0, 1)
}

/// A strip with dashed lines around it.
fn cut_out(setting: &Setting, wide: f64) -> Piece {
    let [w, h] = STRIP_SIZE;
    let around = Piece::rectangle(w, h, None, Some(Pen::dashed(0.3, Ink::Ink)));
    let [x, y] = STRIP_FIRST;
    let strip = around.with(x - RING.0, y - RING.0, rings(setting)).with(
        x,
        y + BELOW - 2.0,
        ten(setting),
    );
    Piece::blank(wide, h).with(((wide - w) / 2.0).max(0.0), 0.0, strip)
}

/// The rings, from the left and upper edge of the first.
fn rings(setting: &Setting) -> Piece {
    let (mut bands, mut dots) = (Vec::new(), Vec::new());
    for mark in STRIP {
        let [x, y] = mark.at.map(|at| at + RING.0);
        let around = |r: f64| drawing::ring(x - r, y - r, r);
        bands.extend(around(f64::midpoint(RING.0, RING.1)));
        dots.extend(around(if mark.small { SMALL_DOT } else { LARGE_DOT }));
    }
    let w = STRIP[STRIP.len() - 1].at[0] + 2.0 * RING.0;
    let pen = Some(Pen::solid(RING.0 - RING.1, Ink::Ink));
    let bands = Path { segments: bands, fill: None, pen };
    let dots = Path { segments: dots, fill: Some(Ink::Ink), pen: None };
    let h = 2.0 * RING.0;
    let words = Role::Figure(setting.say("sheet-strip-rings"));
    Piece::path(w, h, bands, words).with(0.0, 0.0, Piece::path(w, h, dots, Role::Decoration))
}

/// Ten centimetres to hold a ruler against, with a mark at each.
fn ten(setting: &Setting) -> Piece {
    let mut segments = vec![Segment::Move(0.0, 2.0), Segment::Line(TEN, 2.0)];
    for cm in 0..=10 {
        let x = 10.0 * f64::from(cm);
        let half = if cm % 5 == 0 { 2.0 } else { 1.0 };
        segments.extend([Segment::Move(x, 2.0 - half), Segment::Line(x, 2.0 + half)]);
    }
    let path = Path { segments, fill: None, pen: Some(Pen::solid(0.3, Ink::Ink)) };
    let words = setting.say("sheet-strip-ten");
    let line = Piece::path(TEN, 4.0, path, Role::Figure(words.clone()));
    let words = setting.text(&words, Style::SMALL_STRONG, 40.0);
    let y = (4.0 - words.h) / 2.0;
    line.with(TEN + 3.0, y, words)
}
