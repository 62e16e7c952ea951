//! The readings of a sentence: for every character what a "yes" would mean, and how well the
//! words fit.
//!
//! From a sentence and a table's vocabulary to readings with points, the best first, and what
//! stands in the way of taking one. The scale is told in `docs/key-text.md`.

mod compared;
mod counted;
mod left_over;
mod worded;

use std::collections::BTreeSet;

use spinney_model::{Ask, Asked, CharacterIx, Matrix, Scale, StateIx, Unit};

use super::numbers_asked::{self, Asks};
use super::parts::{self, Mention};
use super::said;
use super::trade_words::{ASKS, EXISTENCE, OPENERS, SIZES};
use super::vocabulary::{Column, Vocabulary};
use super::words::{Role, Word, denies, plain};

/// A state of several words that stands in the sentence word for word.
const WORD_FOR_WORD: i32 = 16;
/// A state named in the table's own word, or a threshold.
const OWN: i32 = 12;
/// A state named by a synonym, or by part of its words.
const SYNONYM: i32 = 10;
/// A word such as `smooth`, which means something else on every part.
const AMBIGUOUS_WORD: i32 = 8;
/// A threshold of a measure that is written without its unit.
const UNITLESS: i32 = 7;
/// The whole name of the character.
const NAME: i32 = 8;
/// One reading of a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Reading {
    pub(super) ask: Ask,
    pub(super) points: i32,
    /// Whether every word is understood, and the sentence speaks of this character's part.
    pub(super) understood: bool,
}

/// What stands in the way of a link, the plainest first.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Doubt {
    /// It speaks of a part that the table does not speak of.
    Part(String),
    /// It asks what, which or how.
    Open,
    /// It asks two questions: "… and is it …?".
    Two,
    /// It offers two things that exclude each other.
    Choice,
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
    /// Two lengths that the sentence compares, where the table has no column for their ratio.
    pub(super) no_ratio: Option<(CharacterIx, CharacterIx)>,
    /// States of several characters that the sentence names, each at the cost of the others.
    pub(super) at_once: Vec<Ask>,
    /// Whether a number is asked for, and no unit is behind it.
    pub(super) unitless: bool,
}

/// Reads a sentence.
pub(super) fn read(sentence: &str, matrix: &Matrix, vocabulary: &Vocabulary) -> Readings {
    let words = tail_cut(vocabulary.lexicon.words(sentence));
    let mut sentence = Sentence {
        matrix,
        vocabulary,
        asks: numbers_asked::asked(&words),
        plain: plain(&words),
        parts: parts::mentioned(&words, &vocabulary.lexicon),
        words,
        doubts: BTreeSet::new(),
    };
    if let Some(part) = sentence.stranger() {
        let doubts = [Doubt::Part(part)].into();
        return Readings { doubts, ..Readings::default() };
    }
    let mut readings = Vec::new();
    for character in matrix.character_indices() {
        readings.extend(sentence.reading(character));
    }
    readings.extend(sentence.governors(&readings));
    readings.extend(sentence.any_at_all(&readings));
    readings.sort_by(|a, b| b.points.cmp(&a.points).then_with(|| a.ask.cmp(&b.ask)));
    readings.dedup_by(|later, kept| later.ask == kept.ask);
    let at_once = sentence.at_once(&readings);
    readings.retain(|reading| reading.points > 0);
    if let Some(best) = readings.first() {
        // A portion, or a number within a state ("in one piece"), is no number of anything else.
        let (compares, settles) = (sentence.compares(best), sentence.settles(best));
        let own = best.ask.character;
        sentence.doubts.retain(|(of, _)| !compares && (!settles || *of == own));
    }
    let mut doubts = sentence.manner(&readings);
    doubts.extend(sentence.doubts.iter().map(|(_, doubt)| doubt.clone()));
    let no_ratio = sentence.ratio_wanted();
    let named = matrix.character_indices().find(|ix| sentence.wholly(*ix).is_some());
    let unitless = sentence.asks.is_some_and(|asks| asks.unit.is_none());
    Readings { readings, doubts, named, no_ratio, at_once, unitless }
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
    /// All words as plain stems, each with whether it is denied.
    plain: Vec<(String, bool)>,
    asks: Option<Asks>,
    /// The parts that it names, by the place of the word.
    parts: Vec<(usize, Mention)>,
    /// Doubts about one character's reading.
    doubts: BTreeSet<(CharacterIx, Doubt)>,
}

