//! What is written comes back; the shape is the documented one; no text makes it fail.

mod written_elsewhere;

use std::collections::BTreeSet;

use serde_json::{Value, json};
use spinney_model::{
    Alternative, AsGood, Ask, Asked, BestKeys, Certificate, CharacterIx, Claim, Code, Couplet,
    Destination, Early, End, Finding, Goal, Kept, KeptPrice, Key, Line, Matrix, NotByTouch,
    OfKeyFile, OfLink, Place, Price, Quantity, Reached, Reasons, Refusal, Remaining, Remains,
    Season, SeenOn, Share, StateIx, Stopped, TaxonIx, Wanted, WhyNot, Wish, Wishes, Wording,
};

use super::schema::disagrees;
use super::{KeyFileError, Report, key, read, read_claim, read_key, report};
use crate::link::hedge::table;

/// How a finding is said here.
pub(super) fn as_text(_: &Finding) -> (String, String) {
    ("A sentence.".to_owned(), "Do it.".to_owned())
}

fn ask(character: usize, yes: Asked) -> Ask {
    Ask { character: CharacterIx(character), yes }
}

fn couplet(number: u32, wording: Wording, ask: Option<Ask>) -> Couplet {
    let (yes, no) = (Destination::Couplet(2), Destination::End(End::of([TaxonIx(9)])));
    Couplet { number, back: None, wording, ask, yes, no, kept: false, line: None }
}

fn drawn() -> Key {
    let states = Asked::States([StateIx(1), StateIx(2)].into());
    let question = |text: &str| Wording::Question(text.to_owned());
    let leads = Wording::Leads { yes: "Stalk long".to_owned(), no: "Stalk short".to_owned() };
    let measured = Asked::AtLeast(Quantity::from_thousandths(22_500));
    let fewer = Asked::Below(Quantity::from_whole(5));
    let unknown =
        End { taxa: vec![TaxonIx(0), TaxonIx(3)], unrecognised: vec!["Hasel".into()] };
    Key {
        couplets: vec![
            couplet(1, question("Is it \"compound\"?"), Some(ask(0, states))),
            Couplet {
                back: Some(1),
                kept: true,
                yes: Destination::End(unknown),
                no: Destination::Missing,
                ..couplet(2, leads, Some(ask(5, measured)))
            },
            couplet(2, question("Are there fewer than 5 leaflets?"), Some(ask(1, fewer))),
            couplet(4, question("Is it big?"), None),
        ],
    }
}

fn claim() -> Claim {
    Claim {
        total: Share::new(104, 3),
        lower_bound: Share::new(67, 2),
        mean_questions: Share::new(10, 3),
        longest: 5,
        stopped: Some(Stopped::Budget),
        heaps: 123_456,
        kept: Some(KeptPrice {
            without_wishes: Share::from_integer(34),
            without_wishes_optimal: true,
            refused: vec![ask(3, Asked::States([StateIx(0)].into()))],
        }),
        wishes: wishes(),
        reached: vec![
            Reached {
                goal: Goal::EvenTeaching,
                value: share(2),
                then: Some(Share::new(31, 2)),
            },
            Reached { goal: Goal::LeastEffort, value: Share::new(104, 3), then: None },
        ],
        prices: prices(),
        within: vec![1, 3],
        touching: vec![2],
        certificate: Some(certificate()),
    }
}

/// Lines with everything that a line can have.
fn certificate() -> Certificate {
    let remains = |taxon, character, values| Remains {
        taxon: TaxonIx(taxon),
        character: CharacterIx(character),
        values,
    };
    let states = remains(3, 0, Remaining::States([StateIx(1), StateIx(2)].into()));
    let half = Quantity::from_thousandths(22_500);
    let above = remains(0, 5, Remaining::Numbers(Some(half), None));
    let between = remains(5, 1, Remaining::Numbers(Some(Quantity::from_whole(5)), Some(half)));
    let line = |kinds: &[usize], remains: &[usize], at_least: &[i128]| Line {
        kinds: kinds.iter().map(|kind| TaxonIx(*kind)).collect(),
        remains: remains.to_vec(),
        at_least: at_least.to_vec(),
    };
    let large = 6 * i128::from(u64::MAX);
    Certificate {
        whole: 6,
        remains: vec![above, states, between],
        lines: vec![
            line(&[0, 1, 2, 3, 5], &[0, 1], &[93, 18]),
            line(&[1, 2], &[], &[42]),
            line(&[0, 5], &[0, 2], &[0, 2]),
            line(&[4], &[], &[large]),
        ],
    }
}

