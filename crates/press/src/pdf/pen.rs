//! One placed thing onto a page: letters, lines, pictures.

use std::sync::Arc;

use krilla::color::rgb;
use krilla::geom::{PathBuilder, Point, Size, Transform};
use krilla::image::Image;
use krilla::num::NormalizedF32;
use krilla::paint::{Fill, FillRule, LineCap, LineJoin, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::text::{GlyphId, KrillaGlyph};

use super::{Fonts, PT};
use crate::sheet::face::{Faces, OutlinePen, Weight};
use crate::sheet::ink::{Dash, Ink, Pen};
use crate::sheet::picture::{Packed, Pixels};
use crate::sheet::text::Line;
use crate::sheet::{Path, Rect, Segment};

fn colour(ink: Ink) -> rgb::Color {
    let (r, g, b) = ink.rgb();
    rgb::Color::new(r, g, b)
}

fn fill(ink: Ink) -> Option<Fill> {
    let opacity = NormalizedF32::ONE;
    Some(Fill { paint: colour(ink).into(), opacity, rule: Default::default() })
}

fn stroke(pen: Pen) -> Option<Stroke> {
    let width = pen.width.max(Pen::THINNEST) * PT;
    let dash = match pen.dash {
        Dash::Solid => None,
        Dash::Dashed => Some(vec![2.0 * PT, 1.4 * PT]),
        Dash::Dotted => Some(vec![0.0, 1.4 * PT]),
    };
    let dash = dash.map(|lengths| StrokeDash {
        array: lengths.into_iter().map(|length| length as f32).collect(),
        offset: 0.0,
    });
    Some(Stroke {
        paint: colour(pen.ink).into(),
        width: width as f32,
        line_cap: if pen.dash == Dash::Dashed { LineCap::Butt } else { LineCap::Round },
        line_join: LineJoin::Round,
        dash,
        ..Stroke::default()
    })
}

/// Draws one line of words.
pub(super) fn line(surface: &mut Surface, line: &Line, at: Rect, fonts: &Fonts) {
    surface.set_stroke(None);
    for part in &line.parts {
        let glyphs: Vec<_> = part
            .glyphs
            .iter()
            .map(|glyph| {
                let range = glyph.from..glyph.to;
                let id = GlyphId::new(u32::from(glyph.id));
                let (dx, dy) = (glyph.dx as f32, glyph.dy as f32);
                KrillaGlyph::new(id, glyph.advance as f32, dx, dy, 0.0, range, None)
            })
            .collect();
        let font = match part.style.weight {
            Weight::Regular => fonts.regular.clone(),
            Weight::Bold => fonts.bold.clone(),
        };
        let (x, y) = ((at.x + part.x) * PT, (at.y + line.baseline) * PT);
        let start = Point::from_xy(x as f32, y as f32);
        surface.set_fill(fill(part.style.ink));
        let size = part.style.size as f32;
        surface.draw_glyphs(start, &glyphs, font, &part.text, size, false);
    }
}

/// Draws one line of words as far as a box shows them: as words where all of it is shown, else as
/// shapes, so that no reader finds what lies beyond the edge.
pub(super) fn cut_line(
    surface: &mut Surface,
    words: &Line,
    at: Rect,
    fonts: &Fonts,
    seen: Rect,
) {
    if covered(words, at).is_some_and(|covered| covered.lies_in(&seen)) {
        line(surface, words, at, fonts);
    } else {
        shapes(surface, words, at, fonts, seen);
    }
}

/// The paper that a line of words covers; no letter reaches higher than one and a half times its
/// size above its line, and lower than half of it.
fn covered(line: &Line, at: Rect) -> Option<Rect> {
    let size = line.parts.iter().map(|part| part.style.size / PT).reduce(f64::max)?;
    let (first, last) = (line.parts.first()?, line.parts.last()?);
    let wide: f64 = last.glyphs.iter().map(|glyph| glyph.advance * last.style.size / PT).sum();
    let y = at.y + line.baseline - 1.5 * size;
    Some(Rect::new(at.x + first.x, y, last.x + wide - first.x, 2.0 * size))
}

/// Draws one line of words as shapes that no reader finds, as far as a box shows them.
pub(super) fn shapes(surface: &mut Surface, line: &Line, at: Rect, fonts: &Fonts, seen: Rect) {
    let faces = fonts.faces.get_or_init(Faces::new);
    surface.set_stroke(None);
    for part in &line.parts {
        let size = part.style.size / PT;
        let scale = size / faces.units(part.style.weight);
        let (mut x, y) = (at.x + part.x, at.y + line.baseline);
        let mut outline =
            Outline { builder: PathBuilder::new(), scale, at: (x, y), last: (0.0, 0.0) };
        for glyph in &part.glyphs {
            // A letter is at most twice its size wide, and reaches as far below its line.
            let covered = Rect::new(x - size, y - 2.0 * size, 3.0 * size, 4.0 * size);
            if covered.overlaps(&seen) {
                outline.at = (x + glyph.dx * size, y - glyph.dy * size);
                faces.outline(glyph.id, part.style.weight, &mut outline);
            }
            x += glyph.advance * size;
        }
        if let Some(drawn) = outline.builder.finish() {
            surface.set_fill(fill(part.style.ink));
            surface.draw_path(&drawn);
        }
    }
}

/// The outline of letters on the page; their curves have one guide, those of the page two.
struct Outline {
    builder: PathBuilder,
    /// A unit of the letters, in mm.
    scale: f64,
    /// Where the letter stands, in mm.
    at: (f64, f64),
    last: (f64, f64),
}

impl Outline {
    fn place(&self, x: f32, y: f32) -> (f64, f64) {
        (self.at.0 + f64::from(x) * self.scale, self.at.1 - f64::from(y) * self.scale)
    }

    fn curve(&mut self, first: (f64, f64), second: (f64, f64), to: (f64, f64)) {
        let [a, b, c, d, e, f] =
            [first.0, first.1, second.0, second.1, to.0, to.1].map(hundredths);
        self.builder.cubic_to(a, b, c, d, e, f);
        self.last = to;
    }
}

impl OutlinePen for Outline {
    fn move_to(&mut self, x: f32, y: f32) {
        self.last = self.place(x, y);
        self.builder.move_to(hundredths(self.last.0), hundredths(self.last.1));
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.last = self.place(x, y);
        self.builder.line_to(hundredths(self.last.0), hundredths(self.last.1));
    }

    fn quad_to(&mut self, a: f32, b: f32, x: f32, y: f32) {
        let (guide, to, from) = (self.place(a, b), self.place(x, y), self.last);
        let towards = |end: (f64, f64)| {
            (end.0 + (guide.0 - end.0) * 2.0 / 3.0, end.1 + (guide.1 - end.1) * 2.0 / 3.0)
        };
        self.curve(towards(from), towards(to), to);
    }

    fn curve_to(&mut self, a: f32, b: f32, c: f32, d: f32, x: f32, y: f32) {
        self.curve(self.place(a, b), self.place(c, d), self.place(x, y));
    }

    fn close(&mut self) {
        self.builder.close();
    }
}

/// A length in points, to a hundredth: four thousandths of a millimetre, less than any printer
/// can do, and half the bytes.
fn hundredths(mm: f64) -> f32 {
    ((mm * PT * 100.0).round() / 100.0) as f32
}

/// Nothing outside of a box is drawn from here on, until it is popped; false: there is no box.
pub(super) fn window(surface: &mut Surface, rect: Rect) -> bool {
    let mut builder = PathBuilder::new();
    let (left, top) = ((rect.x * PT) as f32, (rect.y * PT) as f32);
    let (right, foot) = (((rect.x + rect.w) * PT) as f32, ((rect.y + rect.h) * PT) as f32);
    builder.move_to(left, top);
    builder.line_to(right, top);
    builder.line_to(right, foot);
    builder.line_to(left, foot);
    builder.close();
    let Some(path) = builder.finish() else { return false };
    surface.push_clip_path(&path, &FillRule::default());
    true
}

/// Everything is turned half round about the middle of a box from here on, until it is popped.
pub(super) fn on_its_head(surface: &mut Surface, rect: Rect) {
    let (x, y) = ((2.0 * rect.x + rect.w) * PT, (2.0 * rect.y + rect.h) * PT);
    surface.push_transform(&Transform::from_row(-1.0, 0.0, 0.0, -1.0, x as f32, y as f32));
}

/// Draws a line or shape.
pub(super) fn path(surface: &mut Surface, path: &Path, at: Rect) {
    let mut builder = PathBuilder::new();
    let x = |x: f64| hundredths(at.x + x);
    let y = |y: f64| hundredths(at.y + y);
    for segment in &path.segments {
        match *segment {
            Segment::Move(a, b) => builder.move_to(x(a), y(b)),
            Segment::Line(a, b) => builder.line_to(x(a), y(b)),
            Segment::Curve(a, b, c, d, e, f) => {
                builder.cubic_to(x(a), y(b), x(c), y(d), x(e), y(f));
            }
            Segment::Close => builder.close(),
        }
    }
    if let Some(drawn) = builder.finish() {
        surface.set_fill(path.fill.and_then(fill));
        surface.set_stroke(path.pen.and_then(stroke));
        surface.draw_path(&drawn);
    }
}

/// Draws a picture into its box.
pub(super) fn picture(surface: &mut Surface, pixels: &Pixels, at: Rect) {
    let image = match &pixels.packed {
        Packed::Rgb(bytes) => {
            Some(Image::from_rgba8(opaque(bytes), pixels.width, pixels.height))
        }
        Packed::Jpeg(bytes) => {
            let data: Arc<dyn AsRef<[u8]> + Send + Sync> = Arc::new(Arc::clone(bytes));
            Image::from_jpeg(data.into(), false).ok()
        }
    };
    let size = Size::from_wh((at.w * PT) as f32, (at.h * PT) as f32);
    if let (Some(image), Some(size)) = (image, size) {
        let corner = Transform::from_translate((at.x * PT) as f32, (at.y * PT) as f32);
        surface.push_transform(&corner);
        surface.draw_image(image, size);
        surface.pop();
    }
}

fn opaque(rgb: &[u8]) -> Vec<u8> {
    rgb.chunks_exact(3).flat_map(|pixel| [pixel[0], pixel[1], pixel[2], 255]).collect()
}
