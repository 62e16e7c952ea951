//! Adding a character, writing a state in another word everywhere, taking a character out.

use maud::{Markup, html};
use spinney_collection::{Collection, renamed, reworded};
use spinney_exchange::table;
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterEdit, CharacterField, CharacterId, Edit};
use spinney_voice::Tongue;

use super::fields::{LONGEST_NAME, LONGEST_TEXT, character, name_of, new_name, one_line};
use super::view::View;
use crate::asked::Deed;
use crate::forms::{Form, hidden, nothing};
use crate::pages::finds::add::ADD_KINDS;
use crate::pages::finds::fields;
use crate::reply::Refused;

/// A row more, a column more.
pub(super) fn add_forms(t: Tongue, collection: &Collection, view: &View) -> Markup {
    let back = view.address();
    html! {
        div.add-to-table {
            form method="post" action=(ADD_CHARACTER.path) {
                (hidden(&[]))
                label for="new-character" { (t.say("table-new-character")) }
                input #new-character name="name" required maxlength=(LONGEST_NAME) dir="auto" autocomplete="off";
                button #add-character { (t.say("table-add-character")) }
            }
            form method="post" action=(ADD_KINDS.path) enctype="multipart/form-data" {
                (hidden(&[("back", &back)]))
                label for="new-kind" { (t.say("table-new-kind")) }
                input #new-kind name="names" required maxlength=(fields::LONGEST_NAME) dir="auto" autocomplete="off";
                button #add-kind { (t.say("table-add-kind")) }
            }
        }
        @if collection.characters.len() >= SCREENS_COLUMNS { p.quiet { (t.count("table-full", SCREENS_COLUMNS)) } }
    }
}

/// A character more, with this name, and perhaps its unit.
pub(super) static ADD_CHARACTER: Form<String> = Form {
    path: "/do/add-character",
    read: |at| Ok(one_line(at.asked.request.field("name"))),
    rests_on: nothing,
    act: |typed, at| {
        let (t, collection) = (at.asked.tongue, at.collection());
        if collection.characters.len() >= SCREENS_COLUMNS {
            return Err(Refused::count(t, "table-full", SCREENS_COLUMNS));
        }
        let (name, unit) = table::name_and_unit(&typed);
        let name = new_name(t, collection, None, &name)?;
        let id = collection.next_character();
        let unit = unit.map(|unit| CharacterEdit::Describe(CharacterField::Unit, unit));
        let edits = [CharacterEdit::Add(name)].into_iter().chain(unit);
        let edits = edits.map(|edit| Edit::Character(id, edit));
        Ok(Deed::edits(edits, format!("/table/{}#panel", id.0)))
    },
};

/// A state gets another word, in every cell, list, condition and question: from this to that.
pub(super) static RENAME_STATE: Form<(CharacterId, [String; 2])> = Form {
    path: "/do/rename-state/{id}",
    read: |at| {
        let typed = |field| one_line(at.asked.request.field(field));
        Ok((character(at)?, ["from", "to"].map(typed)))
    },
    rests_on: |(id, _)| vec![name_of(*id)],
    act: |(id, [from, to]), at| {
        let (t, collection) = (at.asked.tongue, at.collection());
        let back = at.asked.back(&format!("/table/{}", id.0));
        if from.is_empty() || from == to {
            return Ok(Deed::edits([], back));
        }
        if to.is_empty() || to.chars().count() > LONGEST_NAME {
            return Err(Refused::count(t, "table-no-state", LONGEST_NAME));
        }
        let mut edits = renamed::state(collection, id, &from, &to, LONGEST_TEXT);
        edits.extend(reworded::follow(collection, &edits));
        Ok(Deed::edits(edits, back))
    },
};

/// A character is taken out of the table, with its cells.
pub(super) static TAKE_OUT: Form<CharacterId> = Form {
    path: "/do/take-out-character/{id}",
    read: character,
    rests_on: |id| vec![name_of(*id)],
    act: |id, at| {
        Ok(Deed::edits([Edit::Character(id, CharacterEdit::Remove)], at.asked.back("/table")))
    },
};
