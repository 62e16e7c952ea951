//! The words of the empty table: starter characters, and how a cell is filled in.
//!
//! Ordinary leaf characters as any schoolbook has them, worded for children. No kind and no
//! value stands here.

use spinney_model::CharacterField;

/// A character to start from.
pub(super) struct Starter {
    pub(super) name: &'static str,
    pub(super) question: &'static str,
    pub(super) values: &'static str,
    pub(super) states: &'static str,
    pub(super) unit: &'static str,
    pub(super) seen_on: &'static str,
    pub(super) difficulty: &'static str,
    pub(super) by_touch: &'static str,
    pub(super) applies_when: &'static str,
    pub(super) hint: &'static str,
}

impl Starter {
    /// What stands in a column of the sheet `characters`; None: that is for people to say.
    pub(super) fn text(&self, field: CharacterField) -> Option<&'static str> {
        match field {
            CharacterField::Name => Some(self.name),
            CharacterField::Question => Some(self.question),
            CharacterField::Values => Some(self.values),
            CharacterField::States => Some(self.states),
            CharacterField::Unit => Some(self.unit),
            CharacterField::SeenOn => Some(self.seen_on),
            CharacterField::Difficulty => Some(self.difficulty),
            CharacterField::ByTouch => Some(self.by_touch),
            CharacterField::AppliesWhen => Some(self.applies_when),
            CharacterField::Gap
            | CharacterField::Season
            | CharacterField::ReadRight
            | CharacterField::Instrument
            | CharacterField::InOrder
            | CharacterField::WordsToKnow
            | CharacterField::RatioOf => None,
        }
    }
}

const LEAF: &str = "twig, leaf, rubbing, photograph";
const ONE_PIECE: &str = "form of the leaf = in one piece";
const PICK: &str = "Pick one, or type two: this or that.";

/// A character in words that is easy to see on any leaf.
const fn words(name: &'static str, question: &'static str, states: &'static str) -> Starter {
    Starter {
        name,
        question,
        values: "words",
        states,
        unit: "",
        seen_on: LEAF,
        difficulty: "easy",
        by_touch: "no",
        applies_when: "",
        hint: PICK,
    }
}

/// A length that is measured on a leaf.
const fn length(name: &'static str, question: &'static str) -> Starter {
    Starter {
        values: "measure",
        unit: "mm",
        seen_on: "twig, leaf, rubbing",
        difficulty: "fair",
        hint: "Smallest to largest of several leaves, in millimetres: 30-60",
        ..words(name, question, "")
    }
}

/// The starter characters, the ones seen first standing first.
pub(super) const CHARACTERS: &[Starter] = &[
    words("form of the leaf", "Is the leaf {}?", "in one piece; like a feather; like a hand"),
    Starter {
        values: "counts",
        unit: "count",
        applies_when: "form of the leaf = like a feather or like a hand",
        hint: "Whole numbers: 5 or 7. A leaf in one piece has none: n/a",
        ..words("number of leaflets", "Does the leaf have {} leaflets?", "")
    },
    Starter { applies_when: ONE_PIECE, ..words("lobes", "Is the leaf {}?", "lobed; unlobed") },
    Starter {
        difficulty: "fair",
        applies_when: "lobes = lobed",
        hint: "Do the lobes spread from one place, like fingers, or are they in rows along the midrib?",
        ..words(
            "how it is lobed",
            "Do the lobes spread {}?",
            "from one place; along the midrib",
        )
    },
    words("edge", "Is the leaf edge {}?", "smooth; toothed; wavy; spiny"),
    Starter { applies_when: ONE_PIECE, ..length("blade length", "Is the leaf blade {} long?") },
    length("stalk length", "Is the leaf stalk {} long?"),
    Starter {
        seen_on: "tree, twig",
        ..words("place on the twig", "Do the leaves stand {}?", "in pairs; one by one")
    },
    Starter {
        applies_when: ONE_PIECE,
        ..words(
            "widest part",
            "Is the leaf widest {}?",
            "near the stalk; in the middle; near the tip",
        )
    },
    words("tip", "Is the leaf tip {}?", "pointed; rounded; notched"),
    Starter {
        seen_on: "tree, twig, leaf",
        difficulty: "fair",
        by_touch: "yes",
        hint: "Is it safe to touch? Write cautions on the sheet kinds.",
        ..words("feel", "Does the leaf feel {}?", "like paper; like thin card; furry; rough")
    },
];

/// Sentences and examples.
pub(super) const ADVICE: &[(&str, &str)] = &[
    ("How to fill this in", ""),
    ("One row a kind", "Type its name in the first column of the sheet “table”."),
    ("One column a character", "Keep, change or delete the ones that are there, as you like."),
    ("Look at real things", "Fill in what you see on several leaves, not what a book says."),
    ("", ""),
    ("In a cell you type", "It means"),
    ("toothed", "All that you saw are toothed."),
    ("lobed or entire", "You see both, equally often as far as you know."),
    ("lobed 8, entire 2", "You looked at ten: eight were lobed, two were not."),
    ("40 mm", "All that you measured have this length; 4 cm is the same."),
    ("30-60", "From the smallest to the largest that you measured."),
    ("5 or 7", "Whole numbers that you counted."),
    ("yes", "Yes or no, where the heading is a question of its own."),
    ("?", "Nobody knows yet. An empty cell means the same."),
    ("n/a", "There is no such thing: a leaf in one piece has no leaflets."),
    ("", ""),
    ("The sheet “characters”", "How to ask: write {} where the state or the length goes."),
    ("applies when", "Only ask this when … (for example: form = feather)"),
    ("season", "When it can be seen: spring, summer, autumn, winter. Empty: always."),
    ("instrument", "What you need to see it: eyes, lens or ruler. Lengths need a ruler."),
    ("in order", "yes, if its states go from one end to the other: small; middling; large."),
    ("read right", "How often, in per cent, and kinds that differ: 90; holly 60"),
    (
        "ratio of",
        "A new row “stalk to blade” with stalk length / blade length asks without a ruler \
         whether the stalk is longer than half the blade.",
    ),
    (
        "The sheet “kinds”",
        "Cautions matter: thorns, sap, berries. All the rest may stay empty.",
    ),
    ("The sheet “about”", "What is written at the head of the key."),
];
