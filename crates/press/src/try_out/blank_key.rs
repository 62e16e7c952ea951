//! An empty key: numbered questions to write, with the lines of yes and no.

use crate::Paper;
use crate::drawing;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};

/// No group writes a longer key than one for forty kinds and some that come out twice.
const MOST: usize = 60;

/// The pages of an empty key with room for every kind, and a few that come out twice.
pub(super) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let kinds = setting.booklet.matrix.taxa().len();
    let wanted = kinds.saturating_sub(1).clamp(3, MOST) + 2;
    let frame = setting.frame(paper, false, "sheet-own-key", OUR_GROUP);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-own-key"), false));
    let words = setting.say("sheet-own-key-about");
    flow.put(4.0, setting.text(&words, Style::BODY, flow.wide()));
    flow.put(2.0, setting.to_mind(flow.wide()));
    let wide = flow.wide();
    // The last page is filled with questions too: somebody always needs one more.
    let mut number = 1;
    loop {
        let piece = question(setting, number, wide);
        let full = piece.h + 8.0 > flow.room();
        if number > wanted && full {
            break;
        }
        flow.put(8.0, piece);
        number += 1;
    }
    flow.finish()
}

fn question(setting: &Setting, number: usize, wide: f64) -> Piece {
    let number = setting.disc(&number.to_string(), Role::Paragraph);
    let from =
        setting.text(&setting.say("sheet-from-blank"), Style::SMALL.inked(Ink::Soft), 30.0);
    let left = number.w + 4.0;
    let line = || Piece::rule(wide - left, Pen::solid(0.2, Ink::Soft));
    let short = Piece::rule(wide - left - from.w - 3.0, Pen::solid(0.2, Ink::Soft));
    let x = wide - from.w;
    let head = number.with(left, 8.4, short).with(x, 3.6, from).with(left, 18.4, line());
    let half = (wide - left - 8.0) / 2.0;
    let way = |word: &str, yes: bool| {
        let tab = setting.tab(&setting.say(word), yes);
        let arrow = drawing::arrow(12.0, if yes { Dash::Solid } else { Dash::Dashed });
        let start = tab.w + 0.8 + arrow.w + 2.0;
        let body = Piece::rule(half - start, Pen::solid(0.2, Ink::Soft));
        tab.with(13.8, 1.9, arrow).with(start, 6.6, body)
    };
    let ways = Piece::blank(wide, 7.0).with(left, 0.0, way("answer-yes", true)).with(
        left + half + 8.0,
        0.0,
        way("answer-no", false),
    );
    head.then(4.0, listed(ways)).grouped(Group::Section)
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
                crate::sheet::Node::Group(_, inner) => plain(inner),
            }
        }
    }
    plain(&mut ways.nodes);
    ways
}
