//! The screen's table is the spreadsheet's table.

use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterId, Edit, KindEdit, KindId, Value,
};

use std::collections::BTreeMap;

use spinney_exchange::table::{self, Row, Settings, Sources};
use spinney_model::{AboutField, CharacterField, KindField};

use super::{Laid, sheets};
use crate::history::tests::Dice;
use crate::{Collection, Sayings, Sorted};

fn collection() -> Collection {
    let mut collection = Collection::default();
    let set = |kind, character, source: &str, text: &str| Edit::Cell {
        kind: KindId(kind),
        character: CharacterId(character),
        source: source.to_owned(),
        text: text.to_owned(),
    };
    for edit in [
        Edit::Kind(KindId(1), KindEdit::Add("hazel".to_owned())),
        Edit::Kind(KindId(2), KindEdit::Add(String::new())),
        Edit::Character(CharacterId(1), CharacterEdit::Add("edge".to_owned())),
        Edit::Character(CharacterId(2), CharacterEdit::Add("blade length".to_owned())),
        set(1, 1, "", "toothed"),
        set(2, 1, "group Blue", "smooth"),
        set(2, 1, "group Red", "toothed"),
        set(1, 2, "", "6-11 cm"),
        set(2, 2, "group Red", "20-30 mm"),
    ] {
        collection.apply(&edit);
    }
    collection
}

#[test]
fn contradicted_cells_are_unknown_until_somebody_decides() {
    let mut collection = collection();
    let laid = Laid::of(&collection).expect("there are kinds");
    let edge = laid.character(CharacterId(1)).expect("a column");
    let second = laid.taxon(KindId(2)).expect("a row");
    assert_eq!(laid.matrix.taxon(second).name, "find B");
    assert_eq!(laid.matrix.cell(second, edge).value, Value::Unknown);
    collection.apply(&Edit::Cell {
        kind: KindId(2),
        character: CharacterId(1),
        source: String::new(),
        text: "smooth".to_owned(),
    });
    let laid = Laid::of(&collection).expect("there are kinds");
    assert!(matches!(laid.matrix.cell(second, edge).value, Value::States(_)));
}

#[test]
fn a_question_outlasts_a_change_of_the_table() {
    let mut collection = collection();
    let laid = Laid::of(&collection).expect("there are kinds");
    let of =
        AskOf { character: CharacterId(1), yes: AskedOf::States(vec!["toothed".to_owned()]) };
    let ask = laid.ask(&of).expect("the table has it");
    assert_eq!(laid.ask_of(&ask), Some(of.clone()));
    collection.apply(&Edit::Character(CharacterId(2), CharacterEdit::Remove));
    let laid = Laid::of(&collection).expect("there are kinds");
    assert_eq!(laid.ask(&of).map(|ask| ask.yes), Some(ask.yes));
}

/// What people type, and what could be taken for something else on the way through a file.
const TYPED: [&str; 34] = [
    "lobed",
    "entire",
    "lobed or entire",
    "toothed; lobed",
    "lobed 8; entire 2",
    "?",
    "n/a",
    "-",
    "30-60",
    "3-7 cm",
    "20 mm",
    "3,5",
    "a lot",
    "5",
    "3-5",
    "=1+1",
    "'=1+1",
    "'lobed",
    "@home",
    "a\tb",
    "two\nlines",
    "say \"lobed\"",
    "\"oval or so\"",
    "lobed, toothed",
    "kind",
    "sep=;",
    "edge",
    "  lobed  ",
    "yes",
    "no",
    "✓",
    "100 %",
    "Is it lobed?",
    "Blätter; Äste",
];

fn any_collection(dice: &mut Dice) -> Collection {
    let mut collection = Collection::default();
    let mut text = || dice.of(&TYPED).to_owned();
    let mut edits = Vec::new();
    for kind in (1..=5).map(KindId) {
        edits.push(Edit::Kind(kind, KindEdit::Add(text())));
        for field in [KindField::OtherNames, KindField::HowOften, KindField::Caution] {
            edits.push(Edit::Kind(kind, KindEdit::Describe(field, text())));
        }
    }
    for character in (1..=4).map(CharacterId) {
        edits.push(Edit::Character(character, CharacterEdit::Add(text())));
        for field in [
            CharacterField::Question,
            CharacterField::Values,
            CharacterField::States,
            CharacterField::Unit,
            CharacterField::AppliesWhen,
            CharacterField::InOrder,
        ] {
            edits.push(Edit::Character(character, CharacterEdit::Describe(field, text())));
        }
        for kind in (1..=5).map(KindId) {
            for source in ["", "group Blue", "group Red"] {
                let source = source.to_owned();
                edits.push(Edit::Cell { kind, character, source, text: text() });
            }
        }
    }
    edits.push(Edit::Scene(AboutField::Title, text()));
    edits.push(Edit::Scene(AboutField::Caution, text()));
    // Some of it only, so that there are blanks, and columns that nothing is said of.
    for edit in edits {
        if dice.below(3) > 0 {
            collection.apply(&edit);
        }
    }
    collection
}

/// The other road: the same cells as files of separated values.
fn through_files(rows: &table::TypedTable<'_>) -> Option<table::TableRead> {
    let file = |name: &str, rows: &[Row<'_>]| {
        let texts = rows.iter().map(|row| row.iter().map(|cell| cell.to_string()).collect());
        table::typed(name, texts.collect())
    };
    let sources = Sources {
        table: file("table", &rows.table),
        characters: Some(file("characters", &rows.characters)),
        kinds: Some(file("kinds", &rows.kinds)),
        about: Some(file("about", &rows.about)),
    };
    table::read(&sources, &Settings::default()).ok()
}

#[test]
fn a_collection_reads_as_its_files_would() {
    let (mut read, mut told) = (0, 0);
    for seed in 0..600 {
        let mut dice = Dice::new(seed);
        let collection = any_collection(&mut dice);
        let states = BTreeMap::from([(CharacterId(1), "lobed; \"oval or so\"".to_owned())]);
        let said = Sayings::of(&collection, &Sorted::default(), &states);
        let rows = sheets(&collection, &said, &states);
        let typed = table::read_typed(&rows, &Settings::default()).ok();
        assert_eq!(typed, through_files(&rows), "seed {seed}: {rows:?}");
        read += usize::from(typed.is_some());
        told += typed.map_or(0, |typed| typed.findings.len());
    }
    assert!(read > 400 && told > 2000, "{read} tables with {told} findings: too dull");
}
