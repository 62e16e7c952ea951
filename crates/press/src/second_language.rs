//! The second language of the sheets and the phone page, as far as it can be printed.
//!
//! From a booklet to the second text of each kind and question, with the tag of the language, and
//! to what is missing. On paper a text is printed only if the typeface has all of its letters; the
//! phone page has the letters of the phone. It translates nothing.

use std::collections::BTreeSet;

use spinney_model::{Couplet, End, TaxonIx};
use spinney_voice::{Tongue, second_language};

use crate::sheet::face::Faces;
use crate::sheet::legible::lacking;
use crate::{Booklet, safety};

/// The second texts of a booklet.
pub(crate) struct Second {
    /// What the language is called.
    name: String,
    /// Its tag.
    pub(crate) tag: &'static str,
    /// By kind.
    names: Vec<Option<String>>,
    /// By the place of the question in the key.
    questions: Vec<Option<String>>,
    /// What has no column, in the order in which it is printed: the words, and their second text.
    texts: Vec<(String, Option<String>)>,
    /// Yes and no.
    answers: [Option<String>; 2],
}

impl Second {
    /// All texts that were typed; None: the booklet is in one language.
    pub(crate) fn of(booklet: &Booklet) -> Option<Self> {
        let name = second_language::name(booklet.matrix)?.to_owned();
        let tag = second_language::tag_of(&name);
        let named = |taxon| second_language::name_of(taxon, tag).map(str::to_owned);
        let names = booklet.matrix.taxa().iter().map(named);
        let places = 0..booklet.key.couplets.len();
        let questions =
            places.map(|at| second_language::question(booklet.matrix, booklet.key, at));
        let texts = texts(booklet).into_iter().map(|words| {
            let second = second_language::of_words(booklet.matrix, &words).map(str::to_owned);
            (words, second)
        });
        let answer = |yes| second_language::answer(booklet.matrix, booklet.tongue, yes);
        Some(Self {
            tag,
            name,
            names: names.collect(),
            questions: questions.collect(),
            texts: texts.collect(),
            answers: [true, false].map(answer),
        })
    }

    /// The same without what the typeface cannot print.
    pub(crate) fn on_paper(mut self, faces: &Faces) -> Self {
        let texts = self.texts.iter_mut().map(|(_, second)| second);
        let texts = texts.chain(&mut self.answers).chain(&mut self.names);
        for text in texts.chain(&mut self.questions) {
            if text.as_deref().is_some_and(|text| !lacking(faces, text).is_empty()) {
                *text = None;
            }
        }
        self
    }

    /// The second name of a kind.
    pub(crate) fn name(&self, taxon: TaxonIx) -> Option<&str> {
        self.names.get(taxon.0)?.as_deref()
    }

    /// The second names of all kinds of an end, `leszczyna / wiąz`; None: one of them has none.
    pub(crate) fn end(&self, end: &End) -> Option<String> {
        if end.taxa.is_empty() || !end.unrecognised.is_empty() {
            return None;
        }
        let names: Option<Vec<&str>> = end.taxa.iter().map(|taxon| self.name(*taxon)).collect();
        Some(names?.join(" / "))
    }

    /// The second text of words that have no column: the title, a caution.
    pub(crate) fn text(&self, words: &str) -> Option<&str> {
        self.texts.iter().find(|(text, _)| text == words.trim())?.1.as_deref()
    }

    /// What an answer is called.
    pub(crate) fn answer(&self, yes: bool) -> Option<&str> {
        self.answers[usize::from(!yes)].as_deref()
    }

    /// The second text of the question at this place of the key.
    pub(crate) fn question(&self, at: usize) -> Option<&str> {
        self.questions.get(at)?.as_deref()
    }
}

