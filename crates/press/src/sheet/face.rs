//! The typeface: letters to glyphs with widths.
//!
//! From a text to the glyphs of Andika (SIL, OFL 1.1), embedded unaltered: the two faces in
//! `fonts/`. No system font is ever asked. Only left-to-right scripts are in Andika; what it
//! lacks has been made visible by [`super::legible`] before it comes here.

use std::cell::RefCell;
use std::collections::HashMap;

use harfrust::{Direction, Script, ShapeOptions, ShapePlan, ShaperData, UnicodeBuffer};
pub use skrifa::outline::OutlinePen;
use skrifa::outline::{DrawSettings, OutlineGlyphCollection};
use skrifa::prelude::{LocationRef, Size};
use skrifa::raw::TableProvider;
use skrifa::{FontRef, GlyphId, MetadataProvider};

/// The unaltered font files, as the press embeds them.
pub const REGULAR: &[u8] = include_bytes!("../../fonts/Andika-Regular.ttf");
/// The bold face.
pub const BOLD: &[u8] = include_bytes!("../../fonts/Andika-Bold.ttf");

/// Regular or bold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    /// Andika Regular.
    Regular,
    /// Andika Bold.
    Bold,
}

/// Both faces, opened once. Which letters they have, plans, and the glyphs of what was shaped
/// last are remembered: looking these up in the tables of a face is what takes time.
pub struct Faces {
    regular: Face,
    bold: Face,
    has: RefCell<HashMap<char, bool>>,
    plans: RefCell<Vec<(Weight, Script, ShapePlan)>>,
    /// By weight: regular, bold.
    widths: [RefCell<HashMap<String, f64>>; 2],
    shaped: [RefCell<HashMap<String, Vec<Glyph>>>; 2],
}

/// One face, its tables found.
struct Face {
    font: FontRef<'static>,
    tables: ShaperData,
    outlines: OutlineGlyphCollection<'static>,
    /// Units of the letter size.
    em: f64,
}

impl Face {
    fn open(bytes: &'static [u8]) -> Self {
        let font = FontRef::new(bytes).expect("the embedded face opens");
        let em = font.head().expect("the embedded face has its table").units_per_em();
        let tables = ShaperData::new(&font);
        Self { tables, outlines: font.outline_glyphs(), em: f64::from(em), font }
    }

    fn has(&self, character: char) -> bool {
        self.font.charmap().map(character).is_some_and(|glyph| glyph != GlyphId::NOTDEF)
    }
}

/// So many texts are remembered with their glyphs, about 20 MB of them; then all are forgotten.
const MOST_SHAPED: usize = 8_000;
/// So many widths are remembered, some 10 MB of them.
const MOST_WIDTHS: usize = 100_000;

/// One glyph; lengths as parts of the letter size.
#[derive(Clone, Debug, PartialEq)]
pub struct Glyph {
    /// The number of the glyph in its face.
    pub id: u16,
    /// Where its letters begin in the text, in bytes.
    pub from: usize,
    /// Where they end.
    pub to: usize,
    /// How far the next glyph is.
    pub advance: f64,
    /// How far this one is moved to the right.
    pub dx: f64,
    /// How far this one is moved up.
    pub dy: f64,
}

impl Faces {
    /// Opens the embedded faces.
    pub fn new() -> Self {
        Self {
            regular: Face::open(REGULAR),
            bold: Face::open(BOLD),
            has: RefCell::default(),
            plans: RefCell::default(),
            widths: Default::default(),
            shaped: Default::default(),
        }
    }

    fn face(&self, weight: Weight) -> &Face {
        match weight {
            Weight::Regular => &self.regular,
            Weight::Bold => &self.bold,
        }
    }

    /// Whether both faces can draw a character.
    pub fn has(&self, character: char) -> bool {
        let looked_up = || self.regular.has(character) && self.bold.has(character);
        *self.has.borrow_mut().entry(character).or_insert_with(looked_up)
    }

    /// Units of the letter size in which outlines are drawn.
    pub fn units(&self, weight: Weight) -> f64 {
        self.face(weight).em
    }

    /// The outline of a glyph, drawn by a pen in units of the letter size, y growing upwards.
    pub fn outline(&self, glyph: u16, weight: Weight, pen: &mut impl OutlinePen) {
        // A glyph without an outline is a space.
        let Some(outline) = self.face(weight).outlines.get(GlyphId::from(glyph)) else {
            return;
        };
        let as_drawn = DrawSettings::unhinted(Size::unscaled(), LocationRef::default());
        let _ = outline.draw(as_drawn, pen);
    }

    /// The glyphs of a text, from left to right.
    pub fn shape(&self, text: &str, weight: Weight) -> Vec<Glyph> {
        let shaped = &self.shaped[usize::from(weight == Weight::Bold)];
        if let Some(glyphs) = shaped.borrow().get(text) {
            return glyphs.clone();
        }
        let glyphs = self.shaped_now(text, weight);
        let mut shaped = shaped.borrow_mut();
        if shaped.len() >= MOST_SHAPED {
            shaped.clear();
        }
        shaped.insert(text.to_owned(), glyphs.clone());
        glyphs
    }

    fn shaped_now(&self, text: &str, weight: Weight) -> Vec<Glyph> {
        let face = self.face(weight);
        let shaper = face.tables.shaper(&face.font).build();
        let mut buffer = UnicodeBuffer::new();
        buffer.push_str(text);
        buffer.guess_segment_properties();
        buffer.set_direction(Direction::LeftToRight);
        let script = buffer.script();
        let mut plans = self.plans.borrow_mut();
        let known = plans.iter().position(|(w, s, _)| *w == weight && *s == script);
        let at = known.unwrap_or_else(|| {
            let plan = ShapePlan::new(&shaper, Direction::LeftToRight, Some(script), None, &[]);
            plans.push((weight, script, plan));
            plans.len() - 1
        });
        let options = ShapeOptions::new().plan(Some(&plans[at].2));
        let shaped = shaper.shape(buffer, options);
        let (infos, places) = (shaped.glyph_infos(), shaped.glyph_positions());
        let mut glyphs = Vec::with_capacity(infos.len());
        for (at, (info, place)) in infos.iter().zip(places).enumerate() {
            let from = info.cluster as usize;
            let next = infos[at..].iter().map(|i| i.cluster as usize).find(|c| *c > from);
            glyphs.push(Glyph {
                id: u16::try_from(info.glyph_id).unwrap_or(0),
                from,
                to: next.unwrap_or(text.len()),
                advance: f64::from(place.x_advance) / face.em,
                dx: f64::from(place.x_offset) / face.em,
                dy: f64::from(place.y_offset) / face.em,
            });
        }
        glyphs
    }

    /// The width of a text, as parts of the letter size.
    pub fn width(&self, text: &str, weight: Weight) -> f64 {
        let widths = &self.widths[usize::from(weight == Weight::Bold)];
        if let Some(width) = widths.borrow().get(text) {
            return *width;
        }
        let width = self.shaped_now(text, weight).iter().map(|glyph| glyph.advance).sum();
        let mut widths = widths.borrow_mut();
        if widths.len() >= MOST_WIDTHS {
            widths.clear();
        }
        widths.insert(text.to_owned(), width);
        width
    }
}

impl Default for Faces {
    fn default() -> Self {
        Self::new()
    }
}
