//! Sentences as nine-year-olds and teachers write them, and what they must link to.

use spinney_model::{
    Cell, Character, Code, Matrix, OfLink, Quantity, Scale, Scene, Share, Taxon, Unit,
    Value as ModelValue, Wording,
};

use super::hedge::table;
use super::{LinkReport, Links, alone, link};

/// Questions and the line they must link to.
const LINKABLE: &[(&str, &str)] = &[
    ("Is the leaf in one piece?", "form = \"one piece\""),
    ("Is it all in one piece?", "form = one piece"),
    ("Is the leaf made of leaflets?", "form = feather or hand"),
    ("Is the leaf made up of little leaves?", "form = feather or hand"),
    ("Does it have leaflets?", "form = feather or hand"),
    ("Is the leaf divided into leaflets?", "form = feather or hand"),
    ("Is the leaf compound?", "form = feather or hand"),
    ("Is the leaf like a feather?", "form = feather"),
    ("Does the leaf look like a feather?", "form = feather"),
    ("Is the leaf pinnate?", "form = feather"),
    ("Is the leaf shaped like a hand?", "form = hand"),
    ("Does the leaf look like a hand with fingers?", "form = hand"),
    ("Is the leaf palmate?", "form = hand"),
    ("Are there more than 4 leaflets?", "number of leaflets >= 5"),
    ("Are there 5 or more leaflets?", "number of leaflets >= 5"),
    ("Has it got at least seven leaflets?", "number of leaflets >= 7"),
    ("Does it have fewer than 9 leaflets?", "number of leaflets < 9"),
    ("Are there 9 leaflets or more?", "number of leaflets >= 9"),
    ("Does the leaf have nine or more little leaves?", "number of leaflets >= 9"),
    ("Are there no more than five leaflets?", "number of leaflets < 6"),
    ("Does the leaf have 3 leaflets?", "number of leaflets < 4"),
    ("Is the leaf lobed?", "lobes = lobed"),
    ("Does the leaf have lobes?", "lobes = lobed"),
    ("Is the leaf without lobes?", "lobes = unlobed"),
    ("Is it unlobed?", "lobes = unlobed"),
    ("Has the leaf got no lobes?", "lobes = unlobed"),
    ("Is the leaf lobed or not?", "lobes = lobed"),
    ("Is the leaf edge jagged?", "edge = toothed"),
    ("Is the edge toothed?", "edge = toothed"),
    ("Has the edge got teeth?", "edge = toothed"),
    ("Is the margin serrated like a saw?", "edge = toothed"),
    ("Are there teeth all along the edge?", "edge = toothed"),
    ("Is the edge smooth?", "edge = smooth"),
    ("Is the edge of the leaf plain?", "edge = smooth"),
    ("Is the edge not toothed?", "edge = smooth or spiny"),
    ("Is the leaf edge spiny?", "edge = spiny"),
    ("Is the leaf prickly?", "edge = spiny"),
    ("Does the edge have prickles?", "edge = spiny"),
    ("Is the edge toothed or spiny?", "edge = toothed or spiny"),
    ("Is the blade longer than 6 cm?", "blade length >= 60 mm"),
    ("Is the leaf blade under 45 mm?", "blade length < 45 mm"),
    ("Is the stalk longer than 2 cm?", "stalk length >= 20 mm"),
    ("Is the leaf stalk at least 2,5 cm long?", "stalk length >= 25 mm"),
    ("Is the stalk under 3 cm?", "stalk length < 30 mm"),
    ("Is the petiole shorter than 18 mm?", "stalk length < 18 mm"),
    ("Is the leaf stalk 22 mm or more?", "stalk length >= 22 mm"),
    ("Is the stalk not longer than 2 cm?", "stalk length < 20 mm"),
    ("Are the leaves opposite each other on the twig?", "place on the twig = opposite"),
    ("Are the leaves in pairs?", "place on the twig = opposite"),
    ("Do the leaves grow in pairs along the twig?", "place on the twig = opposite"),
    ("Are the leaves alternate?", "place on the twig = alternate"),
    ("Do the leaves sit one by one on the twig?", "place on the twig = alternate"),
    ("Does the leaf feel like paper?", "feel = like paper"),
    ("Does it feel like thin card?", "feel = like thin card"),
    ("Does it feel like card?", "feel = like thin card"),
];

