//! Reads the key off what the search knows, and settles ties as the definition says.
//!
//! Where a heap is proved, the first question in the order of ties that reaches its least
//! effort is asked; elsewhere the best one found, or the most promising one where none was.

use spinney_model::{Ask, Asked, Couplet, Destination, End, Key, TaxonIx, Wording};

use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::ground::Ground;
use crate::heap::{Asking, Heap};
use crate::offer::{Candidate, Offered};
use crate::possible::Possible;
use crate::split;

/// A key as a tree, with what it takes.
pub(crate) struct Settled {
    pub(crate) tree: Tree,
    pub(crate) effort: Effort,
    /// No key of this heap takes less.
    pub(crate) lower: Effort,
    /// Questions walked by all flow, whatever they cost.
    pub(crate) steps: Effort,
    pub(crate) longest: u32,
}

/// A key as a tree.
pub(crate) enum Tree {
    End(Vec<TaxonIx>),
    Couplet { ask: Ask, kept: bool, yes: Box<Tree>, no: Box<Tree> },
}

impl Settled {
    pub(crate) fn end(taxa: Vec<TaxonIx>) -> Self {
        Self { tree: Tree::End(taxa), effort: 0, lower: 0, steps: 0, longest: 0 }
    }

    /// Two settled sides under a question that costs `own` here and is walked by `flow`.
    pub(crate) fn join(
        ask: Ask,
        kept: bool,
        own: Effort,
        flow: Effort,
        sides: (Self, Self),
    ) -> Self {
        let (yes, no) = sides;
        Self {
            effort: own + yes.effort + no.effort,
            lower: own + yes.lower + no.lower,
            steps: flow + yes.steps + no.steps,
            longest: 1 + yes.longest.max(no.longest),
            tree: Tree::Couplet { ask, kept, yes: Box::new(yes.tree), no: Box::new(no.tree) },
        }
    }
}

/// The key of a heap.
pub(crate) fn settle(solver: &mut Solver, heap: &Heap) -> Settled {
    if solver.ground.layout.size(heap) < 2 {
        return Settled::end(solver.ground.taxa(heap).collect());
    }
    if let Some(settled) = as_found(solver, heap) {
        return settled;
    }
    let Offered { candidates, left_out, .. } = solver.offered(heap);
    let floor = candidates.iter().map(Candidate::bound).min().unwrap_or(0).min(left_out);
    let Some(chosen) = choose(solver, heap, candidates) else {
        return Settled::end(solver.ground.taxa(heap).collect());
    };
    let lower = solver.known(heap).0.max(floor);
    let flow = solver.ground.flow(heap);
    let ask = worded(solver, heap, &chosen);
    let sides = (settle(solver, &chosen.yes), settle(solver, &chosen.no));
    let mut settled = Settled::join(ask, false, chosen.own, flow, sides);
    settled.lower = lower.min(settled.effort);
    settled
}

/// The question of the best key found, where that is not proved: no tie is to be settled then,
/// and none of the other questions need be looked at.
fn as_found(solver: &mut Solver, heap: &Heap) -> Option<Settled> {
    let (lower, upper) = solver.known(heap);
    if upper.is_none_or(|upper| upper == lower || upper >= NEVER) {
        return None;
    }
    let question = solver.choice(heap)?;
    let asked = &solver.ground.questions[question];
    let Asking::Parts(sides) = solver.ground.layout.ask(heap, asked) else { return None };
    let own = solver.ground.layout.own(heap, asked);
    let (yes, no) = solver.ground.layout.take_sides(heap, asked, &sides);
    let chosen = Candidate { question, yes, no, own, yes_lower: 0, no_lower: 0, guess: 0 };
    let ask = worded(solver, heap, &chosen);
    let flow = solver.ground.flow(heap);
    let sides = (settle(solver, &chosen.yes), settle(solver, &chosen.no));
    let mut settled = Settled::join(ask, false, own, flow, sides);
    settled.lower = lower.min(settled.effort);
    Some(settled)
}

fn choose(solver: &mut Solver, heap: &Heap, candidates: Vec<Candidate>) -> Option<Candidate> {
    if let (lower, Some(upper)) = solver.known(heap)
        && lower == upper
    {
        let mut candidates = candidates;
        candidates.sort_by_key(|candidate| candidate.question);
        let remembered = solver.choice(heap);
        return candidates.into_iter().find(|candidate| {
            Some(candidate.question) == remembered || reaches(solver, candidate, upper)
        });
    }
    let found = solver.choice(heap);
    let early = solver.ground.layout.early_open(heap);
    let mut candidates = candidates;
    candidates.sort_by_key(|other| (Some(other.question) != found, other.promise()));
    // Where no whole key was found, the early wishes must still be kept.
    let kept = early && solver.known(heap).1.is_none_or(|upper| upper >= NEVER);
    let mut possible = Possible::default();
    candidates.into_iter().find(|candidate| {
        !kept
            || (possible.heap(&solver.ground, &candidate.yes)
                && possible.heap(&solver.ground, &candidate.no))
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
    midway(&solver.ground, heap, chosen.question, (&chosen.yes, &chosen.no))
}

/// The same of a question that makes two heaps of one.
pub(crate) fn midway(
    ground: &Ground,
    heap: &Heap,
    question: usize,
    (yes, no): (&Heap, &Heap),
) -> Ask {
    let ask = &ground.questions[question].ask;
    let Asked::AtLeast(threshold) = ask.yes else {
        return ask.clone();
    };
    let middle =
        split::settle_threshold(&ground.matrix, ask.character, threshold, ground.taxa(heap));
    let Some(middle) = middle else {
        return ask.clone();
    };
    let moved = split::ask(ask.character, Asked::AtLeast(middle));
    let same = ground.questions.iter().find(|question| question.ask == moved).is_some_and(
        |question| match ground.layout.ask(heap, question) {
            Asking::Parts(sides) => {
                let (moved_yes, moved_no) = ground.layout.take_sides(heap, question, &sides);
                (&moved_yes, &moved_no) == (yes, no)
            }
            _ => false,
        },
    );
    if same { moved } else { ask.clone() }
}

/// Numbers a tree: the first couplet is 1, each yes is followed at once.
pub(crate) fn number(tree: &Tree) -> Key {
    let mut key = Key::default();
    if let Tree::Couplet { .. } = tree {
        lay(tree, None, &mut key.couplets);
    }
    key
}

fn lay(tree: &Tree, back: Option<u32>, couplets: &mut Vec<Couplet>) -> Destination {
    let (ask, kept, yes, no) = match tree {
        Tree::End(taxa) => return Destination::End(End::of(taxa.iter().copied())),
        Tree::Couplet { ask, kept, yes, no } => (ask, *kept, yes, no),
    };
    let at = couplets.len();
    let number = at as u32 + 1;
    couplets.push(Couplet {
        number,
        back,
        wording: Wording::Question(String::new()),
        ask: Some(ask.clone()),
        yes: Destination::Missing,
        no: Destination::Missing,
        kept,
        line: None,
    });
    couplets[at].yes = lay(yes, Some(number), couplets);
    couplets[at].no = lay(no, Some(number), couplets);
    Destination::Couplet(number)
}
