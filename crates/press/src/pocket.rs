//! The pocket key: the whole key on one sheet of paper, folded to a booklet of eight small pages.
//!
//! From a booklet to one page, printed on one side. Its eight cells are the pages of the folded
//! booklet, those of the upper row upside down: a cover with the cautions, the questions, and how
//! it is folded. All of the key is on it or there is no such sheet; what is printed besides
//! (rules, drawings of answers, words) is printed where there is room.
//!
//! Source: eight pages from one sheet with one cut, and where each of them lies, are common
//! practice, without a source.

mod fold;
mod leaves;

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::Couplet;

use crate::glossary;
use crate::key_pages::{RULES, cautions, words};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::short_key::{self, Look};
use crate::shown::{self, Answers};
use crate::{Booklet, Paper, drawing, fitting, safety};
use leaves::Leaves;

/// Everything is set as on the other sheets and then made so much smaller: what is 12 pt there is
/// 9 pt here, the least that is read in the hand (common practice, no source).
const SIZE: f64 = 0.75;
/// From a fold to what stands beside it, in mm on paper.
const FOLD: f64 = 5.0;
/// The pages of the booklet.
const PAGES: usize = 8;
/// Between two questions, in mm before all is made smaller: where there is room, and where not.
const GAPS: [f64; 2] = [5.5, 2.5];

/// Where a page of the folded booklet lies on the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cell {
    /// From the left, counted from 0; there are four.
    pub column: usize,
    /// From above: 0 or 1.
    pub row: usize,
    /// Whether it is upside down.
    pub on_its_head: bool,
}

const fn cell(column: usize, row: usize) -> Cell {
    Cell { column, row, on_its_head: row == 0 }
}

/// The cells of pages 1 to 8. The cover is the second of the lower row, so that the cut between
/// the two middle columns opens between the leaves.
pub const CELLS: [Cell; PAGES] = [
    cell(1, 1),
    cell(2, 1),
    cell(3, 1),
    cell(3, 0),
    cell(2, 0),
    cell(1, 0),
    cell(0, 0),
    cell(0, 1),
];

/// The sheet as boxes in mm. Where the key is too long it says so, and what to do instead.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-pocket", &[("title", &setting.title())]);
    let frame = setting.frame_of_key(paper, true, "sheet-pocket", OUR_GROUP);
    let page = match pages(&setting, &frame) {
        Some(pages) => imposed(&frame, pages),
        None => too_long(&setting, &frame),
    };
    setting.sheet(title, vec![page])
}

/// The message of why there is no such sheet of this key on this paper; None: there is.
pub fn refused(booklet: &Booklet, paper: Paper) -> Option<&'static str> {
    let setting = Setting::new(booklet);
    let frame = setting.frame_of_key(paper, true, "sheet-pocket", OUR_GROUP);
    let shortest = LEAST.last().expect("there is a shortest");
    laid(&setting, &frame, *shortest, &Besides::default()).is_none().then_some(TOO_LONG)
}

const TOO_LONG: &str = "sheet-pocket-too-long";

/// How much of it is printed.
#[derive(Clone, Copy)]
struct Least {
    /// Whether an end has the sentence that confirms it.
    sentences: bool,
    /// Questions and names.
    letters: Style,
    /// Between two questions, in mm.
    gap: f64,
    /// Whether questions go on on the last page, beside a small picture of how to fold.
    to_the_end: bool,
}

const ROOMY: Least =
    Least { sentences: true, letters: Style::STRONG, gap: GAPS[0], to_the_end: false };
const SMALL: Least = Least { letters: Style::SMALL_STRONG, gap: GAPS[1], ..ROOMY };

/// What is tried one after the other until all of the key has room.
const LEAST: [Least; 6] = [
    ROOMY,
    Least { gap: GAPS[1], ..ROOMY },
    SMALL,
    Least { to_the_end: true, ..SMALL },
    Least { sentences: false, ..SMALL },
    Least { sentences: false, to_the_end: true, ..SMALL },
];

/// What is printed besides.
#[derive(Clone, Default)]
struct Besides {
    /// How to fold it in words, where questions go on to the last page.
    how_to_fold: bool,
    /// The rules of how to use a key.
    rules: bool,
    /// The questions whose answers are drawn.
    shown: BTreeSet<u32>,
    /// The words of the key.
    words: bool,
}

/// The eight pages, as large as they are set; None: the key is too long.
fn pages(setting: &Setting, frame: &Frame) -> Option<Vec<Piece>> {
    let mut besides = Besides::default();
    let fits = |least, besides: &Besides| laid(setting, frame, least, besides);
    let found = LEAST.into_iter().find_map(|least| Some((least, fits(least, &besides)?)));
    let (least, mut pages) = found?;
    let mut add = |more: Besides| {
        if let Some(fitting) = fits(least, &more) {
            (besides, pages) = (more, fitting);
        }
        besides.clone()
    };
    let have = add(Besides { how_to_fold: true, ..Besides::default() });
    let mut have = add(Besides { rules: true, ..have });
    for number in answers(setting).keys() {
        let mut more = have.clone();
        more.shown.insert(*number);
        have = add(more);
    }
    add(Besides { words: true, ..have });
    Some(pages)
}

