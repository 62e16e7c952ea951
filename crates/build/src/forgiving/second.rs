//! The most that can come out right of a node with second places.
//!
//! With every question goes every choice of kinds to look for on its wrong side, as many as the
//! budget allows, and every way to share the rest of the budget between the two sides. Without
//! the kinds that come in by wrong answers, a key of a node with second places is a key of the
//! node (loosely); so it yields at most what that yields, and for each second place what the
//! wrong answer let through. That is the bound by which choices are tried and dropped.

use num_traits::{CheckedAdd, CheckedMul};
use smallvec::SmallVec;
use spinney_model::Share;

use super::bound::{forgiven, second_place};
use super::node::{Node, Put};
use super::search::{Choice, Known, LOOSELY, Level, SecondPlaces, bound};

/// A question with kinds to look for on its wrong side.
struct Trial {
    at: usize,
    sent: SmallVec<[u16; 3]>,
    bound: Share,
}

impl SecondPlaces {
    pub(super) fn with_second_places(
        &mut self,
        node: &Node,
        level: Level,
        given: Option<Share>,
        mut known: Known,
    ) -> Option<Known> {
        let plain = self.solve(node, 0, None)?;
        let upper = self.upper(node, level)?;
        if upper < Share::from_integer(0) {
            return Some(Known::never());
        }
        known.upper = known.upper.min(upper);
        if let Some((value, _)) = plain.best {
            known.take(value, Choice::Plainly);
        }
        if known.floor(given).is_some_and(|floor| known.upper < floor) {
            return Some(known);
        }
        let puts = self.table.put_all(node, true);
        if puts.iter().all(|put| !put.sides.parts_a_pair) {
            return Some(plain_or_never(node, known));
        }
        let trials = self.trials(node, level, &puts, known.floor(given))?;
        let mut rest: Option<Share> = trials.dropped;
        for trial in &trials.kept {
            let floor = known.floor(given);
            if self.spent() || floor.is_some_and(|floor| trial.bound < floor) {
                rest = rest.max(Some(trial.bound));
                break;
            }
            let left = self.try_out(node, level, &puts[trial.at], trial, given, &mut known)?;
            rest = rest.max(left);
        }
        if !plain.done {
            rest = rest.max(Some(plain.upper));
        }
        known.close(rest);
        Some(known)
    }

    /// What a node can yield at most with so many second places.
    fn upper(&mut self, node: &Node, level: Level) -> Option<Share> {
        let loosely = self.solve(node, LOOSELY, None)?.upper;
        if level == 0 || loosely < Share::from_integer(0) {
            return Some(loosely);
        }
        let gain = self.fits(second_place(&self.table, node))?;
        let gain = self.fits(gain.checked_mul(&Share::from_integer(level.into())))?;
        self.fits(loosely.checked_add(&gain))
    }

    /// All trials that may reach the floor, those that can yield most first.
    fn trials(
        &mut self,
        node: &Node,
        level: Level,
        puts: &[Put],
        floor: Option<Share>,
    ) -> Option<Trials> {
        let mut trials = Trials::default();
        let gain = self.fits(second_place(&self.table, node))?;
        let kinds = self.table.kinds(node);
        for (at, put) in puts.iter().enumerate().filter(|(_, put)| put.sides.parts_a_pair) {
            let parts = self.fits(self.table.part(node, put, &[]))?;
            let uppers = [
                self.solve(&parts[0].node, LOOSELY, None)?.upper,
                self.solve(&parts[1].node, LOOSELY, None)?.upper,
            ];
            if uppers.iter().any(|upper| *upper < Share::from_integer(0)) {
                // Not even without second places can the kinds that came in be parted.
                continue;
            }
            let base = self.fits(bound(&parts, &uppers))?;
            let mut gains: Vec<(u16, Share)> = Vec::new();
            for (kind, mass) in kinds.iter().copied().zip(&node.masses) {
                let wrong = self.table.odds.unit - self.table.right(put.question, kind);
                if put.sides.both(kind) || wrong == 0 {
                    continue;
                }
                let wrong = self.fits(mass.checked_mul(&wrong))?;
                let gained = self.fits(forgiven(&self.table, node, kind, wrong))?;
                gains.push((kind as u16, gained));
            }
            let listing = Listing { at, gains: &gains, gain, floor };
            let listed = listing.list(level, base, 0, &SmallVec::new(), &mut trials);
            self.fits(listed)?;
        }
        let order = |trial: &Trial| (trial.at, trial.sent.len());
        trials.kept.sort_by(|a, b| {
            b.bound
                .cmp(&a.bound)
                .then_with(|| order(a).cmp(&order(b)))
                .then(a.sent.cmp(&b.sent))
        });
        Some(trials)
    }

