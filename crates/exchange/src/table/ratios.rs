//! Ratio columns: one length over another, typed by hand or worked out of the two.
//!
//! From `stalk length / blade length` on the sheet `characters` to a column with a range for
//! each kind. Two ranges say nothing of which stalk goes with which blade, so the range goes
//! from the shortest over the longest to the longest over the shortest: too wide rather than
//! too narrow. Whoever measured both on each leaf types the ratios into the table instead.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Cell, Character, CharacterIx, OfCell, OfColumn, Place, Quantity, Scale, Unit, Value,
    WhyNoRatio,
};

use super::characters_sheet::{Described, RatioOf};
use super::heading::{BESIDE, Heading};
use super::phrase::{fold, unquote};
use super::{caps, of_character, report::Report};

/// The default safety gap of a ratio: a tenth.
///
/// One part is laid along the other, so no ruler slips (children err by whole centimetres with
/// one, `docs/decisions/0001-safety-gap.md`), and the eye judges where it ends. We take a
/// twentieth of the longer part for one standard deviation of that judgement (an assumption,
/// no source); ranges four of them apart, two on either side, are confused in 2 of 100.
pub(super) const USUAL_GAP: Quantity = Quantity::from_thousandths(100);

/// The columns by their names; None: a ratio.
type Places = BTreeMap<String, Option<usize>>;

/// So many signs of one sort are tried as the one between the two names.
const MOST_SIGNS: usize = 8;

/// What may stand between the two.
const OVER: [&str; 7] = ["/", "÷", ":", " divided by ", " over ", " to ", " against "];

/// Headings for ratios that have no column in the table.
pub(super) fn beside<'d>(
    described: &'d [Described],
    headings: &[Heading<'d>],
) -> Vec<Heading<'d>> {
    let mut taken: BTreeSet<String> =
        headings.iter().map(|heading| fold(&heading.name)).collect();
    let room = (caps::MOST_COLUMNS as usize).saturating_sub(headings.len());
    let new = described
        .iter()
        .filter(|row| row.ratio.is_some() && taken.insert(fold(&row.name)))
        .take(room);
    new.map(|row| Heading {
        column: BESIDE,
        typed: row.name.clone(),
        name: row.name.clone(),
        unit: None,
        described: Some(row),
    })
    .collect()
}

/// Finds the two columns of each ratio. A ratio that has neither them nor a column of its own
/// is left out; it stands behind all columns of the table.
pub(super) fn link(
    characters: &mut Vec<Character>,
    cells: &mut Vec<Vec<Cell>>,
    headings: &mut Vec<&Heading<'_>>,
    report: &mut Report,
) {
    let mut places = BTreeMap::new();
    for (at, heading) in headings.iter().enumerate() {
        let is_ratio = heading.described.is_some_and(|row| row.ratio.is_some());
        places.entry(fold(&heading.name)).or_insert(if is_ratio { None } else { Some(at) });
    }
    for at in (0..characters.len()).rev() {
        let Some(ratio) = headings[at].described.and_then(|row| row.ratio.as_ref()) else {
            continue;
        };
        match parts(characters, &places, ratio) {
            Ok(parts) => {
                let [one, other] = [parts.0, parts.1].map(|part| characters[part.0].clone());
                let ratio = &mut characters[at];
                ratio.ratio_of = Some(parts);
                // What nobody said of the ratio is as it is for its parts.
                if ratio.seen_on.is_empty() {
                    ratio.seen_on = common(&one.seen_on, &other.seen_on);
                }
                if ratio.seasons.is_empty() {
                    ratio.seasons = common(&one.seasons, &other.seasons);
                }
            }
            Err(why) => {
                told(&characters[at].name, ratio, why, report);
                if headings[at].column == BESIDE {
                    characters.remove(at);
                    cells.remove(at);
                    headings.remove(at);
                }
            }
        }
    }
}

fn told(name: &str, ratio: &RatioOf, why: WhyNoRatio, report: &mut Report) {
    let (about, at) = (name.to_owned(), ratio.place.clone().into());
    report.one(Place::Cell(ratio.place.clone()), OfColumn::NoRatio { about, why, at });
}

/// The two columns; a name may itself hold a word that can stand between them.
fn parts(
    characters: &[Character],
    places: &Places,
    ratio: &RatioOf,
) -> Result<(CharacterIx, CharacterIx), WhyNoRatio> {
    let find = |name: &str| places.get(&fold(&unquote(name.trim()))).copied();
    let text = &ratio.text;
    let mut strange = None;
    for over in OVER {
        for (at, _) in text.match_indices(over).take(MOST_SIGNS) {
            let (one, other) = (&text[..at], &text[at + over.len()..]);
            match (find(one), find(other)) {
                (Some(one), Some(other)) => return lengths(characters, one, other),
                (Some(_), None) => _ = strange.get_or_insert(other),
                _ => _ = strange.get_or_insert(one),
            }
        }
    }
    Err(match strange {
        Some(name) => WhyNoRatio::NoColumn(name.trim().to_owned()),
        None => WhyNoRatio::NotTwo(text.clone()),
    })
}

