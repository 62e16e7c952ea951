//! A column of numbers: counts, which are whole and have no unit, or one measured range a
//! kind.
//!
//! What was assumed about units is said once a column, with how to say otherwise.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Cell, CellTrouble, NotCounts, OfColumn, Place, Quantity, ReadAs, Scale, Share, Unit, Value,
    WrittenIn,
};

use super::{Column, gap, unit_of};
use crate::table::cell_text::{Part, What, backwards};
use crate::table::number::Amount;
use crate::table::{caps, of_character, report::Report};

/// Whether a column without any description holds counts.
pub(super) fn are_counts(column: &Column<'_>) -> bool {
    if column.heading.unit.is_some() || column.heading.is_length() {
        return false;
    }
    column.amounts().all(|(_, amount)| counted(amount).is_some()) && !too_many(column)
}

/// The whole numbers that an amount stands for, if it can be a count.
fn counted(amount: &Amount) -> Option<std::ops::RangeInclusive<u32>> {
    let (low, high) = amount.whole().filter(|_| amount.unit.is_none())?;
    (high - low <= caps::WIDEST_COUNT_RANGE).then_some(low..=high)
}

/// Whether a column has more different whole numbers than a character of counts may have.
pub(super) fn too_many(column: &Column<'_>) -> bool {
    let mut different = BTreeSet::new();
    column.amounts().filter_map(|(_, amount)| counted(amount)).any(|numbers| {
        different.extend(numbers);
        different.len() > caps::MOST_COUNTS
    })
}

/// Says that declared counts are too many and are read as a measure.
pub(super) fn told_too_many(column: &Column<'_>, report: &mut Report) {
    let name = &column.heading.name;
    let place = column.heading.described.map(|described| described.place.clone());
    let place = place.map_or_else(|| of_character(name), Place::Cell);
    let most = caps::MOST_COUNTS;
    report.one(place, OfColumn::TooManyCounts { about: name.clone(), most });
}

/// Reads a column of counts.
pub(super) fn counts(column: &Column<'_>, report: &mut Report) -> Vec<Cell> {
    let read = |at: usize| {
        let parts = match &column.typed[at].what {
            What::Numbers(parts) => parts,
            What::Words(_) => return Err(CellTrouble::AWord),
            What::OutOf(_) => return Err(CellTrouble::OutOf),
            _ => return Ok(column.fixed(at).expect("neither words nor numbers")),
        };
        in_their_order(column, at, parts)?;
        Ok(Value::Counts(count_shares(parts)?))
    };
    let mut cells = Vec::with_capacity(column.typed.len());
    for (at, typed) in column.typed.iter().enumerate() {
        let value = read(at).unwrap_or_else(|trouble| {
            column.odd(at, trouble, report);
            Value::Unknown
        });
        cells.push(Cell { value, seen: typed.seen });
    }
    cells
}

/// `5-7` means each of 5, 6 and 7 in equal shares.
fn count_shares(parts: &[Part<Amount>]) -> Result<Vec<(u32, Share)>, CellTrouble> {
    let mut shares = BTreeMap::<u32, Option<Share>>::new();
    for part in parts {
        if part.item.unit.is_some() {
            return Err(CellTrouble::OtherUnit);
        }
        let (low, high) = part.item.whole().ok_or(CellTrouble::NotWhole)?;
        if high - low > caps::WIDEST_COUNT_RANGE {
            return Err(CellTrouble::Wide);
        }
        let width = Share::from_integer((high - low + 1).into());
        for count in low..=high {
            let share = shares.entry(count).or_default();
            *share = match (*share, part.share.map(|share| share / width)) {
                (Some(one), Some(other)) => Some(one + other),
                (one, other) => one.or(other),
            };
        }
    }
    let count = i128::try_from(shares.len()).expect("a cell holds few counts");
    let equal = Share::new(1, count);
    let shares = shares.into_iter().map(|(count, share)| (count, share.unwrap_or(equal)));
    Ok(shares.collect())
}

/// Reads a column of measures.
pub(super) fn measure(
    column: &Column<'_>,
    usual_gap: Quantity,
    report: &mut Report,
) -> (Scale, Vec<Cell>) {
    let typed = unit_of(column);
    let unit = kept_unit(column, typed);
    assumptions(column, typed, unit, report);
    let mut cells = Vec::with_capacity(column.typed.len());
    for at in 0..column.typed.len() {
        let value = range(column, at, typed, unit, report).unwrap_or_else(|trouble| {
            column.odd(at, trouble, report);
            Value::Unknown
        });
        cells.push(Cell { value, seen: column.typed[at].seen });
    }
    (Scale::Measure { unit, gap: gap(column.heading, unit, usual_gap, report) }, cells)
}

