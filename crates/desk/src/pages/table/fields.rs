//! The fields of a character's sheet: how each is asked for, and the edits of those that were
//! changed.
//!
//! What is typed is kept as typed and read as the sheet `characters` of a spreadsheet is, so a
//! list of boxes writes the words that stand there.

use std::collections::BTreeSet;

use spinney_collection::laid::folded;
use spinney_collection::{Collection, renamed, reworded};
use spinney_exchange::table::{self, Input};
use spinney_model::{CharacterEdit, CharacterField as Field, CharacterId, Edit};
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed};
use crate::forms::{At, Fact, Form};
use crate::reply::Refused;

/// Every field of the sheet: its mark in forms, its label, its help (empty: none). How it is
/// filled in, the table of columns says.
pub(super) const FIELDS: [(Field, &str, &str, &str); 18] = [
    (Field::Name, "name", "table-field-name", ""),
    (Field::Question, "question", "table-field-question", "table-help-question"),
    (
        Field::SecondQuestion,
        "second-question",
        "table-field-second-question",
        "table-help-second-question",
    ),
    (Field::States, "states", "table-field-states", "table-help-states"),
    (
        Field::SecondStates,
        "second-states",
        "table-field-second-states",
        "table-help-second-states",
    ),
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

/// Whether a field is asked for: those of a second language only where there is one.
pub(super) fn wanted(collection: &Collection, id: CharacterId, field: Field) -> bool {
    !matches!(field, Field::SecondQuestion | Field::SecondStates)
        || collection.second_language().is_some()
        || !collection.character_field(id, field).is_empty()
}

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

/// Something about a character is written down, or much.
pub(super) static DESCRIBE: Form<Described> = Form {
    path: "/do/character/{id}",
    read: |at| {
        let id = character(at)?;
        let boxes = |mark: &str| at.asked.request.fields("boxes").any(|known| known == mark);
        // A list of boxes without one that is ticked sends nothing of itself.
        let sent = |mark: &str| at.asked.sent(&format!("f-{mark}")) || boxes(mark);
        let fields = FIELDS.into_iter().filter(|(_, mark, ..)| sent(mark));
        let texts = fields.map(|(field, mark, ..)| {
            let input = table::input(field);
            (field, input, typed(at.asked, mark, input))
        });
        Ok(Described { id, texts: texts.collect() })
    },
    rests_on: |of| of.texts.iter().map(|text| of.text(text)).collect(),
    act: |of, at| {
        let (t, id, collection) = (at.asked.tongue, of.id, at.collection());
        let mut edits = Vec::new();
        for typed in of.texts.iter().filter(|typed| at.changes(&of.text(typed))) {
            let (field, text) = (typed.0, typed.2.clone());
            if field == Field::Name {
                let name = new_name(t, collection, Some(id), &text)?;
                edits.extend(renamed::named_elsewhere(collection, id, &name));
                edits.push(Edit::Character(id, CharacterEdit::Describe(field, name)));
            } else if text.chars().count() > LONGEST_TEXT {
                return Err(Refused::count(t, "table-too-long", LONGEST_TEXT));
            } else {
                edits.push(Edit::Character(id, CharacterEdit::Describe(field, text)));
            }
        }
        edits.extend(reworded::follow(collection, &edits));
        Ok(Deed::edits(edits, at.asked.back(&format!("/table/{}", id.0))))
    },
};

/// What is written down about a character.
pub(super) struct Described {
    id: CharacterId,
    /// Each text as the form means it, and how the field was asked for.
    texts: Vec<(Field, Input, String)>,
}

impl Described {
    fn text(&self, (field, input, text): &(Field, Input, String)) -> Fact<'_> {
        let (id, field, input) = (self.id, *field, *input);
        let shown = move |of: &Collection| meant(of.character_field(id, field), input);
        Fact::typed(shown, &meant(text, input))
    }
}

/// The character of a form's path.
pub(super) fn character(at: &At<'_>) -> Result<CharacterId, Refused> {
    let id = CharacterId(at.asked.number(0));
    let known = at.collection().characters.contains_key(&id);
    known.then_some(id).ok_or_else(|| at.asked.refused("table-gone"))
}

/// What a character is called.
pub(super) fn name_of(id: CharacterId) -> Fact<'static> {
    Fact::name(move |of: &Collection| of.character_name(id).to_owned())
}

fn typed(asked: &Asked<'_>, mark: &str, input: Input) -> String {
    let name = format!("f-{mark}");
    let texts = asked.request.fields(&name).map(one_line).filter(|text| !text.is_empty());
    match input {
        Input::SomeOf(_) => texts.collect::<Vec<_>>().join(", "),
        Input::Line | Input::OneOf(_) => texts.last().unwrap_or_default(),
    }
}

/// What a text of a field means to the form: in which order boxes are ticked is no difference.
fn meant(text: &str, input: Input) -> String {
    let words = match input {
        Input::SomeOf(words) => named(text, words),
        Input::Line | Input::OneOf(_) => None,
    };
    words.map_or_else(
        || one_line(text),
        |words| words.into_iter().collect::<Vec<_>>().join(", "),
    )
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
        return Err(Refused::say(t, "table-no-name"));
    }
    if name.chars().count() > LONGEST_NAME {
        return Err(Refused::count(t, "table-too-long", LONGEST_NAME));
    }
    if collection.characters.keys().find(taken).is_some() {
        return Err(Refused::with(t, "table-name-taken", &[("name", &name)]));
    }
    Ok(name)
}

/// The longest text of a cell or a field, in letters.
pub(crate) const LONGEST_TEXT: usize = 400;
/// The longest name of a character, in letters.
pub(crate) const LONGEST_NAME: usize = 120;
