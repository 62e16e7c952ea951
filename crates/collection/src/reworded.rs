//! A column is worded anew: which questions made from it follow, and which keep their words.
//!
//! From a collection and edits of its table to further edits that word kept questions as the
//! table now does. A question follows if its words were those that the table gave it; what a
//! person worded stays. Questions that nobody kept are worded from the table every time.

#![deny(clippy::wildcard_enum_match_arm)]

use spinney_model::{AskOf, CharacterEdit, CharacterId, Edit, Fork, KeyEdit, KeyId};
use spinney_voice::{Tongue, wording};

use crate::Collection;
use crate::keys::given_in;
use crate::laid::Laid;

/// The words that the table gives a question; None: it does not have what is asked.
fn from_the_table(t: Tongue, laid: &Laid, ask: &AskOf) -> Option<String> {
    laid.ask(ask).map(|ask| wording::question(t, &laid.matrix, &ask))
}

/// The edits that follow from others.
pub fn follow(before: &Collection, edits: &[Edit]) -> Vec<Edit> {
    let words = |edit: &Edit| match edit {
        Edit::Character(_, edit) => match edit {
            CharacterEdit::Describe(..) | CharacterEdit::RenameState { .. } => true,
            CharacterEdit::Add(_) | CharacterEdit::Remove => false,
        },
        Edit::Kind(..)
        | Edit::Cell { .. }
        | Edit::Specimen(..)
        | Edit::Scene(..)
        | Edit::Key(..)
        | Edit::BackTo(_) => false,
    };
    let linked = before.keys.values().flat_map(|key| key.questions.values());
    if !edits.iter().any(words) || !linked.into_iter().any(|question| question.ask.is_some()) {
        return Vec::new();
    }
    let mut after = before.clone();
    edits.iter().for_each(|edit| after.apply(edit));
    let Some((old, new)) = Laid::of(before).zip(Laid::of(&after)) else { return Vec::new() };
    let mut further = Vec::new();
    for (key, drawn) in &before.keys {
        for (at, question) in &drawn.questions {
            let now = after.keys.get(key).and_then(|drawn| drawn.questions.get(at));
            let Some((was, now)) = question.ask.as_ref().zip(now) else { continue };
            let was = old.ask(was);
            let gave = was.and_then(|ask| given_in(&old.matrix, &ask, &question.words));
            let Some(t) = gave else { continue };
            let gives = now.ask.as_ref().and_then(|ask| from_the_table(t, &new, ask));
            if let Some(words) = gives.filter(|words| *words != now.words) {
                further.push(Edit::Key(*key, KeyEdit::Reword { at: at.clone(), words }));
            }
        }
    }
    further
}

/// A kept question about a column in words that are not the table's.
pub struct OwnWords {
    /// In which key.
    pub key: KeyId,
    /// At which place.
    pub at: Fork,
    /// What it says.
    pub words: String,
    /// What the table would ask.
    pub of_the_table: String,
}

/// The kept questions whose words are a person's own; of one column, or of all. What the table
/// would ask is said in the language of whoever reads it.
pub fn own_words(
    t: Tongue,
    collection: &Collection,
    laid: &Laid,
    of: Option<CharacterId>,
) -> Vec<OwnWords> {
    let mut own = Vec::new();
    for (key, drawn) in &collection.keys {
        for (at, question) in &drawn.questions {
            let Some(ask) = &question.ask else { continue };
            if of.is_some_and(|of| of != ask.character) {
                continue;
            }
            let Some(asked) = laid.ask(ask) else { continue };
            if given_in(&laid.matrix, &asked, &question.words).is_none() {
                let of_the_table = wording::question(t, &laid.matrix, &asked);
                let (at, words) = (at.clone(), question.words.clone());
                own.push(OwnWords { key: *key, at, words, of_the_table });
            }
        }
    }
    own
}
