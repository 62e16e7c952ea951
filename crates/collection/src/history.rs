//! The history of a collection: which lines of its journal hold, and what they add up to.
//!
//! From the lines, one after another, to the collection as it stands. Undo is one more line: it
//! takes back the last line that still holds, or all after a place. What was undone can come
//! back until something else is done.

use spinney_model::{Done, Entry};

use crate::Collection;

/// So many lines lie between two remembered states: undo does at most so many edits again,
/// in 2 to 3 ms, and a hundred thousand lines remember 24 states.
const BETWEEN: usize = 4096;

/// The lines of a journal and what they add up to.
#[derive(Clone, Debug, Default)]
pub struct History {
    /// All lines, in the order in which they were kept.
    pub entries: Vec<Entry>,
    /// The lines that hold, in order.
    pub holding: Vec<usize>,
    /// The lines that were undone and can come back, the last one last.
    pub undone: Vec<usize>,
    /// Every state that was ever named, in order.
    versions: Vec<Version>,
    /// The line under each line that held: undone and done again, a line always comes back to
    /// the same one. So a state is named by its last line alone.
    below: Vec<Option<usize>>,
    /// What the lines that hold add up to.
    pub now: Collection,
    /// States after so many holding lines.
    remembered: Vec<(usize, Collection)>,
    /// Whether `now` is to be worked out again, because a line was taken back.
    stale: bool,
}

/// A state that was given a name.
#[derive(Clone, Debug)]
pub struct Version {
    /// What somebody called it.
    pub name: String,
    /// When, in milliseconds since 1970 UTC.
    pub at: i64,
    /// The last line that held then; None: none did.
    last: Option<usize>,
    /// Whether its name was given up.
    gone: bool,
}

impl History {
    /// One line more.
    #[cfg(test)]
    pub fn add(&mut self, entry: Entry) {
        self.add_all([entry]);
    }

    /// Lines more. However many of them take something back, the state is worked out once.
    pub fn add_all(&mut self, entries: impl IntoIterator<Item = Entry>) {
        entries.into_iter().for_each(|entry| self.take_in(entry));
        if std::mem::take(&mut self.stale) {
            let (after, mut state) = self.remembered.last().cloned().unwrap_or_default();
            self.fold(&mut state, &self.holding[after..]);
            self.now = state;
        }
    }

    fn take_in(&mut self, entry: Entry) {
        let at = self.entries.len();
        self.below.push(self.holding.last().copied());
        match &entry.done {
            Done::Edits(edits) => {
                if !self.stale {
                    edits.iter().for_each(|edit| self.now.apply(edit));
                }
                self.undone.clear();
                self.hold(at);
            }
            Done::Undo => {
                if let Some(last) = self.holding.pop() {
                    self.undone.push(last);
                    self.step_back();
                }
            }
            Done::Redo => {
                if let Some(line) = self.undone.pop() {
                    self.hold_again(line);
                }
            }
            Done::HoldFirst(lines) => self.hold_first(*lines),
            Done::Version(name) => self.versions.push(Version {
                name: name.clone(),
                at: entry.at,
                last: self.holding.last().copied(),
                gone: false,
            }),
            Done::Unname(version) => {
                let version = usize::try_from(*version).ok();
                if let Some(version) = version.and_then(|at| self.versions.get_mut(at)) {
                    version.gone = true;
                }
            }
        }
        self.entries.push(entry);
    }

    /// The lines that hold, and then those that were undone, are one list; its first so many
    /// hold from now on.
    fn hold_first(&mut self, lines: u64) {
        let mut all = std::mem::take(&mut self.holding);
        let held = all.len();
        all.extend(self.undone.drain(..).rev());
        let lines = usize::try_from(lines).unwrap_or(usize::MAX).min(all.len());
        self.undone = all.split_off(lines);
        self.undone.reverse();
        if lines <= held {
            self.holding = all;
            self.step_back();
            return;
        }
        let again = all.split_off(held);
        self.holding = all;
        again.into_iter().for_each(|line| self.hold_again(line));
    }

