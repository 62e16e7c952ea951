//! Amounts that are never rounded: flows and efforts, however long their fractions become.
//!
//! A fraction of two machine numbers while it fits, else one of whole numbers of any length
//! (section 8 of `docs/KEY.md`). From amounts to amounts, and at the end to what may be said.

use num_bigint::BigInt;
use num_rational::BigRational;
use num_traits::{CheckedAdd, CheckedMul, ToPrimitive};
use spinney_model::Share;

/// An amount without limits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Amount {
    /// It fits into machine numbers, as far as anybody looked.
    Short(Share),
    /// Of any length.
    Long(Box<BigRational>),
}

/// What cannot be said exactly is said as a multiple of one over this, the next one above.
const UNITS: i128 = 1 << 60;

impl Amount {
    /// Nothing.
    pub(crate) fn zero() -> Self {
        Self::Short(Share::from_integer(0))
    }

    /// Both together.
    pub(crate) fn plus(&self, other: &Self) -> Self {
        if let (Self::Short(one), Self::Short(two)) = (self, other)
            && let Some(sum) = one.checked_add(two)
        {
            return Self::Short(sum);
        }
        Self::Long(Box::new(self.long() + other.long()))
    }

    /// So many times as much, or such a part of it.
    pub(crate) fn times(&self, factor: Share) -> Self {
        if let Self::Short(one) = self
            && let Some(product) = one.checked_mul(&factor)
        {
            return Self::Short(product);
        }
        Self::Long(Box::new(self.long() * long(factor)))
    }

    /// What is left of it where a part `before` of something became a part `after`.
    pub(crate) fn narrowed(&self, before: Share, after: Share) -> Self {
        if let Some(part) = after.checked_mul(&before.recip()) {
            return self.times(part);
        }
        Self::Long(Box::new(self.long() * long(after) / long(before)))
    }

    /// As a share of something else that is more than nothing.
    pub(crate) fn over(&self, all: &Self) -> Self {
        Self::Long(Box::new(self.long() / all.long()))
    }

    /// The amount itself if it fits into machine numbers, else the next multiple of 2⁻⁶⁰ above;
    /// None: not even that fits.
    pub(crate) fn said(&self) -> Option<Share> {
        let fits = |number: &BigRational| {
            Some(Share::new(number.numer().to_i128()?, number.denom().to_i128()?))
        };
        match self {
            Self::Short(share) => Some(*share),
            Self::Long(long) => fits(long).or_else(|| {
                let units = (&**long * BigInt::from(UNITS)).ceil() / BigInt::from(UNITS);
                fits(&units)
            }),
        }
    }

    fn long(&self) -> BigRational {
        match self {
            Self::Short(share) => long(*share),
            Self::Long(long) => (**long).clone(),
        }
    }
}

fn long(share: Share) -> BigRational {
    BigRational::new((*share.numer()).into(), (*share.denom()).into())
}

/// The least common multiple of two numbers above zero, by Euclid's rule; None: it does not fit
/// into a machine number.
pub(crate) fn common_multiple(one: i128, other: i128) -> Option<i128> {
    let (mut a, mut b) = (one, other);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    (one / a).checked_mul(other)
}

#[cfg(test)]
mod tests;
