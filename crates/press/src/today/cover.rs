//! The first page of everything for today: how many copies of what, how much paper that is, what
//! is to be cut; the order of the visit, and the cautions.
//!
//! From the parts of the file to a page for the adult. It counts nothing itself: whom a part is
//! for stands in its list, and `crate::copies` works out the numbers.

use spinney_voice::wording;

use super::Part;
use crate::copies::{Class, Cutting, Said};
use crate::key_pages::cautions;
use crate::setting::{NOTES, Setting};
use crate::sheet::flow::{Boxed, Flow};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};
use crate::{Paper, Stamp, drawing, safety};

/// The pages of the list: one, and more where there are cautions for more.
pub(super) fn pages(setting: &Setting, paper: Paper, parts: &[Part]) -> Vec<Page> {
    let one = laid(setting, paper, parts, 1);
    // They count themselves.
    match one.len() {
        1 => one,
        more => laid(setting, paper, parts, more),
    }
}

fn laid(setting: &Setting, paper: Paper, parts: &[Part], own: usize) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-today", NOTES);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-today-adult"), false));
    let wide = flow.wide();
    let stands = match setting.booklet.stamp {
        Stamp::None => None,
        Stamp::Draft => Some(setting.say("sheet-is-draft")),
        Stamp::TryingOut => Some(setting.say("sheet-is-trying-out")),
    };
    if let Some(stands) = stands {
        flow.put(3.0, setting.text(&stands, Style::STRONG.inked(Ink::Berry), wide));
    }
    let left = setting.booklet.left_together;
    if let Some(left) = wording::left_together(setting.t(), |ix| setting.name(ix), left) {
        flow.put(3.0, setting.text(&left, Style::STRONG, wide));
    }
    flow.put(4.0, setting.heading(2, &setting.say("sheet-copies"), Style::LARGE, wide));
    flow.put(2.0, table(setting, parts, wide));
    flow.put(2.5, sums(setting, parts, own, wide));
    flow.put(4.0, order(setting, wide));
    put_cautions(setting, &mut flow);
    flow.lines_to_write_on(&setting.say("sheet-for-myself"));
    flow.finish()
}

/// A row for each sheet: what it is, what it is for, how much of it.
fn table(setting: &Setting, parts: &[Part], wide: f64) -> Piece {
    let class = setting.class();
    let widths = [0.31, 0.37, 0.1, 0.11, 0.11].map(|share| share * wide);
    let row = |cells: [String; 5], head: bool| {
        let mut x = 0.0;
        let mut row = Piece::blank(wide, 0.0);
        for (at, (words, width)) in cells.iter().zip(widths).enumerate() {
            let (style, group) = match (head, at) {
                (true, _) => (Style::SMALL_STRONG.inked(Ink::Hedge), Group::ColumnHead),
                (false, 0) => (Style::STRONG, Group::RowHead),
                (false, 3) => (Style::STRONG, Group::Cell),
                (false, _) => (Style::SMALL, Group::Cell),
            };
            let text = setting.text(words, style, width - 3.0).grouped(group);
            let y = if head || at == 0 || at == 3 { 1.2 } else { 1.8 };
            row = row.with(x, y, text);
            x += width;
        }
        let y = row.h + 1.2;
        let pen = Pen::solid(if head { 0.5 } else { 0.2 }, Ink::Hedge);
        row.grouped(Group::Row).with(0.0, y, Piece::rule(wide, pen))
    };
    let head = [
        "sheet-column-sheet",
        "sheet-column-what-for",
        "sheet-column-pages",
        "sheet-column-copies",
        "sheet-column-paper",
    ];
    let head = row(head.map(|message| setting.say(message)), true);
    let rows = parts.iter().map(|part| {
        let numbers = [part.pages.len(), part.copies.of(class), part.paper(class)];
        let [pages, copies, paper] = numbers.map(|number| number.to_string());
        row([setting.say(part.name), setting.say(part.what_for), pages, copies, paper], false)
    });
    rows.fold(head, |table, row| table.then(0.0, row)).grouped(Group::Table)
}

