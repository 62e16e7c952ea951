//! The pupil's second look: what else is to be seen where the answer is yes.
//!
//! From what separates a heap in the same way to one line for a sheet or a page: `On yes,
//! check: it should not be shiny.` Which questions are second looks the search decides.

use spinney_model::Couplet;

use crate::Booklet;
use crate::key_pages::answer_words;
use spinney_voice::wording;

/// More than this many would be read by nobody.
const MOST: usize = 2;

/// The line under a question, with at most so many looks. None: there is nothing to look at.
pub(crate) fn line(booklet: &Booklet, couplet: &Couplet, most: usize) -> Option<String> {
    let looks = looks(booklet, couplet);
    let looks = &looks[..looks.len().min(most)];
    let (yes, _) = answer_words(booklet.tongue, couplet);
    let (first, rest) = looks.split_first()?;
    let mut line = first.clone();
    for look in rest {
        let mut letters = look.chars();
        let capital: String = letters.next().into_iter().flat_map(char::to_uppercase).collect();
        line += &format!(" {capital}{}", letters.as_str());
    }
    let parts: [(&str, &dyn std::fmt::Display); 2] = [("answer", &yes), ("looks", &line)];
    Some(booklet.tongue.with("sheet-look-on", &parts))
}

/// What is to be seen on yes, for each look.
pub(crate) fn looks(booklet: &Booklet, couplet: &Couplet) -> Vec<String> {
    let looks = booklet.second_looks.get(&couplet.number).into_iter().flatten();
    let said = |ask| wording::said_at(booklet.matrix, booklet.key, couplet.number, ask);
    looks
        .take(MOST)
        .map(|(ask, opposite)| {
            wording::second_look(booklet.tongue, booklet.matrix, &said(ask), *opposite)
        })
        .collect()
}
