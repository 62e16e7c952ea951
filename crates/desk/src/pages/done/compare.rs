//! What changed in a key: questions that went, came, or ask in other words; kinds that went,
//! came, or have another name.
//!
//! From a key as made in two states of the collection to lists. Questions are the same where
//! they ask the table for the same; a number that moved is a question in other words. How many
//! questions a find takes is what the second opinion added up.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{AskOf, AskedOf, KeyId, KindId, Share};

use spinney_collection::keys::Made;

use spinney_voice::Tongue;

use crate::worked::State;
use spinney_collection::laid::Laid;

/// A key as made in one state.
#[derive(Default)]
pub(super) struct Side {
    questions: Vec<Question>,
    kinds: BTreeMap<KindId, String>,
    /// Questions a find takes on average, where that can be added up.
    pub(super) mean_questions: Option<Share>,
}

struct Question {
    words: String,
    /// None: not about the table as it stands, but sorted by hand.
    ask: Option<AskOf>,
}

/// What changed from the one to the other.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct Changes {
    pub(super) gone: Vec<String>,
    pub(super) new: Vec<String>,
    /// Asked at fewer places, or at more, than before.
    pub(super) fewer: Vec<String>,
    pub(super) more: Vec<String>,
    /// The question that it began with, and the one that it begins with now.
    pub(super) begins: Option<(String, String)>,
    /// The old words and the new.
    pub(super) reworded: Vec<(String, String)>,
    /// How many questions are asked as before.
    pub(super) kept: usize,
    pub(super) kinds_gone: Vec<String>,
    pub(super) kinds_new: Vec<String>,
    /// The old name and the new.
    pub(super) kinds_renamed: Vec<(String, String)>,
}

impl Side {
    /// A key in a state; empty where the state has no such key, or no kinds for it.
    pub(super) fn of(t: Tongue, state: State<'_>, key: KeyId) -> Self {
        let State { collection, .. } = state;
        let (made, laid) = (state.spoken(t, key), state.laid());
        let Some((made, laid)) = made.zip(laid) else { return Self::default() };
        let question = |couplet: &spinney_model::Couplet| Question {
            words: couplet.wording.first().to_owned(),
            ask: couplet.ask.as_ref().and_then(|ask| meaning(&made, &laid, ask)),
        };
        let kinds = made.layer.kinds.iter().map(|id| (*id, collection.name_in(key, *id)));
        Self {
            questions: made.key.couplets.iter().map(question).collect(),
            kinds: kinds.collect(),
            mean_questions: made.opinion.effort.map(|effort| effort.mean_questions),
        }
    }
}

fn meaning(made: &Made, laid: &Laid, ask: &spinney_model::Ask) -> Option<AskOf> {
    (ask.character.0 < made.layer.sorted_from).then(|| laid.ask_of(ask)).flatten()
}

/// What changed.
pub(super) fn changes(old: &Side, new: &Side) -> Changes {
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
    pub(super) fn none(&self) -> bool {
        *self == Self { kept: self.kept, ..Self::default() }
    }
}
