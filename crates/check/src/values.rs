//! What a kind can still show: from cells and the answers given so far to remaining values.
//!
//! Sections 1 to 4 of `docs/KEY.md`, read a second time. A kind's remaining values in a
//! character are a set of states, or the numbers of its cell within a span. It decides
//! nothing about keys.

use std::collections::BTreeSet;

use num_traits::Zero;
use spinney_model::{CharacterIx, Couplet, Key, Matrix, Scale, Share, TaxonIx, Value};

use crate::candidate::Candidates;
use crate::question::{Question, Yes};

/// What is left of a kind's values in one character.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(crate) enum Left {
    /// These states, as bits.
    States(u64),
    /// The numbers of the cell from the first on and below the second, in thousandths.
    Span(i64, i64),
}

/// Every number.
pub(crate) const ALL_NUMBERS: (i64, i64) = (i64::MIN, i64::MAX);

/// What answers have taken from a kind: only characters in which something was taken.
pub(crate) type Taken = Vec<(CharacterIx, Left)>;

/// Whether a kind has a character.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Has {
    /// In every form that is still possible.
    Yes,
    /// In some forms only.
    Maybe,
    /// In none.
    No,
}

/// The matrix with what section 1 says of unknown cells and of governors worked out.
pub(crate) struct Values<'m> {
    /// The matrix itself.
    pub(crate) matrix: &'m Matrix,
    columns: Vec<Column>,
    /// Row after row: the kind cannot have the character at all.
    lacking: Vec<bool>,
}

/// What stands in a column of numbers.
#[derive(Default)]
struct Column {
    /// All whole numbers of a column of counts, in thousandths.
    wholes: Vec<i64>,
    /// Where a measure may be asked; None where any two ranges far enough apart allow it, and
    /// no cell is unknown, so that nobody needs the list.
    candidates: Option<Candidates>,
    /// Where the values of an unknown measure are told apart: the candidates and whatever a
    /// key asks besides.
    cuts: Vec<i64>,
}

impl<'m> Values<'m> {
    /// Reads the matrix; `key` adds its own thresholds to those that part unknown measures.
    pub(crate) fn new(matrix: &'m Matrix, key: Option<&Key>) -> Self {
        let mut values = Self { matrix, columns: Vec::new(), lacking: Vec::new() };
        values.lacking = lacking(matrix);
        let couplets = key.map_or(&[][..], |key| &key.couplets);
        values.columns =
            matrix.character_indices().map(|c| values.read_column(c, couplets)).collect();
        values
    }

