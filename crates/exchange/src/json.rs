//! Keys, costs and findings as JSON: what `key`, `check` and `explain` write, and read back;
//! where a table is weak; how finds spread; and what was measured in pictures.
//!
//! From a key with its matrix, claim and findings to pretty-printed JSON with fields in a
//! fixed order, and back to a key. The shape is described in `docs/key.schema.json`. The
//! matrix itself is not in it: names of kinds, characters and states refer to the table.

mod certificate;
#[cfg(test)]
mod described;
mod forgive;
mod leaf_form;
mod measured;
mod number;
mod read;
mod revise;
mod shape;
mod spread;
mod weak;
mod wish_words;
mod write;

use spinney_model::{BestKeys, Claim, Finding, Key, Matrix, Reasons, Refusal, Share};

pub use spinney_model::KeyFileError;

pub use forgive::forgiving;
pub use measured::{measured, thin};
pub use read::{read, read_claim, read_key};
pub use revise::{Revised, revised};
pub use spread::spread;
pub use weak::weak;

/// What one run has to say.
#[derive(Clone, Copy, Debug)]
pub struct Report<'a> {
    /// The table.
    pub matrix: &'a Matrix,
    /// The key that was built or checked.
    pub key: Option<&'a Key>,
    /// What is claimed of its cost; None: nothing, as for a person's key.
    pub claim: Option<&'a Claim>,
    /// What the key costs by counting alone, where nothing is claimed; a claim comes first.
    pub effort: Option<Effort>,
    /// What was found.
    pub findings: &'a [Finding],
    /// How many questions were checked against the table, of how many.
    pub questions_checked: Option<(usize, usize)>,
    /// Why each question is asked where it is; empty unless somebody wants it explained.
    pub reasons: &'a [Reasons],
    /// Wishes that could not be fulfilled, and why.
    pub refused: &'a [Refusal],
    /// The best keys, one after the other, where somebody asked for them.
    pub best_keys: Option<&'a BestKeys>,
}

impl<'a> Report<'a> {
    /// A report on a table that says nothing yet: to be filled with what there is.
    pub fn of(matrix: &'a Matrix) -> Self {
        Self {
            matrix,
            key: None,
            claim: None,
            effort: None,
            findings: &[],
            questions_checked: None,
            reasons: &[],
            refused: &[],
            best_keys: None,
        }
    }
}

/// What a key costs, whoever made it: nothing is said about whether another costs less.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Effort {
    /// The effort of the whole key: every kind's weight times the cost of its questions.
    pub total: Share,
    /// Questions a find takes on average, whatever they cost.
    pub mean_questions: Share,
    /// The most questions on any path.
    pub longest: u32,
}

impl From<&Claim> for Effort {
    fn from(claim: &Claim) -> Self {
        let Claim { total, mean_questions, longest, .. } = *claim;
        Self { total, mean_questions, longest }
    }
}

/// How a finding is said: what is so, and what to do about it. Whoever writes a report knows
/// that; no sentence is made here.
pub type Say = fn(&Finding) -> (String, String);

/// A whole report as JSON, with a line end behind it.
pub fn report(report: &Report, say: Say) -> String {
    printed(&write::report(report, say))
}

/// A key alone as JSON: a report that has nothing but the key.
pub fn key(key: &Key, matrix: &Matrix) -> String {
    printed(&write::key_alone(key, matrix))
}

fn printed(report: &impl serde::Serialize) -> String {
    let mut text = serde_json::to_string_pretty(report)
        .expect("strings and numbers alone always have a JSON form");
    text.push('\n');
    text
}

#[cfg(test)]
mod schema;
#[cfg(test)]
mod tests;