fn share(whole: i128) -> Share {
    Share::from_integer(whole)
}

/// Every wish that there is.
fn wishes() -> Wishes {
    let toothed = ask(3, Asked::States([StateIx(0)].into()));
    let long = ask(5, Asked::AtLeast(Quantity::from_thousandths(22_500)));
    let mut kept = Vec::new();
    let first = Kept::add(&mut kept, toothed.clone(), None);
    let after = Kept::add(&mut kept, long.clone(), Some((first, true)));
    Kept::add(&mut kept, toothed, Some((after, false)));
    Kept::add(&mut kept, long, Some((first, false)));
    Wishes {
        kept,
        hand: Some(SeenOn::WinterTwig),
        season: Some(Season::Autumn),
        allow_touch: true,
        never: BTreeSet::from([CharacterIx(1), CharacterIx(4)]),
        order: vec![CharacterIx(5), CharacterIx(0)],
        early: vec![Early::Leave(TaxonIx(9)), Early::Part(TaxonIx(3), TaxonIx(0))],
        goals: vec![Goal::EvenTeaching, Goal::LeastEffort],
    }
}

fn prices() -> Vec<Price> {
    let all = [
        Wish::Kept,
        Wish::Hand,
        Wish::Never(CharacterIx(4)),
        Wish::Touch,
        Wish::Order,
        Wish::Early(Early::Leave(TaxonIx(9))),
        Wish::Early(Early::Part(TaxonIx(3), TaxonIx(0))),
        Wish::Goals,
    ];
    let price = |(at, wish): (usize, Wish)| Price {
        wish,
        extra: Share::new(at as i128 - 2, 3),
        exact: at > 1,
        together: (0..at).map(|taxon| (TaxonIx(taxon), TaxonIx(9))).collect(),
    };
    all.into_iter().enumerate().map(price).collect()
}

fn refusals() -> Vec<Refusal> {
    let refusal = |wanted, why| Refusal { wanted, why };
    let toothed = ask(3, Asked::States([StateIx(0)].into()));
    vec![
        refusal(Wanted::Ask(toothed.clone()), WhyNot::Blocked(TaxonIx(9))),
        refusal(Wanted::Ask(toothed.clone()), WhyNot::AllAlike),
        refusal(Wanted::Ask(toothed.clone()), WhyNot::NoSuchState),
        refusal(Wanted::Ask(toothed), WhyNot::AfterRefused),
        refusal(Wanted::Order(CharacterIx(4)), WhyNot::LeftOut),
        refusal(Wanted::Early(Early::Part(TaxonIx(3), TaxonIx(0))), WhyNot::NeverParted),
        refusal(Wanted::Goal(Goal::FewestWords), WhyNot::TooLarge),
    ]
}

/// A report with something in every field.
fn full() -> String {
    let (matrix, key, claim) = (table(), drawn(), claim());
    let findings = [Finding::of(Place::Couplet(4), OfLink::NoWords { question: 4 })];
    let alternative = Alternative {
        ask: ask(4, Asked::AtLeast(Quantity::from_whole(60))),
        heaps: (4, 8, 0),
        extra: Share::new(1, 2),
        exact: false,
    };
    let reasons = [Reasons {
        couplet: 1,
        kinds: 12,
        heaps: (3, 8, 1),
        also: vec![(ask(3, Asked::States([StateIx(0)].into())), true)],
        alternatives: vec![alternative.clone()],
        blocked: vec![(CharacterIx(1), TaxonIx(9))],
        not_by_touch: Some(NotByTouch { instead: alternative, kinds: vec![TaxonIx(9)] }),
    }];
    let best_keys = BestKeys {
        keys: vec![(key.clone(), Share::new(104, 3)), (key.clone(), share(35))],
        sure: false,
        as_good: Some(AsGood { keys: u128::MAX, nestings: 12 }),
    };
    report(
        &Report {
            key: Some(&key),
            claim: Some(&claim),
            findings: &findings,
            questions_checked: Some((3, 4)),
            reasons: &reasons,
            refused: &refusals(),
            best_keys: Some(&best_keys),
            ..Report::of(&matrix)
        },
        as_text,
    )
}

