//! JSON that other programs and people write: without exact fractions, or a key alone.

use serde_json::{Value, json};
use spinney_model::{Code, Couplet, Finding, NotInTable, OfKeyFile, Place, Share, StrangeWish};

use super::as_text;
use crate::json::schema::disagrees;
use crate::json::{Effort, KeyFileError, Report, read_claim, read_key, report};
use crate::link::hedge::table;

/// A report as it is documented, with these costs and no more.
fn documented(cost: &Value, proof: &Value) -> Value {
    json!({"key": {"couplets": []}, "cost": cost, "proof": proof, "findings": []})
}

fn mean_of(mean: f64) -> Share {
    let cost = json!({"effort_total": 30, "mean_questions": mean, "longest": 4});
    let text = documented(&cost, &json!({"optimal": true, "lower_bound": 30})).to_string();
    let (claim, _) = read_claim(&text, &table()).expect("the documented shape is read");
    claim.expect("cost and proof make a claim").mean_questions
}

#[test]
fn costs_without_exact_fractions_are_read_and_fit_the_schema() {
    let schema = include_str!("../../../../../docs/key.schema.json");
    let schema: Value = serde_json::from_str(schema).expect("the schema is JSON");
    let cost =
        json!({"effort_total": 33.5, "mean_questions": 3.7142857142857144, "longest": 4});
    let given = documented(&cost, &json!({"optimal": false, "lower_bound": 30}));
    assert_eq!(disagrees(&given, &schema, &schema), None);
    let claim = read_claim(&given.to_string(), &table()).expect("read").0.expect("a claim");
    assert_eq!(claim.total, Share::new(67, 2));
    assert_eq!(claim.lower_bound, Share::from_integer(30));
    assert_eq!(claim.mean_questions, Share::new(26, 7));
    assert_eq!((claim.longest, claim.optimal()), (4, false));
}

#[test]
fn a_float_is_the_simplest_fraction_that_it_can_stand_for() {
    assert_eq!(mean_of(3.7142857142857144), Share::new(26, 7));
    assert_eq!(mean_of(0.1), Share::new(1, 10));
    assert_eq!(mean_of(2.123456789), Share::new(2_123_456_789, 1_000_000_000));
    let mut random = fastrand::Rng::with_seed(9);
    for _ in 0..5_000 {
        let (above, below) = (random.i128(1..1_000_000), random.i128(1..1_000_000));
        assert_eq!(mean_of(above as f64 / below as f64), Share::new(above, below));
    }
    for odd in ["1e-300", "1.5e300"] {
        let text = format!(
            "{{\"key\": null, \"cost\": {{\"effort_total\": {odd}, \"mean_questions\": 1, \"longest\": 1}}, \
             \"proof\": {{\"optimal\": true, \"lower_bound\": 1}}}}"
        );
        assert_eq!(
            read_claim(&text, &table()),
            Err(KeyFileError::Cost { field: "effort_total" })
        );
    }
}

#[test]
fn a_number_that_its_exact_fraction_contradicts_is_refused() {
    let read = |total: Value, exact: &str| {
        let cost = json!({
            "effort_total": total, "effort_total_exact": exact, "mean_questions": 3, "longest": 4,
        });
        let proof = json!({"optimal": true, "lower_bound": 30});
        read_claim(&documented(&cost, &proof).to_string(), &table())
    };
    let error = read(json!(30), "119").expect_err("30 is not 119");
    let (number, exact) = ("30".to_owned(), "119".to_owned());
    let disagree = KeyFileError::Disagree { field: "effort_total", number, exact };
    assert_eq!(error, disagree);
    assert!(read(json!(34.6), "104/3").is_err());
    for near in [34.666666666666664, 34.66666666666667] {
        let claim = read(json!(near), "104/3").expect("within rounding").0.expect("a claim");
        assert_eq!(claim.total, Share::new(104, 3));
    }
}

#[test]
fn a_key_alone_is_read_as_one_inside_a_report() {
    let matrix = table();
    let key = json!({"couplets": [{
        "number": 1, "question": "Is it compound?",
        "ask": {"character": "form", "states": ["feather", "hand"]},
        "yes": {"taxa": ["rowan"]}, "no": {"taxa": ["Hasel"]},
    }]});
    let alone = read_key(&key.to_string(), &matrix).expect("a key alone is read");
    let inside = read_key(&json!({ "key": key }).to_string(), &matrix);
    assert_eq!(Ok(&alone), inside.as_ref());
    let (read, findings) = alone;
    assert!(matches!(read.couplets.as_slice(), [Couplet { ask: Some(_), .. }]));
    assert_eq!(findings.len(), 1);
    assert_eq!(findings[0].code, Code::NameUnknown);
    assert_eq!(read_claim(&key.to_string(), &matrix), Ok((None, Vec::new())));
    let broken = read_key("{\"couplets\": [{\"number\": 1}]}", &matrix);
    assert!(matches!(broken, Err(KeyFileError::NotOurs { .. })), "{broken:?}");
    assert_eq!(read_key("{}", &matrix), Err(KeyFileError::NoKey));
}

