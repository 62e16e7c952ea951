//! The small pages while they are filled, one after the other.
//!
//! From pieces to pages. Nothing is broken or cut; a page with questions says at its head which.

use crate::setting::Setting;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Piece, Role};

/// What the head of a page takes, in mm before all is made smaller.
const HEAD: f64 = 6.5;
/// Padding of the box of cautions, in mm before all is made smaller.
pub(super) const PADDING: f64 = 3.0;

/// Pages being filled.
pub(super) struct Leaves<'a> {
    setting: &'a Setting<'a>,
    /// How the key stands, in a frame.
    badge: Option<Piece>,
    wide: f64,
    /// How much stands on a page, counted from 0, in mm.
    deep: &'a dyn Fn(usize) -> f64,
    pages: Vec<Leaf>,
    /// Whether something is higher than a page.
    too_high: bool,
}

/// A page with the first and the last question on it.
struct Leaf {
    piece: Piece,
    asks: Option<(u32, u32)>,
}

impl<'a> Leaves<'a> {
    pub(super) fn new(
        setting: &'a Setting<'a>,
        standing: Option<&str>,
        wide: f64,
        deep: &'a dyn Fn(usize) -> f64,
    ) -> Self {
        let badge = standing.map(|words| badge(setting, words));
        let cover = Leaf { piece: Piece::blank(wide, 0.0), asks: None };
        Self { setting, badge, wide, deep, pages: vec![cover], too_high: false }
    }

    /// The width to fill, in mm.
    pub(super) fn wide(&self) -> f64 {
        self.wide
    }

    /// Where things begin on a page, counted from 0.
    fn top(page: usize) -> f64 {
        if page == 0 { 0.0 } else { HEAD }
    }

    fn last(&mut self) -> &mut Leaf {
        self.pages.last_mut().expect("there is a cover")
    }

    fn fresh(&self) -> bool {
        let page = self.pages.len() - 1;
        self.pages[page].piece.h <= Self::top(page)
    }

    /// What is left of this page, in mm.
    fn room(&self) -> f64 {
        let page = self.pages.len() - 1;
        (self.deep)(page) - self.pages[page].piece.h
    }

    /// Goes on with a new page, unless this one is still empty.
    pub(super) fn turn(&mut self) {
        if !self.fresh() {
            let top = Self::top(self.pages.len());
            self.pages.push(Leaf { piece: Piece::blank(self.wide, top), asks: None });
        }
    }

    /// Leaves the cover to itself; what went on behind it is gone on with.
    pub(super) fn behind_the_cover(&mut self) {
        if self.pages.len() == 1 {
            self.turn();
        }
    }

    /// Puts a piece beneath the last one, on a new page if this one has no room for it.
    pub(super) fn put(&mut self, gap: f64, piece: Piece) {
        let gap = if self.fresh() { 0.0 } else { gap };
        if gap + piece.h > self.room() + 0.001 && !self.fresh() {
            self.turn();
            return self.put(0.0, piece);
        }
        self.too_high |= piece.h > self.room() + 0.001;
        let leaf = self.last();
        let y = leaf.piece.h + gap;
        leaf.piece = std::mem::take(&mut leaf.piece).with(0.0, y, piece);
    }

    /// The same for a question.
    pub(super) fn put_question(&mut self, gap: f64, number: u32, piece: Piece) {
        self.put(gap, piece);
        let asks = &mut self.last().asks;
        *asks = Some((asks.map_or(number, |(first, _)| first), number));
    }

    /// Puts cautions into a box that may break between them.
    pub(super) fn boxed(&mut self, gap: f64, pieces: Vec<Piece>) {
        let mut rest = pieces.into_iter().peekable();
        let pen = Some(Pen::solid(0.6, Ink::Berry));
        while rest.peek().is_some() {
            let room = self.room() - gap - 2.0 * PADDING;
            let mut inner = Piece::blank(self.wide - 2.0 * PADDING, 0.0);
            while let Some(piece) =
                rest.next_if(|piece| inner.h == 0.0 || inner.h + 0.5 + piece.h <= room)
            {
                inner = inner.then(0.5, piece);
            }
            let inner = inner.grouped(Group::Section);
            self.put(gap, inner.framed(PADDING, Some(Ink::Blush), pen));
            if rest.peek().is_some() {
                self.turn();
            }
        }
    }

    /// The pages with their heads; None: there are more than so many, or something is too high.
    pub(super) fn finish(mut self, most: usize) -> Option<Vec<Piece>> {
        if self.fresh() && self.pages.len() > 1 {
            self.pages.pop();
        }
        if self.too_high || self.pages.len() > most {
            return None;
        }
        let pages = std::mem::take(&mut self.pages).into_iter().enumerate();
        Some(
            pages
                .map(|(at, leaf)| if at == 0 { leaf.piece } else { self.headed(leaf) })
                .collect(),
        )
    }

    fn headed(&self, leaf: Leaf) -> Piece {
        let t = self.setting.t();
        let style = Style::SMALL_STRONG.inked(Ink::Hedge);
        let mut head = Piece::blank(self.wide, 0.0);
        if let Some((first, last)) = leaf.asks {
            let words = match first == last {
                true => t.with("sheet-pocket-question", &[("number", &first)]),
                false => {
                    t.with("sheet-pocket-questions", &[("first", &first), ("last", &last)])
                }
            };
            let room = self.wide - self.badge.as_ref().map_or(0.0, |badge| badge.w + 2.0);
            head = head.with(0.0, 0.0, self.setting.heading(2, &words, style, room));
        }
        if let Some(badge) = &self.badge {
            head = head.with(self.wide - badge.w, -0.6, badge.clone());
        }
        head.with(0.0, 0.0, leaf.piece)
    }
}

/// How the key stands, smaller than on its cover.
fn badge(setting: &Setting, words: &str) -> Piece {
    let text = Piece::text(setting.block(words, Style::SMALL, 60.0), Role::Running);
    let frame = Some(Pen::solid(0.5, Ink::Ink));
    let frame = Piece::rectangle(text.w + 3.0, text.h + 0.4, Some(Ink::Paper), frame);
    frame.with(1.5, 0.2, text)
}