    /// Shares the rest of the budget between the sides in every way.
    fn try_out(
        &mut self,
        node: &Node,
        level: Level,
        put: &Put,
        trial: &Trial,
        given: Option<Share>,
        known: &mut Known,
    ) -> Option<Option<Share>> {
        let left = level - trial.sent.len() as Level;
        let sent: Vec<usize> = trial.sent.iter().map(|kind| usize::from(*kind)).collect();
        let parts = self.fits(self.table.part(node, put, &sent))?;
        let mut rest = None;
        for in_yes in (0..=left).rev() {
            let levels = (in_yes, left - in_yes);
            let floor = known.floor(given);
            let uppers =
                [self.upper(&parts[0].node, levels.0)?, self.upper(&parts[1].node, levels.1)?];
            if uppers.iter().any(|upper| *upper < Share::from_integer(0)) {
                break;
            }
            let most = self.fits(bound(&parts, &uppers))?.min(trial.bound);
            if self.spent() || floor.is_some_and(|floor| most < floor) {
                rest = rest.max(Some(most));
                continue;
            }
            let sent = trial.sent.clone();
            let choice = Choice::Ask { question: put.question, sent, levels };
            let open = self.both_sides(node, &parts, uppers, floor, choice, known)?;
            rest = rest.max(open.map(|open| open.min(most)));
        }
        Some(rest)
    }
}

/// An end, unless a kind came in by a wrong answer and is not alone.
fn plain_or_never(node: &Node, known: Known) -> Known {
    match &known.best {
        Some((value, _)) if node.misread.is_empty() => Known::end(value.right),
        _ => Known::never(),
    }
}

/// Trials, and the most that those yield which cannot reach the floor.
#[derive(Default)]
struct Trials {
    kept: Vec<Trial>,
    dropped: Option<Share>,
}

/// The kinds that one question may send both ways.
struct Listing<'a> {
    at: usize,
    gains: &'a [(u16, Share)],
    /// What a second place further down can gain.
    gain: Share,
    floor: Option<Share>,
}

impl Listing<'_> {
    /// Lists this choice of kinds and all that hold it and kinds from `from` on.
    fn list(
        &self,
        left: Level,
        base: Share,
        from: usize,
        sent: &SmallVec<[u16; 3]>,
        trials: &mut Trials,
    ) -> Option<()> {
        let further = self.gain.checked_mul(&Share::from_integer(left.into()))?;
        let bound = base.checked_add(&further)?;
        if self.floor.is_some_and(|floor| bound < floor) {
            trials.dropped = trials.dropped.max(Some(bound));
        } else if !(sent.is_empty() && left == 0) {
            trials.kept.push(Trial { at: self.at, sent: sent.clone(), bound });
        }
        if left == 0 {
            return Some(());
        }
        for (at, (kind, gained)) in self.gains.iter().enumerate().skip(from) {
            let mut sent = sent.clone();
            sent.push(*kind);
            self.list(left - 1, base.checked_add(gained)?, at + 1, &sent, trials)?;
        }
        Some(())
    }
}
