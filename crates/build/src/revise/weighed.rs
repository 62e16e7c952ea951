//! One number of changes after the other: what each takes, and the first within the loss.
//!
//! From a heap and the old key to the curve and the key that is chosen. Where the search stops,
//! the best key and the old one followed as far as it goes are there without it.

use num_traits::CheckedMul;
use spinney_model::Share;

use super::Revising;
use super::new_key::NewKey;
use super::old::Old;
use super::search::FewestChanges;
use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::heap::Heap;
use crate::state_space::StateSpace;

/// What was found of change and effort.
pub(super) struct Weighed {
    pub(super) chosen: NewKey,
    pub(super) changes: u32,
    pub(super) effort: Effort,
    pub(super) best: Effort,
    /// Changes, effort, proved.
    pub(super) curve: Vec<(u32, Effort, bool)>,
    pub(super) fewest: u32,
    pub(super) sure: bool,
    pub(super) work: u64,
}

/// Finds the least effort for one number of changes after the other.
pub(super) fn weigh(
    solver: &mut Solver,
    old: &Old,
    root: &Heap,
    settings: Revising,
) -> Weighed {
    let start = old.start();
    // Two keys that are there without a search: the best, and the old one as far as it goes.
    let (best_changes, best_key) = NewKey::best(solver, root).beside(solver, old, start);
    let best = best_key.effort(solver);
    let best_sure = solver.known(root).0 == best;
    let following = NewKey::following(solver, old, root, start);
    let (following_changes, following) = following.beside(solver, old, start);
    let following_effort = following.effort(solver);
    let given = [(best_changes, best), (following_changes, following_effort)];
    let allowed = allowed(&solver.space, best, settings.loss);
    let mut search = FewestChanges::new(solver, old, settings.budget.heaps);
    let mut curve = Curve::default();
    for changes in search.least(root, start)..=best_changes.max(following_changes) {
        let (lower, mut upper) = search.refine(root, start, changes, curve.before);
        for (changes_given, effort) in given {
            upper = if changes >= changes_given { upper.min(effort) } else { upper };
        }
        curve.take(changes, lower, upper, allowed);
        if best_sure && curve.before <= best && !old.foreign(start) {
            break;
        }
    }
    let Curve { points, fewest, chosen, sure, .. } = curve;
    let (changes, effort) = chosen.expect("the best key is within any loss");
    let key = if search.known(root, start, changes).1 == effort {
        search.laid(root, start, changes)
    } else if changes >= following_changes && following_effort == effort {
        following
    } else {
        best_key
    };
    let work = search.work;
    let (changes, chosen) = key.beside(search.solver, old, start);
    let fewest = fewest.unwrap_or(changes);
    let sure = sure && best_sure && !old.cut_short;
    Weighed { chosen, changes, effort, best, curve: points, fewest, sure, work }
}

/// What one number of changes after the other yields.
struct Curve {
    points: Vec<(u32, Effort, bool)>,
    fewest: Option<u32>,
    chosen: Option<(u32, Effort)>,
    /// Whether no fewer changes are within the loss, and as many take no less.
    sure: bool,
    /// The least effort so far.
    before: Effort,
}

impl Default for Curve {
    fn default() -> Self {
        Self { points: Vec::new(), fewest: None, chosen: None, sure: true, before: NEVER }
    }
}

impl Curve {
    fn take(&mut self, changes: u32, lower: Effort, upper: Effort, allowed: Effort) {
        let upper = upper.min(self.before);
        let proved = lower >= upper;
        if lower < NEVER {
            self.fewest.get_or_insert(changes);
        }
        if self.chosen.is_none() {
            if upper <= allowed {
                self.chosen = Some((changes, upper));
                self.sure &= proved;
            } else {
                self.sure &= lower > allowed;
            }
        }
        if upper < self.before {
            self.points.push((changes, upper, proved));
        }
        self.before = upper;
    }
}

/// The effort of a key that loses just so much a find against the best.
fn allowed(space: &StateSpace, best: Effort, loss: Share) -> Effort {
    let more = loss.checked_mul(&Share::from_integer(space.total_flow()));
    // A loss beyond all numbers allows any key.
    let more = more.map_or(NEVER, |more| more.floor().to_integer().clamp(0, NEVER));
    best.saturating_add(more).min(NEVER - 1)
}
