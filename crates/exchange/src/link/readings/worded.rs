//! Which states of a character a sentence names, in the table's own words or by others.
//!
//! From the words of a sentence to the states a yes would mean, and what the naming is worth:
//! word for word, in the same words, by a synonym, by a part, or by the opposite.

use std::collections::BTreeSet;

use spinney_model::{Asked, CharacterIx, StateIx};

use super::super::trade_words::SIZES;
use super::super::vocabulary::Column;
use super::super::words::Word;
use super::{AMBIGUOUS_WORD, Doubt, OWN, SYNONYM, Sentence, WORD_FOR_WORD};

impl Sentence<'_> {
    /// The states of a character that the sentence names, or denies.
    pub(super) fn states(
        &mut self,
        character: CharacterIx,
        column: &Column,
        named: bool,
    ) -> Option<(Asked, i32)> {
        let mut named_states: Vec<(StateIx, usize, bool, i32)> = Vec::new();
        for (ix, state) in column.states.iter().enumerate() {
            let whole = self.word_for_word(&column.spelt[ix]);
            if let Some((denied, worth)) = whole.or_else(|| self.state(state, named)) {
                named_states.push((StateIx(ix), state.len(), denied, worth));
            }
        }
        // "finely toothed" names that state and not also "toothed".
        let most = named_states.iter().map(|found| found.1).max().unwrap_or(0);
        if most > 1 && named_states.iter().any(|found| found.1 == most && !found.2) {
            let full: BTreeSet<usize> = named_states
                .iter()
                .filter(|found| found.1 == most)
                .map(|found| found.0.0)
                .collect();
            // But "finely toothed or toothed" says it once more.
            let or = self.words.iter().any(|word| word.text == "or");
            let again = |state: &[Word], within: usize| {
                let said = |word| self.words.iter().filter(|o| o.meets(word).is_some()).count();
                or && state.iter().all(|word| said(word) > within)
            };
            named_states.retain(|found| {
                let state = &column.states[found.0.0];
                let wider =
                    full.iter().filter(|ix| within(state, &column.states[**ix])).count();
                found.1 == most || wider == 0 || again(state, wider)
            });
        }
        if named_states.is_empty() {
            named_states = self.parts_of_states(column);
        }
        if named_states.is_empty() {
            named_states = self.opposites(column);
        }
        self.widen(column, &mut named_states);
        let all: BTreeSet<StateIx> = (0..column.states.len()).map(StateIx).collect();
        let pick = |denied: bool| -> BTreeSet<StateIx> {
            named_states.iter().filter(|found| found.2 == denied).map(|found| found.0).collect()
        };
        let (asked, denied) = (pick(false), pick(true));
        let yes: BTreeSet<StateIx> = if asked.is_empty() {
            all.difference(&denied).copied().collect()
        } else {
            asked.difference(&denied).copied().collect()
        };
        let worth = named_states.iter().map(|found| found.3).max()?;
        if yes.len() == all.len() && !asked.is_empty() {
            self.doubts.insert((character, Doubt::AllStates(character)));
        }
        (!yes.is_empty() && yes.len() < all.len()).then_some((Asked::States(yes), worth))
    }

    /// "Has it got teeth?" asks for the double-toothed too, "is it toothed?" in the table's own
    /// word only for the toothed.
    fn widen(&self, column: &Column, named: &mut Vec<(StateIx, usize, bool, i32)>) {
        let exact = |state: &[Word]| {
            state.iter().all(|word| self.words.iter().any(|other| other.text == word.text))
        };
        for (ix, length, denied, worth) in named.clone() {
            let state = &column.states[ix.0];
            if exact(state) {
                continue;
            }
            for (at, wider) in column.states.iter().enumerate() {
                let known = named.iter().any(|found| found.0.0 == at);
                if !known && wider.len() > state.len() && within(state, wider) {
                    named.push((StateIx(at), length, denied, worth));
                }
            }
        }
    }

    /// Whether a state of several words stands in the sentence as it is written in the
    /// table, small words and all: if it is denied, and its worth.
    fn word_for_word(&self, state: &[String]) -> Option<(bool, i32)> {
        let mut places = self.plain.windows(state.len().max(2));
        let found = places.find(|place| place.iter().map(|word| &word.0).eq(state))?;
        Some((found[0].1, WORD_FOR_WORD))
    }

    /// Whether every word of a state stands in the sentence: if it is denied, and its worth.
    fn state(&self, state: &[Word], named: bool) -> Option<(bool, i32)> {
        let mut denied = None;
        let mut worth = OWN;
        for word in state {
            // Of "lobed or unlobed" both states are asked for, and neither is denied.
            let meetings = || self.words.iter().filter_map(|other| other.meets(word));
            let meeting = meetings().find(|m| !m.denied).or_else(|| meetings().next())?;
            if denied.is_some_and(|before| before != meeting.denied) {
                return None;
            }
            denied = Some(meeting.denied);
            if !meeting.by_itself {
                worth = worth.min(SYNONYM);
            }
            let size = || {
                self.words.iter().any(|other| {
                    SIZES.contains(&other.text.as_str()) && other.meets(word).is_some()
                })
            };
            if !named && (self.vocabulary.lexicon.ambiguous.contains(&word.keys[0].0) || size())
            {
                worth = worth.min(AMBIGUOUS_WORD);
            }
        }
        denied.map(|denied| (denied, worth))
    }

    /// States of which a word stands in the sentence that no other character knows.
    fn parts_of_states(&self, column: &Column) -> Vec<(StateIx, usize, bool, i32)> {
        let mut found = Vec::new();
        for (ix, state) in column.states.iter().enumerate() {
            let others = column.states.iter().enumerate().filter(|(other, _)| *other != ix);
            let others: Vec<&Word> = others.flat_map(|(_, words)| words).collect();
            let own = |word: &&Word| {
                let homes =
                    word.keys.first().and_then(|(key, _)| self.vocabulary.homes.get(key));
                homes.is_some_and(|homes| homes.len() == 1)
                    && !others.iter().any(|other| other.meets(word).is_some())
            };
            let met = state.iter().filter(own).find_map(|word| {
                self.words.iter().find_map(|other| {
                    other.meets(word).map(|meeting| (meeting, SIZES.contains(&&*other.text)))
                })
            });
            if let Some((meeting, false)) = met {
                found.push((StateIx(ix), 1, meeting.denied, SYNONYM));
            }
        }
        found
    }

    /// Where a column lacks "compound" but has "one piece", that is denied.
    fn opposites(&self, column: &Column) -> Vec<(StateIx, usize, bool, i32)> {
        let mut found = Vec::new();
        for (word, opposite) in &self.vocabulary.lexicon.opposites {
            let said = self.words.iter().flat_map(|w| &w.keys).find(|(key, _)| key == word);
            let Some((_, denied)) = said else { continue };
            for (ix, state) in column.states.iter().enumerate() {
                let [only] = state.as_slice() else { continue };
                if let Some((_, own)) = only.keys.iter().find(|(key, _)| key == opposite) {
                    found.push((StateIx(ix), 1, !(denied ^ own), SYNONYM));
                }
            }
        }
        found
    }
}

/// Whether every word of one state is in another.
fn within(state: &[Word], other: &[Word]) -> bool {
    state.iter().all(|word| other.iter().any(|longer| longer.meets(word).is_some()))
}
