//! A second road to what `weak` says: `docs/KEY.md` read again, all sets of characters tried,
//! every blank cell filled in and the whole table looked at anew.

use std::collections::BTreeSet;

use spinney_model::{CharacterIx, Governor, Matrix, Quantity, Scale, TaxonIx, Value};

/// Characters as bits: a table of this road has few.
pub(crate) type Set = u32;

/// Whether the kind cannot have the character.
pub(crate) fn lacks(matrix: &Matrix, taxon: TaxonIx, at: CharacterIx) -> bool {
    let never_right = |governor: &Governor| {
        let known = match &matrix.cell(taxon, governor.character).value {
            Value::States(shares) => !shares.iter().any(|(s, _)| governor.states.contains(s)),
            _ => false,
        };
        known || lacks(matrix, taxon, governor.character)
    };
    matrix.cell(taxon, at).value == Value::DoesNotApply
        || matrix.character(at).governor.as_ref().is_some_and(never_right)
}

/// Whether nobody has looked.
pub(crate) fn blank(matrix: &Matrix, taxon: TaxonIx, at: CharacterIx) -> bool {
    matrix.cell(taxon, at).value == Value::Unknown && !lacks(matrix, taxon, at)
}

fn states(matrix: &Matrix, taxon: TaxonIx, at: CharacterIx) -> BTreeSet<usize> {
    match (&matrix.cell(taxon, at).value, &matrix.character(at).scale) {
        _ if lacks(matrix, taxon, at) => BTreeSet::new(),
        (Value::States(shares), _) => shares.iter().map(|(state, _)| state.0).collect(),
        (Value::Unknown, Scale::Words { states }) => (0..states.len()).collect(),
        _ => BTreeSet::new(),
    }
}

/// Whether the kind varies between having and not having what this governor governs.
fn may_lack(matrix: &Matrix, taxon: TaxonIx, governor: &Governor) -> bool {
    let states = states(matrix, taxon, governor.character);
    let right = states.iter().filter(|s| governor.states.iter().any(|g| g.0 == **s)).count();
    0 < right && right < states.len()
}

fn governors(matrix: &Matrix, at: CharacterIx) -> Vec<&Governor> {
    let mut all = Vec::new();
    let mut at = at;
    while let Some(governor) = &matrix.character(at).governor {
        all.push(governor);
        at = governor.character;
    }
    all
}

/// Whether some two kinds make a question about this character worth asking.
fn worth_asking(matrix: &Matrix, at: CharacterIx) -> bool {
    let shown: Vec<BTreeSet<usize>> = matrix
        .taxon_indices()
        .filter(|taxon| !lacks(matrix, *taxon, at))
        .map(|taxon| states(matrix, taxon, at))
        .collect();
    let ordered = matrix.character(at).ordered;
    let apart = |one: &BTreeSet<usize>, other: &BTreeSet<usize>| match ordered {
        true => !one.is_empty() && !other.is_empty() && one.last() < other.first(),
        false => one.is_disjoint(other),
    };
    shown.iter().any(|one| shown.iter().any(|other| apart(one, other)))
}

/// Whether the character parts the two, where only these characters are asked about.
fn parts(matrix: &Matrix, at: CharacterIx, one: TaxonIx, other: TaxonIx, asked: Set) -> bool {
    let both = [one, other];
    if both.iter().any(|taxon| lacks(matrix, *taxon, at)) {
        return false;
    }
    for governor in governors(matrix, at) {
        let varying = both.iter().filter(|taxon| may_lack(matrix, **taxon, governor)).count();
        let first = governor.character;
        let settled = asked >> first.0 & 1 == 1 && worth_asking(matrix, first);
        if varying == 2 || (varying == 1 && !settled) {
            return false;
        }
    }
    let cells = both.map(|taxon| &matrix.cell(taxon, at).value);
    match &matrix.character(at).scale {
        Scale::Words { states: all } => {
            let [a, b] = both.map(|taxon| states(matrix, taxon, at));
            if matrix.character(at).ordered {
                return a.last() < b.first() || b.last() < a.first();
            }
            a.is_disjoint(&b) && (all.len() <= 6 || a.len() == 1 || b.len() == 1)
        }
        Scale::Counts => {
            let known = |cell: &Value| match cell {
                Value::Counts(shares) => shares.iter().map(|(n, _)| *n).collect(),
                _ => Vec::new(),
            };
            let [a, b] = cells.map(known);
            let (Some(a0), Some(a1)) = (a.iter().min(), a.iter().max()) else { return false };
            let (Some(b0), Some(b1)) = (b.iter().min(), b.iter().max()) else { return false };
            a1 < b0 || b1 < a0
        }
        Scale::Measure { gap, .. } => {
            let [Value::Range { low: a0, high: a1 }, Value::Range { low: b0, high: b1 }] =
                cells
            else {
                return false;
            };
            let apart = |high: &Quantity, low: &Quantity| {
                low > high && low.thousandths() - high.thousandths() >= 2 * gap.thousandths()
            };
            apart(a1, b0) || apart(b1, a0)
        }
    }
}

