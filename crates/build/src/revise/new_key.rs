//! A new key beside the old one: which of its questions stand where an old one stood.
//!
//! The distance of a given key from the old one is that between two trees: a question kept
//! costs nothing, one rewritten in its place, added, or struck out costs one; what hangs on the
//! lost side of a struck question is struck too, what hangs on the far side of an added one is
//! added too.
//!
//! **Source**: the edit distance between ordered trees where whole sides come and go, after
//! Selkow 1977 (from memory), for questions that may be read either way round.

use rustc_hash::FxHashMap;

use super::old::{Old, Place};
use super::opened::parted;
use crate::cost::Effort;
use crate::exact::Solver;
use crate::heap::Heap;

/// A new key over a heap.
#[derive(Clone)]
pub(super) enum NewKey {
    End(Heap),
    Couplet(Box<NewCouplet>),
}

/// A question of the new key.
#[derive(Clone)]
pub(super) struct NewCouplet {
    pub(super) heap: Heap,
    /// Its number in the state space.
    pub(super) question: usize,
    pub(super) from: From,
    pub(super) yes: NewKey,
    pub(super) no: NewKey,
    /// How many questions there are from here on.
    pub(super) size: u32,
}

/// Where a question of the new key comes from; old questions by their place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum From {
    Kept(usize),
    Rewritten(usize),
    Added,
}

impl NewKey {
    pub(super) fn join(heap: &Heap, question: usize, from: From, yes: Self, no: Self) -> Self {
        let size = 1 + yes.size() + no.size();
        let heap = heap.clone();
        Self::Couplet(Box::new(NewCouplet { heap, question, from, yes, no, size }))
    }

    pub(super) fn size(&self) -> u32 {
        match self {
            Self::End(_) => 0,
            Self::Couplet(couplet) => couplet.size,
        }
    }

    /// The same key, all of it new.
    fn all_added(&self) -> Self {
        match self {
            Self::End(heap) => Self::End(heap.clone()),
            Self::Couplet(couplet) => couplet.all_added(),
        }
    }

    pub(super) fn effort(&self, solver: &Solver) -> Effort {
        let Self::Couplet(couplet) = self else { return 0 };
        let question = &solver.space.questions[couplet.question];
        let own = solver.space.layout.own(&couplet.heap, question);
        own + couplet.yes.effort(solver) + couplet.no.effort(solver)
    }

    /// The best key of a heap that the solver found, all of it new.
    pub(super) fn best(solver: &Solver, heap: &Heap) -> Self {
        let choice = solver.incumbent(heap);
        let choice = choice.or_else(|| first_candidate(solver, heap));
        let Some(question) = choice else { return Self::End(heap.clone()) };
        let Some((yes, no, _)) = parted(solver, heap, question) else {
            return Self::End(heap.clone());
        };
        let (yes, no) = (Self::best(solver, &yes), Self::best(solver, &no));
        Self::join(heap, question, From::Added, yes, no)
    }

    /// The old key followed as far as it goes, and the best that is known where it ends.
    pub(super) fn following(solver: &mut Solver, old: &Old, heap: &Heap, place: Place) -> Self {
        let Some(at) = place else {
            solver.refine(heap, 0, crate::exact::NEVER);
            return Self::best(solver, heap);
        };
        if solver.space.layout.size(heap) < 2 {
            return Self::End(heap.clone());
        }
        let here = &old.places[at];
        if let Some(question) = here.question
            && let Some((yes, no, _)) = parted(solver, heap, question)
        {
            let (yes, no) = (
                Self::following(solver, old, &yes, here.yes),
                Self::following(solver, old, &no, here.no),
            );
            return Self::join(heap, question, From::Kept(at), yes, no);
        }
        // The longer side holds more that may stay.
        let yes = old.size(here.yes) >= old.size(here.no);
        Self::following(solver, old, heap, if yes { here.yes } else { here.no })
    }

    /// The same key compared with the old one: the changes, and each question with where it
    /// comes from.
    pub(super) fn beside(&self, solver: &Solver, old: &Old, place: Place) -> (u32, Self) {
        let mut comparison = Comparison { solver, old, seen: FxHashMap::default() };
        let changes = comparison.distance(self, place);
        (changes, comparison.traced(self, place))
    }
}

/// The first question that a heap could be asked, where nothing was chosen yet.
fn first_candidate(solver: &Solver, heap: &Heap) -> Option<usize> {
    if solver.space.layout.size(heap) < 2 {
        return None;
    }
    let candidates = solver.candidates(heap).list;
    candidates.into_iter().min_by_key(|other| other.promise()).map(|best| best.question)
}

struct Comparison<'a> {
    solver: &'a Solver,
    old: &'a Old,
    /// By the couplet's address: the new key stands still while it is compared.
    seen: FxHashMap<(*const NewCouplet, usize), u32>,
}

/// What becomes of a question of the new key, or of the old one at its place.
#[derive(Clone, Copy)]
enum Turn {
    Kept { crossed: bool },
    Rewritten { crossed: bool },
    Struck { yes: bool },
    Added { yes: bool },
}

