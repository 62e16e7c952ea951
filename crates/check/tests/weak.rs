//! Where a table is weak: worked tables, a theorem, and a second road that tries everything.

use std::collections::BTreeSet;

use spinney_check::{WeakSettings, weak};
use spinney_fixtures::{drawn, seeded};
use spinney_model::{CharacterIx, Fewest, Hope, Matrix, TaxonIx, Weak};

#[path = "weak/plainly.rs"]
mod plainly;

fn all_of(matrix: &Matrix) -> Weak {
    let settings = WeakSettings { cells_named: usize::MAX, ..WeakSettings::default() };
    weak(matrix, &settings)
}

fn names(matrix: &Matrix, taxa: [TaxonIx; 2]) -> String {
    taxa.map(|taxon| matrix.taxon(taxon).name.clone()).join("-")
}

/// The worked table M1 of `docs/TRADE.md`, counted by hand and by an exhaustive program.
#[test]
fn m1_needs_all_seven_characters_and_has_eight_fragile_pairs() {
    let matrix = drawn::m1();
    let found = all_of(&matrix);
    assert_eq!(found.distances, [0, 8, 8, 10, 10, 7, 2]);
    let fragile: Vec<String> = found
        .fragile
        .iter()
        .map(|pair| {
            format!("{} {}", names(&matrix, pair.taxa), matrix.character(pair.character).name)
        })
        .collect();
    assert_eq!(
        fragile,
        [
            "ash-rowan O",
            "ash-horse chestnut P",
            "rowan-hornbeam C",
            "sycamore-field maple T",
            "oak-beech L",
            "beech-hornbeam T",
            "beech-holly S",
            "hornbeam-lime H",
        ]
    );
    let seven: BTreeSet<CharacterIx> = (0..7).map(CharacterIx).collect();
    for fewest in [&found.once, &found.twice] {
        assert_eq!(fewest.sets, std::slice::from_ref(&seven));
        assert!(fewest.all && fewest.proved() && fewest.indispensable == seven);
    }
    assert!(found.alike.is_empty() && found.next.is_empty());
}

#[test]
fn a_kind_that_varies_is_alike_to_what_it_varied_from() {
    let matrix = drawn::yes_no(
        "        lobed spiny
         beech  0     0
         holly  0     v
         oak    1     0",
    );
    let found = all_of(&matrix);
    assert_eq!(found.distances, [1, 2]);
    assert_eq!(found.alike[0].hope, Hope::NewDifference);
    assert_eq!(names(&matrix, found.alike[0].taxa), "beech-holly");
    assert_eq!(found.once.sets, [BTreeSet::from([CharacterIx(0)])]);
}

#[test]
fn the_blank_cell_that_parts_most_comes_first() {
    let matrix = drawn::yes_no(
        "         a b c
         hazel    0 0 ?
         lime     0 0 1
         elm      0 0 1
         birch    0 1 1
         alder    1 ? 0",
    );
    let found = all_of(&matrix);
    let said: Vec<String> = found
        .next
        .iter()
        .map(|look| {
            let [parts, with, secures] = [&look.parts, &look.with_others, &look.secures]
                .map(|taxa| taxa.iter().map(|t| matrix.taxon(*t).name.as_str()).collect());
            let parts: Vec<&str> = parts;
            let (with, secures): (Vec<&str>, Vec<&str>) = (with, secures);
            format!(
                "{} of {}: {} / {} / {}",
                matrix.character(look.character).name,
                matrix.taxon(look.taxon).name,
                parts.join(" "),
                with.join(" "),
                secures.join(" ")
            )
        })
        .collect();
    assert_eq!(
        said,
        ["c of hazel: lime elm /  / birch alder", "b of alder:  /  / hazel"],
        "lime and elm need something new"
    );
    let hopes: Vec<Hope> = found.alike.iter().map(|alike| alike.hope).collect();
    assert_eq!(hopes, [Hope::OneBlank, Hope::OneBlank, Hope::NewDifference]);
}

#[test]
fn two_blanks_in_one_column_help_only_together() {
    let matrix = drawn::yes_no(
        "       a b
         hazel  0 ?
         lime   0 ?
         oak    1 0",
    );
    let found = all_of(&matrix);
    assert_eq!(found.alike[0].hope, Hope::SeveralBlanks);
    assert_eq!(found.next.len(), 2);
    for (look, other) in found.next.iter().zip([1, 0]) {
        assert_eq!(look.with_others, [TaxonIx(other)]);
        assert_eq!(look.secures, [TaxonIx(2)]);
    }
}

/// A column in which nobody has written anything parts nobody.
#[test]
fn an_empty_column_is_no_difference() {
    let matrix = drawn::yes_no("  a\n x ?\n y ?");
    assert_eq!(all_of(&matrix).distances, [1]);
    let mut characters = matrix.characters().to_vec();
    characters[0].scale = spinney_model::Scale::Words { states: Vec::new() };
    let empty = drawn::remade(&matrix, matrix.taxa().to_vec(), characters);
    let found = all_of(&empty);
    assert_eq!((found.distances, found.alike[0].hope), (vec![1], Hope::SeveralBlanks));
}

