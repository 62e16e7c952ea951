//! Wishes and goals against a list of every key of small tables.
//!
//! The list comes from `fixtures::every_key`, which knows nothing of the search. Here each key is
//! measured by every goal, those that do not fulfil the wishes are struck out, and the best that
//! is left must be what the search claims.

use std::cmp::Ordering;
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use spinney_build::{Budget, Progress, Search, build};
use spinney_fixtures::every_key::{Question, Tree};
use spinney_fixtures::forms::{Forms, Single};
use spinney_fixtures::seeded;
use spinney_model::{
    Ask, Asked, Character, CharacterIx, Claim, Difficulty, Early, Goal, Instrument, Kept,
    Matrix, Scale, Scene, Season, SeenOn, Share, StateIx, Taxon, TaxonIx, Value, WhyNot, Wish,
    Wishes,
};

fn whole(number: usize) -> Share {
    Share::from_integer(number as i128)
}

fn couplets(tree: &Tree) -> Vec<&Question> {
    match tree {
        Tree::End(_) => Vec::new(),
        Tree::Couplet(question) => {
            let mut all = vec![question];
            all.extend(couplets(&question.yes));
            all.extend(couplets(&question.no));
            all
        }
    }
}

fn longest(tree: &Tree) -> usize {
    match tree {
        Tree::End(_) => 0,
        Tree::Couplet(question) => 1 + longest(&question.yes).max(longest(&question.no)),
    }
}

fn flow(question: &Question) -> Share {
    question.flows.values().sum()
}

fn steps(matrix: &Matrix, question: &Question) -> Share {
    let character = matrix.character(question.character);
    let base = match character.difficulty {
        Difficulty::Easy => 1,
        Difficulty::Fair => 2,
        Difficulty::Hard => 3,
    };
    whole(if character.instrument == Instrument::Eyes { base } else { 2 * base })
}

fn misread(matrix: &Matrix, question: &Question) -> Share {
    let character = matrix.character(question.character);
    let usual = character.read_right.unwrap_or(match character.difficulty {
        Difficulty::Easy => 95,
        Difficulty::Fair => 90,
        Difficulty::Hard => 80,
    });
    let of = |taxon: &TaxonIx| {
        let right = character.read_right_of.get(taxon).copied().unwrap_or(usual);
        let millionths = (-(f64::from(right) / 100.0).ln() * 1e6).round();
        whole(millionths as usize)
    };
    question.flows.iter().map(|(taxon, flow)| *flow * of(taxon)).sum()
}

fn words(matrix: &Matrix, question: &Question) -> BTreeSet<String> {
    let character = matrix.character(question.character);
    if !character.terms.is_empty() {
        return character.terms.clone();
    }
    let mut words = BTreeSet::from([character.name.clone()]);
    if let (Asked::States(asked), Scale::Words { states }) = (&question.asked, &character.scale)
        && !states.contains(&"yes".to_owned())
    {
        let named = named_as_asked(asked, states.len());
        let all = (0..states.len()).map(StateIx);
        words.extend(
            all.filter(|at| asked.contains(at) == named).map(|at| states[at.0].clone()),
        );
    }
    words
}

/// The most new words on one question, and how many a find meets, over all finds.
fn taught(matrix: &Matrix, tree: &Tree, met: &BTreeSet<String>) -> (usize, Share) {
    let Tree::Couplet(question) = tree else { return (0, whole(0)) };
    let words = words(matrix, question);
    let new = words.difference(met).count();
    let met: BTreeSet<String> = words.union(met).cloned().collect();
    let (yes, no) = (taught(matrix, &question.yes, &met), taught(matrix, &question.no, &met));
    (new.max(yes.0).max(no.0), flow(question) * whole(new) + yes.1 + no.1)
}

/// A key measured by the goals, in their order.
fn measured(matrix: &Matrix, tree: &Tree, goals: &[Goal]) -> Vec<Share> {
    let all = couplets(tree);
    let sum = |of: &dyn Fn(&Question) -> Share| all.iter().map(|question| of(question)).sum();
    let mut measures = Vec::new();
    for goal in goals.iter().chain([&Goal::LeastEffort]) {
        match goal {
            Goal::LeastEffort => {
                measures.push(sum(&|question| flow(question) * steps(matrix, question)));
            }
            Goal::ShortestLongestPath => measures.push(whole(longest(tree))),
            Goal::MostRightEnds => measures.push(sum(&|question| misread(matrix, question))),
            Goal::EvenTeaching => {
                let (most, met) = taught(matrix, tree, &BTreeSet::new());
                measures.extend([whole(most), met]);
            }
            Goal::FewestWords => {
                let words: BTreeSet<String> =
                    all.iter().flat_map(|question| words(matrix, question)).collect();
                measures.push(whole(words.len()));
            }
            Goal::FewestRulers => {
                let ruler = |question: &Question| {
                    let with = matrix.character(question.character).instrument;
                    if with == Instrument::Ruler { flow(question) } else { whole(0) }
                };
                measures.push(sum(&ruler));
            }
        }
    }
    measures
}

