//! Words to look at: the words that this key uses, each drawn beside what it is taken for.
//!
//! From a booklet to a sheet for the wall or a group's table. A word of which nobody has a true
//! drawing is explained in words alone; where nothing is drawn there is no such sheet.
//!
//! Source: the words and their look-alikes as the word list gives them; two pictures beside each
//! other, what it is and what it is not, are common practice, without a source.

use spinney_model::{DrawnWord, Figure};

use crate::glossary::{self, Entry};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper, lines};

/// The height of a drawing, in mm: the least at which every word of the list can be told.
const HIGH: f64 = 18.0;
/// A drawing with its caption, in mm.
const FIGURE: f64 = 27.0;
/// The same in large print, at most: it stands beneath the words.
const LARGE_HIGH: f64 = 24.0;
const LARGE_FIGURE: f64 = 42.0;
/// Between the words and the drawings, and between two drawings, in mm.
const BETWEEN: f64 = 3.0;
/// Between two rows of words, in mm, less than what is moved apart on a full page: where there is
/// room, and where it saves a page.
const GAPS: [f64; 2] = [3.5, 1.5];
/// Between two columns of them, in mm.
const COLUMNS: f64 = 8.0;

/// Whether any word of the key is drawn.
pub fn has_something(booklet: &Booklet) -> bool {
    words(booklet).iter().any(|(_, drawn)| drawn.is_some())
}

/// The words of a key, each with its drawings.
fn words(booklet: &Booklet) -> Vec<(Entry, Option<DrawnWord>)> {
    let about_leaves = glossary::about_leaves(booklet);
    let words = glossary::words_used(booklet).into_iter();
    let drawn = |entry: Entry| {
        let drawn = (booklet.drawn.word)(entry.id, about_leaves);
        (entry, drawn)
    };
    words.map(drawn).collect()
}

/// The words as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-words", &[("title", &setting.title())]);
    setting.sheet(title, pages(&setting, paper))
}

/// The pages; none where no word is drawn.
pub(crate) fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let words = words(setting.booklet);
    if words.iter().all(|(_, drawn)| drawn.is_none()) {
        return Vec::new();
    }
    let [roomy, close] = GAPS.map(|gap| laid(setting, paper, &words, gap));
    if close.len() < roomy.len() { close } else { roomy }
}

fn laid(
    setting: &Setting,
    paper: Paper,
    words: &[(Entry, Option<DrawnWord>)],
    gap: f64,
) -> Vec<Page> {
    let frame = setting.frame(paper, false, "sheet-words", OUR_GROUP);
    let mut flow = Flow::new(&setting.faces, &frame);
    flow.put(0.0, setting.masthead(&frame, &setting.say("sheet-words-to-look-at"), false));
    let wide = flow.wide();
    let (mut first, mut in_words_alone) = (true, Vec::new());
    for (entry, drawn) in words {
        let Some(drawn) = drawn else {
            in_words_alone.push(entry);
            continue;
        };
        let row = row(setting, entry, drawn, wide);
        let rule = Piece::rule(wide, Pen::solid(0.2, Ink::Soft));
        flow.put(gap, if first || flow.fresh() { row } else { rule.then(gap.min(2.0), row) });
        first = false;
    }
    let (across, column) = match setting.is_large() {
        true => (1, wide),
        false => (2, (wide - COLUMNS) / 2.0),
    };
    for (at, two) in in_words_alone.chunks(across).enumerate() {
        let mut both = in_words(setting, two[0], column);
        if let Some(second) = two.get(1) {
            both = both.with(column + COLUMNS, 0.0, in_words(setting, second, column));
        }
        let rule = Piece::rule(wide, Pen::solid(0.2, Ink::Soft));
        let both = if at == 0 && !flow.fresh() { rule.then(3.0, both) } else { both };
        flow.put(gap, both);
    }
    flow.finish()
}

