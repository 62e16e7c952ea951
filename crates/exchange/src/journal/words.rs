//! The words by which the journal names what is written down; they never change again.

use spinney_model::{
    AboutField, CharacterField, Judged, KindField, Side, SpecimenField, WishField,
};

/// What a key never asks about stands among the wishes, as numbers with spaces between.
pub(super) const NEVER: &str = "never";

/// So do the kinds that a key is for.
pub(super) const KINDS: &str = "kinds";

/// A table of words in both directions.
macro_rules! words {
    ($of:ident, $from:ident, $all:ident, $what:ty, $($variant:ident = $word:literal),+ $(,)?) => {
        /// Every word.
        #[cfg(test)]
        pub(super) const $all: &[&str] = &[$($word),+];
        /// The word.
        pub(super) fn $of(what: $what) -> &'static str {
            match what { $(<$what>::$variant => $word),+ }
        }
        /// What a word means.
        pub(super) fn $from(word: &str) -> Option<$what> {
            Some(match word { $($word => <$what>::$variant,)+ _ => return None })
        }
    };
}

words!(
    of_kind_field,
    kind_field,
    KIND_FIELDS,
    KindField,
    Name = "name",
    ScientificName = "scientific name",
    OtherNames = "other names",
    HowOften = "how often",
    Caution = "caution",
    ConfirmBy = "confirm by",
    HowSure = "how sure",
    Where = "where",
    When = "when",
    WhichPlant = "which plant",
    SecondName = "second name"
);

words!(
    of_character_field,
    character_field,
    CHARACTER_FIELDS,
    CharacterField,
    Name = "name",
    Question = "question",
    Values = "values",
    States = "states",
    Unit = "unit",
    Gap = "gap",
    SeenOn = "seen on",
    Season = "season",
    Difficulty = "difficulty",
    ReadRight = "read right",
    ByTouch = "by touch",
    AppliesWhen = "applies when",
    Instrument = "instrument",
    InOrder = "in order",
    WordsToKnow = "words to know",
    RatioOf = "ratio of",
    SecondQuestion = "second question",
    SecondStates = "second states"
);

words!(
    of_about_field,
    about_field,
    ABOUT_FIELDS,
    AboutField,
    Title = "title",
    Place = "place",
    Season = "season",
    Part = "part",
    Caution = "caution",
    BeforeYouGo = "before you go",
    Children = "children",
    Groups = "groups",
    SecondLanguage = "second language",
    SecondQuestions = "second questions"
);

words!(
    of_wish_field,
    wish_field,
    WISH_FIELDS,
    WishField,
    Group = "group",
    Hand = "hand",
    Season = "season",
    Touch = "touch",
    Finish = "finish",
    Tried = "tried"
);

words!(of_side, side, SIDES, Side, Yes = "yes", No = "no", Both = "both");

words!(
    of_specimen_field,
    specimen_field,
    SPECIMEN_FIELDS,
    SpecimenField,
    Source = "source",
    Called = "called",
    WhichPlant = "which plant",
    Where = "where",
    When = "when",
    Part = "part"
);

words!(of_judged, judged, JUDGED, Judged, Right = "right", Wrong = "wrong");