/// What the answers look like, of the questions where that can be drawn.
fn answers(setting: &Setting) -> BTreeMap<u32, Answers> {
    let drawn = |couplet: &Couplet| {
        let answers = shown::answers(setting.booklet, couplet);
        (!answers.yes.is_empty()).then_some((couplet.number, answers))
    };
    setting.booklet.key.couplets.iter().filter_map(drawn).collect()
}

/// The eight pages with what is printed besides; None: that has no room.
fn laid(
    setting: &Setting,
    frame: &Frame,
    least: Least,
    besides: &Besides,
) -> Option<Vec<Piece>> {
    let (wide, high) = room(frame);
    let end = end(setting, frame, wide);
    let in_words = end.clone().then(4.0, fold::with_words(setting, wide));
    let words = (!least.to_the_end || besides.how_to_fold) && in_words.h <= high;
    let end = if words { in_words } else { end.then(4.0, fold::small(setting, wide)) };
    let deep = |page: usize| match page {
        0..7 => high,
        7 if least.to_the_end => high - end.h - 4.0,
        _ => 0.0,
    };
    let most = if least.to_the_end { PAGES } else { PAGES - 1 };
    let standing = frame.stamp.as_deref().or(frame.beside.as_deref());
    let mut leaves = Leaves::new(setting, standing, wide, &deep);
    cover(setting, frame, &mut leaves);
    if besides.rules {
        leaves.put(4.0, rules(setting, least.sentences, wide));
    }
    let answers = answers(setting);
    for couplet in &setting.booklet.key.couplets {
        let shown = answers.get(&couplet.number);
        let look = Look {
            tells: true,
            letters: least.letters,
            row: 6.0,
            between: 0.4,
            // Nothing is cut off.
            lines: usize::MAX,
            sentences: least.sentences,
            pictures: false,
            shown: shown.filter(|_| besides.shown.contains(&couplet.number)),
        };
        let piece = short_key::piece(setting, couplet, look, wide);
        leaves.put_question(least.gap, couplet.number, piece);
    }
    if setting.booklet.key.couplets.is_empty() {
        leaves.put(4.0, setting.text(&setting.say("sheet-first-question"), Style::BODY, wide));
    }
    if besides.words {
        for (at, piece) in word_list(setting, wide).into_iter().enumerate() {
            leaves.put(if at == 0 { 6.0 } else { 2.0 }, piece);
        }
    }
    let mut pages = leaves.finish(most)?;
    while pages.len() < PAGES - 1 {
        pages.push(to_write_on(setting, wide, high));
    }
    match pages.len() == PAGES {
        true => {
            let last = pages.pop().expect("there are eight");
            let y = high - end.h;
            pages.push(last.with(0.0, y, end));
        }
        false => pages.push(Piece::blank(wide, 0.0).with(0.0, (high - end.h).max(0.0), end)),
    }
    let fit = |page: &Piece| page.h <= high + 0.001;
    pages.iter().all(fit).then_some(pages)
}

/// The room on a page, in mm before all is made smaller.
fn room(frame: &Frame) -> (f64, f64) {
    let (w, h) = size(frame);
    ((w - MARGIN - FOLD) / SIZE, (h - MARGIN - FOLD) / SIZE)
}

/// A page of the booklet, in mm on paper.
fn size(frame: &Frame) -> (f64, f64) {
    (frame.width / 4.0, frame.height / 2.0)
}

/// What the key is for, what may hurt, and what yes and no look like.
fn cover(setting: &Setting, frame: &Frame, leaves: &mut Leaves<'_>) {
    let wide = leaves.wide();
    let twig = drawing::twig(22.0);
    let name = Style::SMALL_STRONG.inked(Ink::Hedge);
    let mut head = setting.text(&setting.say("sheet-pocket"), name, wide - twig.w - 2.0);
    if let Some(badge) = frame.badge(&setting.faces, Role::Paragraph) {
        head = head.then(1.0, badge);
    }
    let down = (head.h - twig.h).max(0.0);
    let head = head.with(wide - twig.w, down, twig);
    let title = setting.heading(1, &setting.title(), Style::HEADING, wide);
    let mut head = head.then(1.0, title);
    if let Some(second) = setting.second_title(Style::SMALL, wide) {
        head = head.then(0.0, second);
    }
    let scene = setting.scene();
    if !scene.is_empty() {
        head = head.then(0.5, setting.text(&scene, Style::SMALL, wide));
    }
    let rule = Piece::rule(wide, Pen::solid(0.6, Ink::Hedge));
    leaves.put(0.0, head.then(1.5, rule));
    let [yes, no] = [true, false].map(|yes| legend(setting, yes, wide));
    leaves.put(3.0, yes.then(1.5, no));
    let inner = wide - 2.0 * leaves::PADDING;
    let cautions = cautions::pieces(setting, (Style::SMALL, Style::STRONG), inner);
    match cautions.is_empty() {
        true => {
            let rules = safety::local_rules(setting.t());
            leaves.put(3.0, setting.text(&rules, Style::SMALL, wide));
        }
        false => leaves.boxed(3.0, cautions),
    }
    leaves.behind_the_cover();
}

