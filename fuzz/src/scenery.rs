//! What the readers find around them: the table of the hedge walk.

use spinney_exchange::table::{self, Settings, Source, Sources};
use spinney_model::Matrix;

const TABLE: &[u8] = include_bytes!("../../crates/spinney/scenarios/hedge_walk/table.csv");
const CHARACTERS: &[u8] =
    include_bytes!("../../crates/spinney/scenarios/hedge_walk/characters.csv");
const KINDS: &[u8] = include_bytes!("../../crates/spinney/scenarios/hedge_walk/kinds.csv");

/// Its three sheets.
pub(crate) fn sheets() -> [Source; 3] {
    [("table.csv", TABLE), ("characters.csv", CHARACTERS), ("kinds.csv", KINDS)]
        .map(|(name, bytes)| Source { name: name.to_owned(), bytes: bytes.to_vec() })
}

/// The same, read.
pub(crate) fn matrix() -> Matrix {
    let [table, characters, kinds] = sheets();
    let sources =
        Sources { table, characters: Some(characters), kinds: Some(kinds), about: None };
    table::read(&sources, &Settings::default()).expect("the demo's table is read").matrix
}
