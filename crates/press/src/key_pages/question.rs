//! One question on paper: its number, its words, the way back, and the two ways on.

use std::collections::BTreeSet;

use spinney_model::{Couplet, Destination, Key, Wording};
use spinney_voice::Tongue;

use super::{cautions, end};
use crate::drawing;
use crate::lines;
use crate::second_look;
use crate::setting::Setting;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Piece, Role};
use crate::shown::{self, Answers, Shown};

/// The gap between the two ways on, in mm.
const BETWEEN: f64 = 6.0;
/// The same where they stand beneath each other.
const BENEATH: f64 = 2.5;
/// Height of a tab and of the line beside it, in mm.
const ROW: f64 = 7.0;
/// Height of the drawing of an answer, in mm, and what is left beside it.
const SHOWN: f64 = 18.0;
const BESIDE: f64 = 1.5;
/// An arrow, in mm, and what is left before and behind it.
const ARROW: f64 = 10.0;
const BEHIND_TAB: f64 = 0.8;
const BEHIND_ARROW: f64 = 1.7;

/// What a question has besides, where there is room for it.
#[derive(Clone, Copy)]
pub(super) struct Besides<'a> {
    /// Its second look.
    pub(super) look: bool,
    /// The drawings of its answers.
    pub(super) shown: Option<&'a Answers>,
}

/// A question with its two ways on, never to be broken over pages.
pub(super) fn piece(
    setting: &Setting,
    couplet: &Couplet,
    besides: Besides<'_>,
    wide: f64,
) -> Piece {
    let mut whole = head(setting, couplet, wide);
    if besides.look
        && let Some(line) = second_look(setting, couplet, wide - 13.0)
    {
        let y = whole.h + 0.5;
        whole = whole.with(13.0, y, line);
    }
    if let Some(line) = cautions::line(setting, couplet.number, Style::BODY, wide - 13.0) {
        let y = whole.h + 1.0;
        whole = whole.with(13.0, y, line);
    }
    let none = Answers::default();
    let answers = besides.shown.unwrap_or(&none);
    whole.then(2.0, ways(setting, couplet, answers, wide)).grouped(Group::Section)
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
    Some(Piece::text(block.at_most(&setting.faces, setting.lines(2)), Role::Paragraph))
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
    let block =
        setting.block(&words, Style::LARGE, room).at_most(&setting.faces, setting.lines(6));
    let y = ((9.0 - block.height) / 2.0).max(0.3);
    let (x, down) = (wide - back.w, ((9.0 - back.h) / 2.0).max(0.0));
    let mut words = Piece::text(block, Role::Heading(3));
    if let Some(second) = setting.second_question(couplet, Style::BODY, room) {
        words = words.then(0.3, second);
    }
    number.with(left, y, words).with(x, down, back)
}

