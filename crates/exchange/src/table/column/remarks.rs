//! A column of remarks: a sentence a kind, each another. No question comes of them.
//!
//! From the texts of a column to whether it is one. States may be long; sentences speak.

use spinney_model::OfColumn;

use super::Kinds;
use crate::table::heading::Heading;
use crate::table::no_table::speaks;
use crate::table::phrase::fold;
use crate::table::{of_character, report::Report};

/// So many words and more has the middle one of the texts, sorted by length.
const WORDS: usize = 6;

/// Whether a column holds remarks.
pub(super) fn are(heading: &Heading<'_>, kinds: &Kinds<'_>) -> bool {
    if heading.described.is_some_and(|row| !row.states.is_empty()) {
        return false;
    }
    let texts = kinds.rows.iter().map(|(row, _)| kinds.grid.get(*row, heading.column));
    let mut texts: Vec<&str> = texts.filter(|text| !text.is_empty()).collect();
    if texts.len() < 2 {
        return false;
    }
    let words = |text: &&str| text.split_whitespace().count();
    texts.sort_by_key(words);
    let long = words(&texts[(texts.len() - 1) / 2]) >= WORDS;
    let sentence = |text: &&&str| text.ends_with(['.', '!', '?']) || speaks(text);
    if !long || 2 * texts.iter().filter(sentence).count() < texts.len() {
        return false;
    }
    let mut folded: Vec<String> = texts.iter().map(|text| fold(text)).collect();
    folded.sort();
    folded.windows(2).all(|pair| pair[0] != pair[1])
}

/// Tells it.
pub(super) fn tell(heading: &Heading<'_>, report: &mut Report) {
    let about = heading.name.clone();
    report.one(of_character(&about), OfColumn::Remarks { about });
}
