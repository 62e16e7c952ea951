//! A heap with what flows through it: of every kind, the finds that are not lost yet.
//!
//! The flows of kinds stand in whole numbers without a common divisor, so that two ways to the
//! same heap with the same proportions are one node. A kind that came in by a wrong answer keeps
//! the values it had, and the character that was misread is not asked about while it is there:
//! whoever misread it once would do so again. A kind that varies and goes to both sides is looked
//! for on both anyway, so that a wrong answer loses nothing of it.

use std::cmp::Ordering;

use num_integer::Integer;
use smallvec::SmallVec;
use spinney_model::Share;

use super::odds::Odds;
use crate::exact::Solver;
use crate::heap::{Asking, Heap, Sides};
use crate::set::Set;
use crate::state_space::{Question, StateSpace};

/// A heap with what flows through it.
#[derive(Clone, PartialEq, Eq, Hash)]
pub(super) struct Node {
    pub(super) heap: Heap,
    /// Kinds that came in by a wrong answer, each with the character that was misread.
    pub(super) misread: SmallVec<[(u16, u16); 2]>,
    /// What flows of every kind, in the order of the kinds present.
    pub(super) masses: SmallVec<[i128; 8]>,
}

/// The table with all its odds.
pub(super) struct Table {
    pub(super) solver: Solver,
    pub(super) odds: Odds,
}

/// One side of a question: the node, and what its numbers count in those of the node above.
pub(super) struct Part {
    pub(super) node: Node,
    pub(super) factor: Share,
}

/// A question that can be put to a node and parts it.
pub(super) struct Put {
    pub(super) question: usize,
    pub(super) sides: Sides,
    pub(super) heaps: (Heap, Heap),
}

impl Node {
    /// All kinds with their weights, and what one unit of it counts.
    pub(super) fn root(table: &Table) -> (Self, Share) {
        let heap = table.space().root();
        let layout = &table.space().layout;
        let masses = layout.kinds(&heap).map(|kind| layout.flow(&heap, kind)).collect();
        let (masses, divisor) = divided(masses);
        let node = Self { heap, misread: SmallVec::new(), masses };
        (node, Share::from_integer(divisor))
    }

    pub(super) fn total(&self) -> Option<i128> {
        self.masses.iter().try_fold(0_i128, |sum, mass| sum.checked_add(*mass))
    }
}

impl Table {
    pub(super) fn space(&self) -> &StateSpace {
        &self.solver.space
    }

    pub(super) fn question(&self, at: usize) -> &Question {
        &self.solver.space.questions[at]
    }

    pub(super) fn size(&self, node: &Node) -> usize {
        self.space().layout.size(&node.heap)
    }

    pub(super) fn kinds(&self, node: &Node) -> Vec<usize> {
        self.space().layout.kinds(&node.heap).collect()
    }

    /// Whether some cell of a kind here has several values left.
    pub(super) fn varies(&self, node: &Node) -> bool {
        let layout = &self.space().layout;
        layout.kinds(&node.heap).any(|kind| layout.varies(&node.heap, kind))
    }

    /// How often the question is read right of a kind.
    pub(super) fn right(&self, question: usize, kind: usize) -> i128 {
        self.odds.right(self.question(question).ask.character.0, kind)
    }

    /// Every question that can be put to the node and sends something to either side; of
    /// several about one character that make the same two heaps, the first. `careful`: nobody
    /// is sent to touch what may hurt where something else parts a pair (for a bound, anybody
    /// may be: without the kinds that came in by wrong answers more may separate).
    pub(super) fn put_all(&self, node: &Node, careful: bool) -> Vec<Put> {
        let space = self.space();
        let mut all: Vec<Put> = Vec::new();
        for (at, question) in space.questions[..space.candidates].iter().enumerate() {
            let character = question.ask.character;
            if node.misread.iter().any(|(_, misread)| usize::from(*misread) == character.0) {
                continue;
            }
            let Asking::Parts(sides) = space.layout.ask(&node.heap, question) else {
                continue;
            };
            let heaps = space.layout.take_sides(&node.heap, question, &sides);
            let same = |other: &&Put| self.question(other.question).ask.character == character;
            let mut before = all.iter().rev().take_while(same);
            if !before.any(|other| other.heaps == heaps) {
                all.push(Put { question: at, sides, heaps });
            }
        }
        let touch = |put: &Put| space.by_touch(self.question(put.question));
        let otherwise = |put: &Put| put.sides.parts_a_pair && !touch(put);
        if careful && space.is_careful(&node.heap) && all.iter().any(otherwise) {
            all.retain(|put| !touch(put));
        }
        all
    }

