//! The number that a question says: the one in its words.
//!
//! From a couplet to what it asks with the number that children read. Words that we wrote say the
//! roundest number that does the same (`voice::wording::said`); words that a person wrote say the
//! person's own, and the two may differ by a millimetre or two.

use spinney_model::{Ask, Asked, Quantity};
use spinney_voice::wording;

use crate::Booklet;

/// What the couplet at this place of the key asks; None: nobody has linked it.
pub(crate) fn ask(booklet: &Booklet, at: usize) -> Option<Ask> {
    let said = wording::said(booklet.matrix, booklet.key, at)?;
    let couplet = &booklet.key.couplets[at];
    let own = couplet.ask.as_ref()?;
    let in_words = |ask: &Ask| {
        let number = number(ask).map(|it| booklet.matrix.character(ask.character).number(it));
        number.is_some_and(|number| {
            let words = couplet.wording.first().replace(',', ".");
            words.split(|c: char| !c.is_ascii_digit() && c != '.').any(|it| it == number)
        })
    };
    Some(if !in_words(&said) && in_words(own) { own.clone() } else { said })
}

fn number(ask: &Ask) -> Option<Quantity> {
    match ask.yes {
        Asked::AtLeast(number) | Asked::Below(number) => Some(number),
        Asked::States(_) => None,
    }
}