impl Sentence<'_> {
    /// What the sentence asks of one character, if anything.
    fn reading(&mut self, character: CharacterIx) -> Option<Reading> {
        if let Some(compared) = self.compared(character) {
            return Some(compared);
        }
        let vocabulary = self.vocabulary;
        let column = &vocabulary.columns[character.0];
        let (name, named) = self.name(column);
        let mut understood = self.understood(character);
        let (yes, worth) = match &self.matrix.character(character).scale {
            Scale::Words { .. } => match column.yes_no {
                Some((yes, no)) => self.whether(column, yes, no)?,
                None => self.states(character, column, named)?,
            },
            Scale::Counts | Scale::Measure { .. } => {
                let own_noun = column.name.iter().all(Column::is_dimension);
                if self.another_dimension(character) {
                    return None;
                }
                understood &= self.names_all(column);
                if !named && !own_noun {
                    return self.bare_number(character, name);
                }
                let worth = if self.without_unit(character) { UNITLESS } else { OWN };
                (self.threshold(character)?, worth)
            }
        };
        let mut points = name + worth - self.unexplained(character);
        let reading = Ask { character, yes: yes.clone() };
        if self.asks.is_some() && matches!(yes, Asked::States(_)) && !self.spelt(&reading) {
            // A number that it leaves out: "five lobes" is not yet "lobed".
            points = points.min(said::WORTH_ASKING - 1);
        }
        Some(Reading { ask: Ask { character, yes }, points, understood })
    }

    /// Whether a sentence asks of a length how wide it is, and the like.
    fn another_dimension(&self, character: CharacterIx) -> bool {
        let lengths = matches!(self.matrix.character(character).scale, Scale::Measure { unit, .. }
                if unit == Unit::Millimetres);
        let own = compared::measured(&self.vocabulary.columns[character.0]);
        let mut said = self.words.iter().filter_map(compared::dimension);
        lengths && said.any(|said| Some(said) != own)
    }

    /// Whether a sentence names all that a count or measure is of: "pairs of side veins" and not
    /// only "side veins".
    fn names_all(&self, column: &Column) -> bool {
        let mut of = column.name.iter().filter(|word| !Column::is_dimension(word));
        of.all(|word| {
            word.role == Role::Filler || self.words.iter().any(|o| o.meets(word).is_some())
        })
    }

    /// A part in the sentence that no column speaks of.
    fn stranger(&self) -> Option<String> {
        if !self.vocabulary.says_of_what {
            return None;
        }
        let known = |mention: (usize, Mention)| {
            let characters = self.matrix.character_indices();
            let speaks = |ix| self.vocabulary.speaks_of(self.matrix, ix, &self.words, mention);
            characters.into_iter().any(speaks)
        };
        let parts = self.parts.iter().filter(|(_, how)| *how != Mention::Likened);
        let stranger = parts.copied().find(|mention| !known(*mention))?;
        Some(self.words[stranger.0].text.clone())
    }

    /// Whether a reading by states explains the whole sentence, its number included.
    fn settles(&self, best: &Reading) -> bool {
        let states = matches!(best.ask.yes, Asked::States(_));
        let number = self.asks.is_none() || self.spelt(&best.ask);
        states && number && best.understood && best.points >= super::SURE
    }

    /// States of characters that do not explain each other, where no reading is good.
    fn at_once(&self, readings: &[Reading]) -> Vec<Ask> {
        if readings.iter().any(|reading| reading.points >= super::SURE) {
            return Vec::new();
        }
        let named = readings.iter().filter(|reading| {
            let states = matches!(reading.ask.yes, Asked::States(_));
            states && reading.points + self.unexplained(reading.ask.character) >= SYNONYM
        });
        let asks: Vec<Ask> = named.map(|reading| reading.ask.clone()).collect();
        if asks.len() > 1 { asks } else { Vec::new() }
    }

    /// Points for the character's name, and whether a word of it other than `length` stands
    /// in the sentence. A word that names a state as well counts once, unless the sentence
    /// asks whether there is such a thing: "are the lobes pretty?" does not ask for lobes.
    fn name(&self, column: &Column) -> (i32, bool) {
        let exists = self.words.iter().any(|word| EXISTENCE.contains(&word.text.as_str()));
        let counts =
            |word: &Word| exists || (column.yes_no.is_none() && !column.state_knows(word));
        let met = |word: &&Word| self.words.iter().any(|other| other.meets(word).is_some());
        let found = column.name.iter().filter(met);
        let named = found.clone().any(|word| !Column::is_dimension(word));
        let found = found.filter(|word| counts(word)).count();
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
            readings.push(Reading { ask, points, understood: self.understood(above) });
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

    /// Doubts about the sentence as a whole.
    fn manner(&self, readings: &[Reading]) -> BTreeSet<Doubt> {
        let mut doubts = BTreeSet::new();
        let denials = self.words.iter().filter(|word| denies(word)).count();
        let first =
            self.words.first().is_some_and(|word| word.text.contains('\'') || denies(word));
        let asks = first && self.words.first().is_some_and(|word| word.text.ends_with("n't"));
        let manner = self.words.windows(2).any(|pair| {
            denies(&pair[0])
                && matches!(pair[1].text.as_str(), "only" | "all" | "always" | "just" | "very")
        });
        if denials > 1 || asks || manner {
            doubts.insert(Doubt::Denied);
        }
        if self.words.first().is_some_and(|word| OPENERS.contains(&word.text.as_str())) {
            doubts.insert(Doubt::Open);
        }
        let two = self
            .words
            .windows(2)
            .any(|pair| pair[0].text == "and" && ASKS.contains(&pair[1].text.as_str()));
        if two {
            doubts.insert(Doubt::Two);
        }
        if self.offers_opposites() {
            doubts.insert(Doubt::Choice);
        }
        let best = readings.first().map(|reading| &reading.ask);
        if self.asks.is_some()
            && !best.is_some_and(|ask| match ask.yes {
                Asked::States(_) => self.spelt(ask),
                Asked::AtLeast(_) | Asked::Below(_) => !self.without_unit(ask.character),
            })
        {
            doubts.insert(Doubt::Number);
        }
        let size = self.words.iter().find(|word| {
            let explained = best.is_some_and(|ask| {
                if self.matrix.character(ask.character).ratio_of.is_some() {
                    return true;
                }
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
            doubts.insert(Doubt::Size(size.text.clone()));
        }
        doubts
    }

    /// "Toothed or smooth?" offers a thing and its opposite; "either … or" asks for both.
    fn offers_opposites(&self) -> bool {
        let Some(or) = self.words.iter().position(|word| word.text == "or") else {
            return false;
        };
        let (before, behind) = self.words.split_at(or);
        if before.iter().any(|word| word.text == "either") {
            return false;
        }
        let says = |words: &[Word], key: &String| {
            words.iter().flat_map(|word| &word.keys).any(|(own, _)| own == key)
        };
        let mut opposites = self.vocabulary.lexicon.opposites.iter();
        opposites.any(|(one, other)| {
            says(before, one) && says(behind, other) || says(before, other) && says(behind, one)
        })
    }

    /// Whether the number in the sentence is a word of a state that is asked for.
    fn spelt(&self, ask: &Ask) -> bool {
        let states = &self.vocabulary.columns[ask.character.0].states;
        let mut words =
            states.iter().flatten().filter(|word| matches!(word.role, Role::Number(_)));
        words.any(|word| self.words.iter().any(|other| other.role == word.role))
    }
}
