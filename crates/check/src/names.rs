//! Names, lengths and forms as findings hold them: from indices to what a person typed.

use spinney_model::{
    Answer, Ask, Asked, Character, CharacterIx, Form, Matrix, NameAtEnd, Quantity, RangeOf,
    Scale, TaxonIx, Unit, Value, WhatIsAsked, Written,
};

use crate::tree::Tree;
use crate::values::{Left, Taken};

/// The names of kinds.
pub(crate) fn kinds(matrix: &Matrix, taxa: impl IntoIterator<Item = TaxonIx>) -> Vec<String> {
    taxa.into_iter().map(|taxon| matrix.taxon(taxon).name.clone()).collect()
}

/// The name of a character.
pub(crate) fn about(matrix: &Matrix, character: CharacterIx) -> String {
    matrix.character(character).name.clone()
}

/// What is written at the end an answer leads to.
pub(crate) fn at_end(
    matrix: &Matrix,
    tree: &Tree<'_>,
    (couplet, answer): (usize, Answer),
) -> Vec<NameAtEnd> {
    let Some(end) = tree.end(couplet, answer) else { return Vec::new() };
    let known = end.taxa.iter().filter(|taxon| taxon.0 < matrix.taxa().len());
    let known = known.map(|taxon| NameAtEnd::Kind(matrix.taxon(*taxon).name.clone()));
    known.chain(end.unrecognised.iter().cloned().map(NameAtEnd::Strange)).collect()
}

/// What is left of one character: toothed or smooth; 40 mm or more.
pub(crate) fn form(matrix: &Matrix, character: CharacterIx, taken: &Taken) -> Form {
    let Some((_, left)) = taken.iter().find(|(c, _)| *c == character) else {
        return Form::States(Vec::new());
    };
    let character = matrix.character(character);
    match (left, &character.scale) {
        (Left::States(bits), Scale::Words { states }) => {
            let shown = states.iter().enumerate().filter(|(state, _)| bits >> state & 1 == 1);
            Form::States(shown.map(|(_, name)| name.clone()).collect())
        }
        (Left::Span(from, below), _) => {
            let figure = |thousandths| written(character, thousandths);
            match (*from, *below) {
                (i64::MIN, below) => Form::Below(figure(below)),
                (from, i64::MAX) => Form::AtLeast(figure(from)),
                (from, below) if character.scale == Scale::Counts && below - from == 1000 => {
                    Form::Exactly(figure(from))
                }
                (from, below) => Form::Between(figure(from), figure(below)),
            }
        }
        _ => Form::States(Vec::new()),
    }
}

/// What a question asks for: edge, toothed or spiny; stalk, 22.5 mm or more.
pub(crate) fn asked(matrix: &Matrix, ask: &Ask) -> WhatIsAsked {
    let Some(character) = matrix.characters().get(ask.character.0) else {
        return WhatIsAsked::NotOfTable;
    };
    let form = match (&ask.yes, &character.scale) {
        (Asked::States(asked), Scale::Words { states }) => {
            let named = asked.iter().filter_map(|state| states.get(state.0));
            Form::States(named.cloned().collect())
        }
        (Asked::AtLeast(at), _) => Form::AtLeast(character.written(*at)),
        (Asked::Below(at), _) => Form::Below(character.written(*at)),
        (Asked::States(_), _) => Form::Nothing,
    };
    WhatIsAsked::Of { about: character.name.clone(), form }
}

/// A number as its column writes it.
pub(crate) fn written(character: &Character, thousandths: i64) -> Written {
    character.written(Quantity::from_thousandths(thousandths))
}

/// What was measured on a kind; None: nothing.
pub(crate) fn range(
    matrix: &Matrix,
    character: CharacterIx,
    taxon: TaxonIx,
    value: &Value,
) -> Option<RangeOf> {
    let Value::Range { low, high } = value else { return None };
    let (kind, about) = (matrix.taxon(taxon).name.clone(), matrix.character(character));
    Some(RangeOf { kind, low: about.written(*low), high: about.written(*high) })
}

/// Lengths below so many margins are small beside the margin.
const SMALL: i64 = 10;
/// In thousandths of a millimetre: who measures with a ruler is not surer than that.
const LEAST_MARGIN: i64 = 2_000;

/// Whether these lengths are small beside the safety margin of their column, so that a smaller
/// one may do.
pub(crate) fn smaller_margin_may_do(character: &Character, ranges: &[RangeOf]) -> bool {
    let Scale::Measure { gap, unit: Unit::Millimetres } = character.scale else { return false };
    let longest = ranges.iter().map(|range| range.high.quantity.thousandths()).max();
    let margin = gap.thousandths();
    let small = longest.is_some_and(|longest| longest < SMALL.saturating_mul(margin));
    margin > LEAST_MARGIN && small
}
