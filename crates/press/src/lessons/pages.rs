//! The pages of the lessons, one function each.

use std::collections::BTreeSet;

use spinney_model::{Destination, Key, TaxonIx, Wording};

use super::Lesson;
use super::planted::{self, Fault};
use crate::setting::{NOTES, OUR_GROUP, Setting};
use crate::sheet::flow::{Boxed, Flow};
use crate::sheet::frame::Frame;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role};
use crate::{Booklet, Paper, Stamp, copies, cut, drawing, fitting, safety, short_key, try_out};

/// A line to write on.
fn line(wide: f64) -> Piece {
    Piece::rule(wide, Pen::solid(0.2, Ink::Soft))
}

/// Words, and a line to write on behind them.
fn ask(setting: &Setting, words: &str, wide: f64) -> Piece {
    let words = setting.text(words, Style::BODY, wide);
    let x = words.w + 2.0;
    if words.h > 8.0 || x + 25.0 > wide {
        return words.then(8.0, line(wide));
    }
    let y = words.h - 0.9;
    words.with(x, y, line(wide - x))
}

/// The first page of a lesson: its title, and what is done.
fn begun<'f>(setting: &'f Setting, frame: &'f Frame, lesson: &Lesson, about: &str) -> Flow<'f> {
    let mut flow = Flow::new(&setting.faces, frame);
    flow.put(0.0, setting.masthead(frame, &lesson.head(setting), false));
    flow.put(4.0, setting.text(&setting.say(about), Style::BODY, flow.wide()));
    flow
}

/// Pasta is laid into boxes and sorted by questions.
pub(super) fn pasta(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let frame = setting.frame(paper, false, lesson.name, OUR_GROUP);
    let mut flow = begun(setting, &frame, lesson, "sheet-pasta-about");
    let wide = flow.wide();
    let words = setting.text(&setting.say("sheet-pasta-caution"), Style::SMALL, wide - 8.0);
    flow.put(2.0, drawing::warning(5.5).with(8.0, 0.0, words));
    let (across, down, high) = (4, 2, 23.0);
    let width = wide / f64::from(across);
    let mut boxes = Piece::blank(wide, 0.0);
    for at in 0..across * down {
        let (column, row) = (f64::from(at % across), f64::from(at / across));
        let number = setting.disc(&(at + 1).to_string(), Role::Paragraph);
        let pen = Some(Pen::solid(0.3, Ink::Soft));
        let place = Piece::rectangle(width - 4.0, high, None, pen).with(2.0, 2.0, number);
        boxes = boxes.with(column * width + 2.0, row * (high + 4.0), place);
    }
    flow.put(4.0, boxes.grouped(Group::Section));
    let first = setting.say("sheet-pasta-first");
    flow.put(5.0, try_out::question(setting, 1, Some(&first), wide));
    for number in 2..8 {
        let question = try_out::question(setting, number, None, wide);
        if question.h + 4.0 > flow.room() {
            break;
        }
        flow.put(4.0, question);
    }
    flow.finish()
}

/// A key with some ends and questions left to write.
pub(super) fn half_done(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let (key, left) = halved(setting.booklet.key);
    if left.len() < 2 {
        return Vec::new();
    }
    let names: Vec<_> = left.iter().map(|kind| setting.name(*kind)).collect();
    let about = setting.t().with("sheet-half-about", &[("kinds", &names.join(", "))]);
    exercise(setting, paper, lesson, (&key, &about))
}

/// The key without every second name, and without every third question but the first; and the
/// kinds that are to be put in.
fn halved(key: &Key) -> (Key, BTreeSet<TaxonIx>) {
    let (mut key, mut left, mut ends) = (key.clone(), BTreeSet::new(), 0);
    for (at, couplet) in key.couplets.iter_mut().enumerate() {
        for to in [&mut couplet.yes, &mut couplet.no] {
            let Destination::End(end) = to else { continue };
            ends += 1;
            if ends % 2 == 0 {
                left.extend(end.taxa.iter().copied());
                *to = Destination::Missing;
            }
        }
        if at % 3 == 2 && matches!(couplet.wording, Wording::Question(_)) {
            couplet.wording = Wording::Question(String::new());
        }
    }
    (key, left)
}

