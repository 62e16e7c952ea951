//! Keys, costs and findings as JSON: what `key`, `check` and `explain` write, and read back.
//!
//! From a key with its matrix, claim and findings to pretty-printed JSON with fields in a
//! fixed order, and back to a key. The shape is described in `docs/key.schema.json`. The
//! matrix itself is not in it: names of kinds, characters and states refer to the table.

mod number;
mod read;
mod shape;
mod write;

use spinney_model::{Claim, Finding, Key, Matrix, Reasons};

pub use read::{JsonError, read_claim, read_key};

/// What one run has to say.
#[derive(Clone, Copy, Debug)]
pub struct Report<'a> {
    /// The table.
    pub matrix: &'a Matrix,
    /// The key that was built or checked.
    pub key: Option<&'a Key>,
    /// What is claimed of its cost; None: nothing, as for a person's key.
    pub claim: Option<&'a Claim>,
    /// What was found.
    pub findings: &'a [Finding],
    /// How many questions were checked against the table, of how many.
    pub questions_checked: Option<(usize, usize)>,
    /// Why each question is asked where it is; empty unless somebody wants it explained.
    pub reasons: &'a [Reasons],
}

/// A whole report as JSON, with a line end behind it.
pub fn report(report: &Report) -> String {
    printed(&write::report(report))
}

/// A key alone as JSON: a report that has nothing but the key.
pub fn key(key: &Key, matrix: &Matrix) -> String {
    printed(&write::key_alone(key, matrix))
}

fn printed(report: &shape::Report) -> String {
    let mut text = serde_json::to_string_pretty(report)
        .expect("strings and numbers alone always have a JSON form");
    text.push('\n');
    text
}

#[cfg(test)]
mod schema;
#[cfg(test)]
mod tests;
