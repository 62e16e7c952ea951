//! Readings of one length over another: `Is the stalk longer than half the blade?`
//!
//! From a sentence that compares two parts to a threshold of the column that is their ratio.
//! "At least" and "more than" are one threshold, as they are for measures; "twice as long"
//! without either is an exact amount and no threshold. A comparison the other way round ("is
//! the blade shorter than twice the stalk?") is turned. A number, a portion or a joining word
//! that is no part of the comparison says something else, and then nothing is read here.

use spinney_model::{Ask, Asked, CharacterIx, Quantity, Scale};

use super::super::SURE;
use super::super::numbers_asked::{LESS, MORE};
use super::super::vocabulary::Column;
use super::super::words::{Role, Word};
use super::{Doubt, NAME, OWN, Reading, Sentence};

/// Multiples and signs that stand for themselves, as so many over so many.
const NAMED: [(&str, Portion); 9] = [
    ("half", Portion(1, 2)),
    ("twice", Portion(2, 1)),
    ("thrice", Portion(3, 1)),
    ("double", Portion(2, 1)),
    ("½", Portion(1, 2)),
    ("⅓", Portion(1, 3)),
    ("¼", Portion(1, 4)),
    ("⅔", Portion(2, 3)),
    ("¾", Portion(3, 4)),
];

/// Parts of which there are one or several: `a third`, `three quarters`.
const PARTS: [(&str, i64); 8] = [
    ("third", 3),
    ("thirds", 3),
    ("quarter", 4),
    ("quarters", 4),
    ("fifth", 5),
    ("fifths", 5),
    ("tenth", 10),
    ("tenths", 10),
];

/// Small words that say nothing beside a comparison.
const SMALL: [&str; 20] = [
    "is", "are", "was", "does", "do", "the", "a", "an", "this", "that", "these", "its", "it",
    "they", "their", "of", "leaf", "leaves", "really", "clearly",
];

/// Words by which a thing is compared with itself: `longer than it is wide`.
const ITSELF: [&str; 3] = ["it", "they", "its"];

/// So many over so many.
#[derive(Clone, Copy)]
struct Portion(i64, i64);

/// A comparison: `subject` is more or less than a portion of `thing`.
struct Compared<'w> {
    subject: &'w [Word],
    /// The word that says in what it is compared: `longer`, or `long` in "as long as".
    measure: &'w Word,
    portion: Portion,
    thing: &'w [Word],
    /// Whether yes means more; None: neither is said.
    more: Option<bool>,
}

impl Sentence<'_> {
    /// The threshold that a sentence sets for a ratio of two columns.
    pub(super) fn compared(&mut self, character: CharacterIx) -> Option<Reading> {
        let (one, other) = self.matrix.character(character).ratio_of?;
        let words = std::mem::take(&mut self.words);
        let found = Compared::of(&words).and_then(|compared| {
            let columns = &self.vocabulary.columns;
            let (one, other) = (&columns[one.0], &columns[other.0]);
            let turned = match (compared.says(one, other), compared.says(other, one)) {
                (true, _) => false,
                (false, true) => true,
                (false, false) => return None,
            };
            Some((compared.threshold(turned), compared.left_over(self, character)?))
        });
        self.words = words;
        let (threshold, left_over) = found?;
        let Some(yes) = threshold else {
            let name = self.matrix.character(character).name.clone();
            self.doubts.insert((character, Doubt::Exactly(name)));
            return None;
        };
        // Where a word is left over, the person is asked.
        let most = if left_over == 0 { NAME + OWN } else { SURE - 1 };
        let points = most.min(NAME + OWN - left_over);
        Some(Reading { ask: Ask { character, yes }, points, understood: left_over == 0 })
    }

    /// The two lengths that the sentence compares, where no column is their ratio.
    pub(super) fn ratio_wanted(&self) -> Option<(CharacterIx, CharacterIx)> {
        let compared = Compared::of(&self.words)?;
        let matrix = self.matrix;
        let measured = |at: &CharacterIx| {
            let character = matrix.character(*at);
            matches!(character.scale, Scale::Measure { .. }) && character.ratio_of.is_none()
        };
        let lengths: Vec<CharacterIx> = matrix.character_indices().filter(measured).collect();
        let pairs = lengths.iter().flat_map(|one| lengths.iter().map(move |two| (*one, *two)));
        let columns = &self.vocabulary.columns;
        let mut said = pairs.filter(|(one, other)| {
            one != other && compared.says(&columns[one.0], &columns[other.0])
        });
        let (one, other) = said.next()?;
        let known = |at: CharacterIx| {
            let of = matrix.character(at).ratio_of;
            of == Some((one, other)) || of == Some((other, one))
        };
        (!matrix.character_indices().any(known)).then_some((one, other))
    }

    /// Whether a reading is of a comparison that explains the whole sentence.
    pub(super) fn compares(&self, reading: &Reading) -> bool {
        let ratio = self.matrix.character(reading.ask.character).ratio_of.is_some();
        ratio && reading.points == NAME + OWN
    }
}

