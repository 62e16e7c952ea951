//! Why this was asked here, and what the alternatives would have cost.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Alternative, Ask, CharacterIx, Destination, Key, NotByTouch, Reasons, Share, TaxonIx,
};

use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::heap::{Asking, Heap};
use crate::in_full::InFull;
use crate::read_off;

/// For every couplet of a key that was built from this table: its heap, and every other
/// question with what it would add to the whole key, the rest completed at least effort.
pub(crate) fn explain(
    solver: &mut Solver,
    root: &Heap,
    key: &Key,
    budget: u64,
) -> Vec<Reasons> {
    solver.beside(budget, |solver| reasons(solver, root, key))
}

fn reasons(solver: &mut Solver, root: &Heap, key: &Key) -> Vec<Reasons> {
    let mut reasons = Vec::new();
    let mut open = vec![(0, root.clone())];
    while let Some((at, heap)) = open.pop() {
        let Some(couplet) = key.couplets.get(at) else { continue };
        let Some(ask) = &couplet.ask else { continue };
        let Some((heaps, yes, no)) = asked(solver, &heap, ask) else { continue };
        let space = &solver.space;
        let effort = if space.denominator.exact {
            effort_of(solver, key, at, &heap)
        } else {
            InFull::of(space, &heap, key, couplet.number).effort_in_units()
        };
        reasons.push(Reasons {
            couplet: couplet.number,
            kinds: solver.space.layout.size(&heap),
            heaps,
            also: also(solver, &heap, ask),
            alternatives: alternatives(solver, &heap, ask, effort),
            blocked: blocked(solver, &heap),
            not_by_touch: not_by_touch(solver, &heap, effort),
        });
        for (side, destination) in [(no, &couplet.no), (yes, &couplet.yes)] {
            open.extend(place_of(key, destination).map(|at| (at, side)));
        }
    }
    reasons
}

/// For every couplet what else parts its kinds in the same way, where anything does.
pub(crate) fn second_looks(
    solver: &Solver,
    root: &Heap,
    key: &Key,
) -> BTreeMap<u32, Vec<(Ask, bool)>> {
    let mut looks = BTreeMap::new();
    let mut open = vec![(0, root.clone())];
    while let Some((at, heap)) = open.pop() {
        let Some(couplet) = key.couplets.get(at) else { continue };
        let Some(ask) = &couplet.ask else { continue };
        let Some((_, yes, no)) = asked(solver, &heap, ask) else { continue };
        let also = also(solver, &heap, ask);
        if !also.is_empty() {
            looks.insert(couplet.number, also);
        }
        for (side, destination) in [(no, &couplet.no), (yes, &couplet.yes)] {
            open.extend(place_of(key, destination).map(|at| (at, side)));
        }
    }
    looks
}

type Counts = (usize, usize, usize);

fn asked(solver: &Solver, heap: &Heap, ask: &Ask) -> Option<(Counts, Heap, Heap)> {
    let space = &solver.space;
    let question = space.asking(ask)?;
    let Asking::Parts(sides) = space.layout.ask(heap, question) else {
        return None;
    };
    let (yes, no) = sides.only();
    let both = sides.yes.len() - yes.len();
    let counts = (yes.len(), no.len(), both);
    let (yes, no) = space.layout.take_sides(heap, question, &sides);
    Some((counts, yes, no))
}

fn place_of(key: &Key, destination: &Destination) -> Option<usize> {
    match destination {
        Destination::Couplet(number) => key.couplets.iter().position(|c| c.number == *number),
        Destination::End(_) | Destination::Missing => None,
    }
}

/// The effort of the key below a couplet, as it stands.
fn effort_of(solver: &Solver, key: &Key, at: usize, heap: &Heap) -> Effort {
    let ask = key.couplets[at].ask.as_ref();
    let Some((ask, (_, yes, no))) = ask.and_then(|ask| Some((ask, asked(solver, heap, ask)?)))
    else {
        return 0;
    };
    let Some(question) = solver.space.asking(ask) else { return 0 };
    let mut effort = solver.space.layout.own(heap, question);
    for (side, destination) in [(yes, &key.couplets[at].yes), (no, &key.couplets[at].no)] {
        if let Some(at) = place_of(key, destination) {
            effort += effort_of(solver, key, at, &side);
        }
    }
    effort
}