#[test]
fn a_report_has_the_documented_shape() {
    let found: Value = serde_json::from_str(&full()).expect("our JSON is JSON");
    let stalk = json!({"character": "stalk length", "at_least": 22.5, "unit": "mm"});
    assert_eq!(
        found["key"]["couplets"][0],
        json!({
            "number": 1, "question": "Is it \"compound\"?",
            "ask": {"character": "form", "states": ["feather", "hand"]},
            "yes": {"couplet": 2}, "no": {"taxa": ["rowan"]},
        })
    );
    assert_eq!(
        found["key"]["couplets"][1],
        json!({
            "number": 2, "back": 1, "question": "Stalk long", "leads": ["Stalk long", "Stalk short"],
            "ask": stalk, "yes": {"taxa": ["hazel", "dogwood"], "unrecognised": ["Hasel"]},
            "no": null, "kept": true,
        })
    );
    let fewer = json!({"character": "number of leaflets", "below": 5});
    assert_eq!(found["key"]["couplets"][2]["ask"], fewer);
    assert_eq!(found["key"]["couplets"][3]["ask"], Value::Null);
    assert_eq!(
        found["cost"],
        json!({
            "effort_total": 34.666666666666664, "effort_total_exact": "104/3",
            "mean_questions": 3.3333333333333335, "mean_questions_exact": "10/3", "longest": 5,
        })
    );
    assert_eq!(
        found["proof"],
        json!({
            "optimal": false, "lower_bound": 33.5, "lower_bound_exact": "67/2",
            "stopped": "budget", "heaps": 123456,
            "certificate": {
                "form": 2,
                "kinds": table().taxa().iter().map(|taxon| &taxon.name).collect::<Vec<_>>(),
                "parts": "6",
                "remains": [
                    {"kind": 0, "character": "stalk length", "at_least": 22.5},
                    {"kind": 3, "character": "form", "states": ["feather", "hand"]},
                    {
                        "kind": 5, "character": "number of leaflets",
                        "at_least": 5, "below": 22.5,
                    },
                ],
                "lines": ["2f|0 1|93 18", "6||42", "21|0 2|0 2", "10||110680464442257309690"],
            },
        })
    );
    assert_eq!(
        found["findings"],
        json!([{
            "code": "not-linked", "severity": "worth a look", "place": "question 4",
            "sentence": "A sentence.", "remedy": "Do it.",
        }])
    );
    assert_eq!(found["links"], json!({"checked": 3, "of": 4}));
    assert_eq!(found["kept_price"]["without_wishes"], json!(34));
    assert_eq!(found["reasons"][0]["heaps"], json!({"yes": 3, "no": 8, "both": 1}));
    let toothed = json!({"character": "edge", "states": ["toothed"]});
    let also = json!([{"ask": toothed, "opposite": true}]);
    assert_eq!(found["reasons"][0]["also"], also);
    let blocked = json!([{"character": "number of leaflets", "kind": "rowan"}]);
    assert_eq!(found["reasons"][0]["blocked"], blocked);
    assert_eq!(found["reasons"][0]["not_by_touch"]["kinds"], json!(["rowan"]));
    assert_eq!(found["touching"], json!([2]));
    assert_eq!(
        found["wishes"],
        json!({
            "kept": [
                {"ask": toothed, "yes": 1, "no": 3}, {"ask": stalk, "no": 2}, {"ask": toothed},
                {"ask": stalk},
            ],
            "hand": "winter twig", "season": "autumn", "allow_touch": true,
            "never": ["number of leaflets", "blade length"], "order": ["stalk length", "form"],
            "early": [
                {"leave": "rowan", "within": 1}, {"part": ["dogwood", "hazel"], "within": 3},
            ],
            "goals": ["even teaching", "least effort"],
        })
    );
    assert_eq!(
        found["reached"][0],
        json!({
            "goal": "even teaching", "value": 2, "value_exact": "2",
            "then": 15.5, "then_exact": "31/2",
        })
    );
    assert_eq!(
        found["prices"][5],
        json!({
            "wish": "rowan comes out first", "about": "early", "early": {"leave": "rowan"},
            "extra": 1, "extra_exact": "1", "exact": true,
            "together": [["hazel", "rowan"], [found["prices"][5]["together"][1][0], "rowan"],
                [found["prices"][5]["together"][2][0], "rowan"], ["dogwood", "rowan"],
                [found["prices"][5]["together"][4][0], "rowan"]],
        })
    );
    let blocked = json!({"ask": toothed, "why": "blocked", "kind": "rowan"});
    assert_eq!(found["refused"][0], blocked);
    assert_eq!(found["refused"][6], json!({"goal": "fewest words", "why": "too large"}));
    let many = u128::MAX.to_string();
    assert_eq!(found["best_keys"]["as_good"], json!({"keys": many, "nestings": "12"}));
}

