//! What is so of a table without a key: what it cannot separate, and what hangs on little.

use super::{CellOf, CellsOf, RangeOf};
use crate::{Code, Written};

/// A column that would separate some of a group, and what is in the way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InTheWay {
    /// The column.
    pub about: String,
    /// The two kinds that it would separate; None: the group has no others.
    pub separates: Option<[String; 2]>,
    /// Who does not have it.
    pub without: Vec<String>,
    /// Who may not have it.
    pub perhaps: Vec<String>,
    /// Whose ranges are in between.
    pub between: Vec<String>,
}

/// What is so of a table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfTable {
    /// Nothing tells these kinds apart.
    NotSeparable {
        /// The kinds.
        kinds: Vec<String>,
    },
    /// What would tell these kinds apart cannot be asked of all of them.
    Blocked {
        /// The kinds.
        kinds: Vec<String>,
        /// What is in the way.
        because: Vec<InTheWay>,
        /// The cells that can be filled in.
        fill_in: Option<CellsOf>,
    },
    /// Two kinds differ in one column only.
    FragilePair {
        /// The kinds.
        kinds: [String; 2],
        /// The column.
        about: String,
        /// Whether it is hard to see.
        hard: bool,
        /// Whether the ranges are close.
        close: bool,
    },
    /// Two kinds differ in a measure by less than twice the safety margin.
    GapTooNarrow {
        /// What was measured on each.
        ranges: [RangeOf; 2],
        /// The column.
        about: String,
        /// The safety margin.
        margin: Written,
        /// Whether a smaller margin may do, since the lengths are small beside it.
        smaller_may_do: bool,
        /// Cells at which nobody has looked.
        open: Vec<CellOf>,
    },
    /// So many more pairs are left together by the safety margin.
    MoreTooNarrow {
        /// How many pairs.
        pairs: usize,
    },
    /// Cells at which nobody has looked.
    Unknown {
        /// How many.
        cells: usize,
        /// The first of them, column by column.
        columns: Vec<CellsOf>,
        /// How many more columns have some.
        more_columns: usize,
    },
    /// There are too many groups of kinds that nothing separates.
    TooManyGroups,
    /// There are too many kinds to compare each with each.
    TooManyKinds,
}

impl OfTable {
    pub(super) fn code(&self) -> Code {
        match self {
            Self::NotSeparable { .. } | Self::Blocked { .. } => Code::NotSeparable,
            Self::FragilePair { .. } => Code::FragilePair,
            Self::GapTooNarrow { .. } | Self::MoreTooNarrow { .. } => Code::GapTooNarrow,
            Self::Unknown { .. } => Code::Unknown,
            Self::TooManyGroups | Self::TooManyKinds => Code::TooLarge,
        }
    }
}
