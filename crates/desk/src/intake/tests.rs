//! A spreadsheet comes in, and reading the collection gives the spreadsheet's own matrix.

use spinney_exchange::table::{self, Settings, Source, Sources};

use super::edits;
use crate::collection::Collection;
use crate::laid::Laid;

/// The invented hedge walk, as its files stand with the demo.
fn source(name: &str) -> Source {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../spinney/scenarios/hedge_walk/");
    let bytes = std::fs::read(format!("{folder}{name}.csv")).expect("the demo has it");
    Source { name: name.to_owned(), bytes }
}

#[test]
fn what_comes_in_means_what_it_means_as_a_file() {
    let names = ["table", "characters", "kinds", "about"];
    let sheets: Vec<_> = names
        .iter()
        .flat_map(|name| table::cells(&source(name)).expect("it can be read"))
        .collect();
    let mut collection = Collection::default();
    for edit in edits(&collection.clone(), &sheets, "") {
        collection.apply(&edit);
    }
    let laid = Laid::of(&collection).expect("there are kinds");
    let sources = Sources {
        table: source("table"),
        characters: Some(source("characters")),
        kinds: Some(source("kinds")),
        about: Some(source("about")),
    };
    let read = table::read(&sources, &Settings::default()).expect("it can be read");
    let without_version = spinney_model::Scene { version: None, ..read.matrix.scene().clone() };
    assert_eq!(laid.matrix, read.matrix.with_scene(without_version));
    assert!(edits(&collection, &sheets, "").iter().all(|edit| {
        let mut again = collection.clone();
        again.apply(edit);
        again == collection
    }));
}
