//! The fields of a character's sheet: how each is asked for, and the edits of those that were
//! changed.
//!
//! What is typed is kept as typed and read as the sheet `characters` of a spreadsheet is, so a
//! list of boxes writes the words that stand there.

use std::collections::BTreeSet;

use spinney_exchange::table::{self, Input};
use spinney_model::{CharacterEdit, CharacterField as Field, CharacterId, Edit};

use super::{LONGEST_NAME, LONGEST_TEXT};
use crate::Desk;
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::Collection;
use spinney_collection::laid::folded;
use spinney_collection::reworded;
use spinney_voice::Tongue;

/// Every field of the sheet: its mark in forms, its label, its help (empty: none). How it is
/// filled in, the table of columns says.
pub(super) const FIELDS: [(Field, &str, &str, &str); 16] = [
    (Field::Name, "name", "table-field-name", ""),
    (Field::Question, "question", "table-field-question", "table-help-question"),
    (Field::States, "states", "table-field-states", "table-help-states"),
    (Field::InOrder, "in-order", "table-field-in-order", "table-help-in-order"),
    (Field::Unit, "unit", "table-field-unit", ""),
    (Field::Values, "values", "table-field-values", "table-help-values"),
    (Field::Gap, "gap", "table-field-gap", "table-help-gap"),
    (Field::Difficulty, "difficulty", "table-field-difficulty", ""),
    (Field::SeenOn, "seen-on", "table-field-seen-on", ""),
    (Field::Season, "season", "table-field-season", ""),
    (Field::Instrument, "instrument", "table-field-instrument", ""),
    (Field::ByTouch, "by-touch", "table-field-by-touch", ""),
    (Field::AppliesWhen, "applies-when", "table-field-applies-when", "table-help-applies-when"),
    (Field::ReadRight, "read-right", "table-field-read-right", "table-help-read-right"),
    (Field::WordsToKnow, "words", "table-field-words", "table-help-words"),
    (Field::RatioOf, "ratio", "table-field-ratio", "table-help-ratio"),
];

/// The label of a field.
pub(crate) fn label(field: Field) -> &'static str {
    FIELDS.iter().find(|(known, ..)| *known == field).map_or("", |(_, _, label, _)| label)
}

/// Which of the words a text names; None: it names something else, and is shown as it is.
pub(super) fn named(text: &str, words: &[&'static str]) -> Option<BTreeSet<&'static str>> {
    let parts = text.split([',', ';']).flat_map(|part| part.split(" or "));
    let parts = parts.map(folded).filter(|part| !part.is_empty());
    parts.map(|part| words.iter().find(|word| **word == part).copied()).collect()
}

/// Writes the fields of a character that were changed.
pub(super) fn describe(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let id = CharacterId(asked.number(0));
    let collection = &desk.history.now;
    if !collection.characters.contains_key(&id) {
        return Err(gone(t));
    }
    let mut edits = Vec::new();
    for (field, mark, ..) in FIELDS {
        let input = table::input(field);
        let Some(base) = given(asked, &format!("o-{mark}")) else { continue };
        let typed = typed(asked, mark, input);
        let now = collection.character_field(id, field);
        if same(&typed, base, input) || same(&typed, now, input) {
            continue;
        }
        if !same(base, now, input) {
            return Err(Refused {
                sentence: t.with("table-field-clash", &[("theirs", &now), ("mine", &typed)]),
                remedy: t.say("table-field-clash-remedy"),
            });
        }
        if field == Field::Name {
            let name = new_name(t, collection, Some(id), &typed)?;
            edits.extend(named_elsewhere(collection, id, &name));
            edits.push(Edit::Character(id, CharacterEdit::Describe(field, name)));
            continue;
        }
        if typed.chars().count() > LONGEST_TEXT {
            return Err(Refused {
                sentence: t.count("table-too-long", LONGEST_TEXT),
                remedy: t.say("table-too-long-remedy"),
            });
        }
        edits.push(Edit::Character(id, CharacterEdit::Describe(field, typed)));
    }
    edits.extend(reworded::follow(collection, &edits));
    Ok(Deed::edits(edits, asked.back(&format!("/table/{}", id.0))))
}

pub(super) fn gone(t: Tongue) -> Refused {
    Refused { sentence: t.say("table-gone"), remedy: t.say("table-gone-remedy") }
}

fn given<'r>(asked: &Asked<'r>, name: &str) -> Option<&'r str> {
    let mut fields = asked.request.form.iter();
    fields.find(|(field, _)| field == name).map(|(_, text)| text.as_str())
}

