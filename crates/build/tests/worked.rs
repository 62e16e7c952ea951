//! Worked matrices and published figures. Source: `docs/TRADE.md`, "Worked tables M1 and M2"
//! (worked out there by exhaustive enumeration, not published); path lengths from Knuth, *The Art of Computer Programming* 3, 5.3.1 and 6.2.1 (from memory).

use spinney_build::{Budget, build};
use spinney_fixtures::drawn;
use spinney_fixtures::forms::Forms;
use spinney_model::{Destination, Difficulty, Goal, Matrix, Share, Wishes};

fn total(matrix: &Matrix) -> i128 {
    let built = build(matrix, &Wishes::default(), Budget::default());
    assert!(built.claim.optimal());
    assert!(built.claim.total.is_integer());
    built.claim.total.to_integer()
}

#[test]
fn m1_takes_34_and_102_of_its_8410_keys_reach_that() {
    let m1 = drawn::m1();
    assert_eq!(total(&m1), 34);
    let tried = Forms::of(&m1).try_every_key();
    assert_eq!((tried.keys, tried.least_keys), (8410, 102));
    assert_eq!(
        (tried.least, tried.greatest),
        (Share::from_integer(34), Share::from_integer(44))
    );
    assert_eq!(total(&drawn::weighted(&m1, &[3, 1, 2, 3, 1, 4, 2, 1, 2, 1])), 65);
}

#[test]
fn m1_with_costs_takes_51_by_78_keys() {
    let m1 = drawn::m1();
    let mut characters = m1.characters().to_vec();
    for (character, steps) in characters.iter_mut().zip([1, 2, 1, 2, 2, 2, 1]) {
        character.difficulty = if steps == 1 { Difficulty::Easy } else { Difficulty::Fair };
    }
    let dear = drawn::remade(&m1, m1.taxa().to_vec(), characters);
    assert_eq!(total(&dear), 51);
    assert_eq!(Forms::of(&dear).try_every_key().least_keys, 78);
}

#[test]
fn m2_takes_25_where_every_even_split_takes_26() {
    let m2 = drawn::m2();
    assert_eq!(total(&m2), 25);
    let greedy = Forms::of(&m2).greedy_even_splits();
    assert_eq!(greedy.into_iter().collect::<Vec<_>>(), [Share::from_integer(26)]);
}

#[test]
fn combs_and_balanced_keys_have_the_known_lengths() {
    for n in [4, 5, 6, 7, 8, 10, 12, 13, 16, 20] {
        let comb = (n as i128 - 1) * (n as i128 + 2) / 2;
        assert_eq!(total(&drawn::comb(n)), comb, "comb of {n}");
    }
    for n in [4, 8, 16, 32, 64] {
        assert_eq!(total(&drawn::digits(n)), n as i128 * i128::from(n.ilog2()));
    }
    for n in 2..=8_usize {
        let k = i128::from(n.ilog2());
        let n_ = n as i128;
        assert_eq!(total(&drawn::every_split(n)), n_ * k + 2 * (n_ - (1 << k)), "{n}");
    }
}

/// With every split to ask, a key of the weights of a Huffman code takes what the code takes.
#[test]
fn with_every_split_the_effort_is_huffmans() {
    let five = drawn::weighted(&drawn::every_split(5), &[4, 2, 2, 1, 1]);
    assert_eq!(total(&five), 22);
    let ten = drawn::weighted(&drawn::every_split(10), &[3, 1, 2, 3, 1, 4, 2, 1, 2, 1]);
    assert_eq!(total(&ten), 64);
}

/// Keys on n labelled kinds, left and right ignored: (2n − 3)!!. With every split there is one
/// nesting of heaps for each.
#[test]
fn every_split_has_as_many_nestings_as_there_are_trees() {
    for (n, trees) in [(3, 3), (4, 15), (5, 105), (6, 945), (8, 135_135)] {
        assert_eq!(Forms::of(&drawn::every_split(n)).try_every_key().nestings, trees);
    }
}

/// The mean share of finds that come out right, as `docs/TRADE.md` gives it for M1: 0.6903, and "lobed?" first. What is added up here are integer-rounded logarithms; the key they prefer
/// is the same, and its mean share is computed here from the key.
#[test]
fn m1_with_reliabilities_asks_for_lobes_first() {
    let m1 = drawn::m1();
    let right = [80, 85, 95, 85, 90, 90, 97];
    let mut characters = m1.characters().to_vec();
    for (character, right) in characters.iter_mut().zip(right) {
        character.read_right = Some(right);
    }
    let table = drawn::remade(&m1, m1.taxa().to_vec(), characters);
    let wishes = Wishes { goals: vec![Goal::MostRightEnds], ..Wishes::default() };
    let built = build(&table, &wishes, Budget::default());
    assert!(built.claim.optimal());
    let first = built.key.couplets[0].ask.as_ref().map(|ask| ask.character);
    assert_eq!(first.map(|at| table.character(at).name.as_str()), Some("L"));
    let mut mean = 0.0;
    let mut open = vec![(1, 1.0)];
    while let Some((number, share)) = open.pop() {
        let couplet = built.key.couplets.iter().find(|couplet| couplet.number == number);
        let couplet = couplet.expect("every number has its couplet");
        let ask = couplet.ask.as_ref().expect("every couplet asks");
        let share = share * f64::from(right[ask.character.0]) / 100.0;
        for destination in [&couplet.yes, &couplet.no] {
            match destination {
                Destination::Couplet(number) => open.push((*number, share)),
                _ => mean += share / 10.0,
            }
        }
    }
    assert!((mean - 0.6903).abs() < 0.00005, "{mean}");
}
