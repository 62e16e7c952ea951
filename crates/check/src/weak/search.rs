//! All sets of so many characters that meet every demand, or the proof that there is none.
//!
//! A demand that leaves the least choice is taken; one of its characters must be in, and those
//! tried before are out. A branch ends where what is left cannot do with the characters that
//! may still come: demands that share no character need one each, what is still asked for is
//! more than the most useful can give, or kinds are too many to be divided so often
//! (`dividing`). Source of the scheme: set cover by branch and bound, as in N. Christofides
//! and S. Korman, *A computational survey of methods for the set covering problem*, Management
//! Science 21 (1975), from memory. It counts steps and looks at no clock.

use std::cmp::Reverse;

use super::demands::{Demands, Tally};
use super::dividing::Dividing;
use crate::bits::Bits;

/// Among so many open demands the tightest is looked for, and some without a common character.
const MOST_COMPARED: usize = 128;

/// How a search ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ended {
    /// Everything was looked at.
    Complete,
    /// More sets than asked for were found.
    Enough,
    /// The steps were used up.
    Steps,
}

pub(super) struct Search<'c> {
    pub(super) demands: &'c Demands,
    pub(super) dividing: &'c Dividing,
    pub(super) characters: usize,
    /// Steps that are left: looks at one demand.
    pub(super) steps: u64,
    /// It stops when it has found more sets than this.
    pub(super) enough: usize,
    pub(super) sets: Vec<Bits>,
    pub(super) ended: Ended,
}

/// A place of the search.
struct Here {
    chosen: Bits,
    banned: Bits,
    /// Demands that are not met yet, with the number of differences that they lack.
    open: Vec<(u32, u32)>,
    /// The same of joined demands.
    joined: Vec<usize>,
    /// For kinds that are all apart in the end: which of them are still together.
    places: Vec<u32>,
    /// How many characters may still come.
    room: usize,
}

/// A demand to choose a character for.
#[derive(Clone, Copy)]
enum Demand {
    Plain(u32),
    Joined(usize),
}

