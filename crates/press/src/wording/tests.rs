//! A character and what is asked of it, and the sentence that comes of it.

use std::collections::BTreeSet;

use spinney_model::{
    Cell, Character, CharacterIx, Couplet, Destination, Quantity, Scene, StateIx, Taxon, Unit,
    Value,
};

use super::*;

fn words(name: &str, states: &[&str]) -> Character {
    let states = states.iter().map(ToString::to_string).collect();
    Character::named(name, Scale::Words { states })
}

fn measure(name: &str, unit: Unit) -> Character {
    Character::named(name, Scale::Measure { unit, gap: Quantity::ZERO })
}

fn worded(template: &str, character: Character) -> Character {
    Character { question: Some(template.to_string()), ..character }
}

/// A table with one kind, on leaves if `part` says so.
fn table(character: Character, part: Option<&str>) -> Matrix {
    let scene = Scene { part: part.map(str::to_string), ..Scene::default() };
    let row = vec![Cell::from(Value::Unknown)];
    Matrix::new(scene, vec![Taxon::named("it")], vec![character], vec![row]).unwrap()
}

fn states(of: &[usize]) -> Asked {
    Asked::States(of.iter().map(|&ix| StateIx(ix)).collect::<BTreeSet<_>>())
}

fn at_least(thousandths: i64) -> Asked {
    Asked::AtLeast(Quantity::from_thousandths(thousandths))
}

fn below(thousandths: i64) -> Asked {
    Asked::Below(Quantity::from_thousandths(thousandths))
}

fn asked(character: Character, part: Option<&str>, yes: Asked) -> String {
    let ask = Ask { character: CharacterIx(0), yes };
    question(&table(character, part), &ask)
}

#[test]
fn words_become_sentences() {
    let edge = || words("edge", &["toothed", "spiny", "smooth"]);
    let shape = || words("shape", &["round", "oval", "heart", "kidney", "star"]);
    for (character, yes, sentence) in [
        (words("leaf edge", &["toothed", "smooth"]), states(&[0]), "Is the leaf edge toothed?"),
        (edge(), states(&[0]), "Is the leaf edge toothed?"),
        (edge(), states(&[0, 1]), "Is the leaf edge toothed or spiny?"),
        (words("leaves", &["opposite", "alternate"]), states(&[0]), "Are the leaves opposite?"),
        (words("place on the twig", &["opposite"]), states(&[0]), "Are the leaves opposite?"),
        (words("Leaf shape", &["round", "oval"]), states(&[1]), "Is the leaf shape oval?"),
        (words("lobes", &["lobed", "unlobed"]), states(&[0]), "Is it lobed?"),
        (words("lobes", &["lobed", "unlobed"]), states(&[1]), "Is it unlobed?"),
        (words("lobes", &["3", "5", "7"]), states(&[0, 1]), "Does it have 3 or 5 lobes?"),
        (words("thorns", &["present", "absent"]), states(&[0]), "Are there thorns?"),
        (words("thorns", &["present", "absent"]), states(&[1]), "Are there no thorns?"),
        (words("feel", &["like paper", "like card"]), states(&[0]), "Does it feel like paper?"),
        (words("tail", &["with hooks", "bare"]), states(&[0]), "Does the tail have hooks?"),
        (
            shape(),
            states(&[0, 1, 2, 3]),
            "Is the shape one of these: round, oval, heart or kidney?",
        ),
    ] {
        assert_eq!(asked(character, Some("a twig with leaves"), yes), sentence);
    }
}

#[test]
fn only_a_table_about_leaves_has_leaf_edges() {
    assert_eq!(
        asked(words("edge", &["wavy", "flat"]), Some("a tray with water"), states(&[0])),
        "Is the edge wavy?"
    );
}

#[test]
fn yes_and_no_become_sentences() {
    for (name, sentence) in [
        ("spine at the tip", "Is there a spine at the tip?"),
        ("Spines on the edge", "Are there spines on the edge?"),
        ("eye stalk", "Is there an eye stalk?"),
        ("has hairs", "Does it have hairs?"),
        ("with hairs", "Does it have hairs?"),
        ("is toothed", "Is it toothed?"),
        ("can fold up", "Can it fold up?"),
        ("are in pairs", "Are they in pairs?"),
        ("hairy", "Is it hairy?"),
        ("evergreen", "Is it evergreen?"),
        ("white sap", "Is there white sap?"),
        ("two tails", "Are there two tails?"),
        ("Is the edge toothed?", "Is the edge toothed?"),
        ("a spine", "Is there a spine?"),
    ] {
        assert_eq!(asked(words(name, &["yes", "no"]), None, states(&[0])), sentence);
    }
    let spine = || words("spine at the tip", &["no", "yes"]);
    assert_eq!(asked(spine(), None, states(&[0])), "Is there no spine at the tip?");
    assert_eq!(asked(spine(), None, states(&[1])), "Is there a spine at the tip?");
}