impl<'w> Compared<'w> {
    fn of(words: &'w [Word]) -> Option<Self> {
        let last =
            words.iter().rposition(|word| !matches!(word.role, Role::Mark('?' | '.')))?;
        let words = &words[..=last];
        Self::as_much_as(words).or_else(|| Self::more_than(words))
    }

    /// `longer than half the blade`.
    fn more_than(words: &'w [Word]) -> Option<Self> {
        let than = words.iter().position(|word| word.text == "than")?;
        let at = than.checked_sub(1)?;
        let more = said(&words[at])?;
        let (portion, length) = portion_at(&words[than + 1..]).unwrap_or((Portion(1, 1), 0));
        let thing = than + 1 + length;
        Some(Self {
            subject: &words[..at],
            measure: &words[at],
            portion,
            thing: &words[thing..],
            more: Some(more != denied(&words[at])),
        })
    }

    /// `at least twice as long as the stalk`, `as wide as it is long or wider`.
    fn as_much_as(words: &'w [Word]) -> Option<Self> {
        let first = words.windows(3).position(|three| {
            let says_how = dimension(&three[1]).is_some() || three[1].text == "large";
            three[0].text == "as" && three[2].text == "as" && says_how
        })?;
        let ends = |from: usize| {
            let (portion, length) = portion_at(&words[from..first])?;
            (from + length == first).then_some((from, portion))
        };
        let (from, portion) = (0..first).find_map(ends).unwrap_or((first, Portion(1, 1)));
        let (subject, before) = match &words[..from] {
            [subject @ .., at, least] if at.text == "at" && least.text == "least" => {
                (subject, Some(true))
            }
            [subject @ .., at, most] if at.text == "at" && most.text == "most" => {
                (subject, Some(false))
            }
            [subject @ .., more, than] if than.text == "than" => (subject, said(more)),
            subject => (subject, None),
        };
        let (thing, behind) = match &words[first + 3..] {
            [thing @ .., or, more] if or.text == "or" => (thing, said(more)),
            thing => (thing, None),
        };
        let measure = &words[first + 1];
        // `as long as half the blade`.
        let (portion, thing) = match portion_at(thing) {
            Some((portion, length)) if from == first => (portion, &thing[length..]),
            _ => (portion, thing),
        };
        Some(Self {
            subject,
            measure,
            portion,
            thing,
            more: before.or(behind).map(|more| more != denied(measure)),
        })
    }

    /// Whether it compares the one column with the other.
    fn says(&self, one: &Column, other: &Column) -> bool {
        let thing = self.thing.iter().find_map(dimension);
        // "More than a quarter of the length" says only there what is compared, and "blade width:
        // larger than ..." before it.
        let subject = || self.subject.iter().find_map(dimension);
        let own = dimension(self.measure).or_else(subject).or(thing);
        let with = thing.or(own);
        let itself = self.thing.iter().all(|word| {
            ITSELF.contains(&word.text.as_str())
                || word.role != Role::Content
                || dimension(word).is_some()
        });
        let against = if itself { self.subject } else { self.thing };
        own == measured(one)
            && with == measured(other)
            && names(self.subject, one)
            && names(against, other)
    }

    /// None: neither more nor less is said.
    fn threshold(&self, turned: bool) -> Option<Asked> {
        let Portion(over, under) = self.portion;
        let (over, under) = if turned { (under, over) } else { (over, under) };
        let at = Quantity::from_thousandths((2_000 * over + under) / (2 * under));
        Some(if self.more? != turned { Asked::AtLeast(at) } else { Asked::Below(at) })
    }

