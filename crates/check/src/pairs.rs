//! Kinds compared two by two: from the matrix to pairs nothing parts, fragile pairs, and
//! pairs that only the safety gap keeps together.
//!
//! A fragile pair hangs on one character that is hard to see or narrow (`docs/KEY.md` 3-5 for
//! what parts a pair). It looks at no key.

use std::collections::BTreeMap;

use spinney_model::{CharacterIx, Difficulty, Matrix, Scale, TaxonIx};

use crate::bits::Bits;
use crate::separable::stands_before;
use crate::settled::{self, Settled};
use crate::values::{Has, Taken, Values};

mod differences;
mod filled;
mod grouped;
mod tell;

pub(crate) use differences::{Difference, Differences};
pub(crate) use tell::{fragile, gap_too_narrow};

/// More kinds than this are not compared each with each: a million pairs take a second.
pub(crate) const MOST_KINDS: usize = 1_500;

/// What one cell can contribute to parting its kind from another.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Fact {
    /// May not be asked of this kind.
    Blocked,
    /// These states.
    States(u64),
    /// Numbers from .. to.
    Numbers(i64, i64),
    /// Any number.
    Open,
}

/// What a kind contributes in each character to parting it from another.
#[derive(PartialEq, Eq)]
pub(crate) struct Facts(Vec<Fact>);

impl Facts {
    /// Those of a kind where it has what it may have.
    pub(crate) fn at_best(values: &Values<'_>, taxon: TaxonIx) -> Self {
        let of = |character| {
            let before = settled::all_before(values, taxon, character);
            fact(values, taxon, character, &before)
        };
        Self(values.matrix.character_indices().map(of).collect())
    }

    /// The characters that would part the two, as long as nobody is in the way.
    pub(crate) fn parting(&self, values: &Values<'_>, other: &Self) -> Vec<CharacterIx> {
        if self == other {
            return Vec::new();
        }
        let part = |character: &CharacterIx| {
            let (one, other) = (self.0[character.0], other.0[character.0]);
            matches!(parts(values, *character, one, other), Parts::Yes)
        };
        values.matrix.character_indices().filter(part).collect()
    }
}

/// All pairs of kinds of one matrix.
pub(crate) struct Pairs {
    company: Vec<Bits>,
    /// Which governors can be asked before what they govern.
    pub(crate) settled: Settled,
    /// Pairs that only a measure closer than twice the gap could part, with that measure.
    narrow: BTreeMap<(usize, usize), CharacterIx>,
    /// Pairs that hang on one hard or narrow character, the worst first.
    hanging: Vec<(Worth, usize, usize, CharacterIx)>,
    /// Whether there were too many kinds to compare.
    pub(crate) capped: bool,
    /// Groups of kinds with equal rows, where there were too many to compare.
    pub(crate) equal_rows: Vec<Vec<usize>>,
}

/// How little a single parting character is worth; less is worse.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Worth {
    /// Easier is later.
    ease: u8,
    /// Room between the ranges in hundredths of the gap; words and counts have plenty.
    room: i64,
}

impl Pairs {
    /// Compares every kind with every other.
    pub(crate) fn of(values: &Values<'_>) -> Self {
        let taxa = values.matrix.taxa().len();
        let settled = Settled::of(values);
        let rows: Vec<Vec<Fact>> =
            values.matrix.taxon_indices().map(|taxon| row(values, &settled, taxon)).collect();
        let mut pairs = Self {
            company: Vec::new(),
            settled,
            narrow: BTreeMap::new(),
            hanging: Vec::new(),
            capped: taxa > MOST_KINDS,
            equal_rows: Vec::new(),
        };
        if pairs.capped {
            let mut equal: BTreeMap<&Vec<Fact>, Vec<usize>> = BTreeMap::new();
            for (taxon, row) in rows.iter().enumerate() {
                equal.entry(row).or_default().push(taxon);
            }
            pairs.equal_rows = equal.into_values().filter(|group| group.len() > 1).collect();
            pairs.equal_rows.sort();
            return pairs;
        }
        pairs.company = vec![Bits::none(taxa); taxa];
        for one in 0..taxa {
            for other in one + 1..taxa {
                pairs.compare(values, &rows, one, other);
            }
        }
        pairs.hanging.sort();
        pairs
    }

    /// How many kinds were compared.
    pub(crate) fn kinds(&self) -> usize {
        self.company.len()
    }

    /// The kinds that are never parted from one.
    pub(crate) fn bits(&self, taxon: usize) -> &Bits {
        &self.company[taxon]
    }

    /// The same, one after the other.
    pub(crate) fn company(&self, taxon: usize) -> impl Iterator<Item = usize> {
        self.company[taxon].iter()
    }

    /// Whether the safety gap alone keeps every two of a group together.
    pub(crate) fn only_the_gap(&self, group: &[usize]) -> bool {
        let mut pairs = group
            .iter()
            .flat_map(|one| group.iter().map(move |other| (*one, *other)))
            .filter(|(one, other)| one < other);
        pairs.all(|pair| self.narrow.contains_key(&pair))
    }

