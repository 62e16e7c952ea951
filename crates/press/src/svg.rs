//! A page as it will be printed, for a screen: the same boxes and the same letters as SVG.
//!
//! From a page of a sheet to the bytes of a picture. Letters are drawn by their outlines, so
//! that no browser sets them in another face; nothing is fetched, and nothing can be clicked.
//!
//! Source: Scalable Vector Graphics 1.1 (Second Edition), W3C 2011: its paths, `use` and `image`.

use std::collections::BTreeSet;
use std::fmt::Write;

use base64::{Engine as _, engine::general_purpose::STANDARD};

use crate::picture;
use crate::sheet::face::{Faces, OutlinePen, Weight};
use crate::sheet::ink::{Dash, Ink, MM_IN_PT, Pen};
use crate::sheet::picture::{Packed, Pixels};
use crate::sheet::text::{Line, Part};
use crate::sheet::{Page, Path, Rect, Segment, What};

/// Writes one page; lengths in it are millimetres.
///
/// **Guarantees**: no text of a person stands in it but as outlines; the same page gives the
/// same bytes.
pub fn write(page: &Page) -> String {
    let faces = Faces::new();
    let mut body = String::new();
    let mut letters = BTreeSet::new();
    for (placed, window) in page.seen() {
        if let Some(window) = window {
            open_window(&mut body, window);
        }
        if placed.turned {
            let Rect { x, y, w, h } = placed.rect;
            let (x, y) = (number(x + w / 2.0), number(y + h / 2.0));
            let _ = writeln!(body, "<g transform=\"rotate(180 {x} {y})\">");
        }
        match &placed.what {
            What::Text(block) => {
                for line in &block.lines {
                    draw_line(&mut body, &faces, line, placed.rect, &mut letters);
                }
            }
            What::Path(path) => draw_path(&mut body, path, placed.rect),
            What::Picture(pixels) => draw_picture(&mut body, pixels, placed.rect),
        }
        if placed.turned {
            body.push_str("</g>\n");
        }
        if window.is_some() {
            body.push_str("</svg>\n");
        }
    }
    let (w, h) = (number(page.width), number(page.height));
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{w}mm\" height=\"{h}mm\" \
         viewBox=\"0 0 {w} {h}\">\n<defs>\n"
    );
    for (bold, glyph) in letters {
        let mut outline = Outline::default();
        faces.outline(glyph, weight(bold), &mut outline);
        let _ =
            writeln!(svg, "<path id=\"{}\" d=\"{}\"/>", name(bold, glyph), outline.0.trim());
    }
    let paper = colour(Ink::Paper);
    let _ = writeln!(svg, "</defs>\n<rect width=\"{w}\" height=\"{h}\" fill=\"{paper}\"/>");
    svg + &body + "</svg>\n"
}

/// A picture in the picture: what lies outside of its box is cut away (14.3.3 of the standard).
fn open_window(body: &mut String, at: Rect) {
    let [x, y, w, h] = [at.x, at.y, at.w, at.h].map(number);
    let _ = writeln!(
        body,
        "<svg x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\" viewBox=\"{x} {y} {w} {h}\">"
    );
}

fn weight(bold: bool) -> Weight {
    if bold { Weight::Bold } else { Weight::Regular }
}

fn name(bold: bool, glyph: u16) -> String {
    format!("{}{glyph}", if bold { 'b' } else { 'r' })
}

/// A length with as many decimals as a printer can show: a thousandth of a millimetre.
fn number(length: f64) -> String {
    let text = format!("{length:.3}");
    let short = text.trim_end_matches('0').trim_end_matches('.');
    if short == "-0" { "0".to_owned() } else { short.to_owned() }
}

fn colour(ink: Ink) -> String {
    let (r, g, b) = ink.rgb();
    format!("#{r:02x}{g:02x}{b:02x}")
}

fn draw_line(
    body: &mut String,
    faces: &Faces,
    line: &Line,
    at: Rect,
    letters: &mut BTreeSet<(bool, u16)>,
) {
    for part in &line.parts {
        let (x, y) = (at.x + part.x, at.y + line.baseline);
        draw_part(body, faces, part, (x, y), letters);
    }
}

