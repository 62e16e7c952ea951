//! The matrix made ready: cells as masks, shares as whole numbers, questions as bit sets.
//!
//! Only cells that vary, or are unknown, need room in a node; a fixed cell is in the question's
//! own sets. From `Matrix` to [`Ground`]; nothing is decided here.

use spinney_model::{Ask, Asked, CharacterIx, Matrix, Quantity, StateIx, TaxonIx, Value};

use crate::cost::{self, Effort, Scale, Shares};
use crate::heap::{Heap, Layout, Remains};
use crate::set::Set;
use crate::split::{self, Column, Side};

/// The matrix made ready.
pub(crate) struct Ground {
    pub(crate) matrix: Matrix,
    pub(crate) layout: Layout,
    pub(crate) scale: Scale,
    /// Candidate questions in the order of ties, then those that only a person asks.
    pub(crate) questions: Vec<Question>,
    /// How many of them are candidates.
    pub(crate) candidates: usize,
    /// The least that any question costs, in steps.
    pub(crate) cheapest: Effort,
}

/// A question with its effect on every kind.
pub(crate) struct Question {
    pub(crate) ask: Ask,
    pub(crate) cost: Effort,
    /// Kinds with a fixed cell, wholly on the yes side.
    pub(crate) yes: Set,
    /// Kinds with a fixed cell, wholly on the no side.
    pub(crate) no: Set,
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

/// What a cell holds, as far as a search needs to know.
enum Held {
    Nothing,
    /// One value: its number in the column.
    One(usize),
    Range {
        low: Quantity,
        high: Quantity,
    },
    /// Several values, and the slot that keeps which remain. `values` as numbers in the column.
    Several {
        slot: usize,
        values: Vec<usize>,
    },
    /// An unknown measure: which of the column's intervals remain.
    Intervals {
        slot: usize,
    },
}

/// Whether a character applies to a kind.
enum Applies {
    Always,
    Never,
    Within(Vec<(usize, u64)>),
}

impl Ground {
    /// Lays the matrix out. `kept` are a person's own questions, which need not be candidates.
    pub(crate) fn lay(matrix: &Matrix, kept: &[Ask]) -> Self {
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
        let whole = cost::whole(&shares, longest + kept.len() + 1);
        let scale = whole.scale;
        layout.weigh(whole);
        let mut ground = Self {
            matrix: matrix.clone(),
            layout,
            scale,
            questions: Vec::new(),
            candidates: 0,
            cheapest: 1,
        };
        ground.ask_everything(&columns, &held, kept);
        ground
    }

    fn ask_everything(&mut self, columns: &[Column], held: &[Vec<Held>], kept: &[Ask]) {
        let mut questions = Vec::new();
        for (at, column) in columns.iter().enumerate() {
            let applies = self.applying(CharacterIx(at), held);
            for yes in &column.asks {
                let ask = split::ask(CharacterIx(at), yes.clone());
                questions.push(self.question(ask, column, held, &applies, true));
            }
        }
        self.candidates = questions.len();
        // A person's own question may come nearer to a range than the gap.
        for ask in kept {
            let column = &columns[ask.character.0];
            let applies = self.applying(ask.character, held);
            questions.push(self.question(ask.clone(), column, held, &applies, false));
        }
        let candidates = &questions[..self.candidates];
        self.cheapest = candidates.iter().map(|question| question.cost).min().unwrap_or(1);
        self.questions = questions;
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
        let mut question = Question {
            cost: cost::steps(character),
            yes: Set::none(n),
            no: Set::none(n),
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
        question
    }

    /// The heap of all kinds.
    pub(crate) fn root(&self) -> Heap {
        self.layout.whole()
    }

    /// All weights together.
    pub(crate) fn total_flow(&self) -> Effort {
        let root = self.root();
        self.layout.kinds(&root).map(|kind| self.layout.flow(&root, kind)).sum()
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

/// Makes room for a cell where it needs some.
fn hold(
    matrix: &Matrix,
    taxon: TaxonIx,
    at: CharacterIx,
    column: &Column,
    layout: &mut Layout,
) -> Held {
    if !split::can_apply(matrix, taxon, at) {
        return Held::Nothing;
    }
    let mut several = |values: Vec<usize>| match values.as_slice() {
        [] => Held::Nothing,
        [one] => Held::One(*one),
        _ => Held::Several { slot: layout.slot_of_values(values.len()), values },
    };
    match (&matrix.cell(taxon, at).value, &matrix.character(at).scale) {
        (Value::DoesNotApply, _) => Held::Nothing,
        (Value::States(shares), _) => several(shares.iter().map(|(s, _)| s.0).collect()),
        (Value::Counts(shares), _) => {
            several(shares.iter().map(|(count, _)| number_of(&column.counts, *count)).collect())
        }
        (Value::Range { low, high }, _) => Held::Range { low: *low, high: *high },
        (Value::Unknown, spinney_model::Scale::Words { states }) => {
            several((0..states.len()).collect())
        }
        (Value::Unknown, spinney_model::Scale::Counts) => {
            several((0..column.counts.len()).collect())
        }
        (Value::Unknown, spinney_model::Scale::Measure { .. }) => {
            if column.cuts.is_empty() {
                return Held::Nothing;
            }
            let intervals = column.cuts.len() as u32 + 1;
            Held::Intervals { slot: layout.slot_of_intervals(intervals) }
        }
    }
}

fn number_of(counts: &[u32], count: u32) -> usize {
    counts.binary_search(&count).expect("every count of a column stands in its list")
}

/// The shares of a cell with several values, in the order of `hold`.
fn shares_of(
    matrix: &Matrix,
    taxon: TaxonIx,
    at: CharacterIx,
    column: &Column,
) -> Option<Vec<spinney_model::Share>> {
    let equal = |n: usize| (n > 0).then(|| vec![spinney_model::Share::new(1, n as Effort); n]);
    match (&matrix.cell(taxon, at).value, &matrix.character(at).scale) {
        (Value::States(shares), _) => Some(shares.iter().map(|(_, share)| *share).collect()),
        (Value::Counts(shares), _) => Some(shares.iter().map(|(_, share)| *share).collect()),
        (Value::Unknown, spinney_model::Scale::Words { states }) => equal(states.len()),
        (Value::Unknown, spinney_model::Scale::Counts) => equal(column.counts.len()),
        (Value::Unknown, _) => equal(column.cuts.len() + 1),
        _ => None,
    }
}
