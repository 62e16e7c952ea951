//! Writes a revised key down: numbers, words that stay, what became of the old questions.
//!
//! The effort is added up once more on a state space that only the new key's own thresholds
//! cut, as a second opinion will read it.

use std::collections::BTreeSet;

use num_traits::Zero;
use spinney_model::{
    Ask, Claim, Couplet, Destination, End, Key, Matrix, Parts, Revision, Share, Stopped,
    TaxonIx, Tradeoff, Wishes, Wording,
};

use super::new_key::{From, NewCouplet, NewKey};
use super::old::Old;
use super::opened::parted;
use super::weighed::Weighed;
use super::{Revised, Revising};
use crate::candidates::Candidate;
use crate::exact::Solver;
use crate::goals::Sum;
use crate::heap::Asking;
use crate::in_full::{self, InFull};
use crate::read_off;
use crate::state_space::{Plan, StateSpace};

/// Writes the result down.
pub(super) struct Writing<'a> {
    pub(super) matrix: &'a Matrix,
    pub(super) old: &'a Key,
    pub(super) places: &'a Old,
    pub(super) solver: &'a Solver,
}

impl Writing<'_> {
    pub(super) fn revision(
        &self,
        weighed: Weighed,
        settings: Revising,
        wishes: &Wishes,
    ) -> Revised {
        let space = &self.solver.space;
        let mut key = Key::default();
        let mut parts = Parts::default();
        self.lay(&weighed.chosen, None, &mut key, &mut parts);
        self.strike(&mut parts);
        let named: BTreeSet<TaxonIx> =
            ends(self.old).flat_map(|end| end.taxa.iter().copied()).collect();
        let gone: BTreeSet<String> =
            ends(self.old).flat_map(|end| end.unrecognised.iter().cloned()).collect();
        let share = |effort| space.denominator.share(space.goals.effort(effort));
        let stopped = match (space.denominator.exact, weighed.sure) {
            (false, _) => Some(Stopped::Overflow),
            (true, false) => Some(Stopped::Budget),
            (true, true) => None,
        };
        let heaps = self.solver.taken_apart + weighed.work;
        let claim = self.claim(&key, wishes, heaps);
        let curve = weighed.curve.iter().map(|(changes, effort, proved)| Tradeoff {
            changes: *changes,
            effort: share(*effort),
            proved: *proved && space.denominator.exact,
        });
        let revision = Revision {
            changes: weighed.changes,
            effort: share(weighed.effort),
            mean_questions: claim.mean_questions,
            longest: claim.longest,
            best: share(weighed.best),
            loss: settings.loss,
            curve: curve.collect(),
            fewest: weighed.fewest,
            parts,
            gone: gone.into_iter().collect(),
            arrived: self.matrix.taxon_indices().filter(|at| !named.contains(at)).collect(),
            stopped,
            heaps,
            key,
        };
        Revised { revision, claim }
    }

    /// Numbers the new key: the first question is 1, each yes is followed at once.
    fn lay(
        &self,
        laid: &NewKey,
        back: Option<u32>,
        key: &mut Key,
        parts: &mut Parts,
    ) -> Destination {
        let couplet = match laid {
            NewKey::End(heap) => {
                return Destination::End(End::of(self.solver.space.taxa(heap)));
            }
            NewKey::Couplet(couplet) => couplet,
        };
        let at = key.couplets.len();
        let number = at as u32 + 1;
        let old = |place: usize| &self.old.couplets[self.places.places[place].couplet];
        let mut wording = Wording::Question(String::new());
        match couplet.from {
            From::Kept(place) => {
                wording = old(place).wording.clone();
                parts.kept.push((old(place).number, number));
            }
            From::Rewritten(place) => parts.rewritten.push((old(place).number, number)),
            From::Added => parts.added.push(number),
        }
        key.couplets.push(Couplet {
            number,
            back,
            wording,
            ask: Some(self.ask(couplet)),
            yes: Destination::Missing,
            no: Destination::Missing,
            kept: false,
            line: None,
        });
        key.couplets[at].yes = self.lay(&couplet.yes, Some(number), key, parts);
        key.couplets[at].no = self.lay(&couplet.no, Some(number), key, parts);
        Destination::Couplet(number)
    }

    /// What a question asks: an old one as it was, a new threshold midway.
    fn ask(&self, couplet: &NewCouplet) -> Ask {
        let NewCouplet { heap, question, from, .. } = couplet;
        let ask = self.solver.space.questions[*question].ask.clone();
        let sides = parted(self.solver, heap, *question);
        let (From::Added | From::Rewritten(_), Some((yes, no, own))) = (from, sides) else {
            return ask;
        };
        let question = *question;
        let chosen = Candidate { question, yes, no, own, yes_lower: 0, no_lower: 0, guess: 0 };
        read_off::worded(self.solver, heap, &chosen)
    }

    /// The effort of the new key on a state space that only its own thresholds cut.
    fn claim(&self, key: &Key, wishes: &Wishes, heaps: u64) -> Claim {
        let asks = key.couplets.iter().filter_map(|couplet| couplet.ask.clone());
        let plan = Plan { kept: asks.collect(), ..Plan::default() };
        let space = StateSpace::lay(self.matrix, &plan);
        let mut walked = (0, 0, 0);
        let mut open = vec![(Destination::Couplet(1), space.root(), 0)];
        while let Some((destination, heap, steps)) = open.pop() {
            let Destination::Couplet(number) = destination else { continue };
            let Some(couplet) = key.couplets.get(number as usize - 1) else { continue };
            let asking = couplet.ask.as_ref().and_then(|ask| space.asking(ask));
            let question = asking.expect("every question of a new key was laid out");
            let Asking::Parts(sides) = space.layout.ask(&heap, question) else { continue };
            walked.0 += space.layout.own(&heap, question);
            walked.1 += space.flow(&heap);
            walked.2 = walked.2.max(steps + 1);
            let (yes, no) = space.layout.take_sides(&heap, question, &sides);
            open.push((couplet.yes.clone(), yes, steps + 1));
            open.push((couplet.no.clone(), no, steps + 1));
        }
        let in_full =
            (!space.denominator.exact).then(|| InFull::of(&space, &space.root(), key, 1));
        let (total, mean_questions) = match in_full {
            Some(in_full) => (in_full.share(Sum::Effort), in_full.mean_questions(&space)),
            None => (
                space.denominator.share(space.goals.effort(walked.0)),
                space.denominator.mean(walked.1, space.total_flow()),
            ),
        };
        Claim {
            total,
            lower_bound: Share::zero(),
            mean_questions,
            longest: walked.2,
            stopped: Some(if space.denominator.exact {
                Stopped::Budget
            } else {
                Stopped::Overflow
            }),
            heaps,
            kept: None,
            wishes: wishes.clone(),
            reached: Vec::new(),
            prices: Vec::new(),
            within: Vec::new(),
            touching: in_full::touching(&space, key),
            certificate: None,
        }
    }

    /// Old questions that became nothing; where ways meet, every way counts.
    fn strike(&self, parts: &mut Parts) {
        let number = |at: usize| self.old.couplets[at].number;
        let places = self.places.places.iter();
        let mut left: Vec<u32> = places.map(|place| number(place.couplet)).collect();
        for (old, _) in parts.kept.iter().chain(&parts.rewritten) {
            if let Some(at) = left.iter().position(|number| number == old) {
                left.remove(at);
            }
        }
        left.sort_unstable();
        parts.struck = left;
    }
}

fn ends(key: &Key) -> impl Iterator<Item = &End> {
    let sides = key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]);
    sides.filter_map(|destination| match destination {
        Destination::End(end) => Some(end),
        _ => None,
    })
}
