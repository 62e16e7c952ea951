//! Every kind walked through the key in every form: from key and matrix to ways and heaps.
//!
//! A kind that varies in what is asked goes both ways, each time with the values that are left
//! to it. Forms that stand at one couplet with the same values in everything still to be asked
//! are walked on as one, so that a key whose ways meet again is not walked once for every
//! combination. Where the table cannot answer (a question nobody linked, a character the kind
//! does not have) the kind is given the benefit of the doubt: it takes the side on which its
//! name still stands. What goes wrong is recorded where it first goes wrong; `places` says it.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Answer, TaxonIx, Walk};

use crate::amount::Amount;
use crate::question::Question;
use crate::tree::Tree;
use crate::values::{Has, Taken, Values};

mod live;
mod named;
mod walker;

pub(crate) use named::Named;

use live::Live;
use walker::{UnderWay, Walker};

/// How often kinds may stand before couplets, over all: twice what ten thousand kinds need in
/// an even key. It bounds time and memory for a comb of thousands of kinds.
const MOST_VISITS: usize = 300_000;

/// How many steps are written down as walks, over all.
const MOST_STEPS: usize = 300_000;

/// One form of a kind before a couplet.
#[derive(Clone, Debug)]
pub(crate) struct Visit {
    /// The kind.
    pub(crate) taxon: TaxonIx,
    /// Whether it goes to yes and to no; both where it varies, or nobody knows.
    pub(crate) goes: [bool; 2],
    /// Whether it has what is asked for.
    pub(crate) has: Has,
    /// What answers have taken from it before.
    pub(crate) taken: Taken,
    /// Whether its name stands nowhere below: it should not be here at all.
    pub(crate) stray: bool,
    /// Its flow (section 2); None where section 2 has none.
    pub(crate) flow: Option<Amount>,
}

/// Why a form left the side on which its name stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Cause {
    /// The table says so.
    Sole,
    /// The kind varies, and this is its other form.
    Form,
    /// The threshold lies inside its range.
    Inside,
    /// Nobody has recorded what it has.
    Unrecorded,
}

/// A form of a kind that leaves the side on which its name stands.
#[derive(Clone, Debug)]
pub(crate) struct Stray {
    /// Why.
    pub(crate) cause: Cause,
    /// Whether it was there only if an unlinked question was answered so.
    pub(crate) doubtful: bool,
    /// What was taken from it before and at the couplet: which form it is.
    pub(crate) form: Taken,
    /// The ends at which it then comes out.
    pub(crate) ends: BTreeSet<(usize, Answer)>,
}

/// The effort of the key, added up along all ways.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Effort {
    /// Weight times cost of every question on every way.
    pub(crate) total: Amount,
    /// Weight times number of questions.
    pub(crate) steps: Amount,
}

impl Effort {
    fn none() -> Self {
        Self { total: Amount::zero(), steps: Amount::zero() }
    }

    fn plus(&self, more: &Self) -> Self {
        Self { total: self.total.plus(&more.total), steps: self.steps.plus(&more.steps) }
    }
}

/// Everything that was seen on the walks.
#[derive(Default)]
pub(crate) struct Walked {
    /// Who stands before each couplet.
    pub(crate) visits: Vec<Vec<Visit>>,
    /// Who comes out at each end, with what was taken on the way.
    pub(crate) ends: BTreeMap<(usize, Answer), Vec<(TaxonIx, Taken)>>,
    /// Where a form leaves the side on which its name stands.
    pub(crate) strays: BTreeMap<(usize, Answer, TaxonIx), Stray>,
    /// Who is lost where a number leads nowhere, nothing is written, or in a loop.
    pub(crate) fallen: BTreeMap<(usize, Answer), BTreeSet<TaxonIx>>,
    /// The ways, written down.
    pub(crate) walks: Vec<Walk>,
    /// Kinds that come out at an end that names them; false where it hangs on an unlinked
    /// question.
    pub(crate) arrived: BTreeMap<TaxonIx, bool>,
    /// The effort; None where it cannot be added up.
    pub(crate) effort: Option<Effort>,
    /// Kinds that could not be followed to the end of all their ways.
    pub(crate) unfinished: BTreeSet<TaxonIx>,
    /// Whether ways were left out of `walks` because there were too many.
    pub(crate) walks_left_out: bool,
}

/// Walks every kind from the first couplet.
pub(crate) fn walk(values: &Values<'_>, tree: &Tree<'_>, named: &mut Named) -> Walked {
    let questions: Vec<Option<Question>> =
        tree.key.couplets.iter().map(|c| Question::of(values.matrix, c)).collect();
    let live = Live::of(values, tree, &questions);
    let mut walked = Walked {
        visits: vec![Vec::new(); tree.to.len()],
        effort: Some(Effort::none()),
        ..Walked::default()
    };
    if tree.to.is_empty() {
        return walked;
    }
    let mut budget = MOST_VISITS;
    let mut steps_left = MOST_STEPS;
    for taxon in values.matrix.taxon_indices() {
        if budget == 0 {
            walked.unfinished.insert(taxon);
            walked.effort = None;
            continue;
        }
        named.look_for(taxon, tree);
        let mut walker = Walker {
            values,
            tree,
            named,
            questions: &questions,
            live: &live,
            walked: &mut walked,
            taxon,
            trail: Vec::new(),
            came_out: Vec::new(),
            under_way: UnderWay::new(),
            effort: Some(Effort::none()),
        };
        budget = walker.walk_all(budget);
        steps_left = walker.write_down(steps_left);
        let effort = walker.effort.take();
        let before = walked.effort.take();
        walked.effort = before.zip(effort).map(|(before, more)| before.plus(&more));
    }
    walked
}
