//! How many children and groups come along: said once, for the copies that are needed.
//!
//! From two numbers to facts of the visit. Nothing typed is allowed: then the first page of
//! everything for today says what it assumes.

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_exchange::table::how_many;
use spinney_model::limits::CHILDREN;
use spinney_model::{AboutField, Edit};
use spinney_voice::Tongue;

use crate::asked::Deed;
use crate::forms::{Fact, Form, hidden};
use crate::reply::Refused;

/// The two numbers: what they are of, their name in the form, their label.
const NUMBERS: [(AboutField, &str, &str); 2] = [
    (AboutField::Children, "children", "print-children"),
    (AboutField::Groups, "groups", "print-groups"),
];

/// The form; `back` is the page to come back to.
pub(super) fn form(t: Tongue, collection: &Collection, back: &str) -> Markup {
    html! {
        form.how-many method="post" action=(COUNT.path) {
            (hidden(&[("back", &back)]))
            @for (field, name, label) in NUMBERS {
                label for=(name) { (t.say(label)) }
                input id=(name) name=(name) type="number" min="1" max=(CHILDREN)
                    inputmode="numeric" value=(collection.about_field(field));
            }
            button #count { (t.say("print-count")) }
            p.quiet { (t.say("print-count-about")) }
        }
    }
}

/// How many come along is written down.
pub(super) static COUNT: Form<Vec<(AboutField, String)>> = Form {
    path: "/do/how-many",
    read: |at| {
        let sent = NUMBERS.into_iter().filter(|(_, name, _)| at.asked.sent(name));
        let read = sent.map(|(field, name, _)| {
            let typed = at.asked.line(name);
            match how_many(&typed) {
                Some(number) => Ok((field, number.to_string())),
                None if typed.is_empty() => Ok((field, typed)),
                None => {
                    let (t, most) = (at.asked.tongue, CHILDREN);
                    Err(Refused {
                        sentence: t.say("print-not-a-number"),
                        remedy: t.with("print-not-a-number-remedy", &[("most", &most)]),
                    })
                }
            }
        });
        read.collect()
    },
    rests_on: |numbers| numbers.iter().map(number).collect(),
    act: |numbers, at| {
        let changed = numbers.into_iter().filter(|typed| at.changes(&number(typed)));
        let edits = changed.map(|(field, text)| Edit::Scene(field, text));
        Ok(Deed::edits(edits, at.asked.back("/print")))
    },
};

fn number((field, text): &(AboutField, String)) -> Fact<'static> {
    let field = *field;
    Fact::typed(move |of: &Collection| of.about_field(field).to_owned(), text)
}
