//! A second look against the table itself: on tables of fixed yes/no cells it is every other
//! column that parts the kinds of the heap in the same way, or the opposite way.

use std::collections::BTreeMap;

use spinney_build::{Budget, Search};
use spinney_fixtures::{drawn, seeded};
use spinney_model::{
    Asked, CharacterIx, Destination, Key, Matrix, StateIx, TaxonIx, Value, Wishes,
};

/// Which of these kinds have the state that yes asks for.
fn says_yes(matrix: &Matrix, kinds: &[TaxonIx], at: CharacterIx, yes: StateIx) -> Vec<bool> {
    let has = |kind: &TaxonIx| match &matrix.cell(*kind, at).value {
        Value::States(shares) => shares[0].0 == yes,
        other => panic!("a fixed cell was drawn, not {other:?}"),
    };
    kinds.iter().map(has).collect()
}

fn compare(matrix: &Matrix) -> usize {
    let mut search = Search::new(matrix, &Wishes::default());
    search.step(Budget::default().heaps);
    let key: Key = search.finish().key;
    let reasons = search.explain(&key, Budget::default());
    let mut found = 0;
    let mut open = vec![(1, matrix.taxon_indices().collect::<Vec<_>>())];
    while let Some((number, kinds)) = open.pop() {
        let couplet = key.couplets.iter().find(|couplet| couplet.number == number);
        let couplet = couplet.expect("every number has its couplet");
        let ask = couplet.ask.as_ref().expect("every couplet asks");
        let Asked::States(states) = &ask.yes else { panic!("only words were drawn") };
        let yes = *states.first().expect("a state is asked for");
        let answers = says_yes(matrix, &kinds, ask.character, yes);
        let mut expected: Vec<(CharacterIx, bool)> = Vec::new();
        for at in matrix.character_indices().filter(|at| *at != ask.character) {
            let same = says_yes(matrix, &kinds, at, StateIx(0)) == answers;
            let opposite = says_yes(matrix, &kinds, at, StateIx(1)) == answers;
            if same || opposite {
                expected.push((at, same));
            }
        }
        let reason = reasons.iter().find(|reason| reason.couplet == number);
        let also: Vec<(CharacterIx, bool)> = reason
            .expect("every couplet is explained")
            .also
            .iter()
            .map(|(other, turned)| {
                let first = other.yes == Asked::States([StateIx(0)].into());
                (other.character, first != *turned)
            })
            .collect();
        assert_eq!(also, expected, "question {number}");
        found += also.len();
        for (destination, side) in [(&couplet.yes, true), (&couplet.no, false)] {
            if let Destination::Couplet(number) = destination {
                let there = kinds.iter().zip(&answers).filter(|(_, yes)| **yes == side);
                open.push((*number, there.map(|(kind, _)| *kind).collect()));
            }
        }
    }
    found
}

#[test]
fn every_other_column_that_parts_alike_is_a_second_look() {
    let mut found = compare(&drawn::m1()) + compare(&drawn::m2());
    for seed in 0..60 {
        found += compare(&seeded::binary(seed, 9, 8, 0, 0));
    }
    assert!(found > 200, "only {found} second looks");
}

#[test]
fn it_is_the_same_with_and_without_what_the_alternatives_cost() {
    let mut found = 0;
    for seed in 1..=20 {
        let matrix = spinney_fixtures::seeded::plain(seed, 9, 7, 10, 5);
        let mut search = spinney_build::Search::new(&matrix, &spinney_model::Wishes::default());
        search.step(10_000);
        let key = search.finish().key;
        let alone = search.second_looks(&key);
        let reasons = search.explain(&key, spinney_build::Budget::default());
        let with = reasons.into_iter().filter(|reason| !reason.also.is_empty());
        let with: BTreeMap<_, _> = with.map(|reason| (reason.couplet, reason.also)).collect();
        found += with.len();
        assert_eq!(alone, with, "seed {seed}");
    }
    assert!(found > 10, "only {found} couplets have a second look");
}

#[test]
fn nobody_is_sent_to_touch_for_a_second_look() {
    let mut left_out = 0;
    for seed in 0..30 {
        let plain = seeded::binary(seed, 9, 8, 0, 0);
        let mut characters = plain.characters().to_vec();
        // Enough that are looked at stay for a key; a kind with a caution is always possible.
        for character in &mut characters[4..] {
            character.by_touch = true;
        }
        let mut taxa = plain.taxa().to_vec();
        for taxon in &mut taxa {
            taxon.caution = Some("It may hurt.".to_owned());
        }
        let rows = plain.taxon_indices().map(|taxon| {
            let cells = plain.character_indices();
            cells.map(|at| plain.cell(taxon, at).clone()).collect()
        });
        let rows = rows.collect();
        let matrix = Matrix::new(plain.scene().clone(), taxa, characters, rows)
            .expect("the cells fit their characters");
        let mut search = Search::new(&matrix, &Wishes::default());
        search.step(Budget::default().heaps);
        let key = search.finish().key;
        let looks = search.second_looks(&key);
        let reasons = search.explain(&key, Budget::default());
        let explained = reasons.iter().flat_map(|reason| &reason.also);
        for (ask, _) in looks.values().flatten().chain(explained) {
            assert!(!matrix.character(ask.character).by_touch, "seed {seed}: {ask:?}");
        }
        // The same key of the same cells has such looks where touch is not known of.
        let before = Search::new(&plain, &Wishes::default()).second_looks(&key);
        let touched = before.values().flatten();
        left_out += touched.filter(|(ask, _)| matrix.character(ask.character).by_touch).count();
    }
    assert!(left_out > 20, "only {left_out} second looks by touch were left out");
}