/// How many questions are asked at most until an early wish is over.
fn until(tree: &Tree, early: Early) -> usize {
    let Tree::Couplet(question) = tree else { return 0 };
    let here = |taxon: &TaxonIx| question.flows.contains_key(taxon);
    let over = match early {
        Early::Part(one, other) => !here(&one) || !here(&other),
        Early::Leave(taxon) => !here(&taxon),
    };
    if over { 0 } else { 1 + until(&question.yes, early).max(until(&question.no, early)) }
}

/// Whether the characters to ask about first come first, wherever they can.
fn in_order(matrix: &Matrix, tree: &Tree, wishes: &Wishes) -> bool {
    couplets(tree).iter().all(|question| {
        let may = |at: &&CharacterIx| {
            question.could.contains(at)
                && (wishes.allow_touch || question.spares_hands(matrix, **at))
        };
        let first = wishes.order.iter().find(may);
        first.is_none_or(|first| question.character == *first)
    })
}

/// Whether nobody is sent to touch a kind with a caution, wherever something else separates.
fn spares_hands(matrix: &Matrix, tree: &Tree) -> bool {
    couplets(tree).iter().all(|question| question.spares_hands(matrix, question.character))
}

/// What the search reaches, in the same order.
fn reached(matrix: &Matrix, wishes: &Wishes) -> (Vec<Share>, Vec<usize>) {
    let built = build(matrix, wishes, Budget::default());
    assert!(built.claim.optimal(), "small tables are proved");
    assert!(built.refused.is_empty(), "{:?}", built.refused);
    let mut measures = Vec::new();
    for reached in &built.claim.reached {
        measures.push(reached.value);
        measures.extend(reached.then);
    }
    if wishes.goals.is_empty() {
        measures.push(built.claim.total);
    }
    (measures, built.claim.within.iter().map(|within| *within as usize).collect())
}

/// A small table with words to know, readings of single kinds, places and seasons.
fn table(seed: u64) -> Matrix {
    let matrix = seeded::awkward(seed);
    let mut rng = fastrand::Rng::with_seed(seed + 77);
    let mut characters = matrix.characters().to_vec();
    for character in &mut characters {
        if rng.bool() {
            character.read_right = Some(rng.u8(60..=100));
            character.read_right_of = BTreeMap::from([(TaxonIx(0), rng.u8(50..=100))]);
        }
        if rng.u8(..3) == 0 {
            let words = ["blade", "stalk", "vein", "edge"];
            character.terms = (0..2).map(|_| words[rng.usize(..4)].to_owned()).collect();
        }
        if rng.bool() {
            character.seen_on = BTreeSet::from([SeenOn::ALL[rng.usize(..2)]]);
            character.seasons = BTreeSet::from([Season::ALL[rng.usize(..2)]]);
        }
    }
    spinney_fixtures::drawn::remade(&matrix, matrix.taxa().to_vec(), characters)
}

fn list(matrix: &Matrix, left_out: &BTreeSet<CharacterIx>) -> Option<Vec<Rc<Tree>>> {
    Forms::of(matrix).without(left_out).every_key(3000).filter(|keys| keys.len() > 1)
}

fn best(matrix: &Matrix, keys: &[Rc<Tree>], goals: &[Goal]) -> Vec<Share> {
    let measures = keys.iter().map(|key| measured(matrix, key, goals));
    let least = measures.min_by(|a, b| a.partial_cmp(b).unwrap_or(Ordering::Equal));
    least.expect("a table has at least one key")
}

