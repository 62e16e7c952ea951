//! What a reading leaves over: the words of a sentence that its character does not explain.
//!
//! From a sentence and one character to the points that the words left over cost. A word that
//! is another character's own costs more than one that nobody knows, since then two things may
//! be asked at once; an illustration ("coiled flat like a rope") costs nothing.

use spinney_model::CharacterIx;

use super::super::numbers;
use super::super::parts::Mention;
use super::super::trade_words::{AMOUNTS, COMPARES, JOINERS, PLACING};
use super::super::vocabulary::{Column, governs};
use super::super::words::{Role, Word};
use super::Sentence;

/// A word that nothing explains.
const UNEXPLAINED: i32 = 3;
/// A word that is at home in another character or part.
const ELSEWHERE: i32 = 6;
/// A state of another character, or its name in another clause: two things are asked at once.
const ANOTHER: i32 = 12;

impl Sentence<'_> {
    /// What the words cost that a character does not explain.
    pub(super) fn unexplained(&self, character: CharacterIx) -> i32 {
        let pictured = self.pictured(character);
        let words = self.words.iter().enumerate();
        let costs = words.map(|(at, word)| match self.cost(character, word) {
            UNEXPLAINED if pictured.is_some_and(|from| at > from) => 0,
            UNEXPLAINED if self.leads_over(character, at) => 0,
            cost if self.foreign(character, at) => cost.max(ELSEWHERE),
            UNEXPLAINED if self.narrows(character, at) => ANOTHER,
            cost => cost,
        });
        costs.sum::<i32>() + self.another_name(character)
    }

    /// Whether a sentence is about a character, as far as anybody can tell: every word is
    /// understood, no part in it is another's, the character's own part is named where it has
    /// one, and nothing is compared without a number.
    pub(super) fn understood(&self, character: CharacterIx) -> bool {
        let pictured = self.pictured(character);
        let left_over = self.words.iter().enumerate().any(|(at, word)| {
            let pictured = pictured.is_some_and(|from| at > from);
            let explained = pictured || self.leads_over(character, at);
            !explained && self.cost(character, word) > 0 || self.foreign(character, at)
        });
        let column = &self.vocabulary.columns[character.0];
        let met = |part: &Word| self.words.iter().any(|word| word.meets(part).is_some());
        let compares = |word: &Word| {
            let text = word.text.as_str();
            self.asks.is_none() && word.role == Role::Filler && COMPARES.contains(&text)
        };
        !left_over && column.needed.iter().all(met) && !self.words.iter().any(compares)
    }

    /// Whether a word of placing leads over to a state: "spread out" alone says more.
    fn leads_over(&self, character: CharacterIx, at: usize) -> bool {
        let column = &self.vocabulary.columns[character.0];
        let state = |word: &Word| word.role == Role::Content && column.state_knows(word);
        PLACING.contains(&self.words[at].text.as_str())
            && self.words[at + 1..].iter().any(state)
    }

    /// Whether a word names a part that a character does not speak of.
    fn foreign(&self, character: CharacterIx, at: usize) -> bool {
        let mention = self.parts.iter().find(|(part, _)| *part == at);
        mention.is_some_and(|mention| {
            mention.1 != Mention::Likened
                && !self.vocabulary.speaks_of(self.matrix, character, &self.words, *mention)
        })
    }

    pub(super) fn cost(&self, character: CharacterIx, word: &Word) -> i32 {
        if word.role != Role::Content && !self.named_small_word(word) {
            return 0;
        }
        let key = word.keys.first().map_or("", |(key, _)| key.as_str());
        if self.vocabulary.explains(self.matrix, character, word)
            || self.vocabulary.common.contains(key)
            || self.opposed(character, key)
            || numbers::unit_in_sentence(&word.text).is_some()
            || (self.asks.is_some() && Column::is_dimension(word))
        {
            0
        } else if self.vocabulary.states.contains(key)
            || self.named_small_word(word)
            || self.vocabulary.lexicon.describes(word)
        {
            ANOTHER
        } else if self.vocabulary.lexicon.parts.contains(key)
            || word.keys.iter().any(|(key, _)| self.vocabulary.homes.contains_key(key))
        {
            ELSEWHERE
        } else {
            UNEXPLAINED
        }
    }

    /// "A brown shell" and "finely toothed" ask for less than a shell or teeth.
    fn narrows(&self, character: CharacterIx, at: usize) -> bool {
        let column = &self.vocabulary.columns[character.0];
        if AMOUNTS.contains(&self.words[at].text.as_str()) {
            return false;
        }
        self.words.get(at + 1).is_some_and(|next| {
            let named = || column.name.iter().any(|name| next.meets(name).is_some());
            next.role == Role::Content && (column.state_knows(next) || named())
        })
    }

    /// "Feel" is a small word ("does it feel smooth?") unless a character goes by it.
    fn named_small_word(&self, word: &Word) -> bool {
        word.role == Role::Filler
            && word.keys.first().is_some_and(|(key, _)| {
                key == "feel" && self.vocabulary.homes.contains_key(key)
            })
    }

    /// Where an illustration begins: a "like" behind a word of what is asked.
    fn pictured(&self, character: CharacterIx) -> Option<usize> {
        let column = &self.vocabulary.columns[character.0];
        let asked = |word: &Word| {
            let named = column.yes_no.is_some()
                && column.name.iter().any(|name| word.meets(name).is_some());
            named || column.state_knows(word)
        };
        let from = self.words.iter().position(|word| word.text == "like")?;
        let behind = &self.words[from..];
        let ends = |word: &Word| matches!(word.role, Role::Mark(_)) || joins(word);
        let last = behind.iter().rposition(|word| !matches!(word.role, Role::Mark(_)))?;
        // What comes behind the illustration is said of the thing again.
        let whole = !behind[..last].iter().any(ends);
        (whole && self.words[..from].iter().any(asked)).then_some(from)
    }

    /// "Has it a shell and no legs?": another character named whole where a joiner parts it
    /// from everything that this one knows.
    fn another_name(&self, character: CharacterIx) -> i32 {
        let clauses = self.words.split(joins);
        let mut cost = 0;
        for clause in clauses {
            let column = &self.vocabulary.columns[character.0];
            let own = |word: &Word| {
                word.role != Role::Filler && column.state_knows(word)
                    || column.name.iter().any(|name| word.meets(name).is_some())
            };
            if clause.iter().any(own) {
                continue;
            }
            let others = self.matrix.character_indices().filter(|other| {
                *other != character
                    && !governs(self.matrix, *other, character)
                    && !governs(self.matrix, character, *other)
            });
            let named = others.map(|other| &self.vocabulary.columns[other.0].name);
            let whole = |name: &&Vec<Word>| {
                !name.is_empty()
                    && name.iter().all(|part| {
                        let says = |word: &&Word| word.role == Role::Content;
                        clause.iter().filter(says).any(|word| word.meets(part).is_some())
                    })
            };
            if self.words.iter().any(joins) && named.into_iter().any(|name| whole(&name)) {
                cost += ANOTHER - ELSEWHERE;
            }
        }
        cost
    }

    /// Whether a character knows the opposite of a word: `compound` where it has `one piece`.
    fn opposed(&self, character: CharacterIx, key: &str) -> bool {
        let keys = &self.vocabulary.columns[character.0].keys;
        let mut opposites = self.vocabulary.lexicon.opposites.iter();
        opposites.any(|(word, other)| word == key && keys.contains(other))
    }
}

/// Whether a word joins two things that are asked.
fn joins(word: &Word) -> bool {
    JOINERS.contains(&word.text.as_str())
}
