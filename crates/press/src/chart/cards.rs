//! The cards of a chart and the lines between them.

use std::collections::BTreeMap;

use spinney_model::{Couplet, Destination, End, TaxonIx, Wording};

use super::layout::{LEVELS, Plan};
use super::tree::{Forest, Item, Node, Tree};
use crate::drawing;
use crate::key_pages::answer_words;
use crate::setting::Setting;
use crate::sheet::ink::{Dash, Ink, MM_IN_PT, Pen, Style};
use crate::sheet::{Group, Path, Piece, Role, Segment};

/// A tab stands half on its card; mm, with the smallest letters.
const TAB: f64 = 7.0;
/// From the top of a tab to the first words of its card.
const WORDS: f64 = TAB + 0.8;
/// Every word on a card, times the plan's scale: one chart, one size of letters.
fn letters(setting: &Setting) -> Style {
    if setting.is_large() { Style::STRONG } else { Style::SMALL_STRONG }
}

/// The most lines of a question, or of each of two leads.
fn lines(setting: &Setting, leads: bool) -> usize {
    match (setting.is_large(), leads) {
        (true, false) => LARGE_QUESTION_LINES,
        _ => QUESTION_LINES,
    }
}

/// The same as large as a plan has them.
fn scaled(setting: &Setting, scale: f64) -> Style {
    let style = letters(setting);
    Style { size: style.size * scale, ..style }
}
/// The most lines of a question, of a name, and of where a way goes on.
const QUESTION_LINES: usize = 9;
const LARGE_QUESTION_LINES: usize = 14;
const NAME_LINES: usize = 4;
const ON_LINES: usize = 3;
/// From the edge of a question's card to its words, in mm.
const PADDING: f64 = 2.0;

/// How wide the widest word of the questions and of the kinds' names makes its card, in mm,
/// with the smallest letters.
pub(super) fn longest_words(setting: &Setting) -> (f64, f64) {
    let widest = |text: &str| {
        let words = text.split_whitespace();
        words
            .map(|word| setting.block(word, letters(setting), f64::INFINITY).width)
            .fold(0.0, f64::max)
    };
    let (mut asked, mut named) = (0.0, 0.0);
    for couplet in &setting.booklet.key.couplets {
        let (first, second) = question(setting, couplet);
        asked = widest(&first).max(widest(&second.unwrap_or_default())).max(asked);
        for to in [&couplet.yes, &couplet.no] {
            if let Destination::End(end) = to {
                named = widest(&setting.end_name(end)).max(named);
            }
        }
    }
    (asked + 2.0 * PADDING + 0.1, named + 0.1)
}

/// Draws all trees of a page.
pub(super) fn draw(
    setting: &Setting,
    forest: &Forest,
    plan: &Plan,
    pages: &BTreeMap<usize, (usize, usize)>,
) -> Piece {
    let mut lines = Piece::default();
    let mut cards = Piece::default();
    for (tree, middles) in forest.iter().zip(&plan.middles) {
        if tree.nodes.is_empty() {
            let words = match setting.booklet.key.couplets.len() {
                0 => setting.say("sheet-chart-empty"),
                many => setting.t().count("sheet-chart-too-large", many),
            };
            cards = cards.with(0.0, 0.0, setting.text(&words, Style::BODY, 160.0));
        }
        lines = tree_lines(lines, setting, tree, plan, middles);
        for at in order(tree) {
            let node = &tree.nodes[at];
            let width = plan.width(&node.item);
            let card = card(setting, tree, at, plan, pages).grouped(Group::Section);
            cards = cards.with(middles[at] - width / 2.0, plan.tops[node.depth], card);
        }
    }
    lines.with(0.0, 0.0, cards)
}

/// Reading order: a question, all of its yes side, all of its no side.
fn order(tree: &Tree) -> Vec<usize> {
    let (mut order, mut open) = (Vec::new(), vec![0]);
    while let Some(at) = open.pop().filter(|at| *at < tree.nodes.len()) {
        order.push(at);
        if let Some([yes, no]) = tree.nodes[at].children {
            open.extend([no, yes]);
        }
    }
    order
}

fn tree_lines(
    mut piece: Piece,
    setting: &Setting,
    tree: &Tree,
    plan: &Plan,
    middles: &[f64],
) -> Piece {
    for (at, node) in tree.nodes.iter().enumerate() {
        let Some(children) = node.children else { continue };
        let foot = plan.tops[node.depth] + height(setting, node, plan);
        for (child, yes) in children.into_iter().zip([true, false]) {
            let from = middles[at] + if yes { -4.0 } else { 4.0 };
            let (to, top) = (middles[child], plan.tops[node.depth + 1]);
            let bend = top - LEVELS / 2.0;
            let dash = if yes { Dash::Solid } else { Dash::Dashed };
            let segments = vec![
                Segment::Move(from, foot),
                Segment::Line(from, bend),
                Segment::Line(to, bend),
                Segment::Line(to, top + 1.0),
            ];
            let pen = Some(Pen { width: 0.5, ink: Ink::Ink, dash });
            let path = Path { segments, fill: None, pen };
            piece = piece.with(0.0, 0.0, Piece::path(0.0, 0.0, path, Role::Decoration));
        }
    }
    piece
}

