//! The typeface: letters to glyphs with widths.
//!
//! From a text to the glyphs of Andika (SIL, OFL 1.1), embedded unaltered: the two faces in
//! `fonts/`. No system font is ever asked. Only left-to-right scripts are in Andika; what it
//! lacks has been made visible by [`super::legible`] before it comes here.

use std::cell::RefCell;
use std::collections::HashMap;

use rustybuzz::ttf_parser::GlyphId;
pub use rustybuzz::ttf_parser::OutlineBuilder;
use rustybuzz::{Direction, Face, Script, ShapePlan, UnicodeBuffer};

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
    regular: Face<'static>,
    bold: Face<'static>,
    has: RefCell<HashMap<char, bool>>,
    plans: RefCell<Vec<(Weight, Script, ShapePlan)>>,
    /// By weight: regular, bold.
    widths: [RefCell<HashMap<String, f64>>; 2],
    shaped: [RefCell<HashMap<String, Vec<Glyph>>>; 2],
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
        let open = |bytes| Face::from_slice(bytes, 0).expect("the embedded face opens");
        Self {
            regular: open(REGULAR),
            bold: open(BOLD),
            has: RefCell::default(),
            plans: RefCell::default(),
            widths: Default::default(),
            shaped: Default::default(),
        }
    }

    fn face(&self, weight: Weight) -> &Face<'static> {
        match weight {
            Weight::Regular => &self.regular,
            Weight::Bold => &self.bold,
        }
    }

    /// Whether both faces can draw a character.
    pub fn has(&self, character: char) -> bool {
        let looked_up = || {
            self.regular.glyph_index(character).is_some_and(|glyph| glyph.0 != 0)
                && self.bold.glyph_index(character).is_some_and(|glyph| glyph.0 != 0)
        };
        *self.has.borrow_mut().entry(character).or_insert_with(looked_up)
    }

    /// Units of the letter size in which outlines are drawn.
    pub fn units(&self, weight: Weight) -> f64 {
        f64::from(self.face(weight).units_per_em())
    }

    /// The outline of a glyph, drawn by a pen in units of the letter size, y growing upwards.
    pub fn outline(&self, glyph: u16, weight: Weight, pen: &mut dyn OutlineBuilder) {
        // A glyph without an outline is a space.
        let _ = self.face(weight).outline_glyph(GlyphId(glyph), pen);
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
        let em = f64::from(face.units_per_em());
        let mut buffer = UnicodeBuffer::new();
        buffer.push_str(text);
        buffer.guess_segment_properties();
        buffer.set_direction(Direction::LeftToRight);
        let script = buffer.script();
        let mut plans = self.plans.borrow_mut();
        let known = plans.iter().position(|(w, s, _)| *w == weight && *s == script);
        let at = known.unwrap_or_else(|| {
            let plan = ShapePlan::new(face, Direction::LeftToRight, Some(script), None, &[]);
            plans.push((weight, script, plan));
            plans.len() - 1
        });
        let shaped = rustybuzz::shape_with_plan(face, &plans[at].2, buffer);
        let (infos, places) = (shaped.glyph_infos(), shaped.glyph_positions());
        let mut glyphs = Vec::with_capacity(infos.len());
        for (at, (info, place)) in infos.iter().zip(places).enumerate() {
            let from = info.cluster as usize;
            let next = infos[at..].iter().map(|i| i.cluster as usize).find(|c| *c > from);
            glyphs.push(Glyph {
                id: u16::try_from(info.glyph_id).unwrap_or(0),
                from,
                to: next.unwrap_or(text.len()),
                advance: f64::from(place.x_advance) / em,
                dx: f64::from(place.x_offset) / em,
                dy: f64::from(place.y_offset) / em,
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
