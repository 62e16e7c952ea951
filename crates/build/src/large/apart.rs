//! Kinds that every key below a heap must part, and groups that it need not.
//!
//! Two kinds **must be parted** if a question has one wholly on yes and the other wholly on no,
//! and every kind present that is in its way must itself be parted from one of the two.
//!
//! **Why.** Suppose that some end below names both. What is left of each there is part of what
//! is left here, so the question still has one wholly on yes and the other wholly on no. A kind
//! in its way there is in its way here, too (what blocks a kind with little left blocks it with
//! more left), so that by the rule, applied in the order in which pairs were found, no end
//! names it together with both. So nothing is in the way of the question there, it parts a
//! pair, and that was no end.
//!
//! **Groups** are the connected parts of the graph of pairs that need not be parted. An end
//! names kinds of one group only, so that a key is a code for groups, whose flow may come out
//! at several ends: taking the nearest of them for all of it, Huffman over the groups' flows
//! bounds its steps. That holds below, too, since pairs that must be parted here must be there.

use crate::heap::Heap;
use crate::set::{Set, bits};
use crate::state_space::StateSpace;

/// Groups of kinds that need not be parted from each other.
#[derive(Clone, Debug, Default)]
pub(crate) struct Groups {
    /// Per kind of the matrix its group, where that has more than one kind.
    group: Vec<Option<u32>>,
}

impl Groups {
    /// The groups of a heap.
    pub(crate) fn at(space: &StateSpace, heap: &Heap) -> Self {
        let kinds = space.layout.kinds_in_all();
        let present: Vec<usize> = space.layout.kinds(heap).collect();
        let apart = apart(space, heap, &present);
        let mut group: Vec<Option<u32>> = vec![None; kinds];
        let mut all = Set::none(kinds);
        present.iter().for_each(|kind| all.add(*kind));
        let mut next = 0;
        for kind in &present {
            if group[*kind].is_some() {
                continue;
            }
            let mut members = vec![*kind];
            group[*kind] = Some(next);
            let mut at = 0;
            while at < members.len() {
                let with = &apart[members[at]];
                let near: Vec<u64> =
                    all.0.iter().zip(&with.0).map(|(all, with)| all & !with).collect();
                for other in bits(&near) {
                    if group[other].is_none() {
                        group[other] = Some(next);
                        members.push(other);
                    }
                }
                at += 1;
            }
            if members.len() == 1 {
                // A kind alone needs no group; the mark is taken off when all are found.
                group[*kind] = Some(u32::MAX);
            }
            next += 1;
        }
        let group = group.into_iter().map(|group| group.filter(|at| *at != u32::MAX));
        Self { group: group.collect() }
    }

    /// Of these kinds those that are in a group with others, by their place in the list.
    pub(crate) fn of(&self, kinds: &[u32]) -> Vec<(u32, u32)> {
        let group = |kind: &u32| self.group.get(*kind as usize).copied().flatten();
        let places = kinds.iter().zip(0..);
        places.filter_map(|(kind, at)| Some((at, group(kind)?))).collect()
    }
}

/// For every kind those from which every key below the heap must part it.
pub(crate) fn apart(space: &StateSpace, heap: &Heap, present: &[usize]) -> Vec<Set> {
    let kinds = space.layout.kinds_in_all();
    let mut apart = vec![Set::none(kinds); kinds];
    // Questions with kinds in their way: the two sides, and those kinds.
    let mut waiting: Vec<(Set, Set, Set)> = Vec::new();
    for question in &space.questions[..space.candidates] {
        let (yes, no, way) = space.layout.wholly(heap, question);
        if yes.is_empty() || no.is_empty() {
            continue;
        }
        match way.is_empty() {
            true => join(&mut apart, &yes, &no),
            false => waiting.push((yes, no, way)),
        }
    }
    let pairs = |apart: &[Set]| present.iter().map(|kind| apart[*kind].len()).sum::<usize>();
    let all = present.len() * present.len().saturating_sub(1);
    let mut before = 0;
    for _ in 0..ROUNDS {
        let now = pairs(&apart);
        if now == before || now == all {
            break;
        }
        before = now;
        for (yes, no, way) in &waiting {
            for one in yes.iter() {
                // Kinds in the way that may stay with this one.
                let near = Set(minus(way, &apart[one]));
                if near.is_empty() {
                    let no = no.clone();
                    no.iter().for_each(|other| apart[other].add(one));
                    apart[one].join(&no);
                    continue;
                }
                for other in no.iter() {
                    if !apart[one].has(other) && apart[other].holds(&near) {
                        apart[one].add(other);
                        apart[other].add(one);
                    }
                }
            }
        }
    }
    apart
}

/// Rounds after which no more pairs are looked for: fewer pairs are a bound, too.
const ROUNDS: usize = 4;

fn join(apart: &mut [Set], yes: &Set, no: &Set) {
    yes.iter().for_each(|kind| apart[kind].join(no));
    no.iter().for_each(|kind| apart[kind].join(yes));
}

fn minus(set: &Set, less: &Set) -> smallvec::SmallVec<[u64; 2]> {
    set.0.iter().zip(&less.0).map(|(here, less)| here & !less).collect()
}

impl crate::heap::Layout {
    /// Kinds of a heap that are wholly on the yes side of a question, wholly on its no side,
    /// and in its way.
    pub(crate) fn wholly(
        &self,
        heap: &Heap,
        question: &crate::state_space::Question,
    ) -> (Set, Set, Set) {
        let mut way = self.present_of(heap, &question.never);
        for governed in &question.governed {
            if self.has(heap, governed.kind) && !self.settled(heap, governed) {
                way.add(governed.kind);
            }
        }
        let (mut yes, mut no) =
            (self.present_of(heap, &question.yes), self.present_of(heap, &question.no));
        for varying in question.varying.iter().filter(|varying| self.has(heap, varying.kind)) {
            match self.shares(varying.slot, self.left(heap, varying.slot), varying.yes) {
                (_, 0) => yes.add(varying.kind),
                (0, _) => no.add(varying.kind),
                _ => {}
            }
        }
        (yes, no, way)
    }
}
