//! A character: something to look at on every kind, and the states it can take.

use std::collections::{BTreeMap, BTreeSet};

use crate::{Quantity, TaxonIx, Unit, Written, WrittenIn};

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
    /// What its lengths are written in for people, where the column is; None: in the unit in
    /// which they are kept.
    pub written_in: Option<WrittenIn>,
    /// How to ask about it, with `{}` where the states or the threshold go:
    /// `Is the leaf edge {}?`. A character whose states are yes and no needs no `{}`.
    /// None: nobody gave a wording, and one is written from the name.
    pub question: Option<String>,
    /// The same in the second language of the sheets, with `{}` where the states or the number
    /// go: `Czy brzeg liścia jest {}?`. None: nobody gave one, and nobody makes one up.
    pub second_question: Option<String>,
    /// States in that language, each behind the state itself, as typed: `toothed`, `ząbkowany`.
    pub second_states: Vec<InSecond>,
    /// Where it can be seen; empty: nobody said.
    pub seen_on: BTreeSet<SeenOn>,
    /// When it can be seen; empty: nobody said.
    pub seasons: BTreeSet<Season>,
    /// How hard it is to see.
    pub difficulty: Difficulty,
    /// What one needs to see it.
    pub instrument: Instrument,
    /// Whether its states, which are words, stand in an order that must not be torn apart:
    /// `small`, `middling`, `large`.
    pub ordered: bool,
    /// The two lengths, as columns of the same table, of which it is the first over the second.
    pub ratio_of: Option<(CharacterIx, CharacterIx)>,
    /// The words one must have been taught to answer it; empty: nobody said.
    pub terms: BTreeSet<String>,
    /// How often people read it right, in per cent, where somebody counted or guessed.
    pub read_right: Option<u8>,
    /// The same for single kinds, where it differs.
    pub read_right_of: BTreeMap<TaxonIx, u8>,
    /// Whether answering means touching the thing.
    pub by_touch: bool,
    /// What must hold before this character is there at all.
    pub governor: Option<Governor>,
}

/// A text, and what it is in the second language of the sheets, both as a person typed them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InSecond {
    /// The text itself.
    pub text: String,
    /// The same in the second language; empty: nobody gave it yet.
    pub second: String,
}

impl Character {
    /// A character of which only the name and the scale are known.
    ///
    /// Lengths are taken to need a ruler, everything else to need eyes and fingers alone.
    pub fn named(name: impl Into<String>, scale: Scale) -> Self {
        let length = matches!(scale, Scale::Measure { unit: Unit::Millimetres, .. });
        let instrument = if length { Instrument::Ruler } else { Instrument::Eyes };
        Self {
            name: name.into(),
            scale,
            written_in: None,
            question: None,
            second_question: None,
            second_states: Vec::new(),
            seen_on: BTreeSet::new(),
            seasons: BTreeSet::new(),
            difficulty: Difficulty::Easy,
            instrument,
            ordered: false,
            ratio_of: None,
            terms: BTreeSet::new(),
            read_right: None,
            read_right_of: BTreeMap::new(),
            by_touch: false,
            governor: None,
        }
    }
}

impl Character {
    /// The unit in which its numbers are written; None: they have none.
    fn unit_written(&self) -> Option<WrittenIn> {
        let Scale::Measure { unit, .. } = self.scale else { return None };
        match unit {
            Unit::Millimetres => Some(self.written_in.unwrap_or(WrittenIn::Millimetres)),
            Unit::Degrees => Some(WrittenIn::Degrees),
            Unit::Grams => Some(self.written_in.unwrap_or(WrittenIn::Grams)),
            Unit::Ratio | Unit::Unstated => None,
        }
        .filter(|written| written.row().kept_as == unit)
    }

    /// The sign of the unit in which its numbers are written; empty: they have none.
    pub fn sign(&self) -> &'static str {
        self.unit_written().map_or("", WrittenIn::sign)
    }

    /// A number in the unit in which it is written, without its sign: `4` for 40 mm in a column
    /// of centimetres.
    pub fn number(&self, quantity: Quantity) -> String {
        quantity.written(self.one().thousandths())
    }

    /// A number as it is written in this column.
    pub fn written(&self, quantity: Quantity) -> Written {
        Written { quantity, written_in: self.unit_written() }
    }

    /// A number with its unit, as it stands in a sentence: `4 cm`, `40°`, `1 inch`, `2 inches`.
    pub fn amount(&self, quantity: Quantity) -> String {
        self.written(quantity).to_string()
    }

    /// One of the unit in which its numbers are written, as it is kept.
    pub fn one(&self) -> Quantity {
        let one = self.unit_written().map_or(1_000, |written| written.row().thousandths);
        Quantity::from_thousandths(one)
    }
}

/// The default safety gap in millimetres, degrees or grams.
///
/// Two heaps whose ranges are this far apart on both sides of a threshold, 10 mm in all, are
/// told apart by a child who is 10 mm out, which is the usual slip with a ruler that is laid
/// at its end instead of at its zero.
pub const USUAL_GAP: Quantity = Quantity::from_whole(5);

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

/// A season of the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Season {
    /// Buds, young leaves, flowers.
    Spring,
    /// Full-grown leaves.
    Summer,
    /// Fruits, fallen leaves.
    Autumn,
    /// Bare twigs.
    Winter,
}

impl Season {
    /// Every season, in the order above.
    pub const ALL: [Self; 4] = [Self::Spring, Self::Summer, Self::Autumn, Self::Winter];

    /// The word people type and read.
    pub fn word(self) -> &'static str {
        match self {
            Self::Spring => "spring",
            Self::Summer => "summer",
            Self::Autumn => "autumn",
            Self::Winter => "winter",
        }
    }
}

/// What one needs to see a character.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Instrument {
    /// Eyes and fingers.
    Eyes,
    /// A magnifying lens.
    Lens,
    /// A ruler.
    Ruler,
}

impl Instrument {
    /// Every instrument, in the order above.
    pub const ALL: [Self; 3] = [Self::Eyes, Self::Lens, Self::Ruler];

    /// The word people type and read.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Eyes => "eyes",
            Self::Lens => "lens",
            Self::Ruler => "ruler",
        }
    }
}
