//! Text in quotation marks, which is taken as it stands, in keys and links files alike.
//!
//! From a name to the name in marks and back; a mark inside is doubled.

/// Puts a text in quotation marks.
pub(crate) fn quote(text: &str) -> String {
    format!("\"{}\"", text.replace('"', "\"\""))
}

/// Takes a text in quotation marks off the start, and gives what follows it.
pub(crate) fn unquote(text: &str) -> (String, &str) {
    let mut name = String::new();
    let mut chars = text.char_indices().skip(1).peekable();
    while let Some((at, c)) = chars.next() {
        if c != '"' {
            name.push(c);
        } else if chars.next_if(|(_, next)| *next == '"').is_some() {
            name.push('"');
        } else {
            return (name, &text[at + 1..]);
        }
    }
    (name, "")
}
