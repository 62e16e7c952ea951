//! The key on few pages: two columns, for each group to carry.
//!
//! From a booklet to the numbered key without boxes to stick something in: a class of seven
//! groups takes half the paper. Cautions come before the first question, as on the key pages; a
//! kind has its sentence, and its picture where there is one. It neither checks nor mends the
//! key: what is missing is left as a line to write on.

use spinney_model::{Couplet, Destination, End, TaxonIx, Wording};

use crate::key_pages::{RULES, answer_words, back_words, cautions, words};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::{Boxed, Flow};
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Node, Page, Piece, Role, Sheet};
use crate::shown::{self, Answers, Shown};
use crate::{Booklet, Paper, drawing, fitting, lines};

/// Height of a tab and of the line beside it, in mm.
const ROW: f64 = 7.0;
/// The arrow behind a tab, in mm.
const ARROW: f64 = 7.0;
/// Between two questions, in mm: where there is room, and where there is not.
const GAPS: [f64; 2] = [5.5, 2.5];
/// A picture beside the words of an end, in mm.
const PICTURE: f64 = 24.0;
/// The drawing of an answer, in mm, and what is left beside it.
const SHOWN: f64 = 18.0;
const BESIDE: f64 = 1.5;

/// The key on few pages as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let pages = pages(&setting, paper);
    let title = setting.t().with("sheet-title-key", &[("title", &setting.title())]);
    setting.sheet(title, pages)
}

/// The pages, for a sheet of their own.
///
/// Large print of which a question has no room on a page is none: the sheet says so.
pub(crate) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    if is_too_long(setting, paper) {
        return pages(&setting.in_usual_letters(), paper);
    }
    roomy(|gap| laid(setting, paper, true, gap))
}

/// The pages where the words hang on the wall: they are left out if that saves a page.
pub(crate) fn beside_words(setting: &Setting, paper: Paper) -> Vec<Page> {
    if is_too_long(setting, paper) {
        return beside_words(&setting.in_usual_letters(), paper);
    }
    let with_words = pages(setting, paper);
    let without = roomy(|gap| laid(setting, paper, false, gap));
    if without.len() < with_words.len() { without } else { with_words }
}

/// Whether a question of large print alone is higher than a page.
fn is_too_long(setting: &Setting, paper: Paper) -> bool {
    let frame = setting.frame_of_key(paper, false, "sheet-key", OUR_GROUP);
    let high =
        |couplet| piece(setting, couplet, Look::ON_FEW_PAGES, frame.wide()).h > frame.deep();
    setting.is_large() && setting.booklet.key.couplets.iter().any(high)
}

/// A key to write on, for a lesson: what is done in place of the rules; `name` and `head` stand
/// above its pages.
pub(crate) fn to_write_on(
    setting: &Setting,
    paper: Paper,
    (name, head): (&str, &str),
    about: &str,
) -> Vec<Page> {
    roomy(|gap| {
        let frame = setting.frame(paper, false, name, OUR_GROUP);
        let mut flow = Flow::new(&setting.faces, &frame);
        flow.put(0.0, setting.masthead(&frame, head, false));
        flow.put(4.0, setting.text(about, Style::BODY, flow.wide()));
        cautions::put(setting, &mut flow, Style::SMALL);
        questions(setting, &mut flow, gap, Look { tells: false, ..Look::ON_FEW_PAGES });
        flow.lines_to_write_on(&setting.say("sheet-what-we-noticed"));
        flow.finish()
    })
}

/// As far apart as takes no page more.
fn roomy(laid: impl Fn(f64) -> Vec<Page>) -> Vec<Page> {
    let close = laid(GAPS[1]);
    let roomy = laid(GAPS[0]);
    if roomy.len() > close.len() { close } else { roomy }
}

