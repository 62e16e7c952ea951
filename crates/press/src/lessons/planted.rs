//! Three faults planted in a good key, for children to find: yes and no changed over, a kind lost,
//! a number that is not there.
//!
//! From a key to the same key with three faults, each in a part of it that the others leave
//! alone, so that each can be found by itself. It chooses by rule, not by chance: the same key has
//! the same faults. It proves nothing: that each fault is one, the second opinion shows in a test
//! (`spinney/tests/lesson_faults.rs`).
//!
//! Source: a key with faults to find is common practice of lessons, without a source.

use std::collections::BTreeSet;

use spinney_model::{Couplet, Destination, End, Key, TaxonIx};

/// One fault.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// Yes and no of a question lead each where the other should.
    Swapped {
        /// The number of the question.
        question: u32,
    },
    /// A kind stands at no end any more: another one stands at its place.
    Lost {
        /// The number of the question.
        question: u32,
        /// Whether it stood at its yes.
        at_yes: bool,
        /// The kind that is lost.
        kind: TaxonIx,
        /// The kind that stands there instead.
        instead: TaxonIx,
    },
    /// A question sends on to a number that is not there.
    NumberMissing {
        /// The number of the question.
        question: u32,
        /// Whether its yes does.
        at_yes: bool,
        /// The number that stood there.
        number: u32,
        /// The number that stands there now.
        instead: u32,
    },
}

impl Fault {
    /// The key with this fault in it.
    pub fn planted_in(&self, key: &Key) -> Key {
        let mut key = key.clone();
        let asked = |number: u32| move |couplet: &&mut Couplet| couplet.number == number;
        match self {
            Self::Swapped { question } => {
                if let Some(couplet) = key.couplets.iter_mut().find(asked(*question)) {
                    std::mem::swap(&mut couplet.yes, &mut couplet.no);
                }
            }
            Self::Lost { question, at_yes, instead, .. } => {
                if let Some(couplet) = key.couplets.iter_mut().find(asked(*question)) {
                    *side_mut(couplet, *at_yes) = Destination::End(End::of([*instead]));
                }
            }
            Self::NumberMissing { question, at_yes, instead, .. } => {
                if let Some(couplet) = key.couplets.iter_mut().find(asked(*question)) {
                    *side_mut(couplet, *at_yes) = Destination::Couplet(*instead);
                }
            }
        }
        key
    }
}

fn side(couplet: &Couplet, yes: bool) -> &Destination {
    if yes { &couplet.yes } else { &couplet.no }
}

fn side_mut(couplet: &mut Couplet, yes: bool) -> &mut Destination {
    if yes { &mut couplet.yes } else { &mut couplet.no }
}

/// Three faults for a key, the number first; None: the key has too few questions to hide them in.
pub fn faults(key: &Key) -> Option<[Fault; 3]> {
    let mut missing: Vec<_> = missing_numbers(key).collect();
    // What is behind the missing number is cut off: as little as possible.
    missing.sort_by_key(|(_, cut)| cut.len());
    missing.into_iter().find_map(|(fault, cut)| {
        let Fault::NumberMissing { question, .. } = fault else { return None };
        let free = |number: u32| number != question && !cut.contains(&number);
        swapped(key, free).into_iter().find_map(|turned| {
            let Fault::Swapped { question: second } = turned else { return None };
            let lost = lost(key, |number| free(number) && number != second)?;
            Some([fault.clone(), turned, lost])
        })
    })
}

/// The key with all of them.
pub fn planted(key: &Key, faults: &[Fault]) -> Key {
    faults.iter().fold(key.clone(), |key, fault| fault.planted_in(&key))
}

/// Every number that could be missing, with the questions that nobody reaches then.
fn missing_numbers(key: &Key) -> impl Iterator<Item = (Fault, BTreeSet<u32>)> {
    let last = key.couplets.iter().map(|couplet| couplet.number).max().unwrap_or(0);
    let ways = key
        .couplets
        .iter()
        .flat_map(|couplet| [true, false].map(|yes| (couplet.number, yes, side(couplet, yes))));
    ways.filter_map(move |(question, at_yes, to)| {
        let Destination::Couplet(number) = *to else { return None };
        let leads = key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]);
        let once = leads.filter(|to| **to == Destination::Couplet(number)).count() == 1;
        let there = key.couplets.iter().any(|couplet| couplet.number == number);
        let instead = last.checked_add(2)?;
        let fault = Fault::NumberMissing { question, at_yes, number, instead };
        (once && there).then(|| (fault, from(key, number)))
    })
}

/// The questions that are reached from one, and itself.
fn from(key: &Key, number: u32) -> BTreeSet<u32> {
    let (mut reached, mut next) = (BTreeSet::new(), vec![number]);
    while let Some(number) = next.pop() {
        if !reached.insert(number) {
            continue;
        }
        let couplets = key.couplets.iter().filter(|couplet| couplet.number == number);
        for to in couplets.flat_map(|couplet| [&couplet.yes, &couplet.no]) {
            if let Destination::Couplet(further) = to {
                next.push(*further);
            }
        }
    }
    reached
}

/// Questions that can be changed over: both ways end, with one kind each, and not the same.
fn swapped(key: &Key, free: impl Fn(u32) -> bool) -> Vec<Fault> {
    let couplets = key.couplets.iter().filter(|couplet| free(couplet.number));
    let two = couplets.filter(|couplet| match (only(&couplet.yes), only(&couplet.no)) {
        (Some(yes), Some(no)) => yes != no && at_ends(key, yes) == 1 && at_ends(key, no) == 1,
        _ => false,
    });
    // The last first: a fault near the start sends everything wrong.
    let two: Vec<_> = two.map(|couplet| Fault::Swapped { question: couplet.number }).collect();
    two.into_iter().rev().collect()
}

/// A kind that stands at one end only, where another one could stand.
fn lost(key: &Key, free: impl Fn(u32) -> bool) -> Option<Fault> {
    let couplets = key.couplets.iter().filter(|couplet| free(couplet.number));
    let mut ways = couplets.flat_map(|couplet| [true, false].map(|yes| (couplet, yes)));
    ways.find_map(|(couplet, at_yes)| {
        let kind = only(side(couplet, at_yes))?;
        let mut others = key.couplets.iter().flat_map(|other| [&other.yes, &other.no]);
        // Not its neighbour: that would be seen at once.
        let neighbour = only(side(couplet, !at_yes));
        let instead = others
            .find_map(|to| only(to).filter(|it| *it != kind && Some(*it) != neighbour))?;
        let question = couplet.number;
        (at_ends(key, kind) == 1).then_some(Fault::Lost { question, at_yes, kind, instead })
    })
}

/// The only kind of an end.
fn only(to: &Destination) -> Option<TaxonIx> {
    match to {
        Destination::End(end) if end.unrecognised.is_empty() => match end.taxa[..] {
            [only] => Some(only),
            _ => None,
        },
        Destination::End(_) | Destination::Couplet(_) | Destination::Missing => None,
    }
}

/// At how many ends a kind stands.
fn at_ends(key: &Key, kind: TaxonIx) -> usize {
    let ways = key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]);
    let at = ways.filter(|to| matches!(to, Destination::End(end) if end.taxa.contains(&kind)));
    at.count()
}