/// J. A. Bondy, *Induced subsets*, Journal of Combinatorial Theory B 12 (1972): among n
/// different rows, some n − 1 columns keep them all different.
#[test]
fn a_smallest_set_never_has_as_many_characters_as_there_are_kinds() {
    let mut rng = fastrand::Rng::with_seed(1972);
    let mut tight = 0;
    for _ in 0..400 {
        let (kinds, characters) = (rng.usize(2..=9), rng.usize(1..=14));
        let density = rng.u8(10..=50);
        let mut rows = BTreeSet::new();
        for _ in 0..kinds {
            let row: Vec<&str> = (0..characters)
                .map(|_| if rng.u8(..100) < density { "1" } else { "0" })
                .collect();
            rows.insert(row.join(" "));
        }
        let heading: Vec<String> = (0..characters).map(|at| format!("c{at}")).collect();
        let rows: Vec<String> = rows.into_iter().collect();
        let lines: Vec<String> =
            rows.iter().enumerate().map(|(at, row)| format!("k{at} {row}")).collect();
        let matrix = drawn::yes_no(&format!("{}\n{}", heading.join(" "), lines.join("\n")));
        let found = all_of(&matrix);
        assert!(found.alike.is_empty() && found.once.proved());
        assert!(found.once.best < rows.len(), "{} of {} rows", found.once.best, rows.len());
        tight += usize::from(found.once.best == rows.len() - 1);
        // And so many questions with two answers can tell no more apart.
        assert!(1 << found.once.best >= rows.len());
    }
    assert!(tight > 50, "the bound was reached only {tight} times");
}

#[test]
fn a_comb_reaches_the_bound_and_numbers_in_binary_reach_the_other() {
    let comb = all_of(&drawn::comb(12)).once;
    assert!(comb.best == 11 && comb.proved() && comb.all && comb.sets.len() == 12);
    assert!(comb.indispensable.is_empty());
    let digits = all_of(&drawn::digits(16)).once;
    assert!(digits.best == 4 && digits.indispensable.len() == 4);
}

fn same_as_all_sets(matrix: &Matrix, wanted: usize, found: &Fewest, name: &str) {
    let sets = plainly::sets_that_do(matrix, wanted);
    let size = sets.iter().map(|set| set.count_ones()).min().expect("all characters do it");
    let smallest: BTreeSet<BTreeSet<CharacterIx>> = sets
        .iter()
        .filter(|set| set.count_ones() == size)
        .map(|set| characters(*set))
        .collect();
    let in_all = sets.iter().fold(u32::MAX, |all, set| all & set);
    let in_all = in_all & plainly::everything(matrix);
    assert!(found.proved() && found.best == size as usize, "{name}: {found:?}, not {size}");
    let listed: BTreeSet<_> = found.sets.iter().cloned().collect();
    assert_eq!(listed.len(), found.sets.len(), "{name}: a set stands there twice");
    if found.all {
        assert_eq!(listed, smallest, "{name}, {wanted} wanted");
    } else {
        assert!(listed.len() == 20 && smallest.len() > 20, "{name}: not all, but {listed:?}");
        assert!(listed.is_subset(&smallest), "{name}");
    }
    assert_eq!(found.indispensable, characters(in_all), "{name}, {wanted} wanted");
}

fn characters(set: plainly::Set) -> BTreeSet<CharacterIx> {
    (0..32).filter(|at| set >> at & 1 == 1).map(CharacterIx).collect()
}

fn agrees(matrix: &Matrix, name: &str) -> Weak {
    let found = all_of(matrix);
    let everything = plainly::everything(matrix);
    let mut distances = Vec::new();
    for (one, other) in plainly::pairs(matrix) {
        let distance = plainly::distance(matrix, one, other, everything);
        distances.resize(distances.len().max(distance + 1), 0);
        distances[distance] += 1;
        let alike = found.alike.iter().any(|pair| pair.taxa == [one, other]);
        let fragile = found.fragile.iter().any(|pair| pair.taxa == [one, other]);
        assert_eq!(
            (alike, fragile),
            (distance == 0, distance == 1),
            "{name}: {one:?} {other:?}"
        );
    }
    assert_eq!(found.distances, distances, "{name}");
    same_as_all_sets(matrix, 1, &found.once, name);
    same_as_all_sets(matrix, 2, &found.twice, name);
    found
}

#[test]
fn awkward_tables_agree_with_all_sets_of_characters() {
    let mut several = 0;
    for seed in 0..300 {
        agrees(&seeded::awkward(seed), &format!("small {seed}"));
        let found = agrees(&seeded::awkward_wide(seed), &format!("wide {seed}"));
        several += usize::from(found.once.sets.len() > 1 && found.once.best > 2);
    }
    assert!(several > 50, "only {several} tables left a choice");
}

