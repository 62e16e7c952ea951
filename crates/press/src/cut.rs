//! Pieces to cut apart: exactly as many as are wanted, one beneath the other, with scissors.
//!
//! From a card and a number of them to pages. The cards fill a page from its top; what is left
//! of the last page gets something else to cut out, or lines for notes, since nobody needs more
//! cards.

use crate::drawing;
use crate::setting::Setting;
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Page, Piece};

/// From a cutting line to the card beneath it, in mm.
const BELOW: f64 = 5.0;
/// From a card to the cutting line beneath it, in mm.
const ABOVE: f64 = 3.0;

/// Where the first cutting line lies on a page, in mm.
const TOP: f64 = MARGIN + 3.0;
/// Between two lines to write on, in mm.
const LINE: f64 = 12.0;

/// Pages with so many cards, `down` of them on each; `card` is given the width and height of one.
pub(crate) fn cards(
    setting: &Setting,
    frame: &Frame,
    many: (usize, usize),
    card: impl Fn(f64, f64) -> Piece,
) -> Vec<Page> {
    laid(setting, frame, many, card, |wide, high| notes(setting, wide, high))
}

/// The same with something else to cut out on what is left of the last page; `rest` is given the
/// width and height of that. None: nothing is left, or it has no room there.
pub(crate) fn cards_and(
    setting: &Setting,
    frame: &Frame,
    (wanted, down): (usize, usize),
    card: impl Fn(f64, f64) -> Piece,
    rest: impl Fn(f64, f64) -> Option<Piece>,
) -> Option<Vec<Page>> {
    let left = wanted.next_multiple_of(down) - wanted;
    let high = (frame.bottom() - TOP) / down as f64 * left as f64 - BELOW - 2.0;
    let rest = (left > 0).then(|| rest(frame.wide(), high))??;
    Some(laid(setting, frame, (wanted, down), card, |_, _| rest.clone()))
}

fn laid(
    setting: &Setting,
    frame: &Frame,
    (wanted, down): (usize, usize),
    card: impl Fn(f64, f64) -> Piece,
    rest: impl Fn(f64, f64) -> Piece,
) -> Vec<Page> {
    let high = (frame.bottom() - TOP) / down as f64;
    let (wide, pen) = (frame.wide(), Pen::dashed(0.3, Ink::Ink));
    let of = wanted.div_ceil(down);
    let one = card(wide, high - BELOW - ABOVE);
    let page = |at: usize| {
        let here = (wanted - at * down).min(down);
        let mut body = Piece::blank(wide, high * down as f64);
        for place in 0..here {
            body = body.with(0.0, place as f64 * high + BELOW, one.clone());
        }
        if here < down {
            let y = here as f64 * high + BELOW + 2.0;
            body = body.with(0.0, y, rest(wide, (down - here) as f64 * high - BELOW - 2.0));
        }
        for place in 0..=here {
            let y = place as f64 * high;
            body = body.with(0.0, y, Piece::rule(wide, pen));
            body = body.with(2.0, y - 2.4, drawing::scissors());
        }
        // Their foot counts the pages; there is no room for a head above the cards.
        frame.page_without_head(&setting.faces, body.moved(MARGIN, TOP).nodes, at, of)
    };
    (0..of).map(page).collect()
}

/// Lines to write on where no card is needed any more.
fn notes(setting: &Setting, wide: f64, high: f64) -> Piece {
    let title = setting.text(&setting.say("sheet-notes-on-lesson"), Style::STRONG, wide);
    let lines = ((high - title.h) / LINE).floor() as usize;
    (0..lines).fold(title, |notes, _| {
        let y = notes.h + LINE - 0.2;
        notes.with(0.0, y, Piece::rule(wide, Pen::solid(0.2, Ink::Soft)))
    })
}