#[test]
fn fields_come_in_a_fixed_order_and_the_text_ends_with_a_line_end() {
    let text = full();
    let fields = [
        "key",
        "cost",
        "proof",
        "kept_price",
        "wishes",
        "reached",
        "prices",
        "refused",
        "links",
        "findings",
        "reasons",
        "best_keys",
    ];
    let at: Vec<usize> = fields
        .iter()
        .map(|field| text.find(&format!("\n  \"{field}\"")).expect("every field is there"))
        .collect();
    assert!(at.is_sorted(), "{at:?}");
    assert!(text.ends_with("}\n"));
    assert_eq!(text, full());
}

#[test]
fn a_key_comes_back_as_it_was() {
    let matrix = table();
    for text in [full(), key(&drawn(), &matrix)] {
        let (back, findings) = read_key(&text, &matrix).expect("our JSON is read");
        assert_eq!(back, drawn());
        let places: Vec<_> = findings.iter().map(|f| (f.code, f.place.clone())).collect();
        assert_eq!(places, [(Code::NameUnknown, Place::Couplet(2))]);
    }
    assert_eq!(read_claim(&full(), &matrix), Ok((Some(claim()), Vec::new())));
    let (alone, found) = read_key(&full(), &matrix).expect("our JSON is read");
    assert_eq!(read(&full(), &matrix), Ok((alone, Some(claim()), found)), "both at once");
    assert_eq!(read_claim(&key(&drawn(), &matrix), &matrix), Ok((None, Vec::new())));
}

#[test]
fn any_key_comes_back_as_it_was() {
    let matrix = table();
    let mut random = fastrand::Rng::with_seed(5);
    for _ in 0..2_000 {
        let couplets = (0..random.usize(..6)).map(|_| scribbled(&mut random)).collect();
        let wanted = Key { couplets };
        let (back, _) = read_key(&key(&wanted, &matrix), &matrix).expect("our JSON is read");
        assert_eq!(back, wanted);
    }
}

fn scribbled(random: &mut fastrand::Rng) -> Couplet {
    let text = |random: &mut fastrand::Rng| -> String {
        (0..random.usize(..12)).map(|_| random.char(..)).collect()
    };
    let destination = |random: &mut fastrand::Rng| match random.u8(..3) {
        0 => Destination::Missing,
        1 => Destination::Couplet(random.u32(..)),
        _ => Destination::End(End::of([TaxonIx(random.usize(..12))])),
    };
    let quantity =
        Quantity::from_thousandths(random.i64(-9_000_000_000_000..9_000_000_000_000));
    let asked = match random.u8(..4) {
        0 => None,
        1 => Some(ask(3, Asked::States(BTreeSet::from([StateIx(random.usize(..3))])))),
        2 => Some(ask(4, Asked::AtLeast(quantity))),
        _ => Some(ask(5, Asked::Below(quantity))),
    };
    let wording = if random.bool() {
        Wording::Question(text(random))
    } else {
        Wording::Leads { yes: text(random), no: text(random) }
    };
    Couplet {
        back: random.bool().then(|| random.u32(..)),
        yes: destination(random),
        no: destination(random),
        kept: random.bool(),
        ..couplet(random.u32(..), wording, asked)
    }
}

#[test]
fn what_the_table_lacks_is_a_finding_and_the_rest_is_read() {
    let matrix: Matrix = table();
    for bad in [
        json!({"character": "colour", "states": ["red"]}),
        json!({"character": "edge", "states": ["red"]}),
        json!({"character": "edge", "states": []}),
        json!({"character": "edge", "states": ["toothed", "smooth", "spiny"]}),
        json!({"character": "edge", "at_least": 3}),
        json!({"character": "number of leaflets", "at_least": 3.5}),
        json!({"character": "stalk length", "at_least": 3.5, "unit": "cm"}),
        json!({"character": "stalk length", "at_least": 3.00001, "unit": "mm"}),
        json!({"character": "stalk length", "at_least": 1e300, "unit": "mm"}),
        json!({"character": "stalk length", "states": ["long"]}),
        json!({"character": "stalk length"}),
    ] {
        let text = json!({"key": {"couplets": [
            {"number": 1, "question": "?", "ask": bad, "yes": {"couplet": 1}, "no": null},
        ]}})
        .to_string();
        let (key, findings) = read_key(&text, &matrix).expect("the rest is read");
        assert_eq!(key.couplets[0].ask, None, "{text}");
        assert_eq!(findings.len(), 1, "{text}");
        assert_eq!(findings[0].code, Code::NotLinked, "{text}");
    }
}

