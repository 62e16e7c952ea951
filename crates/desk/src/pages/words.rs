//! Words: only those that a key says, each with plain words, a drawing and its look-alike.
//!
//! From the questions of the chosen key, and the sentences that confirm its kinds, to the words
//! in them that a pupil may not know. What a word means the word list says (`voice::glossary`); a
//! word that the list lacks is named, not explained. It invents nothing.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::keys::Made;
use spinney_collection::laid::folded;
use spinney_model::{Destination, Wording};
use spinney_press::lines;
use spinney_voice::glossary::{self, Entry};
use spinney_voice::{Tongue, wording};

use crate::asked::{Asked, Route, Shown, get};
use crate::desk::Desk;
use crate::pages::frame::{self, Parts, Screen};

pub(crate) const ROUTES: &[Route] = &[get("/words", show)];

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let key = frame::key_asked(desk, asked);
    let made = key.and_then(|key| desk.made(t, key));
    let said = made.as_ref().map(|made| Said::of(t, made));
    let collection = &desk.history.now;
    let work = html! {
        h1 { (t.say("nav-words")) }
        (frame::key_picker(t, collection, key, "/words"))
        @match &said {
            None => {
                p.empty { (t.say("words-no-key")) }
                p { a.main href="/key" { (t.say("nav-key")) } }
            }
            Some(said) => {
                @let words = said.words(t);
                @if words.is_empty() { p.empty { (t.say("words-none")) } }
                @else { p { (t.count("words-count", words.len())) } }
                div.word-list { @for word in &words { (one(t, said, word)) } }
                (unexplained(t, said, &words))
            }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Words, t.say("nav-words"), work))
}

/// A text with the listed words in it.
struct Text {
    /// Number of the question, or name of the kind.
    of: String,
    text: String,
    words: Vec<Entry>,
}

impl Text {
    fn new(t: Tongue, of: String, text: String, leaves: bool) -> Self {
        let words = glossary::words_in(t, leaves, [text.as_str()]);
        Self { of, text, words }
    }

    fn says(&self, word: &Entry) -> bool {
        self.words.iter().any(|known| known.id == word.id)
    }
}

/// Everything that a key says to pupils.
struct Said {
    questions: Vec<Text>,
    /// The sentences that confirm the kinds that come out.
    confirming: Vec<Text>,
    /// Words to know that the characters asked about name.
    terms: BTreeSet<String>,
    /// Whether its table is about leaves.
    leaves: bool,
}

impl Said {
    fn of(t: Tongue, made: &Made) -> Self {
        let matrix = &made.layer.matrix;
        let leaves = about_leaves(made);
        let mut said = Self {
            questions: Vec::new(),
            confirming: Vec::new(),
            terms: BTreeSet::new(),
            leaves,
        };
        let mut named = BTreeSet::new();
        for couplet in &made.key.couplets {
            let words = match &couplet.wording {
                Wording::Question(text) => text.clone(),
                Wording::Leads { yes, no } => format!("{yes} / {no}"),
            };
            said.questions.push(Text::new(t, couplet.number.to_string(), words, leaves));
            if let Some(ask) = &couplet.ask {
                let asked = matrix.characters().get(ask.character.0);
                said.terms.extend(asked.into_iter().flat_map(|c| c.terms.iter().cloned()));
            }
            for to in [&couplet.yes, &couplet.no] {
                let Destination::End(end) = to else { continue };
                named.extend(end.taxa.iter().copied());
            }
        }
        for taxon in named {
            let taxon = matrix.taxon(taxon);
            if let Some(sentence) = &taxon.confirming {
                let sentence = Text::new(t, taxon.name.clone(), sentence.clone(), leaves);
                said.confirming.push(sentence);
            }
        }
        said
    }

    fn words(&self, t: Tongue) -> Vec<Entry> {
        let texts = self.questions.iter().chain(&self.confirming).map(|text| &text.text);
        glossary::words_in(t, self.leaves, texts.chain(&self.terms).map(String::as_str))
    }
}

/// A word: what it is, how it looks beside what it is taken for, and where it is said.
fn one(t: Tongue, said: &Said, word: &Entry) -> Markup {
    let questions: Vec<_> = said.questions.iter().filter(|text| text.says(word)).collect();
    let confirming: Vec<_> = said.confirming.iter().filter(|text| text.says(word)).collect();
    let id = format!("word-{}", word.id.replace(' ', "-"));
    html! {
        section.word-slip aria-labelledby=(id) {
            h2 id=(id) lang=(t.tag()) { (word.word) }
            @if let Some(drawing) = drawn(t, word.id, said.leaves) { (drawing) }
            p.plain-words lang=(t.tag()) { (word.plain) }
            @if let Some(other) = &word.not_to_be_confused {
                p.look-alike { strong { (t.say("words-look-alike")) } " " (other) }
            }
            @if !questions.is_empty() || !confirming.is_empty() {
                ul.said-in {
                    @for said in questions {
                        li dir="auto" { (t.with("words-question", &[("number", &said.of), ("text", &said.text)])) }
                    }
                    @for said in confirming {
                        li dir="auto" { (t.with("words-confirming", &[("kind", &said.of), ("text", &said.text)])) }
                    }
                }
            }
        }
    }
}

/// The drawings of a word, its own first, beside what it is taken for; None: nobody has drawn
/// it, or it is said of other things than leaves here.
pub(crate) fn drawn(t: Tongue, word: &str, about_leaves: bool) -> Option<Markup> {
    spinney_draw::of_word(word, about_leaves).map(|word| lines::figures(t, &word))
}

/// Whether a key is about leaves, so that "tip" and "smooth" are said of them.
pub(crate) fn about_leaves(made: &Made) -> bool {
    let questions = made.key.couplets.iter().map(|couplet| couplet.wording.first());
    wording::about_leaves(&made.layer.matrix, questions)
}

/// Words to know that nobody has explained.
fn unexplained(t: Tongue, said: &Said, words: &[Entry]) -> Markup {
    let known = |term: &&String| {
        let term = folded(term);
        words.iter().any(|word| folded(&word.word) == term)
            || !glossary::words_in(t, said.leaves, [term.as_str()]).is_empty()
    };
    let unknown: Vec<_> = said.terms.iter().filter(|term| !known(term)).collect();
    html! {
        @if !unknown.is_empty() {
            section.unexplained {
                h2 { (t.say("words-unexplained")) }
                p { (t.say("words-unexplained-remedy")) }
                ul { @for term in unknown { li dir="auto" { (term) } } }
            }
        }
    }
}

#[cfg(test)]
mod tests;
