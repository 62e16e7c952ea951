//! The strip: a scale along its edge, and beneath it each length with its question's number.
//!
//! From lengths to a strip in one piece, or in several to glue together. Every length begins at
//! the one line marked 0; its own line stands exactly so far from it. A line goes down as far as
//! its label and no further, so that no label lies on another's line.

use super::lengths::Length;
use crate::setting::Setting;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Path, Piece, Role, Segment};

/// A strip in one piece, and every piece of a longer one, in mm: with its ends, both go across A4
/// and Letter. No strip is shorter: it is a ruler as well, and its labels have room.
const ONE_PIECE: f64 = 240.0;
const PIECE: f64 = 230.0;
/// Longer than this, no strip of paper is handy, in mm: a tape is.
pub(super) const LONGEST: f64 = 1000.0;
/// Before 0 and behind the end of the scale, in mm.
const END: f64 = 6.0;
/// What the piece before is glued onto, in mm.
const TAB: f64 = 16.0;
/// Height of the scale with its numbers, of a row of labels, and below the rows, in mm.
const SCALE: f64 = 14.0;
const ROW: f64 = 10.0;
const BELOW: f64 = 2.0;
/// Between a line and its label, and between two labels, in mm.
const APART: f64 = 1.5;

/// A label and the row that it stands in.
struct Mark<'l> {
    length: &'l Length,
    label: Piece,
    row: usize,
    /// Whether it stands before its line, since behind it the strip ends.
    before: bool,
}

/// The strip in as many pieces as it needs.
pub(super) fn pieces(setting: &Setting, lengths: &[&Length]) -> Vec<Piece> {
    let longest = lengths.iter().map(|length| length.mm).fold(0.0, f64::max);
    let whole = (longest / 10.0).ceil() * 10.0 + 10.0;
    if whole <= ONE_PIECE {
        return vec![piece(setting, lengths, (0.0, ONE_PIECE), (true, true))];
    }
    let many = (whole / PIECE).ceil() as usize;
    (0..many)
        .map(|at| {
            let from = at as f64 * PIECE;
            let to = (from + PIECE).min(whole);
            piece(setting, lengths, (from, to), (at == 0, at + 1 == many))
        })
        .collect()
}

/// What the scale shows from one length to another, in mm.
fn piece(
    setting: &Setting,
    lengths: &[&Length],
    (from, to): (f64, f64),
    (first, last): (bool, bool),
) -> Piece {
    let start = if first { END } else { TAB };
    let wide = start + (to - from) + if last { END } else { 0.0 };
    let here = lengths.iter().filter(|length| length.mm > from && length.mm <= to);
    // A short last piece is made longer behind its scale, for its labels.
    let most = if last { END + ONE_PIECE + END } else { wide };
    let marks = in_rows(setting, here, |mm| start + mm - from, most);
    let behind = marks.iter().filter(|mark| !mark.before);
    let behind = behind.map(|mark| start + mark.length.mm - from + mark.label.w + 2.0 * APART);
    let wide = behind.fold(wide, f64::max);
    let rows = marks.iter().map(|mark| mark.row + 1).max().unwrap_or(1);
    let high = SCALE + rows as f64 * ROW + BELOW;
    let mut strip = Piece::rectangle(wide, high, Some(Ink::Paper), None);
    let marked: Vec<f64> = marks.iter().map(|mark| mark.length.mm).collect();
    strip = scale(setting, strip, (from, to), start, &marked);
    if first {
        strip = line(strip, start, high, Pen::solid(0.6, Ink::Ink));
    } else {
        strip = glued(setting, strip, high);
    }
    for mark in &marks {
        let x = start + mark.length.mm - from;
        let foot = SCALE + (mark.row + 1) as f64 * ROW;
        strip = line(strip, x, foot, Pen::solid(0.6, Ink::Hedge));
        let beside = if mark.before { x - APART - mark.label.w } else { x + APART };
        let y = SCALE + mark.row as f64 * ROW;
        strip = strip.with(beside, y, mark.label.clone().grouped(Group::Section));
    }
    Piece { w: wide, h: high, ..strip }
}

fn line(strip: Piece, x: f64, foot: f64, pen: Pen) -> Piece {
    strip.with(x, 0.0, Piece::upright(foot, pen))
}