impl Search<'_> {
    /// Looks for all sets of this size; none may be smaller.
    pub(super) fn run(&mut self, size: usize) -> Ended {
        self.sets.clear();
        self.ended = Ended::Complete;
        let none = Bits::none(self.characters);
        let plain = u32::try_from(self.demands.plain()).expect("a few million pairs at most");
        let start = Here {
            chosen: none.clone(),
            banned: none,
            open: (0..plain).map(|at| (at, self.demands.wanted(at))).collect(),
            joined: (0..self.demands.joined.len()).collect(),
            places: self.dividing.undivided(),
            room: size,
        };
        self.look(start);
        self.ended
    }

    /// Whether to go on.
    fn look(&mut self, mut here: Here) -> bool {
        match here.room {
            _ if here.open.is_empty() && here.joined.is_empty() => {
                return self.keep(here.chosen);
            }
            0 => return true,
            1 => return self.last(&here),
            _ => {}
        }
        if !self.dividing.could(&here.places, [&here.chosen, &here.banned], here.room) {
            return true;
        }
        let Some(tightest) = self.tightest(&here) else { return true };
        for (character, enough) in self.promising(&here, tightest) {
            if enough && !self.with(&here, character).is_none_or(|next| self.look(next)) {
                return false;
            }
            here.banned.add(character);
            if !self.possible(tightest, &here.banned) {
                break;
            }
        }
        self.ended == Ended::Complete
    }

    /// The place after one more character was chosen; None: the steps are used up.
    fn with(&mut self, here: &Here, character: usize) -> Option<Here> {
        self.spend(here.open.len() + here.joined.len()).then_some(())?;
        let demands = self.demands;
        let mut chosen = here.chosen.clone();
        chosen.add(character);
        let lacks = |&(at, lacks): &(u32, u32)| {
            let left = lacks - u32::from(demands.has(at, character));
            (left > 0).then_some((at, left))
        };
        let unmet = |joined: &usize| !demands.joined[*joined].met(&chosen);
        Some(Here {
            banned: here.banned.clone(),
            open: here.open.iter().filter_map(lacks).collect(),
            joined: here.joined.iter().copied().filter(unmet).collect(),
            places: self.dividing.divided(&here.places, character),
            room: here.room - 1,
            chosen,
        })
    }

    /// The open demand that leaves the least choice; None: one cannot be met any more, or
    /// demands without a common character need more than may come.
    fn tightest(&mut self, here: &Here) -> Option<Demand> {
        let mut unused = self.free(here);
        let free = unused.clone();
        let mut needed = 0;
        let mut tightest: Option<(u32, Demand)> = None;
        let mut tighter = |choice: u32, lacks: u32, demand: Demand| -> Option<()> {
            let slack = choice.checked_sub(lacks)?;
            if tightest.is_none_or(|(least, _)| slack < least) {
                tightest = Some((slack, demand));
            }
            Some(())
        };
        for &at in &here.joined {
            let clause = &self.demands.joined[at];
            tighter(clause.without(&here.banned), clause.wanted, Demand::Joined(at))?;
            let open = clause.open(&here.chosen, &here.banned);
            if open.within(&unused) {
                // One governor may add several differences at once.
                needed += 1;
                unused.take_out(open.words());
            }
        }
        for &(at, lacks) in here.open.iter().take(MOST_COMPARED) {
            let row = self.demands.row(at);
            let mut open = free.clone();
            open.keep_only(row);
            tighter(open.count(), lacks, Demand::Plain(at))?;
            if open.within(&unused) {
                needed += lacks;
                unused.take_out(row);
            }
        }
        let (_, tightest) = tightest.expect("something is open");
        (needed as usize <= here.room).then_some(tightest)
    }

    /// The characters of a demand, the most useful first, and whether with each there can be
    /// enough of what all open demands ask for. Joined demands are left aside: one character
    /// may add several differences to them.
    fn promising(&mut self, here: &Here, tightest: Demand) -> Vec<(usize, bool)> {
        self.spend(here.open.len());
        let mut tally = Tally::new(self.characters);
        let mut asked = 0;
        for &(at, lacks) in &here.open {
            tally.add(self.demands.row(at));
            asked += u64::from(lacks);
        }
        let gains = tally.counts();
        let free = self.free(here);
        let mut best: Vec<u64> = free.iter().map(|character| gains[character]).collect();
        best.sort_unstable_by_key(|gain| Reverse(*gain));
        let most = |others: usize| best.iter().take(others).sum::<u64>();
        if most(here.room) < asked {
            return Vec::new();
        }
        let others = most(here.room - 1);
        let open = match tightest {
            Demand::Joined(at) => self.demands.joined[at].open(&here.chosen, &here.banned),
            Demand::Plain(at) => {
                let mut open = free;
                open.keep_only(self.demands.row(at));
                open
            }
        };
        let mut characters: Vec<usize> = open.iter().collect();
        characters.sort_by_key(|character| (Reverse(gains[*character]), *character));
        characters.into_iter().map(|c| (c, gains[c] + others >= asked)).collect()
    }

    /// Whether a demand can be met without these.
    fn possible(&self, demand: Demand, banned: &Bits) -> bool {
        match demand {
            Demand::Joined(at) => {
                let clause = &self.demands.joined[at];
                clause.without(banned) >= clause.wanted
            }
            Demand::Plain(at) => {
                let row = self.demands.row(at).iter().zip(banned.words());
                let left: u32 = row.map(|(row, banned)| (row & !banned).count_ones()).sum();
                left >= self.demands.wanted(at)
            }
        }
    }

    /// One more character may come: those that meet everything.
    fn last(&mut self, here: &Here) -> bool {
        let mut can = self.free(here);
        for (looked, &(at, lacks)) in here.open.iter().enumerate() {
            can.keep_only(self.demands.row(at));
            if lacks > 1 || can.is_empty() {
                return self.spend(looked);
            }
        }
        if !self.spend(here.open.len()) {
            return false;
        }
        let with = |character: usize| {
            let mut all = here.chosen.clone();
            all.add(character);
            all
        };
        let meets_joined =
            |all: &Bits| here.joined.iter().all(|at| self.demands.joined[*at].met(all));
        let found: Vec<Bits> = can.iter().map(with).filter(meets_joined).collect();
        found.into_iter().all(|set| self.keep(set))
    }

    /// Characters that are neither chosen nor banned.
    fn free(&self, here: &Here) -> Bits {
        let mut free = Bits::all(self.characters);
        free.take_out(here.chosen.words());
        free.take_out(here.banned.words());
        free
    }

    fn keep(&mut self, set: Bits) -> bool {
        self.sets.push(set);
        if self.sets.len() > self.enough {
            self.ended = Ended::Enough;
        }
        self.ended == Ended::Complete
    }

    fn spend(&mut self, looks: usize) -> bool {
        match self.steps.checked_sub(looks as u64 + 1) {
            Some(left) => self.steps = left,
            None => {
                self.steps = 0;
                self.ended = Ended::Steps;
            }
        }
        self.ended == Ended::Complete
    }
}
