//! What a key takes, added up in numbers of any length where exact ones do not fit.
//!
//! The search rounds flows down so that its bound is a bound; what is claimed of the key that it
//! found is not rounded so (`docs/KEY.md` 8). From a key and the heap it starts at to its sums;
//! nothing is searched here.

use num_bigint::BigInt;
use num_rational::BigRational;
use num_traits::{ToPrimitive, Zero};
use spinney_model::{Destination, Instrument, Key, Share};

use crate::cost::{self, Effort, FLOW_BITS};
use crate::goals::{self, Sum};
use crate::heap::{Asking, Heap};
use crate::state_space::{Question, StateSpace};

/// What a key takes, true to the last digit.
#[derive(Clone, Debug, Default)]
pub(crate) struct InFull {
    effort: BigRational,
    steps: BigRational,
    misread: BigRational,
    new_words: BigRational,
    rulers: BigRational,
}

/// The numbers of a key's questions that are answered by touch while a kind with a caution is
/// present, rising.
pub(crate) fn touching(space: &StateSpace, key: &Key) -> Vec<u32> {
    let layout = &space.layout;
    let mut touching = Vec::new();
    let mut open = vec![(Destination::Couplet(1), space.root())];
    while let Some((destination, heap)) = open.pop() {
        let Destination::Couplet(number) = destination else { continue };
        let Some(couplet) = key.couplets.get((number - 1) as usize) else { continue };
        let Some(question) = couplet.ask.as_ref().and_then(|ask| space.asking(ask)) else {
            continue;
        };
        let cautioned = |kind: usize| space.matrix.taxa()[kind].caution.is_some();
        if space.by_touch(question) && layout.kinds(&heap).any(cautioned) {
            touching.push(number);
        }
        let Asking::Parts(sides) = layout.ask(&heap, question) else { continue };
        let (yes, no) = layout.take_sides(&heap, question, &sides);
        open.extend([(couplet.yes.clone(), yes), (couplet.no.clone(), no)]);
    }
    touching.sort_unstable();
    touching
}

/// A kind that is present, with its true flow.
type Flow = (usize, BigRational);

impl InFull {
    /// Adds up the key from a couplet on, at which this heap stands.
    pub(crate) fn of(space: &StateSpace, heap: &Heap, key: &Key, from: u32) -> Self {
        let layout = &space.layout;
        // A kind by itself: its numbers stay short until all are added up at the end.
        let mut of_kind = vec![Self::default(); layout.kinds_in_all()];
        let first: Vec<Flow> =
            layout.kinds(heap).map(|kind| (kind, layout.true_flow(heap, kind))).collect();
        let mut open = vec![(Destination::Couplet(from), heap.clone(), first)];
        while let Some((destination, heap, flows)) = open.pop() {
            let Destination::Couplet(number) = destination else { continue };
            // Couplets of a key of ours stand in the order of their numbers.
            let Some(couplet) = key.couplets.get((number - 1) as usize) else { continue };
            let Some(question) = couplet.ask.as_ref().and_then(|ask| space.asking(ask)) else {
                continue;
            };
            let Asking::Parts(sides) = layout.ask(&heap, question) else { continue };
            let new_words = layout.new_words(&heap, &question.words);
            for (kind, flow) in &flows {
                of_kind[*kind].add(space, question, new_words, *kind, flow);
            }
            let (yes, no) = layout.take_sides(&heap, question, &sides);
            let (on_yes, on_no) = part(space, &heap, question, flows, (&yes, &no));
            open.push((couplet.yes.clone(), yes, on_yes));
            open.push((couplet.no.clone(), no, on_no));
        }
        of_kind.into_iter().fold(Self::default(), Self::plus)
    }