    /// The cell's value, read as "does not apply" where its governor can have no right state.
    pub(crate) fn value(&self, taxon: TaxonIx, character: CharacterIx) -> &'m Value {
        if self.lacks(taxon, character) {
            return &Value::DoesNotApply;
        }
        &self.matrix.cell(taxon, character).value
    }

    /// Whether nobody has recorded what this kind has here.
    pub(crate) fn unknown(&self, taxon: TaxonIx, character: CharacterIx) -> bool {
        *self.value(taxon, character) == Value::Unknown
    }

    /// Whether the kind has one measured range here.
    pub(crate) fn is_range(&self, taxon: TaxonIx, character: CharacterIx) -> bool {
        matches!(self.value(taxon, character), Value::Range { .. })
    }

    /// Whether the character exists in the forms of the kind that are left.
    pub(crate) fn has(&self, taxon: TaxonIx, character: CharacterIx, taken: &Taken) -> Has {
        if self.lacks(taxon, character) {
            return Has::No;
        }
        let mut has = Has::Yes;
        let mut above = self.matrix.character(character).governor.as_ref();
        while let Some(governor) = above {
            let states = self.states(taxon, governor.character, taken);
            let right = governor.states.iter().fold(0, |bits, state| bits | 1 << state.0);
            if states & right == 0 {
                return Has::No;
            }
            if states & !right != 0 {
                has = Has::Maybe;
            }
            above = self.matrix.character(governor.character).governor.as_ref();
        }
        has
    }

    /// The states a kind can still show in a character in words.
    pub(crate) fn states(&self, t: TaxonIx, c: CharacterIx, taken: &Taken) -> u64 {
        match left(taken, c) {
            Some(Left::States(states)) => states,
            _ => match self.value(t, c) {
                Value::States(shares) => shares.iter().fold(0, |bits, (s, _)| bits | 1 << s.0),
                Value::Unknown => self.all_states(c),
                _ => 0,
            },
        }
    }

    /// The span in which a kind's numbers still are.
    pub(crate) fn span(&self, character: CharacterIx, taken: &Taken) -> (i64, i64) {
        match left(taken, character) {
            Some(Left::Span(from, below)) => (from, below),
            _ => ALL_NUMBERS,
        }
    }

    /// The least and the greatest number a kind can still show; None: open, or no numbers.
    pub(crate) fn reach(
        &self,
        t: TaxonIx,
        c: CharacterIx,
        taken: &Taken,
    ) -> Option<(i64, i64)> {
        let span = self.span(c, taken);
        match self.value(t, c) {
            Value::Counts(shares) => {
                ends(shares.iter().map(|(n, _)| thousandths(*n)).filter(|n| within(*n, span)))
            }
            Value::Range { low, high } => Some((
                low.thousandths().max(span.0),
                high.thousandths().min(span.1.saturating_sub(1)),
            )),
            Value::Unknown if !self.columns[c.0].wholes.is_empty() => {
                ends(self.columns[c.0].wholes.iter().copied().filter(|n| within(*n, span)))
            }
            Value::Unknown if span != ALL_NUMBERS => Some((span.0, span.1.saturating_sub(1))),
            _ => None,
        }
    }

    /// What is left after a yes and after a no; None: nothing, the kind does not go there.
    pub(crate) fn sides(
        &self,
        t: TaxonIx,
        asked: &Question,
        taken: &Taken,
    ) -> [Option<Left>; 2] {
        match asked.yes {
            Yes::States(yes) => {
                let states = self.states(t, asked.character, taken);
                [states & yes, states & !yes]
                    .map(|side| (side != 0).then_some(Left::States(side)))
            }
            Yes::AtLeast(at) | Yes::Below(at) => {
                let (from, below) = self.span(asked.character, taken);
                let [high, low] = [(from.max(at), below), (from, below.min(at))].map(|span| {
                    let shows = self.shows(t, asked.character, span);
                    shows.then_some(Left::Span(span.0, span.1))
                });
                if matches!(asked.yes, Yes::AtLeast(_)) { [high, low] } else { [low, high] }
            }
        }
    }

    /// The sum of the shares of what is left; None where section 1 gives none.
    pub(crate) fn share(&self, t: TaxonIx, c: CharacterIx, kept: Left) -> Option<Share> {
        let part = |some: usize, all: usize| Share::new(some as i128, all as i128);
        match (self.value(t, c), kept) {
            (Value::States(shares), Left::States(bits)) => {
                Some(shares.iter().filter(|(s, _)| bits >> s.0 & 1 == 1).map(|(_, p)| *p).sum())
            }
            (Value::Unknown, Left::States(bits)) => {
                Some(part(bits.count_ones() as usize, self.all_states(c).count_ones() as usize))
            }
            (Value::Counts(shares), Left::Span(from, below)) => {
                let kept = |n: &u32| within(thousandths(*n), (from, below));
                Some(shares.iter().filter(|(n, _)| kept(n)).map(|(_, p)| *p).sum())
            }
            (Value::Unknown, Left::Span(from, below)) => {
                let column = &self.columns[c.0];
                if !column.wholes.is_empty() {
                    let kept = column.wholes.iter().filter(|n| within(**n, (from, below)));
                    return Some(part(kept.count(), column.wholes.len()));
                }
                let cuts = &column.cuts;
                let first = cuts.partition_point(|cut| *cut <= from);
                let last = cuts.partition_point(|cut| *cut < below);
                Some(part((last + 1).saturating_sub(first), cuts.len() + 1))
            }
            // A range is one value and is never cut; where a key cuts it all the same,
            // section 7 has no effort for that.
            _ => None,
        }
        .filter(|share| !share.is_zero())
    }

    /// Where a measure may be asked, rising; None: nothing is unknown in the column, and every
    /// two ranges far enough apart have a candidate between them.
    pub(crate) fn candidates(&self, character: CharacterIx) -> Option<&Candidates> {
        self.columns[character.0].candidates.as_ref()
    }

    /// The whole numbers that stand in a column, in thousandths, rising.
    pub(crate) fn wholes(&self, character: CharacterIx) -> &[i64] {
        &self.columns[character.0].wholes
    }

    /// What parts the values of an unknown measure of a column, in thousandths, rising.
    pub(crate) fn cuts(&self, character: CharacterIx) -> &[i64] {
        &self.columns[character.0].cuts
    }

    /// How many values an unknown cell of this column has (section 1).
    pub(crate) fn unknown_has(&self, character: CharacterIx) -> usize {
        let column = &self.columns[character.0];
        match self.all_states(character).count_ones() as usize {
            0 if column.wholes.is_empty() => column.cuts.len() + 1,
            0 => column.wholes.len(),
            states => states,
        }
    }

    /// All declared states of a character, as bits.
    pub(crate) fn all_states(&self, character: CharacterIx) -> u64 {
        match &self.matrix.character(character).scale {
            Scale::Words { states } if states.len() >= 64 => u64::MAX,
            Scale::Words { states } => (1 << states.len()) - 1,
            _ => 0,
        }
    }

    fn lacks(&self, taxon: TaxonIx, character: CharacterIx) -> bool {
        self.lacking[taxon.0 * self.matrix.characters().len() + character.0]
    }

    fn shows(&self, taxon: TaxonIx, character: CharacterIx, span: (i64, i64)) -> bool {
        match self.value(taxon, character) {
            Value::Counts(shares) => shares.iter().any(|(n, _)| within(thousandths(*n), span)),
            Value::Range { low, high } => {
                let low = low.thousandths().max(span.0);
                low <= high.thousandths() && low < span.1
            }
            Value::Unknown => {
                let wholes = &self.columns[character.0].wholes;
                if wholes.is_empty() {
                    span.0 < span.1
                } else {
                    wholes.iter().any(|n| within(*n, span))
                }
            }
            _ => false,
        }
    }

    fn read_column(&self, character: CharacterIx, couplets: &[Couplet]) -> Column {
        let scale = &self.matrix.character(character).scale;
        if matches!(scale, Scale::Words { .. }) {
            return Column::default();
        }
        let (mut wholes, mut ranges, mut unknown) = (BTreeSet::new(), BTreeSet::new(), false);
        for taxon in self.matrix.taxon_indices() {
            match self.value(taxon, character) {
                Value::Counts(shares) => {
                    wholes.extend(shares.iter().map(|(n, _)| thousandths(*n)))
                }
                Value::Range { low, high } => {
                    ranges.insert((low.thousandths(), high.thousandths()));
                }
                Value::Unknown => unknown = true,
                _ => {}
            }
        }
        let gap = match scale {
            Scale::Measure { gap, .. } => gap.thousandths(),
            _ => 0,
        };
        let asked = couplets.iter().filter_map(|couplet| {
            let asked = Question::of(self.matrix, couplet)?;
            (asked.character == character).then_some(asked.at()).flatten()
        });
        let candidates =
            Candidates::of(&ranges, gap).filter(|candidates| unknown || !candidates.every_pair);
        let mut cuts = Vec::new();
        if unknown {
            cuts.extend(candidates.iter().flat_map(|candidates| &candidates.at));
            cuts.extend(asked);
            cuts.sort_unstable();
            cuts.dedup();
        }
        Column { wholes: wholes.into_iter().collect(), candidates, cuts }
    }
}

