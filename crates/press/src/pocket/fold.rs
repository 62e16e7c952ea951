//! How the pocket key is folded: the lines on the sheet, and the small pictures on its last page.

use crate::drawing;
use crate::setting::Setting;
use crate::sheet::frame::MARGIN;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Path, Piece, Role, Segment};
use Segment::{Close, Line, Move};

/// A picture of a step, in mm before all is made smaller.
const WIDE: f64 = 24.0;
const HIGH: f64 = 16.3;
/// What is done at a step, as a message, and its picture.
type Step = (&'static str, fn() -> Piece);
const STEPS: [Step; 4] = [
    ("sheet-pocket-fold-cut", sheet),
    ("sheet-pocket-fold-long", folded),
    ("sheet-pocket-fold-push", pushed),
    ("sheet-pocket-fold-round", closed),
];

const DOTTED: Pen = Pen { width: 0.3, ink: Ink::Soft, dash: Dash::Dotted };
const CUT: Pen = Pen::dashed(0.4, Ink::Ink);

/// The lines of the sheet, on paper of so many mm: dotted where it is folded, dashed where it is
/// cut, no nearer to the edge than a printer prints.
pub(super) fn marks(wide: f64, high: f64) -> Piece {
    let (w, h) = (wide / 4.0, high / 2.0);
    let mut marks = Piece::blank(wide, high);
    for column in 1..4 {
        let x = f64::from(column) * w;
        marks = marks.with(x, MARGIN, Piece::upright(high - 2.0 * MARGIN, DOTTED));
    }
    for x in [MARGIN, 3.0 * w] {
        marks = marks.with(x, h, Piece::rule(w - MARGIN, DOTTED));
    }
    let cut = Piece::rule(2.0 * w, CUT);
    marks.with(w, h, cut).with(w + 2.0, h - 2.4, drawing::scissors())
}

/// Every step in a picture and in words.
pub(super) fn with_words(setting: &Setting, wide: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-pocket-fold"), Style::STRONG, wide);
    let list = STEPS.iter().fold(Piece::blank(wide, 0.0), |list, (message, picture)| {
        let words = setting.say(message);
        let x = WIDE + 3.0;
        let text = setting.text(&words, Style::SMALL, wide - x);
        let y = ((HIGH - text.h) / 2.0).max(0.0);
        list.then(1.5, picture().at_least(WIDE, HIGH).with(x, y, text).grouped(Group::Section))
    });
    title.then(1.0, list)
}

/// The pictures alone, in a row.
pub(super) fn small(setting: &Setting, wide: f64) -> Piece {
    let title =
        setting.heading(2, &setting.say("sheet-pocket-fold"), Style::SMALL_STRONG, wide);
    let each = (wide - 3.0 * 2.0) / 4.0;
    let row = STEPS.iter().fold(Piece::default(), |row, (message, picture)| {
        let mut step = picture().at_least(WIDE, HIGH).sized(each / WIDE);
        heard_as(&mut step, setting.say(message));
        if row.w > 0.0 { row.beside(2.0, step) } else { step }
    });
    title.then(1.0, row)
}

/// The first line of a picture says what it shows.
fn heard_as(picture: &mut Piece, words: String) {
    use crate::sheet::Node;
    if let Some(Node::Placed(placed)) = picture.nodes.first_mut() {
        placed.role = Role::Figure(words);
    }
}

fn drawn(segments: Vec<Segment>, fill: Option<Ink>, pen: Pen) -> Piece {
    Piece::path(WIDE, HIGH, Path { segments, fill, pen: Some(pen) }, Role::Decoration)
}

const EDGE: Pen = Pen::solid(0.45, Ink::Ink);

/// The sheet with its lines.
fn sheet() -> Piece {
    let (w, h) = (WIDE / 4.0, HIGH / 2.0);
    let outline = Piece::rectangle(WIDE, HIGH, Some(Ink::Paper), Some(EDGE));
    let folds =
        [1.0, 2.0, 3.0].into_iter().flat_map(|at| [Move(at * w, 0.0), Line(at * w, HIGH)]);
    let sides = [Move(0.0, h), Line(w, h), Move(3.0 * w, h), Line(WIDE, h)];
    outline
        .with(0.0, 0.0, drawn(folds.chain(sides).collect(), None, DOTTED))
        .with(
            0.0,
            0.0,
            drawn(vec![Move(w, h), Line(3.0 * w, h)], None, Pen::dashed(0.6, Ink::Ink)),
        )
        .with(w - 3.5, h - 2.4, drawing::scissors())
}

/// Folded along its length, what is printed outside.
fn folded() -> Piece {
    let (w, h) = (WIDE / 4.0, HIGH / 2.0);
    let (top, foot) = (HIGH * 0.3, HIGH * 0.3 + h);
    // The back half, a little behind.
    let back = vec![
        Move(1.2, top - 1.6),
        Line(WIDE, top - 1.6),
        Line(WIDE, foot - 1.6),
        Line(WIDE - 1.2, foot - 1.6),
        Line(WIDE - 1.2, top),
        Line(1.2, top),
        Close,
    ];
    let front = vec![
        Move(0.0, top),
        Line(WIDE - 1.2, top),
        Line(WIDE - 1.2, foot),
        Line(0.0, foot),
        Close,
    ];
    let folds =
        [1.0, 2.0, 3.0].into_iter().flat_map(|at| [Move(at * w, top), Line(at * w, foot)]);
    drawn(back, Some(Ink::Paper), EDGE)
        .with(0.0, 0.0, drawn(front, Some(Ink::Paper), EDGE))
        .with(0.0, 0.0, drawn(folds.collect(), None, DOTTED))
}

/// Its ends pushed together, seen from above: the cut opens.
fn pushed() -> Piece {
    let (mid, x) = (HIGH / 2.0, WIDE / 2.0);
    let (open, from) = (5.0, 4.9);
    let ends = vec![
        Move(from, mid - 0.5),
        Line(x - open, mid - 0.5),
        Line(x, mid - open),
        Line(x + open, mid - 0.5),
        Line(WIDE - from, mid - 0.5),
        Move(from, mid + 0.5),
        Line(x - open, mid + 0.5),
        Line(x, mid + open),
        Line(x + open, mid + 0.5),
        Line(WIDE - from, mid + 0.5),
    ];
    let arrow = drawing::arrow(4.2, Dash::Solid);
    let y = mid - arrow.h / 2.0;
    let back = arrow.clone().on_its_head();
    drawn(ends, None, EDGE).with(0.0, y, arrow).with(WIDE - 4.2, y, back)
}

/// Closed, the cover in front.
fn closed() -> Piece {
    let (w, h) = (10.5, 14.4);
    let (x, y) = ((WIDE - w) / 2.0, (HIGH - h) / 2.0);
    let leaves = vec![
        Move(x + w, y + 0.6),
        Line(x + w + 1.0, y + 1.2),
        Line(x + w + 1.0, y + h + 0.4),
        Line(x + 1.0, y + h + 0.4),
        Line(x, y + h),
    ];
    let cover = Piece::rectangle(w, h, Some(Ink::Paper), Some(EDGE));
    let twig = drawing::twig(6.8);
    let lines = vec![
        Move(x + 2.0, y + 8.5),
        Line(x + w - 2.0, y + 8.5),
        Move(x + 2.0, y + 10.8),
        Line(x + w - 4.0, y + 10.8),
    ];
    drawn(leaves, None, EDGE).with(x, y, cover).with(x + 2.0, y + 2.5, twig).with(
        0.0,
        0.0,
        drawn(lines, None, Pen::solid(0.4, Ink::Soft)),
    )
}
