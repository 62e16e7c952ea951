//! Our own drawings: tabs, arrows, scissors, a warning sign, a twig for the title.
//!
//! From a size in mm to a drawn piece. Nothing is filled but tabs; every line is 0.5 pt or
//! more; a grey copier keeps every meaning.

use crate::setting::Setting;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Path, Piece, Role, Segment};
use Segment::{Close, Curve, Line, Move};

/// How far a guide of a curve stands from a quarter circle's end, as a part of its radius.
const ROUND: f64 = 0.5523;

fn drawn(w: f64, h: f64, segments: Vec<Segment>, fill: Option<Ink>, pen: Option<Pen>) -> Piece {
    Piece::path(w, h, Path { segments, fill, pen }, Role::Decoration)
}

/// The tab of "yes": shaped like a leaf, round at two corners and pointed at two.
pub(crate) fn leaf_tab(w: f64, h: f64) -> Piece {
    let r = h * 0.8;
    let k = r * (1.0 - ROUND);
    let segments = vec![
        Move(0.0, h),
        Line(0.0, r),
        Curve(0.0, k, k, 0.0, r, 0.0),
        Line(w, 0.0),
        Line(w, h - r),
        Curve(w, h - k, w - k, h, w - r, h),
        Close,
    ];
    drawn(w, h, segments, Some(Ink::Hedge), None)
}

/// A ground with round ends, for a number that no circle holds.
pub(crate) fn pill(w: f64, h: f64) -> Piece {
    let r = h / 2.0;
    let k = r * (1.0 - ROUND);
    let segments = vec![
        Move(r, 0.0),
        Line(w - r, 0.0),
        Curve(w - k, 0.0, w, k, w, r),
        Curve(w, h - k, w - k, h, w - r, h),
        Line(r, h),
        Curve(k, h, 0.0, h - k, 0.0, r),
        Curve(0.0, k, k, 0.0, r, 0.0),
        Close,
    ];
    drawn(w, h, segments, Some(Ink::Hedge), None)
}

/// The tab of "no": a square-cornered box.
pub(crate) fn square_tab(w: f64, h: f64) -> Piece {
    Piece::rectangle(w, h, Some(Ink::Paper), Some(Pen::solid(0.5, Ink::Ink)))
}

/// A circle of radius `r` in a box whose corner is at `x`, `y`.
pub(crate) fn ring(x: f64, y: f64, r: f64) -> Vec<Segment> {
    let k = r * (1.0 - ROUND);
    let d = 2.0 * r;
    vec![
        Move(x + r, y),
        Curve(x + d - k, y, x + d, y + k, x + d, y + r),
        Curve(x + d, y + d - k, x + d - k, y + d, x + r, y + d),
        Curve(x + k, y + d, x, y + d - k, x, y + r),
        Curve(x, y + k, x + k, y, x + r, y),
        Close,
    ]
}

/// An arrow to the right, its shaft solid or dashed.
pub(crate) fn arrow(length: f64, dash: Dash) -> Piece {
    let (mid, head) = (1.6, 2.4);
    let pen = Pen { width: 0.5, ink: Ink::Ink, dash };
    let shaft = drawn(
        length,
        2.0 * mid,
        vec![Move(0.0, mid), Line(length - head * 0.6, mid)],
        None,
        Some(pen),
    );
    let tip =
        vec![Move(length, mid), Line(length - head, 0.2), Line(length - head, 3.0), Close];
    shaft.with(0.0, 0.0, drawn(length, 2.0 * mid, tip, Some(Ink::Ink), None))
}

/// A warning sign: a triangle with an exclamation mark, drawn.
pub(crate) fn warning(size: f64) -> Piece {
    let at = |x: f64, y: f64| (x * size, y * size);
    let (a, b, c) = (at(0.5, 0.06), at(0.97, 0.9), at(0.03, 0.9));
    let outline = vec![Move(a.0, a.1), Line(b.0, b.1), Line(c.0, c.1), Close];
    let pen = Pen::solid((size * 0.09).max(0.4), Ink::Berry);
    let (stroke, foot) = (at(0.5, 0.36), at(0.5, 0.62));
    let mark = vec![Move(stroke.0, stroke.1), Line(foot.0, foot.1)];
    let dot = ring(size * 0.44, size * 0.7, size * 0.06);
    drawn(size, size, outline, Some(Ink::Paper), Some(pen))
        .with(0.0, 0.0, drawn(size, size, mark, None, Some(pen)))
        .with(0.0, 0.0, drawn(size, size, dot, Some(Ink::Berry), None))
}

