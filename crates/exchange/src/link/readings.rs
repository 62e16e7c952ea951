//! The readings of a sentence: for every character what a "yes" would mean, and how well the
//! words fit.
//!
//! From a sentence and a table's vocabulary to readings with points, the best first, and what
//! stands in the way of taking one. The scale is told in `docs/key-text.md`: a state named in
//! the table's own word or a number with a fitting unit 12, by a synonym 10; the whole name of
//! the character 8; every word that nothing explains −3, at home in another character −6, another character's state −12.

mod counted;

use std::collections::BTreeSet;

use spinney_model::{Ask, Asked, CharacterIx, Matrix, Scale, StateIx};

use super::numbers;
use super::numbers_asked::{self, Asks};
use super::trade_words::SIZES;
use super::vocabulary::{Column, Vocabulary};
use super::words::{Role, Word, denies};

/// A state named in the table's own word, or a threshold.
const OWN: i32 = 12;
/// A state named by a synonym, or by part of its words.
const SYNONYM: i32 = 10;
/// A word such as `smooth`, which means something else on every part.
const AMBIGUOUS_WORD: i32 = 8;
/// The whole name of the character.
const NAME: i32 = 8;
/// A word that nothing explains.
const UNEXPLAINED: i32 = 3;
/// A word that is at home in another character or part.
const ELSEWHERE: i32 = 6;

/// A state of another character: then two things are asked at once.
const ANOTHER_STATE: i32 = 12;

/// One reading of a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Reading {
    pub(super) ask: Ask,
    pub(super) points: i32,
}

/// What stands in the way of a link, the plainest first.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Doubt {
    /// A choice or span of numbers.
    Span(String),
    /// Exactly a number, in the middle of the column.
    Exactly(String),
    /// Several numbers.
    Several,
    /// A number that no reading uses, or one without a unit.
    Number,
    /// Every state of a character is asked for.
    AllStates(CharacterIx),
    /// A size without a measure.
    Size(String),
    /// Two denials, or one that may be only manner of speaking.
    Denied,
}

/// All readings of a sentence.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Readings {
    /// The best first.
    pub(super) readings: Vec<Reading>,
    pub(super) doubts: BTreeSet<Doubt>,
    /// A character that is named in the sentence, whatever is said of it.
    pub(super) named: Option<CharacterIx>,
}

/// Reads a sentence.
pub(super) fn read(sentence: &str, matrix: &Matrix, vocabulary: &Vocabulary) -> Readings {
    let words = tail_cut(vocabulary.lexicon.words(sentence));
    let mut sentence = Sentence {
        matrix,
        vocabulary,
        asks: numbers_asked::asked(&words),
        words,
        doubts: BTreeSet::new(),
    };
    let mut readings = Vec::new();
    for character in matrix.character_indices() {
        readings.extend(sentence.reading(character));
    }
    readings.extend(sentence.governors(&readings));
    readings.extend(sentence.any_at_all(&readings));
    readings.sort_by(|a, b| b.points.cmp(&a.points).then_with(|| a.ask.cmp(&b.ask)));
    readings.dedup_by(|later, kept| later.ask == kept.ask);
    readings.retain(|reading| reading.points > 0);
    sentence.manner(&readings);
    let named = matrix.character_indices().find(|ix| sentence.wholly(*ix).is_some());
    Readings { readings, doubts: sentence.doubts, named }
}

/// Cuts off "… or not?", which asks nothing more.
fn tail_cut(mut words: Vec<Word>) -> Vec<Word> {
    let last = words.iter().rposition(|word| !matches!(word.role, Role::Mark(_)));
    if let Some(last) = last
        && last >= 1
        && words[last].text == "not"
        && words[last - 1].text == "or"
    {
        words.truncate(last - 1);
    }
    words
}

struct Sentence<'a> {
    matrix: &'a Matrix,
    vocabulary: &'a Vocabulary,
    words: Vec<Word>,
    asks: Option<Asks>,
    doubts: BTreeSet<Doubt>,
}

