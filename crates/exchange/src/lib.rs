//! How tables and keys come in and out: spreadsheets, a person's key in words, JSON.
//!
//! The only crate with serialisation types; they are private and converted by hand. Readers
//! take bytes and give what could be read together with findings about the rest.

pub mod bundle;
pub mod drawn;
pub mod journal;
pub mod json;
pub mod key_text;
pub mod link;
pub mod measured;
pub mod mends;
pub mod table;
pub mod template;
