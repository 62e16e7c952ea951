//! A person's own questions on top, the rest at least effort (`docs/KEY.md` 10).

use spinney_model::{
    Ask, Asked, Kept, Key, Matrix, Refusal, Scale, TaxonIx, Wanted, WhyNot, Wishes,
};

use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
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
pub(crate) fn open_heaps(ground: &Ground, root: &Heap, kept: Option<&Kept>) -> Vec<Heap> {
    let mut heaps = Vec::new();
    let mut open = vec![(root.clone(), kept)];
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

/// Whether a limit allows no further question at a heap of which a kept question is asked.
pub(crate) fn break_limits(ground: &Ground, root: &Heap, kept: Option<&Kept>) -> bool {
    let Some((kept, (yes, no))) =
        kept.and_then(|kept| Some((kept, sides(ground, root, &kept.ask)?)))
    else {
        return false;
    };
    ground.layout.out_of_steps(root)
        || break_limits(ground, &yes, kept.yes.as_deref())
        || break_limits(ground, &no, kept.no.as_deref())
}

/// The wishes without those that cannot be fulfilled, and why not.
///
/// A refused question takes those after it along. Thresholds that are wished for cut unknown
/// measures, so the table is laid out anew by the caller if anything was refused.
pub(crate) fn prune(ground: &Ground, wishes: &Wishes) -> (Option<Box<Kept>>, Vec<Refusal>) {
    let mut refused = Vec::new();
    let kept = pruned(ground, &ground.root(), wishes.kept.as_deref(), &mut refused);
    (kept, refused)
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
            refused.push(Refusal { wanted: Wanted::Ask(kept.ask.clone()), why });
            for after in [&kept.yes, &kept.no].into_iter().flatten() {
                let wishes = Wishes { kept: Some(after.clone()), ..Wishes::default() };
                refused.extend(asks(&wishes).into_iter().map(|ask| Refusal {
                    wanted: Wanted::Ask(ask),
                    why: WhyNot::AfterRefused,
                }));
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
    let question = ground.asking(ask).ok_or(WhyNot::NoSuchState)?;
    if ground.left_out.contains(&ask.character) {
        return Err(WhyNot::LeftOut);
    }
    match ground.layout.ask(heap, question) {
        Asking::Parts(sides) => Ok(ground.layout.take_sides(heap, question, &sides)),
        Asking::Idle => Err(WhyNot::AllAlike),
        Asking::Blocked => {
            let kind = ground.layout.in_the_way(heap, question);
            Err(WhyNot::Blocked(TaxonIx(kind.expect("a blocked question has a reason"))))
        }
    }
}

/// The key of a heap with the kept questions on top.
pub(crate) fn place(solver: &mut Solver, heap: &Heap, kept: Option<&Kept>) -> Placed {
    let heaps = SETTLING + solver.taken_apart / 4;
    let settled = solver.beside(heaps, |solver| put(solver, heap, kept));
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
    let question = ground.asking(ask).expect("a kept question was laid out");
    (ground.layout.own(heap, question), ground.flow(heap))
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
    if solver.ground.layout.out_of_steps(heap) {
        return (NEVER, None);
    }
    let question = solver.ground.asking(&kept.ask).expect("a kept question was laid out");
    let new = solver.ground.layout.new_words(heap, &question.words);
    if solver.most_new_words.is_some_and(|most| new > most) {
        return (NEVER, None);
    }
    let (own, _) = own(&solver.ground, heap, &kept.ask);
    let (yes, no) =
        (known(solver, &yes, kept.yes.as_deref()), known(solver, &no, kept.no.as_deref()));
    ((own + yes.0 + no.0).min(NEVER), yes.1.zip(no.1).map(|(yes, no)| own + yes + no))
}
