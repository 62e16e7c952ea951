//! The pupil's second look: what else is to be seen where the answer is yes.
//!
//! From what parts a heap in the same way to one line for a sheet or a page. What is answered by
//! touch is left out, since cautions stand only where the question itself makes people touch.

use spinney_model::{Ask, Asked, Couplet, Matrix, Scale};

use crate::Booklet;
use crate::key_pages::answer_words;
use crate::wording;

/// More than this many would be read by nobody.
const MOST: usize = 2;

/// The line under a question, with at most so many looks: `Also, on yes: leaf edge: toothed.`
/// None: there is nothing to look at.
pub(crate) fn line(booklet: &Booklet, couplet: &Couplet, most: usize) -> Option<String> {
    let looks = looks(booklet, couplet);
    let looks = &looks[..looks.len().min(most)];
    let (yes, _) = answer_words(couplet);
    (!looks.is_empty()).then(|| format!("Also, on {yes}: {}.", looks.join("; ")))
}

/// What is to be seen on yes, for each look.
pub(crate) fn looks(booklet: &Booklet, couplet: &Couplet) -> Vec<String> {
    let looks = booklet.second_looks.get(&couplet.number).into_iter().flatten();
    let seen = looks.filter(|(ask, _)| !booklet.matrix.character(ask.character).by_touch);
    seen.take(MOST).map(|(ask, opposite)| on_yes(booklet.matrix, ask, *opposite)).collect()
}

fn on_yes(matrix: &Matrix, ask: &Ask, opposite: bool) -> String {
    if !opposite {
        return wording::phrase(matrix, ask);
    }
    let yes = match (&ask.yes, &matrix.character(ask.character).scale) {
        (Asked::States(asked), Scale::Words { states }) => {
            let all = (0..states.len()).map(spinney_model::StateIx);
            Asked::States(all.filter(|state| !asked.contains(state)).collect())
        }
        (Asked::AtLeast(least), _) => Asked::Below(*least),
        (Asked::Below(limit), _) => Asked::AtLeast(*limit),
        (other @ Asked::States(_), _) => other.clone(),
    };
    wording::phrase(matrix, &Ask { character: ask.character, yes })
}
