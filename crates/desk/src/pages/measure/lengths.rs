//! What the lengths of a leaf are called: on its card, as a column of the table, as a source.
//!
//! From a language to names. A column is found by its name in any language that the screens
//! speak, since a collection goes from one to another.

use spinney_collection::measured::{LENGTHS, Words};
use spinney_model::CharacterField;
use spinney_voice::starters::Starter;
use spinney_voice::{Tongue, measured as say};

use crate::pages::cell::measured_sources;

/// The good questions to begin with that ask for the lengths; nobody asks for the width of a
/// blade.
const ASKED_BY: [Option<&str>; LENGTHS.len()] =
    [Some("blade-length"), None, Some("stalk-length")];

/// What a length is called, as the column of the table is.
pub(super) fn name_of(t: Tongue, length: usize) -> String {
    let starter = ASKED_BY[length].and_then(Starter::named);
    starter.map_or_else(|| t.say("scan-column-width"), |one| one.name(t))
}

/// What columns and sources are called in a language; those that exist may be called so in
/// another.
pub(super) fn words(t: Tongue) -> Words {
    let all = || std::iter::once(t).chain(Tongue::all());
    let columns = std::array::from_fn(|at| {
        let names = all().flat_map(|t| [name_of(t, at), say::measurand(t, LENGTHS[at])]);
        names.collect::<Vec<_>>()
    });
    let fields = ASKED_BY.map(|id| {
        let starter = id.and_then(Starter::named);
        let fields = starter.map(|one| one.fields(t, false)).unwrap_or_default();
        let own = |(field, _): &(CharacterField, String)| {
            !matches!(field, CharacterField::Unit | CharacterField::Values)
        };
        fields.into_iter().filter(own).collect()
    });
    let sources = measured_sources(t);
    Words { columns, fields, tongue: t, sources }
}
