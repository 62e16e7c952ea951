//! A heap opened for revising: what may be asked of it, and how many questions it needs.
//!
//! Kinds that every key must part need an end each, so n of them need n − 1 questions; and
//! where no kind present varies, no key has more than one question fewer than there are kinds.

use crate::candidates::Candidate;
use crate::cost::Effort;
use crate::exact::Solver;
use crate::heap::{Asking, Heap};
use crate::set::Set;

/// What may be asked of a heap.
pub(super) struct Opened {
    /// Of several questions that make the same two heaps, the cheapest.
    pub(super) candidates: Vec<Candidate>,
    /// For each the fewest and the most questions of its yes side and of its no side.
    pub(super) sides: Vec<[(u32, u32); 2]>,
    pub(super) end: bool,
    /// No key of this heap has fewer questions.
    pub(super) least: u32,
}

impl Opened {
    pub(super) fn of(solver: &Solver, always: &Always, heap: &Heap) -> Self {
        let offered = solver.candidates(heap);
        let mut candidates = offered.list;
        candidates.sort_by_key(|candidate| (candidate.own, candidate.question));
        let mut seen = rustc_hash::FxHashSet::default();
        candidates.retain(|candidate| {
            let (yes, no) = (&candidate.yes, &candidate.no);
            let pair = if yes <= no { (yes, no) } else { (no, yes) };
            seen.insert((pair.0.clone(), pair.1.clone()))
        });
        let layout = &solver.space.layout;
        let mut with = vec![Set::none(layout.kinds_in_all()); layout.kinds_in_all()];
        for candidate in &candidates {
            join(&mut with, &only(solver, &candidate.yes, &candidate.no));
        }
        let least = clique(&with, layout.kinds(heap)).saturating_sub(1);
        let questions = |side: &Heap| always.questions(solver, side);
        let sides = candidates
            .iter()
            .map(|candidate| [questions(&candidate.yes), questions(&candidate.no)])
            .collect();
        Self { candidates, sides, end: offered.end, least }
    }
}

/// What every heap of a table shares.
pub(super) struct Always {
    /// Kinds that are parted from each kind by a question that nothing ever blocks.
    with: Vec<Set>,
    /// Kinds that some question may send both ways.
    varying: Set,
}

impl Always {
    pub(super) fn of(solver: &Solver) -> Self {
        let kinds = solver.space.layout.kinds_in_all();
        let mut with = vec![Set::none(kinds); kinds];
        let mut varying = Set::none(kinds);
        for (at, question) in solver.space.questions.iter().enumerate() {
            for some in &question.varying {
                varying.add(some.kind);
            }
            let free = question.never.is_empty() && question.governed.is_empty();
            if free && at < solver.space.candidates {
                join(&mut with, &(question.yes.clone(), question.no.clone()));
            }
        }
        Self { with, varying }
    }

    /// The fewest questions that any key of a heap has, and the most.
    pub(super) fn questions(&self, solver: &Solver, heap: &Heap) -> (u32, u32) {
        let layout = &solver.space.layout;
        let least = clique(&self.with, layout.kinds(heap)).saturating_sub(1);
        let varies = layout.kinds(heap).any(|kind| self.varying.has(kind));
        let most = if varies { u32::MAX } else { (layout.size(heap) as u32).saturating_sub(1) };
        (least, most)
    }
}

/// The kinds that are on one side alone.
fn only(solver: &Solver, yes: &Heap, no: &Heap) -> (Set, Set) {
    let layout = &solver.space.layout;
    let apart = |one: &Heap, other: &Heap| {
        let mut set = Set::none(layout.kinds_in_all());
        for kind in layout.kinds(one).filter(|kind| !layout.has(other, *kind)) {
            set.add(kind);
        }
        set
    };
    (apart(yes, no), apart(no, yes))
}

fn join(with: &mut [Set], (yes, no): &(Set, Set)) {
    for kind in yes.iter() {
        with[kind].join(no);
    }
    for kind in no.iter() {
        with[kind].join(yes);
    }
}

/// How many of these kinds, taken greedily, are all parted from each other.
fn clique(with: &[Set], kinds: impl Iterator<Item = usize>) -> u32 {
    let mut chosen = Set::none(with.len());
    let mut size = 0;
    for kind in kinds {
        if with[kind].holds(&chosen) {
            chosen.add(kind);
            size += 1;
        }
    }
    size
}

/// The two heaps that a question makes, if it may be asked and parts a pair; and its effort.
/// Nobody is sent to touch what may hurt where a candidate separates without.
pub(super) fn parted(
    solver: &Solver,
    heap: &Heap,
    question: usize,
) -> Option<(Heap, Heap, Effort)> {
    let space = &solver.space;
    let question = &space.questions[question];
    if space.by_touch(question) && space.bars_touch(heap) {
        return None;
    }
    match space.layout.ask(heap, question) {
        Asking::Parts(sides) if sides.parts_a_pair => {
            let (yes, no) = space.layout.take_sides(heap, question, &sides);
            Some((yes, no, space.layout.own(heap, question)))
        }
        _ => None,
    }
}
