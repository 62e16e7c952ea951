//! The table laid out so that a proof is followed quickly: sets of kinds as bits, cells that
//! vary as words, and every question of section 3 with whom it sends where.
//!
//! From the values of a table to a [`Board`]; which lines hold is for others to say.

use std::collections::{BTreeSet, HashMap};

use spinney_model::{CharacterIx, Matrix, Remaining, Scale, Share, TaxonIx, Value};

use crate::amount::common_multiple;
use crate::bits::Bits;
use crate::candidate::Candidates;
use crate::claim::replay::asks;
use crate::question::{Question, Yes};
use crate::values::{Taken, Values};

/// What remains of a cell: states as bits; of numbers the place of the first, in the upper half,
/// and the place after the last.
pub(super) type Word = u64;

/// A cell with several values.
pub(super) struct Cell {
    pub(super) taxon: usize,
    /// All its values.
    pub(super) full: Word,
    shares: Shares,
}

/// The shares of a cell's values, over one denominator.
struct Shares {
    /// Of states by their number; of numbers the sum of all before each place.
    numerators: Vec<i128>,
    denominator: i128,
    /// Where the numbers that are told apart begin; None: states.
    numbers: Option<Numbers>,
}

/// What the numbers of a cell are, in thousandths.
enum Numbers {
    /// These whole numbers.
    Counts(Vec<i64>),
    /// What lies between these.
    Between(Vec<i64>),
}

/// A question, and what it does to whom.
pub(super) struct Put {
    pub(super) character: CharacterIx,
    /// Kinds that do not vary here, by their side.
    pub(super) yes: Bits,
    pub(super) no: Bits,
    /// Kinds to which it can never be put.
    pub(super) never: Bits,
    /// Kinds that vary, the cell, and what of it is on the yes side.
    pub(super) varying: Vec<(usize, u32, Taking)>,
    /// Kinds that vary.
    pub(super) varies: Bits,
    /// Kinds to which it can be put once these cells hold nothing but these states.
    pub(super) governed: Vec<(usize, u32, u64)>,
    /// Kinds that may go to yes, and kinds that may go to no: those that vary to both.
    pub(super) may: [Bits; 2],
}

/// What of a cell is on the yes side.
#[derive(Clone, Copy)]
pub(super) enum Taking {
    States(u64),
    /// From this place on.
    From(u32),
    /// Before this place.
    Before(u32),
}

impl Taking {
    /// What is left after a yes and after a no; 0: nothing.
    pub(super) fn cut(self, word: Word) -> [Word; 2] {
        let at = match self {
            Self::States(yes) => return [word & yes, word & !yes],
            Self::From(at) | Self::Before(at) => at,
        };
        let (from, to) = ends(word);
        let low = places(from, to.min(at));
        let high = places(from.max(at), to);
        if matches!(self, Self::From(_)) { [high, low] } else { [low, high] }
    }
}

fn ends(word: Word) -> (u32, u32) {
    ((word >> 32) as u32, word as u32)
}

fn places(from: u32, to: u32) -> Word {
    if from < to { u64::from(from) << 32 | u64::from(to) } else { 0 }
}

/// The table.
pub(super) struct Board<'a> {
    pub(super) values: &'a Values<'a>,
    pub(super) cells: Vec<Cell>,
    at: HashMap<(usize, CharacterIx), usize>,
    pub(super) questions: Vec<Put>,
    /// The flow of every kind of which nothing is taken, in parts of `whole`.
    pub(super) flows: Vec<i128>,
    /// The denominator of all flows.
    pub(super) whole: i128,
}

impl<'a> Board<'a> {
    /// Lays the table out; None: it needs larger numbers than there are. `most`: more than any
    /// path counts for one find.
    pub(super) fn of(
        values: &'a Values<'a>,
        left_out: &BTreeSet<CharacterIx>,
        most: i128,
    ) -> Option<Self> {
        let matrix = values.matrix;
        let mut board = Self {
            values,
            cells: Vec::new(),
            at: HashMap::new(),
            questions: Vec::new(),
            flows: Vec::new(),
            whole: 1,
        };
        let mut all: i128 = 0;
        for taxon in matrix.taxon_indices() {
            let mut of_kind = *matrix.taxon(taxon).weight.denom();
            for character in matrix.character_indices() {
                let Some(shares) = shares(values, taxon, character) else { continue };
                of_kind = of_kind.checked_mul(shares.denominator)?;
                board.at.insert((taxon.0, character), board.cells.len());
                board.cells.push(Cell { taxon: taxon.0, full: shares.full(), shares });
            }
            board.whole = common_multiple(board.whole, of_kind)?;
            all = all.checked_add(matrix.taxon(taxon).weight.ceil().to_integer())?;
        }
        all.checked_mul(board.whole)?.checked_mul(most)?.checked_mul(4)?;
        let flow = |taxon| matrix.taxon(taxon).weight * Share::from_integer(board.whole);
        board.flows = matrix.taxon_indices().map(|taxon| flow(taxon).to_integer()).collect();
        for character in matrix.character_indices().filter(|at| !left_out.contains(at)) {
            let gap = asks::gap(matrix.character(character));
            for yes in every(values, character) {
                let put = board.put(&Question { character, yes }, gap);
                board.questions.push(put);
            }
        }
        Some(board)
    }

