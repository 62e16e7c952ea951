//! What is so of a cell of a table that was read: not understood, or read as something else.

use crate::{Code, NamedCell};

/// What somebody typed into the cell of a kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CellTyped {
    /// What is typed there.
    pub text: String,
    /// The kind.
    pub kind: String,
    /// The column.
    pub about: String,
    /// Where it is.
    pub at: NamedCell,
}

/// Why a cell could not be understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CellTrouble {
    /// Words and numbers at once.
    Mixed,
    /// A count for some of its words and none for others.
    HalfCounted,
    /// Shares that do not add up to the whole.
    Shares,
    /// A count of nothing, or a larger one than anybody counts.
    NoCount,
    /// Neither a number nor a range.
    NotANumber,
    /// A range that begins with the larger number.
    Backwards {
        /// The same with its numbers the other way round, where that can be typed.
        turned: Option<String>,
    },
    /// Only one end of a range.
    OneEnd,
    /// So many of so many, without a word for the others.
    OutOf,
    /// A comma that may be of a thousand or of decimals.
    Ambiguous {
        /// The number in thousands.
        thousands: String,
        /// The number with decimals; None: there are several commas.
        decimals: Option<String>,
    },
    /// A word in a column of numbers.
    AWord,
    /// No whole number in a column of counts.
    NotWhole,
    /// A range that is too wide for a count.
    Wide,
    /// A measure below nothing.
    BelowNothing,
    /// A unit that the rest of the column does not have.
    OtherUnit,
    /// A number in a column of words.
    ANumber,
    /// Neither yes nor no in a column of them.
    NeitherYesNorNo,
    /// A date, which a spreadsheet makes of a range.
    Date {
        /// The smaller number of the range.
        low: u32,
        /// The larger one.
        high: u32,
    },
    /// Two measurements.
    TwoMeasurements,
}

/// As what a cell was read, though perhaps it was not meant so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ReadAs {
    /// A dash: as unknown.
    Unknown,
    /// A list: as each of its words in equal shares.
    Each {
        /// The words; none: they are numbers.
        words: Vec<String>,
    },
    /// Several measures: as one range.
    OneRange,
    /// "Yes" among other words: as one of them.
    State,
    /// "Don't know": as a word for something to see.
    SomethingToSee,
    /// A letter that is a tick in the letters called Wingdings: as a word.
    Word,
}

/// What a spreadsheet shows where it cannot work a cell out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SheetError {
    /// `#REF!`
    LostCell,
    /// `#N/A`
    NotFound,
    /// `#VALUE!`
    CannotCalculate,
    /// `#NAME?`
    UnknownWord,
    /// `#DIV/0!`
    DividedByNothing,
    /// `#NUM!`
    NoNumber,
    /// `#NULL!`
    LostCells,
}

/// A kind with its cell in a column.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KindAt {
    /// The kind.
    pub kind: String,
    /// Its cell.
    pub at: NamedCell,
}

