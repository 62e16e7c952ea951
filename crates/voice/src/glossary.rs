//! The word list: only the trade's words that a text uses, in plain words.
//!
//! From any text to the words in it that a nine-year-old may not know, each with its plain words
//! and, where there is one, the look-alike it is mistaken for, in the language of the reader. It
//! does not teach words that nobody says, and does not invent: a word that is not in the
//! built-in list goes unexplained (the second opinion says so).
//!
//! Source: the plain words are ours and common practice; where the leaf words draw a line
//! (what is blade, stalk, lobe, tooth, leaflet), they follow Ellis et al. 2009, *Manual of
//! Leaf Architecture*, from memory; `words` names the source of each. German words are those of German floras: those of the edge
//! were compared with Schmeil and Fitschen, *Flora von Deutschland*, the others are from memory.

mod words;

use std::collections::BTreeMap;
use std::sync::OnceLock;

use crate::{LANGUAGES, Tongue};
use words::WORDS;

/// One word of the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// Its name in English, by which drawings know it.
    pub id: &'static str,
    /// The word, as it stands at the head of its entry: `leaflet`. Of a text in another language
    /// the word as it was met, and then the reader's own: `leaflet (Blättchen)`.
    pub word: String,
    /// What it is, in words that a nine-year-old reads.
    pub plain: String,
    /// What it is taken for, and how to tell.
    pub not_to_be_confused: Option<String>,
    /// Who defines it so, or that it is common practice.
    pub source: &'static str,
}

/// The list in one language.
struct List {
    /// In the order of [`WORDS`].
    entries: Vec<Entry>,
    /// Every spelling in small letters, word by word, by its first word; with the place of its
    /// entry.
    forms: BTreeMap<String, Vec<(Vec<String>, usize)>>,
}

/// What may follow a German adjective.
const ENDINGS: [&str; 6] = ["", "e", "er", "es", "en", "em"];

impl List {
    fn of(t: Tongue) -> Self {
        let mut forms: BTreeMap<String, Vec<(Vec<String>, usize)>> = BTreeMap::new();
        let entries = WORDS.iter().enumerate().map(|(at, word)| {
            let name = format!("glossary-{}", word.id.replace(' ', "-"));
            let [spelt, plain, not] =
                ["forms", "plain", "not"].map(|of| format!("{name}-{of}"));
            for form in t.say(&spelt).split(", ") {
                let (form, endings) = match form.strip_suffix('*') {
                    Some(stem) => (stem, &ENDINGS[..]),
                    None => (form, &ENDINGS[..1]),
                };
                for ending in endings {
                    let form = format!("{form}{ending}");
                    let words: Vec<String> = form.split(' ').map(str::to_owned).collect();
                    forms.entry(words[0].clone()).or_default().push((words, at));
                }
            }
            Entry {
                id: word.id,
                word: t.say(&name),
                plain: t.say(&plain),
                not_to_be_confused: t.has(&not).then(|| t.say(&not)),
                source: word.source,
            }
        });
        Self { entries: entries.collect(), forms }
    }

    /// The listed word that a text begins with, and how many words of the text it takes.
    fn longest_at(&self, text: &[String]) -> Option<(usize, usize)> {
        let forms = self.forms.get(text.first()?)?.iter();
        let fitting = forms.filter(|(words, _)| text.starts_with(words));
        fitting.map(|(words, at)| (*at, words.len())).max_by_key(|(_, length)| *length)
    }

    /// The places of the words in a text.
    fn places(&self, text: &[String]) -> Vec<usize> {
        let (mut at, mut found) = (0, Vec::new());
        while at < text.len() {
            let (place, length) = self.longest_at(&text[at..]).unzip();
            found.extend(place);
            at += length.unwrap_or(1);
        }
        found
    }
}

fn list(t: Tongue) -> &'static List {
    static LISTS: [OnceLock<List>; LANGUAGES.len()] =
        [const { OnceLock::new() }; LANGUAGES.len()];
    LISTS[t.index()].get_or_init(|| List::of(t))
}

/// Every word of the built-in list, in the order of the alphabet.
pub fn all(t: Tongue) -> Vec<Entry> {
    let mut entries = list(t).entries.clone();
    entries.sort_by_key(|entry| in_order(&entry.word));
    entries
}

/// The word of the built-in list that has this name in English: `leaf stalk`.
pub fn entry(t: Tongue, id: &str) -> Option<Entry> {
    list(t).entries.iter().find(|entry| entry.id == id).cloned()
}

/// The word of the built-in list that a text is, all of it, in the language of the reader or in
/// English: `toothed`, `a pod`, and of a question that asks whether there is one, `Does it have a
/// shell?`.
pub fn whole(t: Tongue, text: &str) -> Option<&'static str> {
    let words = words_of(text);
    let is = |t: Tongue| {
        let list = list(t);
        let mut rest = &words[..];
        for before in ["glossary-asks-for", "glossary-articles"] {
            let known = t.say(before);
            let mut known = known.split(", ").map(words_of);
            if let Some(phrase) = known.find(|phrase| rest.starts_with(phrase)) {
                rest = &rest[phrase.len()..];
            }
        }
        let (at, length) = list.longest_at(rest)?;
        (length == rest.len()).then_some(list.entries[at].id)
    };
    is(t).or_else(|| is(Tongue::of_terminal()))
}

/// A text as words in small letters.
fn words_of(text: &str) -> Vec<String> {
    let words = text.split(|c: char| !c.is_alphanumeric() && c != '\'');
    words.filter(|word| !word.is_empty()).map(str::to_lowercase).collect()
}

/// The words of the built-in list that some texts use, in the order of the alphabet.
///
/// Whole words only, in any of their spellings; of two words that overlap the longer counts,
/// so that "leaf stalk" explains the leaf stalk and neither leaf nor stalk. Words of which the
/// list knows only what they mean on a leaf are left out unless the texts are about leaves.
/// Texts may be in the language of the reader or in English.
pub fn words_in<'t>(
    t: Tongue,
    about_leaves: bool,
    texts: impl IntoIterator<Item = &'t str>,
) -> Vec<Entry> {
    let (own, english) = (list(t), list(Tongue::of_terminal()));
    // The head of each entry that is used: the reader's own word goes before the English one.
    let mut used: BTreeMap<usize, String> = BTreeMap::new();
    for text in texts {
        let words = words_of(text);
        for at in own.places(&words) {
            used.insert(at, own.entries[at].word.clone());
        }
        for at in english.places(&words) {
            let (met, known) = (&english.entries[at].word, &own.entries[at].word);
            let both = if met == known { met.clone() } else { format!("{met} ({known})") };
            used.entry(at).or_insert(both);
        }
    }
    let fits = |at: &usize| about_leaves || !WORDS[*at].leaves;
    let used = used.into_iter().filter(|(at, _)| fits(at));
    let mut found: Vec<Entry> =
        used.map(|(at, word)| Entry { word, ..own.entries[at].clone() }).collect();
    found.sort_by_key(|entry| in_order(&entry.word));
    found
}

/// A word as its place in the alphabet is looked up: as if it had no marks and no capitals.
fn in_order(word: &str) -> String {
    let plain = |letter: char| match letter {
        'ä' => "a".to_owned(),
        'ö' => "o".to_owned(),
        'ü' => "u".to_owned(),
        'ß' => "ss".to_owned(),
        other => other.to_string(),
    };
    word.to_lowercase().chars().map(plain).collect()
}

#[cfg(test)]
mod tests;
