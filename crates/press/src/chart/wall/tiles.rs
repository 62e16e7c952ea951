//! The sheets of paper that a large chart is glued together from.
//!
//! From a piece larger than any paper to pages that each show a window of it. Windows overlap by
//! [`OVERLAP`]: to the right of its dotted line and below it, a sheet shows what its neighbour
//! shows once more, and there it is glued. A neighbour is cut along its dashed line, which comes
//! to lie on the dotted one; short marks on both go on across the joint. What lies in two windows
//! is printed in both and heard once, where its middle is.

use crate::Paper;
use crate::drawing;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Dash, Ink, Pen};
use crate::sheet::{Node, Page, Path, Piece, Placed, Rect, Role, Segment, What};

/// What two neighbours both show, in mm.
pub(super) const OVERLAP: f64 = 10.0;
/// A short mark across a joint, on each side of it, in mm.
const MARK: f64 = 4.0;

/// How a piece is cut into sheets.
pub(super) struct Tiles {
    frame: Frame,
    /// Sheets beside each other and beneath each other.
    pub(super) across: usize,
    pub(super) down: usize,
    /// What one sheet shows, width and height.
    window: (f64, f64),
    /// Where the piece begins on all of them.
    corner: (f64, f64),
    /// The places that show something, row by row: an empty sheet is not printed.
    kept: Vec<usize>,
}

impl Tiles {
    /// For a piece: upright or turned, whichever takes fewer sheets.
    pub(super) fn of(setting: &Setting, paper: Paper, piece: &Piece) -> Self {
        Self::cut(setting, paper, piece, |tiles| tiles.placed(piece))
    }

    /// The same with every sheet printed, and the piece in the middle of them.
    pub(super) fn all(setting: &Setting, paper: Paper, piece: &Piece) -> Self {
        Self::cut(setting, paper, piece, |tiles| {
            let (w, h) = tiles.size();
            let kept = (0..tiles.across * tiles.down).collect();
            Self { corner: ((w - piece.w) / 2.0, (h - piece.h) / 2.0), kept, ..tiles }
        })
    }

    fn cut(
        setting: &Setting,
        paper: Paper,
        piece: &Piece,
        placed: impl Fn(Self) -> Self,
    ) -> Self {
        let cut = |turned: bool| {
            let frame = setting.frame_of_key(paper, turned, "sheet-wall", OUR_GROUP);
            let window = (frame.wide(), frame.bottom() - frame.top(1));
            let many = |whole: f64, one: f64| {
                ((whole - OVERLAP) / (one - OVERLAP)).ceil().max(1.0) as usize
            };
            let (across, down) = (many(piece.w, window.0), many(piece.h, window.1));
            let corner = (0.0, 0.0);
            let tiles = Self { frame, across, down, window, corner, kept: Vec::new() };
            placed(tiles)
        };
        let (upright, turned) = (cut(false), cut(true));
        if turned.many() < upright.many() { turned } else { upright }
    }

    /// Lays the piece in the middle, or at an edge where that leaves more sheets empty.
    fn placed(mut self, piece: &Piece) -> Self {
        let (w, h) = self.size();
        let (right, below) = (w - piece.w, h - piece.h);
        let mut best: Option<((f64, f64), Vec<usize>)> = None;
        for x in [right / 2.0, 0.0, right] {
            for y in [below / 2.0, 0.0, below] {
                let nodes = piece.clone().moved(x, y).nodes;
                let shows = |at: &usize| !seen(&nodes, self.window(*at), &|_| true).is_empty();
                let kept: Vec<_> = (0..self.across * self.down).filter(shows).collect();
                if best.as_ref().is_none_or(|(_, fewest)| kept.len() < fewest.len()) {
                    best = Some(((x, y), kept));
                }
            }
        }
        (self.corner, self.kept) = best.expect("nine places were tried");
        self
    }

    /// How many sheets.
    pub(super) fn many(&self) -> usize {
        self.kept.len()
    }

    /// The size of all sheets together, in mm.
    pub(super) fn size(&self) -> (f64, f64) {
        let (step, down) = self.steps();
        let whole = |one: f64, step: f64, many: usize| one + step * (many - 1) as f64;
        (whole(self.window.0, step, self.across), whole(self.window.1, down, self.down))
    }

    /// Where the piece begins on them.
    pub(super) fn offset(&self) -> (f64, f64) {
        self.corner
    }

    /// From one window to the next.
    fn steps(&self) -> (f64, f64) {
        (self.window.0 - OVERLAP, self.window.1 - OVERLAP)
    }

    /// What each sheet shows of all of them together, row by row.
    pub(super) fn windows(&self) -> Vec<Rect> {
        self.kept.iter().map(|at| self.window(*at)).collect()
    }

    /// What is seen at a place, counted row by row.
    fn window(&self, at: usize) -> Rect {
        let (step, down) = self.steps();
        let (column, row) = (at % self.across, at / self.across);
        Rect::new(column as f64 * step, row as f64 * down, self.window.0, self.window.1)
    }