/// Small scissors, lying on a line to cut that goes to the right.
pub(crate) fn scissors() -> Piece {
    let pen = Some(Pen::solid(0.3, Ink::Ink));
    let blades = vec![Move(2.2, 1.3), Line(6.6, 3.9), Move(2.2, 3.5), Line(6.6, 0.9)];
    drawn(7.0, 4.8, blades, None, pen)
        .with(0.0, 0.0, drawn(7.0, 4.8, ring(0.2, 0.2, 1.1), None, pen))
        .with(0.0, 0.0, drawn(7.0, 4.8, ring(0.2, 2.4, 1.1), None, pen))
}

/// Album corners around an empty box: here something is stuck in.
pub(crate) fn album_corners(w: f64, h: f64) -> Piece {
    let c = (w.min(h) * 0.16).min(7.0);
    let corner = |x: f64, y: f64, dx: f64, dy: f64| {
        vec![Move(x, y), Line(x + dx, y), Line(x, y + dy), Close]
    };
    let corners = [
        corner(0.0, 0.0, c, c),
        corner(w, 0.0, -c, c),
        corner(0.0, h, c, -c),
        corner(w, h, -c, -c),
    ];
    let edge = Piece::rectangle(w, h, Some(Ink::Paper), Some(Pen::solid(0.25, Ink::Soft)));
    let pen = Some(Pen::solid(0.25, Ink::Soft));
    corners.into_iter().fold(edge, |box_, segments| {
        box_.with(0.0, 0.0, drawn(w, h, segments, Some(Ink::Tint), pen))
    })
}

/// A disc, filled or as a ring.
pub(crate) fn disc(d: f64, fill: Option<Ink>, pen: Pen) -> Piece {
    drawn(d, d, ring(0.0, 0.0, d / 2.0), fill, Some(pen))
}

/// The tab that says where one begins.
pub(crate) fn start(setting: &Setting) -> Piece {
    let style = Style::SMALL_STRONG.inked(Ink::Paper);
    let block = setting.block(&setting.say("sheet-start-here"), style, 60.0);
    let (w, h) = (block.width + 6.0, 7.0);
    let y = (h - block.height) / 2.0;
    leaf_tab(w, h).with(3.0, y, Piece::text(block, Role::Paragraph)).at_least(w, h)
}

/// A box to tick.
pub(crate) fn tick_box(size: f64) -> Piece {
    Piece::rectangle(size, size, Some(Ink::Paper), Some(Pen::solid(0.4, Ink::Ink)))
}

/// A twig with leaves, the ornament of the title; `length` mm long, about two fifths as high.
pub(crate) fn twig(length: f64) -> Piece {
    // The twig was drawn 34 mm long.
    let k = length / 34.0;
    let high = 14.0 * k;
    let pen = Pen::solid(0.6, Ink::Hedge);
    let vein = Pen::solid(0.25, Ink::Hedge);
    let stem = vec![
        Move(0.0, 9.5 * k),
        Curve(length * 0.3, 8.0 * k, length * 0.6, 8.5 * k, length * 0.8, 6.0 * k),
    ];
    let mut piece = drawn(length, high, stem, None, Some(pen));
    let leaves = [
        (0.16, 9.0, 0.26, -6.6),
        (0.34, 8.4, 0.24, 5.2),
        (0.50, 8.1, 0.25, -6.2),
        (0.66, 7.6, 0.22, 5.4),
        (0.80, 6.0, 0.20, -3.0),
    ];
    for (at, y, reach, rise) in leaves {
        let (x, dx) = (length * at, length * reach);
        let (y, rise) = (y * k, rise * k);
        let (tip_x, tip_y) = (x + dx, y + rise);
        // The blade's two edges bow away from the midrib by a third of its length.
        let (bow_x, bow_y) = (-rise * 0.38, dx * 0.38);
        let (q, t) = (0.35, 0.75);
        let guide = |share: f64, side: f64| {
            (x + dx * share + bow_x * side, y + rise * share + bow_y * side)
        };
        let ((ax, ay), (bx, by)) = (guide(q, 1.0), guide(t, 0.8));
        let ((cx, cy), (ex, ey)) = (guide(t, -0.8), guide(q, -1.0));
        let blade = vec![
            Move(x, y),
            Curve(ax, ay, bx, by, tip_x, tip_y),
            Curve(cx, cy, ex, ey, x, y),
            Close,
        ];
        let rib = vec![Move(x, y), Line(x + dx * 0.86, y + rise * 0.86)];
        piece = piece
            .with(0.0, 0.0, drawn(length, high, blade, Some(Ink::Paper), Some(pen)))
            .with(0.0, 0.0, drawn(length, high, rib, None, Some(vein)));
    }
    piece
}
