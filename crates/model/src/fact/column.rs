//! What is so of a column of a table that was read: what it was taken for, and what the sheet
//! beside the table says of it.

use crate::{Code, NamedCell, Unit, WrittenIn};

/// Why a column of numbers is a measure and not counts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotCounts {
    /// Because of one cell.
    Cell {
        /// What is typed there.
        text: String,
        /// The kind.
        kind: String,
        /// Where it is.
        at: NamedCell,
    },
    /// Because of more different numbers than a column of counts may have.
    MoreThan(usize),
}

/// Why a ratio cannot be worked out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyNoRatio {
    /// A name is no column of the table.
    NoColumn(String),
    /// A text does not name two columns.
    NotTwo(String),
    /// One of the two is a ratio itself.
    OfARatio,
    /// One of the two is not measured.
    NotMeasured(String),
    /// It is one column over itself.
    OverItself,
    /// The two are measured in different units.
    DifferentUnits,
}

/// Why a condition of a column cannot be used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyNoCondition {
    /// It names something that is no column of the table.
    NoColumn(String),
    /// It names a column of numbers.
    HoldsNumbers(String),
    /// It names a state that the column does not have.
    NoState {
        /// What it names.
        state: String,
        /// The column.
        of: String,
    },
    /// It names no state of the column.
    NoStates(String),
    /// It leads back to itself.
    Itself,
}

/// What is so of a column.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfColumn {
    /// Two columns have one heading.
    HeadingTwice {
        /// The heading.
        heading: String,
        /// What the second is called.
        called: String,
        /// The second.
        at: NamedCell,
    },
    /// It has no heading.
    NoHeading {
        /// What it is called.
        called: String,
        /// Where the heading would be.
        at: NamedCell,
    },
    /// It is taken as something that pupils touch.
    Touch {
        /// The column.
        about: String,
    },
    /// Its states are taken to be in the order in which the table names them.
    InOrder {
        /// The column.
        about: String,
        /// The states.
        states: Vec<String>,
    },
    /// Its safety margin has another unit.
    MarginOtherUnit {
        /// The column.
        about: String,
    },
    /// Numbers behind words are taken as part of names.
    NumberedNames {
        /// The column.
        about: String,
    },
    /// Words are read as numbers.
    NumberWords {
        /// The column.
        about: String,
        /// One of the words.
        text: String,
        /// Its cell.
        at: NamedCell,
    },
    /// It is said to hold counts, but has too many different numbers.
    TooManyCounts {
        /// The column.
        about: String,
        /// How many it may have.
        most: usize,
    },
    /// A cell without a unit is read in that of the others.
    UnitOfOthers {
        /// The column.
        about: String,
        /// The unit.
        unit: WrittenIn,
        /// The cell.
        at: NamedCell,
    },
    /// Its numbers have no unit.
    UnitAssumed {
        /// The column.
        about: String,
        /// The unit in which they are read.
        unit: Unit,
        /// One of the cells.
        at: NamedCell,
    },
    /// It is read as a measure without a unit.
    NoUnit {
        /// The column.
        about: String,
        /// Why it holds no counts.
        because: NotCounts,
    },
    /// It holds sentences and was left out.
    Remarks {
        /// The column.
        about: String,
    },
    /// It has so many different texts that it is taken for notes.
    Notes {
        /// The column.
        about: String,
        /// How many it may have.
        most: usize,
    },
    /// Its states name one twice, or are too many.
    StatesNotOnce {
        /// The column.
        about: String,
        /// How many it may have.
        most: usize,
    },
    /// It cannot be worked out of two others.
    NoRatio {
        /// The column.
        about: String,
        /// Why.
        why: WhyNoRatio,
        /// Where that is said.
        at: NamedCell,
    },
    /// It has a condition that cannot be used.
    NoCondition {
        /// The column.
        about: String,
        /// Why.
        why: WhyNoCondition,
        /// Where that is said.
        at: NamedCell,
    },
    /// Empty cells are read as "does not apply".
    DoesNotApply {
        /// The column.
        about: String,
        /// The column that says so.
        above: String,
        /// How many cells.
        cells: usize,
    },
    /// It does not fit any more.
    NoRoom {
        /// The column.
        about: String,
    },
    /// How often it is read right is said of something that is no kind, or twice of one.
    ReadRight {
        /// The column.
        about: String,
        /// What is named.
        name: String,
        /// Whether it is a kind that is named before.
        twice: bool,
        /// Where that is said.
        at: NamedCell,
    },
}

impl OfColumn {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::HeadingTwice { .. } | Self::NoHeading { .. } => Code::HeadingTwice,
            Self::Touch { .. }
            | Self::InOrder { .. }
            | Self::NumberedNames { .. }
            | Self::NumberWords { .. }
            | Self::UnitOfOthers { .. }
            | Self::UnitAssumed { .. }
            | Self::NoUnit { .. }
            | Self::DoesNotApply { .. } => Code::Assumed,
            Self::MarginOtherUnit { .. } => Code::CellNotUnderstood,
            Self::TooManyCounts { .. }
            | Self::StatesNotOnce { .. }
            | Self::NoRatio { .. }
            | Self::NoCondition { .. }
            | Self::ReadRight { .. } => Code::SheetDisagrees,
            Self::Remarks { .. } | Self::Notes { .. } => Code::LeftOut,
            Self::NoRoom { .. } => Code::TooLarge,
        }
    }

    pub(super) fn cells_mut(&mut self) -> Vec<&mut NamedCell> {
        match self {
            Self::HeadingTwice { at, .. }
            | Self::NoHeading { at, .. }
            | Self::NumberWords { at, .. }
            | Self::UnitOfOthers { at, .. }
            | Self::UnitAssumed { at, .. }
            | Self::NoUnit { because: NotCounts::Cell { at, .. }, .. }
            | Self::NoRatio { at, .. }
            | Self::NoCondition { at, .. }
            | Self::ReadRight { at, .. } => vec![at],
            Self::Touch { .. }
            | Self::InOrder { .. }
            | Self::MarginOtherUnit { .. }
            | Self::NumberedNames { .. }
            | Self::TooManyCounts { .. }
            | Self::NoUnit { because: NotCounts::MoreThan(_), .. }
            | Self::Remarks { .. }
            | Self::Notes { .. }
            | Self::StatesNotOnce { .. }
            | Self::DoesNotApply { .. }
            | Self::NoRoom { .. } => Vec::new(),
        }
    }
}
