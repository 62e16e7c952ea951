//! A picture with what was measured in it, to see at a glance whether to believe it.
//!
//! From a picture and what `measure` says of it to one page as large as the picture is: around each
//! leaf its outline, its midrib line, the width, the stalk, side veins, and where both are cut apart, each with
//! its number. Where nobody knows how large a dot is the page is as wide as A4, and has no lengths.

mod marks;

use spinney_model::{LeafLines, Measurand, MeasuredLeaf, MeasuredPicture};
use spinney_voice::{Tongue, measured as say};

use crate::picture::{self, NoPicture};
use crate::sheet::face::{Faces, Weight};
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::picture::{Packed, Pixels};
use crate::sheet::text::{Block, Run};
use crate::sheet::{Page, Path, Piece, Role, Segment, Sheet};

/// How wide it is without a scale, in mm.
const A4_WIDE: f64 = 210.0;
/// Points of a line are at least so far apart, in mm.
const FINE: f64 = 0.15;
/// Small letters: whoever looks closely makes the picture larger.
const LABEL: Style = Style::new(Weight::Regular, 8.0, 1.2);
/// Between a line and its number, in mm.
const APART: f64 = 1.2;
/// Beside each line the paper shines through so far, in mm.
const HALO: f64 = 0.5;

/// The picture with its lines and numbers, as one page; its pixels (red, green, blue) are as many as shall be seen.
///
/// **Errors**: the picture cannot be shown.
pub fn sheet(
    t: Tongue,
    ((width, height), pixels): ((u32, u32), &[u8]),
    measured: &MeasuredPicture,
    title: String,
) -> Result<Sheet, NoPicture> {
    let shown = picture::jpeg_of_pixels((width, height), pixels)?;
    let shown = Pixels { width, height, packed: Packed::Jpeg(shown.into()) };
    let (width, height) = measured.size;
    let mm = measured.scale.mm().unwrap_or(A4_WIDE / f64::from(width));
    let (wide, high) = (f64::from(width) * mm, f64::from(height) * mm);
    let faces = Faces::new();
    let mut page = Piece::picture(wide, high, shown, title.clone());
    for leaf in &measured.leaves {
        page = lines(page, &leaf.lines, mm);
        page = marks::veins(page, &leaf.form, mm);
    }
    // Above all lines, so that none crosses a number.
    for leaf in &measured.leaves {
        page = marks::marks(&faces, page, &leaf.form, &leaf.lines, mm);
        page = numbers(t, &faces, page, leaf, mm);
    }
    let page = Page { width: wide, height: high, nodes: page.nodes };
    Ok(Sheet { title, language: t.tag(), pages: vec![page] })
}

fn lines(page: Piece, lines: &LeafLines, mm: f64) -> Piece {
    let outline = segments(&lines.outline, mm, true);
    let cut = lines.cut.map(|cut| segments(&cut, mm, false)).unwrap_or_default();
    let dashed = Pen { width: 0.35, ink: Ink::Ink, dash: Dash::Dashed };
    [
        (outline, Pen::solid(0.4, Ink::Berry)),
        (segments(&lines.midrib, mm, false), Pen::solid(0.4, Ink::Ink)),
        (segments(&lines.width, mm, false), dashed),
        (segments(&lines.stalk, mm, false), Pen::solid(0.4, Ink::Ink)),
        (cut, Pen::solid(0.6, Ink::Berry)),
    ]
    .into_iter()
    .fold(page, |page, (segments, pen)| drawn(page, segments, pen))
}

/// An open line in pixels.
fn line(page: Piece, points: &[[f64; 2]], mm: f64, pen: Pen) -> Piece {
    drawn(page, segments(points, mm, false), pen)
}

/// A line through paper; nothing, where there is none.
fn drawn(page: Piece, segments: Vec<Segment>, pen: Pen) -> Piece {
    haloed(page, segments, pen, HALO)
}

