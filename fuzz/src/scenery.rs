//! What the readers find around them: a table, and a collection that has been opened.

#[cfg(feature = "screens")]
use spinney_desk::Desk;
use spinney_exchange::table::{self, Settings, Source, Sources};
use spinney_model::Matrix;

const TABLE: &[u8] = include_bytes!("../../crates/spinney/scenarios/hedge_walk/table.csv");
const CHARACTERS: &[u8] =
    include_bytes!("../../crates/spinney/scenarios/hedge_walk/characters.csv");
const KINDS: &[u8] = include_bytes!("../../crates/spinney/scenarios/hedge_walk/kinds.csv");

fn source(name: &str, bytes: &[u8]) -> Source {
    Source { name: name.to_owned(), bytes: bytes.to_vec() }
}

/// The table of the hedge walk.
pub fn matrix() -> Matrix {
    let sources = Sources {
        table: source("table.csv", TABLE),
        characters: Some(source("characters.csv", CHARACTERS)),
        kinds: Some(source("kinds.csv", KINDS)),
        about: None,
    };
    table::read(&sources, &Settings::default()).expect("the demo's table is read").matrix
}

#[cfg(feature = "screens")]
/// The lines of a collection with the hedge walk in it.
pub fn lines() -> Vec<Vec<u8>> {
    let sheets = [
        source("table.csv", TABLE),
        source("characters.csv", CHARACTERS),
        source("kinds.csv", KINDS),
    ];
    Desk::lines_of_table(&sheets, 1).expect("the demo's table is taken in")
}

#[cfg(feature = "screens")]
/// A desk with these lines.
pub fn desk(lines: &[Vec<u8>]) -> Desk {
    Desk::open(lines.iter().map(Vec::as_slice)).expect("lines that a desk gave are read again")
}
