//! Laws of `docs/KEY.md` 12 on seeded tables, and sameness.

use std::collections::BTreeSet;

use spinney_build::{Budget, Built, Progress, Search, build};
use spinney_fixtures::{drawn, forms::Forms, seeded};
use spinney_model::{
    Ask, Asked, CharacterIx, Destination, Kept, Key, Matrix, Share, StateIx, TaxonIx, Wishes,
};

fn best(matrix: &Matrix) -> Built {
    build(matrix, &Wishes::default(), Budget::default())
}

/// The same table with its kinds and characters in another order.
fn shuffled(matrix: &Matrix, seed: u64) -> Matrix {
    let mut rng = fastrand::Rng::with_seed(seed);
    let mut kinds: Vec<TaxonIx> = matrix.taxon_indices().collect();
    let mut order: Vec<CharacterIx> = matrix.character_indices().collect();
    rng.shuffle(&mut kinds);
    rng.shuffle(&mut order);
    let new_place =
        |old: CharacterIx| order.iter().position(|at| *at == old).expect("all moved");
    let characters = order
        .iter()
        .map(|at| {
            let mut character = matrix.character(*at).clone();
            if let Some(governor) = &mut character.governor {
                governor.character = CharacterIx(new_place(governor.character));
            }
            character
        })
        .collect();
    let taxa = kinds.iter().map(|kind| matrix.taxon(*kind).clone()).collect();
    let rows = kinds
        .iter()
        .map(|kind| order.iter().map(|at| matrix.cell(*kind, *at).clone()).collect())
        .collect();
    Matrix::new(matrix.scene().clone(), taxa, characters, rows).expect("only moved")
}

/// The same table with one of its characters twice.
fn doubled(matrix: &Matrix, twice: CharacterIx) -> Matrix {
    let mut characters = matrix.characters().to_vec();
    let mut copy = matrix.character(twice).clone();
    copy.name.push_str(" again");
    characters.push(copy);
    let rows = matrix
        .taxon_indices()
        .map(|taxon| {
            let row = matrix.character_indices().map(|at| matrix.cell(taxon, at).clone());
            row.chain([matrix.cell(taxon, twice).clone()]).collect()
        })
        .collect();
    Matrix::new(matrix.scene().clone(), matrix.taxa().to_vec(), characters, rows)
        .expect("a copy fits as its original does")
}

#[test]
fn the_order_of_rows_and_columns_changes_no_effort() {
    for seed in 0..500 {
        let matrix = seeded::awkward(seed);
        let moved = shuffled(&matrix, seed);
        assert_eq!(best(&matrix).claim.total, best(&moved).claim.total, "seed {seed}");
    }
}

/// Only characters that are the same on every leaf: two varying copies would be independent
/// of each other and so not copies at all.
#[test]
fn a_fixed_character_twice_changes_nothing() {
    for seed in 0..200 {
        let matrix = seeded::binary(seed, 8, 6, 0, 0);
        let twice = doubled(&matrix, CharacterIx(seed as usize % 6));
        assert_eq!(best(&matrix).key, best(&twice).key, "seed {seed}");
    }
}

/// The kinds that come out together, for every end of a key.
fn ends(key: &Key) -> BTreeSet<Vec<TaxonIx>> {
    key.couplets
        .iter()
        .flat_map(|couplet| [&couplet.yes, &couplet.no])
        .filter_map(|destination| match destination {
            Destination::End(end) => Some(end.taxa.clone()),
            _ => None,
        })
        .collect()
}

#[test]
fn one_more_character_never_costs_more_while_the_same_pairs_stay_together() {
    let mut compared = 0;
    for seed in 0..400 {
        let larger = seeded::binary(seed, 7, 7, 0, 0);
        let rows = |take: usize| {
            larger
                .taxon_indices()
                .map(|taxon| {
                    (0..take).map(|at| larger.cell(taxon, CharacterIx(at)).clone()).collect()
                })
                .collect()
        };
        let smaller = Matrix::new(
            larger.scene().clone(),
            larger.taxa().to_vec(),
            larger.characters()[..6].to_vec(),
            rows(6),
        )
        .expect("a column less is still a table");
        let (with, without) = (best(&larger), best(&smaller));
        if ends(&with.key) == ends(&without.key) {
            compared += 1;
            assert!(with.claim.total <= without.claim.total, "seed {seed}");
        }
    }
    assert!(compared > 100, "only {compared} pairs of tables said anything");
}