/// The same, where the paper shines through so far.
fn haloed(page: Piece, segments: Vec<Segment>, pen: Pen, halo: f64) -> Piece {
    if segments.is_empty() {
        return page;
    }
    let halo = Pen::solid(pen.width + halo, Ink::Paper);
    [halo, pen].into_iter().fold(page, |page, pen| {
        let path = Path { segments: segments.clone(), fill: None, pen: Some(pen) };
        let (w, h) = (page.w, page.h);
        page.with(0.0, 0.0, Piece::path(w, h, path, Role::Decoration))
    })
}

/// A line in mm; the middle of the first pixel is half a pixel from the corner.
fn segments(points: &[[f64; 2]], mm: f64, closed: bool) -> Vec<Segment> {
    let mut segments: Vec<Segment> = Vec::new();
    let mut before: Option<[f64; 2]> = None;
    for (at, point) in points.iter().enumerate() {
        let [x, y] = point.map(|place| (place + 0.5) * mm);
        let near = before.is_some_and(|[a, b]| (x - a).hypot(y - b) < FINE);
        if near && at + 1 < points.len() {
            continue;
        }
        segments.push(match before {
            None => Segment::Move(x, y),
            Some(_) => Segment::Line(x, y),
        });
        before = Some([x, y]);
    }
    if closed && !segments.is_empty() {
        segments.push(Segment::Close);
    }
    segments
}

/// The number of a leaf at its base, and each length beside its line, outside of the leaf.
fn numbers(t: Tongue, faces: &Faces, page: Piece, leaf: &MeasuredLeaf, mm: f64) -> Piece {
    let at = |[x, y]: [f64; 2]| [(x + 0.5) * mm, (y + 0.5) * mm];
    let words = |text: &str, style| {
        let block = Block::set(faces, &[Run::new(text, style)], 80.0);
        Piece::text(block, Role::Paragraph).framed(0.5, Some(Ink::Paper), None)
    };
    let lines = &leaf.lines;
    let end_of = |line: &[[f64; 2]]| Some((*line.last()?, *line.first()?));
    let [left, right] = lines.width;
    // Beside the stalk, on the side on which the width is not.
    let stalk = lines.stalk.get(lines.stalk.len() / 2).map(|middle| {
        (*middle, [middle[0] + right[0] - left[0], middle[1] + right[1] - left[1]])
    });
    let base = lines.stalk.first().or(lines.midrib.first());
    let mut page = page;
    for (what, place) in [
        (Measurand::BladeLength, end_of(&lines.midrib)),
        (Measurand::BladeWidth, Some((right, left))),
        (Measurand::StalkLength, stalk),
    ] {
        if let (Ok(measure), Some((place, from))) = (leaf.measure(what), place) {
            let label = words(&say::amount(t, &measure), LABEL);
            page = placed(page, label, at(place), at(from));
        }
    }
    match (base, lines.midrib.last()) {
        (Some(base), Some(tip)) => {
            let number = words(&leaf.number.to_string(), Style::LARGE.inked(Ink::Hedge));
            placed(page, number, at(*base), at(*tip))
        }
        _ => page,
    }
}

/// Puts a label beyond a place, seen from another one, and all of it on the page.
fn placed(page: Piece, label: Piece, place: [f64; 2], from: [f64; 2]) -> Piece {
    let way = [place[0] - from[0], place[1] - from[1]];
    let length = way[0].hypot(way[1]).max(1e-9);
    // Its middle lies so far on that its box just clears the place.
    let middle = |side: usize, size: f64| {
        place[side] + way[side] / length * (size / 2.0 + APART) - size / 2.0
    };
    let inside = |at: f64, size: f64, most: f64| at.min(most - size).max(0.0);
    let x = inside(middle(0, label.w), label.w, page.w);
    let y = inside(middle(1, label.h), label.h, page.h);
    let (w, h) = (page.w, page.h);
    let mut page = page.with(x, y, label);
    (page.w, page.h) = (w, h);
    page
}