/// Lines for millimetres, longer for every fifth, longest with its number for every centimetre.
/// Where a length's own line would run through a number, its label says it.
fn scale(
    setting: &Setting,
    mut strip: Piece,
    (from, to): (f64, f64),
    start: f64,
    marked: &[f64],
) -> Piece {
    let (w, h) = (strip.w, strip.h);
    let (mut fine, mut coarse) = (Vec::new(), Vec::new());
    for mm in from as usize..=to as usize {
        let x = start + mm as f64 - from;
        let (segments, foot) = match mm {
            _ if mm.is_multiple_of(10) => (&mut coarse, 6.5),
            _ if mm.is_multiple_of(5) => (&mut fine, 5.0),
            _ => (&mut fine, 3.2),
        };
        segments.extend([Segment::Move(x, 0.0), Segment::Line(x, foot)]);
        // The line of 0 is the strip's own, and where two pieces meet one number is enough.
        let edge = mm == to as usize && x + 4.0 > w;
        let hidden = marked.iter().any(|marked| (marked - mm as f64).abs() < 3.0);
        if mm.is_multiple_of(10) && !edge && !hidden {
            let words = (mm / 10).to_string();
            let number = setting.block(&words, Style::SMALL, 12.0);
            let x = if mm as f64 == from { x + 0.8 } else { x - number.width / 2.0 };
            strip = strip.with(x, 7.2, Piece::text(number, Role::Paragraph));
        }
    }
    for (segments, pen) in
        [(fine, Pen::solid(0.18, Ink::Ink)), (coarse, Pen::solid(0.35, Ink::Ink))]
    {
        let path = Path { segments, fill: None, pen: Some(pen) };
        strip = strip.with(0.0, 0.0, Piece::path(w, h, path, Role::Decoration));
    }
    strip
}

/// What the piece before is glued onto, up to a line.
fn glued(setting: &Setting, strip: Piece, high: f64) -> Piece {
    let ground = Piece::rectangle(TAB, high, Some(Ink::Tint), None);
    let words = setting.block(&setting.say("sheet-glue"), Style::SMALL, TAB - 1.0);
    let y = (high - words.height) / 2.0;
    let words = Piece::text(words.centred(TAB), Role::Paragraph);
    line(strip.with(0.0, 0.0, ground).with(0.0, y, words), TAB, high, Pen::solid(0.3, Ink::Ink))
}

/// A row for each label, from the longest to the shortest: beneath every line that it crosses.
fn in_rows<'l>(
    setting: &Setting,
    lengths: impl Iterator<Item = &'l &'l Length>,
    x: impl Fn(f64) -> f64,
    most: f64,
) -> Vec<Mark<'l>> {
    let mut marks: Vec<Mark> = Vec::new();
    let mut all: Vec<&Length> = lengths.copied().collect();
    all.sort_by(|one, other| other.mm.total_cmp(&one.mm));
    for length in all {
        let label = label(setting, length);
        let (left, right) = (x(length.mm), x(length.mm) + APART + label.w + APART);
        let before = right > most - 1.0;
        let crossed = |mark: &&Mark| !mark.before && x(mark.length.mm) < right;
        let under = marks.iter().filter(crossed).map(|mark| mark.row + 1).max();
        debug_assert!(left >= 0.0, "a length is on its piece");
        marks.push(Mark { length, label, row: under.unwrap_or(0), before });
    }
    // What stands before its line would be crossed by all that are shorter: it goes below them.
    for at in 0..marks.len() {
        if marks[at].before {
            let others = marks.iter().enumerate().filter(|(other, _)| *other != at);
            marks[at].row = others.map(|(_, mark)| mark.row + 1).max().unwrap_or(0);
        }
    }
    marks
}

/// The numbers of the questions, the length and what of.
fn label(setting: &Setting, length: &Length) -> Piece {
    let mut label = Piece::default();
    for number in &length.numbers {
        let disc = setting.disc(&number.to_string(), Role::Paragraph);
        let gap = if label.w > 0.0 { 1.0 } else { 0.0 };
        label = label.beside(gap, disc);
    }
    let amount = format!("{} ", length.amount);
    let of = length.of.join(", ");
    let runs = [(amount.as_str(), Style::STRONG), (of.as_str(), Style::SMALL)];
    let words = setting.runs(&runs, 70.0);
    let x = label.w + 1.5;
    let y = ((9.0 - words.h) / 2.0).max(0.0);
    label.with(x, y, words)
}