/// The words of a booklet that have no column and are printed in both languages: the title and
/// the cautions, each once.
fn texts(booklet: &Booklet) -> Vec<String> {
    let matrix = booklet.matrix;
    let title = matrix.scene().title.as_deref();
    let everybody = safety::for_everybody(matrix);
    let of_kinds = safety::of_kinds(matrix).map(|(_, caution)| caution);
    let mut texts: Vec<String> = Vec::new();
    for text in title.into_iter().chain(everybody).chain(of_kinds).map(str::trim) {
        if !text.is_empty() && !texts.iter().any(|known| known == text) {
            texts.push(text.to_owned());
        }
    }
    texts
}

/// What is missing of the second language, for whoever prints.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Missing {
    /// What the language is called.
    pub language: String,
    /// Kinds without a second name.
    pub names: Vec<TaxonIx>,
    /// Questions without a second text, by their places in the key.
    pub questions: Vec<usize>,
    /// Title, cautions, yes and no without a second text, as they are printed.
    pub texts: Vec<String>,
    /// Texts that the typeface cannot print.
    pub not_printed: usize,
    /// The letters that it lacks.
    pub letters: BTreeSet<char>,
}

/// What is missing of the second language; None: the booklet is in one language.
pub fn missing(booklet: &Booklet) -> Option<Missing> {
    let second = Second::of(booklet)?;
    let faces = Faces::new();
    let without = |texts: &[Option<String>]| -> Vec<usize> {
        (0..texts.len()).filter(|at| texts[*at].is_none()).collect()
    };
    let typed = second.texts.iter().map(|(_, second)| second);
    let texts = second.names.iter().chain(&second.questions).chain(typed);
    let texts = texts.chain(&second.answers).flatten();
    let lacking: Vec<_> =
        texts.map(|text| lacking(&faces, text)).filter(|found| !found.is_empty()).collect();
    Some(Missing {
        names: without(&second.names).into_iter().map(TaxonIx).collect(),
        questions: without(&second.questions),
        texts: {
            let answers = [(true, "answer-yes"), (false, "answer-no")].into_iter();
            let answers = answers.filter(|(yes, _)| second.answer(*yes).is_none());
            let answers = answers.map(|(_, message)| booklet.tongue.say(message));
            let texts = second.texts.iter().filter(|(_, second)| second.is_none());
            answers.chain(texts.map(|(words, _)| words.clone())).collect()
        },
        not_printed: lacking.len(),
        letters: lacking.into_iter().flatten().collect(),
        language: second.name,
    })
}

/// So many letters that cannot be printed are named.
const LETTERS: usize = 12;

impl Missing {
    /// Whether every name and every question is printed in both languages.
    pub fn nothing(&self) -> bool {
        let nothing = self.names.is_empty() && self.questions.is_empty();
        nothing && self.texts.is_empty() && self.not_printed == 0
    }

    /// What is missing, a sentence for each; one sentence where nothing is.
    pub fn told(&self, t: Tongue) -> Vec<String> {
        let language = &self.language;
        let count = |message, count: usize| {
            (count > 0).then(|| t.count_with(message, count, &[("language", language)]))
        };
        let letters: Vec<String> =
            self.letters.iter().take(LETTERS).map(char::to_string).collect();
        let letters = letters.join(" ");
        let told = [
            count("second-names-missing", self.names.len()),
            count("second-questions-missing", self.questions.len()),
            count("second-texts-missing", self.texts.len()),
            (self.not_printed > 0).then(|| {
                let texts: [(&str, &dyn std::fmt::Display); 2] =
                    [("language", language), ("letters", &letters)];
                t.count_with("second-not-printed", self.not_printed, &texts)
            }),
        ];
        let told: Vec<String> = told.into_iter().flatten().collect();
        match told.is_empty() {
            true => vec![t.with("second-whole", &[("language", language)])],
            false => told,
        }
    }
}

/// The place of a couplet in the key of a booklet.
pub(crate) fn place(booklet: &Booklet, couplet: &Couplet) -> Option<usize> {
    booklet.key.couplets.iter().position(|other| std::ptr::eq(other, couplet))
}