/// What it comes to, what is to be cut, and for whom it was counted.
fn sums(setting: &Setting, parts: &[Part], own: usize, wide: f64) -> Piece {
    let (class, t) = (setting.class(), setting.t());
    let sum = |of: fn(&Part, Class) -> usize| -> usize {
        parts.iter().map(|part| of(part, class)).sum()
    };
    let one_side = own + sum(Part::paper);
    let both = own.div_ceil(2) + sum(Part::paper_both_sides);
    let numbers: [(&str, &dyn std::fmt::Display); 2] = [("count", &one_side), ("both", &both)];
    let in_all =
        if both < one_side { "sheet-paper-in-all" } else { "sheet-paper-in-all-alike" };
    let mut words = vec![(t.with(in_all, &numbers), Style::SMALL_STRONG)];
    let cut = parts.iter().filter(|part| part.copies.cutting != Cutting::Whole);
    let cut: Vec<_> = cut.map(|part| setting.say(part.name)).collect();
    if !cut.is_empty() {
        let cut = t.with("sheet-to-cut", &[("sheets", &cut.join(", "))]);
        words.push((cut, Style::SMALL));
    }
    let counted = match class.said {
        Said::Both => "sheet-counted",
        Said::Children => "sheet-counted-no-groups",
        Said::Groups => "sheet-counted-no-children",
        Said::Nothing => "sheet-counted-assumed",
    };
    let numbers: [(&str, &dyn std::fmt::Display); 2] =
        [("children", &class.children), ("groups", &class.groups)];
    words.push((t.with(counted, &numbers), Style::SMALL.inked(Ink::Soft)));
    words.into_iter().fold(Piece::blank(wide, 0.0), |sums, (words, style)| {
        sums.then(0.8, setting.text(&words, style, wide))
    })
}

/// What happens when.
fn order(setting: &Setting, wide: f64) -> Piece {
    let steps = [
        "sheet-step-number",
        "sheet-step-cautions",
        "sheet-step-key",
        "sheet-step-tick",
        "sheet-step-own",
    ];
    let title = setting.heading(2, &setting.say("sheet-order"), Style::LARGE, wide);
    let list = steps.iter().enumerate().fold(Piece::blank(wide, 0.0), |list, (at, step)| {
        let number = setting.block(&(at + 1).to_string(), Style::SMALL_STRONG, 6.0);
        let words =
            setting.text(&setting.say(step), Style::SMALL, wide - 8.0).grouped(Group::Body);
        let item = Piece::text(number, Role::Label).with(8.0, 0.0, words);
        list.then(0.6, item.grouped(Group::Item))
    });
    title.then(1.5, list.grouped(Group::List))
}

/// The cautions once more, since the adult reads this page first.
fn put_cautions(setting: &Setting, flow: &mut Flow) {
    let wide = flow.wide() - 2.0 * Flow::PADDING;
    let matrix = setting.booklet.matrix;
    let kinds: Vec<_> = safety::of_kinds(matrix).collect();
    let style = Style::LARGE.inked(Ink::Berry);
    let title = setting.heading(2, &setting.say("sheet-cautions"), style, wide - 11.0);
    let y = (8.0 - title.h) / 2.0;
    let mut pieces = vec![drawing::warning(8.0).with(11.0, y, title)];
    pieces.extend(cautions::for_everybody(setting, Style::STRONG, wide));
    let rules = setting.text(&safety::local_rules(setting.t()), Style::SMALL, wide);
    let styles = (Style::SMALL_STRONG, Style::SMALL);
    let each: Vec<_> =
        kinds.iter().flat_map(|kind| cautions::of_kind(setting, *kind, styles, wide)).collect();
    let high: f64 = pieces.iter().chain(&each).map(|piece| piece.h + 0.5).sum();
    if high + rules.h + 2.0 * Flow::PADDING + 4.0 <= flow.room() {
        pieces.extend(each);
    } else if !each.is_empty() {
        // One page is what an adult reads in the doorway: the whole list is in the key.
        let words = setting.t().count("sheet-many-cautions", kinds.len());
        pieces.push(setting.text(&words, Style::BODY, wide));
    }
    pieces.push(rules);
    let pen = Some(Pen::solid(0.6, Ink::Berry));
    flow.boxed(4.0, pieces, Boxed { fill: Some(Ink::Blush), pen, gap: 0.5 });
}