    /// The sheets, row by row, as the pages after the first.
    pub(super) fn pages(&self, setting: &Setting, piece: &Piece, of: usize) -> Vec<Page> {
        let (left, top) = self.offset();
        let placed = piece.clone().moved(left, top).nodes;
        let page = |(number, at): (usize, usize)| {
            let (column, row) = (at % self.across, at / self.across);
            let window = self.window(at);
            let shown = seen(&placed, window, &|middle| self.owner(middle) == at);
            let corner = (MARGIN, self.frame.top(1));
            let whole = Rect::new(0.0, 0.0, self.window.0, self.window.1);
            let shown = Piece { w: 0.0, h: 0.0, nodes: shown }
                .moved(-window.x, -window.y)
                .seen_through(whole);
            let sheet = shown.with(0.0, 0.0, self.marks(column, row));
            let words = setting.t().with(
                "sheet-wall-sheet",
                &[("number", &(number + 1)), ("row", &(row + 1)), ("column", &(column + 1))],
            );
            let frame = Frame { version: words, ..self.frame.clone() };
            let nodes = sheet.moved(corner.0, corner.1).nodes;
            frame.page(&setting.faces, nodes, number + 1, of)
        };
        self.kept.iter().copied().enumerate().map(page).collect()
    }

    /// The sheet on which a point is not covered by a neighbour.
    fn owner(&self, (x, y): (f64, f64)) -> usize {
        let (step, down) = self.steps();
        let at = |place: f64, step: f64, many: usize| {
            ((place / step).floor().max(0.0) as usize).min(many - 1)
        };
        at(y, down, self.down) * self.across + at(x, step, self.across)
    }

    /// Where to cut, where to glue, and the marks that meet.
    fn marks(&self, column: usize, row: usize) -> Piece {
        let (w, h) = self.window;
        let (step, down) = self.steps();
        let mut marks = Piece::blank(w, h);
        let cut = Pen::dashed(0.3, Ink::Ink);
        let glue = Pen { width: 0.4, ink: Ink::Ink, dash: Dash::Dotted };
        let (mut from_left, mut from_top) = (Vec::new(), Vec::new());
        for share in [0.25, 0.75] {
            if column > 0 {
                from_left.push((0.0, MARK, h * share));
            }
            if column + 1 < self.across {
                from_left.push((step - MARK, step, h * share));
            }
            if row > 0 {
                from_top.push((0.0, MARK, w * share));
            }
            if row + 1 < self.down {
                from_top.push((down - MARK, down, w * share));
            }
        }
        if column > 0 {
            marks = marks.with(0.0, 0.0, Piece::upright(h, cut));
        }
        if row > 0 {
            marks = marks.with(0.0, 0.0, Piece::rule(w, cut));
            marks = marks.with(w - 20.0, -2.4, drawing::scissors());
        } else if column > 0 {
            marks = marks.with(1.0, -2.4, drawing::scissors());
        }
        if column + 1 < self.across {
            marks = marks.with(step, 0.0, Piece::upright(h, glue));
        }
        if row + 1 < self.down {
            marks = marks.with(0.0, down, Piece::rule(w, glue));
        }
        let mut segments = Vec::new();
        for (from, to, y) in from_left {
            segments.extend([Segment::Move(from, y), Segment::Line(to, y)]);
        }
        for (from, to, x) in from_top {
            segments.extend([Segment::Move(x, from), Segment::Line(x, to)]);
        }
        if segments.is_empty() {
            return marks;
        }
        let path = Path { segments, fill: None, pen: Some(Pen::solid(0.6, Ink::Ink)) };
        marks.with(0.0, 0.0, Piece::path(w, h, path, Role::Decoration))
    }
}

/// The things that a window shows; those whose middle is elsewhere are heard there.
fn seen(nodes: &[Node], window: Rect, mine: &dyn Fn((f64, f64)) -> bool) -> Vec<Node> {
    let mut shown = Vec::new();
    for node in nodes {
        match node {
            Node::Placed(placed) => {
                let covered = covered(placed);
                if covered.overlaps(&window) {
                    let middle = (covered.x + covered.w / 2.0, covered.y + covered.h / 2.0);
                    let role = match (&placed.what, mine(middle)) {
                        (_, false) => Role::Decoration,
                        // Words that are cut are a picture of words.
                        (What::Text(block), true) if !placed.rect.lies_in(&window) => {
                            Role::Figure(block.words().trim().to_owned())
                        }
                        (_, true) => placed.role.clone(),
                    };
                    shown.push(Node::Placed(Placed { role, ..placed.clone() }));
                }
            }
            Node::Group(group, inner) => {
                let inner = seen(inner, window, mine);
                if !inner.is_empty() {
                    shown.push(Node::Group(*group, inner));
                }
            }
            Node::Window(rect, inner) => {
                let inner = seen(inner, window, mine);
                if !inner.is_empty() {
                    shown.push(Node::Window(*rect, inner));
                }
            }
        }
    }
    shown
}

/// The paper that a thing covers: a line has no width, and a hair of paper is enough.
fn covered(placed: &Placed) -> Rect {
    let What::Path(path) = &placed.what else { return placed.rect };
    let hair = 0.5;
    let points = path.segments.iter().flat_map(|segment| match *segment {
        Segment::Move(x, y) | Segment::Line(x, y) => vec![(x, y)],
        Segment::Curve(a, b, c, d, e, f) => vec![(a, b), (c, d), (e, f)],
        Segment::Close => vec![],
    });
    let (mut least, mut most) = ((f64::MAX, f64::MAX), (f64::MIN, f64::MIN));
    for (x, y) in points {
        least = (least.0.min(x), least.1.min(y));
        most = (most.0.max(x), most.1.max(y));
    }
    let Rect { x, y, .. } = placed.rect;
    Rect::new(
        x + least.0 - hair,
        y + least.1 - hair,
        most.0 - least.0 + 2.0 * hair,
        most.1 - least.1 + 2.0 * hair,
    )
}
