//! A hedge and street walk in early October, 12 kinds, with a key drawn by hand.
//!
//! Invented for these tests: the trees are real, the cells and sentences are made up.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Ask, Asked, Cell, Character, CharacterIx, Couplet, Destination, End, InSecond, Key, Matrix,
    Quantity, Scale, Scene, SecondLooks, StateIx, Taxon, TaxonIx, Unit, Value, Wording,
};
use spinney_press::{Booklet, Drawn, Letters, Picture, Sizes, Stamp};
use spinney_voice::{Tongue, wording};

/// A booklet with everything in it that it borrows.
pub(crate) struct Hedge {
    pub(crate) matrix: Matrix,
    pub(crate) key: Key,
    pub(crate) pictures: BTreeMap<String, Picture>,
}

const NO_LOOKS: &SecondLooks = &SecondLooks::new();

impl Hedge {
    pub(crate) fn booklet(&self, stamp: Stamp) -> Booklet<'_> {
        Booklet {
            matrix: &self.matrix,
            key: &self.key,
            walks: &[],
            left_together: &[],
            second_looks: NO_LOOKS,
            stamp,
            date: Some("25 November 2026"),
            pictures: &self.pictures,
            drawn: Drawn::NOTHING,
            letters: Letters::Usual,
            sizes: Sizes::USUAL,
            tongue: Tongue::of_terminal(),
        }
    }
}

const KINDS: [(&str, Option<&str>, &str); 12] = [
    ("hazel", None, "The leaf is nearly round, with a soft hairy stalk."),
    ("lime", None, "The leaf is lopsided, like a heart with one big half."),
    ("blackthorn", THORNS, "The leaf is no longer than your thumb, on a black twig."),
    ("dogwood", None, "The side veins bend and run towards the tip."),
    ("hawthorn", THORNS, "The lobes are cut deep, nearly to the midrib."),
    ("field maple", None, "The stalk gives white sap when you break it."),
    ("plane", Some("The fine hairs make some people cough."), "Bark comes off in plates."),
    ("ivy", Some("The sap can make skin itch."), "It climbs with tiny roots along its stem."),
    ("holly", Some("The spines prick."), "The leaf is shiny and stiff as card."),
    ("dog rose", PRICKLES, "Under the leaf stalk there are hooked prickles."),
    ("rowan", None, "Each leaflet is toothed like a saw, all but the end at its foot."),
    ("bramble", PRICKLES, "The stem arches and has prickles all along it."),
];
const THORNS: Option<&str> = Some("It has long, hard thorns.");
const PRICKLES: Option<&str> = Some("It has sharp prickles.");

/// The smallest picture there is: one grey point.
const POINT: &[u8] = &[
    0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52, 0,
    0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0, 0x3a, 0x7e, 0x9b, 0x55, 0, 0, 0, 0x0a, 0x49, 0x44,
    0x41, 0x54, 0x78, 0x9c, 0x63, 0x68, 0, 0, 0, 0x82, 0, 0x81, 0x77, 0xcd, 0x72, 0xb6, 0, 0,
    0, 0, 0x49, 0x45, 0x4e, 0x44, 0xae, 0x42, 0x60, 0x82,
];

/// The walk with its key in the tool's own words.
pub(crate) fn hedge() -> Hedge {
    let matrix = table();
    let mut key = Key { couplets: couplets() };
    wording::put_words(Tongue::of_terminal(), &mut key, &matrix);
    let pictures = BTreeMap::from([("hazel.png".to_string(), Picture::Png(POINT.to_vec()))]);
    Hedge { matrix, key, pictures }
}

fn table() -> Matrix {
    let taxa: Vec<_> = KINDS.iter().map(|&kind| taxon(kind)).collect();
    let characters = vec![
        asked("form", "Is the leaf {}?", &["in one piece", "like a feather", "like a hand"]),
        asked("place on the twig", "Are the leaves {}?", &["opposite", "alternate"]),
        asked("lobes", "Is the leaf {}?", &["lobed", "unlobed"]),
        asked("edge", "Is the leaf edge {}?", &["toothed", "spiny", "smooth"]),
        Character {
            by_touch: true,
            ..asked("feel", "Does it feel {}?", &["like paper", "like card"])
        },
        asked("spine at the tip", "", &["yes", "no"]),
        length("blade length"),
        length("stalk length"),
        Character::named("number of leaflets", Scale::Counts),
    ];
    let row = || characters.iter().map(|_| Cell::from(Value::Unknown)).collect();
    let rows = taxa.iter().map(|_| row()).collect();
    let scene = Scene {
        title: Some("Hedge and street walk".into()),
        place: Some("Mill Lane".into()),
        season: Some("early October".into()),
        part: Some("a twig with leaves".into()),
        caution: Some("Nothing goes into a mouth. Wash your hands before lunch.".into()),
        before_you_go: vec!["Ask the land's owner.".into()],
        children: None,
        groups: None,
        second_language: None,
        second_questions: Vec::new(),
        version: Some("3".into()),
    };
    Matrix::new(scene, taxa, characters, rows).expect("rows that fit")
}

