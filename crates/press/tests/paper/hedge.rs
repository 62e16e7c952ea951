//! An invented walk along a hedge: twelve kinds, a key drawn by hand, a few pictures.
//!
//! Everything here is made up for these tests, sentences and cautions too.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Answer, Ask, Asked, Cell, Character, CharacterIx, Couplet, Destination, End, Key, Matrix,
    Scale, Scene, SecondLooks, StateIx, Step, Taxon, TaxonIx, Value, Walk, Wording,
};
use spinney_press::{Booklet, Drawn, Letters, Picture, Sizes, Stamp};
use spinney_voice::Tongue;

/// Kinds, sentences, cautions.
const KINDS: [(&str, &str, &str); 12] = [
    ("hazel", "The blade is round, soft and hairy, with a short point.", ""),
    ("lime", "The blade is a lopsided heart on a long thin stalk.", ""),
    (
        "blackthorn",
        "Small leaves on a dark twig; side twigs end in a thorn.",
        "Long hard thorns. Hold the twig at its cut end.",
    ),
    ("dogwood", "Curved veins; torn gently, threads hold the halves together.", ""),
    ("hawthorn", "Small leaf, cut into lobes almost to the midrib.", "Thorns on the twig."),
    ("field maple", "Small leaf with rounded lobes; the stalk bleeds milk.", ""),
    (
        "plane",
        "Large leaf, hand-shaped, the bud hidden in the foot of the stalk.",
        "Fine hairs that make you cough. Do not rub the leaf near your face.",
    ),
    (
        "ivy",
        "Dark and shiny; pale veins spread from the stalk.",
        "The sap itches. Wash your hands.",
    ),
    (
        "holly",
        "Thick and shiny; the edge is pale, with or without spines.",
        "The spines prick.",
    ),
    ("dog rose", "Five to seven small leaflets, thorns bent like a beak.", "Hooked prickles."),
    (
        "rowan",
        "Nine to fifteen narrow leaflets, each toothed all round.",
        "Do not eat the berries.",
    ),
    (
        "bramble",
        "Three to five leaflets spread like a hand; prickles under the midrib too.",
        "Prickles on stem, stalk and leaf. Do not pull.",
    ),
];

/// Question, where yes leads, where no leads.
const COUPLETS: [(&str, &str, &str); 12] = [
    ("Is the leaf made of several leaflets?", "2", "4"),
    ("Do the leaflets spread like the fingers of a hand?", "bramble", "3"),
    ("Are there 9 or more leaflets?", "rowan", "dog rose"),
    ("Does the blade have lobes?", "5", "8"),
    ("Do the leaves stand in pairs on the twig?", "field maple", "6"),
    ("Is the blade 100 mm long or more?", "plane", "7"),
    ("Does the leaf feel like thin card?", "ivy", "hawthorn"),
    ("Is the leaf edge toothed all round?", "9", "11"),
    ("Is the leaf stalk 25 mm long or more?", "lime", "10"),
    ("Is the blade 50 mm long or more?", "hazel", "blackthorn"),
    ("Does the leaf feel like thin card?", "12", "dogwood"),
    ("Does the edge have spines that prick?", "holly", "ivy or holly"),
];

/// What a booklet borrows from.
pub(crate) struct Walked {
    pub(crate) matrix: Matrix,
    pub(crate) key: Key,
    pub(crate) walks: Vec<Walk>,
    pub(crate) pictures: BTreeMap<String, Picture>,
}

const NO_LOOKS: &SecondLooks = &SecondLooks::new();

