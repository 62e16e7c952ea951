//! Whether a heap has any key at all that keeps the early wishes; and which wishes of that sort
//! make sense at all.
//!
//! From a heap with limits to yes or no: some question whose two heaps both have such a key, or
//! none is needed any more. Costs play no part. How many steps a path may have in all, and which
//! words may be used, is not looked at here.

use rustc_hash::FxHashMap;
use spinney_model::{CharacterIx, Early, Governor, Scale, StateIx, TaxonIx, Value};

use crate::heap::{Asking, Heap};
use crate::state_space::{Question, StateSpace};

/// What is known of heaps so far.
#[derive(Default)]
pub(crate) struct Possible {
    memo: FxHashMap<Heap, bool>,
    /// Whether some heap was taken for impossible because there were too many to look at.
    pub(crate) cut_short: bool,
}

/// Heaps that are looked at before the rest is taken for impossible.
const MOST: usize = 200_000;

impl Possible {
    /// Whether the early wishes can still be kept from here.
    pub(crate) fn heap(&mut self, space: &StateSpace, heap: &Heap) -> bool {
        let layout = &space.layout;
        if layout.size(heap) < 2 || !layout.early_open(heap) {
            return true;
        }
        if let Some(known) = self.memo.get(heap) {
            return *known;
        }
        if self.memo.len() >= MOST {
            self.cut_short = true;
            return false;
        }
        let out_of_steps = layout.out_of_steps(heap);
        let mut end = true;
        let mut possible = false;
        let no_touch = space.bars_touch(heap);
        let first = self.first_of_order(space, heap, no_touch);
        for question in &space.questions[..space.candidates] {
            let Asking::Parts(sides) = layout.ask(heap, question) else { continue };
            if !sides.parts_a_pair {
                continue;
            }
            end = false;
            if out_of_steps {
                break;
            }
            let wished = first.is_none_or(|first| question.ask.character == first);
            if !wished || !question.usable || no_touch && space.by_touch(question) {
                continue;
            }
            let (yes, no) = layout.take_sides(heap, question, &sides);
            if self.heap(space, &yes) && self.heap(space, &no) {
                possible = true;
                break;
            }
        }
        let possible = possible || end;
        self.memo.insert(heap.clone(), possible);
        possible
    }

    /// The character that must be asked about here because of the order that was wished.
    fn first_of_order(
        &self,
        space: &StateSpace,
        heap: &Heap,
        no_touch: bool,
    ) -> Option<spinney_model::CharacterIx> {
        let barred = |at: &CharacterIx| no_touch && space.matrix.character(*at).by_touch;
        space.order.iter().copied().filter(|at| !barred(at)).find(|first| {
            let mut of_first = space.questions[..space.candidates]
                .iter()
                .filter(|question| question.ask.character == *first);
            of_first.any(|question| {
                matches!(space.layout.ask(heap, question),
                    Asking::Parts(sides) if sides.parts_a_pair)
            })
        })
    }
}

impl StateSpace {
    /// The kinds that some question can part from the kind of an early wish: those that a
    /// character parts from it (`docs/KEY.md` 17). Of others no question can say which is which.
    pub(crate) fn rivals(&self, early: Early) -> Vec<TaxonIx> {
        let (kind, others): (TaxonIx, Vec<TaxonIx>) = match early {
            Early::Part(one, other) => (one, vec![other]),
            Early::Leave(kind) => {
                (kind, self.matrix.taxon_indices().filter(|other| *other != kind).collect())
            }
        };
        let root = self.root();
        let parts = |other: &TaxonIx| {
            self.questions[..self.candidates].iter().any(|question| {
                self.apart(&root, question, kind, *other)
                    && self.governors_can_be_settled(question, kind, *other)
            })
        };
        others.into_iter().filter(parts).collect()
    }

    /// Whether a question sends one of two kinds wholly to yes and the other wholly to no, once
    /// it can be put to both.
    fn apart(&self, root: &Heap, question: &Question, one: TaxonIx, other: TaxonIx) -> bool {
        let answers = [one, other].map(|kind| {
            if question.never.has(kind.0) {
                return None;
            }
            let varying = question.varying.iter().find(|varying| varying.kind == kind.0);
            let Some(varying) = varying else { return Some(question.yes.has(kind.0)) };
            let (yes, no) = self.layout.left(root, varying.slot).cut(varying.yes);
            (yes.is_empty() != no.is_empty()).then_some(no.is_empty())
        });
        matches!(answers, [Some(one), Some(other)] if one != other)
    }

    /// Whether questions about the governors of a character can take from two kinds what keeps
    /// it from being asked about. Where both vary in a governor, both go on together without it.
    fn governors_can_be_settled(
        &self,
        question: &Question,
        one: TaxonIx,
        other: TaxonIx,
    ) -> bool {
        let mut above = self.matrix.character(question.ask.character).governor.as_ref();
        while let Some(governor) = above {
            let settled = match [one, other].map(|kind| self.is_mixed(kind, governor)) {
                [false, false] => true,
                [true, true] => false,
                _ => self.worth_asking(governor.character),
            };
            if !settled {
                return false;
            }
            above = self.matrix.character(governor.character).governor.as_ref();
        }
        true
    }

    /// Whether a kind has right states of a governor and wrong ones.
    fn is_mixed(&self, kind: TaxonIx, governor: &Governor) -> bool {
        let right = |state: &StateIx| governor.states.contains(state);
        let column = &self.matrix.character(governor.character).scale;
        let states: Vec<StateIx> =
            match (&self.matrix.cell(kind, governor.character).value, column) {
                (Value::States(shares), _) => shares.iter().map(|(state, _)| *state).collect(),
                (Value::Unknown, Scale::Words { states }) => {
                    (0..states.len()).map(StateIx).collect()
                }
                _ => Vec::new(),
            };
        states.iter().any(right) && !states.iter().all(right)
    }

    /// Whether some question about a character has two kinds apart.
    fn worth_asking(&self, character: CharacterIx) -> bool {
        let root = self.root();
        let kinds = || self.matrix.taxon_indices();
        self.questions[..self.candidates]
            .iter()
            .filter(|question| question.ask.character == character)
            .any(|question| {
                kinds().any(|one| kinds().any(|other| self.apart(&root, question, one, other)))
            })
    }
}
