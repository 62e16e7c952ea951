//! The number that is said for a threshold: the roundest that the safety margin leaves free.
//!
//! From a threshold and the kinds that come out below its question to the same question with a
//! rounder number (`docs/KEY.md` 3). What is asked stays the threshold: the number lies between the
//! same ranges, so every kind answers alike. A person's own threshold is theirs and stays.

use std::collections::BTreeSet;

use spinney_model::{
    Ask, Asked, Key, Matrix, Quantity, Scale, TaxonIx, Unit, Value, WrittenIn,
};

use crate::below::below;

/// What a couplet asks, with the number that is said.
pub(super) fn said(matrix: &Matrix, key: &Key, at: usize) -> Option<Ask> {
    let couplet = &key.couplets[at];
    let ask = couplet.ask.as_ref()?;
    let kept = couplet.kept || !matches!(ask.yes, Asked::AtLeast(_) | Asked::Below(_));
    Some(if kept { ask.clone() } else { rounded(matrix, ask, &below(key, couplet.number)) })
}

/// The same of any question at a couplet's place.
pub(super) fn said_at(matrix: &Matrix, key: &Key, number: u32, ask: &Ask) -> Ask {
    rounded(matrix, ask, &below(key, number))
}

/// The same question with the roundest number that lies between the same ranges of these kinds and
/// keeps the gap that the threshold keeps.
fn rounded(matrix: &Matrix, ask: &Ask, present: &BTreeSet<TaxonIx>) -> Ask {
    let (Asked::AtLeast(threshold) | Asked::Below(threshold)) = ask.yes else {
        return ask.clone();
    };
    let with = |number: Quantity| match ask.yes {
        Asked::Below(_) => Asked::Below(number),
        _ => Asked::AtLeast(number),
    };
    let free = free(matrix, ask, threshold, present);
    let number =
        free.and_then(|free| grains(matrix, ask).find_map(|grain| nearest(free, grain)));
    match number {
        Some(number) => Ask { yes: with(Quantity::from_thousandths(number)), ..ask.clone() },
        None => ask.clone(),
    }
}

/// The numbers that may be said, in thousandths.
#[derive(Clone, Copy)]
struct Free {
    least: i64,
    greatest: i64,
    /// Twice the middle between the two ranges, so that nothing is rounded.
    middle_twice: i64,
}

/// The numbers that may be said; None: the threshold is no measure between two ranges, or does not
/// keep the gap itself.
fn free(
    matrix: &Matrix,
    ask: &Ask,
    threshold: Quantity,
    present: &BTreeSet<TaxonIx>,
) -> Option<Free> {
    let character = matrix.character(ask.character);
    let Scale::Measure { gap, .. } = character.scale else { return None };
    // A ratio of two columns is said as a half or a third; see `ratios`.
    if character.ratio_of.is_some() {
        return None;
    }
    let (mut below, mut above) = (None::<Quantity>, None::<Quantity>);
    for taxon in present {
        let Value::Range { low, high } = matrix.cell(*taxon, ask.character).value else {
            continue;
        };
        if low >= threshold {
            above = Some(above.map_or(low, |other| other.min(low)));
        } else if high < threshold {
            below = Some(below.map_or(high, |other| other.max(high)));
        } else {
            return None;
        }
    }
    let (high, low, gap) = (below?.thousandths(), above?.thousandths(), gap.thousandths());
    // "That much or more" holds of a range's own lower end, and not of its upper one.
    let (least, greatest) = ((high + gap).max(high + 1), low - gap);
    let free = Free { least, greatest, middle_twice: high + low };
    (least..=greatest).contains(&threshold.thousandths()).then_some(free)
}

/// Steps from the roundest on, in thousandths: tens, fives, ones, halves, tenths of the column's
/// unit. Lengths in millimetres and centimetres are said as children read a ruler: in whole
/// centimetres, half ones, millimetres; a rounder one would only come nearer to the ranges.
fn grains(matrix: &Matrix, ask: &Ask) -> impl Iterator<Item = i64> {
    let character = matrix.character(ask.character);
    let metric = matches!(character.scale, Scale::Measure { unit: Unit::Millimetres, .. })
        && matches!(
            character.written_in,
            None | Some(WrittenIn::Millimetres | WrittenIn::Centimetres)
        );
    let one = character.one().thousandths();
    let grains = match metric {
        true => vec![10_000, 5_000, 1_000],
        false => vec![10 * one, 5 * one, one, one / 2, one / 10],
    };
    grains.into_iter().filter(|grain| *grain > 0)
}

/// The multiple of a step that is free and nearest to the middle; of two as near the smaller.
fn nearest(free: Free, grain: i64) -> Option<i64> {
    let below = free.middle_twice.div_euclid(2 * grain) * grain;
    let multiples = [below - grain, below, below + grain, below + 2 * grain].into_iter();
    let free_ones = multiples.filter(|number| (free.least..=free.greatest).contains(number));
    free_ones.min_by_key(|number| ((2 * number - free.middle_twice).abs(), *number))
}

#[cfg(test)]
mod tests;
