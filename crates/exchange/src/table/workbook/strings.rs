//! What all sheets of a workbook share: texts by number, and which styles show dates.
//!
//! From the two parts to lists in memory, both bounded. It keeps no fonts and no colours.

use std::collections::BTreeSet;

use super::attribute;
use super::parts::{Found, Parts};
use crate::table::{TableError, caps};

/// The shared texts, in order. A text that is too long is kept a little longer than allowed,
/// so that the sheet tells it where it is used.
pub(super) fn read(parts: &mut Parts<'_>, path: &str) -> Result<Vec<String>, TableError> {
    let (mut strings, mut text) = (Vec::new(), String::new());
    let (mut total, mut in_text, mut phonetic) = (0_usize, false, false);
    parts.each(path, |found| match found {
        Found::Start(element) => match element.local_name().as_ref() {
            "t" => in_text = !phonetic,
            "rPh" => phonetic = true,
            _ => {}
        },
        Found::Text(piece) if in_text => append(&mut text, piece),
        Found::End(name) => match name.as_str() {
            "t" => in_text = false,
            "rPh" => phonetic = false,
            "si" => {
                let full = strings.len() >= caps::MOST_CELLS || total > 2 * caps::MOST_TEXT;
                total += text.len();
                if !full {
                    strings.push(text.as_str().to_owned());
                }
                text.clear();
            }
            _ => {}
        },
        Found::Text(_) | Found::Eof => {}
    })?;
    Ok(strings)
}

/// Adds a piece to a text, but not far beyond what a cell may hold.
pub(super) fn append(text: &mut String, piece: &str) {
    if text.len() <= caps::LONGEST_TEXT {
        let room = caps::LONGEST_TEXT + 4 - text.len().min(caps::LONGEST_TEXT);
        let end = piece.floor_char_boundary(room.min(piece.len()));
        text.push_str(&piece[..end]);
    }
}

/// For each cell style, whether it shows a number as a date.
pub(super) fn date_styles(parts: &mut Parts<'_>, path: &str) -> Result<Vec<bool>, TableError> {
    let (mut own, mut styles, mut in_cells) = (BTreeSet::new(), Vec::new(), false);
    parts.each(path, |found| match found {
        Found::Start(element) => match element.local_name().as_ref() {
            "numFmt" => {
                let code = attribute(element, "formatCode").unwrap_or_default();
                if let Some(id) = number(element).filter(|_| shows_date(&code)) {
                    own.insert(id);
                }
            }
            "cellXfs" => in_cells = true,
            "xf" if in_cells && styles.len() < caps::MOST_CELLS => {
                // The built-in formats 14 to 22 and 45 to 47 are dates and times
                // (ISO/IEC 29500-1, 18.8.30).
                let id = number(element).unwrap_or(0);
                styles.push(matches!(id, 14..=22 | 45..=47) || own.contains(&id));
            }
            _ => {}
        },
        Found::End(name) if name == "cellXfs" => in_cells = false,
        _ => {}
    })?;
    Ok(styles)
}

fn number(element: &quick_xml::events::BytesStart<'_>) -> Option<u32> {
    attribute(element, "numFmtId")?.parse().ok()
}

/// Whether a number format has a day, month, year or time outside its quoted texts.
fn shows_date(code: &str) -> bool {
    let (mut quoted, mut bracket, mut escaped) = (false, false, false);
    code.chars().any(|sign| {
        if std::mem::take(&mut escaped) {
            return false;
        }
        match sign {
            '"' => quoted = !quoted,
            '\\' | '_' | '*' => escaped = true,
            '[' => bracket = true,
            ']' => bracket = false,
            'd' | 'D' | 'm' | 'M' | 'y' | 'Y' | 'h' | 'H' | 's' | 'S' => {
                return !quoted && !bracket;
            }
            _ => {}
        }
        false
    })
}
