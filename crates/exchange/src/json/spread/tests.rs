//! What is written has the documented shape, and the shape refuses what is not.

use serde_json::{Value, json};
use spinney_model::{CharacterIx, Cut, Outlier, Quantity, Spread, SpreadOf, TaxonIx, Trust};

use super::super::schema::disagrees;
use super::super::tests::as_text;
use super::spread;
use crate::table::{RowsAre, Settings, Source, Sources, read};

fn written(cuts: bool) -> Value {
    let text = "kind,leaf,blade length (cm)\nhazel,a,8\nhazel,b,30\nash,c,25\n";
    let table = Source { name: "hedge.csv".to_owned(), bytes: text.into() };
    let settings = Settings { rows: RowsAre::Finds, ..Settings::default() };
    let read = read(&Sources { table, ..Sources::default() }, &settings).expect("a table");
    let mm = |number: i64| Quantity::from_thousandths(number * 1000);
    let hazel = SpreadOf {
        taxon: TaxonIx(0),
        character: CharacterIx(0),
        part: Some("sun".to_owned()),
        finds: 2,
        plants: None,
        least: mm(80),
        most: mm(300),
        mean: 190.0,
        deviation: Some(155.5),
        outliers: vec![Outlier { find: 1, value: mm(300), far: true }],
    };
    let cut = Cut {
        character: CharacterIx(0),
        taxa: [TaxonIx(0), TaxonIx(1)],
        at: Quantity::from_thousandths(165_500),
        finds: [2, 1],
        wrong: [1, 0],
        left_out: Some([1, 1]),
        normal: [Some(0.5), None],
        margin: None,
        trust: [Trust::Never, Trust::More(4)],
    };
    let found = Spread { of_kinds: vec![hazel], cuts: cuts.then(|| vec![cut]) };
    let specimens = read.specimens.expect("a row a leaf");
    let text = spread(&read.matrix, &specimens, &found, &read.findings, as_text);
    serde_json::from_str(&text).expect("JSON")
}

#[test]
fn numbers_stand_with_the_names_of_the_table() {
    let value = written(true);
    assert_eq!((&value["finds"], &value["kinds"]), (&json!(3), &json!(2)));
    let outlier = json!({ "value": 300, "row": 3, "find": "b", "picture": "", "far": true });
    assert_eq!(value["spread"][0]["outliers"], json!([outlier]));
    assert_eq!(value["spread"][0]["unit"], json!("mm"));
    let cut = &value["cuts"][0];
    assert_eq!(cut["at"], json!(165.5));
    assert_eq!(cut["share_left_out"], json!(0.75));
    assert_eq!(cut["share_normal"], Value::Null);
    let trust = json!([{ "says": "never", "more": null }, { "says": "more", "more": 4 }]);
    assert_eq!(cut["trust"], trust);
}

#[test]
fn it_has_the_shape_of_the_schema_and_the_schema_refuses_others() {
    let schema = include_str!("../../../../../docs/spread.schema.json");
    let schema: Value = serde_json::from_str(schema).expect("the schema is JSON");
    let full = written(true);
    for good in [&full, &written(false)] {
        assert_eq!(disagrees(good, &schema, &schema), None);
    }
    for (place, bad) in [
        ("/finds", json!("3")),
        ("/spread/0/least", json!("80")),
        ("/spread/0/outliers/0", json!({ "value": 3 })),
        ("/cuts/0/taxa", json!(["hazel"])),
        ("/cuts/0/trust/0/says", json!("perhaps")),
        ("/findings/0", json!({ "code": "loop" })),
    ] {
        let mut changed = full.clone();
        *changed.pointer_mut(place).expect("a place of the report") = bad;
        assert!(disagrees(&changed, &schema, &schema).is_some(), "{place}");
    }
}