    /// A question and what it does; a person's own may come as near to a range as it likes.
    pub(super) fn put(&self, asked: &Question, gap: i64) -> Put {
        let kinds = self.flows.len();
        let none = || Bits::none(kinds);
        let mut put = Put {
            character: asked.character,
            yes: none(),
            no: none(),
            never: none(),
            varying: Vec::new(),
            varies: none(),
            governed: Vec::new(),
            may: [none(), none()],
        };
        for taxon in self.values.matrix.taxon_indices() {
            match self.governors(taxon, asked.character) {
                Some(governors) => {
                    put.governed.extend(governors.iter().map(|(cell, r)| (taxon.0, *cell, *r)));
                }
                None => {
                    put.never.add(taxon.0);
                    continue;
                }
            }
            let taking = self.at.get(&(taxon.0, asked.character)).map(|&cell| {
                let taking = self.cells[cell].shares.taking(asked.yes);
                (taxon.0, cell as u32, taking)
            });
            if let Some(taking) = taking {
                put.varying.push(taking);
                put.varies.add(taxon.0);
                continue;
            }
            match self.side(taxon, asked, gap) {
                Some(true) => put.yes.add(taxon.0),
                Some(false) => put.no.add(taxon.0),
                None => put.never.add(taxon.0),
            }
        }
        put.may = [put.yes.clone(), put.no.clone()];
        put.may.iter_mut().for_each(|side| side.add_all(&put.varies));
        put
    }

    /// The cells that must be settled before a kind has a character, each with the states that
    /// are right; None: it never has it.
    fn governors(&self, taxon: TaxonIx, at: CharacterIx) -> Option<Vec<(u32, u64)>> {
        let matrix: &Matrix = self.values.matrix;
        if *self.values.value(taxon, at) == Value::DoesNotApply {
            return None;
        }
        let mut found = Vec::new();
        let mut above = matrix.character(at).governor.as_ref();
        while let Some(governor) = above {
            let states = self.values.states(taxon, governor.character, &Taken::new());
            let right = governor.states.iter().fold(0, |bits, state| bits | 1 << state.0);
            if states & right == 0 {
                return None;
            }
            if states & !right != 0 {
                let cell = self.at.get(&(taxon.0, governor.character));
                let cell = *cell.expect("a cell of several states is laid out");
                found.push((cell as u32, right));
            }
            above = matrix.character(governor.character).governor.as_ref();
        }
        Some(found)
    }

    /// The side of a kind that does not vary; None: the question cannot be put to it.
    fn side(&self, taxon: TaxonIx, asked: &Question, gap: i64) -> Option<bool> {
        if let (Value::Range { low, high }, Some(at)) =
            (self.values.value(taxon, asked.character), asked.at())
        {
            let [low, high, at] = [low.thousandths(), high.thousandths(), at].map(i128::from);
            let gap = i128::from(gap);
            let above = low >= at && low - at >= gap;
            let below = high < at && at - high >= gap;
            return (above || below).then_some(above == matches!(asked.yes, Yes::AtLeast(_)));
        }
        match self.values.sides(taxon, asked, &Taken::new()) {
            [Some(_), None] => Some(true),
            [None, Some(_)] => Some(false),
            _ => None,
        }
    }

    /// What remains of a cell, as a line names it; None: no such cell, or no such values.
    pub(super) fn named(
        &self,
        taxon: TaxonIx,
        at: CharacterIx,
        values: &Remaining,
    ) -> Option<(u32, Word)> {
        let place = *self.at.get(&(taxon.0, at))?;
        let cell = &self.cells[place];
        let word = match (&cell.shares.numbers, values) {
            (None, Remaining::States(states)) => {
                let word = states.iter().try_fold(0, |word, state| {
                    let bit =
                        u32::try_from(state.0).ok().and_then(|at| 1_u64.checked_shl(at))?;
                    Some(word | bit)
                })?;
                (word & !cell.full == 0).then_some(word)?
            }
            (Some(numbers), Remaining::Numbers(from, below)) => {
                let [from, below] = [from, below].map(|end| end.map(|end| end.thousandths()));
                let (low, high) = numbers.between(from, below)?;
                places(low, high)
            }
            _ => return None,
        };
        (word != 0).then_some((place as u32, word))
    }
}

impl Cell {
    /// The sum of the shares of what remains, as a numerator.
    pub(super) fn numerator(&self, word: Word) -> i128 {
        let numerators = &self.shares.numerators;
        if self.shares.numbers.is_some() {
            let (from, to) = ends(word);
            return numerators[to as usize] - numerators[from as usize];
        }
        (0..numerators.len()).filter(|at| word >> at & 1 == 1).map(|at| numerators[at]).sum()
    }

    pub(super) fn denominator(&self) -> i128 {
        self.shares.denominator
    }
}

