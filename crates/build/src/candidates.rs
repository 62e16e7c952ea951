//! What may be asked of a heap: every question with the two heaps it makes and their bounds.
//!
//! From a heap to its candidates, those that a person's wishes rule out apart. What each side
//! takes at least is what is remembered of it, or what `bound` says of the kinds that must be
//! parted. Nothing is chosen here.

use std::hash::BuildHasher;

use rustc_hash::{FxBuildHasher, FxHashMap};
use smallvec::SmallVec;

use crate::bound::{PAIRS_UP_TO, Parted};
use crate::cost::Effort;
use crate::exact::{Known, NEVER, Solver};
use crate::heap::{Asking, Heap, Sides};
use crate::set::Set;
use crate::state_space::StateSpace;

/// What may be asked of a heap.
pub(crate) struct Candidates {
    pub(crate) list: Vec<Candidate>,
    /// Nothing parts a pair, so the heap is an end. Where this is false and there are no
    /// candidates, the wishes allow none: no key fulfils them from here.
    pub(crate) end: bool,
    /// The least bound of those questions for which there was no room; [`NEVER`]: for all.
    pub(crate) left_out: Effort,
    /// What is left to do after any first question, at least; worked out where nothing that was
    /// found out before is to count.
    pub(crate) after_any: Effort,
    /// The least that questions take of which that alone shows that they are too dear.
    pub(crate) too_dear: Effort,
}

/// A question that may be asked of a heap, and what it makes.
pub(crate) struct Candidate {
    pub(crate) question: usize,
    pub(crate) yes: Heap,
    pub(crate) no: Heap,
    /// The question's own effort here.
    pub(crate) own: Effort,
    pub(crate) yes_lower: Effort,
    pub(crate) no_lower: Effort,
    /// What the two heaps would take if every pair in them had to be parted: no bound, but a
    /// good guess at which of two equally bounded questions is better.
    pub(crate) guess: Effort,
}

impl Candidate {
    pub(crate) fn bound(&self) -> Effort {
        self.own + self.yes_lower + self.no_lower
    }

    /// The most promising first.
    pub(crate) fn promise(&self) -> (Effort, Effort, usize) {
        (self.bound(), self.guess, self.question)
    }
}

impl Solver {
    /// Every question that may be asked of a heap; of several that make the same two heaps at
    /// the same effort, the first; where nothing is wished, of several that make the same two
    /// heaps, the first of the cheapest.
    pub(crate) fn candidates(&self, heap: &Heap) -> Candidates {
        self.list(heap, false, None)
    }

    /// Every question that may be asked of a heap, also where an earlier one does the same.
    pub(crate) fn every_candidate(&self, heap: &Heap) -> Candidates {
        self.list(heap, true, None)
    }

    /// Every question that may be asked of a heap, with bounds that rest on nothing that was
    /// found out before, but for those that plainly take as much as `dear`.
    pub(crate) fn candidates_plainly(&self, heap: &Heap, dear: Effort) -> Candidates {
        self.list(heap, false, Some(dear))
    }

