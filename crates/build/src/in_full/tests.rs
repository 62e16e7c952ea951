//! Rounding where it is not needed, against the second road and against exact flows.

use spinney_fixtures::forms::Forms;
use spinney_fixtures::seeded;
use spinney_model::{Matrix, Stopped, Wishes};

use super::*;
use crate::goals_in_order::GoalsInOrder;
use crate::prices::Prices;
use crate::{Budget, Built, Search, build};

/// The search with rounded flows.
fn rounded(matrix: &Matrix, heaps: u64) -> Built {
    let wishes = Wishes::default();
    let in_order = GoalsInOrder::with(matrix, &wishes, true);
    let prices = Prices::of(matrix, &in_order, &wishes);
    let mut search = Search { in_order, prices };
    search.step(heaps);
    search.finish()
}

fn holds(matrix: &Matrix, built: &Built, optimum: Share, name: &str) {
    let claim = &built.claim;
    assert_eq!(claim.stopped, Some(Stopped::Overflow), "{name}: never said to be proved");
    assert!(claim.lower_bound <= optimum, "{name}: {} > {optimum}", claim.lower_bound);
    assert!(claim.total >= optimum, "{name}: {} < {optimum}", claim.total);
    // What the key takes, in flows that are exact.
    let in_order = GoalsInOrder::new(matrix, &Wishes::default());
    let (space, root) = (&in_order.solver.space, in_order.root());
    let taken = taken(space, &root, &built.key, 1);
    assert_eq!(claim.total, space.denominator.share(taken), "{name}: what is claimed");
}

fn taken(space: &StateSpace, heap: &Heap, key: &Key, number: u32) -> Effort {
    let Some(couplet) = key.couplets.get(number as usize - 1) else { return 0 };
    let question = couplet.ask.as_ref().and_then(|ask| space.asking(ask)).expect("ours");
    let Asking::Parts(sides) = space.layout.ask(heap, question) else { panic!("asked") };
    let (yes, no) = space.layout.take_sides(heap, question, &sides);
    let below = [(yes, &couplet.yes), (no, &couplet.no)].map(|(side, to)| match to {
        Destination::Couplet(number) => taken(space, &side, key, *number),
        _ => 0,
    });
    space.layout.own(heap, question) + below[0] + below[1]
}

/// Forced to round, the bound stays below the optimum of the second road and loses less than a
/// millionth of it; what is claimed of the key is exact all the same.
#[test]
fn rounded_flows_bound_the_optimum_of_every_key() {
    for seed in 0..1500 {
        let matrix = seeded::awkward(seed);
        let optimum = Forms::of(&matrix).try_every_key().least;
        let built = rounded(&matrix, 60_000);
        holds(&matrix, &built, optimum, &format!("awkward {seed}"));
        let near = optimum - optimum / 1_000_000;
        assert!(built.claim.lower_bound >= near, "{seed}: {}", built.claim.lower_bound);
    }
}

#[test]
fn rounded_flows_bound_the_optimum_of_wider_tables() {
    for seed in 0..60 {
        let matrix = seeded::awkward_wide(seed);
        let exact = build(&matrix, &Wishes::default(), Budget::default()).claim;
        assert!(exact.optimal());
        for heaps in [1, 100, 60_000] {
            holds(&matrix, &rounded(&matrix, heaps), exact.total, &format!("wide {seed}"));
        }
    }
}

/// A fraction that fits is said as it is, another one a little above.
#[test]
fn what_does_not_fit_is_said_less_than_a_unit_above() {
    let third = BigRational::new(1.into(), 3.into());
    assert_eq!(share(&third), Share::new(1, 3));
    let mut tiny = third.clone();
    for _ in 0..100 {
        tiny *= BigRational::new(1.into(), 3.into());
    }
    let unit = Share::new(1, 1 << FLOW_BITS);
    assert_eq!(share(&tiny), unit);
    let said = long(share(&(&third + &tiny)));
    assert!(said > third && said < &third + &tiny + long(unit));
    assert_eq!(share(&-tiny), Share::zero());
}
