//! A finding: something true about a person's table or key, with a remedy.

use std::fmt;

use crate::{CellAt, Fact};

/// Something true about a person's table or key. A list of them never stops the work.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// Which kind of finding it is; explained in `docs/findings.md`.
    pub code: Code,
    /// How much it matters.
    pub severity: Severity,
    /// Where it is.
    pub place: Place,
    /// What is so, and what there is to say of what to do about it; `voice` says both.
    pub fact: Fact,
}

impl Finding {
    /// A finding with the usual severity of its code.
    pub fn of(place: Place, fact: impl Into<Fact>) -> Self {
        let fact = fact.into();
        let code = fact.code();
        Self { code, severity: code.severity(), place, fact }
    }
}

/// How much a finding matters, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Severity {
    /// The key or table is wrong.
    MendThis,
    /// It works, but will trip people up.
    WorthALook,
    /// Worth knowing: an assumption, or praise.
    GoodToKnow,
}

impl Severity {
    /// The words printed before the finding.
    pub fn words(self) -> &'static str {
        match self {
            Self::MendThis => "mend this",
            Self::WorthALook => "worth a look",
            Self::GoodToKnow => "good to know",
        }
    }
}

/// Where a finding is.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Place {
    /// A cell of a sheet.
    Cell(CellAt),
    /// A line of a text, counted from 1.
    Line(usize),
    /// A couplet, by its printed number.
    Couplet(u32),
    /// A kind, by name.
    Taxon(String),
    /// Two or more kinds together.
    Taxa(Vec<String>),
    /// A character, by name.
    Character(String),
    /// The table as a whole.
    Table,
    /// The key as a whole.
    Key,
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Cell(cell) => cell.fmt(f),
            Self::Taxon(name) | Self::Character(name) => f.write_str(name),
            Self::Line(line) => write!(f, "line {line}"),
            Self::Couplet(number) => write!(f, "question {number}"),
            Self::Taxa(names) => f.write_str(&names.join(", ")),
            Self::Table => f.write_str("table"),
            Self::Key => f.write_str("key"),
        }
    }
}

