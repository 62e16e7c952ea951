//! Forgiving keys: which kinds to look for on the wrong side of which question as well, so that
//! the most finds come out right although pupils err (`docs/KEY.md` 18).
//!
//! From a matrix to the best key with no second place, with one, two and three. `odds` says how
//! often which question is read right, `node` is a heap with what still flows through it, right
//! or forgiven, `bound` says how much can come out right at most, `search` finds the most, and
//! `second` the most with second places; `written` lays the key out. Nothing is rounded.
//!
//! **Source**: errors along a way as Osborne 1963 counts them, as others report it
//! (`docs/TRADE.md`, "Reading errors"); two ways to one end are an old habit of printed keys.

mod bound;
mod node;
mod odds;
mod search;
mod second;
mod written;

use num_traits::{One, Zero};
use spinney_model::{Forgiving, ForgivingKeys, Key, Matrix, Share, Stopped, Wishes};

use crate::Budget;
use crate::exact::Solver;
use crate::forgiving::node::Node;
use crate::forgiving::search::SecondPlaces;
use crate::goals_in_order::left_out;
use crate::state_space::{Plan, StateSpace};

/// The most second places that a key is searched with.
pub const MOST_SECOND_PLACES: u32 = 3;

/// The keys with the most right ends that have at most 0, 1, … `most` second places.
///
/// Of the wishes only what is in the hand, the season, touch and what must never be asked are
/// regarded.
///
/// **Guarantees**: exact fractions; the same keys on every machine. Ties: fewer second places,
/// then fewer steps walked by finds that are not lost, then the order of the table.
/// **Cost**: at most `budget` heaps for each key; what is not proved by then has a bound.
pub fn forgive(matrix: &Matrix, wishes: &Wishes, most: u32, budget: Budget) -> ForgivingKeys {
    let plan = Plan {
        left_out: left_out(matrix, wishes),
        allow_touch: wishes.allow_touch,
        ..Plan::default()
    };
    let space = StateSpace::lay(matrix, &plan);
    let exact = space.denominator.exact;
    let mut search = SecondPlaces::new(Solver::new(space));
    let (root, _) = Node::root(&search.table);
    let all: Share = Share::from_integer(root.masses.iter().sum());
    let mut keys: Vec<Forgiving> = Vec::new();
    for extra in 0..=most.min(MOST_SECOND_PLACES) {
        search.allow(budget.heaps);
        let known = if exact { search.solve(&root, extra as u8, None) } else { None };
        let Some(known) = known.filter(|_| !all.is_zero()) else {
            keys.push(too_large(extra, keys.last()));
            continue;
        };
        let (mut key, mut both_ways, right) = written::write(&mut search, &root, extra as u8);
        let stopped = match (known.done, search.overflowed) {
            (true, _) => None,
            (false, true) => Some(Stopped::Overflow),
            (false, false) => Some(Stopped::Budget),
        };
        let mut right = right / all;
        // A search that was stopped may have found less than the one before.
        if let Some(before) = keys.last().filter(|before| before.right > right) {
            (key, both_ways, right) =
                (before.key.clone(), before.both_ways.clone(), before.right);
        }
        let at_most = if known.done { right } else { (known.upper / all).min(Share::one()) };
        keys.push(Forgiving { budget: extra, key, both_ways, right, at_most, stopped });
    }
    ForgivingKeys { keys, heaps: search.opened }
}

/// Where the numbers do not fit: the key before, of which nothing more is claimed.
fn too_large(budget: u32, before: Option<&Forgiving>) -> Forgiving {
    let stopped = Some(Stopped::Overflow);
    let at_most = Share::one();
    match before {
        Some(before) => Forgiving { budget, at_most, stopped, ..before.clone() },
        None => Forgiving {
            budget,
            key: Key::default(),
            both_ways: Vec::new(),
            right: Share::zero(),
            at_most,
            stopped,
        },
    }
}
