//! What edits name: kinds, characters, specimens and keys by number, places in a key by the way there.

use crate::Quantity;

/// The number of a kind in its collection, from 1, never given again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct KindId(pub u32);

/// The number of a character in its collection, from 1, never given again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct CharacterId(pub u32);

/// The number of a single specimen in its collection, from 1, never given again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct SpecimenId(pub u32);

/// The number of a key in its collection, from 1, never given again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct KeyId(pub u32);

/// A place in a key: the answers on the way there, `true` for yes. Empty: the first question.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Fork(pub Vec<bool>);

impl Fork {
    /// The place after one more answer.
    pub fn after(&self, yes: bool) -> Self {
        let mut way = self.0.clone();
        way.push(yes);
        Self(way)
    }
}

/// A side of a question.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Side {
    /// These say yes.
    Yes,
    /// These say no.
    No,
    /// It varies: some say yes and some say no.
    Both,
}

/// What a question means, in words that outlast a change of the table.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct AskOf {
    /// The character to look at.
    pub character: CharacterId,
    /// What a "yes" means.
    pub yes: AskedOf,
}

/// What a "yes" means.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum AskedOf {
    /// It has one of these states.
    States(Vec<String>),
    /// The count or measure is this much or more.
    AtLeast(Quantity),
    /// The count or measure is less than this.
    Below(Quantity),
}
