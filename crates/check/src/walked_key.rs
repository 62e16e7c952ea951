//! Everything the families of findings look at: the key, the matrix, and the walks.

use std::collections::BTreeSet;

use spinney_model::{Answer, CharacterIx, Couplet, Matrix, Step, TaxonIx};

use crate::Settings;
use crate::names;
use crate::question::Question;
use crate::second::SecondPlace;
use crate::tree::Tree;
use crate::values::Values;
use crate::walks::{Named, Visit, Walked};

/// A key that has been walked.
pub(crate) struct WalkedKey<'a> {
    pub(crate) matrix: &'a Matrix,
    pub(crate) values: &'a Values<'a>,
    pub(crate) tree: &'a Tree<'a>,
    pub(crate) named: &'a Named,
    pub(crate) walked: &'a Walked,
    pub(crate) questions: &'a [Option<Question>],
    pub(crate) settings: &'a Settings,
    /// Characters that must not be asked about, by the wishes the key was made under.
    pub(crate) left_out: &'a BTreeSet<CharacterIx>,
    /// Ends at which a kind has a second place.
    pub(crate) second: Vec<SecondPlace>,
}

impl<'a> WalkedKey<'a> {
    /// The linked couplets that can be got to, with those before them whose name stands below.
    pub(crate) fn asked(
        &self,
    ) -> impl Iterator<Item = (usize, &'a Couplet, Question, Vec<&'a Visit>)> {
        let (tree, walked, questions) = (self.tree, self.walked, self.questions);
        tree.order.iter().filter_map(move |&index| {
            let visits = walked.visits[index].iter().filter(|visit| !visit.stray);
            Some((index, &tree.key.couplets[index], questions[index]?, visits.collect()))
        })
    }

    /// Whether a kind stands before a question that is not linked.
    pub(crate) fn meets_unlinked(&self, taxon: TaxonIx) -> bool {
        self.tree.order.iter().any(|&couplet| {
            self.questions[couplet].is_none()
                && self.walked.visits[couplet].iter().any(|visit| visit.taxon == taxon)
        })
    }

    /// Whether every kind was followed on all its ways: only then can it be said that nobody
    /// else gets somewhere.
    pub(crate) fn finished(&self) -> bool {
        self.walked.unfinished.is_empty()
    }

    /// What the character a question is about is called.
    pub(crate) fn about(&self, question: &Question) -> String {
        names::about(self.matrix, question.character)
    }

    /// An answer by the printed number of its couplet.
    pub(crate) fn step(&self, (couplet, answer): (usize, Answer)) -> Step {
        Step { couplet: self.tree.number(couplet), answer }
    }
}

/// The kinds among visits, each once, in the order of the matrix.
pub(crate) fn taxa<'v>(visits: impl IntoIterator<Item = &'v Visit>) -> Vec<TaxonIx> {
    let taxa: BTreeSet<TaxonIx> = visits.into_iter().map(|visit| visit.taxon).collect();
    taxa.into_iter().collect()
}