/// A key with three faults.
pub(super) fn with_faults(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let Some(faults) = planted::faults(setting.booklet.key) else { return Vec::new() };
    let key = planted::planted(setting.booklet.key, &faults);
    exercise(setting, paper, lesson, (&key, &setting.say("sheet-faults-about")))
}

/// Another key than the booklet's own, to write on.
fn exercise(
    setting: &Setting,
    paper: Paper,
    lesson: &Lesson,
    (key, about): (&Key, &str),
) -> Vec<Page> {
    let booklet = Booklet { key, stamp: Stamp::None, ..setting.booklet.clone() };
    let of_this = Setting::new(&booklet);
    short_key::to_write_on(&of_this, paper, (lesson.name, &lesson.head(setting)), about)
}

/// What the three faults are.
pub(super) fn answers(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let Some(faults) = planted::faults(setting.booklet.key) else { return Vec::new() };
    let frame = setting.frame(paper, false, lesson.name, NOTES);
    let mut flow = begun(setting, &frame, lesson, "sheet-faults-answers-about");
    let wide = flow.wide();
    for fault in &faults {
        let words = setting.text(&fault_in_words(setting, fault), Style::BODY, wide - 9.0);
        flow.put(4.0, drawing::tick_box(5.0).with(9.0, -0.8, words).grouped(Group::Section));
    }
    let how = setting.text(&setting.say("sheet-faults-how"), Style::BODY, wide);
    flow.put(6.0, how);
    flow.lines_to_write_on(&setting.say("sheet-notes-on-lesson"));
    flow.finish()
}

fn fault_in_words(setting: &Setting, fault: &Fault) -> String {
    let t = setting.t();
    let answer = |yes: bool| t.say(if yes { "answer-yes" } else { "answer-no" });
    match fault {
        Fault::Swapped { question } => t.with("sheet-fault-swapped", &[("question", question)]),
        Fault::Lost { question, at_yes, kind, instead } => t.with(
            "sheet-fault-lost",
            &[
                ("question", question),
                ("answer", &answer(*at_yes)),
                ("kind", &setting.name(*kind)),
                ("instead", &setting.name(*instead)),
            ],
        ),
        Fault::NumberMissing { question, at_yes, number, instead } => t.with(
            "sheet-fault-number",
            &[
                ("question", question),
                ("answer", &answer(*at_yes)),
                ("number", number),
                ("instead", instead),
            ],
        ),
    }
}

/// A kind that the key does not have gets a place in it.
pub(super) fn add_one(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let frame = setting.frame(paper, false, lesson.name, OUR_GROUP);
    let mut flow = begun(setting, &frame, lesson, "sheet-add-about");
    let wide = flow.wide();
    flow.put(2.0, setting.to_mind(wide));
    let steps = [
        ("sheet-add-called", 0),
        ("sheet-add-came-out", 0),
        ("sheet-add-differ", 2),
        ("sheet-add-question", 1),
        ("sheet-add-yes", 0),
        ("sheet-add-no", 0),
        ("sheet-add-again", 0),
    ];
    for ((step, lines), number) in steps.into_iter().zip(1..) {
        let number = setting.block(&format!("{number}"), Style::STRONG, 8.0);
        let words = ask(setting, &setting.say(step), wide - 9.0);
        let words = (0..lines).fold(words, |words, _| words.then(8.5, line(wide - 9.0)));
        let row = Piece::text(number, Role::Paragraph).with(9.0, 0.0, words);
        flow.put(5.5, row.grouped(Group::Section));
    }
    let high = (flow.room() - 8.0).min(75.0);
    if high > 25.0 {
        flow.put(6.0, setting.empty_box(wide, high, &setting.say("sheet-draw-it")));
    }
    flow.finish()
}

