//! The flow: pieces one beneath the other, onto as many pages as they need.
//!
//! From pieces to pages. A piece is never broken; a list of pieces in a box may break between
//! two of them, and the box is then drawn on both pages.

use super::face::Faces;
use super::frame::{Frame, MARGIN};
use super::ink::{Ink, Pen, Style};
use super::text::{Block, Run};
use super::{Group, Node, Page, Piece, Role};

/// Pages being filled.
pub struct Flow<'a> {
    faces: &'a Faces,
    frame: &'a Frame,
    pages: Vec<Vec<Node>>,
    y: f64,
    /// Where on this page the pieces that may be moved apart begin.
    loose: Vec<usize>,
}

/// The look of a box.
#[derive(Clone, Copy, Debug)]
pub struct Boxed {
    /// Its ground.
    pub fill: Option<Ink>,
    /// Its outline.
    pub pen: Option<Pen>,
    /// The distance of the pieces in it from each other, in mm.
    pub gap: f64,
}

impl<'a> Flow<'a> {
    /// Padding of a box, in mm.
    pub const PADDING: f64 = 4.0;

    /// Pieces at least so far apart may be moved further apart, in mm.
    const LOOSE: f64 = 5.0;

    /// Begins on an empty page.
    pub fn new(faces: &'a Faces, frame: &'a Frame) -> Self {
        Self { faces, frame, pages: vec![Vec::new()], y: frame.top(0), loose: Vec::new() }
    }

    /// The width to fill, in mm.
    pub fn wide(&self) -> f64 {
        self.frame.wide()
    }

    /// What is left of this page, in mm.
    pub fn room(&self) -> f64 {
        self.frame.bottom() - self.y
    }

    /// The most that stands on one page, in mm.
    pub fn deep(&self) -> f64 {
        self.frame.deep()
    }

    /// Whether nothing of the sheet's own stands on this page yet.
    pub fn fresh(&self) -> bool {
        self.y <= self.frame.top(self.pages.len() - 1)
    }

    /// Goes on with a new page, unless this one is still empty.
    pub fn turn(&mut self) {
        if !self.fresh() {
            self.spread();
            self.pages.push(Vec::new());
            self.y = self.frame.top(self.pages.len() - 1);
        }
    }

    /// Moves the pieces of a full page apart, so that its foot is not left empty.
    fn spread(&mut self) {
        const MOST: f64 = 4.0;
        let room = self.room();
        let loose = std::mem::take(&mut self.loose);
        let page = self.pages.last_mut().expect("a flow has a page");
        let each = (room / loose.len().max(1) as f64).min(MOST);
        for from in loose {
            let tail = Piece { w: 0.0, h: 0.0, nodes: page.split_off(from) };
            page.extend(tail.moved(0.0, each).nodes);
        }
    }

    /// Puts a piece beneath the last one, on a new page if this one has no room for it.
    pub fn put(&mut self, gap: f64, piece: Piece) {
        let gap = if self.fresh() { 0.0 } else { gap };
        if gap + piece.h > self.room() + 0.001 && !self.fresh() {
            self.turn();
            return self.put(0.0, piece);
        }
        let y = self.y + gap;
        self.y = y + piece.h;
        let page = self.pages.last_mut().expect("a flow has a page");
        if gap >= Self::LOOSE {
            self.loose.push(page.len());
        }
        page.extend(piece.moved(MARGIN, y).nodes);
    }

    /// Puts a piece where at least `more` mm will be left beneath it.
    pub fn put_with(&mut self, gap: f64, piece: Piece, more: f64) {
        if gap + piece.h + more > self.room() {
            self.turn();
        }
        self.put(gap, piece);
    }

    /// Puts pieces into a box that may break between them.
    pub fn boxed(&mut self, gap: f64, pieces: Vec<Piece>, look: Boxed) {
        let mut rest = pieces.into_iter().peekable();
        let mut gap = gap;
        // A heading never stands alone at the foot of a page.
        let two: f64 = rest.clone().take(2).map(|piece| piece.h + look.gap).sum();
        if gap + two + 2.0 * Self::PADDING > self.room() {
            self.turn();
        }
        while rest.peek().is_some() {
            let room = self.room() - gap - 2.0 * Self::PADDING;
            let mut inner = Piece::blank(self.wide() - 2.0 * Self::PADDING, 0.0);
            while let Some(piece) =
                rest.next_if(|piece| inner.h == 0.0 || inner.h + look.gap + piece.h <= room)
            {
                inner = inner.then(look.gap, piece);
            }
            let inner = inner.grouped(Group::Section);
            self.put(gap, inner.framed(Self::PADDING, look.fill, look.pen));
            gap = 0.0;
            if rest.peek().is_some() {
                self.turn();
            }
        }
    }

    /// Puts rows beneath their heads, the heads on every page anew. Every page takes at least
    /// one row, so that this ends whatever the rows are.
    pub fn table(&mut self, gap: f64, heads: &Piece, rows: Vec<Piece>) {
        let mut rows = rows.into_iter().peekable();
        while let Some(first) = rows.next() {
            if gap + heads.h + first.h > self.room() {
                self.turn();
            }
            let gap = if self.fresh() { 0.0 } else { gap };
            let room = self.room() - gap;
            let mut table = heads.clone().then(0.0, first);
            while let Some(row) = rows.next_if(|row| table.h + row.h <= room) {
                table = table.then(0.0, row);
            }
            self.put(gap, table.grouped(Group::Table));
            if rows.peek().is_some() {
                self.turn();
            }
        }
    }

    /// Fills a page that would waste much paper with lines to write on.
    pub fn lines_to_write_on(&mut self, heading: &str) {
        let step = 12.0;
        let room = self.room() - 8.0;
        if room < 0.22 * self.frame.deep() {
            return;
        }
        let run = [Run::new(heading, Style::STRONG)];
        let title = Piece::text(Block::set(self.faces, &run, self.wide()), Role::Paragraph);
        let count = ((room - title.h) / step).floor() as usize;
        let mut piece = title;
        for _ in 0..count {
            let y = piece.h + step - 0.2;
            piece = piece.with(0.0, y, Piece::rule(self.wide(), Pen::solid(0.2, Ink::Soft)));
        }
        self.put(8.0, piece);
    }

    /// The pages, with their heads and feet.
    pub fn finish(self) -> Vec<Page> {
        let of = self.pages.len();
        let pages = self.pages.into_iter().enumerate();
        pages.map(|(at, body)| self.frame.page(self.faces, body, at, of)).collect()
    }
}
