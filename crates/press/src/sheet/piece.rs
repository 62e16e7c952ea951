//! Pieces: a few placed things with a size, put together like paper on a table.
//!
//! From smaller pieces to larger ones: one under the other, side by side, one laid on another,
//! framed, grouped. All lengths in mm; a piece's own corner is 0, 0 until a page places it.

use super::ink::{Ink, Pen};
use super::text::Block;
use super::{Group, Node, Path, Placed, Rect, Role, Segment, What, picture};

/// Placed things with the size they take together.
#[derive(Clone, Debug, Default)]
pub struct Piece {
    /// Width in mm.
    pub w: f64,
    /// Height in mm.
    pub h: f64,
    /// The things, in reading order.
    pub nodes: Vec<Node>,
}

impl Piece {
    /// Empty paper.
    pub fn blank(w: f64, h: f64) -> Self {
        Self { w, h, nodes: Vec::new() }
    }

    /// Set lines.
    pub fn text(block: Block, role: Role) -> Self {
        let (w, h) = (block.width, block.height);
        Self::one(w, h, What::Text(block), role)
    }

    /// A drawn line or shape.
    pub fn path(w: f64, h: f64, path: Path, role: Role) -> Self {
        Self::one(w, h, What::Path(path), role)
    }

    /// A picture as large as fits, in the middle of a box.
    pub fn picture(w: f64, h: f64, pixels: picture::Pixels, words: String) -> Self {
        let (across, down) = (f64::from(pixels.width), f64::from(pixels.height));
        let scale = (w / across).min(h / down);
        let (pw, ph) = (across * scale, down * scale);
        let shown = Self::one(pw, ph, What::Picture(pixels), Role::Figure(words));
        Self::blank(w, h).with((w - pw) / 2.0, (h - ph) / 2.0, shown)
    }

    fn one(w: f64, h: f64, what: What, role: Role) -> Self {
        let rect = Rect::new(0.0, 0.0, w, h);
        Self { w, h, nodes: vec![Node::Placed(Placed { rect, what, role, turned: false })] }
    }

    /// A rule of a length.
    pub fn rule(length: f64, pen: Pen) -> Self {
        let segments = vec![Segment::Move(0.0, 0.0), Segment::Line(length, 0.0)];
        let path = Path { segments, fill: None, pen: Some(pen) };
        Self::path(length, pen.width, path, Role::Decoration)
    }

    /// An upright rule of a length.
    pub fn upright(length: f64, pen: Pen) -> Self {
        let segments = vec![Segment::Move(0.0, 0.0), Segment::Line(0.0, length)];
        let path = Path { segments, fill: None, pen: Some(pen) };
        Self::path(pen.width, length, path, Role::Decoration)
    }

    /// A box, filled or drawn.
    pub fn rectangle(w: f64, h: f64, fill: Option<Ink>, pen: Option<Pen>) -> Self {
        use Segment::{Close, Line, Move};
        let segments = vec![Move(0.0, 0.0), Line(w, 0.0), Line(w, h), Line(0.0, h), Close];
        Self::path(w, h, Path { segments, fill, pen }, Role::Decoration)
    }

    /// The same, its things moved.
    pub fn moved(mut self, dx: f64, dy: f64) -> Self {
        fn shift(nodes: &mut [Node], dx: f64, dy: f64) {
            for node in nodes {
                match node {
                    Node::Placed(placed) => {
                        placed.rect.x += dx;
                        placed.rect.y += dy;
                    }
                    Node::Group(_, inner) => shift(inner, dx, dy),
                    Node::Window(rect, inner) => {
                        (rect.x, rect.y) = (rect.x + dx, rect.y + dy);
                        shift(inner, dx, dy);
                    }
                }
            }
        }
        shift(&mut self.nodes, dx, dy);
        self
    }

    /// Lays another piece on this one; the paper grows to hold both.
    pub fn with(mut self, x: f64, y: f64, other: Self) -> Self {
        self.w = self.w.max(x + other.w);
        self.h = self.h.max(y + other.h);
        self.nodes.extend(other.moved(x, y).nodes);
        self
    }

    /// Puts another piece beneath this one.
    pub fn then(self, gap: f64, other: Self) -> Self {
        let below = if self.h > 0.0 { self.h + gap } else { 0.0 };
        self.with(0.0, below, other)
    }

    /// Puts another piece to the right of this one.
    pub fn beside(self, gap: f64, other: Self) -> Self {
        let right = self.w + gap;
        self.with(right, 0.0, other)
    }

    /// Announces the piece as one thing.
    pub fn grouped(self, group: Group) -> Self {
        let nodes = if self.nodes.is_empty() {
            Vec::new()
        } else {
            vec![Node::Group(group, self.nodes)]
        };
        Self { nodes, ..self }
    }

    /// Cuts away what lies outside of a window, in mm from the piece's own corner.
    pub fn seen_through(self, window: super::Rect) -> Self {
        let nodes = vec![Node::Window(window, self.nodes)];
        Self { w: window.x + window.w, h: window.y + window.h, nodes }
    }

    /// Puts a frame around the piece, `padding` mm away from it.
    pub fn framed(self, padding: f64, fill: Option<Ink>, pen: Option<Pen>) -> Self {
        let (w, h) = (self.w + 2.0 * padding, self.h + 2.0 * padding);
        Self::rectangle(w, h, fill, pen).with(padding, padding, self)
    }

    /// The same things on paper at least so large.
    pub fn at_least(mut self, w: f64, h: f64) -> Self {
        self.w = self.w.max(w);
        self.h = self.h.max(h);
        self
    }
}
