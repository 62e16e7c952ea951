//! Texts that people give for a table by mistake: a web page, a letter, a page of instructions.
//!
//! From a text, or from its cells, to what it is instead; None: it may well be a table. Where
//! rows and columns are regular it is one, however many words stand in a cell.

use super::grid::Grid;

/// So many rows are looked at.
const ROWS: usize = 60;

/// So many words in the middle one of all cells, sorted by length, are a sentence and no state:
/// in the tables of the repository it has one or two words, in its pages of writing six to
/// fourteen.
const WORDS_OF_A_SENTENCE: usize = 4;

/// What a text is by its first signs: HTML, JSON, a PDF behind a line of something else.
pub(super) fn by_its_beginning(text: &str) -> Option<&'static str> {
    let start: String = text.trim_start().chars().take(1024).collect();
    let lower = start.to_lowercase();
    if start.contains("%PDF-") {
        return Some("a PDF");
    }
    let tags =
        ["<!doctype", "<html", "<head", "<body", "<?xml", "<svg", "<div", "<p>", "<table"];
    if tags.iter().any(|tag| lower.starts_with(tag)) {
        return Some("a web page");
    }
    // A heading may stand in brackets, but not with quotation marks or braces inside.
    let mut signs = start.chars().filter(|sign| !sign.is_whitespace());
    match (signs.next(), signs.next()) {
        (Some('{'), Some('"' | '}')) | (Some('['), Some('{' | '"' | '[')) => {
            Some("a file that programs exchange (JSON)")
        }
        _ => None,
    }
}

/// What the cells of a text are instead of a table.
pub(super) fn by_its_cells(grid: &Grid) -> Option<&'static str> {
    let rows: Vec<&[(u32, String)]> = grid.rows().take(ROWS).map(|(_, cells)| cells).collect();
    let mut words: Vec<usize> = rows
        .iter()
        .flat_map(|row| row.iter().map(|(_, text)| text.split_whitespace().count()))
        .collect();
    words.sort_unstable();
    let middle = words.get(words.len().saturating_sub(1) / 2).copied()?;
    // No name of a kind asks anything: a key in words, cut at its commas.
    let asks = |row: &&&[(u32, String)]| row[0].1.trim_end_matches('?').contains(['?', '→']);
    if 2 * rows.iter().filter(asks).count() > rows.len() {
        return Some("a key in words");
    }
    let ends_a_sentence = |row: &&&[(u32, String)]| {
        row.last().is_some_and(|(_, text)| text.ends_with(['.', '!', '?', ':']))
    };
    let sentences = 2 * rows.iter().filter(ends_a_sentence).count() >= rows.len();
    let writing = middle >= WORDS_OF_A_SENTENCE || sentences;
    (writing && !regular(&rows)).then_some("writing, not rows and columns")
}

/// Whether nine in ten rows reach as far to the right as the headings do, or nearly.
fn regular(rows: &[&[(u32, String)]]) -> bool {
    let widest = |row: &&[(u32, String)]| row.len();
    let Some(columns) = rows.iter().take(3).map(widest).max().filter(|widest| *widest > 1)
    else {
        return false;
    };
    let alike = rows.iter().filter(|row| row.len().abs_diff(columns) <= columns / 4);
    10 * alike.count() >= 9 * rows.len() && rows.len() > 1
}
