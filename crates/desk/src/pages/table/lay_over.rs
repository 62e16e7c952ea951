//! Laying a group's table over this one: what they say goes to their own view, and where it
//! differs from what others say, a person decides.

#![deny(clippy::wildcard_enum_match_arm)]

use maud::{Markup, html};
use spinney_collection::laid::Laid;
use spinney_exchange::table::Source;
use spinney_model::{Done, Edit};
use spinney_voice::Tongue;

use super::fields::{LONGEST_NAME, one_line};
use super::view::View;
use crate::asked::Deed;
use crate::forms::{Form, hidden, nothing};
use crate::pages::finds::add::{small_enough, taken_in};
use crate::pages::finds::left::{self, Told};

pub(super) fn form(t: Tongue, view: &View) -> Markup {
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
        let (sheets, mut taken) = taken_in(t, collection, &[sheet], &who)?;
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