/// `(from 3)`: the questions that lead here; where none does, the number that was written.
pub(crate) fn back_words(setting: &Setting, number: u32, written: Option<u32>) -> String {
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

fn ways(setting: &Setting, couplet: &Couplet, answers: &Answers, wide: f64) -> Piece {
    let room = wide - BETWEEN;
    let ends = [&couplet.yes, &couplet.no].map(|to| matches!(to, Destination::End(_)));
    let left = match ends {
        [true, false] => room * 0.66,
        [false, true] => room * 0.34,
        _ => room * 0.5,
    };
    let drawings = [&answers.yes, &answers.no];
    let least = [true, false].map(|yes| leads_on(setting, couplet, yes, answers));
    let left = left.max(least[0]).min(room - least[1]);
    let way = |yes: bool, wide: f64| {
        let shown = drawings[usize::from(!yes)];
        let mut whole = Piece::blank(wide, 0.0);
        for (at, one) in shown.iter().enumerate() {
            let heard = shown::heard(setting.booklet, couplet, yes, one);
            let drawing = lines::piece(&one.drawing, SHOWN, heard);
            whole = whole.with(at as f64 * (drawing.w + BESIDE), 0.0, drawing);
        }
        let way = way(setting, couplet, yes, (taken(shown), wide));
        whole.with(0.0, 0.0, way).grouped(Group::Item)
    };
    // In large print a name beside another would have no room, nor has a number where words are
    // long and answers are drawn.
    let on = ends == [false; 2] && matches!(couplet.wording, Wording::Question(_));
    if setting.is_large() && !on || least[0] + least[1] > room {
        return way(true, wide).then(BENEATH, way(false, wide)).grouped(Group::List);
    }
    Piece::blank(wide, 0.0)
        .with(0.0, 0.0, way(true, left))
        .with(left + BETWEEN, 0.0, way(false, room - left))
        .grouped(Group::List)
}

/// The width that "go to 3" takes on one line, with its tab and the drawings of the answer; what
/// else an answer leads to may break.
fn leads_on(setting: &Setting, couplet: &Couplet, yes: bool, answers: &Answers) -> f64 {
    let (to, shown) = match yes {
        true => (&couplet.yes, &answers.yes),
        false => (&couplet.no, &answers.no),
    };
    let (Destination::Couplet(number), Wording::Question(_)) = (to, &couplet.wording) else {
        return 0.0;
    };
    let known = setting.booklet.key.couplets.iter().any(|other| other.number == *number);
    let words = setting.block(&setting.go_to(*number, known), Style::LARGE, f64::INFINITY);
    let word = answer_words(setting.t(), couplet);
    let word = if yes { word.0 } else { word.1 };
    let (tab, _) = setting.tab_in_two(couplet, yes, &word, 1.0);
    // A number that nobody knows is told in a sentence, which may break.
    let words = if known { words.width } else { 0.0 };
    taken(shown) + tab.w + BEHIND_TAB + ARROW + BEHIND_ARROW + words + 0.1
}

/// How wide the drawings of an answer are, with what is left beside them.
fn taken(shown: &[Shown]) -> f64 {
    let wide = |one: &Shown| {
        let [_, _, width, height] = one.drawing.frame;
        SHOWN * width / height + BESIDE
    };
    shown.iter().map(wide).sum()
}

/// One way on: the tab, the lead if there is one, the line, and where it leads; so far from the
/// left as the drawings of the answer take, and beside their middle.
fn way(setting: &Setting, couplet: &Couplet, yes: bool, (from, wide): (f64, f64)) -> Piece {
    let to = if yes { &couplet.yes } else { &couplet.no };
    let words = answer_words(setting.t(), couplet);
    let (tab, second_word) =
        setting.tab_in_two(couplet, yes, &if yes { words.0 } else { words.1 }, 1.0);
    let arrow = drawing::arrow(ARROW, if yes { Dash::Solid } else { Dash::Dashed });
    let beside = from + tab.w + BEHIND_TAB;
    let down = (ROW - arrow.h) / 2.0;
    let least = if from > 0.0 { SHOWN } else { 0.0 };
    let Wording::Leads { yes: first, no: second } = &couplet.wording else {
        let top = ((least - ROW) / 2.0).max(0.0);
        let start = (beside + arrow.w + BEHIND_ARROW, top);
        let body = destination(setting, to, start, (wide, least));
        let body = Piece::default().with(from, top, second_word).with(0.0, 0.0, body);
        let body = body.grouped(Group::Body);
        let head = Piece::blank(from, 0.0).with(from, top, tab);
        return head.with(beside, top + down, arrow).with(0.0, 0.0, body);
    };
    let lead = Some(if yes { first } else { second }).filter(|lead| !lead.trim().is_empty());
    let lead = lead.map_or_else(|| setting.say("sheet-write-it"), String::clone);
    let left = from + tab.w + 2.5;
    let block = setting
        .block(&lead, Style::BODY, wide - left)
        .at_most(&setting.faces, setting.lines(6));
    let row = block.height.max(ROW) + 1.5;
    let lead = Piece::text(block, Role::Paragraph);
    let y = ((ROW - lead.h) / 2.0).max(0.2);
    let start = (from + arrow.w + BEHIND_ARROW, row);
    let body = Piece::blank(wide, row)
        .with(left, y, lead)
        .with(0.0, 0.0, destination(setting, to, start, (wide, least)))
        .grouped(Group::Body);
    let head = Piece::blank(from, 0.0).with(from, 0.0, tab);
    head.with(from, row + down, arrow).with(0.0, 0.0, body)
}

/// Where an answer leads, beside its arrow; an end stands beneath at full width. At least so high
/// are the drawings to its left.
fn destination(
    setting: &Setting,
    to: &Destination,
    (x, y): (f64, f64),
    (wide, least): (f64, f64),
) -> Piece {
    let line = |words: &str, style: Style| {
        let block =
            setting.block(words, style, wide - x).at_most(&setting.faces, setting.lines(6));
        let down = ((ROW - block.height) / 2.0).max(-0.4);
        let high = (y + ROW).max(least);
        Piece::blank(wide, high).with(x, y + down, Piece::text(block, Role::Paragraph))
    };
    match to {
        Destination::Couplet(number) => {
            let known = setting.booklet.key.couplets.iter().any(|c| c.number == *number);
            line(&setting.go_to(*number, known), Style::LARGE)
        }
        Destination::End(at) => {
            let name = |wide: f64| {
                let block = setting.block(&setting.end_name(at), Style::LARGE, wide - x);
                let block = block.at_most(&setting.faces, setting.lines(6));
                let down = ((ROW - block.height) / 2.0).max(-0.4);
                let mut text = Piece::text(block, Role::Paragraph);
                if let Some(second) = setting.second_end(at, Style::BODY, wide - x) {
                    text = text.then(0.0, second);
                }
                Piece::blank(wide, (y + ROW).max(least)).with(x, y + down, text)
            };
            let beside = least == 0.0;
            end::piece(setting, at, name, (y, beside), wide)
        }
        Destination::Missing => {
            let from = x + 24.0;
            let rule = Piece::rule((wide - from).max(4.0), Pen::solid(0.2, Ink::Soft));
            line(&setting.say("sheet-where-to"), Style::BODY).with(from, y + 6.5, rule)
        }
    }
}
