//! The matrix made ready: cells as masks, shares as whole numbers, questions as bit sets.
//!
//! Only cells that vary, or are unknown, need room in a node; a fixed cell is in the question's
//! own sets. From `Matrix` to [`StateSpace`]; nothing is decided here.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Ask, Asked, CharacterIx, Early, Goal, Matrix, Quantity, StateIx, TaxonIx};

use crate::cost::{self, CommonDenominator, Effort, Shares};
use crate::goals::{self, Goals, Sum};
use crate::heap::{Asking, Heap, Layout, Remains};
use crate::set::Set;
use crate::split::{self, Column, Side};

use held::{Held, hold, shares_of};

mod held;

/// The matrix made ready.
pub(crate) struct StateSpace {
    pub(crate) matrix: Matrix,
    pub(crate) layout: Layout,
    pub(crate) denominator: CommonDenominator,
    /// Candidate questions in the order of ties, then those that only a person asks.
    pub(crate) questions: Vec<Question>,
    /// How many of them are candidates.
    pub(crate) candidates: usize,
    /// The least that any question adds up to for one find.
    pub(crate) cheapest: Effort,
    /// All candidates, by the least that they cost any one kind.
    by_price: Vec<(Effort, u32)>,
    pub(crate) goals: Goals,
    /// Goals that do not fit into exact numbers together with those before them.
    pub(crate) too_large: Vec<Goal>,
    /// Characters of which nothing is asked.
    pub(crate) left_out: BTreeSet<CharacterIx>,
    /// Characters to ask about first, in this order.
    pub(crate) order: Vec<CharacterIx>,
    /// Whether any question that parts a pair may be asked anywhere, but for touch: nothing is
    /// wished of the order or the words, and words are not counted.
    pub(crate) any_question: bool,
    /// Kinds with a caution, where some questions are answered by touch and others are not.
    pub(crate) at_risk: Set,
    /// Whether pupils may be sent to touch these although something else separates.
    pub(crate) allow_touch: bool,
    /// Every word that some question needs, by its number.
    pub(crate) words: Vec<String>,
}

/// What lays the state space beside the matrix.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Plan {
    /// A person's own questions, which need not be candidates.
    pub(crate) kept: Vec<Ask>,
    /// Characters of which nothing is asked.
    pub(crate) left_out: BTreeSet<CharacterIx>,
    pub(crate) order: Vec<CharacterIx>,
    pub(crate) allow_touch: bool,
    pub(crate) early: Vec<Early>,
    pub(crate) goals: Vec<Goal>,
    /// Words that no question may need.
    pub(crate) without: BTreeSet<String>,
    /// Whether flows are rounded even where exact ones would fit.
    pub(crate) round: bool,
}

/// A question with its effect on every kind.
pub(crate) struct Question {
    pub(crate) ask: Ask,
    /// What it costs one find, new words apart, in packed units.
    pub(crate) cost: Effort,
    /// What it costs more, or less, for these kinds.
    pub(crate) singles: Vec<(usize, Effort)>,
    /// False: it would part a pair, but needs words that must not be used.
    pub(crate) usable: bool,
    /// The words that one must know.
    pub(crate) words: Set,
    /// What a new word costs.
    pub(crate) word_unit: Effort,
    /// Kinds with a fixed cell, wholly on the yes side.
    pub(crate) yes: Set,
    /// Kinds with a fixed cell, wholly on the no side.
    pub(crate) no: Set,
    /// Kinds that may take the yes side, and kinds that may take the no side.
    pub(crate) may: (Set, Set),
    /// Kinds to which it can never be put.
    pub(crate) never: Set,
    /// Kinds that may take either side.
    pub(crate) varying: Vec<Varying>,
    /// Kinds to which it can be put only once their governors are settled.
    pub(crate) governed: Vec<Governed>,
}

/// A kind that may take either side of a question.
pub(crate) struct Varying {
    pub(crate) kind: usize,
    pub(crate) slot: usize,
    /// What of the slot is on the yes side.
    pub(crate) yes: Remains,
}

/// A kind whose governors vary: all these slots must lie within these values.
pub(crate) struct Governed {
    pub(crate) kind: usize,
    pub(crate) within: Vec<(usize, u64)>,
}

/// Whether a character applies to a kind.
enum Applies {
    Always,
    Never,
    Within(Vec<(usize, u64)>),
}

