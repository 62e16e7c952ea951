//! Reads the key off what the search knows, and settles ties as the definition says.
//!
//! Where a heap is proved, the first question in the order of ties that reaches its least
//! effort is asked; elsewhere the best one found, or the most promising one where none was.

use spinney_model::{Ask, Asked, Couplet, Destination, End, Kept, Key, TaxonIx, Wording};

use crate::candidates::{Candidate, Candidates};
use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::heap::{Asking, Heap};
use crate::kept_questions;
use crate::possible::Possible;
use crate::split;
use crate::state_space::StateSpace;

/// A key that was read off, with what it takes.
pub(crate) struct ReadOff {
    pub(crate) key: Key,
    pub(crate) effort: Effort,
    /// No key of this heap takes less.
    pub(crate) lower: Effort,
    /// Questions walked by all flow, whatever they cost.
    pub(crate) steps: Effort,
    pub(crate) longest: u32,
}

/// What is asked of a heap.
struct Chosen {
    ask: Ask,
    kept: bool,
    /// What the question costs here.
    own: Effort,
    /// What flows through it.
    flow: Effort,
    /// What no key of this heap takes less than; None: what its two heaps take at least says so.
    lower: Option<Effort>,
    yes: (Heap, Option<usize>),
    no: (Heap, Option<usize>),
}

/// The key of a heap with the kept questions on top.
pub(crate) fn read_off(solver: &mut Solver, heap: &Heap, kept: &[Kept]) -> ReadOff {
    let mut numbering = Numbering::default();
    let mut takes = Vec::new();
    let mut open = vec![(heap.clone(), kept_questions::first(kept), None)];
    while let Some((heap, at, after)) = open.pop() {
        let chosen = match kept_questions::here(&solver.space, &heap, kept, at) {
            Some((kept, (yes, no))) => {
                let (own, flow) = kept_questions::own(&solver.space, &heap, &kept.ask);
                let (yes, no) = ((yes, kept.yes), (no, kept.no));
                Some(Chosen {
                    ask: kept.ask.clone(),
                    kept: true,
                    own,
                    flow,
                    lower: None,
                    yes,
                    no,
                })
            }
            None => chosen(solver, &heap),
        };
        let Some(Chosen { ask, kept, own, flow, lower, yes, no }) = chosen else {
            numbering.end(after, solver.space.taxa(&heap));
            continue;
        };
        let here = numbering.ask(after, ask, kept);
        takes.push(Takes { own, flow, lower });
        open.push((no.0, no.1, Some((here, false))));
        open.push((yes.0, yes.1, Some((here, true))));
    }
    added_up(numbering.key, &takes)
}

/// What a couplet takes by itself, and what all from there on takes at least, where that is
/// known.
struct Takes {
    own: Effort,
    flow: Effort,
    lower: Option<Effort>,
}

/// What a key takes, from its last couplet to its first.
fn added_up(key: Key, takes: &[Takes]) -> ReadOff {
    let mut behind = vec![(0, 0, 0, 0); takes.len()];
    for (at, Takes { own, flow, lower }) in takes.iter().enumerate().rev() {
        let (mut all, mut longest) = ((*own, *own, *flow), 0);
        for to in [&key.couplets[at].yes, &key.couplets[at].no] {
            let Destination::Couplet(number) = to else { continue };
            let (effort, least, steps, longest_there) = behind[*number as usize - 1];
            all = (all.0 + effort, all.1 + least, all.2 + steps);
            longest = longest.max(longest_there);
        }
        let least = lower.map_or(all.1, |lower| lower.min(all.0));
        behind[at] = (all.0, least, all.2, 1 + longest);
    }
    let (effort, lower, steps, longest) = behind.first().copied().unwrap_or_default();
    ReadOff { key, effort, lower, steps, longest }
}

/// What is asked of a heap of which nothing is to be kept; None: nothing.
fn chosen(solver: &mut Solver, heap: &Heap) -> Option<Chosen> {
    if solver.space.layout.size(heap) < 2 {
        return None;
    }
    if let Some(found) = as_found(solver, heap) {
        return Some(found);
    }
    let Candidates { list: candidates, left_out, .. } = solver.candidates(heap);
    let floor = candidates.iter().map(Candidate::bound).min().unwrap_or(0).min(left_out);
    let candidate = choose(solver, heap, candidates)?;
    let lower = solver.known(heap).0.max(floor);
    Some(of_candidate(solver, heap, candidate, lower))
}

fn of_candidate(solver: &Solver, heap: &Heap, of: Candidate, lower: Effort) -> Chosen {
    let ask = worded(solver, heap, &of);
    let flow = solver.space.flow(heap);
    let Candidate { yes, no, own, .. } = of;
    Chosen { ask, kept: false, own, flow, lower: Some(lower), yes: (yes, None), no: (no, None) }
}