/// A slip for each group: somebody may have found a newcomer.
pub(super) fn newcomers(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let frame = setting.frame(paper, false, lesson.name, NOTES);
    let wanted = copies::For::EachGroup.count(setting.class());
    cut::cards(setting, &frame, (wanted, 2), |wide, high| newcomer(setting, wide, high))
}

fn newcomer(setting: &Setting, wide: f64, high: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-newcomer-title"), Style::LARGE, wide);
    let square = 74.0;
    let room = wide - square - 6.0;
    let asks = [
        ("sheet-our-group", 0),
        ("sheet-newcomer-where", 0),
        ("sheet-newcomer-came-out", 0),
        ("sheet-newcomer-not-fit", 2),
        ("sheet-newcomer-question", 2),
    ];
    let mut words = Piece::blank(room, 0.0);
    for (message, lines) in asks {
        let asked = ask(setting, &setting.say(message), room);
        let asked = (0..lines).fold(asked, |asked, _| asked.then(8.0, line(room)));
        words = words.then(4.5, asked);
    }
    let place = setting.empty_box(square, square, &setting.say("sheet-draw-it"));
    let left = setting.text(&setting.say("sheet-newcomer-leave"), Style::SMALL, wide);
    let y = title.h + 2.0;
    Piece::blank(wide, high)
        .with(0.0, 0.0, title)
        .with(0.0, y, words)
        .with(room + 6.0, y, place)
        .with(0.0, high - left.h, left)
        .grouped(Group::Section)
}

/// What can be wrong with a key, to tick.
const WRONG: [&str; 6] = [
    "sheet-other-cannot-tell",
    "sheet-other-word",
    "sheet-other-both",
    "sheet-other-neither",
    "sheet-other-nowhere",
    "sheet-other-name",
];

/// Where the key of another group failed.
pub(super) fn other_key(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let frame = setting.frame(paper, false, lesson.name, OUR_GROUP);
    let mut flow = begun(setting, &frame, lesson, "sheet-other-about");
    let wide = flow.wide();
    flow.put(4.0, ask(setting, &setting.say("sheet-other-whose"), wide));
    let mut number = 1;
    while number <= 8 {
        let row = try_of_other(setting, wide);
        if row.h + 5.5 > flow.room() {
            break;
        }
        flow.put(5.5, row);
        number += 1;
    }
    flow.finish()
}

fn try_of_other(setting: &Setting, wide: f64) -> Piece {
    let half = (wide - 6.0) / 2.0;
    let first = ask(setting, &setting.say("sheet-other-number"), half);
    let second = ask(setting, &setting.say("sheet-other-question"), half);
    let head = Piece::blank(wide, 0.0).with(0.0, 0.0, first).with(half + 6.0, 0.0, second);
    let third = wide / 3.0;
    let mut ticks = Piece::blank(wide, 0.0);
    for (at, wrong) in WRONG.iter().enumerate() {
        let (column, row) = ((at % 3) as f64, (at / 3) as f64);
        let words = setting.text(&setting.say(wrong), Style::SMALL, third - 9.0);
        let tick = drawing::tick_box(4.5).with(6.5, -0.6, words);
        ticks = ticks.with(column * third, row * 7.0 + 0.6, tick);
    }
    let advice = ask(setting, &setting.say("sheet-other-advice"), wide);
    head.then(3.0, ticks).then(1.5, advice).grouped(Group::Section)
}

