//! Huffman against the published worked values, and what a parted set is.

use super::*;

/// `docs/TRADE.md`, "Unequal weights": w = (.4,.2,.2,.1,.1) takes 2.2 questions; weights
/// (3,1,2,3,1,4,2,1,2,1) take 64 in all.
#[test]
fn huffman_gives_the_worked_values() {
    assert_eq!(huffman([1, 1, 2, 2, 4].into_iter()), 22);
    let mut weights = [3, 1, 2, 3, 1, 4, 2, 1, 2, 1];
    weights.sort_unstable();
    assert_eq!(huffman(weights.into_iter()), 64);
}

/// n·k + 2(n − 2^k) with k = ⌊log₂ n⌋, the least external path length (Knuth, vol. 3, 5.3.1;
/// from memory).
#[test]
fn equal_flows_take_the_least_path_length() {
    for n in 2..200i128 {
        let k = i128::from(n.ilog2());
        let flows: Vec<Effort> = vec![1; n as usize];
        assert_eq!(huffman(flows.into_iter()), n * k + 2 * (n - (1 << k)));
    }
}

#[test]
fn kinds_that_no_question_parts_count_once() {
    let set = |kinds: &[usize]| {
        let mut set = Set::none(4);
        kinds.iter().for_each(|kind| set.add(*kind));
        set
    };
    let parted = Parted::by(4, &[0, 1, 2, 3], 2, [(set(&[0, 1]), set(&[2, 3]))].into_iter());
    let mut kinds = vec![(1, 0), (1, 1), (1, 2), (1, 3)];
    assert_eq!(
        parted.least_steps(&mut kinds, &mut Splits::default()),
        (2, 8),
        "one of each side, of all four"
    );
}

/// A comb takes (n − 1)(n + 2) / 2 steps; splitting half off is Huffman's code again.
#[test]
fn splitting_one_off_at_a_time_is_a_comb() {
    let mut splits = Splits::default();
    for n in 2..60 {
        let comb = (n as Effort - 1) * (n as Effort + 2) / 2;
        assert_eq!(splits.least_steps(n, 1), comb);
        let flows: Vec<Effort> = vec![1; n];
        assert_eq!(splits.least_steps(n, n / 2), huffman(flows.into_iter()));
    }
}
