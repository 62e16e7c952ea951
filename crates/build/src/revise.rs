//! Last season's key for this season's table: the fewest changed questions within a loss of
//! effort, and what every number of changes costs (`docs/KEY.md` 16).
//!
//! From a matrix and an old key that is linked to it as far as it goes, to a new key. `old`
//! lays the old key out, `opened` is what may be asked of a heap, `search` finds the least
//! effort of a heap with so many changes and `read_off` the key that takes it; `new_key`
//! compares a given key with the old one; `weighed` takes one number of changes after the
//! other, `written` writes the result down. It reads no wording, but questions that stay keep
//! theirs.

mod new_key;
mod old;
mod opened;
mod read_off;
mod search;
mod step;
mod weighed;
mod written;

use spinney_model::{Claim, Key, Matrix, Revision, Share, Wishes};

use crate::Budget;
use crate::exact::{NEVER, Solver};
use crate::goals_in_order::left_out;
use crate::revise::old::Old;
use crate::revise::written::Writing;
use crate::state_space::Plan;

/// How much may be lost, and how much work may be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Revising {
    /// Steps a find that the new key may take more than the best one.
    pub loss: Share,
    /// Heaps that may be taken apart for the best key, and heaps at places of the old key.
    pub budget: Budget,
}

impl Default for Revising {
    /// A quarter of a step: of four finds one takes a question more. The budget is used up after
    /// about 2 s on tables of 40 kinds × 30 characters.
    fn default() -> Self {
        Self { loss: Share::new(1, 4), budget: Budget { heaps: 30_000 } }
    }
}

/// A revised key with what is claimed of its effort.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Revised {
    /// The new key and what changed.
    pub revision: Revision,
    /// Its effort to be added up again. It is not claimed to be the best of all keys.
    pub claim: Claim,
}

/// Revises an old key for a table.
///
/// Of the wishes only what is in the hand, the season, touch and what must never be asked are
/// regarded.
///
/// **Guarantees**: the new key is one that the table allows, whatever the old one is: questions
/// that are not linked, kinds that are gone and ways that lead nowhere are tolerated.
/// **Cost**: within the budget; what is not sure by then is said not to be.
pub fn revise(matrix: &Matrix, old: &Key, wishes: &Wishes, settings: Revising) -> Revised {
    let plan = Plan {
        left_out: left_out(matrix, wishes),
        allow_touch: wishes.allow_touch,
        ..Plan::default()
    };
    let space = old::lay(matrix, old, plan);
    let places = Old::unfold(old, &space);
    let mut solver = Solver::new(space);
    let heaps = settings.budget.heaps;
    let root = solver.space.root();
    solver.set_limit(heaps);
    solver.close(std::slice::from_ref(&root), NEVER);
    let weighed =
        solver.beside(heaps, |solver| weighed::weigh(solver, &places, &root, settings));
    Writing { matrix, old, places: &places, solver: &solver }
        .revision(weighed, settings, wishes)
}
