//! Linear equations: as many as there are unknowns.
//!
//! From rows of coefficients, the right side last, to the unknowns: Gaussian elimination with the
//! largest pivot of each column.

/// What solves the equations; None: they do not say enough.
pub(crate) fn solved(rows: &mut [Vec<f64>]) -> Option<Vec<f64>> {
    let count = rows.len();
    for at in 0..count {
        let pivot =
            (at..count).max_by(|a, b| rows[*a][at].abs().total_cmp(&rows[*b][at].abs()))?;
        rows.swap(at, pivot);
        if rows[at][at].abs() < 1e-9 {
            return None;
        }
        let (upper, below) = rows[at..].split_first_mut()?;
        for row in below {
            let part = row[at] / upper[at];
            for (value, above) in row.iter_mut().zip(upper.iter()) {
                *value -= part * above;
            }
        }
    }
    let mut found = vec![0.0; count];
    for at in (0..count).rev() {
        let known: f64 = (at + 1..count).map(|other| rows[at][other] * found[other]).sum();
        found[at] = (rows[at][count] - known) / rows[at][at];
    }
    Some(found)
}

/// The unknowns that come nearest to more equations than there are unknowns: least squares, by the
/// normal equations. Each row has its coefficients and then its right side.
pub(crate) fn nearest<const N: usize>(
    equations: impl Iterator<Item = ([f64; N], f64)>,
) -> Option<[f64; N]> {
    let mut rows = vec![vec![0.0; N + 1]; N];
    for (left, right) in equations {
        for (row, down) in rows.iter_mut().zip(left) {
            for (value, across) in row.iter_mut().zip(left) {
                *value += down * across;
            }
            row[N] += down * right;
        }
    }
    solved(&mut rows)?.try_into().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_through_points_is_found_and_two_alike_are_not_enough() {
        // y = 3 - 2x, with one point half above and one half below.
        let points = [(0.0, 3.0), (1.0, 1.5), (1.0, 0.5), (2.0, -1.0)];
        let line =
            nearest(points.iter().map(|(x, y)| ([1.0, *x], *y))).expect("three are enough");
        assert!((line[0] - 3.0).abs() < 1e-12 && (line[1] + 2.0).abs() < 1e-12, "{line:?}");
        assert_eq!(nearest([([1.0, 2.0], 1.0), ([1.0, 2.0], 1.0)].into_iter()), None);
    }
}