    fn compare(&mut self, values: &Values<'_>, rows: &[Vec<Fact>], one: usize, other: usize) {
        let matrix = values.matrix;
        let (mut parting, mut narrow) = (None, None);
        for (character, (a, b)) in
            matrix.character_indices().zip(rows[one].iter().zip(&rows[other]))
        {
            let found = parts(values, character, *a, *b);
            if !matches!(found, Parts::No)
                && settled::lack_together(values, TaxonIx(one), TaxonIx(other), character)
            {
                continue;
            }
            match found {
                Parts::Yes if parting.is_some() => return,
                Parts::Yes => parting = Some(character),
                Parts::ButForTheGap => narrow = narrow.or(Some(character)),
                Parts::No => {}
            }
        }
        match (parting, narrow) {
            (Some(character), _) => {
                let worth =
                    worth(matrix, character, rows[one][character.0], rows[other][character.0]);
                if worth.ease == 0 || worth.room < NARROW {
                    self.hanging.push((worth, one, other, character));
                }
            }
            (None, narrow) => {
                self.company[one].add(other);
                self.company[other].add(one);
                if let Some(character) = narrow {
                    self.narrow.insert((one, other), character);
                }
            }
        }
    }
}

/// A measure with less than four gaps between two ranges is narrow: the threshold stands in
/// the middle, and a slip of two gaps crosses over. In hundredths of the gap.
const NARROW: i64 = 400;

/// Read right less often than this, in per cent, a character is as good as hard: a
/// leaf question with pictures is read right about 79 times of 100 (`docs/TRADE.md`, "Where
/// people go wrong"); where the line lies is our judgement.
const SELDOM_RIGHT: u8 = 75;

fn worth(matrix: &Matrix, character: CharacterIx, one: Fact, other: Fact) -> Worth {
    let of = matrix.character(character);
    let hard = of.difficulty == Difficulty::Hard
        || of.read_right.is_some_and(|per_cent| per_cent < SELDOM_RIGHT);
    let ease = if hard { 0 } else { 1 + u8::from(of.difficulty == Difficulty::Easy) };
    let room = match (&of.scale, one, other) {
        (Scale::Measure { gap, .. }, Fact::Numbers(a, b), Fact::Numbers(c, d))
            if gap.thousandths() > 0 =>
        {
            let room = i128::from(a.max(c)) - i128::from(b.min(d));
            let hundredths = room * 100 / i128::from(gap.thousandths());
            i64::try_from(hundredths).unwrap_or(i64::MAX)
        }
        _ => i64::MAX,
    };
    Worth { ease, room }
}

enum Parts {
    Yes,
    ButForTheGap,
    No,
}

/// Whether a question about this character has one kind wholly on yes, the other on no.
fn parts(values: &Values<'_>, character: CharacterIx, one: Fact, other: Fact) -> Parts {
    match (&values.matrix.character(character).scale, one, other) {
        (Scale::Words { states }, Fact::States(a), Fact::States(b)) => {
            let askable = if values.matrix.character(character).ordered {
                stands_before(a, b) || stands_before(b, a)
            } else {
                states.len() <= 6 || a.count_ones() == 1 || b.count_ones() == 1
            };
            if a & b == 0 && a != 0 && b != 0 && askable { Parts::Yes } else { Parts::No }
        }
        (scale, Fact::Numbers(a, b), Fact::Numbers(c, d)) => {
            let (high, low) = (b.min(d), a.max(c));
            let gap = match scale {
                Scale::Measure { gap, .. } => gap.thousandths(),
                _ => 0,
            };
            // In a very long column not every two ranges have a threshold between them.
            let candidates = values.candidates(character);
            match i128::from(low) - i128::from(high) {
                ..=0 => Parts::No,
                apart if apart < 2 * i128::from(gap) => Parts::ButForTheGap,
                _ if candidates.is_none_or(|all| all.part(high, low, gap)) => Parts::Yes,
                _ => Parts::No,
            }
        }
        _ => Parts::No,
    }
}

fn row(values: &Values<'_>, settled: &Settled, taxon: TaxonIx) -> Vec<Fact> {
    values
        .matrix
        .character_indices()
        .map(|character| {
            fact(values, taxon, character, &settled.before(values, taxon, character))
        })
        .collect()
}

/// What a kind contributes in one character after so much was taken from it.
fn fact(values: &Values<'_>, taxon: TaxonIx, character: CharacterIx, taken: &Taken) -> Fact {
    if values.has(taxon, character, taken) != Has::Yes {
        return Fact::Blocked;
    }
    match &values.matrix.character(character).scale {
        Scale::Words { .. } => Fact::States(values.states(taxon, character, taken)),
        _ => values
            .reach(taxon, character, taken)
            .map_or(Fact::Open, |(low, high)| Fact::Numbers(low, high)),
    }
}
