//! The chart: the whole key as a tree, from one question at the top to pictures below.
//!
//! From a booklet to a PDF for A4 or A3, upright or turned, whichever shows the ends larger.
//! Yes always goes left by a solid line under a leaf-shaped tab, no goes right by a dashed
//! line under a square one. A key too large for one page at 12 pt goes on over the page; both
//! places name each other by a letter.

mod cards;
mod layout;
mod tree;
pub mod wall;

use std::collections::BTreeMap;

use crate::pdf::{self, PressError};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::{Frame, MARGIN};
use crate::sheet::ink::{Ink, Style};
use crate::sheet::{Page, Piece, Sheet};
use crate::{Booklet, Paper, drawing, fitting, safety};

pub(crate) use cards::question as question_words;
use layout::Plan;
use tree::{Forest, Tree};

/// More questions than this are no chart but a wallpaper: five times the outer limit of a key
/// for children.
const MOST: usize = 200;

/// The chart as a PDF file.
///
/// **Errors**: [`PressError`] if the file would not be valid.
pub fn pdf(booklet: &Booklet, paper: Paper) -> Result<Vec<u8>, PressError> {
    pdf::write(&sheet(booklet, paper))
}

/// The chart as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let pages = pages(&setting, paper);
    let title = setting.t().with("sheet-title-chart", &[("title", &setting.title())]);
    setting.sheet(title, pages)
}

/// The pages, for a sheet of their own or for a larger one.
pub(crate) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let forests = forests(setting, paper);
    // Where even one large question has no room, smaller ones have; the chart says so.
    if setting.is_large() && forests.iter().any(|(_, plan)| plan.forced) {
        return pages(&setting.in_usual_letters(), paper);
    }
    let pages_of = page_of_letters(&forests);
    let of = forests.len();
    let mut pages = Vec::new();
    for (at, (forest, plan)) in forests.iter().enumerate() {
        let frame = frame(setting, paper, plan.turned);
        let mut nodes = Vec::new();
        if at == 0 {
            nodes.extend(
                setting
                    .masthead(&frame, &setting.say("sheet-chart"), true)
                    .moved(MARGIN, MARGIN)
                    .nodes,
            );
        }
        let body = cards::draw(setting, forest, plan, &pages_of);
        let room = Room::of(setting, &frame, at);
        nodes.extend(body.moved(MARGIN, room.top).nodes);
        let y = room.top + room.high + 2.0;
        nodes.extend(room.below.moved(MARGIN, y).nodes);
        pages.push(frame.page(&setting.faces, nodes, at, of));
    }
    pages
}

fn frame(setting: &Setting, paper: Paper, turned: bool) -> Frame {
    setting.frame_of_key(paper, turned, "sheet-chart", OUR_GROUP)
}

/// The room for the tree on a page, and what stands below it.
struct Room {
    top: f64,
    high: f64,
    wide: f64,
    below: Piece,
}

impl Room {
    fn of(setting: &Setting, frame: &Frame, page: usize) -> Self {
        let mut top = frame.top(page) + 3.0;
        if page == 0 {
            top += setting.masthead(frame, &setting.say("sheet-chart"), true).h + 1.0;
        }
        let below = below(setting, frame.wide());
        let high = frame.bottom() - top - below.h - 2.0;
        Self { top, high, wide: frame.wide(), below }
    }
}

/// Cautions, the newcomer's sentence and who decides, once a page.
fn below(setting: &Setting, wide: f64) -> Piece {
    let berry = Style::SMALL.inked(Ink::Berry);
    let everybody = safety::for_everybody(setting.booklet.matrix);
    let everybody =
        everybody.map(|text| setting.text(&setting.for_everybody(text), berry, wide - 8.0));
    let names: Vec<_> = safety::of_kinds(setting.booklet.matrix)
        .map(|(taxon, _)| setting.name(taxon))
        .collect();
    let kinds = (!names.is_empty()).then(|| {
        let kinds = names.join(", ");
        let words = setting.t().with("sheet-read-cautions", &[("kinds", &kinds)]);
        let block =
            setting.block(&words, berry, wide - 8.0).at_most(&setting.faces, setting.lines(2));
        Piece::text(block, crate::sheet::Role::Paragraph)
    });
    let newcomer = fitting::newcomer(setting.t(), fitting::anywhere(setting.booklet.matrix));
    let rules = safety::local_rules(setting.t());
    let small = match setting.is_not_large_after_all() {
        true => setting.say("sheet-chart-not-large"),
        false => String::new(),
    };
    let words = format!("{newcomer} {rules} {small}");
    let last = setting.text(words.trim_end(), Style::SMALL, wide);
    let said =
        [everybody, kinds].into_iter().flatten().reduce(|above, below| above.then(0.3, below));
    match said {
        Some(said) => drawing::warning(5.5).with(8.0, 0.0, said).then(0.5, last),
        None => last,
    }
}

