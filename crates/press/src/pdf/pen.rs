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
use crate::sheet::face::Weight;
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

/// Draws one line of words; `outlined` letters are shapes that no reader finds.
pub(super) fn line(
    surface: &mut Surface,
    line: &Line,
    at: Rect,
    fonts: &Fonts,
    outlined: bool,
) {
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
        surface.draw_glyphs(start, &glyphs, font, &part.text, size, outlined);
    }
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
    let x = |x: f64| ((at.x + x) * PT) as f32;
    let y = |y: f64| ((at.y + y) * PT) as f32;
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