#[test]
fn the_optimum_is_never_above_an_even_split() {
    let mut better = 0;
    for seed in 0..1000 {
        let matrix = seeded::awkward(seed);
        let greedy = Forms::of(&matrix).greedy_even_splits();
        let total = best(&matrix).claim.total;
        assert!(greedy.iter().all(|effort| total <= *effort), "seed {seed}");
        better += usize::from(greedy.iter().any(|effort| total < *effort));
    }
    assert!(better > 0, "no table shows that exact is worth it");
}

/// However early the search is stopped, the bound is below the optimum and the key above it.
#[test]
fn bound_and_best_close_in_on_the_optimum() {
    for seed in 0..60 {
        let matrix = seeded::skewed(seed, 16, 14, 10, 5);
        let optimum = build(&matrix, &Wishes::default(), Budget { heaps: 10_000_000 }).claim;
        assert!(optimum.optimal());
        for heaps in [0, 1, 5, 20, 100] {
            let claim = build(&matrix, &Wishes::default(), Budget { heaps }).claim;
            assert!(claim.lower_bound <= optimum.total, "seed {seed}, {heaps} heaps");
            assert!(claim.total >= optimum.total, "seed {seed}, {heaps} heaps");
            assert_eq!(claim.optimal(), claim.lower_bound == claim.total);
        }
    }
}

#[test]
fn stepping_gives_the_key_of_one_run() {
    let matrix = seeded::skewed(3, 14, 12, 10, 5);
    let mut search = Search::new(&matrix, &Wishes::default());
    let mut steps = 0;
    while let Progress::Working { best, lower_bound } = search.step(10) {
        assert!(best.is_none_or(|best| best >= lower_bound));
        steps += 1;
        assert!(steps < 100_000, "the search comes to an end");
    }
    assert_eq!(search.finish().key, best(&matrix).key);
}

#[test]
fn two_runs_give_the_same_key() {
    for seed in 0..50 {
        let matrix = seeded::skewed(seed, 12, 10, 10, 5);
        assert_eq!(best(&matrix), best(&matrix));
    }
}

/// Keeping a question costs what the best key with it at the top costs, tried one by one.
#[test]
fn the_price_of_a_kept_question_is_exact() {
    let m1 = drawn::m1();
    let free = best(&m1).claim.total;
    for at in m1.character_indices() {
        let yes = Asked::States(BTreeSet::from([StateIx(1)]));
        let ask = Ask { character: at, yes };
        let kept = Kept { ask: ask.clone(), yes: None, no: None };
        let built =
            build(&m1, &Wishes { kept: vec![kept], ..Wishes::default() }, Budget::default());
        assert_eq!(built.key.couplets[0].ask, Some(ask.clone()));
        assert!(built.key.couplets[0].kept);
        let price = built.claim.kept.expect("there was a wish");
        assert_eq!(price.without_wishes, free);
        assert!(price.refused.is_empty());
        let side = |state: usize| -> Share {
            let kinds = m1.taxon_indices().filter(|taxon| {
                matches!(&m1.cell(*taxon, at).value,
                    spinney_model::Value::States(shares) if shares[0].0 == StateIx(state))
            });
            let kinds: Vec<TaxonIx> = kinds.collect();
            let taxa = kinds.iter().map(|kind| m1.taxon(*kind).clone()).collect();
            let rows = kinds
                .iter()
                .map(|kind| m1.character_indices().map(|c| m1.cell(*kind, c).clone()).collect())
                .collect();
            let half = Matrix::new(m1.scene().clone(), taxa, m1.characters().to_vec(), rows);
            Forms::of(&half.expect("some of the rows")).try_every_key().least
        };
        assert_eq!(built.claim.total, Share::from_integer(10) + side(0) + side(1));
    }
}

