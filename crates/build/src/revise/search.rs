//! The least effort of a heap at a place of the old key with at most so many changes.
//!
//! For every heap, place and number of changes we remember what any key takes at least and the
//! best that was found. What the heap takes at least with any key bounds it from below; that
//! so many questions are needed, or can no longer be asked, rules small numbers of changes out.

use std::rc::Rc;

use rustc_hash::FxHashMap;

use super::old::{Old, Place};
use super::opened::{Always, Opened, parted};
use super::step::{On, Step};
use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::heap::Heap;

/// The search with what it remembers.
pub(super) struct FewestChanges<'a> {
    pub(super) solver: &'a mut Solver,
    pub(super) old: &'a Old,
    always: Always,
    known: FxHashMap<(Heap, Place), Entry>,
    opened: FxHashMap<Heap, Rc<Opened>>,
    /// Questions of the best key of a heap.
    best_size: FxHashMap<Heap, u32>,
    pub(super) work: u64,
    limit: u64,
}

/// What is known of a heap at a place.
struct Entry {
    /// Fewer changes are not possible.
    least: u32,
    /// By the number of changes.
    with: Vec<At>,
}

/// What is known with so many changes.
#[derive(Clone, Copy)]
struct At {
    lower: Effort,
    upper: Effort,
    step: Step,
}

const NOTHING: At = At { lower: 0, upper: NEVER, step: Step::End };