/// Questions that must not be linked by themselves, and the finding they get.
const NOT_LINKABLE: &[(&str, Code)] = &[
    ("Is it big?", Code::NotLinked),
    ("Is it hawthorn?", Code::NotLinked),
    ("Does it look like ivy?", Code::NotLinked),
    ("Is the stalk 4 or 5 cm?", Code::NotLinked),
    ("Is the stalk between 2 and 3 cm?", Code::NotLinked),
    ("Is the stalk long?", Code::NotLinked),
    ("Is the stalk exactly 2 cm?", Code::NotLinked),
    ("Are there 7 leaflets?", Code::NotLinked),
    ("Is it pretty?", Code::NotLinked),
    ("Does it smell nice?", Code::NotLinked),
    ("Are the berries red?", Code::NotLinked),
    ("Is the leaf lobed or unlobed?", Code::NotLinked),
    ("Is it as big as your hand?", Code::NotLinked),
    ("Does the leaf have big teeth?", Code::NotLinked),
    ("Is the leaf longer than 5 cm?", Code::LinkNotSure),
    ("Is it longer than 5 cm?", Code::LinkNotSure),
    ("Is the stalk longer than 2?", Code::NoUnit),
    ("Has the twig got thorns?", Code::NotLinked),
    ("Is the leaf smooth?", Code::LinkNotSure),
    ("Isn't the edge toothed?", Code::LinkNotSure),
    ("Is the edge not without teeth?", Code::LinkNotSure),
    ("Is the leaf lobed and toothed?", Code::LinkNotSure),
    ("Has it got 5 lobes?", Code::NotLinked),
    ("Is the bark smooth?", Code::NotLinked),
    ("", Code::NotLinked),
];

/// Pairs of leads, and the line they must link to; none: they must not be linked.
const LEADS: &[(&str, &str, Option<&str>)] = &[
    ("Leaf in one piece", "Leaf made of leaflets", Some("form = one piece")),
    ("Leaf made of leaflets", "Leaf not made of leaflets", Some("form = feather or hand")),
    ("Edge toothed", "Edge not toothed", Some("edge = toothed")),
    ("Edge toothed", "Edge smooth", None),
    ("Stalk 2 cm or longer", "Stalk shorter than 2 cm", Some("stalk length >= 20 mm")),
    ("Stalk 1 inch or longer", "Stalk shorter than 1 inch", Some("stalk length >= 25.4 mm")),
    ("Stalk 0.02 metres or longer", "Otherwise", Some("stalk length >= 20 mm")),
    ("More than 4 leaflets", "4 leaflets or fewer", Some("number of leaflets >= 5")),
    ("Leaves opposite", "Leaves alternate", Some("place on the twig = opposite")),
    ("Leaf lobed", "Otherwise", Some("lobes = lobed")),
    ("Leaf lobed, edge toothed", "Leaf without lobes, edge smooth", Some("lobes = lobed")),
    ("Leaf lobed", "Leaf like a feather", None),
    ("Leaf big", "Leaf small", None),
];

fn linked(wording: Wording) -> (Option<String>, LinkReport) {
    linked_in(&table(), wording)
}

fn linked_in(matrix: &Matrix, wording: Wording) -> (Option<String>, LinkReport) {
    let mut key = alone(wording);
    let report = link(&mut key, matrix, &Links::default());
    let ask = key.couplets[0].ask.as_ref();
    (ask.map(|ask| super::links_file::meaning(ask, matrix)), report)
}

#[test]
fn questions_link_right_but_for_one_that_is_asked_back_and_none_wrong() {
    // A leaf can prickle by its hairs as well: better asked than guessed, and no worse if linked.
    let may_be_asked_back = ["Is the leaf prickly?"];
    for (sentence, wanted) in LINKABLE {
        let (found, report) = linked(Wording::Question((*sentence).to_owned()));
        let wanted = wanted.replace('"', "");
        match found {
            Some(found) => assert_eq!(found, wanted, "{sentence}: {:?}", report.proposals),
            None => {
                let may = may_be_asked_back.contains(sentence);
                assert!(may, "not linked: {sentence}: {:?}", report.findings);
            }
        }
    }
}

#[test]
fn questions_as_the_characters_sheet_words_them_link_back() {
    let matrix = table();
    let (mut right, mut asked) = (0, 0);
    for character in matrix.characters() {
        let Scale::Words { states } = &character.scale else { continue };
        for state in states {
            let question = character.question.as_deref().expect("this table words them all");
            let (found, _) = linked(Wording::Question(question.replace("{}", state)));
            asked += 1;
            if let Some(found) = found {
                assert_eq!(found, format!("{} = {state}", character.name));
                right += 1;
            }
        }
    }
    assert_eq!((right, asked), (12, 12));
}

