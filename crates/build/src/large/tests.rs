//! Large heaps, their keys and their bounds, on tables small enough for a second road.

use spinney_fixtures::flora::Flora;
use spinney_fixtures::{drawn, forms::Forms, seeded};
use spinney_model::{Matrix, Share, Wishes};

use super::*;
use crate::goals_in_order::GoalsInOrder;

/// The bounds of all looks ahead, whether all was looked at, and the keys of rising width.
fn looked_at(matrix: &Matrix, looks: usize) -> (Vec<Share>, bool, Vec<Share>) {
    let mut in_order = GoalsInOrder::new(matrix, &Wishes::default());
    let heap = in_order.root();
    let solver = &mut in_order.solver;
    let mut large = Large::new(&solver.space, &heap, (96 << 20, 64 << 20));
    let mut keys = Vec::new();
    for wide in [1, 2, 8] {
        let mut grower = Grower::new(&solver.space);
        let grown = grower.grow(&large.large, wide);
        solver.memo.clear();
        let effort = solver.remember(&heap, grown.branch.as_deref());
        assert!(large.units.effort(grown.effort) <= effort, "flows are rounded down");
        keys.push(solver.space.denominator.share(effort));
    }
    let scale = solver.space.denominator;
    let mut bounds = vec![scale.share(large.units.effort(large.ahead.lower()))];
    let mut over = false;
    for _ in 0..looks {
        if !large.ahead.look(&solver.space, u64::MAX) {
            over = true;
            break;
        }
        bounds.push(scale.share(large.units.effort(large.ahead.lower())));
    }
    let mut grower = Grower::new(&solver.space);
    let ahead = large.ahead.key(&mut grower);
    solver.memo.clear();
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
                let mut in_order = GoalsInOrder::new(&matrix, &Wishes::default());
                let heap = in_order.root();
                in_order.solver.set_limit(heaps);
                match looks {
                    true => in_order.solver.close(std::slice::from_ref(&heap), NEVER),
                    false => in_order.solver.close_in(std::slice::from_ref(&heap), NEVER),
                };
                in_order.solver.known(&heap)
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
    let mut in_order = GoalsInOrder::new(matrix, &Wishes::default());
    in_order.step(4_000);
    let root = in_order.root();
    in_order.known(&root).1.expect("a key was found")
}

/// A side made from a large heap is the same as that side laid out afresh.
#[test]
fn large_heaps_follow_heaps() {
    let mut compared = 0;
    for seed in 0..600 {
        let matrix = seeded::awkward_wide(seed);
        let in_order = GoalsInOrder::new(&matrix, &Wishes::default());
        let space = &in_order.solver.space;
        let heap = in_order.root();
        let groups = Groups::default();
        let (large, _) = LargeHeap::of(space, &heap, &groups);
        compared += compare(space, &heap, &large, 3);
    }
    assert!(compared > 2000, "only {compared} heaps were compared");
}

fn compare(space: &StateSpace, heap: &Heap, large: &LargeHeap, deep: usize) -> usize {
    let layout = &space.layout;
    let kinds: Vec<u32> = layout.kinds(heap).map(|kind| kind as u32).collect();
    assert_eq!(large.kinds, kinds);
    let may: Vec<usize> = (0..large.asks.len()).filter(|at| large.admits(*at)).collect();
    let mut compared = 1;
    let mut splits = Vec::new();
    for question in &space.questions[..space.candidates] {
        if let Asking::Parts(sides) = layout.ask(heap, question)
            && sides.parts_a_pair
        {
            let (yes, no) = layout.take_sides(heap, question, &sides);
            let named = |side: &Heap| layout.kinds(side).map(|kind| kind as u32).collect();
            let (yes, no): (Vec<u32>, Vec<u32>) = (named(&yes), named(&no));
            splits.push(if yes <= no { (yes, no) } else { (no, yes) });
        }
    }
    let mut of_large = Vec::new();
    for at in may {
        let question = &space.questions[large.asks[at].question as usize];
        let Asking::Parts(sides) = layout.ask(heap, question) else {
            panic!("a large heap asks what its heap cannot");
        };
        assert!(sides.parts_a_pair);
        let (yes, no) = layout.take_sides(heap, question, &sides);
        let (yes_large, no_large) = (large.side(space, at, true), large.side(space, at, false));
        assert_eq!(large.side_flow(at, true).0, yes_large.flow());
        let pair = (yes_large.kinds.clone(), no_large.kinds.clone());
        of_large.push(if pair.0 <= pair.1 { pair } else { (pair.1, pair.0) });
        if deep > 0 {
            compared += compare(space, &yes, &yes_large, deep - 1);
            compared += compare(space, &no, &no_large, deep - 1);
        }
    }
    splits.sort();
    of_large.sort();
    splits.dedup();
    of_large.dedup();
    assert_eq!(splits, of_large, "a large heap has every split of its heap");
    compared
}

/// Huffman by levels is Huffman one by one.
#[test]
fn levels_of_flow_take_as_many_steps_as_single_flows() {
    let mut rng = fastrand::Rng::with_seed(7);
    for _ in 0..5000 {
        let mut single: Vec<i128> = (0..rng.usize(1..40)).map(|_| rng.i128(1..9)).collect();
        single.sort_unstable();
        let mut flows = crate::large::heap::Flows::new();
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