fn typed(asked: &Asked<'_>, mark: &str, input: Input) -> String {
    let name = format!("f-{mark}");
    let texts = asked.request.fields(&name).map(one_line).filter(|text| !text.is_empty());
    match input {
        Input::SomeOf(_) => texts.collect::<Vec<_>>().join(", "),
        Input::Line | Input::OneOf(_) => texts.last().unwrap_or_default(),
    }
}

/// Whether two texts of a field mean the same to the form.
fn same(one: &str, other: &str, input: Input) -> bool {
    match input {
        Input::SomeOf(words) => {
            let (first, second) = (named(one, words), named(other, words));
            if first.is_some() { first == second } else { one.trim() == other.trim() }
        }
        Input::Line | Input::OneOf(_) => one_line(one) == one_line(other),
    }
}

/// What was typed, on one line.
pub(super) fn one_line(text: &str) -> String {
    let plain = text.chars().map(|sign| if sign.is_control() { ' ' } else { sign });
    plain.collect::<String>().trim().to_owned()
}

/// A name for a character: not empty, not too long, nobody else's.
pub(super) fn new_name(
    t: Tongue,
    collection: &Collection,
    of: Option<CharacterId>,
    typed: &str,
) -> Result<String, Refused> {
    let name = one_line(typed);
    let taken = |id: &&CharacterId| {
        Some(**id) != of && folded(collection.character_name(**id)) == folded(&name)
    };
    if name.is_empty() {
        return Err(Refused {
            sentence: t.say("table-no-name"),
            remedy: t.say("table-no-name-remedy"),
        });
    }
    if name.chars().count() > LONGEST_NAME {
        return Err(Refused {
            sentence: t.count("table-too-long", LONGEST_NAME),
            remedy: t.say("table-too-long-remedy"),
        });
    }
    if collection.characters.keys().find(taken).is_some() {
        return Err(Refused {
            sentence: t.with("table-name-taken", &[("name", &name)]),
            remedy: t.say("table-name-taken-remedy"),
        });
    }
    Ok(name)
}

/// Where other characters name this one, they name it anew.
fn named_elsewhere(collection: &Collection, id: CharacterId, name: &str) -> Vec<Edit> {
    let old = collection.character_name(id);
    let mut edits = Vec::new();
    for &other in collection.characters.keys().filter(|other| **other != id) {
        let when = collection.character_field(other, Field::AppliesWhen);
        if let Some(rest) = condition(when, old) {
            let text = format!("{name} {rest}");
            edits.push(Edit::Character(
                other,
                CharacterEdit::Describe(Field::AppliesWhen, text),
            ));
        }
        let ratio = collection.character_field(other, Field::RatioOf);
        let parts = ratio.split('/').map(str::trim);
        let parts = parts.map(|part| if folded(part) == folded(old) { name } else { part });
        let text = parts.collect::<Vec<_>>().join(" / ");
        if !ratio.is_empty()
            && folded(&text)
                != folded(&ratio.split('/').map(str::trim).collect::<Vec<_>>().join(" / "))
        {
            edits.push(Edit::Character(other, CharacterEdit::Describe(Field::RatioOf, text)));
        }
    }
    edits
}

/// What stands behind a character's name in a condition: `= feather or hand`.
pub(super) fn condition<'t>(text: &'t str, name: &str) -> Option<&'t str> {
    let (front, rest) = text.split_at_checked(name.len())?;
    let rest = rest.trim_start();
    let means = rest.starts_with(['=', ':']) || rest.starts_with("is ");
    (!name.is_empty() && means && folded(front) == folded(name)).then_some(rest)
}
