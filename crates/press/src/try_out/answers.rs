//! The adult's answer list: the right way, or ways, of every kind.

use spinney_model::{Answer, TaxonIx, Walk};

use crate::Paper;
use crate::key_pages::answer_words;
use crate::setting::{NOTES, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};

/// The most ways of one kind that are printed.
const MOST: usize = 6;
/// The most answers of one way that are printed: what fits into eight lines.
const MOST_STEPS: usize = 30;
/// From what stands above a table to the table, in mm.
const ABOVE: f64 = 4.0;
/// What a row takes above and beneath its words, in mm.
const AROUND: f64 = 3.6;

/// The pages of the list.
pub(super) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let frame = setting.frame_of_key(paper, false, "sheet-answers", NOTES);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-answers"), false));
    let words = setting.say("sheet-answers-about");
    flow.put(4.0, setting.text(&words, Style::SMALL, flow.wide()));
    flow.put(1.0, setting.to_mind(flow.wide()));
    table(setting, &mut flow);
    flow.lines_to_write_on(&setting.say("sheet-to-mend"));
    flow.finish()
}

/// The list beneath what an adult reads already: its heading and the ways.
pub(super) fn put_beneath(setting: &Setting, flow: &mut Flow) {
    let wide = flow.wide();
    flow.put(6.0, setting.heading(2, &setting.say("sheet-answers"), Style::LARGE, wide));
    flow.put(1.0, setting.text(&setting.say("sheet-answers-about"), Style::SMALL, wide));
    table(setting, flow);
}

fn table(setting: &Setting, flow: &mut Flow) {
    let wide = flow.wide();
    let widths = match setting.is_large() {
        true => [wide * 0.3, wide * 0.5, wide * 0.2],
        false => [wide * 0.28, wide * 0.58, wide * 0.14],
    };
    let heads = heads(setting, widths);
    let deepest = flow.deep() - heads.h - ABOVE;
    let mut rows = Vec::new();
    for taxon in setting.booklet.matrix.taxon_indices() {
        rows.push(row(setting, taxon, widths, deepest));
    }
    flow.table(ABOVE, &heads, rows);
}

fn heads(setting: &Setting, widths: [f64; 3]) -> Piece {
    let cells = ["sheet-column-kind", "sheet-column-answers", "sheet-column-number"];
    let mut x = 0.0;
    let mut row = Piece::blank(widths.iter().sum(), 0.0);
    for (words, width) in cells.into_iter().zip(widths) {
        let style = Style::SMALL_STRONG.inked(Ink::Hedge);
        let text = setting.text(&setting.say(words), style, width - 3.0);
        row = row.with(x, 0.0, text.grouped(Group::ColumnHead));
        x += width;
    }
    ruled(row.grouped(Group::Row), Pen::solid(0.5, Ink::Hedge))
}

/// The row of a kind, no higher than what stands beneath the heads of a page.
fn row(
    setting: &Setting,
    taxon: TaxonIx,
    [name, ways, number]: [f64; 3],
    deepest: f64,
) -> Piece {
    let walks: Vec<_> =
        setting.booklet.walks.iter().filter(|walk| walk.taxon == taxon).collect();
    let title = setting.block(&setting.name(taxon), Style::SMALL_STRONG, name - 3.0);
    let title = title.at_most(&setting.faces, setting.lines(3));
    let title = Piece::text(title, Role::Paragraph);
    let mut list = Piece::blank(ways - 3.0, 0.0);
    let small = |words: &str| setting.text(words, Style::SMALL, ways - 3.0);
    let more = |left: usize| small(&setting.t().count("sheet-more-ways", left));
    let mut shown = 0;
    for walk in walks.iter().take(MOST) {
        let way = small(&way(setting, walk));
        let left = walks.len() - shown - 1;
        let rest = if left > 0 { 0.5 + more(left).h } else { 0.0 };
        if list.h + 0.5 + way.h + rest + AROUND > deepest && shown > 0 {
            break;
        }
        list = list.then(0.5, way);
        shown += 1;
    }
    if walks.is_empty() {
        list = small(&setting.say("sheet-lost"));
    }
    if shown < walks.len() {
        list = list.then(0.5, more(walks.len() - shown));
    }
    let blank = Piece::rule(number - 4.0, Pen::solid(0.2, Ink::Soft));
    let row = Piece::blank(name + ways + number, 0.0)
        .with(0.0, 1.6, title.grouped(Group::RowHead))
        .with(name, 1.6, list.grouped(Group::Cell))
        .with(name + ways, 7.0, blank);
    ruled(row.grouped(Group::Row), Pen::solid(0.2, Ink::Soft))
}

/// A row with a rule beneath it.
fn ruled(row: Piece, pen: Pen) -> Piece {
    let (w, y) = (row.w, row.h + 1.6);
    row.with(0.0, y, Piece::rule(w, pen))
}

/// `1 yes · 2 no · 3 yes`, and what became of it.
fn way(setting: &Setting, walk: &Walk) -> String {
    let (t, couplets) = (setting.t(), &setting.booklet.key.couplets);
    let steps = walk.steps.iter().map(|step| {
        let couplet = couplets.iter().find(|couplet| couplet.number == step.couplet);
        let words = couplet.map_or_else(
            || (t.say("answer-yes"), t.say("answer-no")),
            |couplet| answer_words(t, couplet),
        );
        let answer = if step.answer == Answer::Yes { words.0 } else { words.1 };
        format!("{} {answer}", step.couplet)
    });
    let mut steps: Vec<_> = steps.collect();
    if steps.len() > MOST_STEPS {
        let more = steps.len() - MOST_STEPS;
        steps.truncate(MOST_STEPS);
        steps.push(t.count("sheet-more-answers", more));
    }
    let way = if steps.is_empty() { t.say("sheet-at-once") } else { steps.join(" · ") };
    if walk.arrived { way } else { t.with("sheet-not-out", &[("way", &way)]) }
}
