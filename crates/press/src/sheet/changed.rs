//! The same things in another size, or standing on their head.
//!
//! From a piece to the same piece so many times as large, or turned half round. Letters, lines and
//! pictures change together, so that what had room beside each other still has it. Lengths that
//! must be true on paper (a ruler, a place for a leaf) must not be set by it.

use super::ink::Pen;
use super::text::Block;
use super::{Node, Path, Piece, Placed, Rect, Segment, What};

impl Piece {
    /// The same, so many times as large. No line gets thinner than a copier keeps.
    pub fn sized(mut self, times: f64) -> Self {
        each(&mut self.nodes, &mut |rect| {
            let Rect { x, y, w, h } = *rect;
            *rect = Rect::new(x * times, y * times, w * times, h * times);
        });
        placed(&mut self.nodes, &mut |placed| match &mut placed.what {
            What::Text(block) => text(block, times),
            What::Path(path) => drawn(path, times),
            What::Picture(_) => {}
        });
        Self { w: self.w * times, h: self.h * times, nodes: self.nodes }
    }

    /// The same, turned half round: its top left corner is at the bottom right.
    pub fn on_its_head(mut self) -> Self {
        let (wide, high) = (self.w, self.h);
        each(&mut self.nodes, &mut |rect| {
            rect.x = wide - rect.x - rect.w;
            rect.y = high - rect.y - rect.h;
        });
        placed(&mut self.nodes, &mut |placed| {
            let Rect { w, h, .. } = placed.rect;
            match &mut placed.what {
                What::Path(path) => around(path, (w, h)),
                What::Text(_) | What::Picture(_) => placed.turned = !placed.turned,
            }
        });
        self
    }
}

/// Every box, windows among them.
fn each(nodes: &mut [Node], change: &mut impl FnMut(&mut Rect)) {
    for node in nodes {
        match node {
            Node::Placed(placed) => change(&mut placed.rect),
            Node::Group(_, inner) => each(inner, change),
            Node::Window(rect, inner) => {
                change(rect);
                each(inner, change);
            }
        }
    }
}

fn placed(nodes: &mut [Node], change: &mut impl FnMut(&mut Placed)) {
    for node in nodes {
        match node {
            Node::Placed(placed) => change(placed),
            Node::Group(_, inner) | Node::Window(_, inner) => self::placed(inner, change),
        }
    }
}

fn text(block: &mut Block, times: f64) {
    block.width *= times;
    block.height *= times;
    for line in &mut block.lines {
        for length in [&mut line.baseline, &mut line.top, &mut line.height, &mut line.width] {
            *length *= times;
        }
        for part in &mut line.parts {
            part.x *= times;
            part.style.size *= times;
        }
    }
}

fn drawn(path: &mut Path, times: f64) {
    points(path, |(x, y)| (x * times, y * times));
    let wide = |width: f64| (width * times).max(Pen::THINNEST);
    path.pen = path.pen.map(|pen| Pen { width: wide(pen.width), ..pen });
}

fn around(path: &mut Path, (wide, high): (f64, f64)) {
    points(path, |(x, y)| (wide - x, high - y));
}

fn points(path: &mut Path, to: impl Fn((f64, f64)) -> (f64, f64)) {
    for segment in &mut path.segments {
        *segment = match *segment {
            Segment::Move(x, y) => {
                let (x, y) = to((x, y));
                Segment::Move(x, y)
            }
            Segment::Line(x, y) => {
                let (x, y) = to((x, y));
                Segment::Line(x, y)
            }
            Segment::Curve(a, b, c, d, e, f) => {
                let ((a, b), (c, d), (e, f)) = (to((a, b)), to((c, d)), to((e, f)));
                Segment::Curve(a, b, c, d, e, f)
            }
            Segment::Close => Segment::Close,
        };
    }
}