    fn hold_again(&mut self, line: usize) {
        if let (false, Done::Edits(edits)) = (self.stale, &self.entries[line].done) {
            edits.iter().for_each(|edit| self.now.apply(edit));
        }
        self.hold(line);
    }

    fn hold(&mut self, line: usize) {
        self.holding.push(line);
        if !self.stale && self.holding.len().is_multiple_of(BETWEEN) {
            self.remembered.push((self.holding.len(), self.now.clone()));
        }
    }

    fn step_back(&mut self) {
        let length = self.holding.len();
        self.remembered.retain(|(after, _)| *after <= length);
        self.stale = true;
    }

    fn fold(&self, state: &mut Collection, lines: &[usize]) {
        for &line in lines {
            if let Done::Edits(edits) = &self.entries[line].done {
                edits.iter().for_each(|edit| state.apply(edit));
            }
        }
    }

    /// The collection as it would stand with one line more; None: as it does now.
    pub fn then(&self, done: &Done) -> Option<Collection> {
        let held = self.holding.len();
        let lines = match done {
            Done::Edits(edits) => {
                let mut state = self.now.clone();
                edits.iter().for_each(|edit| state.apply(edit));
                return Some(state);
            }
            Done::Undo => held.saturating_sub(1),
            Done::Redo => held + 1,
            Done::HoldFirst(lines) => usize::try_from(*lines).unwrap_or(usize::MAX),
            Done::Version(_) | Done::Unname(_) => return None,
        };
        if lines >= held {
            let mut state = self.now.clone();
            let again: Vec<usize> = self.undone.iter().rev().copied().collect();
            self.fold(&mut state, &again[..(lines - held).min(again.len())]);
            return Some(state);
        }
        let near = self.remembered.iter().rev().find(|(after, _)| *after <= lines);
        let (after, mut state) = near.cloned().unwrap_or_default();
        self.fold(&mut state, &self.holding[after..lines]);
        Some(state)
    }

    /// The collection as it stood after the first so many lines; None: there are fewer.
    pub fn after(&self, lines: usize) -> Option<Collection> {
        let last = match lines == self.entries.len() {
            true => self.holding.last().copied(),
            false => *self.below.get(lines)?,
        };
        Some(self.up_to(last))
    }

    /// What the lines up to this one add up to, as they held then.
    fn up_to(&self, last: Option<usize>) -> Collection {
        let mut lines: Vec<usize> =
            std::iter::successors(last, |line| self.below[*line]).collect();
        lines.reverse();
        let mut state = Collection::default();
        self.fold(&mut state, &lines);
        state
    }

    /// The states that have a name, each with its number, in the order of their naming.
    pub fn versions(&self) -> impl DoubleEndedIterator<Item = (usize, &Version)> {
        self.versions.iter().enumerate().filter(|(_, version)| !version.gone)
    }

    /// A state that has a name, by its number; None: nobody named it, or the name was given up.
    pub fn named(&self, version: usize) -> Option<&Version> {
        self.versions.get(version).filter(|version| !version.gone)
    }

    /// The collection as it stood when a version was named.
    pub fn version(&self, version: usize) -> Option<Collection> {
        Some(self.up_to(self.named(version)?.last))
    }

    /// The holding lines from the `first` up to the `end`, each with the collection as it stood
    /// before it.
    pub fn told(&self, first: usize, end: usize, mut tell: impl FnMut(usize, &Collection)) {
        let near = self.remembered.iter().rev().find(|(after, _)| *after <= first);
        let (after, mut state) = near.cloned().unwrap_or_default();
        for (at, &line) in self.holding.iter().enumerate().take(end).skip(after) {
            if at >= first {
                tell(line, &state);
            }
            self.fold(&mut state, &[line]);
        }
    }

    /// At most so many lines that were undone, the one that comes back first at the front, each
    /// with the collection as it would stand before it.
    pub fn told_undone(&self, most: usize, mut tell: impl FnMut(usize, &Collection)) {
        let mut state = self.now.clone();
        for &line in self.undone.iter().rev().take(most) {
            tell(line, &state);
            self.fold(&mut state, &[line]);
        }
    }
}

#[cfg(test)]
pub mod tests;
