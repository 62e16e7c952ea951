//! One question on paper: its number, its words, the way back, and the two ways on.

use std::collections::BTreeSet;

use spinney_model::{Couplet, Destination, Key, Wording};
use spinney_voice::Tongue;

use super::{cautions, end};
use crate::drawing;
use crate::second_look;
use crate::setting::Setting;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Piece, Role};

/// The gap between the two ways on, in mm.
const BETWEEN: f64 = 6.0;
/// Height of a tab and of the line beside it, in mm.
const ROW: f64 = 7.0;

/// A question with its two ways on, never to be broken over pages; with its second look if that
/// is wanted.
pub(super) fn piece(setting: &Setting, couplet: &Couplet, look: bool, wide: f64) -> Piece {
    let mut whole = head(setting, couplet, wide);
    if look && let Some(line) = second_look(setting, couplet, wide - 13.0) {
        let y = whole.h + 0.5;
        whole = whole.with(13.0, y, line);
    }
    if let Some(line) = cautions::line(setting, couplet.number, wide - 13.0) {
        let y = whole.h + 1.0;
        whole = whole.with(13.0, y, line);
    }
    whole.then(2.0, ways(setting, couplet, wide)).grouped(Group::Section)
}

/// What else is to be seen on yes: two looks where they fit into a line, else one.
fn second_look(setting: &Setting, couplet: &Couplet, wide: f64) -> Option<Piece> {
    let style = Style::SMALL.inked(Ink::Soft);
    let one_line = setting.block("On", style, wide).height;
    let block = |most| {
        let words = second_look::line(setting.booklet, couplet, most)?;
        Some(setting.block(&words, style, wide))
    };
    let both = block(2)?;
    let block = if both.height > 1.5 * one_line { block(1)? } else { both };
    Some(Piece::text(block.at_most(&setting.faces, 2), Role::Paragraph))
}

fn head(setting: &Setting, couplet: &Couplet, wide: f64) -> Piece {
    let number = setting.disc(&couplet.number.to_string(), Role::Paragraph);
    let back = back_words(setting, couplet.number, couplet.back);
    let back = setting.text(&back, Style::SMALL.inked(Ink::Soft), 40.0);
    let left = number.w + 4.0;
    let room = wide - left - back.w - 4.0;
    let words = match &couplet.wording {
        Wording::Question(text) if text.trim().is_empty() => {
            setting.say("sheet-write-question")
        }
        Wording::Question(text) => text.clone(),
        Wording::Leads { .. } => setting.say("sheet-which-fits"),
    };
    let block = setting.block(&words, Style::LARGE, room).at_most(&setting.faces, 6);
    let y = ((9.0 - block.height) / 2.0).max(0.3);
    let (x, down) = (wide - back.w, ((9.0 - back.h) / 2.0).max(0.0));
    number.with(left, y, Piece::text(block, Role::Heading(3))).with(x, down, back)
}

/// `(from 3)`: the questions that lead here; where none does, the number that was written.
fn back_words(setting: &Setting, number: u32, written: Option<u32>) -> String {
    let mut from = backs(setting.booklet.key, number);
    if from.is_empty() {
        from.extend(written);
    }
    let numbers = from.iter().map(u32::to_string);
    match numbers.reduce(|before, last| setting.either(&[before], &last)) {
        None => String::new(),
        Some(numbers) => setting.t().with("sheet-from", &[("numbers", &numbers)]),
    }
}

/// The couplets that lead to a number.
fn backs(key: &Key, number: u32) -> BTreeSet<u32> {
    let leads = |couplet: &&Couplet| {
        [&couplet.yes, &couplet.no].into_iter().any(|to| *to == Destination::Couplet(number))
    };
    key.couplets.iter().filter(leads).map(|couplet| couplet.number).collect()
}

/// What is answered at a couplet: yes and no, or the letters of two leads.
pub(crate) fn answer_words(t: Tongue, couplet: &Couplet) -> (String, String) {
    match couplet.wording {
        Wording::Question(_) => (t.say("answer-yes"), t.say("answer-no")),
        Wording::Leads { .. } => ("a".to_owned(), "b".to_owned()),
    }
}

