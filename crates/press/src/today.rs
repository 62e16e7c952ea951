//! Everything for one visit in one file, in the order of use.
//!
//! From a booklet to a PDF that begins with a page for the adult: what is in the file, and how
//! many copies of what. The numbers assume a class; the assumption is printed with them.

use crate::pdf::{self, PressError};
use crate::setting::{NOTES, Setting};
use crate::sheet::flow::{Boxed, Flow};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::try_out::Parts;
use spinney_voice::wording;

use crate::{Booklet, Paper, Stamp, chart, drawing, key_pages, safety, words_to_look_at};

/// Groups in a class of 24 to 32 children, four to a group.
const GROUPS: (usize, usize) = (6, 8);

/// Everything for one visit as a PDF file.
///
/// **Errors**: [`PressError`] if the file would not be valid.
pub fn pdf(booklet: &Booklet, paper: Paper) -> Result<Vec<u8>, PressError> {
    pdf::write(&sheet(booklet, paper))
}

/// Everything for one visit as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let parts = Parts::of(&setting, paper);
    let kinds = setting.booklet.matrix.taxa().len();
    let slips = kinds.max(1).div_ceil(parts.slips_a_page);
    let strips = |groups: usize| groups.div_ceil(parts.strips_a_page);
    let part = |name, what_for, pages, copies| Part { name, what_for, pages, copies };
    let mut sheets = vec![
        part(
            "sheet-before-go",
            "sheet-for-every-adult",
            before_you_go(&setting, paper),
            (1, 1),
        ),
        part("sheet-answers", "sheet-to-check-by", parts.answers, (1, 1)),
        part("sheet-labels", "sheet-cut-before", parts.labels, (1, 1)),
        part("sheet-key", "sheet-one-a-group", key_pages::pages(&setting, paper), GROUPS),
        part("sheet-chart", "sheet-for-the-wall", chart::pages(&setting, paper), (1, 1)),
        part(
            "sheet-words-to-look-at",
            "sheet-wall-or-table",
            words_to_look_at::pages(&setting, paper),
            (1, 1),
        ),
        part(
            "sheet-strips",
            "sheet-one-strip",
            parts.strips,
            (strips(GROUPS.0), strips(GROUPS.1)),
        ),
        part(
            "sheet-slips",
            "sheet-slip-every-try",
            parts.slips,
            (slips * GROUPS.0, slips * GROUPS.1),
        ),
        part("sheet-own-key", "sheet-to-write-on", parts.blank_key, GROUPS),
    ];
    sheets.retain(|part| !part.pages.is_empty());
    let mut pages = cover(&setting, paper, &sheets);
    pages.extend(sheets.into_iter().flat_map(|part| part.pages));
    let title = setting.t().with("sheet-title-today", &[("title", &setting.title())]);
    setting.sheet(title, pages)
}

/// One sheet of the file; its name and what it is for are messages.
struct Part {
    name: &'static str,
    what_for: &'static str,
    pages: Vec<Page>,
    copies: (usize, usize),
}

fn cover(setting: &Setting, paper: Paper, parts: &[Part]) -> Vec<Page> {
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
    let words = setting.say("sheet-counted");
    flow.put(3.0, setting.text(&words, Style::SMALL.inked(Ink::Soft), wide));
    flow.put(4.0, order(setting, wide));
    cautions(setting, &mut flow);
    flow.lines_to_write_on(&setting.say("sheet-for-myself"));
    flow.finish()
}

fn table(setting: &Setting, parts: &[Part], wide: f64) -> Piece {
    let widths = [wide * 0.36, wide * 0.38, wide * 0.11, wide * 0.15];
    let row = |cells: [String; 4], head: bool| {
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
        setting.say("sheet-column-sheet"),
        setting.say("sheet-column-what-for"),
        setting.say("sheet-column-pages"),
        setting.say("sheet-column-copies"),
    ];
    let rows = parts.iter().map(|part| {
        let copies = match part.copies {
            (few, many) if few == many => few.to_string(),
            (few, many) => {
                setting.t().with("sheet-few-to-many", &[("few", &few), ("many", &many)])
            }
        };
        let (name, what_for) = (setting.say(part.name), setting.say(part.what_for));
        row([name, what_for, part.pages.len().to_string(), copies], false)
    });
    rows.fold(row(head, true), |table, row| table.then(0.0, row)).grouped(Group::Table)
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
        let number = setting.block(&(at + 1).to_string(), Style::STRONG, 6.0);
        let words =
            setting.text(&setting.say(step), Style::BODY, wide - 8.0).grouped(Group::Body);
        let item = Piece::text(number, Role::Label).with(8.0, 0.0, words);
        list.then(1.0, item.grouped(Group::Item))
    });
    title.then(1.5, list.grouped(Group::List))
}

/// The cautions once more, since the adult reads this page first.
fn cautions(setting: &Setting, flow: &mut Flow) {
    let wide = flow.wide() - 2.0 * Flow::PADDING;
    let matrix = setting.booklet.matrix;
    let kinds: Vec<_> = safety::of_kinds(matrix).collect();
    let style = Style::LARGE.inked(Ink::Berry);
    let title = setting.heading(2, &setting.say("sheet-cautions"), style, wide - 11.0);
    let y = (8.0 - title.h) / 2.0;
    let mut pieces = vec![drawing::warning(8.0).with(11.0, y, title)];
    let everybody = safety::for_everybody(matrix);
    pieces.extend(everybody.map(|text| setting.text(text, Style::STRONG, wide)));
    let rules = setting.text(&safety::local_rules(setting.t()), Style::SMALL, wide);
    let each: Vec<_> = kinds
        .iter()
        .map(|(taxon, caution)| {
            let name = format!("{}: ", setting.name(*taxon));
            setting.runs(&[(&name, Style::SMALL_STRONG), (caution, Style::SMALL)], wide)
        })
        .collect();
    let high: f64 = pieces.iter().chain(&each).map(|piece| piece.h + 0.5).sum();
    if high + rules.h + 2.0 * Flow::PADDING + 4.0 <= flow.room() {
        pieces.extend(each);
    } else if !each.is_empty() {
        // One page is what an adult reads in the doorway: the whole list is in the key.
        let words = setting.t().count("sheet-many-cautions", each.len());
        pieces.push(setting.text(&words, Style::BODY, wide));
    }
    pieces.push(rules);
    let pen = Some(Pen::solid(0.6, Ink::Berry));
    flow.boxed(4.0, pieces, Boxed { fill: Some(Ink::Blush), pen, gap: 0.5 });
}

/// What the adults see to before they set out, each with a box to tick; nothing where nobody
/// wrote it down.
fn before_you_go(setting: &Setting, paper: Paper) -> Vec<Page> {
    let lines = &setting.booklet.matrix.scene().before_you_go;
    if lines.is_empty() {
        return Vec::new();
    }
    let frame = setting.frame(paper, false, "sheet-before-go", NOTES);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-before-go-adults"), false));
    let wide = flow.wide();
    let first = setting.say("sheet-rules-first");
    flow.put(5.0, setting.text(&first, Style::STRONG, wide));
    for line in lines {
        let tick = Piece::rectangle(5.0, 5.0, None, Some(Pen::solid(0.4, Ink::Ink)));
        let words = setting.text(line, Style::BODY, wide - 9.0);
        flow.put(4.0, tick.with(9.0, -0.8, words).grouped(Group::Section));
    }
    flow.put(6.0, setting.to_mind(wide));
    flow.lines_to_write_on(&setting.say("sheet-also-today"));
    flow.finish()
}
