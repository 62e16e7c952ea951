//! The best keys one after the other, and how many are as good as the best.
//!
//! Two keys are two only if their nested heaps differ: where two questions part a heap alike,
//! the cheaper stands for both. The n-th best key of a heap is a question with the i-th best key
//! of one side and the j-th best of the other; so each heap keeps a list of its best keys, which
//! grows only as far as somebody asks. A question is looked at no earlier than its bound says.
//!
//! **Source**: lazy enumeration of the k best derivations, Huang and Chiang 2005 (from memory).

use std::cmp::Reverse;
use std::collections::{BTreeMap, BinaryHeap};

use rustc_hash::FxHashMap;
use spinney_model::{AsGood, Asked, BestKeys, Key};

use crate::candidates::Candidate;
use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::goals::Sum;
use crate::heap::Heap;
use crate::in_full::InFull;
use crate::read_off::{self, Numbering};

/// The `wanted` best keys of a heap, and how many are as good as the best; within what the
/// solver may still take apart.
pub(crate) fn of(solver: &mut Solver, root: &Heap, wanted: usize) -> BestKeys {
    let mut ranking = Ranking { solver, lists: FxHashMap::default(), sure: true };
    let mut keys = Vec::new();
    for place in 0..wanted {
        let Some(packed) = ranking.effort(root, place) else { break };
        let key = ranking.key(root, place);
        let space = &ranking.solver.space;
        let effort = if space.denominator.exact {
            space.denominator.share(space.goals.effort(packed))
        } else {
            InFull::of(space, root, &key, 1).share(Sum::Effort)
        };
        keys.push((key, effort));
    }
    let sure = ranking.sure;
    if !solver.space.denominator.exact {
        // Keys that seem as good in rounded flows may differ, and may stand the other way round.
        keys.sort_by_key(|(_, effort)| *effort);
        return BestKeys { keys, sure: false, as_good: None };
    }
    let as_good = as_good(solver, root, &mut FxHashMap::default());
    BestKeys { keys, sure: sure && as_good.is_some(), as_good }
}

struct Ranking<'a> {
    solver: &'a mut Solver,
    lists: FxHashMap<Heap, List>,
    /// Whether everything that was needed could be proved.
    sure: bool,
}

/// The best keys of a heap, as far as they were asked for.
#[derive(Default)]
struct List {
    candidates: Vec<Candidate>,
    found: Vec<Found>,
    /// What may come next, the least first.
    next: BinaryHeap<Reverse<Next>>,
    end: bool,
}

#[derive(Clone, Copy)]
struct Found {
    packed: Effort,
    candidate: usize,
    yes: usize,
    no: usize,
}

/// In the order of: packed goals, candidate, place of the yes side, place of the no side. Not
/// `looked_at`: the number is but a bound.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Next {
    packed: Effort,
    candidate: usize,
    yes: usize,
    no: usize,
    looked_at: bool,
}

