//! What changed in a key: questions that went, came, or ask in other words; kinds that went,
//! came, or have another name.
//!
//! From a key as made in two states of the collection to lists. Questions are the same where
//! they ask the table for the same; a number that moved is a question in other words. How many
//! questions a find takes is what the second opinion added up.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{AskOf, AskedOf, Couplet, KindId, Share};

use crate::keys::KeyFrom;

/// A key as made in one state; empty where the state has no such key, or no kinds for it.
#[derive(Default)]
pub struct Side {
    questions: Vec<Question>,
    kinds: BTreeMap<KindId, String>,
    /// Questions a find takes on average, where that can be added up.
    pub mean_questions: Option<Share>,
}

struct Question {
    words: String,
    /// None: not about the table as it stands, but sorted by hand.
    ask: Option<AskOf>,
}

/// What changed from the one to the other.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Changes {
    /// Questions that are asked no more.
    pub gone: Vec<String>,
    /// Questions that were not asked before.
    pub new: Vec<String>,
    /// Asked at fewer places than before.
    pub fewer: Vec<String>,
    /// Asked at more places.
    pub more: Vec<String>,
    /// The question that it began with, and the one that it begins with now.
    pub begins: Option<(String, String)>,
    /// The old words and the new.
    pub reworded: Vec<(String, String)>,
    /// How many questions are asked as before.
    pub kept: usize,
    /// Kinds that it had.
    pub kinds_gone: Vec<String>,
    /// Kinds that it has now.
    pub kinds_new: Vec<String>,
    /// The old name and the new.
    pub kinds_renamed: Vec<(String, String)>,
}

impl Side {
    /// A key in a state of the collection.
    pub fn of(key: KeyFrom<'_>) -> Self {
        let KeyFrom { collection, made, id, .. } = key;
        let question = |couplet: &Couplet| Question {
            words: couplet.wording.first().to_owned(),
            ask: couplet.ask.as_ref().and_then(|ask| key.of_the_table(ask)),
        };
        let kinds = made.layer.kinds.iter().map(|kind| (*kind, collection.name_in(id, *kind)));
        Self {
            questions: made.key.couplets.iter().map(question).collect(),
            kinds: kinds.collect(),
            mean_questions: made.opinion.effort.as_ref().map(|effort| effort.mean_questions),
        }
    }
}

/// What changed.
pub fn changes(old: &Side, new: &Side) -> Changes {
    let mut changes = Changes::default();
    let mut open: Vec<&Question> = new.questions.iter().collect();
    let mut left: Vec<&Question> = old.questions.iter().collect();
    // The closest likeness first, so that a question asked twice finds its own twin.
    for alike in [exactly, in_other_words, moved] {
        left.retain(|question| {
            let Some(at) = open.iter().position(|other| alike(question, other)) else {
                return true;
            };
            let other = open.remove(at);
            match question.words == other.words {
                true => changes.kept += 1,
                false => changes.reworded.push((question.words.clone(), other.words.clone())),
            }
            false
        });
    }
    let words = |questions: Vec<&Question>| -> Vec<String> {
        let mut words: Vec<String> =
            questions.into_iter().map(|question| question.words.clone()).collect();
        let mut seen = BTreeSet::new();
        words.retain(|words| seen.insert(words.clone()));
        words
    };
    let asked = |side: &Side, question: &Question| {
        side.questions
            .iter()
            .any(|other| exactly(question, other) || in_other_words(question, other))
    };
    let (fewer, gone) = left.into_iter().partition(|question| asked(new, question));
    let (more, came) = open.into_iter().partition(|question| asked(old, question));
    (changes.gone, changes.new) = (words(gone), words(came));
    (changes.fewer, changes.more) = (words(fewer), words(more));
    let first = old.questions.first().zip(new.questions.first());
    changes.begins = first
        .filter(|(one, other)| {
            one.words != other.words && !in_other_words(one, other) && !moved(one, other)
        })
        .map(|(one, other)| (one.words.clone(), other.words.clone()));
    for (id, name) in &old.kinds {
        match new.kinds.get(id) {
            None => changes.kinds_gone.push(name.clone()),
            Some(now) if now != name => {
                changes.kinds_renamed.push((name.clone(), now.clone()));
            }
            Some(_) => {}
        }
    }
    let came = new.kinds.iter().filter(|(id, _)| !old.kinds.contains_key(id));
    changes.kinds_new = came.map(|(_, name)| name.clone()).collect();
    changes
}

fn exactly(one: &Question, other: &Question) -> bool {
    one.ask == other.ask && one.words == other.words
}

fn in_other_words(one: &Question, other: &Question) -> bool {
    one.ask.is_some() && one.ask == other.ask
}

/// The same count or measure, with another number.
fn moved(one: &Question, other: &Question) -> bool {
    let number = |of: &AskOf| !matches!(of.yes, AskedOf::States(_));
    match (&one.ask, &other.ask) {
        (Some(one), Some(other)) => {
            one.character == other.character && number(one) && number(other)
        }
        _ => false,
    }
}

impl Changes {
    /// Whether nothing changed.
    pub fn none(&self) -> bool {
        *self == Self { kept: self.kept, ..Self::default() }
    }
}
