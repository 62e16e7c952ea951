//! The visit sheet: what the adults look at together before they set out, and a card for each
//! adult who goes with a group.
//!
//! From the cautions of these kinds and of the visit to one page for the adult who leads: what may
//! hurt, what is filled in on the day (never anybody's name), the usual advice with its document,
//! what to take along, a plan for 45 or 90 minutes, and what to drop if it rains. It decides
//! nothing: the rules of the place and trained people do. It is for adults, so it is set in 10 pt.
//!
//! Source: each piece of advice names its document, by a number and at the foot
//! (`docs/TRADE.md`, "Cautions"); where there is none it says so. The plan and the list of things
//! to take are common practice, without a source.
//!
//! Where cautions take a second page and leave room on it, everything for today prints the answer
//! list there: both are for the adult who leads.

mod adult_card;

use spinney_model::Instrument;

use crate::key_pages::cautions;
use crate::setting::{NOTES, Setting};
use crate::sheet::face::Weight;
use crate::sheet::flow::{Boxed, Flow};
use crate::sheet::frame::Frame;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Sheet};
use crate::{Booklet, Paper, drawing, safety, try_out};

pub(crate) use adult_card::{pages as cards, with_labels as cards_with_labels};

/// What adults read: 10 pt, so that one page holds it.
const SMALL: Style = Style::new(Weight::Regular, 10.0, 1.2);
/// The same, with weight.
const BOLD: Style = Style::new(Weight::Bold, 10.0, 1.2);
/// The documents at the foot.
const FOOT: Style = Style::new(Weight::Regular, 9.0, 1.2);
/// The heading of a part.
const PART: Style = Style::new(Weight::Bold, 12.0, 1.2);
/// Between two columns, in mm.
const BETWEEN: f64 = 7.0;
/// A box to tick, in mm.
const TICK: f64 = 3.6;

/// A piece of advice and the number of its document; 0: common practice, no source.
const ADVICE: [(&str, usize); 9] = [
    ("sheet-visit-hands", 1),
    ("sheet-visit-mouth", 2),
    ("sheet-visit-eaten", 2),
    ("sheet-visit-permission", 0),
    ("sheet-visit-take-little", 3),
    ("sheet-visit-boots", 4),
    ("sheet-visit-ticks", 5),
    ("sheet-visit-water", 6),
    ("sheet-visit-count", 0),
];

/// The documents, by their numbers from 1 on.
const DOCUMENTS: [&str; 6] = [
    "sheet-visit-document-hands",
    "sheet-visit-document-plants",
    "sheet-visit-document-picking",
    "sheet-visit-document-boots",
    "sheet-visit-document-ticks",
    "sheet-visit-document-water",
];

/// The visit sheet and the helpers' cards as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let mut all = pages(&setting, paper);
    all.extend(cards(&setting, paper));
    let title = setting.t().with("sheet-title-visit", &[("title", &setting.title())]);
    setting.sheet(title, all)
}

/// The page for the adult who leads; more where there are more cautions than it holds.
pub(crate) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    laid(setting, &setting.frame(paper, false, "sheet-visit", NOTES), |_| ())
}

/// The same with the answers at its end, and so with the standing of the key on each page; None:
/// that takes a page more.
pub(crate) fn with_answers(setting: &Setting, paper: Paper) -> Option<Vec<Page>> {
    let alone = pages(setting, paper);
    let frame = setting.frame_of_key(paper, false, "sheet-visit", NOTES);
    let both = laid(setting, &frame, |flow| try_out::answers_beneath(setting, flow));
    (both.len() == alone.len()).then_some(both)
}

fn laid(setting: &Setting, frame: &Frame, at_its_end: impl Fn(&mut Flow)) -> Vec<Page> {
    let mut flow = Flow::new(&setting.faces, frame);
    flow.put(0.0, setting.masthead(frame, &setting.say("sheet-visit-for"), true));
    let wide = flow.wide();
    flow.put(2.0, setting.text(&setting.say("sheet-rules-first"), BOLD, wide));
    flow.put(0.2, setting.text(&safety::local_rules(setting.t()), SMALL, wide));
    hazards(setting, &mut flow);
    // What is written on and advised takes more room than what is taken along.
    let (first, second) = ((wide - BETWEEN) * 0.54, (wide - BETWEEN) * 0.46);
    let left = advice(setting, first).then(1.6, to_fill_in(setting, first));
    let right = before(setting, second)
        .then(1.6, kit(setting, second))
        .then(1.6, plan(setting, second));
    let both = left.with(first + BETWEEN, 0.0, right);
    let sources = documents(setting, wide);
    if both.h + sources.h + 4.0 <= flow.room() {
        flow.put(2.5, both);
    } else {
        // More cautions, or more to see to, than one page holds: part by part.
        let parts = [
            advice(setting, wide),
            before(setting, wide),
            to_fill_in(setting, wide),
            kit(setting, wide),
            plan(setting, wide),
        ];
        parts.into_iter().filter(|part| part.h > 0.0).for_each(|part| flow.put(3.0, part));
    }
    flow.put(1.5, sources);
    at_its_end(&mut flow);
    flow.lines_to_write_on(&setting.say("sheet-for-myself"));
    flow.finish()
}

