//! Characters that are there only under a state of another: leaflets need a compound leaf.
//!
//! From the conditions of the sheet `characters` to governors, and then through the cells: a
//! value that cannot be there is told, an empty cell that has no meaning means "does not
//! apply".

use std::collections::BTreeSet;

use spinney_model::{
    Cell, CellAt, Character, CharacterIx, Governor, OfCell, OfColumn, Place, Scale, StateIx,
    Value, WhyNoCondition,
};

use super::answers::{is_no, is_yes};
use super::characters_sheet::Applies;
use super::column::Kinds;
use super::heading::Heading;
use super::phrase::fold;
use super::{of_character, report::Report};

/// Gives every character its governor, where its condition can be understood.
pub(super) fn link(
    characters: &mut [Character],
    headings: &[&Heading<'_>],
    report: &mut Report,
) {
    for (at, heading) in headings.iter().enumerate() {
        let Some(applies) = heading.described.and_then(|row| row.applies.as_ref()) else {
            continue;
        };
        let found = governor(characters, at, applies);
        characters[at].governor = match found {
            Ok(governor) => Some(governor),
            Err(why) => {
                let (about, at) = (heading.name.clone(), applies.place.clone().into());
                let none = OfColumn::NoCondition { about, why, at };
                report.one(Place::Cell(applies.place.clone()), none);
                None
            }
        };
    }
}

fn governor(
    characters: &[Character],
    governed: usize,
    applies: &Applies,
) -> Result<Governor, WhyNoCondition> {
    let name = &applies.character;
    let is_named = |character: &Character| fold(&character.name) == fold(name);
    let at = characters
        .iter()
        .position(is_named)
        .ok_or_else(|| WhyNoCondition::NoColumn(name.clone()))?;
    let Scale::Words { states } = &characters[at].scale else {
        return Err(WhyNoCondition::HoldsNumbers(name.clone()));
    };
    let mut right = BTreeSet::new();
    for state in &applies.states {
        // `ja` is the state `yes` of a column that says yes and no.
        let same = |known: &String| match fold(known).as_str() {
            "yes" if is_yes(state) => true,
            "no" if is_no(state) => true,
            known => known == fold(state),
        };
        let found = states.iter().position(same);
        let none = || WhyNoCondition::NoState { state: state.clone(), of: name.clone() };
        right.insert(StateIx(found.ok_or_else(none)?));
    }
    if right.is_empty() {
        return Err(WhyNoCondition::NoStates(name.clone()));
    }
    let mut above = Some(at);
    while let Some(next) = above {
        if next == governed {
            return Err(WhyNoCondition::Itself);
        }
        above = characters[next].governor.as_ref().map(|governor| governor.character.0);
    }
    Ok(Governor { character: CharacterIx(at), states: right })
}

/// Goes through the cells of governed characters, those above first.
pub(super) fn settle(
    characters: &[Character],
    cells: &mut [Vec<Cell>],
    kinds: &Kinds<'_>,
    headings: &[&Heading<'_>],
    report: &mut Report,
) {
    let mut order: Vec<usize> = (0..characters.len()).collect();
    order.sort_by_key(|at| depth(characters, *at));
    for at in order {
        let Some(governor) = &characters[at].governor else { continue };
        let above = governor.character.0;
        let mut silent = 0_usize;
        let mut column = std::mem::take(&mut cells[at]);
        for (kind, cell) in column.iter_mut().enumerate() {
            if can_be_right(&cells[above][kind].value, governor) {
                continue;
            }
            match cell.value {
                Value::DoesNotApply => continue,
                Value::Unknown => silent += 1,
                _ => {
                    let place = kinds.grid.at(kinds.rows[kind].0, headings[at].column);
                    let names = (&characters[at].name, &characters[above].name);
                    present(&kinds.rows[kind].1, names, place, report);
                }
            }
            *cell = Cell::from(Value::DoesNotApply);
        }
        cells[at] = column;
        if silent > 0 && characters[at].ratio_of.is_none() {
            assumed(&characters[at].name, &characters[above].name, silent, report);
        }
    }
}

/// How many governors stand above a character.
fn depth(characters: &[Character], at: usize) -> usize {
    let above = |at: usize| characters[at].governor.as_ref().map(|above| above.character.0);
    std::iter::successors(above(at), |at| above(*at)).count()
}

fn can_be_right(value: &Value, governor: &Governor) -> bool {
    match value {
        Value::Unknown => true,
        Value::States(shares) => {
            shares.iter().any(|(state, _)| governor.states.contains(state))
        }
        _ => false,
    }
}

fn present(kind: &str, names: (&String, &String), place: CellAt, report: &mut Report) {
    let present = OfCell::GovernedButPresent {
        kind: kind.to_owned(),
        about: names.0.clone(),
        above: names.1.clone(),
        at: place.clone().into(),
    };
    report.add(names.0, Place::Cell(place), present);
}

fn assumed(name: &str, above: &str, count: usize, report: &mut Report) {
    let (about, above) = (name.to_owned(), above.to_owned());
    report.one(of_character(name), OfColumn::DoesNotApply { about, above, cells: count });
}
