//! The word list of a key: only the trade's words that this key uses.
//!
//! From a booklet to the words of the list (`voice::glossary`) that its reader meets or needs.

use spinney_model::{Destination, Wording};
pub(crate) use spinney_voice::glossary::Entry;
use spinney_voice::glossary::words_in;

use crate::Booklet;

/// The words of the built-in list that this key's questions and confirming sentences use, and
/// those that one must know to answer its questions, in the order of the alphabet.
///
/// **Guarantees**: no word twice; no word that the reader will neither meet nor need.
pub(crate) fn words_used(booklet: &Booklet) -> Vec<Entry> {
    let mut texts = Vec::new();
    for couplet in &booklet.key.couplets {
        match &couplet.wording {
            Wording::Question(text) => texts.push(text.as_str()),
            Wording::Leads { yes, no } => texts.extend([yes.as_str(), no.as_str()]),
        }
        if let Some(ask) = &couplet.ask {
            let asked = booklet.matrix.characters().get(ask.character.0);
            texts.extend(asked.into_iter().flat_map(|asked| &asked.terms).map(String::as_str));
        }
        for to in [&couplet.yes, &couplet.no] {
            let Destination::End(end) = to else { continue };
            for &taxon in &end.taxa {
                texts.extend(booklet.matrix.taxon(taxon).confirming.as_deref());
            }
        }
    }
    words_in(booklet.tongue, about_leaves(booklet), texts)
}

/// Whether what a key says is about leaves: its table, or its questions.
pub(crate) fn about_leaves(booklet: &Booklet) -> bool {
    let questions = booklet.key.couplets.iter().map(|couplet| couplet.wording.first());
    spinney_voice::wording::about_leaves(booklet.matrix, questions)
}
