//! A person's own questions on top, the rest at least effort (`docs/KEY.md` 10).

use spinney_model::{Ask, Kept, Key, Wishes};

use crate::cost::Effort;
use crate::exact::Solver;
use crate::ground::Ground;
use crate::heap::{Asking, Heap};
use crate::settle::{self, Settled};

/// A key with a person's questions on top.
pub(crate) struct Placed {
    pub(crate) key: Key,
    pub(crate) effort: Effort,
    pub(crate) lower: Effort,
    pub(crate) steps: Effort,
    pub(crate) longest: u32,
    /// Questions that could not be asked where they were wanted.
    pub(crate) refused: Vec<Ask>,
}

/// Every question that a person wants kept.
pub(crate) fn asks(wishes: &Wishes) -> Vec<Ask> {
    let mut asks = Vec::new();
    let mut open: Vec<&Kept> = wishes.kept.as_deref().into_iter().collect();
    while let Some(kept) = open.pop() {
        asks.push(kept.ask.clone());
        open.extend(kept.no.as_deref());
        open.extend(kept.yes.as_deref());
    }
    asks
}

/// The heaps that the kept questions leave to be completed.
pub(crate) fn open_heaps(ground: &Ground, wishes: &Wishes) -> Vec<Heap> {
    let mut heaps = Vec::new();
    let mut open = vec![(ground.root(), wishes.kept.as_deref())];
    while let Some((heap, kept)) = open.pop() {
        match kept.and_then(|kept| Some((kept, sides(ground, &heap, &kept.ask)?))) {
            Some((kept, (yes, no))) => {
                open.push((no, kept.no.as_deref()));
                open.push((yes, kept.yes.as_deref()));
            }
            None => heaps.push(heap),
        }
    }
    heaps
}

fn sides(ground: &Ground, heap: &Heap, ask: &Ask) -> Option<(Heap, Heap)> {
    let question = ground.questions.iter().rfind(|question| question.ask == *ask)?;
    match ground.layout.ask(heap, question) {
        Asking::Parts(sides) => Some(ground.layout.take_sides(heap, &sides)),
        Asking::Blocked | Asking::Idle => None,
    }
}

/// The key of a heap with the kept questions on top.
pub(crate) fn place(solver: &mut Solver, heap: &Heap, kept: Option<&Kept>) -> Placed {
    let mut refused = Vec::new();
    solver.allow(solver.taken_apart / 4 + 1000);
    let settled = put(solver, heap, kept, &mut refused);
    Placed {
        key: settle::number(&settled.tree),
        effort: settled.effort,
        lower: settled.lower,
        steps: settled.steps,
        longest: settled.longest,
        refused,
    }
}

fn put(
    solver: &mut Solver,
    heap: &Heap,
    kept: Option<&Kept>,
    refused: &mut Vec<Ask>,
) -> Settled {
    let Some(kept) = kept else {
        return settle::settle(solver, heap);
    };
    let Some((yes, no)) = sides(&solver.ground, heap, &kept.ask) else {
        let wishes = Wishes { kept: Some(Box::new(kept.clone())) };
        refused.extend(asks(&wishes));
        return settle::settle(solver, heap);
    };
    let flow: Effort = solver
        .ground
        .layout
        .kinds(heap)
        .map(|kind| solver.ground.layout.flow(heap, kind))
        .sum();
    let own = flow * crate::cost::steps(solver.ground.matrix.character(kept.ask.character));
    let sides = (
        put(solver, &yes, kept.yes.as_deref(), refused),
        put(solver, &no, kept.no.as_deref(), refused),
    );
    Settled::join(kept.ask.clone(), true, own, flow, sides)
}
