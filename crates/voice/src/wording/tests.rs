//! A character and what is asked of it, and the sentence that comes of it.

use std::collections::BTreeSet;

use spinney_model::{
    Cell, Character, CharacterIx, Couplet, Destination, Quantity, Scene, StateIx, Taxon, Unit,
    Value, WrittenIn,
};

use super::*;

const ENGLISH: Tongue = Tongue::of_terminal();

pub(super) fn words(name: &str, states: &[&str]) -> Character {
    let states = states.iter().map(ToString::to_string).collect();
    Character::named(name, Scale::Words { states })
}

pub(super) fn measure(name: &str, unit: Unit) -> Character {
    Character::named(name, Scale::Measure { unit, gap: Quantity::ZERO })
}

pub(super) fn worded(template: &str, character: Character) -> Character {
    Character { question: Some(template.to_string()), ..character }
}

/// A table with one kind, on leaves if `part` says so.
pub(super) fn table(character: Character, part: Option<&str>) -> Matrix {
    let scene = Scene { part: part.map(str::to_string), ..Scene::default() };
    let row = vec![Cell::from(Value::Unknown)];
    Matrix::new(scene, vec![Taxon::named("it")], vec![character], vec![row]).unwrap()
}

pub(super) fn states(of: &[usize]) -> Asked {
    Asked::States(of.iter().map(|&ix| StateIx(ix)).collect::<BTreeSet<_>>())
}

pub(super) fn at_least(thousandths: i64) -> Asked {
    Asked::AtLeast(Quantity::from_thousandths(thousandths))
}

pub(super) fn below(thousandths: i64) -> Asked {
    Asked::Below(Quantity::from_thousandths(thousandths))
}

fn asked(character: Character, part: Option<&str>, yes: Asked) -> String {
    let ask = Ask { character: CharacterIx(0), yes };
    question(ENGLISH, &table(character, part), &ask)
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
        (words("Leaf shape", &["round", "oval"]), states(&[1]), "Is the leaf oval?"),
        (words("lobes", &["lobed", "unlobed"]), states(&[0]), "Is it lobed?"),
        (words("lobes", &["lobed", "unlobed"]), states(&[1]), "Is it unlobed?"),
        (words("lobes", &["3", "5", "7"]), states(&[0, 1]), "Does it have 3 or 5 lobes?"),
        (words("thorns", &["present", "absent"]), states(&[0]), "Does it have thorns?"),
        (words("thorns", &["present", "absent"]), states(&[1]), "Thorns: absent?"),
        (words("feel", &["like paper", "like card"]), states(&[0]), "Does it feel like paper?"),
        (words("tail", &["with hooks", "bare"]), states(&[0]), "Does the tail have hooks?"),
        (shape(), states(&[0, 1, 2, 3]), "Shape: is it round, oval, heart or kidney?"),
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
        ("spine at the tip", "Does it have a spine at the tip?"),
        ("Spines on the edge", "Does it have spines on the edge?"),
        ("eye stalk", "Does it have an eye stalk?"),
        ("has hairs", "Does it have hairs?"),
        ("with hairs", "Does it have hairs?"),
        ("is toothed", "Is it toothed?"),
        ("can fold up", "Can it fold up?"),
        ("are in pairs", "Are they in pairs?"),
        ("hairy", "Is it hairy?"),
        ("evergreen", "Is it evergreen?"),
        ("white sap", "Does it have white sap?"),
        ("two tails", "Does it have two tails?"),
        ("Is the edge toothed?", "Is the edge toothed?"),
        ("a spine", "Does it have a spine?"),
        ("leaves opposite", "Are the leaves opposite?"),
        ("lays eggs", "Lays eggs: yes?"),
        ("flies", "Flies: yes?"),
        ("hairs below", "Does it have hairs below?"),
    ] {
        assert_eq!(asked(words(name, &["yes", "no"]), None, states(&[0])), sentence);
    }
    let spine = || words("spine at the tip", &["no", "yes"]);
    assert_eq!(asked(spine(), None, states(&[0])), "Spine at the tip: no?");
    assert_eq!(asked(spine(), None, states(&[1])), "Does it have a spine at the tip?");
}

