//! An album: a place for each kind, as large as its largest leaf, to stick or draw one into.
//!
//! From a booklet to pages of places, the tallest first, so that little paper is wasted. A leaf
//! that is longer than the paper with its stalk has a place for its blade; one whose blade is, a
//! place as long as the paper. A kind that nobody measured has a place of the usual size. What is
//! left of a page are places for newcomers.

use spinney_model::TaxonIx;

use crate::places::{self, Whole};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper};

/// The place of a kind that nobody measured, in mm: a leaf's tip and edge, or a small rubbing.
const USUAL: (f64, f64) = (56.0, 56.0);
/// Height of a name beneath its place, in mm.
const NAME: f64 = 8.0;
/// Between two places, beside and beneath each other, in mm.
const APART: f64 = 5.0;
/// The lowest place for a newcomer, in mm.
const LOWEST: f64 = 40.0;

/// Whether there is anything to stick in: leaves, of some kinds.
pub fn has_something(booklet: &Booklet) -> bool {
    !booklet.matrix.taxa().is_empty()
        && spinney_voice::wording::speaks_of_leaves(booklet.matrix)
}

/// The album as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-album", &[("title", &setting.title())]);
    setting.sheet(title, pages(&setting, paper))
}

/// A place and whose it is; None: a newcomer's.
#[derive(Clone, Copy)]
struct Place {
    kind: Option<TaxonIx>,
    w: f64,
    h: f64,
}

/// Places beside each other.
struct Shelf {
    page: usize,
    y: f64,
    h: f64,
    /// What is taken of the width.
    used: f64,
    places: Vec<Place>,
}

fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-album", OUR_GROUP);
    let head = setting.masthead(&frame, &setting.say("sheet-album"), true);
    let about = match setting.booklet.sizes.places {
        Some(wished) => {
            let cm = format!("{:.1}", f64::from(wished.mm()) / 10.0);
            let cm = setting.t().decimal(cm.trim_end_matches(".0"));
            setting.t().with("sheet-album-about-wished", &[("cm", &cm)])
        }
        None => setting.say("sheet-album-about"),
    };
    let mut places = places_of(setting, &frame);
    let about = setting.text(&about, Style::SMALL, frame.wide());
    let mut head = head.then(3.0, about);
    let sizes: Vec<_> =
        places.iter().filter_map(|place| Some((place.kind?, (place.w, place.h)))).collect();
    let too_large = places::too_large(setting, sizes.iter().map(|(kind, size)| (*kind, size)));
    if let Some(words) = places::told_too_large(setting, &too_large) {
        head = head.then(1.0, setting.text(&words, Style::SMALL, frame.wide()));
    }
    let head = head.then(1.0, setting.to_mind(frame.wide()));
    let mut shelves = Shelves { frame: &frame, head: head.h + 5.0, shelves: Vec::new() };
    places.sort_by(|one, other| other.h.total_cmp(&one.h));
    places.into_iter().for_each(|place| shelves.put(place));
    shelves.fill();
    let of = shelves.shelves.iter().map(|shelf| shelf.page + 1).max().unwrap_or(1);
    let page = |at: usize| {
        let mut nodes = Vec::new();
        if at == 0 {
            nodes.extend(head.clone().moved(MARGIN, MARGIN).nodes);
        }
        for shelf in shelves.shelves.iter().filter(|shelf| shelf.page == at) {
            nodes.extend(set(setting, shelf, frame.wide()).moved(MARGIN, shelf.y).nodes);
        }
        frame.page(&setting.faces, nodes, at, of)
    };
    (0..of).map(page).collect()
}

/// A place for every kind, none larger than the paper.
fn places_of(setting: &Setting, frame: &Frame) -> Vec<Place> {
    let deep = frame.bottom() - frame.top(1) - NAME;
    let whole = places::of_kinds(setting, Whole::Leaf);
    let blades = places::of_kinds(setting, Whole::Blade);
    let wished = setting.booklet.sizes.places.is_some();
    let of = |kind: TaxonIx| {
        let whole = whole.get(&kind).filter(|(_, h)| *h <= deep);
        let (w, h) = whole.or(blades.get(&kind)).copied().unwrap_or(USUAL);
        // All are alike then: a leaf on its side saves a page, and sticks as well.
        let turned = wished && on_a_page(frame, (h, w)) > on_a_page(frame, (w, h));
        let (w, h) = if turned { (h, w) } else { (w, h) };
        Place { kind: Some(kind), w: w.min(frame.wide()), h: h.min(deep) }
    };
    setting.booklet.matrix.taxon_indices().map(of).collect()
}

