//! A person's key in plain text, as it stands in any handbook: questions or paired leads.
//!
//! From text to a key with findings about what could not be read, and back to text. Numbers,
//! order and repetitions stay as they are on paper. It does not judge the key, and it links
//! no question to the table: that is [`crate::link`].

mod couplets;
mod destination;
mod draft;
mod line;
mod write;

use spinney_model::{Code, Finding, Key, Matrix, Place};

use crate::link::Links;
use crate::link::names::Names;

pub use write::write;

/// A key that was read, and what could not be understood in it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct KeyRead {
    /// The key as it stands on paper, not yet linked to the table.
    pub key: Key,
    /// What was not understood, and names to be asked back.
    pub findings: Vec<Finding>,
}

/// Reads a key.
///
/// Numbered questions (`1. Is it …? Yes → 2, No → hazel`, on one line or several) and paired
/// leads (`1 Leaf in one piece … 2` and `- Leaf made of leaflets … rowan`, or `1a` and `1b`,
/// `1` and `1'`, the number twice) may stand in one text. A title and other lines before the
/// first number are passed over.
///
/// **Guarantees**: everything readable is read; no text makes it fail.
/// **Cost**: linear in the text.
pub fn read(text: &str, matrix: &Matrix, links: &Links) -> KeyRead {
    let text = text.trim_start_matches('\u{feff}').replace("\r\n", "\n").replace('\r', "\n");
    let names = Names::of(matrix, links);
    let (key, mut findings) = couplets::Gatherer::new(&text, matrix, &names).gather();
    if key.couplets.is_empty() {
        findings.push(Finding::new(
            Code::LineNotUnderstood,
            Place::Key,
            "No numbered question was found in this text.",
            "Begin every question with its number: 1. Is the leaf in one piece? Yes -> 2, \
             No -> rowan",
        ));
    }
    KeyRead { key, findings }
}

#[cfg(test)]
mod tests;
