//! The most that can come out right of a node, by branch and bound.
//!
//! What a question yields is what its two sides yield, each in proportion to what flows there;
//! so a node is solved once for all that flows through it, whatever its size. Questions are
//! tried in the order of what they can yield at most, until none can yield more than the best so
//! far (or, if a floor is given, than the floor). What comes out right is the first, then the
//! second places used, then the steps walked.
//!
//! *Loosely* a node may also be parted by questions that part no pair: what that yields bounds
//! what a node can yield when kinds that come in by wrong answers make such questions admissible.

use num_traits::{CheckedAdd, CheckedMul, CheckedSub, Zero};
use rustc_hash::FxHashMap;
use smallvec::SmallVec;
use spinney_model::Share;

use super::bound::most_right;
use super::node::{Node, Part, Put, Table};
use crate::cost;
use crate::exact::Solver;

/// So many second places, or [`LOOSELY`].
pub(super) type Level = u8;

/// Without second places, also by questions that part no pair.
pub(super) const LOOSELY: Level = Level::MAX;

/// Remembered nodes, at most: about 256 MiB.
const REMEMBERED: usize = 500_000;

/// Kinds × questions from which a node counts as more than one.
const LARGE: usize = 2000;

/// What a key yields of a node, in the numbers of the node.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Yield {
    pub(super) right: Share,
    pub(super) second_places: u32,
    pub(super) steps: Share,
}

/// What the best key of a node does first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Choice {
    End,
    /// As with no second place.
    Plainly,
    Ask {
        question: usize,
        sent: SmallVec<[u16; 3]>,
        levels: (Level, Level),
    },
}

/// What is known of a node.
#[derive(Clone, Debug)]
pub(super) struct Known {
    /// No key yields more; below zero: there is none.
    pub(super) upper: Share,
    pub(super) best: Option<(Yield, Choice)>,
    /// Whether the best is proved, ties settled.
    pub(super) done: bool,
}

impl Known {
    /// No key: a kind that came in by a wrong answer cannot be parted from the others.
    pub(super) fn never() -> Self {
        Self { upper: Share::from_integer(-1), best: None, done: true }
    }

    pub(super) fn end(right: Share) -> Self {
        let value = Yield { right, second_places: 0, steps: Share::zero() };
        Self { upper: right, best: Some((value, Choice::End)), done: true }
    }

    /// Takes a value if it is better than the best; of equal ones the first question stays.
    pub(super) fn take(&mut self, value: Yield, choice: Choice) {
        let question = |choice: &Choice| match choice {
            Choice::Ask { question, .. } => *question,
            Choice::End | Choice::Plainly => 0,
        };
        let better = self.best.as_ref().is_none_or(|(best, before)| {
            let order = value.right.cmp(&best.right).reverse();
            let order = order.then(value.second_places.cmp(&best.second_places));
            let order = order.then(value.steps.cmp(&best.steps));
            order.then(question(&choice).cmp(&question(before))).is_lt()
        });
        if better {
            self.best = Some((value, choice));
        }
    }

    /// What must be reached for anything to be better: the floor or the best so far.
    pub(super) fn floor(&self, given: Option<Share>) -> Option<Share> {
        let best = self.best.as_ref().map(|(value, _)| value.right);
        given.max(best)
    }

    /// Nothing that was not looked at yields more than `rest` (None: nothing is left).
    pub(super) fn close(&mut self, rest: Option<Share>) {
        let best = self.best.as_ref().map(|(value, _)| value.right);
        let upper = best.max(rest).unwrap_or(Share::from_integer(-1));
        self.upper = self.upper.min(upper);
        self.done = rest.is_none_or(|rest| best.is_some_and(|best| rest < best));
    }
}

/// The search with everything it remembers.
pub(super) struct SecondPlaces {
    pub(super) table: Table,
    memo: FxHashMap<(Node, Level), Known>,
    /// Nodes taken apart.
    pub(super) opened: u64,
    work: u64,
    limit: u64,
    /// Whether some number grew too large.
    pub(super) overflowed: bool,
}

/// A question with its two sides and what they can yield at most.
pub(super) struct Candidate {
    pub(super) at: usize,
    pub(super) parts: [Part; 2],
    pub(super) uppers: [Share; 2],
    pub(super) bound: Share,
}

impl SecondPlaces {
    pub(super) fn new(solver: Solver) -> Self {
        let odds = super::odds::Odds::of(&solver.space.matrix);
        Self {
            table: Table { solver, odds },
            memo: FxHashMap::default(),
            opened: 0,
            work: 0,
            limit: 0,
            overflowed: false,
        }
    }

    /// Sets how much may be done from here on.
    pub(super) fn allow(&mut self, heaps: u64) {
        self.limit = self.work.saturating_add(heaps);
    }

    pub(super) fn spent(&self) -> bool {
        self.overflowed || self.work >= self.limit || self.memo.len() >= REMEMBERED
    }

