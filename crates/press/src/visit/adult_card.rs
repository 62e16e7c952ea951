//! A card for each adult who goes with a group: what to ask, what not to tell, when to stop.
//!
//! From how many groups there are to cards, two to a page, exactly as many as there are adults.
//! They name no child and give no kind away.
//!
//! Source: common practice, no source.

use crate::setting::{NOTES, Setting};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};
use crate::{Paper, copies, cut, try_out};

/// Cards on a page.
const DOWN: usize = 2;
/// Between two columns of a card, in mm.
const BETWEEN: f64 = 6.0;

/// What an adult is told: the heading, then each sentence.
const COLUMNS: [(&str, &[&str]); 3] = [
    (
        "sheet-helper-ask",
        &["sheet-helper-ask-read", "sheet-helper-ask-see", "sheet-helper-ask-why"],
    ),
    (
        "sheet-helper-not",
        &["sheet-helper-not-name", "sheet-helper-not-answer", "sheet-helper-not-pick"],
    ),
    (
        "sheet-helper-stop",
        &["sheet-helper-stop-touch", "sheet-helper-stop-lost", "sheet-helper-stop-call"],
    ),
];

/// The pages: a card for every adult who goes with a group.
pub(crate) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-helper", NOTES);
    cut::cards(setting, &frame, many(setting), |wide, high| card(setting, wide, high))
}

/// The same with number labels where no adult needs a card; None: they have no room there.
pub(crate) fn with_labels(setting: &Setting, paper: Paper) -> Option<Vec<Page>> {
    let frame = setting.frame(paper, false, "sheet-helper", NOTES);
    cut::cards_and(
        setting,
        &frame,
        many(setting),
        |wide, high| card(setting, wide, high),
        |wide, high| try_out::labels_in(setting, wide, high),
    )
}

/// How many cards there are, and how many on a page.
fn many(setting: &Setting) -> (usize, usize) {
    (copies::For::EachAdult.count(setting.class()), DOWN)
}

fn card(setting: &Setting, wide: f64, high: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-helper-title"), Style::LARGE, wide);
    let column = (wide - 2.0 * BETWEEN) / 3.0;
    let mut told = Piece::blank(wide, 0.0);
    for (at, (heading, sentences)) in COLUMNS.iter().enumerate() {
        let style = Style::STRONG.inked(Ink::Hedge);
        let heading =
            Piece::text(setting.block(&setting.say(heading), style, column), Role::Heading(3));
        let whole = sentences.iter().fold(heading, |whole, sentence| {
            whole.then(1.6, setting.text(&setting.say(sentence), Style::SMALL, column))
        });
        let x = at as f64 * (column + BETWEEN);
        told = told.with(x, 0.0, whole.grouped(Group::Section));
    }
    let card = title.then(1.5, told).then(3.0, to_fill_in(setting, wide));
    let rules = setting.to_mind(wide);
    let y = (high - rules.h).max(card.h + 2.0);
    card.with(0.0, y, rules).grouped(Group::Section)
}

/// Where and when everybody meets again, and how the adult who leads is called.
fn to_fill_in(setting: &Setting, wide: f64) -> Piece {
    let lines = ["sheet-helper-meet", "sheet-helper-call"];
    lines.iter().fold(Piece::blank(wide, 0.0), |lines, message| {
        let words = setting.text(&setting.say(message), Style::SMALL, wide);
        let (x, y) = (words.w + 1.5, words.h - 0.8);
        let rule = Piece::rule(wide - x, Pen::solid(0.2, Ink::Soft));
        lines.then(2.2, words.with(x, y, rule))
    })
}
