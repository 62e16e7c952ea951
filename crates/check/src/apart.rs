//! How far apart any two kinds of a table are: by how many characters each pair is parted.
//!
//! A character parts a pair here exactly where it does for [`weak`](crate::weak()). It looks at
//! kinds two by two and builds no key.

use spinney_model::{Matrix, TaxonIx};

use crate::pairs::Differences;
use crate::values::Values;
use crate::weak::compared;

/// By how many characters every pair of kinds is parted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Apart {
    kinds: usize,
    /// Row after row; a kind and itself: 0.
    by: Vec<usize>,
}

impl Apart {
    /// How many kinds there are.
    pub fn kinds(&self) -> usize {
        self.kinds
    }

    /// By how many characters two kinds are parted; 0: the table does not part them.
    /// **Panics** if an index is of another matrix.
    pub fn by(&self, one: TaxonIx, other: TaxonIx) -> usize {
        assert!(one.0 < self.kinds && other.0 < self.kinds, "a kind of another matrix");
        self.by[one.0 * self.kinds + other.0]
    }
}

/// By how many characters every pair of kinds is parted; None: there are too many kinds.
///
/// **Cost**: as [`weak`](crate::weak()) without its searches.
pub fn apart(matrix: &Matrix) -> Option<Apart> {
    let kinds = matrix.taxa().len();
    if !compared(matrix) {
        return None;
    }
    let values = Values::new(matrix, None);
    let differences = Differences::of(&values);
    let mut by = vec![0; kinds * kinds];
    for one in 0..kinds {
        for other in one + 1..kinds {
            let distance = differences.between(TaxonIx(one), TaxonIx(other)).len();
            by[one * kinds + other] = distance;
            by[other * kinds + one] = distance;
        }
    }
    Some(Apart { kinds, by })
}

#[cfg(test)]
mod tests {
    //! Distances that can be counted in the drawing, and the same numbers as `weak` has.

    use spinney_fixtures::drawn;
    use spinney_model::TaxonIx;

    use super::apart;
    use crate::{WeakSettings, weak};

    #[test]
    fn each_pair_is_as_far_apart_as_the_table_says() {
        let matrix = drawn::yes_no(
            "        lobed spiny soft
             hazel   0     0     1
             oak     1     0     1
             holly   0     1     0
             elm     0     0     ?",
        );
        let apart = apart(&matrix).expect("it is a small table");
        let by = |one, other| apart.by(TaxonIx(one), TaxonIx(other));
        assert_eq!(
            [by(0, 1), by(0, 2), by(0, 3), by(1, 2), by(1, 3), by(2, 3)],
            [1, 2, 0, 3, 1, 1]
        );
        assert_eq!([by(2, 1), by(1, 1)], [3, 0]);
        let mut distances = vec![0; 4];
        for one in 0..4 {
            (one + 1..4).for_each(|other| distances[by(one, other)] += 1);
        }
        assert_eq!(distances, weak(&matrix, &WeakSettings::default()).distances);
    }
}
