//! What an edit touches of what follows from a collection: the table, one key, or nothing.
//!
//! From lines that come to a collection to what has to be worked out of it again. Whoever keeps
//! what follows keeps what no line touches.

#![deny(clippy::wildcard_enum_match_arm)]

use spinney_model::{Done, Edit, Entry, KeyEdit, KeyId, WishField};

use crate::Collection;

/// What of the derived values has to be worked out again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Touched {
    /// All of it is as it was.
    Nothing,
    /// This key, and neither the table nor another key.
    Key(KeyId),
    /// The table, and so all of it.
    Everything,
}

impl Touched {
    /// What these lines touch, which come to this collection. More lines than one come when
    /// a collection is opened, or from another program: that is not looked at line by line.
    pub fn by(before: &Collection, entries: &[Entry]) -> Self {
        let [Entry { done, .. }] = entries else { return Self::Everything };
        match done {
            Done::Edits(edits) => {
                let edits = edits.iter().map(|edit| touched(before, edit));
                edits.fold(Self::Nothing, Self::and)
            }
            // Names of states are no part of the collection.
            Done::Version(_) | Done::Unname(_) => Self::Nothing,
            Done::Undo | Done::Redo | Done::HoldFirst(_) => Self::Everything,
        }
    }

    /// Whether a key is among it.
    pub fn touches(self, key: KeyId) -> bool {
        match self {
            Self::Nothing => false,
            Self::Key(id) => id == key,
            Self::Everything => true,
        }
    }

    fn and(self, other: Self) -> Self {
        match (self, other) {
            (Self::Nothing, touched) | (touched, Self::Nothing) => touched,
            (Self::Key(one), Self::Key(id)) if one == id => self,
            _ => Self::Everything,
        }
    }
}

fn touched(before: &Collection, edit: &Edit) -> Touched {
    match edit {
        Edit::Kind(..)
        | Edit::Character(..)
        | Edit::Cell { .. }
        | Edit::Specimen(..)
        | Edit::Scene(..) => Touched::Everything,
        Edit::Key(key, edit) => match edit {
            KeyEdit::Ask { ask: Some(_), .. } => Touched::Everything,
            KeyEdit::Ask { ask: None, .. }
            | KeyEdit::Reword { .. }
            | KeyEdit::TakeOut(_)
            | KeyEdit::Sort { .. }
            | KeyEdit::Rename(_)
            | KeyEdit::Remove
            // Who says something by sorting, and of which kinds.
            | KeyEdit::ForKinds(_)
            | KeyEdit::Wish(WishField::Group, _) => by_a_hand(before, *key),
            KeyEdit::Wish(
                WishField::Hand
                | WishField::Season
                | WishField::Touch
                | WishField::Finish
                | WishField::Tried,
                _,
            )
            | KeyEdit::Never(_)
            | KeyEdit::Start(_)
            | KeyEdit::Call { .. } => Touched::Key(*key),
        },
        Edit::BackTo(_) => Touched::Nothing,
    }
}

/// What hands say of the table, they say by questions that are linked to it.
fn by_a_hand(before: &Collection, key: KeyId) -> Touched {
    let questions = before.keys.get(&key).map(|key| key.questions.values());
    let linked = questions.into_iter().flatten().any(|question| question.ask.is_some());
    if linked { Touched::Everything } else { Touched::Key(key) }
}