impl StateSpace {
    /// Lays the matrix out.
    pub(crate) fn lay(matrix: &Matrix, plan: &Plan) -> Self {
        let kept = &plan.kept;
        let columns: Vec<Column> =
            matrix.character_indices().map(|at| split::column(matrix, at, kept)).collect();
        let mut layout = Layout::new(matrix.taxa().len());
        let mut shares: Vec<Shares<'_>> = Vec::new();
        let owned: Vec<Vec<Vec<spinney_model::Share>>> = matrix
            .taxon_indices()
            .map(|taxon| {
                columns
                    .iter()
                    .enumerate()
                    .map(|(at, column)| {
                        shares_of(matrix, taxon, CharacterIx(at), column).unwrap_or_default()
                    })
                    .collect()
            })
            .collect();
        let mut held: Vec<Vec<Held>> = Vec::new();
        for taxon in matrix.taxon_indices() {
            let mut row = Vec::new();
            let mut varying = Vec::new();
            for (at, column) in columns.iter().enumerate() {
                row.push(hold(matrix, taxon, CharacterIx(at), column, &mut layout));
                if matches!(row.last(), Some(Held::Several { .. } | Held::Intervals { .. })) {
                    varying.push(owned[taxon.0][at].as_slice());
                }
            }
            layout.close_kind();
            shares.push(Shares { weight: matrix.taxon(taxon).weight, cells: varying });
            held.push(row);
        }
        let longest: usize = columns.iter().map(|column| column.asks.len()).sum();
        let longest = longest + kept.len() + 1;
        let whole = cost::whole(&shares, longest, plan.round);
        let denominator = whole.denominator;
        layout.weigh(whole, &shares);
        let root = layout.whole();
        let all: Effort = layout.kinds(&root).map(|kind| layout.flow(&root, kind)).sum();
        let (goals, too_large) = Goals::pack(&plan.goals, all, longest as Effort);
        let mut space = Self {
            matrix: matrix.clone(),
            layout,
            denominator,
            questions: Vec::new(),
            candidates: 0,
            cheapest: 1,
            by_price: Vec::new(),
            goals,
            too_large,
            left_out: plan.left_out.clone(),
            order: plan.order.clone(),
            any_question: false,
            at_risk: Set::none(matrix.taxa().len()),
            allow_touch: plan.allow_touch,
            words: Vec::new(),
        };
        space.ask_everything(&columns, &held, plan);
        let counts_words = space.goals.order.contains(&Goal::EvenTeaching);
        let words = counts_words.then_some(space.words.len());
        space.any_question = !counts_words && space.order.is_empty() && plan.without.is_empty();
        let limited = space.goals.order.contains(&Goal::ShortestLongestPath);
        space.layout.make_room(limited, words);
        space.layout.make_room_for_early(&plan.early);
        space
    }

    fn ask_everything(&mut self, columns: &[Column], held: &[Vec<Held>], plan: &Plan) {
        let mut questions = Vec::new();
        for (at, column) in columns.iter().enumerate() {
            if plan.left_out.contains(&CharacterIx(at)) {
                continue;
            }
            let applies = self.applying(CharacterIx(at), held);
            for yes in &column.asks {
                let ask = split::ask(CharacterIx(at), yes.clone());
                questions.push(self.question(ask, column, held, &applies, true));
            }
        }
        if !plan.without.is_empty() {
            for question in &mut questions {
                let character = self.matrix.character(question.ask.character);
                let words = goals::words(character, &question.ask.yes);
                question.usable = words.is_disjoint(&plan.without);
            }
        }
        self.candidates = questions.len();
        // A person's own question may come nearer to a range than the gap.
        for ask in &plan.kept {
            let column = &columns[ask.character.0];
            let applies = self.applying(ask.character, held);
            questions.push(self.question(ask.clone(), column, held, &applies, false));
        }
        let kinds = self.matrix.taxa().len();
        let least = |question: &Question| {
            let singles = question.singles.iter().map(|(_, more)| *more);
            let usual = (question.singles.len() < kinds).then_some(0);
            question.cost + singles.chain(usual).min().unwrap_or(0)
        };
        let candidates = questions[..self.candidates].iter().zip(0..);
        self.by_price = candidates.map(|(question, at)| (least(question), at)).collect();
        self.by_price.sort_unstable();
        self.cheapest = self.by_price.first().map_or(1, |(price, _)| *price);
        self.number_words(&mut questions);
        self.questions = questions;
        self.at_risk = self.kinds_at_risk();
    }

    /// The least that any question by which some of these kinds may come out differently costs
    /// any one kind; nothing, where there is none.
    pub(crate) fn cheapest_of(&self, kinds: &Set) -> Effort {
        let splits = |at: u32| {
            let (yes, no) = &self.questions[at as usize].may;
            yes.meets(kinds) && no.meets(kinds)
        };
        self.by_price.iter().find(|(_, at)| splits(*at)).map_or(0, |(price, _)| *price)
    }

