//! A key in another form, indented: what follows from an answer stands beneath it, further in.
//!
//! From a booklet to pages of questions and answers, the whole key in the order in which a finger
//! goes down it. A line at the left says how far an answer reaches, solid for yes and dashed for
//! no. A question that was there before is not repeated: "go to 4".
//!
//! Source: the indented form is that of botanical handbooks (Walter & Winterton 2007 compare it
//! with the bracketed one; from memory).

use std::collections::BTreeSet;

use spinney_model::{Couplet, Destination};

use crate::chart::question_words;
use crate::key_pages::answer_words;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper, fitting};

/// How far in the next question stands, in mm; less where a key is deep.
const STEP: f64 = 9.0;
/// The share of the page's width that the deepest question may stand in.
const DEEPEST: f64 = 0.5;
/// More questions in a row than this leave no room for words.
const MOST_DEEP: usize = 24;
/// The most questions that are printed so.
const MOST: usize = 200;
/// Between two rows, in mm.
const GAP: f64 = 1.6;

/// Whether the key can be set so.
pub fn has_something(booklet: &Booklet) -> bool {
    let rows = rows(booklet);
    let deepest = rows.iter().map(|row| row.open.len()).max().unwrap_or(0);
    (1..=MOST).contains(&booklet.key.couplets.len()) && deepest <= MOST_DEEP
}

/// The indented key as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-indented", &[("title", &setting.title())]);
    setting.sheet(title, pages(&setting, paper))
}

/// One line of the key.
struct Row<'b> {
    /// The answers that it stands beneath, from the outside in: whether yes.
    open: Vec<bool>,
    what: What<'b>,
}

enum What<'b> {
    Question(&'b Couplet),
    Answer(&'b Couplet, bool),
}

/// What is still to be set.
enum Task {
    Question(usize, Vec<bool>),
    Answer(usize, bool, Vec<bool>),
}

/// Questions and answers from the first question on, then what no way leads to.
fn rows<'b>(booklet: &'b Booklet) -> Vec<Row<'b>> {
    let couplets = &booklet.key.couplets;
    let mut rows = Vec::new();
    let mut set = BTreeSet::new();
    for root in 0..couplets.len().min(MOST + 1) {
        let mut tasks = vec![Task::Question(root, Vec::new())];
        while let Some(task) = tasks.pop() {
            match task {
                Task::Question(at, open) => {
                    if open.len() > MOST_DEEP + 1 || !set.insert(at) {
                        continue;
                    }
                    tasks.push(Task::Answer(at, false, open.clone()));
                    tasks.push(Task::Answer(at, true, open.clone()));
                    rows.push(Row { open, what: What::Question(&couplets[at]) });
                }
                Task::Answer(at, yes, open) => {
                    let couplet = &couplets[at];
                    let next = below(booklet, couplet, yes).filter(|next| !set.contains(next));
                    if let Some(next) = next {
                        let mut inner = open.clone();
                        inner.push(yes);
                        tasks.push(Task::Question(next, inner));
                    }
                    rows.push(Row { open, what: What::Answer(couplet, yes) });
                }
            }
        }
    }
    rows
}

/// The question that an answer leads to, by its place in the key.
fn below(booklet: &Booklet, couplet: &Couplet, yes: bool) -> Option<usize> {
    let to = if yes { &couplet.yes } else { &couplet.no };
    let Destination::Couplet(number) = to else { return None };
    booklet.key.couplets.iter().position(|couplet| couplet.number == *number)
}

fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame_of_key(paper, false, "sheet-indented", OUR_GROUP);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-indented"), true));
    let wide = flow.wide();
    flow.put(3.0, setting.text(&setting.say("sheet-indented-about"), Style::SMALL, wide));
    flow.put(1.5, setting.to_mind(wide));
    flow.put(0.0, Piece::blank(wide, 3.0));
    let rows = rows(setting.booklet);
    let deepest = rows.iter().map(|row| row.open.len()).max().unwrap_or(0).max(1);
    let step = STEP.min(wide * DEEPEST / deepest as f64);
    for (at, row) in rows.iter().enumerate() {
        let followed = match (&row.what, rows.get(at + 1)) {
            (What::Answer(..), Some(next)) => next.open.len() > row.open.len(),
            _ => false,
        };
        let piece = set(setting, row, followed, step, wide);
        // A question stands with its first answer.
        let more = if matches!(row.what, What::Question(_)) { 12.0 } else { 0.0 };
        flow.put_with(0.0, piece, more);
    }
    flow.put(
        5.0,
        setting.text(
            &fitting::newcomer(setting.t(), fitting::anywhere(setting.booklet.matrix)),
            Style::SMALL,
            wide,
        ),
    );
    flow.lines_to_write_on(&setting.say("sheet-what-we-noticed"));
    flow.finish()
}

/// One row with the lines of the answers that it stands beneath.
fn set(setting: &Setting, row: &Row, followed: bool, step: f64, wide: f64) -> Piece {
    let x = row.open.len() as f64 * step;
    let room = wide - x;
    let (inner, level) = match row.what {
        What::Question(couplet) => (question(setting, couplet, room), 3),
        What::Answer(couplet, yes) => (answer(setting, couplet, yes, followed, room), 0),
    };
    let above = if level > 0 { 2.0 * GAP } else { GAP };
    let high = inner.h + above;
    let mut whole = Piece::blank(wide, high).with(x, above, inner.grouped(Group::Section));
    for (at, yes) in row.open.iter().enumerate() {
        let dash = if *yes { Dash::Solid } else { Dash::Dashed };
        let pen = Pen { width: 0.5, ink: if *yes { Ink::Hedge } else { Ink::Ink }, dash };
        let x = at as f64 * step + step.min(STEP) * 0.45;
        whole = whole.with(x, 0.0, Piece::upright(high, pen));
    }
    Piece { h: high, ..whole }
}

fn question(setting: &Setting, couplet: &Couplet, room: f64) -> Piece {
    let number = setting.disc(&couplet.number.to_string(), Role::Paragraph);
    let x = number.w + 3.0;
    let (first, second) = question_words(setting, couplet);
    let words = match second {
        Some(_) => setting.say("sheet-which-fits"),
        None => first,
    };
    let block = setting.block(&words, Style::STRONG, room - x).at_most(&setting.faces, 6);
    let y = ((number.h - block.height) / 2.0).max(0.0);
    number.with(x, y, Piece::text(block, Role::Heading(2)))
}

fn answer(setting: &Setting, couplet: &Couplet, yes: bool, followed: bool, room: f64) -> Piece {
    let answers = answer_words(setting.t(), couplet);
    let tab = setting.tab(&if yes { answers.0 } else { answers.1 }, yes);
    let x = tab.w + 3.0;
    let (first, second) = question_words(setting, couplet);
    let lead = second.map(|second| if yes { first } else { second });
    // The letter of a lead stands on its tab already.
    let lead = lead.map(|lead| lead.get(3..).unwrap_or_default().to_owned());
    let to = match if yes { &couplet.yes } else { &couplet.no } {
        Destination::Couplet(_) if followed => None,
        Destination::Couplet(number) => {
            let known = setting.booklet.key.couplets.iter().any(|c| c.number == *number);
            Some(setting.go_to(*number, known))
        }
        Destination::End(end) => Some(setting.end_name(end)),
        Destination::Missing => Some(setting.say("sheet-where-to")),
    };
    let set = |text: &str, style: Style| {
        let block = setting.block(text, style, room - x).at_most(&setting.faces, 6);
        Piece::text(block, Role::Paragraph)
    };
    let lead = lead.filter(|lead| !lead.trim().is_empty());
    let words = lead
        .map(|lead| set(&lead, Style::BODY))
        .into_iter()
        .chain(to.map(|to| set(&to, Style::LARGE)));
    let words = words.reduce(|above, below| above.then(0.5, below)).unwrap_or_default();
    let y = ((tab.h - words.h) / 2.0).max(-0.4);
    tab.with(x, y, words)
}
