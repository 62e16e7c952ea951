//! Keys with three and four ways by a second road: every key, tried by plain recursion over
//! forms (`docs/KEY.md` 19); and worked values.

use std::collections::{BTreeMap, BTreeSet};

use spinney_build::{Budget, build, many_ways};
use spinney_fixtures::drawn;
use spinney_fixtures::forms::{Forms, Single};
use spinney_fixtures::seeded;
use spinney_model::{
    Cell, Character, CharacterIx, Matrix, Scale, Scene, Share, StateIx, Taxon, TaxonIx, Value,
    Wishes,
};

type Heap = BTreeSet<usize>;

struct Road<'a> {
    matrix: &'a Matrix,
    forms: &'a Forms<'a>,
    answers: Vec<(CharacterIx, Vec<Option<bool>>)>,
    most: usize,
    seen: BTreeMap<Heap, Share>,
}

impl Road<'_> {
    fn least(&mut self, heap: &Heap) -> Share {
        if let Some(known) = self.seen.get(heap) {
            return *known;
        }
        let flow: Share = heap.iter().map(|form| self.forms.forms()[*form].weight).sum();
        let mut best: Option<Share> = None;
        for (character, ways) in self.looks(heap) {
            let own = flow * self.forms.steps_of(character);
            let below: Share = ways.iter().map(|way| self.least(way)).sum();
            best = Some(best.map_or(own + below, |best| best.min(own + below)));
        }
        let least = best.unwrap_or(Share::from_integer(0));
        self.seen.insert(heap.clone(), least);
        least
    }

    /// Every look that two kinds of the heap do not share a way of.
    fn looks(&self, heap: &Heap) -> Vec<(CharacterIx, Vec<Heap>)> {
        let mut looks = Vec::new();
        for (character, answers) in &self.answers {
            let mut sides = [Heap::new(), Heap::new()];
            let put = heap.iter().all(|form| {
                let Some(yes) = answers[*form] else { return false };
                sides[usize::from(yes)].insert(*form)
            });
            if put {
                looks.push((*character, sides.to_vec()));
            }
        }
        for character in self.matrix.character_indices() {
            looks.extend(
                self.several(heap, character).into_iter().map(|ways| (character, ways)),
            );
        }
        looks.retain(|(_, ways)| ways.iter().all(|way| !way.is_empty()) && self.parts(ways));
        let touch = |at: &CharacterIx| self.matrix.character(*at).by_touch;
        let kind = |form: &usize| self.matrix.taxon(self.forms.forms()[*form].taxon);
        let risky = heap.iter().any(|form| kind(form).caution.is_some());
        if risky && !looks.iter().all(|(at, _)| touch(at)) {
            looks.retain(|(at, _)| !touch(at));
        }
        looks
    }

    fn several(&self, heap: &Heap, at: CharacterIx) -> Vec<Vec<Heap>> {
        let character = self.matrix.character(at);
        let ordered = match &character.scale {
            Scale::Words { .. } => character.ordered,
            Scale::Counts => true,
            Scale::Measure { .. } => return Vec::new(),
        };
        let mut by_value: BTreeMap<u32, Heap> = BTreeMap::new();
        for form in heap {
            let value = match self.forms.forms()[*form].values[at.0] {
                Some(Single::State(StateIx(state))) => state as u32,
                Some(Single::Count(count)) => count,
                _ => return Vec::new(),
            };
            by_value.entry(value).or_default().insert(*form);
        }
        let values: Vec<Heap> = by_value.into_values().collect();
        if !ordered {
            return vec![values]
                .into_iter()
                .filter(|ways| (3..=self.most).contains(&ways.len()))
                .collect();
        }
        // Every choice of places between values that stand side by side.
        let mut all = Vec::new();
        for places in 0_u32..1 << (values.len() - 1) {
            let ways = places.count_ones() as usize + 1;
            if !(3..=self.most).contains(&ways) {
                continue;
            }
            let mut cut = vec![Heap::new()];
            for (place, value) in values.iter().enumerate() {
                if place > 0 && places >> (place - 1) & 1 == 1 {
                    cut.push(Heap::new());
                }
                cut.last_mut().expect("it has one").extend(value);
            }
            all.push(cut);
        }
        all
    }

    fn parts(&self, ways: &[Heap]) -> bool {
        let mut of_kind: BTreeMap<TaxonIx, BTreeSet<usize>> = BTreeMap::new();
        for (way, heap) in ways.iter().enumerate() {
            for form in heap {
                of_kind.entry(self.forms.forms()[*form].taxon).or_default().insert(way);
            }
        }
        let kinds: Vec<&BTreeSet<usize>> = of_kind.values().collect();
        let mut pairs = kinds.iter().enumerate();
        pairs.any(|(at, one)| kinds[at + 1..].iter().any(|other| one.is_disjoint(other)))
    }
}