#[test]
fn a_kept_question_that_cannot_be_asked_is_named() {
    let matrix = drawn::yes_no(
        "         leaflets toothed
         rowan    1        1
         hazel    -        1
         privet   -        0",
    );
    let yes = Asked::States(BTreeSet::from([StateIx(1)]));
    let ask = Ask { character: CharacterIx(0), yes };
    let kept = Kept { ask: ask.clone(), yes: None, no: None };
    let built =
        build(&matrix, &Wishes { kept: vec![kept], ..Wishes::default() }, Budget::default());
    let price = built.claim.kept.expect("there was a wish");
    assert_eq!(price.refused, [ask]);
    assert_eq!(
        built.key.couplets[0].ask.as_ref().map(|ask| ask.character),
        Some(CharacterIx(1))
    );
}

/// Every alternative's extra effort is what the best key with that question kept costs more.
#[test]
fn alternatives_cost_what_keeping_them_costs() {
    for matrix in [drawn::m1(), drawn::m2(), seeded::skewed(5, 9, 8, 10, 5)] {
        let mut search = Search::new(&matrix, &Wishes::default());
        search.step(u64::MAX);
        let built = search.finish();
        let reasons = search.explain(&built.key, Budget::default());
        assert_eq!(reasons.len(), built.key.couplets.len());
        assert_eq!(reasons[0].couplet, 1);
        assert!(!reasons[0].alternatives.is_empty());
        for alternative in &reasons[0].alternatives {
            assert!(alternative.exact);
            let kept = Kept { ask: alternative.ask.clone(), yes: None, no: None };
            let wishes = Wishes { kept: vec![kept], ..Wishes::default() };
            let with = build(&matrix, &wishes, Budget::default()).claim;
            assert_eq!(with.total - built.claim.total, alternative.extra);
        }
    }
}

/// A threshold that is no candidate may be kept: it cuts what is unknown in equal shares.
#[test]
fn a_kept_threshold_of_a_persons_own_is_asked() {
    let one = Share::from_integer(1);
    let scale = spinney_model::Scale::Measure {
        unit: spinney_model::Unit::Millimetres,
        gap: spinney_model::Quantity::from_whole(5),
    };
    let range = |low, high| spinney_model::Value::Range {
        low: spinney_model::Quantity::from_whole(low),
        high: spinney_model::Quantity::from_whole(high),
    };
    let cells = [range(10, 20), range(40, 50), spinney_model::Value::Unknown];
    let matrix = Matrix::new(
        spinney_model::Scene::default(),
        ["hazel", "lime", "rose"].map(spinney_model::Taxon::named).to_vec(),
        vec![spinney_model::Character::named("stalk length", scale)],
        cells.map(|value| vec![value.into()]).to_vec(),
    )
    .expect("three rows of one cell");
    let yes = Asked::AtLeast(spinney_model::Quantity::from_whole(22));
    let ask = Ask { character: CharacterIx(0), yes };
    let kept = Kept { ask: ask.clone(), yes: None, no: None };
    let built =
        build(&matrix, &Wishes { kept: vec![kept], ..Wishes::default() }, Budget::default());
    assert_eq!(built.key.couplets.len(), 1);
    assert_eq!(built.key.couplets[0].ask, Some(ask));
    // Three finds, one question with a ruler each.
    assert_eq!(built.claim.total, one * 6);
    assert_eq!(built.claim.kept.map(|kept| kept.without_wishes), Some(one * 6));
}

/// A step that is shorter than the way to where the last one ended still gets somewhere.
#[test]
fn the_smallest_steps_come_to_the_end() {
    for matrix in [drawn::m1(), drawn::m2(), drawn::comb(24), seeded::skewed(2, 10, 9, 10, 5)] {
        let mut search = Search::new(&matrix, &Wishes::default());
        let mut steps = 0;
        while search.step(1) != Progress::Done {
            steps += 1;
            assert!(steps < 20_000, "it goes round and round");
        }
        assert_eq!(search.finish().key, best(&matrix).key);
    }
}