impl Ranking<'_> {
    /// What the key at this place of a heap's list takes; None: there are not so many, or it
    /// could not be proved.
    fn effort(&mut self, heap: &Heap, place: usize) -> Option<Effort> {
        if self.solver.space.layout.size(heap) < 2 {
            return (place == 0).then_some(0);
        }
        if !self.lists.contains_key(heap) {
            let list = self.open(heap);
            self.lists.insert(heap.clone(), list);
        }
        loop {
            let list = self.lists.get_mut(heap)?;
            if list.end {
                return (place == 0).then_some(0);
            }
            if let Some(found) = list.found.get(place) {
                return Some(found.packed);
            }
            let Reverse(next) = list.next.pop()?;
            let Candidate { own, ref yes, ref no, .. } = list.candidates[next.candidate];
            let (yes, no) = (yes.clone(), no.clone());
            let mut more = Vec::new();
            if next.looked_at {
                let Next { packed, candidate, yes: i, no: j, .. } = next;
                list.found.push(Found { packed, candidate, yes: i, no: j });
                more.push((i, j + 1));
                if j == 0 {
                    more.push((i + 1, 0));
                }
            } else {
                more.push((0, 0));
            }
            for (i, j) in more {
                let sides = self.side(&yes, i).zip(self.side(&no, j));
                if let Some((yes, no)) = sides {
                    let packed = own + yes + no;
                    let next = Next { packed, yes: i, no: j, looked_at: true, ..next };
                    self.lists.get_mut(heap)?.next.push(Reverse(next));
                }
            }
        }
    }

    /// The effort of one side. The best of a heap is what the solver proves.
    fn side(&mut self, heap: &Heap, place: usize) -> Option<Effort> {
        if place > 0 {
            return self.effort(heap, place);
        }
        let known = self.solver.refine(heap, 0, NEVER);
        if known.upper >= NEVER {
            return None;
        }
        self.sure &= known.lower == known.upper;
        Some(known.upper)
    }

    fn open(&mut self, heap: &Heap) -> List {
        let offered = self.solver.candidates(heap);
        self.sure &= offered.left_out >= NEVER;
        let mut by_heaps: BTreeMap<(Heap, Heap), Candidate> = BTreeMap::new();
        for candidate in offered.list {
            let (yes, no) = (candidate.yes.clone(), candidate.no.clone());
            let pair = if yes <= no { (yes, no) } else { (no, yes) };
            match by_heaps.get(&pair) {
                Some(other) if other.own <= candidate.own => {}
                _ => {
                    by_heaps.insert(pair, candidate);
                }
            }
        }
        let mut candidates: Vec<Candidate> = by_heaps.into_values().collect();
        candidates.sort_by_key(|candidate| candidate.question);
        let bounds = candidates.iter().enumerate().map(|(candidate, of)| {
            let packed = of.bound();
            Reverse(Next { packed, candidate, yes: 0, no: 0, looked_at: false })
        });
        let next = bounds.filter(|Reverse(next)| next.packed < NEVER).collect();
        List { candidates, found: Vec::new(), next, end: offered.end }
    }

    /// The key at a place that was found.
    fn key(&mut self, root: &Heap, place: usize) -> Key {
        let mut numbering = Numbering::default();
        let mut open = vec![(root.clone(), place, None)];
        while let Some((heap, place, after)) = open.pop() {
            let end = self.solver.space.layout.size(&heap) < 2
                || self.effort(&heap, place).is_none()
                || self.lists[&heap].end;
            if end {
                numbering.end(after, self.solver.space.taxa(&heap));
                continue;
            }
            let list = &self.lists[&heap];
            let Found { candidate, yes, no, .. } = list.found[place];
            let chosen = &list.candidates[candidate];
            let here =
                numbering.ask(after, read_off::worded(self.solver, &heap, chosen), false);
            let sides = (chosen.yes.clone(), chosen.no.clone());
            open.push((sides.1, no, Some((here, false))));
            open.push((sides.0, yes, Some((here, true))));
        }
        numbering.key
    }
}

/// How many keys of a heap reach its least effort; None: not proved, or more than can be
/// counted.
fn as_good(
    solver: &mut Solver,
    heap: &Heap,
    seen: &mut FxHashMap<Heap, AsGood>,
) -> Option<AsGood> {
    let one = AsGood { keys: 1, nestings: 1 };
    if solver.space.layout.size(heap) < 2 {
        return Some(one);
    }
    if let Some(known) = seen.get(heap) {
        return Some(*known);
    }
    let known = solver.refine(heap, 0, NEVER);
    if known.lower != known.upper || known.upper >= NEVER {
        return None;
    }
    let mut offered = solver.every_candidate(heap);
    if offered.left_out <= known.upper {
        return None;
    }
    offered.list.retain(|candidate| candidate.bound() <= known.upper);
    let mut all = if offered.end { one } else { AsGood { keys: 0, nestings: 0 } };
    let mut pairs = BTreeMap::new();
    let mut thresholds = std::collections::BTreeSet::new();
    for candidate in offered.list {
        let (yes, no) = (candidate.yes.clone(), candidate.no.clone());
        // Two thresholds of one character that part the same heaps are one question. Two
        // groups of states are two, whichever of them is called yes.
        let ask = &solver.space.questions[candidate.question].ask;
        let again = matches!(ask.yes, Asked::AtLeast(_) | Asked::Below(_))
            && !thresholds.insert((ask.character, yes.clone(), no.clone()));
        if again || !read_off::reaches(solver, &candidate, known.upper) {
            continue;
        }
        let (of_yes, of_no) = (as_good(solver, &yes, seen)?, as_good(solver, &no, seen)?);
        all.keys = all.keys.checked_add(of_yes.keys.checked_mul(of_no.keys)?)?;
        let pair = if yes <= no { (yes, no) } else { (no, yes) };
        pairs.insert(pair, of_yes.nestings.checked_mul(of_no.nestings)?);
    }
    for nestings in pairs.into_values() {
        all.nestings = all.nestings.checked_add(nestings)?;
    }
    seen.insert(heap.clone(), all);
    Some(all)
}