fn taxon((name, caution, confirming): (&str, Option<&str>, &str)) -> Taxon {
    Taxon {
        caution: caution.map(str::to_string),
        confirming: Some(confirming.to_string()),
        picture: Some(format!("{name}.png")),
        ..Taxon::named(name)
    }
}

fn asked(name: &str, question: &str, states: &[&str]) -> Character {
    let states = states.iter().map(ToString::to_string).collect();
    let question = Some(question.to_string()).filter(|text| !text.is_empty());
    Character { question, ..Character::named(name, Scale::Words { states }) }
}

fn length(name: &str) -> Character {
    Character::named(name, Scale::Measure { unit: Unit::Millimetres, gap: Quantity::ZERO })
}

fn couplets() -> Vec<Couplet> {
    let is = |states: &[usize]| Asked::States(states.iter().map(|&s| StateIx(s)).collect());
    let mm = |thousandths| Asked::AtLeast(Quantity::from_thousandths(thousandths));
    vec![
        couplet(1, 0, is(&[0]), to(2), to(11)),
        couplet(2, 1, is(&[0]), to(3), to(4)),
        couplet(3, 2, is(&[0]), end("field maple"), end("dogwood")),
        couplet(4, 2, is(&[0]), to(5), to(7)),
        couplet(5, 6, mm(80_000), end("plane"), to(6)),
        couplet(6, 3, is(&[0]), end("hawthorn"), end("ivy")),
        couplet(7, 4, is(&[1]), to(8), to(9)),
        couplet(8, 5, is(&[0]), end("holly"), end("ivy")),
        couplet(9, 6, mm(50_000), to(10), end("blackthorn")),
        couplet(10, 7, mm(22_500), end("lime"), end("hazel")),
        couplet(11, 0, is(&[1]), to(12), end("bramble")),
        couplet(12, 8, mm(9_000), end("rowan"), end("dog rose")),
    ]
}

pub(crate) fn couplet(
    number: u32,
    character: usize,
    yes_means: Asked,
    yes: Destination,
    no: Destination,
) -> Couplet {
    Couplet {
        number,
        back: None,
        wording: Wording::Question(String::new()),
        ask: Some(Ask { character: CharacterIx(character), yes: yes_means }),
        yes,
        no,
        kept: false,
        line: None,
    }
}

pub(crate) fn to(number: u32) -> Destination {
    Destination::Couplet(number)
}

fn end(name: &str) -> Destination {
    let ix = KINDS.iter().position(|(kind, ..)| *kind == name).expect("a kind of the walk");
    Destination::End(End::of([TaxonIx(ix)]))
}

/// Something typed to break out of the page wherever it stands.
pub(crate) const HOSTILE: &str = "</script><img src=x onerror=alert(1)>\"'&<!--\u{0}\u{1b}";

/// One question and two ends, hostile in every text.
pub(crate) fn hostile() -> Hedge {
    let hostile = || Some(HOSTILE.to_string());
    let taxa: Vec<_> = ["a", "b"]
        .map(|name| Taxon {
            caution: hostile(),
            confirming: hostile(),
            picture: hostile(),
            second_name: hostile(),
            ..Taxon::named(format!("{name}{HOSTILE}"))
        })
        .into();
    let states = vec![HOSTILE.to_string(), "other".to_string()];
    let mut character = Character::named(HOSTILE, Scale::Words { states });
    character.by_touch = true;
    character.second_question = Some(format!("{HOSTILE}{{}}"));
    character.second_states =
        vec![InSecond { text: HOSTILE.to_string(), second: HOSTILE.to_string() }];
    let rows = vec![vec![Cell::from(Value::Unknown)], vec![Cell::from(Value::Unknown)]];
    let scene = Scene {
        title: hostile(),
        place: hostile(),
        season: hostile(),
        part: hostile(),
        caution: hostile(),
        before_you_go: hostile().into_iter().collect(),
        children: None,
        groups: None,
        second_language: hostile(),
        second_questions: Vec::new(),
        version: hostile(),
    };
    let matrix = Matrix::new(scene, taxa, vec![character], rows).expect("rows that fit");
    let unknown = End { taxa: vec![TaxonIx(1)], unrecognised: vec![HOSTILE.to_string()] };
    let asked = Asked::States(BTreeSet::from([StateIx(0)]));
    let one = Destination::End(End::of([TaxonIx(0)]));
    let mut key = Key { couplets: vec![couplet(1, 0, asked, one, Destination::End(unknown))] };
    wording::put_words(Tongue::of_terminal(), &mut key, &matrix);
    let pictures = BTreeMap::from([(HOSTILE.to_string(), Picture::Png(POINT.to_vec()))]);
    Hedge { matrix, key, pictures }
}

/// A key broken in every way that a tree can be: a missing number, a repeated one, nothing
/// written, a circle, and leads instead of a question.
pub(crate) fn broken() -> Hedge {
    let mut walk = hedge();
    let couplets = &mut walk.key.couplets;
    couplets[2].yes = to(99);
    couplets[2].no = Destination::Missing;
    couplets[7].no = to(2);
    couplets[11].number = 11;
    couplets[8].wording =
        Wording::Leads { yes: "Blade longer than a hand".into(), no: "Blade shorter".into() };
    walk
}