/// What children can do now, a row for each by a number of its own.
pub(super) fn can_do(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let frame = setting.frame(paper, false, lesson.name, NOTES);
    let mut flow = begun(setting, &frame, lesson, "sheet-can-about");
    let wide = flow.wide();
    let widths = [0.12, 0.22, 0.22, 0.22, 0.22].map(|share| share * wide);
    let heads = [
        "sheet-tried-number",
        "sheet-can-sort",
        "sheet-can-ask",
        "sheet-can-words",
        "sheet-can-mend",
    ];
    let mut head = Piece::blank(wide, 0.0);
    let mut x = 0.0;
    for (message, width) in heads.into_iter().zip(widths) {
        let style = Style::SMALL_STRONG.inked(Ink::Hedge);
        let text = setting.text(&setting.say(message), style, width - 3.0);
        head = head.with(x, 0.0, text.grouped(Group::ColumnHead));
        x += width;
    }
    let y = head.h + 1.0;
    let head = head.grouped(Group::Row);
    let head = head.with(0.0, y, Piece::rule(wide, Pen::solid(0.5, Ink::Hedge)));
    let children = setting.class().children;
    let room = flow.room() - 4.0 - head.h - 0.5;
    let high = (room / children as f64).clamp(5.6, 12.0);
    let row = |number: usize| {
        let number = setting.block(&number.to_string(), Style::SMALL_STRONG, widths[0]);
        let y = (high - number.height) / 2.0;
        let number = Piece::text(number, Role::Paragraph).grouped(Group::RowHead);
        let mut row = Piece::blank(wide, high).with(0.0, y, number);
        let mut x = 0.0;
        for width in &widths[..4] {
            x += width;
            row = row.with(x - 2.0, 0.0, Piece::upright(high, Pen::solid(0.2, Ink::Soft)));
        }
        row.grouped(Group::Row).with(0.0, high - 0.2, line(wide))
    };
    flow.table(4.0, &head, (1..=children).map(row).collect());
    flow.lines_to_write_on(&setting.say("sheet-notes-on-lesson"));
    flow.finish()
}

/// What a child tells at home.
pub(super) fn home(setting: &Setting, paper: Paper, lesson: &Lesson) -> Vec<Page> {
    let frame = setting.frame(paper, false, lesson.name, OUR_GROUP);
    let mut flow = begun(setting, &frame, lesson, "sheet-home-about");
    let wide = flow.wide();
    let column = (wide - 8.0) / 2.0;
    let matrix = setting.booklet.matrix;
    let warned: BTreeSet<TaxonIx> = safety::of_kinds(matrix).map(|(kind, _)| kind).collect();
    let kind = |kind: TaxonIx| {
        let name = setting.name(kind);
        let mut words = setting.text(&name, Style::STRONG, column - 17.0);
        if let Some(sentence) = fitting::sentence(matrix, kind) {
            words = words.then(0.0, setting.text(sentence, Style::SMALL, column - 17.0));
        }
        let mut row = drawing::tick_box(5.0);
        if warned.contains(&kind) {
            row = row.with(column - 8.0, 0.2, drawing::warning(5.5));
        }
        row.with(8.0, -0.8, words).grouped(Group::Section)
    };
    let kinds: Vec<_> = matrix.taxon_indices().map(kind).collect();
    flow.put(3.0, setting.heading(2, &setting.say("sheet-home-seen"), Style::LARGE, wide));
    crate::key_pages::words::columns(&mut flow, kinds, column, 2.5);
    if !warned.is_empty() {
        let words = setting.text(&setting.say("sheet-home-warned"), Style::SMALL, wide - 8.0);
        flow.put(2.0, drawing::warning(5.5).with(8.0, 0.0, words));
    }
    let rules = setting.text(&safety::local_rules(setting.t()), Style::SMALL, wide);
    flow.put(1.0, rules);
    let wide_inside = wide - 2.0 * Flow::PADDING;
    let mut pieces =
        vec![setting.heading(2, &setting.say("sheet-home-try"), Style::LARGE, wide_inside)];
    pieces.push(setting.text(&setting.say("sheet-home-try-about"), Style::BODY, wide_inside));
    pieces.push(ask(setting, &setting.say("sheet-home-question"), wide_inside));
    flow.boxed(4.0, pieces, Boxed { fill: Some(Ink::Tint), pen: None, gap: 1.5 });
    flow.lines_to_write_on(&setting.say("sheet-home-remember"));
    flow.finish()
}
