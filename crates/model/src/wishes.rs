//! What a person asks of a key before it is built.

use std::collections::BTreeSet;

use crate::{Ask, CharacterIx, Season, SeenOn, TaxonIx};

/// What a person asks of a key before it is built (`docs/KEY.md` 10 and 13).
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Wishes {
    /// Questions to keep: the first of them is asked first.
    pub kept: Vec<Kept>,
    /// The form in the hand: characters that are known not to be seen on it are not asked.
    pub hand: Option<SeenOn>,
    /// The season: characters that are known not to be seen in it are not asked.
    pub season: Option<Season>,
    /// Whether pupils may be sent to touch while a kind with a caution is still possible,
    /// although something else separates. Usually not.
    pub allow_touch: bool,
    /// Characters that must not be asked about.
    pub never: BTreeSet<CharacterIx>,
    /// Characters to ask about first, in this order, wherever they can be asked.
    pub order: Vec<CharacterIx>,
    /// What must be over as early as the table allows; the first comes first.
    pub early: Vec<Early>,
    /// What is best; the first comes first, ties by the next. Empty: the least effort.
    pub goals: Vec<Goal>,
}

/// A question that stays, in a list of them.
///
/// **Guarantees** of such a list: those after a question stand behind it, and each but the first
/// after one answer of one question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// The question.
    pub ask: Ask,
    /// The place in the list of what to keep after a yes.
    pub yes: Option<usize>,
    /// The place of what to keep after a no.
    pub no: Option<usize>,
}

impl Kept {
    /// Puts a question at the end of a list of those to keep, after an answer (true: yes) of one
    /// that stands there already; the place it has then.
    pub fn add(list: &mut Vec<Self>, ask: Ask, after: Option<(usize, bool)>) -> usize {
        let here = list.len();
        match after {
            Some((before, true)) => list[before].yes = Some(here),
            Some((before, false)) => list[before].no = Some(here),
            None => {}
        }
        list.push(Self { ask, yes: None, no: None });
        here
    }
}

/// What must be over within as few questions as the table allows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Early {
    /// No heap holds both of these kinds any more: two look-alikes.
    Part(TaxonIx, TaxonIx),
    /// This kind has come out: a hazard.
    Leave(TaxonIx),
}

/// What makes one key better than another.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Goal {
    /// The least effort over all finds.
    LeastEffort,
    /// The fewest questions on the longest path.
    ShortestLongestPath,
    /// The most finds that come out right, by how often each character is read right.
    MostRightEnds,
    /// The fewest new words on any one question, then the fewest that a find meets.
    EvenTeaching,
    /// The fewest different words in the whole key.
    FewestWords,
    /// The fewest questions that take a ruler.
    FewestRulers,
}

impl Goal {
    /// Every goal, in the order above.
    pub const ALL: [Self; 6] = [
        Self::LeastEffort,
        Self::ShortestLongestPath,
        Self::MostRightEnds,
        Self::EvenTeaching,
        Self::FewestWords,
        Self::FewestRulers,
    ];
}

/// One wish among several, to put a price on it.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Wish {
    /// The questions to keep.
    Kept,
    /// What is in the hand, and the season.
    Hand,
    /// A character that must not be asked about.
    Never(CharacterIx),
    /// That nobody is sent to touch what may hurt; or, where it is allowed, that it is.
    Touch,
    /// Characters to ask about first.
    Order,
    /// What must be over early.
    Early(Early),
    /// Goals other than the least effort.
    Goals,
}
