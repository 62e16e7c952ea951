//! How to measure: where the blade begins and ends, and where the stalk.
//!
//! From the words of the sheet to a drawn leaf with its two lengths beneath it. It is nobody's
//! leaf: a twig, a stalk, a plain blade.
//!
//! Source: a blade is measured along its midrib from its base to its tip, the stalk from the twig
//! to the base (Ellis et al. 2009, *Manual of Leaf Architecture*, from memory).

use crate::setting::Setting;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Path, Piece, Role, Segment};
use Segment::{Close, Curve, Line, Move};

/// The drawn leaf, in mm: from the twig to the blade, from there to the tip, and its width.
const STALK: f64 = 20.0;
const BLADE: f64 = 56.0;
const BROAD: f64 = 27.0;
/// Left of the stalk, in mm: the twig.
const TWIG: f64 = 6.0;
/// From the blade down to the lengths, and the height of one with its word, in mm.
const DOWN: f64 = 3.0;
const LENGTH: f64 = 8.5;

/// The leaf with its lengths.
pub(super) fn leaf(setting: &Setting) -> Piece {
    let (wide, middle) = (TWIG + STALK + BLADE + 2.0, BROAD / 2.0);
    let high = BROAD + DOWN + LENGTH;
    let (base, tip) = (TWIG + STALK, TWIG + STALK + BLADE);
    let blade = vec![
        Move(base, middle),
        Curve(base + 6.0, middle - 18.5, base + 34.0, middle - 15.0, tip, middle),
        Curve(base + 34.0, middle + 15.0, base + 6.0, middle + 18.5, base, middle),
        Close,
    ];
    let mut veins = Vec::new();
    for at in 1..6 {
        let x = base + f64::from(at) * 8.0;
        let reach = if at == 5 { 4.0 } else { 7.0 };
        for side in [-1.0, 1.0] {
            veins.extend([Move(x, middle), Line(x + reach * 0.9, middle + side * reach)]);
        }
    }
    let twig = vec![Move(TWIG - 0.5, 1.0), Line(TWIG + 0.3, BROAD - 1.0)];
    let rib = vec![Move(TWIG, middle), Line(tip - 1.5, middle)];
    let words = setting.say("sheet-ruler-leaf-drawn");
    let lines = [
        (twig, 1.1, Ink::Ink),
        (veins, 0.25, Ink::Ink),
        (rib, 0.6, Ink::Ink),
        (blade, 0.6, Ink::Ink),
    ];
    let mut leaf = Piece::blank(wide, high);
    for (at, (segments, width, ink)) in lines.into_iter().enumerate() {
        let role = if at == 0 { Role::Figure(words.clone()) } else { Role::Decoration };
        let path = Path { segments, fill: None, pen: Some(Pen::solid(width, ink)) };
        leaf = leaf.with(0.0, 0.0, Piece::path(wide, BROAD, path, role));
    }
    let below = BROAD + DOWN;
    for x in [TWIG, base, tip] {
        let from = if x == TWIG { BROAD } else { middle };
        let pen = Pen { width: 0.25, ink: Ink::Soft, dash: Dash::Dotted };
        leaf = leaf.with(x, from, Piece::upright(below + 2.0 - from, pen));
    }
    let stalk = length(setting, "sheet-ruler-stalk", STALK);
    let blade = length(setting, "sheet-ruler-blade", BLADE);
    leaf.with(TWIG, below, stalk).with(base, below, blade)
}

/// A line between two ends, with its word beneath it.
fn length(setting: &Setting, word: &str, long: f64) -> Piece {
    let ends = vec![
        Move(0.0, 0.0),
        Line(0.0, 2.4),
        Move(0.0, 1.2),
        Line(long, 1.2),
        Move(long, 0.0),
        Line(long, 2.4),
    ];
    let path = Path { segments: ends, fill: None, pen: Some(Pen::solid(0.5, Ink::Hedge)) };
    let block = setting.block(&setting.say(word), Style::SMALL_STRONG, long + 6.0);
    let x = (long - block.width) / 2.0;
    let line = Piece::path(long, 2.4, path, Role::Decoration);
    line.with(x, 2.8, Piece::text(block, Role::Paragraph))
}
