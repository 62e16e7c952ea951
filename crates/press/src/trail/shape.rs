//! The shape of a post: six of them, in turn, each with the number of its post in it.
//!
//! From the number of a post to a drawn sign and the name of its shape. A shape is a line around
//! a number: it is seen on a grey copy, and by whoever sees no colours.

use crate::setting::Setting;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Path, Piece, Role, Segment};
use Segment::{Close, Curve, Line, Move};

/// What a sign looks like.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shape {
    Circle,
    Triangle,
    Square,
    Diamond,
    House,
    Drop,
}

const ALL: [Shape; 6] =
    [Shape::Circle, Shape::Triangle, Shape::Square, Shape::Diamond, Shape::House, Shape::Drop];

impl Shape {
    /// The shape of a post of this number.
    pub(super) fn of(number: u32) -> Self {
        ALL[(number.max(1) - 1) as usize % ALL.len()]
    }

    /// The message of its name.
    pub(super) fn message(self) -> &'static str {
        match self {
            Self::Circle => "sheet-shape-circle",
            Self::Triangle => "sheet-shape-triangle",
            Self::Square => "sheet-shape-square",
            Self::Diamond => "sheet-shape-diamond",
            Self::House => "sheet-shape-house",
            Self::Drop => "sheet-shape-drop",
        }
    }

    /// Its line in a square with sides of 1, and where the middle of its number is.
    fn outline(self) -> (Vec<Segment>, f64) {
        let k = 0.5 * (1.0 - 0.5523);
        match self {
            Self::Circle => (
                vec![
                    Move(0.5, 0.0),
                    Curve(1.0 - k, 0.0, 1.0, k, 1.0, 0.5),
                    Curve(1.0, 1.0 - k, 1.0 - k, 1.0, 0.5, 1.0),
                    Curve(k, 1.0, 0.0, 1.0 - k, 0.0, 0.5),
                    Curve(0.0, k, k, 0.0, 0.5, 0.0),
                    Close,
                ],
                0.5,
            ),
            Self::Triangle => {
                (vec![Move(0.5, 0.02), Line(1.0, 0.94), Line(0.0, 0.94), Close], 0.66)
            }
            Self::Square => (
                vec![
                    Move(0.06, 0.06),
                    Line(0.94, 0.06),
                    Line(0.94, 0.94),
                    Line(0.06, 0.94),
                    Close,
                ],
                0.5,
            ),
            Self::Diamond => (
                vec![Move(0.5, 0.0), Line(1.0, 0.5), Line(0.5, 1.0), Line(0.0, 0.5), Close],
                0.5,
            ),
            Self::House => (
                vec![
                    Move(0.5, 0.02),
                    Line(0.96, 0.4),
                    Line(0.96, 0.96),
                    Line(0.04, 0.96),
                    Line(0.04, 0.4),
                    Close,
                ],
                0.6,
            ),
            Self::Drop => (
                vec![
                    Move(0.5, 0.0),
                    Curve(0.6, 0.28, 0.92, 0.4, 0.92, 0.6),
                    Curve(0.92, 0.85, 0.72, 1.0, 0.5, 1.0),
                    Curve(0.28, 1.0, 0.08, 0.85, 0.08, 0.6),
                    Curve(0.08, 0.4, 0.4, 0.28, 0.5, 0.0),
                    Close,
                ],
                0.62,
            ),
        }
    }

    /// The sign with its number, so many mm wide and high.
    pub(super) fn sign(self, setting: &Setting, number: u32, size: f64, style: Style) -> Piece {
        let (outline, middle) = self.outline();
        let at = |segment: Segment| {
            let s = |v: f64| v * size;
            match segment {
                Move(x, y) => Move(s(x), s(y)),
                Line(x, y) => Line(s(x), s(y)),
                Curve(a, b, c, d, e, f) => Curve(s(a), s(b), s(c), s(d), s(e), s(f)),
                Close => Close,
            }
        };
        let pen = Some(Pen::solid((size * 0.03).max(0.5), Ink::Ink));
        let segments = outline.into_iter().map(at).collect();
        let path = Path { segments, fill: Some(Ink::Paper), pen };
        let words = number.to_string();
        // A long number in a sharp corner takes smaller letters.
        let wanted = |size: f64| Style { size, leading: 1.1, ..style };
        let room =
            size * if self == Self::Triangle || self == Self::Diamond { 0.5 } else { 0.7 };
        let mut block = setting.block(&words, wanted(style.size), f64::INFINITY);
        if block.width > room {
            let smaller = (style.size * room / block.width).max(12.0);
            block = setting.block(&words, wanted(smaller), f64::INFINITY);
        }
        let block = block.centred(size);
        let y = size * middle - block.height / 2.0;
        let number = Piece::text(block, Role::Paragraph);
        Piece::path(size, size, path, Role::Decoration)
            .with(0.0, y, number)
            .at_least(size, size)
    }
}
