//! The sheets on paper, looked at as boxes, as extracted words and as files.
//!
//! The words are extracted by Poppler (`pdftotext`, `pdfinfo`): a reader that is not ours.

#![allow(clippy::unwrap_used, reason = "these are tests, their helpers too")]

mod boxes;
mod cautions;
mod copies;
mod endless;
mod hedge;
mod hostile;
mod in_german;
mod look;
mod places;
mod second_look;
mod shown;
mod words;
mod words_to_look_at;