#[test]
fn no_key_with_several_ways_takes_less() {
    let mut shorter = BTreeMap::new();
    for seed in 1..=1_500 {
        let matrix = seeded::awkward(seed);
        let matrix = if seed % 2 == 0 { seeded::prickly(&matrix, seed) } else { matrix };
        let two = build(&matrix, &Wishes::default(), Budget::default()).claim.total;
        let forms = Forms::of(&matrix);
        for most in 2..=4 {
            let found = many_ways(&matrix, &Wishes::default(), most, Budget::default());
            assert_eq!(found.stopped, None, "{seed}");
            assert_eq!(found.total, found.lower_bound, "{seed}");
            let answers = forms.answers();
            let seen = BTreeMap::new();
            let mut road = Road { matrix: &matrix, forms: &forms, answers, most, seen };
            let all = (0..forms.forms().len()).collect();
            assert_eq!(found.total, road.least(&all), "{seed}, {most} ways");
            assert!(found.total <= two || most > 2, "{seed}");
            if most == 2 {
                assert_eq!(found.total, two, "{seed}");
                assert!(found.same_look.is_empty(), "{seed}");
            }
            *shorter.entry(most).or_insert(0) += usize::from(found.total < two);
        }
    }
    assert!(shorter[&3] > 100 && shorter[&4] >= shorter[&3], "{shorter:?}");
}

/// By hand: nine kinds, two characters of three states that tell all apart. Two looks a find with
/// three ways; with yes and no the best tree of nine leaves takes 29 looks for nine finds
/// (7 × 3 + 2 × 4).
#[test]
fn three_by_three_takes_two_looks() {
    let states = || ["a", "b", "c"].map(str::to_owned).to_vec();
    let character = |name: &str| Character::named(name, Scale::Words { states: states() });
    let cell = |state: usize| {
        Cell::from(Value::States(vec![(StateIx(state), Share::from_integer(1))]))
    };
    let rows = (0..9).map(|kind| vec![cell(kind / 3), cell(kind % 3)]).collect();
    let taxa = (0..9).map(|kind| Taxon::named(format!("kind {kind}"))).collect();
    let characters = vec![character("form"), character("edge")];
    let matrix = Matrix::new(Scene::default(), taxa, characters, rows).expect("a table");
    let three = many_ways(&matrix, &Wishes::default(), 3, Budget::default());
    assert_eq!((three.total, three.longest), (Share::from_integer(18), 2));
    assert_eq!(three.mean_questions, Share::from_integer(2));
    assert_eq!((three.key.couplets.len(), three.same_look.len()), (8, 4));
    let two = many_ways(&matrix, &Wishes::default(), 2, Budget::default());
    assert!(two.total >= Share::from_integer(29));
    let none = many_ways(&matrix, &Wishes::default(), 3, Budget { heaps: 0 });
    assert!(none.stopped.is_some() && none.total >= three.total);
    assert!(none.lower_bound <= three.total);
}

/// Counts that vary in every column: many looks, and few of them good.
#[test]
fn a_budget_ends_the_work_and_yes_and_no_is_the_least_that_is_found() {
    let mut rng = fastrand::Rng::with_seed(5);
    let characters = (0..5).map(|at| Character::named(format!("count {at}"), Scale::Counts));
    let half = Share::new(1, 2);
    let mut cell = || {
        let (one, other) = (rng.u32(1..=9), rng.u32(10..=18));
        Cell::from(Value::Counts(vec![(one, half), (other, half)]))
    };
    let rows = (0..30).map(|_| (0..5).map(|_| cell()).collect()).collect();
    let taxa = (0..30).map(|kind| Taxon::named(format!("kind {kind}"))).collect();
    let matrix = Matrix::new(Scene::default(), taxa, characters.collect(), rows);
    let matrix = matrix.expect("a table");
    for heaps in [0, 10, 100] {
        let budget = Budget { heaps };
        let found = many_ways(&matrix, &Wishes::default(), 4, budget);
        // What is taken unseen is as deep as a key, and no deeper than all forms of all kinds.
        assert!(found.heaps <= heaps + 32 * 30, "{} heaps for {heaps}", found.heaps);
        assert!(found.total <= build(&matrix, &Wishes::default(), budget).claim.total);
    }
}

/// The kinds of an evening's table.
const KINDS: u64 = 12;

/// A key of several ways that was stopped is still a key, and its bound a bound.
#[test]
fn what_is_stopped_is_a_key_and_a_bound() {
    for seed in 1..=40 {
        let matrix = seeded::evening(seed);
        let sure = many_ways(&matrix, &Wishes::default(), 4, Budget::default());
        assert_eq!(sure.stopped, None, "{seed}: {} heaps", sure.heaps);
        for heaps in [0, 1, 3, 10] {
            let some = many_ways(&matrix, &Wishes::default(), 4, Budget { heaps });
            assert!(some.lower_bound <= sure.total && sure.total <= some.total, "{seed}");
            assert!(some.heaps <= heaps + 2 * KINDS, "{seed}: {} for {heaps}", some.heaps);
        }
    }
}

#[test]
fn a_renamed_table_takes_the_same() {
    for seed in 1..=200 {
        let matrix = seeded::awkward(seed);
        let mut taxa = matrix.taxa().to_vec();
        taxa.iter_mut().for_each(|taxon| taxon.name.push('x'));
        let other = drawn::remade(&matrix, taxa, matrix.characters().to_vec());
        let of = |matrix: &Matrix| many_ways(matrix, &Wishes::default(), 4, Budget::default());
        assert_eq!(of(&matrix), of(&other), "{seed}");
    }
}
