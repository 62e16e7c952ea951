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

/// A cost back from a plain number: whole, or a decimal of at most nine places.
pub(super) fn share_of(number: &Number) -> Option<Share> {
    if let Some(whole) = number.as_i64() {
        return Some(Share::from_integer(whole.into()));
    }
    let text = number.to_string();
    let (whole, decimals) = text.split_once('.')?;
    if decimals.len() > 9 || whole.len() > 15 {
        return None;
    }
    let below = 10_i128.pow(u32::try_from(decimals.len()).ok()?);
    let above: i128 = format!("{whole}{decimals}").parse().ok()?;
    Some(Share::new(above, below))
}