fn laid(setting: &Setting, paper: Paper, with_words: bool, gap: f64) -> Vec<Page> {
    let frame = setting.frame_of_key(paper, false, "sheet-key", OUR_GROUP);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead_in_two(&frame, &setting.say("sheet-key"), true));
    if setting.is_not_large_after_all() {
        let why = setting.say("sheet-key-not-large");
        flow.put(2.0, setting.text(&why, Style::BODY, flow.wide()));
    }
    let look = Boxed { fill: Some(Ink::Tint), pen: None, gap: 1.0 };
    let how_to = how_to(setting, with_words, flow.wide() - 2.0 * Flow::PADDING);
    flow.boxed(3.0, vec![how_to], look);
    cautions::put(setting, &mut flow, Style::SMALL);
    questions(setting, &mut flow, gap, Look::ON_FEW_PAGES);
    if with_words {
        words::put(setting, &mut flow);
    }
    flow.lines_to_write_on(&setting.say("sheet-what-we-noticed"));
    flow.finish()
}

/// The rules of the key pages, small, and when to stop, which is said here once for all ends.
fn how_to(setting: &Setting, with_words: bool, wide: f64) -> Piece {
    let title = setting.heading(2, &setting.say("sheet-how-to"), Style::STRONG, wide);
    let newcomer = fitting::newcomer(setting.t(), fitting::anywhere(setting.booklet.matrix));
    let rule = |rule: &&str| match (*rule, with_words) {
        ("sheet-rule-word", false) => setting.say("sheet-rule-word-on-wall"),
        (rule, _) => setting.say(rule),
    };
    let rules = RULES.iter().map(rule).chain([newcomer]);
    let list = rules.zip(1..).fold(Piece::blank(wide, 0.0), |list, (rule, at)| {
        let number = setting.block(&format!("{at}"), Style::SMALL_STRONG, 6.0);
        let words = setting.text(&rule, Style::SMALL, wide - 6.0).grouped(Group::Body);
        let item = Piece::text(number, Role::Label).with(6.0, 0.0, words);
        list.then(0.2, item.grouped(Group::Item))
    });
    title.then(0.5, list.grouped(Group::List))
}

/// How the questions are set.
#[derive(Clone, Copy)]
pub(crate) struct Look<'a> {
    /// Whether a number that is not there is told; not where it is to be found.
    pub(crate) tells: bool,
    /// Questions, names and where a way goes on.
    pub(crate) letters: Style,
    /// Height of a tab and of the line beside it, and between two of them, in mm.
    pub(crate) row: f64,
    pub(crate) between: f64,
    /// Whether an end has the sentence that confirms it.
    pub(crate) sentences: bool,
    /// The most lines of a name or a lead; more is a text that nobody would print.
    pub(crate) lines: usize,
    /// Whether it has its picture.
    pub(crate) pictures: bool,
    /// What the answers look like, where that is drawn.
    pub(crate) shown: Option<&'a Answers>,
}

impl Look<'_> {
    const ON_FEW_PAGES: Look<'static> = Look {
        tells: true,
        letters: Style::STRONG,
        row: ROW,
        between: 1.2,
        sentences: true,
        lines: 6,
        pictures: true,
        shown: None,
    };
}

fn questions(setting: &Setting, flow: &mut Flow, gap: f64, look: Look<'_>) {
    let wide = flow.wide();
    let heading = setting.heading(2, &setting.say("sheet-questions"), Style::LARGE, wide);
    let column = if setting.is_large() { wide } else { (wide - words::BETWEEN) / 2.0 };
    let most = flow.deep() - heading.h - 3.0;
    let couplets = setting.booklet.key.couplets.iter();
    let pieces: Vec<_> = couplets
        .map(|couplet| {
            let whole = piece(setting, couplet, look, column);
            // Of an end with many long sentences the names are what nobody can do without.
            let bare = Look { sentences: false, ..look };
            if whole.h > most { piece(setting, couplet, bare, column) } else { whole }
        })
        .collect();
    let Some(first) = pieces.first() else {
        let none = setting.say("sheet-first-question");
        flow.put(5.0, heading.then(2.0, setting.text(&none, Style::BODY, wide)));
        return;
    };
    flow.put_with(4.0, heading, first.h + 3.0);
    words::columns(flow, pieces, column, gap);
}