    fn list(&self, heap: &Heap, alike_too: bool, plainly: Option<Effort>) -> Candidates {
        let space = &self.space;
        let layout = &space.layout;
        let present: Vec<usize> = layout.kinds(heap).collect();
        let mut flows = vec![0; space.matrix.taxa().len()];
        for kind in &present {
            flows[*kind] = layout.flow(heap, *kind);
        }
        let all: Effort = present.iter().map(|kind| flows[*kind]).sum();
        let mut admissible: Vec<(usize, Sides)> = Vec::new();
        let mut splits = Splits::none();
        let leave_dearer = !alike_too && self.nothing_wished(heap);
        for (at, question) in space.questions[..space.candidates].iter().enumerate() {
            if layout.may_part(heap, question)
                && let Asking::Parts(sides) = layout.ask(heap, question)
                && sides.parts_a_pair
                && !(leave_dearer && splits.leave(space, at, &sides, &mut admissible))
            {
                admissible.push((at, sides));
            }
        }
        if admissible.is_empty() || layout.out_of_steps(heap) {
            let end = admissible.is_empty();
            let (left_out, too_dear) = (NEVER, NEVER);
            return Candidates { end, list: Vec::new(), left_out, after_any: 0, too_dear };
        }
        let parted = self.parted(heap, &present, &admissible);
        self.leave_what_is_wished(heap, &mut admissible);
        let mut rising = present;
        rising.sort_unstable_by_key(|kind| (flows[*kind], *kind));
        let after_any = plainly.map_or(0, |_| self.after_any(&rising, &flows, &parted));
        let dear = plainly.unwrap_or(NEVER);
        let mut too_dear = NEVER;
        let room = self.candidates_that_fit();
        let mut candidates = Vec::new();
        let mut left_out = NEVER;
        let mut seen = HeapsMade::default();
        let single = |(at, _): &(usize, Sides)| !space.questions[*at].singles.is_empty();
        let compare = !alike_too && (!leave_dearer || admissible.iter().any(single));
        let mut with_flows = Vec::with_capacity(rising.len());
        for (question, sides) in admissible {
            let asked = &space.questions[question];
            let own = all * layout.each(heap, asked) + layout.singles(heap, asked);
            if own + after_any >= dear {
                too_dear = too_dear.min(own + after_any);
                continue;
            }
            let (yes, no) = layout.take_sides(heap, asked, &sides);
            if compare && !seen.is_new(own, &yes, &no, &candidates) {
                continue;
            }
            let mut weigh = |side: &Heap, kinds: &Set| {
                with_flows.clear();
                let known = if plainly.is_none() { self.memo.get(side) } else { None };
                let at = (&rising[..], &flows[..]);
                self.weigh((side, known), kinds, &sides, at, &parted, &mut with_flows)
            };
            let (yes_lower, yes_guess) = weigh(&yes, &sides.yes);
            let (no_lower, no_guess) = weigh(&no, &sides.no);
            candidates.push(Candidate {
                question,
                own,
                yes,
                no,
                yes_lower,
                no_lower,
                guess: yes_guess + no_guess,
            });
            if candidates.len() / 2 >= room {
                left_out = left_out.min(leave(&mut candidates, room));
                seen = HeapsMade::default();
            }
        }
        left_out = left_out.min(leave(&mut candidates, room));
        Candidates { list: candidates, end: false, left_out, after_any, too_dear }
    }

    /// All kinds that must be parted take so much, less one question for each of them.
    fn after_any(&self, rising: &[usize], flows: &[Effort], parted: &Parted) -> Effort {
        let mut kinds: Vec<(Effort, usize)> =
            rising.iter().map(|kind| (flows[*kind], *kind)).collect();
        let (least, _) = parted.least_steps(&mut kinds, &mut self.splits.borrow_mut());
        let once: Effort = kinds.iter().map(|(flow, _)| flow).sum();
        let mut here = Set::none(flows.len());
        rising.iter().for_each(|kind| here.add(*kind));
        (least - once).max(0) * self.space.cheapest_of(&here)
    }

    /// Whether any admissible question may be asked of a heap, whatever was asked before.
    fn nothing_wished(&self, heap: &Heap) -> bool {
        self.space.any_question && self.most_new_words.is_none() && !self.space.is_careful(heap)
    }

    /// Of the questions that could be asked, those that the wishes allow here.
    fn leave_what_is_wished(&self, heap: &Heap, admissible: &mut Vec<(usize, Sides)>) {
        let space = &self.space;
        space.leave_touch(heap, admissible, |(at, _)| *at);
        let character = |at: usize| space.questions[at].ask.character;
        let first = space
            .order
            .iter()
            .find(|first| admissible.iter().any(|(at, _)| character(*at) == **first));
        if let Some(first) = first {
            admissible.retain(|(at, _)| character(*at) == *first);
        }
        admissible.retain(|(at, _)| space.questions[*at].usable);
        if let Some(most) = self.most_new_words {
            let new = |at: usize| space.layout.new_words(heap, &space.questions[at].words);
            admissible.retain(|(at, _)| new(*at) <= most);
        }
    }

    fn parted(&self, heap: &Heap, present: &[usize], admissible: &[(usize, Sides)]) -> Parted {
        let kinds = self.space.matrix.taxa().len();
        if kinds > PAIRS_UP_TO {
            return Parted::none();
        }
        let mut split_off = 0;
        for question in &self.space.questions[..self.space.candidates] {
            // A question that halves them says nothing more than Huffman does.
            if 2 * split_off >= present.len() || present.len() < 4 {
                break;
            }
            split_off = split_off.max(self.space.layout.smaller_side(heap, question));
        }
        Parted::by(kinds, present, split_off, admissible.iter().map(|(_, sides)| sides.only()))
    }