    pub(super) fn count(&mut self, node: &Node) {
        self.opened += 1;
        let large = self.table.size(node) * self.table.space().candidates / LARGE;
        self.work += 1 + large as u64;
    }

    /// What a number must be, or a note that it grew too large.
    pub(super) fn fits<T>(&mut self, number: Option<T>) -> Option<T> {
        self.overflowed |= number.is_none();
        number
    }

    pub(super) fn remembered(&self, node: &Node, level: Level) -> Option<&Known> {
        self.memo.get(&(node.clone(), level))
    }

    pub(super) fn remember(&mut self, node: &Node, level: Level, known: &Known) {
        self.memo.insert((node.clone(), level), known.clone());
    }

    /// Finds what a node yields, or that it yields less than the floor. None: some number grew
    /// too large to say anything.
    pub(super) fn solve(
        &mut self,
        node: &Node,
        level: Level,
        floor: Option<Share>,
    ) -> Option<Known> {
        let total = node.total();
        let total = Share::from_integer(self.fits(total)?);
        if self.table.size(node) < 2 {
            return Some(Known::end(total));
        }
        // A kind with a second place may be in the way of all that bars a question of touch.
        let loose = self.table.varies(node) || !self.table.space().touch_is_free();
        let level = if level == LOOSELY && !loose { 0 } else { level };
        let fresh = Known { upper: total, best: None, done: false };
        let known = self.remembered(node, level).cloned().unwrap_or(fresh);
        if known.done || floor.is_some_and(|floor| known.upper < floor) {
            return Some(known);
        }
        if self.spent() {
            return self.dived(node, level, known);
        }
        self.count(node);
        let known = if matches!(level, 0 | LOOSELY) {
            self.plain(node, level, floor, known)?
        } else {
            self.with_second_places(node, level, floor, known)?
        };
        self.remember(node, level, &known);
        Some(known)
    }

    /// A node without second places.
    fn plain(
        &mut self,
        node: &Node,
        level: Level,
        floor: Option<Share>,
        mut known: Known,
    ) -> Option<Known> {
        let puts = self.table.put_all(node, level != LOOSELY);
        let admissible = puts.iter().any(|put| put.sides.parts_a_pair);
        if !admissible && node.misread.is_empty() {
            return Some(Known::end(known.upper));
        }
        // Loosely, a question that parts no pair may lead to one that does.
        if puts.is_empty() || !admissible && level == 0 {
            return Some(Known::never());
        }
        let candidates = self.candidates(node, &puts, level)?;
        let mut rest: Option<Share> = None;
        for candidate in &candidates {
            let floor = known.floor(floor);
            if self.spent() || floor.is_some_and(|floor| candidate.bound < floor) {
                rest = rest.max(Some(candidate.bound));
                break;
            }
            let choice = Choice::Ask {
                question: puts[candidate.at].question,
                sent: SmallVec::new(),
                levels: (level, level),
            };
            let Candidate { parts, uppers, .. } = candidate;
            let left = self.both_sides(node, parts, *uppers, floor, choice, &mut known)?;
            rest = rest.max(left);
        }
        known.close(rest);
        if known.best.is_none() && !known.done {
            return self.dived(node, level, known);
        }
        Some(known)
    }

    /// Solves the two sides of a question as far as needed, and takes what they yield. What they
    /// can still yield at most, if that is not settled.
    pub(super) fn both_sides(
        &mut self,
        node: &Node,
        parts: &[Part; 2],
        uppers: [Share; 2],
        floor: Option<Share>,
        choice: Choice,
        known: &mut Known,
    ) -> Option<Option<Share>> {
        let Choice::Ask { question, ref sent, levels } = choice else { return Some(None) };
        let [yes, no] = parts;
        let [_, no_upper] = uppers;
        let in_no = self.fits(no.factor.checked_mul(&no_upper))?;
        let yes_known = {
            let floor = self.floor_of(floor, in_no, yes.factor)?;
            self.solve(&yes.node, levels.0, floor)?
        };
        if yes_known.upper < Share::zero() {
            return Some(None);
        }
        let in_yes = self.fits(yes.factor.checked_mul(&yes_known.upper.min(uppers[0])))?;
        let upper = self.fits(in_yes.checked_add(&in_no))?;
        if floor.is_some_and(|floor| upper < floor) {
            return Some(Some(upper));
        }
        let no_known = {
            let floor = self.floor_of(floor, in_yes, no.factor)?;
            self.solve(&no.node, levels.1, floor)?
        };
        if no_known.upper < Share::zero() {
            return Some(None);
        }
        let in_no = self.fits(no.factor.checked_mul(&no_known.upper.min(no_upper)))?;
        let upper = self.fits(in_yes.checked_add(&in_no))?;
        if let (Some((yes_value, _)), Some((no_value, _))) = (&yes_known.best, &no_known.best) {
            let value = self.joined(node, question, parts, yes_value, no_value);
            let mut value = self.fits(value)?;
            value.second_places += sent.len() as u32;
            known.take(value, choice);
        }
        Some((!yes_known.done || !no_known.done).then_some(upper))
    }

