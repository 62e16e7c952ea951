//! The sheets on paper, looked at as boxes, as extracted words and as files.
//!
//! The words are extracted by Poppler (`pdftotext`, `pdfinfo`): a reader that is not ours.

#![allow(clippy::unwrap_used, reason = "these are tests, their helpers too")]

mod approved;
mod boxes;
mod cards_to_sort;
mod cautions;
mod copies;
mod endless;
mod hedge;
mod hostile;
mod in_german;
mod laid_out;
mod large_print;
mod leaf_in_lines;
mod lessons;
mod look;
mod measured;
mod places;
mod pocket;
mod ruler;
mod second_language;
mod second_look;
mod shown;
mod wall;
mod word_cards;
mod words;
mod words_to_look_at;