    /// What one side takes at least, as remembered or by the kinds that must be parted; and
    /// what it would take if all had to be.
    fn weigh(
        &self,
        (side, known): (&Heap, Option<&Known>),
        kinds: &Set,
        sides: &Sides,
        (rising, flows): (&[usize], &[Effort]),
        parted: &Parted,
        with_flows: &mut Vec<(Effort, usize)>,
    ) -> (Effort, Effort) {
        if self.space.layout.out_of_steps(side) && parted.some_of(kinds) {
            return (NEVER, NEVER);
        }
        if let Some(known) = known
            && parted.complete()
        {
            return (known.lower, 0);
        }
        for kind in rising {
            if kinds.has(*kind) {
                let flow = if sides.both(*kind) {
                    self.space.layout.flow(side, *kind)
                } else {
                    flows[*kind]
                };
                with_flows.push((flow, *kind));
            }
        }
        let (least, guess) = parted.least_steps(with_flows, &mut self.splits.borrow_mut());
        if let Some(left) = self.space.layout.longest_left(side)
            && left < usize::BITS
            && with_flows.len() > 1 << left
        {
            return (NEVER, NEVER);
        }
        let cheapest = self.space.cheapest_of(kinds);
        let least = least * cheapest;
        (known.map_or(least, |known| known.lower.max(least)), guess * cheapest)
    }
}

/// Leaves the most promising; the least bound of the others.
fn leave(candidates: &mut Vec<Candidate>, room: usize) -> Effort {
    if candidates.len() <= room {
        return NEVER;
    }
    candidates.sort_by_key(Candidate::promise);
    candidates.drain(room..).map(|other| other.bound()).min().unwrap_or(NEVER)
}

/// Which splits were met, seen before the two heaps are made.
struct Splits {
    /// By a part of a hash of the two sides, in either order: the last such split, plus one.
    last: [u32; 256],
    /// For every split its place among the admissible questions, and the one before it.
    met: Vec<(u32, u32)>,
}

impl Splits {
    fn none() -> Self {
        Self { last: [0; 256], met: Vec::with_capacity(32) }
    }

    /// Whether a question need not be added, since another one makes the same two heaps and is
    /// no dearer. If it is dearer, this one takes its place. Where costs differ by kind, the
    /// heaps themselves must be compared.
    fn leave(
        &mut self,
        space: &StateSpace,
        at: usize,
        sides: &Sides,
        admissible: &mut [(usize, Sides)],
    ) -> bool {
        let question = &space.questions[at];
        if !question.singles.is_empty() {
            return false;
        }
        let last = &mut self.last[usize::from(sides.in_either_order())];
        let mut split = *last;
        while let Some(met) = split.checked_sub(1) {
            let (place, before) = self.met[met as usize];
            let (other, there) = &mut admissible[place as usize];
            if there.same_as(sides) || there.opposite_of(sides) {
                if question.cost < space.questions[*other].cost {
                    *other = at;
                    *there = sides.clone();
                }
                return true;
            }
            split = before;
        }
        self.met.push((admissible.len() as u32, *last));
        *last = self.met.len() as u32;
        false
    }
}

/// Which pairs of heaps some candidate makes already.
#[derive(Default)]
struct HeapsMade {
    /// By a hash of the effort and the two heaps, in either order.
    by_hash: FxHashMap<u64, SmallVec<[u32; 1]>>,
}

impl HeapsMade {
    /// Whether no candidate makes these two heaps at this effort; the next candidate will.
    fn is_new(&mut self, own: Effort, yes: &Heap, no: &Heap, made: &[Candidate]) -> bool {
        let hash = |heap: &Heap| FxBuildHasher.hash_one(heap);
        let both = hash(yes).wrapping_add(hash(no)) ^ FxBuildHasher.hash_one(own);
        let alike = self.by_hash.entry(both).or_default();
        let same = |at: &u32| {
            let other = &made[*at as usize];
            let (a, b) = (&other.yes, &other.no);
            other.own == own && ((a, b) == (yes, no) || (a, b) == (no, yes))
        };
        let new = !alike.iter().any(same);
        if new {
            alike.push(made.len() as u32);
        }
        new
    }
}
