//! What is done to the table as a whole: a row or a column more, a state in another word
//! everywhere, a character out, a group's table over it.
//!
//! What another table says goes to its group's own view, and where it differs from what others
//! say, a person decides.

#![deny(clippy::wildcard_enum_match_arm)]

use maud::{Markup, html};
use spinney_collection::laid::Laid;
use spinney_collection::{Collection, renamed, reworded};
use spinney_exchange::table::{self, RowsAre, Source};
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterEdit, CharacterField, CharacterId, Done, Edit};
use spinney_voice::Tongue;

use crate::asked::Deed;
use crate::forms::{Form, hidden, nothing};
use crate::pages::finds::add::{ADD_KINDS, small_enough, taken_in};
use crate::pages::finds::deeds;
use crate::pages::finds::left::{self, Told};
use crate::pages::table::fields::{
    LONGEST_NAME, LONGEST_TEXT, character, name_of, new_name, one_line,
};
use crate::pages::table::view::View;
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
                input #new-kind name="names" required maxlength=(deeds::LONGEST_NAME) dir="auto" autocomplete="off";
                button #add-kind { (t.say("table-add-kind")) }
            }
        }
        p { a #to-measure href="/measure" { (t.say("scan-link")) } }
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

pub(super) fn lay_over_form(t: Tongue, view: &View) -> Markup {
    html! {
        details.lay-over {
            summary #lay-over { (t.say("table-lay-over")) }
            form method="post" action=(LAY_OVER.path) enctype="multipart/form-data" {
                (hidden(&[]))
                p { (t.say("table-lay-over-help")) }
                label for="lay-who" { (t.say("table-lay-over-who")) }
                input #lay-who name="who" value=(view.who) maxlength=(LONGEST_NAME) list="groups" dir="auto" autocomplete="off";
                label for="lay-table" { (t.say("table-lay-over-paste")) }
                textarea #lay-table name="table" rows="6" spellcheck="false" {}
                label for="lay-file" { (t.say("table-lay-over-file")) }
                input #lay-file type="file" name="file" accept=".csv,.tsv,.txt,.xlsx";
                button #lay { (t.say("table-lay-over-button")) }
            }
        }
    }
}

/// A group's table is laid over this one: who they are, and their sheet.
pub(super) static LAY_OVER: Form<(String, Source)> = Form {
    path: "/do/lay-over",
    read: |at| {
        let request = at.asked.request;
        let who = one_line(request.field("who")).chars().take(LONGEST_NAME).collect();
        let file = request.files.iter().find(|file| !file.bytes.is_empty());
        let sheet = match file {
            Some(file) => Source { name: file.name.clone(), bytes: file.bytes.clone() },
            None => {
                let text = request.fields("table").next().unwrap_or_default();
                let name = at.asked.tongue.say("table-pasted");
                Source { name, bytes: text.as_bytes().to_vec() }
            }
        };
        Ok((who, sheet))
    },
    rests_on: nothing,
    act: |(who, sheet), at| {
        let (t, collection) = (at.asked.tongue, at.collection());
        let (sheets, mut taken) = taken_in(t, collection, (&[sheet], RowsAre::Kinds), &who)?;
        let told = Told::of(t, collection, &sheets, &taken);
        let mut edits = std::mem::take(&mut taken.edits);
        // What is said already need not be said again.
        edits.retain(|edit| match edit {
            Edit::Cell { kind, character, source, text } => {
                collection.cells.said(*kind, *character, source) != text
            }
            Edit::Kind(..)
            | Edit::Character(..)
            | Edit::Specimen(..)
            | Edit::Scene(..)
            | Edit::Key(..)
            | Edit::BackTo(_) => true,
        });
        if edits.is_empty() && taken.left.is_empty() {
            return Err(at.asked.refused("table-nothing-pasted"));
        }
        small_enough(collection, at.asked, &edits)?;
        let then = at.desk.history.then(&Done::Edits(edits.clone()));
        let then = then.expect("edits can always be tried");
        let laid = Laid::of(&then);
        let differ = laid.is_some_and(|laid| laid.said.contradictions().next().is_some());
        let to = if differ { "/table?show=differ" } else { "/table" };
        Ok(Deed::edits(edits, left::address(to.to_owned(), &told)))
    },
};