#[test]
fn numbers_become_sentences() {
    let mm = Unit::Millimetres;
    let counts = |name: &str| Character::named(name, Scale::Counts);
    for (character, yes, sentence) in [
        (measure("stalk length", mm), at_least(22_500), "Is the leaf stalk 22.5 mm or longer?"),
        (measure("length of the blade", mm), at_least(40_000), "Is the blade 40 mm or longer?"),
        (measure("Leaf width (cm)", mm), at_least(40_000), "Is the leaf 40 mm or wider?"),
        (measure("length", mm), at_least(9_000), "Is it 9 mm or longer?"),
        (
            measure("shell weight", Unit::Grams),
            at_least(3_000),
            "Is the shell weight 3 g or more?",
        ),
        (
            measure("base angle", Unit::Degrees),
            at_least(90_000),
            "Is the base angle 90° or more?",
        ),
        (measure("wings", mm), at_least(12_000), "Are the wings 12 mm or more?"),
        (counts("number of leaflets"), at_least(5_000), "Does it have 5 or more leaflets?"),
        (counts("leaflets"), at_least(5_000), "Does it have 5 or more leaflets?"),
        (counts("Leaflet count"), at_least(5_000), "Does it have 5 or more leaflets?"),
        (measure("stalk length", mm), below(9_000), "Is the leaf stalk shorter than 9 mm?"),
        (counts("leaflets"), below(5_000), "Does it have fewer than 5 leaflets?"),
        (counts("pair of legs"), at_least(4_000), "Does it have 4 or more pairs of legs?"),
    ] {
        assert_eq!(asked(character, Some("one leaf"), yes), sentence);
    }
}

#[test]
fn a_persons_own_wording_comes_first() {
    let edge = || words("edge", &["toothed", "spiny", "smooth"]);
    let stalk = || measure("stalk length", Unit::Millimetres);
    for (character, yes, sentence) in [
        (
            worded("Is the leaf edge {}?", edge()),
            states(&[0, 1]),
            "Is the leaf edge toothed or spiny?",
        ),
        (worded("is the rim {}", edge()), states(&[2]), "Is the rim smooth?"),
        (
            worded("Is the stalk {}?", stalk()),
            at_least(22_500),
            "Is the stalk 22.5 mm or longer?",
        ),
        (
            worded("Is the length of the stalk {}?", stalk()),
            at_least(22_500),
            "Is the length of the stalk 22.5 mm or more?",
        ),
        (
            worded("Are there {} leaflets?", Character::named("leaflets", Scale::Counts)),
            at_least(5_000),
            "Are there 5 or more leaflets?",
        ),
        (
            worded("Does the tip prick?", words("spine", &["yes", "no"])),
            states(&[0]),
            "Does the tip prick?",
        ),
        (worded("Is the edge toothed?", edge()), states(&[0]), "Is the edge toothed?"),
    ] {
        assert_eq!(asked(character, None, yes), sentence);
    }
}

#[test]
fn a_wording_that_cannot_ask_for_this_is_left_aside() {
    let edge = words("edge", &["toothed", "smooth"]);
    let toothed = worded("Is the edge toothed?", edge);
    assert_eq!(asked(toothed, None, states(&[1])), "Is the edge smooth?");
    let stalk = worded("Is the stalk long?", measure("stalk length", Unit::Millimetres));
    assert_eq!(asked(stalk, None, at_least(9_000)), "Is the stalk 9 mm or longer?");
    let spine = worded("Does it prick?", words("spine", &["yes", "no"]));
    assert_eq!(asked(spine, None, states(&[1])), "Is there no spine?");
}

#[test]
fn a_question_opens_as_a_real_yes_or_no() {
    let shapes = [
        (words("leaf edge", &["a", "b"]), states(&[0])),
        (words("hairs", &["yes", "no"]), states(&[0])),
        (measure("stalk length", Unit::Unstated), at_least(4_000)),
        (Character::named("legs", Scale::Counts), at_least(6_000)),
    ];
    for (character, yes) in shapes {
        let sentence = asked(character, None, yes);
        let first = sentence.split(' ').next().unwrap();
        assert!(["Is", "Are", "Does", "Do", "Can"].contains(&first), "{sentence}");
        assert!(sentence.split(' ').count() <= 12, "{sentence}");
    }
}

#[test]
fn a_phrase_names_the_character_and_what_yes_means() {
    let ask = |yes| Ask { character: CharacterIx(0), yes };
    let edge = table(words("leaf edge", &["toothed", "spiny", "smooth"]), None);
    assert_eq!(phrase(&edge, &ask(states(&[0, 1]))), "leaf edge: toothed or spiny");
    let stalk = table(measure("stalk length", Unit::Millimetres), None);
    assert_eq!(phrase(&stalk, &ask(at_least(22_500))), "stalk length: 22.5 mm or more");
}

#[test]
fn only_empty_wordings_are_filled() {
    let matrix = table(words("leaf edge", &["toothed", "smooth", "wavy"]), None);
    let couplet = |wording, ask| Couplet {
        number: 1,
        back: None,
        wording,
        ask,
        yes: Destination::Missing,
        no: Destination::Missing,
        kept: false,
        line: None,
    };
    let ask = Some(Ask { character: CharacterIx(0), yes: states(&[0]) });
    let empty = || Wording::Question(String::new());
    let mut key = Key {
        couplets: vec![
            couplet(empty(), ask.clone()),
            couplet(Wording::Question("Ours?".into()), ask.clone()),
            couplet(empty(), None),
            couplet(Wording::Leads { yes: String::new(), no: "Edge bare".into() }, ask.clone()),
            couplet(Wording::Leads { yes: String::new(), no: String::new() }, ask),
        ],
    };
    put_words(&mut key, &matrix);
    let worded: Vec<_> = key.couplets.into_iter().map(|couplet| couplet.wording).collect();
    let leads = |yes: &str, no: &str| Wording::Leads { yes: yes.into(), no: no.into() };
    assert_eq!(
        worded,
        [
            Wording::Question("Is the leaf edge toothed?".into()),
            Wording::Question("Ours?".into()),
            empty(),
            leads("Leaf edge: toothed", "Edge bare"),
            leads("Leaf edge: toothed", "Leaf edge: smooth or wavy"),
        ]
    );
}