#[test]
fn every_order_of_goals_reaches_what_the_best_key_of_the_list_reaches() {
    let mut compared = 0;
    for seed in 0..1200 {
        let matrix = table(seed);
        let Some(keys) = list(&matrix, &BTreeSet::new()) else { continue };
        let mut rng = fastrand::Rng::with_seed(seed);
        let mut goals = Goal::ALL.to_vec();
        rng.shuffle(&mut goals);
        goals.truncate(rng.usize(1..=4));
        let wishes = Wishes { goals: goals.clone(), ..Wishes::default() };
        let (found, _) = reached(&matrix, &wishes);
        let mut expected = best(&matrix, &keys, &goals);
        // The effort that settles the rest is said once.
        if goals.contains(&Goal::LeastEffort) {
            expected.pop();
        }
        assert_eq!(found, expected, "seed {seed}: {goals:?}");
        compared += 1;
    }
    assert!(compared > 500, "only {compared} tables had a list");
}

/// The orders in which two or three of the goals can be wished.
/// Every character is read right more or less often of most kinds: what one kind costs less than
/// the others must not raise what all cost at least.
#[test]
fn how_often_each_kind_is_read_right_counts_for_that_kind() {
    let mut compared = 0;
    for seed in 0..1200 {
        let matrix = seeded::awkward(seed);
        let mut rng = fastrand::Rng::with_seed(seed + 91);
        let mut characters = matrix.characters().to_vec();
        for character in &mut characters {
            character.read_right = Some(rng.u8(40..=99));
            let often = matrix.taxon_indices().map(|taxon| (taxon, rng.u8(5..=100)));
            character.read_right_of = often.collect();
            if rng.bool() {
                character.read_right_of.retain(|_, right| *right % 3 > 0);
            }
        }
        let matrix =
            spinney_fixtures::drawn::remade(&matrix, matrix.taxa().to_vec(), characters);
        let Some(keys) = list(&matrix, &BTreeSet::new()) else { continue };
        let goals = vec![Goal::MostRightEnds];
        let wishes = Wishes { goals: goals.clone(), ..Wishes::default() };
        assert_eq!(reached(&matrix, &wishes).0, best(&matrix, &keys, &goals), "seed {seed}");
        compared += 1;
    }
    assert!(compared > 500, "only {compared} tables had a list");
}

/// Whoever looks at the screen after every heap comes to the same key as whoever waits.
#[test]
fn small_steps_come_to_the_same_as_one_large_one() {
    let mut steps = 0;
    for seed in 0..60 {
        let matrix = if seed % 3 == 0 { seeded::evening(seed) } else { wordy(seed) };
        for goals in [
            vec![Goal::EvenTeaching],
            vec![Goal::MostRightEnds, Goal::EvenTeaching, Goal::ShortestLongestPath],
            vec![Goal::ShortestLongestPath, Goal::EvenTeaching],
        ] {
            let wishes = Wishes { goals, ..Wishes::default() };
            let at_once = build(&matrix, &wishes, Budget::default());
            let mut search = Search::new(&matrix, &wishes);
            while let Progress::Working { .. } = search.step(1) {
                steps += 1;
                assert!(steps < 10_000_000, "seed {seed}: it never ends");
            }
            let stepped = search.finish();
            assert!(at_once.claim.optimal() && stepped.claim.optimal(), "seed {seed}");
            assert_eq!(stepped.claim.reached, at_once.claim.reached, "seed {seed}: {wishes:?}");
            assert_eq!(stepped.key, at_once.key, "seed {seed}: {wishes:?}");
        }
    }
    assert!(steps > 500, "only {steps} steps were taken");
}

/// The price of an early wish is what the rest of the wishes take without it, and without no
/// other.
#[test]
fn an_early_wish_costs_what_the_others_take_without_it() {
    let (mut priced, mut differ) = (0, 0);
    for seed in 0..400 {
        let matrix = seeded::awkward_wide(seed);
        let mut rng = fastrand::Rng::with_seed(seed + 3);
        let mut kinds: Vec<TaxonIx> = matrix.taxon_indices().collect();
        rng.shuffle(&mut kinds);
        let early = vec![Early::Leave(kinds[0]), Early::Leave(kinds[1])];
        let wishes = Wishes { early: early.clone(), ..Wishes::default() };
        let built = build(&matrix, &wishes, Budget::default());
        if !built.refused.is_empty() || !built.claim.optimal() {
            continue;
        }
        let mut extras = Vec::new();
        for (at, wish) in early.iter().enumerate() {
            let others = Wishes { early: vec![early[1 - at]], ..Wishes::default() };
            let without = build(&matrix, &others, Budget::default()).claim.total;
            let price =
                built.claim.prices.iter().find(|price| price.wish == Wish::Early(*wish));
            let price = price.unwrap_or_else(|| panic!("seed {seed}: no price of {wish:?}"));
            assert_eq!(price.extra, built.claim.total - without, "seed {seed}: {wish:?}");
            extras.push(price.extra);
            priced += 1;
        }
        differ += usize::from(extras[0] != extras[1]);
    }
    assert!(priced > 200 && differ > 50, "{priced} prices, {differ} pairs that differ");
}