/// A stretch of letters, in units of the face from its left end on the line.
fn draw_part(
    body: &mut String,
    faces: &Faces,
    part: &Part,
    (x, y): (f64, f64),
    letters: &mut BTreeSet<(bool, u16)>,
) {
    let bold = part.style.weight == Weight::Bold;
    let units = faces.units(part.style.weight);
    let scale = part.style.size * MM_IN_PT / units;
    let _ = write!(
        body,
        "<g fill=\"{}\" transform=\"translate({} {}) scale({scale:.7} -{scale:.7})\">",
        colour(part.style.ink),
        number(x),
        number(y)
    );
    let mut along = 0.0;
    for glyph in &part.glyphs {
        if !part.text[glyph.from..glyph.to].trim().is_empty() {
            letters.insert((bold, glyph.id));
            let (dx, dy) = ((along + glyph.dx) * units, glyph.dy * units);
            let _ =
                write!(body, "<use href=\"#{}\" x=\"{}\"", name(bold, glyph.id), number(dx));
            if dy != 0.0 {
                let _ = write!(body, " y=\"{}\"", number(dy));
            }
            body.push_str("/>");
        }
        along += glyph.advance;
    }
    body.push_str("</g>\n");
}

/// The strokes of an outline, as SVG writes them.
#[derive(Default)]
struct Outline(String);

impl OutlinePen for Outline {
    fn move_to(&mut self, x: f32, y: f32) {
        let _ = write!(self.0, "M{x} {y}");
    }

    fn line_to(&mut self, x: f32, y: f32) {
        let _ = write!(self.0, "L{x} {y}");
    }

    fn quad_to(&mut self, x1: f32, y1: f32, x: f32, y: f32) {
        let _ = write!(self.0, "Q{x1} {y1} {x} {y}");
    }

    fn curve_to(&mut self, x1: f32, y1: f32, x2: f32, y2: f32, x: f32, y: f32) {
        let _ = write!(self.0, "C{x1} {y1} {x2} {y2} {x} {y}");
    }

    fn close(&mut self) {
        self.0.push('Z');
    }
}

fn draw_path(body: &mut String, path: &Path, at: Rect) {
    let x = |x: f64| number(at.x + x);
    let y = |y: f64| number(at.y + y);
    body.push_str("<path d=\"");
    for segment in &path.segments {
        let _ = match *segment {
            Segment::Move(a, b) => write!(body, "M{} {}", x(a), y(b)),
            Segment::Line(a, b) => write!(body, "L{} {}", x(a), y(b)),
            Segment::Curve(a, b, c, d, e, f) => {
                write!(body, "C{} {} {} {} {} {}", x(a), y(b), x(c), y(d), x(e), y(f))
            }
            Segment::Close => write!(body, "Z"),
        };
    }
    let fill = path.fill.map_or_else(|| "none".to_owned(), colour);
    let _ = write!(body, "\" fill=\"{fill}\"");
    if let Some(pen) = path.pen {
        draw_with(body, pen);
    }
    body.push_str("/>\n");
}

/// A pen as the paper has it.
fn draw_with(body: &mut String, pen: Pen) {
    let width = pen.width.max(Pen::THINNEST);
    let cap = if pen.dash == Dash::Dashed { "butt" } else { "round" };
    let _ = write!(
        body,
        " stroke=\"{}\" stroke-width=\"{}\" stroke-linejoin=\"round\" stroke-linecap=\"{cap}\"",
        colour(pen.ink),
        number(width)
    );
    match pen.dash {
        Dash::Solid => {}
        Dash::Dashed => body.push_str(" stroke-dasharray=\"2 1.4\""),
        Dash::Dotted => body.push_str(" stroke-dasharray=\"0 1.4\""),
    }
}

fn draw_picture(body: &mut String, pixels: &Pixels, at: Rect) {
    let (kind, bytes) = match &pixels.packed {
        Packed::Jpeg(bytes) => ("jpeg", bytes.to_vec()),
        Packed::Rgb(rgb) => match picture::png(pixels.width, pixels.height, rgb) {
            Ok(bytes) => ("png", bytes),
            Err(_) => return,
        },
    };
    let _ = writeln!(
        body,
        "<image x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" preserveAspectRatio=\"none\" \
         href=\"data:image/{kind};base64,{}\"/>",
        number(at.x),
        number(at.y),
        number(at.w),
        number(at.h),
        STANDARD.encode(bytes)
    );
}
