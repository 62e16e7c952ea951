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
#[derive(Clone, Debug)]
pub(super) enum Laid {
    End(Heap),
    Couplet(Box<LaidCouplet>),
}

/// A question of the new key.
#[derive(Clone, Debug)]
pub(super) struct LaidCouplet {
    pub(super) heap: Heap,
    /// Its number in the ground.
    pub(super) question: usize,
    pub(super) from: From,
    pub(super) yes: Laid,
    pub(super) no: Laid,
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

impl Laid {
    pub(super) fn join(heap: &Heap, question: usize, from: From, yes: Self, no: Self) -> Self {
        let size = 1 + yes.size() + no.size();
        let heap = heap.clone();
        Self::Couplet(Box::new(LaidCouplet { heap, question, from, yes, no, size }))
    }

    pub(super) fn size(&self) -> u32 {
        match self {
            Self::End(_) => 0,
            Self::Couplet(couplet) => couplet.size,
        }
    }

    pub(super) fn effort(&self, solver: &Solver) -> Effort {
        let Self::Couplet(couplet) = self else { return 0 };
        let question = &solver.ground.questions[couplet.question];
        let own = solver.ground.layout.own(&couplet.heap, question);
        own + couplet.yes.effort(solver) + couplet.no.effort(solver)
    }

    /// The best key of a heap that the solver found, all of it new.
    pub(super) fn best(solver: &Solver, heap: &Heap) -> Self {
        let choice = solver.choice(heap);
        let choice = choice.or_else(|| first_offered(solver, heap));
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
        if solver.ground.layout.size(heap) < 2 {
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
fn first_offered(solver: &Solver, heap: &Heap) -> Option<usize> {
    if solver.ground.layout.size(heap) < 2 || solver.memory.contains_key(heap) {
        return None;
    }
    let candidates = solver.offered(heap).candidates;
    candidates.into_iter().min_by_key(|other| other.promise()).map(|best| best.question)
}

struct Comparison<'a> {
    solver: &'a Solver,
    old: &'a Old,
    seen: FxHashMap<(*const LaidCouplet, Place), u32>,
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
    fn distance(&mut self, new: &Laid, place: Place) -> u32 {
        let (Laid::Couplet(couplet), Some(_)) = (new, place) else {
            return new.size() + self.old.size(place);
        };
        let name = (&raw const **couplet, place);
        if let Some(distance) = self.seen.get(&name) {
            return *distance;
        }
        let turns = self.turns(couplet, place);
        let distances = turns.into_iter().map(|turn| self.with(couplet, place, turn));
        let distance = distances.min().unwrap_or(0);
        self.seen.insert(name, distance);
        distance
    }

    fn turns(&self, couplet: &LaidCouplet, place: Place) -> Vec<Turn> {
        let mut turns = Vec::new();
        if let Some(crossed) = self.same(couplet, place) {
            turns.push(Turn::Kept { crossed });
        }
        for way in [false, true] {
            turns.push(Turn::Rewritten { crossed: way });
        }
        for yes in [true, false] {
            turns.extend([Turn::Struck { yes }, Turn::Added { yes }]);
        }
        turns
    }

    /// Whether the old question is asked, and whether its answers are exchanged.
    fn same(&self, couplet: &LaidCouplet, place: Place) -> Option<bool> {
        let question = self.old.places[place?].question?;
        let ground = &self.solver.ground;
        let character = |at: usize| ground.questions[at].ask.character;
        if character(question) != character(couplet.question) {
            return None;
        }
        let (old_yes, old_no, _) = parted(self.solver, &couplet.heap, question)?;
        let (yes, no, _) = parted(self.solver, &couplet.heap, couplet.question)?;
        if (&old_yes, &old_no) == (&yes, &no) {
            Some(false)
        } else if (&old_yes, &old_no) == (&no, &yes) {
            Some(true)
        } else {
            None
        }
    }

    fn with(&mut self, couplet: &LaidCouplet, place: Place, turn: Turn) -> u32 {
        let Some(at) = place else { return couplet.size };
        let (old_yes, old_no) = (self.old.places[at].yes, self.old.places[at].no);
        match turn {
            Turn::Kept { crossed } | Turn::Rewritten { crossed } => {
                let (yes, no) = if crossed { (old_no, old_yes) } else { (old_yes, old_no) };
                let own = u32::from(matches!(turn, Turn::Rewritten { .. }));
                own + self.distance(&couplet.yes, yes) + self.distance(&couplet.no, no)
            }
            Turn::Struck { yes } => {
                let (on, lost) = if yes { (old_yes, old_no) } else { (old_no, old_yes) };
                let whole = couplet.clone_shallow(self, on);
                1 + self.old.size(lost) + whole
            }
            Turn::Added { yes } => {
                let (on, far) =
                    if yes { (&couplet.yes, &couplet.no) } else { (&couplet.no, &couplet.yes) };
                1 + far.size() + self.distance(on, place)
            }
        }
    }

    fn couplet_at(&mut self, couplet: &LaidCouplet, place: Place) -> u32 {
        if place.is_none() {
            return couplet.size;
        }
        let name = (&raw const *couplet, place);
        if let Some(distance) = self.seen.get(&name) {
            return *distance;
        }
        let turns = self.turns(couplet, place);
        let distances = turns.into_iter().map(|turn| self.with(couplet, place, turn));
        let distance = distances.min().unwrap_or(0);
        self.seen.insert(name, distance);
        distance
    }
}