fn pairs_and_triples() -> Vec<Vec<Goal>> {
    let mut orders = Vec::new();
    for one in Goal::ALL {
        for two in Goal::ALL.into_iter().filter(|two| *two != one) {
            orders.push(vec![one, two]);
            for three in Goal::ALL.into_iter().filter(|three| ![one, two].contains(three)) {
                orders.push(vec![one, two, three]);
            }
        }
    }
    orders
}

/// What the goals alone reach, and their price, against the list.
fn compare_goals(matrix: &Matrix, keys: &[Rc<Tree>], goals: &[Goal], seed: u64) {
    let wishes = Wishes { goals: goals.to_vec(), ..Wishes::default() };
    let built = build(matrix, &wishes, Budget::default());
    assert!(built.claim.optimal() && built.refused.is_empty(), "seed {seed}: {goals:?}");
    let found: Vec<Share> = built
        .claim
        .reached
        .iter()
        .flat_map(|reached| std::iter::once(reached.value).chain(reached.then))
        .collect();
    let expected = best(matrix, keys, goals);
    let effort = *expected.last().expect("the effort is measured last");
    // The effort that settles the rest is said once.
    let said = expected.len() - usize::from(goals.contains(&Goal::LeastEffort));
    assert_eq!(found, expected[..said], "seed {seed}: {goals:?}");
    assert_eq!(built.claim.total, effort, "seed {seed}: {goals:?}");
    let free = best(matrix, keys, &[])[0];
    let prices: Vec<(Share, bool)> =
        built.claim.prices.iter().map(|price| (price.extra, price.exact)).collect();
    let usual = goals == [Goal::LeastEffort];
    let price = (!usual).then_some((effort - free, true));
    assert_eq!(prices, Vec::from_iter(price), "seed {seed}: {goals:?}");
}

#[test]
fn every_pair_and_every_triple_of_goals_reaches_what_the_best_key_of_the_list_reaches() {
    let orders = pairs_and_triples();
    assert_eq!(orders.len(), 30 + 120);
    let mut compared = 0;
    for seed in 0..400 {
        // Every second table with characters that share words.
        let matrix = if seed % 2 == 0 { table(seed) } else { wordy(seed) };
        let Some(keys) = list(&matrix, &BTreeSet::new()) else { continue };
        for goals in &orders {
            compare_goals(&matrix, &keys, goals, seed);
        }
        compared += 1;
    }
    assert!(compared > 150, "only {compared} tables had a list");
}

/// The shortest of the keys with the fewest words is wanted, not the shortest of those that do
/// without the same word.
#[test]
fn the_second_goal_does_not_spoil_the_first() {
    let matrix = edge_rings_spots();
    let keys = list(&matrix, &BTreeSet::new()).expect("it is a small table");
    let words = |goals: &[Goal]| {
        let wishes = Wishes { goals: goals.to_vec(), ..Wishes::default() };
        build(&matrix, &wishes, Budget::default()).claim.reached[0].value
    };
    assert_eq!(words(&[Goal::FewestWords]), whole(3));
    assert_eq!(words(&[Goal::FewestWords, Goal::ShortestLongestPath]), whole(3));
    for goals in pairs_and_triples() {
        compare_goals(&matrix, &keys, &goals, 0);
    }
}

/// "Pointed" is taught once, at the tip or at the base.
#[test]
fn a_word_that_two_columns_ask_for_is_one_word() {
    let column = |name: &str, other: &str| {
        let states = vec!["pointed".to_owned(), other.to_owned()];
        Character::named(name, Scale::Words { states })
    };
    let characters = vec![column("tip", "round"), column("base", "heart-shaped")];
    let rows = [(0, 0), (0, 1), (1, 0), (1, 1)].map(|(tip, base)| {
        [tip, base].map(|state| Value::States(vec![(StateIx(state), whole(1))]).into()).to_vec()
    });
    let taxa = ["ant", "bee", "fly", "bug"].map(Taxon::named).to_vec();
    let matrix =
        Matrix::new(Scene::default(), taxa, characters, rows.to_vec()).expect("it is a table");
    let wishes = Wishes { goals: vec![Goal::FewestWords], ..Wishes::default() };
    let built = build(&matrix, &wishes, Budget::default());
    // Tip, base, pointed.
    assert_eq!(built.claim.reached[0].value, whole(3));
}

