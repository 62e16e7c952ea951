//! What Spinney says: questions in words, findings and the screens in the language a person
//! reads best.
//!
//! From typed data to sentences. It knows no page, no sheet and no file. What the reader of
//! tables and `link` find is still worded where it is found.

pub mod amounts;
pub mod below;
mod finding;
pub mod glossary;
mod tongue;
pub mod when;
pub mod wording;

pub use finding::{coverage, finding, language};
pub use tongue::{LANGUAGES, Tongue};
