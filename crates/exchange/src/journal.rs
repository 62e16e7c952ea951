//! The journal: an edit as one versioned line of JSON, the same wherever a collection is kept.
//!
//! From a line to an [`Entry`] and back. A line of a later version than this program's is not
//! guessed at. It keeps no lines and does not know what they add up to.

mod line;
mod since;
mod words;

use spinney_model::Entry;

pub use since::since;
pub use spinney_model::LineError;

/// The newest form of lines that is read. Each line is written in the oldest form that can say
/// it: 2 knows a group's own names for kinds, and that a saved version can be given up; 3 knows
/// what adults see to before they go, that a
/// key was tried, and what a column holds; 4 knows how many children and groups come along; 5 knows a second
/// language; 6 knows single leaves, and drawings of kinds.
pub const VERSION: u32 = 6;
/// The longest line that is read, in bytes: a pasted table of the largest size takes less.
const LONGEST: usize = 64 << 20;

/// Writes a line, without the line end.
pub fn write(entry: &Entry) -> Vec<u8> {
    serde_json::to_vec(&line::Line::of(entry)).expect("a line holds only text and numbers")
}

/// Reads a line.
///
/// **Errors**: a line that is newer than this program, or that is none.
pub fn read(bytes: &[u8]) -> Result<Entry, LineError> {
    read_up_to(bytes, VERSION)
}

/// As a program reads that knows the forms up to this one.
fn read_up_to(bytes: &[u8], newest: u32) -> Result<Entry, LineError> {
    if bytes.len() > LONGEST {
        return Err(LineError::NotALine);
    }
    match serde_json::from_slice::<line::Line>(bytes) {
        Ok(line) if line.v <= newest => line.entry().ok_or(LineError::NotALine),
        Ok(line) => Err(LineError::Newer(line.v)),
        Err(_) => match serde_json::from_slice::<line::Versioned>(bytes) {
            Ok(line) if line.v > newest => Err(LineError::Newer(line.v)),
            _ => Err(LineError::NotALine),
        },
    }
}

#[cfg(test)]
mod tests;