/// A heading and what stands beneath it, one under the other.
fn part(setting: &Setting, title: &str, rows: Vec<Piece>, wide: f64) -> Piece {
    let title = setting.heading(2, &setting.say(title), PART.inked(Ink::Hedge), wide);
    let whole = rows.into_iter().fold(title, |whole, row| whole.then(0.5, row));
    whole.grouped(Group::Section)
}

/// Words with a box to tick before them.
fn tick(setting: &Setting, words: &str, wide: f64) -> Piece {
    let words = setting.text(words, SMALL, wide - TICK - 2.0);
    drawing::tick_box(TICK).with(TICK + 2.0, -0.3, words)
}

/// Words with a line to write on behind them, or beneath where there is no room.
fn to_write(setting: &Setting, message: &str, lines: usize, wide: f64) -> Piece {
    let words = setting.text(&setting.say(message), SMALL, wide);
    let pen = Pen::solid(0.2, Ink::Soft);
    let (x, y) = (words.w + 1.5, 4.2);
    let first = if x + 12.0 < wide && words.h < 6.0 {
        words.with(x, y, Piece::rule(wide - x, pen))
    } else {
        words.then(4.6, Piece::rule(wide, pen))
    };
    (1..lines).fold(first, |whole, _| whole.then(5.6, Piece::rule(wide, pen)))
}

/// What may hurt on this visit, as somebody wrote it down.
fn hazards(setting: &Setting, flow: &mut Flow) {
    let wide = flow.wide() - 2.0 * Flow::PADDING;
    let matrix = setting.booklet.matrix;
    let style = PART.inked(Ink::Berry);
    let title = setting.heading(2, &setting.say("sheet-visit-hazards"), style, wide - 9.0);
    let mut pieces = vec![drawing::warning(6.0).with(8.5, 0.4, title)];
    pieces.extend(cautions::for_everybody(setting, BOLD, wide));
    let kinds: Vec<_> = safety::of_kinds(matrix).collect();
    let half = (wide - BETWEEN) / 2.0;
    // A long caution is as wide as the page, so that none is cut.
    let (long, short): (Vec<_>, Vec<_>) =
        kinds.iter().partition(|(_, caution)| setting.whole(caution).len() > 1);
    for kind in &long {
        pieces.extend(cautions::of_kind(setting, *kind, (BOLD, SMALL), wide));
    }
    for two in short.chunks(2) {
        let mut row = Piece::blank(wide, 0.0);
        for ((taxon, caution), x) in two.iter().zip([0.0, half + BETWEEN]) {
            let name = format!("{}: ", setting.name(*taxon));
            row = row.with(x, 0.0, setting.runs(&[(&name, BOLD), (caution, SMALL)], half));
        }
        pieces.push(row);
    }
    let said =
        if kinds.is_empty() { "sheet-visit-no-caution" } else { "sheet-visit-also-hurt" };
    pieces.push(to_write(setting, said, 1, wide));
    let pen = Some(Pen::solid(0.5, Ink::Berry));
    flow.boxed(2.5, pieces, Boxed { fill: Some(Ink::Blush), pen, gap: 0.4 });
}

/// The usual advice, each with the number of its document.
fn advice(setting: &Setting, wide: f64) -> Piece {
    let mark = 8.0;
    let rows = ADVICE.iter().map(|(message, document)| {
        let source = match document {
            0 => setting.say("sheet-visit-no-source"),
            number => format!("[{number}]"),
        };
        let source = setting.text(&source, FOOT.inked(Ink::Soft), mark);
        let x = wide - source.w;
        tick(setting, &setting.say(message), wide - mark).with(x, 0.2, source)
    });
    part(setting, "sheet-visit-advice", rows.collect(), wide)
}

/// What the visit's own adults wrote down to see to.
fn before(setting: &Setting, wide: f64) -> Piece {
    let lines = &setting.booklet.matrix.scene().before_you_go;
    if lines.is_empty() {
        return Piece::blank(wide, 0.0);
    }
    let rows = lines.iter().map(|line| tick(setting, line, wide)).collect();
    part(setting, "sheet-before-go", rows, wide)
}

