//! Signs: large words for the ground and for posts, as large as their paper lets them be.
//!
//! From a question and where its answers lead to words in the largest letters that fit, and the
//! line that says whose cautions to read first. It places nothing on a page.

use spinney_model::{Couplet, Destination, End};

use crate::Booklet;
use crate::chart::question_words;
use crate::drawing;
use crate::setting::Setting;
use crate::sheet::ink::{Ink, Style};
use crate::sheet::text::Block;
use crate::sheet::{Piece, Role};

/// More questions than this are laid on no floor and hung along no path.
const MOST: usize = 40;
/// The sizes of letters that are tried, in points: the smallest is read from two metres.
const SIZES: [f64; 9] = [72.0, 60.0, 52.0, 46.0, 40.0, 34.0, 29.0, 24.0, 20.0];

/// Whether a key is one to walk along: some questions, and not too many.
pub(crate) fn fits(booklet: &Booklet) -> bool {
    (1..=MOST).contains(&booklet.key.couplets.len())
}

/// Words in the largest letters with which they fit into a box and no word is broken.
pub(crate) fn large(setting: &Setting, words: &str, (w, h): (f64, f64), most: f64) -> Block {
    let style = |size: f64| Style { size, leading: 1.2, ..Style::TITLE };
    let fits = |size: &f64| {
        let block = setting.block(words, style(*size), w);
        let longest = words
            .split_whitespace()
            .map(|word| setting.block(word, style(*size), f64::INFINITY).width);
        block.height <= h && longest.fold(0.0, f64::max) <= w
    };
    let size = SIZES.into_iter().filter(|size| *size <= most).find(fits);
    let size = size.unwrap_or(SIZES[SIZES.len() - 1]);
    let block = setting.block(words, style(size), w);
    let line = block.lines.first().map_or(1.0, |line| line.height);
    block.at_most(&setting.faces, ((h / line).floor() as usize).max(1))
}

/// What a couplet asks: the question, or its two leads one after the other.
pub(crate) fn asked(setting: &Setting, couplet: &Couplet) -> String {
    let (first, second) = question_words(setting, couplet);
    match second {
        Some(second) => format!("{first} · {second}"),
        None => first,
    }
}

/// The end that an answer leads to.
pub(crate) fn end(to: &Destination) -> Option<&End> {
    match to {
        Destination::End(end) => Some(end),
        Destination::Couplet(_) | Destination::Missing => None,
    }
}

/// Whose cautions are read before anybody goes there; None: no kind of these ends carries one.
pub(crate) fn cautions(setting: &Setting, couplet: &Couplet, wide: f64) -> Option<Piece> {
    let ends = [&couplet.yes, &couplet.no].into_iter().filter_map(end);
    let taxa = setting.booklet.matrix.taxa();
    let warned = ends
        .flat_map(|end| &end.taxa)
        .filter(|kind| taxa.get(kind.0).is_some_and(|taxon| taxon.caution.is_some()));
    let mut names: Vec<String> = warned.map(|kind| setting.name(*kind)).collect();
    names.dedup();
    if names.is_empty() {
        return None;
    }
    let words = setting.t().with("sheet-read-cautions", &[("kinds", &names.join(", "))]);
    let style = Style::BODY.inked(Ink::Berry);
    let block = setting.block(&words, style, wide - 9.0).at_most(&setting.faces, 2);
    Some(drawing::warning(6.5).with(9.0, 0.3, Piece::text(block, Role::Paragraph)))
}
