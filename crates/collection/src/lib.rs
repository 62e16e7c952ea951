//! What has been said, and what follows from it.
//!
//! A [`Collection`] is what all edits of a journal add up to ([`history`] says which lines hold). From
//! it follow the table that it comes to ([`laid`]), who says what of a cell ([`Sayings`]), each key
//! with its second opinion ([`keys`]), a place for a newcomer ([`slot_in`]), sets for groups
//! ([`share_out`]) and a journal without what goes for good ([`forget`]).
//!
//! No HTML, no picture is decoded, no language but that of the questions, no file, clock or
//! randomness: all of it can be tested without a page.

pub mod asked_back;
mod collection;
pub mod compare;
pub mod forget;
pub mod guesses;
pub mod history;
pub mod intake;
pub mod keys;
pub mod kinds;
pub mod laid;
pub mod layer;
pub mod measured;
pub mod offers;
pub mod pinned;
pub mod renamed;
pub mod reworded;
pub mod rows;
pub mod share_out;
pub mod size;
pub mod slot_in;
pub mod told_apart;
pub mod touched;
pub mod walking;

pub use collection::{
    Agreed, Card, Cells, Collection, Drawn, Kind, Measurement, Put, Question, Saying, Sayings,
    Sorted, Specimen, Unlike, edit_script, unlike,
};
