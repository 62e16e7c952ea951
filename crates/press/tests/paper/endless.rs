//! Every sheet ends: whatever the number of kinds, the depth of the key, the length of the words
//! and the size of the paper, each page takes something, and nothing stands in the margin.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Answer, Ask, Asked, Cell, Character, CharacterIx, Couplet, Destination, End, Key, Matrix,
    Quantity, Scale, Scene, Share, StateIx, Step, Taxon, TaxonIx, Unit, Value, Walk, Wording,
};
use spinney_press::sheets::{Printing, SHEETS};
use spinney_press::{
    Booklet, Drawn, LeafLength, Letters, Paper, Sizes, Stamp, Wall, scale_strip, today, try_out,
};
use spinney_voice::Tongue;

use crate::boxes::faults;
use crate::hedge::{self, Walked};
use crate::measured;
use crate::words_to_look_at::word;

/// A key to so many kinds, `deep` questions deep: kinds are split off one by one down to that
/// depth, and what is left is halved as long as it may be.
fn deep_key(kinds: usize, deep: usize, words: &str) -> Key {
    let mut couplets = Vec::new();
    let left = kinds.saturating_sub(1);
    for at in 0..left.min(deep) {
        let last = at + 1 == left.min(deep);
        let rest = End::of((at + 1..kinds).map(TaxonIx));
        let no = match last {
            true => Destination::End(rest),
            false => Destination::Couplet(at as u32 + 2),
        };
        couplets.push(Couplet {
            number: at as u32 + 1,
            back: None,
            wording: Wording::Question(format!("{words} {at}?")),
            ask: None,
            yes: Destination::End(End::of([TaxonIx(at)])),
            no,
            kept: false,
            line: None,
        });
    }
    Key { couplets }
}

/// So many ways of each kind: it varies, and each way is right.
fn ways(key: &Key, kinds: usize, many: usize) -> Vec<Walk> {
    let steps = |kind: usize| {
        let asked = key.couplets.iter().take(kind + 1);
        let step = |couplet: &Couplet| Step {
            couplet: couplet.number,
            answer: if couplet.number as usize == kind + 1 { Answer::Yes } else { Answer::No },
        };
        asked.map(step).collect::<Vec<_>>()
    };
    (0..kinds * many)
        .map(|at| at / many)
        .map(|kind| Walk { taxon: TaxonIx(kind), steps: steps(kind), arrived: true })
        .collect()
}

pub(crate) fn walked(kinds: usize, deep: usize, many: usize, letters: usize) -> Walked {
    let words = "rough hairs beneath ".repeat(letters.div_ceil(20));
    let words = words[..letters].trim().to_owned();
    let taxa = (0..kinds).map(|n| Taxon {
        caution: (n % 2 == 0).then(|| words.clone()),
        confirming: (n % 3 == 0).then(|| words.clone()),
        ..Taxon::named(format!("kind {n} {words}"))
    });
    let scene = Scene {
        title: Some(words.clone()),
        before_you_go: vec![words.clone(); 3],
        children: None,
        groups: None,
        second_language: None,
        second_questions: Vec::new(),
        ..Scene::default()
    };
    let matrix = hedge::matrix(taxa.collect(), scene);
    let key = deep_key(kinds, deep, &words);
    let walks = ways(&key, kinds, many);
    Walked { matrix, key, walks, pictures: BTreeMap::new() }
}

/// The same with measured leaves and an edge, and a key that asks for lengths now and then.
fn of_leaves(walked: Walked) -> Walked {
    let Walked { matrix, mut key, .. } = walked;
    let length = |name: &str| {
        let gap = Quantity::from_whole(1);
        Character::named(name, Scale::Measure { unit: Unit::Millimetres, gap })
    };
    let states = ["toothed", "smooth"].map(str::to_owned).to_vec();
    let edge = Character::named("edge of the leaf", Scale::Words { states });
    let mut characters = matrix.characters().to_vec();
    characters.extend([length("blade length"), length("stalk length"), edge]);
    let row = |kind: TaxonIx| {
        let at = kind.0 as i64;
        let range = |low: i64, high: i64| {
            let [low, high] = [low, high].map(Quantity::from_whole);
            Value::Range { low, high }
        };
        let edge = Value::States(vec![(StateIx(kind.0 % 2), Share::ONE)]);
        [Value::Unknown, range(8 * at + 5, 8 * at + 30), range(at + 1, at + 9), edge]
            .map(Cell::from)
            .to_vec()
    };
    let rows = matrix.taxon_indices().map(row).collect();
    let (scene, taxa) = (matrix.scene().clone(), matrix.taxa().to_vec());
    let matrix = Matrix::new(scene, taxa, characters, rows).unwrap();
    for couplet in key.couplets.iter_mut().step_by(3) {
        let yes = Asked::AtLeast(Quantity::from_whole(i64::from(couplet.number) * 8));
        couplet.ask = Some(Ask { character: CharacterIx(1), yes });
        couplet.kept = true;
    }
    if let Some(couplet) = key.couplets.get_mut(1) {
        couplet.wording = Wording::Question("Is the edge toothed?".to_owned());
    }
    Walked { matrix, key, ..walked }
}

