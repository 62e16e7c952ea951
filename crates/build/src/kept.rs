//! A person's own questions on top, the rest at least effort (`docs/KEY.md` 10).

use spinney_model::{Ask, Asked, Kept, Key, Matrix, Refusal, Scale, TaxonIx, WhyNot, Wishes};

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

/// The wishes without those that cannot be fulfilled, and why not.
///
/// A refused question takes those after it along. Thresholds that are wished for cut unknown
/// measures, so the table is laid out anew by the caller if anything was refused.
pub(crate) fn prune(ground: &Ground, wishes: &Wishes) -> (Wishes, Vec<Refusal>) {
    let mut refused = Vec::new();
    let kept = pruned(ground, &ground.root(), wishes.kept.as_deref(), &mut refused);
    (Wishes { kept }, refused)
}

fn pruned(
    ground: &Ground,
    heap: &Heap,
    kept: Option<&Kept>,
    refused: &mut Vec<Refusal>,
) -> Option<Box<Kept>> {
    let kept = kept?;
    match try_sides(ground, heap, &kept.ask) {
        Ok((yes, no)) => Some(Box::new(Kept {
            ask: kept.ask.clone(),
            yes: pruned(ground, &yes, kept.yes.as_deref(), refused),
            no: pruned(ground, &no, kept.no.as_deref(), refused),
        })),
        Err(why) => {
            refused.push(Refusal { ask: kept.ask.clone(), why });
            for after in [&kept.yes, &kept.no].into_iter().flatten() {
                let wishes = Wishes { kept: Some(after.clone()) };
                refused.extend(
                    asks(&wishes)
                        .into_iter()
                        .map(|ask| Refusal { ask, why: WhyNot::AfterRefused }),
                );
            }
            None
        }
    }
}

/// Whether an ask fits the character it is about.
pub(crate) fn fits(matrix: &Matrix, ask: &Ask) -> bool {
    let Some(character) = matrix.characters().get(ask.character.0) else { return false };
    match (&ask.yes, &character.scale) {
        (Asked::States(yes), Scale::Words { states }) => {
            !yes.is_empty()
                && yes.len() < states.len()
                && yes.iter().all(|state| state.0 < states.len())
        }
        (Asked::AtLeast(_) | Asked::Below(_), Scale::Counts | Scale::Measure { .. }) => true,
        _ => false,
    }
}

fn sides(ground: &Ground, heap: &Heap, ask: &Ask) -> Option<(Heap, Heap)> {
    try_sides(ground, heap, ask).ok()
}

fn try_sides(ground: &Ground, heap: &Heap, ask: &Ask) -> Result<(Heap, Heap), WhyNot> {
    let question = ground.questions.iter().rfind(|question| question.ask == *ask);
    let question = question.ok_or(WhyNot::NoSuchState)?;
    match ground.layout.ask(heap, question) {
        Asking::Parts(sides) => Ok(ground.layout.take_sides(heap, &sides)),
        Asking::Idle => Err(WhyNot::AllAlike),
        Asking::Blocked => {
            let kind = ground.layout.in_the_way(heap, question);
            Err(WhyNot::Blocked(TaxonIx(kind.expect("a blocked question has a reason"))))
        }
    }
}

/// The key of a heap with the kept questions on top.
pub(crate) fn place(solver: &mut Solver, heap: &Heap, kept: Option<&Kept>) -> Placed {
    solver.allow(SETTLING + solver.taken_apart / 4);
    let settled = put(solver, heap, kept);
    Placed {
        key: settle::number(&settled.tree),
        effort: settled.effort,
        lower: settled.lower,
        steps: settled.steps,
        longest: settled.longest,
    }
}

/// Heaps that settling ties may take apart beyond a quarter of what the search took: where two
/// questions reach the least effort, that has to be shown of the earlier one.
const SETTLING: u64 = 1000;

fn put(solver: &mut Solver, heap: &Heap, kept: Option<&Kept>) -> Settled {
    let placed = kept.and_then(|kept| Some((kept, sides(&solver.ground, heap, &kept.ask)?)));
    let Some((kept, (yes, no))) = placed else {
        return settle::settle(solver, heap);
    };
    let (own, flow) = own(&solver.ground, heap, &kept.ask);
    let sides = (put(solver, &yes, kept.yes.as_deref()), put(solver, &no, kept.no.as_deref()));
    Settled::join(kept.ask.clone(), true, own, flow, sides)
}

/// What a question costs at a heap, and what flows through it.
fn own(ground: &Ground, heap: &Heap, ask: &Ask) -> (Effort, Effort) {
    let layout = &ground.layout;
    let flow: Effort = layout.kinds(heap).map(|kind| layout.flow(heap, kind)).sum();
    (flow * crate::cost::steps(ground.matrix.character(ask.character)), flow)
}

/// What is known so far of the best key with the kept questions: at least, and at most.
pub(crate) fn known(
    solver: &Solver,
    heap: &Heap,
    kept: Option<&Kept>,
) -> (Effort, Option<Effort>) {
    let placed = kept.and_then(|kept| Some((kept, sides(&solver.ground, heap, &kept.ask)?)));
    let Some((kept, (yes, no))) = placed else {
        return solver.known(heap);
    };
    let (own, _) = own(&solver.ground, heap, &kept.ask);
    let (yes, no) =
        (known(solver, &yes, kept.yes.as_deref()), known(solver, &no, kept.no.as_deref()));
    (own + yes.0 + no.0, yes.1.zip(no.1).map(|(yes, no)| own + yes + no))
}