/// Two heaps at their places under a question.
struct Pair<'h> {
    own: Effort,
    yes: (&'h Heap, Place),
    no: (&'h Heap, Place),
}

impl<'a> FewestChanges<'a> {
    pub(super) fn new(solver: &'a mut Solver, old: &'a Old, limit: u64) -> Self {
        let always = Always::of(solver);
        Self {
            solver,
            old,
            always,
            known: FxHashMap::default(),
            opened: FxHashMap::default(),
            best_size: FxHashMap::default(),
            work: 0,
            limit,
        }
    }

    pub(super) fn spent(&self) -> bool {
        self.work >= self.limit || self.solver.spent()
    }

    /// Fewer changes than this are not possible.
    pub(super) fn least(&mut self, heap: &Heap, place: Place) -> u32 {
        if self.solver.space.layout.size(heap) < 2 {
            return self.old.size(place);
        }
        let key = (heap.clone(), place);
        if let Some(entry) = self.known.get(&key) {
            return entry.least;
        }
        let least = self.least_by_counting(heap, place);
        self.known.insert(key, Entry { least, with: Vec::new() });
        least
    }

    /// Of the old questions at most those stay that can still part something; and every key has
    /// so many questions.
    fn least_by_counting(&self, heap: &Heap, place: Place) -> u32 {
        let (fewest, most) = self.always.questions(self.solver, heap);
        let size = self.old.size(place);
        let space = &self.solver.space;
        let can_stay = |at: &usize| {
            self.old.places[*at].question.is_some_and(|question| {
                space.layout.smaller_side(heap, &space.questions[question]) > 0
            })
        };
        // Places are numbered from above: those below one follow it.
        let first = place.unwrap_or(0);
        let stay = (first..first + size as usize).filter(can_stay).count() as u32;
        let stay = stay.min(most);
        (size - stay).max(fewest.saturating_sub(stay))
    }

    /// What is known with at most so many changes: at least, at most.
    pub(super) fn known(
        &mut self,
        heap: &Heap,
        place: Place,
        changes: u32,
    ) -> (Effort, Effort) {
        if self.solver.space.layout.size(heap) < 2 {
            let fine = changes >= self.old.size(place);
            return if fine { (0, 0) } else { (NEVER, NEVER) };
        }
        if changes < self.least(heap, place) {
            return (NEVER, NEVER);
        }
        let entry = &self.known[&(heap.clone(), place)];
        let changes = changes as usize;
        let mut lower = if self.old.foreign(place) { 0 } else { self.solver.known(heap).0 };
        let mut upper = NEVER;
        for (with, at) in entry.with.iter().enumerate() {
            if with <= changes {
                upper = upper.min(at.upper);
            }
            if with >= changes {
                lower = lower.max(at.lower);
            }
        }
        (lower, upper)
    }

    /// The first step of the best that was found with at most so many changes, and with how
    /// many it was found.
    pub(super) fn step(&self, heap: &Heap, place: Place, changes: u32) -> Option<(u32, Step)> {
        let entry = self.known.get(&(heap.clone(), place))?;
        let within = entry.with.iter().take(changes as usize + 1).enumerate();
        let (with, at) = within.min_by_key(|(with, at)| (at.upper, *with))?;
        (at.upper < NEVER).then_some((with as u32, at.step))
    }

    /// Refines what is known until the bound reaches `goal`, or the best is proved.
    pub(super) fn refine(
        &mut self,
        heap: &Heap,
        place: Place,
        changes: u32,
        goal: Effort,
    ) -> (Effort, Effort) {
        let (lower, upper) = self.known(heap, place, changes);
        if lower >= goal.min(upper) || self.spent() {
            return (lower, upper);
        }
        let mut at = At { lower, upper, step: Step::End };
        if !self.old.foreign(place) {
            let best = self.solver.refine(heap, 0, goal);
            at.lower = at.lower.max(best.lower);
            if place.is_none() && best.lower == best.upper && self.best_size(heap) <= changes {
                at = At { lower: best.lower, upper: best.upper, step: Step::Best };
            }
        }
        if at.lower < goal.min(at.upper) {
            self.work += 1;
            self.try_ways(heap, place, changes, goal, &mut at);
        }
        self.remember(heap, place, changes, at, upper);
        (at.lower, at.upper)
    }

    fn remember(&mut self, heap: &Heap, place: Place, changes: u32, at: At, before: Effort) {
        let entry = self.known.get_mut(&(heap.clone(), place)).expect("its least is known");
        let changes = changes as usize;
        if entry.with.len() <= changes {
            entry.with.resize(changes + 1, NOTHING);
        }
        let here = &mut entry.with[changes];
        here.lower = here.lower.max(at.lower);
        if at.upper < before && at.upper < here.upper {
            (here.upper, here.step) = (at.upper, at.step);
        }
    }

    pub(super) fn open(&mut self, heap: &Heap) -> Rc<Opened> {
        if let Some(opened) = self.opened.get(heap) {
            return opened.clone();
        }
        let opened = Rc::new(Opened::of(self.solver, &self.always, heap));
        self.opened.insert(heap.clone(), opened.clone());
        opened
    }

    /// How many questions the best key of a heap has that the solver found.
    fn best_size(&mut self, heap: &Heap) -> u32 {
        if let Some(size) = self.best_size.get(heap) {
            return *size;
        }
        let sides = self.solver.incumbent(heap).and_then(|at| parted(self.solver, heap, at));
        let size =
            sides.map_or(0, |(yes, no, _)| 1 + self.best_size(&yes) + self.best_size(&no));
        self.best_size.insert(heap.clone(), size);
        size
    }

    /// Tries everything that may be done first, the most promising first.
    fn try_ways(&mut self, heap: &Heap, place: Place, changes: u32, goal: Effort, at: &mut At) {
        let opened = self.open(heap);
        let size = self.old.size(place);
        let too_few = opened.least.saturating_sub(size);
        if changes < too_few {
            at.lower = NEVER;
            return;
        }
        let mut least = NEVER;
        if opened.end && changes >= size {
            (at.upper, at.step, least) = (0, Step::End, 0);
        }
        least = least.min(self.try_old(heap, place, changes, goal, at));
        if changes > 0 {
            least = least.min(self.try_others(&opened, place, changes, goal, at));
        }
        at.lower = at.lower.max(least.min(at.upper));
    }

    /// Keeps the old question, or strikes it out; the least that may take.
    fn try_old(
        &mut self,
        heap: &Heap,
        place: Place,
        changes: u32,
        goal: Effort,
        at: &mut At,
    ) -> Effort {
        let Some(here) = place else { return NEVER };
        let (yes, no) = (self.old.places[here].yes, self.old.places[here].no);
        let mut least = NEVER;
        let question = self.old.places[here].question;
        if let Some((of_yes, of_no, own)) = question.and_then(|q| parted(self.solver, heap, q))
        {
            let pair = Pair { own, yes: (&of_yes, yes), no: (&of_no, no) };
            let step = |after_yes| Step::Keep { after_yes };
            least = least.min(self.try_pair(&pair, changes, goal, at, &step));
        }
        for (side, other, is_yes) in [(yes, no, true), (no, yes, false)] {
            let Some(left) = changes.checked_sub(1 + self.old.size(other)) else { continue };
            let (lower, upper) = self.refine(heap, side, left, goal.min(at.upper));
            least = least.min(lower);
            if upper < at.upper {
                (at.upper, at.step) = (upper, Step::Strike { yes: is_yes });
            }
        }
        least
    }

    /// Asks something else; the least that may take.
    fn try_others(
        &mut self,
        opened: &Opened,
        place: Place,
        changes: u32,
        goal: Effort,
        at: &mut At,
    ) -> Effort {
        let ways: &[On] = match place {
            None => &[On::Nowhere],
            Some(_) => &[On::Straight, On::Crossed, On::Yes, On::No],
        };
        let bounds_hold = !self.old.foreign(place);
        let mut least = NEVER;
        let mut promising: Vec<(Effort, usize)> = Vec::new();
        for (number, candidate) in opened.candidates.iter().enumerate() {
            let bound = if bounds_hold {
                let (yes, no) =
                    (self.solver.known(&candidate.yes).0, self.solver.known(&candidate.no).0);
                candidate.own + yes.max(candidate.yes_lower) + no.max(candidate.no_lower)
            } else {
                candidate.own
            };
            promising.push((bound, number));
        }
        promising.sort_unstable();
        for (bound, number) in promising {
            let candidate = &opened.candidates[number];
            if bound >= goal.min(at.upper) {
                least = least.min(bound);
                break;
            }
            for on in ways {
                let (yes, no) = on.places(place, self.old);
                let [of_yes, of_no] = opened.sides[number];
                if 1 + self.gap(of_yes, yes) + self.gap(of_no, no) > changes {
                    continue;
                }
                let pair = Pair {
                    own: candidate.own,
                    yes: (&candidate.yes, yes),
                    no: (&candidate.no, no),
                };
                let question = candidate.question;
                let step = |after_yes| Step::Ask { question, on: *on, after_yes };
                least = least.min(self.try_pair(&pair, changes - 1, goal, at, &step));
            }
        }
        least
    }

    /// By how many questions any key of a heap has more than the old one at a place, or fewer.
    fn gap(&self, (fewest, most): (u32, u32), place: Place) -> u32 {
        let size = self.old.size(place);
        size.saturating_sub(most).max(fewest.saturating_sub(size))
    }

    /// Shares the changes between two heaps in every way; the least that may take.
    fn try_pair(
        &mut self,
        pair: &Pair<'_>,
        changes: u32,
        goal: Effort,
        at: &mut At,
        step: &dyn Fn(u32) -> Step,
    ) -> Effort {
        let (least_yes, least_no) =
            (self.least(pair.yes.0, pair.yes.1), self.least(pair.no.0, pair.no.1));
        let mut least = NEVER;
        for after_yes in least_yes..=changes.saturating_sub(least_no) {
            if least_yes + least_no > changes {
                break;
            }
            let after_no = changes - after_yes;
            let (lower, upper) = self.both(pair, (after_yes, after_no), goal.min(at.upper));
            least = least.min(lower);
            if upper < at.upper {
                (at.upper, at.step) = (upper, step(after_yes));
            }
        }
        least
    }

    /// A question with so many changes after a yes and after a no: at least, at most.
    fn both(&mut self, pair: &Pair<'_>, after: (u32, u32), goal: Effort) -> (Effort, Effort) {
        let mut yes = self.known(pair.yes.0, pair.yes.1, after.0);
        let mut no = self.known(pair.no.0, pair.no.1, after.1);
        let lower =
            |yes: (Effort, Effort), no: (Effort, Effort)| (pair.own + yes.0 + no.0).min(NEVER);
        // The side with fewer changes left is looked at first: it rules more out.
        let mut order = [true, false];
        if after.1 < after.0 {
            order.reverse();
        }
        for is_yes in order {
            if lower(yes, no) >= goal {
                return (lower(yes, no), NEVER);
            }
            if is_yes {
                let goal = goal - pair.own - no.0;
                yes = self.refine(pair.yes.0, pair.yes.1, after.0, goal);
            } else {
                let goal = goal - pair.own - yes.0;
                no = self.refine(pair.no.0, pair.no.1, after.1, goal);
            }
        }
        let upper = if yes.1 < NEVER && no.1 < NEVER { pair.own + yes.1 + no.1 } else { NEVER };
        (lower(yes, no), upper)
    }
}
