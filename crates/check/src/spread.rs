//! How finds spread: from leaves that were measured one by one to ranges, outliers, the best cut
//! between two kinds with how many would be on its wrong side, and how many more to measure.
//!
//! Every find counts; an outlier is named and stays. Only finds with one number count here: what
//! somebody typed as a range is no measurement of a single leaf. Means and deviations are the
//! usual ones; how the others are worked out, and by whom, is said in the files below.
//! `docs/specimens.md` is the page for people.

mod cut;
mod normal;
mod outliers;

use std::cmp::Ordering;
use std::collections::BTreeMap;

use spinney_model::{
    CharacterIx, Cut, Matrix, Quantity, Scale, Specimen, Specimens, Spread, SpreadOf, TaxonIx,
    Value,
};

/// More kinds than these are not compared two by two: the pairs would fill pages.
const MOST_KINDS_COMPARED: usize = 60;

/// A find with what was measured on it, in thousandths.
#[derive(Clone, Copy, Debug)]
struct Measured {
    find: usize,
    value: i64,
}

/// How the finds of a table spread. `kinds` is what they come to, row by row.
pub fn spread(kinds: &Matrix, specimens: &Specimens) -> Spread {
    let all = measured(kinds, specimens);
    let few = kinds.taxa().len() <= MOST_KINDS_COMPARED;
    Spread { of_kinds: of_kinds(specimens, &all), cuts: few.then(|| cuts(kinds, &all)) }
}

/// How the finds of each kind spread, without cuts between kinds: those take far longer.
pub fn spread_of_kinds(kinds: &Matrix, specimens: &Specimens) -> Vec<SpreadOf> {
    of_kinds(specimens, &measured(kinds, specimens))
}

fn of_kinds(specimens: &Specimens, all: &OfKinds) -> Vec<SpreadOf> {
    let of_kinds = all.iter().flat_map(|((taxon, character), finds)| {
        let parts = parts(specimens, finds);
        let whole = std::iter::once((None, finds.clone()));
        whole.chain(parts).map(|(part, finds)| {
            let of = SpreadOf { part, ..of_kind(*taxon, *character, specimens, &finds) };
            let outliers = if of.part.is_none() { outliers::of(&finds) } else { Vec::new() };
            SpreadOf { outliers, ..of }
        })
    });
    of_kinds.collect()
}

type OfKinds = BTreeMap<(TaxonIx, CharacterIx), Vec<Measured>>;

/// What was measured of each kind in each character, the smallest first.
fn measured(kinds: &Matrix, specimens: &Specimens) -> OfKinds {
    let mut all = OfKinds::new();
    for (find, written) in specimens.written.iter().enumerate() {
        for character in kinds.character_indices() {
            let Some(value) = number(&specimens.finds.cell(TaxonIx(find), character).value)
            else {
                continue;
            };
            let of = all.entry((written.kind, character)).or_default();
            of.push(Measured { find, value });
        }
    }
    for finds in all.values_mut() {
        finds.sort_by_key(|one| (one.value, one.find));
    }
    all
}

/// The one number of a find, in thousandths.
fn number(value: &Value) -> Option<i64> {
    match value {
        Value::Range { low, high } if low == high => Some(low.thousandths()),
        Value::Counts(shares) => match shares.as_slice() {
            [(count, _)] => Some(i64::from(*count) * 1000),
            _ => None,
        },
        _ => None,
    }
}

/// The finds of each part that is marked, by its name without capitals.
fn parts(
    specimens: &Specimens,
    finds: &[Measured],
) -> impl Iterator<Item = (Option<String>, Vec<Measured>)> {
    let mut parts = BTreeMap::<String, (String, Vec<Measured>)>::new();
    for one in finds {
        let written = &specimens.written[one.find];
        let part = written.part_folded();
        if !part.is_empty() {
            let of = parts.entry(part);
            of.or_insert_with(|| (written.part.trim().to_owned(), Vec::new())).1.push(*one);
        }
    }
    parts.into_values().map(|(part, finds)| (Some(part), finds))
}

fn of_kind(
    taxon: TaxonIx,
    character: CharacterIx,
    specimens: &Specimens,
    finds: &[Measured],
) -> SpreadOf {
    let end = |one: Option<&Measured>| {
        Quantity::from_thousandths(one.expect("at least one was measured").value)
    };
    let values = values(finds);
    SpreadOf {
        taxon,
        character,
        part: None,
        finds: finds.len(),
        plants: plants(specimens, finds),
        least: end(finds.first()),
        most: end(finds.last()),
        mean: normal::mean(&values),
        deviation: normal::deviation(&values),
        outliers: Vec::new(),
    }
}

/// In the unit in which the character is kept.
fn values(finds: &[Measured]) -> Vec<f64> {
    finds.iter().map(|one| one.value as f64 / 1000.0).collect()
}

/// Of how many plants finds are, if that is written of each.
fn plants(specimens: &Specimens, finds: &[Measured]) -> Option<usize> {
    Specimen::plants(finds.iter().map(|one| &specimens.written[one.find]))
}

/// The best cut of every two kinds in every character in numbers.
fn cuts(kinds: &Matrix, all: &OfKinds) -> Vec<Cut> {
    let in_numbers = |at: &CharacterIx| {
        matches!(kinds.character(*at).scale, Scale::Counts | Scale::Measure { .. })
    };
    let characters: Vec<CharacterIx> = kinds.character_indices().filter(in_numbers).collect();
    let mut cuts = Vec::new();
    for one in kinds.taxon_indices() {
        for other in (one.0 + 1..kinds.taxa().len()).map(TaxonIx) {
            for character in characters.iter().copied() {
                let of = |taxon| all.get(&(taxon, character));
                if let (Some(a), Some(b)) = (of(one), of(other)) {
                    cuts.extend(cut::between(character, [(one, a), (other, b)]));
                }
            }
        }
    }
    cuts
}

/// The best cut of every two kinds, those with the most on the wrong side first.
pub fn best_of_pairs(cuts: &[Cut]) -> Vec<&Cut> {
    // What was not estimated is not the worst: then it counts how many are wrong now.
    let expected = |cut: &Cut| {
        let now = [0, 1].map(|side| cut.wrong[side] as f64 / cut.finds[side] as f64);
        let now = now.iter().sum::<f64>() / 2.0;
        let normal = cut.normal_share().unwrap_or(now);
        (cut.left_out_share().unwrap_or(normal), normal)
    };
    let order = |one: &Cut, other: &Cut| {
        expected(one).partial_cmp(&expected(other)).unwrap_or(Ordering::Equal)
    };
    let mut best = BTreeMap::<[TaxonIx; 2], &Cut>::new();
    for cut in cuts {
        let mut pair = cut.taxa;
        pair.sort_unstable();
        let known = best.entry(pair).or_insert(cut);
        if order(cut, known) == Ordering::Less {
            *known = cut;
        }
    }
    let mut pairs: Vec<&Cut> = best.into_values().collect();
    pairs.sort_by(|one, other| order(other, one));
    pairs
}

#[cfg(test)]
mod tests;
