//! Cells typed anew: what several people saw in one cell, and a state under another word.
//!
//! From what was typed to what a person would have typed instead, in the same way of counting.
//! It does not know which states a column has.

use super::cell_text::{seen, thing_counted, understood_in_every_column};
use super::phrase::{alternatives, fold, in_second_listed, list, quote, unquote};
use super::write;
use spinney_model::InSecond;

/// Everything that is said in several cells, as one cell: `lobed` and `entire` are
/// `lobed or entire`. None: fewer than two things are said, or one cell says that nobody knows
/// or that it does not apply.
///
/// Counts are left out: those of different people cannot be told apart from recounts.
pub fn either(texts: &[&str]) -> Option<String> {
    let mut all: Vec<&str> = Vec::new();
    for text in texts {
        let (text, _) = seen(text.trim());
        if understood_in_every_column(text) {
            return None;
        }
        for thing in things(text) {
            if !all.iter().any(|known| fold(&unquote(known)) == fold(&unquote(thing))) {
                all.push(thing);
            }
        }
    }
    (all.len() > 1).then(|| all.join(" or "))
}

/// A state as a cell says it: between quotation marks where it would read as several things.
pub fn as_typed(state: &str) -> String {
    if things(state) == [state.trim()] { state.trim().to_owned() } else { quote(state) }
}

/// A typed cell, or a typed list of states, in which one word is another word from now on. Its
/// counts stay; where both words stood without counts, the new one stands once.
pub fn renamed(text: &str, from: &str, to: &str) -> String {
    let (cell, _) = seen(text);
    let new = as_typed(to);
    let is = |thing: &&str| fold(&unquote(thing)) == fold(&unquote(from));
    let found: Vec<&str> = things(cell).into_iter().filter(is).collect();
    if found.is_empty() {
        return text.to_owned();
    }
    let (mut out, mut written) = (String::new(), 0);
    for thing in found {
        // A thing is a part of the text, so their addresses tell where it stands.
        let at = thing.as_ptr() as usize - text.as_ptr() as usize;
        out.push_str(&text[written..at]);
        out.push_str(&new);
        written = at + thing.len();
    }
    out.push_str(&text[written..]);
    once(out)
}

/// A question worded by hand with its text in the second language, as one line.
pub fn second_question(text: &str, second: &str) -> String {
    let pair = InSecond { text: text.to_owned(), second: second.to_owned() };
    write::in_second(&pair, &[])
}

/// States in the second language, `toothed = ząbkowany`, of which one is another word from now on.
pub fn renamed_in_second(text: &str, from: &str, to: &str) -> String {
    let mut pairs = in_second_listed(text);
    let mut found = false;
    for pair in pairs.iter_mut().filter(|pair| fold(&pair.text) == fold(from)) {
        to.clone_into(&mut pair.text);
        found = true;
    }
    if found { write::in_second_listed(&pairs) } else { text.to_owned() }
}

/// A list without counts in which nothing stands twice.
fn once(text: String) -> String {
    let pieces: Vec<&str> = list(&text).into_iter().flat_map(alternatives).collect();
    let mut unique: Vec<&str> = Vec::new();
    for piece in &pieces {
        if !unique.iter().any(|known| fold(known) == fold(piece)) {
            unique.push(piece);
        }
    }
    let counted = pieces.iter().any(|piece| thing_counted(piece) != *piece);
    if counted || unique.len() == pieces.len() {
        return text;
    }
    unique.join(if alternatives(&text).len() > 1 { " or " } else { ", " })
}

/// The things in a cell, without how often each was seen.
pub(super) fn things(text: &str) -> Vec<&str> {
    let pieces = list(text).into_iter().flat_map(alternatives);
    pieces.filter(|piece| !piece.is_empty()).map(thing_counted).collect()
}

#[cfg(test)]
mod tests {
    //! What people say together, and words that change.

    use super::{as_typed, either, renamed};

    #[test]
    fn two_views_of_a_cell_are_one_that_varies() {
        for (texts, expected) in [
            (&["toothed", "smooth"][..], Some("toothed or smooth")),
            (&["lobed or entire", "Entire"], Some("lobed or entire")),
            (&["lobed 8, entire 2", "spiny (3 seen)"], Some("lobed or entire or spiny")),
            (&["30-60", "50-80"], Some("30-60 or 50-80")),
            (&["3,5 cm", "4 cm"], Some("3,5 cm or 4 cm")),
            (&["\"oval or so\"", "round"], Some("\"oval or so\" or round")),
            (&["toothed", "?"], None),
            (&["toothed", "n/a"], None),
            (&["toothed", " Toothed"], None),
            (&[], None),
        ] {
            assert_eq!(either(texts).as_deref(), expected, "{texts:?}");
        }
    }

    #[test]
    fn a_state_is_typed_so_that_it_reads_as_one() {
        for (state, typed) in [
            ("toothed", "toothed"),
            ("double-toothed", "double-toothed"),
            ("jagged, like a saw", "\"jagged, like a saw\""),
            ("oval or so", "\"oval or so\""),
        ] {
            assert_eq!(as_typed(state), typed);
        }
    }

    #[test]
    fn a_state_is_renamed_wherever_it_stands_as_a_whole() {
        for (text, expected) in [
            ("toothed", "jagged"),
            ("Toothed or smooth", "jagged or smooth"),
            ("double-toothed, toothed", "double-toothed, jagged"),
            ("toothed 8, smooth 2 (10 seen)", "jagged 8, smooth 2 (10 seen)"),
            ("8 toothed; 2 smooth", "8 jagged; 2 smooth"),
            ("\"toothed\" or smooth", "jagged or smooth"),
            ("toothed or jagged", "jagged"),
            ("smooth, toothed, jagged", "smooth, jagged"),
            ("smooth", "smooth"),
            ("?", "?"),
            ("", ""),
        ] {
            assert_eq!(renamed(text, "toothed", "jagged"), expected, "{text}");
        }
        assert_eq!(renamed("round or flat", "round", "oval or so"), "\"oval or so\" or flat");
        assert_eq!(renamed("größer", "größer", "klein"), "klein");
    }
}