fn lengths(
    characters: &[Character],
    one: Option<usize>,
    other: Option<usize>,
) -> Result<(CharacterIx, CharacterIx), WhyNoRatio> {
    let (one, other) = one.zip(other).ok_or(WhyNoRatio::OfARatio)?;
    let unit = |at: usize| match characters[at].scale {
        Scale::Measure { unit: Unit::Ratio, .. } => Err(WhyNoRatio::OfARatio),
        Scale::Measure { unit, .. } => Ok(unit),
        _ => Err(WhyNoRatio::NotMeasured(characters[at].name.clone())),
    };
    if one == other {
        return Err(WhyNoRatio::OverItself);
    }
    if unit(one)? != unit(other)? {
        return Err(WhyNoRatio::DifferentUnits);
    }
    Ok((CharacterIx(one), CharacterIx(other)))
}

/// What two sets have in common; an empty one says nothing.
fn common<T: Ord + Copy>(one: &BTreeSet<T>, other: &BTreeSet<T>) -> BTreeSet<T> {
    let both: BTreeSet<T> = one.intersection(other).copied().collect();
    match (one.is_empty(), both.is_empty()) {
        (true, _) => other.clone(),
        (false, true) => one.clone(),
        (false, false) => both,
    }
}

/// A ratio is there where both its parts are: it takes a governor over from them, the one
/// farther down where one stands above the other.
pub(super) fn take_governors(characters: &mut [Character]) {
    for at in 0..characters.len() {
        let (Some((one, other)), None) = (characters[at].ratio_of, &characters[at].governor)
        else {
            continue;
        };
        let lower = if is_covered(characters, one, other) { other } else { one };
        characters[at].governor = characters[lower.0].governor.clone();
    }
}

/// Whether a character is there wherever another is: its governor is among those of the other.
fn is_covered(characters: &[Character], part: CharacterIx, by: CharacterIx) -> bool {
    let Some(wanted) = &characters[part.0].governor else { return true };
    let mut above = characters[by.0].governor.as_ref();
    while let Some(governor) = above {
        if governor == wanted {
            return true;
        }
        above = characters[governor.character.0].governor.as_ref();
    }
    false
}

/// Works out every blank cell of every ratio. Governors have been settled.
pub(super) fn fill(
    characters: &[Character],
    cells: &mut [Vec<Cell>],
    kinds: &[(u32, String)],
    report: &mut Report,
) {
    for (at, character) in characters.iter().enumerate() {
        let Some((one, other)) = character.ratio_of else { continue };
        let mut column = std::mem::take(&mut cells[at]);
        for (kind, cell) in column.iter_mut().enumerate() {
            if cell.value != Value::Unknown {
                continue;
            }
            let value = |at: CharacterIx| &cells[at.0][kind].value;
            cell.value = worked_out(characters, CharacterIx(at), value);
            let known = |part: CharacterIx| matches!(value(part), Value::Range { .. });
            if cell.value == Value::Unknown && known(one) && known(other) {
                let parts = [one, other].map(|part| &characters[part.0].name);
                impossible(&character.name, parts, &kinds[kind].1, report);
            }
        }
        cells[at] = column;
    }
}

fn impossible(name: &str, parts: [&String; 2], kind: &str, report: &mut Report) {
    let (about, kind) = (name.to_owned(), kind.to_owned());
    let none = OfCell::NoRatio { about, kind, parts: parts.map(Clone::clone) };
    report.add(&format!("ratio {name}"), of_character(name), none);
}

/// The ratio of a kind as its other cells have it.
pub(super) fn worked_out<'v>(
    characters: &[Character],
    at: CharacterIx,
    value: impl Fn(CharacterIx) -> &'v Value,
) -> Value {
    let Some((one, other)) = characters[at.0].ratio_of else { return Value::Unknown };
    // A part that may be missing where the ratio is asked for is in the way.
    let sure = |part: CharacterIx| {
        is_covered(characters, part, at) || is_always_there(characters, part, &value)
    };
    match (value(one), value(other)) {
        (Value::DoesNotApply, _) | (_, Value::DoesNotApply) => Value::DoesNotApply,
        _ if !sure(one) || !sure(other) => Value::DoesNotApply,
        (
            Value::Range { low: one_low, high: one_high },
            Value::Range { low: other_low, high: other_high },
        ) if *one_low >= Quantity::ZERO && *other_low > Quantity::ZERO => Value::Range {
            low: over(*one_low, *other_high, false),
            high: over(*one_high, *other_low, true),
        },
        _ => Value::Unknown,
    }
}

fn is_always_there<'v>(
    characters: &[Character],
    at: CharacterIx,
    value: &impl Fn(CharacterIx) -> &'v Value,
) -> bool {
    characters[at.0].governor.as_ref().is_none_or(|governor| {
        let right = match value(governor.character) {
            Value::States(shares) => shares.iter().all(|(s, _)| governor.states.contains(s)),
            _ => false,
        };
        right && is_always_there(characters, governor.character, value)
    })
}

/// One over the other in thousandths, rounded down or up so that the range stays whole.
fn over(one: Quantity, other: Quantity, up: bool) -> Quantity {
    let (one, other) = (i128::from(one.thousandths()), i128::from(other.thousandths()));
    let rest = if up { other - 1 } else { 0 };
    let thousandths = (one * 1000 + rest) / other;
    Quantity::from_thousandths(i64::try_from(thousandths).unwrap_or(i64::MAX))
}

#[cfg(test)]
mod tests;