#[test]
fn a_column_of_inches_is_asked_in_inches() {
    let mut stalk = measure("stalk length", Unit::Millimetres);
    stalk.written_in = Some(WrittenIn::Inches);
    for (thousandths, wanted) in [
        (25_400, "Is the stalk 1 inch or longer?"),
        (63_500, "Is the stalk 2.5 inches or longer?"),
    ] {
        assert_eq!(asked(stalk.clone(), None, at_least(thousandths)), wanted);
    }
    stalk.written_in = Some(WrittenIn::Feet);
    let feet = asked(stalk, None, at_least(609_600));
    assert_eq!(feet, "Is the stalk 2 feet or longer?");
}

#[test]
fn numbers_become_sentences() {
    let mm = Unit::Millimetres;
    let counts = |name: &str| Character::named(name, Scale::Counts);
    for (character, yes, sentence) in [
        (measure("stalk length", mm), at_least(22_500), "Is the leaf stalk 22.5 mm or longer?"),
        (
            measure("length of the blade", mm),
            at_least(40_000),
            "Is the leaf blade 4 cm or longer?",
        ),
        (measure("Leaf width (cm)", mm), at_least(40_000), "Is the leaf 4 cm or wider?"),
        (measure("length", mm), at_least(9_000), "Is it 9 mm or longer?"),
        (
            measure("shell weight", Unit::Grams),
            at_least(3_000),
            "Shell weight: is it 3 g or more?",
        ),
        (
            measure("base angle", Unit::Degrees),
            at_least(90_000),
            "Base angle: is it 90° or more?",
        ),
        (measure("wings", mm), at_least(12_000), "Wings: is it 12 mm or more?"),
        (counts("number of leaflets"), at_least(5_000), "Does it have 5 or more leaflets?"),
        (counts("leaflets"), at_least(5_000), "Does it have 5 or more leaflets?"),
        (counts("Leaflet count"), at_least(5_000), "Leaflet count: 5 or more?"),
        (measure("max. length", mm), at_least(25_000), "Max. length: is it 2.5 cm or more?"),
        (counts("fly"), at_least(2_000), "Does it have 2 or more flies?"),
        (measure("stalk length", mm), at_least(35_000), "Is the leaf stalk 3.5 cm or longer?"),
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
    assert_eq!(asked(spine, None, states(&[1])), "Spine: no?");
}

#[test]
fn a_question_opens_as_a_real_yes_or_no() {
    let shapes = [
        (words("leaf edge", &["toothed", "b"]), states(&[0])),
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
    assert_eq!(phrase(ENGLISH, &edge, &ask(states(&[0, 1]))), "leaf edge: toothed or spiny");
    let stalk = table(measure("stalk length", Unit::Millimetres), None);
    assert_eq!(
        phrase(ENGLISH, &stalk, &ask(at_least(22_500))),
        "stalk length: 22.5 mm or more"
    );
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
    put_words(ENGLISH, &mut key, &matrix);
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

/// Two lengths and their ratio, one kind for each range of the ratio, in thousandths.
pub(super) fn two_lengths(one: &str, other: &str, ranges: &[(i64, i64)], gap: i64) -> Matrix {
    let unit = Unit::Ratio;
    let gap = Quantity::from_thousandths(gap);
    let mut ratio = Character::named("slimness", Scale::Measure { unit, gap });
    ratio.ratio_of = Some((CharacterIx(0), CharacterIx(1)));
    let mm = Unit::Millimetres;
    let characters = vec![measure(one, mm), measure(other, mm), ratio];
    let rows = ranges.iter().map(|(low, high)| {
        let [low, high] = [*low, *high].map(Quantity::from_thousandths);
        let unknown = || Cell::from(Value::Unknown);
        vec![unknown(), unknown(), Cell::from(Value::Range { low, high })]
    });
    let taxa = (0..ranges.len()).map(|at| Taxon::named(format!("kind {at}"))).collect();
    Matrix::new(Scene::default(), taxa, characters, rows.collect()).unwrap()
}

fn of_ratio(matrix: &Matrix, yes: Asked) -> String {
    question(ENGLISH, matrix, &Ask { character: CharacterIx(2), yes })
}

#[test]
fn ratios_are_put_as_a_child_would_read_them() {
    for (at, sentence) in [
        (500, "Is the stalk longer than half the blade?"),
        (1_000, "Is the stalk longer than the blade?"),
        (2_000, "Is the stalk more than twice as long as the blade?"),
        (333, "Is the stalk longer than a third of the blade?"),
        (250, "Is the stalk longer than a quarter of the blade?"),
        (750, "Is the stalk longer than three quarters of the blade?"),
        (667, "Is the stalk longer than two thirds of the blade?"),
        (1_500, "Is the stalk more than one and a half times as long as the blade?"),
        (3_000, "Is the stalk more than three times as long as the blade?"),
        (400, "Is the stalk more than 0.4 times as long as the blade?"),
        (2_345, "Is the stalk more than 2.345 times as long as the blade?"),
    ] {
        // The ranges are as near as they may be, so that no other number will do.
        let ranges = [(at - 150, at - 1), (at + 1, at + 90)];
        let matrix = two_lengths("stalk length", "blade length", &ranges, 0);
        assert_eq!(of_ratio(&matrix, at_least(at)), sentence);
    }
}

#[test]
fn a_threshold_is_rounded_in_words_only_where_no_kind_stands_between() {
    let slim = |ranges: &[(i64, i64)], gap, at| {
        of_ratio(&two_lengths("stalk length", "blade length", ranges, gap), at_least(at))
    };
    // Half is in the middle of nothing: 0.513 is, and half keeps the gap.
    assert_eq!(
        slim(&[(200, 390), (637, 900)], 100, 513),
        "Is the stalk longer than half the blade?"
    );
    // Half would be nearer to 0.45 than the gap; a tenth is no better, a hundredth is.
    assert_eq!(
        slim(&[(200, 450), (653, 900)], 100, 552),
        "Is the stalk more than 0.55 times as long as the blade?"
    );
    // A third kind lies between half and the threshold.
    assert_eq!(
        slim(&[(200, 300), (500, 560), (801, 900)], 100, 681),
        "Is the stalk longer than two thirds of the blade?"
    );
    assert_eq!(
        slim(&[(200, 300), (500, 580), (783, 900)], 100, 682),
        "Is the stalk more than 0.68 times as long as the blade?"
    );
    // A range across the threshold is not asked, and says nothing.
    assert_eq!(
        slim(&[(200, 390), (400, 700), (637, 900)], 100, 513),
        "Is the stalk longer than half the blade?"
    );
}

#[test]
fn a_kind_that_has_exactly_as_much_is_on_the_yes_side() {
    let touching = |at| {
        let ranges = [(at - 100, at - 1), (at, at + 100)];
        of_ratio(&two_lengths("stalk length", "blade length", &ranges, 0), at_least(at))
    };
    assert_eq!(touching(500), "Is the stalk half as long as the blade or longer?");
    assert_eq!(touching(1_000), "Is the stalk as long as the blade or longer?");
    assert_eq!(touching(2_000), "Is the stalk twice as long as the blade or longer?");
    assert_eq!(touching(437), "Is the stalk 0.437 times as long as the blade or longer?");
}

#[test]
fn ratios_of_other_dimensions_and_the_other_way_round() {
    let ranges = [(100, 300), (700, 900)];
    for (one, other, yes, sentence) in [
        (
            "stalk length",
            "blade length",
            below(500),
            "Is the stalk shorter than half the blade?",
        ),
        (
            "blade width",
            "blade length",
            at_least(500),
            "Is the blade wider than half its length?",
        ),
        (
            "lobes width",
            "lobes length",
            at_least(500),
            "Are the lobes wider than half their length?",
        ),
        (
            "stalk length",
            "blade width",
            at_least(500),
            "Is the stalk longer than half the width of the blade?",
        ),
        ("width", "length", at_least(500), "Is it wider than half its length?"),
        ("stalk (mm)", "blade (mm)", at_least(500), "Is the stalk longer than half the blade?"),
        (
            "leaf stalk length",
            "blade length",
            at_least(500),
            "Is the leaf stalk longer than half the leaf blade?",
        ),
    ] {
        assert_eq!(of_ratio(&two_lengths(one, other, &ranges, 100), yes), sentence);
    }
    let ranges = [(100, 800), (1_200, 1_900), (2_100, 3_000)];
    for (one, other, at, sentence) in [
        ("blade width", "blade length", 1_000, "Is the blade wider than it is long?"),
        (
            "blade width",
            "blade length",
            2_000,
            "Is the blade more than twice as wide as it is long?",
        ),
        ("stalk length", "blade width", 1_000, "Is the stalk longer than the blade is wide?"),
        (
            "stalk length",
            "blade width",
            2_000,
            "Is the stalk more than twice as long as the blade is wide?",
        ),
    ] {
        assert_eq!(of_ratio(&two_lengths(one, other, &ranges, 100), at_least(at)), sentence);
    }
    let matrix = two_lengths("stalk length", "blade length", &ranges, 100);
    let twice = |yes| of_ratio(&matrix, yes);
    assert_eq!(twice(below(2_000)), "Is the stalk less than twice as long as the blade?");
    assert_eq!(twice(below(1_000)), "Is the stalk shorter than the blade?");
}

#[test]
fn a_persons_own_wording_of_a_ratio_is_used() {
    for (template, at, sentence) in [
        ("Is its stalk {}?", 500, "Is its stalk longer than half the blade?"),
        (
            "Is its stalk {} as long as the blade?",
            500,
            "Is its stalk more than half as long as the blade?",
        ),
        (
            "Is its stalk {} as long as the blade?",
            2_000,
            "Is its stalk more than twice as long as the blade?",
        ),
        (
            "Is its stalk longer than {} the blade?",
            500,
            "Is its stalk longer than half the blade?",
        ),
        (
            "Is its stalk longer than {} the blade?",
            1_000,
            "Is its stalk longer than the blade?",
        ),
        (
            "Is its stalk longer than {} the blade?",
            333,
            "Is its stalk longer than a third of the blade?",
        ),
        (
            "Is its stalk longer than {} the blade?",
            2_000,
            "Is its stalk longer than twice the blade?",
        ),
        ("Is its stalk longer than {}?", 500, "Is its stalk longer than half the blade?"),
        ("Is its stalk longer than {}?", 1_000, "Is its stalk longer than the blade?"),
        ("How slim is it?", 500, "Is the stalk longer than half the blade?"),
    ] {
        let ranges = [(at - 150, at - 1), (at + 1, at + 90)];
        let mut matrix = two_lengths("stalk length", "blade length", &ranges, 0);
        let mut characters = matrix.characters().to_vec();
        characters[2].question = Some(template.to_owned());
        let rows = matrix.taxon_indices().map(|taxon| {
            matrix.character_indices().map(|at| matrix.cell(taxon, at).clone()).collect()
        });
        let (taxa, rows) = (matrix.taxa().to_vec(), rows.collect());
        matrix = Matrix::new(Scene::default(), taxa, characters, rows).unwrap();
        assert_eq!(of_ratio(&matrix, at_least(at)), sentence, "{template}");
    }
}

#[test]
fn ratios_in_lists_and_leads_are_compared_too() {
    let matrix = two_lengths("stalk length", "blade length", &[(100, 300), (700, 900)], 100);
    let ask = Ask { character: CharacterIx(2), yes: at_least(500) };
    assert_eq!(phrase(ENGLISH, &matrix, &ask), "slimness: longer than half the blade");
    let (yes, no) = leads(ENGLISH, &matrix, &ask);
    assert_eq!(yes, "Slimness: longer than half the blade");
    assert_eq!(no, "Slimness: shorter than half the blade");
}

#[test]
fn states_in_order_read_as_one_phrase() {
    let size = || Character {
        ordered: true,
        ..words("size", &["tiny", "small", "middling", "large"])
    };
    assert_eq!(asked(size(), None, states(&[0, 1])), "Is it tiny or small?");
    let own = worded("Is the leaf {}?", size());
    assert_eq!(asked(own, None, states(&[2, 3])), "Is the leaf middling or large?");
    let edge = || words("edge", &["smooth", "toothed", "wavy", "spiny", "lobed", "cut"]);
    assert_eq!(asked(edge(), None, states(&[1, 2, 4])), "Is the edge toothed, wavy or lobed?");
}

#[test]
fn a_question_is_turned_into_what_should_be_so() {
    for (character, yes, said) in [
        (words("shiny", &["yes", "no"]), states(&[0]), Some("it should be shiny")),
        (words("thorns", &["yes", "no"]), states(&[0]), Some("it should have thorns")),
        (
            words("edge", &["toothed", "smooth"]),
            states(&[0]),
            Some("the edge should be toothed"),
        ),
        (
            worded(
                "Are the leaves {} on the twig?",
                words("place", &["opposite", "alternate"]),
            ),
            states(&[0]),
            Some("the leaves should be opposite on the twig"),
        ),
        (
            measure("edge length", Unit::Millimetres),
            at_least(40_000),
            Some("the edge should be 4 cm or longer"),
        ),
        (measure("edge length", Unit::Millimetres), below(40_000), None),
        (words("Rand", &["glatt", "gezähnt"]), states(&[1]), None),
        (words("leaf feels", &["rough", "soft"]), states(&[1]), None),
    ] {
        let matrix = table(character, None);
        let ask = Ask { character: CharacterIx(0), yes };
        let question = question(ENGLISH, &matrix, &ask);
        let found = should(&matrix, &ask, &question);
        let found = found.map(|(subject, verb)| format!("{subject} should {verb}"));
        assert_eq!(found.as_deref(), said, "{question}");
    }
}

#[test]
fn headings_that_went_wrong_once_are_plain_or_right() {
    for (name, state, sentence) in [
        ("how it moves", "by crawling", "Does it move by crawling?"),
        ("movement", "crawls", "Movement: crawls?"),
        ("moves", "swims", "Moves: swims?"),
        ("smell", "none", "Smell: none?"),
        ("feelers", "longer than the body", "Feelers: longer than the body?"),
        ("fruits", "berries", "Fruits: berries?"),
        ("twig end", "one bud", "Twig end: is it one bud?"),
        ("form", "U-shaped", "Is it U-shaped?"),
    ] {
        let column = words(name, &[state, "smooth"]);
        assert_eq!(asked(column, None, states(&[0])), sentence);
    }
}

/// One sentence for several states fits each of them, or the plain form is used.
#[test]
fn one_sentence_for_several_states_fits_each_of_them() {
    for (name, of, yes, sentence) in [
        ("fruit", ["a nut", "a cone", "none"], &[0, 1][..], "Is the fruit a nut or a cone?"),
        ("fruit", ["a nut", "the cone", "none"], &[0, 1], "Fruit: is it a nut or the cone?"),
        (
            "leaflets",
            ["two pairs", "three pairs", "none"],
            &[0, 1],
            "Does it have two pairs or three pairs of leaflets?",
        ),
        ("leaflets", ["two pairs", "three", "none"], &[0, 1], "Leaflets: two pairs or three?"),
        ("thorn", ["1", "2", "3"], &[0], "Does it have 1 thorn?"),
        ("thorn", ["1", "2", "3"], &[1], "Does it have 2 thorns?"),
    ] {
        assert_eq!(asked(words(name, &of), None, states(yes)), sentence);
    }
}

#[test]
fn a_table_in_no_known_language_is_asked_in_its_own_words() {
    let column = words("lehden reuna", &["sileä", "hampainen"]);
    assert_eq!(asked(column, None, states(&[1])), "Lehden reuna: hampainen?");
    let thorns = words("Dornen", &["yes", "no"]);
    assert_eq!(asked(thorns, None, states(&[0])), "Dornen: ja?");
    let german = words("Rand", &["glatt", "gezähnt", "gesägt"]);
    assert_eq!(asked(german, None, states(&[1, 2])), "Rand: gezähnt oder gesägt?");
}

#[test]
fn a_table_is_about_leaves_where_it_names_them_or_their_edges() {
    let table = |title: &str, headings: &[(&str, &[&str])]| {
        let characters: Vec<_> =
            headings.iter().map(|(name, states)| words(name, states)).collect();
        let row = characters.iter().map(|_| Cell::from(Value::Unknown)).collect();
        let scene = Scene { title: Some(title.to_owned()), ..Scene::default() };
        Matrix::new(scene, vec![Taxon::named("it")], characters, vec![row]).unwrap()
    };
    let bare: &[&str] = &["one", "two"];
    for (title, headings, leaves) in [
        ("Hedge", &[("leaf edge", bare), ("fruit", bare)][..], true),
        ("Hedge", &[("edge", &["toothed", "smooth"]), ("fruit", bare)], true),
        ("Leaves of our street", &[("feel", bare)], true),
        ("Hedge", &[("place on the twig", bare)], true),
        ("Pond", &[("number of legs", bare), ("gills like a leaf", bare)], false),
        ("Pond leaves", &[("legs", bare), ("lives on leaves", bare)], false),
        ("Leaf litter", &[("colour", bare)], false),
        ("Seeds", &[("wings", bare), ("colour", bare)], false),
        ("Winter twigs", &[("twig end", bare), ("buds", bare), ("leaf scar", bare)], false),
        ("Pasta", &[("edge", &["wavy", "smooth"]), ("hole", bare)], false),
    ] {
        assert_eq!(about_leaves(&table(title, headings), []), leaves, "{title}: {headings:?}");
    }
    // A key in people's own words, whose table has no column for it.
    let acorns = table("Oaks", &[("acorn", bare)]);
    assert!(!about_leaves(&acorns, ["Is it small?"]));
    assert!(about_leaves(&acorns, ["Are the leaves lobed?"]));
    assert!(!about_leaves(&acorns, ["Does it look like a leaf?"]));
}
