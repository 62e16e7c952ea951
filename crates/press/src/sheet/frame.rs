//! The page around the words: margins, running head, foot, stamp.
//!
//! From the size of a paper and the lines that every page carries to the room left for the
//! sheet itself. Margins are 12 mm, since school printers cannot do less.

use spinney_voice::Tongue;

use super::face::Faces;
use super::ink::{Ink, Pen, Style};
use super::legible::legible;
use super::text::{Block, Run};
use super::{Node, Page, Piece, Role};

/// Width of the margin on every side, in mm.
pub const MARGIN: f64 = 12.0;
/// Height of the foot above the margin, in mm; of large print it is two lines.
const FOOT: f64 = 8.0;
const LARGE_FOOT: f64 = 14.5;
/// Height of the running head below the margin, in mm.
const HEAD: f64 = 10.0;

/// What is the same on every page of a sheet.
#[derive(Clone, Debug)]
pub struct Frame {
    /// Width of the paper in mm, as the sheet is turned.
    pub width: f64,
    /// Height of the paper in mm.
    pub height: f64,
    /// How much larger all of it is printed: of large print the paper is as much smaller as
    /// long as it is set, so that its margins are those of every sheet.
    pub times: f64,
    /// Read at the top of every page but the first.
    pub running: String,
    /// Version and date.
    pub version: String,
    /// What is asked for beside the line to write on: `Our group's number`.
    pub writing: String,
    /// The word printed large behind and small above everything: `DRAFT`.
    pub stamp: Option<String>,
    /// The words printed beside the title: `trying-out copy`.
    pub beside: Option<String>,
    /// The language in which pages are counted.
    pub tongue: Tongue,
}

impl Frame {
    /// The width between the margins, in mm.
    pub fn wide(&self) -> f64 {
        self.width - 2.0 * MARGIN
    }

    /// Where the sheet's own things begin on a page, counted from 0.
    pub fn top(&self, page: usize) -> f64 {
        if page == 0 { MARGIN } else { MARGIN + HEAD }
    }

    /// Where they must end.
    pub fn bottom(&self) -> f64 {
        self.height - MARGIN - self.foot_high() - 2.0
    }

    fn foot_high(&self) -> f64 {
        if self.times > 1.0 { LARGE_FOOT } else { FOOT }
    }

    /// The most that stands on one page, in mm.
    pub fn deep(&self) -> f64 {
        self.bottom() - self.top(1)
    }

    /// A page around things already placed.
    pub fn page(&self, faces: &Faces, body: Vec<Node>, page: usize, of: usize) -> Page {
        let head = (page > 0).then(|| self.head(faces).moved(MARGIN, MARGIN));
        self.around(faces, head, body, (page, of))
    }

    /// The same without a running head: its things are cut apart.
    pub fn page_without_head(
        &self,
        faces: &Faces,
        body: Vec<Node>,
        page: usize,
        of: usize,
    ) -> Page {
        self.around(faces, None, body, (page, of))
    }

    fn around(
        &self,
        faces: &Faces,
        head: Option<Piece>,
        body: Vec<Node>,
        (page, of): (usize, usize),
    ) -> Page {
        let mut nodes = Vec::new();
        if let Some(stamp) = &self.stamp {
            for share in [0.32, 0.74] {
                nodes.extend(self.ghost(faces, stamp, share).nodes);
            }
        }
        nodes.extend(head.into_iter().flat_map(|head| head.nodes));
        nodes.extend(body);
        let foot = self.foot(faces, page + 1, of);
        nodes.extend(foot.moved(MARGIN, self.height - MARGIN - self.foot_high()).nodes);
        self.printed(nodes)
    }

    /// A page as large as it is printed.
    fn printed(&self, nodes: Vec<Node>) -> Page {
        let (width, height) = (self.width, self.height);
        if self.times == 1.0 {
            return Page { width, height, nodes };
        }
        let at = MARGIN * (1.0 - self.times);
        let whole = Piece { w: width, h: height, nodes }.sized(self.times).moved(at, at);
        let on_paper = |length: f64| (length - 2.0 * MARGIN) * self.times + 2.0 * MARGIN;
        Page { width: on_paper(width), height: on_paper(height), nodes: whole.nodes }
    }

    /// A length of the paper while a sheet is set that is printed so many times as large.
    pub fn before(on_paper: f64, times: f64) -> f64 {
        (on_paper - 2.0 * MARGIN) / times + 2.0 * MARGIN
    }

