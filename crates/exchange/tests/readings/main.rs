//! What is read of sentences, keys and tables, whole: each reading is a line of an approved file.
//!
//! Whoever changes a rule of reading sees here what it changes elsewhere:
//! `WRITE_APPROVED=1 cargo test --workspace --test readings`, then `git diff`.

mod asked;
mod cells;
mod keys;
mod said;
mod sentences;
mod tables;

use spinney_exchange::table::{Settings, Source, Sources, TableRead, read};
use spinney_model::Matrix;

/// Holds lines against an approved file.
fn approved(name: &str, lines: &[String]) {
    spinney_fixtures::approved::holds(env!("CARGO_MANIFEST_DIR"), name, lines);
}

fn source(name: &str, text: &str) -> Source {
    Source { name: name.to_owned(), bytes: text.as_bytes().to_vec() }
}

/// A table, and the sheet on its characters.
fn table(text: &str, characters: Option<&str>) -> TableRead {
    let sources = Sources {
        table: source("leaves.tsv", text),
        characters: characters.map(|text| source("characters.tsv", text)),
        ..Sources::default()
    };
    read(&sources, &Settings::default()).expect("it is a table")
}

/// The invented table of twelve leaves.
fn leaves() -> Matrix {
    let described = include_str!("../sentences/characters.tsv");
    table(include_str!("../sentences/table.tsv"), Some(described)).matrix
}

macro_rules! shipped {
    ($folder:literal, $name:literal) => {
        include_str!(concat!("../../../spinney/scenarios/", $folder, "/", $name))
    };
}

/// What lives in a pond.
fn pond() -> Matrix {
    let sources = Sources {
        table: source("table.csv", shipped!("pond_tray", "table.csv")),
        characters: Some(source("characters.csv", shipped!("pond_tray", "characters.csv"))),
        ..Sources::default()
    };
    read(&sources, &Settings::default()).expect("it is a table").matrix
}

/// An invented hedge in German.
fn hedge() -> Matrix {
    let text = "\
Art\tBlattrand\tBlattform\tBlätter\tStiellänge (mm)\tBreite der Spreite (cm)\tNebenblatt\tbehaart\tAnzahl Blättchen\tFrucht\tFundort\tSpreitenlänge (mm)\tDornen am Zweig
Hasel\tdoppelt gesägt\trund\twechselständig\t8-15\t6-9\tja\tja\t1\tNuss\tHecke\t60-90\tnein
Rotbuche\tgewellt\toval\twechselständig\t5-10\t4-6\tnein\tnein\t1\tNuss\tWald\t50-80\tnein
Esche\tgesägt\toval\tgegenständig\t40-70\t3-4\tnein\tnein\t9-13\tFlügelnuss\tam Bach\t70-100\tnein
Weißdorn\tgelappt\trautenförmig\twechselständig\t12-20\t2-3\tja\tnein\t1\tBeere\tHecke\t20-40\tja
Holunder\tgesägt\toval\tgegenständig\t30-45\t3-5\tnein\tnein\t5-7\tBeere\tHecke\t60-100\tnein
Hartriegel\tganzrandig\teiförmig\tgegenständig\t8-12\t4-6\tnein\tja\t1\tBeere\tWald\t50-80\tnein";
    let characters = "character\tratio of
Stiel gegen Spreite\tStiellänge / Spreitenlänge
Spreite lang gegen breit\tSpreitenlänge / Breite der Spreite";
    table(text, Some(characters)).matrix
}
