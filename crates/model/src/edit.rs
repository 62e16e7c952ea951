//! An edit: one thing that a person did to a collection, and the entries of its journal.
//!
//! Kinds, characters, single specimens and keys are named by numbers that are given once and never again, so that
//! a new name changes everywhere and an old edit still means what it meant. What a person typed
//! is kept as typed; what it means is worked out each time the collection is opened.

mod field;
mod place;
mod specimen;

use crate::KeptDrawing;

pub use field::{AboutField, CharacterField, KindField, SpecimenField, WishField};
pub use place::{AskOf, AskedOf, CharacterId, Fork, KeyId, KindId, Side, SpecimenId};
pub use specimen::{Judged, SpecimenEdit};

/// One line of the journal: what was done in one go, and is undone in one go.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// When it was done, in milliseconds since 1 January 1970 UTC.
    pub at: i64,
    /// What was done.
    pub done: Done,
}

/// What a line of the journal does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Done {
    /// Changes, in this order.
    Edits(Vec<Edit>),
    /// The last line that still holds does not hold any more.
    Undo,
    /// The line that was undone last holds again.
    Redo,
    /// Of the lines that hold, followed by those that were undone and can come back, the first
    /// so many hold: undo or redo to a place in the list of what was done.
    HoldFirst(u64),
    /// The collection as it stands gets a name: `tried with class 4, 12 October`.
    Version(String),
    /// The name of a state is given up; the number counts all states that were ever named, from
    /// 0. What was done stays as it is.
    Unname(u64),
}

/// One change, by what it is about. An empty text takes something back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Edit {
    /// A kind.
    Kind(KindId, KindEdit),
    /// A character.
    Character(CharacterId, CharacterEdit),
    /// What a source says of a kind. The empty source is the table itself, which decides.
    Cell {
        /// The kind.
        kind: KindId,
        /// The character.
        character: CharacterId,
        /// Who says it: `group Blue`; empty: decided.
        source: String,
        /// As typed: `lobed or entire`, `30-60`, `?`, `n/a`.
        text: String,
    },
    /// A single specimen, such as one leaf.
    Specimen(SpecimenId, SpecimenEdit),
    /// Title, place, season, part.
    Scene(AboutField, String),
    /// A key.
    Key(KeyId, KeyEdit),
    /// Changes nothing: says that the changes beside it go back to a state with this name.
    BackTo(String),
}

/// A change to a kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KindEdit {
    /// It joins the collection, by this name.
    Add(String),
    /// Something about it is written down.
    Describe(KindField, String),
    /// It leaves the collection.
    Remove,
    /// The other kind turns out to be this one: its cells and pictures go over where this one
    /// has none.
    Merge(KindId),
    /// A picture of it, by the SHA-256 of its bytes in hexadecimal digits.
    AddPicture(String),
    /// A picture is taken away from it.
    RemovePicture(String),
    /// This is its drawing from now on; None: what its table says is drawn again.
    Draw(Option<KeptDrawing>),
}

/// A change to a character.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CharacterEdit {
    /// Something new to look at, by this name.
    Add(String),
    /// Something about it is written down.
    Describe(CharacterField, String),
    /// It leaves the table, and its cells with it.
    Remove,
    /// A word for a state is another word from now on, in every cell.
    RenameState {
        /// The old word.
        from: String,
        /// The new word.
        to: String,
    },
}

/// A change to a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KeyEdit {
    /// It begins, by this name.
    Start(String),
    /// It gets another name.
    Rename(String),
    /// It is put away.
    Remove,
    /// What it is for.
    Wish(WishField, String),
    /// The kinds it is for, in the order in which they were chosen; None: all.
    ForKinds(Option<Vec<KindId>>),
    /// Characters that it must not ask about.
    Never(Vec<CharacterId>),
    /// At this place it asks this. What was sorted there and below is given up, unless the
    /// words stay and only what they mean changes.
    Ask {
        /// Where.
        at: Fork,
        /// The words.
        words: String,
        /// What it means in the table; None: nobody has said.
        ask: Option<AskOf>,
    },
    /// The words of a question, and nothing else.
    Reword {
        /// Where.
        at: Fork,
        /// The words.
        words: String,
    },
    /// A question and all below it is taken out.
    TakeOut(Fork),
    /// A kind is put on a side of a question by hand; None: it lies in the middle again.
    Sort {
        /// The place of the question.
        at: Fork,
        /// The kind.
        kind: KindId,
        /// Where it was put.
        side: Option<Side>,
    },
    /// Here a kind goes by a name of its group's own: `spiky one`; empty: by ours.
    Call {
        /// The kind.
        kind: KindId,
        /// The name, as the group wrote it.
        name: String,
    },
}
