//! Words to look at: the words that this key uses, each drawn beside what it is taken for.
//!
//! From a booklet to a sheet for the wall or a group's table. A word of which nobody has a true
//! drawing is explained in words alone; where nothing is drawn there is no such sheet. Where a kind
//! has a leaf in lines, and its table says that all its leaves are as the word says, that leaf stands
//! beside the drawing: the word, and the thing itself.
//!
//! Source: the words and their look-alikes as the word list gives them; two pictures beside each
//! other, what it is and what it is not, are common practice, without a source.

use std::collections::BTreeSet;

use spinney_model::{Drawing, DrawnWord, Figure, Scale, TaxonIx, Value};

use spinney_voice::starters::seen_in;

use crate::glossary::{self, Entry};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::flow::Flow;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Page, Piece, Role, Sheet};
use crate::{Booklet, Paper, lines, shown};

/// The height of a drawing, in mm: the least at which every word of the list can be told.
const HIGH: f64 = 18.0;
/// A drawing with its caption, in mm.
const FIGURE: f64 = 27.0;
/// The same in large print, at most: it stands beneath the words.
const LARGE_HIGH: f64 = 24.0;
const LARGE_FIGURE: f64 = 42.0;
/// The width that is left to words where a leaf of ours is added, in mm.
const LEAST_WORDS: f64 = 55.0;
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

/// A kind with a leaf in lines that is as a word says, and that leaf: the first of the table, if one
/// can be that stands beside no other word yet.
fn of_ours<'a>(
    booklet: &Booklet<'a>,
    word: &str,
    shown: &BTreeSet<TaxonIx>,
) -> Option<(TaxonIx, &'a Drawing)> {
    let matrix = booklet.matrix;
    let (fresh, again): (Vec<_>, Vec<_>) =
        matrix.taxon_indices().partition(|taxon| !shown.contains(taxon));
    fresh.into_iter().chain(again).find_map(|taxon| {
        let (leaf, _) = booklet.drawn.of_kind(taxon).filter(|(_, of_leaf)| *of_leaf)?;
        let says = matrix.character_indices().any(|at| {
            // Of other columns an outline shows nothing: not the cone, not the bud.
            if seen_in(&matrix.character(at).name).is_none() {
                return false;
            }
            let Scale::Words { states, .. } = &matrix.character(at).scale else { return false };
            let Value::States(seen) = &matrix.cell(taxon, at).value else { return false };
            let [(only, _)] = seen[..] else { return false };
            shown::word_of_state(booklet, at, &states[only.0]).1 == Some(word)
        });
        says.then_some((taxon, leaf))
    })
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
    let mut shown = BTreeSet::new();
    for (entry, drawn) in words {
        let Some(drawn) = drawn else {
            in_words_alone.push(entry);
            continue;
        };
        let row = row(setting, (entry, drawn), &mut shown, wide);
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
fn row(
    setting: &Setting,
    (entry, drawn): (&Entry, &DrawnWord),
    shown: &mut BTreeSet<TaxonIx>,
    wide: f64,
) -> Piece {
    let mut all: Vec<Captioned> =
        drawn.own.iter().map(|figure| Captioned::own(setting, figure)).collect();
    let other = drawn.other.iter().map(|figure| Captioned::other(setting, entry, figure));
    let of_ours = of_ours(setting.booklet, entry.id, shown);
    let mut own = all.len();
    all.extend(other);
    if let Some((kind, leaf)) = of_ours {
        let leaf = Captioned::leaf(setting, kind, leaf);
        let (_, _, words) = room(setting, &all, Some(&leaf), wide);
        if words >= LEAST_WORDS {
            all.insert(own, leaf);
            shown.insert(kind);
            own += 1;
        }
    }
    let (high, figure, _) = room(setting, &all, None, wide);
    let figures = all.len() as f64 * (figure + BETWEEN) - BETWEEN;
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
    for (at, captioned) in all.into_iter().enumerate() {
        if at == own {
            let rule = Piece::upright(high + 6.0, Pen::dashed(0.3, Ink::Soft));
            whole = whole.with(x - BETWEEN / 2.0, y, rule);
        }
        whole = whole.with(x, y, captioned.piece(setting, (figure, high)));
        x += figure + BETWEEN;
    }
    whole.grouped(Group::Section)
}

/// How high drawings are, how wide each is with its caption, and how much of the width they leave to
/// words, in mm; `more`: one more than there are.
fn room(
    setting: &Setting,
    all: &[Captioned],
    more: Option<&Captioned>,
    wide: f64,
) -> (f64, f64, f64) {
    let number = (all.len() + usize::from(more.is_some())) as f64;
    match setting.is_large() {
        true => {
            let each = (wide - (number - 1.0) * BETWEEN) / number;
            (LARGE_HIGH, each.min(LARGE_FIGURE), if each < FIGURE { 0.0 } else { wide })
        }
        false => {
            let widest = all.iter().chain(more).map(|one| one.widest_word(setting));
            let each = widest.fold(FIGURE, f64::max);
            (HIGH, each, wide - number * (each + BETWEEN))
        }
    }
}

/// A drawing and what is said of it.
struct Captioned<'a> {
    drawing: &'a Drawing,
    words: String,
    heard: String,
    style: Style,
}

impl<'a> Captioned<'a> {
    /// What the word means.
    fn own(setting: &Setting, figure: &'a Figure) -> Self {
        let words = caption(setting, figure);
        Self {
            drawing: &figure.drawing,
            heard: words.clone(),
            words,
            style: Style::SMALL_STRONG,
        }
    }

    /// What the word is taken for.
    fn other(setting: &Setting, entry: &Entry, figure: &'a Figure) -> Self {
        let (t, caption) = (setting.t(), caption(setting, figure));
        let parts: [(&str, &dyn std::fmt::Display); 2] =
            [("word", &entry.word), ("caption", &caption)];
        Self {
            drawing: &figure.drawing,
            words: t.with("sheet-not", &[("caption", &caption)]),
            heard: t.with("sheet-not-word", &parts),
            style: Style::SMALL.inked(Ink::Soft),
        }
    }

    /// A leaf of a kind that is so.
    fn leaf(setting: &Setting, kind: TaxonIx, leaf: &'a Drawing) -> Self {
        let words = setting.name(kind);
        let heard = setting.t().with("sheet-drawing-of-leaf", &[("kind", &words)]);
        Self { drawing: leaf, words, heard, style: Style::SMALL }
    }

    /// The widest word of the caption, in mm: it breaks between words and behind a hyphen.
    fn widest_word(&self, setting: &Setting) -> f64 {
        let words = self.words.split_inclusive([' ', '-']).map(str::trim);
        let wide = words.map(|word| setting.caption(word, self.style, f64::INFINITY).width);
        wide.fold(0.0, f64::max) + 0.1
    }

    fn piece(self, setting: &Setting, (wide, high): (f64, f64)) -> Piece {
        let [_, _, across, up] = self.drawing.frame;
        let high_enough = high.min(wide * up / across);
        let drawing = lines::piece(self.drawing, high_enough, self.heard);
        let (x, y) = ((wide - drawing.w) / 2.0, high - high_enough);
        let block = setting.caption(&self.words, self.style, wide).centred(wide);
        Piece::blank(wide, high).with(x, y, drawing).with(
            0.0,
            high + 1.0,
            Piece::text(block, Role::Caption),
        )
    }
}

fn caption(setting: &Setting, figure: &Figure) -> String {
    setting.say(&format!("words-draw-{}", figure.caption))
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