/// The unit of the column: one that stands somewhere, else millimetres for what looks like a
/// length, else none.
fn kept_unit(column: &Column<'_>, typed: Option<WrittenIn>) -> Unit {
    if let Some(typed) = typed {
        return typed.row().kept_as;
    }
    if column.heading.described.is_some_and(|described| described.values.is_some()) {
        return Unit::Unstated;
    }
    let wide = |amount: &Amount| {
        let whole = amount.whole();
        whole.is_some_and(|(low, high)| high - low > caps::WIDEST_COUNT_RANGE)
    };
    let length = column.heading.is_length() || column.amounts().any(|(_, amount)| wide(amount));
    if length { Unit::Millimetres } else { Unit::Unstated }
}

/// Says what unit was assumed, where nobody gave one.
fn assumptions(column: &Column<'_>, typed: Option<WrittenIn>, unit: Unit, report: &mut Report) {
    let heading = column.heading;
    let described = heading.described.is_some_and(|described| described.values.is_some());
    let bare = column.amounts().find(|(_, amount)| amount.unit.is_none());
    let Some((at, _)) = bare else { return };
    let (about, at) = (heading.name.clone(), column.place(at).into());
    let assumed = match (typed, unit) {
        (Some(_), _) if heading.unit.is_some() || described => return,
        (Some(unit), _) => OfColumn::UnitOfOthers { about, unit, at },
        (None, _) if described => return,
        (None, Unit::Unstated) => return unitless(column, report),
        (None, unit) => OfColumn::UnitAssumed { about, unit, at },
    };
    report.one(of_character(&heading.name), assumed);
}

/// Asks for the unit of a measure, naming the cell for which it is not a column of counts.
fn unitless(column: &Column<'_>, report: &mut Report) {
    let name = &column.heading.name;
    let because = match column.amounts().find(|(_, amount)| counted(amount).is_none()) {
        Some((at, _)) => NotCounts::Cell {
            text: column.text(at).to_owned(),
            kind: column.kinds.rows[at].1.clone(),
            at: column.place(at).into(),
        },
        None => NotCounts::MoreThan(caps::MOST_COUNTS),
    };
    report.one(of_character(name), OfColumn::NoUnit { about: name.clone(), because });
}

fn range(
    column: &Column<'_>,
    at: usize,
    typed: Option<WrittenIn>,
    unit: Unit,
    report: &mut Report,
) -> Result<Value, CellTrouble> {
    let parts = match &column.typed[at].what {
        What::Numbers(parts) => parts,
        What::Words(_) => return Err(CellTrouble::AWord),
        What::OutOf(_) => return Err(CellTrouble::OutOf),
        _ => return Ok(column.fixed(at).expect("neither words nor numbers")),
    };
    let fits = |amount: &Amount| amount.unit.is_none_or(|typed| typed.row().kept_as == unit);
    if !parts.iter().all(|part| fits(&part.item)) {
        return Err(CellTrouble::OtherUnit);
    }
    in_their_order(column, at, parts)?;
    let ends: Vec<_> = parts.iter().map(|part| part.item.quantities(typed)).collect();
    let low = ends.iter().map(|(low, _)| *low).min();
    let high = ends.iter().map(|(_, high)| *high).max();
    let (low, high) = low.zip(high).expect("a cell of numbers has at least one");
    let measured = matches!(unit, Unit::Millimetres | Unit::Grams | Unit::Ratio);
    if measured && low < Quantity::ZERO {
        return Err(CellTrouble::BelowNothing);
    }
    if parts.len() > 1 {
        column.doubtful(at, ReadAs::OneRange, report);
    }
    Ok(Value::Range { low, high })
}

/// Nobody can tell which end of `800-200` is the slip, so it is asked and not turned round.
fn in_their_order(
    column: &Column<'_>,
    at: usize,
    parts: &[Part<Amount>],
) -> Result<(), CellTrouble> {
    match parts.iter().any(|part| part.item.backwards) {
        true => Err(backwards(column.text(at))),
        false => Ok(()),
    }
}