/// Row after row: the cell says "does not apply", or the governor can have no right state.
fn lacking(matrix: &Matrix) -> Vec<bool> {
    let mut lacking = vec![None; matrix.taxa().len() * matrix.characters().len()];
    let width = matrix.characters().len();
    for taxon in matrix.taxon_indices() {
        for character in matrix.character_indices() {
            let mut chain = vec![character];
            while let Some(governor) =
                &matrix.character(*chain.last().expect("starts with one")).governor
            {
                if lacking[taxon.0 * width + governor.character.0].is_some() {
                    break;
                }
                chain.push(governor.character);
            }
            for &c in chain.iter().rev() {
                let known: &[Option<bool>] = &lacking[taxon.0 * width..][..width];
                let lacks = matrix.cell(taxon, c).value == Value::DoesNotApply
                    || matrix.character(c).governor.as_ref().is_some_and(|governor| {
                        known[governor.character.0] == Some(true)
                            || match &matrix.cell(taxon, governor.character).value {
                                Value::States(shares) => {
                                    !shares.iter().any(|(s, _)| governor.states.contains(s))
                                }
                                _ => false,
                            }
                    });
                lacking[taxon.0 * width + c.0] = Some(lacks);
            }
        }
    }
    lacking.into_iter().map(|lacks| lacks.expect("every cell was looked at")).collect()
}

/// What was taken in one character.
fn left(taken: &Taken, character: CharacterIx) -> Option<Left> {
    taken.iter().find(|(c, _)| *c == character).map(|(_, left)| *left)
}

fn within(number: i64, (from, below): (i64, i64)) -> bool {
    from <= number && number < below
}

fn ends(numbers: impl Iterator<Item = i64>) -> Option<(i64, i64)> {
    numbers.fold(None, |ends, n| match ends {
        None => Some((n, n)),
        Some((low, high)) => Some((low.min(n), high.max(n))),
    })
}

fn thousandths(whole: u32) -> i64 {
    i64::from(whole) * 1000
}