    /// What one side must reach where the other can yield `other` at most.
    fn floor_of(
        &mut self,
        floor: Option<Share>,
        other: Share,
        factor: Share,
    ) -> Option<Option<Share>> {
        let Some(floor) = floor.filter(|_| !factor.is_zero()) else { return Some(None) };
        let left = self.fits(floor.checked_sub(&other))?;
        self.fits(left.checked_mul(&factor.recip())).map(Some)
    }

    fn joined(
        &self,
        node: &Node,
        question: usize,
        parts: &[Part; 2],
        yes: &Yield,
        no: &Yield,
    ) -> Option<Yield> {
        let [in_yes, in_no] = [parts[0].factor, parts[1].factor];
        let sum = |yes: &Share, no: &Share| {
            in_yes.checked_mul(yes)?.checked_add(&in_no.checked_mul(no)?)
        };
        let ask = &self.table.question(question).ask;
        let character = self.table.space().matrix.character(ask.character);
        let own = cost::steps(character).checked_mul(node.total()?)?;
        let steps = sum(&yes.steps, &no.steps)?.checked_add(&Share::from_integer(own))?;
        let second_places = yes.second_places + no.second_places;
        Some(Yield { right: sum(&yes.right, &no.right)?, second_places, steps })
    }

    /// The questions of a node with their sides, those that can yield most first; of several
    /// that make the same sides, the one with the fewest steps.
    fn candidates(
        &mut self,
        node: &Node,
        puts: &[Put],
        level: Level,
    ) -> Option<Vec<Candidate>> {
        let parted = self.table.parted(node, puts);
        let mut candidates: Vec<Candidate> = Vec::new();
        let mut order: Vec<usize> = (0..puts.len()).collect();
        let space = self.table.space();
        let steps = |at: &usize| {
            let ask = &space.questions[puts[*at].question].ask;
            cost::steps(space.matrix.character(ask.character))
        };
        order.sort_by_key(steps);
        for at in order {
            let put = &puts[at];
            if level == 0 && !put.sides.parts_a_pair {
                continue;
            }
            let parts = self.fits(self.table.part(node, put, &[]))?;
            let same = |other: &Candidate| {
                let pair = |a: &Part, b: &Part| a.factor == b.factor && a.node == b.node;
                let [yes, no] = &other.parts;
                pair(yes, &parts[0]) && pair(no, &parts[1])
                    || pair(yes, &parts[1]) && pair(no, &parts[0])
            };
            if candidates.iter().any(same) {
                continue;
            }
            let uppers = [
                self.fits(most_right(&self.table, &parts[0].node, &parted))?,
                self.fits(most_right(&self.table, &parts[1].node, &parted))?,
            ];
            let bound = self.fits(bound(&parts, &uppers))?;
            candidates.push(Candidate { at, parts, uppers, bound });
        }
        candidates.sort_by(|a, b| b.bound.cmp(&a.bound).then(a.at.cmp(&b.at)));
        Some(candidates)
    }

    /// Where nothing more may be done: some key all the same, by the most promising question at
    /// every node. Where a kind came in by a wrong answer there may be none.
    fn dived(&mut self, node: &Node, level: Level, mut known: Known) -> Option<Known> {
        if known.best.is_some() || level == LOOSELY || !node.misread.is_empty() {
            return Some(known);
        }
        if level > 0 {
            let plain = self.solve(node, 0, None)?;
            if let Some((value, _)) = plain.best {
                known.take(value, Choice::Plainly);
            }
            return Some(known);
        }
        let puts = self.table.put_all(node, true);
        let candidates = self.candidates(node, &puts, 0)?;
        let Some(first) = candidates.first() else { return Some(Known::end(known.upper)) };
        let mut values = Vec::new();
        for part in &first.parts {
            let side = self.solve(&part.node, 0, None)?;
            values.extend(side.best.map(|(value, _)| value));
        }
        if let [yes, no] = values.as_slice() {
            let question = puts[first.at].question;
            let value = self.joined(node, question, &first.parts, yes, no);
            let value = self.fits(value)?;
            let levels = (0, 0);
            known.take(value, Choice::Ask { question, sent: SmallVec::new(), levels });
        }
        self.remember(node, 0, &known);
        Some(known)
    }
}

/// What both sides can yield at most.
pub(super) fn bound(parts: &[Part; 2], uppers: &[Share; 2]) -> Option<Share> {
    let yes = parts[0].factor.checked_mul(&uppers[0])?;
    yes.checked_add(&parts[1].factor.checked_mul(&uppers[1])?)
}
