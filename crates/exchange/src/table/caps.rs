//! How much of a spreadsheet is read at most, and why: a hostile file must not use more than
//! 512 MiB, and an honest one must never meet a limit.
//!
//! An honest large table is 10,000 kinds × 30 characters: 300,000 cells of about 10 letters.

use spinney_model::Scale;

/// The largest file, in bytes. The honest large table has about 4 MB, pictures come on top.
/// The directory of a zip alone can take eight times its own size in memory.
pub(super) const MOST_BYTES: usize = 24 << 20;

/// The most that the parts of one workbook may unpack to, in bytes. The honest large table
/// unpacks to about 12 MB. One endless tag may be held whole while it is read.
pub(super) const MOST_UNPACKED: u64 = 64 << 20;

/// The most cells with something in them, and the most cells of kinds × characters. A cell
/// can need 650 bytes once it is understood (`0-12` is thirteen counts with their shares).
pub(super) const MOST_CELLS: usize = 400_000;

/// The most shares of states and counts in all cells; each takes 48 bytes.
pub(super) const MOST_SHARES: usize = 4_000_000;

/// The most kinds. A key for more is a book of keys.
pub(super) const MOST_KINDS: usize = 20_000;

/// The most columns; a table for children has ten.
pub(super) const MOST_COLUMNS: u32 = 256;

/// The most characters: a column each, beside the kinds' names.
pub(super) const MOST_CHARACTERS: usize = MOST_COLUMNS as usize - 1;

/// The longest text in one cell, in bytes: room for 64 states, or for a long caution.
pub(super) const LONGEST_TEXT: usize = 4_000;

/// All text of one sheet together, in bytes. Understood text takes up to ten times as much.
pub(super) const MOST_TEXT: usize = 16 << 20;

/// The most worksheets that are looked through for the ones that are wanted.
pub(super) const MOST_SHEETS: usize = 256;

/// The most states of a column in words; more is a column of notes.
pub(super) const MOST_STATES: usize = Scale::MOST_STATES;

/// The most different whole numbers of a column of counts; more is a measure.
pub(super) const MOST_COUNTS: usize = 64;

/// The widest range that still means "each of these whole numbers": `3-15` leaflets.
pub(super) const WIDEST_COUNT_RANGE: u32 = 12;