#[test]
fn what_cannot_be_linked_is_not_guessed() {
    for (sentence, code) in NOT_LINKABLE {
        let (found, report) = linked(Wording::Question((*sentence).to_owned()));
        assert_eq!(found, None, "{sentence}: {:?}", report.proposals);
        let codes: Vec<Code> = report.findings.iter().map(|finding| finding.code).collect();
        assert_eq!(codes, [*code], "{sentence}: {:?}", report.findings);
    }
}

#[test]
fn two_leads_must_say_the_opposite_of_each_other() {
    for (yes, no, wanted) in LEADS {
        let wording = Wording::Leads { yes: (*yes).to_owned(), no: (*no).to_owned() };
        let (found, report) = linked(wording);
        assert_eq!(found.as_deref(), *wanted, "{yes} / {no}: {report:?}");
    }
}

/// A pond tray, invented, without wordings: legs, shell, tail, body, body length, moves.
fn pond() -> Matrix {
    let words = |states: &[&str]| Scale::Words {
        states: states.iter().map(|state| (*state).to_owned()).collect(),
    };
    let millimetres = Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_whole(1) };
    let characters = vec![
        Character::named("legs", Scale::Counts),
        Character::named("shell", words(&["yes", "no"])),
        Character::named("tail", words(&["none", "one", "three"])),
        Character::named("body", words(&["long and thin", "round", "flat"])),
        Character::named("body length", millimetres),
        Character::named("moves", words(&["swims", "crawls", "wriggles"])),
        Character::named("hairs on the legs", words(&["present", "absent"])),
    ];
    let taxa: Vec<Taxon> =
        ["water hoglouse", "pond snail", "mayfly nymph"].map(Taxon::named).into();
    let counts = [14, 0, 6];
    let rows = counts.map(|legs| {
        let legs = ModelValue::Counts(vec![(legs, Share::from_integer(1))]);
        let mut row: Vec<Cell> = vec![legs.into()];
        row.extend((1..characters.len()).map(|_| Cell::from(ModelValue::Unknown)));
        row
    });
    let scene = Scene::default();
    Matrix::new(scene, taxa, characters, rows.into()).expect("the drawn table is a matrix")
}

#[test]
fn other_things_than_leaves_link_too() {
    let wanted: &[(&str, Option<&str>)] = &[
        ("Does it have more than 6 legs?", Some("legs >= 7")),
        ("Has it got legs?", Some("legs >= 1")),
        ("Does it have six legs?", None),
        ("Does it have 14 legs?", Some("legs >= 14")),
        ("Does it have a shell?", Some("shell = yes")),
        ("Has the animal no shell?", Some("shell = no")),
        ("Is it without a shell?", Some("shell = no")),
        ("Does it have three tails?", Some("tail = three")),
        ("Has it got one tail?", Some("tail = one")),
        ("Does it have a tail?", Some("tail = one or three")),
        ("Has it no tail?", Some("tail = none")),
        ("Are the legs yellow?", None),
        ("Are the legs hairy?", Some("\"hairs on the legs\" = present")),
        ("Is the body flat?", Some("body = flat")),
        ("Is its body long and thin?", Some("body = long and thin")),
        ("Is the body round?", Some("body = round")),
        ("Is the body longer than 1 cm?", Some("body length >= 10 mm")),
        ("Is it longer than your thumb?", None),
        ("Does it swim?", Some("moves = swims")),
        ("Does the animal crawl or wriggle?", Some("moves = crawls or wriggles")),
        ("Does it move by swimming?", Some("moves = swims")),
        ("Are there hairs on the legs?", Some("\"hairs on the legs\" = present")),
        ("Is it a pond snail?", None),
        ("Does it live in the mud?", None),
        ("Is it scary?", None),
    ];
    let matrix = pond();
    for (sentence, wanted) in wanted {
        let (found, report) = linked_in(&matrix, Wording::Question((*sentence).to_owned()));
        let wanted = wanted.map(|wanted| wanted.replace('"', ""));
        assert_eq!(found, wanted, "{sentence}: {report:?}");
    }
}

/// A table in German, with a column of yes and no.
fn german() -> Matrix {
    let words =
        |of: &[&str]| Scale::Words { states: of.iter().map(ToString::to_string).collect() };
    let characters = vec![
        Character::named("Blattrand", words(&["gesägt", "glatt"])),
        Character::named("Stiel", words(&["yes", "no"])),
    ];
    let unknown = || Cell::from(ModelValue::Unknown);
    let rows = vec![vec![unknown(), unknown()]];
    Matrix::new(Scene::default(), vec![Taxon::named("Hasel")], characters, rows).unwrap()
}

