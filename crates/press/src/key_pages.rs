//! The key pages: the numbered key with its box of rules, cautions, ends and word list.
//!
//! From a booklet to a PDF for A4 or Letter. Every question stands whole on one page with its
//! two ways on; cautions come before the first question. It neither checks nor mends the key:
//! what is missing is left as a line to write on.

pub(crate) mod cautions;
mod end;
mod question;
pub(crate) mod words;

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::Couplet;

use crate::pdf::{self, PressError};
use crate::second_look;
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::{Boxed, Flow};
use crate::sheet::ink::{Ink, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::shown::{self, Answers};
use crate::{Booklet, Paper};

use question::Besides;
pub(crate) use question::{answer_words, back_words};

/// How to use a key, in the order in which one needs it (`docs/TRADE.md`, "How to use a key").
pub(crate) const RULES: [&str; 5] = [
    "sheet-rule-start",
    "sheet-rule-look",
    "sheet-rule-word",
    "sheet-rule-cannot-tell",
    "sheet-rule-neither",
];

/// The key pages as a PDF file.
///
/// **Errors**: [`PressError`] if the file would not be valid.
pub fn pdf(booklet: &Booklet, paper: Paper) -> Result<Vec<u8>, PressError> {
    pdf::write(&sheet(booklet, paper))
}

/// The key pages as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let pages = pages(&setting, paper);
    let title = setting.t().with("sheet-title-key", &[("title", &setting.title())]);
    setting.sheet(title, pages)
}

/// The pages, for a sheet of their own or for a larger one.
///
/// The drawings of answers, and then second looks, are printed wherever that needs no further
/// page and takes nothing from the words.
///
/// Large print of which a question has no room on a page is none: the sheet says so.
pub(crate) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    if setting.is_large() && is_too_long(setting, paper) {
        return pages(&setting.in_usual_letters(), paper);
    }
    let couplets = || setting.booklet.key.couplets.iter();
    let answers = |couplet: &Couplet| {
        let answers = shown::answers(setting.booklet, couplet);
        (!answers.yes.is_empty()).then_some((couplet.number, answers))
    };
    let answers: BTreeMap<u32, Answers> = couplets().filter_map(answers).collect();
    let looks = |couplet: &&Couplet| !second_look::looks(setting.booklet, couplet).is_empty();
    let looks: Vec<u32> = couplets().filter(looks).map(|couplet| couplet.number).collect();
    let drawn: Vec<u32> = answers.keys().copied().collect();
    let mut extra = Extra::nothing(&answers);
    let (mut pages, whole) = laid(setting, paper, &extra);
    let of = pages.len();
    let fits = |extra: &Extra| {
        let (pages, still_whole) = laid(setting, paper, extra);
        (pages.len() <= of && (still_whole || !whole)).then_some(pages)
    };
    if let Some(more) = fitting(&mut extra, |extra| &mut extra.shown, &drawn, &fits) {
        pages = more;
    }
    if let Some(more) = fitting(&mut extra, |extra| &mut extra.looks, &looks, &fits) {
        pages = more;
    }
    pages
}

/// Whether a question alone is higher than a page.
fn is_too_long(setting: &Setting, paper: Paper) -> bool {
    let frame = setting.frame_of_key(paper, false, "sheet-key", OUR_GROUP);
    let bare = Besides { look: false, shown: None };
    let piece = |couplet| question::piece(setting, couplet, bare, frame.wide());
    setting.booklet.key.couplets.iter().any(|couplet| piece(couplet).h > frame.deep())
}

/// What is printed besides of the questions of these numbers.
#[derive(Clone)]
struct Extra<'a> {
    /// What the answers look like, of those that can be drawn.
    answers: &'a BTreeMap<u32, Answers>,
    shown: BTreeSet<u32>,
    looks: BTreeSet<u32>,
}

impl<'a> Extra<'a> {
    fn nothing(answers: &'a BTreeMap<u32, Answers>) -> Self {
        Self { answers, shown: BTreeSet::new(), looks: BTreeSet::new() }
    }
}

/// All of these questions, or a few after the others as long as they fit; the pages, if any do.
fn fitting<'a>(
    extra: &mut Extra<'a>,
    part: for<'e> fn(&'e mut Extra<'a>) -> &'e mut BTreeSet<u32>,
    all: &[u32],
    fits: &impl Fn(&Extra<'a>) -> Option<Vec<Page>>,
) -> Option<Vec<Page>> {
    let mut pages = None;
    let few = all.len().div_ceil(MOST_TRIED).max(1);
    for some in std::iter::once(all).chain(all.chunks(few)) {
        let mut more = extra.clone();
        part(&mut more).extend(some);
        if part(&mut more).len() == part(extra).len() {
            // All of them fitted at once, or there are none.
            break;
        }
        if let Some(fitting) = fits(&more) {
            (*extra, pages) = (more, Some(fitting));
        }
    }
    pages
}

/// Each try lays all pages anew: of a long key several questions are tried at once.
const MOST_TRIED: usize = 20;

/// The pages with what is printed besides; and whether the word list is whole.
fn laid(setting: &Setting, paper: Paper, extra: &Extra<'_>) -> (Vec<Page>, bool) {
    let frame = setting.frame_of_key(paper, false, "sheet-key", OUR_GROUP);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead_in_two(&frame, &setting.say("sheet-key"), false));
    if setting.is_not_large_after_all() {
        flow.put(
            3.0,
            setting.text(&setting.say("sheet-key-not-large"), Style::BODY, flow.wide()),
        );
    }
    let look = Boxed { fill: Some(Ink::Tint), pen: None, gap: 1.0 };
    flow.boxed(5.0, vec![how_to(setting, flow.wide() - 2.0 * Flow::PADDING)], look);
    cautions::put(setting, &mut flow, Style::BODY);
    questions(setting, &mut flow, extra);
    let whole = words::put(setting, &mut flow);
    flow.lines_to_write_on(&setting.say("sheet-what-we-noticed"));
    (flow.finish(), whole)
}

fn questions(setting: &Setting, flow: &mut Flow, extra: &Extra<'_>) {
    let wide = flow.wide();
    let heading = setting.heading(2, &setting.say("sheet-questions"), Style::HEADING, wide);
    let mut pieces = setting.booklet.key.couplets.iter().map(|couplet| {
        let besides = Besides {
            look: extra.looks.contains(&couplet.number),
            shown: extra
                .answers
                .get(&couplet.number)
                .filter(|_| extra.shown.contains(&couplet.number)),
        };
        question::piece(setting, couplet, besides, wide)
    });
    let Some(first) = pieces.next() else {
        let none = setting.say("sheet-first-question");
        flow.put(6.0, heading.then(2.0, setting.text(&none, Style::BODY, wide)));
        return;
    };
    flow.put_with(6.0, heading, first.h + 2.0);
    flow.put(2.0, first);
    pieces.for_each(|piece| flow.put(5.5, piece));
}

/// The box of rules.
fn how_to(setting: &Setting, wide: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-how-to"), Style::LARGE, wide);
    let list = RULES.iter().enumerate().fold(Piece::blank(wide, 0.0), |list, (at, rule)| {
        let number = setting.block(&format!("{}", at + 1), Style::STRONG, 6.0);
        let words =
            setting.text(&setting.say(rule), Style::BODY, wide - 7.0).grouped(Group::Body);
        let item = Piece::text(number, Role::Label).with(7.0, 0.0, words);
        list.then(0.5, item.grouped(Group::Item))
    });
    title.then(1.0, list.grouped(Group::List))
}
