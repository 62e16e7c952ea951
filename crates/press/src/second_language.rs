//! The second language of the sheets and the phone page, as far as it can be printed.
//!
//! From a booklet to the second text of each kind and question, with the tag of the language, and
//! to what is missing. On paper a text is printed only if the typeface has all of its letters; the
//! phone page has the letters of the phone. It translates nothing.

use std::collections::BTreeSet;

use spinney_model::{Couplet, End, TaxonIx};
use spinney_voice::{Tongue, second_language};

use crate::Booklet;
use crate::sheet::face::Faces;
use crate::sheet::legible::lacking;

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
        Some(Self { tag, name, names: names.collect(), questions: questions.collect() })
    }

    /// The same without what the typeface cannot print.
    pub(crate) fn on_paper(mut self, faces: &Faces) -> Self {
        for text in self.names.iter_mut().chain(&mut self.questions) {
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

    /// The second text of the question at this place of the key.
    pub(crate) fn question(&self, at: usize) -> Option<&str> {
        self.questions.get(at)?.as_deref()
    }
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
    let texts = second.names.iter().chain(&second.questions).flatten();
    let lacking: Vec<_> =
        texts.map(|text| lacking(&faces, text)).filter(|found| !found.is_empty()).collect();
    Some(Missing {
        names: without(&second.names).into_iter().map(TaxonIx).collect(),
        questions: without(&second.questions),
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
        self.names.is_empty() && self.questions.is_empty() && self.not_printed == 0
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
