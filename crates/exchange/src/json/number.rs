//! Exact numbers in JSON: measured values, and costs that may be fractions.
//!
//! From quantities and shares to JSON numbers (with the exact fraction beside them as text,
//! since JSON numbers are read as floats nearly everywhere) and back. Lengths come back exactly
//! up to nine million kilometres.

use serde_json::Number;
use spinney_model::{Quantity, Share};

/// A measured value.
pub(super) fn of_quantity(quantity: Quantity) -> Number {
    let thousandths = quantity.thousandths();
    if thousandths % 1000 == 0 {
        return Number::from(thousandths / 1000);
    }
    Number::from_f64(quantity.as_f64()).expect("whole thousandths make a finite float")
}

/// A measured value back from JSON; None: finer than a thousandth, or far too large.
pub(super) fn quantity(number: &Number) -> Option<Quantity> {
    if let Some(whole) = number.as_i64() {
        return whole.checked_mul(1000).map(Quantity::from_thousandths);
    }
    let float = number.as_f64()?;
    let thousandths = (float * 1000.0).round();
    // The largest whole number that a float holds exactly.
    let fits = thousandths.abs() <= 9_007_199_254_740_992.0;
    let same = (thousandths / 1000.0 - float).abs() <= float.abs() * 1e-12;
    (fits && same).then(|| Quantity::from_thousandths(thousandths as i64))
}

/// A cost as the nearest JSON number.
pub(super) fn of_share(share: Share) -> Number {
    if share.is_integer()
        && let Ok(whole) = i64::try_from(share.to_integer())
    {
        return Number::from(whole);
    }
    let float = *share.numer() as f64 / *share.denom() as f64;
    Number::from_f64(float).expect("a share has a denominator above zero")
}

/// A cost as an exact fraction: `10/3`, `34`.
pub(super) fn exact(share: Share) -> String {
    share.to_string()
}

/// A cost back from its exact fraction.
pub(super) fn share(text: &str) -> Option<Share> {
    let (above, below) = text.split_once('/').unwrap_or((text, "1"));
    let above: i128 = above.parse().ok()?;
    let below: i128 = below.parse().ok()?;
    (below > 0 && above != i128::MIN).then(|| Share::new(above, below))
}

/// Whether a plain number is the nearest float of an exact cost, but for a last digit or two.
pub(super) fn agree(number: &Number, exact: Share) -> bool {
    let exact = *exact.numer() as f64 / *exact.denom() as f64;
    number.as_f64().is_some_and(|float| (float - exact).abs() <= exact.abs() * ROUNDING)
}

/// How far two floats may differ that mean the same cost: some thousand steps of the last
/// digit, so that a sum of many floats in another program still agrees.
const ROUNDING: f64 = 1e-12;

/// The largest denominator that is looked for behind a float.
const LARGEST_DENOMINATOR: i128 = 1_000_000_000;

/// A cost back from a plain number: whole, a decimal of at most nine places, or else the
/// simplest fraction that a float of this value can stand for.
pub(super) fn share_of(number: &Number) -> Option<Share> {
    if let Some(whole) = number.as_i64() {
        return Some(Share::from_integer(whole.into()));
    }
    if let Some(whole) = number.as_u64() {
        return Some(Share::from_integer(whole.into()));
    }
    let text = number.to_string();
    if let Some((whole, decimals)) = text.split_once('.')
        && decimals.len() <= 9
        && whole.len() <= 15
        && let Ok(above) = format!("{whole}{decimals}").parse::<i128>()
    {
        let below = 10_i128.pow(u32::try_from(decimals.len()).ok()?);
        return Some(Share::new(above, below));
    }
    simplest(number.as_f64()?)
}

/// The fraction of smallest denominator among those that round to this float, by continued
/// fractions (Hardy and Wright, An Introduction to the Theory of Numbers, chapter 10).
fn simplest(float: f64) -> Option<Share> {
    // A float from 2^-30 to 2^53 is a whole multiple of 2^-83, so that all that follows is
    // exact; no key costs less or more.
    let size = float.abs();
    if !(1e-9..9_007_199_254_740_992.0).contains(&size) {
        return None;
    }
    let next = [-1, 1].map(|step| f64::from_bits(size.to_bits().wrapping_add_signed(step)));
    let [low, high] = next.map(|next| (exact_float(size) + exact_float(next)) / 2);
    let found = between(low, high);
    let found = if float < 0.0 { -found } else { found };
    (*found.denom() <= LARGEST_DENOMINATOR).then_some(found)
}

/// The very value of a float between 2^-31 and 2^53.
fn exact_float(float: f64) -> Share {
    let bits = float.to_bits();
    let mantissa = i128::from(bits & ((1 << 52) - 1)) | 1 << 52;
    let exponent =
        i32::try_from(bits >> 52).expect("a positive float has 11 bits of it") - 1075;
    match u32::try_from(-exponent) {
        Ok(places) => Share::new(mantissa, 1 << places),
        Err(_) => Share::from_integer(mantissa << exponent),
    }
}

/// The fraction of smallest denominator from `low` to `high`, both above zero.
fn between(low: Share, high: Share) -> Share {
    let whole = low.ceil();
    if whole <= high {
        return whole;
    }
    let below = low.floor();
    below + between((high - below).recip(), (low - below).recip()).recip()
}
