//! A card for each adult who goes with a group: what to ask, what not to tell, when to stop.
//!
//! From how many groups there are to cards, three to a page, exactly as many as there are
//! adults. They name no child and give no kind away.
//!
//! Source: common practice, no source.

use crate::setting::{NOTES, Setting};
use crate::sheet::ink::{Ink, Style};
use crate::sheet::{Group, Page, Piece, Role};
use crate::{Paper, copies, cut, safety};

/// Cards on a page.
const DOWN: usize = 3;
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
    let wanted = copies::For::EachAdult.count(setting.class());
    cut::cards(setting, &frame, (wanted, DOWN), |wide, high| card(setting, wide, high))
}

fn card(setting: &Setting, wide: f64, high: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-helper-title"), Style::LARGE, wide);
    let column = (wide - 2.0 * BETWEEN) / 3.0;
    let mut card = Piece::blank(wide, high).with(0.0, 0.0, title.clone());
    for (at, (heading, sentences)) in COLUMNS.iter().enumerate() {
        let style = Style::SMALL_STRONG.inked(Ink::Hedge);
        let heading =
            Piece::text(setting.block(&setting.say(heading), style, column), Role::Heading(3));
        let whole = sentences.iter().fold(heading, |whole, sentence| {
            whole.then(0.8, setting.text(&setting.say(sentence), Style::SMALL, column))
        });
        let x = at as f64 * (column + BETWEEN);
        card = card.with(x, title.h + 0.8, whole.grouped(Group::Section));
    }
    let rules =
        setting.text(&safety::local_rules(setting.t()), Style::SMALL.inked(Ink::Soft), wide);
    let y = high - rules.h;
    card.with(0.0, y, rules).grouped(Group::Section)
}
