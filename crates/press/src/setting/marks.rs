//! The marks that several sheets share: picture boxes, tabs, numbers.
//!
//! From a kind, an answer or a number to a small piece. A mark never says by colour alone what
//! it says: yes is a leaf with the word in it, no a square with the word in it.

use spinney_model::TaxonIx;

use super::Setting;
use crate::drawing;
use crate::picture::NoPicture;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Piece, Role};

impl Setting<'_> {
    /// The picture of a kind, or the box to stick something into.
    pub(crate) fn picture_box(&self, taxon: Option<TaxonIx>, w: f64, h: f64) -> Piece {
        let known = taxon.and_then(|ix| Some((ix, self.booklet.matrix.taxa().get(ix.0)?)));
        let opened = known
            .and_then(|(ix, taxon)| Some((ix, self.pictures.get(taxon.picture.as_deref()?)?)));
        match opened {
            Some((ix, Ok(pixels))) => {
                let words = self.t().with("sheet-picture-of", &[("kind", &self.name(ix))]);
                let picture = Piece::picture(w - 4.0, h - 4.0, pixels.clone(), words);
                let edge = Some(Pen::solid(0.25, Ink::Soft));
                Piece::rectangle(w, h, Some(Ink::Paper), edge).with(2.0, 2.0, picture)
            }
            Some((_, Err(NoPicture::NotRead))) => {
                self.empty_box(w, h, &self.say("sheet-picture-not-read"))
            }
            Some((_, Err(NoPicture::TooLarge))) => {
                self.empty_box(w, h, &self.say("sheet-picture-too-large"))
            }
            None if self.speaks_of_leaves() => {
                self.empty_box(w, h, &self.say("sheet-stick-leaf"))
            }
            None => self.empty_box(w, h, &self.say("sheet-draw-it")),
        }
    }

    /// A box with corners as in an album, and what belongs there.
    pub(crate) fn empty_box(&self, w: f64, h: f64, words: &str) -> Piece {
        let room = w - 6.0;
        let corners = drawing::album_corners(w, h);
        let shorter = match self.speaks_of_leaves() {
            true => self.say("sheet-stick-it"),
            false => self.say("sheet-draw-it"),
        };
        for words in [words, &shorter] {
            let block = self.block(words, Style::SMALL.inked(Ink::Soft), room).centred(room);
            if block.height + 3.0 <= h {
                let y = (h - block.height) / 2.0;
                return corners.with(3.0, y, Piece::text(block, Role::Paragraph));
            }
        }
        corners
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
        let (w, h) = (13.0 * scale, 7.0 * scale);
        let style = Style { size: Style::STRONG.size * scale, ..Style::STRONG };
        let (tab, ink) = if yes {
            (drawing::leaf_tab(w, h), Ink::Paper)
        } else {
            (drawing::square_tab(w, h), Ink::Ink)
        };
        let block = self.block(word, style.inked(ink), w).centred(w);
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