#[test]
fn a_sentence_in_the_tables_own_language_links_by_the_tables_own_words() {
    for (sentence, wanted) in [
        ("Ist der Blattrand gesägt?", Some("Blattrand = gesägt")),
        ("Ist der Blattrand glatt?", Some("Blattrand = glatt")),
        ("Hat es einen Stiel?", Some("Stiel = yes")),
        ("Ist der Blattrand nicht gesägt?", None),
        ("Ist der Blattrand kaum gesägt?", None),
        ("Ist der Stiel lang?", None),
        ("Ist das Blatt gesägt?", None),
    ] {
        let (found, _) = linked_in(&german(), Wording::Question(sentence.to_owned()));
        assert_eq!(found.as_deref(), wanted, "{sentence}");
    }
}

#[test]
fn what_a_yes_or_no_column_can_be_asked_is_said_so_that_it_can_be_followed() {
    let (_, report) = linked_in(&german(), Wording::Question("Ist der Stiel rau?".to_owned()));
    let fact = OfLink::MayAsk {
        question: 1,
        meanings: vec!["Stiel = yes".to_owned()],
        denied: false,
        unit: None,
        line: "question 1: Stiel = yes".to_owned(),
    };
    assert_eq!(report.findings[0].fact, fact.into());
    // A word is told as it was typed.
    let (_, report) = linked_in(&german(), Wording::Question("Ist der Stiel lang?".to_owned()));
    let word = "lang".to_owned();
    let fact = OfLink::NoMeasure { question: 1, word, example: None };
    assert_eq!(report.findings[0].fact, fact.into());
}

#[test]
fn numbers_are_read_as_they_stand_or_not_at_all() {
    let thousandths = |text: &str| super::numbers::decimal(text).map(Quantity::thousandths);
    for (text, wanted) in [
        ("5", Some(5_000)),
        ("0.5", Some(500)),
        ("2,5", Some(2_500)),
        ("2.500", Some(2_500)),
        ("2.505", Some(2_505)),
        ("2.5005", None),
        (".5", None),
        ("5.", None),
        ("-5", None),
        ("5.-1", None),
        ("+5", None),
        ("", None),
        ("1234567890", None),
    ] {
        assert_eq!(thousandths(text), wanted, "{text}");
    }
}

/// A state within another is asked for where it is said by itself.
#[test]
fn a_state_that_another_one_holds_is_named_by_itself() {
    let words = |states: &[&str]| Scale::Words {
        states: states.iter().map(ToString::to_string).collect(),
    };
    let edge = words(&["double-toothed", "toothed", "wavy"]);
    let characters = vec![Character::named("leaf edge", edge)];
    let rows = vec![vec![Cell::from(ModelValue::Unknown)]];
    let taxa = vec![Taxon::named("birch")];
    let matrix = Matrix::new(Scene::default(), taxa, characters, rows).unwrap();
    for (sentence, wanted) in [
        ("Is the leaf edge double-toothed?", "leaf edge = double-toothed"),
        (
            "Is the leaf edge double-toothed or toothed?",
            "leaf edge = double-toothed or toothed",
        ),
        ("Is the leaf edge double-toothed or wavy?", "leaf edge = double-toothed or wavy"),
    ] {
        let (found, _) = linked_in(&matrix, Wording::Question(sentence.to_owned()));
        let found = found.map(|found| found.replace('"', ""));
        assert_eq!(found.as_deref(), Some(wanted), "{sentence}");
    }
}

/// Of one and of several, short words too.
#[test]
fn one_and_several_are_of_one_stem() {
    for (one, several) in [
        ("toe", "toes"),
        ("bee", "bees"),
        ("eye", "eyes"),
        ("leg", "legs"),
        ("leaf", "leaves"),
        ("spine", "spines"),
        ("berry", "berries"),
    ] {
        assert_eq!(super::words::stem(one), super::words::stem(several), "{one}");
    }
}

#[test]
fn teeth_and_toothed_are_of_one_stem() {
    for word in ["tooth", "teeth", "toothed", "tooth's"] {
        assert_eq!(super::words::stem(word), "tooth", "{word}");
    }
    for sentence in
        ["Does the edge have teeth?", "Has the edge a tooth?", "Is the edge toothed?"]
    {
        let (found, report) = linked(Wording::Question(sentence.to_owned()));
        assert_eq!(found.as_deref(), Some("edge = toothed"), "{sentence}: {report:?}");
    }
}