/// Four invented kinds that a question about the edge, which is easy, need not help to tell
/// apart: rings and spots, which are hard, do.
fn edge_rings_spots() -> Matrix {
    let states = vec!["toothed".to_owned(), "spiny".to_owned()];
    let mut characters = vec![
        Character::named("edge", Scale::Words { states }),
        Character::named("rings", Scale::Counts),
        Character::named("spots", Scale::Counts),
    ];
    for hard in &mut characters[1..] {
        hard.difficulty = Difficulty::Hard;
    }
    let rows = [(0, 2, 6), (0, 2, 2), (0, 6, 5), (1, 6, 5)].map(|(edge, rings, spots)| {
        let one = whole(1);
        vec![
            Value::States(vec![(StateIx(edge), one)]).into(),
            Value::Counts(vec![(rings, one)]).into(),
            Value::Counts(vec![(spots, one)]).into(),
        ]
    });
    let taxa = ["ant", "bee", "fly", "bug"].map(Taxon::named).to_vec();
    Matrix::new(Scene::default(), taxa, characters, rows.to_vec()).expect("it is a table")
}

/// A small table in which characters are hard and easy, counted and worded, and share words.
fn wordy(seed: u64) -> Matrix {
    let matrix = seeded::awkward(seed);
    let mut rng = fastrand::Rng::with_seed(seed + 11);
    let mut characters = matrix.characters().to_vec();
    for character in &mut characters {
        character.difficulty =
            [Difficulty::Easy, Difficulty::Fair, Difficulty::Hard][rng.usize(..3)];
        if rng.u8(..3) > 0 {
            let words = ["blade", "stalk", "vein", "edge", "base"];
            character.terms =
                (0..rng.usize(1..=3)).map(|_| words[rng.usize(..5)].to_owned()).collect();
        }
    }
    spinney_fixtures::drawn::remade(&matrix, matrix.taxa().to_vec(), characters)
}

