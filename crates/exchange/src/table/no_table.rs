//! Texts that people give for a table by mistake: a web page, a letter, a page of instructions.
//!
//! From a text, or from its cells, to what it is instead; None: it may well be a table. Where
//! rows and columns are regular it is one, however many words stand in a cell.

use super::Instead;
use super::grid::Grid;
use super::phrase::fold;

/// So many rows are looked at.
const ROWS: usize = 60;

/// So many words in the middle one of all cells, sorted by length, are a sentence and no state:
/// in the tables of the repository it has one or two words, in its pages of writing six to
/// fourteen.
const WORDS_OF_A_SENTENCE: usize = 4;

/// So many words without a comma are a part of a letter; a cell of a table hardly has them.
const WORDS_OF_A_LETTER: usize = 8;

/// What people write above the names of the kinds.
pub(super) const KINDS: [&str; 8] =
    ["kind", "kinds", "name", "species", "find", "finds", "plant", "animal"];

/// Words that speak to somebody or say what is done: in one of two lines of a single column they
/// make it writing. No name of a kind holds one.
const SPEAKS: &str = "dear hello hi we you i they he she us me our your my is are was were will go \
    please thank thanks can must bring today tomorrow";

/// What a text is by its first signs: HTML, JSON, a PDF behind a line of something else.
pub(super) fn by_its_beginning(text: &str) -> Option<Instead> {
    let start: String = text.trim_start().chars().take(1024).collect();
    let lower = start.to_lowercase();
    if start.contains("%PDF-") {
        return Some(Instead::Pdf);
    }
    let tags =
        ["<!doctype", "<html", "<head", "<body", "<?xml", "<svg", "<div", "<p>", "<table"];
    if tags.iter().any(|tag| lower.starts_with(tag)) {
        return Some(Instead::WebPage);
    }
    // A heading may stand in brackets, but not with quotation marks or braces inside.
    let mut signs = start.chars().filter(|sign| !sign.is_whitespace());
    match (signs.next(), signs.next()) {
        (Some('{'), Some('"' | '}')) | (Some('['), Some('{' | '"' | '[')) => {
            let points = lower.contains("docs.google.com") && lower.contains("\"doc_id\"");
            Some(if points { Instead::GoogleSheet } else { Instead::Json })
        }
        _ => None,
    }
}

/// What the cells of a text are instead of a table.
pub(super) fn by_its_cells(grid: &Grid) -> Option<Instead> {
    let rows: Vec<Row<'_>> = grid.rows().take(ROWS).map(|(_, cells)| cells).collect();
    // Nobody begins a letter so.
    let headed = |row: &Row<'_>| row.len() > 1 && KINDS.contains(&fold(&row[0].1).as_str());
    // What we write of kinds without characters.
    let ours = rows.first().is_some_and(|row| row.len() == 1 && row[0].1 == super::write::KIND);
    if ours || rows.iter().take(3).any(headed) {
        return None;
    }
    // No name of a kind asks anything: a key in words, cut at its commas.
    let asks = |row: &&Row<'_>| row[0].1.trim_end_matches('?').contains(['?', '→']);
    if 2 * rows.iter().filter(asks).count() > rows.len() {
        return Some(Instead::KeyInWords);
    }
    if lined_up(&rows) {
        return Some(Instead::LinedUp);
    }
    // A letter, cut at its commas or not.
    let spoken = rows.iter().filter(|row| row.iter().any(|(_, text)| speaks(text))).count();
    let single = rows.iter().all(|row| row.len() == 1);
    let long = rows.iter().any(|row| row.iter().any(|cell| words(cell) >= WORDS_OF_A_LETTER));
    let letter = single || long && !regular(&rows);
    if rows.len() > 1 && letter && 2 * spoken >= rows.len() {
        return Some(Instead::Writing);
    }
    let sentences = 2 * rows.iter().filter(|row| is_sentence(row)).count() >= rows.len();
    let all = middle(rows.iter().flat_map(|row| row.iter()).map(words));
    let names = middle(rows.iter().map(|row| words(&row[0])));
    let short = !sentences && (all < WORDS_OF_A_SENTENCE || names + 1 < WORDS_OF_A_SENTENCE);
    (!rows.is_empty() && !short && !regular(&rows)).then_some(Instead::Writing)
}

/// The filled cells of a row.
type Row<'g> = &'g [(u32, String)];

fn words((_, text): &(u32, String)) -> usize {
    text.split_whitespace().count()
}

/// Whether a text speaks to somebody.
pub(super) fn speaks(text: &str) -> bool {
    let words = text.split(|letter: char| !letter.is_alphabetic()).map(str::to_lowercase);
    words.into_iter().any(|word| SPEAKS.split_whitespace().any(|known| known == word))
}

/// Whether every row is one cell in which spaces part as many pieces as in every other row.
fn lined_up(rows: &[Row<'_>]) -> bool {
    let pieces = |text: &str| text.split("  ").filter(|piece| !piece.trim().is_empty()).count();
    let first = rows.first().map_or(0, |row| pieces(&row[0].1));
    let alike = |row: &Row<'_>| row.len() == 1 && pieces(&row[0].1) == first;
    rows.len() > 2 && first > 1 && rows.iter().all(alike)
}

/// The one in the middle, sorted; of two the smaller.
fn middle(counts: impl Iterator<Item = usize>) -> usize {
    let mut counts: Vec<usize> = counts.collect();
    counts.sort_unstable();
    counts.get(counts.len().saturating_sub(1) / 2).copied().unwrap_or(0)
}

/// Whether a row reads as a sentence to its end.
fn is_sentence(row: Row<'_>) -> bool {
    let ends = row.last().is_some_and(|(_, text)| text.ends_with(['.', '!', '?', ':']));
    ends && row.iter().map(words).sum::<usize>() >= WORDS_OF_A_SENTENCE
}

/// Whether nine in ten rows have as many cells as the headings, or nearly.
fn regular(rows: &[Row<'_>]) -> bool {
    let widest = rows.iter().take(3).map(|row| row.len()).max().unwrap_or(0);
    let alike = rows.iter().filter(|row| row.len().abs_diff(widest) <= widest / 4);
    widest > 1 && rows.len() > 1 && 10 * alike.count() >= 9 * rows.len()
}