impl Comparison<'_> {
    fn distance(&mut self, new: &NewKey, place: Place) -> u32 {
        match (new, place) {
            (NewKey::Couplet(couplet), Some(at)) => self.distance_at(couplet, at),
            _ => new.size() + self.old.size(place),
        }
    }

    fn distance_at(&mut self, couplet: &NewCouplet, at: usize) -> u32 {
        let name = (&raw const *couplet, at);
        if let Some(distance) = self.seen.get(&name) {
            return *distance;
        }
        let turns = self.turns(couplet, at);
        let distances = turns.into_iter().map(|turn| self.with(couplet, at, turn));
        let distance = distances.min().expect("a question can always be rewritten");
        self.seen.insert(name, distance);
        distance
    }

    fn turns(&self, couplet: &NewCouplet, at: usize) -> Vec<Turn> {
        let kept = self.same(couplet, at).map(|crossed| Turn::Kept { crossed });
        let others = [
            Turn::Rewritten { crossed: false },
            Turn::Rewritten { crossed: true },
            Turn::Struck { yes: true },
            Turn::Struck { yes: false },
            Turn::Added { yes: true },
            Turn::Added { yes: false },
        ];
        kept.into_iter().chain(others).collect()
    }

    /// Whether the old question is asked, and whether its answers are exchanged.
    fn same(&self, couplet: &NewCouplet, at: usize) -> Option<bool> {
        let question = self.old.places[at].question?;
        let space = &self.solver.space;
        let character = |at: usize| space.questions[at].ask.character;
        if character(question) != character(couplet.question) {
            return None;
        }
        let (old_yes, old_no, _) = parted(self.solver, &couplet.heap, question)?;
        let (yes, no, _) = parted(self.solver, &couplet.heap, couplet.question)?;
        let straight = (&old_yes, &old_no) == (&yes, &no);
        let crossed = (&old_yes, &old_no) == (&no, &yes);
        (straight || crossed).then_some(!straight)
    }

    fn with(&mut self, couplet: &NewCouplet, at: usize, turn: Turn) -> u32 {
        match turn {
            Turn::Kept { crossed } | Turn::Rewritten { crossed } => {
                let (yes, no) = self.below(at, crossed);
                let own = u32::from(matches!(turn, Turn::Rewritten { .. }));
                own + self.distance(&couplet.yes, yes) + self.distance(&couplet.no, no)
            }
            Turn::Struck { yes } => {
                let (on, lost) = self.below(at, !yes);
                let rest = on.map_or(couplet.size, |on| self.distance_at(couplet, on));
                1 + self.old.size(lost) + rest
            }
            Turn::Added { yes } => {
                let (on, far) = couplet.sides(yes);
                1 + far.size() + self.distance(on, Some(at))
            }
        }
    }

    /// The places after a yes and after a no, or the other way round.
    fn below(&self, at: usize, crossed: bool) -> (Place, Place) {
        let (yes, no) = (self.old.places[at].yes, self.old.places[at].no);
        if crossed { (no, yes) } else { (yes, no) }
    }

    /// The new key again, each question with where it comes from.
    fn traced(&mut self, new: &NewKey, place: Place) -> NewKey {
        match (new, place) {
            (NewKey::Couplet(couplet), Some(at)) => self.traced_at(couplet, at),
            _ => new.all_added(),
        }
    }

    fn traced_at(&mut self, couplet: &NewCouplet, at: usize) -> NewKey {
        let mut best = (u32::MAX, Turn::Rewritten { crossed: false });
        for turn in self.turns(couplet, at) {
            let distance = self.with(couplet, at, turn);
            if distance < best.0 {
                best = (distance, turn);
            }
        }
        let NewCouplet { heap, question, .. } = couplet;
        match best.1 {
            Turn::Kept { crossed } => {
                let (yes, no) = couplet.sides(!crossed);
                let (old_yes, old_no) = self.below(at, false);
                let old = self.old.places[at].question.unwrap_or(*question);
                let (yes, no) = (self.traced(yes, old_yes), self.traced(no, old_no));
                NewKey::join(heap, old, From::Kept(at), yes, no)
            }
            Turn::Rewritten { crossed } => {
                let (yes, no) = self.below(at, crossed);
                let (yes, no) = (self.traced(&couplet.yes, yes), self.traced(&couplet.no, no));
                NewKey::join(heap, *question, From::Rewritten(at), yes, no)
            }
            Turn::Struck { yes } => match self.below(at, !yes).0 {
                Some(on) => self.traced_at(couplet, on),
                None => couplet.all_added(),
            },
            Turn::Added { yes } => {
                let on = |side| if side { Some(at) } else { None };
                let (of_yes, of_no) =
                    (self.traced(&couplet.yes, on(yes)), self.traced(&couplet.no, on(!yes)));
                NewKey::join(heap, *question, From::Added, of_yes, of_no)
            }
        }
    }
}

impl NewCouplet {
    fn all_added(&self) -> NewKey {
        let (yes, no) = (self.yes.all_added(), self.no.all_added());
        NewKey::join(&self.heap, self.question, From::Added, yes, no)
    }

    /// The yes side and the no side, or the other way round.
    fn sides(&self, yes_first: bool) -> (&NewKey, &NewKey) {
        if yes_first { (&self.yes, &self.no) } else { (&self.no, &self.yes) }
    }
}