/// The key cut into as few pages as hold it, each with its plan.
fn forests(setting: &Setting, paper: Paper) -> Vec<(Forest, Plan)> {
    let mut stock = tree::Stock::new(setting.booklet.key);
    let mut done: Vec<(Forest, Plan)> = Vec::new();
    let small = setting.booklet.key.couplets.len() <= MOST;
    while let Some(root) = stock.next_root().filter(|_| small) {
        let at = done.len();
        if let Some((forest, plan)) = done.last_mut().filter(|_| at > 1) {
            let grown = stock.grow(root, &[]);
            let mut both = forest.clone();
            both.push(grown);
            if let Some(wider) = best(setting, paper, &both, at - 1) {
                stock.take(both.last().expect("a tree was added"));
                (*forest, *plan) = (both, wider);
                continue;
            }
        }
        let (tree, plan) = cut_to_fit(setting, paper, &stock, root, at);
        stock.take(&tree);
        done.push((vec![tree], plan));
    }
    if done.is_empty() {
        let empty = vec![Tree::default()];
        let plan =
            layout::plan(setting, &empty, &rooms(setting, paper, 0), 1.0).unwrap_or_default();
        done.push((empty, plan));
    }
    one_size(setting, paper, &mut done);
    done
}

/// Sets every page in the letters of the page that has least room for large ones.
fn one_size(setting: &Setting, paper: Paper, pages: &mut [(Forest, Plan)]) {
    let least = pages.iter().map(|(_, plan)| plan.scale).fold(f64::INFINITY, f64::min);
    for (at, (forest, plan)) in pages.iter_mut().enumerate() {
        if plan.scale > least {
            // What had room in larger letters has room in smaller ones.
            let smaller = layout::plan(setting, forest, &rooms(setting, paper, at), least);
            *plan = smaller.unwrap_or_else(|| plan.clone());
        }
    }
}

fn rooms(setting: &Setting, paper: Paper, page: usize) -> [(bool, f64, f64); 2] {
    [false, true].map(|turned| {
        let room = Room::of(setting, &frame(setting, paper, turned), page);
        (turned, room.wide, room.high)
    })
}

fn best(setting: &Setting, paper: Paper, forest: &Forest, page: usize) -> Option<Plan> {
    layout::plan(setting, forest, &rooms(setting, paper, page), f64::INFINITY)
}

/// Cuts branches off a tree until it fits on a page.
fn cut_to_fit(
    setting: &Setting,
    paper: Paper,
    stock: &tree::Stock,
    root: usize,
    page: usize,
) -> (Tree, Plan) {
    let mut cuts = Vec::new();
    loop {
        let forest = vec![stock.grow(root, &cuts)];
        if let Some(plan) = best(setting, paper, &forest, page) {
            return (forest.into_iter().next().expect("one tree"), plan);
        }
        match forest[0].worth_cutting() {
            Some(couplet) => cuts.push(couplet),
            None => {
                let plan = Plan::forced(setting, &forest, rooms(setting, paper, page)[1]);
                return (forest.into_iter().next().expect("one tree"), plan);
            }
        }
    }
}

/// On which page each branch goes on, and from which page it came.
fn page_of_letters(forests: &[(Forest, Plan)]) -> BTreeMap<usize, (usize, usize)> {
    let mut pages = BTreeMap::new();
    for (page, (forest, _)) in forests.iter().enumerate() {
        for tree in forest {
            for couplet in tree.goes_on() {
                pages.entry(couplet).or_insert((0, 0)).0 = page + 1;
            }
            if let Some(root) = tree.root() {
                pages.entry(root).or_insert((0, 0)).1 = page + 1;
            }
        }
    }
    pages
}
