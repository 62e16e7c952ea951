//! What is said of pairs: those that hang on little, and those the safety gap keeps together.

use spinney_model::{CharacterIx, Code, Finding, Matrix, Place, Scale, TaxonIx, Value};

use super::{NARROW, Pairs, Worth};
use crate::sentence::{self, amount, capital, number};
use crate::values::Values;

/// Pairs that hang on one hard or narrow character, the worst first, at most `named`.
pub(crate) fn fragile(matrix: &Matrix, pairs: &Pairs, named: usize) -> Vec<Finding> {
    let finding = |&(worth, one, other, character): &(Worth, usize, usize, CharacterIx)| {
        let (one, other) = (&matrix.taxa()[one].name, &matrix.taxa()[other].name);
        let about = sentence::called(&matrix.character(character).name);
        let why = match (worth.ease == 0, worth.room < NARROW) {
            (true, true) => "which is hard to see, and the ranges are close",
            (true, false) => "which is hard to see",
            _ => "and the ranges are close",
        };
        Finding::new(
            Code::FragilePair,
            Place::Taxa(vec![one.clone(), other.clone()]),
            format!("{} and {other} hang on {about} alone, {why}.", capital(one)),
            "Look for a second difference between them and add it as a column.",
        )
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
        found.push(Finding::new(
            Code::GapTooNarrow,
            Place::Table,
            format!(
                "And {more} more {} {} only in a measure, by less than twice its safety \
                 margin, and {} left together.",
                number(more, "pair of kinds", "pairs of kinds"),
                number(more, "differs", "differ"),
                number(more, "is", "are"),
            ),
            "Look for a difference that tells many of them apart, and add it as a column.",
        ));
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
    let names = [&matrix.taxa()[one].name, &matrix.taxa()[other].name];
    let about = matrix.character(character);
    let Scale::Measure { gap, .. } = about.scale else {
        unreachable!("only measures have a gap");
    };
    let ranges: Vec<String> = [one, other]
        .into_iter()
        .zip(names)
        .map(|(taxon, name)| match values.value(TaxonIx(taxon), character) {
            Value::Range { low, high } => {
                format!("{name} {}", sentence::range(about, *low, *high))
            }
            _ => name.clone(),
        })
        .collect();
    Finding::new(
        Code::GapTooNarrow,
        Place::Taxa(names.map(Clone::clone).to_vec()),
        format!(
            "Only {} could tell {} from {} ({}), but the difference is less than twice the \
             safety margin of {}. So they are left together.",
            about.name,
            names[0],
            names[1],
            ranges.join(", "),
            amount(about, gap.thousandths())
        ),
        sentence::with_margin(
            about,
            [one, other].map(|taxon| values.value(TaxonIx(taxon), character)),
            &what_to_add(values, one, other),
        ),
    )
}

/// What to look at next: first what nobody has recorded, then things a table often lacks.
fn what_to_add(values: &Values<'_>, one: usize, other: usize) -> String {
    let matrix = values.matrix;
    let gaps: Vec<String> = matrix
        .character_indices()
        .flat_map(|character| {
            let unknown = [one, other]
                .into_iter()
                .filter(move |taxon| values.unknown(TaxonIx(*taxon), character));
            unknown.map(move |taxon| {
                format!("{} of {}", matrix.character(character).name, matrix.taxa()[taxon].name)
            })
        })
        .take(2)
        .collect();
    if gaps.is_empty() {
        "Look for another difference, such as a spine at the tip, hairs or the smell, and add \
         it as a column."
            .into()
    } else {
        format!(
            "Look for another difference: nobody has looked at {} yet.",
            sentence::all(&gaps)
        )
    }
}