/// How many places of one size have room on a page without its head.
fn on_a_page(frame: &Frame, (w, h): (f64, f64)) -> usize {
    let many =
        |room: f64, each: f64| ((room + APART) / (each + APART)).floor().max(0.0) as usize;
    many(frame.wide(), w) * many(frame.bottom() - frame.top(1), h + NAME)
}

struct Shelves<'f> {
    frame: &'f Frame,
    /// What stands on top of the first page, in mm.
    head: f64,
    shelves: Vec<Shelf>,
}

impl Shelves<'_> {
    fn top(&self, page: usize) -> f64 {
        self.frame.top(page) + if page == 0 { self.head } else { 0.0 }
    }

    /// Where the next shelf of a page begins.
    fn free(&self, page: usize) -> f64 {
        let on = self.shelves.iter().filter(|shelf| shelf.page == page);
        let feet = on.map(|shelf| shelf.y + shelf.h + NAME + APART);
        feet.fold(self.top(page), f64::max)
    }

    /// Onto the first shelf that has room, else a new one on the first page that has.
    fn put(&mut self, place: Place) {
        let wide = self.frame.wide();
        let fits = |shelf: &&mut Shelf| {
            shelf.h >= place.h && shelf.used + APART + place.w <= wide + 0.01
        };
        if let Some(shelf) = self.shelves.iter_mut().find(fits) {
            shelf.used += APART + place.w;
            shelf.places.push(place);
            return;
        }
        let mut page = 0;
        while self.free(page) + place.h + NAME > self.frame.bottom() + 0.01
            && self.free(page) > self.top(page)
            || page == 0 && self.top(0) + place.h + NAME > self.frame.bottom() + 0.01
        {
            page += 1;
        }
        let y = self.free(page);
        self.shelves.push(Shelf { page, y, h: place.h, used: place.w, places: vec![place] });
    }

    /// Places for newcomers where much of a shelf or of a page is left.
    fn fill(&mut self) {
        let wide = self.frame.wide();
        for shelf in &mut self.shelves {
            let w = (wide - shelf.used - APART).min(shelf.h.max(USUAL.0));
            if w >= USUAL.0 {
                shelf.used += APART + w;
                shelf.places.push(Place { kind: None, w, h: shelf.h.min(w.max(USUAL.1)) });
            }
        }
        let pages = self.shelves.iter().map(|shelf| shelf.page + 1).max().unwrap_or(1);
        for page in 0..pages {
            loop {
                let y = self.free(page);
                let left = self.frame.bottom() - y - NAME;
                if left < LOWEST {
                    break;
                }
                let h = if left < 2.0 * USUAL.1 { left.min(USUAL.1 * 1.4) } else { USUAL.1 };
                let w = (wide - 2.0 * APART) / 3.0;
                let place = Place { kind: None, w, h };
                self.shelves.push(Shelf { page, y, h, used: wide, places: vec![place; 3] });
            }
        }
    }
}

/// A shelf, its places spread over the width, each with its name beneath.
fn set(setting: &Setting, shelf: &Shelf, wide: f64) -> Piece {
    let taken: f64 = shelf.places.iter().map(|place| place.w).sum();
    let gaps = (shelf.places.len() - 1).max(1) as f64;
    let gap = ((wide - taken) / gaps).clamp(0.0, 20.0);
    let mut x = 0.0;
    let mut piece = Piece::blank(wide, shelf.h + NAME);
    for place in &shelf.places {
        piece = piece.with(x, 0.0, place_for(setting, place));
        x += place.w + gap;
    }
    piece
}

fn place_for(setting: &Setting, place: &Place) -> Piece {
    let empty = setting.empty_box(place.w, place.h, &setting.say("sheet-stick-leaf"));
    let below = match place.kind {
        Some(kind) => {
            let block = setting.block(&setting.name(kind), Style::STRONG, place.w);
            Piece::text(block.at_most(&setting.faces, 1), Role::Heading(2))
        }
        None => Piece::blank(place.w, NAME).with(
            0.0,
            NAME - 1.5,
            Piece::rule(place.w, Pen::solid(0.2, Ink::Soft)),
        ),
    };
    empty.with(0.0, place.h + 0.6, below).grouped(Group::Section)
}
