//! What is written has the documented shape, and the shape refuses what is not.

use std::collections::BTreeSet;

use serde_json::{Value, json};
use spinney_model::{Key, ManyWays, Share, Stopped};

use super::super::schema::disagrees;
use super::many_ways;
use crate::link::hedge::table;

fn written() -> Value {
    let found = ManyWays {
        key: Key::default(),
        same_look: BTreeSet::from([2, 3]),
        total: Share::new(7, 2),
        lower_bound: Share::from_integer(3),
        mean_questions: Share::new(7, 4),
        longest: 2,
        stopped: Some(Stopped::Budget),
        heaps: 5,
    };
    serde_json::from_str(&many_ways(&table(), &found, &[])).expect("JSON")
}

#[test]
fn exact_numbers_and_looks_are_written() {
    let value = written();
    assert_eq!(value["effort_total_exact"], json!("7/2"));
    assert_eq!(value["same_look"], json!([2, 3]));
    assert_eq!((&value["proved"], &value["stopped"]), (&json!(false), &json!("budget")));
}

#[test]
fn what_is_written_has_the_shape_of_the_schema() {
    let schema: Value =
        serde_json::from_str(include_str!("../../../../../docs/ways.schema.json"))
            .expect("JSON");
    let value = written();
    assert_eq!(disagrees(&value, &schema, &schema), None);
    for (field, wrong) in
        [("effort_total", json!(-1)), ("same_look", json!(["a"])), ("stopped", json!("tired"))]
    {
        let mut broken = value.clone();
        broken[field] = wrong;
        assert!(disagrees(&broken, &schema, &schema).is_some(), "{field}");
    }
}