#[test]
fn text_that_is_not_ours_is_an_error() {
    let matrix = table();
    for text in ["[]", "{\"key\": 3}", "1. Is it lobed? Yes → 2", "\u{0}", "null"] {
        let error = read_key(text, &matrix).expect_err("this is no key");
        assert!(matches!(error, KeyFileError::NotOurs { .. }), "{text}: {error:?}");
    }
    for (text, line) in [("", 1), ("{", 1), ("{\n\"key\": {", 2)] {
        assert_eq!(read_key(text, &matrix), Err(KeyFileError::CutOff { line }), "{text}");
    }
    // What a newer program adds to a question may change what the key means.
    let newer =
        json!({"key": {"couplets": [{"number": 1, "question": "?", "picture": "a.svg"}]}});
    let unknown = KeyFileError::Unknown { field: "picture".to_owned() };
    assert_eq!(read_key(&newer.to_string(), &matrix), Err(unknown));
    assert_eq!(read_key("{\"key\": null}", &matrix), Err(KeyFileError::NoKey));
    let deep = "[".repeat(1_000_000);
    assert!(read_key(&deep, &matrix).is_err());
    let wrong = full().replace("104/3", "1/0");
    assert_eq!(read_claim(&wrong, &matrix), Err(KeyFileError::Cost { field: "effort_total" }));
}

#[test]
fn no_change_of_a_byte_makes_it_fail() {
    let matrix = table();
    let mut random = fastrand::Rng::with_seed(3);
    let text = full();
    let mut read = 0;
    for _ in 0..4_000 {
        let mut bytes = text.clone().into_bytes();
        for _ in 0..random.usize(1..4) {
            let at = random.usize(..bytes.len());
            match random.u8(..3) {
                0 => bytes[at] = random.u8(32..127),
                1 => drop(bytes.remove(at)),
                _ => bytes.insert(at, *random.choice(b"{}[]\",:0e-").expect("not empty")),
            }
        }
        let text = String::from_utf8_lossy(&bytes);
        read += usize::from(read_key(&text, &matrix).is_ok());
        let _ = read_claim(&text, &matrix);
    }
    assert!(read > 100, "only {read} of the changed texts could be read");
}

#[test]
fn real_output_has_the_shape_of_the_schema_and_the_schema_refuses_others() {
    let schema = include_str!("../../../../docs/key.schema.json");
    let schema: Value = serde_json::from_str(schema).expect("the schema is JSON");
    let value = |text: &str| -> Value { serde_json::from_str(text).expect("JSON") };
    let (matrix, full) = (table(), value(&full()));
    let bare = Report::of(&matrix);
    for good in [&full, &value(&key(&drawn(), &matrix)), &value(&report(&bare, as_text))] {
        assert_eq!(disagrees(good, &schema, &schema), None);
    }
    for (place, bad) in [
        ("/key/couplets/0/number", json!("1")),
        ("/key/couplets/0/ask", json!({"character": "edge"})),
        ("/key/couplets/0/ask", json!({"character": "edge", "at_least": 3, "below": 4})),
        ("/key/couplets/0/yes", json!({"couplet": 2, "taxa": []})),
        ("/key/couplets/1/leads", json!(["one"])),
        ("/cost/effort_total", json!("34")),
        ("/proof/stopped", json!("tired")),
        ("/findings/0", json!({"code": "loop"})),
        ("/reasons/0/heaps", json!([1, 2, 3])),
        ("/links", json!({"checked": 1, "of": 2, "more": 3})),
        ("/wishes/hand", json!("spoon")),
        ("/wishes/early/0", json!({"within": 2})),
        ("/wishes/goals/0", json!("beauty")),
        ("/wishes/kept/0/yes", json!({"ask": 1})),
        ("/reached/0/goal", json!("beauty")),
        ("/prices/2/about", json!("luck")),
        ("/prices/2/together/0", json!(["hazel"])),
        ("/refused/0/why", json!("no")),
        ("/refused/4", json!({"why": "left out"})),
        ("/reasons/0/also/0", json!({"opposite": true})),
        ("/best_keys/as_good/keys", json!(12)),
    ] {
        let mut changed = full.clone();
        *changed.pointer_mut(place).expect("a place of the report") = bad;
        assert!(disagrees(&changed, &schema, &schema).is_some(), "{place}");
    }
}