/// A question with its two ways on, one beneath the other.
pub(crate) fn piece(setting: &Setting, couplet: &Couplet, look: Look<'_>, wide: f64) -> Piece {
    let number = setting.disc(&couplet.number.to_string(), Role::Paragraph);
    let left = number.w + 2.5;
    let words = match &couplet.wording {
        Wording::Question(text) if text.trim().is_empty() => {
            setting.say("sheet-write-question")
        }
        Wording::Question(text) => text.clone(),
        Wording::Leads { .. } => setting.say("sheet-which-fits"),
    };
    let back = back_words(setting, couplet.number, couplet.back);
    // Its brackets stay on one line.
    let back = format!(" {}", back.replace(' ', "\u{a0}"));
    let runs = [(words.as_str(), look.letters), (&*back, Style::SMALL.inked(Ink::Soft))];
    let mut words = heard_as(setting.runs(&runs, wide - left), &Role::Heading(3));
    let y = ((9.0 - words.h) / 2.0).max(0.6);
    if let Some(second) = setting.second_question(couplet, Style::SMALL, wide - left) {
        words = words.then(0.0, second);
    }
    let mut whole = number.with(left, y, words);
    if matches!(&couplet.wording, Wording::Question(text) if text.trim().is_empty()) {
        for _ in 0..2 {
            let y = whole.h + 7.5;
            whole = whole.with(left, y, Piece::rule(wide - left, Pen::solid(0.2, Ink::Soft)));
        }
    }
    if let Some(line) = cautions::line(setting, couplet.number, Style::SMALL, wide - left) {
        let y = whole.h + 0.5;
        whole = whole.with(left, y, line);
    }
    let ways =
        [true, false].map(|yes| way(setting, (couplet, yes), look, wide).grouped(Group::Item));
    let [yes, no] = ways;
    let ways = yes.then(look.between, no).grouped(Group::List);
    whole.then(1.2, ways).grouped(Group::Section)
}

/// One way on: the tab, the line, and where it leads; the lead where there is one.
fn way(
    setting: &Setting,
    (couplet, yes): (&Couplet, bool),
    look: Look<'_>,
    wide: f64,
) -> Piece {
    let to = if yes { &couplet.yes } else { &couplet.no };
    let answers = answer_words(setting.t(), couplet);
    let word = if yes { answers.0 } else { answers.1 };
    let (tab, second) = setting.tab_in_two(couplet, yes, &word, look.row / ROW);
    let arrow = drawing::arrow(ARROW, if yes { Dash::Solid } else { Dash::Dashed });
    let (beside, down) = (tab.w + 0.6, (look.row - 3.2) / 2.0);
    let start = beside + arrow.w + 1.4;
    let drawn = drawn(setting, (couplet, yes), look);
    let body = destination(setting, to, look, wide - start - drawn.w).moved(start, 0.0);
    let body = match drawn.h > 0.0 {
        true => body.with(wide - drawn.w, 0.0, drawn),
        false => body,
    };
    let body = match &couplet.wording {
        Wording::Question(_) => {
            let body = second.with(0.0, 0.0, body);
            tab.with(beside, down, arrow).with(0.0, 0.0, body.grouped(Group::Body))
        }
        Wording::Leads { yes: first, no: second } => {
            let lead = if yes { first } else { second };
            let lead = if lead.trim().is_empty() {
                setting.say("sheet-write-it")
            } else {
                lead.clone()
            };
            let (left, most) = (tab.w + 2.0, setting.lines(look.lines));
            let block = setting.block(&lead, Style::BODY, wide - left);
            let lead = Piece::text(block.at_most(&setting.faces, most), Role::Paragraph);
            let row = lead.h.max(look.row) + 0.5;
            let words = Piece::blank(wide, 0.0).with(left, 0.2, lead).with(0.0, row, body);
            tab.with(beside, row + down, arrow).with(0.0, 0.0, words.grouped(Group::Body))
        }
    };
    body.at_least(wide, look.row)
}

