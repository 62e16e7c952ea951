//! A character: something to look at on every kind, and the states it can take.

use std::collections::BTreeSet;

use crate::{Quantity, Unit};

/// The place of a character in its matrix, counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct CharacterIx(pub usize);

/// The place of a state in its character, counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct StateIx(pub usize);

/// Something to look at, with the words that ask about it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Character {
    /// The column's heading: `edge`, `stalk length`.
    pub name: String,
    /// What its cells hold.
    pub scale: Scale,
    /// How to ask about it, with `{}` where the states or the threshold go:
    /// `Is the leaf edge {}?`. A character whose states are yes and no needs no `{}`.
    /// None: nobody gave a wording, and one is written from the name.
    pub question: Option<String>,
    /// Where it can be seen; empty: nobody said.
    pub seen_on: BTreeSet<SeenOn>,
    /// How hard it is to see.
    pub difficulty: Difficulty,
    /// How often people read it right, in per cent, where somebody counted or guessed.
    pub read_right: Option<u8>,
    /// Whether answering means touching the thing.
    pub by_touch: bool,
    /// What must hold before this character is there at all.
    pub governor: Option<Governor>,
}

impl Character {
    /// A character of which only the name and the scale are known.
    pub fn named(name: impl Into<String>, scale: Scale) -> Self {
        Self {
            name: name.into(),
            scale,
            question: None,
            seen_on: BTreeSet::new(),
            difficulty: Difficulty::Easy,
            read_right: None,
            by_touch: false,
            governor: None,
        }
    }
}

/// What the cells of a character hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Scale {
    /// Words, in the order in which they were declared or first met. At most 64.
    Words {
        /// The states' names, all different: `toothed`, `smooth`.
        states: Vec<String>,
    },
    /// Whole numbers without a unit.
    Counts,
    /// A measured range.
    Measure {
        /// What it is measured in.
        unit: Unit,
        /// The least distance, in that unit, of a threshold from every range it parts.
        gap: Quantity,
    },
}

/// Another character that must have one of some states before this one applies.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Governor {
    /// The governing character; its scale is words.
    pub character: CharacterIx,
    /// The states under which the governed character exists; not empty.
    pub states: BTreeSet<StateIx>,
}

/// How hard a character is to see. One easy question is one step of effort.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Difficulty {
    /// Seen at arm's length.
    Easy,
    /// Takes a close look.
    Fair,
    /// Takes practice or a lens.
    Hard,
}

/// The form of the thing in the hand on which a character can be seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum SeenOn {
    /// The whole tree or shrub.
    Tree,
    /// A twig with its leaves.
    Twig,
    /// One loose leaf (or seed, or shell).
    Leaf,
    /// A rubbing.
    Rubbing,
    /// A photograph.
    Photograph,
    /// A twig without leaves.
    WinterTwig,
    /// A tray with water.
    Tray,
}

impl SeenOn {
    /// Every form, in the order above.
    pub const ALL: [Self; 7] = [
        Self::Tree,
        Self::Twig,
        Self::Leaf,
        Self::Rubbing,
        Self::Photograph,
        Self::WinterTwig,
        Self::Tray,
    ];

    /// The word people type and read.
    pub fn word(self) -> &'static str {
        match self {
            Self::Tree => "tree",
            Self::Twig => "twig",
            Self::Leaf => "leaf",
            Self::Rubbing => "rubbing",
            Self::Photograph => "photograph",
            Self::WinterTwig => "winter twig",
            Self::Tray => "tray",
        }
    }
}
