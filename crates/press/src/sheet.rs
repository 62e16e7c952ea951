//! A sheet before it is ink: boxes in millimetres, in reading order, testable as text.
//!
//! From words, drawings and pictures to pages of placed things. Everything that prints is
//! first a [`Piece`] (a few placed things with a size), then part of a [`Page`]. Nothing here
//! knows of keys, and nothing here knows of PDF.

mod black;
mod changed;
pub mod face;
pub mod flow;
pub mod frame;
pub mod ink;
pub mod legible;
pub mod picture;
pub mod piece;
pub mod text;

use ink::{Ink, Inks, Pen};
pub use piece::Piece;
use text::Block;

/// Some pages that belong together, with the title a reader of the file sees.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// The title of the file.
    pub title: String,
    /// The tag of its language: `en`.
    pub language: &'static str,
    /// The pages in order.
    pub pages: Vec<Page>,
}

/// One page.
#[derive(Clone, Debug)]
pub struct Page {
    /// Width in mm.
    pub width: f64,
    /// Height in mm.
    pub height: f64,
    /// What stands on it, in reading order.
    pub nodes: Vec<Node>,
}

/// A placed thing, or several that belong together.
#[derive(Clone, Debug)]
pub enum Node {
    /// One thing.
    Placed(Placed),
    /// Several things that a listener hears as one: a list, a table, a section.
    Group(Group, Vec<Node>),
    /// Several things of which only what lies in a window is printed.
    Window(Rect, Vec<Node>),
}

/// One thing at its place.
#[derive(Clone, Debug)]
pub struct Placed {
    /// The box it fills, in mm from the page's top left corner.
    pub rect: Rect,
    /// What it is.
    pub what: What,
    /// What it is for.
    pub role: Role,
    /// Whether its words or its picture stand on their head, turned about the middle of the box.
    pub turned: bool,
}

/// A box in mm; y grows downwards.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Rect {
    /// Left edge.
    pub x: f64,
    /// Top edge.
    pub y: f64,
    /// Width.
    pub w: f64,
    /// Height.
    pub h: f64,
}

impl Rect {
    /// A box from its corner and size.
    pub const fn new(x: f64, y: f64, w: f64, h: f64) -> Self {
        Self { x, y, w, h }
    }

    /// What two boxes share; without width or height where they share nothing.
    pub fn within(&self, other: &Self) -> Self {
        let (x, y) = (self.x.max(other.x), self.y.max(other.y));
        let right = (self.x + self.w).min(other.x + other.w);
        let foot = (self.y + self.h).min(other.y + other.h);
        Self { x, y, w: (right - x).max(0.0), h: (foot - y).max(0.0) }
    }

    /// Whether all of a box lies in another.
    pub fn lies_in(&self, other: &Self) -> bool {
        let inside = self.x >= other.x && self.y >= other.y;
        inside && self.x + self.w <= other.x + other.w && self.y + self.h <= other.y + other.h
    }

    /// Whether two boxes share more than a hair (a hundredth of a millimetre) of paper.
    pub fn overlaps(&self, other: &Self) -> bool {
        let hair = 0.01;
        self.x + self.w > other.x + hair
            && other.x + other.w > self.x + hair
            && self.y + self.h > other.y + hair
            && other.y + other.h > self.y + hair
    }
}

/// What is placed.
#[derive(Clone, Debug)]
pub enum What {
    /// Set lines.
    Text(Block),
    /// A drawn line or shape, measured from the box's top left corner.
    Path(Path),
    /// A picture that fills the box.
    Picture(picture::Pixels),
}

/// What a placed thing is for; what a listener hears of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Role {
    /// A heading: 1 names the sheet, 2 a part of it, 3 a question.
    Heading(u8),
    /// Words to read.
    Paragraph,
    /// Words in the second language of the sheet, with its tag: `pl`.
    Second(&'static str),
    /// The words of a picture, or of the place for one.
    Caption,
    /// What stands before an item of a list: `yes`.
    Label,
    /// A picture or drawing that says something, in words.
    Figure(String),
    /// Rules, frames and ornaments: not read aloud.
    Decoration,
    /// Head and foot of a page: not read aloud again and again.
    Running,
    /// What the key says of its own standing, large and behind the words: not read aloud.
    Stamp,
}

/// How things that belong together are announced.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Group {
    /// A part of the sheet.
    Section,
    /// A list of items.
    List,
    /// One item: a label, then a body.
    Item,
    /// The body of an item.
    Body,
    /// A table of rows.
    Table,
    /// A row of cells.
    Row,
    /// A cell that names its column.
    ColumnHead,
    /// A cell that names its row.
    RowHead,
    /// Any other cell.
    Cell,
}

/// A line or shape.
#[derive(Clone, Debug, PartialEq)]
pub struct Path {
    /// The strokes of the pen.
    pub segments: Vec<Segment>,
    /// What it is filled with.
    pub fill: Option<Ink>,
    /// What it is drawn with.
    pub pen: Option<Pen>,
}

/// One stroke of the pen, in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Segment {
    /// Lift the pen and set it down here.
    Move(f64, f64),
    /// Straight on to here.
    Line(f64, f64),
    /// In a curve, by two guides, to here.
    Curve(f64, f64, f64, f64, f64, f64),
    /// Back to where the pen was set down.
    Close,
}

impl Sheet {
    /// The sheet as it is printed with these inks.
    pub fn with(self, inks: Inks) -> Self {
        match inks {
            Inks::Colour => self,
            Inks::Black => black::sheet(self),
        }
    }
}

impl Page {
    /// Everything placed, in reading order, the groups opened.
    pub fn placed(&self) -> Vec<&Placed> {
        self.seen().into_iter().map(|(placed, _)| placed).collect()
    }

    /// The same, each with the window that it is seen through, if it is seen through one.
    pub fn seen(&self) -> Vec<(&Placed, Option<Rect>)> {
        fn gather<'a>(
            nodes: &'a [Node],
            window: Option<Rect>,
            into: &mut Vec<(&'a Placed, Option<Rect>)>,
        ) {
            for node in nodes {
                match node {
                    Node::Placed(placed) => into.push((placed, window)),
                    Node::Group(_, inner) => gather(inner, window, into),
                    Node::Window(rect, inner) => {
                        gather(
                            inner,
                            Some(window.map_or(*rect, |outer| outer.within(rect))),
                            into,
                        );
                    }
                }
            }
        }
        let mut all = Vec::new();
        gather(&self.nodes, None, &mut all);
        all
    }

    /// The words of the page, one line for each placed text, in reading order.
    pub fn words(&self) -> String {
        let mut words = String::new();
        for placed in self.placed() {
            if let What::Text(block) = &placed.what {
                words.push_str(block.words().trim());
                words.push('\n');
            }
        }
        words
    }
}
