//! Saving ink: a sheet in black and grey, without grounds.
//!
//! From a sheet to the same boxes in black and grey. What was filled is drawn as an outline, so
//! that yes is still a leaf and no a square; grounds are left out; pictures lose their colours.
//! It moves nothing. Nothing is lost by it, since no colour ever says alone what it says
//! ([`super::ink`]).

use super::ink::{Ink, Pen};
use super::picture::Pixels;
use super::text::Block;
use super::{Node, Path, Sheet, What};

/// The line around what was filled, in mm.
const AROUND: f64 = 0.5;

/// The sheet in black and grey.
pub(super) fn sheet(mut sheet: Sheet) -> Sheet {
    for page in &mut sheet.pages {
        nodes(&mut page.nodes);
    }
    sheet
}

fn nodes(all: &mut [Node]) {
    for node in all {
        match node {
            Node::Group(_, inner) | Node::Window(_, inner) => nodes(inner),
            Node::Placed(placed) => match &mut placed.what {
                What::Text(block) => text(block),
                What::Path(path) => drawn(path),
                What::Picture(pixels) => *pixels = Pixels::grey(pixels),
            },
        }
    }
}

fn text(block: &mut Block) {
    let parts = block.lines.iter_mut().flat_map(|line| &mut line.parts);
    parts.for_each(|part| part.style.ink = of_words(part.style.ink));
}

/// White words stood on a ground that is left out.
fn of_words(ink: Ink) -> Ink {
    match ink {
        Ink::Paper => Ink::Black,
        other => of_lines(other),
    }
}

fn of_lines(ink: Ink) -> Ink {
    match ink {
        Ink::Ink | Ink::Hedge | Ink::Berry | Ink::Black => Ink::Black,
        Ink::Soft | Ink::Grey => Ink::Grey,
        Ink::Ghost | Ink::Pale => Ink::Pale,
        Ink::Tint | Ink::Blush | Ink::Paper => Ink::Paper,
    }
}

fn drawn(path: &mut Path) {
    path.pen = path.pen.map(|pen| Pen { ink: of_lines(pen.ink), ..pen });
    match path.fill {
        // The tip of an arrow, the dot of a sign: small, and nothing without their ink.
        Some(Ink::Ink | Ink::Berry | Ink::Black) => path.fill = Some(Ink::Black),
        Some(Ink::Soft | Ink::Grey) => path.fill = Some(Ink::Grey),
        Some(Ink::Hedge) => {
            path.fill = Some(Ink::Paper);
            path.pen = path.pen.or(Some(Pen::solid(AROUND, Ink::Black)));
        }
        Some(Ink::Tint | Ink::Blush | Ink::Ghost | Ink::Pale | Ink::Paper) => {
            path.fill = Some(Ink::Paper);
        }
        None => {}
    }
}
