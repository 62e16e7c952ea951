//! What Spinney says: questions in words, and the screens in the language a person reads best.
//!
//! From typed data to sentences. It knows no page, no sheet and no file. The wordings of findings
//! are still with the rooms that find them.

pub mod below;
mod tongue;
pub mod wording;

pub use tongue::{LANGUAGES, Tongue};