#[test]
fn larger_tables_agree_with_all_sets_of_characters() {
    let mut many = 0;
    for seed in 0..12 {
        agrees(&seeded::plain(seed, 9, 9, 10, 10), &format!("plain {seed}"));
        agrees(&seeded::skewed(seed, 8, 10, 15, 5), &format!("skewed {seed}"));
        let found = agrees(&seeded::binary(seed, 4, 10, 0, 5), &format!("binary {seed}"));
        many += usize::from(!found.once.all || !found.twice.all);
    }
    assert!(many > 0, "no table had more sets than are listed");
}

/// Every blank cell is filled in with everything, and the table looked at anew.
#[test]
fn blank_cells_do_what_is_said_of_them() {
    let (mut cells, mut parted, mut nothing, mut several) = (0, 0, 0, 0);
    for seed in 0..400 {
        let matrix = seeded::awkward_wide(seed);
        let found = all_of(&matrix);
        let all = plainly::everything(&matrix);
        let mut useful = 0;
        for (taxon, at) in matrix
            .taxon_indices()
            .flat_map(|taxon| matrix.character_indices().map(move |at| (taxon, at)))
            .filter(|(taxon, at)| plainly::blank(&matrix, *taxon, *at))
        {
            let filled = plainly::filled(&matrix, &[(taxon, at)]);
            let gains = |now: usize| -> Vec<TaxonIx> {
                let others = matrix.taxon_indices().filter(|other| *other != taxon);
                others
                    .filter(|other| plainly::distance(&matrix, taxon, *other, all) == now)
                    .filter(|other| {
                        filled
                            .iter()
                            .any(|one| plainly::distance(one, taxon, *other, all) > now)
                    })
                    .collect()
            };
            let (parts, secures) = (gains(0), gains(1));
            let look =
                found.next.iter().find(|look| (look.taxon, look.character) == (taxon, at));
            let none = Vec::new();
            let said = look.map_or((&none, &none), |look| (&look.parts, &look.secures));
            assert_eq!(said, (&parts, &secures), "seed {seed}, {taxon:?} {at:?}");
            useful += usize::from(look.is_some());
            cells += 1;
            parted += parts.len();
        }
        assert_eq!(useful, found.useful_blanks, "seed {seed}");
        for alike in &found.alike {
            let open: Vec<_> = alike
                .taxa
                .into_iter()
                .flat_map(|taxon| matrix.character_indices().map(move |at| (taxon, at)))
                .filter(|(taxon, at)| plainly::blank(&matrix, *taxon, *at))
                .collect();
            if alike.hope == Hope::OneBlank || open.len() > 5 {
                continue;
            }
            let [one, other] = alike.taxa;
            let could = plainly::filled(&matrix, &open)
                .iter()
                .any(|filled| plainly::distance(filled, one, other, all) > 0);
            match alike.hope {
                Hope::NewDifference => {
                    assert!(!could, "seed {seed}: {one:?} {other:?}");
                    nothing += 1;
                }
                _ => several += usize::from(could),
            }
        }
    }
    let counts = (cells, parted, nothing, several);
    assert!(cells > 1000 && parted > 100 && nothing > 100 && several >= 10, "{counts:?}");
}

#[test]
fn where_the_steps_run_out_both_ends_are_given() {
    let matrix = seeded::binary(3, 60, 40, 0, 0);
    let few = WeakSettings { steps: 200_000, ..WeakSettings::default() };
    let found = weak(&matrix, &few);
    for fewest in [&found.once, &found.twice] {
        assert!(!fewest.proved() && !fewest.all && fewest.at_least > 5, "{fewest:?}");
        assert_eq!(fewest.sets.len(), 1);
        assert_eq!(fewest.sets[0].len(), fewest.best);
    }
    assert_eq!(found, weak(&matrix, &few), "the same steps give the same answer");
    let none = WeakSettings { steps: 0, ..few };
    assert!(weak(&matrix, &none).once.at_least <= found.once.at_least);
}

#[test]
fn nothing_and_too_much_are_answered() {
    let one = drawn::yes_no(" a\n x 1");
    let found = all_of(&one);
    assert_eq!((found.pairs, found.distances.len(), found.once.best), (Some(0), 0, 0));
    assert_eq!(weak(&drawn::digits(1_501), &WeakSettings::default()).pairs, None);
}

/// More than 64 columns: no number is lost behind the first word of a machine.
#[test]
fn what_two_columns_far_to_the_right_tell_apart_is_found() {
    let heads: Vec<String> = (0..66).map(|at| format!("c{at}")).collect();
    let row = |name: &str, last: &str| format!("{name} {} {last}", ["0"; 64].join(" "));
    let rows = [row("ash", "0 0"), row("elm", "0 1"), row("oak", "1 0"), row("yew", "1 1")];
    let matrix = drawn::yes_no(&format!("{}\n{}", heads.join(" "), rows.join("\n")));
    let found = all_of(&matrix);
    assert_eq!(found.once.sets, [BTreeSet::from([CharacterIx(64), CharacterIx(65)])]);
    assert_eq!(found.distances, [0, 4, 2]);
}
