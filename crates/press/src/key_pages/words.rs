//! The word list on paper: only the words that this key uses.

use crate::glossary::{self, Entry};
use crate::setting::Setting;
use crate::sheet::face::Weight;
use crate::sheet::flow::Flow;
use crate::sheet::ink::{Ink, Style};
use crate::sheet::{Group, Piece};

/// The gap between the two columns, in mm.
pub(crate) const BETWEEN: f64 = 8.0;
/// The gap between two words, in mm.
const GAP: f64 = 2.5;

/// Puts the word list, if the key uses any word of the list. Whether it says what words must not
/// be confused with, for which there is not always room.
pub(crate) fn put(setting: &Setting, flow: &mut Flow) -> bool {
    let entries = glossary::words_used(setting.booklet);
    if setting.is_large() {
        let wide = flow.wide();
        let piece = |entry| piece(setting, entry, wide, Style::BODY);
        place(flow, setting, entries.iter().map(piece).collect(), wide);
        return true;
    }
    let column = (flow.wide() - BETWEEN) / 2.0;
    let set = |style: Style| -> Vec<Piece> {
        entries.iter().map(|entry| piece(setting, entry, column, style)).collect()
    };
    let high = |pieces: &[Piece]| pieces.iter().map(|piece| piece.h + GAP).sum::<f64>() / 2.0;
    let (large, small) = (set(Style::BODY), set(Style::SMALL));
    // A page more for a word or two is no help to anybody.
    let page = flow.deep() - 24.0;
    let fewer = (high(&small) / page).ceil() < (high(&large) / page).ceil();
    let mut pieces = if fewer { small } else { large };
    // Nor is one for the look-alikes only: every copy would be a sheet of paper more.
    let left = flow.room() - 24.0;
    if !fewer && high(&pieces) <= left {
        place(flow, setting, pieces, column);
        return true;
    }
    let bare: Vec<_> = entries
        .iter()
        .map(|entry| {
            let entry = Entry { not_to_be_confused: None, ..entry.clone() };
            piece(setting, &entry, column, Style::SMALL)
        })
        .collect();
    let whole = high(&pieces) <= left || high(&bare) > left;
    if !whole {
        pieces = bare;
    }
    place(flow, setting, pieces, column);
    whole
}

fn place(flow: &mut Flow, setting: &Setting, pieces: Vec<Piece>, column: f64) {
    let Some(first) = pieces.first() else { return };
    let heading =
        setting.heading(2, &setting.say("sheet-words-in-key"), Style::HEADING, flow.wide());
    flow.put_with(8.0, heading, first.h + 4.0);
    columns(flow, pieces, column, GAP);
}

/// Puts pieces into two columns of about the same height, `gap` mm apart, over as many pages as
/// they need; one beneath the other where a column is as wide as the page.
pub(crate) fn columns(flow: &mut Flow, pieces: Vec<Piece>, column: f64, gap: f64) {
    if column >= flow.wide() {
        pieces.into_iter().for_each(|piece| flow.put(gap, piece));
        return;
    }
    let mut rest = pieces.into_iter().peekable();
    while rest.peek().is_some() {
        let left: f64 = rest.clone().map(|piece| piece.h + gap).sum();
        let tallest = rest.clone().map(|piece| piece.h).fold(0.0, f64::max);
        let deep = (left / 2.0 + tallest / 2.0).min(flow.room() - gap);
        let mut fill = || {
            let mut filled = Piece::blank(column, 0.0);
            while let Some(piece) =
                rest.next_if(|piece| filled.h == 0.0 || filled.h + gap + piece.h <= deep)
            {
                filled = filled.then(gap, piece);
            }
            filled
        };
        let (first, second) = (fill(), fill());
        let both = first.with(column + BETWEEN, 0.0, second).grouped(Group::Section);
        flow.put(gap, both);
        if rest.peek().is_some() {
            flow.turn();
        }
    }
}

/// A word with what it says.
pub(crate) fn piece(setting: &Setting, entry: &Entry, wide: f64, style: Style) -> Piece {
    let word = format!("{}: ", entry.word);
    let name = Style { weight: Weight::Bold, ..style.inked(Ink::Hedge) };
    let piece = setting.runs(&[(&word, name), (&entry.plain, style)], wide);
    match &entry.not_to_be_confused {
        None => piece,
        Some(other) => {
            let words = setting.t().with("try-not-confused", &[("other", &other)]);
            piece.then(0.3, setting.text(&words, Style::SMALL.inked(Ink::Soft), wide))
        }
    }
}