#[test]
fn pins_are_kept_and_the_rest_is_best() {
    let mut compared = BTreeMap::<&str, usize>::new();
    for seed in 0..4000 {
        let matrix =
            if seed % 2 == 0 { table(seed) } else { seeded::prickly(&table(seed), seed) };
        let mut rng = fastrand::Rng::with_seed(seed + 5);
        let mut wishes = Wishes::default();
        let columns = matrix.characters().len();
        if rng.u8(..4) == 0 {
            wishes.never = BTreeSet::from([CharacterIx(rng.usize(..columns))]);
        }
        if rng.u8(..4) == 0 {
            wishes.hand = Some(SeenOn::ALL[rng.usize(..2)]);
            wishes.season = Some(Season::ALL[rng.usize(..2)]);
        }
        let unseen = |at: &CharacterIx| {
            let character = matrix.character(*at);
            let on = wishes.hand.is_some_and(|hand| {
                !character.seen_on.is_empty() && !character.seen_on.contains(&hand)
            });
            let then = wishes.season.is_some_and(|season| {
                !character.seasons.is_empty() && !character.seasons.contains(&season)
            });
            on || then || wishes.never.contains(at)
        };
        let left_out: BTreeSet<CharacterIx> =
            matrix.character_indices().filter(unseen).collect();
        let Some(mut keys) = list(&matrix, &left_out) else { continue };
        wishes.allow_touch = rng.u8(..6) == 0;
        if !wishes.allow_touch {
            let all = keys.len();
            keys.retain(|key| spares_hands(&matrix, key));
            *compared.entry("touch").or_default() += usize::from(keys.len() < all);
        }
        if rng.u8(..3) == 0 {
            let order = [CharacterIx(rng.usize(..columns)), CharacterIx(rng.usize(..columns))];
            wishes.order = order.into_iter().filter(|at| !left_out.contains(at)).collect();
            wishes.order.dedup();
            keys.retain(|key| in_order(&matrix, key, &wishes));
            *compared.entry("order").or_default() += usize::from(!wishes.order.is_empty());
        }
        if rng.u8(..3) == 0 {
            let Tree::Couplet(first) = &*keys[rng.usize(..keys.len())].clone() else {
                continue;
            };
            let ask = Ask { character: first.character, yes: first.asked.clone() };
            let same = |key: &Rc<Tree>| match &**key {
                Tree::Couplet(other) => {
                    (other.character, &other.asked) == (first.character, &first.asked)
                }
                Tree::End(_) => false,
            };
            keys.retain(same);
            let Some(ask) = in_our_words(&matrix, ask) else { continue };
            wishes.kept = vec![Kept { ask, yes: None, no: None }];
            *compared.entry("kept").or_default() += 1;
        }
        let mut within = Vec::new();
        for _ in 0..rng.usize(..3) {
            let mut taxon = || TaxonIx(rng.usize(..matrix.taxa().len()));
            let (one, other) = (taxon(), taxon());
            let early = if one == other || rng.bool() {
                Early::Leave(one)
            } else {
                Early::Part(one, other)
            };
            let asked = Wishes { early: vec![early], ..wishes.clone() };
            let refused = build(&matrix, &asked, Budget::default()).refused;
            let can_be = could_be_over(&matrix, &left_out, early);
            assert_eq!(refused.is_empty(), can_be, "seed {seed}: {early:?}");
            *compared.entry("refused").or_default() += usize::from(!can_be);
            if !refused.is_empty() || wishes.early.contains(&early) {
                continue;
            }
            let soonest = keys.iter().map(|key| until(key, early)).min().unwrap_or(0);
            keys.retain(|key| until(key, early) == soonest);
            within.push(soonest);
            wishes.early.push(early);
            *compared.entry("early").or_default() += 1;
        }
        if rng.u8(..3) == 0 {
            let mut goals = Goal::ALL.to_vec();
            rng.shuffle(&mut goals);
            goals.truncate(rng.usize(1..=3));
            wishes.goals = goals;
            *compared.entry("goals").or_default() += 1;
        }
        let (found, found_within) = reached(&matrix, &wishes);
        assert_eq!(found_within, within, "seed {seed}: {wishes:?}");
        let expected = best(&matrix, &keys, &wishes.goals);
        let said = expected.len() - usize::from(wishes.goals.contains(&Goal::LeastEffort));
        assert_eq!(found, expected[..said], "seed {seed}: {wishes:?}");
        *compared.entry("left out").or_default() += usize::from(!left_out.is_empty());
    }
    for (what, times) in compared {
        assert!(times > 150, "{what}: only {times}");
    }
}

/// What a key takes without touch, what with it, and how many keys are as good, by the list.
#[test]
fn nobody_is_sent_to_touch_what_may_hurt_while_something_else_separates() {
    let (mut dearer, mut had_to, mut barred) = (0, 0, 0);
    for seed in 0..1500 {
        let matrix = seeded::prickly(&table(seed), seed);
        let Some(keys) = list(&matrix, &BTreeSet::new()) else { continue };
        let spared: Vec<Rc<Tree>> =
            keys.iter().filter(|key| spares_hands(&matrix, key)).cloned().collect();
        barred += usize::from(spared.len() < keys.len());
        let (least, free) = (best(&matrix, &spared, &[])[0], best(&matrix, &keys, &[])[0]);
        let usual = build(&matrix, &Wishes::default(), Budget::default()).claim;
        assert!(usual.optimal());
        assert_eq!(usual.total, least, "seed {seed}");
        let allowed = Wishes { allow_touch: true, ..Wishes::default() };
        let allowed = build(&matrix, &allowed, Budget::default()).claim;
        assert_eq!(allowed.total, free, "seed {seed}");
        let price = |claim: &Claim| {
            let touch = claim.prices.iter().filter(|price| price.wish == Wish::Touch);
            let said: Vec<(Share, bool)> =
                touch.map(|price| (price.extra, price.exact)).collect();
            said
        };
        let risky = matrix.taxa().iter().any(|taxon| taxon.caution.is_some());
        let touched = Forms::of(&matrix).answers().into_iter();
        let touched: BTreeSet<bool> =
            touched.map(|(at, _)| matrix.character(at).by_touch).collect();
        let matters = risky && touched.len() == 2;
        let expected = |extra| if matters { vec![(extra, true)] } else { Vec::new() };
        assert_eq!(price(&usual), expected(least - free), "seed {seed}");
        assert_eq!(price(&allowed), expected(free - least), "seed {seed}");
        dearer += usize::from(least > free);
        had_to += usize::from(!usual.touching.is_empty());
    }
    assert!(dearer > 60 && had_to > 60 && barred > 150, "{dearer} {had_to} {barred}");
}