impl Sentence<'_> {
    /// What the sentence asks of one character, if anything.
    fn reading(&mut self, character: CharacterIx) -> Option<Reading> {
        let vocabulary = self.vocabulary;
        let column = &vocabulary.columns[character.0];
        let (name, named) = self.name(column);
        let (yes, worth) = match &self.matrix.character(character).scale {
            Scale::Words { .. } => match column.yes_no {
                Some((yes, no)) => self.whether(column, yes, no)?,
                None => self.states(character, column, named)?,
            },
            Scale::Counts | Scale::Measure { .. } => {
                let own_noun = column.name.iter().all(Column::is_dimension);
                if !named && !own_noun {
                    return self.bare_number(character, name);
                }
                (self.threshold(character)?, OWN)
            }
        };
        let points = name + worth - self.unexplained(character);
        Some(Reading { ask: Ask { character, yes }, points })
    }

    /// Points for the character's name, and whether a word of it other than `length` stands
    /// in the sentence.
    fn name(&self, column: &Column) -> (i32, bool) {
        let met = |word: &&Word| self.words.iter().any(|other| other.meets(word).is_some());
        let found = column.name.iter().filter(met).count();
        let named = column.name.iter().filter(met).any(|word| !Column::is_dimension(word));
        let of = column.name.len().max(1);
        (NAME * i32::try_from(found).unwrap_or(0) / i32::try_from(of).unwrap_or(1), named)
    }

    /// Yes or no of a character that is just that: its name is the question.
    fn whether(&self, column: &Column, yes: StateIx, no: StateIx) -> Option<(Asked, i32)> {
        let met: Vec<_> = column
            .name
            .iter()
            .map(|word| self.words.iter().find_map(|other| other.meets(word)))
            .collect();
        let found = met.iter().flatten().count();
        let all = found == column.name.len();
        let denied = met.iter().flatten().any(|meeting| meeting.denied);
        // "Has it got legs?" is not yet "hairs on the legs".
        let worth = if all { OWN } else { 1 };
        let state = if denied { no } else { yes };
        (found > 0).then(|| (Asked::States([state].into()), worth))
    }

    /// The states of a character that the sentence names, or denies.
    fn states(
        &mut self,
        character: CharacterIx,
        column: &Column,
        named: bool,
    ) -> Option<(Asked, i32)> {
        let mut named_states: Vec<(StateIx, usize, bool, i32)> = Vec::new();
        for (ix, state) in column.states.iter().enumerate() {
            if let Some((denied, worth)) = self.state(state, named) {
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
            named_states.retain(|found| {
                found.1 == most
                    || !full
                        .iter()
                        .any(|ix| within(&column.states[found.0.0], &column.states[*ix]))
            });
        }
        if named_states.is_empty() {
            named_states = self.parts_of_states(column);
        }
        if named_states.is_empty() {
            named_states = self.opposites(column);
        }
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
            self.doubts.insert(Doubt::AllStates(character));
        }
        (!yes.is_empty() && yes.len() < all.len()).then_some((Asked::States(yes), worth))
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
            if !named && self.vocabulary.lexicon.ambiguous.contains(&word.keys[0].0) {
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

    /// "Is it made of leaflets?" asks for the states under which there are any.
    fn governors(&self, found: &[Reading]) -> Vec<Reading> {
        let mut readings = Vec::new();
        if self.asks.is_some() {
            return readings;
        }
        for ix in self.matrix.character_indices() {
            let character = self.matrix.character(ix);
            let (Scale::Counts, Some(governor)) = (&character.scale, &character.governor)
            else {
                continue;
            };
            let above = governor.character;
            let Scale::Words { states } = &self.matrix.character(above).scale else { continue };
            let direct = found.iter().any(|reading| reading.ask.character == above);
            let all = governor.states.len() == states.len();
            let Some(denied) = self.wholly(ix).filter(|_| !direct && !all) else { continue };
            let rest =
                || (0..states.len()).map(StateIx).filter(|s| !governor.states.contains(s));
            let yes = if denied { rest().collect() } else { governor.states.clone() };
            let points = SYNONYM + NAME / 2 - self.unexplained(above);
            let ask = Ask { character: above, yes: Asked::States(yes) };
            readings.push(Reading { ask, points });
        }
        readings
    }

    /// Whether the whole name of a character stands in the sentence, and if it is denied.
    fn wholly(&self, character: CharacterIx) -> Option<bool> {
        let name = &self.vocabulary.columns[character.0].name;
        let mut denied = false;
        for word in name {
            denied |= self.words.iter().find_map(|other| other.meets(word))?.denied;
        }
        (!name.is_empty()).then_some(denied)
    }

    /// What the words cost that a character does not explain.
    fn unexplained(&self, character: CharacterIx) -> i32 {
        let content = self.words.iter().filter(|word| word.role == Role::Content);
        let cost = |word: &Word| {
            let key = word.keys.first().map_or("", |(key, _)| key.as_str());
            if self.vocabulary.explains(self.matrix, character, word)
                || self.vocabulary.common.contains(key)
                || self.opposed(character, key)
                || numbers::unit(&word.text).is_some()
                || (self.asks.is_some() && Column::is_dimension(word))
            {
                0
            } else if self.vocabulary.states.contains(key) {
                ANOTHER_STATE
            } else if self.vocabulary.lexicon.parts.contains(key)
                || word.keys.iter().any(|(key, _)| self.vocabulary.homes.contains_key(key))
            {
                ELSEWHERE
            } else {
                UNEXPLAINED
            }
        };
        content.map(cost).sum()
    }

    /// Whether a character knows the opposite of a word: `compound` where it has `one piece`.
    fn opposed(&self, character: CharacterIx, key: &str) -> bool {
        let keys = &self.vocabulary.columns[character.0].keys;
        let mut opposites = self.vocabulary.lexicon.opposites.iter();
        opposites.any(|(word, other)| word == key && keys.contains(other))
    }

    /// Doubts about the sentence as a whole.
    fn manner(&mut self, readings: &[Reading]) {
        let denials = self.words.iter().filter(|word| denies(word)).count();
        let first =
            self.words.first().is_some_and(|word| word.text.contains('\'') || denies(word));
        let asks = first && self.words.first().is_some_and(|word| word.text.ends_with("n't"));
        let manner = self.words.windows(2).any(|pair| {
            denies(&pair[0])
                && matches!(pair[1].text.as_str(), "only" | "all" | "always" | "just" | "very")
        });
        if denials > 1 || asks || manner {
            self.doubts.insert(Doubt::Denied);
        }
        let best = readings.first().map(|reading| &reading.ask);
        if self.asks.is_some()
            && !best.is_some_and(|ask| !matches!(ask.yes, Asked::States(_)) || self.spelt(ask))
        {
            self.doubts.insert(Doubt::Number);
        }
        let size = self.words.iter().find(|word| {
            let explained = best.is_some_and(|ask| {
                let states = &self.vocabulary.columns[ask.character.0].states;
                let mut states = states.iter().flatten();
                states.any(|state| word.meets(state).is_some_and(|meeting| meeting.by_itself))
            });
            word.role == Role::Content
                && SIZES.contains(&word.text.as_str())
                && self.asks.is_none()
                && !explained
        });
        if let Some(size) = size {
            self.doubts.insert(Doubt::Size(size.text.clone()));
        }
    }

    /// Whether the number in the sentence is a word of a state that is asked for.
    fn spelt(&self, ask: &Ask) -> bool {
        let states = &self.vocabulary.columns[ask.character.0].states;
        let mut words =
            states.iter().flatten().filter(|word| matches!(word.role, Role::Number(_)));
        words.any(|word| self.words.iter().any(|other| other.role == word.role))
    }
}

/// Whether every word of one state is in another.
fn within(state: &[Word], other: &[Word]) -> bool {
    state.iter().all(|word| other.iter().any(|longer| longer.meets(word).is_some()))
}