/// What an answer looks like, beside each other; nothing where it is not drawn.
fn drawn(setting: &Setting, (couplet, yes): (&Couplet, bool), look: Look<'_>) -> Piece {
    let of = |answers: &Answers| if yes { answers.yes.clone() } else { answers.no.clone() };
    let shown: Vec<Shown> = look.shown.map(of).unwrap_or_default();
    shown.iter().fold(Piece::default(), |row, one| {
        let heard = shown::heard(setting.booklet, couplet, yes, one);
        row.beside(BESIDE, lines::piece(&one.drawing, SHOWN, heard))
    })
}

/// Where an answer leads, beside its arrow.
fn destination(setting: &Setting, to: &Destination, look: Look<'_>, wide: f64) -> Piece {
    let most = setting.lines(look.lines);
    let line = |words: &str, style: Style| {
        let block = setting.block(words, style, wide).at_most(&setting.faces, most);
        let down = ((look.row - block.height) / 2.0).max(-0.2);
        Piece::blank(wide, look.row).with(0.0, down, Piece::text(block, Role::Paragraph))
    };
    match to {
        Destination::Couplet(number) => {
            let known = setting.booklet.key.couplets.iter().any(|c| c.number == *number);
            line(&setting.go_to(*number, known || !look.tells), look.letters)
        }
        Destination::End(at) => end(setting, at, look, wide),
        Destination::Missing => {
            let rule = Piece::rule(wide * 0.55, Pen::solid(0.2, Ink::Soft));
            line(&setting.say("sheet-where-to"), Style::BODY).with(wide * 0.4, 6.5, rule)
        }
    }
}

/// The name of an end, the sentence that confirms it, and a picture where there is one.
fn end(setting: &Setting, end: &End, look: Look<'_>, wide: f64) -> Piece {
    let pictured: Option<TaxonIx> = match end.taxa[..] {
        [only] => Some(only).filter(|only| look.pictures && setting.is_pictured(*only)),
        _ => None,
    };
    let room = wide - pictured.map_or(0.0, |_| PICTURE + 2.0);
    let most = setting.lines(look.lines);
    let name = setting.block(&setting.end_name(end), look.letters, room);
    let name = name.at_most(&setting.faces, most);
    let down = ((look.row - name.height) / 2.0).max(-0.2);
    let mut words =
        Piece::blank(room, look.row - 0.6).with(0.0, down, Piece::text(name, Role::Paragraph));
    if let Some(second) = setting.second_end(end, Style::SMALL, room) {
        words = words.then(0.0, second);
    }
    let several = end.taxa.len() + end.unrecognised.len() > 1;
    for taxon in end.taxa.iter().take(if look.sentences { 4 } else { 0 }) {
        let Some(sentence) = fitting::sentence(setting.booklet.matrix, *taxon) else {
            continue;
        };
        let name = format!("{}: ", setting.name(*taxon));
        let runs = [(name.as_str(), Style::SMALL_STRONG), (sentence, Style::SMALL)];
        let runs = if several { &runs[..] } else { &runs[1..] };
        words = words.then(0.0, setting.runs(runs, room));
    }
    match pictured {
        Some(taxon) => {
            let picture = setting.picture_box(Some(taxon), PICTURE, PICTURE);
            words.with(room + 2.0, 0.0, picture)
        }
        None => words,
    }
}

/// The same words, heard as something else.
fn heard_as(mut words: Piece, role: &Role) -> Piece {
    for node in &mut words.nodes {
        if let Node::Placed(placed) = node {
            placed.role = role.clone();
        }
    }
    words
}