fn ways(setting: &Setting, couplet: &Couplet, wide: f64) -> Piece {
    let room = wide - BETWEEN;
    let ends = [&couplet.yes, &couplet.no].map(|to| matches!(to, Destination::End(_)));
    let left = match ends {
        [true, false] => room * 0.66,
        [false, true] => room * 0.34,
        _ => room * 0.5,
    };
    let way = |yes: bool, wide: f64| {
        let inner = way(setting, couplet, yes, wide);
        inner.grouped(Group::Item)
    };
    Piece::blank(wide, 0.0)
        .with(0.0, 0.0, way(true, left))
        .with(left + BETWEEN, 0.0, way(false, room - left))
        .grouped(Group::List)
}

/// One way on: the tab, the lead if there is one, the line, and where it leads.
fn way(setting: &Setting, couplet: &Couplet, yes: bool, wide: f64) -> Piece {
    let to = if yes { &couplet.yes } else { &couplet.no };
    let words = answer_words(setting.t(), couplet);
    let tab = setting.tab(&if yes { words.0 } else { words.1 }, yes);
    let arrow = drawing::arrow(10.0, if yes { Dash::Solid } else { Dash::Dashed });
    let beside = tab.w + 0.8;
    let down = (ROW - arrow.h) / 2.0;
    let Wording::Leads { yes: first, no: second } = &couplet.wording else {
        let body = destination(setting, to, (beside + arrow.w + 1.7, 0.0), wide);
        let body = body.grouped(Group::Body);
        return tab.with(beside, down, arrow).with(0.0, 0.0, body);
    };
    let lead = Some(if yes { first } else { second }).filter(|lead| !lead.trim().is_empty());
    let lead = lead.map_or_else(|| setting.say("sheet-write-it"), String::clone);
    let left = tab.w + 2.5;
    let block = setting.block(&lead, Style::BODY, wide - left).at_most(&setting.faces, 6);
    let row = block.height.max(ROW) + 1.5;
    let lead = Piece::text(block, Role::Paragraph);
    let y = ((ROW - lead.h) / 2.0).max(0.2);
    let start = arrow.w + 1.7;
    let body = Piece::blank(wide, row)
        .with(left, y, lead)
        .with(0.0, 0.0, destination(setting, to, (start, row), wide))
        .grouped(Group::Body);
    tab.with(0.0, row + down, arrow).with(0.0, 0.0, body)
}

/// Where an answer leads, beside its arrow; an end stands beneath at full width.
fn destination(setting: &Setting, to: &Destination, (x, y): (f64, f64), wide: f64) -> Piece {
    let line = |words: &str, style: Style| {
        let block = setting.block(words, style, wide - x).at_most(&setting.faces, 6);
        let down = ((ROW - block.height) / 2.0).max(-0.4);
        Piece::blank(wide, y + ROW).with(x, y + down, Piece::text(block, Role::Paragraph))
    };
    match to {
        Destination::Couplet(number) => {
            let known = setting.booklet.key.couplets.iter().any(|c| c.number == *number);
            line(&setting.go_to(*number, known), Style::LARGE)
        }
        Destination::End(at) => {
            let name = |wide: f64| {
                let block = setting.block(&setting.end_name(at), Style::LARGE, wide - x);
                let block = block.at_most(&setting.faces, 6);
                let down = ((ROW - block.height) / 2.0).max(-0.4);
                let text = Piece::text(block, Role::Paragraph);
                Piece::blank(wide, y + ROW).with(x, y + down, text)
            };
            end::piece(setting, at, name, y, wide)
        }
        Destination::Missing => {
            let from = x + 24.0;
            let rule = Piece::rule((wide - from).max(4.0), Pen::solid(0.2, Ink::Soft));
            line(&setting.say("sheet-where-to"), Style::BODY).with(from, y + 6.5, rule)
        }
    }
}
