//! Kinds that come out of a key only because nobody knows better.
//!
//! From the ways of the kinds, as the second opinion walked them, to the questions on each way
//! that are open for the kind, since nobody has answered them or people do not agree: there it
//! goes both ways (`docs/KEY.md`, section 1), so that what comes out is no more than possible.
//! Which of the two it is, a screen says (`pages/key/missing.rs`).

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Answer, Ask, Key, Matrix, TaxonIx, Value, Walk};

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