    fn kinds_at_risk(&self) -> Set {
        let mut at_risk = Set::none(self.matrix.taxa().len());
        let touch = |question: &Question| self.by_touch(question);
        let candidates = &self.questions[..self.candidates];
        if candidates.iter().any(touch) && !candidates.iter().all(touch) {
            let taxa = self.matrix.taxa().iter().enumerate();
            let cautioned = taxa.filter(|(_, taxon)| taxon.caution.is_some());
            cautioned.for_each(|(kind, _)| at_risk.add(kind));
        }
        at_risk
    }

    /// Whether the rule on touch says nothing of this table, or is taken back.
    pub(crate) fn touch_is_free(&self) -> bool {
        self.allow_touch || self.at_risk.is_empty()
    }

    /// Whether a question is answered by touch.
    pub(crate) fn by_touch(&self, question: &Question) -> bool {
        self.matrix.character(question.ask.character).by_touch
    }

    /// Whether nobody is to be sent to touch here if something else separates: a kind of the heap
    /// may hurt (`docs/KEY.md` 13).
    pub(crate) fn is_careful(&self, heap: &Heap) -> bool {
        !self.touch_is_free() && !self.layout.present_of(heap, &self.at_risk).is_empty()
    }

    /// Whether no question answered by touch may be asked of a heap: something else separates.
    pub(crate) fn bars_touch(&self, heap: &Heap) -> bool {
        self.is_careful(heap)
            && self.questions[..self.candidates].iter().any(|question| {
                !self.by_touch(question)
                    && matches!(self.layout.ask(heap, question),
                        Asking::Parts(sides) if sides.parts_a_pair)
            })
    }

    /// Of all that could be asked of a heap, what may be by the rule on touch.
    pub(crate) fn leave_touch<T>(
        &self,
        heap: &Heap,
        asks: &mut Vec<T>,
        question: impl Fn(&T) -> usize,
    ) {
        if self.is_careful(heap) {
            let touch = |ask: &T| self.by_touch(&self.questions[question(ask)]);
            if !asks.iter().all(touch) {
                asks.retain(|ask| !touch(ask));
            }
        }
    }

    /// Numbers the words of all questions.
    fn number_words(&mut self, questions: &mut [Question]) {
        let of = |question: &Question| {
            goals::words(self.matrix.character(question.ask.character), &question.ask.yes)
        };
        let all: BTreeSet<String> = questions.iter().flat_map(of).collect();
        let numbers: BTreeMap<&String, usize> =
            all.iter().enumerate().map(|(number, word)| (word, number)).collect();
        for question in questions.iter_mut() {
            let mut words = Set::none(all.len());
            for word in of(question) {
                words.add(numbers[&word]);
            }
            question.words = words;
        }
        self.words = all.into_iter().collect();
    }

    /// For every kind: whether the character applies.
    fn applying(&self, at: CharacterIx, held: &[Vec<Held>]) -> Vec<Applies> {
        held.iter().map(|row| self.applies(at, row)).collect()
    }

    fn applies(&self, at: CharacterIx, row: &[Held]) -> Applies {
        if matches!(row[at.0], Held::Nothing) {
            return Applies::Never;
        }
        let mut within = Vec::new();
        let mut above = self.matrix.character(at).governor.as_ref();
        while let Some(governor) = above {
            let right = |state: usize| governor.states.contains(&StateIx(state));
            match &row[governor.character.0] {
                Held::One(state) if right(*state) => {}
                Held::Several { slot, values } => {
                    let local = values.iter().enumerate();
                    let mask = local
                        .filter(|(_, state)| right(**state))
                        .fold(0, |mask, (place, _)| mask | 1 << place);
                    if mask == 0 {
                        return Applies::Never;
                    }
                    within.push((*slot, mask));
                }
                _ => return Applies::Never,
            }
            above = self.matrix.character(governor.character).governor.as_ref();
        }
        if within.is_empty() { Applies::Always } else { Applies::Within(within) }
    }

