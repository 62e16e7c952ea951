//! A person's key in plain text, as it stands in any handbook: questions or paired leads.
//!
//! From text to a key with findings about what could not be read, and back to text. Numbers,
//! order and repetitions stay as they are on paper. It does not judge the key, and it links
//! no question to the table: that is [`crate::link`].

mod couplets;
mod destination;
mod draft;
mod line;
mod second;
mod write;

use std::borrow::Cow;

use spinney_model::limits::{KEY_LINE_BYTES, KEY_LINES, KEY_QUESTIONS};
use spinney_model::{Finding, Key, Matrix, OfKeyRead, Place};

use crate::link::Links;
use crate::link::names::Names;

pub use write::{write, write_in};

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
/// first number are passed over, and so are lines that repeat the one above in the second
/// language of the table.
///
/// **Guarantees**: everything readable is read; no text makes it fail.
/// **Cost**: linear in the text.
pub fn read(text: &str, matrix: &Matrix, links: &Links) -> KeyRead {
    let text = text.trim_start_matches('\u{feff}').replace("\r\n", "\n").replace('\r', "\n");
    let names = Names::of(matrix, links);
    let (text, mut findings) = within_limits(&text);
    let text = second::without(text, matrix);
    let (mut key, found) = couplets::Gatherer::new(&text, matrix, &names).gather();
    findings.extend(found);
    findings.extend(cut_to_limit(&mut key));
    if key.couplets.is_empty() {
        findings.push(Finding::of(Place::Key, OfKeyRead::NoNumberedQuestion));
    }
    KeyRead { key, findings }
}

/// Cuts a key to as many questions as are taken, and says so.
pub(crate) fn cut_to_limit(key: &mut Key) -> Option<Finding> {
    (key.couplets.len() > KEY_QUESTIONS).then(|| {
        key.couplets.truncate(KEY_QUESTIONS);
        Finding::of(Place::Key, OfKeyRead::OnlyFirstQuestions { read: KEY_QUESTIONS })
    })
}

/// What is read of a text: so many lines, and so much of each. What a line reader looks at again
/// and again is short.
fn within_limits(text: &str) -> (Cow<'_, str>, Vec<Finding>) {
    let (mut long, mut findings) = (None, Vec::new());
    for (line, words) in text.split('\n').take(KEY_LINES).enumerate() {
        if words.len() > KEY_LINE_BYTES {
            long = long.or(Some(line));
        }
    }
    let more = text.split('\n').nth(KEY_LINES).is_some();
    if more {
        let fact = OfKeyRead::OnlyFirstLines { read: KEY_LINES };
        findings.push(Finding::of(Place::Line(KEY_LINES + 1), fact));
    }
    if let Some(line) = long {
        let fact = OfKeyRead::LineTooLong { letters: KEY_LINE_BYTES };
        findings.push(Finding::of(Place::Line(line + 1), fact));
    }
    if !more && long.is_none() {
        return (Cow::Borrowed(text), findings);
    }
    let lines = text.split('\n').take(KEY_LINES);
    let cut = lines.map(|line| &line[..line.floor_char_boundary(KEY_LINE_BYTES)]);
    (Cow::Owned(cut.collect::<Vec<_>>().join("\n")), findings)
}

#[cfg(test)]
mod tests;
