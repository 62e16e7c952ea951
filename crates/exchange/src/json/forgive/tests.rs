//! What is written has the documented shape, and the shape refuses what is not.

use serde_json::{Value, json};
use spinney_model::{
    Answer, BothWays, Finding, Forgiving, ForgivingKeys, Key, OfTable, Place, Share, Stopped,
    TaxonIx,
};

use super::super::schema::disagrees;
use super::super::tests::as_text;
use super::forgiving;
use crate::link::hedge::table;

fn written() -> Value {
    let place =
        BothWays { couplet: 2, taxon: TaxonIx(1), after: Answer::No, saves: Share::new(1, 50) };
    let plain = Forgiving {
        budget: 0,
        key: Key::default(),
        both_ways: vec![],
        right: Share::new(2, 3),
        at_most: Share::new(2, 3),
        stopped: None,
    };
    let other = Forgiving {
        budget: 1,
        both_ways: vec![place],
        at_most: Share::from_integer(1),
        stopped: Some(Stopped::Budget),
        ..plain.clone()
    };
    let keys = ForgivingKeys { keys: vec![plain, other], heaps: 7 };
    let finding = Finding::of(Place::Table, OfTable::TooManyKinds);
    serde_json::from_str(&forgiving(&table(), &keys, &[finding], as_text)).expect("JSON")
}

fn schema() -> Value {
    serde_json::from_str(include_str!("../../../../../docs/forgive.schema.json")).expect("JSON")
}

#[test]
fn names_and_exact_shares_are_written() {
    let value = written();
    let places = &value["keys"][1]["both_ways"];
    let name = table().taxa()[1].name.clone();
    assert_eq!(
        *places,
        json!([{ "couplet": 2, "taxon": name, "after": "no", "saves": 0.02, "saves_exact": "1/50" }])
    );
    assert_eq!(value["keys"][0]["right_exact"], json!("2/3"));
    assert_eq!(value["keys"][1]["stopped"], json!("budget"));
}

#[test]
fn what_is_written_has_the_shape_of_the_schema() {
    let (value, schema) = (written(), schema());
    assert_eq!(disagrees(&value, &schema, &schema), None);
    for (field, wrong) in
        [("right", json!(1.5)), ("second_places", json!(-1)), ("both_ways", json!("lime"))]
    {
        let mut broken = value.clone();
        broken["keys"][1][field] = wrong;
        assert!(disagrees(&broken, &schema, &schema).is_some(), "{field}");
    }
}