    fn head(&self, faces: &Faces) -> Piece {
        let mut head = Piece::blank(self.wide(), HEAD);
        let mut room = self.wide();
        if let Some(badge) = self.badge(faces, Role::Running) {
            room -= badge.w + 4.0;
            head = head.with(self.wide() - badge.w, 0.0, badge);
        }
        let style = Style::SMALL.inked(Ink::Soft);
        let words = legible(faces, &self.running, 120);
        let block = Block::set(faces, &[Run::new(words, style)], room).at_most(faces, 1);
        head.with(0.0, 0.8, Piece::text(block, Role::Running))
    }

    /// The standing of the key in a small frame; the role says whether it is read aloud.
    pub fn badge(&self, faces: &Faces, role: Role) -> Option<Piece> {
        let words = self.stamp.as_ref().or(self.beside.as_ref())?;
        let block = Block::set(faces, &[Run::new(words.as_str(), Style::STRONG)], 80.0);
        let text = Piece::text(block, role);
        let (w, h) = (text.w + 5.0, text.h + 0.4);
        let frame = Piece::rectangle(w, h, Some(Ink::Paper), Some(Pen::solid(0.5, Ink::Ink)));
        Some(frame.with(2.5, 0.2, text))
    }

    /// Letters as wide as the page, behind everything, at a share of its height: twice on a
    /// page, so that no box hides them all.
    fn ghost(&self, faces: &Faces, stamp: &str, share: f64) -> Piece {
        let style = Style { size: 100.0, ..Style::TITLE.inked(Ink::Ghost) };
        let run = |size: f64| [Run::new(stamp, Style { size, ..style })];
        let trial = Block::set(faces, &run(100.0), 1.0e6);
        let size = (100.0 * self.wide() * 0.8 / trial.width.max(1.0)).min(180.0);
        let block = Block::set(faces, &run(size), self.wide());
        let (x, y) =
            ((self.width - block.width) / 2.0, self.height * share - block.height / 2.0);
        Piece::text(block, Role::Stamp).moved(x, y)
    }

    fn foot(&self, faces: &Faces, page: usize, of: usize) -> Piece {
        let style = Style::SMALL.inked(Ink::Soft);
        let set = |words: &str, width: f64| {
            let run = [Run::new(legible(faces, words, 100), style)];
            Piece::text(Block::set(faces, &run, width).at_most(faces, 1), Role::Running)
        };
        let number = self.tongue.with("sheet-page-of", &[("page", &page), ("of", &of)]);
        let number = set(&number, 40.0);
        if self.times > 1.0 {
            return self.foot_in_two_lines(set(&self.writing, self.wide()), number, |wide| {
                set(&self.version, wide)
            });
        }
        let version = set(&self.version, self.wide() * 0.36);
        let writing = set(&self.writing, 70.0);
        let y = FOOT - 5.6;
        let left = if version.w > 0.0 { version.w + 8.0 } else { 0.0 };
        let line = (left + writing.w + 2.0, self.wide() - number.w - 8.0);
        let rule = Piece::rule(self.wide(), Pen::solid(0.3, Ink::Hedge));
        let write = Piece::rule((line.1 - line.0).max(0.0), Pen::solid(0.2, Ink::Soft));
        let right = self.wide() - number.w;
        Piece::blank(self.wide(), FOOT)
            .with(0.0, 0.0, rule)
            .with(0.0, y, version)
            .with(left, y, writing)
            .with(line.0, FOOT - 0.6, write)
            .with(right, y, number)
    }

    fn foot_in_two_lines(
        &self,
        writing: Piece,
        number: Piece,
        version: impl Fn(f64) -> Piece,
    ) -> Piece {
        let (wide, from) = (self.wide(), writing.w + 2.0);
        let rule = Piece::rule(wide, Pen::solid(0.3, Ink::Hedge));
        let write = Piece::rule((wide - from).max(0.0), Pen::solid(0.2, Ink::Soft));
        let (right, y) = (wide - number.w, LARGE_FOOT - 5.6);
        Piece::blank(wide, LARGE_FOOT)
            .with(0.0, 0.0, rule)
            .with(0.0, 2.4, writing)
            .with(from, y - 1.0, write)
            .with(0.0, y, version(right - 4.0))
            .with(right, y, number)
    }
}