/// Beside a person's wish, that nobody is sent to touch what may hurt has a price of its own:
/// what the key takes more than one with the same wish and with touch allowed.
#[test]
fn sparing_hands_has_its_own_price_beside_a_wish() {
    let (mut priced, mut differ) = (0, 0);
    for seed in 0..1000 {
        let matrix = seeded::prickly(&table(seed), seed);
        let never = CharacterIx(seed as usize % matrix.characters().len());
        let wishes = Wishes { never: BTreeSet::from([never]), ..Wishes::default() };
        let of = |wishes: &Wishes| build(&matrix, wishes, Budget::default()).claim;
        let claim = of(&wishes);
        let price = |wish: Wish| {
            let found = claim.prices.iter().find(|price| price.wish == wish);
            found.map(|price| price.extra)
        };
        let Some(touch) = price(Wish::Touch) else { continue };
        let allowed = of(&Wishes { allow_touch: true, ..wishes.clone() });
        let free = of(&Wishes::default());
        assert!([&claim, &allowed, &free].iter().all(|claim| claim.optimal()), "seed {seed}");
        assert_eq!(touch, claim.total - allowed.total, "seed {seed}");
        assert_eq!(price(Wish::Never(never)), Some(claim.total - free.total), "seed {seed}");
        priced += 1;
        differ += usize::from(allowed.total != free.total);
    }
    assert!(priced > 50 && differ > 25, "{priced} prices, {differ} that differ");
}

/// A wish may be over before anything is asked: here the newt, which has no leaf, is in the way
/// of the only question, so that the whole table is one end.
#[test]
fn the_least_number_of_questions_may_be_none() {
    let matrix = spinney_fixtures::drawn::yes_no(
        "    lobed
 ivy 1
 elm 0
 newt -",
    );
    for early in [Early::Part(TaxonIx(0), TaxonIx(1)), Early::Leave(TaxonIx(0))] {
        let wishes = Wishes { early: vec![early], ..Wishes::default() };
        let built = build(&matrix, &wishes, Budget::default());
        assert_eq!((built.refused, built.claim.within), (Vec::new(), vec![0]), "{early:?}");
    }
}

/// Ivy is lobed or not: whatever is asked, an unlobed ivy stays with the elm.
#[test]
fn look_alikes_that_no_question_separates_are_refused() {
    let matrix = spinney_fixtures::drawn::yes_no(
        "     lobed spiny
         ivy  v     0
         elm  0     0
         oak  1     0
         holly 0    1",
    );
    let [ivy, elm, oak, holly] = [0, 1, 2, 3].map(TaxonIx);
    let refused = |early: Early| {
        let wishes = Wishes { early: vec![early], ..Wishes::default() };
        let refused = build(&matrix, &wishes, Budget::default()).refused;
        refused.into_iter().map(|refusal| refusal.why).collect::<Vec<_>>()
    };
    for (one, other) in [(ivy, elm), (ivy, oak)] {
        assert_eq!(refused(Early::Part(one, other)), [WhyNot::NeverParted]);
    }
    for (one, other) in [(elm, oak), (ivy, holly)] {
        assert_eq!(refused(Early::Part(one, other)), []);
    }
    assert_eq!(refused(Early::Leave(ivy)), []);
}

/// Whether some question parts the kind of an early wish from another that it is about.
fn could_be_over(matrix: &Matrix, left_out: &BTreeSet<CharacterIx>, early: Early) -> bool {
    match early {
        Early::Part(one, other) => parts(matrix, left_out, one, other),
        Early::Leave(taxon) => matrix
            .taxon_indices()
            .any(|other| other != taxon && parts(matrix, left_out, taxon, other)),
    }
}

