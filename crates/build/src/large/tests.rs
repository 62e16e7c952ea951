//! Fields, keys and bounds of large heaps, on tables small enough for a second road.

use spinney_fixtures::flora::Flora;
use spinney_fixtures::{drawn, forms::Forms, seeded};
use spinney_model::{Matrix, Share, Wishes};

use super::*;
use crate::course::Course;

/// The bounds of all looks ahead, whether all was looked at, and the keys of rising width.
fn looked_at(matrix: &Matrix, looks: usize) -> (Vec<Share>, bool, Vec<Share>) {
    let mut course = Course::new(matrix, &Wishes::default());
    let heap = course.root();
    let solver = &mut course.solver;
    let mut large = Large::new(&solver.ground, &heap, (96 << 20, 64 << 20));
    let mut keys = Vec::new();
    for wide in [1, 2, 8] {
        let mut grower = Grower::new(&solver.ground);
        let grown = grower.grow(&large.field, wide);
        solver.memory.clear();
        let effort = solver.remember(&heap, grown.branch.as_deref());
        assert!(large.units.effort(grown.effort) <= effort, "flows are rounded down");
        keys.push(solver.ground.scale.share(effort));
    }
    let scale = solver.ground.scale;
    let mut bounds = vec![scale.share(large.units.effort(large.ahead.lower()))];
    let mut over = false;
    for _ in 0..looks {
        if !large.ahead.look(&solver.ground, u64::MAX) {
            over = true;
            break;
        }
        bounds.push(scale.share(large.units.effort(large.ahead.lower())));
    }
    let mut grower = Grower::new(&solver.ground);
    let ahead = large.ahead.key(&mut grower);
    solver.memory.clear();
    let effort = solver.remember(&heap, ahead.branch.as_deref());
    keys.push(scale.share(effort));
    if over {
        assert_eq!(keys.last(), bounds.last(), "the key by the bounds reaches them");
    }
    (bounds, over, keys)
}

fn check(matrix: &Matrix, optimum: Share, name: &str) -> (bool, bool) {
    let (bounds, over, keys) = looked_at(matrix, 400);
    assert!(bounds.is_sorted(), "{name}: a bound fell");
    for bound in &bounds {
        assert!(*bound <= optimum, "{name}: bound {bound} above the optimum {optimum}");
    }
    for key in &keys {
        assert!(*key >= optimum, "{name}: key {key} below the optimum {optimum}");
    }
    let last = bounds.last().copied();
    if over {
        assert_eq!(last, Some(optimum), "{name}: everything was looked at");
    }
    (over, keys.contains(&optimum))
}

/// The second road of `docs/KEY.md` 9 says what the least effort is.
#[test]
fn bounds_and_keys_of_awkward_tables_enclose_the_optimum() {
    let (mut over, mut best) = (0, 0);
    for seed in 0..3000 {
        let matrix = seeded::awkward(seed);
        let optimum = Forms::of(&matrix).try_every_key().least;
        let found = check(&matrix, optimum, &format!("awkward {seed}"));
        over += usize::from(found.0);
        best += usize::from(found.1);
    }
    assert!(over > 2900, "{over} were looked at to the end");
    assert!(best > 2900, "{best} keys were best");
}

fn exactly(matrix: &Matrix) -> Share {
    let claim = crate::build(matrix, &Wishes::default(), crate::Budget::default()).claim;
    assert!(claim.optimal());
    claim.total
}

#[test]
fn bounds_and_keys_of_wider_tables_enclose_the_optimum() {
    for seed in 0..200 {
        let matrix = seeded::awkward_wide(seed);
        check(&matrix, exactly(&matrix), &format!("wide {seed}"));
    }
    for seed in 0..30 {
        let matrix = Flora::of(14, 12).draw(seed);
        check(&matrix, exactly(&matrix), &format!("flora {seed}"));
        let matrix = seeded::skewed(seed, 14, 12, 10, 5);
        check(&matrix, exactly(&matrix), &format!("skewed {seed}"));
    }
    for matrix in [drawn::m1(), drawn::m2(), drawn::comb(20), drawn::digits(16)] {
        check(&matrix, exactly(&matrix), "drawn");
    }
}