macro_rules! codes {
    ($($(#[doc = $doc:literal])* $name:ident = $text:literal, $severity:ident;)*) => {
        /// Which kind of finding it is.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub enum Code { $($(#[doc = $doc])* $name,)* }

        impl Code {
            /// Every code, in the order of `docs/findings.md`.
            pub const ALL: &'static [Self] = &[$(Self::$name,)*];

            /// The code as printed and as a heading of `docs/findings.md`.
            pub fn text(self) -> &'static str {
                match self { $(Self::$name => $text,)* }
            }

            /// How much such a finding usually matters.
            pub fn severity(self) -> Severity {
                match self { $(Self::$name => Severity::$severity,)* }
            }
        }
    };
}

codes! {
    // What a reader says of a table.
    /// A cell could not be understood and is read as unknown.
    CellNotUnderstood = "cell-not-understood", MendThis;
    /// A cell holds a formula, an error or something else that is no plain value.
    CellNotPlain = "cell-not-plain", WorthALook;
    /// A quotation mark that is not closed takes the rest of a table into one cell.
    QuotationNotClosed = "quotation-not-closed", MendThis;
    /// A text whose letters were spoilt when a file was saved.
    LettersSpoilt = "letters-spoilt", WorthALook;
    /// The first row says what the rows below say.
    NoHeadings = "no-headings", MendThis;
    /// The kinds are along the top.
    Swapped = "swapped", MendThis;
    /// Two rows name the same kind.
    KindTwice = "kind-twice", MendThis;
    /// Two columns have the same heading, or one has none.
    HeadingTwice = "heading-twice", WorthALook;
    /// A row or column was left out, and why.
    LeftOut = "left-out", WorthALook;
    /// Two states look like one word spelt twice.
    StatesAlike = "states-alike", WorthALook;
    /// The tool assumed a unit, a wording, a weight.
    Assumed = "assumed", GoodToKnow;
    /// A character, state or kind that a second sheet names is not in the table.
    SheetDisagrees = "sheet-disagrees", WorthALook;
    /// A cell has a value although the governing character says it cannot.
    GovernedButPresent = "governed-but-present", WorthALook;
    /// The table is too large or too deep to read whole.
    TooLarge = "too-large", MendThis;
    /// Nobody has looked: cells that are unknown.
    Unknown = "unknown", WorthALook;

    // What the table can and cannot do.
    /// Kinds that nothing separates.
    NotSeparable = "not-separable", WorthALook;
    /// A pair that hangs on one hard or narrow character.
    FragilePair = "fragile-pair", GoodToKnow;
    /// Two kinds differ in a measure, but by less than the safety gap.
    GapTooNarrow = "gap-too-narrow", WorthALook;

    // What a reader says of a key in words.
    /// A line of the key that is neither question nor lead.
    LineNotUnderstood = "line-not-understood", WorthALook;
    /// A third lead under one number, or an answer that is written twice.
    LeadTooMany = "lead-too-many", MendThis;
    /// A name in the key that is in the table only in another spelling.
    NameNotSure = "name-not-sure", MendThis;
    /// A name in the key that the table does not have.
    NameUnknown = "name-unknown", MendThis;
    /// A question that is not linked to a character.
    NotLinked = "not-linked", WorthALook;
    /// A question for which several characters would do.
    LinkNotSure = "link-not-sure", WorthALook;
    /// A line of the links file that could not be used.
    LinksNotUnderstood = "links-not-understood", MendThis;

    // The key as a tree.
    /// A number that stands at two couplets.
    NumberTwice = "number-twice", MendThis;
    /// A number that leads nowhere.
    NumberMissing = "number-missing", MendThis;
    /// Numbers do not run 1, 2, 3.
    NumbersSkip = "numbers-skip", GoodToKnow;
    /// An answer after which nothing is written.
    NothingWritten = "nothing-written", MendThis;
    /// Following the numbers leads back to where one was.
    Loop = "loop", MendThis;
    /// A couplet that nobody can get to.
    Unreachable = "unreachable", MendThis;
    /// A back number that is not where one came from.
    BackWrong = "back-wrong", WorthALook;
    /// Two ways lead to one couplet.
    WaysMeet = "ways-meet", GoodToKnow;
    /// Both answers lead to the same place.
    SameBothWays = "same-both-ways", MendThis;

    // The key against the table.
    /// A kind that never comes out.
    NeverComesOut = "never-comes-out", MendThis;
    /// A kind, or a form of it, that comes out under another name.
    WrongPlace = "wrong-place", MendThis;
    /// An end that a kind which comes out elsewhere reaches only by a wrong answer.
    SecondPlace = "second-place", WorthALook;
    /// An end nobody can reach.
    EndUnreached = "end-unreached", MendThis;
    /// A kind that satisfies both leads.
    BothLeads = "both-leads", MendThis;
    /// A kind that satisfies neither lead.
    NeitherLead = "neither-lead", MendThis;
    /// A question about something the kind does not have.
    DoesNotHave = "does-not-have", MendThis;
    /// A question about something that may not be there, depending on another character.
    MayNotHave = "may-not-have", MendThis;
    /// A question about something nobody recorded.
    NobodyRecorded = "nobody-recorded", WorthALook;
    /// A threshold inside a kind's range.
    ThresholdInside = "threshold-inside", MendThis;
    /// A threshold nearer to a range than the safety gap.
    ThresholdNear = "threshold-near", WorthALook;
    /// A varying character used as if it were fixed.
    VariesUsedAsFixed = "varies-used-as-fixed", MendThis;
    /// A kind split off on one leaf's evidence.
    ThinEvidence = "thin-evidence", WorthALook;
    /// Every kind at a couplet answers it alike.
    PartsNothing = "parts-nothing", WorthALook;
    /// An end names kinds that could have been parted.
    CouldBeParted = "could-be-parted", WorthALook;
    /// The cost that was claimed is not the cost of this key.
    CostWrong = "cost-wrong", MendThis;
    /// The claimed bound is above the cost of the key.
    BoundWrong = "bound-wrong", MendThis;
    /// What was claimed of an aim is not what this key reaches.
    GoalWrong = "goal-wrong", MendThis;
    /// The key breaks a wish that it was said to keep.
    WishBroken = "wish-broken", MendThis;
    /// A kept question could not be asked where it was wanted.
    KeptRefused = "kept-refused", WorthALook;
    /// Another wish could not be fulfilled.
    WishRefused = "wish-refused", WorthALook;
    /// Kinds stay together because of what must not or cannot be asked.
    LeftTogether = "left-together", WorthALook;

    // The words, and the people.
    /// A comparative without a measure: big, long, dark.
    BareComparative = "bare-comparative", MendThis;
    /// A word that commits to nothing: usually, about.
    VagueWord = "vague-word", WorthALook;
    /// A question with two answers in it: "is it 4 or 5?".
    NotYesNo = "not-yes-no", MendThis;
    /// A negative in a question.
    Negative = "negative", WorthALook;
    /// A kind's name inside a question.
    NameInQuestion = "name-in-question", WorthALook;
    /// More than twelve words, or two ideas.
    TooManyWords = "too-many-words", GoodToKnow;
    /// A measure without a unit in a question.
    NoUnit = "no-unit", MendThis;
    /// A kind with a caution is still in the heap where pupils are asked to touch.
    TouchCaution = "touch-caution", WorthALook;
    /// One kind after the other is split off.
    Comb = "comb", GoodToKnow;
    /// A path of more questions than children follow.
    LongPath = "long-path", GoodToKnow;
    /// A question worth praising.
    GoodQuestion = "good-question", GoodToKnow;
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::Code;

    #[test]
    fn no_two_codes_share_a_text() {
        let texts: BTreeSet<_> = Code::ALL.iter().map(|code| code.text()).collect();
        assert_eq!(texts.len(), Code::ALL.len());
    }
}
