//! Adding a character, writing a state in another word everywhere, taking a character out.

use maud::{Markup, html};
use spinney_exchange::table;
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterEdit, CharacterField, CharacterId, Edit};

use super::fields::{condition, gone, new_name, one_line};
use super::view::View;
use super::{LONGEST_NAME, LONGEST_TEXT};
use crate::Desk;
use crate::pages::finds;
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::Collection;
use spinney_collection::laid::folded;
use spinney_collection::reworded;
use spinney_voice::Tongue;

/// A row more, a column more.
pub(super) fn add_forms(t: Tongue, collection: &Collection, view: &View) -> Markup {
    let back = view.address();
    html! {
        div.add-to-table {
            form method="post" action="/do/add-character" {
                label for="new-character" { (t.say("table-new-character")) }
                input #new-character name="name" required maxlength=(LONGEST_NAME) dir="auto" autocomplete="off";
                button #add-character { (t.say("table-add-character")) }
            }
            form method="post" action="/do/add-kinds" enctype="multipart/form-data" {
                input type="hidden" name="back" value=(back);
                label for="new-kind" { (t.say("table-new-kind")) }
                input #new-kind name="names" required maxlength=(finds::LONGEST_NAME) dir="auto" autocomplete="off";
                button #add-kind { (t.say("table-add-kind")) }
            }
        }
        @if collection.characters.len() >= SCREENS_COLUMNS { p.quiet { (t.count("table-full", SCREENS_COLUMNS)) } }
    }
}

pub(super) fn add(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let collection = &desk.history.now;
    if collection.characters.len() >= SCREENS_COLUMNS {
        return Err(Refused {
            sentence: t.count("table-full", SCREENS_COLUMNS),
            remedy: t.say("table-full-remedy"),
        });
    }
    let typed = one_line(asked.request.field("name"));
    let (name, unit) = table::name_and_unit(&typed);
    let name = new_name(t, collection, None, &name)?;
    let id = collection.next_character();
    let mut edits = vec![Edit::Character(id, CharacterEdit::Add(name))];
    if let Some(unit) = unit {
        edits.push(Edit::Character(id, CharacterEdit::Describe(CharacterField::Unit, unit)));
    }
    Ok(Deed::edits(edits, format!("/table/{}#panel", id.0)))
}

/// A state gets another word, in every cell, list, condition and question.
pub(super) fn state(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let id = CharacterId(asked.number(0));
    let collection = &desk.history.now;
    if !collection.characters.contains_key(&id) {
        return Err(gone(t));
    }
    let from = one_line(asked.request.field("from"));
    let to = one_line(asked.request.field("to"));
    let back = asked.back(&format!("/table/{}", id.0));
    if from.is_empty() || from == to {
        return Ok(Deed::edits(Vec::new(), back));
    }
    if to.is_empty() || to.chars().count() > LONGEST_NAME {
        return Err(Refused {
            sentence: t.say("table-no-state"),
            remedy: t.count("table-no-state-remedy", LONGEST_NAME),
        });
    }
    let name = collection.character_name(id);
    let mut edits = vec![Edit::Character(
        id,
        CharacterEdit::RenameState { from: from.clone(), to: to.clone() },
    )];
    for &other in collection.characters.keys().filter(|other| **other != id) {
        let when = collection.character_field(other, CharacterField::AppliesWhen);
        let Some(rest) = condition(when, name) else { continue };
        let (mark, states) = rest.split_at(if rest.starts_with("is ") { 2 } else { 1 });
        let new = table::renamed(states.trim(), &from, &to);
        if folded(&new) != folded(states) {
            let text = format!("{name} {mark} {new}");
            if text.chars().count() <= LONGEST_TEXT {
                edits.push(Edit::Character(
                    other,
                    CharacterEdit::Describe(CharacterField::AppliesWhen, text),
                ));
            }
        }
    }
    edits.extend(reworded::follow(collection, &edits));
    Ok(Deed::edits(edits, back))
}

pub(super) fn take_out(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let id = CharacterId(asked.number(0));
    let known = desk.history.now.characters.contains_key(&id);
    let edits = known.then_some(Edit::Character(id, CharacterEdit::Remove));
    Ok(Deed::edits(edits.into_iter().collect(), asked.back("/table")))
}
