//! Good questions to begin with: what may be looked at, group by group, to tick.
//!
//! From the list of starters (`voice::starters`) to a form, and from what was ticked to columns with
//! their questions, states and units. It says of no find how it looks.

#![deny(clippy::wildcard_enum_match_arm)]

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_collection::laid::folded;
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterEdit, CharacterId, DrawnWord, Edit, Figure};
use spinney_press::lines;
use spinney_voice::Tongue;
use spinney_voice::glossary;
use spinney_voice::starters::{About, STARTERS, Starter};

use crate::asked::Deed;
use crate::forms::{Form, hidden, nothing};
use crate::reply::Refused;

/// The questions of every group; open where the table has none yet.
pub(super) fn offered(t: Tongue, collection: &Collection) -> Markup {
    let there = columns(collection);
    html! {
        details #starters open[collection.characters.is_empty()] {
            summary { strong { (t.say("start-title")) } }
            p { (t.say("start-why")) }
            form #start-form method="post" action=(TAKE.path) {
                (hidden(&[]))
                @for (at, about) in About::ALL.into_iter().enumerate() {
                    details.starters open[at == 0 && collection.characters.is_empty()] {
                        summary { (about.name(t)) }
                        ul {
                            @for starter in STARTERS.iter().filter(|one| one.about == about) {
                                (one(t, starter, there.contains(&folded(&starter.name(t)))))
                            }
                        }
                    }
                }
                button.main #take-starters { (t.say("start-take")) }
            }
        }
    }
}

/// The names of the columns that there are, as they are compared.
fn columns(collection: &Collection) -> BTreeSet<String> {
    let all = collection.characters.keys();
    all.map(|id| folded(collection.character_name(*id))).collect()
}

/// A question, its answers, and the words to know with their drawings.
fn one(t: Tongue, starter: &Starter, there: bool) -> Markup {
    let id = format!("start-{}", starter.id);
    let (name, example) = (starter.name(t), starter.example(t));
    let words = starter.words.iter().filter_map(|word| glossary::entry(t, word));
    let drawn = drawn(starter);
    html! {
        li {
            label.box for=(id) {
                input id=(id) type="checkbox" name="start" value=(starter.id) disabled[there];
                " " strong { (name) }
                @if there { " " span.quiet { "(" (t.say("start-there")) ")" } }
            }
            @if example != name { p { (t.with("start-example", &[("question", &example)])) } }
            @let states = starter.states(t);
            @if !states.is_empty() { p { (states.join(" · ")) } }
            @if let Some(other) = starter.governor() {
                p.quiet { (t.with("start-needs", &[("other", &other.name(t))])) }
            }
            @if !drawn.own.is_empty() { (lines::figures(t, &drawn)) }
            @for word in words { p.plain-words { strong { (word.word) } ": " (word.plain) } }
            p.quiet { (starter.hint(t)) }
        }
    }
}

/// What its words show, one drawing each, side by side.
fn drawn(starter: &Starter) -> DrawnWord {
    let elsewhere = [About::Pond, About::Seeds, About::Shells, About::Shapes];
    let about_leaves = !elsewhere.contains(&starter.about);
    let words = starter.words.iter();
    let mut own: Vec<Figure> = Vec::new();
    for drawn in words.filter_map(|word| spinney_draw::of_word(word, about_leaves)) {
        let mut shown = drawn.own.into_iter();
        let fresh =
            shown.find(|figure| own.iter().all(|known| known.caption != figure.caption));
        own.extend(fresh);
    }
    DrawnWord { own, other: Vec::new() }
}

/// The ticked ones become columns, each with all that is known of it.
pub(super) static TAKE: Form<Vec<&'static Starter>> = Form {
    path: "/do/take-starters",
    read: |at| {
        let ticked: BTreeSet<&str> = at.asked.request.fields("start").collect();
        let picked = STARTERS.iter().filter(|starter| ticked.contains(starter.id)).collect();
        Ok(picked)
    },
    rests_on: nothing,
    act: |picked, at| {
        let (t, collection) = (at.asked.tongue, at.collection());
        let mut there = columns(collection);
        let fresh: Vec<_> =
            picked.into_iter().filter(|one| !there.contains(&folded(&one.name(t)))).collect();
        if fresh.is_empty() {
            return Err(Refused::say(t, "start-none-picked"));
        }
        if collection.characters.len() + fresh.len() > SCREENS_COLUMNS {
            return Err(Refused::count(t, "table-full", SCREENS_COLUMNS));
        }
        let first = collection.next_character();
        let mut edits = Vec::new();
        for (number, starter) in (first.0..).zip(fresh) {
            let name = starter.name(t);
            // It stands before those that hang on it.
            let governed =
                starter.governor().is_some_and(|one| there.contains(&folded(&one.name(t))));
            there.insert(folded(&name));
            let fields = starter.fields(t, governed);
            let fields =
                fields.into_iter().map(|(field, text)| CharacterEdit::Describe(field, text));
            let all = std::iter::once(CharacterEdit::Add(name)).chain(fields);
            edits.extend(all.map(|edit| Edit::Character(CharacterId(number), edit)));
        }
        Ok(Deed::edits(edits, "/table".to_owned()))
    },
};
