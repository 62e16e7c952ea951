//! How large a collection may be for the screens.
//!
//! From a collection to what of it is too large, if anything: every page is worked out while
//! somebody waits, so that what would take too long is refused at the door, wherever it comes
//! in, and never begun. The command line takes larger tables. The numbers, with a reason each,
//! are in `spinney_model::limits`; `docs/limits.md` shows them.

use spinney_collection::Collection;
use spinney_collection::size::Size;
use spinney_model::limits;

use crate::reply::Refused;
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
    Specimens,
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
            Self::Specimens => "too-large-leaves",
            Self::Steps => "too-large-steps",
            Self::StepBytes => "too-large-step-bytes",
        }
    }
}

impl TooLarge {
    /// None: the screens hold it.
    pub(crate) fn of(collection: &Collection) -> Option<Self> {
        let size = Size::of(collection);
        first_over([
            (What::Kinds, size.kinds, limits::SCREENS_KINDS),
            (What::Columns, size.columns, limits::SCREENS_COLUMNS),
            (What::Texts, size.texts, limits::SCREENS_TEXTS),
            (What::Pairs, size.pairs, limits::SCREENS_PAIRS),
            (What::LongText, size.longest, limits::SCREENS_LONG_TEXT),
            (What::Bytes, size.bytes, limits::SCREENS_TEXT_BYTES),
            (What::Keys, size.keys, limits::SCREENS_KEYS),
            (What::Questions, size.questions, limits::SCREENS_QUESTIONS),
            (What::Pictures, size.pictures, limits::SCREENS_PICTURES),
            (What::Specimens, size.specimens, limits::SCREENS_SPECIMENS),
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
    pub fn in_words(self, t: Tongue) -> (String, String) {
        let Refused { sentence, remedy } = self.said(t);
        (sentence, remedy)
    }
}

fn first_over<const N: usize>(all: [(What, usize, usize); N]) -> Option<TooLarge> {
    let over = all.into_iter().find(|(_, has, most)| has > most);
    over.map(|(what, has, most)| TooLarge { what, has, most })
}

#[cfg(test)]
mod tests;