/// How many of these characters part the two, where nothing else is asked about.
pub(crate) fn distance(matrix: &Matrix, one: TaxonIx, other: TaxonIx, asked: Set) -> usize {
    let asked_about = |at: &CharacterIx| asked >> at.0 & 1 == 1;
    let all = matrix.character_indices().filter(asked_about);
    all.filter(|at| parts(matrix, *at, one, other, asked)).count()
}

/// Every character of the table.
pub(crate) fn everything(matrix: &Matrix) -> Set {
    (1 << matrix.characters().len()) - 1
}

/// Every pair of kinds.
pub(crate) fn pairs(matrix: &Matrix) -> Vec<(TaxonIx, TaxonIx)> {
    let all = matrix.taxon_indices();
    all.flat_map(|a| matrix.taxon_indices().filter(move |b| a < *b).map(move |b| (a, b)))
        .collect()
}

/// All sets of characters that part every pair so often, or as often as all of them do.
pub(crate) fn sets_that_do(matrix: &Matrix, wanted: usize) -> Vec<Set> {
    let all = everything(matrix);
    let asked: Vec<_> = pairs(matrix)
        .into_iter()
        .map(|(one, other)| (one, other, distance(matrix, one, other, all).min(wanted)))
        .filter(|(_, _, wanted)| *wanted > 0)
        .collect();
    (0..=all)
        .filter(|set| {
            asked.iter().all(|(a, b, least)| distance(matrix, *a, *b, *set) >= *least)
        })
        .collect()
}

/// The matrix with one cell changed.
pub(crate) fn with(matrix: &Matrix, changed: (TaxonIx, CharacterIx), value: &Value) -> Matrix {
    let cell = |taxon, at| {
        if (taxon, at) == changed {
            value.clone().into()
        } else {
            matrix.cell(taxon, at).clone()
        }
    };
    let rows = matrix
        .taxon_indices()
        .map(|taxon| matrix.character_indices().map(|at| cell(taxon, at)).collect())
        .collect();
    let (taxa, characters) = (matrix.taxa().to_vec(), matrix.characters().to_vec());
    Matrix::new(matrix.scene().clone(), taxa, characters, rows).expect("still a matrix")
}

/// What may come out where nobody has looked: every state; of numbers two far above all others.
pub(crate) fn fillings(matrix: &Matrix, at: CharacterIx) -> Vec<Value> {
    let one = spinney_model::Share::from_integer(1);
    match &matrix.character(at).scale {
        Scale::Words { states } => (0..states.len())
            .map(|state| Value::States(vec![(spinney_model::StateIx(state), one)]))
            .collect(),
        Scale::Counts => [1_000, 2_000].map(|n| Value::Counts(vec![(n, one)])).to_vec(),
        Scale::Measure { .. } => [100_000, 200_000]
            .map(Quantity::from_whole)
            .map(|size| Value::Range { low: size, high: size })
            .to_vec(),
    }
}

/// The matrix with all these cells filled in, in every way.
pub(crate) fn filled(matrix: &Matrix, cells: &[(TaxonIx, CharacterIx)]) -> Vec<Matrix> {
    let mut all = vec![matrix.clone()];
    for cell in cells {
        let values = fillings(matrix, cell.1);
        all = all
            .iter()
            .flat_map(|matrix| values.iter().map(move |value| with(matrix, *cell, value)))
            .collect();
    }
    all
}
