//! The word list of a key: only the trade's words that this key uses, in plain words.
//!
//! From a booklet, or any text, to the words in it that a nine-year-old may not know, each
//! with its plain-words twin and, where there is one, the look-alike it is mistaken for. It
//! does not teach words the key never says, and does not invent: a word that is not in the
//! built-in list goes unexplained (the second opinion says so).
//!
//! Source: the plain words are ours and common practice; where the leaf words draw a line
//! (what is blade, stalk, lobe, tooth, leaflet), they follow Ellis et al. 2009, *Manual of
//! Leaf Architecture*, from memory.

mod words;

use spinney_model::{Destination, Wording};

use crate::Booklet;

pub(crate) use words::WORDS;

/// One word of the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Entry {
    /// The word, as it stands at the head of its entry: `leaflet`.
    pub word: &'static str,
    /// What it is, in words that a nine-year-old reads.
    pub plain: &'static str,
    /// What it is taken for, and how to tell.
    pub not_to_be_confused: Option<&'static str>,
    /// Who defines it so, or that it is common practice.
    pub source: &'static str,
}

/// A word of the built-in list, with the ways it is spelt in a sentence.
pub(crate) struct Listed {
    pub(crate) entry: Entry,
    /// Whether its plain words are true of leaves alone: a feather of a mayfly has no leaflets.
    pub(crate) leaves: bool,
    /// Every spelling in small letters, several words apart by one space.
    pub(crate) forms: &'static [&'static str],
}

/// The words of the built-in list that this key's questions and confirming sentences use, and
/// those that one must know to answer its questions, in the order of the alphabet.
///
/// **Guarantees**: no word twice; no word that the reader will neither meet nor need.
pub fn words_used(booklet: &Booklet) -> Vec<Entry> {
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
    words_in(about_leaves(booklet), texts)
}

/// Whether what a key says is about leaves: its table, or its questions.
pub(crate) fn about_leaves(booklet: &Booklet) -> bool {
    let questions = booklet.key.couplets.iter().map(|couplet| couplet.wording.first());
    spinney_voice::wording::about_leaves(booklet.matrix, questions)
}

/// Every word of the built-in list, in the order of the alphabet.
pub fn all() -> impl Iterator<Item = Entry> {
    WORDS.iter().map(|listed| listed.entry)
}

/// The words of the built-in list that some texts use, in the order of the alphabet.
///
/// Whole words only, in any of their spellings; of two words that overlap the longer counts,
/// so that "leaf stalk" explains the leaf stalk and neither leaf nor stalk. Words of which the
/// list knows only what they mean on a leaf are left out unless the texts are about leaves.
pub fn words_in<'t>(
    about_leaves: bool,
    texts: impl IntoIterator<Item = &'t str>,
) -> Vec<Entry> {
    let mut used = vec![false; WORDS.len()];
    for text in texts {
        let words: Vec<String> = text
            .split(|c: char| !c.is_alphanumeric() && c != '\'')
            .filter(|word| !word.is_empty())
            .map(str::to_lowercase)
            .collect();
        let mut at = 0;
        while at < words.len() {
            let (ix, length) = longest_at(&words[at..]).unzip();
            if let Some(ix) = ix {
                used[ix] = true;
            }
            at += length.unwrap_or(1);
        }
    }
    let listed = WORDS
        .iter()
        .zip(used)
        .filter(|(listed, used)| *used && (about_leaves || !listed.leaves));
    listed.map(|(listed, _)| listed.entry).collect()
}

/// The listed word that the text begins with, and how many words of the text it takes.
fn longest_at(words: &[String]) -> Option<(usize, usize)> {
    let forms = WORDS
        .iter()
        .enumerate()
        .flat_map(|(ix, listed)| listed.forms.iter().map(move |form| (ix, *form)));
    let length = |form: &str| {
        let mut there = words.iter();
        let fits = form.split(' ').all(|part| there.next().is_some_and(|word| word == part));
        fits.then(|| words.len() - there.len())
    };
    forms.filter_map(|(ix, form)| Some((ix, length(form)?))).max_by_key(|&(_, length)| length)
}

#[cfg(test)]
mod tests;
