//! A column comes in under another unit than it has here: what becomes of its numbers.

use spinney_exchange::table::{self, TypedSheets, Units};
use spinney_model::{CharacterField, CharacterId};

use crate::Collection;
use crate::laid::folded;

/// A unit that says nothing of the column that is there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OddUnit {
    /// The column.
    pub name: String,
    /// The unit of the table that comes in.
    pub theirs: String,
    /// Empty: something stands in the column, and nobody has said in what it is measured.
    pub ours: String,
}

/// What becomes of the numbers.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Fitting {
    /// The column is measured in the same.
    AsTyped,
    /// Each gets its own unit behind it.
    Written(String),
    /// It is the column's unit from now on: nothing stands there that could mean another.
    First(String),
}

/// What the sheet `characters` says that a column is measured in, if it is a unit.
pub(super) fn described(sheets: &TypedSheets, name: &str) -> Option<String> {
    let mut rows = sheets.characters.iter();
    let (_, fields) = rows.find(|(other, _)| folded(other) == folded(name))?;
    let (_, unit) = fields.iter().find(|(field, _)| *field == CharacterField::Unit)?;
    (table::units(unit, unit) == Units::Same).then(|| unit.clone())
}

/// How numbers of a unit go into a column that is there.
pub(super) fn fitting(
    collection: &Collection,
    id: CharacterId,
    theirs: &str,
) -> Result<Fitting, OddUnit> {
    let ours = collection.character_field(id, CharacterField::Unit);
    let odd = || OddUnit {
        name: collection.character_name(id).to_owned(),
        theirs: theirs.to_owned(),
        ours: ours.to_owned(),
    };
    if ours.is_empty() {
        let texts = |kind| collection.cells.sources(kind, id);
        let mut cells = collection.kinds.keys().flat_map(|kind| texts(*kind));
        // Numbers of single leaves stand there as well.
        let mut leaves = collection.specimens.values().filter_map(|one| one.measured.get(&id));
        let fits = cells.all(|(_, text)| table::fits_any_unit(text))
            && leaves.all(|one| table::fits_any_unit(&one.text));
        return match fits {
            true => Ok(Fitting::First(theirs.to_owned())),
            false => Err(odd()),
        };
    }
    match table::units(ours, theirs) {
        Units::Same => Ok(Fitting::AsTyped),
        Units::Convert => Ok(Fitting::Written(theirs.to_owned())),
        Units::Differ => Err(odd()),
    }
}
