//! What is said of pairs: those that hang on little, and those the safety gap keeps together.

use spinney_model::{
    CellOf, CharacterIx, Finding, Matrix, OfTable, Place, Scale, TaxonIx, Value,
};

use super::{NARROW, Pairs, Worth};
use crate::names;
use crate::values::Values;

/// Pairs that hang on one hard or narrow character, the worst first, at most `named`.
pub(crate) fn fragile(matrix: &Matrix, pairs: &Pairs, named: usize) -> Vec<Finding> {
    let finding = |&(worth, one, other, character): &(Worth, usize, usize, CharacterIx)| {
        let kinds = [one, other].map(|taxon| matrix.taxa()[taxon].name.clone());
        let fact = OfTable::FragilePair {
            kinds: kinds.clone(),
            about: names::about(matrix, character),
            hard: worth.ease == 0,
            close: worth.room < NARROW,
        };
        Finding::of(Place::Taxa(kinds.to_vec()), fact)
    };
    pairs.hanging.iter().take(named).map(finding).collect()
}

/// So many pairs that the gap keeps together are named one by one; the others are counted.
const MOST_NARROW: usize = 24;

/// Pairs that differ in a measure, but by less than twice the gap, and in nothing else: the
/// closest ones, and how many more there are.
pub(crate) fn gap_too_narrow(values: &Values<'_>, pairs: &Pairs) -> Vec<Finding> {
    let mut closest: Vec<_> = pairs
        .narrow
        .iter()
        .map(|(&(one, other), &character)| {
            (room(values, one, other, character), one, other, character)
        })
        .collect();
    closest.sort_unstable();
    let more = closest.len().saturating_sub(MOST_NARROW);
    let mut found: Vec<Finding> = closest
        .into_iter()
        .take(MOST_NARROW)
        .map(|(_, one, other, character)| too_narrow(values, one, other, character))
        .collect();
    if more > 0 {
        found.push(Finding::of(Place::Table, OfTable::MoreTooNarrow { pairs: more }));
    }
    found
}

/// How far apart two ranges are.
fn room(values: &Values<'_>, one: usize, other: usize, character: CharacterIx) -> i128 {
    let ends = [one, other].map(|taxon| match values.value(TaxonIx(taxon), character) {
        Value::Range { low, high } => (low.thousandths(), high.thousandths()),
        _ => unreachable!("only ranges keep a gap"),
    });
    i128::from(ends[0].0.max(ends[1].0)) - i128::from(ends[0].1.min(ends[1].1))
}

fn too_narrow(
    values: &Values<'_>,
    one: usize,
    other: usize,
    character: CharacterIx,
) -> Finding {
    let matrix = values.matrix;
    let about = matrix.character(character);
    let Scale::Measure { gap, .. } = about.scale else {
        unreachable!("only measures have a gap");
    };
    let ranges = [one, other].map(TaxonIx).map(|taxon| {
        let value = values.value(taxon, character);
        let range = names::range(matrix, character, taxon, value);
        range.expect("only ranges keep a gap")
    });
    let kinds = ranges.iter().map(|range| range.kind.clone()).collect();
    let fact = OfTable::GapTooNarrow {
        smaller_may_do: names::smaller_margin_may_do(about, &ranges),
        ranges,
        about: about.name.clone(),
        margin: about.written(gap),
        open: nobody_has_looked(values, one, other),
    };
    Finding::of(Place::Taxa(kinds), fact)
}

/// The first cells of the two at which nobody has looked.
fn nobody_has_looked(values: &Values<'_>, one: usize, other: usize) -> Vec<CellOf> {
    let characters = values.matrix.character_indices();
    let open = characters.flat_map(|character| {
        let both = [one, other].map(TaxonIx).into_iter();
        let unknown = both.filter(move |taxon| values.unknown(*taxon, character));
        unknown.map(move |taxon| CellOf::of(values.matrix, character, taxon))
    });
    open.take(2).collect()
}