/// The height of a card, its tab included.
pub(super) fn height(setting: &Setting, node: &Node, plan: &Plan) -> f64 {
    let words = words_high(setting, node, plan);
    match node.item {
        Item::End(_) | Item::Blank => {
            WORDS * plan.scale + words + 1.0 + plan.picture_on(&node.item)
        }
        _ => WORDS * plan.scale + words + PADDING,
    }
}

/// The height of what [`words`] sets, without setting it: a layout asks for thousands.
fn words_high(setting: &Setting, node: &Node, plan: &Plan) -> f64 {
    let width = plan.width(&node.item);
    let style = scaled(setting, plan.scale);
    let high = |text: &str, most| setting.high(text, style, width - 2.0 * PADDING, most);
    match &node.item {
        Item::Question(couplet) => {
            let couplet = &setting.booklet.key.couplets[*couplet];
            let (first, second) = question(setting, couplet);
            let first =
                high(&format!("{} {first}", couplet.number), lines(setting, second.is_some()));
            second.map_or(first, |second| first + 1.0 + high(&second, lines(setting, true)))
        }
        Item::End(end) => {
            setting.high(&setting.end_name(end), style, width, setting.lines(NAME_LINES))
        }
        Item::Blank => high(&setting.say("sheet-where-to"), 1),
        Item::Elsewhere { number, known } => {
            high(&setting.go_to(*number, *known), setting.lines(ON_LINES))
        }
        // Room for three lines, whatever the number of the page turns out to be.
        Item::GoesOn(_) => {
            let line = style.size * style.leading * MM_IN_PT;
            line * setting.lines(ON_LINES) as f64
        }
    }
}

fn card(
    setting: &Setting,
    tree: &Tree,
    at: usize,
    plan: &Plan,
    pages: &BTreeMap<usize, (usize, usize)>,
) -> Piece {
    let node = &tree.nodes[at];
    let width = plan.width(&node.item);
    let words = words(setting, node, plan, pages);
    let high = height(setting, node, plan);
    let (tab_high, top) = (TAB * plan.scale, WORDS * plan.scale);
    let mut card = Piece::blank(width, high);
    match &node.item {
        Item::End(end) => {
            let y = top + words.h + 1.0;
            let only = if let [only] = end.taxa[..] { Some(only) } else { None };
            let picture = setting.picture_box(only, width, plan.picture_on(&node.item));
            card = card.with(0.0, top, words).with(0.0, y, picture);
        }
        Item::Blank => {
            let y = top + words.h + 1.0;
            let what = match setting.speaks_of_leaves() {
                true => setting.say("sheet-write-or-stick"),
                false => setting.say("sheet-write-or-draw"),
            };
            let empty = setting.empty_box(width, plan.picture, &what);
            card = card.with(0.0, top, words).with(0.0, y, empty);
        }
        Item::Question(_) => {
            let pen = Some(Pen::solid(0.5, Ink::Hedge));
            let frame = Piece::rectangle(width, high - tab_high / 2.0, Some(Ink::Tint), pen);
            card = card.with(0.0, tab_high / 2.0, frame).with(PADDING, top, words);
        }
        Item::GoesOn(_) | Item::Elsewhere { .. } => {
            let pen = Some(Pen::solid(0.3, Ink::Ink));
            let frame = Piece::rectangle(width, high - tab_high / 2.0, Some(Ink::Paper), pen);
            card = card.with(0.0, tab_high / 2.0, frame).with(PADDING, top, words);
        }
    }
    match tab(setting, tree, at, plan, pages) {
        Some(tab) => {
            let x = (width - tab.w) / 2.0;
            let sign = 4.8 * plan.scale;
            if hurts(setting, node) {
                let beside = (x + tab.w + 0.8).min(width - sign);
                card = card.with(beside, (tab_high - sign) / 2.0, drawing::warning(sign));
            }
            // The tab is heard before the words of its card.
            let mut first = Piece::blank(width, high).with(0.0, 0.0, card);
            let tab = tab.moved(x, 0.0);
            let frame = usize::from(!matches!(node.item, Item::End(_) | Item::Blank));
            first.nodes.splice(frame..frame, tab.nodes);
            first
        }
        None => card,
    }
}

