//! The marks that several sheets share: picture boxes, tabs, numbers.
//!
//! From a kind, an answer or a number to a small piece. A mark never says by colour alone what
//! it says: yes is a leaf with the word in it, no a square with the word in it.

use spinney_model::{Couplet, Drawing, TaxonIx};

use super::Setting;
use crate::picture::NoPicture;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::picture::Pixels;
use crate::sheet::{Group, Path, Piece, Role, Segment};
use crate::{drawing, lines, places};

/// A tab, width and height in mm.
const TAB: (f64, f64) = (13.0, 7.0);
/// The line to hold a real ruler against, in mm: printers shrink.
const CHECK: f64 = 100.0;

impl Setting<'_> {
    /// Whether there is a picture of a kind that can be shown, or one of its leaves in lines.
    pub(crate) fn is_pictured(&self, taxon: TaxonIx) -> bool {
        let file = self.booklet.matrix.taxa().get(taxon.0).and_then(|it| it.picture.as_deref());
        match file {
            Some(file) => self.pictures.get(file).is_some_and(Result::is_ok),
            None => matches!(self.booklet.drawn.of_kind(taxon), Some((_, true))),
        }
    }

    /// The picture of a kind, else one of its leaves in lines where somebody chose that, else the box
    /// to stick something into.
    pub(crate) fn picture_box(&self, taxon: Option<TaxonIx>, w: f64, h: f64) -> Piece {
        let known = taxon.and_then(|ix| Some((ix, self.booklet.matrix.taxa().get(ix.0)?)));
        let opened = known
            .and_then(|(ix, taxon)| Some((ix, self.pictures.get(taxon.picture.as_deref()?)?)));
        let in_lines =
            || taxon.and_then(|ix| Some((ix, self.drawn_in(ix, (w - 4.0, h - 4.0))?)));
        if let (None, Some((ix, (drawing, true, high)))) = (&opened, in_lines()) {
            let words = self.t().with("sheet-drawing-of-leaf", &[("kind", &self.name(ix))]);
            let lines = in_the_middle(lines::piece(drawing, high, words), (w - 4.0, h - 4.0));
            return framed(lines, (w, h));
        }
        match opened {
            Some((ix, Ok(pixels))) => {
                let words = self.t().with("sheet-picture-of", &[("kind", &self.name(ix))]);
                self.framed_picture(pixels, words, (w, h))
            }
            Some((_, Err(NoPicture::NotRead))) => {
                self.empty_box(w, h, &self.say("sheet-picture-not-read"))
            }
            Some((_, Err(NoPicture::TooLarge))) => {
                self.empty_box(w, h, &self.say("sheet-picture-too-large"))
            }
            None if self.speaks_of_leaves() && self.has_room(taxon, (w, h)) => {
                self.empty_box(w, h, &self.say("sheet-stick-leaf"))
            }
            None => self.empty_box(w, h, &self.say("sheet-draw-it")),
        }
    }

    /// How a kind looks: its picture, else what the table says of it as a drawing, else the box to
    /// stick something into.
    pub(crate) fn likeness(&self, taxon: Option<TaxonIx>, (w, h): (f64, f64)) -> Piece {
        match taxon.and_then(|ix| Some((ix, self.drawn_in(ix, (w, h))?))) {
            Some((ix, (drawing, of_leaf, high))) => {
                let what = if of_leaf { "sheet-drawing-of-leaf" } else { "sheet-drawing-of" };
                let words = self.t().with(what, &[("kind", &self.name(ix))]);
                in_the_middle(lines::piece(drawing, high, words), (w, h))
            }
            None => self.picture_box(taxon, w, h),
        }
    }

    /// The same for eyes that are to find out what it is: nothing names it. `drawn`: whether the
    /// drawing may be shown.
    pub(crate) fn unnamed_likeness(
        &self,
        taxon: Option<TaxonIx>,
        drawn: bool,
        (w, h): (f64, f64),
    ) -> Piece {
        let drawing = taxon.filter(|_| drawn).and_then(|ix| self.drawn_in(ix, (w, h)));
        let pixels = taxon.and_then(|ix| self.pixels(ix));
        match (pixels, drawing) {
            (Some(pixels), _) => {
                let words = self.say("sheet-picture-unnamed");
                self.framed_picture(pixels, words, (w, h))
            }
            (None, Some((drawing, of_leaf, high))) => {
                let words = self.say(match of_leaf {
                    true => "sheet-drawing-of-leaf-unnamed",
                    false => "sheet-drawing-unnamed",
                });
                in_the_middle(lines::piece(drawing, high, words), (w, h))
            }
            (None, None) => self.picture_box(None, w, h),
        }
    }

    /// The drawing of a kind without a picture, whether it is that of one of its leaves, and how high it
    /// may be in a box.
    fn drawn_in(&self, taxon: TaxonIx, (w, h): (f64, f64)) -> Option<(&Drawing, bool, f64)> {
        let pictured = self.booklet.matrix.taxa().get(taxon.0)?.picture.is_some();
        let (drawing, of_leaf) = self.booklet.drawn.of_kind(taxon).filter(|_| !pictured)?;
        let [_, _, wide, high] = drawing.frame;
        Some((drawing, of_leaf, h.min(w * high / wide)))
    }

    /// The opened picture of a kind.
    fn pixels(&self, taxon: TaxonIx) -> Option<&Pixels> {
        let file = self.booklet.matrix.taxa().get(taxon.0)?.picture.as_deref()?;
        self.pictures.get(file)?.as_ref().ok()
    }

    fn framed_picture(&self, pixels: &Pixels, words: String, (w, h): (f64, f64)) -> Piece {
        framed(Piece::picture(w - 4.0, h - 4.0, pixels.clone(), words), (w, h))
    }

    /// Whether the largest leaf of a kind has room in a box, upright or on its side; one that nobody
    /// measured may have.
    fn has_room(&self, taxon: Option<TaxonIx>, (w, h): (f64, f64)) -> bool {
        let size = taxon.and_then(|ix| self.leaves().get(ix.0).copied().flatten());
        size.is_none_or(|size| {
            let (across, long) = places::bare(size);
            let (w, h) = (self.on_paper(w), self.on_paper(h));
            (across <= w && long <= h) || (long <= w && across <= h)
        })
    }

    /// A box with corners as in an album, and what belongs there.
    pub(crate) fn empty_box(&self, w: f64, h: f64, words: &str) -> Piece {
        let room = w - 6.0;
        let corners = drawing::album_corners(w, h);
        let shorter = match self.speaks_of_leaves() && words != self.say("sheet-draw-it") {
            true => self.say("sheet-stick-it"),
            false => self.say("sheet-draw-it"),
        };
        for words in [words, &shorter] {
            let block = self.caption(words, Style::SMALL.inked(Ink::Soft), room).centred(room);
            if block.height + 3.0 <= h {
                let y = (h - block.height) / 2.0;
                return corners.with(3.0, y, Piece::text(block, Role::Caption));
            }
        }
        corners
    }

    /// What is done, step by step: messages with numbers before them.
    pub(crate) fn steps(&self, messages: &[&str], wide: f64) -> Piece {
        let steps = messages.iter().enumerate();
        let list = steps.fold(Piece::blank(wide, 0.0), |list, (at, step)| {
            let number = self.block(&(at + 1).to_string(), Style::SMALL_STRONG, 6.0);
            let words = self.text(&self.say(step), Style::SMALL, wide - 6.0);
            let item =
                Piece::text(number, Role::Label).with(6.0, 0.0, words.grouped(Group::Body));
            list.then(0.6, item.grouped(Group::Item))
        });
        list.grouped(Group::List)
    }

    /// A line to hold a real ruler against: exactly [`CHECK`] between two ends.
    pub(crate) fn check_line(&self) -> Piece {
        let (end, high) = (3.0, 6.0);
        let segments = vec![
            Segment::Move(0.0, 0.0),
            Segment::Line(0.0, high),
            Segment::Move(0.0, end),
            Segment::Line(CHECK, end),
            Segment::Move(CHECK, 0.0),
            Segment::Line(CHECK, high),
        ];
        let path = Path { segments, fill: None, pen: Some(Pen::solid(0.3, Ink::Ink)) };
        let words = self.say("sheet-ruler-check-line");
        let line = Piece::path(CHECK, high, path, Role::Figure(words.clone()));
        let words = self.text(&words, Style::SMALL_STRONG, 60.0);
        let y = (high - words.h) / 2.0;
        line.with(CHECK + 4.0, y, words).grouped(Group::Section)
    }

    /// The tab of an answer with its word: a leaf for yes, a square for no.
    pub(crate) fn tab(&self, word: &str, yes: bool) -> Piece {
        self.answer(word, yes, Role::Label)
    }

    /// The same, heard as something else than the label of an item.
    pub(crate) fn answer(&self, word: &str, yes: bool, role: Role) -> Piece {
        self.scaled_answer(word, yes, role, 1.0)
    }

    /// The same, as much larger as the letters around it.
    pub(crate) fn scaled_answer(&self, word: &str, yes: bool, role: Role, scale: f64) -> Piece {
        self.answer_with(word, yes, role, (scale, 0.0))
    }

    /// The tab of an answer with its word in both languages: the tab, and what stands on it of
    /// the second, which belongs to what the answer leads to.
    pub(crate) fn tab_in_two(
        &self,
        couplet: &Couplet,
        yes: bool,
        word: &str,
        scale: f64,
    ) -> (Piece, Piece) {
        let Some(second) = self.second_answer(couplet, yes, scale) else {
            let tab = self.scaled_answer(word, yes, Role::Label, scale);
            return (tab, Piece::default());
        };
        let (more, h) = (second.w + 2.0 * scale, TAB.1 * scale);
        let tab = self.answer_with(word, yes, Role::Label, (scale, more));
        let (x, y) = (TAB.0 * scale, (h - second.h) / 2.0);
        (tab, Piece::default().with(x, y, second))
    }

    /// A tab so much wider than its word needs, in mm.
    fn answer_with(
        &self,
        word: &str,
        yes: bool,
        role: Role,
        (scale, more): (f64, f64),
    ) -> Piece {
        let (first, h) = (TAB.0 * scale, TAB.1 * scale);
        let w = first + more;
        let style = Style { size: Style::STRONG.size * scale, ..Style::STRONG };
        let (tab, ink) = if yes {
            (drawing::leaf_tab(w, h), Ink::Paper)
        } else {
            (drawing::square_tab(w, h), Ink::Ink)
        };
        let block = self.block(word, style.inked(ink), first).centred(first);
        let y = (h - block.height) / 2.0;
        tab.with(0.0, y, Piece::text(block, role)).at_least(w, h)
    }

    /// A number in a green disc.
    pub(crate) fn disc(&self, number: &str, role: Role) -> Piece {
        let mut block = self.block(number, Style::LARGE.inked(Ink::Paper), 30.0);
        if block.width + 3.0 > 9.0 {
            block = self.block(number, Style::STRONG.inked(Ink::Paper), 30.0);
        }
        let d = if block.width + 2.2 > 9.0 { block.width + 5.0 } else { 9.0 };
        let block = block.centred(d);
        let h = block.height;
        let ground = drawing::pill(d, 9.0);
        ground.with(0.0, (9.0 - h) / 2.0, Piece::text(block, role)).at_least(d, 9.0)
    }
}

/// What shows a kind, in the box with a thin edge that it has on every sheet.
fn framed(likeness: Piece, (w, h): (f64, f64)) -> Piece {
    let edge = Some(Pen::solid(0.25, Ink::Soft));
    Piece::rectangle(w, h, Some(Ink::Paper), edge).with(2.0, 2.0, likeness)
}

/// A piece in the middle of a box.
fn in_the_middle(piece: Piece, (w, h): (f64, f64)) -> Piece {
    let (x, y) = ((w - piece.w) / 2.0, (h - piece.h) / 2.0);
    Piece::blank(w, h).with(x, y, piece)
}
