//! What is so of a sheet that was read: of its rows and its layout, of files and sheets that
//! were not read, and of the sheets beside the table.

use crate::{Code, NamedCell};

/// What a cell of a sheet beside the table should say.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FieldIs {
    /// What a column holds.
    Values,
    /// A unit.
    Unit,
    /// The unit of a ratio, which has none.
    UnitOfRatio,
    /// A safety margin.
    Margin,
    /// Where something is seen.
    SeenOn,
    /// How hard it is to see.
    Difficulty,
    /// How often it is read right.
    PerCent,
    /// Whether pupils touch it.
    ByTouch,
    /// Whether its states have an order.
    InOrder,
    /// When it is seen.
    Season,
    /// With what it is seen.
    Instrument,
    /// A condition.
    Condition,
    /// How often a kind is met.
    TimesMet,
    /// How many children or groups come along.
    HowMany,
}

/// What a row of a sheet beside the table is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RowOf {
    /// A column.
    Character,
    /// A kind.
    Kind,
}

/// What is so of a sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfSheet {
    /// A cell of a sheet beside the table is not understood.
    FieldOdd {
        /// What it says.
        text: String,
        /// What it should say.
        is: FieldIs,
        /// Words that it may be.
        words: &'static [&'static str],
        /// The cell.
        at: NamedCell,
    },
    /// A row of the sheet `about` is not read.
    RowNotRead {
        /// Its first word.
        text: String,
        /// The sheet.
        sheet: String,
        /// The words that are read.
        usual: Vec<&'static str>,
    },
    /// A column of a sheet beside the table is not read.
    ColumnNotRead {
        /// Its heading.
        heading: String,
        /// The sheet.
        sheet: String,
        /// The headings that are read.
        usual: Vec<&'static str>,
    },
    /// A row that is about nothing in the table.
    NotInTable {
        /// What it is about.
        of: RowOf,
        /// Its name.
        name: String,
        /// The row.
        at: NamedCell,
    },
    /// A second row about the same.
    SecondRow {
        /// What it is about.
        of: RowOf,
        /// Its name.
        name: String,
        /// The row.
        at: NamedCell,
    },
    /// A quotation mark that is not closed.
    QuotationNotClosed {
        /// Where it is opened.
        at: NamedCell,
    },
    /// A text alone above the headings, taken for a title.
    Title {
        /// The text.
        title: String,
    },
    /// The first column counts the rows.
    CountsRows {
        /// Its heading; empty: none.
        heading: String,
        /// The heading of the column with the names of the kinds.
        kinds: String,
    },
    /// The names of the kinds are along the top.
    Swapped,
    /// The first row has no headings.
    NoHeadings {
        /// The first things that it says.
        says: Vec<String>,
        /// The row.
        at: NamedCell,
    },
    /// How often a kind is met is given in words.
    OftenInWords,
    /// A file that is not read since there is another.
    FileNotRead {
        /// The file.
        file: String,
        /// The one that is read.
        read: String,
    },
    /// Sheets of a workbook that were not read.
    SheetsNotRead {
        /// The one that was read.
        read: String,
        /// The others.
        others: Vec<String>,
    },
    /// A row that is no kind.
    NoKind {
        /// What it says, cut short.
        name: String,
        /// Whether it adds up the others; else it is a note.
        adds_up: bool,
        /// The row.
        at: NamedCell,
    },
    /// A row without a name.
    Nameless {
        /// The row.
        at: NamedCell,
    },
    /// The table has too many kinds.
    TooManyKinds {
        /// How many are read.
        most: usize,
        /// The first that is left out.
        kind: String,
    },
    /// The table has too many rows that are finds.
    TooManyFinds {
        /// How many are read.
        most: usize,
        /// The row of the first that is left out.
        row: u32,
    },
    /// Two rows name the same kind.
    KindTwice {
        /// The two names as they are written.
        names: [String; 2],
        /// What the second is called.
        called: String,
        /// A word in which they differ, of each.
        differ: Option<[String; 2]>,
        /// The first.
        first: NamedCell,
        /// The second.
        second: NamedCell,
    },
    /// Kinds that are on several rows each, as where a row is a leaf.
    KindsOnSeveralRows {
        /// How many of them.
        kinds: usize,
        /// The one with the most rows.
        kind: String,
        /// How many rows it has.
        rows: usize,
        /// The first of them.
        first: NamedCell,
        /// What its second row is called.
        called: String,
    },
    /// Columns that say of a find which it is, and nothing that could be asked.
    FindColumns {
        /// Their headings.
        headings: Vec<String>,
    },
    /// Columns that say how finds were measured, and nothing that could be asked.
    MeasuringColumns {
        /// The heading of the first.
        first: String,
        /// How many there are.
        columns: usize,
    },
    /// Rows of finds that nobody named.
    OfNoKind {
        /// How many.
        rows: usize,
        /// The first.
        first: NamedCell,
    },
    /// The file is damaged.
    Damaged {
        /// The last cell that is whole.
        at: NamedCell,
    },
    /// The sheet holds more than is read.
    Full {
        /// How many cells are read.
        cells: usize,
        /// How many megabytes of text.
        megabytes: usize,
        /// Where reading stopped.
        at: NamedCell,
    },
}

impl OfSheet {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::FieldOdd { .. } => Code::CellNotUnderstood,
            Self::NotInTable { .. } | Self::SecondRow { .. } => Code::SheetDisagrees,
            Self::QuotationNotClosed { .. } => Code::QuotationNotClosed,
            Self::Swapped => Code::Swapped,
            Self::NoHeadings { .. } => Code::NoHeadings,
            Self::OftenInWords | Self::FindColumns { .. } => Code::Assumed,
            Self::MeasuringColumns { .. } => Code::Assumed,
            Self::KindTwice { .. } | Self::KindsOnSeveralRows { .. } => Code::KindTwice,
            Self::TooManyKinds { .. } | Self::TooManyFinds { .. } | Self::Full { .. } => {
                Code::TooLarge
            }
            Self::RowNotRead { .. }
            | Self::ColumnNotRead { .. }
            | Self::Title { .. }
            | Self::CountsRows { .. }
            | Self::FileNotRead { .. }
            | Self::SheetsNotRead { .. }
            | Self::NoKind { .. }
            | Self::Nameless { .. }
            | Self::OfNoKind { .. }
            | Self::Damaged { .. } => Code::LeftOut,
        }
    }

    pub(super) fn cells_mut(&mut self) -> Vec<&mut NamedCell> {
        match self {
            Self::FieldOdd { at, .. }
            | Self::NotInTable { at, .. }
            | Self::SecondRow { at, .. }
            | Self::QuotationNotClosed { at }
            | Self::NoHeadings { at, .. }
            | Self::NoKind { at, .. }
            | Self::Nameless { at }
            | Self::Damaged { at }
            | Self::Full { at, .. } => vec![at],
            Self::KindTwice { first, second, .. } => vec![first, second],
            Self::KindsOnSeveralRows { first, .. } | Self::OfNoKind { first, .. } => {
                vec![first]
            }
            Self::RowNotRead { .. }
            | Self::ColumnNotRead { .. }
            | Self::Title { .. }
            | Self::CountsRows { .. }
            | Self::Swapped
            | Self::OftenInWords
            | Self::FindColumns { .. }
            | Self::MeasuringColumns { .. }
            | Self::FileNotRead { .. }
            | Self::SheetsNotRead { .. }
            | Self::TooManyKinds { .. }
            | Self::TooManyFinds { .. } => Vec::new(),
        }
    }
}
