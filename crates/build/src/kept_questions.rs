//! A person's own questions on top, the rest at least effort (`docs/KEY.md` 10).

use spinney_model::{
    Ask, Asked, Kept, Matrix, Refusal, Scale, TaxonIx, Wanted, WhyNot, Wishes,
};

use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::heap::{Asking, Heap};
use crate::read_off::{self, ReadOff};
use crate::state_space::StateSpace;

/// Every question that a person wants kept.
pub(crate) fn asks(wishes: &Wishes) -> Vec<Ask> {
    wishes.kept.iter().map(|kept| kept.ask.clone()).collect()
}

/// The place of the first question that is kept.
pub(crate) fn first(kept: &[Kept]) -> Option<usize> {
    (!kept.is_empty()).then_some(0)
}

/// The question that is kept at a heap, and the heaps it makes; None: nothing is to be kept
/// there, or it cannot be asked.
pub(crate) fn here<'k>(
    space: &StateSpace,
    heap: &Heap,
    kept: &'k [Kept],
    at: Option<usize>,
) -> Option<(&'k Kept, (Heap, Heap))> {
    let kept = &kept[at?];
    Some((kept, try_sides(space, heap, &kept.ask).ok()?))
}

/// The heaps that the kept questions leave to be completed.
pub(crate) fn open_heaps(space: &StateSpace, root: &Heap, kept: &[Kept]) -> Vec<Heap> {
    let mut heaps = Vec::new();
    let mut open = vec![(root.clone(), first(kept))];
    while let Some((heap, at)) = open.pop() {
        match here(space, &heap, kept, at) {
            Some((kept, (yes, no))) => open.extend([(no, kept.no), (yes, kept.yes)]),
            None => heaps.push(heap),
        }
    }
    heaps
}

/// Whether a limit allows no further question at a heap of which a kept question is asked.
pub(crate) fn break_limits(space: &StateSpace, root: &Heap, kept: &[Kept]) -> bool {
    let mut open = vec![(root.clone(), first(kept))];
    while let Some((heap, at)) = open.pop() {
        let Some((kept, (yes, no))) = here(space, &heap, kept, at) else { continue };
        if space.layout.out_of_steps(&heap) {
            return true;
        }
        open.extend([(no, kept.no), (yes, kept.yes)]);
    }
    false
}

/// The wishes without those that cannot be fulfilled, and why not.
///
/// A refused question takes those after it along. Thresholds that are wished for cut unknown
/// measures, so the table is laid out anew by the caller if anything was refused.
pub(crate) fn prune(space: &StateSpace, wishes: &Wishes) -> (Vec<Kept>, Vec<Refusal>) {
    let (mut left, mut refused) = (Vec::new(), Vec::new());
    let mut open = vec![(space.root(), first(&wishes.kept), None)];
    while let Some((heap, at, after)) = open.pop() {
        let Some(at) = at else { continue };
        let kept = &wishes.kept[at];
        match try_sides(space, &heap, &kept.ask) {
            Ok((yes, no)) => {
                let here = Kept::add(&mut left, kept.ask.clone(), after);
                open.push((no, kept.no, Some((here, false))));
                open.push((yes, kept.yes, Some((here, true))));
            }
            Err(why) => {
                let mut why = Some(why);
                for kept in from(&wishes.kept, at) {
                    refused.push(Refusal {
                        wanted: Wanted::Ask(kept.ask.clone()),
                        why: why.take().unwrap_or(WhyNot::AfterRefused),
                    });
                }
            }
        }
    }
    (left, refused)
}

/// A question of a list, then all those after it.
fn from(kept: &[Kept], at: usize) -> impl Iterator<Item = &Kept> {
    let mut open = vec![at];
    std::iter::from_fn(move || {
        let kept = &kept[open.pop()?];
        open.extend([kept.no, kept.yes].into_iter().flatten());
        Some(kept)
    })
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

fn try_sides(space: &StateSpace, heap: &Heap, ask: &Ask) -> Result<(Heap, Heap), WhyNot> {
    let question = space.asking(ask).ok_or(WhyNot::NoSuchState)?;
    if space.left_out.contains(&ask.character) {
        return Err(WhyNot::LeftOut);
    }
    match space.layout.ask(heap, question) {
        Asking::Parts(sides) => Ok(space.layout.take_sides(heap, question, &sides)),
        Asking::Idle => Err(WhyNot::AllAlike),
        Asking::Blocked => {
            let kind = space.layout.in_the_way(heap, question);
            Err(WhyNot::Blocked(TaxonIx(kind.expect("a blocked question has a reason"))))
        }
    }
}

/// The key of a heap with the kept questions on top.
pub(crate) fn place(solver: &mut Solver, heap: &Heap, kept: &[Kept]) -> ReadOff {
    let heaps = SETTLING + solver.taken_apart / 4;
    solver.beside(heaps, |solver| read_off::read_off(solver, heap, kept))
}

/// Heaps that settling ties may take apart beyond a quarter of what the search took: where two
/// questions reach the least effort, that has to be shown of the earlier one.
const SETTLING: u64 = 1000;

/// What a question costs at a heap, and what flows through it.
pub(crate) fn own(space: &StateSpace, heap: &Heap, ask: &Ask) -> (Effort, Effort) {
    let question = space.asking(ask).expect("a kept question was laid out");
    (space.layout.own(heap, question), space.flow(heap))
}

/// What is known so far of the best key with the kept questions: at least, and at most.
pub(crate) fn known(solver: &Solver, root: &Heap, kept: &[Kept]) -> (Effort, Option<Effort>) {
    let space = &solver.space;
    let (mut lower, mut upper) = (0, Some(0));
    let mut add = |least: Effort, most: Option<Effort>| {
        lower = (lower + least).min(NEVER);
        upper = upper.zip(most).map(|(upper, most)| upper + most);
    };
    let mut open = vec![(root.clone(), first(kept))];
    while let Some((heap, at)) = open.pop() {
        let Some((kept, (yes, no))) = here(space, &heap, kept, at) else {
            let (least, most) = solver.known(&heap);
            add(least, most);
            continue;
        };
        let question = space.asking(&kept.ask).expect("a kept question was laid out");
        let new = space.layout.new_words(&heap, &question.words);
        if space.layout.out_of_steps(&heap)
            || solver.most_new_words.is_some_and(|most| new > most)
        {
            add(NEVER, None);
            continue;
        }
        let (own, _) = self::own(space, &heap, &kept.ask);
        add(own, Some(own));
        open.extend([(no, kept.no), (yes, kept.yes)]);
    }
    (lower, upper)
}