    fn question(
        &self,
        ask: Ask,
        column: &Column,
        held: &[Vec<Held>],
        applies: &[Applies],
        with_gap: bool,
    ) -> Question {
        let character = self.matrix.character(ask.character);
        let gap = if with_gap { split::gap(character) } else { Quantity::ZERO };
        let n = held.len();
        let (cost, singles) = self.goals.cost(character);
        let mut question = Question {
            cost,
            singles: singles.into_iter().map(|(taxon, more)| (taxon.0, more)).collect(),
            usable: true,
            words: Set::none(0),
            word_unit: self.goals.unit(Sum::NewWords),
            yes: Set::none(n),
            no: Set::none(n),
            may: (Set::none(n), Set::none(n)),
            never: Set::none(n),
            varying: Vec::new(),
            governed: Vec::new(),
            ask,
        };
        for (kind, (row, applies)) in held.iter().zip(applies).enumerate() {
            match applies {
                Applies::Never => {
                    question.never.add(kind);
                    continue;
                }
                Applies::Within(within) => {
                    question.governed.push(Governed { kind, within: within.clone() });
                }
                Applies::Always => {}
            }
            question.put(kind, &row[question.ask.character.0], column, gap);
        }
        question.may = (question.yes.clone(), question.no.clone());
        for varying in &question.varying {
            question.may.0.add(varying.kind);
            question.may.1.add(varying.kind);
        }
        question
    }

    /// The heap of all kinds.
    pub(crate) fn root(&self) -> Heap {
        self.layout.whole()
    }

    /// What flows through a heap.
    pub(crate) fn flow(&self, heap: &Heap) -> Effort {
        self.layout.kinds(heap).map(|kind| self.layout.flow(heap, kind)).sum()
    }

    /// The question that asks this, a person's own first. Candidates are in the order of their
    /// characters, and thresholds rise: of thousands it is found at once.
    pub(crate) fn asking(&self, ask: &Ask) -> Option<&Question> {
        let (candidates, own) = self.questions.split_at(self.candidates);
        if let Some(own) = own.iter().rfind(|question| question.ask == *ask) {
            return Some(own);
        }
        let from = candidates.partition_point(|other| other.ask.character < ask.character);
        let column = &candidates[from..];
        let column =
            &column[..column.partition_point(|other| other.ask.character == ask.character)];
        if let Asked::AtLeast(wanted) = &ask.yes {
            let below =
                |other: &Question| matches!(&other.ask.yes, Asked::AtLeast(at) if at < wanted);
            return column.get(column.partition_point(below)).filter(|other| other.ask == *ask);
        }
        column.iter().rfind(|other| other.ask == *ask)
    }

    /// All weights together.
    pub(crate) fn total_flow(&self) -> Effort {
        self.flow(&self.root())
    }

    /// The kinds of a heap, by their index.
    pub(crate) fn taxa<'a>(&'a self, heap: &'a Heap) -> impl Iterator<Item = TaxonIx> + 'a {
        self.layout.kinds(heap).map(TaxonIx)
    }
}

impl Question {
    /// Puts the question to one kind to which it applies.
    fn put(&mut self, kind: usize, held: &Held, column: &Column, gap: Quantity) {
        match held {
            Held::Nothing => self.never.add(kind),
            Held::One(value) => {
                let side =
                    if self.takes(*value, column) { &mut self.yes } else { &mut self.no };
                side.add(kind);
            }
            Held::Range { low, high } => {
                let Some((threshold, yes_above)) = split::threshold(&self.ask.yes) else {
                    self.never.add(kind);
                    return;
                };
                match (split::side(*low, *high, threshold, gap), yes_above) {
                    (Side::Yes, true) | (Side::No, false) => self.yes.add(kind),
                    (Side::No, true) | (Side::Yes, false) => self.no.add(kind),
                    (Side::Blocked, _) => self.never.add(kind),
                }
            }
            Held::Several { slot, values } => {
                let taken = values.iter().enumerate().filter(|(_, v)| self.takes(**v, column));
                let yes = Remains::Values(taken.fold(0, |mask, (place, _)| mask | 1 << place));
                self.varying.push(Varying { kind, slot: *slot, yes });
            }
            Held::Intervals { slot } => {
                let Some((threshold, yes_above)) = split::threshold(&self.ask.yes) else {
                    self.never.add(kind);
                    return;
                };
                let all = column.cuts.len() as u32 + 1;
                let first = column.cuts.partition_point(|at| *at < threshold) as u32 + 1;
                let first = first.min(all);
                let yes = if yes_above { (first, all) } else { (0, first) };
                self.varying.push(Varying {
                    kind,
                    slot: *slot,
                    yes: Remains::Intervals(yes.0, yes.1),
                });
            }
        }
    }

    /// Whether a value of the column (a state's or a count's number) is on the yes side.
    fn takes(&self, value: usize, column: &Column) -> bool {
        match &self.ask.yes {
            Asked::States(states) => states.contains(&StateIx(value)),
            asked => split::threshold(asked).is_some_and(|(threshold, yes_above)| {
                let count = Quantity::from_whole(column.counts[value].into());
                (count >= threshold) == yes_above
            }),
        }
    }
}
