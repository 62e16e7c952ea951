//! How often a question is read right, as whole numbers over one denominator of the table.
//!
//! From characters (`read_right`, single kinds apart) to odds. What somebody never reads right
//! counts as nought here, since nothing is a logarithm.

use num_integer::Integer;
use spinney_model::Matrix;

use crate::goals;

/// How often each character is read right of each kind.
pub(super) struct Odds {
    /// The denominator of all odds.
    pub(super) unit: i128,
    /// Character by character, kind by kind.
    right: Vec<Vec<i128>>,
    /// Per kind: the most that a wrong answer can let through (kinds' worst odds), and the
    /// best odds of any character.
    pub(super) worst: Vec<i128>,
    /// The best odds of any character and kind.
    pub(super) best: i128,
}

impl Odds {
    pub(super) fn of(matrix: &Matrix) -> Self {
        let per_cent: Vec<Vec<i128>> = matrix
            .characters()
            .iter()
            .map(|character| {
                let usual = goals::read_right(character);
                let of = |at| *character.read_right_of.get(&at).unwrap_or(&usual);
                matrix.taxon_indices().map(|at| i128::from(of(at).min(100))).collect()
            })
            .collect();
        let common = per_cent.iter().flatten().fold(100, |common: i128, odds| common.gcd(odds));
        let right: Vec<Vec<i128>> =
            per_cent.iter().map(|row| row.iter().map(|odds| odds / common).collect()).collect();
        let unit = 100 / common;
        let kinds = matrix.taxa().len();
        let worst = (0..kinds)
            .map(|kind| right.iter().map(|row| row[kind]).min().unwrap_or(unit))
            .collect();
        let best = right.iter().flatten().copied().max().unwrap_or(unit);
        Self { unit, right, worst, best }
    }

    /// How often this character is read right of this kind.
    pub(super) fn right(&self, character: usize, kind: usize) -> i128 {
        self.right[character][kind]
    }
}
