//! What is written has the documented shape, and the shape refuses what is not.

use serde_json::{Value, json};
use spinney_model::{
    Alike, CharacterIx, Fewest, Finding, Fragile, Hope, Look, OfTable, Place, TaxonIx, Weak,
};

use super::super::schema::disagrees;
use super::super::tests::as_text;
use super::weak;
use crate::link::hedge::table;

fn found() -> Weak {
    let set = |all: &[usize]| all.iter().copied().map(CharacterIx).collect();
    Weak {
        pairs: Some(66),
        distances: vec![1, 1, 64],
        alike: vec![Alike { taxa: [TaxonIx(0), TaxonIx(1)], hope: Hope::SeveralBlanks }],
        fragile: vec![Fragile { taxa: [TaxonIx(0), TaxonIx(2)], character: CharacterIx(1) }],
        once: Fewest {
            at_least: 2,
            best: 2,
            sets: vec![set(&[0, 1]), set(&[0, 2])],
            all: true,
            indispensable: set(&[0]),
        },
        twice: Fewest {
            at_least: 3,
            best: 4,
            sets: vec![set(&[0, 1, 2, 3])],
            all: false,
            indispensable: set(&[]),
        },
        next: vec![Look {
            taxon: TaxonIx(1),
            character: CharacterIx(2),
            parts: vec![],
            with_others: vec![TaxonIx(0)],
            secures: vec![TaxonIx(2), TaxonIx(3)],
        }],
        useful_blanks: 3,
    }
}

fn written(found: &Weak) -> Value {
    let fact = OfTable::Unknown { cells: 1, columns: Vec::new(), more_columns: 0 };
    let finding = Finding::of(Place::Table, fact);
    serde_json::from_str(&weak(&table(), found, &[finding], as_text)).expect("JSON")
}

#[test]
fn names_stand_where_places_of_the_table_stood() {
    let (matrix, value) = (table(), written(&found()));
    let name = |at: usize| matrix.taxa()[at].name.clone();
    let character = |at: usize| matrix.characters()[at].name.clone();
    assert_eq!(value["kinds"], json!(matrix.taxa().len()));
    assert_eq!(
        value["alike"],
        json!([{ "taxa": [name(0), name(1)], "hope": "several blanks" }])
    );
    assert_eq!(value["fragile"][0]["character"], json!(character(1)));
    assert_eq!(value["once"]["sets"][1], json!([character(0), character(2)]));
    assert_eq!(
        (&value["once"]["proved"], &value["twice"]["proved"]),
        (&json!(true), &json!(false))
    );
    assert_eq!(
        value["next"][0],
        json!({
            "taxon": name(1),
            "character": character(2),
            "parts": [],
            "with_others": [name(0)],
            "secures": [name(2), name(3)],
        })
    );
    assert_eq!(value["findings"][0]["code"], json!("unknown"));
}

#[test]
fn it_has_the_shape_of_the_schema_and_the_schema_refuses_others() {
    let schema = include_str!("../../../../../docs/weak.schema.json");
    let schema: Value = serde_json::from_str(schema).expect("the schema is JSON");
    let full = written(&found());
    let nothing = written(&Weak { pairs: None, distances: vec![], next: vec![], ..found() });
    assert!(nothing["once"].is_null());
    for good in [&full, &nothing] {
        assert_eq!(disagrees(good, &schema, &schema), None);
    }
    for (place, bad) in [
        ("/pairs", json!("66")),
        ("/distances/0", json!(-1)),
        ("/alike/0/taxa", json!(["one"])),
        ("/alike/0/hope", json!("none")),
        ("/fragile/0", json!({"taxa": ["a", "b"]})),
        ("/once/sets", json!([])),
        ("/once/sets/0", json!("edge")),
        ("/twice/proved", json!("no")),
        ("/next/0/parts", json!(2)),
        ("/findings/0", json!({"code": "loop"})),
    ] {
        let mut changed = full.clone();
        *changed.pointer_mut(place).expect("a place of the report") = bad;
        assert!(disagrees(&changed, &schema, &schema).is_some(), "{place}");
    }
}
