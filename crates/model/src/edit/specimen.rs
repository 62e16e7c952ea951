//! What becomes of a single specimen: one leaf of a kind, with what was measured on it.
//!
//! What its kind comes to follows from all of its specimens; nothing of that is written here.

use super::{CharacterId, KindId, SpecimenField};

/// A change to a specimen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SpecimenEdit {
    /// It joins the collection, and is of this kind.
    Add(KindId),
    /// It is of another kind.
    OfKind(KindId),
    /// Something about it is written down.
    Describe(SpecimenField, String),
    /// Its picture, by the SHA-256 of its bytes in hexadecimal digits; empty: it has none.
    Picture(String),
    /// What was measured, counted or seen on it.
    Measure {
        /// The character.
        character: CharacterId,
        /// As a cell is typed, with its unit: `52.3 mm`, `7`, `toothed`; empty: nothing.
        text: String,
        /// How far it may be off, in the unit of the text; empty: nobody said.
        plus_minus: String,
    },
    /// What somebody says who looked at a measurement that is far from the others; None: nobody
    /// has looked.
    Judge {
        /// The character.
        character: CharacterId,
        /// What they say.
        judged: Option<Judged>,
    },
    /// It leaves the collection.
    Remove,
}

/// What somebody says of a measurement.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Judged {
    /// It is right, however far it is from the others.
    Right,
    /// It was measured wrongly: it is kept, and does not count.
    Wrong,
}