/// What is filled in on the day; nobody's name.
fn to_fill_in(setting: &Setting, wide: f64) -> Piece {
    let rows = [
        ("sheet-visit-help", 2),
        ("sheet-visit-signal", 1),
        ("sheet-visit-first-aid", 1),
        ("sheet-visit-allergies", 2),
        ("sheet-visit-allowed", 1),
    ];
    let rows = rows.map(|(message, lines)| to_write(setting, message, lines, wide));
    let no_names = setting.text(&setting.say("sheet-visit-no-names"), FOOT, wide);
    part(setting, "sheet-visit-fill-in", rows.into_iter().chain([no_names]).collect(), wide)
}

/// What to take along: a ruler or a lens only where the key asks for one.
fn kit(setting: &Setting, wide: f64) -> Piece {
    let booklet = setting.booklet;
    let asked = |instrument: Instrument| {
        let asks = booklet.key.couplets.iter().filter_map(|couplet| couplet.ask.as_ref());
        asks.filter_map(|ask| booklet.matrix.characters().get(ask.character.0))
            .any(|character| character.instrument == instrument)
    };
    let tools = [
        (true, "sheet-visit-kit-groups"),
        (asked(Instrument::Ruler), "sheet-visit-kit-ruler"),
        (asked(Instrument::Lens), "sheet-visit-kit-lens"),
        (true, "sheet-visit-kit-numbers"),
        (true, "sheet-visit-kit-first-aid"),
        (true, "sheet-visit-kit-hands"),
    ];
    let rows = tools.into_iter().filter(|(wanted, _)| *wanted);
    let rows = rows.map(|(_, message)| tick(setting, &setting.say(message), wide));
    part(setting, "sheet-visit-kit", rows.collect(), wide)
}

/// What is done when: the minute at which it begins on a short and on a long visit.
const PLAN: [(&str, Option<u8>, Option<u8>); 6] = [
    ("sheet-visit-plan-rules", Some(0), Some(0)),
    ("sheet-visit-plan-find", Some(5), Some(10)),
    ("sheet-visit-plan-key", Some(15), Some(25)),
    ("sheet-visit-plan-tick", Some(30), Some(45)),
    ("sheet-visit-plan-own", None, Some(55)),
    ("sheet-visit-plan-end", Some(40), Some(80)),
];

/// A plan for 45 and for 90 minutes.
fn plan(setting: &Setting, wide: f64) -> Piece {
    let (minutes, group) = (15.0, Group::Cell);
    let row = |short: &str, long: &str, what: &str, style: Style, group: Group| {
        let x = 2.0 * minutes;
        let what = setting.text(what, style, wide - x).grouped(group);
        let row = Piece::blank(wide, 0.0)
            .with(0.0, 0.0, setting.text(short, style, minutes).grouped(group))
            .with(minutes, 0.0, setting.text(long, style, minutes).grouped(group))
            .with(x, 0.0, what);
        row.grouped(Group::Row)
    };
    let head = row(
        &setting.t().with("sheet-visit-minutes", &[("minutes", &45)]),
        &setting.t().with("sheet-visit-minutes", &[("minutes", &90)]),
        &setting.say("sheet-visit-what"),
        BOLD.inked(Ink::Hedge),
        Group::ColumnHead,
    );
    let at = |minute: Option<u8>| minute.map_or_else(|| "–".to_owned(), |at| at.to_string());
    let table = PLAN.iter().fold(head, |table, (message, short, long)| {
        table.then(0.5, row(&at(*short), &at(*long), &setting.say(message), SMALL, group))
    });
    let rain = setting.text(&setting.say("sheet-visit-rain"), SMALL, wide);
    part(setting, "sheet-visit-plan", vec![table.grouped(Group::Table), rain], wide)
}

/// The documents that the numbers name.
fn documents(setting: &Setting, wide: f64) -> Piece {
    let named = DOCUMENTS.iter().zip(1..).map(|(message, number)| {
        let document = setting.say(message);
        format!("[{number}] {document}")
    });
    let named: Vec<_> = named.chain([setting.say("sheet-visit-document-none")]).collect();
    let style = FOOT.inked(Ink::Soft);
    let runs = named.iter().enumerate().flat_map(|(at, document)| {
        let between = if at == 0 { "" } else { " · " };
        [(between, style), (document.as_str(), style)]
    });
    let runs: Vec<_> = runs.filter(|(words, _)| !words.is_empty()).collect();
    setting.runs(&runs, wide)
}
