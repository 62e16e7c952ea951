//! What is written has the documented shape, its key is read back, and steps are those of a find.

use serde_json::{Value, json};
use spinney_model::{
    Finding, Key, Matrix, OfLink, OfTable, Parts, Place, Revision, Share, Stopped, TaxonIx,
    Tradeoff,
};

use super::super::read_key;
use super::super::schema::disagrees;
use super::super::tests::as_text;
use super::{Revised, revised};
use crate::key_text;
use crate::link::hedge::table;
use crate::link::{self, Links};

const KEY: &str = "1. Is the leaf lobed? Yes -> ivy, No -> 2\n2. Is the edge toothed? \
                   Yes -> hazel, No -> dogwood\n";

fn linked(matrix: &Matrix) -> Key {
    let mut read = key_text::read(KEY, matrix, &Links::default());
    link::link(&mut read.key, matrix, &Links::default());
    read.key
}

fn found(matrix: &Matrix) -> Revision {
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let point = |changes, each, proved| Tradeoff { changes, effort: all * each, proved };
    Revision {
        key: linked(matrix),
        changes: 3,
        effort: all * Share::new(10, 3),
        mean_questions: Share::new(5, 2),
        longest: 4,
        best: all * 3,
        loss: Share::new(1, 2),
        curve: vec![point(3, Share::new(10, 3), true), point(7, Share::new(3, 1), false)],
        fewest: 2,
        parts: Parts {
            kept: vec![(1, 1), (3, 2)],
            rewritten: vec![(4, 3)],
            added: vec![4],
            struck: vec![2],
        },
        gone: vec!["elder".to_owned()],
        arrived: vec![TaxonIx(9)],
        stopped: Some(Stopped::Budget),
        heaps: 77,
    }
}

fn written(revision: &Revision) -> String {
    let matrix = table();
    let finding = Finding::of(Place::Table, OfTable::TooManyKinds);
    let old = Finding::of(Place::Couplet(2), OfLink::NoWords { question: 2 });
    revised(
        &Revised { matrix: &matrix, revision, findings: &[finding], old_findings: &[old] },
        as_text,
    )
}

#[test]
fn steps_are_those_of_one_find_and_names_stand_where_places_stood() {
    let matrix = table();
    let value: Value = serde_json::from_str(&written(&found(&matrix))).expect("JSON");
    assert_eq!(value["mean_steps_exact"], json!("10/3"));
    assert_eq!(value["best_mean_steps"], json!(3));
    assert_eq!(value["curve"][1]["proved"], json!(false));
    assert_eq!(value["kept"][1], json!({ "was": 3, "now": 2 }));
    assert_eq!(value["arrived"], json!([matrix.taxa()[9].name]));
    assert_eq!((&value["proved"], &value["stopped"]), (&json!(false), &json!("budget")));
    assert_eq!(value["old_findings"][0]["code"], json!("not-linked"));
}

#[test]
fn the_key_in_it_is_read_back() {
    let matrix = table();
    let (key, findings) = read_key(&written(&found(&matrix)), &matrix).expect("a key");
    assert_eq!(findings, []);
    let asks = |key: &Key| -> Vec<_> { key.couplets.iter().map(|c| c.ask.clone()).collect() };
    assert_eq!(asks(&key), asks(&linked(&matrix)));
}

#[test]
fn it_has_the_shape_of_the_schema_and_the_schema_refuses_others() {
    let schema = include_str!("../../../../../docs/revise.schema.json");
    let schema: Value = serde_json::from_str(schema).expect("the schema is JSON");
    let matrix = table();
    let sure = Revision { stopped: None, gone: Vec::new(), ..found(&matrix) };
    let full: Value = serde_json::from_str(&written(&found(&matrix))).expect("JSON");
    let sure: Value = serde_json::from_str(&written(&sure)).expect("JSON");
    for good in [&full, &sure] {
        assert_eq!(disagrees(good, &schema, &schema), None);
    }
    for (place, bad) in [
        ("/changes", json!("3")),
        ("/mean_steps", json!(-1)),
        ("/mean_steps_exact", json!(3)),
        ("/curve", json!([])),
        ("/curve/0", json!({ "changes": 1, "mean_steps": 2 })),
        ("/kept/0", json!([1, 1])),
        ("/added/0", json!(-4)),
        ("/stopped", json!("tired")),
        ("/gone/0", json!(1)),
        ("/key/couplets/0/question", json!(null)),
        ("/old_findings/0", json!({ "code": "loop" })),
    ] {
        let mut changed = full.clone();
        *changed.pointer_mut(place).expect("a place of the report") = bad;
        assert!(disagrees(&changed, &schema, &schema).is_some(), "{place}");
    }
}
