//! What Spinney says: questions in words, findings and the screens in the language a person
//! reads best.
//!
//! From typed data to sentences. It knows no page, no sheet and no file.

pub mod amounts;
pub mod below;
mod error;
mod finding;
pub mod glossary;
pub mod measured;
pub mod second_language;
pub mod spread;
pub mod starters;
mod tongue;
pub mod when;
pub mod wording;

pub use error::{
    bundle_error, key_file_error, line_error, not_valid, table_error, template_error,
    what_it_is,
};
pub use finding::{
    all, all_pairs, any, coverage, early, finding, hand, place, season, trouble,
};
pub use tongue::{LANGUAGES, Tongue};
