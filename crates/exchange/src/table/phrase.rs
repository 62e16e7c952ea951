//! Lists and alternatives as people type them: `lobed or entire`, `lobed 8; entire 2`.
//!
//! From a text to its pieces, and back. What stands between straight quotation marks is never
//! cut, so that a state may be called `"oval or so"`; a mark inside is doubled.

use spinney_model::InSecond;

/// How texts are compared: without capitals, outer spaces, or runs of spaces.
pub(super) fn fold(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    for word in text.split_whitespace() {
        if !folded.is_empty() {
            folded.push(' ');
        }
        folded.extend(word.chars().flat_map(char::to_lowercase));
    }
    folded
}

/// The pieces of a list. Semicolons part; commas do too, but not the decimal comma of `3,5`.
pub(super) fn list(text: &str) -> Vec<&str> {
    let bytes = text.as_bytes();
    let digit =
        |at: Option<usize>| at.and_then(|at| bytes.get(at)).is_some_and(u8::is_ascii_digit);
    cut(text, |at| match bytes[at] {
        b';' => Some(1),
        b',' if digit(at.checked_sub(1)) && digit(Some(at + 1)) => None,
        b',' => Some(1),
        _ => None,
    })
}

/// The pieces of a list in which only semicolons part.
pub(super) fn semicolon_list(text: &str) -> Vec<&str> {
    cut(text, |at| (text.as_bytes()[at] == b';').then_some(1))
}

/// The alternatives between which somebody wrote `or`, or a stroke: `toothed / smooth`.
pub(super) fn alternatives(text: &str) -> Vec<&str> {
    cut(text, |at| or_at(text, at).or_else(|| stroke_at(text, at, true)))
}

/// Whether a stroke stands between two alternatives.
pub(super) fn has_stroke(text: &str) -> bool {
    cut(text, |at| stroke_at(text, at, true)).len() > 1
}

/// Declared states: parted by semicolons, commas, `or` or a stroke with spaces around it.
pub(super) fn states(text: &str) -> Vec<String> {
    let alternatives =
        |piece| cut(piece, |at| or_at(piece, at).or_else(|| stroke_at(piece, at, false)));
    let pieces = list(text).into_iter().flat_map(alternatives);
    pieces.map(unquote).filter(|state| !state.is_empty()).collect()
}

fn or_at(text: &str, at: usize) -> Option<usize> {
    let word = text.as_bytes().get(at..at + 4)?;
    let spaced = word[0].is_ascii_whitespace() && word[3].is_ascii_whitespace();
    (spaced && word[1..3].eq_ignore_ascii_case(b"or")).then_some(3)
}

/// A stroke between two words; with numbers on both sides it is a fraction, and `n/a` is none.
/// `close`: also between words of two letters or more without spaces, `toothed/smooth`.
fn stroke_at(text: &str, at: usize, close: bool) -> Option<usize> {
    if text.as_bytes()[at] != b'/' {
        return None;
    }
    let (before, after) = (&text[..at], &text[at + 1..]);
    let spaced =
        before.ends_with(char::is_whitespace) && after.starts_with(char::is_whitespace);
    let (last, first) =
        (before.trim_end().chars().next_back()?, after.trim_start().chars().next()?);
    if spaced {
        return (!(last.is_ascii_digit() && first.is_ascii_digit())).then_some(1);
    }
    let letters = |mut signs: Box<dyn Iterator<Item = char> + '_>| {
        signs.next().is_some_and(char::is_alphabetic)
            && signs.next().is_some_and(char::is_alphabetic)
    };
    let words =
        close && letters(Box::new(before.chars().rev())) && letters(Box::new(after.chars()));
    words.then_some(1)
}

/// Cuts outside quotation marks where `mark` says how many bytes to leave out.
fn cut(text: &str, mark: impl Fn(usize) -> Option<usize>) -> Vec<&str> {
    let bytes = text.as_bytes();
    let (mut pieces, mut start, mut at, mut quoted) = (Vec::new(), 0, 0, false);
    while at < bytes.len() {
        // A mark in the middle of a word is an inch sign or a slip, not a quotation.
        let begins = at == 0 || !bytes[at - 1].is_ascii_alphanumeric();
        if bytes[at] == b'"' && (quoted || begins) {
            quoted = !quoted && text[at + 1..].contains('"');
        } else if !quoted && let Some(length) = mark(at) {
            pieces.push(text[start..at].trim());
            at += length;
            start = at;
            continue;
        }
        at += 1;
    }
    pieces.push(text[start..].trim());
    pieces
}

/// The text between quotation marks, with doubled marks single again; else the text itself.
pub(super) fn unquote(text: &str) -> String {
    match quoted(text) {
        Some(inner) => inner,
        None => text.split_whitespace().collect::<Vec<_>>().join(" "),
    }
}

/// The inner text, if the whole is one quotation.
pub(super) fn quoted(text: &str) -> Option<String> {
    let inner = text.trim().strip_prefix('"')?.strip_suffix('"')?;
    let bare = inner.replace("\"\"", "");
    (!bare.contains('"')).then(|| inner.replace("\"\"", "\""))
}

/// `toothed = ząbkowany`: a text and what it is in the second language; None: there is none.
pub(super) fn in_second(text: &str) -> Option<InSecond> {
    let bytes = text.as_bytes();
    let pieces = cut(text, |at| (bytes[at] == b'=').then_some(1));
    let (first, rest) = pieces.split_first()?;
    let pair = InSecond { text: unquote(first), second: unquote(&rest.join(" = ")) };
    (!pair.text.is_empty()).then_some(pair)
}

/// `toothed = ząbkowany; smooth = gładki`, or with commas.
pub(super) fn in_second_listed(text: &str) -> Vec<InSecond> {
    list(text).into_iter().filter_map(in_second).collect()
}

/// A text between quotation marks.
pub(super) fn quote(text: &str) -> String {
    format!("\"{}\"", text.replace('"', "\"\""))
}
