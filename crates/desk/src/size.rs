//! How large a collection may be for the screens.
//!
//! From a collection to what of it is too large, if anything: every page is worked out while
//! somebody waits, so that what would take too long is refused at the door, wherever it comes
//! in, and never begun. The command line takes larger tables. The numbers, with a reason each,
//! are in `spinney_model::limits`; `docs/limits.md` shows them.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{CharacterId, KindId, limits};

use crate::reply::Refused;
use spinney_collection::{Collection, Drawn, Kind, Question};
use spinney_voice::Tongue;

/// What of a collection is too large for the screens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooLarge {
    what: What,
    has: usize,
    most: usize,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum What {
    Kinds,
    Columns,
    /// Texts in cells, whoever says them, and what hands say by sorting.
    Texts,
    /// Pairs of different numbers in one column, all columns together.
    Pairs,
    /// The bytes of one text.
    LongText,
    /// The bytes of all texts.
    Bytes,
    Keys,
    Questions,
    Pictures,
    /// Lines of the journal, and their bytes.
    Steps,
    StepBytes,
}

impl What {
    /// Its message.
    fn name(self) -> &'static str {
        match self {
            Self::Kinds => "too-large-kinds",
            Self::Columns => "too-large-columns",
            Self::Texts => "too-large-texts",
            Self::Pairs => "too-large-pairs",
            Self::LongText => "too-large-long-text",
            Self::Bytes => "too-large-bytes",
            Self::Keys => "too-large-keys",
            Self::Questions => "too-large-questions",
            Self::Pictures => "too-large-pictures",
            Self::Steps => "too-large-steps",
            Self::StepBytes => "too-large-step-bytes",
        }
    }
}

impl TooLarge {
    /// None: the screens hold it.
    pub(crate) fn of(collection: &Collection) -> Option<Self> {
        let texts = Texts::of(collection);
        let questions = collection.keys.values().map(|key| key.questions.len()).sum();
        let pictures = collection.kinds.values().map(|kind| kind.pictures.len()).sum();
        first_over([
            (What::Kinds, collection.kinds.len(), limits::SCREENS_KINDS),
            (What::Columns, collection.characters.len(), limits::SCREENS_COLUMNS),
            (What::Texts, texts.in_cells, limits::SCREENS_TEXTS),
            (What::Pairs, pairs(collection), limits::SCREENS_PAIRS),
            (What::LongText, texts.longest, limits::SCREENS_LONG_TEXT),
            (What::Bytes, texts.bytes, limits::SCREENS_TEXT_BYTES),
            (What::Keys, collection.keys.len(), limits::SCREENS_KEYS),
            (What::Questions, questions, limits::SCREENS_QUESTIONS),
            (What::Pictures, pictures, limits::SCREENS_PICTURES),
        ])
    }

    /// The same for a journal of so many lines and bytes.
    pub fn of_journal(lines: usize, bytes: usize) -> Option<Self> {
        first_over([
            (What::Steps, lines, limits::JOURNAL_LINES),
            (What::StepBytes, bytes, limits::JOURNAL_BYTES as usize),
        ])
    }

    /// A sentence and what to do, as they are said on the screens.
    pub(crate) fn said(self, t: Tongue) -> Refused {
        let what = t.say(self.what.name());
        let gaps: [(&str, &dyn std::fmt::Display); 3] =
            [("most", &self.most), ("has", &self.has), ("what", &what)];
        let remedy = match self.what {
            What::Steps | What::StepBytes => "too-large-remedy-steps",
            _ => "too-large-remedy",
        };
        Refused { sentence: t.with("too-large", &gaps), remedy: t.say(remedy) }
    }

    /// The same for a terminal.
    pub fn in_words(self) -> (String, String) {
        let Refused { sentence, remedy } = self.said(Tongue::for_person(&[]));
        (sentence, remedy)
    }
}

/// A kind that a hand has put into a heap says as much, and is looked at as often, as so many
/// texts in cells.
const A_PLACE: usize = 4;

fn first_over<const N: usize>(all: [(What, usize, usize); N]) -> Option<TooLarge> {
    let over = all.into_iter().find(|(_, has, most)| has > most);
    over.map(|(what, has, most)| TooLarge { what, has, most })
}

/// Between the end of one range and the beginning of another there may be a question of its
/// own: of so many different numbers in a column, half are ends.
fn pairs(collection: &Collection) -> usize {
    let mut numbers: BTreeMap<CharacterId, BTreeSet<&str>> = BTreeMap::new();
    for (column, text) in collection.cells.of_columns() {
        let written = text.split(|sign: char| !sign.is_ascii_digit() && sign != '.');
        let written = written.filter(|number| !number.is_empty());
        numbers.entry(column).or_default().extend(written);
    }
    numbers.values().map(|numbers| numbers.len() * numbers.len() / 4).sum()
}

/// What is written down in a collection.
#[derive(Default)]
struct Texts {
    in_cells: usize,
    longest: usize,
    bytes: usize,
}

impl Texts {
    fn of(collection: &Collection) -> Self {
        let mut texts = Self::default();
        // What a collection holds is taken apart, so that nothing new goes uncounted.
        let Collection { kinds, characters, cells, about, keys, .. } = collection;
        for (source, text) in cells.texts() {
            texts.in_cells += 1;
            texts.add(source);
            texts.add(text);
        }
        for Kind { fields, pictures } in kinds.values() {
            fields.values().chain(pictures).for_each(|text| texts.add(text));
        }
        for fields in characters.values() {
            fields.values().for_each(|text| texts.add(text));
        }
        about.values().for_each(|text| texts.add(text));
        for Drawn { name, wishes, kinds, never, questions, called } in keys.values() {
            texts.add(name);
            wishes.values().chain(called.values()).for_each(|text| texts.add(text));
            texts.bytes += size_of::<KindId>() * kinds.as_ref().map_or(0, Vec::len);
            texts.bytes += size_of::<CharacterId>() * never.len();
            for (at, Question { words, ask: _, sorted }) in questions {
                texts.add(words);
                texts.bytes += at.0.len();
                texts.in_cells += A_PLACE * sorted.len();
            }
        }
        texts
    }

    fn add(&mut self, text: &str) {
        self.longest = self.longest.max(text.len());
        self.bytes += text.len();
    }
}

#[cfg(test)]
mod tests;
