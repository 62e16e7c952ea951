//! How much of a spreadsheet is read at most: what the table of limits says, and what makes a
//! column more than one of words or counts.

use spinney_model::Scale;

pub(super) use spinney_model::limits::{
    CELL_BYTES as LONGEST_TEXT, TABLE_BYTES as MOST_BYTES, TABLE_CELLS as MOST_CELLS,
    TABLE_COLUMNS as MOST_COLUMNS, TABLE_KINDS as MOST_KINDS, TABLE_SHARES as MOST_SHARES,
    TABLE_TEXT as MOST_TEXT, TABLE_UNPACKED as MOST_UNPACKED, WORKSHEETS as MOST_SHEETS,
};

/// The most characters: a column each, beside the kinds' names.
pub(super) const MOST_CHARACTERS: usize = MOST_COLUMNS as usize - 1;

/// The most states of a column in words; more is a column of notes.
pub(super) const MOST_STATES: usize = Scale::MOST_STATES;

/// The most different whole numbers of a column of counts; more is a measure.
pub(super) const MOST_COUNTS: usize = 64;

/// The widest range that still means "each of these whole numbers": `3-15` leaflets.
pub(super) const WIDEST_COUNT_RANGE: u32 = 12;