#[test]
fn however_deep_a_key_is_its_answer_list_ends() {
    for deep in [1, 5, 20, 30, 36, 38, 40, 41, 42, 43, 44, 46, 50, 80] {
        let walked = walked(deep + 1, deep, 9, 10);
        let sheet = try_out::sheet(&walked.booklet(Stamp::None), Paper::A4);
        assert!(sheet.pages.len() < 20 + 2 * deep, "{} pages", sheet.pages.len());
        let words: String = sheet.pages.iter().map(|page| page.words()).collect();
        for kind in 0..=deep {
            assert!(words.contains(&format!("kind {kind} ")), "kind {kind} has a row");
        }
        assert!(
            words.contains("more ways: follow them in the key"),
            "what is left out is said"
        );
    }
}

#[test]
fn whatever_is_printed_ends_and_stays_out_of_the_margin() {
    let mut random = fastrand::Rng::with_seed(10);
    let kinds = [0, 1, 2, 7, 23, 60];
    let depths = [1, 9, 42, 59];
    let letters = [0, 1, 30, 150, 400];
    let (mut seen, mut printed) = (0, BTreeSet::new());
    for _ in 0..40 {
        let (kinds, deep) = (kinds[random.usize(..6)], depths[random.usize(..4)]);
        let (many, letters) = (random.usize(1..9), letters[random.usize(..5)]);
        let nothing = Drawn { word, ..Drawn::NOTHING };
        let (walked, drawn) = match random.bool() {
            true => {
                let leaves = of_leaves(walked(kinds, deep, many, letters));
                (leaves, Drawn { sizes: measured::sizes, ..nothing })
            }
            false => (walked(kinds, deep, many, letters), nothing),
        };
        let booklet = Booklet { drawn, ..walked.booklet(Stamp::Draft) };
        let paper = [Paper::A4, Paper::Letter, Paper::A3][random.usize(..3)];
        let letters_of = [Letters::Usual, Letters::Large][random.usize(..2)];
        let wall = [Wall::AsNeeded, Wall::A2, Wall::A1][random.usize(..3)];
        let places = ["", "2 cm", "9 cm", "20 cm"][random.usize(..4)];
        let sizes = Sizes { places: LeafLength::read(places), wall };
        let wished = Printing { paper, letters: letters_of, sizes, ..Printing::USUAL };
        let offered = SHEETS.iter().filter(|kind| {
            (kind.has_something)(&booklet) && kind.not_printed(&booklet, wished).is_none()
        });
        for kind in offered {
            let sheet = kind.printed(&booklet, wished);
            printed.insert(kind.name);
            // A kind takes at most a page in each list, and a question one in the key.
            let pages = sheet.pages.len();
            assert!(pages <= 40 + 6 * kinds, "{}: {pages} pages", kind.name);
            for page in &sheet.pages {
                let faults = faults(page);
                assert!(
                    faults.is_empty(),
                    "{}: {kinds} kinds, {deep} deep, {many} ways, {letters} letters, \
                     {letters_of:?}, {paper:?}, {sizes:?}: {faults:#?}",
                    kind.name
                );
                seen += 1;
            }
        }
    }
    assert!(seen > 2_000, "{seen} pages");
    let never: Vec<_> =
        SHEETS.iter().map(|kind| kind.name).filter(|name| !printed.contains(name)).collect();
    // These tables are about leaves, which have the scale card.
    assert_eq!(never, ["scale-strip"]);
    for paper in [Paper::A4, Paper::Letter] {
        let strip = scale_strip::alone(Tongue::of_terminal(), paper);
        assert!(strip.pages.iter().all(|page| faults(page).is_empty()));
    }
}

#[test]
fn a_thousand_kinds_are_printed() {
    let walked = walked(1000, 60, 1, 12);
    let sheet = today::sheet(&walked.booklet(Stamp::None), Paper::A4);
    assert!((100..400).contains(&sheet.pages.len()), "{} pages", sheet.pages.len());
    let words: String = sheet.pages.iter().map(|page| page.words()).collect();
    assert!(words.contains("kind 999"), "the last one is there");
}