/// The question of the best key found, where that is not proved: no tie is to be settled then,
/// and none of the other questions need be looked at.
fn as_found(solver: &Solver, heap: &Heap) -> Option<Chosen> {
    let (lower, upper) = solver.known(heap);
    if upper.is_none_or(|upper| upper == lower || upper >= NEVER) {
        return None;
    }
    let question = solver.incumbent(heap)?;
    let asked = &solver.space.questions[question];
    let Asking::Parts(sides) = solver.space.layout.ask(heap, asked) else { return None };
    let own = solver.space.layout.own(heap, asked);
    let (yes, no) = solver.space.layout.take_sides(heap, asked, &sides);
    let found = Candidate { question, yes, no, own, yes_lower: 0, no_lower: 0, guess: 0 };
    Some(of_candidate(solver, heap, found, lower))
}

fn choose(solver: &mut Solver, heap: &Heap, candidates: Vec<Candidate>) -> Option<Candidate> {
    if let (lower, Some(upper)) = solver.known(heap)
        && lower == upper
    {
        let mut candidates = candidates;
        candidates.sort_by_key(|candidate| candidate.question);
        let remembered = solver.incumbent(heap);
        return candidates.into_iter().find(|candidate| {
            Some(candidate.question) == remembered || reaches(solver, candidate, upper)
        });
    }
    let found = solver.incumbent(heap);
    let early = solver.space.layout.early_open(heap);
    let mut candidates = candidates;
    candidates.sort_by_key(|other| (Some(other.question) != found, other.promise()));
    // Where no whole key was found, the early wishes must still be kept.
    let kept = early && solver.known(heap).1.is_none_or(|upper| upper >= NEVER);
    let mut possible = Possible::default();
    candidates.into_iter().find(|candidate| {
        !kept
            || (possible.heap(&solver.space, &candidate.yes)
                && possible.heap(&solver.space, &candidate.no))
    })
}

/// Whether a question reaches the least effort, as far as the budget lets us see.
pub(crate) fn reaches(solver: &mut Solver, candidate: &Candidate, least: Effort) -> bool {
    let room = least - candidate.bound();
    if room < 0 {
        return false;
    }
    let yes =
        solver.refine(&candidate.yes, candidate.yes_lower, candidate.yes_lower + room + 1);
    if yes.upper > candidate.yes_lower + room {
        return false;
    }
    let left = least - candidate.own - yes.upper;
    let no = solver.refine(&candidate.no, candidate.no_lower, left + 1);
    no.upper <= left
}

/// The question, a threshold moved midway between its neighbours where that changes nothing.
pub(crate) fn worded(solver: &Solver, heap: &Heap, chosen: &Candidate) -> Ask {
    midway(&solver.space, heap, chosen.question, (&chosen.yes, &chosen.no))
}

/// The same of a question that makes two heaps of one.
pub(crate) fn midway(
    space: &StateSpace,
    heap: &Heap,
    question: usize,
    (yes, no): (&Heap, &Heap),
) -> Ask {
    let ask = &space.questions[question].ask;
    let Asked::AtLeast(threshold) = ask.yes else {
        return ask.clone();
    };
    let middle =
        split::settle_threshold(&space.matrix, ask.character, threshold, space.taxa(heap));
    let Some(middle) = middle else {
        return ask.clone();
    };
    let moved = split::ask(ask.character, Asked::AtLeast(middle));
    let same =
        space.questions.iter().find(|question| question.ask == moved).is_some_and(|question| {
            match space.layout.ask(heap, question) {
                Asking::Parts(sides) => {
                    let (moved_yes, moved_no) = space.layout.take_sides(heap, question, &sides);
                    (&moved_yes, &moved_no) == (yes, no)
                }
                _ => false,
            }
        });
    if same { moved } else { ask.clone() }
}

/// Numbers a key as it is read off: the first question is 1, each yes is followed at once.
#[derive(Default)]
pub(crate) struct Numbering {
    pub(crate) key: Key,
}

/// The answer that leads somewhere: the place of its couplet, true for yes; None: the start.
pub(crate) type After = Option<(usize, bool)>;

impl Numbering {
    /// A question after an answer; the place of its couplet.
    pub(crate) fn ask(&mut self, after: After, ask: Ask, kept: bool) -> usize {
        let at = self.key.couplets.len();
        let number = at as u32 + 1;
        self.lead(after, Destination::Couplet(number));
        self.key.couplets.push(Couplet {
            number,
            back: after.map(|(before, _)| before as u32 + 1),
            wording: Wording::Question(String::new()),
            ask: Some(ask),
            yes: Destination::Missing,
            no: Destination::Missing,
            kept,
            line: None,
        });
        at
    }

    /// The kinds that come out after an answer; at the start there is no key.
    pub(crate) fn end(&mut self, after: After, taxa: impl Iterator<Item = TaxonIx>) {
        self.lead(after, Destination::End(End::of(taxa)));
    }

    fn lead(&mut self, after: After, to: Destination) {
        match after {
            Some((before, true)) => self.key.couplets[before].yes = to,
            Some((before, false)) => self.key.couplets[before].no = to,
            None => {}
        }
    }
}
