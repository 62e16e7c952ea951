//! What was counted along the edge of a leaf, marked and numbered, so that a person can count again.
//!
//! From the form of a leaf to dots with numbers: tips of lobes and sinuses, middles of leaflets, tips of teeth;
//! and to the lines of side veins.

use spinney_model::{LeafForm, LeafLines};

use super::{LABEL, haloed, line, placed, segments};
use crate::sheet::face::{Faces, Weight};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::text::{Block, Run};
use crate::sheet::{Piece, Role};

/// How large a dot is, in mm.
const DOT: f64 = 0.9;
/// The halo of a side vein, in mm.
const THIN_HALO: f64 = 0.2;
/// Every so many teeth have a number, in smaller letters than lobes have.
const EVERY: usize = 5;
const SMALL: Style = Style::new(Weight::Regular, 6.0, 1.2);

/// Dots and numbers of what was counted; where nothing was, nothing.
pub(super) fn marks(
    faces: &Faces,
    page: Piece,
    form: &LeafForm,
    lines: &LeafLines,
    mm: f64,
) -> Piece {
    let page = teeth(faces, page, form, lines, mm);
    let page = leaflets(faces, page, form, mm);
    let page = vein_numbers(faces, page, form, mm);
    lobes(faces, page, form, lines, mm)
}

/// The main vein and the side veins, where they were seen; so thin that the veins are seen beside them.
pub(super) fn veins(page: Piece, form: &LeafForm, mm: f64) -> Piece {
    let Ok(veins) = &form.veins else { return page };
    let all = veins.sides.iter().flatten().chain([&veins.main]);
    all.fold(page, |page, vein| {
        let pen = Pen::solid(0.25, Ink::Hedge);
        haloed(page, segments(vein, mm, false), pen, THIN_HALO)
    })
}

/// Every fifth side vein of a side has its number on it, and the last: beyond its end teeth have theirs.
fn vein_numbers(faces: &Faces, page: Piece, form: &LeafForm, mm: f64) -> Piece {
    let Ok(veins) = &form.veins else { return page };
    veins.sides.iter().fold(page, |page, side| {
        side.iter().enumerate().fold(page, |page, (at, vein)| {
            let number = at + 1;
            let told = number.is_multiple_of(EVERY) || number == side.len();
            let middle = vein.len() / 2;
            let (true, Some(from), Some(place)) =
                (told, vein.get(middle.saturating_sub(1)), vein.get(middle))
            else {
                return page;
            };
            let run = Run::new(number.to_string(), SMALL.inked(Ink::Hedge));
            labelled(faces, page, run, (*place, *from), mm)
        })
    })
}

/// The tips of lobes, numbered, and the sinuses between them.
fn lobes(faces: &Faces, page: Piece, form: &LeafForm, lines: &LeafLines, mm: f64) -> Piece {
    let Some(lobes) = &form.lobes else { return page };
    let (Some(sinuses), Some(base)) = (&lobes.sinuses, lines.midrib.first()) else {
        return page;
    };
    let page =
        sinuses.places.iter().fold(page, |page, place| dot(page, *place, mm, Ink::Berry));
    lobes.tips.iter().enumerate().fold(page, |page, (at, tip)| {
        let page = dot(page, *tip, mm, Ink::Hedge);
        // Inside of the lobe: outside are teeth and lengths.
        let beyond = [2.0 * tip[0] - base[0], 2.0 * tip[1] - base[1]];
        let number = Run::new((at + 1).to_string(), LABEL.inked(Ink::Hedge));
        labelled(faces, page, number, (*tip, beyond), mm)
    })
}

/// Leaflets, numbered in their middles.
fn leaflets(faces: &Faces, page: Piece, form: &LeafForm, mm: f64) -> Piece {
    let middles = form.leaflets.iter().flat_map(|leaflets| &leaflets.middles);
    middles.enumerate().fold(page, |page, (at, middle)| {
        let number = Run::new((at + 1).to_string(), LABEL.inked(Ink::Hedge));
        labelled(faces, page, number, (*middle, [middle[0], middle[1] + 1.0]), mm)
    })
}

/// The tips of teeth; every fifth of a side has its number, and the last.
fn teeth(faces: &Faces, page: Piece, form: &LeafForm, lines: &LeafLines, mm: f64) -> Piece {
    let Ok(edge) = &form.edge else { return page };
    let middle = lines.midrib.get(lines.midrib.len() / 2);
    edge.teeth.iter().zip([false, true]).fold(page, |page, (side, right)| {
        side.iter().enumerate().fold(page, |page, (at, tip)| {
            let page = dot(page, *tip, mm, Ink::Ink);
            // From the base on: on the right the outline comes down.
            let number = if right { side.len() - at } else { at + 1 };
            let told = number.is_multiple_of(EVERY) || number == side.len();
            let (Some(middle), None, true) = (middle, &form.leaflets, told) else {
                return page;
            };
            labelled(faces, page, Run::new(number.to_string(), SMALL), (*tip, *middle), mm)
        })
    })
}

/// A dot that is as large on every scan.
fn dot(page: Piece, [x, y]: [f64; 2], mm: f64, ink: Ink) -> Piece {
    let here = [[x, y], [x, y + 0.01]];
    line(page, &here, mm, Pen::solid(DOT, ink))
}

/// A label beyond a place, seen from another one.
fn labelled(
    faces: &Faces,
    page: Piece,
    run: Run,
    (place, from): ([f64; 2], [f64; 2]),
    mm: f64,
) -> Piece {
    let block = Block::set(faces, &[run], 80.0);
    let label = Piece::text(block, Role::Paragraph).framed(0.2, Some(Ink::Paper), None);
    let at = |[x, y]: [f64; 2]| [(x + 0.5) * mm, (y + 0.5) * mm];
    placed(page, label, at(place), at(from))
}