impl Numbers {
    /// How many values are told apart.
    fn len(&self) -> usize {
        match self {
            Self::Counts(counts) => counts.len(),
            Self::Between(cuts) => cuts.len() + 1,
        }
    }

    /// The place of the first value that is this much or more.
    fn place(&self, at: i64) -> u32 {
        match self {
            Self::Counts(counts) => counts.partition_point(|count| *count < at) as u32,
            Self::Between(cuts) => cuts.partition_point(|cut| *cut < at) as u32 + 1,
        }
    }

    /// The places of the first value and after the last; None: no place ends there.
    fn between(&self, from: Option<i64>, below: Option<i64>) -> Option<(u32, u32)> {
        let place = |end: Option<i64>, open: u32| match (end, self) {
            (None, _) => Some(open),
            (Some(at), Self::Counts(_)) => Some(self.place(at)),
            (Some(at), Self::Between(cuts)) => {
                cuts.binary_search(&at).ok().map(|place| place as u32 + 1)
            }
        };
        Some((place(from, 0)?, place(below, self.len() as u32)?))
    }
}

impl Shares {
    fn full(&self) -> Word {
        match &self.numbers {
            Some(numbers) => places(0, numbers.len() as u32),
            None => {
                let states = self.numerators.iter().enumerate();
                states.filter(|(_, n)| **n > 0).fold(0, |word, (at, _)| word | 1 << at)
            }
        }
    }

    fn taking(&self, yes: Yes) -> Taking {
        match (yes, &self.numbers) {
            (Yes::AtLeast(at), Some(numbers)) => Taking::From(numbers.place(at)),
            (Yes::Below(at), Some(numbers)) => Taking::Before(numbers.place(at)),
            (Yes::States(states), _) => Taking::States(states),
            // Words have no numbers, and numbers no words: such a question is never put.
            (Yes::AtLeast(_) | Yes::Below(_), None) => Taking::States(0),
        }
    }
}

/// The shares of a cell; None: it has one value, or none.
fn shares(values: &Values<'_>, taxon: TaxonIx, at: CharacterIx) -> Option<Shares> {
    match values.value(taxon, at) {
        Value::States(shares) if shares.len() > 1 => {
            let last = shares.iter().map(|(state, _)| state.0).max()?;
            let mut of = vec![Share::from_integer(0); last + 1];
            for (state, share) in shares {
                of[state.0] = *share;
            }
            Some(over_one(&of, None))
        }
        Value::Counts(shares) if shares.len() > 1 => {
            let mut rising = shares.clone();
            rising.sort_unstable_by_key(|(count, _)| *count);
            let counts = rising.iter().map(|(count, _)| i64::from(*count) * 1000).collect();
            let of: Vec<Share> = rising.iter().map(|(_, share)| *share).collect();
            Some(over_one(&of, Some(Numbers::Counts(counts))))
        }
        Value::Unknown => {
            let states = values.all_states(at).count_ones() as usize;
            let wholes = values.wholes(at);
            let cuts = values.cuts(at);
            let (many, numbers) = match (states, wholes.len()) {
                (0, 0) => (cuts.len() + 1, Some(Numbers::Between(cuts.to_vec()))),
                (0, many) => (many, Some(Numbers::Counts(wholes.to_vec()))),
                (states, _) => (states, None),
            };
            let of = vec![Share::new(1, many as i128); many];
            (many > 1).then(|| over_one(&of, numbers))
        }
        _ => None,
    }
}

fn over_one(shares: &[Share], numbers: Option<Numbers>) -> Shares {
    let denominators = shares.iter().map(|share| *share.denom());
    let denominator =
        denominators.fold(1, |all, next| common_multiple(all, next).unwrap_or(i128::MAX));
    let over = |share: &Share| denominator / share.denom() * share.numer();
    let mut numerators: Vec<i128> = shares.iter().map(over).collect();
    if numbers.is_some() {
        let mut sum = 0;
        numerators.insert(0, 0);
        for numerator in &mut numerators {
            sum += *numerator;
            *numerator = sum;
        }
    }
    Shares { numerators, denominator, numbers }
}

/// Every question that a column allows.
fn every(values: &Values<'_>, at: CharacterIx) -> Vec<Yes> {
    let character = values.matrix.character(at);
    match &character.scale {
        Scale::Words { states } => {
            asks::groups(states, character.ordered).into_iter().map(Yes::States).collect()
        }
        Scale::Counts => {
            values.wholes(at).iter().skip(1).map(|whole| Yes::AtLeast(*whole)).collect()
        }
        Scale::Measure { gap, .. } => {
            let listed = values.candidates(at).map(|candidates| candidates.at.clone());
            let found = || {
                let ranges = values.matrix.taxon_indices().filter_map(|taxon| {
                    let Value::Range { low, high } = values.value(taxon, at) else {
                        return None;
                    };
                    Some((low.thousandths(), high.thousandths()))
                });
                Candidates::of(&ranges.collect(), gap.thousandths())
                    .map_or(Vec::new(), |candidates| candidates.at)
            };
            listed.unwrap_or_else(found).into_iter().map(Yes::AtLeast).collect()
        }
    }
}
