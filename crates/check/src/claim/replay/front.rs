//! What keys are measured by, and the best measures below a node.
//!
//! Numbers that add up over finds and stand next to each other in the order of aims are
//! compared as one; longest paths and sets of words are not, since less of them here may be
//! worth nothing above. So a node keeps every measure that no other is as good as in all
//! parts, and only at the whole table the order decides.

use std::cmp::Ordering;
use std::collections::BTreeMap;

use spinney_model::{Early, Goal, Matrix, Share, Wishes};

use super::is_over;
use super::node::Node;
use crate::claim::{aims, reached};
use crate::question::Question;

/// One number of a measure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::claim) enum Part {
    /// Questions until an early wish is over.
    Until(Early),
    /// What is reached of an aim.
    Aim(Goal),
    /// New words over all finds: the second number of even teaching.
    AllNewWords,
}

impl Part {
    /// The number as it is claimed.
    pub(in crate::claim) fn share(self, number: i128, whole: i128) -> Share {
        match self.adds_up() {
            true => Share::new(number, whole),
            false => Share::from_integer(number),
        }
    }

    fn adds_up(self) -> bool {
        matches!(
            self,
            Self::AllNewWords
                | Self::Aim(Goal::LeastEffort | Goal::MostRightEnds | Goal::FewestRulers)
        )
    }
}

/// The numbers by which keys are compared, the first first.
pub(super) fn parts(wishes: &Wishes) -> Vec<Part> {
    let mut parts: Vec<Part> = wishes.early.iter().copied().map(Part::Until).collect();
    for goal in reached::goals(wishes) {
        parts.push(Part::Aim(goal));
        if goal == Goal::EvenTeaching {
            parts.push(Part::AllNewWords);
        }
    }
    parts
}

/// What keys are measured by, and what questions count.
pub(super) struct Measures<'a> {
    matrix: &'a Matrix,
    parts: &'a [Part],
    /// Numbers that are compared as one, by the places of the first and after the last.
    blocks: Vec<(usize, usize)>,
    words: BTreeMap<String, u32>,
}

/// One measure.
#[derive(Clone, Debug)]
pub(super) struct Measure {
    numbers: Vec<i128>,
    /// The different words of the key, a bit each, where they are counted.
    words: u128,
}

impl<'a> Measures<'a> {
    pub(super) fn of(matrix: &'a Matrix, parts: &'a [Part]) -> Self {
        let mut blocks: Vec<(usize, usize)> = Vec::new();
        for (place, part) in parts.iter().enumerate() {
            match blocks.last_mut() {
                Some((from, to)) if part.adds_up() && parts[*from].adds_up() => *to = place + 1,
                _ => blocks.push((place, place + 1)),
            }
        }
        Self { matrix, parts, blocks, words: BTreeMap::new() }
    }

    fn count(&self, goal: Goal) -> bool {
        self.parts.contains(&Part::Aim(goal))
    }

    /// What a question counts at a node, and the words that are met after it; None: there are
    /// more than 128 different words.
    pub(super) fn own(
        &mut self,
        node: &Node,
        question: &Question,
        met: u128,
    ) -> Option<(Measure, u128)> {
        let character = self.matrix.character(question.character);
        let taught = self.count(Goal::EvenTeaching);
        let mut words = 0;
        if taught || self.count(Goal::FewestWords) {
            for word in aims::words(character, question) {
                let next = self.words.len() as u32;
                words |= 1_u128.checked_shl(*self.words.entry(word).or_insert(next))?;
            }
        }
        let new = i128::from((words & !met).count_ones());
        let flow = node.flow();
        let number = |part: &Part| match part {
            Part::Until(early) => i128::from(!is_over(node, *early)),
            Part::AllNewWords => new * flow,
            Part::Aim(Goal::LeastEffort) => aims::steps(character) * flow,
            Part::Aim(Goal::ShortestLongestPath) => 1,
            Part::Aim(Goal::MostRightEnds) => {
                let kinds = node.kinds().iter();
                kinds.map(|kind| kind.flow * aims::misreading(character, kind.taxon)).sum()
            }
            Part::Aim(Goal::EvenTeaching) => new,
            Part::Aim(Goal::FewestWords) => 0,
            Part::Aim(Goal::FewestRulers) => flow * i128::from(aims::ruler(character)),
        };
        let numbers = self.parts.iter().map(number).collect();
        Some((Measure { numbers, words }, if taught { met | words } else { 0 }))
    }
}

impl Measure {
    /// Of an end nothing is asked.
    pub(super) fn end(measures: &Measures<'_>) -> Self {
        Self { numbers: vec![0; measures.parts.len()], words: 0 }
    }

    fn joined(own: &Self, yes: &Self, no: &Self, measures: &Measures<'_>) -> Self {
        let words = own.words | yes.words | no.words;
        let numbers = measures.parts.iter().enumerate().map(|(at, part)| {
            let [own, yes, no] = [own, yes, no].map(|measure| measure.numbers[at]);
            match part {
                Part::Until(_) | Part::Aim(Goal::ShortestLongestPath) => own + yes.max(no),
                Part::Aim(Goal::EvenTeaching) => own.max(yes).max(no),
                Part::Aim(Goal::FewestWords) => words.count_ones().into(),
                _ => own + yes + no,
            }
        });
        Self { numbers: numbers.collect(), words }
    }

    /// Whether this is as good as another in every part, whatever comes above.
    fn covers(&self, other: &Self, measures: &Measures<'_>) -> bool {
        measures.blocks.iter().all(|&(from, to)| {
            if measures.parts[from] == Part::Aim(Goal::FewestWords) {
                return self.words & !other.words == 0;
            }
            self.numbers[from..to].cmp(&other.numbers[from..to]) != Ordering::Greater
        })
    }
}

/// The measures below a node that no other covers; none: no key keeps the wishes.
#[derive(Clone, Debug, Default)]
pub(super) struct Front(Vec<Measure>);

/// More measures than this below one node are no small table.
const MOST_MEASURES: usize = 50;

impl Front {
    pub(super) fn add(&mut self, measures: &Measures<'_>, measure: Measure) {
        if self.0.iter().any(|other| other.covers(&measure, measures)) {
            return;
        }
        self.0.retain(|other| !measure.covers(other, measures));
        self.0.push(measure);
    }

    /// Adds every way to go on after a question; None: there are too many.
    pub(super) fn add_all(
        &mut self,
        measures: &Measures<'_>,
        own: &Measure,
        yes: &Self,
        no: &Self,
    ) -> Option<()> {
        for yes in &yes.0 {
            for no in &no.0 {
                self.add(measures, Measure::joined(own, yes, no, measures));
            }
        }
        (self.0.len() <= MOST_MEASURES).then_some(())
    }

    /// How many measures there are.
    pub(super) fn len(&self) -> usize {
        self.0.len()
    }

    /// The best numbers.
    pub(super) fn best(&self) -> Option<Vec<i128>> {
        self.0.iter().map(|measure| &measure.numbers).min().cloned()
    }
}
