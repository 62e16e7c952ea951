//! Adding a character, writing a state in another word everywhere, taking a character out.

use maud::{Markup, html};
use spinney_collection::laid::folded;
use spinney_collection::{Collection, reworded};
use spinney_exchange::table;
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterEdit, CharacterField, CharacterId, Edit};
use spinney_voice::Tongue;

use super::fields::{
    LONGEST_NAME, LONGEST_TEXT, character, condition, name_of, new_name, one_line,
};
use super::view::View;
use crate::asked::Deed;
use crate::forms::{At, Fact, Form, hidden};
use crate::pages::finds::add::AddKinds;
use crate::pages::finds::fields;
use crate::reply::Refused;

/// A row more, a column more.
pub(super) fn add_forms(t: Tongue, collection: &Collection, view: &View) -> Markup {
    let back = view.address();
    html! {
        div.add-to-table {
            form method="post" action=(AddCharacter::PATH) {
                (hidden(&[]))
                label for="new-character" { (t.say("table-new-character")) }
                input #new-character name="name" required maxlength=(LONGEST_NAME) dir="auto" autocomplete="off";
                button #add-character { (t.say("table-add-character")) }
            }
            form method="post" action=(AddKinds::PATH) enctype="multipart/form-data" {
                (hidden(&[("back", &back)]))
                label for="new-kind" { (t.say("table-new-kind")) }
                input #new-kind name="names" required maxlength=(fields::LONGEST_NAME) dir="auto" autocomplete="off";
                button #add-kind { (t.say("table-add-kind")) }
            }
        }
        @if collection.characters.len() >= SCREENS_COLUMNS { p.quiet { (t.count("table-full", SCREENS_COLUMNS)) } }
    }
}

/// A character more.
pub(super) struct AddCharacter(String);

impl Form for AddCharacter {
    const PATH: &'static str = "/do/add-character";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        Ok(Self(one_line(at.asked.request.field("name"))))
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        Vec::new()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let (t, collection) = (at.asked.tongue, at.collection());
        if collection.characters.len() >= SCREENS_COLUMNS {
            return Err(Refused {
                sentence: t.count("table-full", SCREENS_COLUMNS),
                remedy: t.say("table-full-remedy"),
            });
        }
        let (name, unit) = table::name_and_unit(&self.0);
        let name = new_name(t, collection, None, &name)?;
        let id = collection.next_character();
        let mut edits = vec![Edit::Character(id, CharacterEdit::Add(name))];
        if let Some(unit) = unit {
            edits
                .push(Edit::Character(id, CharacterEdit::Describe(CharacterField::Unit, unit)));
        }
        Ok(Deed::edits(edits, format!("/table/{}#panel", id.0)))
    }
}

/// A state gets another word, in every cell, list, condition and question.
pub(super) struct RenameState {
    id: CharacterId,
    from: String,
    to: String,
}

impl RenameState {
    /// Where it is sent.
    pub(super) fn action(id: CharacterId) -> String {
        format!("/do/rename-state/{}", id.0)
    }

    pub(super) fn fields(from: &str, back: &str) -> Markup {
        hidden(&[("from", &from), ("back", &back)])
    }
}

impl Form for RenameState {
    const PATH: &'static str = "/do/rename-state/{id}";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let typed = |field| one_line(at.asked.request.field(field));
        Ok(Self { id: character(at)?, from: typed("from"), to: typed("to") })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        vec![name_of(self.id)]
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let (t, collection) = (at.asked.tongue, at.collection());
        let Self { id, from, to } = self;
        let back = at.asked.back(&format!("/table/{}", id.0));
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
}

/// A character is taken out of the table, with its cells.
pub(super) struct TakeOut(CharacterId);

impl TakeOut {
    /// Where it is sent.
    pub(super) fn action(id: CharacterId) -> String {
        format!("/do/take-out-character/{}", id.0)
    }
}

impl Form for TakeOut {
    const PATH: &'static str = "/do/take-out-character/{id}";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        character(at).map(Self)
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        vec![name_of(self.0)]
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let edit = Edit::Character(self.0, CharacterEdit::Remove);
        Ok(Deed::edits(vec![edit], at.asked.back("/table")))
    }
}
