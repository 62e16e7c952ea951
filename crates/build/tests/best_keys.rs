//! The best keys one after the other, against a list of every key.

use std::collections::BTreeMap;
use std::rc::Rc;

use spinney_build::{Budget, Search};
use spinney_fixtures::every_key::Tree;
use spinney_fixtures::forms::Forms;
use spinney_fixtures::{drawn, seeded};
use spinney_model::{
    AsGood, BestKeys, Character, CharacterIx, Difficulty, Instrument, Matrix, Scale, Scene,
    Share, StateIx, Taxon, Value, Wishes,
};

fn best(matrix: &Matrix, wanted: usize) -> BestKeys {
    let mut search = Search::new(matrix, &Wishes::default());
    search.best_keys(wanted, Budget::default())
}

fn effort(matrix: &Matrix, tree: &Tree) -> Share {
    let Tree::Couplet(question) = tree else { return Share::from_integer(0) };
    let character = matrix.character(question.character);
    let base = match character.difficulty {
        Difficulty::Easy => 1,
        Difficulty::Fair => 2,
        Difficulty::Hard => 3,
    };
    let steps = if character.instrument == Instrument::Eyes { base } else { 2 * base };
    let flow: Share = question.flows.values().sum();
    flow * Share::from_integer(steps)
        + effort(matrix, &question.yes)
        + effort(matrix, &question.no)
}

/// The nested heaps of a tree, as text: the forms in each.
fn nested(tree: &Tree) -> String {
    match tree {
        Tree::End(forms) => format!("{forms:?}"),
        Tree::Couplet(question) => {
            let (yes, no) = (nested(&question.yes), nested(&question.no));
            let (first, second) = if yes <= no { (yes, no) } else { (no, yes) };
            format!("{:?}[{first}|{second}]", question.forms)
        }
    }
}

#[test]
fn m1_has_102_best_keys() {
    let m1 = drawn::m1();
    let best = best(&m1, 1);
    let tried = Forms::of(&m1).try_every_key();
    let as_good = AsGood { keys: 102, nestings: tried.least_nestings };
    assert_eq!(best.as_good, Some(as_good));
    assert!(best.sure);
}

/// Keys are compared in tables of words alone: of numbers, the list counts thresholds that do
/// the same more than once.
#[test]
fn as_many_are_as_good_as_trying_every_key_finds() {
    let mut compared = 0;
    for seed in 0..3000 {
        let matrix = seeded::awkward(seed);
        let tried = Forms::of(&matrix).try_every_key();
        let as_good = best(&matrix, 0).as_good.expect("small tables are counted");
        assert_eq!(as_good.nestings, tried.least_nestings, "seed {seed}");
        let words = |scale: &Scale| matches!(scale, Scale::Words { .. });
        if matrix.characters().iter().all(|character| words(&character.scale)) {
            assert_eq!(as_good.keys, tried.least_keys, "seed {seed}");
            compared += 1;
        }
    }
    assert!(compared > 1000, "only {compared} of words alone");
}

/// A small table of words with four or five states, some in order, with kinds that vary.
fn many_states(seed: u64) -> Matrix {
    let mut rng = fastrand::Rng::with_seed(seed);
    let kinds = rng.usize(2..=5);
    let mut characters = Vec::new();
    for at in 0..rng.usize(1..=3) {
        let states = (0..rng.usize(3..=5)).map(|state| format!("s{state}")).collect();
        let mut character = Character::named(format!("c{at}"), Scale::Words { states });
        character.ordered = rng.u8(..3) == 0;
        characters.push(character);
    }
    let states = |character: &Character| match &character.scale {
        Scale::Words { states } => states.len(),
        _ => unreachable!("words alone were drawn"),
    };
    let rows = (0..kinds)
        .map(|_| {
            let cell = |character: &Character| {
                let all = states(character);
                let mut shown = std::collections::BTreeSet::from([rng.usize(..all)]);
                if rng.u8(..4) == 0 {
                    shown.insert(rng.usize(..all));
                }
                let share = Share::new(1, shown.len() as i128);
                Value::States(shown.into_iter().map(|at| (StateIx(at), share)).collect()).into()
            };
            characters.iter().map(cell).collect()
        })
        .collect();
    let taxa = (0..kinds).map(|kind| Taxon::named(format!("k{kind}"))).collect();
    Matrix::new(Scene::default(), taxa, characters, rows).expect("every cell fits")
}

/// The same table with the states of every character in the other direction.
fn reflected(matrix: &Matrix) -> Matrix {
    let mut characters = matrix.characters().to_vec();
    let mut last = Vec::new();
    for character in &mut characters {
        if let Scale::Words { states } = &mut character.scale {
            states.reverse();
            last.push(states.len() - 1);
        }
    }
    let rows = matrix
        .taxon_indices()
        .map(|taxon| {
            let cell = |at: CharacterIx| match &matrix.cell(taxon, at).value {
                Value::States(shares) => {
                    let mut other: Vec<(StateIx, Share)> = shares
                        .iter()
                        .map(|(state, share)| (StateIx(last[at.0] - state.0), *share))
                        .collect();
                    other.sort_unstable();
                    Value::States(other).into()
                }
                _ => unreachable!("words alone were drawn"),
            };
            matrix.character_indices().map(cell).collect()
        })
        .collect();
    Matrix::new(matrix.scene().clone(), matrix.taxa().to_vec(), characters, rows)
        .expect("only the order of the states was changed")
}

/// How many keys are as good does not depend on which side of a question is called yes, and is
/// what trying every key finds.
#[test]
fn as_many_are_as_good_in_a_reflected_table() {
    let mut compared = 0;
    for seed in 0..1500 {
        let matrix = many_states(seed);
        let tried = Forms::of(&matrix).try_every_key();
        let as_good = best(&matrix, 0).as_good.expect("small tables are counted");
        let expected = AsGood { keys: tried.least_keys, nestings: tried.least_nestings };
        assert_eq!(as_good, expected, "seed {seed}");
        let other = best(&reflected(&matrix), 0).as_good;
        assert_eq!(other, Some(as_good), "seed {seed}, reflected");
        compared += usize::from(as_good.keys > as_good.nestings);
    }
    assert!(compared > 500, "only {compared} tables with questions that part alike");
}

#[test]
fn the_next_best_keys_are_those_of_the_list() {
    let mut compared = 0;
    for seed in 0..1500 {
        let matrix = seeded::awkward(seed);
        let Some(keys) = Forms::of(&matrix).every_key(2000) else { continue };
        // Of keys with the same nested heaps the cheapest counts.
        let mut efforts: BTreeMap<String, Share> = BTreeMap::new();
        for key in keys.iter().map(Rc::as_ref) {
            let effort = effort(&matrix, key);
            let known = efforts.entry(nested(key)).or_insert(effort);
            *known = (*known).min(effort);
        }
        let mut listed: Vec<Share> = efforts.into_values().collect();
        listed.sort_unstable();
        let best = best(&matrix, 12);
        assert!(best.sure);
        let found: Vec<Share> = best.keys.iter().map(|(_, effort)| *effort).collect();
        listed.truncate(12);
        assert_eq!(found, listed, "seed {seed}");
        compared += usize::from(listed.len() > 2);
    }
    assert!(compared > 300, "only {compared} tables with more than two keys");
}
