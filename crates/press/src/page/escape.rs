//! Escaping: what somebody typed, made safe to stand in the page.
//!
//! From any text to HTML that shows just that text, between tags and inside a quoted
//! attribute. It is never used inside the script or the style sheet: no typed text gets there.

/// The text as it may stand between tags and in a quoted attribute. Control characters, which
/// no HTML file may hold, become spaces.
pub(super) fn escaped(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            '\n' | '\t' => safe.push(letter),
            _ if letter.is_control() => safe.push(' '),
            _ => safe.push(letter),
        }
    }
    safe
}