/// Whether a character parts two kinds, read on their forms (`docs/KEY.md` 17).
fn parts(
    matrix: &Matrix,
    left_out: &BTreeSet<CharacterIx>,
    one: TaxonIx,
    other: TaxonIx,
) -> bool {
    let forms = Forms::of(matrix).without(left_out);
    let of = |taxon: TaxonIx| {
        let all = forms.forms().iter().enumerate();
        all.filter(move |(_, form)| form.taxon == taxon)
    };
    // What a kind answers wherever the question can be put to it, if it is always the same.
    let always = |answers: &[Option<bool>], taxon: TaxonIx| {
        let said: BTreeSet<bool> = of(taxon).filter_map(|(at, _)| answers[at]).collect();
        if said.len() == 1 { said.first().copied() } else { None }
    };
    let apart = |answers: &[Option<bool>], one: TaxonIx, other: TaxonIx| {
        let said = always(answers, one).zip(always(answers, other));
        said.is_some_and(|(one, other)| one != other)
    };
    let questions = forms.answers();
    // Some two kinds make a governor worth asking about.
    let worth_asking = |governor: CharacterIx| {
        let about = questions.iter().filter(|(at, _)| *at == governor);
        let pairs = || {
            let all = matrix.taxon_indices();
            all.flat_map(|a| matrix.taxon_indices().map(move |b| (a, b)))
        };
        about.into_iter().any(|(_, answers)| pairs().any(|(a, b)| apart(answers, a, b)))
    };
    questions.iter().any(|(at, answers)| {
        let mut after = Vec::new();
        let mut above = matrix.character(*at).governor.as_ref();
        while let Some(governor) = above {
            let right: Vec<BTreeSet<bool>> = [one, other]
                .map(|taxon| {
                    let values =
                        of(taxon).filter_map(|(_, form)| form.values[governor.character.0]);
                    values
                        .map(|value| match value {
                            Single::State(state) => governor.states.contains(&state),
                            other => panic!("a governor has states, not {other:?}"),
                        })
                        .collect()
                })
                .to_vec();
            after.push((governor.character, right));
            above = matrix.character(governor.character).governor.as_ref();
        }
        let settled = after.iter().all(|(governor, right)| {
            match right.iter().filter(|right| right.len() == 2).count() {
                0 => true,
                1 => worth_asking(*governor),
                _ => false,
            }
        });
        settled && apart(answers, one, other)
    })
}

/// The list asks for any of two complementary groups; a table's own question asks for the
/// smaller one, and its words are the ones to know.
fn in_our_words(matrix: &Matrix, mut ask: Ask) -> Option<Ask> {
    let character = matrix.character(ask.character);
    if let (Asked::States(asked), Scale::Words { states }) = (&mut ask.yes, &character.scale)
        && !named_as_asked(asked, states.len())
    {
        *asked = (0..states.len()).map(StateIx).filter(|at| !asked.contains(at)).collect();
    }
    let kept = |ask: &Ask| Wishes {
        kept: vec![Kept { ask: ask.clone(), yes: None, no: None }],
        ..Wishes::default()
    };
    let fine = |ask: &Ask| build(matrix, &kept(ask), Budget::default()).refused.is_empty();
    fine(&ask).then_some(ask)
}

/// Whether a question names this group: the smaller one; of equal ones that with the first state.
fn named_as_asked(asked: &BTreeSet<StateIx>, states: usize) -> bool {
    match (2 * asked.len()).cmp(&states) {
        Ordering::Less => true,
        Ordering::Equal => asked.contains(&StateIx(0)),
        Ordering::Greater => false,
    }
}

/// A search that is stopped anywhere still gives a whole key, and claims nothing of it.
#[test]
fn a_search_that_is_stopped_on_the_way_gives_a_whole_key() {
    let mut stopped = 0;
    for seed in 1..=6 {
        let matrix = seeded::evening(seed);
        for goal in [Goal::FewestWords, Goal::EvenTeaching, Goal::ShortestLongestPath] {
            let wishes = Wishes { goals: vec![goal], ..Wishes::default() };
            for heaps in [1, 30, 300, 3000] {
                let built = build(&matrix, &wishes, Budget { heaps });
                let named: BTreeSet<TaxonIx> = ends(&built.key).into_iter().flatten().collect();
                assert_eq!(named.len(), matrix.taxa().len(), "{goal:?} after {heaps}");
                let together = ends(&built.key).iter().filter(|end| end.len() > 1).count();
                assert_eq!(together, 0, "{goal:?} after {heaps}: all kinds can be parted");
                stopped += usize::from(!built.claim.optimal());
            }
        }
    }
    assert!(stopped > 20, "only {stopped} searches were stopped");
}

fn ends(key: &spinney_model::Key) -> Vec<Vec<TaxonIx>> {
    let destinations = key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]);
    let end = |destination: &spinney_model::Destination| match destination {
        spinney_model::Destination::End(end) => Some(end.taxa.clone()),
        _ => None,
    };
    destinations.filter_map(end).collect()
}