impl Walked {
    pub(crate) fn booklet(&self, stamp: Stamp) -> Booklet<'_> {
        Booklet {
            matrix: &self.matrix,
            key: &self.key,
            walks: &self.walks,
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

pub(crate) fn hedge_walk() -> Walked {
    let taxa = KINDS.map(|(name, confirming, caution)| Taxon {
        confirming: Some(confirming.to_owned()),
        caution: (!caution.is_empty()).then(|| caution.to_owned()),
        picture: matches!(name, "hazel" | "plane" | "rowan").then(|| format!("{name}.png")),
        ..Taxon::named(name)
    });
    let matrix = matrix(taxa.to_vec(), scene());
    let key = key(&matrix, &COUPLETS);
    let walks = walks(&key);
    let drawn = |width, height| Picture::Png(leaf_png(width, height));
    let pictures = BTreeMap::from([
        ("hazel.png".to_owned(), drawn(300, 360)),
        ("rowan.png".to_owned(), drawn(480, 200)),
        ("plane.png".to_owned(), Picture::Png(b"not a picture".to_vec())),
    ]);
    Walked { matrix, key, walks, pictures }
}

pub(crate) fn scene() -> Scene {
    Scene {
        title: Some("Hedge and street walk".to_owned()),
        place: Some("Mill Lane".to_owned()),
        season: Some("early October".to_owned()),
        part: Some("a twig with leaves".to_owned()),
        caution: Some("Wash your hands before lunch.".to_owned()),
        before_you_go: vec!["Ask the land's owner.".to_owned(), "Look for ticks.".to_owned()],
        children: None,
        groups: None,
        second_language: None,
        second_questions: Vec::new(),
        version: Some("3".to_owned()),
    }
}

/// A matrix of one character, the feel, which is found by touching.
pub(crate) fn matrix(taxa: Vec<Taxon>, scene: Scene) -> Matrix {
    let states = vec!["like thin card".to_owned(), "like paper".to_owned()];
    let mut feel = Character::named("feel", Scale::Words { states });
    feel.by_touch = true;
    let rows = taxa.iter().map(|_| vec![Cell::from(Value::Unknown)]).collect();
    Matrix::new(scene, taxa, vec![feel], rows).unwrap()
}

pub(crate) fn key(matrix: &Matrix, lines: &[(&str, &str, &str)]) -> Key {
    let to = |words: &str| match words.parse::<u32>() {
        Ok(number) => Destination::Couplet(number),
        Err(_) => {
            let named = |name: &str| matrix.taxa().iter().position(|taxon| taxon.name == name);
            Destination::End(End::of(words.split(" or ").filter_map(named).map(TaxonIx)))
        }
    };
    let couplets = lines.iter().zip(1u32..).map(|((question, yes, no), number)| Couplet {
        number,
        back: None,
        wording: Wording::Question((*question).to_owned()),
        ask: question.contains("feel").then(|| Ask {
            character: CharacterIx(0),
            yes: Asked::States(BTreeSet::from([StateIx(0)])),
        }),
        yes: to(yes),
        no: to(no),
        kept: false,
        line: None,
    });
    Key { couplets: couplets.collect() }
}

/// Every way from the start to an end, for every kind the end names.
pub(crate) fn walks(key: &Key) -> Vec<Walk> {
    fn go(key: &Key, number: u32, steps: &mut Vec<Step>, found: &mut Vec<Walk>) {
        let Some(couplet) = key.couplets.iter().find(|c| c.number == number) else { return };
        for (answer, to) in [(Answer::Yes, &couplet.yes), (Answer::No, &couplet.no)] {
            steps.push(Step { couplet: number, answer });
            match to {
                Destination::Couplet(next) => go(key, *next, steps, found),
                Destination::End(end) => found.extend(end.taxa.iter().map(|taxon| Walk {
                    taxon: *taxon,
                    steps: steps.clone(),
                    arrived: true,
                })),
                Destination::Missing => {}
            }
            steps.pop();
        }
    }
    let mut found = Vec::new();
    go(key, 1, &mut Vec::new(), &mut found);
    found.sort_by_key(|walk| walk.taxon);
    found
}

/// A drawing of a leaf: an oval with a midrib, on clear ground.
fn leaf_png(width: u32, height: u32) -> Vec<u8> {
    let mut rgba = Vec::new();
    for y in 0..height {
        for x in 0..width {
            let (u, v) = (f64::from(x) / f64::from(width), f64::from(y) / f64::from(height));
            let out = ((u - 0.5) / 0.42).powi(2) + ((v - 0.5) / 0.46).powi(2);
            let rib = (u - 0.5).abs() < 0.012 && v > 0.04;
            let vein = ((v - 0.5 - (u - 0.5).abs()) * 8.0).fract().abs() < 0.06 && out < 1.0;
            let pixel = match () {
                () if rib || (0.94..1.0).contains(&out) => [31, 42, 36, 255],
                () if vein => [85, 97, 90, 255],
                () => [0, 0, 0, 0],
            };
            rgba.extend(pixel);
        }
    }
    let mut file = std::io::Cursor::new(Vec::new());
    let drawn = image::RgbaImage::from_raw(width, height, rgba).unwrap();
    drawn.write_to(&mut file, image::ImageFormat::Png).unwrap();
    file.into_inner()
}