    /// The two sides of a question where `sent` are looked for on the wrong side as well; None:
    /// the numbers grow too large.
    pub(super) fn part(&self, node: &Node, put: &Put, sent: &[usize]) -> Option<[Part; 2]> {
        let layout = &self.space().layout;
        let flow = |heap: &Heap, kind| layout.flow(heap, kind);
        let kinds = self.kinds(node);
        let mut common: i128 = 1;
        for kind in kinds.iter().filter(|kind| put.sides.both(**kind)) {
            let whole = flow(&node.heap, *kind);
            common = (common / common.gcd(&whole)).checked_mul(whole)?;
        }
        let mut yes = Side::of(node, put.heaps.0.clone());
        let mut no = Side::of(node, put.heaps.1.clone());
        let character = self.question(put.question).ask.character.0;
        for (kind, mass) in kinds.iter().copied().zip(&node.masses) {
            let right = self.right(put.question, kind);
            let wrong = self.odds.unit - right;
            if put.sides.both(kind) {
                let each = common / flow(&node.heap, kind);
                let (in_yes, in_no) = (flow(&put.heaps.0, kind), flow(&put.heaps.1, kind));
                for (side, here, there) in [(&mut yes, in_yes, in_no), (&mut no, in_no, in_yes)]
                {
                    let odds =
                        right.checked_mul(here)?.checked_add(wrong.checked_mul(there)?)?;
                    side.add(kind, mass.checked_mul(odds)?.checked_mul(each)?);
                }
                continue;
            }
            let (rightly, wrongly) =
                if put.sides.yes.has(kind) { (&mut yes, &mut no) } else { (&mut no, &mut yes) };
            let one = mass.checked_mul(common)?;
            rightly.add(kind, one.checked_mul(right)?);
            if sent.contains(&kind) {
                wrongly.add(kind, one.checked_mul(wrong)?);
                layout.put_back(&mut wrongly.node.heap, kind, &node.heap);
                wrongly.node.misread.push((kind as u16, character as u16));
            }
        }
        let unit = self.odds.unit.checked_mul(common)?;
        Some([yes.close(layout.kinds_in_all(), unit), no.close(layout.kinds_in_all(), unit)])
    }

    /// Which kinds every key below parts from which: those that a question which can be put here
    /// has wholly on either side, and all others from one that came in by a wrong answer.
    pub(super) fn parted(&self, node: &Node, puts: &[Put]) -> Vec<Set> {
        let count = self.space().layout.kinds_in_all();
        let mut parted = vec![Set::none(count); count];
        for put in puts.iter().filter(|put| put.sides.parts_a_pair) {
            let (yes, no) = put.sides.only();
            yes.iter().for_each(|kind| parted[kind].join(&no));
            no.iter().for_each(|kind| parted[kind].join(&yes));
        }
        let kinds = self.kinds(node);
        for (kind, _) in &node.misread {
            for other in kinds.iter().filter(|other| **other != usize::from(*kind)) {
                parted[usize::from(*kind)].add(*other);
                parted[*other].add(usize::from(*kind));
            }
        }
        parted
    }
}

/// A side while it is being filled.
struct Side {
    node: Node,
    filled: Vec<(usize, i128)>,
}

impl Side {
    fn of(node: &Node, heap: Heap) -> Self {
        let node = Node { heap, misread: node.misread.clone(), masses: SmallVec::new() };
        Self { node, filled: Vec::new() }
    }

    fn add(&mut self, kind: usize, mass: i128) {
        self.filled.push((kind, mass));
    }

    fn close(mut self, kinds: usize, unit: i128) -> Part {
        let mut present = Set::none(kinds);
        self.filled.iter().for_each(|(kind, _)| present.add(*kind));
        self.node.misread.retain(|(kind, _)| present.has(usize::from(*kind)));
        self.node.misread.sort_unstable();
        self.node.misread.dedup();
        let (masses, divisor) = divided(self.filled.iter().map(|(_, mass)| *mass).collect());
        self.node.masses = masses;
        Part { node: self.node, factor: Share::new(divisor, unit) }
    }
}

/// Numbers without their greatest common divisor, and that divisor (1 where all are nought).
fn divided(masses: SmallVec<[i128; 8]>) -> (SmallVec<[i128; 8]>, i128) {
    let divisor = masses.iter().fold(0_i128, |common, mass| common.gcd(mass));
    match divisor.cmp(&1) {
        Ordering::Greater => (masses.iter().map(|mass| mass / divisor).collect(), divisor),
        _ => (masses, 1),
    }
}