/// The tab on top of a card: the answer that leads here, or where a root comes from.
fn tab(
    setting: &Setting,
    tree: &Tree,
    at: usize,
    plan: &Plan,
    pages: &BTreeMap<usize, (usize, usize)>,
) -> Option<Piece> {
    let node = &tree.nodes[at];
    let Some(yes) = node.yes else {
        let Item::Question(couplet) = node.item else { return None };
        let words = match pages.get(&couplet) {
            _ if couplet == 0 => setting.say("sheet-start-here"),
            Some((from @ 1.., _)) => {
                let letter = letter(pages, couplet);
                setting.t().with("sheet-from-page", &[("letter", &letter), ("page", from)])
            }
            _ => setting.say("sheet-no-way-here"),
        };
        let style = scaled(setting, plan.scale);
        let block = setting.block(&words, style.inked(Ink::Paper), 60.0 * plan.scale);
        let (w, h) = (block.width + 6.0, TAB * plan.scale);
        let y = (h - block.height) / 2.0;
        return Some(drawing::leaf_tab(w, h).with(3.0, y, Piece::text(block, Role::Paragraph)));
    };
    let parent =
        tree.nodes.iter().find(|node| node.children.is_some_and(|c| c.contains(&at)))?;
    let Item::Question(couplet) = parent.item else { return None };
    let words = answer_words(setting.t(), &setting.booklet.key.couplets[couplet]);
    let word = if yes { words.0 } else { words.1 };
    Some(setting.scaled_answer(&word, yes, Role::Paragraph, plan.scale))
}

/// The letter of a branch that goes on over the page: A, B, … Z, AA.
fn letter(pages: &BTreeMap<usize, (usize, usize)>, couplet: usize) -> String {
    let cut = pages.iter().filter(|(_, (from, _))| *from > 0);
    let mut at = cut.take_while(|(other, _)| **other != couplet).count();
    let mut letters = String::new();
    loop {
        letters.insert(0, char::from(b'A' + (at % 26) as u8));
        if at < 26 {
            return letters;
        }
        at = at / 26 - 1;
    }
}

fn words(
    setting: &Setting,
    node: &Node,
    plan: &Plan,
    pages: &BTreeMap<usize, (usize, usize)>,
) -> Piece {
    let width = plan.width(&node.item);
    let set = |text: &str, most: usize| {
        let style = scaled(setting, plan.scale);
        setting.block(text, style, width - 2.0 * PADDING).at_most(&setting.faces, most)
    };
    match &node.item {
        Item::Question(couplet) => {
            let couplet = &setting.booklet.key.couplets[*couplet];
            let (first, second) = question(setting, couplet);
            let text = format!("{} {first}", couplet.number);
            let first =
                Piece::text(set(&text, lines(setting, second.is_some())), Role::Paragraph);
            second.into_iter().fold(first, |first, text| {
                let second = set(&text, lines(setting, true));
                first.then(1.0, Piece::text(second, Role::Paragraph))
            })
        }
        Item::End(end) => end_name(setting, end, width, plan.scale),
        Item::Blank => Piece::text(set(&setting.say("sheet-where-to"), 1), Role::Paragraph),
        Item::Elsewhere { number, known } => Piece::text(
            set(&setting.go_to(*number, *known), setting.lines(ON_LINES)),
            Role::Paragraph,
        ),
        Item::GoesOn(couplet) => {
            let letter = letter(pages, *couplet);
            let page = pages.get(couplet).map_or(0, |at| at.1);
            let at: [(&str, &dyn std::fmt::Display); 2] =
                [("page", &page), ("letter", &letter)];
            let text = setting.t().with("sheet-goes-on", &at);
            let block = set(&text, setting.lines(ON_LINES));
            Piece::text(block, Role::Paragraph).at_least(0.0, words_high(setting, node, plan))
        }
    }
}

/// Whether a kind of this end carries a caution.
fn hurts(setting: &Setting, node: &Node) -> bool {
    let taxa = setting.booklet.matrix.taxa();
    let warned = |ix: &TaxonIx| taxa.get(ix.0).is_some_and(|taxon| taxon.caution.is_some());
    matches!(&node.item, Item::End(end) if end.taxa.iter().any(warned))
}

/// The name of an end in the middle of its card.
fn end_name(setting: &Setting, end: &End, width: f64, scale: f64) -> Piece {
    let style = scaled(setting, scale);
    let block = setting.block(&setting.end_name(end), style, width);
    let block = block.at_most(&setting.faces, setting.lines(NAME_LINES)).centred(width);
    Piece::text(block, Role::Paragraph)
}

/// The question, or both leads.
pub(crate) fn question(setting: &Setting, couplet: &Couplet) -> (String, Option<String>) {
    match &couplet.wording {
        Wording::Question(text) if text.trim().is_empty() => {
            (setting.say("sheet-no-question-yet"), None)
        }
        Wording::Question(text) => (text.clone(), None),
        Wording::Leads { yes, no } => (format!("a: {yes}"), Some(format!("b: {no}"))),
    }
}