#[test]
fn effort_without_a_claim_is_a_cost_without_a_proof() {
    let matrix = table();
    let effort =
        Effort { total: Share::new(104, 3), mean_questions: Share::new(26, 9), longest: 5 };
    let said = Report { effort: Some(effort), ..Report::of(&matrix) };
    let text = report(&said, as_text);
    let value: Value = serde_json::from_str(&text).expect("our JSON is JSON");
    assert_eq!(value["cost"]["effort_total_exact"], json!("104/3"));
    assert_eq!(value["cost"]["longest"], json!(5));
    assert_eq!(value.get("proof"), None);
    assert_eq!(read_claim(&text, &matrix), Ok((None, Vec::new())));
    let claim = super::claim();
    let claimed = report(&Report { claim: Some(&claim), ..said }, as_text);
    let without = report(&Report { claim: Some(&claim), effort: None, ..said }, as_text);
    assert_eq!(claimed, without, "a claim comes first");
}

#[test]
fn wishes_that_name_what_the_table_lacks_are_findings_and_the_rest_is_read() {
    let cost = json!({"effort_total": 30, "mean_questions": 3, "longest": 4});
    let mut given = documented(&cost, &json!({"optimal": true, "lower_bound": 30}));
    let red = json!({"character": "edge", "states": ["red"]});
    let toothed = json!({"character": "edge", "states": ["toothed"]});
    given["wishes"] = json!({
        "kept": [{"ask": toothed, "yes": 1, "no": 2}, {"ask": red}, {"ask": toothed, "yes": 0}],
        "hand": "leaf", "season": "monsoon", "never": ["edge", "colour"], "order": ["smell"],
        "early": [{"leave": "rowan", "within": 2}, {"part": ["rowan", "Hasel"], "within": 1}, {}],
        "goals": ["few dots", "fewest words"],
    });
    given["prices"] = json!([
        {"wish": "gold", "about": "gold", "extra": 1, "exact": true},
        {"wish": "hand", "about": "hand", "extra": 1, "exact": true, "together": [["?", "!"]]},
    ]);
    given["reached"] =
        json!([{"goal": "gold", "value": 2}, {"goal": "fewest words", "value": 2}]);
    let matrix = table();
    let (claim, findings) = read_claim(&given.to_string(), &matrix).expect("the rest is read");
    let claim = claim.expect("cost and proof make a claim");
    let text = str::to_owned;
    for name in [
        StrangeWish::Asked(NotInTable::Named(text("red"))),
        StrangeWish::Season(text("monsoon")),
        StrangeWish::Named(text("colour")),
        StrangeWish::Named(text("smell")),
        StrangeWish::Named(text("Hasel")),
        StrangeWish::Early,
        StrangeWish::Goal(text("few dots")),
        StrangeWish::Goal(text("gold")),
        StrangeWish::Priced(text("gold")),
        StrangeWish::Named(text("?")),
    ] {
        let named = Finding::of(Place::Key, OfKeyFile::Wishes { name });
        assert!(findings.contains(&named), "{named:?}: {findings:#?}");
    }
    assert!(findings.iter().all(|finding| finding.code == Code::NameUnknown));
    let kept = claim.wishes.kept;
    assert_eq!(kept.len(), 2, "the first question is the table's, the third as well");
    assert_eq!((kept[0].yes, kept[0].no), (None, Some(1)));
    assert_eq!((kept[1].yes, kept[1].no), (None, None), "a way back is no beginning of a key");
    assert_eq!(claim.wishes.hand, Some(spinney_model::SeenOn::Leaf));
    assert_eq!(claim.wishes.never.len(), 1);
    assert_eq!((claim.wishes.early.len(), claim.within), (1, vec![2]));
    assert_eq!(claim.wishes.goals, [spinney_model::Goal::FewestWords]);
    assert_eq!((claim.prices.len(), claim.reached.len()), (1, 1));
}

#[test]
fn no_list_of_questions_to_keep_is_too_long_to_read() {
    let cost = json!({"effort_total": 30, "mean_questions": 3, "longest": 4});
    let mut given = documented(&cost, &json!({"optimal": true, "lower_bound": 30}));
    let toothed = json!({"character": "edge", "states": ["toothed"]});
    let list =
        (1..100_000).map(|next| json!({"ask": toothed, "yes": next})).collect::<Vec<_>>();
    given["wishes"] = json!({ "kept": list });
    let (claim, findings) = read_claim(&given.to_string(), &table()).expect("it is read");
    assert_eq!(claim.expect("a claim").wishes.kept.len(), 500);
    assert_eq!(findings.len(), 1, "what was left out is said once");
    assert_eq!(findings[0].code, Code::TooLarge);
}

#[test]
fn five_hundred_questions_to_keep_are_kept_and_not_one_more() {
    let cost = json!({"effort_total": 30, "mean_questions": 3, "longest": 4});
    let toothed = json!({"character": "edge", "states": ["toothed"]});
    for (many, wanted) in [(500, vec![]), (501, vec![Code::TooLarge])] {
        let mut given = documented(&cost, &json!({"optimal": true, "lower_bound": 30}));
        let list = (1..=many)
            .map(|next| match next < many {
                true => json!({"ask": toothed, "yes": next}),
                false => json!({ "ask": toothed }),
            })
            .collect::<Vec<_>>();
        given["wishes"] = json!({ "kept": list });
        let (claim, findings) = read_claim(&given.to_string(), &table()).expect("it is read");
        let codes: Vec<Code> = findings.iter().map(|finding| finding.code).collect();
        assert_eq!(codes, wanted, "{many}");
        let kept = claim.expect("a claim").wishes.kept;
        let (mut deep, mut next) = (0, Some(0));
        while let Some(at) = next {
            deep += 1;
            next = kept[at].yes;
        }
        assert_eq!((deep, kept.len()), (500, 500), "{many}");
    }
}