fn alternatives(
    solver: &mut Solver,
    heap: &Heap,
    ask: &Ask,
    effort: Effort,
) -> Vec<Alternative> {
    let scale = solver.space.denominator;
    let mut alternatives = Vec::new();
    if !scale.exact && !scale.rounded {
        // Nothing is known of what any of them takes.
        return Vec::new();
    }
    let mut seen = BTreeSet::new();
    let here = asked(solver, heap, ask).map(|(_, yes, no)| (yes, no));
    for candidate in solver.every_candidate(heap).list {
        let same = here.as_ref().is_some_and(|(yes, no)| {
            (&candidate.yes, &candidate.no) == (yes, no)
                || (&candidate.no, &candidate.yes) == (yes, no)
        });
        let other = solver.space.questions[candidate.question].ask.clone();
        // Another threshold of the same character that parts the same heaps is no other question.
        let sides = (other.character, candidate.yes.clone(), candidate.no.clone());
        if (same && other.character == ask.character) || !seen.insert(sides) {
            continue;
        }
        let Some((heaps, _, _)) = asked(solver, heap, &other) else { continue };
        let other = read_off::worded(solver, heap, &candidate);
        let yes = solver.refine(&candidate.yes, candidate.yes_lower, NEVER);
        let no = solver.refine(&candidate.no, candidate.no_lower, NEVER);
        if yes.lower >= NEVER || no.lower >= NEVER {
            continue;
        }
        let exact = scale.exact && yes.lower == yes.upper && no.lower == no.upper;
        let whole = candidate.own + yes.lower + no.lower;
        let goals = &solver.space.goals;
        // Where the effort is not the first goal, a bound of all goals says nothing of it.
        let whole_effort = if exact || goals.effort_first() { goals.effort(whole) } else { 0 };
        // In rounded flows the effort of the key is the true one, in units: no goals are packed.
        let as_it_is = if scale.exact { goals.effort(effort) } else { effort };
        let extra = scale.share(whole_effort - as_it_is);
        alternatives.push((whole, Alternative { ask: other, heaps, extra, exact }));
    }
    alternatives.sort_by_key(|(whole, _)| *whole);
    alternatives.into_iter().map(|(_, alternative)| alternative).collect()
}

/// The best question answered by touch, where none may be asked of a heap because a kind in it
/// may hurt, and one would take less.
fn not_by_touch(solver: &mut Solver, heap: &Heap, effort: Effort) -> Option<NotByTouch> {
    if !solver.space.denominator.exact || !solver.space.bars_touch(heap) {
        return None;
    }
    let mut best: Option<(Effort, Alternative)> = None;
    for at in 0..solver.space.candidates {
        let question = &solver.space.questions[at];
        if !solver.space.by_touch(question) {
            continue;
        }
        let ask = question.ask.clone();
        let Some((heaps, yes, no)) = asked(solver, heap, &ask) else { continue };
        if heaps.0 == 0 || heaps.1 == 0 {
            continue;
        }
        let own = solver.space.layout.own(heap, &solver.space.questions[at]);
        let sides = (&yes, &no);
        let ask = read_off::midway(&solver.space, heap, at, sides);
        let (yes, no) = (solver.refine(&yes, 0, NEVER), solver.refine(&no, 0, NEVER));
        let sure = yes.lower == yes.upper && no.lower == no.upper;
        let whole = own + yes.upper.min(NEVER) + no.upper.min(NEVER);
        if !sure || yes.upper >= NEVER || no.upper >= NEVER {
            continue;
        }
        let goals = &solver.space.goals;
        let extra: Share =
            solver.space.denominator.share(goals.effort(whole) - goals.effort(effort));
        if best.as_ref().is_none_or(|(least, _)| whole < *least) {
            best = Some((whole, Alternative { ask, heaps, extra, exact: true }));
        }
    }
    let (_, instead) = best.filter(|(_, best)| best.extra < Share::from_integer(0))?;
    let at_risk = &solver.space.at_risk;
    let kinds = solver.space.layout.present_of(heap, at_risk).iter().map(TaxonIx).collect();
    Some(NotByTouch { instead, kinds })
}

/// Questions about other characters that part the very same kinds in the same way, or the
/// opposite way. Where a kind goes both ways no other question can say which. What is answered by
/// touch is no second look: nobody warns of it where the question itself is only looked at.
fn also(solver: &Solver, heap: &Heap, ask: &Ask) -> Vec<(Ask, bool)> {
    let space = &solver.space;
    let sides = |question| match space.layout.ask(heap, question) {
        Asking::Parts(sides) => {
            let (yes, no) = sides.only();
            (yes == sides.yes).then_some((yes, no))
        }
        Asking::Blocked | Asking::Idle => None,
    };
    let Some((yes, no)) = space.asking(ask).and_then(sides) else { return Vec::new() };
    let mut also: Vec<(Ask, bool)> = Vec::new();
    for question in &space.questions[..space.candidates] {
        let same_character =
            |(other, _): &(Ask, bool)| other.character == question.ask.character;
        let other = question.ask.character != ask.character && !space.by_touch(question);
        if !other || also.iter().any(same_character) {
            continue;
        }
        match sides(question) {
            Some(other) if other == (yes.clone(), no.clone()) => {
                also.push((question.ask.clone(), false));
            }
            Some(other) if other == (no.clone(), yes.clone()) => {
                also.push((question.ask.clone(), true));
            }
            _ => {}
        }
    }
    also
}

/// The characters that cannot be asked about at a heap, each with a kind that stands in the way;
/// those of which some question is not blocked are left out.
fn blocked(solver: &Solver, heap: &Heap) -> Vec<(CharacterIx, TaxonIx)> {
    let space = &solver.space;
    let mut blocked: BTreeMap<CharacterIx, Option<TaxonIx>> = BTreeMap::new();
    for question in &space.questions[..space.candidates] {
        let in_the_way = match space.layout.ask(heap, question) {
            Asking::Blocked => space.layout.in_the_way(heap, question).map(TaxonIx),
            Asking::Idle | Asking::Parts(_) => None,
        };
        let so_far = blocked.entry(question.ask.character).or_insert(in_the_way);
        if in_the_way.is_none() {
            *so_far = None;
        }
    }
    blocked.into_iter().filter_map(|(at, taxon)| Some((at, taxon?))).collect()
}
