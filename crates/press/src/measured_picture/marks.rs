//! What was counted along the edge of a leaf, marked and numbered, so that a person can count again.
//!
//! From the form of a leaf to dots with numbers at the tips of its lobes and dashes in its sinuses.

use spinney_model::{LeafForm, LeafLines};

use super::{LABEL, line, placed};
use crate::sheet::face::Faces;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::text::{Block, Run};
use crate::sheet::{Piece, Role};

/// How large a dot is, in mm.
const DOT: f64 = 0.9;

/// Dots and numbers of what was counted; where nothing was, nothing.
pub(super) fn marks(
    faces: &Faces,
    page: Piece,
    form: &LeafForm,
    lines: &LeafLines,
    mm: f64,
) -> Piece {
    let Some(sinuses) = &form.lobes.sinuses else { return page };
    let Some(base) = lines.midrib.first() else { return page };
    let page =
        sinuses.places.iter().fold(page, |page, place| dot(page, *place, mm, Ink::Berry));
    form.lobes.tips.iter().enumerate().fold(page, |page, (at, tip)| {
        let page = dot(page, *tip, mm, Ink::Hedge);
        // Inside of the lobe: outside are the lengths.
        let beyond = [2.0 * tip[0] - base[0], 2.0 * tip[1] - base[1]];
        numbered(faces, page, at + 1, (*tip, beyond), mm)
    })
}

/// A dot that is as large on every scan.
fn dot(page: Piece, [x, y]: [f64; 2], mm: f64, ink: Ink) -> Piece {
    let here = [[x, y], [x, y + 0.01]];
    line(page, &here, mm, Pen::solid(DOT, ink))
}

/// A number beyond a place, seen from another one.
fn numbered(
    faces: &Faces,
    page: Piece,
    number: usize,
    (place, from): ([f64; 2], [f64; 2]),
    mm: f64,
) -> Piece {
    let style: Style = LABEL.inked(Ink::Hedge);
    let block = Block::set(faces, &[Run::new(number.to_string(), style)], 80.0);
    let label = Piece::text(block, Role::Paragraph).framed(0.2, Some(Ink::Paper), None);
    let at = |[x, y]: [f64; 2]| [(x + 0.5) * mm, (y + 0.5) * mm];
    placed(page, label, at(place), at(from))
}
