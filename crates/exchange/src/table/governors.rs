//! Characters that are there only under a state of another: leaflets need a compound leaf.
//!
//! From the conditions of the sheet `characters` to governors, and then through the cells: a
//! value that cannot be there is told, an empty cell that has no meaning means "does not
//! apply".

use std::collections::BTreeSet;

use spinney_model::{
    Cell, Character, CharacterIx, Code, Governor, Place, Scale, StateIx, Value,
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
            Err(what) => {
                report.one(
                    Code::SheetDisagrees,
                    applies.place.clone(),
                    format!("The condition of “{}” ({}) {what}.", heading.name, applies.place),
                    "Type another character in words and some of its states: \
                     `form = feather or hand`.",
                );
                None
            }
        };
    }
}

fn governor(
    characters: &[Character],
    governed: usize,
    applies: &Applies,
) -> Result<Governor, String> {
    let name = &applies.character;
    let is_named = |character: &Character| fold(&character.name) == fold(name);
    let at = characters
        .iter()
        .position(is_named)
        .ok_or_else(|| format!("names “{name}”, which is no column of the table"))?;
    let Scale::Words { states } = &characters[at].scale else {
        return Err(format!("names “{name}”, which holds numbers, not words"));
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
        right.insert(StateIx(
            found.ok_or_else(|| format!("names “{state}”, which is no state of “{name}”"))?,
        ));
    }
    if right.is_empty() {
        return Err(format!("names no state of “{name}”"));
    }
    let mut above = Some(at);
    while let Some(next) = above {
        if next == governed {
            return Err("leads back to itself".to_owned());
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
                    let place = kinds.grid.place(kinds.rows[kind].0, headings[at].column);
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

fn present(kind: &str, names: (&String, &String), place: Place, report: &mut Report) {
    report.add(
        Code::GovernedButPresent,
        names.0,
        place.clone(),
        || {
            format!(
                "{kind} has something under “{}” ({place}), although its “{}” says that it \
                 has no such thing. It is read as “does not apply”.",
                names.0, names.1
            )
        },
        "Type `n/a` there, or mend the other cell, or the condition on “characters”.",
    );
}

fn assumed(name: &str, above: &str, count: usize, report: &mut Report) {
    let cells = if count == 1 { "One cell".to_owned() } else { format!("{count} cells") };
    report.one(
        Code::Assumed,
        of_character(name),
        format!(
            "{cells} under “{name}” with nothing in them are read as “does not apply”, \
             because “{above}” says so."
        ),
        "Nothing, or type `n/a` to make it plain.",
    );
}