/// One word: what it says on the left, its drawings on the right.
fn row(setting: &Setting, entry: &Entry, drawn: &DrawnWord, wide: f64) -> Piece {
    let (own, other) = (drawn.own.len() as f64, drawn.other.len() as f64);
    let (high, figure) = match setting.is_large() {
        true => {
            let each = (wide - (own + other - 1.0) * BETWEEN) / (own + other);
            (LARGE_HIGH, each.min(LARGE_FIGURE))
        }
        false => (HIGH, widest_word(setting, drawn).max(FIGURE)),
    };
    let figures = (own + other) * figure + (own + other - 1.0) * BETWEEN;
    let mut x = wide - figures;
    // Large words have the whole width, and their drawings stand beneath.
    let (mut whole, y) = match setting.is_large() {
        true => {
            let words = in_words(setting, entry, wide);
            x = 0.0;
            let y = words.h + 2.0;
            (words, y)
        }
        false => (in_words(setting, entry, x - 2.0 * BETWEEN).at_least(x, high), 0.0),
    };
    for (at, shown) in drawn.own.iter().chain(&drawn.other).enumerate() {
        let is_other = at >= drawn.own.len();
        if is_other && at == drawn.own.len() {
            let rule = Piece::upright(high + 6.0, Pen::dashed(0.3, Ink::Soft));
            whole = whole.with(x - BETWEEN / 2.0, y, rule);
        }
        whole = whole.with(x, y, captioned(setting, entry, (shown, is_other), (figure, high)));
        x += figure + BETWEEN;
    }
    whole.grouped(Group::Section)
}

/// The widest word of the captions, in mm: a caption breaks between words and behind a hyphen.
fn widest_word(setting: &Setting, drawn: &DrawnWord) -> f64 {
    let of = |figures: &[Figure], style: Style| {
        let captions = figures.iter().map(|figure| caption(setting, figure));
        let wide = captions.map(|caption| {
            let words = caption.split_inclusive([' ', '-']).map(str::trim);
            let wide = words.map(|word| setting.caption(word, style, f64::INFINITY).width);
            wide.fold(0.0, f64::max)
        });
        wide.fold(0.0, f64::max)
    };
    of(&drawn.own, Style::SMALL_STRONG).max(of(&drawn.other, Style::SMALL)) + 0.1
}

fn caption(setting: &Setting, figure: &Figure) -> String {
    setting.say(&format!("words-draw-{}", figure.caption))
}

fn captioned(
    setting: &Setting,
    entry: &Entry,
    (figure, is_other): (&Figure, bool),
    (wide, high): (f64, f64),
) -> Piece {
    let t = setting.t();
    let caption = caption(setting, figure);
    let (style, heard) = match is_other {
        true => {
            let other: [(&str, &dyn std::fmt::Display); 2] =
                [("word", &entry.word), ("caption", &caption)];
            (Style::SMALL.inked(Ink::Soft), t.with("sheet-not-word", &other))
        }
        false => (Style::SMALL_STRONG, caption.clone()),
    };
    let drawing = lines::piece(&figure.drawing, high, heard);
    let x = (wide - drawing.w) / 2.0;
    let words = match is_other {
        true => t.with("sheet-not", &[("caption", &caption)]),
        false => caption,
    };
    let block = setting.caption(&words, style, wide).centred(wide);
    Piece::blank(wide, high).with(x, 0.0, drawing).with(
        0.0,
        high + 1.0,
        Piece::text(block, Role::Caption),
    )
}

fn in_words(setting: &Setting, entry: &Entry, wide: f64) -> Piece {
    let name = setting.heading(2, &entry.word, Style::LARGE.inked(Ink::Hedge), wide);
    let plain = setting.text(&entry.plain, Style::BODY, wide);
    let whole = name.then(0.8, plain);
    match &entry.not_to_be_confused {
        None => whole,
        Some(other) => {
            let words = setting.t().with("try-not-confused", &[("other", &other)]);
            whole.then(0.8, setting.text(&words, Style::SMALL.inked(Ink::Soft), wide))
        }
    }
}
