//! What an easy key means, in whole numbers.
//!
//! Shares, weights and efforts are rationals; over one common denominator of the whole table
//! they are integers, so that ties are exact and adding is quick (`docs/KEY.md` 7 and 8).

use num_integer::Integer;
use num_traits::ToPrimitive;
use spinney_model::{Character, Difficulty, Instrument, Share};

/// An effort or a flow, in units of one over the common denominator.
pub(crate) type Effort = i128;

/// Steps that one question about this character takes: its difficulty times its instrument.
pub(crate) fn steps(character: &Character) -> Effort {
    let base = match character.difficulty {
        Difficulty::Easy => 1,
        Difficulty::Fair => 2,
        Difficulty::Hard => 3,
    };
    match character.instrument {
        Instrument::Eyes => base,
        Instrument::Lens | Instrument::Ruler => 2 * base,
    }
}

/// The dearest question, in steps.
pub(crate) const DEAREST: Effort = 6;

/// Above the largest slack (a hundredth) and the sums of a few efforts that are compared.
pub(crate) const SPARE: Effort = 1024;

/// The common denominator.
#[derive(Clone, Copy, Debug)]
pub(crate) struct CommonDenominator {
    pub(crate) number: Effort,
    /// False if the true shares did not fit: then flows are rounded down, or, where even that
    /// does not fit, every kind counts 1 wherever it is present.
    pub(crate) exact: bool,
    /// Whether flows are rounded down to whole units, so that bounds stay bounds.
    pub(crate) rounded: bool,
}

impl CommonDenominator {
    pub(crate) fn share(self, effort: Effort) -> Share {
        Share::new(effort, self.number)
    }

    /// Steps walked by all flow over all flow; 0 where nothing flows.
    pub(crate) fn mean(self, steps: Effort, flow: Effort) -> Share {
        if flow == 0 { Share::from_integer(0) } else { Share::new(steps, flow) }
    }
}

/// For every kind: its weight, and the shares of each of its varying cells.
pub(crate) struct Shares<'a> {
    pub(crate) weight: Share,
    /// Where all values of a cell have the same share, that may stand once.
    pub(crate) cells: Vec<&'a [Share]>,
}

/// The shares as whole numbers: per kind a base, per varying cell a numerator for each value,
/// so that base × numerators is the flow in units of one over the denominator.
pub(crate) struct Whole {
    pub(crate) denominator: CommonDenominator,
    pub(crate) base: Vec<Effort>,
    pub(crate) numerators: Vec<Vec<Vec<Effort>>>,
}

/// Brings all shares over one denominator.
///
/// `longest` is an upper limit of the questions on any path. Where any effort could overflow,
/// or `round` asks for it, flows are rounded down; where that overflows too, every kind counts
/// 1 wherever it is present: the key is still sensible, but nothing is claimed of it.
pub(crate) fn whole(kinds: &[Shares<'_>], longest: usize, round: bool) -> Whole {
    let exact = if round { None } else { exactly(kinds, longest) };
    let fitting = exact.or_else(|| rounded(kinds, longest));
    fitting.unwrap_or_else(|| Whole {
        denominator: CommonDenominator { number: 1, exact: false, rounded: false },
        base: vec![1; kinds.len()],
        numerators: kinds
            .iter()
            .map(|kind| kind.cells.iter().map(|cell| vec![1; cell.len()]).collect())
            .collect(),
    })
}

fn exactly(kinds: &[Shares<'_>], longest: usize) -> Option<Whole> {
    let mut denominator: Effort = 1;
    let mut own = Vec::new();
    let mut numerators = Vec::new();
    for kind in kinds {
        let mut product = *kind.weight.denom();
        let mut cells: Vec<Vec<Effort>> = Vec::new();
        for shares in &kind.cells {
            let common = lcm_of(shares.iter().map(|share| *share.denom()))?;
            product = product.checked_mul(common)?;
            let over = |share: &Share| share.numer() * (common / share.denom());
            cells.push(shares.iter().map(over).collect());
        }
        numerators.push(cells);
        own.push(product);
        denominator = lcm(denominator, product)?;
    }
    let mut sum: Effort = 0;
    let mut base = Vec::new();
    for (kind, product) in kinds.iter().zip(own) {
        let one = kind.weight.numer().checked_mul(denominator / product)?;
        base.push(one);
        sum = sum.checked_add(kind.weight.numer().checked_mul(denominator)?)?;
    }
    // No effort can exceed this.
    sum.checked_mul(DEAREST)?.checked_mul(longest.to_i128()?)?.checked_mul(SPARE)?;
    let denominator = CommonDenominator { number: denominator, exact: true, rounded: false };
    Some(Whole { denominator, base, numerators })
}

/// Bits after the point of a rounded flow, and of a rounded share.
pub(crate) const FLOW_BITS: u32 = 60;
pub(crate) const SHARE_BITS: u32 = 40;

/// Weights and shares rounded down, so that every flow is at most the true one, and less by no
/// more than one part in [`LOST`] of it and one unit for each varying cell.
fn rounded(kinds: &[Shares<'_>], longest: usize) -> Option<Whole> {
    let down = |share: &Share, bits: u32| {
        share.numer().checked_mul(1 << bits).map(|numerator| numerator / share.denom())
    };
    let mut sum: Effort = 0;
    let (mut base, mut numerators) = (Vec::new(), Vec::new());
    for kind in kinds {
        let one = down(&kind.weight, FLOW_BITS)?;
        sum = sum.checked_add(one)?;
        base.push(one);
        let mut cells: Vec<Vec<Effort>> = Vec::new();
        // What rounding takes off a share, over the share, all varying cells together; and off
        // the weight.
        let mut off: Effort = 1 << (SHARE_BITS - FLOW_BITS / 2);
        for shares in &kind.cells {
            let cell: Vec<Effort> =
                shares.iter().map(|share| down(share, SHARE_BITS)).collect::<Option<_>>()?;
            let least = *cell.iter().min().unwrap_or(&1);
            off += (1 << SHARE_BITS) / least.max(1) + 1;
            cells.push(cell);
        }
        if off >= (1 << SHARE_BITS) / LOST || one < 1 << (FLOW_BITS / 2) {
            return None;
        }
        numerators.push(cells);
    }
    sum.checked_mul(DEAREST)?.checked_mul(longest.to_i128()?)?.checked_mul(SPARE)?;
    sum.checked_mul(1 << SHARE_BITS)?;
    let denominator = CommonDenominator { number: 1 << FLOW_BITS, exact: false, rounded: true };
    Some(Whole { denominator, base, numerators })
}

/// Rounded shares lose less than one part in this many.
const LOST: Effort = 2_000_000;

fn lcm(a: Effort, b: Effort) -> Option<Effort> {
    (a / a.gcd(&b)).checked_mul(b)
}

fn lcm_of(mut numbers: impl Iterator<Item = Effort>) -> Option<Effort> {
    numbers.try_fold(1, lcm)
}

#[cfg(test)]
mod tests;