/// A proof of another table says what that table lacks; a line that is none of ours is an error.
#[test]
fn a_proof_is_read_as_far_as_the_table_has_its_names() {
    let with = |from: &str, to: &str| {
        let text = full();
        assert!(text.contains(from), "{from}");
        read_claim(&text.replace(from, to), &table())
    };
    let names = "\"kinds\": [\n        \"hazel\"";
    let (claim, findings) =
        with(names, &names.replace("hazel", "hazle")).expect("the rest is read");
    let lines = claim.expect("a claim").certificate.expect("a proof").lines;
    let others = [1, 3].map(|line: usize| certificate().lines[line].clone());
    assert_eq!(lines, others, "the first and the third name hazel");
    let strange = OfKeyFile::Proof { name: "hazle".to_owned() };
    assert!(findings.contains(&Finding::of(Place::Key, strange)), "{findings:#?}");
    for broken in [
        "6",
        "6|42",
        "6||",
        "6||-42",
        "6||42 ",
        "6|| 42",
        "6|2 0|42",
        "6|1 1|42",
        "6|3|42",
        "6|x|42",
        "G||42",
        "10000||42",
        "||42",
        "6||42|1",
        "6||7/6",
        "6||170141183460469231731687303715884105728",
    ] {
        let error = with("\"6||42\"", &format!("\"{broken}\""));
        assert_eq!(error, Err(KeyFileError::Line { line: broken.to_owned() }));
    }
    // Kinds in another order, as of a table that was sorted anew, are found by their names.
    let mut moved: Value = serde_json::from_str(&full()).expect("our JSON is JSON");
    let proof = &mut moved["proof"]["certificate"];
    proof["kinds"].as_array_mut().expect("a list").swap(1, 9);
    proof["lines"] = json!(["204||42"]);
    let (claim, _) = read_claim(&moved.to_string(), &table()).expect("ours");
    let lines = claim.expect("a claim").certificate.expect("a proof").lines;
    assert_eq!(lines, [certificate().lines[1].clone()]);
}

/// Proofs that were written in the first form are read as ever; a form that nobody here knows
/// is refused in words, and so are numbers over nothing.
#[test]
fn an_older_proof_is_read_and_a_newer_one_is_refused() {
    let with = |change: &dyn Fn(&mut Value)| {
        let mut report: Value = serde_json::from_str(&full()).expect("our JSON is JSON");
        change(&mut report["proof"]["certificate"]);
        read_claim(&report.to_string(), &table())
    };
    let older = |lines: Value| {
        with(&|proof| {
            let proof = proof.as_object_mut().expect("an object");
            proof.remove("form");
            proof.remove("parts");
            proof.insert("lines".to_owned(), lines.clone());
        })
    };
    let (claim, found) =
        older(json!(["0-3 5 | 0-1 >= 31/2, 3", "1-2 >= 7", "0 5 | 0 2 >= 0, 1/3"]))
            .expect("ours");
    let proof = claim.expect("a claim").certificate.expect("a proof");
    let now = certificate();
    assert_eq!(proof.whole, 6);
    assert_eq!((proof.remains, &proof.lines[..]), (now.remains, &now.lines[..3]));
    assert_eq!(found, []);
    for broken in
        ["1-2", "1-2 >= ", "1-2 >= 7/0", "2-1 >= 7", "1 1 >= 7", "x >= 7", "9999999 >= 7"]
    {
        assert_eq!(older(json!([broken])), Err(KeyFileError::Line { line: broken.to_owned() }));
    }
    let newer = with(&|proof| proof["form"] = json!(3)).expect_err("of another time");
    assert_eq!(newer, KeyFileError::Form { form: 3 });
    for parts in ["0", "-6", "six", ""] {
        let error = with(&|proof| proof["parts"] = json!(parts));
        assert_eq!(error, Err(KeyFileError::Cost { field: "parts" }), "{parts}");
    }
}
