//! An empty key: numbered questions to write, with the lines of yes and no.

use crate::Paper;
use crate::drawing;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};

/// No group writes a longer key than one for sixty kinds.
const MOST: usize = 59;

/// The pages of an empty key: as many questions as separate all kinds, one fewer than there are
/// kinds. A question has two lines to write on, unless one saves a page, and then as much room
/// around it as takes no page more.
pub(super) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let mut best = laid(setting, paper, 2, 8.0);
    for gap in [2.0, 0.5] {
        let one = laid(setting, paper, 1, gap);
        if one.len() < best.len() {
            best = one;
        }
    }
    best
}

fn laid(setting: &Setting, paper: Paper, lines: usize, gap: f64) -> Vec<Page> {
    let kinds = setting.booklet.matrix.taxa().len();
    let wanted = kinds.saturating_sub(1).clamp(1, MOST);
    let frame = setting.frame(paper, false, "sheet-own-key", OUR_GROUP);
    let mut flow = Flow::new(&setting.faces, &frame);
    let low = lines == 1;
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-own-key"), low));
    let words = setting.say("sheet-own-key-about");
    let style = if low { Style::SMALL } else { Style::BODY };
    flow.put(if low { 2.0 } else { 4.0 }, setting.text(&words, style, flow.wide()));
    flow.put(if low { 0.5 } else { 2.0 }, setting.to_mind(flow.wide()));
    let wide = flow.wide();
    for number in 1..=wanted {
        flow.put(gap, question(setting, (number, None), lines, wide));
    }
    flow.lines_to_write_on(&setting.say("sheet-what-we-noticed"));
    flow.finish()
}

/// A question to write, or one that is written; its number stands before it.
pub(super) fn question(
    setting: &Setting,
    (number, words): (usize, Option<&str>),
    lines: usize,
    wide: f64,
) -> Piece {
    let number = setting.disc(&number.to_string(), Role::Paragraph);
    let from =
        setting.text(&setting.say("sheet-from-blank"), Style::SMALL.inked(Ink::Soft), 30.0);
    let left = number.w + 4.0;
    let pen = Pen::solid(0.2, Ink::Soft);
    let short = Piece::rule(wide - left - from.w - 3.0, pen);
    let x = wide - from.w;
    let beside = wide - left - from.w - 3.0;
    let mut head = number.with(left, 8.4, short).with(x, 3.6, from);
    if let Some(words) = words {
        let words = setting.text(words, Style::LARGE, beside);
        head = head.with(left, 0.6, words);
    }
    if lines > 1 && words.is_none() {
        head = head.with(left, 18.4, Piece::rule(wide - left, pen));
    }
    let half = (wide - left - 8.0) / 2.0;
    let way = |word: &str, yes: bool| {
        let tab = setting.tab(&setting.say(word), yes);
        let arrow = drawing::arrow(12.0, if yes { Dash::Solid } else { Dash::Dashed });
        let start = tab.w + 0.8 + arrow.w + 2.0;
        let body = Piece::rule(half - start, pen);
        tab.with(13.8, 1.9, arrow).with(start, 6.6, body)
    };
    let ways = Piece::blank(wide, 7.0).with(left, 0.0, way("answer-yes", true)).with(
        left + half + 8.0,
        0.0,
        way("answer-no", false),
    );
    let gap = if lines > 1 { 4.0 } else { 0.8 };
    head.then(gap, listed(ways)).grouped(Group::Section)
}

/// Tabs without a body are words, not labels of a list.
fn listed(mut ways: Piece) -> Piece {
    fn plain(nodes: &mut [crate::sheet::Node]) {
        for node in nodes {
            match node {
                crate::sheet::Node::Placed(placed) if placed.role == Role::Label => {
                    placed.role = Role::Paragraph;
                }
                crate::sheet::Node::Placed(_) => {}
                crate::sheet::Node::Group(_, inner) | crate::sheet::Node::Window(_, inner) => {
                    plain(inner)
                }
            }
        }
    }
    plain(&mut ways.nodes);
    ways
}