/// 140 unknown cells in a row need larger shares than there are numbers: flows are rounded down,
/// the bound stays one, and the total makes up for what was lost. (One question, three kinds.)
#[test]
fn shares_beyond_exact_numbers_are_rounded_outwards() {
    let header: Vec<String> = (0..140).map(|at| format!("c{at}")).collect();
    let row = |name: &str, cell: &str| format!("{name} {}\n", vec![cell; 140].join(" "));
    let drawing = format!(
        "{}\n{}{}{}",
        header.join(" "),
        row("blank", "?"),
        row("ones", "1"),
        row("noughts", "0")
    );
    let built = best(&drawn::yes_no(&drawing));
    assert_eq!(built.claim.stopped, Some(spinney_model::Stopped::Overflow));
    let three = Share::from_integer(3);
    assert!(built.claim.lower_bound <= three && built.claim.total >= three);
    assert!(built.claim.total - built.claim.lower_bound < Share::new(1, 100_000));
    assert_eq!(built.key.couplets.len(), 1);
}

fn measured(ranges: &[Option<(i64, i64)>]) -> Matrix {
    use spinney_model::{Character, Quantity, Scale, Scene, Taxon, Unit, Value};
    let scale = Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_whole(5) };
    let cells = ranges.iter().map(|range| match range {
        Some((low, high)) => {
            let (low, high) = (Quantity::from_whole(*low), Quantity::from_whole(*high));
            vec![Value::Range { low, high }.into()]
        }
        None => vec![Value::Unknown.into()],
    });
    let taxa = (0..ranges.len()).map(|kind| Taxon::named(format!("kind {kind}"))).collect();
    let characters = vec![Character::named("stalk length", scale)];
    Matrix::new(Scene::default(), taxa, characters, cells.collect()).expect("ranges fit")
}

fn first(matrix: &Matrix, threshold: i64) -> Built {
    let yes = Asked::AtLeast(spinney_model::Quantity::from_whole(threshold));
    let ask = Ask { character: CharacterIx(0), yes };
    let kept = Kept { ask, yes: None, no: None };
    build(matrix, &Wishes { kept: vec![kept], ..Wishes::default() }, Budget::default())
}

/// A person's threshold may come nearer than the gap even where it is a candidate as well.
#[test]
fn the_gap_does_not_bind_a_person() {
    let matrix = measured(&[Some((10, 20)), Some((40, 50)), Some((28, 29))]);
    assert!(first(&matrix, 30).refused.is_empty());
}

/// A refused threshold leaves no trace in what unknown cells mean.
#[test]
fn a_refused_threshold_cuts_nothing() {
    let matrix = measured(&[Some((10, 20)), Some((40, 50)), Some((70, 80)), None]);
    let refused = first(&matrix, 45);
    assert_eq!(refused.refused[0].why, spinney_model::WhyNot::Blocked(TaxonIx(1)));
    assert_eq!(refused.claim.total, best(&matrix).claim.total);
}

#[test]
fn a_wish_that_fits_no_character_is_refused() {
    let m1 = drawn::m1();
    for (character, yes) in [
        (0, Asked::AtLeast(spinney_model::Quantity::from_whole(3))),
        (0, Asked::States(BTreeSet::from([StateIx(7)]))),
        (99, Asked::States(BTreeSet::from([StateIx(0)]))),
        // What no kind and what every kind could answer with yes.
        (0, Asked::States(BTreeSet::new())),
        (0, Asked::States(BTreeSet::from([StateIx(0), StateIx(1)]))),
    ] {
        let ask = Ask { character: CharacterIx(character), yes };
        let kept = Kept { ask, yes: None, no: None };
        let built =
            build(&m1, &Wishes { kept: vec![kept], ..Wishes::default() }, Budget::default());
        assert_eq!(built.refused[0].why, spinney_model::WhyNot::NoSuchState);
        assert_eq!(built.claim.total, Share::from_integer(34));
    }
}

/// A character that says the very same is an alternative at no cost.
#[test]
fn a_second_character_that_says_the_same_is_named() {
    let matrix = doubled(&drawn::m1(), CharacterIx(1));
    let mut search = Search::new(&matrix, &Wishes::default());
    search.step(u64::MAX);
    let built = search.finish();
    let reasons = search.explain(&built.key, Budget::default());
    let at = built.key.couplets.iter().position(|couplet| {
        couplet.ask.as_ref().is_some_and(|ask| ask.character == CharacterIx(1))
    });
    let reason = &reasons[at.expect("opposite is needed to part ash and rowan")];
    let same = reason.alternatives.iter().find(|a| a.ask.character == CharacterIx(7));
    assert_eq!(same.map(|a| (a.extra, a.exact)), Some((Share::from_integer(0), true)));
}