    /// What the words cost that belong neither to the comparison nor to the two parts; None: one
    /// of them says something that the comparison does not.
    fn left_over(&self, sentence: &Sentence<'_>, character: CharacterIx) -> Option<i32> {
        let parts = sentence.matrix.character(character).ratio_of;
        let parts = parts.map_or([character; 2], |(one, other)| [one, other]);
        let own = |word: &Word| {
            parts.iter().any(|part| {
                let name = &sentence.vocabulary.columns[part.0].name;
                name.iter().any(|known| word.meets(known).is_some())
            })
        };
        // The subject says no dimension but the one that it is compared in.
        let measured = |word: &Word| dimension(word).is_some() && said(word).is_none();
        // "Not longer" is turned already.
        let subject = match self.subject {
            [subject @ .., not] if not.text == "not" => subject,
            subject => subject,
        };
        let subject = subject.iter().map(|word| (word, own(word)));
        let thing = self.thing.iter().map(|word| (word, own(word) || measured(word)));
        let mut cost = 0;
        for (word, known) in subject.chain(thing) {
            match word.role {
                _ if word.text.split(' ').any(is_of_a_portion) || said(word).is_some() => {
                    return None;
                }
                _ if known || SMALL.contains(&word.text.as_str()) => {}
                Role::Content => cost += sentence.cost(character, word),
                // Behind a heading.
                Role::Mark(':') => {}
                Role::Filler | Role::Number(_) | Role::Mark(_) => return None,
            }
        }
        Some(cost)
    }
}

/// Whether a word belongs to some portion, known or not.
fn is_of_a_portion(word: &str) -> bool {
    NAMED.iter().any(|(name, _)| *name == word)
        || PARTS.iter().any(|(name, _)| *name == word)
        || ["times", "part", "parts", "percent", "only"].contains(&word)
}

/// Whether a word says more or less; None: neither.
fn said(word: &Word) -> Option<bool> {
    let is = |list: &[&str]| list.contains(&word.text.as_str());
    match (is(&MORE), is(&LESS)) {
        (true, _) => Some(true),
        (_, true) => Some(false),
        _ => None,
    }
}

fn denied(word: &Word) -> bool {
    word.keys.first().is_some_and(|(_, denied)| *denied)
}

/// Whether some words name the part that a column measures. A column that names none is about
/// the whole thing.
fn names(words: &[Word], column: &Column) -> bool {
    let mut part = column.name.iter().filter(|word| !Column::is_dimension(word));
    part.all(|name| words.iter().any(|word| word.meets(name).is_some()))
}

/// The dimension that a column measures: a length if it does not say.
pub(super) fn measured(column: &Column) -> Option<&'static str> {
    column.name.iter().find_map(dimension).or(Some("length"))
}

/// The dimension that a word speaks of: `longer` of the length.
pub(super) fn dimension(word: &Word) -> Option<&'static str> {
    let of = |list: &[(&'static str, [&str; 5])]| {
        let found = list.iter().find(|(_, words)| words.contains(&word.text.as_str()));
        found.map(|(dimension, _)| *dimension)
    };
    of(&[
        ("length", ["length", "long", "longer", "short", "shorter"]),
        ("width", ["width", "wide", "wider", "narrow", "narrower"]),
        ("width", ["breadth", "broad", "broader", "", ""]),
        ("height", ["height", "tall", "taller", "high", "higher"]),
        ("height", ["low", "lower", "", "", ""]),
        ("thickness", ["thickness", "thick", "thicker", "thin", "thinner"]),
        ("depth", ["depth", "deep", "deeper", "shallow", "shallower"]),
    ])
}

/// The portion at the beginning of some words, and how many of them it is.
fn portion_at(words: &[Word]) -> Option<(Portion, usize)> {
    let text = |at: usize| words.get(at).map_or("", |word: &Word| word.text.as_str());
    let number = |at: usize| match words.get(at).map(|word| word.role) {
        Some(Role::Number(number)) => Some(number.thousandths()),
        _ => None,
    };
    let whole = |at: usize| number(at).filter(|number| number % 1_000 == 0).map(|n| n / 1_000);
    let parts = |at: usize| PARTS.iter().find(|(name, _)| *name == text(at)).map(|(_, n)| *n);
    let named = NAMED.iter().find(|(name, _)| *name == text(0));
    let many = if text(0) == "a" { Some(1) } else { whole(0) };
    let (portion, length) = if let Some((_, portion)) = named {
        (*portion, 1)
    } else if let Some((many, parts)) = many.zip(parts(1)) {
        (Portion(many, parts), 2)
    } else if let (Some(over), "/", Some(under)) = (whole(0), text(1), whole(2)) {
        (Portion(over, under), 3)
    } else if (text(1), text(2), text(3)) == ("and", "a", "half") && text(4) == "times" {
        (Portion(2 * whole(0)? + 1, 2), 5)
    } else {
        match text(1) {
            "times" | "×" => (Portion(number(0)?, 1_000), 2),
            "%" => (Portion(number(0)?, 100_000), 2),
            _ => return None,
        }
    };
    let Portion(over, under) = portion;
    (over > 0 && under > 0).then(|| (portion, length + usize::from(text(length) == "of")))
}

#[cfg(test)]
mod tests;
