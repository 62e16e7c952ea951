//! Kinds that come out of a key only because nobody knows better.
//!
//! From the ways of the kinds, as the second opinion walked them, to the questions on each way
//! that are open for the kind, since nobody has answered them or people do not agree: there it
//! goes both ways (`docs/KEY.md`, section 1), so that what comes out is no more than possible.
//! Which of the two it is, and where it can be said, [`Missing`] says.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Answer, Ask, CharacterId, Fork, Key, KindId, Matrix, TaxonIx, Value, Walk,
};

use crate::Agreed;
use crate::keys::KeyFrom;

/// What is open of a kind on all its ways.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Unsaid {
    /// The numbers of the questions.
    pub questions: BTreeSet<u32>,
    /// Whether it is lost on one of its ways.
    pub lost: bool,
}

/// Where kinds go both ways because nobody has looked, or people do not agree.
#[derive(Clone, Debug, Default)]
pub struct Guesses {
    /// By the last question of a way, its answer and the kind.
    at_ends: BTreeMap<(u32, Answer, TaxonIx), BTreeSet<u32>>,
    /// By kind.
    pub of_kinds: BTreeMap<TaxonIx, Unsaid>,
}

impl Guesses {
    /// What is open on the ways that a second opinion walked.
    pub fn of(matrix: &Matrix, key: &Key, walks: &[Walk]) -> Self {
        let asks: BTreeMap<u32, &Ask> =
            key.couplets.iter().filter_map(|c| Some((c.number, c.ask.as_ref()?))).collect();
        let unsaid = |number: &u32, taxon| {
            asks.get(number)
                .is_some_and(|ask| matrix.cell(taxon, ask.character).value == Value::Unknown)
        };
        let mut guesses = Self::default();
        for walk in walks {
            let numbers = walk.steps.iter().map(|step| step.couplet);
            let open: BTreeSet<u32> = numbers.filter(|n| unsaid(n, walk.taxon)).collect();
            let Some(last) = walk.steps.last().filter(|_| !open.is_empty()) else { continue };
            let of_kind = guesses.of_kinds.entry(walk.taxon).or_default();
            of_kind.questions.extend(&open);
            of_kind.lost |= !walk.arrived;
            let end = (last.couplet, last.answer, walk.taxon);
            guesses.at_ends.entry(end).or_default().extend(open);
        }
        guesses
    }

    /// The first question on a kind's way to an end that is open for it; None: it comes out
    /// there because somebody looked.
    pub fn at(&self, (number, answer): (u32, Answer), taxon: TaxonIx) -> Option<u32> {
        self.at_ends.get(&(number, answer, taxon))?.first().copied()
    }
}

/// What is missing of a kind at a question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Missing {
    /// Whether people said different things; otherwise nobody has said anything.
    pub differ: bool,
    /// Where a person says it.
    pub at: SaidAt,
}

/// Where a person says what is missing of a kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SaidAt {
    /// In this column of the table.
    Table(CharacterId),
    /// At this place of the key, where its card lies.
    Heap(Fork),
    /// On the kind's own page.
    Kind,
}

impl KeyFrom<'_> {
    /// What is missing of a kind at a question.
    pub fn missing(&self, number: u32, kind: KindId) -> Missing {
        let column = self.column(number);
        let agreed = column.map(|at| self.laid.said.agreed(kind, at));
        let differ = matches!(agreed, Some(Agreed::Contradicted));
        let at = match (column, self.lies_at(number, kind)) {
            (Some(at), card) if differ || card.is_none() => SaidAt::Table(at),
            (_, Some(at)) => SaidAt::Heap(at),
            (_, None) => SaidAt::Kind,
        };
        Missing { differ, at }
    }

    /// The character that a question asks the table for, or is linked to.
    fn column(&self, number: u32) -> Option<CharacterId> {
        let couplets = &self.made.key.couplets;
        let ask = couplets.iter().find(|couplet| couplet.number == number)?.ask.as_ref()?;
        if ask.character.0 < self.made.layer.sorted_from {
            return self.laid.characters.get(ask.character.0).copied().flatten();
        }
        let question = self.drawn().questions.get(self.made.places.get(&number)?)?;
        let linked = question.ask.as_ref().map(|of| of.character);
        linked.filter(|at| self.laid.character(*at).is_some())
    }

    /// The heap where the kind's card waits: at the question, if people drew it, or above, where
    /// it was left on the way there.
    fn lies_at(&self, number: u32, kind: KindId) -> Option<Fork> {
        let place = self.made.places.get(&number)?;
        let forks = &self.made.layer.forks;
        let asked = forks.get(place)?.ask.as_ref()?;
        let mut couplets = self.made.key.couplets.iter();
        let couplet = couplets.find(|couplet| couplet.number == number)?;
        if couplet.ask.as_ref() != Some(asked) {
            return None;
        }
        let above = (0..=place.0.len()).rev().map(|length| Fork(place.0[..length].to_vec()));
        above.into_iter().find(|at| {
            self.drawn().questions.contains_key(at)
                && forks.get(at).is_some_and(|heap| heap.kinds.contains(&kind))
        })
    }
}
