//! The screen's table is the spreadsheet's table.

use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterId, Edit, KindEdit, KindId, Value,
};

use super::Laid;
use crate::Collection;

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