    fn add(
        &mut self,
        space: &StateSpace,
        question: &Question,
        new: u32,
        kind: usize,
        flow: &BigRational,
    ) {
        let times = |count: Effort| flow * BigInt::from(count);
        let character = space.matrix.character(question.ask.character);
        self.effort += times(cost::steps(character));
        self.steps += flow;
        if space.goals.order.len() == 1 {
            return;
        }
        let usual = goals::read_right(character);
        let of_kind = character.read_right_of.get(&spinney_model::TaxonIx(kind));
        self.misread += times(goals::misreading(of_kind.copied().unwrap_or(usual)));
        self.new_words += times(new.into());
        if character.instrument == Instrument::Ruler {
            self.rulers += flow;
        }
    }

    fn plus(self, other: Self) -> Self {
        Self {
            effort: self.effort + other.effort,
            steps: self.steps + other.steps,
            misread: self.misread + other.misread,
            new_words: self.new_words + other.new_words,
            rulers: self.rulers + other.rulers,
        }
    }

    /// One of the sums, as it may be said.
    pub(crate) fn share(&self, sum: Sum) -> Share {
        share(match sum {
            Sum::Effort => &self.effort,
            Sum::Misread => &self.misread,
            Sum::NewWords => &self.new_words,
            Sum::Rulers => &self.rulers,
        })
    }

    /// Questions that a find takes on average.
    pub(crate) fn mean_questions(&self, space: &StateSpace) -> Share {
        let weights = space.matrix.taxa().iter().map(|taxon| long(taxon.weight));
        let weights = weights.fold(BigRational::zero(), |all, weight| all + weight);
        if weights.is_zero() {
            return Share::zero();
        }
        share(&(&self.steps / weights))
    }

    /// The least number of whole units of rounded flows that is not below the effort.
    pub(crate) fn effort_in_units(&self) -> Effort {
        let units = (&self.effort * BigInt::from(Effort::from(1) << FLOW_BITS)).ceil();
        units.to_integer().to_i128().unwrap_or(Effort::MAX / 8)
    }
}

/// The true flows on the two sides of a question.
fn part(
    space: &StateSpace,
    heap: &Heap,
    question: &Question,
    flows: Vec<Flow>,
    (yes, no): (&Heap, &Heap),
) -> (Vec<Flow>, Vec<Flow>) {
    let layout = &space.layout;
    let (mut on_yes, mut on_no) = (Vec::new(), Vec::new());
    for (kind, flow) in flows {
        match (layout.has(yes, kind), layout.has(no, kind)) {
            (true, true) => {
                let varying = question.varying.iter().find(|varying| varying.kind == kind);
                let varying = varying.expect("only a kind that varies goes both ways");
                let (kept, rest) = layout.left(heap, varying.slot).cut(varying.yes);
                let (kept, rest) = (
                    layout.true_share(varying.slot, kept),
                    layout.true_share(varying.slot, rest),
                );
                let all = &kept + &rest;
                on_yes.push((kind, &flow * kept / &all));
                on_no.push((kind, flow * rest / all));
            }
            (true, false) => on_yes.push((kind, flow)),
            _ => on_no.push((kind, flow)),
        }
    }
    (on_yes, on_no)
}

/// The same number without limits.
pub(crate) fn long(share: Share) -> BigRational {
    BigRational::new((*share.numer()).into(), (*share.denom()).into())
}

/// The number itself if it fits; else the next multiple of 2⁻⁶⁰ above, as `docs/KEY.md` 8 has
/// it. (A number that is no multiple of it that fits could only come from weights above 2⁶⁰,
/// which no table can name: the next whole number, or the greatest there is.)
pub(crate) fn share(number: &BigRational) -> Share {
    let fitting = |number: &BigRational| {
        Some(Share::new(number.numer().to_i128()?, number.denom().to_i128()?))
    };
    let unit = BigInt::from(Effort::from(1) << FLOW_BITS);
    let above = || BigRational::new((number * &unit).ceil().to_integer(), unit.clone());
    fitting(number)
        .or_else(|| fitting(&above()))
        .or_else(|| fitting(&number.ceil()))
        .unwrap_or(Share::from_integer(Effort::MAX))
}

/// One number less another, as it may be said.
pub(crate) fn difference(one: Share, other: Share) -> Share {
    share(&(long(one) - long(other)))
}

#[cfg(test)]
mod tests;
