//! Sets that can be counted in the drawing, and the same answer as trying every set.

use spinney_check::{Apart, apart};
use spinney_fixtures::drawn;
use spinney_model::TaxonIx;

use super::{Short, look_alikes, never_together, share, share_anew};
use crate::history::tests::Dice;

fn all_parted(apart: &Apart, taxa: &[TaxonIx]) -> bool {
    taxa.iter()
        .enumerate()
        .all(|(at, one)| taxa[at + 1..].iter().all(|other| apart.by(*one, *other) > 0))
}

/// A table of yes, no and nobody knows, drawn at random.
fn any_table(dice: &mut Dice, kinds: usize, characters: usize) -> Apart {
    let mut drawing = "   ".to_owned();
    (0..characters).for_each(|at| drawing.push_str(&format!(" c{at}")));
    for kind in 0..kinds {
        drawing.push_str(&format!("\nk{kind}"));
        (0..characters).for_each(|_| drawing.push_str([" 0", " 1", " ?"][dice.below(3)]));
    }
    apart(&drawn::yes_no(&drawing)).expect("a small table")
}

/// The largest set in which every pair is parted, by trying all sets.
fn largest(apart: &Apart) -> usize {
    (0_u32..1 << apart.kinds())
        .map(|bits| {
            let taxa = (0..apart.kinds()).filter(|at| bits >> at & 1 == 1);
            taxa.map(TaxonIx).collect::<Vec<_>>()
        })
        .filter(|taxa| all_parted(apart, taxa))
        .map(|taxa| taxa.len())
        .max()
        .unwrap_or(0)
}

#[test]
fn look_alikes_come_together_and_nobody_is_left_over() {
    let table = drawn::yes_no(
        "         a b c d
         hazel    0 0 0 0
         lime     0 0 0 1
         oak      1 1 0 0
         maple    1 1 0 1
         ivy      1 0 1 1
         holly    1 0 1 0
         rowan    0 1 1 0
         rose     0 1 1 1",
    );
    let apart = apart(&table).expect("a small table");
    let sets = share(&apart, 2, 4, 0);
    for pair in [(0, 1), (2, 3), (4, 5), (6, 7)] {
        let with = |at: usize| sets.iter().position(|set| set.taxa.contains(&TaxonIx(at)));
        assert_eq!(with(pair.0), with(pair.1), "{pair:?} look alike");
        assert!(with(pair.0).is_some(), "everybody is in a set");
    }
    assert!(sets.iter().all(|set| set.short.is_none() && set.taxa.len() == 4));
    assert_eq!(look_alikes(&apart, &sets[0])[0].0, 1);
}

#[test]
fn what_the_table_cannot_part_never_shares_a_set() {
    let table = drawn::yes_no(
        "         a b
         hazel    0 0
         elm      0 0
         oak      1 0
         ash      1 0
         ivy      0 1",
    );
    let apart = apart(&table).expect("a small table");
    assert_eq!(never_together(&apart), [(TaxonIx(0), TaxonIx(1)), (TaxonIx(2), TaxonIx(3))]);
    for set in share(&apart, 3, 4, 0) {
        assert_eq!((set.taxa.len(), set.short), (3, Some(Short::NotParted)));
        assert!(all_parted(&apart, &set.taxa));
    }
}

#[test]
fn a_set_is_found_wherever_there_is_one() {
    let mut dice = Dice::new(3);
    let (mut whole, mut short) = (0, 0);
    for _ in 0..60 {
        let apart = any_table(&mut dice, 9, 4);
        let largest = largest(&apart);
        for set in share(&apart, 3, 5, 0) {
            assert!(all_parted(&apart, &set.taxa));
            assert_eq!(set.taxa.len(), largest.min(5));
            assert_eq!(set.short.is_none(), largest >= 5);
            whole += usize::from(set.short.is_none());
            short += usize::from(set.short.is_some());
        }
    }
    assert!(whole > 20 && short > 20, "{whole} whole, {short} short: the tables are too alike");
}

/// Ten groups of three that nothing parts: no set holds eleven kinds, but there are too many
/// to try them all. It is not said that there is none.
#[test]
fn a_set_that_was_not_looked_for_to_the_end_is_not_called_impossible() {
    let mut drawing = "   a b c d".to_owned();
    for kind in 0..30_u32 {
        let bit = |at: u32| (kind / 3) >> at & 1;
        drawing.push_str(&format!("\nk{kind} {} {} {} {}", bit(0), bit(1), bit(2), bit(3)));
    }
    let apart = apart(&drawn::yes_no(&drawing)).expect("a small table");
    let sets = share(&apart, 1, 11, 0);
    assert_eq!((sets[0].taxa.len(), sets[0].short), (10, Some(Short::NotFound)));
}

#[test]
fn kinds_are_used_evenly_where_all_are_parted() {
    let mut drawing = "   a b c d".to_owned();
    for kind in 0..10_u32 {
        let bit = |at: u32| kind >> at & 1;
        drawing.push_str(&format!("\nk{kind} {} {} {} {}", bit(0), bit(1), bit(2), bit(3)));
    }
    let apart = apart(&drawn::yes_no(&drawing)).expect("a small table");
    let mut used = [0; 10];
    share(&apart, 4, 6, 0)
        .iter()
        .flat_map(|set| &set.taxa)
        .for_each(|taxon| used[taxon.0] += 1);
    assert_eq!(used.iter().sum::<usize>(), 24);
    assert!(used.iter().all(|times| (2..=3).contains(times)), "{used:?}");
}

#[test]
fn nobody_can_be_shared_out_of_nothing() {
    let apart = apart(&drawn::yes_no("   a\nk0 0")).expect("a small table");
    assert_eq!(share(&apart, 2, 4, 0)[1].taxa, [TaxonIx(0)]);
}

#[test]
fn anew_is_not_the_same_again_as_long_as_there_is_another_way() {
    let mut drawing = "   a b c".to_owned();
    for kind in 0..8_u32 {
        let bit = |at: u32| kind >> at & 1;
        drawing.push_str(&format!("\nk{kind} {} {} {}", bit(0), bit(1), bit(2)));
    }
    let all = apart(&drawn::yes_no(&drawing)).expect("a small table");
    let times: Vec<_> = (0..3).map(|time| share_anew(&all, 2, 4, time)).collect();
    assert_ne!(times[0], times[1]);
    assert_ne!(times[1], times[2]);
    for sets in &times {
        assert!(sets.iter().all(|set| set.taxa.len() == 4 && all_parted(&all, &set.taxa)));
    }
    assert_eq!(times[0], share(&all, 2, 4, 0), "the first is the usual one");
    // Four kinds for a group of four: there is one way, and it comes again.
    let four = apart(&drawn::yes_no("   a b\nk0 0 0\nk1 0 1\nk2 1 0\nk3 1 1")).expect("small");
    assert_eq!(share_anew(&four, 1, 4, 0), share_anew(&four, 1, 4, 5));
}
