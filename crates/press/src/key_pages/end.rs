//! An end: the name, a picture or a box to stick one in, and the sentence that confirms it.

use spinney_model::End;

use crate::fitting;
use crate::setting::Setting;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Piece, Role};

/// The least height of the picture or box, in mm: a leaf's tip and edge, or a small rubbing.
const BOX: f64 = 40.0;

/// The most that sentences take, in mm.
const DEEPEST: f64 = 66.0;

/// An end wider than this has its box beside the name, a narrower one beneath it, in mm.
const BESIDE: f64 = 100.0;

/// The name of an end, as it is set in a width, with its words beneath and its box to the
/// right of them, from `top` down; beside the name only if it may.
pub(super) fn piece(
    setting: &Setting,
    end: &End,
    name: impl Fn(f64) -> Piece,
    (top, beside): (f64, bool),
    wide: f64,
) -> Piece {
    let across = (wide * 0.42).clamp(36.0, 46.0);
    let room = wide - across - 4.0;
    let words = sentences(setting, end, room);
    let words = words.then(2.0, newcomer(setting, end, room));
    let beside = beside && wide > BESIDE;
    let name = name(if beside { room } else { wide });
    let below = name.h + 2.0;
    let (from, least) = if beside { (top, below - top + words.h) } else { (below, words.h) };
    let high = BOX.max(least.min(BOX + 12.0));
    let words = name.with(0.0, below, words);
    words.with(room + 4.0, from, pictures(setting, end, across, high))
}

fn newcomer(setting: &Setting, end: &End, wide: f64) -> Piece {
    let written = fitting::at_end(setting.booklet.matrix, end);
    setting.text(&fitting::newcomer(setting.t(), written), Style::SMALL.inked(Ink::Soft), wide)
}

/// One picture of one kind; of several kinds, those that have one, each with its name.
fn pictures(setting: &Setting, end: &End, w: f64, h: f64) -> Piece {
    let taxa = setting.booklet.matrix.taxa();
    let pictured = |ix: &&spinney_model::TaxonIx| {
        let photographed = taxa.get(ix.0).is_some_and(|taxon| taxon.picture.is_some());
        photographed || setting.is_pictured(**ix)
    };
    let shown: Vec<_> = match end.taxa[..] {
        [only] => return setting.picture_box(Some(only), w, h),
        _ => end.taxa.iter().filter(pictured).take(2).copied().collect(),
    };
    if shown.is_empty() {
        return setting.picture_box(None, w, h);
    }
    let each = h / shown.len() as f64;
    shown.into_iter().fold(Piece::blank(w, 0.0), |column, ix| {
        let name =
            setting.caption(&setting.name(ix), Style::SMALL, w).at_most(&setting.faces, 1);
        let picture = setting.picture_box(Some(ix), w, each - name.height - 1.0);
        column.then(1.0, picture.then(0.0, Piece::text(name, Role::Caption)))
    })
}

/// The confirming sentence, or a line to write one on.
fn sentences(setting: &Setting, end: &End, wide: f64) -> Piece {
    let several = end.taxa.len() + end.unrecognised.len() > 1;
    let mut words = Piece::blank(wide, 0.0);
    for ix in &end.taxa {
        let Some(sentence) = fitting::sentence(setting.booklet.matrix, *ix) else { continue };
        let name = format!("{}: ", setting.name(*ix));
        let runs = [(name.as_str(), Style::STRONG), (sentence, Style::BODY)];
        let runs = if several { &runs[..] } else { &runs[1..] };
        let piece = shortened(
            setting,
            setting.runs(runs, wide),
            setting.lines(if several { 5 } else { 9 }),
        );
        if words.h + piece.h > DEEPEST * setting.lines(1) as f64 {
            break;
        }
        words = words.then(1.0, piece);
    }
    if words.h > 0.0 {
        return words;
    }
    let ask = setting.text(&setting.say("sheet-write-sentence"), Style::BODY, wide);
    let line = || Piece::rule(wide, Pen::solid(0.2, Ink::Soft));
    ask.then(8.0, line()).then(8.0, line())
}

/// A set paragraph of at most so many lines.
fn shortened(setting: &Setting, piece: Piece, lines: usize) -> Piece {
    use crate::sheet::{Node, Placed, What};
    let mut nodes = piece.nodes.into_iter();
    match nodes.next() {
        Some(Node::Placed(Placed { what: What::Text(block), role, .. })) => {
            Piece::text(block.at_most(&setting.faces, lines), role)
        }
        other => Piece { nodes: other.into_iter().chain(nodes).collect(), ..piece },
    }
}
