//! Cautions: what may hurt, said before a child is sent to touch it.
//!
//! From the visit's and the kinds' cautions to a box above the first question and a line at
//! every question that is answered by touch. Which kinds may still be in the hand at a question
//! is read from the key itself (every end that can still be reached) and from the right ways of
//! the kinds.

use spinney_model::TaxonIx;

use crate::Booklet;
use crate::drawing;
use crate::safety;
use crate::setting::Setting;
use crate::sheet::face::Weight;
use crate::sheet::flow::{Boxed, Flow};
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Group, Piece};
use spinney_voice::below::below;

/// Puts the box of cautions; where there is none, only who decides.
pub(crate) fn put(setting: &Setting, flow: &mut Flow, style: Style) {
    let wide = flow.wide() - 2.0 * Flow::PADDING;
    let pieces = pieces(setting, (style, Style::LARGE), wide);
    if pieces.is_empty() {
        flow.put(
            2.0,
            setting.text(&safety::local_rules(setting.t()), Style::SMALL, flow.wide()),
        );
        return;
    }
    let pen = Some(Pen::solid(0.6, Ink::Berry));
    flow.boxed(4.0, pieces, Boxed { fill: Some(Ink::Blush), pen, gap: 0.5 });
}

/// What stands in the box, its heading in a style of its own; empty: nothing may hurt.
pub(crate) fn pieces(
    setting: &Setting,
    (style, heading): (Style, Style),
    wide: f64,
) -> Vec<Piece> {
    let strong = Style { weight: Weight::Bold, ..style };
    let everybody = safety::for_everybody(setting.booklet.matrix);
    let mut pieces: Vec<Piece> = Vec::new();
    if let Some(text) = everybody {
        let first = for_everybody(setting, strong, wide);
        pieces.extend(in_both(first, setting.second_caution(text, style, wide)));
    }
    for (taxon, caution) in safety::of_kinds(setting.booklet.matrix) {
        let first = of_kind(setting, (taxon, caution), (strong, style), wide);
        pieces.extend(in_both(first, setting.second_caution(caution, style, wide)));
    }
    if pieces.is_empty() {
        return pieces;
    }
    let rules = setting.text(&safety::local_rules(setting.t()), Style::SMALL, wide);
    pieces.push(match setting.second_rules(Style::SMALL, wide) {
        Some(second) => rules.then(0.0, second),
        None => rules,
    });
    let sign = drawing::warning(8.0);
    let large = heading.inked(Ink::Berry);
    let title = setting.heading(2, &setting.say("sheet-before-you-touch"), large, wide - 11.0);
    let y = (8.0 - title.h) / 2.0;
    pieces.insert(0, sign.with(11.0, y, title));
    pieces
}

/// The caution for everybody, in pieces of which none is cut; empty: nobody wrote one.
pub(crate) fn for_everybody(setting: &Setting, style: Style, wide: f64) -> Vec<Piece> {
    let text = safety::for_everybody(setting.booklet.matrix);
    let pieces = text.into_iter().flat_map(|text| setting.whole(text));
    pieces.map(|piece| setting.text(piece, style, wide)).collect()
}

/// A caution behind the name of its kind, in pieces of which none is cut.
pub(crate) fn of_kind(
    setting: &Setting,
    (taxon, caution): (TaxonIx, &str),
    (strong, style): (Style, Style),
    wide: f64,
) -> Vec<Piece> {
    let name = format!("{}: ", setting.name(taxon));
    let part = |(at, part): (usize, &str)| match at {
        0 => setting.runs(&[(&name, strong), (part, style)], wide),
        _ => setting.text(part, style, wide),
    };
    setting.whole(caution).into_iter().enumerate().map(part).collect()
}

/// The second text of a caution stands beneath it, and on another page only where one of both is long.
fn in_both(mut first: Vec<Piece>, mut second: Vec<Piece>) -> Vec<Piece> {
    match (first.as_mut_slice(), second.as_mut_slice()) {
        ([one], [other]) => vec![std::mem::take(one).then(0.0, std::mem::take(other))],
        _ => {
            first.extend(second);
            first
        }
    }
}

/// The line at a question that is answered by touch; None: nothing there can hurt.
pub(crate) fn line(setting: &Setting, number: u32, style: Style, wide: f64) -> Option<Piece> {
    let names: Vec<_> =
        hazards(setting.booklet, number).into_iter().map(|taxon| setting.name(taxon)).collect();
    let (last, before) = names.split_last()?;
    let list = match before {
        [] => last.clone(),
        _ => setting.either(before, last),
    };
    let words = setting.t().with("sheet-touch", &[("kinds", &list)]);
    let block = setting.block(&words, style.inked(Ink::Berry), wide - 8.0);
    let block = block.at_most(&setting.faces, setting.lines(4));
    let text = Piece::text(block, crate::sheet::Role::Paragraph);
    Some(drawing::warning(6.0).with(8.0, 0.0, text).grouped(Group::Section))
}

/// Kinds with a caution that may be in the hand at a question asked by touch.
fn hazards(booklet: &Booklet, number: u32) -> Vec<TaxonIx> {
    let couplets = &booklet.key.couplets;
    let by_touch = couplets.iter().filter(|couplet| couplet.number == number).any(|couplet| {
        let ask = couplet.ask.as_ref();
        let characters = booklet.matrix.characters();
        ask.and_then(|ask| characters.get(ask.character.0)).is_some_and(|asked| asked.by_touch)
    });
    if !by_touch {
        return Vec::new();
    }
    let mut held = below(booklet.key, number);
    let passing = booklet
        .walks
        .iter()
        .filter(|walk| walk.steps.iter().any(|step| step.couplet == number));
    held.extend(passing.map(|walk| walk.taxon));
    let warned = safety::of_kinds(booklet.matrix).map(|(taxon, _)| taxon);
    warned.filter(|taxon| held.contains(taxon)).collect()
}
