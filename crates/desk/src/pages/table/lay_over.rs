//! Laying a group's table over this one: what they say goes to their own view, and where it
//! differs from what others say, a person decides.

#![deny(clippy::wildcard_enum_match_arm)]

use maud::{Markup, html};
use spinney_collection::laid::Laid;
use spinney_exchange::table::Source;
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterEdit, Edit, KindEdit};
use spinney_voice::Tongue;

use super::fields::{LONGEST_NAME, LONGEST_TEXT, one_line};
use super::view::View;
use crate::asked::Deed;
use crate::forms::{At, Fact, Form, hidden};
use crate::pages::finds::add::taken_in;
use crate::pages::finds::fields::MOST_KINDS;
use crate::pages::finds::left::{self, Told};
use crate::reply::Refused;

pub(super) fn form(t: Tongue, view: &View) -> Markup {
    html! {
        details.lay-over {
            summary #lay-over { (t.say("table-lay-over")) }
            form method="post" action=(LayOver::PATH) enctype="multipart/form-data" {
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

/// A group's table is laid over this one.
pub(super) struct LayOver {
    who: String,
    sheet: Source,
}

impl Form for LayOver {
    const PATH: &'static str = "/do/lay-over";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
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
        Ok(Self { who, sheet })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        Vec::new()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let (t, collection) = (at.asked.tongue, at.collection());
        let (sheets, mut taken) = taken_in(t, collection, &[self.sheet], &self.who)?;
        let told = Told::of(t, collection, &sheets, &taken);
        let mut edits = std::mem::take(&mut taken.edits);
        // What is said already need not be said again.
        edits.retain(|edit| match edit {
            Edit::Cell { kind, character, source, text } => {
                collection.cells.said(*kind, *character, source) != text
            }
            Edit::Kind(..)
            | Edit::Character(..)
            | Edit::Scene(..)
            | Edit::Key(..)
            | Edit::BackTo(_) => true,
        });
        if edits.is_empty() && taken.left.is_empty() {
            return Err(at
                .asked
                .refused("table-nothing-pasted", "table-nothing-pasted-remedy"));
        }
        fits(t, &edits)?;
        let mut then = collection.clone();
        edits.iter().for_each(|edit| then.apply(edit));
        if then.kinds.len() > MOST_KINDS || then.characters.len() > SCREENS_COLUMNS {
            return Err(at.asked.refused("table-too-much", "table-too-much-remedy"));
        }
        let laid = Laid::of(&then);
        let differ = laid.is_some_and(|laid| laid.said.contradictions().next().is_some());
        let to = if differ { "/table?show=differ" } else { "/table" };
        Ok(Deed::edits(edits, left::address(to.to_owned(), &told)))
    }
}

/// No text is longer than could be typed.
fn fits(t: Tongue, edits: &[Edit]) -> Result<(), Refused> {
    for edit in edits {
        let (text, most) = match edit {
            Edit::Kind(_, KindEdit::Add(name))
            | Edit::Character(_, CharacterEdit::Add(name)) => (name, LONGEST_NAME),
            Edit::Cell { text, .. }
            | Edit::Kind(_, KindEdit::Describe(_, text))
            | Edit::Character(_, CharacterEdit::Describe(_, text))
            | Edit::Scene(_, text) => (text, LONGEST_TEXT),
            Edit::Kind(
                _,
                KindEdit::Remove
                | KindEdit::Merge(_)
                | KindEdit::AddPicture(_)
                | KindEdit::RemovePicture(_),
            )
            | Edit::Character(_, CharacterEdit::Remove | CharacterEdit::RenameState { .. })
            | Edit::Key(..)
            | Edit::BackTo(_) => continue,
        };
        if text.chars().count() > most {
            let begin: String = text.chars().take(40).collect();
            return Err(Refused {
                sentence: t.with("table-pasted-too-long", &[("text", &begin), ("most", &most)]),
                remedy: t.say("table-too-long-remedy"),
            });
        }
    }
    Ok(())
}