/// Which line belongs to an answer.
fn legend(setting: &Setting, yes: bool, wide: f64) -> Piece {
    let (word, message, dash) = match yes {
        true => ("answer-yes", "sheet-pocket-yes", Dash::Solid),
        false => ("answer-no", "sheet-pocket-no", Dash::Dashed),
    };
    let tab = setting.answer(&setting.say(word), yes, Role::Paragraph);
    let arrow = drawing::arrow(10.0, dash);
    let (x, down) = (tab.w + 0.8, (tab.h - arrow.h) / 2.0);
    let start = x + arrow.w + 1.7;
    let words = setting.text(&setting.say(message), Style::SMALL, wide - start);
    let y = ((tab.h - words.h) / 2.0).max(0.0);
    tab.with(x, down, arrow).with(start, y, words)
}

/// How a key is used, and when to stop.
fn rules(setting: &Setting, sentences: bool, wide: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-how-to"), Style::STRONG, wide);
    // There is not always room for the words.
    let rules = RULES.into_iter().filter(|rule| *rule != "sheet-rule-word");
    let written = sentences && fitting::anywhere(setting.booklet.matrix);
    let newcomer = fitting::newcomer(setting.t(), written);
    let rules = rules.map(|rule| setting.say(rule)).chain([newcomer]);
    let list = rules.zip(1..).fold(Piece::blank(wide, 0.0), |list, (rule, at)| {
        let number = setting.block(&format!("{at}"), Style::SMALL_STRONG, 5.0);
        let words = setting.text(&rule, Style::SMALL, wide - 5.0).grouped(Group::Body);
        let item = Piece::text(number, Role::Label).with(5.0, 0.0, words);
        list.then(0.4, item.grouped(Group::Item))
    });
    title.then(0.5, list.grouped(Group::List))
}

fn word_list(setting: &Setting, wide: f64) -> Vec<Piece> {
    let entries = glossary::words_used(setting.booklet);
    let mut pieces: Vec<Piece> =
        entries.iter().map(|entry| words::piece(setting, entry, wide, Style::SMALL)).collect();
    if let Some(first) = pieces.first_mut() {
        let heading = setting.say("sheet-words-in-key");
        let heading = setting.heading(2, &heading, Style::LARGE, wide);
        *first = heading.then(1.0, std::mem::take(first));
    }
    pieces
}

/// A page that nothing was left for.
fn to_write_on(setting: &Setting, wide: f64, high: f64) -> Piece {
    let step = 12.0;
    let heading = setting.say("sheet-what-we-noticed");
    let mut lines = setting.text(&heading, Style::SMALL_STRONG, wide);
    while lines.h + step <= high {
        let y = lines.h + step - 0.2;
        lines = lines.with(0.0, y, Piece::rule(wide, Pen::solid(0.25, Ink::Soft)));
    }
    lines
}

/// What stands above how to fold it: which version this is.
fn end(setting: &Setting, frame: &Frame, wide: f64) -> Piece {
    match frame.version.is_empty() {
        true => Piece::default(),
        false => setting.text(&frame.version, Style::SMALL.inked(Ink::Soft), wide),
    }
}

/// The eight pages on their sheet, with the lines to fold and to cut along.
fn imposed(frame: &Frame, pages: Vec<Piece>) -> Page {
    let (w, h) = size(frame);
    let mut nodes = fold::marks(frame.width, frame.height).nodes;
    for (at, (page, cell)) in pages.into_iter().zip(CELLS).enumerate() {
        // The fold is on the left of a right page.
        let left = match (cell.column, at % 2 == 0) {
            (1 | 2, _) => (MARGIN + FOLD) / 2.0,
            (_, true) => FOLD,
            (_, false) => MARGIN,
        };
        let page = page.sized(SIZE).grouped(Group::Section);
        let page = Piece::blank(w, h).with(left, FOLD, page);
        let page = if cell.on_its_head { page.on_its_head() } else { page };
        nodes.extend(page.moved(cell.column as f64 * w, cell.row as f64 * h).nodes);
    }
    Page { width: frame.width, height: frame.height, nodes }
}

/// A sheet that says why there is none.
fn too_long(setting: &Setting, frame: &Frame) -> Page {
    let title = setting.block(&setting.title(), Style::TITLE, frame.wide());
    let title = Piece::text(title.at_most(&setting.faces, 3), Role::Heading(1));
    let words = [TOO_LONG, "sheet-pocket-too-long-remedy"]
        .map(|message| setting.text(&setting.say(message), Style::BODY, frame.wide()));
    let whole = words.into_iter().fold(title, |whole, words| whole.then(4.0, words));
    let nodes = whole.moved(MARGIN, MARGIN).nodes;
    Page { width: frame.width, height: frame.height, nodes }
}