/// What is so of a cell.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfCell {
    /// It is not understood, and read as unknown.
    Odd {
        /// The cell.
        cell: CellTyped,
        /// Why.
        trouble: CellTrouble,
    },
    /// It was read, though perhaps not as it was meant.
    ReadAs {
        /// The cell.
        cell: CellTyped,
        /// As what.
        read: ReadAs,
    },
    /// It holds what a spreadsheet shows instead of a result.
    Error {
        /// The cell.
        cell: CellTyped,
        /// What it shows.
        error: SheetError,
    },
    /// A state that the column is not said to have.
    Undeclared {
        /// The state.
        state: String,
        /// The column.
        about: String,
        /// The cell.
        at: NamedCell,
    },
    /// Two states look like one word spelt twice.
    Alike {
        /// The two, the probable slip last.
        states: [String; 2],
        /// The column.
        about: String,
        /// The first cell with the slip.
        at: Option<NamedCell>,
    },
    /// Something is there although another column says that it cannot be.
    GovernedButPresent {
        /// The kind.
        kind: String,
        /// The column.
        about: String,
        /// The other column.
        above: String,
        /// The cell.
        at: NamedCell,
    },
    /// A ratio that cannot be worked out.
    NoRatio {
        /// The ratio.
        about: String,
        /// The kind.
        kind: String,
        /// The columns of which it is the ratio.
        parts: [String; 2],
    },
    /// Nobody has recorded it.
    NotRecorded {
        /// The column.
        about: String,
        /// The first kinds.
        kinds: Vec<KindAt>,
        /// How many more.
        more: usize,
        /// Whether there is nothing but ticks, crosses and yes in the column.
        beside_marks: bool,
    },
    /// Some finds of a kind do not have it, and the cell of the kind is what the others show.
    SomeHaveNone {
        /// The column.
        about: String,
        /// The kind.
        kind: String,
        /// How many do not have it.
        none: usize,
        /// How many were looked at, those among them.
        finds: usize,
    },
    /// Letters that were spoilt when a file was saved.
    LettersSpoilt {
        /// The text.
        text: String,
        /// What it probably was.
        right: String,
        /// The cell.
        at: NamedCell,
    },
    /// A text between curly quotation marks that was cut at a comma.
    CutAtComma {
        /// What is before the comma, without its mark.
        before: String,
        /// What is behind it.
        behind: String,
        /// The cell with its beginning.
        at: NamedCell,
    },
    /// A cell farther right than any that is read.
    TooFar {
        /// How many columns are read.
        most: u32,
        /// The cell.
        at: NamedCell,
    },
    /// A text that is longer than any that is read.
    TooLong {
        /// How many letters are read.
        most: usize,
        /// The cell.
        at: NamedCell,
    },
    /// A formula, of which the last result is read.
    Formula {
        /// The cell.
        at: NamedCell,
    },
    /// A text that the workbook has lost.
    TextLost {
        /// The cell.
        at: NamedCell,
    },
    /// An error of the spreadsheet.
    ShowsError {
        /// What it shows.
        error: String,
        /// The cell.
        at: NamedCell,
    },
    /// A date of the spreadsheet.
    MadeADate {
        /// The cell.
        at: NamedCell,
    },
    /// Cells that are merged.
    Merged {
        /// The text that is read in each of them.
        text: String,
        /// The first.
        at: NamedCell,
        /// The last.
        to: NamedCell,
    },
}

impl OfCell {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::Odd { .. } | Self::NoRatio { .. } => Code::CellNotUnderstood,
            Self::SomeHaveNone { .. } => Code::CellNotPlain,
            Self::Undeclared { .. } => Code::SheetDisagrees,
            Self::Alike { .. } => Code::StatesAlike,
            Self::GovernedButPresent { .. } => Code::GovernedButPresent,
            Self::NotRecorded { .. } => Code::Unknown,
            Self::LettersSpoilt { .. } => Code::LettersSpoilt,
            Self::TooFar { .. } | Self::TooLong { .. } => Code::TooLarge,
            Self::ReadAs { .. }
            | Self::Error { .. }
            | Self::CutAtComma { .. }
            | Self::Formula { .. }
            | Self::TextLost { .. }
            | Self::ShowsError { .. }
            | Self::MadeADate { .. }
            | Self::Merged { .. } => Code::CellNotPlain,
        }
    }

    pub(super) fn cells_mut(&mut self) -> Vec<&mut NamedCell> {
        match self {
            Self::Odd { cell, .. } | Self::ReadAs { cell, .. } | Self::Error { cell, .. } => {
                vec![&mut cell.at]
            }
            Self::Undeclared { at, .. }
            | Self::GovernedButPresent { at, .. }
            | Self::LettersSpoilt { at, .. }
            | Self::CutAtComma { at, .. }
            | Self::TooFar { at, .. }
            | Self::TooLong { at, .. }
            | Self::Formula { at }
            | Self::TextLost { at }
            | Self::ShowsError { at, .. }
            | Self::MadeADate { at } => vec![at],
            Self::Merged { at, to, .. } => vec![at, to],
            Self::Alike { at, .. } => at.iter_mut().collect(),
            Self::NotRecorded { kinds, .. } => {
                kinds.iter_mut().map(|kind| &mut kind.at).collect()
            }
            Self::NoRatio { .. } | Self::SomeHaveNone { .. } => Vec::new(),
        }
    }
}