/// With the same budget and with four times as much, the bound with looks ahead is never below
/// what the search proper had proved when they began, and never above what is proved best.
#[test]
fn looks_ahead_only_raise_the_bound() {
    let mut raised = 0;
    for seed in 0..3 {
        for (matrix, name) in [
            (Flora::of(34, 10).draw(seed), "flora"),
            (seeded::skewed(seed, 34, 18, 10, 5), "skewed"),
            (seeded::plain(seed, 40, 20, 10, 5), "plain"),
        ] {
            let bound = |looks: bool, heaps: u64| {
                let mut course = Course::new(&matrix, &Wishes::default());
                let heap = course.root();
                course.solver.set_limit(heaps);
                match looks {
                    true => course.solver.close(std::slice::from_ref(&heap), NEVER),
                    false => course.solver.close_in(std::slice::from_ref(&heap), NEVER),
                };
                course.solver.known(&heap)
            };
            let (before, _) = bound(false, FIRST);
            let best = exactly_or_at_most(&matrix);
            for heaps in [FIRST, 4 * FIRST] {
                let (after, upper) = bound(true, heaps);
                assert!(after >= before, "{name} {seed}: {after} after {before}");
                assert!(upper.is_some_and(|upper| after <= upper));
                assert!(after <= best, "{name} {seed}: {after} above {best}");
                raised += usize::from(after > before);
            }
        }
    }
    assert!(raised > 3, "looks raised the bound {raised} times");
}

/// What the best key takes at most, in units of the search; mostly proved.
fn exactly_or_at_most(matrix: &Matrix) -> Effort {
    let mut course = Course::new(matrix, &Wishes::default());
    course.step(4_000);
    let root = course.root();
    course.known(&root).1.expect("a key was found")
}

/// A field made from the field above is the field of the heap below.
#[test]
fn fields_follow_heaps() {
    let mut compared = 0;
    for seed in 0..600 {
        let matrix = seeded::awkward_wide(seed);
        let course = Course::new(&matrix, &Wishes::default());
        let ground = &course.solver.ground;
        let heap = course.root();
        let groups = Groups::default();
        let (field, _) = Field::of(ground, &heap, &groups);
        compared += compare(ground, &heap, &field, 3);
    }
    assert!(compared > 2000, "only {compared} fields were compared");
}

fn compare(ground: &Ground, heap: &Heap, field: &Field, deep: usize) -> usize {
    let layout = &ground.layout;
    let kinds: Vec<u32> = layout.kinds(heap).map(|kind| kind as u32).collect();
    assert_eq!(field.kinds, kinds);
    let may: Vec<usize> = (0..field.asks.len()).filter(|at| field.admits(*at)).collect();
    let mut compared = 1;
    let mut splits = Vec::new();
    for question in &ground.questions[..ground.candidates] {
        if let Asking::Parts(sides) = layout.ask(heap, question)
            && sides.parts_a_pair
        {
            let (yes, no) = layout.take_sides(heap, question, &sides);
            let named = |side: &Heap| layout.kinds(side).map(|kind| kind as u32).collect();
            let (yes, no): (Vec<u32>, Vec<u32>) = (named(&yes), named(&no));
            splits.push(if yes <= no { (yes, no) } else { (no, yes) });
        }
    }
    let mut of_field = Vec::new();
    for at in may {
        let question = &ground.questions[field.asks[at].question as usize];
        let Asking::Parts(sides) = layout.ask(heap, question) else {
            panic!("a field offers what its heap does not");
        };
        assert!(sides.parts_a_pair);
        let (yes, no) = layout.take_sides(heap, question, &sides);
        let (yes_field, no_field) =
            (field.side(ground, at, true), field.side(ground, at, false));
        assert_eq!(field.side_flow(at, true).0, yes_field.flow());
        let pair = (yes_field.kinds.clone(), no_field.kinds.clone());
        of_field.push(if pair.0 <= pair.1 { pair } else { (pair.1, pair.0) });
        if deep > 0 {
            compared += compare(ground, &yes, &yes_field, deep - 1);
            compared += compare(ground, &no, &no_field, deep - 1);
        }
    }
    splits.sort();
    of_field.sort();
    splits.dedup();
    of_field.dedup();
    assert_eq!(splits, of_field, "a field offers every split of its heap");
    compared
}

/// Huffman by levels is Huffman one by one.
#[test]
fn levels_of_flow_take_as_many_steps_as_single_flows() {
    let mut rng = fastrand::Rng::with_seed(7);
    for _ in 0..5000 {
        let mut single: Vec<i128> = (0..rng.usize(1..40)).map(|_| rng.i128(1..9)).collect();
        single.sort_unstable();
        let mut flows = crate::large::field::Flows::new();
        for flow in &single {
            match flows.last_mut() {
                Some(level) if level.0 == *flow as u64 => level.1 += 1,
                _ => flows.push((*flow as u64, 1)),
            }
        }
        let one_by_one = crate::bound::huffman(single.into_iter());
        assert_eq!(i128::from(ahead::huffman(flows)), one_by_one);
    }
}
