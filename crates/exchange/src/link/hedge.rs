//! For tests: a small invented hedge table, drawn as a teacher would read it.

use std::collections::BTreeSet;

use spinney_model::{
    Cell, Character, CharacterIx, Governor, Matrix, OtherName, Quantity, Scale, Scene, Share,
    StateIx, Taxon, Unit, Value,
};

/// Form, leaflets, lobes, edge, blade length, stalk length, place on the twig, feel.
const TABLE: &str = "
hazel        | one piece | n/a   | unlobed         | toothed         | 60-120 | 5-15  | alternate | like paper
lime         | one piece | n/a   | unlobed         | toothed         | 50-110 | 30-60 | alternate | like paper
blackthorn   | one piece | n/a   | unlobed         | toothed         | 20-40  | 4-10  | alternate | like paper
dogwood      | one piece | n/a   | unlobed         | smooth          | 40-80  | 5-15  | opposite  | like paper
hawthorn     | one piece | n/a   | lobed           | toothed         | 20-50  | 5-20  | alternate | like paper
field maple  | one piece | n/a   | lobed           | ?               | 40-80  | 20-50 | opposite  | like paper
ivy          | one piece | n/a   | lobed, unlobed  | smooth          | 40-100 | 20-70 | alternate | like thin card
holly        | one piece | n/a   | unlobed         | spiny, smooth   | 50-90  | 5-12  | alternate | like thin card
dog rose     | feather   | 5,7   | unlobed         | toothed         | n/a    | ?     | alternate | like paper
rowan        | feather   | 13,15 | unlobed         | toothed         | n/a    | 20-40 | alternate | like paper
bramble      | hand      | 3,5   | unlobed         | toothed         | n/a    | 20-60 | alternate | like paper
wych elm     | one piece | n/a   | unlobed         | toothed         | 70-150 | 2-5   | alternate | like paper
";

const FORM: [&str; 3] = ["one piece", "feather", "hand"];
const LOBES: [&str; 2] = ["lobed", "unlobed"];
const EDGE: [&str; 3] = ["toothed", "smooth", "spiny"];
const PLACE: [&str; 2] = ["opposite", "alternate"];
const FEEL: [&str; 2] = ["like paper", "like thin card"];

/// The table, with question wordings as a characters sheet may give them.
pub(crate) fn table() -> Matrix {
    let mut taxa = Vec::new();
    let mut rows = Vec::new();
    let characters = characters();
    for line in TABLE.lines().filter(|line| !line.is_empty()) {
        let mut cells = line.split('|').map(str::trim);
        taxa.push(taxon(cells.next().expect("every line has a name")));
        rows.push(cells.zip(&characters).map(|(text, c)| cell(text, &c.scale)).collect());
    }
    let scene = Scene { title: Some("Hedge, invented".to_owned()), ..Scene::default() };
    Matrix::new(scene, taxa, characters, rows).expect("the drawn table is a matrix")
}

fn taxon(name: &str) -> Taxon {
    let mut taxon = Taxon::named(name);
    if name == "hazel" {
        taxon.scientific_name = Some("Corylus avellana".to_owned());
        taxon.other_names = vec![OtherName { language: None, name: "cobnut".to_owned() }];
    }
    taxon
}

fn characters() -> Vec<Character> {
    let words = |states: &[&str]| Scale::Words {
        states: states.iter().map(|state| (*state).to_owned()).collect(),
    };
    let length = || Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_whole(2) };
    let governed = |states: [usize; 1]| {
        let states: BTreeSet<StateIx> = states.into_iter().map(StateIx).collect();
        Some(Governor { character: CharacterIx(0), states })
    };
    let leaflets =
        Some(Governor { character: CharacterIx(0), states: [StateIx(1), StateIx(2)].into() });
    let named = |name: &str, scale, question: &str, governor| Character {
        question: (!question.is_empty()).then(|| question.to_owned()),
        governor,
        ..Character::named(name, scale)
    };
    vec![
        named("form", words(&FORM), "Is the leaf {}?", None),
        named("number of leaflets", Scale::Counts, "Are there {} leaflets?", leaflets),
        named("lobes", words(&LOBES), "Is the leaf {}?", None),
        named("edge", words(&EDGE), "Is the leaf edge {}?", None),
        named("blade length", length(), "Is the blade {} long?", governed([0])),
        named("stalk length", length(), "Is the leaf stalk {} long?", None),
        named("place on the twig", words(&PLACE), "Do the leaves sit {} on the twig?", None),
        named("feel", words(&FEEL), "Does the leaf feel {}?", None),
    ]
}

fn cell(text: &str, scale: &Scale) -> Cell {
    if text == "n/a" {
        return Value::DoesNotApply.into();
    }
    if text == "?" {
        return Value::Unknown.into();
    }
    let parts: Vec<&str> = text.split(", ").flat_map(|part| part.split(',')).collect();
    let share = Share::new(1, parts.len() as i128);
    match scale {
        Scale::Words { states } => {
            let at = |part: &&str| states.iter().position(|state| state == part);
            let mut found: Vec<_> = parts
                .iter()
                .map(|part| (StateIx(at(part).expect("a state of the column")), share))
                .collect();
            found.sort();
            Value::States(found).into()
        }
        Scale::Counts => {
            let count = |part: &&str| (part.parse().expect("a whole number"), share);
            Value::Counts(parts.iter().map(count).collect()).into()
        }
        Scale::Measure { .. } => {
            let (low, high) = text.split_once('-').expect("a range");
            let whole = |text: &str| Quantity::from_whole(text.parse().expect("a number"));
            Value::Range { low: whole(low), high: whole(high) }.into()
        }
    }
}
