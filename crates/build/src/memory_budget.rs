//! How much the search may hold at once, in bytes that are counted alike on every machine.
//!
//! Counted are the table laid out, what is remembered of heaps, what was thought of ahead, and
//! the candidate questions of heaps under way. The process has a little more: a quarter of
//! what it may take is left for the table as it was read, for the second opinion and for words.

use crate::exact::{Known, Solver};
use spinney_model::Matrix;

use crate::candidates::Candidate;
use crate::heap::Heap;
use crate::set::Set;
use crate::split;
use crate::state_space::{Question, StateSpace};

/// Mebibytes that the program may take unless somebody says otherwise.
pub const USUAL_MEMORY: u64 = spinney_model::limits::SEARCH >> 20;

/// How many mebibytes a search of this table should be allowed, so that its questions fill at
/// most half of them. It is counted column by column before anything is laid out: a column of
/// measures alone can offer half a million thresholds.
pub fn memory_wanted(matrix: &Matrix) -> u64 {
    let kinds = matrix.taxa().len();
    let set = 8 * kinds.div_ceil(64);
    let each = (size_of::<Question>() + SETS * set) as u64;
    let offered = |at| split::column(matrix, at, &[]).asks.len() as u64;
    let questions: u64 = matrix.character_indices().map(offered).sum();
    let cells = (kinds * matrix.characters().len() * CELL) as u64;
    (2 * (questions * each + cells)) >> 20
}

/// Sets of kinds that a question holds: yes, no, never, words.
const SETS: usize = 4;

/// What one search may fill.
#[derive(Clone, Copy, Debug)]
pub(crate) struct MemoryBudget {
    /// What may be filled, in bytes.
    most: u64,
    /// What the state space takes.
    space: u64,
    /// The candidate questions of heaps under way.
    held: u64,
    /// Whether only the most promising questions of a heap are kept where all would fill too
    /// much.
    trims: bool,
}

/// A map that grows holds itself twice, and is half empty after that.
const GROWING: u64 = 3;

/// Candidate questions that every heap keeps at least, however little memory there is.
const FEWEST: usize = 8;

impl MemoryBudget {
    /// The usual budget, for a state space.
    pub(crate) fn on(space: &StateSpace) -> Self {
        Self { most: share(USUAL_MEMORY, 1), space: space.bytes(), held: 0, trims: false }
    }

    /// What looking ahead may fill with heaps, and with large heaps kept for later.
    pub(crate) fn ahead(&self) -> (u64, u64) {
        let free = self.most.saturating_sub(self.space);
        (free / 4, free / 6)
    }
}

/// Of so many mebibytes for the whole program, what one of several searches may fill.
fn share(mebibytes: u64, searches: u64) -> u64 {
    (mebibytes.saturating_mul(1 << 20) / 4 * 3) / searches.max(1)
}

impl Solver {
    /// Gives the search its part of what the program may take.
    pub(crate) fn make_room(&mut self, mebibytes: u64, searches: u64) {
        self.memory_budget.most = share(mebibytes, searches);
        self.memory_budget.trims = true;
    }

    /// Another state space is searched.
    pub(crate) fn make_room_for_the_space(&mut self) {
        self.memory_budget.space = self.space.bytes();
    }

    /// What everything that was found fills, in bytes.
    fn filled(&self) -> u64 {
        let entry = size_of::<(Heap, Known)>() as u64;
        let remembered = self.memo.len() as u64;
        let heaps = remembered * (GROWING * entry + self.space.layout.bytes() as u64);
        let large = self.large.as_ref().map_or(0, |large| large.bytes());
        self.memory_budget.space + heaps + large
    }

    /// Whether nothing more can be held, so that further steps lead nowhere.
    pub(crate) fn full(&self) -> bool {
        self.at_an_end || self.filled() >= self.memory_budget.most
    }

    /// How many candidate questions a heap may keep at once: they fill a quarter of what is free, so
    /// that all heaps on a path together cannot fill more than that.
    pub(crate) fn candidates_that_fit(&self) -> usize {
        if !self.memory_budget.trims {
            return usize::MAX;
        }
        let filled = self.filled() + self.memory_budget.held;
        let free = self.memory_budget.most.saturating_sub(filled) / 4;
        usize::try_from(free / self.candidate()).unwrap_or(usize::MAX).max(FEWEST)
    }

    fn candidate(&self) -> u64 {
        (size_of::<Candidate>() + 2 * self.space.layout.bytes()) as u64
    }

    /// Holds so many candidate questions while something is done.
    pub(crate) fn holding(&mut self, candidates: usize, work: impl FnOnce(&mut Self)) {
        let more = candidates as u64 * self.candidate();
        self.memory_budget.held += more;
        work(self);
        self.memory_budget.held -= more;
    }
}

impl StateSpace {
    /// What the table fills laid out, in bytes.
    fn bytes(&self) -> u64 {
        let set = |set: &Set| if set.0.spilled() { 8 * set.0.len() } else { 0 };
        let questions = self.questions.iter().map(|question| {
            let within = question.governed.iter().map(|governed| 16 * governed.within.len());
            size_of_val(question)
                + [&question.yes, &question.no, &question.never, &question.words]
                    .map(set)
                    .iter()
                    .sum::<usize>()
                + size_of_val(question.varying.as_slice())
                + size_of_val(question.governed.as_slice())
                + within.sum::<usize>()
        });
        let cells = self.matrix.taxa().len() * self.matrix.characters().len();
        (questions.sum::<usize>() + CELL * cells) as u64 + self.layout.slot_bytes()
    }
}

/// About what one cell of a table fills.
const CELL: usize = 128;

#[cfg(test)]
mod tests {
    use spinney_fixtures::drawn;
    use spinney_model::{Character, Quantity, Scale, Scene, Taxon, Unit, Value};

    use super::{Matrix, memory_wanted};

    /// Kinds whose measures all lie apart, in so many columns.
    fn measured(kinds: usize, columns: usize) -> Matrix {
        let gap = Quantity::from_whole(1);
        let scale = Scale::Measure { unit: Unit::Millimetres, gap };
        let characters =
            (0..columns).map(|n| Character::named(format!("length {n}"), scale.clone()));
        let cell = |kind: usize| {
            let at = Quantity::from_whole(10 * kind as i64);
            spinney_model::Cell::from(Value::Range { low: at, high: at })
        };
        let rows = (0..kinds).map(|kind| vec![cell(kind); columns]).collect();
        let taxa = (0..kinds).map(|kind| Taxon::named(format!("kind {kind}"))).collect();
        Matrix::new(Scene::default(), taxa, characters.collect(), rows).expect("a matrix")
    }

    #[test]
    fn many_measures_want_much_memory_and_a_table_for_children_none() {
        let small = drawn::yes_no("  lobed spiny\n oak 0 1\n elm 1 0");
        assert_eq!(memory_wanted(&small), 0);
        let (few, many) =
            (memory_wanted(&measured(40, 10)), memory_wanted(&measured(4_000, 60)));
        assert!(few < 4 && many > 512, "{few} {many}");
    }
}
